package pdf

import (
	"fmt"

	"ovillo/render/page"
)

// entry is a bookmark in the making.
type entry struct {
	page.Outline
	parent *entry
	kids   []*entry
	object int
}

// nest hangs each bookmark under the last one of a higher level. Levels that skip are closed up.
func nest(list []page.Outline) *entry {
	root := &entry{}
	root.Level = -1 << 31
	last := root
	for _, o := range list {
		parent := last
		for parent != root && parent.Level >= o.Level {
			parent = parent.parent
		}
		last = &entry{Outline: o, parent: parent}
		parent.kids = append(parent.kids, last)
	}
	return root
}

// count is the number of bookmarks below one, all of them open.
func (e *entry) count() int {
	n := len(e.kids)
	for _, k := range e.kids {
		n += k.count()
	}
	return n
}

// addOutline writes the bookmarks and returns their entries of the catalog.
func (f *file) addOutline(d *page.Document) string {
	if len(d.Outline) == 0 {
		return ""
	}
	root := nest(d.Outline)
	root.object = f.reserve()
	f.set(root.object, "<</Type /Outlines"+f.addEntries(d, root)+">>")
	return fmt.Sprintf(" /Outlines %s /PageMode /UseOutlines", reference(root.object))
}

// addEntries writes the bookmarks below one and returns its entries about them.
func (f *file) addEntries(d *page.Document, e *entry) string {
	if len(e.kids) == 0 {
		return ""
	}
	for _, k := range e.kids {
		k.object = f.reserve()
	}
	for i, k := range e.kids {
		s := fmt.Sprintf("<</Title %s /Parent %s /Dest %s", textString(k.Title), reference(e.object), f.destination(d, k.Page, k.Y))
		if i > 0 {
			s += " /Prev " + reference(e.kids[i-1].object)
		}
		if i+1 < len(e.kids) {
			s += " /Next " + reference(e.kids[i+1].object)
		}
		f.set(k.object, s+f.addEntries(d, k)+">>")
	}
	return fmt.Sprintf(" /First %s /Last %s /Count %d", reference(e.kids[0].object), reference(e.kids[len(e.kids)-1].object), e.count())
}
