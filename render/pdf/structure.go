package pdf

import (
	"fmt"
	"strconv"
	"strings"
)

// addTree writes the structure tree and returns its entries of the catalog.
func (f *file) addTree(c *content) string {
	if c.tree == nil {
		return ""
	}
	top := f.reserve()
	f.number(c.tree.root)
	f.addNode(c, c.tree.root, top)
	f.set(top, fmt.Sprintf("<</Type /StructTreeRoot /K [%s] /ParentTree %s /ParentTreeNextKey %d>>",
		reference(c.tree.root.object), reference(f.addParents(c)), c.nextKey()))
	return fmt.Sprintf(" /MarkInfo <</Marked true>> /StructTreeRoot %s", reference(top))
}

// number gives every element its object, in reading order.
func (f *file) number(n *node) {
	n.object = f.reserve()
	n.ordered = n.inOrder()
	for _, h := range n.ordered {
		if h.node != nil {
			f.number(h.node)
		}
	}
}

// addNode writes an element and those below it.
func (f *file) addNode(c *content, n *node, parent int) {
	b := make([]byte, 0, 120) // most have no more
	b = appendReference(append(append(append(b, "<</Type /StructElem /S /"...), n.tag...), " /P "...), parent)
	sheet := n.sheet()
	if sheet >= 0 {
		b = appendReference(append(b, " /Pg "...), f.pages[sheet])
	}
	b = append(append(b, n.properties(c)...), " /K ["...)
	for i, h := range n.ordered {
		if i > 0 {
			b = append(b, ' ')
		}
		switch {
		case h.node != nil:
			f.addNode(c, h.node, n.object)
			b = appendReference(b, h.node.object)
		case h.link != nil:
			b = fmt.Appendf(b, "<</Type /OBJR /Obj %s /Pg %s>>", reference(h.link.object), reference(f.pages[h.sheet]))
		case h.sheet == sheet:
			b = strconv.AppendInt(b, int64(h.mark), 10)
		default:
			b = appendReference(append(b, "<</Type /MCR /Pg "...), f.pages[h.sheet])
			b = append(strconv.AppendInt(append(b, " /MCID "...), int64(h.mark), 10), ">>"...)
		}
	}
	f.objects[n.object] = append(b, "]>>"...)
}

// sheet is the page of the first thing that the element itself holds, -1 if it holds nothing.
func (n *node) sheet() int {
	for _, h := range n.holds {
		if h.node == nil {
			return h.sheet
		}
	}
	return -1
}

// properties are the language, the texts in place of what is seen, and the attributes of an element.
func (n *node) properties(c *content) string {
	s := ""
	if n.actual != "" {
		s += " /ActualText " + textString(n.actual)
	}
	if n.expand != "" {
		s += " /E " + textString(n.expand)
	}
	e := n.elem
	if e == nil {
		return s
	}
	if e.Lang != "" {
		s += " /Lang " + textString(e.Lang)
	}
	if e.Alt != "" {
		s += " /Alt " + textString(e.Alt)
	}
	if cell := n.cell(); cell != "" {
		s += " /A <</O /Table" + cell + ">>"
	}
	if first, ok := n.first(); ok && e.Box != nil {
		s += " /A <</O /Layout /Placement /Block /BBox " +
			rectangle(e.Box[0], e.Box[1], e.Box[2], e.Box[3], c.sheets[first.sheet].h) + ">>"
	}
	return s
}

// cell is the attributes of a table cell.
func (n *node) cell() string {
	if n.tag != "TH" && n.tag != "TD" {
		return ""
	}
	s := ""
	if n.tag == "TH" && n.elem.Scope != "" {
		s += " /Scope /" + n.elem.Scope
	}
	if n.elem.Span[0] > 1 {
		s += fmt.Sprintf(" /RowSpan %d", n.elem.Span[0])
	}
	if n.elem.Span[1] > 1 {
		s += fmt.Sprintf(" /ColSpan %d", n.elem.Span[1])
	}
	return s
}

// addParents writes the tree that leads back from marks and links to their elements.
func (f *file) addParents(c *content) int {
	var b strings.Builder
	b.WriteString("<</Nums [")
	for i, s := range c.sheets {
		fmt.Fprintf(&b, "%d [", i)
		for k, n := range s.marks {
			if k > 0 {
				b.WriteByte(' ')
			}
			b.WriteString(reference(n.object))
		}
		b.WriteString("]\n")
	}
	for _, s := range c.sheets {
		for _, l := range s.links {
			if l.node != nil {
				fmt.Fprintf(&b, "%d %s\n", l.key, reference(l.node.object))
			}
		}
	}
	b.WriteString("]>>")
	return f.add(b.String())
}

// nextKey is the first key that the parent tree does not use.
func (c *content) nextKey() int {
	key := len(c.sheets)
	for _, s := range c.sheets {
		for _, l := range s.links {
			if l.node != nil {
				key++
			}
		}
	}
	return key
}
