package compile

import (
	"errors"
	"io/fs"
	"path"
	"slices"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Bound is a pattern of a book, checked by itself.
type Bound struct {
	Name string     // of its file, from the folder of the book
	Tree *lang.File // as it was read, with the files it uses
	Outcome
}

// Files are the files that the pattern was read from, from the folder of the book: its own and those it uses.
func (b *Bound) Files() []string {
	files := []string{b.Name}
	for _, used := range b.Tree.Used() {
		files = append(files, path.Join(path.Dir(b.Name), used))
	}
	return files
}

// checkBook checks a book: what it says itself, and each of its patterns as it is checked alone. What was found in a pattern
// stands with the pattern; the book says which ones have errors.
func checkBook(f *lang.File, books []*lang.Statement, o Options) Outcome {
	c := newChecker(f)
	b := &binding{checker: c, open: o.Open, said: map[string]source.Span{}}
	if len(books) > 1 {
		c.report(diag.Diagnostic{Code: codeTwice, Span: books[1].Head, Args: diag.Args{"name": "book"},
			Related: []diag.Related{{Span: books[0].Head, Key: "first"}}})
	}
	for _, s := range f.Body {
		if _, book := s.Node.(*lang.Book); !book && s.Node != nil {
			c.say(codeBookBeside, s.Head, nil)
		}
	}
	head := books[0]
	if n := head.Node.(*lang.Book).Name; n != nil {
		c.pat.Name = n.Text
	}
	c.headed(head)
	for _, s := range head.Body {
		if n, ok := s.Node.(*lang.BookPattern); ok {
			b.bind(n)
		}
	}
	if len(b.bound) == 0 && !c.out.HasErrors() {
		c.say(codeBookEmpty, head.Head, nil)
	}
	c.putAllIn()
	c.signs()
	out := Outcome{Found: c.out, Bound: b.bound, Book: &plan.Book{Head: c.pat}, Sound: !c.out.HasErrors()}
	for _, p := range b.bound {
		if p.Pattern != nil {
			out.Book.Patterns, out.Book.Files = append(out.Book.Patterns, p.Pattern), append(out.Book.Files, p.Name)
		}
	}
	if len(out.Book.Patterns) > 0 {
		c.pat.UKTerms = out.Book.Patterns[0].UKTerms
	}
	return out
}

// binding is the state of checking a book.
type binding struct {
	*checker
	open  func(name string) ([]byte, error)
	said  map[string]source.Span
	terms *plan.Pattern // the first pattern, whose terms hold for all
	bound []Bound
}

// bind reads and checks one pattern.
func (b *binding) bind(n *lang.BookPattern) {
	at, args := n.File.Span(), diag.Args{"file": strconv.Quote(n.File.Text)}
	name, inside := lang.InFolder(".", n.File.Text)
	if !inside {
		b.say(codeBookName, at, args)
		return
	}
	if was, twice := b.said[name]; twice {
		b.report(diag.Diagnostic{Code: codeTwice, Span: at, Args: diag.Args{"name": strconv.Quote(name)}, Related: []diag.Related{{Span: was, Key: "first"}}})
		return
	}
	b.said[name] = at
	if b.open == nil {
		b.report(diag.Diagnostic{Code: codeBookRead, Span: at, Args: args, Help: "folder"})
		return
	}
	data, err := b.open(name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		b.say(codeBookMissing, at, args)
		return
	case err != nil:
		b.report(diag.Diagnostic{Code: codeBookRead, Span: at, Args: args, Help: "closed"})
		return
	}
	data = data[:min(len(data), lang.MostBytes+1)] // enough to be refused
	folder := path.Dir(name)
	open := func(name string) ([]byte, error) { return b.open(path.Join(folder, name)) }
	tree, found := lang.Load(source.NewFile(b.file.Beside(name), string(data)), open)
	p := Bound{Name: name, Tree: tree, Outcome: Outcome{Found: found}}
	switch {
	case len(blocks[*lang.Book](tree.Body)) > 0:
		b.report(diag.Diagnostic{Code: codeBookPattern, Span: at, Args: args, Help: "book"})
		return
	case !found.HasErrors():
		p.Outcome = CompileWith(tree, Options{Open: open})
		p.Found = append(found, p.Found...)
	}
	b.bound = append(b.bound, p)
	if p.Found.HasErrors() || p.Pattern == nil {
		b.report(diag.Diagnostic{Code: codeBookPattern, Span: at, Args: args, Help: "errors"})
		return
	}
	b.agrees(p.Pattern, at, args)
}

// agrees reports a pattern that lacks a language of the book, or reads the names of stitches in another way than the first one.
func (b *binding) agrees(p *plan.Pattern, at source.Span, args diag.Args) {
	for _, l := range b.pat.Languages {
		if !slices.Contains(p.Languages, l) {
			b.say(codeBookLanguage, at, diag.Args{"file": args["file"], "language": l})
		}
	}
	if b.terms == nil {
		b.terms = p
	} else if b.terms.UKTerms != p.UKTerms {
		b.say(codeBookTerms, at, args)
	}
}
