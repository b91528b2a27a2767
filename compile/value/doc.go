// Package value works out the expressions of a pattern: exactly, with their dimension, one number for each size.
//
// [Eval] takes an expression of the tree and an [Env] that knows names, sizes and gauge, and gives back a [Vector]:
//
//	v := value.Eval(let.Value.E, env)         // 96 (104, 112), or 52 cm for each size
//	n, ok := v.Counts(env, let.Value.Span())  // whole numbers, or a diagnostic and false
//
// Numbers are fractions of whole numbers, so that a third of 100 stitches is never 33.333: a count that does not come out
// whole is seen where it is used, with its size. Lengths are in millimetres, weights in grams, ages in months.
//
// What cannot be worked out is reported once and becomes an Unknown vector; whatever is worked out from it is Unknown
// too, and silent. The package knows nothing of rows and stitches beyond the gauge it is given.
package value
