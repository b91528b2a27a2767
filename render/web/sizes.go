package web

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/words"
)

// start is what must be known before the first stitch: sizes, yarn, gauge, tools, and the schematic.
func (v *view) start() {
	s := v.section("start", "")
	s.add("h", el("h2", t(v.l.Say(words.BeforeYouStart))))
	if table := v.sizeTable(); table != nil {
		s.add("sizes", v.scroll(table, words.SizesHead))
	}
	for _, note := range v.l.BodyNotes(v.p) {
		s.add(note, el("p", t(note)).class("small"))
	}
	if d := drawn(draw.Schematic(v.p, schematicW, schematicH, v.langs...)); d != nil {
		s.add("schematic", v.figure(d, false))
	}
	notes := el("div").class("notes")
	for _, f := range v.l.SideNotes(v.p) {
		notes.add(el("div", el("h3", t(f.Head)), para(f.Text)))
	}
	s.add("notes", notes)
	for i, note := range v.p.Notes {
		body := v.prose(note, 3)
		if len(body) == 0 {
			continue
		}
		if i == 0 {
			s.add("notes-head", el("h3", t(v.l.Say(words.NotesHead))))
		}
		s.add(fmt.Sprint("note-", i, "-"), body...)
	}
}

// sizeTable is what the finished piece measures, whom it fits, and how much yarn it takes.
func (v *view) sizeTable() *node {
	table := el("table").class("sizes")
	if len(v.p.Sizes) > 1 {
		tr := el("tr", el("th", t(v.l.Say(words.SizeHead))).with("scope", "col").with("colspan", "3"))
		for i, s := range v.p.Sizes {
			tr.add(el("th", t(v.l.SizeName(s))).with("scope", "col").class(weight(i)))
		}
		table.add(el("thead", tr))
	}
	rows := 0
	group := func(head string, lines []*node) {
		if len(lines) == 0 {
			return
		}
		rows += len(lines)
		tr := el("tr", el("th", t(head)).with("scope", "rowgroup").with("colspan", strconv.Itoa(3+len(v.p.Sizes))))
		table.add(el("tbody", append([]*node{tr}, lines...)...))
	}
	group(v.l.Say(words.FinishedPiece), v.finished())
	group(v.l.Say(words.ToFitBody), v.fitted())
	group(upperFirst(v.l.YarnTableHead(v.p)), v.yarns())
	if rows == 0 {
		return nil
	}
	return table
}

// weight is the class of the column of a size: every second one is heavier, as numbers in the text are.
func weight(i int) string {
	if i%2 == 1 {
		return "n b"
	}
	return "n"
}

func (v *view) finished() []*node {
	var out []*node
	for _, m := range v.p.Measures {
		out = append(out, v.measureLine(v.l.MeasureName(m), m.Letter, m.Values, false))
	}
	return out
}

// fitted lists the measures of the wearer, the openings as far as they stretch, and the ease of what is fitted to the wearer.
func (v *view) fitted() []*node {
	var out []*node
	for _, b := range v.p.Body {
		out = append(out, v.measureLine(v.l.BodyName(b.Name), "", b.Values, b.Memory))
	}
	for _, m := range v.p.Measures {
		if m.Over != nil && !m.Over.Percent.Is(0) {
			out = append(out, v.measureLine(v.l.Stretched(v.p, m), "", m.Over.Stretched, false))
		}
	}
	for _, m := range v.p.Measures {
		if m.Fits != nil && m.Fits.Ease != nil {
			out = append(out, v.measureLine(v.l.Ease(m.Fits.Body), "", m.Fits.Ease, v.p.Remembered(m.Fits.Body)))
		}
	}
	return out
}

// measureLine is a line of the table: centimetres, and inches below them.
func (v *view) measureLine(name, letter string, values plan.Lengths, memory bool) *node {
	tr := el("tr", el("th", t(name)).with("scope", "row"), el("td", t(letter)),
		el("td", t("cm"), el("br"), el("small", t(v.l.InchSign()))).class("unit"))
	for i, length := range values {
		cm, in := v.l.Cm(length), v.l.Inches(length)
		if memory && length != plan.NoLength {
			cm, in = cm+words.FromMemory, in+words.FromMemory
		}
		tr.add(el("td", t(cm), el("br"), el("small", t(in))).class(weight(i)))
	}
	return tr
}

// yarns lists what each yarn takes: balls if the ball is known, else grams; and its length. A yarn whose amount is not known is in the
// notes.
func (v *view) yarns() []*node {
	var out []*node
	for i, y := range v.p.Yarns {
		if len(y.Amount) != len(v.p.Sizes) {
			continue
		}
		letter := ""
		if len(v.p.Yarns) > 1 {
			letter = words.YarnLetter(i)
		}
		grams := func(a plan.YarnAmount) string { return v.l.Number(float64(a.Milligrams)/1000, 0) }
		line := func(name, letter, unit string, value func(plan.YarnAmount) string) {
			tr := el("tr", el("th", t(name)).with("scope", "row"), el("td", t(letter)), el("td", t(unit)).class("unit"))
			for k, a := range y.Amount {
				tr.add(el("td", t(value(a))).class(weight(k)))
			}
			out = append(out, tr)
		}
		name := upperFirst(v.l.YarnName(y))
		if y.Amount[0].Balls == 0 {
			line(name, letter, "g", grams)
		} else {
			line(name, letter, "", func(a plan.YarnAmount) string { return fmt.Sprint(a.Balls) })
		}
		switch a := y.Amount[0]; {
		case a.Length != plan.NoLength && a.Length > 0:
			line(v.l.Say(words.MetersYards), "", "", func(a plan.YarnAmount) string {
				return fmt.Sprintf("%.0f\u00A0(%d)", float64(a.Length)/float64(1000*plan.Millimetre), a.Yards)
			})
		case a.Balls > 0:
			line(v.l.Say(words.Grams), "", "", grams)
		}
	}
	return out
}
