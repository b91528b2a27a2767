package compile

import (
	"slices"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file keeps by which gauge each row was measured, and notes where that gauge was counted on another fabric.

// basis is what the size of a row rests on.
type basis struct {
	// A stitch that has no gauge, and one whose gauge gives no rows; "" if there is none.
	noWidth, noHeight stitch.ID
}

// lean is a gauge as rows of a part use it, which are worked in some manner, and how many rows do, per size.
type lean struct {
	g *gaugeOf
	manner
	rows []int
}

// manner is how a row of a style is worked with the hook in hand.
func (p *partState) manner(s plan.Style) manner { return manner{wayOf(s), p.inUse} }

// severalRows is the fewest rows that are worth a swatch of their own: fewer are an edging. Common practice, no source.
const severalRows = 4

// measured keeps what the size of a row rests on.
func (p *partState) measured(z int, got content, m manner, textured *gaugeOf) {
	var b basis
	plain := got.plain()
	var room [4]*gaugeOf
	counted := room[:0]
	count := func(g *gaugeOf) {
		if !slices.Contains(counted, g) {
			counted = append(counted, g)
			p.leansOn(g, m)[z]++
		}
	}
	if textured != nil {
		count(textured)
	}
	for _, k := range got.kinds {
		if plain && k.form.Post != stitch.NoPost {
			continue // it stands beside plain stitches, whose gauge decides
		}
		g := p.c.gaugeFor(k.form.ID, m)
		if g == nil && textured == nil {
			b.noWidth = k.form.ID
		}
		if (g == nil || g.rows == nil) && (textured == nil || textured.rows == nil) {
			b.noHeight = k.form.ID
		}
		if g != nil && textured == nil {
			count(g)
		}
	}
	p.basis[z] = append(p.basis[z], b)
}

// leansOn is how many rows lean on a gauge, per size.
func (p *partState) leansOn(g *gaugeOf, m manner) []int {
	for i := range p.leans {
		if l := &p.leans[i]; l.g == g && l.manner == m {
			return l.rows
		}
	}
	p.leans = append(p.leans, lean{g, m, make([]int, p.c.z)})
	return p.leans[len(p.leans)-1].rows
}

// gauged reports a stitch of the rows of a part that has no gauge of its own, whether the length along the rows or their height
// is asked for: a length cannot rest on an estimate. has chooses the rows by their number.
func (p *partState) gauged(z int, has func(number int) bool, tall bool, e lang.Node) bool {
	for i, f := range p.plan.Worked[z] {
		if !has(f.Number) {
			continue
		}
		lacks := p.basis[z][i].noWidth
		if tall {
			lacks = p.basis[z][i].noHeight
		}
		if lacks != "" {
			p.c.noGauge(lacks, e)
			return false
		}
	}
	p.asked = true
	return true
}

// noGauge reports a stitch whose gauge does not tell what is asked for.
func (c *checker) noGauge(id stitch.ID, at lang.Node) {
	c.say(codeNoGauge, at.Span(), diag.Args{"stitch": c.word(id)})
}

// gaugeNotes says where a length rests on a gauge that was counted on another fabric: in rows for what is worked in rounds, or
// with another hook. Rounds that are turned are the same fabric as rows.
func (c *checker) gaugeNotes() {
	for _, g := range c.lines {
		c.gaugeNote(g)
	}
}

func (c *checker) gaugeNote(g *gaugeOf) {
	var ways, hooks []string
	var hook plan.Length
	by := eitherWay
	for _, part := range c.pat.Parts {
		p := c.parts[part.Name]
		if p == nil || !p.asked {
			continue
		}
		for _, k := range p.leans {
			if k.g != g || maxOf(k.rows, all(c.z)) < severalRows {
				continue
			}
			if g.by != eitherWay && k.by != g.by && part.Style != plan.TurnedRounds && !slices.Contains(ways, part.Name) {
				ways, by = append(ways, part.Name), k.by
			}
			if c.hookOf(k.hook) != c.hookOf(g.hook) && (hook == 0 || hook == k.hook) && !slices.Contains(hooks, part.Name) {
				hooks, hook = append(hooks, part.Name), k.hook
			}
		}
	}
	if len(ways) > 0 {
		c.say(codeGaugeWay, g.at, diag.Args{"stitch": g.word, "parts": ways,
			"way": diag.Term{Key: by.key(), N: 2}, "other": diag.Term{Key: g.by.key(), N: 2}, "word": by.key() + "s"})
	}
	if len(hooks) > 0 {
		c.say(codeGaugeHook, g.at, diag.Args{"stitch": g.word, "parts": hooks,
			"hook": mmFigure(hook), "other": mmFigure(c.hookOf(g.hook)), "size": mmText(hook)})
	}
}

// mmText is a size of hook as a source writes it.
func mmText(l plan.Length) string {
	return strconv.FormatFloat(float64(l)/float64(plan.Millimetre), 'f', -1, 64) + " mm"
}

// mmFigure is a size of hook with the decimal sign of the language of the message.
func mmFigure(l plan.Length) diag.PerSize {
	return diag.PerSize{Values: []string{mmText(l)}, All: true}
}

// How much narrower or wider than the stitches on it a starting chain may be before it is noted. With one hook it is about 5 to
// 15 % narrower (common practice, no source).
const (
	chainNarrow = 0.20
	chainWide   = 0.10
)

// chainNote compares the chain that a part starts with and the row worked on it, by their gauges.
func (p *partState) chainNote() {
	c, st := p.c, p.plan.Start.Kind
	g := c.gaugeFor(stitch.Chain, p.manner(p.style))
	if g == nil || st != plan.StartChain && st != plan.StartJoined || len(p.leans) == 0 {
		return
	}
	on := p.leans[0].g // that of the first row
	if c.isOwn(g) != c.isOwn(on) {
		return // a maker counted one of the two alone
	}
	chain, _ := g.sts.Float64()
	row, _ := on.sts.Float64()
	share, than := 1-row/chain, "narrower"
	if share < 0 {
		share, than = -share, "wider"
	}
	if than == "narrower" && share < chainNarrow+1e-9 || than == "wider" && share < chainWide+1e-9 {
		return
	}
	c.say(codeGaugeChain, g.at, diag.Args{"part": p.plan.Name, "share": int(100*share + 0.5), "than": diag.Term{Key: than, N: 1}})
}
