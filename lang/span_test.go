package lang

import (
	"bufio"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// The laws of spans: a span begins and ends at a token that says something, a part lies inside its node, parts and
// statements follow one another, and a block lies inside its statement.
func TestSpansNestAndFollow(t *testing.T) {
	for _, f := range sources(t) {
		tree, _ := Parse(f)
		checkSpans(t, tree)
	}
}

func checkSpans(t testing.TB, tree *File) {
	t.Helper()
	f := tree.Source
	bad := func(s source.Span, why string) {
		t.Errorf("%s:%d: %q %s", f.Name, f.Line(s.Start), f.Slice(s), why)
	}
	last := int32(0)
	WalkStatements(tree.Body, func(s *Statement) bool {
		if s.Head.Start < last || s.Whole.Start != s.Head.Start || !s.Whole.Contains(s.Head) {
			bad(s.Head, "lies before the statement above or outside itself")
		}
		last = s.Head.End
		exact(f, s.Head, bad)
		exact(f, s.Whole, bad)
		inner := s.Head.End
		for _, c := range s.Body {
			if c.Whole.Start < inner || !s.Whole.Contains(c.Whole) {
				bad(c.Head, "is not inside its block")
			}
			inner = c.Whole.End
		}
		for _, l := range s.Lines {
			if !s.Whole.Contains(l.Span) || f.Slice(l.Span) != l.Text {
				bad(l.Span, "is not the text of its line")
			}
		}
		if s.Node != nil {
			if s.Node.Span() != s.Head {
				bad(s.Node.Span(), "is not the span of its statement")
			}
			checkNode(f, s.Node, bad)
		}
		return true
	})
}

// checkNode checks the parts of a node.
func checkNode(f *source.File, n Node, bad func(source.Span, string)) {
	span := n.Span()
	last := span.Start
	first := true
	Inspect(n, func(c Node) bool {
		if first {
			first = false
			return true
		}
		s := c.Span()
		if !span.Contains(s) {
			bad(s, "lies outside its node")
		}
		if s.Start < last {
			bad(s, "begins before the part before it ends")
		}
		last = s.End
		exact(f, s, bad)
		checkNode(f, c, bad)
		return false
	})
}

func exact(f *source.File, s source.Span, bad func(source.Span, string)) {
	if text := f.Slice(s); strings.Trim(text, " \t\n\u00a0") != text {
		bad(s, "is not exact")
	}
}

// The text of a statement, read on its own, is the same statement.
func TestSpansReadTheSame(t *testing.T) {
	for _, f := range sources(t) {
		tree, _ := Parse(f)
		var check func(in Block, body []*Statement)
		check = func(in Block, body []*Statement) {
			for _, s := range body {
				again := &blocks{file: source.NewFile("again.ovillo", f.Slice(s.Head))}
				again.tokens = Tokens(again.file.Text)
				if tree.tongue != nil {
					again.spelt = tree.tongue.respell(again.file.Text, again.tokens)
					again.tokens = again.spelt.tokens
				}
				kind := again.find(in, 0)
				if _, isEnd := s.Node.(*EndClaims); isEnd {
					kind = endForm
				}
				g := again.gather()
				node, err := kind.read(again.feed(g).upgrade())
				alone := &File{Source: again.file, Body: []*Statement{{Node: node}}, tongue: tree.tongue}
				if err == nil && tree.tongue != nil {
					alone.bringNames(alone.nameUses(), tree.own)
				}
				if err != nil {
					t.Errorf("%s: %q: %v", f.Name, again.file.Text, err)
				} else if got, want := nodeText(node), nodeText(s.Node); got != want {
					t.Errorf("%s: %q reads\n%s\nand alone\n%s", f.Name, again.file.Text, want, got)
				}
				check(s.Block, s.Body)
			}
		}
		check(InFile, tree.Body)
	}
}

func nodeText(n StatementNode) string {
	var b strings.Builder
	d := &dumper{Writer: bufio.NewWriter(&b)}
	d.node(n, "")
	d.Flush()
	return b.String()
}
