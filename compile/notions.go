package compile

import (
	"regexp"
	"slices"
	"strings"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
)

// This file reads buttons and gathers what is needed besides yarn: every tool that is used is listed, and every one that is
// listed is used.

// button reads buttons: one for each place of a label, or a number. It reports whether there are any to sew on.
func (c *checker) button(n *lang.Button, f *plan.Finishing) bool {
	b := plan.Buttons{N: c.nums(1)}
	if ls := c.value(n.Size, nil).Lengths(); len(ls) > 0 {
		b.Size = ls[0]
	}
	if _, ok := read(c, n.Material, "material", notionMaterials); ok {
		b.Material = n.Material.Text
	}
	if n.N != nil {
		if b.N = c.cnt(n.N, nil); b.N == nil {
			return false
		}
	}
	if n.For != nil {
		holes := c.holes(n.For)
		if holes == nil {
			return false
		}
		if n.N != nil && !c.asMany(n, b.N, holes) {
			return false
		}
		b.N = holes
	} else if !c.unbuttoned {
		c.unbuttoned = c.withoutButton(n)
	}
	f.Buttons = b
	c.pat.Notions.Buttons = append(c.pat.Notions.Buttons, b)
	return true
}

// holes counts the places that buttons are for; nil if there are none of that name, which was said.
func (c *checker) holes(ref *lang.Ref) plan.Nums {
	p := c.parts[ref.Path[0]]
	if p == nil || len(ref.Path) != 2 {
		c.say(codeNoName, ref.Span(), diag.Args{"word": c.file.Source.Slice(ref.Span()), "near": []string(nil)})
		return nil
	}
	out, known := c.nums(0), false
	for z := range out {
		if p.fab[z].Halted() {
			return nil // something failed before
		}
		if k, fl := p.fab[z].CountIn(ref.Path[1]); fl == nil {
			out[z], known = k, true
		}
	}
	if !known {
		c.say(codeNoName, ref.Span(), diag.Args{"word": c.file.Source.Slice(ref.Span()), "near": lang.Near(ref.Path[1], keys(p.names))})
		return nil
	}
	return out
}

// asMany compares a number of buttons with the places they are for.
func (c *checker) asMany(n *lang.Button, have, holes plan.Nums) bool {
	bad := newSpread(c)
	for z := range holes {
		if have[z] != holes[z] {
			bad.add(z, holes[z], have[z])
		}
	}
	if !bad.any() {
		return true
	}
	c.report(diag.Diagnostic{Code: codeButtonHoles, Span: n.N.Span(), Sizes: bad.sizes(), Args: diag.Args{
		"have": bad.per(bad.have), "need": bad.per(bad.need), "name": c.file.Source.Slice(n.For.Span())}})
	return false
}

// holeName is how a place for a button is named, in English or Spanish. The words are ours.
var holeName = lazy.Regexp(`(?i)hole|ojal`)

// withoutButton warns of buttons that are said to be for no places, though some places are named like holes and no button is for
// them.
func (c *checker) withoutButton(n *lang.Button) bool {
	taken := map[string]bool{}
	for _, s := range blocks[*lang.Finish](c.file.Body) {
		for _, b := range blocks[*lang.Button](s.Body) {
			if r := b.Node.(*lang.Button).For; r != nil {
				taken[strings.Join(r.Path, ".")] = true
			}
		}
	}
	for _, pl := range c.pat.Parts {
		p := c.parts[pl.Name]
		for _, name := range p.fab[0].Names() {
			k, f := p.fab[0].CountIn(name)
			if full := pl.Name + "." + name; f == nil && k > 0 && holeName().MatchString(name) && !taken[full] {
				c.say(codeUnbuttoned, n.Span(), diag.Args{"name": full})
				return true
			}
		}
	}
	return false
}

// notions gathers what is needed besides yarn and hook.
func (c *checker) notions() {
	no := &c.pat.Notions
	for _, p := range c.parts {
		m := p.maxMarks
		if p.style == plan.SpiralRounds {
			m++ // the first stitch of the round
		}
		no.Markers = max(no.Markers, m)
		no.Needle = no.Needle || slices.ContainsFunc(p.plan.Steps, func(s plan.Step) bool {
			f, ok := s.(*plan.Fasten)
			return ok && (f.Close != "" || f.Off || f.Tail)
		})
	}
	for i := range c.pat.Finish {
		f := &c.pat.Finish[i]
		switch f.Kind {
		case plan.SewRuns, plan.SewButtons, plan.WeaveEnds:
			no.Needle = true
		case plan.MakeCord:
			no.Pin = no.Pin || f.Through != nil
			no.Needle = no.Needle || f.Fixed || f.Ends > plan.EndsKnotted
		case plan.ThreadElastic:
			no.Pin, no.Needle = true, true
			no.Elastic = append(no.Elastic, plan.Elastic{Width: f.Width, Length: f.Length})
		case plan.MakePompom:
			no.Needle = true
			c.pompom(f)
		}
	}
	c.hooksUnused()
	c.notionsTwice()
}

// pompom notes the former that a pompom is wound on, and how much yarn it takes.
func (c *checker) pompom(f *plan.Finishing) {
	no := &c.pat.Notions
	for _, l := range f.Length {
		if l > 0 && !slices.Contains(no.Formers, l) {
			no.Formers = append(no.Formers, l)
		}
		if l > 0 && f.Wraps > 0 {
			mm, _ := figure.PompomYarn(f.Wraps, l).Float64()
			f.Winds = append(f.Winds, micro(mm*float64(plan.Millimetre)))
		}
	}
}

// hooksUnused warns of hooks that are listed and that nothing is worked with. Where some part failed that is not known.
func (c *checker) hooksUnused() {
	if c.anyFailed() || !slices.ContainsFunc(c.pat.Parts, func(p *plan.Part) bool { return len(p.Steps) > 0 }) {
		return
	}
	for _, h := range c.pat.Hooks {
		if !c.hookUsed[h] {
			c.say(codeHookUnused, c.hookAt[h], diag.Args{"hook": mmFigure(h)})
		}
	}
}

// derived are the things a page lists by itself, by the words for them, and whether it does.
var derived = []struct {
	words func() *regexp.Regexp
	thing string
	there func(n *plan.Notions) bool
}{
	{lazy.Regexp(`(?i)\b(yarn|tapestry|darning) needle|\baguja (lanera|de lana)`), "needle", func(n *plan.Notions) bool { return n.Needle }},
	{lazy.Regexp(`(?i)\bstitch marker|\bmarcador`), "marker", func(n *plan.Notions) bool { return n.Markers > 0 }},
	{lazy.Regexp(`(?i)\bsafety pin|\bimperdible`), "safety pin", func(n *plan.Notions) bool { return n.Pin }},
	{lazy.Regexp(`(?i)\bbuttons?\b|\bbot(ón|ones)\b`), "button", func(n *plan.Notions) bool { return n.Buttons != nil }},
	{lazy.Regexp(`(?i)\belastic\b|\bgoma elástica\b`), "elastic", func(n *plan.Notions) bool { return n.Elastic != nil }},
}

// notionsTwice notes things that are listed by hand though the rows and the finishing list them already.
func (c *checker) notionsTwice() {
	for _, s := range blocks[*lang.Notion](c.file.Body) {
		n := s.Node.(*lang.Notion)
		for _, d := range derived {
			if d.there(&c.pat.Notions) && slices.ContainsFunc(n.Text, func(t *lang.Bi) bool { return d.words().MatchString(t.Text.Text) }) {
				c.say(codeNotionTwice, n.Span(), diag.Args{"thing": diag.Term{Key: d.thing, N: 1}})
				break
			}
		}
	}
}
