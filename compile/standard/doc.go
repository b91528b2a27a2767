// Package standard holds the tables of the trade: hooks and their names, classes of yarn, body measures and growth, fibres,
// and the geometry of flat circles.
//
// The tables are the files in data, each with its sources and with how well each row is known. A figure that was only
// recalled serves to recognise what a source says; a body measure that was is handed out as such, to be marked wherever it is
// printed.
package standard
