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
}

// Compose sets a pattern as a document.
func Compose(p *plan.Pattern, o Options) (*page.Document, error) {
	if n := len(o.Langs); n < 1 || n > 2 {
		return nil, fmt.Errorf("a document has one language or two, not %d", n)
	}
	if len(p.Sizes) == 0 {
		return nil, errors.New("the pattern has no sizes")
	}
	if o.Has(Large) && o.Paper != A4 && o.Paper != Letter {
		return nil, fmt.Errorf("large print needs A4 or Letter, not %s", o.Paper)
	}
	doc := &page.Document{Root: &page.Elem{Tag: "Document", Lang: o.Langs[0].Tag()}, Lang: o.Langs[0].Tag()}
	volumes := o.volumes(p, doc.Root)
	for _, s := range volumes {
		s.compose()
	}
	bind(doc, volumes)
	prune(doc.Root, doc.Pages)
	describe(doc, p, volumes)
	return doc, nil
}
