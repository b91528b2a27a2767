// Package web writes a checked pattern as one page for a browser: a file that is whole in itself, asks the network for nothing, and says
// what the printed pages say, in their order.
//
// The page holds every language and every view of the pattern: all sizes together, as in print, and each size alone, as [plan.Pattern.In]
// gives it. What reads the same in several views stands once (see views.go). Without its script all of it can be read, all sizes at
// once and one language after the other; the script shows one language and one view, keeps count of rows, and remembers.
//
// All text goes through a tree of nodes (markup.go), which is the only thing that writes markup, and a policy in the page lets nothing
// run or load but the style and the script that were written here.
package web
