package spelling

import (
	"encoding/csv"
	"errors"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/starter"
	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/picture/files"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
	"ovillo/lang/source"
	"ovillo/lang/terms"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/parallel"
	"ovillo/render/words"
)

// What the program and its examples say is gathered here before it is laid out, text by text, to be spelled: the pages of every
// example in every reading, the messages and the pages behind them, the report, the command, the documents beside the sources.

// A spelled text is one that is to be spelled in a language: that of a reading, or "en" or "es" where it is in no reading.
type spelled struct {
	lang  string
	where string
	text  string
}

// shelf of the texts: they are gathered once a run of the tests.
var shelf struct {
	sync.Once
	all []spelled
	err error
}

// spelledTexts are all texts that are to be spelled.
func spelledTexts(t *testing.T) []spelled {
	t.Helper()
	shelf.Do(func() {
		shelf.err = errors.New("a test gave up while they were gathered")
		g := &gatherer{t: t, seen: map[spelled]bool{}}
		for _, gather := range []func() error{g.examples, g.manners, g.messages, g.printedMessages, g.checks, g.literals, g.beginnings, g.voices, g.cautions, g.documents} {
			if err := gather(); err != nil {
				shelf.err = err
				return
			}
		}
		shelf.all, shelf.err = g.all, nil
	})
	if shelf.err != nil {
		t.Fatal("the texts cannot be gathered: ", shelf.err)
	}
	return shelf.all
}

type gatherer struct {
	t    *testing.T
	all  []spelled
	seen map[spelled]bool
}

func (g *gatherer) add(lang, where, text string) {
	s := spelled{lang: lang, text: strings.TrimSpace(text)}
	if s.text == "" || g.seen[s] {
		return
	}
	g.seen[s] = true
	s.where = where
	g.all = append(g.all, s)
}

// inEveryReading calls f with every example in every reading that its languages have.
func (g *gatherer) inEveryReading(f func(name string, p *plan.Pattern, l *words.Language) error) error {
	for _, s := range whole.Examples(g.t) {
		p := s.Plan(g.t)
		for _, tag := range terms.Standard().Tags() {
			l, err := words.For(tag)
			if err != nil {
				return err
			}
			if !slices.Contains(p.Languages, l.Code()) {
				continue
			}
			if err := f(s.Name, p, l); err != nil {
				return err
			}
		}
	}
	return nil
}

// examples sets the pages of every example in every reading of its languages, each on its own.
func (g *gatherer) examples() error {
	return g.inEveryReading(func(name string, p *plan.Pattern, l *words.Language) error {
		d, err := book.Compose(p, book.Options{Langs: []*words.Language{l}})
		if err != nil {
			return err
		}
		g.document(l.Tag(), name, d, abbreviations(l.Code(), p))
		return nil
	})
}

// manners adds what is said of every example in other manners of writing, and what editions say beside it.
func (g *gatherer) manners() error {
	return g.inEveryReading(func(name string, p *plan.Pattern, l *words.Language) error {
		abbr := abbreviations(l.Code(), p)
		add := func(text string) { g.add(l.Tag(), name, without(norm.NFKC.String(whole.Ties.Replace(text)), abbr)) }
		for _, text := range whole.Said(l.With(words.Manner{Full: true, Named: true}), p) {
			add(text)
		}
		add(l.With(words.Manner{Left: true}).LeftHandedNote(p).String())
		add(l.TesterNote(p).String())
		add(l.LargePrintNote().String())
		for _, f := range l.TesterQuestions(p) {
			add(f.Head + ": " + f.Text.String())
		}
		for _, m := range l.MapSteps(p) {
			add(m.Title + ": " + m.Text.String())
		}
		return nil
	})
}

// document adds all texts of a document: what is printed, what is said in its place, what describes pictures and links, what
// abbreviations stand for, bookmarks, and what the file says about itself.
func (g *gatherer) document(lang, where string, d *page.Document, abbr []string) {
	add := func(text string) {
		g.add(lang, where, without(norm.NFKC.String(whole.Ties.Replace(text)), abbr))
	}
	for _, text := range append([]string{d.Title, d.Author, d.Subject}, d.Keywords...) {
		add(text)
	}
	for _, o := range d.Outline {
		add(o.Title)
	}
	for _, p := range parallel.Of(d) {
		add(p.Text())
		add(p.Alt)
	}
	for _, p := range d.Pages {
		for _, it := range p.Items {
			switch x := it.(type) {
			case page.Glyphs:
				if x.Elem == nil { // running heads and feet, the heads of columns
					add(x.Text)
				}
				add(x.Expand)
			case page.Anchor:
				add(x.Label)
			}
		}
	}
}

// abbreviations are those of the stitches of a pattern in every reading of a language, those that the pages explain and those
// that only others use, and the names of groups that stand in rows. They are the program's own tables, compared elsewhere with
// published ones, and no words for a dictionary.
func abbreviations(code string, p *plan.Pattern) []string {
	var list []string
	for _, tag := range terms.Standard().Tags() {
		l, err := words.For(tag)
		if err != nil || l.Code() != code {
			continue
		}
		for _, a := range l.Abbreviations(p) {
			list = append(list, strings.Split(whole.Ties.Replace(a.Short), ", ")...)
		}
		for _, w := range l.StitchWords(p) {
			list = append(list, whole.Ties.Replace(w[0]))
		}
		for _, w := range l.PlaceWords() {
			list = append(list, whole.Ties.Replace(w[0]), whole.Ties.Replace(w[1]))
		}
	}
	slices.SortFunc(list, func(a, b string) int { return len(b) - len(a) })
	return slices.Compact(list)
}

// without takes words out of a text where they stand alone, at the head of a sentence too.
func without(text string, list []string) string {
	for _, w := range list {
		low := strings.ToLower(w)
		for from := 0; ; {
			i := strings.Index(strings.ToLower(text[from:]), low)
			if i < 0 || len(strings.ToLower(text)) != len(text) {
				break
			}
			i += from
			before, _ := utf8.DecodeLastRuneInString(text[:i])
			after, _ := utf8.DecodeRuneInString(text[i+len(w):])
			if unicode.IsLetter(before) || unicode.IsLetter(after) || unicode.IsDigit(before) {
				from = i + len(w)
				continue
			}
			text = text[:i] + " " + text[i+len(w):]
			from = i
		}
	}
	return text
}

// allAbbreviations are those of all stitches, for texts that belong to no pattern.
func allAbbreviations(code string) []string { return everyAbbreviation()[code] }

var everyAbbreviation = sync.OnceValue(func() map[string][]string {
	p := &plan.Pattern{}
	for _, k := range stitch.Table {
		for post := stitch.NoPost; post <= stitch.BackPost; post++ {
			for together := 1; together <= 3; together++ {
				p.Stitches = append(p.Stitches, stitch.Form{ID: k.ID, Post: post, Together: together})
			}
		}
	}
	return map[string][]string{"en": abbreviations("en", p), "es": abbreviations("es", p)}
})

// messages adds the catalogue, with the places for facts and for code left out.
func (g *gatherer) messages() error {
	for _, e := range diag.All() {
		for lang, w := range map[string]diag.Wording{"en": e.En, "es": e.Es} {
			texts := []string{w.Message, w.Mark, w.Explain}
			for _, m := range []map[string]string{w.Related, w.Help} {
				for _, text := range m {
					texts = append(texts, text)
				}
			}
			for _, text := range texts {
				g.add(lang, string(e.Code), without(withoutHoles(text), allAbbreviations(lang)))
			}
		}
	}
	return nil
}

var (
	codeHole = regexp.MustCompile(`\{=(?:[^{}]|\{[^{}]*\})*\}`)
	someHole = regexp.MustCompile(`\{[a-zA-Z.]+(?:\|or)?\}`)
	formHole = regexp.MustCompile(`\{[a-zA-Z.]+\|([^{}]*)\}`)
)

// withoutHoles leaves the holes of a template out, and keeps the forms that are chosen by a number.
func withoutHoles(template string) string {
	text := someHole.ReplaceAllString(codeHole.ReplaceAllString(template, " "), " ")
	for formHole.MatchString(text) {
		text = formHole.ReplaceAllStringFunc(text, func(s string) string {
			return " " + strings.ReplaceAll(formHole.FindStringSubmatch(s)[1], "|", " ") + " "
		})
	}
	return text
}

// printedMessages adds the messages as they are printed for their examples, without code and without the words of the example.
func (g *gatherer) printedMessages() error {
	for _, e := range diag.All() {
		file := source.NewFile("example.ovillo", e.Whole())
		found := desk.Check(desk.Source{File: file, Open: files.Open}).Found
		names := map[string]bool{}
		for _, w := range wordForm.FindAllString(e.Example, -1) {
			names[strings.ToLower(w)] = true
		}
		for _, lang := range []string{"en", "es"} {
			p := diag.Printer{Lang: lang, Code: func(string) string { return " " }}
			for _, r := range p.Records(file, found) {
				texts := append([]string{r.Message, r.Mark, r.Help}, r.Notes...)
				for _, rel := range r.Related {
					texts = append(texts, rel.Message)
				}
				for _, text := range texts {
					g.add(lang, string(e.Code)+" printed", wordForm.ReplaceAllStringFunc(without(text, allAbbreviations(lang)), func(w string) string {
						if names[strings.ToLower(w)] {
							return " "
						}
						return w
					}))
				}
			}
		}
	}
	return nil
}

var wordForm = regexp.MustCompile(`[\pL_]+`)

// checks adds the list of checks of the report.
func (g *gatherer) checks() error {
	f, err := os.Open(whole.Path(g.t, "render", "report", "checks.csv"))
	if err != nil {
		return err
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		return err
	}
	for _, r := range rows[1:] {
		for i, lang := range []string{"en", "es", "en", "es"} {
			g.add(lang, r[0], r[4+i])
		}
	}
	return nil
}

// literals adds the texts that stand in both languages in the sources of the command and of the report.
func (g *gatherer) literals() error {
	for folder, least := range map[string]int{"cmd/ovillo": 50, "cmd/ovillo/preview": 20, "cmd/ovillo/lsp": 20, "render/report": 50} {
		files, err := filepath.Glob(whole.Path(g.t, filepath.FromSlash(folder), "*.go"))
		if err != nil {
			return err
		}
		n := len(g.all)
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
			if err != nil {
				return err
			}
			lines := exampleLines(f)
			ast.Inspect(f, func(node ast.Node) bool {
				if lit, ok := node.(*ast.CompositeLit); ok && len(lit.Elts) == 2 && !lines[lit] {
					if en, ok := stringOf(lit.Elts[0]); ok {
						if es, ok := stringOf(lit.Elts[1]); ok && isText(lit) {
							g.add("en", name, notProse.ReplaceAllString(withoutHoles(en), " "))
							g.add("es", name, notProse.ReplaceAllString(withoutHoles(es), " "))
						}
					}
				}
				return true
			})
		}
		if len(g.all)-n < least {
			return fmt.Errorf("only %d texts in %s", len(g.all)-n, folder)
		}
	}
	return nil
}

// beginnings adds what the sources say that a pattern is begun with: their remarks, in the language they are written in, and
// their texts.
func (g *gatherer) beginnings() error {
	text := regexp.MustCompile(`^ *(en|es) \| (.*)`)
	for _, kind := range starter.Kinds() {
		for _, lang := range []string{"en", "es"} {
			data, err := starter.Pattern{Kind: kind, Lang: lang, Name: "alba", File: "alba.ovillo", Month: "2026-03"}.Source()
			if err != nil {
				return err
			}
			where := kind.Name + "." + lang + ".ovillo"
			for line := range strings.Lines(string(data)) {
				if m := text.FindStringSubmatch(line); m != nil {
					g.add(m[1], where, m[2])
				} else if _, remark, ok := strings.Cut(line, "#"); ok {
					remark, _, _ = strings.Cut(remark, " write:") // code follows
					remark, _, _ = strings.Cut(remark, "o bien:")
					remark = regexp.MustCompile(`ovillo (check|explain) \S+`).ReplaceAllString(remark, " ")
					g.add(lang, where, notProse.ReplaceAllString(remark, " "))
				}
			}
		}
	}
	return nil
}

// voices adds what the two voices can say, in examples or not. What is said in English stands in every reading of it.
func (g *gatherer) voices() error {
	for voice, tags := range map[string][]string{"english": {"en-US", "en-GB"}, "spanish": {"es"}} {
		files, err := filepath.Glob(whole.Path(g.t, "render", "words", voice+"*.go"))
		if err != nil || len(files) < 5 {
			return fmt.Errorf("only %d files of the voice %s (%v)", len(files), voice, err)
		}
		for _, name := range files {
			f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
			if err != nil {
				return err
			}
			for _, d := range f.Decls {
				ast.Inspect(d, func(node ast.Node) bool {
					if _, ok := node.(*ast.ImportSpec); ok {
						return false
					}
					lit, ok := node.(*ast.BasicLit)
					if !ok || lit.Kind != token.STRING {
						return true
					}
					text, err := strconv.Unquote(lit.Value)
					if err != nil || !strings.Contains(text, " ") { // a word alone may be a key
						return true
					}
					for _, tag := range tags {
						g.add(tag, filepath.Base(name), without(voiceHole.ReplaceAllString(text, " "), allAbbreviations(tag[:2])))
					}
					return true
				})
			}
		}
	}
	return nil
}

// voiceHole is a place for a word, or the sign of a blank that does not break.
var voiceHole = regexp.MustCompile(`\{[^{}]*\}|~`)

// cautions adds the texts of all cautions, which are the same in every reading of their language.
func (g *gatherer) cautions() error {
	f, err := os.Open(whole.Path(g.t, "compile", "caution", "data", "rules.csv"))
	if err != nil {
		return err
	}
	defer f.Close()
	table := csv.NewReader(f)
	table.Comment = '#'
	rows, err := table.ReadAll()
	if err != nil {
		return err
	}
	en, es := slices.Index(rows[0], "en"), slices.Index(rows[0], "es")
	if en < 0 || es < 0 || len(rows) < 10 {
		return fmt.Errorf("no texts in the table of cautions: %v", rows[0])
	}
	for _, r := range rows[1:] {
		g.add("en-US", r[0], r[en])
		g.add("en-GB", r[0], r[en])
		g.add("es", r[0], r[es])
	}
	return nil
}

// exampleLines are the command lines among the texts of a file: the first of the two texts of each example of a command. A test runs them.
func exampleLines(f *ast.File) map[*ast.CompositeLit]bool {
	lines := map[*ast.CompositeLit]bool{}
	ast.Inspect(f, func(node ast.Node) bool {
		kv, ok := node.(*ast.KeyValueExpr)
		if !ok {
			return true
		}
		if key, ok := kv.Key.(*ast.Ident); !ok || key.Name != "examples" {
			return true
		}
		if list, ok := kv.Value.(*ast.CompositeLit); ok {
			for _, e := range list.Elts {
				if pair, ok := e.(*ast.CompositeLit); ok && len(pair.Elts) == 2 {
					if line, ok := pair.Elts[0].(*ast.CompositeLit); ok {
						lines[line] = true
					}
				}
			}
		}
		return true
	})
	return lines
}

// isText reports whether a literal is a text in both languages: text{…}, or said{…} of the language server.
func isText(lit *ast.CompositeLit) bool {
	id, ok := lit.Type.(*ast.Ident)
	return ok && (id.Name == "text" || id.Name == "said")
}

// stringOf is a string, put together from pieces or not.
func stringOf(e ast.Expr) (string, bool) {
	switch x := e.(type) {
	case *ast.BasicLit:
		s, err := strconv.Unquote(x.Value)
		return s, err == nil && x.Kind == token.STRING
	case *ast.BinaryExpr:
		a, ok := stringOf(x.X)
		b, also := stringOf(x.Y)
		return a + b, ok && also
	}
	return "", false
}

// documents adds the prose of the documents beside the sources, without code and addresses.
func (g *gatherer) documents() error {
	for _, name := range []string{"README.md", filepath.Join("lang", "reference.md"), filepath.Join("cmd", "ovillo", "editor", "README.md")} {
		data, err := os.ReadFile(whole.Path(g.t, name))
		if err != nil {
			return err
		}
		for _, paragraph := range strings.Split(notProse.ReplaceAllString(string(data), " "), "\n\n") {
			if inBoth.MatchString(paragraph) {
				continue
			}
			g.add("en", name, without(paragraph, allAbbreviations("en")))
		}
	}
	return nil
}

// inBoth is a table of the words of the language in both languages.
var inBoth = regexp.MustCompile(`^\s*\| \w+ \| Spanish \|`)

// notProse is code between marks or quotes, addresses, names of files and of tags, and flags with what follows them.
var notProse = regexp.MustCompile("(?ms)^ *```.*?^ *```|`[^`]*`|\\[?\\b[\\w-]*/[\\w./-]*|\\]\\([^)]*\\)|\"[^\"\n]*\"|\\b[\\w-]+(\\.[\\w-]+)+|--?[a-z][a-z-]*( [A-Z][A-Z.a-z]*)?|\\b[a-z]{2}-[A-Z]{2}\\b")
