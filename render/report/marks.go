package report

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"

	"ovillo/compile/plan"
)

// mark is a short mark of a text: it changes with every letter of it. It serves to compare two passes, not to keep anybody
// from anything.
func mark(text string) string {
	sum := sha256.Sum256([]byte(text))
	s := hex.EncodeToString(sum[:6])
	return s[:4] + " " + s[4:8] + " " + s[8:]
}

// numbersMark is the mark of all numbers that a maker relies on: gauge and hooks, every row of every part in every size,
// measures, yarn. Names, sentences and the layout do not touch it, so that it must be the same before and after the pages
// are laid out, and in every language.
func numbersMark(p *plan.Pattern) string {
	var b strings.Builder
	fmt.Fprintln(&b, "sizes", len(p.Sizes))
	for _, g := range p.Gauges {
		fmt.Fprintln(&b, "gauge", g.Stitch, g.Pattern, g.Over, g.Sts, g.Rows, g.Repeats, g.Rounds, g.Hook)
	}
	fmt.Fprintln(&b, "hooks", p.Hooks)
	for i, part := range p.Parts {
		for z, rows := range part.Worked {
			for _, f := range rows {
				fmt.Fprintln(&b, "row", i, z, f.Number, f.Stitches, f.Spaces, f.Chains, f.Taken, f.Width, f.Height)
			}
		}
	}
	for _, m := range p.Measures {
		fmt.Fprintln(&b, "measure", m.Name, m.Values)
	}
	for _, m := range p.Body {
		fmt.Fprintln(&b, "body", m.Name, m.Values)
	}
	for i, y := range p.Yarns {
		for z, a := range y.Amount {
			fmt.Fprintln(&b, "yarn", i, z, a.Milligrams, a.Length, a.Balls)
		}
	}
	return mark(b.String())
}
