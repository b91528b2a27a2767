package main

import (
	"fmt"
	"strconv"
	"strings"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// This file is the flag --gauge: a source worked at a maker's own gauge.

// gaugeFlag is that of every command that checks a source.
var gaugeFlag = flagDef{name: "--gauge", value: `"dc 18 sts 9 rows"`, many: true, help: text{
	"your own gauge in place of the pattern's, over the same length; several are parted by ;",
	"otra muestra en lugar de la del patrón, sobre la misma longitud; varias se separan con ;"}}

// readGauges reads the flag into the call.
func (c *call) readGauges() *said {
	if !c.has(gaugeFlag.name) {
		return nil
	}
	for one := range strings.SplitSeq(c.flags[gaugeFlag.name], manySeparator) {
		g, ok := compile.ReadOwnGauge(one)
		for _, tag := range lang.Tongues() {
			if !ok { // the source may be in that language
				g, ok = compile.ReadOwnGauge(lang.English(one, tag))
			}
		}
		if !ok {
			s := msgGaugeForm.with("value", strings.TrimSpace(one))
			return &s
		}
		g.Text = strings.Join(strings.Fields(one), " ")
		c.gauges = append(c.gauges, g)
	}
	return nil
}

// misfit says why a gauge of the command line cannot stand in place of one of the source.
func (s *loaded) misfit() said {
	f := s.fault
	why := map[compile.GaugeFaultKind]text{compile.GaugeNoLine: msgGaugeNoLine, compile.GaugeSeveral: msgGaugeSeveral,
		compile.GaugeTwice: msgGaugeTwice, compile.GaugeRepeats: msgGaugeRepeats}[f.Kind]
	if len(f.Near) == 0 {
		why = msgGaugeNone
	}
	return why.with("path", s.file.Name, "value", f.Own.Text, "lines", strings.Join(f.Near, "; "))
}

// gaugeSuffix is what is put to the name of the pages of a pattern at a maker's gauge, so that they never take the place of the
// designer's: -18x9.
func (c *call) gaugeSuffix() string {
	var b strings.Builder
	for _, g := range c.gauges {
		n := strings.Fields(g.Text)
		b.WriteString("-" + n[1])
		if g.Rows != nil {
			b.WriteString("x" + strings.TrimSuffix(n[3], ","))
		}
	}
	return b.String()
}

// changes is the table of what is different at a maker's gauge.
func (c *call) changes(s *loaded, p *plan.Pattern) string {
	var own []string
	for _, g := range c.gauges {
		own = append(own, g.Text)
	}
	var b strings.Builder
	head := msgGaugeHead
	if len(p.Regraded.Changes) == 0 {
		head = msgGaugeSame
	}
	b.WriteString(head.with("path", s.file.Name, "gauges", strings.Join(own, "; ")).in(c.lang) + "\n")
	stays := func() string {
		if len(p.Regraded.Stays) == 0 {
			return b.String()
		}
		return b.String() + msgGaugeStays.with("lines", strings.Join(p.Regraded.Stays, "; ")).in(c.lang) + "\n"
	}
	if len(p.Regraded.Changes) == 0 {
		return stays()
	}
	rows := [][]string{{""}}
	for _, z := range p.Sizes {
		rows[0] = append(rows[0], visible(z.Name))
	}
	yarn := false
	for _, ch := range p.Regraded.Changes {
		yarn = yarn || ch.Of == plan.ChangedYarn
		row := []string{c.changeName(ch)}
		for z := range p.Sizes {
			row = append(row, c.change(ch, z))
		}
		rows = append(rows, row)
	}
	inColumns(&b, rows)
	if yarn {
		b.WriteString(msgGaugeYarn.in(c.lang) + "\n")
	}
	return stays()
}

// changeName is what a change is of, with its unit.
func (c *call) changeName(ch plan.Change) string {
	switch {
	case ch.Of == plan.ChangedYarn:
		return msgYarnOf.with("name", ch.Name).in(c.lang) + " (g)"
	case ch.Old.Lengths != nil || ch.New.Lengths != nil:
		return ch.Name + " (cm)"
	}
	return ch.Name
}

// change is a figure of one size: the old one and the new one, or the one that stays.
func (c *call) change(ch plan.Change, z int) string {
	old, now := c.figure(ch.Old, ch.OldGrams, z), c.figure(ch.New, ch.NewGrams, z)
	if old == now {
		return old
	}
	return old + " → " + now
}

func (c *call) figure(v plan.Value, grams plan.Nums, z int) string {
	whole := v.Counts
	if grams != nil {
		whole = grams
	}
	switch {
	case z < len(whole) && whole[z] != plan.Absent:
		return strconv.Itoa(whole[z])
	case z < len(v.Lengths) && v.Lengths[z] != plan.NoLength:
		text := fmt.Sprintf("%.1f", v.Lengths[z].Cm())
		if c.lang == "es" {
			text = strings.Replace(text, ".", ",", 1)
		}
		return text
	}
	return "–"
}

// inColumns writes rows in columns: what a line is of to the left, figures to the right.
func inColumns(b *strings.Builder, rows [][]string) {
	widths := make([]int, len(rows[0]))
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], source.Cells(cell))
		}
	}
	for _, row := range rows {
		var line strings.Builder
		for i, cell := range row {
			blank := strings.Repeat(" ", widths[i]-source.Cells(cell))
			if i == 0 {
				line.WriteString("  " + cell + blank)
			} else {
				line.WriteString("   " + blank + cell)
			}
		}
		b.WriteString(strings.TrimRight(line.String(), " ") + "\n")
	}
}
