package compile

import (
	"slices"

	"ovillo/lang"
	"ovillo/lang/diag"
)

// A file that patterns share may be checked alone. It makes nothing, so that only what is wrong in it whoever uses it is said:
// what it lacks, its patterns may say, or other files that they use.

// fromElsewhere are the messages about what a pattern or another shared file may have: names, sizes, the gauge.
var fromElsewhere = map[diag.Code]bool{
	codeNoName: true, codeNoStitch: true, codeNoYarn: true, codeNoSize: true,
	"OV302": true, "OV307": true, // values, and sizes of a value
	"OV323": true, "OV331": true, "OV717": true, // stitch patterns
	"OV326": true, "OV701": true, "OV702": true, "OV752": true, // the gauge
	codeProseName: true,
}

// checkAlone checks a file that patterns share.
func checkAlone(f *lang.File, o Options) Outcome {
	c := newChecker(f)
	c.reads(o)
	c.pat.Languages = languagesIn(f)
	if len(blocks[*lang.Sizes](c.file.Body)) > 0 { // else values are left as they stand
		c.sizes()
	}
	c.ownStitches()
	c.stitchPatterns()
	c.materials()
	c.readAllowance()
	c.declarations()
	c.putAllIn()
	c.signs()
	c.flush()
	found := slices.DeleteFunc(c.out, func(d diag.Diagnostic) bool {
		return d.Severity() != diag.Error || fromElsewhere[d.Code]
	})
	return Outcome{Shared: true, Found: found, Sound: !found.HasErrors()}
}

// languagesIn are the languages that texts of a file are written in; without any, those of a pattern that names none.
func languagesIn(f *lang.File) []string {
	var out []string
	add := func(l string) {
		if l != "" && !slices.Contains(out, l) {
			out = append(out, l)
		}
	}
	lang.WalkStatements(f.Body, func(s *lang.Statement) bool {
		for _, l := range s.Lines {
			add(l.Head)
		}
		return true
	})
	lang.Walk(f, func(n lang.Node) bool {
		if t, ok := n.(*lang.Bi); ok {
			add(t.Lang)
		}
		return true
	})
	if out == nil {
		return []string{"en", "es"}
	}
	return out
}
