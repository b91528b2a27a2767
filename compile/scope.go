package compile

import (
	"math/big"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// start is the place to point at when the source lacks something as a whole.
func (c *checker) start() source.Span {
	for _, s := range c.file.Body {
		if !c.file.Shared(s.Head) {
			return s.Head
		}
	}
	return source.Span{}
}

// scope is what an expression is worked out in: the values declared so far, for the sizes of a mask.
type scope struct {
	c       *checker
	mask    []bool // nil: all sizes
	measure func(*lang.Expr) (value.Vector, bool)
	first   string // names are looked up behind this first: "measure." where measures stand by their names alone
}

// eval works out an expression in the sizes of a mask and spreads the result over all sizes, Absent elsewhere.
func (c *checker) eval(e *lang.Expr, mask []bool, measure func(*lang.Expr) (value.Vector, bool)) value.Vector {
	if c.z == 0 {
		return value.Unknown
	}
	return value.Eval(e, &scope{c: c, mask: mask, measure: measure}).Spread(mask)
}

func (s *scope) Sizes() []string {
	names := s.c.sizeNames()
	if s.mask == nil {
		return names
	}
	var out []string
	for i, on := range s.mask {
		if on {
			out = append(out, names[i])
		}
	}
	return out
}

func (s *scope) Lookup(path []string) (value.Vector, bool) {
	name := strings.Join(path, ".")
	v, ok := s.c.lets[s.first+name]
	if !ok {
		v, ok = s.c.lets[name]
	}
	s.c.body.use(name)
	if !ok && s.c.body.unknown(name) {
		return value.Unknown, true
	}
	return v.Pick(s.mask), ok
}

func (s *scope) Names() []string {
	var out []string
	for n := range s.c.lets {
		if s.first != "" {
			n = strings.TrimPrefix(n, s.first)
		}
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

func (s *scope) Gauge(name string, by value.WorkedIn) (sts, rows *big.Rat, found value.Found) {
	id := stitch.ID(name)
	if s.c.patterns[name] == nil {
		f, known := s.c.form(name)
		if !known {
			return nil, nil, value.NoGauge
		}
		id = f.ID
	}
	m := manner{by: [...]way{value.AnyWay: eitherWay, value.InRows: inRows, value.InRounds: inRounds}[by]}
	switch p := s.c.at; {
	case p != nil:
		p.asked, m.hook = true, p.inUse
		if m.by == eitherWay {
			m.by = wayOf(p.style)
		}
	case m.by == eitherWay && s.c.twoWays(id):
		return nil, nil, value.TwoGauges
	}
	g := s.c.gaugeFor(id, m)
	if g == nil {
		return nil, nil, value.NoGauge
	}
	return g.sts, g.rows, value.OneGauge
}

// twoWays reports whether a stitch was counted with the main hook both in rows and in rounds.
func (c *checker) twoWays(id stitch.ID) bool {
	ways := map[way]bool{}
	for _, g := range c.gauge[id] {
		if c.hookOf(g.hook) == c.hookOf(0) {
			ways[g.by] = true
		}
	}
	return len(ways) > 1
}

// Multiple is over which numbers of stitches a stitch pattern comes out.
func (s *scope) Multiple(name string) (of, plus plan.Nums, ok bool) {
	sp := s.c.patterns[name]
	if sp == nil || sp.of == nil || sp.bad {
		return nil, nil, false
	}
	of, plus, ok = s.c.multipleOf(sp, s.mask)
	return pickNums(of, s.mask), pickNums(plus, s.mask), ok
}

// pickNums are the numbers of the sizes of a mask.
func pickNums(n plan.Nums, mask []bool) plan.Nums {
	if mask == nil || n == nil {
		return n
	}
	var out plan.Nums
	for z, on := range mask {
		if on {
			out = append(out, n[z])
		}
	}
	return out
}

func (s *scope) Measure(e *lang.Expr) (value.Vector, bool) {
	if e.Text == "count" {
		return s.c.countOf(e).Pick(s.mask), true
	}
	if s.measure == nil {
		return value.Unknown, false
	}
	return s.measure(e)
}

func (s *scope) Report(d diag.Diagnostic) { s.c.report(s.c.body.lacking(d)) }

// count works out a count: whole numbers, none below zero. It is nil if that cannot be known; that was reported.
func (c *checker) count(e *lang.Expr, mask []bool) plan.Nums {
	if n, ok := plainFigure(e); ok && c.z > 0 { // as most are
		out := c.nums(n)
		for z, on := range mask {
			if !on {
				out[z] = plan.Absent
			}
		}
		return out
	}
	v := c.eval(e, mask, nil)
	if v.Unknown {
		return nil
	}
	out, _ := v.Counts(&scope{c: c}, e)
	return out
}

func (c *checker) cnt(n *lang.Cnt, mask []bool) plan.Nums {
	if n == nil {
		return nil
	}
	return c.count(n.E, mask)
}

// ownStitches enters the stitches of the designer's own, before anything that may name them.
func (c *checker) ownStitches() {
	for _, s := range blocks[*lang.Stitch](c.file.Body) {
		c.ownStitch(s, s.Node.(*lang.Stitch))
	}
}

// declarations enters values, groups and charts, in the order of the file.
func (c *checker) declarations() {
	for _, s := range c.file.Body {
		switch n := s.Node.(type) {
		case *lang.Let:
			c.letting = n.Name.Text
			v := c.value(n.Value, nil)
			c.letting = ""
			c.grading(n.Value.Span(), v)
			if c.declare(n.Name) {
				c.lets[n.Name.Text] = v
				c.letOrder = append(c.letOrder, n.Name.Text)
			}
		case *lang.Group:
			if c.declare(n.Name) {
				c.groups[n.Name.Text] = n
			}
		case *lang.Chart:
			switch {
			case !c.declare(n.Name):
			case n.Of != nil:
				c.readDrawn(s, n)
			default:
				c.charts[n.Name.Text] = c.readChart(s, n)
			}
		case *lang.Prose:
			if c.file.Shared(s.Head) {
				c.sharedProse(s, n.Word)
				continue
			}
			c.pat.Notes = append(c.pat.Notes, c.prose(s))
		}
	}
}

// maxMade is the most stitches one stitch of the designer's own may make.
const maxMade = 100

func (c *checker) ownStitch(s *lang.Statement, n *lang.Stitch) {
	if !c.declare(n.Name) {
		return
	}
	o := plan.OwnStitch{ID: stitch.ID(n.Name.Text), Takes: 1, Makes: 1, Tall: stitch.SC, How: c.prose(s)}
	named := false
	for _, b := range s.Body {
		switch m := b.Node.(type) {
		case *lang.Takes:
			if v, ok := plainNumber(m.Takes); ok {
				o.Takes = v
			}
			if v, ok := plainNumber(m.Makes); ok {
				o.Makes = v
			}
			if o.Takes < 1 || o.Makes > maxMade {
				c.say(codeOwnStitch, m.Span(), diag.Args{"max": maxMade})
				o.Takes, o.Makes = 1, 1
			}
			if m.Tall != nil {
				o.Tall = c.stitchID(m.Tall)
			}
		case *lang.YarnName:
			o.Names, named = c.text(m.Text, m), true
		case *lang.Abbr:
			o.Abbr = c.text(m.Text, m)
		}
	}
	if !named {
		c.say(codeNoTranslation, s.Head, diag.Args{"languages": c.pat.Languages})
	}
	c.own[o.ID] = o
	c.pat.Own = append(c.pat.Own, o)
}
