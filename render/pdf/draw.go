package pdf

import (
	"sync/atomic"

	"ovillo/lang/atonce"
	"ovillo/render/page"
)

// content is a document after drawing: a stream for each page, and what the streams name.
type content struct {
	tree     *tree
	sheets   []*sheet
	cuts     [faceCount]pending
	pictures pictures
}

const faceCount = int(page.SerifBold) + 1

// sheet is the content stream of a page under construction, and what the page needs besides.
type sheet struct {
	of     *content
	number int     // from 0
	w, h   float64 // points
	b      []byte
	marks  []*node // the element of each marked piece, by its number
	links  []*link
	order  int    // the position of the page in the order of reading
	held   []note // what belongs to elements, in order of drawing
	open   sequence
	item   place // at hand
	within bool  // it is an ornament inside a replacement text
	pen    pen
	packed []byte // b as it stands in the file
}

// drawPages draws and packs the pages, several at once. What they tell the structure tree is noted by each and told in their order, so
// that the file is the same however many processors there are.
func drawPages(d *page.Document, t *tree) (*content, error) {
	c := &content{tree: t, sheets: make([]*sheet, len(d.Pages))}
	if err := c.pictures.takeAll(d); err != nil {
		return nil, err
	}
	spaced := wordEnds(d, t)
	faults := make([]error, len(d.Pages))
	var room atomic.Int64 // what a page may need: about as much as the one before
	room.Store(1 << 14)
	atonce.Do(len(d.Pages), func(i int) {
		p := &d.Pages[i]
		s := &sheet{of: c, number: i, w: p.W * point, h: p.H * point, order: p.Order, b: make([]byte, 0, room.Load())}
		c.sheets[i] = s
		if faults[i] = s.draw(p, spaced); faults[i] != nil {
			return
		}
		room.Store(int64(len(s.b) + len(s.b)/8))
		s.packed, s.b = deflate(s.b), nil
	})
	for i, s := range c.sheets {
		if faults[i] != nil {
			return nil, faults[i]
		}
		t.holdAll(s.held)
	}
	return c, nil
}

func (s *sheet) draw(p *page.Page, spaced map[place]bool) error {
	within := withinReplacement(p.Items)
	for k, item := range p.Items {
		s.item, s.within = place{s.number, k}, within[k]
		if err := s.one(item, spaced[s.item]); err != nil {
			return at(s.item, err)
		}
	}
	s.close()
	return nil
}

func (s *sheet) one(item page.Item, spaced bool) error {
	switch it := item.(type) {
	case page.Glyphs:
		return s.glyphs(it, spaced)
	case page.Path:
		return s.path(it)
	case page.Picture:
		return s.picture(it)
	case page.Anchor:
		return s.anchor(it)
	case page.Folio:
		s.close()
		s.order = it.Order
	}
	return nil
}

// x and y turn a place on the page into points from the bottom left.
func (s *sheet) x(mm float64) float64 { return mm * point }
func (s *sheet) y(mm float64) float64 { return s.h - mm*point }

// op writes numbers and the operator that takes them.
func (s *sheet) op(operator string, operands ...float64) {
	for _, v := range operands {
		s.b = appendNumber(s.b, v)
		s.b = append(s.b, ' ')
	}
	s.b = append(s.b, operator...)
	s.b = append(s.b, '\n')
}

// pen is the graphics state, so that only changes are written. The zero pen is that of no page: all is written once.
type pen struct {
	fill, stroke string
	width        string
	dash         string
	ends         string
	face         string
}

// set writes an operation if it is not in force already.
func (s *sheet) set(in *string, operation string) {
	if *in == operation {
		return
	}
	*in = operation
	s.b = append(s.b, operation...)
	s.b = append(s.b, '\n')
}

// paint is the operation that chooses a colour; greys go to the black ink alone.
func paint(c page.Color, grey, rgb string) string {
	var b []byte
	if c[0] == c[1] && c[1] == c[2] {
		b = appendNumber(b, c[0])
		return string(append(append(b, ' '), grey...))
	}
	for _, v := range c {
		b = append(appendNumber(b, v), ' ')
	}
	return string(append(b, rgb...))
}
