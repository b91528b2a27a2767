package desk

import (
	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Look is how pages are set.
type Look struct {
	Paper   book.Paper
	Edition book.Edition
	Langs   []string // tags, one or two
}

// Pages sets a checked pattern. A tag that is not known is an error.
func Pages(p *plan.Pattern, l Look) (*page.Document, error) {
	o, err := l.options()
	if err != nil {
		return nil, err
	}
	return book.Compose(p, o)
}

// BookPages sets a checked book.
func BookPages(b *plan.Book, l Look) (*page.Document, error) {
	o, err := l.options()
	if err != nil {
		return nil, err
	}
	return book.Bind(b, o)
}

func (l Look) options() (book.Options, error) {
	o := book.Options{Paper: l.Paper, Edition: l.Edition}
	for _, tag := range l.Langs {
		lang, err := words.For(tag)
		if err != nil {
			return o, err
		}
		o.Langs = append(o.Langs, lang)
	}
	return o, nil
}
