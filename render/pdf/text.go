package pdf

import (
	"fmt"
	"math"
	"math/bits"
	"slices"
	"strings"
	"unicode/utf8"

	"ovillo/render/font"
	"ovillo/render/page"
)

// runeSet is the set of runes that a document draws in a face.
type runeSet struct {
	bits [1 << 16 / 64]uint64
	used bool
}

func (r *runeSet) add(c rune) {
	r.bits[c>>6] |= 1 << (c & 63)
	r.used = true
}

// runesOf are the runes that a document draws in each face. They are looked for before its pages are drawn, so that the faces are cut meanwhile.
func runesOf(d *page.Document) (of [faceCount]runeSet) {
	for i := range d.Pages {
		for _, item := range d.Pages[i].Items {
			if g, ok := item.(page.Glyphs); ok {
				for _, r := range font.Compose(g.Text) {
					of[g.Face].add(coded(r))
				}
			}
		}
	}
	for i := range of {
		if of[i].used {
			of[i].add(' ') // drawn where a word ends with its line
		}
	}
	return of
}

// coded is the rune under which a rune is written. A no-break space has done its work once lines are broken, and is written as a space, for
// that is what people search for.
func coded(r rune) rune {
	if r == '\u00a0' {
		return ' '
	}
	return r
}

// list returns the runes in order.
func (r *runeSet) list() []rune {
	var out []rune
	for i, word := range r.bits {
		for ; word != 0; word &= word - 1 {
			out = append(out, rune(i<<6+bits.TrailingZeros64(word)))
		}
	}
	return out
}

// glyphs draws a run of text. A text that ends a word within its paragraph is drawn with a space behind it.
func (s *sheet) glyphs(g page.Glyphs, spaced bool) error {
	if g.Text == "" {
		return nil
	}
	actual := g.Actual
	if spaced && actual != "" && !joins(actual) {
		actual += " "
	}
	if err := s.mark(g.Elem, actual, g.Expand); err != nil {
		return err
	}
	text := font.Compose(g.Text)
	if spaced {
		text += " "
	}
	s.set(&s.pen.fill, paint(g.Color, "g", "rg"))
	s.b = append(s.b, "BT "...)
	if face := fmt.Sprintf("/F%d %s Tf", g.Face, number(g.Size)); face != s.pen.face {
		s.pen.face = face
		s.b = append(append(s.b, face...), ' ')
	}
	s.origin(g)
	s.show(font.Of(g.Face), text, g.Track)
	s.b = append(s.b, " ET\n"...)
	return nil
}

// origin writes the place and direction of the baseline.
func (s *sheet) origin(g page.Glyphs) {
	sin, cos := math.Sincos(g.Angle * math.Pi / 180)
	for _, v := range [...]float64{cos, sin, -sin, cos, s.x(g.X), s.y(g.Base)} {
		s.b = append(appendNumber(s.b, v), ' ')
	}
	s.b = append(s.b, "Tm "...)
}

// show writes the glyphs with the corrections between them. The code of a glyph is its rune.
func (s *sheet) show(f *font.Face, text string, track float64) {
	s.b = append(s.b, "[<"...)
	prev := rune(-1)
	for _, r := range text {
		if prev >= 0 {
			if back := -float64(f.Kern(prev, r)) - 1000*track; back != 0 {
				s.b = append(s.b, '>')
				s.b = appendNumber(s.b, back)
				s.b = append(s.b, '<')
			}
		}
		prev = r
		r = coded(r)
		const hex = "0123456789ABCDEF"
		s.b = append(s.b, hex[r>>12&15], hex[r>>8&15], hex[r>>4&15], hex[r&15])
	}
	s.b = append(s.b, ">]TJ"...)
}

// place names an item of a document.
type place struct{ page, item int }

// at says of which item an error is.
func at(p place, err error) error { return fmt.Errorf("page %d, item %d: %w", p.page+1, p.item+1, err) }

// wordEnds finds the runs that need a space behind them: those whose paragraph goes on elsewhere, on the next line or
// after a gap. Layout drops the space at the end of a line; whoever reads the structure tree would find two words in
// one. The added space prints nothing.
func wordEnds(d *page.Document, t *tree) map[place]bool {
	ends := map[place]bool{}
	if t == nil {
		return ends
	}
	// The lines of two paragraphs side by side may take turns, so that each has a last line of its own.
	last := map[*node]place{}
	for _, here := range itemsAsRead(d) {
		g, ok := d.Pages[here.page].Items[here.item].(page.Glyphs)
		if !ok || g.Elem == nil || g.Text == "" {
			continue
		}
		n := t.nodes[g.Elem]
		if n == nil {
			continue
		}
		block := n.block()
		if at, more := last[block]; more {
			before := d.Pages[at.page].Items[at.item].(page.Glyphs)
			if !joins(before.Text) && (at.page != here.page || apart(before, g)) {
				ends[at] = true
			}
		}
		last[block] = here
	}
	return ends
}

// itemsAsRead lists the items of a document in the order of reading.
func itemsAsRead(d *page.Document) []place {
	var list []place
	var orders []order
	turned := false
	for i := range d.Pages {
		position := d.Pages[i].Order
		for k, item := range d.Pages[i].Items {
			if f, ok := item.(page.Folio); ok {
				position = f.Order
			}
			turned = turned || position != 0
			list = append(list, place{i, k})
			orders = append(orders, order{position, len(list)})
		}
	}
	if turned {
		all := slices.Clone(list)
		slices.SortFunc(orders, order.compare)
		for i, o := range orders {
			list[i] = all[o.count-1]
		}
	}
	return list
}

// apart says whether b begins elsewhere than where a ends.
func apart(a, b page.Glyphs) bool {
	em := a.Size / point
	if math.Abs(b.Base-a.Base) > 0.6*em {
		return true
	}
	end := a.X + font.Of(a.Face).Tracked(a.Text, a.Size, a.Track)
	return math.Abs(b.X-end) > 0.15*em
}

// joins says whether a text needs no space behind it: it has one, or ends with a sign that a line may be broken after
// in the middle of a word. A dash with a space before it stands between words and is none.
func joins(text string) bool {
	last, size := utf8.DecodeLastRuneInString(text)
	before, _ := utf8.DecodeLastRuneInString(text[:len(text)-size])
	if strings.ContainsRune(" \u00a0", last) {
		return true
	}
	return strings.ContainsRune("-–—/\u00ad", last) && !strings.ContainsRune(" \u00a0", before)
}
