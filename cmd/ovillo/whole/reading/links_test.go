package reading

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	readpdf "github.com/ledongthuc/pdf"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/whole"
	"ovillo/render/book"
)

// target is where a bookmark or a link leads: a page from 0, and a height in points from its foot.
type target struct {
	page int
	y    float64
}

// targetOf reads a destination.
func (d *tagged) targetOf(dest readpdf.Value) target {
	key := pageKey(dest.Index(0))
	at := slices.IndexFunc(d.pages, func(p taggedPage) bool { return pageKey(p.value) == key })
	return target{at, dest.Index(3).Float64()}
}

// first is the first piece of text in an element, and its page.
func (e *element) first() (page int, p *piece) {
	e.each(func(k *element, _ []*element) {
		if p == nil && k.piece != nil && k.piece.y != 0 {
			page, p = k.page, k.piece
		}
	})
	return page, p
}

// blankless is a text without its blanks, which a file has where lines end and columns begin.
func blankless(s string) string { return strings.Join(strings.Fields(s), "") }

// below reports whether a piece stands just below the place that something leads to.
func (t target) below(page int, p *piece) bool {
	const most = 55 // points: the space above the head of a part, and two lines of a title
	return p != nil && t.page == page && p.y < t.y && p.y > t.y-most
}

// eachLink visits the links of the tree that lead to a place in the document.
func (d *tagged) eachLink(visit func(link *element, up []*element, note readpdf.Value, to target)) {
	d.each(func(e *element, up []*element) {
		for _, k := range e.kids {
			if dest := k.link.Key("Dest"); dest.Kind() == readpdf.Array {
				visit(e, up, k.link, d.targetOf(dest))
			}
		}
	})
}

// TestBookmarksAndLinksLeadWhereTheySay reads finished files: a bookmark leads to the head that it names, a line of the list of
// contents to the head that it names on the page that it names, an abbreviation to its row in the table.
func TestBookmarksAndLinksLeadWhereTheySay(t *testing.T) {
	listed, explained := 0, 0
	for _, s := range whole.Examples(t) {
		for _, l := range []desk.Look{{}, {Langs: []string{"en"}}, {Langs: []string{"es"}}, {Edition: book.After}} {
			l = s.Look(t, l)
			name := fmt.Sprint(s.Name, " ", l.Langs, " ", l.Edition)
			d, err := readTagged(s.File(t, l))
			if err != nil {
				t.Fatal(err)
			}
			checkBookmarks(t, name, d)
			listed += checkContents(t, name, d)
			explained += checkAbbreviations(t, name, d)
		}
	}
	if listed < 100 || explained < 300 {
		t.Errorf("only %d lines of contents and %d links from abbreviations", listed, explained)
	}
}

// heads are the heads that begin just below a place, without their blanks.
func (d *tagged) heads(to target) (texts []string) {
	d.each(func(e *element, _ []*element) {
		if page, p := e.first(); heading.MatchString(e.tag) && to.below(page, p) {
			texts = append(texts, blankless(e.text()))
		}
	})
	return texts
}

func checkBookmarks(t *testing.T, name string, d *tagged) {
	t.Helper()
	n := 0
	var down func(v readpdf.Value)
	down = func(v readpdf.Value) {
		for ; !v.IsNull(); v = v.Key("Next") {
			n++
			heads := d.heads(d.targetOf(v.Key("Dest")))
			for title := range strings.SplitSeq(v.Key("Title").Text(), " · ") {
				if !slices.Contains(heads, blankless(title)) {
					t.Errorf("%s: the bookmark %q leads to %q", name, title, heads)
				}
			}
			down(v.Key("First"))
		}
	}
	down(d.root.Key("Outlines").Key("First"))
	if n < 4 {
		t.Errorf("%s: only %d bookmarks", name, n)
	}
}

func checkContents(t *testing.T, name string, d *tagged) (n int) {
	t.Helper()
	d.eachLink(func(link *element, up []*element, note readpdf.Value, to target) {
		if up[len(up)-1].tag != "Reference" {
			return
		}
		n++
		text := blankless(link.text())
		number := fmt.Sprint(to.page + 1)
		title, numbered := strings.CutSuffix(text, number)
		if !numbered || !slices.Contains(d.heads(to), title) || blankless(note.Key("Contents").Text()) != title {
			t.Errorf("%s: the line %q of the contents leads to page %s, %q", name, link.text(), number, d.heads(to))
		}
	})
	return n
}

// pointsAtPage is the text of a link that points at a page.
var pointsAtPage = regexp.MustCompile(`^(?:page|página)([0-9]+)\.?$`)

func checkAbbreviations(t *testing.T, name string, d *tagged) (n int) {
	t.Helper()
	rows := map[target][]string{} // two languages have rows side by side
	d.each(func(e *element, _ []*element) {
		if page, p := e.first(); e.tag == "TH" && p != nil {
			at := target{page, p.y}
			for one := range strings.SplitSeq(strings.ToLower(e.text()), ",") {
				rows[at] = append(rows[at], blankless(one))
			}
		}
	})
	d.eachLink(func(link *element, up []*element, note readpdf.Value, to target) {
		if up[len(up)-1].tag != "P" {
			return
		}
		if m := pointsAtPage.FindStringSubmatch(blankless(link.text())); m != nil { // as behind a caution, to its step
			if m[1] != fmt.Sprint(to.page+1) {
				t.Errorf("%s: %q leads to page %d", name, link.text(), to.page+1)
			}
			return
		}
		n++
		short := strings.ToLower(strings.TrimSpace(link.text()))
		found := false
		for at, row := range rows {
			if at.page == to.page && at.y < to.y && at.y > to.y-15 { // a line and no more
				found = found || slices.Contains(row, blankless(short))
			}
		}
		if !found || note.Key("Contents").Text() == "" {
			t.Errorf("%s: %q leads to %+v, where it is not explained", name, short, to)
		}
	})
	return n
}
