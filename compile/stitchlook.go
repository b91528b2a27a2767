package compile

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// StitchNamed is the stitch that a word of a source stands for under US or UK terms, whatever the source itself sets.
func StitchNamed(word string, uk bool) (stitch.Form, bool) {
	c := &checker{pat: &plan.Pattern{UKTerms: uk}}
	return c.form(word)
}

// StitchWords lists the words for stitches under US or UK terms; of the groups of stitches, those of the least number.
func StitchWords(uk bool) []string {
	c := &checker{pat: &plan.Pattern{UKTerms: uk}}
	return c.stitchWords()
}
