package proof

import (
	"cmp"
	"fmt"
	"slices"

	"ovillo/render/page"
)

// Rect is a rectangle on a page in millimetres from its top left corner.
type Rect struct{ X, Y, W, H float64 }

// Promise is what was promised of a document.
type Promise struct {
	Block   Rect    // where everything stands; an empty one: the whole sheet
	Least   float64 // the least size of type in points; 0: 8, and 18 in large print
	Large   bool    // an edition in large print
	LowInk  bool    // an edition in black alone
	LongRow int     // rows with more lines than this may be split; 0: 12
}

// The least sizes of type in points: TYPE-03, LARG-01.
const (
	leastType  = 8.0
	leastLarge = 18.0
	longRow    = 12
)

// Fault is something on a page that breaks a law.
type Fault struct {
	Rule  Rule
	Page  int     // from 0
	X, Y  float64 // where, in millimetres from the top left corner of the sheet; 0, 0 if nowhere in particular
	Words string  // the text at fault, or what the thing is
	Found string  // what was measured, "" if nothing
}

func (f Fault) String() string {
	s := fmt.Sprintf("%s, page %d at %.1f, %.1f: %s: %q", f.Rule, f.Page+1, f.X, f.Y, f.Rule.Name(), f.Words)
	if f.Found != "" {
		s += " (" + f.Found + ")"
	}
	return s
}

// Look returns the faults of a document in the order of its pages, from top to bottom; nil is the usual answer.
func Look(doc *page.Document, p Promise) []Fault {
	if p.Least == 0 {
		p.Least = leastType
		if p.Large {
			p.Least = leastLarge
		}
	}
	if p.LongRow == 0 {
		p.LongRow = longRow
	}
	l := &looker{doc: doc, promise: p}
	l.gather()
	for i := range l.sheets {
		l.where(i)
		l.meetings(i)
		l.lines(i)
		l.grounds(i)
		l.letters(i)
	}
	l.heads()
	l.rows()
	l.tags()
	slices.SortStableFunc(l.faults, func(a, b Fault) int {
		return cmp.Or(cmp.Compare(a.Page, b.Page), cmp.Compare(a.Y, b.Y), cmp.Compare(a.X, b.X), cmp.Compare(a.Rule, b.Rule))
	})
	return l.faults
}

// looker holds what is known of a document while it is looked at.
type looker struct {
	doc     *page.Document
	promise Promise
	sheets  []sheet
	tree    tree
	faults  []Fault

	first, last map[*page.Elem]place // where each element shows
}

// sheet is a page, read.
type sheet struct {
	texts []ink // in the order of drawing
	grid  grid  // of the texts
	hulls []box // of the items that are paths
}

func (l *looker) gather() {
	l.tree = treeOf(l.doc)
	l.sheets = make([]sheet, len(l.doc.Pages))
	for i := range l.doc.Pages {
		s := &l.sheets[i]
		s.hulls = make([]box, len(l.doc.Pages[i].Items))
		for k, it := range l.doc.Pages[i].Items {
			switch it := it.(type) {
			case page.Glyphs:
				if it.Text != "" {
					s.texts = append(s.texts, inkOf(it, k))
				}
			case page.Path:
				s.hulls[k] = hull(it)
			}
		}
		s.grid = gridOf(s.texts)
	}
	l.shown()
}

func (l *looker) fault(r Rule, n int, x, y float64, words, found string) {
	l.faults = append(l.faults, Fault{r, n, x, y, words, found})
}

// at reports a fault of a text.
func (l *looker) at(r Rule, n int, k ink, found string) {
	l.fault(r, n, k.g.X, k.g.Base, k.g.Text, found)
}
