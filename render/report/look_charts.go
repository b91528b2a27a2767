package report

import (
	"maps"
	"regexp"
	"slices"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/lazy"
)

var (
	whyNoCharts    = text{"there is no chart", "no hay ningún gráfico"}
	whyUndrawn     = text{"there is no schematic", "no hay esquema"}
	letterTwice    = text{"the letter {letter} stands for {one} and for {other}", "la letra {letter} vale para {one} y para {other}"}
	chartAlone     = text{"{part}: row {row} stands in the chart alone", "{part}: la hilera {row} solo está en el gráfico"}
	sendsToChart   = text{"{part}: a note sends to a chart: {text}", "{part}: una nota remite a un gráfico: {text}"}
	drawnOtherwise = text{"{chart}: row {row} of size {size} is drawn otherwise than it is worked", "{chart}: la hilera {row} de la talla {size} no está dibujada como se teje"}
	colourNoYarn   = text{"chart {chart} has a colour that is no yarn", "el gráfico {chart} tiene un color que no es de ningún hilo"}
)

// lookChartRows counts the rows that are worked from a grid, and compares those drawn in symbols with what was worked, where nothing
// of them was left out.
func lookChartRows(s *subject) look {
	n := s.rowsWith(func(r workedRow) bool { return r.Chart != nil })
	charts := len(s.p.Charts) + len(s.p.Drawn)
	l := look{why: whyNoCharts, fabric: true}
	for _, c := range s.p.Drawn {
		for z, drawn := range c.Sizes {
			if drawn == nil {
				continue
			}
			for i := range drawn.Lines {
				line := &drawn.Lines[i]
				if line.Base {
					continue
				}
				n++
				f := plan.FactOf(s.p.Parts[c.Part].Worked[z], line.Number)
				if drawn.Left == 0 && !drawn.CutLeft && !drawn.CutRight && (f == nil || !drawnAs(line, f)) {
					l.findings = append(l.findings, s.own(Error, drawnOtherwise, "chart", s.in.Words.StitchChartTitle(s.p, slices.Index(s.p.Drawn, c)),
						"row", strconv.Itoa(line.Number), "size", s.p.Sizes[z].Name))
				}
			}
		}
	}
	if n == 0 && charts > 0 {
		return look{at: []amount{{charts, nCharts}}}
	}
	l.at = []amount{{n, nChartRows}, {charts, nCharts}}
	return l
}

// drawnAs reports whether a line of a chart holds the stitches and spaces of a row.
func drawnAs(line *plan.Line, f *plan.RowFact) bool {
	forms, spaces := map[stitch.Form]int{}, map[int]int{}
	for i := range line.Stitches {
		switch w := &line.Stitches[i]; w.Kind {
		case plan.WorkedStitch:
			forms[w.Form]++
		case plan.WorkedSpace:
			spaces[w.Chains]++
		}
	}
	return maps.Equal(forms, f.ByForm.Map()) && maps.Equal(spaces, f.BySpace.Map())
}

func lookCharts(s *subject) look {
	return look{at: []amount{{len(s.p.Charts) + len(s.p.Drawn), nCharts}}, why: whyNoCharts}
}

// lookChartColours looks up every cell of a colour chart among the yarns.
func lookChartColours(s *subject) look {
	n := 0
	l := look{why: whyNoCharts}
	for _, c := range s.p.Charts {
		if c.Mesh.Behind > 0 {
			continue
		}
		n++
		for _, row := range c.Rows {
			for _, yarn := range row {
				if yarn < 0 || yarn >= len(s.p.Yarns) {
					l.findings = append(l.findings, s.own(Error, colourNoYarn, "chart", c.Name))
				}
			}
		}
	}
	l.at = []amount{{n, nCharts}}
	return l
}

// lookSchematic looks at the letters of the drawing: each stands for one measure.
func lookSchematic(s *subject) look {
	l := look{why: whyUndrawn, fabric: true}
	n := 0
	named := map[string]plan.Measure{}
	for _, m := range s.p.Measures {
		if m.Letter == "" {
			continue
		}
		n++
		if was, twice := named[m.Letter]; twice {
			l.findings = append(l.findings, s.own(Error, letterTwice, "letter", m.Letter,
				"one", s.in.Words.MeasureName(was), "other", s.in.Words.MeasureName(m)))
		}
		named[m.Letter] = m
		l.notes = append(l.notes, m.Letter+" "+s.in.Words.MeasureName(m)+": "+s.cms(m.Values))
	}
	l.at = []amount{{n, nLettered}}
	return l
}

// toChart are the phrases of an author's text that send the maker to a chart.
var toChart = map[string]func() *regexp.Regexp{
	"en": lazy.Regexp(`(?i)\b(follow|following|according to|as in|from|see) (the )?(chart|diagram)\b`),
	"es": lazy.Regexp(`(?i)(seguir|siguiendo|según|como en|ver) (el )?(gráfico|diagrama|esquema)`),
}

// lookChartOnly looks at every row that is worked from a chart: it must say in words what is worked. A note of the author that
// sends to a chart is pointed at.
func lookChartOnly(s *subject) look {
	l := look{why: whyNoCharts}
	n := 0
	for _, r := range s.rows {
		if r.Chart == nil {
			continue
		}
		if n++; len(r.Work) == 0 {
			l.findings = append(l.findings, s.own(Error, chartAlone, "part", s.in.Words.PartTitle(s.p, s.partIndex(r.part)), "row", s.numbers(r.First)))
		}
	}
	l.findings = append(l.findings, s.notesThat(toChart, sendsToChart)...)
	l.at = []amount{{n, nChartRows}}
	return l
}

// lookUnsewn says that there is a drawing to compare.
func lookUnsewn(s *subject) look {
	return look{at: lookSchematic(s).at, why: whyUndrawn, fabric: true, person: true}
}
