// Package compare says what changed in meaning between two checked patterns: what a maker makes, or needs, or is warned of in
// another way than before. It reads nothing but the two plans and returns facts; what is said of them is for who prints them.
//
// What is compared is what is worked, not how it is written: a row is the list of stitches that it makes in one size, with its
// repeats written out and its count, so that a row which is put into other words, names or lines is the same row. Of the texts of
// the designer only the figures count, since what a sentence means nobody can tell but her.
//
// Every size is compared by itself. Rows are lined up by a longest common subsequence over what they do, so that a row that was put
// in is one new row; what refers to a row refers to the same one if that row moved along.
package compare
