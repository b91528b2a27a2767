// Package standard holds the tables of the trade: hooks and their names, classes of yarn, body measures of children,
// fibres, and the geometry of flat circles.
//
// The tables are the files in data, each with its sources and with how well each row is known. A row that was only
// recalled is used to recognise what a source says, and is never handed out to be printed as a standard.
package standard
