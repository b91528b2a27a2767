// Package markdown reads the texts of an author: paragraphs, headings, lists, emphasis and links in Markdown, with values put
// in between braces. Signs of Markdown that the pages have nothing for are found with their place, so that they are reported
// and never printed raw or lost.
package markdown

import (
	"bytes"
	"net/url"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"ovillo/lang/lazy"
)

// Block is a paragraph, a heading, or a paragraph of an item of a list.
type Block struct {
	Runs   []Run
	Bullet string // "•", "1." …, at the first block of an item
	Deep   int    // in how many lists it stands, one in the other; 0 for none
	Head   int    // level of a heading, from 1; 0 for other blocks
}

// Run is a stretch of text in one style, or a value. A line break of the author is "\n".
type Run struct {
	Text   string
	Hole   *Hole // nil: Text holds
	Strong bool  // emphasis of either kind
	Link   string
}

// Fault is something that the pages have not, with its place in bytes of the text.
type Fault struct {
	What     What
	From, To int
}

// What says what a fault is.
type What string

// What the pages have not.
const (
	Table         What = "table"
	Image         What = "image"
	HTML          What = "html"
	Code          What = "code"
	Quote         What = "quotation"
	Line          What = "line" // across the page
	Strikethrough What = "strikethrough"
	Box           What = "box" // of a task list
	Footnote      What = "footnote"
	Nested        What = "nested"  // lists, or quotations, one in the other deeper than MostDeep
	Address       What = "address" // of a link, that a page may not lead to
)

// MostDeep is how many lists may stand one in the other: a line keeps room for words behind so many bullets.
const MostDeep = 6

// crowded finds a line that opens more lists and quotations than can stand one in the other. It is looked for before a text is read,
// since to read thousands of them takes long.
var crowded = lazy.Regexp(`(?m)^[ \t]*(?:>[ \t]*|(?:[-*+]|[0-9]{1,9}[.)])[ \t]+){` + strconv.Itoa(MostDeep+1) + `,}`)

// reader is made on first use: a command that reads no texts need not wait for it. It knows no tables, whose extension every start of the
// command would wait for.
var reader = sync.OnceValue(func() parser.Parser {
	return goldmark.DefaultParser()
})

// others finds further signs that other tools read and this one would print as they stand.
var others = []struct {
	what What
	sign func() *regexp.Regexp
}{
	{Strikethrough, lazy.Regexp(`(?:^|[^\\~])(~~[^~\s][^~\n]*~~)`)},
	{Box, lazy.Regexp(`(?m)^[ \t]*(?:[-*+]|[0-9]+[.)])[ \t]+(\[[ xX]\])[ \t]`)},
	{Footnote, lazy.Regexp(`(?:^|[^\\])(\[\^[^\]\s]+\])`)},
}

// Read reads a text. The faults are in the order of their places.
func Read(source string) ([]Block, []Fault) {
	if strings.TrimSpace(source) == "" {
		return nil, nil
	}
	if m := crowded().FindStringIndex(source); m != nil {
		return []Block{{Runs: []Run{{Text: source}}}}, []Fault{{Nested, m[0], m[1]}}
	}
	w := hide(source)
	w.blocks(reader().Parse(text.NewReader(w.source)), "", 0)
	for _, s := range others {
		for _, m := range s.sign().FindAllStringSubmatchIndex(source, -1) {
			w.faults = append(w.faults, Fault{s.what, m[2], m[3]})
		}
	}
	slices.SortStableFunc(w.faults, func(a, b Fault) int { return a.From - b.From })
	return w.out, w.faults
}

// writer turns a Markdown tree into blocks.
type writer struct {
	*hidden
	out    []Block
	faults []Fault
}

// blocks writes the blocks below a node. The bullet is for the first of them; those behind it belong to the same item.
func (w *writer) blocks(parent ast.Node, bullet string, deep int) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		b := Block{Bullet: bullet, Deep: deep}
		switch n := n.(type) {
		case *ast.List:
			if deep == MostDeep {
				w.block(Nested, n)
				continue
			}
			w.list(n, deep+1)
			continue
		case *ast.Heading:
			if isTable(n.Lines(), w.source) { // one with a line of dashes below it
				w.block(Table, n)
				continue
			}
			b.Head = n.Level
			b.Runs = w.inline(n, Run{})
		case *ast.Paragraph, *ast.TextBlock:
			if isTable(n.Lines(), w.source) {
				w.block(Table, n)
				continue
			}
			b.Runs = w.inline(n, Run{})
		case *ast.CodeBlock, *ast.FencedCodeBlock:
			w.block(Code, n)
			b.Runs = w.plain(lines(n, w.source), Run{})
		case *ast.HTMLBlock:
			w.block(HTML, n)
			b.Runs = w.plain(lines(n, w.source), Run{})
		case *ast.ThematicBreak:
			w.block(Line, n)
			continue
		case *ast.Blockquote:
			w.block(Quote, n)
			w.blocks(n, bullet, deep)
			bullet = ""
			continue
		default:
			w.blocks(n, bullet, deep)
			continue
		}
		bullet = ""
		w.add(b)
	}
}

func lines(n ast.Node, source []byte) string { return string(n.Lines().Value(source)) }

func (w *writer) add(b Block) {
	b.Runs = slices.DeleteFunc(b.Runs, func(r Run) bool { return r.Text == "" && r.Hole == nil })
	if len(b.Runs) > 0 {
		w.out = append(w.out, b)
	}
}

func (w *writer) list(l *ast.List, deep int) {
	number := l.Start
	for n := l.FirstChild(); n != nil; n = n.NextSibling() {
		bullet := "•"
		if l.IsOrdered() {
			bullet = strconv.Itoa(number) + "."
			number++
		}
		w.blocks(n, bullet, deep)
	}
}

// inline writes the text below a node in a style.
func (w *writer) inline(parent ast.Node, style Run) []Run {
	var out []Run
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Text:
			s := string(n.Segment.Value(w.source))
			switch {
			case n.HardLineBreak():
				s = strings.TrimRight(s, " ") + "\n"
			case n.SoftLineBreak():
				s += " "
			}
			out = append(out, w.plain(s, style)...)
		case *ast.String:
			out = append(out, w.plain(string(n.Value), style)...)
		case *ast.Emphasis:
			inner := style
			inner.Strong = true
			out = append(out, w.inline(n, inner)...)
		case *ast.Link:
			inner := style
			inner.Link = w.linked(n, w.shown(string(n.Destination)))
			out = append(out, w.inline(n, inner)...)
		case *ast.AutoLink:
			inner := style
			inner.Link = w.linked(n, w.shown(address(n, w.source)))
			out = append(out, w.plain(string(n.Label(w.source)), inner)...)
		case *ast.RawHTML:
			w.fault(HTML, n.Segments.At(0).Start, n.Segments.At(n.Segments.Len()-1).Stop)
			out = append(out, w.plain(string(n.Segments.Value(w.source)), style)...)
		default:
			w.unknown(n)
			out = append(out, w.inline(n, style)...)
		}
	}
	return out
}

// schemes are the addresses that a link may have. Others run something, such as javascript:, or lead to a file of whoever reads.
var schemes = map[string]bool{"http": true, "https": true, "mailto": true, "tel": true}

// linked is an address that a link may have; any other is noted, and is none.
func (w *writer) linked(n ast.Node, address string) string {
	u, err := url.Parse(address)
	if err == nil && schemes[u.Scheme] && (u.Host != "" || u.Opaque != "") {
		return address
	}
	from, to := extent(n, w.source)
	w.fault(Address, from, to)
	return ""
}

// unknown notes what a line of text holds that pages have not.
func (w *writer) unknown(n ast.Node) {
	from, to := extent(n, w.source)
	switch n.(type) {
	case *ast.Image:
		w.fault(Image, from, to)
	case *ast.CodeSpan:
		w.fault(Code, from, to)
	}
}

// block notes a block that pages have not.
func (w *writer) block(what What, n ast.Node) {
	from, to := extent(n, w.source)
	w.fault(what, from, to)
}

func (w *writer) fault(what What, from, to int) {
	w.faults = append(w.faults, Fault{what, w.at(from), w.at(max(from, to))})
}

// extent is where a node stands, as far as its lines or the text in it say.
func extent(n ast.Node, source []byte) (from, to int) {
	from, to = -1, -1
	add := func(start, stop int) {
		if from < 0 || start < from {
			from = start
		}
		to = max(to, stop)
	}
	if p := n.Pos(); p >= 0 {
		add(p, p)
	}
	_ = ast.Walk(n, func(m ast.Node, entering bool) (ast.WalkStatus, error) {
		if t, ok := m.(*ast.Text); ok && entering {
			add(t.Segment.Start, t.Segment.Stop)
		}
		if m.Type() == ast.TypeBlock && entering {
			for i := range m.Lines().Len() {
				s := m.Lines().At(i)
				add(s.Start, s.Stop)
			}
		}
		return ast.WalkContinue, nil
	})
	if from < 0 {
		return beside(n, source)
	}
	if to == from {
		to = lineEnd(from, source)
	}
	return from, min(to, len(source))
}

func lineEnd(from int, source []byte) int {
	if n := bytes.IndexByte(source[min(from, len(source)):], '\n'); n >= 0 {
		return from + n
	}
	return len(source)
}

// beside is the place of a node without text of its own: the line behind what stands before it.
func beside(n ast.Node, source []byte) (from, to int) {
	if p := n.PreviousSibling(); p != nil {
		_, from = extent(p, source)
	}
	for from < len(source) && strings.IndexByte(" \t\n", source[from]) >= 0 {
		from++
	}
	return from, lineEnd(from, source)
}

func address(n *ast.AutoLink, source []byte) string {
	url := string(n.URL(source))
	if n.AutoLinkType == ast.AutoLinkEmail && !strings.HasPrefix(url, "mailto:") {
		return "mailto:" + url
	}
	return url
}

// unescaped takes the markup of single characters out of a text: \* and &amp;.
func unescaped(s string) string {
	b := util.UnescapePunctuations([]byte(s))
	return string(util.ResolveEntityNames(util.ResolveNumericReferences(b)))
}
