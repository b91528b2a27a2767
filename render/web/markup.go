package web

import (
	"strings"
)

// node is an element, or text where it has no tag. Nothing but [node.write] makes markup, so that no text of a pattern can.
type node struct {
	tag   string
	attrs []string // name, value, name, value …; a name behind which "" stands is written alone
	text  string   // of a node without a tag
	raw   string   // markup that this package or render/svg wrote
	kids  []*node
}

// el makes an element.
func el(tag string, kids ...*node) *node { return (&node{tag: tag}).add(kids...) }

// t makes text; "" is none.
func t(s string) *node {
	if s == "" {
		return nil
	}
	return &node{text: s}
}

// add puts nodes at the end of an element; those that are nil are left out.
func (n *node) add(kids ...*node) *node {
	for _, k := range kids {
		if k != nil {
			n.kids = append(n.kids, k)
		}
	}
	return n
}

// with gives an element an attribute.
func (n *node) with(name, value string) *node {
	n.attrs = append(n.attrs, name, value)
	return n
}

// class gives an element its class.
func (n *node) class(c string) *node { return n.with("class", c) }

// empty reports whether there is nothing in an element.
func (n *node) empty() bool { return n == nil || len(n.kids) == 0 && n.text == "" && n.raw == "" }

// void are elements that have no end.
var void = map[string]bool{"meta": true, "input": true, "img": true, "br": true}

// block are elements behind whose end a line may end without a space being added to what is read.
var block = map[string]bool{"html": true, "head": true, "body": true, "meta": true, "title": true, "style": true, "script": true, "header": true,
	"main": true, "article": true, "section": true, "nav": true, "p": true, "h1": true, "h2": true, "h3": true, "h4": true, "ol": true, "ul": true,
	"li": true, "dl": true, "div": true, "table": true, "thead": true, "tbody": true, "tr": true, "figure": true, "aside": true}

func (n *node) write(b *strings.Builder) {
	if n.tag == "" {
		if n.raw != "" {
			b.WriteString(n.raw)
			return
		}
		escape(b, n.text)
		return
	}
	b.WriteString("<" + n.tag)
	for i := 0; i < len(n.attrs); i += 2 {
		b.WriteString(" " + n.attrs[i])
		if v := n.attrs[i+1]; v != "" {
			b.WriteString(`="`)
			escape(b, v)
			b.WriteString(`"`)
		}
	}
	b.WriteString(">")
	if !void[n.tag] {
		for _, k := range n.kids {
			k.write(b)
		}
		b.WriteString("</" + n.tag + ">")
	}
	if block[n.tag] {
		b.WriteString("\n")
	}
}

// html is a node as it is written.
func (n *node) html() string {
	var b strings.Builder
	n.write(&b)
	return b.String()
}

// escape writes text so that it is read as just that, in an element or in an attribute between quotes. What no page may hold is a sign for
// something that is missing.
func escape(b *strings.Builder, s string) {
	for _, r := range s {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case r == '"':
			b.WriteString("&#34;")
		case r == '\'':
			b.WriteString("&#39;")
		case r == '\n' || r == '\t':
			b.WriteRune(r)
		case r < ' ' || r >= 0x7f && r < 0xa0 || r >= 0xfdd0 && r <= 0xfdef || r&0xfffe == 0xfffe:
			b.WriteRune('\uFFFD')
		default:
			b.WriteRune(r)
		}
	}
}
