package compile

import (
	"math"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// materials reads gauge, hook and yarns.
func (c *checker) materials() {
	c.readGauges() // first, since swatches rest on it
	body := slices.Clone(c.file.Body)
	for _, h := range blocks[*lang.Pattern](c.file.Body) {
		body = append(body, blocks[*lang.Hook](h.Body)...)
	}
	for _, s := range body {
		switch n := s.Node.(type) {
		case *lang.Hook:
			h := c.hookSize(n)
			c.addHook(h, n.Span())
			c.out = append(c.out, standard.CheckHook(h, n.Span())...)
		case *lang.Notion:
			c.readNotion(n)
		case *lang.Yarn:
			c.readYarn(s, n)
		}
	}
	c.yarnOfAll = -1
	for _, h := range blocks[*lang.Pattern](c.file.Body) {
		for _, s := range blocks[*lang.Yarn](h.Body) {
			n := s.Node.(*lang.Yarn)
			if i, ok := c.yarnAt[n.Name.Text]; ok {
				c.yarnOfAll = i
			} else {
				c.noYarn(n.Name)
			}
		}
	}
}

// readNotion reads something else that is needed: a number of it, a length, or a weight, in whole grams.
func (c *checker) readNotion(n *lang.Notion) {
	out := plan.Notion{Text: c.text(n.Text, n)}
	if n.Amount != nil {
		v := c.value(n.Amount, nil)
		switch {
		case v.Unknown:
		case v.Dim == value.Count:
			out.N, _ = v.Counts(&scope{c: c}, n.Amount.E)
		case v.Dim == value.Length:
			out.Length = v.Lengths()
		case v.Dim == value.Mass:
			out.Grams = c.nums(plan.Absent)
			for z, x := range v.N {
				if x != nil {
					g, _ := x.Float64()
					out.Grams[z] = int(math.Ceil(g))
				}
			}
		default:
			c.say(codeNotion, n.Amount.Span(), nil)
		}
	}
	c.pat.Notions.Others = append(c.pat.Notions.Others, out)
	c.things = append(c.things, c.notionFact(n, out))
}

func (c *checker) hookSize(n *lang.Hook) plan.Length { return c.length(n.Size) }

func (c *checker) addHook(l plan.Length, at source.Span) {
	if l == 0 {
		return
	}
	if _, said := c.hookAt[l]; !said {
		c.hookAt[l] = at
	}
	for _, h := range c.pat.Hooks {
		if h == l {
			return
		}
	}
	c.pat.Hooks = append(c.pat.Hooks, l)
}

func (c *checker) readYarn(s *lang.Statement, n *lang.Yarn) {
	if !c.declare(n.Name) {
		return
	}
	y := plan.Yarn{Name: n.Name.Text}
	if n.Like != nil {
		i, ok := c.yarnAt[n.Like.Text]
		if !ok {
			c.noYarn(n.Like)
		} else {
			y = c.pat.Yarns[i]
			y.Name = n.Name.Text
			y.Names = nil
		}
	}
	facts := yarnFacts{}
	if n.Like != nil {
		if i, ok := c.yarnAt[n.Like.Text]; ok {
			facts = c.facts[i]
		}
	}
	facts.head = s.Head
	for _, b := range s.Body {
		c.yarnLine(&y, &facts, b)
	}
	if y.Names == nil {
		y.Names = plan.Text{}
		for _, l := range c.pat.Languages {
			y.Names[l] = y.Name
		}
		if len(c.pat.Languages) > 1 {
			c.say(codeNoTranslation, s.Head, diag.Args{"languages": c.pat.Languages})
		}
	}
	c.yarnAt[n.Name.Text] = len(c.pat.Yarns)
	c.pat.Yarns = append(c.pat.Yarns, y)
	c.facts = append(c.facts, facts)
}

func (c *checker) yarnLine(y *plan.Yarn, f *yarnFacts, b *lang.Statement) {
	switch m := b.Node.(type) {
	case *lang.YarnName:
		y.Names = c.text(m.Text, m)
	case *lang.Weight:
		for i, w := range m.Words {
			if i == 0 {
				y.Weight = w.Text
				continue
			}
			y.Weight += " " + w.Text
		}
		w, found := standard.CheckWeight(y.Weight, m.Span())
		c.out = append(c.out, found...)
		f.weight, f.at = w, m.Span()
	case *lang.Fibre:
		c.fibres(y, m)
	case *lang.Surface:
		f.surface, _ = read(c, m.Word, "surface", surfaces)
	case *lang.Ball:
		if mg := c.value(m.Weight, nil).Milligrams(); len(mg) > 0 {
			y.BallWeight = mg[0]
		}
		if ls := c.value(m.Length, nil).Lengths(); len(ls) > 0 {
			y.BallLength = ls[0]
		}
	case *lang.Swatch:
		c.readSwatch(y, f, m)
	}
}

// fibres reads what a yarn is made of.
func (c *checker) fibres(y *plan.Yarn, m *lang.Fibre) {
	y.Fibre = nil
	var each []source.Span
	for _, it := range m.Items {
		v := c.value(it.Value, nil).At(0)
		if v.N == nil {
			return
		}
		p, _ := v.N.Float64()
		y.Fibre = append(y.Fibre, plan.Share{Fibre: it.Name.Text, Percent: int(p + 0.5)})
		each = append(each, it.Span())
	}
	c.out = append(c.out, standard.CheckFibres(y.Fibre, each, m.Span())...)
}

func (c *checker) noYarn(n *lang.Name) {
	var known []string
	for _, y := range c.pat.Yarns {
		known = append(known, y.Name)
	}
	c.say(codeNoYarn, n.Span(), diag.Args{"word": n.Text, "near": lang.Near(n.Text, known)})
}

// yarn finds a yarn by name, -1 if there is none.
func (c *checker) yarn(n *lang.Name) int {
	if n == nil {
		return -1
	}
	if i, ok := c.yarnAt[n.Text]; ok {
		c.used[i] = true
		return i
	}
	c.noYarn(n)
	return -1
}
