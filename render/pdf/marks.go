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
	if t == nil {
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
	resumed := s.last.like(q) && actual+expand != ""
	switch {
	case resumed:
		q.node = s.last.node
	case actual+expand != "":
		q.node = t.add(owner, "Span")
		q.node.actual, q.node.expand = actual, expand
	}
	s.begin(q, resumed)
	s.open, s.last = q, q
	return nil
}

// begin writes the opening mark. The replacement text stands in the stream as well as in the tree, since programs that
// copy text read the one and screen readers the other. A sequence resumed after an ornament has said its text already.
func (s *sheet) begin(q sequence, resumed bool) {
	id := len(s.marks)
	s.marks = append(s.marks, q.node)
	s.of.tree.hold(q.node, held{sheet: s.number, mark: id})
	s.b = fmt.Appendf(s.b, "/%s <</MCID %d", q.node.tag, id)
	switch {
	case q.actual == "":
	case resumed:
		s.b = append(s.b, " /ActualText ()"...)
	default:
		s.b = append(append(s.b, " /ActualText "...), textString(q.actual)...)
	}
	if q.expand != "" && !resumed {
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
