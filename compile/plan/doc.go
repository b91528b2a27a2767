// Package plan holds the checked pattern: what the compiler knows and the renderers print. It is types, and two ways to have
// the same pattern for an edition: in one size alone ([Pattern.In]), and with every row written out ([Pattern.Unrolled]). A new
// field that has one element for each size has its line in In; a test finds one that has not.
//
// Every number a page shows is here already, one for each size; renderers do no arithmetic on stitches. Nothing here
// depends on the syntax of the source or on the look of a page. A pattern reaches a renderer only if it was checked
// without an error.
package plan
