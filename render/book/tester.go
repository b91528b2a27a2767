package book

import (
	"crypto/sha256"
	"fmt"
	"strconv"

	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// A test edition has a number at every row, room for a query below it, and a form at its end.

// Measures of a test edition.
const (
	numberAt    = -2.0 // where the numbers of rows end, in the margin
	queryH      = 10.0
	queryLine   = 0.15
	answerH     = 8.75 // room to write an answer
	answerLine  = hairline
	questionGap = 2.5
)

// refer puts the number of a row into the margin and a box for queries below it. In large print, where nothing stands in the
// margin, the number is in the box.
func (s *setter) refer(b *layout.Box) {
	if !s.edition.Has(Tester) {
		return
	}
	s.referred++
	number := strconv.Itoa(s.referred)
	if !s.edition.Has(Large) {
		b.Put(0, s.textType.Baseline()-s.tapeType.Baseline(), layout.TextRight(number, s.tapeType, false, numberAt, nil))
	}
	b.H += layout.Module
	y := b.H
	if s.edition.Has(Large) {
		b.Put(0, y, layout.TextRight(number, s.tapeType, false, s.sides[0].right-layout.Module, nil))
	}
	for _, sd := range s.sides {
		b.Add(layout.Frame(sd.x, y, sd.right-sd.x, queryH, queryLine))
		b.Put(0, y, layout.Text(sd.l.Say(words.QueryMark), s.tapeType, false, sd.x+layout.Module, nil))
	}
	b.H = y + queryH
}

// form sets what a tester fills in: what is asked, what the pattern says of it, and a line to write on.
func (s *setter) form() {
	if !s.edition.Has(Tester) {
		return
	}
	s.section()
	head := s.sectionHead(words.TesterHead, "tester")
	s.mayOpen()
	s.add(head)
	lists := s.lists()
	var rows []layout.Box
	for i, sd := range s.sides {
		x, w := s.textColumn(i)
		if s.arrangement == apart {
			w = s.blockW - x
		}
		for k, q := range sd.l.TesterQuestions(s.p) {
			if k == len(rows) {
				rows = append(rows, layout.Box{})
			}
			body := lists[i].New("LI").New("LBody")
			b := layout.Set(layout.Break(strong(q.Head), s.noteHeadType, w, 0), s.noteHeadType, x, body.New("P"))
			b.Below(0, layout.Set(layout.Break(q.Text, s.noteType, w, 0), s.noteType, x, body.New("P")))
			rows[k].Put(0, 0, b)
		}
	}
	for _, row := range rows {
		y := layout.Snap(row.H) + answerH
		for i := range s.sides {
			x, w := s.textColumn(i)
			if s.arrangement == apart {
				w = s.blockW - x
			}
			row.Add(layout.Rule(x, y, x+w, y, answerLine))
		}
		row.H = y
		s.add(layout.Strip{Box: row, Space: questionGap})
	}
}

// editionNotes says what the edition at hand is, where that has to be said.
func (s *setter) editionNotes() []layout.Strip {
	var strips []layout.Strip
	add := func(text func(sd side) rich.Text) {
		b := s.each(func(sd side) layout.Box {
			t := text(sd)
			if len(t) == 0 {
				return layout.Box{}
			}
			x, w := sd.margin(), sd.right-sd.margin()
			return layout.Set(layout.Break(t, s.noteType, w, 0), s.noteType, x, sd.elem(s.sect, "P"))
		})
		if b.H > 0 {
			b.H = layout.Snap(b.H)
			strips = append(strips, layout.Strip{Box: b, Space: factsGap})
		}
	}
	if s.edition.Has(Tester) {
		add(func(sd side) rich.Text { return sd.l.TesterNote(s.p) })
	}
	if s.edition.Has(LeftHanded) {
		add(func(sd side) rich.Text { return sd.l.LeftHandedNote(s.p) })
	}
	if s.edition.Has(Large) {
		add(func(sd side) rich.Text { return sd.l.LargePrintNote() })
	}
	return strips
}

// stamp tells one state of a source from the next, on the pages of a test edition: two testers who have the same stamp have the
// same text.
func (s *setter) stamp() string {
	if !s.edition.Has(Tester) || len(s.p.Source) == 0 {
		return ""
	}
	sum := sha256.New()
	sum.Write(s.p.Source) // a hash takes all
	for _, u := range s.p.Used {
		sum.Write(u.Text)
	}
	return fmt.Sprintf("%.3x", sum.Sum(nil))
}

// kinds are the names of the kinds of the edition, with the stamp.
func (s *setter) kinds(sd side) []string {
	var list []string
	for _, kind := range s.editionKinds() {
		list = append(list, sd.l.EditionName(kind))
	}
	if stamp := s.stamp(); stamp != "" {
		list = append(list, stamp)
	}
	return list
}

// editionKinds are the kinds of the edition as its words name them.
func (s *setter) editionKinds() []string {
	var kinds []string
	for _, k := range []struct {
		of   Edition
		kind string
	}{{Large, "large"}, {LowInk, "low-ink"}, {LeftHanded, "left"}, {Tester, "tester"}} {
		if s.edition.Has(k.of) {
			kinds = append(kinds, k.kind)
		}
	}
	return kinds
}
