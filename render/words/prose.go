package words

import (
	"regexp"
	"strconv"
	"strings"
	"sync"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// markdown is made on first use: a command that prints no prose need not wait for it.
var markdown = sync.OnceValue(func() parser.Parser { return goldmark.DefaultParser() })

// Prose writes a text of the author: paragraphs, lists and headings, with emphasis and links. A name in braces is
// replaced by its value, written for the language and the sizes. Emphasis of either kind is the heavier weight, for the
// pages have no italics.
func (l *Language) Prose(p *plan.Pattern, t plan.Prose) []Block {
	return l.context(p, nil, nil).prose(t)
}

func (c *context) prose(t plan.Prose) []Block {
	source := c.l.read.of(t.Text)
	if strings.TrimSpace(source) == "" {
		return nil
	}
	w := &proseWriter{c: c, values: map[rune]rich.Text{}}
	w.source = []byte(w.hide(source, t.Values))
	w.blocks(markdown().Parse(text.NewReader(w.source)), "")
	return w.out
}

// proseWriter turns a Markdown tree into blocks.
type proseWriter struct {
	c      *context
	source []byte
	values map[rune]rich.Text
	out    []Block
}

// firstHidden starts the characters that stand for values while the Markdown is read. They are private to us by the
// character standard, so no author types them, and no sign of a value is taken for markup.
const firstHidden = '\uE000'

// hide puts a private character in the place of each name in braces that has a value.
func (w *proseWriter) hide(source string, values map[string]plan.Value) string {
	var b strings.Builder
	for {
		open := strings.IndexByte(source, '{')
		if open < 0 {
			break
		}
		length := strings.IndexByte(source[open:], '}')
		if length < 0 {
			break
		}
		b.WriteString(source[:open])
		name := strings.TrimSpace(source[open+1 : open+length])
		if v, ok := values[name]; ok {
			r := firstHidden + rune(len(w.values))
			w.values[r] = w.c.value(v)
			b.WriteRune(r)
		} else {
			b.WriteString(source[open : open+length+1])
		}
		source = source[open+length+1:]
	}
	b.WriteString(source)
	return b.String()
}

// value writes a value of the source for the sizes, or a stitch as the reading abbreviates it.
func (c *context) value(v plan.Value) rich.Text {
	switch {
	case v.Lengths != nil && v.Memory:
		return append(c.both(v.Lengths), rich.Run{Text: FromMemory})
	case v.Lengths != nil:
		return c.both(v.Lengths)
	case v.Form != nil:
		return c.form(*v.Form).one
	}
	return c.tally(v.Counts).text
}

// blocks writes the blocks below a node. The bullet is for the first of them; those behind it belong to the same item.
func (w *proseWriter) blocks(parent ast.Node, bullet string) {
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.List:
			w.list(n)
			continue
		case *ast.Heading:
			w.add(Block{Text: w.inline(n, rich.Run{}), Head: min(n.Level, 2), Bullet: bullet})
		case *ast.Paragraph, *ast.TextBlock:
			w.add(Block{Text: w.inline(n, rich.Run{}), Bullet: bullet})
		case *ast.CodeBlock, *ast.FencedCodeBlock, *ast.HTMLBlock:
			w.add(Block{Text: w.plain(string(n.Lines().Value(w.source)), rich.Run{}), Bullet: bullet})
		default:
			w.blocks(n, bullet)
			continue
		}
		bullet = ""
	}
}

func (w *proseWriter) add(b Block) {
	b.Text = paragraph(b.Text)
	if len(b.Text) > 0 {
		w.out = append(w.out, b)
	}
}

func (w *proseWriter) list(l *ast.List) {
	number := l.Start
	for n := l.FirstChild(); n != nil; n = n.NextSibling() {
		bullet := "•"
		if l.IsOrdered() {
			bullet = strconv.Itoa(number) + "."
			number++
		}
		w.blocks(n, bullet)
	}
}

// inline writes the text below a node in a style.
func (w *proseWriter) inline(parent ast.Node, style rich.Run) rich.Text {
	var out rich.Text
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Text:
			s := string(n.Segment.Value(w.source))
			if n.SoftLineBreak() || n.HardLineBreak() {
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
			inner.Link = string(n.Destination)
			out = append(out, w.inline(n, inner)...)
		case *ast.AutoLink:
			inner := style
			inner.Link = autoAddress(n, w.source)
			out = append(out, w.plain(string(n.Label(w.source)), inner)...)
		case *ast.RawHTML:
			out = append(out, w.plain(string(n.Segments.Value(w.source)), style)...)
		default:
			out = append(out, w.inline(n, style)...)
		}
	}
	return out
}

func autoAddress(n *ast.AutoLink, source []byte) string {
	url := string(n.URL(source))
	if n.AutoLinkType == ast.AutoLinkEmail && !strings.HasPrefix(url, "mailto:") {
		return "mailto:" + url
	}
	return url
}

// plain writes text in a style, with values in the place of their characters.
func (w *proseWriter) plain(s string, style rich.Run) rich.Text {
	var out rich.Text
	put := func(part string) {
		if part != "" {
			r := style
			r.Text = tieUnits(unescaped(part))
			out = append(out, r)
		}
	}
	from := 0
	for i, r := range s {
		v, ok := w.values[r]
		if !ok {
			continue
		}
		put(s[from:i])
		from = i + len(string(r))
		for _, run := range v {
			run.Strong, run.Link = run.Strong || style.Strong, style.Link
			out = append(out, run)
		}
	}
	put(s[from:])
	return out
}

// unitBehind finds a figure with a unit or a sign behind it.
var unitBehind = regexp.MustCompile(`([0-9½¼¾]) (cm|mm|m|g|kg|in|oz|yd|yds|%|°C|°F|×)([^\pL]|$)`)

// tieUnits ties the units of an author's text to their figures.
func tieUnits(s string) string { return unitBehind.ReplaceAllString(s, "$1"+tie+"$2$3") }

// unescaped takes the markup of single characters out of a text: \* and &amp;.
func unescaped(s string) string {
	b := util.UnescapePunctuations([]byte(s))
	return string(util.ResolveEntityNames(util.ResolveNumericReferences(b)))
}
