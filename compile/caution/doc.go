// Package caution checks a pattern against published safety rules for children's things, and chooses the cautions that
// print.
//
// The rules are data: data/rules.csv, each row with its figure, its words in both languages, its sources and how well
// these were read. [Evaluate] takes what is known of the piece and gives back the cautions to print and the findings: an
// error where a published limit is crossed, a warning where a rule asks for care, and a warning where a rule cannot be
// decided because something is not known. What is not known is asked for and never taken as safe.
//
// The rules are a small selection, and no paid standard was read in full. The package never says that a thing is safe:
// local law and the judgement of licensed or certified people come first, and each caution says so.
package caution
