package book

import (
	"errors"
	"fmt"
	"maps"
	"path"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// Bind sets a book: its title page with the list of its patterns, what all of them have in common, and each pattern as it is
// set alone, without what stands in front.
func Bind(b *plan.Book, o Options) (doc *page.Document, err error) {
	if n := len(o.Langs); n < 1 || n > 2 {
		return nil, fmt.Errorf("a document has one language or two, not %d", n)
	}
	if len(b.Patterns) == 0 {
		return nil, errors.New("the book has no patterns")
	}
	for _, p := range b.Patterns {
		if len(p.Sizes) == 0 {
			return nil, fmt.Errorf("the pattern %s has no sizes", p.Name)
		}
	}
	if err := o.clash(); err != nil {
		return nil, err
	}
	sheet := o.Paper
	if o.Has(Booklet) {
		o.Paper = halves[o.Paper]
	}
	cover, patterns := split(b)
	if o.Has(Large) {
		for i := range patterns {
			patterns[i] = patterns[i].Unrolled()
		}
	}
	o.Langs = o.mannered()
	o.room = &room{}
	defer leave(&err)
	doc = &page.Document{Root: &page.Elem{Tag: "Document", Lang: o.Langs[0].Tag()}, Lang: o.Langs[0].Tag()}
	var volumes, covers []*setter
	for _, langs := range o.turnsOf(patterns) {
		root, level, prefix := doc.Root, 0, ""
		if len(langs) < len(o.Langs) {
			root, level, prefix = doc.Root.New("Part"), 1, langs[0].Tag()+" "
			root.Lang = langs[0].Tag()
		}
		bound := o.bound(cover, patterns, langs, root, level, prefix)
		covers = append(covers, bound[0])
		volumes = append(volumes, bound...)
	}
	if tooLong(volumes) {
		return nil, ErrLong
	}
	bind(doc, volumes)
	prune(doc.Root, doc.Pages)
	describe(doc, cover, covers)
	attach(doc, b)
	if o.Has(Booklet) {
		impose(doc, sheet)
	}
	return doc, nil
}

// turnsOf are the languages of each half of the book: two that face each other, or one after the other.
func (o Options) turnsOf(patterns []*plan.Pattern) [][]*words.Language {
	if len(o.Langs) == 1 || !slices.ContainsFunc(patterns, func(p *plan.Pattern) bool { return o.turns(len(p.Sizes)) }) {
		return [][]*words.Language{o.Langs}
	}
	return [][]*words.Language{o.Langs[:1], o.Langs[1:]}
}

// bound makes the volumes of a book in some languages, that of its front first.
func (o Options) bound(cover *plan.Pattern, patterns []*plan.Pattern, langs []*words.Language, root *page.Elem, level int, prefix string) []*setter {
	front := newSetter(cover, o, langs, root.New("Part"))
	front.cover, front.level, front.prefix = true, level, prefix
	var list []*setter
	for i, p := range patterns {
		s := newSetter(p, o, langs, root.New("Part"))
		s.level, s.titleLevel, s.prefix = level+1, level, fmt.Sprintf("%s%d ", prefix, i+1)
		list = append(list, s)
	}
	shared := commonOf(list)
	shared.place, shared.explains = front.place, front.abbreviationPlace
	front.common = shared
	for _, s := range list {
		s.common = shared
		s.elsewhere()
		s.draft()
		if s.long() {
			s.listed()
		}
		s.complete()
	}
	front.opens(list)
	front.howToRead()
	front.abbreviations()
	front.specials()
	front.inFront(list)
	front.sheets = layout.Paginate(front.flow, front.frontH, front.bodyH)
	return append([]*setter{front}, list...)
}

// opens makes the title page of a book: title, introduction, what is made, and the list of contents.
func (s *setter) opens(patterns []*setter) {
	s.section()
	s.add(s.masthead(), s.titles())
	var b layout.Box
	for i, sd := range s.sides {
		x, w := s.textColumn(i)
		b.Put(0, 0, s.intro(sd, x, w))
	}
	b.H = layout.Snap(b.H)
	s.add(divided([]layout.Strip{{Box: b, Space: afterTitle}}, s.introType.Leading)...)
	s.add(s.pieces(patterns)...)
	s.add(s.editionNotes()...)
	s.contentsAt = len(s.flow)
	s.listedIn = s.sect
}

// The drawings of the pieces on the title page of a book.
const (
	pieceH     = 55.0
	pieceGap   = 6.0
	piecesMost = 4 // in a row
)

// pieces sets a drawing of each piece, several in a row.
func (s *setter) pieces(patterns []*setter) []layout.Strip {
	var strips []layout.Strip
	for row := range slices.Chunk(patterns, piecesMost) {
		w := (s.blockW - pieceGap*float64(len(row)-1)) / float64(len(row))
		var b layout.Box
		for i, p := range row {
			drawing := p.pieceDrawing(min(w, p.drawingW), pieceH)
			if drawing == nil {
				continue
			}
			left := float64(i) * (w + pieceGap)
			b.Put(0, pieceH-drawing.H, s.figure(drawing, left+(w-drawing.W)/2, s.sect))
		}
		if b.H > 0 {
			b.H = layout.Snap(b.H)
			var names layout.Box
			for i, p := range row {
				y := 0.0
				for _, sd := range p.sides {
					title := shortened(sd.l.Title(p.p), s.captionType, w)
					names.Put(0, y, layout.TextCentred(title, s.captionType, false, float64(i)*(w+pieceGap)+w/2, sd.elem(s.sect, "P")))
					y += s.captionType.Leading
				}
			}
			b.Below(captionGap, names)
			b.H = layout.Snap(b.H)
			strips = append(strips, layout.Strip{Box: b, Space: afterTitle})
		}
	}
	return strips
}

// inFront puts the list of contents behind the title page, and at the end what holds for all patterns: notes, changes, licence.
func (s *setter) inFront(patterns []*setter) {
	list := s.contents()
	for _, p := range patterns {
		list = append(list, content{mark: p.place(titleMark), titles: p.marks[titleMark].titles, whole: true})
	}
	rest, kids := slices.Clone(s.flow[s.contentsAt:]), s.root.Kids
	s.flow, s.sect = s.flow[:s.contentsAt], s.listedIn
	s.addContents(list)
	for i, note := range s.p.Notes {
		head := words.NotesHead
		if i > 0 {
			head = 0
		}
		s.add(s.minor(s.fixed(head), note)...)
	}
	s.add(s.minor(func(sd side) string { return sd.l.Edition(s.p) }, s.p.Changes)...)
	s.add(s.minor(s.fixed(words.LicenceHead), s.p.Licence)...)
	s.flow, s.root.Kids = append(s.flow, rest...), kids
}

// pieceDrawing is the title drawing of a pattern.
func (s *setter) pieceDrawing(w, h float64) *scene.Scene {
	was := s.drawingW
	s.drawingW = w
	d := s.titleDrawing(h)
	s.drawingW = was
	return d
}

// split parts what the front of a book says from what its patterns say: notes and a licence that all of them have in the same
// words stand in front.
func split(b *plan.Book) (cover *plan.Pattern, patterns []*plan.Pattern) {
	head := *b.Head
	cover = &head
	cover.Notes = slices.Clone(cover.Notes)
	all := func(same func(p *plan.Pattern) bool) bool {
		return !slices.ContainsFunc(b.Patterns, func(p *plan.Pattern) bool { return !same(p) })
	}
	first := b.Patterns[0]
	cover.Sizes = first.Sizes
	if cover.Licence.Text == nil && all(func(p *plan.Pattern) bool { return sameProse(p.Licence, first.Licence) }) {
		cover.Licence = first.Licence
	}
	var shared []plan.Prose
	for _, note := range first.Notes {
		if len(b.Patterns) > 1 && all(func(p *plan.Pattern) bool { return hasProse(p.Notes, note) }) {
			shared = append(shared, note)
		}
	}
	cover.Notes = append(cover.Notes, shared...)
	seen := map[stitch.Form]bool{}
	for _, p := range b.Patterns {
		for _, f := range p.Stitches {
			if !seen[f] {
				seen[f] = true
				cover.Stitches = append(cover.Stitches, f)
			}
		}
		one := *p
		if sameProse(p.Licence, cover.Licence) {
			one.Licence = plan.Prose{}
		}
		one.Notes = slices.DeleteFunc(slices.Clone(p.Notes), func(n plan.Prose) bool { return hasProse(shared, n) })
		patterns = append(patterns, &one)
	}
	return cover, patterns
}

// sameProse reports whether two texts say the same, whatever the sizes are: none puts in values.
func sameProse(a, b plan.Prose) bool {
	return len(a.Values) == 0 && len(b.Values) == 0 && maps.Equal(a.Text, b.Text)
}

func hasProse(list []plan.Prose, p plan.Prose) bool {
	return slices.ContainsFunc(list, func(o plan.Prose) bool { return sameProse(o, p) })
}

// attach attaches the patterns of a book beside its source, with the files that they use, each once.
func attach(doc *page.Document, b *plan.Book) {
	if doc.Source == nil {
		return
	}
	add := func(name string, text []byte) {
		if !slices.ContainsFunc(doc.Used, func(a page.Attachment) bool { return a.Name == name }) {
			doc.Used = append(doc.Used, page.Attachment{Name: name, Text: text})
		}
	}
	for i, p := range b.Patterns {
		add(b.Files[i], p.Source)
		for _, u := range p.Used {
			add(path.Join(path.Dir(b.Files[i]), u.Name), u.Text)
		}
	}
}
