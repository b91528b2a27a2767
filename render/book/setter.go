package book

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/atonce"
	"ovillo/render/draw"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/words"
)

// setter makes the flow of a document, section by section.
type setter struct {
	look
	edition Edition
	room    *room
	p       *plan.Pattern
	sides   []side
	sizes   int
	axis    float64 // the middle of the boxes to tick

	root *page.Elem // the whole document
	sect *page.Elem // the section at hand
	list *page.Elem // the list of rows at hand

	stepElems map[stepOf]*page.Elem // by the step of a part; nil for its start

	sizeTable *page.Elem // of measures and yarns

	referred int // the number of the row at hand in a test edition
	chapter  int // the number of the part or of the steps at hand

	prefix    string                // of the names of places, which volumes have for themselves
	targets   map[*page.Elem]string // elements that links lead to, by their place
	explained map[string]string     // the place of the row of each abbreviation
	used      map[string]bool       // the abbreviations of the section at hand that have their link

	level      int // of the bookmarks above all of the volume's but its title
	titleLevel int // of those above its title

	// In a book: what stands in front of all patterns, and whether this volume is that front.
	common     *common
	cover      bool
	contentsAt int        // where in the flow of the front the list of contents goes
	listedIn   *page.Elem // the section that it belongs to

	flow     []layout.Strip
	sheets   []layout.Sheet
	begun    extent
	openings []int              // strips that start a sheet if the one before is filled far enough
	marks    map[string]heading // bookmarks by the mark of their strip
	small    *draw.SmallPiece   // laid out when the first part needs it

	title, flat, mapped once // the drawings

	order   []string     // and in the order of the pages
	charted map[int]bool // the grids that are drawn already
	symbols map[int]bool // likewise the charts in symbols
}

// heading is what a bookmark says.
type heading struct {
	title  string
	titles []string // one a side
	level  int
}

func newSetter(p *plan.Pattern, o Options, langs []*words.Language, root *page.Elem) *setter {
	s := &setter{
		look:    lookOf(o.Paper, o.Edition.Has(Large), len(langs), len(p.Sizes)),
		edition: o.Edition, room: o.room,
		p: p, sizes: len(p.Sizes),
		root: root, marks: map[string]heading{},
		targets: map[*page.Elem]string{}, explained: map[string]string{}, stepElems: map[stepOf]*page.Elem{},
	}
	if s.figures == named {
		langs = naming(langs)
	}
	langs = keeping(p, langs)
	s.sides = s.sidesOf(langs)
	s.axis = s.spine
	if !s.two() {
		s.axis = s.tickW / 2
	}
	return s
}

// naming lets languages write each number of a list behind the name of its size.
func naming(langs []*words.Language) []*words.Language {
	out := make([]*words.Language, len(langs))
	for i, l := range langs {
		m := l.Manner()
		m.Named = true
		out[i] = l.With(m)
	}
	return out
}

// keeping lets languages keep what they write about the pattern, and has all of them write at once: the front needs of each row
// what the rows print later.
func keeping(p *plan.Pattern, langs []*words.Language) []*words.Language {
	out := make([]*words.Language, len(langs))
	atonce.Do(len(langs), func(i int) {
		out[i] = langs[i].Keeping(p)
		out[i].Abbreviations(p)
	})
	return out
}

// two reports whether two languages face each other.
func (s *setter) two() bool { return s.arrangement == facing }

// section opens a section of the document.
func (s *setter) section() {
	s.sect = s.root.New("Sect")
	s.list = nil
	s.used = map[string]bool{}
}

// add puts strips at the end of the flow.
func (s *setter) add(strips ...layout.Strip) {
	s.flow = append(s.flow, strips...)
	for _, t := range strips {
		s.room.take(t.H / s.frontH)
	}
}

// each makes a row of text, one box a side, aligned at the top.
func (s *setter) each(f func(sd side) layout.Box) layout.Box {
	var b layout.Box
	for _, sd := range s.sides {
		b.Put(0, 0, f(sd))
	}
	return b
}

// titleMark is the mark of the title, under which all else of a volume stands in the bookmarks.
const titleMark = "title"

// bookmark makes the place of a strip a bookmark. Two languages give it both names.
func (s *setter) bookmark(strip *layout.Strip, mark string, level int, title func(sd side) string) {
	titles := make([]string, len(s.sides))
	for i, sd := range s.sides {
		titles[i] = title(sd)
	}
	strip.Mark = mark
	if mark != titleMark {
		level += s.level
	} else {
		level += s.titleLevel
	}
	if _, again := s.marks[mark]; !again {
		s.order = append(s.order, mark)
	}
	s.marks[mark] = heading{strings.Join(titles, " · "), titles, level}
}
