package desk

import (
	"bytes"

	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/pdf"
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

// PDF sets a checked pattern and returns its file, with the number of its pages. Inside, its source is called by a name. The file is whole in
// memory before anything is written, so that nothing is written if the pattern cannot be set.
func PDF(p *plan.Pattern, l Look, sourceName string, profile pdf.Profile) (file []byte, pages int, err error) {
	doc, err := Pages(p, l)
	if err != nil {
		return nil, 0, err
	}
	doc.Source, doc.SourceName = p.Source, sourceName
	var b bytes.Buffer
	if err := pdf.Write(&b, doc, pdf.Options{Profile: profile}); err != nil {
		return nil, 0, err
	}
	return b.Bytes(), len(doc.Pages), nil
}
