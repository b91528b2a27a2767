package report

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/words"
)

var (
	whyNoGauges   = text{"the source gives no gauge", "el patrón no da ninguna muestra"}
	whyNoMeasures = text{"no measurement is given", "no se da ninguna medida"}
	whyNoBody     = text{"nothing is compared with the wearer", "nada se compara con quien lo lleva"}
	whyNoSums     = text{"no measurement is made of several lengths", "ninguna medida se compone de varias longitudes"}
	whyNoOnly     = text{"everything is for all sizes", "todo vale para todas las tallas"}
	whyNoLists    = text{"nothing differs from size to size", "nada cambia de una talla a otra"}
	whyNoYarnHook = text{"yarn class, hook or gauge are not given", "faltan el grosor del hilo, el ganchillo o la muestra"}
	whyNoHead     = text{"no measurement is compared with a head or a foot", "ninguna medida se compara con la cabeza o el pie"}

	whyNoSample    = text{"the source tells of no sample", "el patrón no habla de ninguna pieza de prueba"}
	sampleMeasured = text{"{measure}: {found} cm on the sample, {worked} cm by counts and gauge", "{measure}: {found} cm en la pieza de prueba, {worked} cm según los puntos y la muestra"}
	blockingUnsaid = text{"{n}: not said whether before or after blocking", "{n}: no se dice si antes o después de bloquear"}
	rowsUngauged   = text{"the size of {rows} is not known for want of a gauge: {stitches}", "no se conoce la medida de {rows} por falta de muestra: {stitches}"}
	noMeasures     = text{"the pattern gives no finished measurement", "el patrón no da ninguna medida terminada"}
	notFinished    = text{"{measure}: no value for {size}", "{measure}: falta el valor de {size}"}
	figureOff      = text{"{measure}, {size}: {have} cm are given, and counts and gauge make {need} cm", "{measure}, {size}: se dan {have} cm, y de los puntos y la muestra salen {need} cm"}
	unitMissing    = text{"{edition}: {measure}, {size}: {what} is not on the pages", "{edition}: {measure}, {size}: {what} no está en las páginas"}
	sizeFalls      = text{"{measure}: {large} is no larger than {small}", "{measure}: {large} no es mayor que {small}"}
	sectionIsNone  = text{"{part}, {size}: row {row} has no stitches", "{part}, {size}: la hilera {row} no tiene puntos"}
)

// lookGauges looks whether the source says of each gauge that its swatch was blocked or not; over which length it was counted
// is looked at where it is checked.
func lookGauges(s *subject) look {
	l := look{at: []amount{{len(s.p.Gauges), nGauges}}, why: whyNoGauges, answered: true}
	unsaid := 0
	for _, g := range s.p.Gauges {
		if g.Blocked == plan.BlockingUnsaid {
			unsaid++
		}
	}
	if unsaid > 0 {
		l.answered = false
		l.findings = append(l.findings, s.own(Note, blockingUnsaid, "n", amount{unsaid, nGauges}.in(s)))
	}
	return l
}

func lookUngauged(s *subject) look {
	l := look{at: s.workedAmounts(), why: whyNoRows, fabric: true}
	n, stitches := s.ungauged()
	if n == 0 {
		return l
	}
	l.findings = []Finding{s.own(Note, rowsUngauged, "rows", amount{n, nRows}.in(s), "stitches", strings.Join(stitches, ", "))}
	return l
}

func lookPlausible(s *subject) look {
	n := 0
	for _, y := range s.p.Yarns {
		if y.Weight != "" {
			n++
		}
	}
	if len(s.p.Gauges) == 0 || len(s.p.Hooks) == 0 {
		n = 0
	}
	return look{at: []amount{{n, nYarns}, {len(s.p.Gauges), nGauges}}, why: whyNoYarnHook}
}

func lookMeasures(s *subject) look {
	l := look{at: []amount{{len(s.p.Measures), nMeasures}, {s.z, nSizes}}, why: whyNoMeasures, fabric: true}
	if len(s.p.Measures) == 0 && !s.errors && !s.finds("T20") {
		l.findings = []Finding{s.own(Note, noMeasures)}
	}
	for _, m := range s.p.Measures {
		for z, v := range m.Values {
			if v == plan.NoLength {
				l.findings = append(l.findings, s.own(Warning, notFinished, "measure", s.in.Words.MeasureName(m), "size", s.in.Words.SizeName(s.p.Sizes[z])))
			}
		}
	}
	return l
}

// sameWithin is how far a figure may be from the one that is worked out again: rounding of single rows.
const sameWithin = plan.Millimetre

// lookFigures works out the measures again from the rows, as far as it is said where they are taken.
func lookFigures(s *subject) look {
	n := 0
	var findings []Finding
	for _, m := range s.p.Measures {
		for z, have := range m.Values {
			if have == plan.NoLength {
				continue
			}
			n++
			if need, ok := s.again(m, z); ok && (need-have > sameWithin || have-need > sameWithin) {
				findings = append(findings, s.own(Error, figureOff, "measure", s.in.Words.MeasureName(m),
					"size", s.in.Words.SizeName(s.p.Sizes[z]), "have", s.cm(have), "need", s.cm(need)))
			}
		}
	}
	l := look{at: []amount{{n, nFigures}, {len(s.p.Rounded), nRounded}}, why: whyNoMeasures, findings: findings, fabric: true}
	return l
}

// again adds up a measure from the rows of a size; ok is false where it is not taken at rows alone.
func (s *subject) again(m plan.Measure, z int) (sum plan.Length, ok bool) {
	if len(m.Of) == 0 {
		return 0, false
	}
	for _, of := range m.Of {
		v, known := s.taken(of, z)
		if !known {
			return 0, false
		}
		if of.Minus {
			v = -v
		}
		sum += v
	}
	return sum, true
}

func (s *subject) taken(of plan.MeasuredOn, z int) (plan.Length, bool) {
	if of.Part < 0 || of.Part >= len(s.p.Parts) {
		return 0, false
	}
	rows := s.p.Parts[of.Part].Worked[z]
	switch of.Kind {
	case plan.Height:
		sum := plan.Length(0)
		for _, f := range rows {
			if f.Height == plan.NoLength {
				return 0, false
			}
			sum += f.Height
		}
		return sum, len(rows) > 0 && s.p.Parts[of.Part].Grid == nil
	case plan.Across:
		sum := plan.Length(0)
		for _, f := range rows {
			if f.Height == plan.NoLength {
				return 0, false
			}
			if of.Row == nil || f.Number <= of.Row[z] {
				sum += 2 * f.Height
			}
		}
		return sum, len(rows) > 0
	case plan.Around, plan.Width:
		if of.Row == nil {
			return 0, false
		}
		for _, f := range rows {
			if f.Number == of.Row[z] {
				return f.Width, f.Width != plan.NoLength
			}
		}
	}
	return 0, false
}

// lookLeading looks at the first measure that is compared with the wearer: the one by which a size is chosen.
func lookLeading(s *subject) look {
	for _, m := range s.p.Measures {
		if m.Fits == nil {
			continue
		}
		l := look{at: []amount{{s.z, nSizes}}, notes: []string{s.in.Words.MeasureName(m) + ": " + s.cms(m.Values)}, fabric: true}
		return l
	}
	return look{why: whyNoBody, fabric: true}
}

func lookEase(s *subject) look {
	n := 0
	l := look{why: whyNoBody, fabric: true}
	for _, m := range s.p.Measures {
		if m.Fits != nil && m.Fits.Ease != nil {
			n++
			note := s.in.Words.Ease(m.Fits.Body) + ": " + s.cms(m.Fits.Ease)
			if s.p.Remembered(m.Fits.Body) {
				note += words.FromMemory
			}
			l.notes = append(l.notes, note)
		}
	}
	l.at = []amount{{n, nMeasures}, {s.z, nSizes}}
	return l
}

func lookLists(s *subject) look {
	return look{at: []amount{{s.in.Source.Lists, nLists}, {s.z, nSizes}}, why: whyNoLists}
}

// lookSteps looks at the steps from size to size of what was made from lengths and of the measures.
func lookSteps(s *subject) look {
	n := 0
	var findings []Finding
	for _, m := range s.p.Measures {
		for z := 1; z < len(m.Values); z++ {
			a, b := m.Values[z-1], m.Values[z]
			if a == plan.NoLength || b == plan.NoLength {
				continue
			}
			if n++; b < a {
				findings = append(findings, s.own(Warning, sizeFalls, "measure", s.in.Words.MeasureName(m),
					"small", s.in.Words.SizeName(s.p.Sizes[z-1]), "large", s.in.Words.SizeName(s.p.Sizes[z])))
			}
		}
	}
	n += len(s.p.Rounded) * (s.z - 1)
	return look{at: []amount{{n, nSteps}}, why: whyOneSize, findings: findings, fabric: true}
}

func lookOnly(s *subject) look {
	if s.in.Source.Only == 0 {
		return look{at: []amount{{s.in.Source.ByHand, nByHand}}, why: whyNoOnly}
	}
	return look{at: []amount{{s.in.Source.Only, nOnly}, {s.in.Source.ByHand, nByHand}}, why: whyNoOnly}
}

// lookGrowth looks for rows that have shrunk to nothing.
func lookGrowth(s *subject) look {
	l := look{at: s.workedAmounts(), why: whyNoRows, fabric: true}
	for i, part := range s.p.Parts {
		for z, rows := range part.Worked {
			for _, f := range rows {
				if f.Stitches+f.Spaces+f.Slips <= 0 {
					l.findings = append(l.findings, s.own(Error, sectionIsNone, "part", s.in.Words.PartTitle(s.p, i),
						"size", s.in.Words.SizeName(s.p.Sizes[z]), "row", s.number(f.Number)))
				}
			}
		}
	}
	return l
}

// goesOver are the measures of the wearer that an opening must let through.
var goesOver = map[string]bool{"head": true, "foot": true, "heel": true}

func lookOpenings(s *subject) look {
	n := 0
	l := look{why: whyNoHead, fabric: true}
	for _, m := range s.p.Measures {
		if m.Over != nil {
			l.notes = append(l.notes, s.in.Words.Stretched(s.p, m)+": "+s.cms(m.Over.Stretched))
		}
		if m.Over != nil || m.Fits != nil && goesOver[m.Fits.Body] {
			n++
		}
	}
	l.at = []amount{{n, nMeasures}, {s.z, nSizes}}
	return l
}

func lookSums(s *subject) look {
	n := len(s.p.Sums)
	for _, m := range s.p.Measures {
		if len(m.Of) > 1 {
			n++
		}
	}
	return look{at: []amount{{n, nSums}, {s.z, nSizes}}, why: whyNoSums, fabric: true}
}

// lookUnits looks for every measure in both units on the pages.
func lookUnits(s *subject) look {
	n := 0
	l := look{why: whyNoMeasures}
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		cells := map[string]bool{}
		eachGlyphs(e.Doc, func(_ int, g page.Glyphs) {
			if g.Elem != nil && g.Elem.Tag == "TD" {
				cells[strings.TrimSpace(g.Text)] = true
			}
		})
		w := e.Langs[0]
		for _, m := range s.p.Measures {
			for z, v := range m.Values {
				if v == plan.NoLength {
					continue
				}
				for _, what := range []string{w.Cm(v), w.Inches(v)} {
					if n++; !cells[what] {
						l.findings = append(l.findings, s.own(Error, unitMissing, "edition", e.name(), "measure", s.in.Words.MeasureName(m),
							"size", s.in.Words.SizeName(s.p.Sizes[z]), "what", what))
					}
				}
			}
		}
	}
	l.at = []amount{{n, nFigures}}
	return s.ofPages(l)
}

// cm writes a length in centimetres, without the unit.
func (s *subject) cm(l plan.Length) string { return s.in.Words.Number(l.Cm(), 1) }

// cms writes a length for each size.
func (s *subject) cms(list plan.Lengths) string {
	var out []string
	for _, v := range list {
		if v == plan.NoLength {
			out = append(out, dash)
			continue
		}
		out = append(out, s.cm(v))
	}
	return strings.Join(out, " · ") + " cm"
}

const dash = "–"

// lookSample puts what was measured on the sample beside what the counts give; whether the gauge is that of the sample a
// person sees.
func lookSample(s *subject) look {
	l := look{why: whyNoSample}
	if s.p.Sample == nil {
		return l
	}
	names := map[string]string{}
	for _, m := range s.p.Measures {
		names[m.Name] = s.in.Words.MeasureName(m)
	}
	for _, m := range s.p.Sample.Measures {
		l.notes = append(l.notes, sampleMeasured.with(s.in.Lang, "measure", names[m.Name], "found", s.cm(m.Found), "worked", s.cm(m.Worked)))
	}
	l.at = []amount{{len(s.p.Sample.Measures), nMeasures}}
	return l
}
