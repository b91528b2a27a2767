package draw

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/words"
)

// The gauge of all fixtures, in centimetres: 2 dc and 1 round of dc to the centimetre, sc 2 to the centimetre.
const (
	stWide = 0.5
	dcHigh = 1.0
	scHigh = 0.5
)

// maker builds a pattern in one size, part by part.
type maker struct{ p *plan.Pattern }

func make1(name, kind string) *maker {
	return &maker{&plan.Pattern{
		Name: name, Title: plan.Text{"en": name, "es": name}, Kind: kind, Languages: []string{"en", "es"},
		Sizes: []plan.Size{{Name: "M", Names: plan.Text{"en": "M", "es": "M"}, Age: -1}},
		Yarns: []plan.Yarn{{Name: "sand", Names: plan.Text{"en": "sand", "es": "arena"}},
			{Name: "kelp", Names: plan.Text{"en": "kelp", "es": "alga"}}, {Name: "clay"}},
	}}
}

// work is a part under construction.
type work struct {
	*plan.Part
	index  int
	closed bool
	p      *plan.Pattern
}

func (m *maker) part(name string, closed bool, start plan.StartKind) *work {
	style := plan.Rows
	if closed {
		style = plan.JoinedRounds
	}
	p := &plan.Part{Name: name, Title: plan.Text{"en": name, "es": name}, Make: 1, Style: style, Start: plan.Start{Kind: start}, Worked: [][]plan.RowFact{nil}}
	m.p.Parts = append(m.p.Parts, p)
	return &work{Part: p, index: len(m.p.Parts) - 1, closed: closed, p: m.p}
}

func cmLength(v float64) plan.Length { return plan.Length(v*10000 + 0.5) }

// row adds a row of so many stitches.
func (w *work) row(sts int, high float64, id stitch.ID) *work {
	n := len(w.Worked[0]) + 1
	taken := sts
	if n > 1 {
		taken = w.Worked[0][n-2].Stitches
	}
	w.Worked[0] = append(w.Worked[0], plan.RowFact{
		Number: n, Stitches: sts, Taken: taken, Width: cmLength(float64(sts) * stWide), Height: cmLength(high), Closed: w.closed,
		Yarn: w.Yarn, Tall: id, Wrong: !w.closed && n%2 == 0, ByForm: plan.Tally[stitch.Form]{{Of: stitch.Form{ID: id, Together: 1}, N: sts}},
	})
	return w
}

func (w *work) dc(counts ...int) *work {
	for _, n := range counts {
		w.row(n, dcHigh, stitch.DC)
	}
	return w
}

// even adds rows as wide as the last one.
func (w *work) even(rows int) *work {
	for range rows {
		w.dc(w.last().Stitches)
	}
	return w
}

// slope adds rows that change to a count evenly.
func (w *work) slope(to, rows int) *work {
	from := w.last().Stitches
	for k := 1; k <= rows; k++ {
		w.dc(from + (to-from)*k/rows)
	}
	return w
}

// narrow adds a row with so many decreases at its beginning or its end, as the pattern prints it.
func (w *work) narrow(n int, beginning bool) *work {
	from := w.last().Stitches
	dec := plan.Instr{Op: plan.Decrease, Form: stitch.Form{ID: stitch.DC, Together: 2}, N: plan.Nums{n}}
	plain := plan.Instr{Op: plan.Work, Form: stitch.Form{ID: stitch.DC, Together: 1}, N: plan.Nums{from - 2*n}}
	w.dc(from - n)
	row := plan.Nums{w.last().Number}
	r := &plan.Row{First: row, Last: row, Times: plan.Nums{1}, Work: []plan.Instr{plain, dec}}
	if beginning {
		r.Work = []plan.Instr{dec, plain}
	}
	w.Steps = append(w.Steps, r)
	return w
}

func (w *work) last() *plan.RowFact { return &w.Worked[0][len(w.Worked[0])-1] }

func (w *work) rib(sts, rows int) *work {
	for range rows {
		w.row(sts, 0.8, stitch.HDC)
		w.last().Texture = plan.Rib
	}
	return w
}

func (w *work) with(yarn int) *work { w.Yarn = yarn; return w }

// on says that the part grows along places of another.
func (w *work) on(kind plan.RefKind, part *work, row, from, to, of int) *work {
	w.From = append(w.From, plan.Origin{Kind: kind, Part: part.index, Row: plan.Nums{row}, From: plan.Nums{from}, To: plan.Nums{to}, Of: plan.Nums{of}})
	return w
}

func (w *work) onFoundation(part *work) *work {
	n := part.Worked[0][0].Stitches
	return w.on(plan.RefFoundation, part, 0, 1, n, n)
}

func (w *work) onEdge(part *work) *work {
	n := part.last().Stitches
	return w.on(plan.RefEdge, part, part.last().Number, 1, n, n)
}

// measure adds a measure with the next letter.
func (m *maker) measure(name string, on ...plan.MeasuredOn) {
	letter := string(rune('A' + len(m.p.Measures)))
	value := 0.0
	for _, t := range on {
		rows := m.p.Parts[t.Part].Worked[0]
		for _, r := range rows {
			switch {
			case t.Kind == plan.Height:
				value += r.Height.Cm()
			case len(t.Row) > 0 && r.Number == t.Row[0]:
				value += r.Width.Cm()
			}
		}
	}
	m.p.Measures = append(m.p.Measures, plan.Measure{
		Name: name, Letter: letter, Text: plan.Text{"en": name, "es": name}, Values: plan.Lengths{cmLength(value)}, Of: on,
		Half: on[0].Kind == plan.Around,
	})
}

func around(w *work, row int) plan.MeasuredOn {
	return plan.MeasuredOn{Kind: plan.Around, Part: w.index, Row: plan.Nums{row}}
}

func widthOf(w *work, row int) plan.MeasuredOn {
	return plan.MeasuredOn{Kind: plan.Width, Part: w.index, Row: plan.Nums{row}}
}

func high(w *work) plan.MeasuredOn { return plan.MeasuredOn{Kind: plan.Height, Part: w.index} }

func (w *work) rows() int { return len(w.Worked[0]) }

// both are the languages in which the drawings of the tests are described.
var both = func() []*words.Language {
	var out []*words.Language
	for _, tag := range []string{"en", "es"} {
		l, err := words.For(tag)
		if err != nil {
			panic(err)
		}
		out = append(out, l)
	}
	return out
}()
