// Package fabric models crocheted fabric stitch by stitch, in one size at a time.
//
// A [Fabric] holds every stitch ever made, as an element that knows what it was worked into. A [Part] has an edge: an
// ordered run of places open for work. A row is a list of [Op]s; [Part.Work] walks its cursor along the edge and makes
// the next edge, or says in a [Fault] why it cannot, with what it needed and what it had. The meaning of each
// instruction is in the language reference; the laws it keeps are tested in law_test.go:
//
//   - every place of the edge is taken, skipped, passed or left, each exactly once (the row rule);
//   - the stitches and spaces made are exactly the next edge;
//   - turning twice changes nothing.
//
// Cost is one step a stitch, but for rows that do what the one before them did: those are counted (see [Part.Again]). What a row did is kept in one [Trace] an instruction, from which the sentences are made.
package fabric
