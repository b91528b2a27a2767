package report

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// Table is a table with a line for each thing and, from column First on, a column for each size.
type Table struct {
	Title string
	Head  []string
	Rows  [][]string
	First int
	Note  string // what the figures are
}

var (
	tMeasures = text{"Finished measurements", "Medidas terminadas"}
	tRounding = text{"Lengths made into counts", "Longitudes convertidas en puntos o hileras"}
	tYarn     = text{"Yarn", "Hilo"}

	inCm          = text{"in centimetres", "en centímetros"}
	wantedLine    = text{"wanted", "se quería"}
	missLine      = text{"off by", "diferencia"}
	bodyLine      = text{"of the wearer: {what}", "de quien lo lleva: {what}"}
	easeLine      = text{"ease", "holgura"}
	stretchedLine = text{"stretched", "al estirarse"}
	largestLine   = text{"largest of the growth table: {what}", "mayor de la tabla de crecimiento: {what}"}
	sampleLine    = text{"of the sample", "de la pieza de prueba"}
	rowsUnit      = text{"rows", "hileras"}
	roundsUnit    = text{"rounds", "vueltas"}
	stsUnit       = text{"stitches", "puntos"}
	chainsUnit    = text{"chains", "cadenas"}
	timesUnit     = text{"times", "veces"}
	roundedNote   = text{
		"the count, and by how many millimetres it measures more (+) or less (−) than was asked for; * set by hand",
		"el número, y cuántos milímetros mide de más (+) o de menos (−) respecto a lo pedido; * puesto a mano"}
	yarnNote = text{"what each size needs, with the allowance", "lo que necesita cada talla, con el margen"}
	grams    = text{"g", "g"}
	balls    = text{"balls", "ovillos"}
	metres   = text{"m", "m"}
	rowHead  = text{"row", "hilera"}

	motifsLine  = text{"motifs", "motivos"}
	sharedLine  = text{"shared sides", "lados comunes"}
	sidesLine   = text{"joins at sides", "uniones en los lados"}
	cornersLine = text{"joins at corners", "uniones en las esquinas"}
)

// tables are the tables of figures: what the piece measures and whom it fits, how lengths were made whole, how much yarn.
func (s *subject) tables() []Table {
	var out []Table
	for _, t := range []Table{s.measureTable(), s.roundingTable(), s.yarnTable()} {
		if len(t.Rows) > 0 {
			t.Head = append(t.Head, s.sizeNames()...)
			out = append(out, t)
		}
	}
	return out
}

func (s *subject) sizeNames() []string {
	var out []string
	for _, z := range s.p.Sizes {
		out = append(out, s.in.Words.SizeName(z))
	}
	return out
}

func (s *subject) measureTable() Table {
	t := Table{Title: tMeasures.in(s.in.Lang), Head: []string{""}, First: 1, Note: inCm.in(s.in.Lang)}
	add := func(name string, list plan.Lengths, write func(plan.Length) string) {
		row := []string{name}
		for _, v := range list {
			if v == plan.NoLength {
				row = append(row, dash)
				continue
			}
			row = append(row, write(v))
		}
		t.Rows = append(t.Rows, row)
	}
	for _, m := range s.p.Measures {
		name := s.in.Words.MeasureName(m)
		if m.Letter != "" {
			name = m.Letter + "  " + name
		}
		add(name, m.Values, s.cm)
		if m.Wanted != nil {
			add("   "+wantedLine.in(s.in.Lang), m.Wanted, s.cm)
			add("   "+missLine.in(s.in.Lang), differences(m.Values, m.Wanted), s.signedCm)
		}
		if f := m.Fits; f != nil && f.Ease != nil {
			add("   "+bodyLine.with(s.in.Lang, "what", s.in.Words.BodyName(f.Body)), f.Values, s.remembered(f.Body, s.cm))
			add("   "+easeLine.in(s.in.Lang), f.Ease, s.remembered(f.Body, s.signedCm))
		}
		if o := m.Over; o != nil {
			if !o.Percent.Is(0) {
				add("   "+stretchedLine.in(s.in.Lang), o.Stretched, s.cm)
			}
			line := bodyLine
			if o.Assumed {
				line = largestLine
			}
			add("   "+line.with(s.in.Lang, "what", s.in.Words.BodyName(o.Body)), o.Values, s.remembered(o.Body, s.cm))
		}
		if k := s.p.Sample; k != nil {
			for _, f := range k.Measures {
				if f.Name == m.Name {
					list := make(plan.Lengths, s.z)
					for z := range list {
						list[z] = plan.NoLength
					}
					list[k.Size] = f.Found
					add("   "+sampleLine.in(s.in.Lang), list, s.cm)
				}
			}
		}
	}
	if notes := s.in.Words.BodyNotes(s.p); len(notes) > 0 {
		t.Note += ". " + strings.Join(notes, " ")
	}
	return t
}

// remembered writes a length that rests on a measure of the wearer, with the mark of a figure from memory where that is one.
func (s *subject) remembered(body string, write func(plan.Length) string) func(plan.Length) string {
	if !s.p.Remembered(body) {
		return write
	}
	return func(l plan.Length) string { return write(l) + words.FromMemory }
}

func differences(a, b plan.Lengths) plan.Lengths {
	out := make(plan.Lengths, len(a))
	for i := range a {
		if out[i] = plan.NoLength; i < len(b) && a[i] != plan.NoLength && b[i] != plan.NoLength {
			out[i] = a[i] - b[i]
		}
	}
	return out
}

func (s *subject) signedCm(l plan.Length) string {
	if text := s.cm(l); l <= 0 || text == "0" {
		return text
	}
	return "+" + s.cm(l)
}

// roundingTable lists the lengths that became counts, each with what it misses.
func (s *subject) roundingTable() Table {
	t := Table{Title: tRounding.in(s.in.Lang), Head: []string{""}, First: 1, Note: roundedNote.in(s.in.Lang)}
	for i := range s.p.Rounded {
		r := &s.p.Rounded[i]
		row := []string{s.roundedName(r)}
		for z, miss := range r.Errors() {
			switch {
			case r.Counts[z] == plan.Absent:
				row = append(row, dash)
				continue
			case miss == plan.NoLength:
				row = append(row, s.number(r.Counts[z]))
				continue
			}
			cell := s.number(r.Counts[z]) + " (" + s.signedMm(miss) + ")"
			if r.ByHand != nil && r.ByHand[z] {
				cell += "*"
			}
			row = append(row, cell)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func (s *subject) signedMm(l plan.Length) string {
	text := s.in.Words.Number(float64(l)/float64(plan.Millimetre), 0)
	if text == "0" || text == "−0" {
		return "0"
	}
	if l > 0 {
		return "+" + text
	}
	return text
}

// roundedName says what a rounded length is: the value it stands in, or the part and row.
func (s *subject) roundedName(r *plan.Rounded) string {
	unit := stsUnit
	switch r.Unit {
	case plan.UnitRows:
		unit = rowsUnit
		if r.Part >= 0 && r.Part < len(s.p.Parts) && s.p.Parts[r.Part].Style != plan.Rows {
			unit = roundsUnit
		}
	case plan.UnitChains:
		unit = chainsUnit
	case plan.UnitRepeats:
		unit = timesUnit
	}
	name := r.Let
	if name == "" && r.Part >= 0 && r.Part < len(s.p.Parts) {
		name = s.in.Words.PartTitle(s.p, r.Part)
		if r.Row != "" {
			name += " · " + r.Row
		}
	}
	name = strings.TrimSpace(name + ", " + unit.in(s.in.Lang))
	file, n := s.in.texts().line(r.Span.Start)
	name += " (" + said(file, n, s.in.Lang) + ")"
	return strings.TrimPrefix(name, ", ")
}

func (s *subject) yarnTable() Table {
	t := Table{Title: tYarn.in(s.in.Lang), Head: []string{""}, First: 1, Note: yarnNote.in(s.in.Lang)}
	for _, y := range s.p.Yarns {
		if len(y.Amount) != s.z {
			continue
		}
		lines := []struct {
			unit text
			of   func(a plan.YarnAmount) string
		}{
			{grams, func(a plan.YarnAmount) string { return s.in.Words.Number(float64(a.Milligrams)/1000, 0) }},
			{metres, func(a plan.YarnAmount) string {
				if a.Length == plan.NoLength || a.Length <= 0 {
					return dash
				}
				return s.in.Words.Number(a.Length.Cm()/100, 0)
			}},
			{balls, func(a plan.YarnAmount) string {
				if a.Balls == 0 {
					return dash
				}
				return s.number(a.Balls)
			}},
		}
		for _, line := range lines {
			row := []string{s.in.Words.YarnName(y) + ", " + line.unit.in(s.in.Lang)}
			for _, a := range y.Amount {
				row = append(row, line.of(a))
			}
			t.Rows = append(t.Rows, row)
		}
	}
	return t
}

// Aligned writes the lines of a table in columns: the second column of a table of counts and the first of any other to the
// left, figures to the right.
func (t Table) Aligned() string {
	rows := append([][]string{t.Head}, t.Rows...)
	widths := make([]int, len(t.Head))
	for _, row := range rows {
		for i, cell := range row {
			widths[i] = max(widths[i], len([]rune(cell)))
		}
	}
	var b strings.Builder
	for _, row := range rows {
		var line strings.Builder
		for i, cell := range row {
			blank := strings.Repeat(" ", widths[i]-len([]rune(cell)))
			if i == t.First-1 {
				line.WriteString("  " + cell + blank)
			} else {
				line.WriteString("  " + blank + cell)
			}
		}
		b.WriteString(strings.TrimRight(line.String(), " ") + "\n")
	}
	return b.String()
}
