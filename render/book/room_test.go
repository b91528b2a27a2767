package book

import (
	"errors"
	"fmt"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/page"
)

// A document of as many pages as there may be is set; one that would have a page more is not, and says so, whether that shows
// while its rows are made or only on its sheets.
func TestMostPages(t *testing.T) {
	was := mostPages
	defer func() { mostPages = was }()
	for _, e := range editions[:6] {
		p, o := e.pattern(), Options{Langs: languages(t, e.langs...)}
		mostPages = was
		doc, err := Compose(p, o)
		if err != nil {
			t.Fatal(err)
		}
		n := len(doc.Pages)
		for most := range n + 1 {
			mostPages = most
			doc, err := Compose(p, o)
			if most < n && !errors.Is(err, ErrLong) || most == n && (err != nil || len(doc.Pages) != n) {
				t.Errorf("%s: %d pages where %d may be: %v", e.name, n, most, err)
			}
		}
	}
}

// A part that goes on and on is given up while it is made, and not when all of it is set.
func TestEndlessPart(t *testing.T) {
	was := mostPages
	defer func() { mostPages = was }()
	mostPages = 4
	p := *editions[2].pattern()
	part := *p.Parts[0]
	made := len(part.Steps)
	for range 200 {
		part.Steps = append(part.Steps, part.Steps[:made]...)
	}
	p.Parts = append([]*plan.Part{&part}, p.Parts[1:]...)
	s := newSetter(&p, Options{room: &room{}}, languages(t, "en"), &page.Elem{Tag: "Document"})
	s.section()
	s.list = s.sect.New("L")
	defer func() {
		if r := recover(); r != ErrLong {
			t.Error(fmt.Sprint("it ended with ", r))
		}
		if len(s.flow) > 0 {
			t.Error("something of the part was put on pages")
		}
	}()
	s.partRows(0)
}
