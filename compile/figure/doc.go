// Package figure holds the sums on finished pieces: how much yarn a size takes, whether a measure suits the wearer, and
// how lengths and measures are shown.
//
// Its functions are pure: figures in, figures and diagnostics out. They know nothing of rows and stitches; areas and
// lengths come from the fabric that package compile has worked.
package figure
