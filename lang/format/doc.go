// Package format sets the text of a source in its usual shape.
//
// [Source] changes nothing but blanks, blank lines and line ends: every word stays on the line where its author put it, so
// the meaning cannot change, and a source with faults can be set as well as a good one. The tree tells where statements
// and blocks begin and end; the tokens tell what stands on a line.
//
// The work has four steps, a file each: tidy.go takes away what no line needs, layout.go finds the place of every line in
// the blocks, cells.go writes a line with one space between its words and cuts it where a column may begin, and columns.go
// lines the pieces up.
package format
