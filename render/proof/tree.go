package proof

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/render/page"
)

// tree is what the structure tree says of each element.
type tree struct {
	order  []*page.Elem // as it is read
	parent map[*page.Elem]*page.Elem
	lang   map[*page.Elem]string // "" where nothing says it
}

func treeOf(doc *page.Document) tree {
	t := tree{parent: map[*page.Elem]*page.Elem{}, lang: map[*page.Elem]string{}}
	var down func(e, parent *page.Elem, lang string)
	down = func(e, parent *page.Elem, lang string) {
		if e.Lang != "" {
			lang = e.Lang
		}
		t.order = append(t.order, e)
		t.parent[e], t.lang[e] = parent, lang
		for _, k := range e.Kids {
			down(k, e, lang)
		}
	}
	if doc.Root != nil {
		down(doc.Root, nil, doc.Lang)
	}
	return t
}

// has reports whether an element is in the tree.
func (t tree) has(e *page.Elem) bool {
	_, ok := t.parent[e]
	return ok
}

// paragraph is the element whose lines a text belongs to: links and spans belong to what they stand in.
func (t tree) paragraph(e *page.Elem) *page.Elem {
	for e != nil && (e.Tag == "Link" || e.Tag == "Span") {
		e = t.parent[e]
	}
	return e
}

// level is the level of a heading, 0 for what is none.
func level(e *page.Elem) int {
	if e == nil || len(e.Tag) != 2 || e.Tag[0] != 'H' || e.Tag[1] < '1' || e.Tag[1] > '6' {
		return 0
	}
	return int(e.Tag[1] - '0')
}

func isHead(e *page.Elem) bool { return level(e) > 0 }

// place is where an element first or last shows.
type place struct {
	page int
	x, y float64
	text string
}

// shown gathers where each element shows, in text or as a drawing: its first place and its last.
func (l *looker) shown() {
	l.first, l.last = map[*page.Elem]place{}, map[*page.Elem]place{}
	see := func(e *page.Elem, p place) {
		if e == nil {
			return
		}
		if f, ok := l.first[e]; !ok || p.page < f.page || p.page == f.page && p.y < f.y {
			l.first[e] = p
		}
		if f, ok := l.last[e]; !ok || p.page > f.page || p.page == f.page && p.y > f.y {
			l.last[e] = p
		}
	}
	for n := range l.doc.Pages {
		for k, it := range l.doc.Pages[n].Items {
			switch it := it.(type) {
			case page.Glyphs:
				see(it.Elem, place{n, it.X, it.Base, it.Text})
			case page.Path:
				if it.Elem != nil {
					b := l.sheets[n].hulls[k]
					see(it.Elem, place{n, b.left, b.bottom, ""})
				}
			case page.Picture:
				see(it.Elem, place{n, it.X, it.Y + it.H, ""})
			}
		}
	}
}

// heads looks at what stands below headings: on the same page, and lower, something that the heading does not name alone;
// and what is read next after it starts on its page.
func (l *looker) heads() {
	low := make([]float64, len(l.doc.Pages)) // the lowest thing on each page that is no heading
	for n := range l.doc.Pages {
		for k, it := range l.doc.Pages[n].Items {
			switch it := it.(type) {
			case page.Glyphs:
				if it.Elem != nil && !isHead(l.tree.paragraph(it.Elem)) {
					low[n] = max(low[n], it.Base)
				}
			case page.Path:
				// A line to write on follows a heading as text does.
				if len(it.Cmds) == 2 || it.Elem != nil {
					low[n] = max(low[n], l.sheets[n].hulls[k].bottom)
				}
			case page.Picture:
				low[n] = max(low[n], it.Y+it.H)
			}
		}
	}
	const under = 2.0 // millimetres: a rule under a heading is a part of it
	// What is read next after a heading, as long as it is in the same section: lines to write on are in no tree.
	next := map[*page.Elem]place{}
	for i := len(l.tree.order) - 1; i >= 0; i-- {
		e := l.tree.order[i]
		p, ok := l.last[e]
		switch {
		case !ok:
		case !isHead(e):
			for up := l.tree.parent[e]; up != nil; up = l.tree.parent[up] {
				next[up] = l.first[e]
			}
		default:
			after, read := next[l.tree.parent[e]]
			if low[p.page] >= p.y+under && read && after.page != p.page {
				l.fault(LastHead, p.page, p.x, p.y, p.text, "")
			}
		}
	}
	for n, s := range l.sheets {
		for _, k := range s.texts {
			if isHead(k.g.Elem) && low[n] < k.g.Base+under {
				l.at(LastHead, n, k, "")
			}
		}
	}
}

// rows looks at what may not be parted by the end of a page: rows of tables, rows of instructions and their counts, cautions.
func (l *looker) rows() {
	span := map[*page.Elem][2]place{} // over an element and all below it
	for i := len(l.tree.order) - 1; i >= 0; i-- {
		e := l.tree.order[i]
		var s [2]place
		ok := false
		join := func(a, b place) {
			if !ok {
				s, ok = [2]place{a, b}, true
				return
			}
			if a.page < s[0].page {
				s[0] = a
			}
			if b.page > s[1].page {
				s[1] = b
			}
		}
		if f, seen := l.first[e]; seen {
			join(f, l.last[e])
		}
		for _, k := range e.Kids {
			if ks, seen := span[k]; seen {
				join(ks[0], ks[1])
			}
		}
		if ok {
			span[e] = s
		}
	}
	lines := l.linesBelow()
	for _, e := range l.tree.order {
		s, ok := span[e]
		if !ok {
			continue
		}
		torn := func(r Rule) {
			l.fault(r, s[1].page, s[1].x, s[1].y, s[1].text, "it starts on page "+fmt.Sprint(s[0].page+1))
		}
		split := s[0].page != s[1].page
		switch {
		case e.Tag == "LI" && split && cautions(l.tree.parent[l.tree.parent[e]]):
			torn(TornCaution) // several cautions may part company; each of them is whole
		case e.Tag == "TR" && split, e.Tag == "LI" && split && lines[e] <= l.promise.LongRow:
			torn(TornRow)
		case e.Tag == "P" && split && cautions(l.tree.parent[e]):
			torn(TornCaution) // what stands above or below a list of cautions
		case e.Tag == "LBody":
			l.together(e, span)
		}
		if e.Tag == "LI" && len(e.Kids) > 1 && e.Kids[0].Tag == "Lbl" {
			label, seen := span[e.Kids[0]]
			if body, has := span[e.Kids[1]]; seen && has && label[1].page != body[0].page {
				l.fault(CountAway, label[1].page, label[1].x, label[1].y, label[1].text, "")
			}
		}
	}
}

// cautions reports whether an element holds cautions: a division of paragraphs and lists without a heading.
func cautions(e *page.Elem) bool {
	return e != nil && e.Tag == "Div" && !slices.ContainsFunc(e.Kids, isHead)
}

// together looks at the paragraphs of a row: label, text and count of one language follow each other without the end of a
// page between them.
func (l *looker) together(body *page.Elem, span map[*page.Elem][2]place) {
	before := map[string]place{}
	for _, k := range body.Kids {
		s, ok := span[k]
		if k.Tag != "P" || !ok {
			continue
		}
		lang := l.tree.lang[k]
		if b, seen := before[lang]; seen && b.page != s[0].page {
			l.fault(CountAway, s[0].page, s[0].x, s[0].y, s[0].text, "its text ends on page "+fmt.Sprint(b.page+1))
		}
		before[lang] = s[1]
	}
}

// linesBelow counts the baselines of each list item, over its languages: what faces each other is one line.
func (l *looker) linesBelow() map[*page.Elem]int {
	item := map[*page.Elem]*page.Elem{} // the innermost item around an element
	for _, e := range l.tree.order {
		item[e] = item[l.tree.parent[e]]
		if e.Tag == "LI" {
			item[e] = e
		}
	}
	type at struct {
		item *page.Elem
		page int
		base int
	}
	seen := map[at]bool{}
	count := map[*page.Elem]int{}
	for n, s := range l.sheets {
		for _, k := range s.texts {
			if li := item[k.g.Elem]; li != nil && k.g.Elem != nil {
				if a := (at{li, n, int(k.g.Base*10 + 0.5)}); !seen[a] {
					seen[a] = true
					for e := li; e != nil; e = item[l.tree.parent[e]] {
						count[e]++
					}
				}
			}
		}
	}
	return count
}

// tags looks at what is said to those who do not see the pages.
func (l *looker) tags() {
	if l.doc.Root == nil {
		l.fault(Untagged, 0, 0, 0, l.doc.Title, "the document has no structure")
		return
	}
	for n, s := range l.sheets {
		for _, k := range s.texts {
			switch {
			case k.g.Elem == nil:
			case !l.tree.has(k.g.Elem):
				l.at(Untagged, n, k, k.g.Elem.Tag)
			case l.tree.lang[k.g.Elem] == "":
				l.at(NoLanguage, n, k, "")
			}
		}
	}
	for e, p := range l.first {
		if !l.tree.has(e) && p.text == "" {
			l.fault(Untagged, p.page, p.x, p.y, "a drawing", e.Tag)
		}
	}
	levels := map[string]int{} // of the last heading in each language
	for _, e := range l.tree.order {
		p := l.first[e]
		switch n := level(e); {
		case n > 0:
			if lang := l.tree.lang[e]; n > levels[lang]+1 {
				l.fault(SkippedLevel, p.page, p.x, p.y, p.text, fmt.Sprintf("level %d after %d", n, levels[lang]))
				levels[lang] = n
			} else {
				levels[lang] = n
			}
		case e.Tag == "Figure" && strings.TrimSpace(e.Alt) == "":
			l.fault(NoDescription, p.page, p.x, p.y, e.Tag, "")
		case e.Tag == "Table" && !headed(e):
			l.fault(NoHeaderCell, p.page, p.x, p.y, e.Tag, "")
		case e.Tag == "L" && !listed(e):
			l.fault(BrokenList, p.page, p.x, p.y, e.Tag, "")
		}
	}
}

// headed reports whether a table has cells that are heads, and each of them says of what.
func headed(table *page.Elem) bool {
	heads := 0
	whole := true
	var down func(e *page.Elem)
	down = func(e *page.Elem) {
		if e.Tag == "TH" {
			heads++
			whole = whole && e.Scope != ""
		}
		for _, k := range e.Kids {
			down(k)
		}
	}
	down(table)
	return heads > 0 && whole
}

// listed reports whether a list holds items only, and each item a body.
func listed(list *page.Elem) bool {
	for _, li := range list.Kids {
		body := false
		for _, k := range li.Kids {
			body = body || k.Tag == "LBody"
		}
		if li.Tag != "LI" || !body {
			return false
		}
	}
	return len(list.Kids) > 0
}
