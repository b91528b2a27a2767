package book

import (
	"errors"
	"fmt"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Options say how a pattern is set.
type Options struct {
	Paper Paper
	Langs []*words.Language // one, or two
	Edition

	room *room // what is left of the pages a document may have
}

// clash says what of the options does not go together.
func (o Options) clash() error {
	full := o.Paper == A4 || o.Paper == Letter
	switch {
	case o.Has(Large | Booklet):
		return errors.New("large print does not go into a booklet")
	case o.Has(Large) && !full:
		return fmt.Errorf("large print needs A4 or Letter, not %s", o.Paper)
	case o.Has(Booklet) && !full:
		return fmt.Errorf("a booklet is printed on A4 or Letter, not on %s", o.Paper)
	}
	return nil
}

// Compose sets a pattern as a document.
func Compose(p *plan.Pattern, o Options) (*page.Document, error) {
	doc, _, err := compose(p, o)
	return doc, err
}

// compose sets a pattern, and says by which elements its steps are found.
func compose(p *plan.Pattern, o Options) (doc *page.Document, volumes []*setter, err error) {
	if n := len(o.Langs); n < 1 || n > 2 {
		return nil, nil, fmt.Errorf("a document has one language or two, not %d", n)
	}
	if len(p.Sizes) == 0 {
		return nil, nil, errors.New("the pattern has no sizes")
	}
	if err := o.clash(); err != nil {
		return nil, nil, err
	}
	sheet := o.Paper
	if o.Has(Booklet) {
		o.Paper = halves[o.Paper]
	}
	if o.Has(Large) {
		p = p.Unrolled() // every row is written out
	}
	o.Langs = o.mannered()
	o.room = &room{}
	defer leave(&err)
	doc = &page.Document{Root: &page.Elem{Tag: "Document", Lang: o.Langs[0].Tag()}, Lang: o.Langs[0].Tag()}
	volumes = o.volumes(p, doc.Root)
	long := false
	for _, s := range volumes {
		s.draft()
		long = long || s.long()
	}
	for _, s := range volumes {
		if long { // all volumes or none
			s.listed()
		}
		s.complete()
	}
	if tooLong(volumes) {
		return nil, nil, ErrLong
	}
	bind(doc, volumes)
	prune(doc.Root, doc.Pages)
	describe(doc, p, volumes)
	if o.Has(Booklet) {
		impose(doc, sheet)
	}
	return doc, volumes, nil
}
