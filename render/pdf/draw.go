package pdf

import (
	"fmt"

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
	open   sequence
	within bool // the item is an ornament inside a replacement text
	pen    pen
	packed func() []byte // b as it stands in the file; waits for it
}

func drawPages(d *page.Document, t *tree) (*content, error) {
	c := &content{tree: t}
	packer := startPacker()
	defer packer.close()
	c.sheets = make([]*sheet, 0, len(d.Pages))
	spaced := wordEnds(d, t)
	room := 1 << 14 // pages are much like the one before
	for i := range d.Pages {
		p := &d.Pages[i]
		s := &sheet{of: c, number: i, w: p.W * point, h: p.H * point, b: make([]byte, 0, room)}
		c.sheets = append(c.sheets, s)
		t.turnTo(p.Order)
		within := withinReplacement(p.Items)
		for k, item := range p.Items {
			s.within = within[k]
			if err := s.item(item, spaced[place{i, k}]); err != nil {
				return nil, fmt.Errorf("page %d, item %d: %w", i+1, k+1, err)
			}
		}
		s.close()
		room = len(s.b) + len(s.b)/8
		s.packed, s.b = packer.pack(s.b), nil
	}
	return c, nil
}

func (s *sheet) item(item page.Item, spaced bool) error {
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
		s.of.tree.turnTo(it.Order)
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
