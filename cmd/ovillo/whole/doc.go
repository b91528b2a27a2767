// Package whole is for tests of the whole way from a source to a finished file: the sources that they look at, each checked once a
// run, and their pages. The tests stand in packages of their own below, so that several run side by side. Nothing but tests imports it.
package whole
