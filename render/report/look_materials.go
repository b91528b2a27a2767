package report

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
)

var (
	whyNoYarns    = text{"the source names no yarn", "el patrón no nombra ningún hilo"}
	whyNoAmounts  = text{"no amount of yarn is known", "no se conoce ninguna cantidad de hilo"}
	whyNoHooks    = text{"the source names no hook", "el patrón no nombra ningún ganchillo"}
	whyNoNotions  = text{"nothing else is needed", "no hace falta nada más"}
	whyOneAmount  = text{"there is one size, or no amount is known", "hay una sola talla, o no se conoce la cantidad"}
	ballsWrong    = text{"yarn {yarn}, {size}: {balls} balls are given, and {need} are needed", "hilo {yarn}, {size}: se dan {balls} ovillos y hacen falta {need}"}
	hookUnlisted  = text{"{part} is worked with a hook of {hook} mm, which is not listed", "{part} se teje con un ganchillo de {hook} mm que no está en la lista"}
	hookUnsaid    = text{"{edition}: the hook of {hook} is not on the pages", "{edition}: el ganchillo de {hook} no está en las páginas"}
	noNeedle      = text{"seams, ends or buttons are sewn, and no needle is listed", "se cosen costuras, hebras o botones, y no hay aguja en la lista"}
	markersFewer  = text{"{part} needs {need} markers, and {have} are listed", "{part} lleva {need} marcadores, y en la lista hay {have}"}
	markersUnused = text{"markers are listed, and none is placed", "hay marcadores en la lista y no se coloca ninguno"}
	sumFabric     = text{"fabric", "tejido"}
	sumCords      = text{"cords", "cordones"}
	sumPompoms    = text{"pompoms", "pompones"}
	sumSeams      = text{"seams", "costuras"}
	sumAllowance  = text{"allowance", "margen"}
	buttonsOther  = text{"{size}: {have} buttons are sewn on, and {need} are listed", "{size}: se cosen {have} botones, y en la lista hay {need}"}
)

// lookYarns counts the yarns; what one of them lacks is said when it is checked.
func lookYarns(s *subject) look {
	return look{at: []amount{{len(s.p.Yarns), nYarns}, {s.amounts(), nAmounts}}, why: whyNoYarns}
}

// amounts counts the yarn amounts that are known: one a yarn and size.
func (s *subject) amounts() int {
	n := 0
	for _, y := range s.p.Yarns {
		n += len(y.Amount)
	}
	return n
}

// lookBalls works out the balls again from the length that is needed and that of a ball.
func lookBalls(s *subject) look {
	n := 0
	var findings []Finding
	for _, y := range s.p.Yarns {
		for z, a := range y.Amount {
			if a.Balls == 0 || y.BallLength <= 0 || a.Length <= 0 {
				continue
			}
			n++
			if need := int((a.Length + y.BallLength - 1) / y.BallLength); need > a.Balls || need < a.Balls-1 {
				findings = append(findings, s.own(Error, ballsWrong, "yarn", s.in.Words.YarnName(y), "size", s.in.Words.SizeName(s.p.Sizes[z]),
					"balls", s.number(a.Balls), "need", s.number(need)))
			}
		}
	}
	return look{at: []amount{{n, nAmounts}}, why: whyNoAmounts, findings: findings, fabric: true}
}

// lookAmounts counts the steps from size to size; an amount that falls is said when it is checked.
func lookAmounts(s *subject) look {
	n := 0
	for _, y := range s.p.Yarns {
		n += max(len(y.Amount)-1, 0)
	}
	return look{at: []amount{{n, nSteps}}, why: whyOneAmount, fabric: true}
}

// lookTools compares hooks, markers and needle with what the parts and the finishing use.
func lookTools(s *subject) look {
	no := s.p.Notions
	l := look{why: whyNoHooks}
	n := len(s.p.Hooks) + len(no.Formers)
	for _, needed := range []bool{no.Needle, no.Pin} {
		if needed {
			n++
		}
	}
	l.at = []amount{{n + no.Markers, nTools}}
	used := map[plan.Length]bool{}
	for i, p := range s.p.Parts {
		hooks := []plan.Length{p.Hook}
		for _, r := range s.rows {
			if r.part == p && r.Hook > 0 {
				hooks = append(hooks, r.Hook)
			}
		}
		for _, h := range hooks {
			if used[h] = true; h > 0 && !slices.Contains(s.p.Hooks, h) {
				l.findings = append(l.findings, s.own(Error, hookUnlisted, "part", s.in.Words.PartTitle(s.p, i), "hook", s.mm(h)))
			}
		}
		if len(p.Markers) > no.Markers && markersAtOnce(s, p) > no.Markers {
			l.findings = append(l.findings, s.own(Error, markersFewer, "part", s.in.Words.PartTitle(s.p, i),
				"need", s.number(markersAtOnce(s, p)), "have", s.number(no.Markers)))
		}
	}
	if no.Markers > 0 && !s.marks() {
		l.findings = append(l.findings, s.own(Warning, markersUnused))
	}
	if s.sewn() && !no.Needle {
		l.findings = append(l.findings, s.own(Error, noNeedle))
	}
	return l
}

// markersAtOnce is the least number of markers that a part needs at one time: those that one row places.
func markersAtOnce(s *subject, part *plan.Part) int {
	most := 0
	for _, step := range part.Steps {
		if off, ok := step.(*plan.CountOff); ok {
			n := 0
			for _, it := range off.Items {
				if it.Marker >= 0 && it.N == nil {
					n++
				}
			}
			most = max(most, n)
		}
	}
	return most
}

// marks reports whether any marker is placed, that of a spiral's first stitch among them.
func (s *subject) marks() bool {
	return slices.ContainsFunc(s.p.Parts, func(p *plan.Part) bool { return len(p.Markers) > 0 || p.Style == plan.SpiralRounds })
}

// sewn reports whether anything asks for a needle: seams, buttons, pompoms, elastic, ends, a last round drawn together.
func (s *subject) sewn() bool {
	if slices.ContainsFunc(s.p.Finish, func(f plan.Finishing) bool {
		switch f.Kind {
		case plan.SewRuns, plan.SewButtons, plan.WeaveEnds, plan.MakePompom, plan.ThreadElastic:
			return true
		}
		return false
	}) {
		return true
	}
	return slices.ContainsFunc(s.p.Parts, func(p *plan.Part) bool {
		return slices.ContainsFunc(p.Steps, func(st plan.Step) bool {
			f, ok := st.(*plan.Fasten)
			return ok && (f.Close != "" || f.Off || f.Tail)
		})
	})
}

// lookHooks looks for every hook on the pages.
func lookHooks(s *subject) look {
	l := look{at: []amount{{len(s.p.Hooks), nHooks}}, why: whyNoHooks}
	var sizes []string
	for _, h := range s.p.Hooks {
		sizes = append(sizes, s.mm(h)+" mm")
	}
	if len(sizes) > 0 {
		l.notes = []string{strings.Join(sizes, ", ")}
	}
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		all := squeezed(wholeText(e.Doc))
		for _, h := range s.p.Hooks {
			if what := e.Langs[0].Number(float64(h)/float64(plan.Millimetre), 2) + " mm"; !strings.Contains(all, squeezed(what)) {
				l.findings = append(l.findings, s.own(Error, hookUnsaid, "edition", e.name(), "hook", what))
			}
		}
	}
	return l
}

// lookNotions compares the buttons that are sewn on with those that are listed.
func lookNotions(s *subject) look {
	no := s.p.Notions
	l := look{at: []amount{{len(no.Others) + len(no.Buttons) + len(no.Elastic), nNotions}}, why: whyNoNotions}
	sewn := make([]int, s.z)
	some := false
	for _, f := range s.p.Finish {
		if f.Kind != plan.SewButtons {
			continue
		}
		some = true
		for z, n := range f.Buttons.N {
			if n != plan.Absent {
				sewn[z] += n
			}
		}
	}
	l.fabric = some || len(no.Elastic) > 0 // holes and casings are rows
	for z := range sewn {
		listed := 0
		for _, b := range no.Buttons {
			if b.N[z] != plan.Absent {
				listed += b.N[z]
			}
		}
		if some && sewn[z] != listed {
			l.findings = append(l.findings, s.own(Error, buttonsOther, "size", s.in.Words.SizeName(s.p.Sizes[z]),
				"have", s.number(sewn[z]), "need", s.number(listed)))
		}
	}
	return l
}

func lookColours(s *subject) look {
	l := look{at: []amount{{len(s.p.Yarns), nYarns}}, why: whyNoYarns}
	var names []string
	for _, y := range s.p.Yarns {
		names = append(names, s.in.Words.YarnName(y))
	}
	if len(names) > 0 {
		l.notes = []string{strings.Join(names, ", ")}
	}
	return l
}

// mm writes a length in millimetres, without the unit.
func (s *subject) mm(l plan.Length) string {
	return s.in.Words.Number(float64(l)/float64(plan.Millimetre), 2)
}

// lookYarnSum says what the amounts of the size that is drawn are added up from.
func lookYarnSum(s *subject) look {
	l := look{at: []amount{{s.amounts(), nAmounts}}, why: whyNoAmounts, fabric: true, person: true}
	for _, y := range s.p.Yarns {
		if len(y.Amount) != s.z {
			continue
		}
		of := y.Amount[s.p.Shown].Of
		var parts []string
		for _, k := range []struct {
			mg   int64
			name text
		}{{of.Fabric, sumFabric}, {of.Cords, sumCords}, {of.Pompoms, sumPompoms}, {of.Seams, sumSeams}, {of.Allowance, sumAllowance}} {
			if k.mg > 0 {
				parts = append(parts, k.name.in(s.in.Lang)+" "+s.in.Words.Number(float64(k.mg)/1000, 1)+" g")
			}
		}
		l.notes = append(l.notes, s.in.Words.YarnName(y)+", "+s.in.Words.SizeName(s.p.Sizes[s.p.Shown])+": "+strings.Join(parts, ", "))
	}
	return l
}
