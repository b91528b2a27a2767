package words

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/terms"
)

// Every stitch of the table, and all that is made of it, as each reading abbreviates and names it, and as each language
// explains it.
func TestStitchesInWords(t *testing.T) {
	for _, tag := range terms.Standard().Tags() {
		l := language(t, tag)
		var b strings.Builder
		p := &plan.Pattern{Sizes: []plan.Size{{Name: "one", Age: -1}}}
		for _, f := range append(append([]stitch.Form{stitch.Plain(stitch.Chain)}, spokenForms()...), spokenGroups()...) {
			if f.Loop == stitch.BothLoops {
				p.Stitches = append(p.Stitches, f)
			}
		}
		c := l.context(p, nil, nil)
		var list []Abbreviation
		for _, f := range c.printedForms() {
			if f.Group == stitch.Single {
				list = append(list, c.abbreviation(f, false))
			}
		}
		l.sortAbbreviations(list)
		for _, a := range append(list, l.nounRow("st"), l.nounRow("sp")) {
			fmt.Fprintf(&b, "%s | %s | %s\n", a.Short, a.Meaning, strings.Join(a.Others, "; "))
		}
		for _, f := range spokenGroups() {
			n := l.voice.form(f)
			fmt.Fprintf(&b, "%s, %s | %s\n", flat(n.one), flat(n.many), l.voice.formName(f))
		}
		if tag != "en-US" && tag != "es" {
			golden(t, "stitches."+tag+".golden", b.String())
			continue // explained in other words for the stitches alone
		}
		for _, s := range l.Specials(p) {
			fmt.Fprintf(&b, "%s\n    %s\n", shown(s.Head), shown(s.Text))
		}
		golden(t, "stitches."+tag+".golden", b.String())
	}
}
