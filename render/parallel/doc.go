// Package parallel lays what a document says in two languages side by side, passage by passage, and finds where they do not
// say the same: a passage that only one of them has, a number, a measure or a stitch that differs.
//
// It goes by what stands on the pages and nothing else, so that it finds what went wrong on the way there. Passages come from
// finished pages ([Of]) or from whoever reads a file. That both languages could be wrong alike it cannot see.
package parallel
