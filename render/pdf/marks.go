package pdf

import (
	"fmt"

	"ovillo/render/page"
)

// sequence is what is inside one pair of marks: neighbours that belong to the same element, or none.
type sequence struct {
	marked         bool
	elem           *page.Elem // nil: an artifact
	actual, expand string
	node           *node
}

func (q sequence) like(r sequence) bool {
	return q.marked == r.marked && q.elem == r.elem && q.actual == r.actual && q.expand == r.expand
}

// mark opens the marks for an item, unless it goes on with the item before it.
func (s *sheet) mark(elem *page.Elem, actual, expand string) error {
	t := s.of.tree
	if t == nil || s.within {
		return nil
	}
	if elem == nil {
		actual, expand = "", "" // nobody reads an artifact
	}
	q := sequence{marked: true, elem: elem, actual: actual, expand: expand}
	if s.open.like(q) {
		return nil
	}
	s.close()
	if elem == nil {
		s.b = append(s.b, "/Artifact BMC\n"...)
		s.open = q
		return nil
	}
	owner, err := t.of(elem)
	if err != nil {
		return err
	}
	q.node = owner
	if actual+expand != "" {
		q.node = s.add(owner, "Span")
		q.node.actual, q.node.expand = actual, expand
	}
	s.begin(q)
	s.open = q
	return nil
}

// begin writes the opening mark. The replacement text stands in the stream as well as in the tree, since programs that
// copy text read the one and screen readers the other.
func (s *sheet) begin(q sequence) {
	id := len(s.marks)
	s.marks = append(s.marks, q.node)
	s.hold(q.node, held{sheet: s.number, mark: id})
	s.b = fmt.Appendf(s.b, "/%s <</MCID %d", q.node.tag, id)
	if q.actual != "" {
		s.b = append(append(s.b, " /ActualText "...), textString(q.actual)...)
	}
	if q.expand != "" {
		s.b = append(append(s.b, " /E "...), textString(q.expand)...)
	}
	s.b = append(s.b, ">> BDC\n"...)
}

func (s *sheet) close() {
	if s.open.marked {
		s.b = append(s.b, "EMC\n"...)
	}
	s.open = sequence{}
}

// withinReplacement finds the ornaments that stand between two runs of one replacement text, such as the ring round a
// letter. They are drawn inside its marks: a sequence in two parts would be read twice, since readers differ on what a
// second, empty replacement means.
func withinReplacement(items []page.Item) []bool {
	within := make([]bool, len(items))
	last, lastAt := page.Glyphs{}, -1
	for i, item := range items {
		g, ok := item.(page.Glyphs)
		if !ok {
			if elemOf(item) != nil {
				lastAt = -1
			}
			continue
		}
		same := g.Elem != nil && g.Elem == last.Elem && g.Actual == last.Actual && g.Expand == last.Expand
		if lastAt >= 0 && same && g.Actual+g.Expand != "" {
			for k := lastAt + 1; k < i; k++ {
				within[k] = true
			}
		}
		last, lastAt = g, i
	}
	return within
}

// elemOf returns the element that a line or a picture belongs to; links draw nothing.
func elemOf(item page.Item) *page.Elem {
	switch it := item.(type) {
	case page.Path:
		return it.Elem
	case page.Picture:
		return it.Elem
	}
	return nil
}
