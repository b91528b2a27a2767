package book

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/layout"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Measures of a part.
const (
	partSpace  = 7.5
	partGive   = 2.5  // what the space above a part may give to a sheet that is too short
	hereH      = 12.5 // the drawing that says where in the piece this part is
	hereW      = 9.0
	headPad    = 2.5
	numberGap  = 2.5
	noteMargin = 5.0 // by which the note clears the drawing
	motifPlanH = 90.0
	// In large print a plan may take most of a sheet.
	motifPlanHLarge = 170.0
	firstRows       = 2 // rows that must stand below a part's head
)

// parts sets all parts. The first one starts a sheet, for those who skip what comes before.
func (s *setter) parts() {
	for i := range s.p.Parts {
		s.assembly(i)
		s.part(i)
	}
}

// part sets a part: head, note, size head, its rows.
func (s *setter) part(n int) {
	s.section()
	s.chapter++
	number := s.chapter
	titles := make([]string, len(s.sides))
	notes := make([]rich.Text, len(s.sides))
	for i, sd := range s.sides {
		titles[i] = sd.l.PartTitle(s.p, n)
		notes[i] = sd.l.PartNote(s.p, s.p.Parts[n])
	}
	head := s.partHead(n, number, titles, notes)
	s.bookmark(&head, fmt.Sprint("part ", n), 1, func(sd side) string {
		return fmt.Sprintf("%d  %s", number, sd.l.PartTitle(s.p, n))
	})
	if n == 0 {
		head.Space = 0
		s.mayOpen()
		s.add(layout.Strip{Box: s.startHere(), Space: partSpace, Keep: true, Heading: true})
	}
	s.add(head)
	if s.headsSizes() {
		s.add(s.sizeHead())
	}
	s.list = s.sect.New("L")
	resume := s.resumed(strconv.Itoa(number), titles)
	rows := s.partRows(n)
	for k, r := range rows {
		strips := r.strips
		last := &strips[len(strips)-1]
		last.Yields = k < firstRows-1
		last.Keep = last.Yields || r.leads
		if k+1 < len(rows) && rows[k+1].trails {
			last.Keep, last.Yields = true, false
		}
		for i := range strips {
			strips[i].Resume = resume
		}
		s.add(strips...)
	}
	s.flow[len(s.flow)-1].Keep = false
}

// partHead is the head of a part or of the finishing: number, name and note in each language, and the drawing of the piece.
func (s *setter) partHead(part, number int, titles []string, notes []rich.Text) layout.Strip {
	var b layout.Box
	for i, sd := range s.sides {
		b.Put(0, headPad, s.numberedHead(sd, strconv.Itoa(number), titles[i]))
	}
	below := b.H
	for i, sd := range s.sides {
		room := sd.w() - noteMargin
		if !s.two() {
			room = sd.edge - sd.x - hereW - noteMargin
		}
		note := sd.elem(s.sect, "P")
		b.Put(0, below, layout.Set(sd.broken(notes[i], s.noteType, room, 0), s.noteType, sd.x, note))
	}
	if here := s.hereDrawing(part); here != nil {
		x := s.spine - here.W/2
		if !s.two() {
			x = s.blockW - here.W
		}
		b.Put(0, 0, s.figure(here, x, s.sect))
	}
	b.H = layout.Snap(b.H) + headPad
	return layout.Strip{Box: b, Space: partSpace, Give: partGive, Keep: true, Heading: true}
}

// numberedHead is the head of a part: the number quiet, the name loud. A name too long for its column goes on below.
func (s *setter) numberedHead(sd side, number, title string) layout.Box {
	h := sd.elem(s.sect, "H2")
	x := sd.x
	if s.two() {
		x = sd.head + s.headType.Width(number, false) + numberGap
	}
	right := sd.right - hereW/2
	if !s.two() {
		right = sd.edge - hereW - noteMargin
	}
	lines := layout.Break(rich.Text{{Text: title, Strong: true}}, s.headType, right-x, 0)
	b := layout.Text(number, s.headType, false, sd.head, h)
	b.Put(0, 0, layout.Set(lines, s.headType, x, h))
	return b
}

// resumed is what stands at the top of a sheet that goes on with a part.
func (s *setter) resumed(number string, titles []string) []layout.Strip {
	var b layout.Box
	for i, sd := range s.sides {
		x := sd.x
		if s.two() {
			x += s.continuedType.Width(number, false) + numberGap
		}
		mark := ", " + sd.l.Say(words.ContinuedMark)
		room := s.headAt(sd) + s.headRoom(sd) - x - s.continuedType.Width(mark, false)
		text := shortened(titles[i], s.continuedType, room) + mark
		b.Put(0, 0, layout.Text(number, s.continuedType, false, sd.head, nil))
		b.Put(0, 0, layout.Text(text, s.continuedType, false, x, nil))
	}
	strips := []layout.Strip{{Box: b, Heading: true}}
	if s.headsSizes() {
		head := s.sizeHead()
		head.Space = layout.Module
		strips = append(strips, head)
	}
	return strips
}

// set is a step that was set. One that trails has no label, like "Fasten off.", and never starts a sheet; one that leads stands
// on the sheet of the step below it.
type set struct {
	strips        []layout.Strip
	trails, leads bool
}

// partRows sets each step of a part, the start among them.
func (s *setter) partRows(n int) []set {
	part := s.p.Parts[n]
	var rows []set
	start := row{ticks: 1}
	said := false
	for _, sd := range s.sides {
		t := sd.l.Start(s.p, part)
		start.texts = append(start.texts, t)
		said = said || len(t.Body) > 0
	}
	if said {
		rows = append(rows, set{strips: s.row(start)})
		s.foundAs(part, nil)
	}
	high := 0.0 // of what is set and not yet in the flow
	for _, step := range part.Steps {
		r := s.stepRow(part, step)
		for _, sd := range s.sides {
			r.texts = append(r.texts, sd.l.Step(s.p, part, step))
		}
		rows = append(rows, s.grids(step)...)
		rows = append(rows, set{strips: s.row(r), trails: len(r.texts[0].Label) == 0 && r.ticks == 1})
		for _, t := range rows[len(rows)-1].strips {
			high += t.H
		}
		s.room.holds(high / s.frontH)
		s.foundAs(part, step)
		rows = append(rows, s.stitchCharts(n, step)...)
		if _, ok := step.(*plan.Grid); ok {
			rows = append(rows, s.motifPlan(n)...)
		}
	}
	return append(rows, s.stitchCharts(n, nil)...)
}

// motifPlan sets the plan of joined motifs, which belongs to the step above it.
func (s *setter) motifPlan(n int) []set {
	high := motifPlanH
	if s.edition.Has(Large) {
		high = motifPlanHLarge
	}
	d := s.motifDrawing(n, high)
	if d == nil {
		return nil
	}
	x := (s.blockW - d.W) / 2
	if !s.two() {
		x = s.sides[0].x
	}
	item := s.list.New("LI").New("LBody") // it stands among the rows, and is read there
	b := s.figure(d, x, item)
	b.H = layout.Snap(b.H)
	if s.sizes > 1 {
		b.Below(captionGap, s.each(func(sd side) layout.Box { return s.caption(item, words.MotifCaption, sd, sd.x, sd.w()) }))
	}
	return []set{{strips: []layout.Strip{{Box: b, Space: s.rowSpace}}}}
}

// stepRow says which boxes and tape go with a step.
func (s *setter) stepRow(part *plan.Part, step plan.Step) row {
	switch st := step.(type) {
	case *plan.Row:
		return s.rounds(part, st.First, st.Last)
	case *plan.Block:
		return s.rounds(part, st.First, st.Last)
	case *plan.NoteStep, *plan.Counted, *plan.Grid, *plan.JoinRound: // motifs are crossed off on their plan
		return row{}
	}
	return row{ticks: 1}
}

// rounds gives one box to each of a few rounds, and a tape to many.
func (s *setter) rounds(part *plan.Part, first, last plan.Nums) row {
	if t := tapeOf(first, last); t != nil && !s.edition.Has(Large) {
		t.shape(first, last, part.Worked)
		return row{ticks: 1, tape: t}
	}
	most := 1
	for i := range first {
		if first[i] != plan.Absent && last[i] != plan.Absent {
			most = max(most, last[i]-first[i]+1)
		}
	}
	if most >= tapeLeast {
		most = 1
	}
	return row{ticks: most}
}
