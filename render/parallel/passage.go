package parallel

import (
	"math"
	"strings"
	"unicode/utf8"

	"ovillo/render/font"
	"ovillo/render/page"
)

// Passage is one element of a document with text of its own, in reading order.
type Passage struct {
	Section int    // which section of the document it stands in, from 0
	Tag     string // its structure type: H1, H2, P, Lbl, LBody, TH, TD, Figure …
	Lang    string // of the text, as the element or one above it below the root says; "": it serves all languages
	Runs    []Run
	Alt     string // of a Figure
}

// Run is a stretch of text.
type Run struct {
	Text string
	List bool   // numbers of several sizes, each behind the name of its size, as they are read aloud
	Seen string // of a list: what is printed
}

// Text is the whole text of a passage, with single ordinary blanks.
func (p Passage) Text() string {
	var b strings.Builder
	for _, r := range p.Runs {
		b.WriteString(r.Text)
	}
	return plain(b.String())
}

// unseen are the soft hyphen and the narrow space between groups of figures.
var unseen = strings.NewReplacer("\u00ad", "", "\u202f", "")

// plain is a text with single ordinary blanks, and numbers in one piece.
func plain(s string) string { return strings.Join(strings.Fields(unseen.Replace(s)), " ") }

// Add adds a text, or what is said in its place if that is not empty.
func (p *Passage) Add(text, said string) {
	r := Run{Text: text}
	if said != "" {
		r = Run{Text: said, List: true, Seen: text}
	}
	if n := len(p.Runs); n > 0 && p.Runs[n-1].List == r.List {
		p.Runs[n-1].Text += r.Text
		p.Runs[n-1].Seen += r.Seen
		return
	}
	p.Runs = append(p.Runs, r)
}

// see adds what is printed to the list that ends the passage, where it is said already.
func (p *Passage) see(text string) { p.Runs[len(p.Runs)-1].Seen += text }

// In picks the passages in a language, and those that serve all.
func In(all []Passage, lang string) []Passage {
	var out []Passage
	for _, p := range all {
		if p.Lang == lang || p.Lang == "" {
			out = append(out, p)
		}
	}
	return out
}

// Of reads the passages of finished pages. What is said in place of what is printed counts as the text.
func Of(d *page.Document) []Passage {
	if d.Root == nil {
		return nil
	}
	texts := textsOf(d)
	var out []Passage
	section := -1
	var down func(e *page.Elem, lang string)
	down = func(e *page.Elem, lang string) {
		if e.Tag == "Sect" {
			section++
		}
		if e.Lang != "" && e != d.Root {
			lang = e.Lang
		}
		p := Passage{Section: max(section, 0), Tag: e.Tag, Lang: lang, Alt: e.Alt}
		if t := texts[e]; t != nil {
			p.Runs = t.Runs
		}
		if p.Text() != "" || p.Alt != "" {
			out = append(out, p)
		}
		for _, k := range e.Kids {
			down(k, lang)
		}
	}
	down(d.Root, "")
	return out
}

// AroundLinks says of links which element they run on in: they are a part of its text.
func AroundLinks(root *page.Elem) map[*page.Elem]*page.Elem {
	within := map[*page.Elem]*page.Elem{}
	var down func(e, block *page.Elem)
	down = func(e, block *page.Elem) {
		if e.Tag == "Link" {
			within[e] = block
		} else {
			block = e
		}
		for _, k := range e.Kids {
			down(k, block)
		}
	}
	if root != nil { // pages without a tree have no links to speak of
		down(root, root)
	}
	return within
}

// textsOf gathers the text of every element, with a blank where it goes on in another line or column.
func textsOf(d *page.Document) map[*page.Elem]*Passage {
	texts := map[*page.Elem]*Passage{}
	last := map[*page.Elem]placed{}
	within := AroundLinks(d.Root)
	for i := range d.Pages {
		for _, it := range d.Pages[i].Items {
			g, ok := it.(page.Glyphs)
			if !ok || g.Elem == nil || g.Text == "" {
				continue
			}
			if e := within[g.Elem]; e != nil {
				g.Elem = e
			}
			t := texts[g.Elem]
			if t == nil {
				t = &Passage{}
				texts[g.Elem] = t
			}
			was, more := last[g.Elem]
			if more && was.apart(i, g) && !joins(was.Text) {
				last := &t.Runs[len(t.Runs)-1]
				last.Text += " "
				if last.List {
					last.Seen += " "
				}
			}
			if more && g.Actual != "" && g.Actual == was.Actual { // runs with one replacement are replaced together
				t.see(g.Text)
			} else {
				t.Add(g.Text, g.Actual)
			}
			last[g.Elem] = placed{g, i}
		}
	}
	return texts
}

// placed is a run of text and the page it stands on.
type placed struct {
	page.Glyphs
	page int
}

// apart reports whether a run begins elsewhere than where this one ends.
func (p placed) apart(page int, g page.Glyphs) bool {
	const point = 72 / 25.4
	em := p.Size / point
	end := p.X + font.Of(p.Face).Tracked(p.Glyphs.Text, p.Size, p.Track)
	return page != p.page || math.Abs(g.Base-p.Base) > 0.6*em || math.Abs(g.X-end) > 0.15*em
}

// joins reports whether a text ends with a sign after which a line may be broken in the middle of a word.
func joins(text string) bool {
	last, size := utf8.DecodeLastRuneInString(text)
	before, _ := utf8.DecodeLastRuneInString(text[:len(text)-size])
	return strings.ContainsRune("-–—/\u00ad", last) && before != ' ' && before != '\u00a0'
}
