package compile

import (
	"slices"
	"strings"

	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file works out what a part that is like another consists of.

// firstRowWord is how the first row of some statements is called: row or round; "" if there is none.
func firstRowWord(stmts []*lang.Statement) string {
	for _, s := range stmts {
		switch n := s.Node.(type) {
		case *lang.Row:
			return strings.TrimSuffix(n.Head.One+n.Head.Many+n.Head.For, "s")
		case *lang.Shape:
			return strings.TrimSuffix(n.Word, "s")
		}
		if w := firstRowWord(s.Body); w != "" {
			return w
		}
	}
	return ""
}

// withLike returns the statements of a part; a part like another has the other's, with its own in place of those that say
// the same thing: settings, the start, rows of the same label.
func (c *checker) withLike(p *partState, s *lang.Statement, n *lang.Part) []*lang.Statement {
	name := n.Like
	if n.Mirror != nil {
		return c.mirrorOf(p, s, n.Mirror)
	}
	if name == nil {
		return s.Body
	}
	other := c.parts[name.Text]
	if other == nil {
		var known []string
		for k := range c.parts {
			known = append(known, k)
		}
		c.say(codeNoPart, name.Span(), diag.Args{"word": name.Text, "near": lang.Near(name.Text, known)})
		return s.Body
	}
	return c.merge(s, other.stmts, name.Text)
}

// merge puts a part's own statements in place of those of another part that say the same thing.
func (c *checker) merge(s *lang.Statement, base []*lang.Statement, name string) []*lang.Statement {
	own := map[string]*lang.Statement{}
	used := map[*lang.Statement]bool{}
	for _, b := range s.Body {
		if k := likeKey(b); k != "" {
			own[k] = b
		}
	}
	var out []*lang.Statement
	for _, b := range base {
		if o := own[likeKey(b)]; o != nil {
			if !used[o] {
				out = append(out, o)
			}
			used[o] = true
			continue
		}
		out = append(out, b)
	}
	var before, rows []*lang.Statement
	for _, b := range s.Body {
		if used[b] {
			continue
		}
		if r, ok := b.Node.(*lang.Row); ok {
			if l := rowLabel(r.Head); l != "" {
				c.say(codeLikeRow, b.Head, diag.Args{"name": l, "part": name})
			}
			rows = append(rows, b)
			continue
		}
		before = append(before, b)
	}
	// Rows of its own that replace nothing are worked first, behind the start.
	at := slices.IndexFunc(out, func(b *lang.Statement) bool { return likeKey(b) == "start" }) + 1
	return append(before, slices.Insert(out, at, rows...)...)
}

// likeKey says what a statement sets, so that a part like another can set it anew.
func likeKey(s *lang.Statement) string {
	switch n := s.Node.(type) {
	case *lang.Title:
		return "title"
	case *lang.Chain, *lang.Foundation, *lang.Ring, *lang.Start, *lang.From:
		return "start"
	case *lang.Hook:
		return "hook"
	case *lang.Base:
		return "base"
	case *lang.Style:
		return "style"
	case *lang.Make:
		return "make"
	case *lang.Call:
		return "call " + n.Name.Text
	case *lang.Row:
		if l := rowLabel(n.Head); l != "" {
			return "row " + l
		}
	}
	return ""
}

func rowLabel(h *lang.RowHead) string {
	if h == nil {
		return ""
	}
	for _, n := range []*lang.Name{h.Label, h.FLabel, h.NLabel} {
		if n != nil {
			return n.Text
		}
	}
	return ""
}
