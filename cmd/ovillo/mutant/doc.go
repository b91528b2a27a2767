// Package mutant holds tests alone. They change one thing at a time in the examples, ten thousand times: whatever the slip, the result is
// pages or a message at its place, and how many slips that change a count go unnoticed is known.
package mutant
