package pdf

import (
	"fmt"
	"strings"

	"ovillo/render/page"
)

// link is a rectangle to click.
type link struct {
	anchor page.Anchor
	node   *node // nil: outside of the structure tree
	key    int   // in the parent tree
	object int
}

// anchor notes a link. One that belongs to an element other than a Link gets a Link of its own below it, as the format
// wants.
func (s *sheet) anchor(a page.Anchor) error {
	l := &link{anchor: a}
	s.links = append(s.links, l)
	t := s.of.tree
	if t == nil || a.Elem == nil {
		return nil
	}
	owner, err := t.of(a.Elem)
	if err != nil {
		return err
	}
	if owner.tag != "Link" {
		owner = s.add(owner, "Link")
	}
	l.node = owner
	s.hold(owner, held{sheet: s.number, link: l})
	return nil
}

// addLinks adds the annotations.
func (f *file) addLinks(d *page.Document, c *content) {
	key := len(c.sheets)
	for _, s := range c.sheets {
		for _, l := range s.links {
			a := l.anchor
			b := "<</Type /Annot /Subtype /Link /F 4 /Border [0 0 0] /Rect " + rectangle(a.X, a.Y, a.W, a.H, s.h)
			// Places and addresses were checked; what is wrong with them cannot come up here.
			if to, _ := target(d, a); to != nil {
				b += " /Dest " + f.destination(d, to.Page, to.Y)
			} else {
				uri, _ := address(a.URI)
				b += fmt.Sprintf(" /A <</Type /Action /S /URI /URI %s>>", byteString(uri))
			}
			label := a.Label
			if label == "" {
				label = strings.TrimPrefix(a.URI, "#")
			}
			if label != "" {
				b += " /Contents " + textString(label)
			}
			if l.node != nil {
				l.key = key
				b += fmt.Sprintf(" /StructParent %d", key)
				key++
			}
			l.object = f.add(b + ">>")
		}
	}
}

// destination is a place in the document.
func (f *file) destination(d *page.Document, page int, y float64) string {
	return fmt.Sprintf("[%s /XYZ null %s null]", reference(f.pages[page]), number((d.Pages[page].H-y)*point))
}
