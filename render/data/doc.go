// Package data writes a checked pattern as JSON for other programs: sizes, measures, gauge, yarn, the rows of every part with their counts and
// their text in each language, finishing, cautions.
//
// The shape is promised. It is described by [Schema], JSON Schema draft 2020-12, whose version stands in the data; it follows what a maker
// reads, not how this program holds it, and changes only with the version. Lengths are in millimetres, weights in grams, and names say so. A
// number for each size is a list in the order of the sizes, null where a size has none.
package data
