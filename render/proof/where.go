package proof

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/render/page"
)

// inch is the margin that large print asks for at the top, left and right: LARG-04.
const inch = 25.4

// where looks at whether everything stands inside the block.
func (l *looker) where(n int) {
	p := &l.doc.Pages[n]
	block := boxOf(l.promise.Block)
	if l.promise.Block == (Rect{}) {
		block = box{0, 0, p.W, p.H}
	}
	out := func(b box, words string) {
		if !block.holds(b) {
			l.fault(Outside, n, b.left, b.bottom, words, fmt.Sprintf("from %.2f, %.2f to %.2f, %.2f", b.left, b.top, b.right, b.bottom))
		}
		if l.promise.Large && (b.left < inch-hair || b.top < inch-hair || b.right > p.W-inch+hair) {
			l.fault(LargeMargin, n, b.left, b.bottom, words, "")
		}
	}
	for _, k := range l.sheets[n].texts {
		out(k.box, k.g.Text)
	}
	tagged := false
	for k, it := range p.Items {
		switch it := it.(type) {
		case page.Glyphs:
			tagged = tagged || it.Elem != nil
		case page.Path:
			if b := l.sheets[n].hulls[k]; !block.holds(b) || l.promise.Large {
				out(bounds(it), "a line")
			}
			tagged = tagged || it.Elem != nil
		case page.Picture:
			out(box{it.X, it.Y, it.X + it.W, it.Y + it.H}, "a picture")
			tagged = tagged || it.Elem != nil
		case page.Anchor:
			name, inside := strings.CutPrefix(it.URI, "#")
			to, named := l.doc.Places[name]
			if it.URI == "" {
				to, inside, named = page.Place{Page: it.Page}, true, true
			}
			if inside && (!named || to.Page < 0 || to.Page >= len(l.doc.Pages)) {
				l.fault(DeadLink, n, it.X, it.Y, it.Label, it.URI)
			}
			if inside && it.Label == "" {
				l.fault(MuteLink, n, it.X, it.Y, it.URI, "")
			}
		}
	}
	if !tagged {
		l.fault(Empty, n, 0, 0, p.Label, "")
	}
}

// meetings finds texts that meet: a sweep from top to bottom.
func (l *looker) meetings(n int) {
	list := slices.Clone(l.sheets[n].texts)
	slices.SortStableFunc(list, func(a, b ink) int {
		switch {
		case a.top < b.top:
			return -1
		case a.top > b.top:
			return 1
		}
		return 0
	})
	var open []ink
	for _, k := range list {
		kept := open[:0]
		for _, o := range open {
			if o.bottom <= k.top {
				continue
			}
			kept = append(kept, o)
			if o.meets(k.box) && !neighbours(o, k) || merged(o, k) || merged(k, o) {
				l.fault(Meeting, n, k.left, k.g.Base, o.g.Text+" / "+k.g.Text, "")
			}
		}
		open = append(kept, k)
	}
}

// neighbours reports whether one text goes on where the other ends, so that kerning may draw them together.
func neighbours(a, b ink) bool {
	return a.g.Base == b.g.Base && (near(a.right, b.left) || near(b.right, a.left))
}

func near(x, y float64) bool { return x-y < kerned && y-x < kerned }

// merged reports whether two figures that are said apart look like one: those of two sizes with no white between them.
func merged(a, b ink) bool {
	return a.g.Base == b.g.Base && a.g.Actual != "" && b.g.Actual != "" && a.g.Actual != b.g.Actual && near(a.right, b.left) &&
		wordy(utf8.DecodeLastRuneInString(a.g.Text)) && wordy(utf8.DecodeRuneInString(b.g.Text))
}

// wordy reports whether a sign at the end of a figure makes one word with what touches it.
func wordy(r rune, _ int) bool { return r == '–' || unicode.IsLetter(r) || unicode.IsDigit(r) }
