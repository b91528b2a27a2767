package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file reads stitch patterns: numbered rows that are worked over and over, behind set-up rows that are worked once.

// stitchPattern is a stitch pattern as it is read.
type stitchPattern struct {
	name     string
	text     plan.Text // its printed name
	setup    []*lang.PatternRow
	rows     []*lang.PatternRow
	of, plus *lang.Cnt    // over which numbers of stitches it comes out; nil: any
	rule     source.Span  // where that is said
	ends     map[int]bool // after which rows it may end; nil: any
	bad      bool         // something is wrong with it, which was said
}

// stitchPatterns reads the stitch patterns of the source. The numbers in them are worked out where they are used, when the
// values of the source are known.
func (c *checker) stitchPatterns() {
	for _, s := range blocks[*lang.StitchPattern](c.file.Body) {
		n := s.Node.(*lang.StitchPattern)
		if !c.declare(n.Name) {
			continue
		}
		sp := &stitchPattern{name: n.Name.Text}
		c.patterns[n.Name.Text] = sp
		for _, b := range s.Body {
			c.patternLine(sp, b)
		}
		if len(sp.rows) == 0 && !sp.bad {
			c.say(codePatternRows, n.Span(), diag.Args{"name": sp.name})
			sp.bad = true
		}
	}
}

func (c *checker) patternLine(sp *stitchPattern, b *lang.Statement) {
	switch n := b.Node.(type) {
	case *lang.YarnName:
		sp.text = c.text(n.Text, n)
	case *lang.MultipleOf:
		sp.of, sp.plus, sp.rule = n.N, n.Plus, n.Span()
	case *lang.PatternRow:
		if n.Setup {
			sp.setup = append(sp.setup, n)
			break
		}
		sp.rows = append(sp.rows, n)
		if k, ok := plainNumber(n.N); (!ok || k != len(sp.rows)) && !sp.bad {
			c.say(codePatternOrder, n.N.Span(), diag.Args{"need": len(sp.rows), "name": sp.name})
			sp.bad = true
		}
	case *lang.MayEnd:
		sp.ends = map[int]bool{}
		for _, r := range n.Rows {
			k, ok := plainNumber(r)
			if rows := countPatternRows(c.file, sp.name); (!ok || k < 1 || k > rows) && !sp.bad {
				c.say(codePatternEnd, r.Span(), diag.Args{"have": rows, "name": sp.name})
				sp.bad = true
			}
			sp.ends[k] = true
		}
	case nil:
		sp.bad = true
	}
}

// countPatternRows is how many numbered rows the stitch pattern of a name has, those behind the line at hand as well.
func countPatternRows(f *lang.File, name string) int {
	n := 0
	for _, s := range blocks[*lang.StitchPattern](f.Body) {
		if s.Node.(*lang.StitchPattern).Name.Text != name {
			continue
		}
		for _, b := range s.Body {
			if r, ok := b.Node.(*lang.PatternRow); ok && !r.Setup {
				n++
			}
		}
		break
	}
	return n
}

// multipleOf works out over which numbers of stitches a pattern comes out; false if that cannot be known, which was said.
func (c *checker) multipleOf(sp *stitchPattern, lex []bool) (of, plus plan.Nums, ok bool) {
	of, plus = c.cnt(sp.of, lex), c.nums(0)
	if sp.plus != nil {
		plus = c.cnt(sp.plus, lex)
	}
	if of == nil || plus == nil {
		return nil, nil, false
	}
	if slices.Contains(of, 0) {
		c.say(codePatternMany, sp.rule, nil)
		sp.bad = true
		return nil, nil, false
	}
	return of, plus, true
}
