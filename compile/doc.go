// Package compile turns a tree into a checked pattern.
//
// [Compile] is a list of passes: header and sizes, materials, values, then each part in working order, the finishing, the
// measures, and what follows from all that (yarn, notions, cautions). Each row is lowered once to instructions of
// package fabric with a number for every size, worked in every size, checked against what it states, and turned into a
// printed step from what it did.
//
// A size in which a row could not be worked is silent from there on, in that part and in all that rests on it: a message
// has one cause, and a cause one message.
package compile
