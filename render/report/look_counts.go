package report

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// What is looked at for the checks of counts. The counts themselves are proved by the checker, stitch by stitch; here is
// said how many of them there were.

var (
	whyOneSize      = text{"the pattern has one size", "el patrón tiene una sola talla"}
	whyNoStarts     = text{"no part starts by itself", "ninguna pieza comienza por sí sola"}
	whyNoRepeats    = text{"nothing is repeated", "no se repite nada"}
	whyNoStated     = text{"the source states no count", "el patrón no indica ninguna cuenta"}
	whyNoChanges    = text{"the number of stitches never changes", "el número de puntos no cambia nunca"}
	whyNoSchedules  = text{"nothing is shaped by a schedule", "no hay formas según un plan"}
	whyNoBegins     = text{"no row begins with chains", "ninguna hilera comienza con cadenas"}
	whyNoJoins      = text{"nothing divides or joins", "nada se divide ni se une"}
	whyNoEdges      = text{"nothing is worked along ends of rows", "no se teje a lo largo de bordes de hileras"}
	whyNoSeams      = text{"nothing is sewn", "no se cose nada"}
	whyNoMirrors    = text{"no part mirrors another", "ninguna pieza es simétrica de otra"}
	whyNoMarkers    = text{"no marker is placed", "no se coloca ningún marcador"}
	whyOneYarn      = text{"the source names no yarn", "el patrón no nombra ningún hilo"}
	whyNotAtOnce    = text{"no two edges are shaped at once", "no hay dos bordes con formas simultáneas"}
	whyNoNamed      = text{"every stitch goes into the next place", "cada punto va en el lugar siguiente"}
	whyNoSides      = text{"nothing is turned", "la labor no se gira"}
	whyNoRows       = text{"there are no rows", "no hay hileras"}
	uncounted       = text{"{part}: row {row} ends with another number of stitches than before, and no count says so", "{part}: la hilera {row} acaba con otro número de puntos y ninguna cuenta lo dice"}
	chainLost       = text{"{part}, {size}: the first row takes {have} of {need} chains", "{part}, {size}: la primera hilera toma {have} de {need} cadenas"}
	placesLost      = text{"{part}, {size}, row {row}: {have} of the {need} places of the row below are accounted for", "{part}, {size}, hilera {row}: se da cuenta de {have} de los {need} lugares de la anterior"}
	brokenNumbering = text{
		"{part}, {size}: row {have} follows row {before}",
		"{part}, {size}: la hilera {have} sigue a la {before}"}
)

// lookStarts adds up what the first row of each part takes of its starting chain, and passes over: it is the whole chain.
func lookStarts(s *subject) look {
	l := look{why: whyNoStarts, fabric: true}
	n := 0
	for i, p := range s.p.Parts {
		switch p.Start.Kind {
		case 0, plan.StartFrom, plan.StartIn, plan.StartGrid:
			continue
		}
		n++
		if p.Start.Kind != plan.StartChain && p.Start.Kind != plan.StartJoined {
			continue
		}
		for z, rows := range p.Worked {
			if len(rows) > 0 && rows[0].Taken+rows[0].Passed < p.Start.N[z] {
				l.findings = append(l.findings, s.own(Error, chainLost, "part", s.in.Words.PartTitle(s.p, i), "size", s.in.Words.SizeName(s.p.Sizes[z]),
					"have", s.number(rows[0].Taken+rows[0].Passed), "need", s.number(p.Start.N[z])))
			}
		}
	}
	l.at = []amount{{n, nStarts}, {s.z, nSizes}}
	return l
}

func lookMultiples(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool { return in.Op == plan.Repeat })
	return look{at: []amount{{n, nRepeats}, {s.z, nSizes}}, why: whyNoRepeats, fabric: true}
}

// lookRows adds up again what each row takes of the row below and passes over: nothing of that row may be missing from the
// sum.
func lookRows(s *subject) look {
	places := 0
	var lost []Finding
	s.eachFact(func(part *plan.Part, z, i int) {
		f := part.Worked[z][i]
		places += f.Taken
		if i == 0 {
			return
		}
		if below := part.Worked[z][i-1]; f.Taken+f.Passed < below.Stitches+below.Spaces {
			lost = append(lost, s.own(Error, placesLost, "part", s.in.Words.PartTitle(s.p, s.partIndex(part)), "size", s.in.Words.SizeName(s.p.Sizes[z]),
				"row", s.number(f.Number), "have", s.number(f.Taken+f.Passed), "need", s.number(below.Stitches+below.Spaces)))
		}
	})
	return look{at: append(s.workedAmounts(), amount{places, nPlaces}), why: whyNoRows, findings: lost[:min(len(lost), mostFaults)], fabric: true}
}

func lookStated(s *subject) look {
	return look{at: []amount{{s.in.Source.Stated, nStated}, {s.z, nSizes}}, why: whyNoStated, fabric: s.in.Source.Stated > 0}
}

// lookCounts looks at the steps that print a count, and for those that should: where the number of stitches is another behind
// a step than before it, the step says to which.
func lookCounts(s *subject) look {
	n := 0
	var silent []Finding
	for i, part := range s.p.Parts {
		for _, step := range part.Steps {
			first, last, counts := ends(step)
			switch {
			case len(counts) > 0:
				n++
			case last != nil && s.changes(part, first, last):
				silent = append(silent, s.own(Note, uncounted, "part", s.in.Words.PartTitle(s.p, i), "row", s.numbers(last)))
			}
		}
	}
	return look{at: []amount{{n, nPrintedCounts}}, why: whyNoStated, findings: silent[:min(len(silent), mostFaults)], fabric: true}
}

// ends are the numbers of the first and the last row of a step, nil if it works none, and the counts it prints.
func ends(step plan.Step) (first, last plan.Nums, counts []plan.Count) {
	switch st := step.(type) {
	case *plan.Row:
		return st.First, st.Last, st.Counts
	case *plan.Block:
		counts = st.Counts
		for _, r := range st.Rows {
			counts = append(counts, r.Counts...)
		}
		return st.First, st.Last, counts
	case *plan.Counted:
		return nil, nil, st.Counts
	}
	return nil, nil, nil
}

// changes reports whether some size has another number of stitches behind the rows from first to last than before them.
func (s *subject) changes(part *plan.Part, first, last plan.Nums) bool {
	for z := range part.Worked {
		if first[z] == plan.Absent || last[z] == plan.Absent {
			continue
		}
		before, ok := FactOf(part, z, first[z]-1)
		after, there := FactOf(part, z, last[z])
		if ok && there && before.Stitches != after.Stitches {
			return true
		}
	}
	return false
}

// lookChanges counts the rows that have another number of stitches than the row before them.
func lookChanges(s *subject) look {
	n := 0
	s.eachFact(func(part *plan.Part, z, i int) {
		if i > 0 && part.Worked[z][i].Stitches != part.Worked[z][i-1].Stitches {
			n++
		}
	})
	return look{at: []amount{{n, nChanges}, {s.z, nSizes}}, why: whyNoChanges, fabric: true}
}

// lookSections looks at the numbers of the rows of each part: in every size they go up one by one.
func lookSections(s *subject) look {
	l := look{at: s.workedAmounts(), why: whyNoRows, fabric: true}
	for i, part := range s.p.Parts {
		for z, rows := range part.Worked {
			for k := 1; k < len(rows); k++ {
				if rows[k].Number != rows[k-1].Number+1 {
					l.findings = append(l.findings, s.own(Error, brokenNumbering, "part", s.in.Words.PartTitle(s.p, i),
						"size", s.in.Words.SizeName(s.p.Sizes[z]), "have", s.number(rows[k].Number), "before", s.number(rows[k-1].Number)))
				}
			}
		}
	}
	return l
}

func lookSchedules(s *subject) look {
	return look{at: []amount{{s.in.Source.Schedules, nSchedules}, {s.z, nSizes}}, why: whyNoSchedules, fabric: s.in.Source.Schedules > 0}
}

// lookSides counts the rows that are worked from one side or the other.
func lookSides(s *subject) look {
	n := 0
	s.eachFact(func(part *plan.Part, z, i int) {
		if part.Style == plan.Rows || part.Style == plan.TurnedRounds || part.Worked[z][i].Wrong {
			n++
		}
	})
	return look{at: []amount{{n, nSidedRows}, {s.z, nSizes}}, why: whyNoSides, fabric: true}
}

func lookBegins(s *subject) look {
	n := s.rowsWith(func(r workedRow) bool { return r.Begin.Chains > 0 || r.Begin.FromHook > 0 })
	return look{at: []amount{{n, nBegins}}, why: whyNoBegins, fabric: true}
}

func lookRepeats(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool { return in.Op == plan.Repeat || in.Op == plan.InOne })
	for _, part := range s.p.Parts {
		for _, step := range part.Steps {
			if _, ok := step.(*plan.Block); ok {
				n++
			}
		}
	}
	return look{at: []amount{{n, nRepeats}}, why: whyNoRepeats, fabric: true}
}

// lookJoins counts the runs of places that are left for later, and those of other parts on which parts start.
func lookJoins(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool {
		return (in.Op == plan.SkipOver || in.Op == plan.LeaveRest) && in.Label != "" || in.Op == plan.JoinTo || in.Reach == plan.NextOf
	})
	for _, p := range s.p.Parts {
		n += len(p.Start.Runs)
		if p.Grid != nil {
			n++
		}
	}
	return look{at: []amount{{n, nJoins}, {s.z, nSizes}}, why: whyNoJoins, fabric: true}
}

func lookEdges(s *subject) look {
	n := 0
	for _, p := range s.p.Parts {
		for _, r := range p.Start.Runs {
			if r.Kind == plan.RefRowEnds || r.Kind == plan.RefAround {
				n++
			}
		}
	}
	return look{at: []amount{{n, nEdges}, {s.z, nSizes}}, why: whyNoEdges, fabric: true}
}

func lookSeams(s *subject) look {
	n := 0
	for _, f := range s.p.Finish {
		if f.Kind == plan.SewRuns {
			n++
		}
	}
	return look{at: []amount{{n, nSeams}, {s.z, nSizes}}, why: whyNoSeams, fabric: true}
}

func lookMirrors(s *subject) look {
	return look{at: []amount{{s.in.Source.Mirrors, nMirrors}}, why: whyNoMirrors, fabric: s.in.Source.Mirrors > 0}
}

func lookMarkers(s *subject) look {
	n := 0
	for _, p := range s.p.Parts {
		n += len(p.Markers)
	}
	return look{at: []amount{{n, nMarkers}, {s.z, nSizes}}, why: whyNoMarkers, fabric: true}
}

// lookYarnOfRows counts the rows and rounds whose yarn is known.
func lookYarnOfRows(s *subject) look {
	rows, rounds := 0, 0
	s.eachFact(func(part *plan.Part, z, i int) {
		switch f := part.Worked[z][i]; {
		case f.Yarn < 0 || len(s.p.Yarns) == 0:
		case f.Closed:
			rounds++
		default:
			rows++
		}
	})
	return look{at: rowAmounts(rows, rounds, amount{len(s.p.Yarns), nYarns}), why: whyOneYarn, fabric: true}
}

func lookSimultaneous(s *subject) look {
	return look{at: []amount{{s.in.Source.Simultaneous, nSchedules}, {s.z, nSizes}}, why: whyNotAtOnce, fabric: s.in.Source.Simultaneous > 0}
}

// lookPlaces counts the instructions that do not simply go into the next place.
func lookPlaces(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool {
		if in.Op != plan.Work && in.Op != plan.Decrease && in.Op != plan.InOne && in.Op != plan.CrossOver {
			return false
		}
		plain := []plan.Reach{plan.Next, plan.ToEnd, plan.ToLast, plan.Times}
		return !slices.Contains(plain, in.Reach) || in.Over != plan.Stitch || in.Deep > 0 || in.Form.Post != stitch.NoPost
	})
	return look{at: []amount{{n, nNamedPlaces}}, why: whyNoNamed, fabric: true}
}

// lookColumns counts the places where columns of the fabric may fail to meet.
func lookColumns(s *subject) look {
	joins, seams := lookJoins(s).at[0], lookSeams(s).at[0]
	if joins.n == 0 {
		joins, seams = seams, joins
	}
	return look{at: []amount{joins, seams}, why: whyNoJoins, fabric: true, person: true}
}
