package compare

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/numeral"
	"ovillo/compile/plan"
)

// front compares what stands before the parts.
func (c *comparison) front() {
	was, is := c.old.p, c.new.p
	age := func(p *plan.Pattern) string { return fmt.Sprint(p.Sizes[0].Age, p.Sizes[0].AgeTo) }
	c.whole(Ages, age(was), age(is))
	c.body()
	c.measures()
	c.yarns()
	c.whole(Fibres, c.old.key(was.Contents), c.new.key(is.Contents))
	c.gauges()
	c.whole(Hooks, c.old.key(was.Hooks), c.new.key(is.Hooks))
	c.whole(Notions, notionsKey(c.old, was.Notions), notionsKey(c.new, is.Notions))
	c.texts()
	c.stitches()
	c.charts()
}

// size is a measure in the one size; no text for one that is not known.
func size(l plan.Lengths) string {
	if len(l) == 0 {
		return ""
	}
	return fmt.Sprint(printed(l[0]))
}

func (c *comparison) body() {
	list := func(p *plan.Pattern) (out []item) {
		for _, b := range p.Body {
			out = append(out, item{b.Name, size(b.Values)})
		}
		return out
	}
	c.byName(Body, list(c.old.p), list(c.new.p))
}

// measures compares what the piece measures. One of another name that is taken at the same place is the same.
func (c *comparison) measures() {
	list := func(p *plan.Pattern) (out []item) {
		for _, m := range p.Measures {
			key := size(m.Values)
			if m.Fits != nil {
				key += " fits " + m.Fits.Body
			}
			if m.Over != nil {
				key += fmt.Sprintf(" over %s stretched %s", m.Over.Body, size(m.Over.Stretched))
			}
			out = append(out, item{m.Name, key})
		}
		return out
	}
	old, new := list(c.old.p), list(c.new.p)
	c.byName(Measures, old, new, func(i, k int) bool {
		return old[i].key == new[k].key && c.old.key(c.old.p.Measures[i].Of) == c.new.key(c.new.p.Measures[k].Of)
	})
}

func (c *comparison) yarns() {
	to, back := c.pairYarns()
	kind := func(p *plan.Pattern) (out []item) {
		for _, y := range p.Yarns {
			out = append(out, item{y.Name, fmt.Sprint(y.Weight, y.Fibre, y.BallWeight, y.BallLength)})
		}
		return out
	}
	amount := func(p *plan.Pattern) (out []item) {
		for _, y := range p.Yarns {
			key := ""
			if len(y.Amount) > 0 {
				key = amountKey(y.Amount[0])
			}
			out = append(out, item{y.Name, key})
		}
		return out
	}
	c.items(Yarns, kind(c.old.p), kind(c.new.p), to, back)
	for i, k := range to { // of a yarn that came or went enough is said
		if k >= 0 {
			if old, new := amount(c.old.p)[i], amount(c.new.p)[k]; old.key != new.key {
				c.note(Change{Topic: Amounts, Name: old.name}, one(i), one(k))
			}
		}
	}
}

// amountKey is an amount as pages print it: balls and metres, or what of these is known and the grams. The yards are the metres,
// rounded by themselves.
func amountKey(a plan.YarnAmount) string {
	const gram = 1000
	if a.Balls > 0 && a.Length > 0 {
		return fmt.Sprint(a.Balls, " balls of ", printed(a.Length))
	}
	return fmt.Sprint(a.Balls, " balls of ", printed(a.Length), " and ", (a.Milligrams+gram/2)/gram)
}

// gauges compares gauges by the stitch or pattern they are of. Twice as many stitches over twice the length are the same.
func (c *comparison) gauges() {
	list := func(b *book) (out []item) {
		for _, g := range b.p.Gauges {
			per := func(n int64) string {
				if g.Over <= 0 {
					return fmt.Sprint(n)
				}
				return fmt.Sprintf("%.4f", float64(n)/float64(g.Over))
			}
			name := fmt.Sprintf("%s %s", b.id(g.Stitch), g.Pattern)
			key := fmt.Sprint(per(g.Sts), " ", per(g.Rows), " ", per(g.Repeats), g.Rounds, int64(g.Hook), g.Blocked)
			out = append(out, item{name, key})
		}
		return out
	}
	c.byName(Gauges, list(c.old), list(c.new))
}

// notionsKey is what is needed besides yarn and hook: how much of what, and not what it is called.
func notionsKey(b *book, n plan.Notions) string {
	key := b.key(n)
	var others []string
	for _, o := range n.Others {
		others = append(others, b.key(o))
	}
	return key + strings.Join(others, ";")
}

// texts compares the figures of the designer's texts. A note that came is more than wording, and so is one that went.
func (c *comparison) texts() {
	was, is := c.old.p, c.new.p
	for _, t := range []struct {
		name     string
		old, new plan.Prose
	}{{"intro", was.Intro, is.Intro}, {"care", was.Care, is.Care}, {"licence", was.Licence, is.Licence}} {
		if !t.old.Empty() && !t.new.Empty() && !c.sameFigures(t.old, t.new) {
			c.note(Change{Topic: Texts, Name: t.name}, one(0), one(0))
		}
	}
	keys := func(list []plan.Prose) (out []string) {
		for _, n := range list {
			out = append(out, fmt.Sprint(n.Text))
		}
		return out
	}
	old, new := keys(was.Notes), keys(is.Notes)
	for _, p := range lined(old, new, func(i, k int) float64 { return apartBy(old[i], new[k]) }) {
		switch {
		case p.old < 0:
			c.note(Change{Topic: Texts, Name: fmt.Sprint("note ", p.new)}, nil, one(p.new))
		case p.new < 0:
			c.note(Change{Topic: Texts, Name: fmt.Sprint("gone ", p.old)}, one(p.old), nil)
		case !c.sameFigures(was.Notes[p.old], is.Notes[p.new]):
			c.note(Change{Topic: Texts, Name: fmt.Sprint("note ", p.new)}, one(p.old), one(p.new))
		}
	}
}

// apartBy says how unlike two texts are, by their words.
func apartBy(a, b string) float64 {
	x, y := element{key: a}, element{key: b}
	return unlike(&x, &y)
}

// stitches compares the designer's own stitches: what they take and make, and the figures of how they are worked.
func (c *comparison) stitches() {
	list := func(b *book) (out []item) {
		for _, o := range b.p.Own {
			out = append(out, item{string(b.id(o.ID)), b.key(o)})
		}
		return out
	}
	to, back := c.pairOwn()
	old, new := list(c.old), list(c.new)
	for i, k := range to {
		if k >= 0 && !c.sameFigures(c.old.p.Own[i].How, c.new.p.Own[k].How) {
			new[k].key += " explained otherwise"
		}
	}
	c.items(Stitches, old, new, to, back)
}

func (c *comparison) charts() {
	list := func(b *book) (out []item) {
		for _, k := range b.p.Charts {
			out = append(out, item{k.Name, fmt.Sprint(b.cells(k), b.form(k.Mesh.Form), k.Mesh.Behind)})
		}
		return out
	}
	to, back := c.pairCharts()
	c.items(Charts, list(c.old), list(c.new), to, back)
}

// cells are the cells of a chart, with the yarns by the numbers that both patterns have for them.
func (b *book) cells(k plan.Chart) [][]int {
	out := make([][]int, len(k.Rows))
	for i, row := range k.Rows {
		for _, cell := range row {
			if k.Mesh.Behind == 0 {
				cell = renumber(b.yarns, cell)
			}
			out[i] = append(out[i], cell)
		}
	}
	return out
}

// figuresOf are the figures of a text, for the texts of tables.
func figuresOf(text string) string {
	var out []string
	for _, n := range numeral.Read(text, "en", nil) {
		out = append(out, n.Text)
	}
	return strings.Join(out, " ")
}

// ChartRows are the rows of a chart, from 1 at the bottom, whose cells differ in a size.
func (r *Result) ChartRows(s Site, old, new plan.Chart) []int {
	c := &comparison{r: r, z: s.Size, old: &book{p: r.Sizes[s.Size].Was}, new: &book{p: r.Sizes[s.Size].Is}}
	_, c.new.yarns = c.pairYarns()
	was, is := c.old.cells(old), c.new.cells(new)
	var out []int
	for i := range max(len(was), len(is)) {
		if i >= len(was) || i >= len(is) || !slices.Equal(was[i], is[i]) {
			out = append(out, i+1)
		}
	}
	return out
}
