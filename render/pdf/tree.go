package pdf

import (
	"cmp"
	"fmt"
	"slices"

	"ovillo/render/page"
)

// deepest is the limit of nesting of the structure tree; ten levels are usual.
const deepest = 100

// inline says of every structure type that may be used whether it runs on within a line.
var inline = map[string]bool{
	"Document": false, "Part": false, "Art": false, "Sect": false, "Div": false, "BlockQuote": false, "Caption": false,
	"TOC": false, "TOCI": false, "Index": false, "NonStruct": false, "P": false, "H": false, "H1": false, "H2": false,
	"H3": false, "H4": false, "H5": false, "H6": false, "L": false, "LI": false, "Lbl": false, "LBody": false,
	"Table": false, "THead": false, "TBody": false, "TFoot": false, "TR": false, "TH": false, "TD": false,
	"Figure": false, "Formula": false,
	"Span": true, "Quote": true, "Note": true, "Reference": true, "BibEntry": true, "Code": true, "Link": true,
}

// tree is the structure tree with what each element holds. A nil tree is that of an untagged document.
type tree struct {
	root  *node
	nodes map[*page.Elem]*node
	count int // of what is held
}

// node is an element of the structure tree.
type node struct {
	tag            string
	elem           *page.Elem // nil for an element that the writer adds
	actual, expand string
	parent         *node
	kids           []*node // the elements below, in reading order
	holds          []held  // what the pages say belongs to it, in order of drawing
	ordered        []held  // both as they are read, once all is drawn
	object         int
}

// held is a piece of a page, a link, or an element that the writer adds.
type held struct {
	order order
	sheet int
	mark  int
	link  *link
	node  *node
}

// order is the place of something in the order of reading: the position of its page, then the order of drawing.
type order struct{ page, count int }

func (o order) before(p order) bool { return o.compare(p) < 0 }

func (o order) compare(p order) int {
	return cmp.Or(cmp.Compare(o.page, p.page), cmp.Compare(o.count, p.count))
}

func newTree(root *page.Elem) (*tree, error) {
	if root == nil {
		return nil, nil
	}
	t := &tree{nodes: map[*page.Elem]*node{}}
	r, err := t.grow(root, nil, 1)
	t.root = r
	return t, err
}

func (t *tree) grow(e *page.Elem, parent *node, depth int) (*node, error) {
	if e == nil {
		return nil, fmt.Errorf("an empty element in the structure tree, below %s", parent.tag)
	}
	if depth > deepest {
		return nil, fmt.Errorf("the structure tree is deeper than %d elements", deepest)
	}
	if t.nodes[e] != nil {
		return nil, fmt.Errorf("an element %s stands twice in the structure tree", e.Tag)
	}
	if err := checkElem(e); err != nil {
		return nil, err
	}
	n := &node{tag: e.Tag, elem: e, parent: parent}
	t.nodes[e] = n
	for _, kid := range e.Kids {
		k, err := t.grow(kid, n, depth+1)
		if err != nil {
			return nil, err
		}
		n.kids = append(n.kids, k)
	}
	return n, nil
}

func checkElem(e *page.Elem) error {
	if _, known := inline[e.Tag]; !known {
		return fmt.Errorf("%q is not a structure type", e.Tag)
	}
	if e.Lang != "" && !languageTag.MatchString(e.Lang) {
		return fmt.Errorf("element %s: %q is not a language tag", e.Tag, e.Lang)
	}
	switch e.Scope {
	case "", "Row", "Column", "Both":
	default:
		return fmt.Errorf("element %s: the scope %q is none of Row, Column, Both", e.Tag, e.Scope)
	}
	if e.Span[0] < 0 || e.Span[1] < 0 {
		return fmt.Errorf("element %s spans %d rows and %d columns", e.Tag, e.Span[0], e.Span[1])
	}
	if e.Box != nil {
		return finite("figure", e.Box[:]...)
	}
	return nil
}

// of returns the node of an element that an item names.
func (t *tree) of(e *page.Elem) (*node, error) {
	if n := t.nodes[e]; n != nil {
		return n, nil
	}
	return nil, fmt.Errorf("an item belongs to an element %s that is not in the structure tree", e.Tag)
}

// block is the paragraph, cell or the like that an element runs in.
func (n *node) block() *node {
	for inline[n.tag] && n.parent != nil {
		n = n.parent
	}
	return n
}

// note says that something on a page belongs to a node.
type note struct {
	node *node
	held held
}

// hold notes that something belongs to a node.
func (s *sheet) hold(n *node, h held) {
	h.order.page = s.order
	s.held = append(s.held, note{n, h})
}

// add puts an element of the writer's own below a node, at the place of what is drawn next.
func (s *sheet) add(parent *node, tag string) *node {
	n := &node{tag: tag, parent: parent}
	s.hold(parent, held{node: n})
	return n
}

// holdAll tells the nodes what belongs to them on the page drawn next.
func (t *tree) holdAll(notes []note) {
	for _, n := range notes {
		t.count++
		n.held.order.count = t.count
		n.node.holds = append(n.node.holds, n.held)
	}
}

// first is the earliest piece of a page in a node or below it; ok is false if there is none.
func (n *node) first() (h held, ok bool) {
	better := func(c held, found bool) {
		if found && (!ok || c.order.before(h.order)) {
			h, ok = c, true
		}
	}
	for _, c := range n.holds {
		if c.node != nil {
			better(c.node.first())
		} else {
			better(c, true)
		}
	}
	for _, k := range n.kids {
		better(k.first())
	}
	return h, ok
}

func inReading(a, b held) int { return a.order.compare(b.order) }

// inOrder merges what a node holds with the elements below it, so that a word in a span of its own stands where it is
// read. The order of the elements is never changed; one that holds nothing stays with the one before it.
func (n *node) inOrder() []held {
	out := make([]held, 0, len(n.holds)+len(n.kids))
	kids := n.kids
	holds := n.holds
	if !slices.IsSortedFunc(holds, inReading) {
		holds = slices.SortedFunc(slices.Values(holds), inReading)
	}
	for _, h := range holds {
		for len(kids) > 0 {
			first, ok := kids[0].first()
			if ok && h.order.before(first.order) {
				break
			}
			out = append(out, held{node: kids[0]})
			kids = kids[1:]
		}
		out = append(out, h)
	}
	for _, k := range kids {
		out = append(out, held{node: k})
	}
	return out
}
