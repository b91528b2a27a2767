// Package caution checks a pattern against published safety rules for children's things, and chooses the cautions that
// print.
//
// The rules are data: data/rules.csv, each row with its trigger, its figures, its words in both languages, its sources and how
// well these were read. A trigger is a condition on what data/vocabulary.csv lists: of the piece, of a cord, of a part. [Evaluate]
// takes what is known of the piece and gives back the cautions to print and the findings: an error where a published limit is
// crossed, with the value that would pass, a warning where a rule asks for care, and a question where a rule cannot be decided
// because something is not known.
//
// Conditions are evaluated in three values, size by size and thing by thing. What is not known is asked for and never taken as
// safe; what is partly known may be enough. A size counts by its youngest wearer.
//
// No paid standard was read in full. The package never says that a thing is safe: local law and the judgement of licensed or
// certified people come first, as the pages say once for all cautions.
package caution
