package compile

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/sign"
	"ovillo/lang/source"
)

// This file looks for letters and signs that the faces of the pages do not have, in every text that is printed. It reads the
// tree, so that a text is found whatever becomes of it.

// signs looks at every text of the source.
func (c *checker) signs() {
	lang.WalkStatements(c.file.Body, func(s *lang.Statement) bool {
		if _, chart := s.Node.(*lang.Chart); !chart { // the marks of a chart are drawn as yarns
			for _, l := range s.Lines {
				c.printable(l.Span, l.Text)
			}
		}
		return true
	})
	lang.Walk(c.file, func(n lang.Node) bool {
		switch n := n.(type) {
		case *lang.Photo:
			return false // its file is opened, and what it shows is heard
		case *lang.Edition, *lang.Legend:
			return false // a date, and marks
		case *lang.Str:
			c.printable(n.Span(), n.Text)
		}
		return true
	})
	c.printedNames()
}

// printable reports the signs of a text that the faces do not have, at the first of them.
func (c *checker) printable(at source.Span, text string) {
	missing := sign.Missing(text)
	if missing == nil {
		return
	}
	d := diag.Diagnostic{Code: codeNoSign, Span: at, Args: diag.Args{"signs": signsNamed(missing)}}
	slice := c.file.Source.Slice(at)
	if i := strings.IndexRune(slice, missing[0]); i >= 0 && missing[0] != utf8.RuneError {
		d.Span = source.Span{Start: at.Start + int32(i), End: at.Start + int32(i+utf8.RuneLen(missing[0]))}
	}
	if instead := sign.Instead(missing[0]); instead != "" && len(missing) == 1 {
		d.Args["instead"], d.Help = instead, "instead"
	}
	c.report(d)
}

// mostSigns is how many signs a message names: a text in another script has none that the faces have.
const mostSigns = 4

// signsNamed writes signs with their code points.
func signsNamed(signs []rune) []string {
	var out []string
	for i, r := range signs {
		if i == mostSigns {
			return append(out, "…")
		}
		out = append(out, fmt.Sprintf("%c (U+%04X)", r, r))
	}
	return out
}

// printedNames looks at the names of the designer's own. One that has a text to be printed is not printed itself, and nor is
// that of a value or a group.
func (c *checker) printedNames() {
	texts := map[string]bool{}
	title := func(n *lang.Name, body []*lang.Statement) {
		if n != nil && slices.ContainsFunc(body, func(s *lang.Statement) bool {
			switch s.Node.(type) {
			case *lang.Title, *lang.YarnName:
				return true
			}
			return false
		}) {
			texts[n.Text] = true
		}
	}
	lang.WalkStatements(c.file.Body, func(s *lang.Statement) bool {
		switch n := s.Node.(type) {
		case *lang.Pattern:
			title(n.Name, s.Body)
		case *lang.Part:
			title(n.Name, s.Body)
		case *lang.Motifs:
			title(n.Name, s.Body)
		case *lang.Yarn:
			title(n.Name, s.Body)
		case *lang.Chart:
			title(n.Name, s.Body)
		case *lang.Stitch:
			title(n.Name, s.Body)
		case *lang.StitchPattern:
			title(n.Name, s.Body)
		case *lang.Call:
			texts[n.Name.Text] = true
		case *lang.Measure:
			texts[n.Name.Text] = texts[n.Name.Text] || len(n.Text) > 0
		case *lang.Let:
			texts[n.Name.Text] = true
		case *lang.Group:
			texts[n.Name.Text] = true
		}
		return true
	})
	lang.Walk(c.file, func(n lang.Node) bool {
		name, ok := n.(*lang.Name)
		if !ok || texts[name.Text] {
			return true
		}
		if missing := sign.Missing(name.Text); missing != nil {
			texts[name.Text] = true
			c.report(diag.Diagnostic{Code: codeNoSign, Span: name.Span(), Args: diag.Args{"signs": signsNamed(missing)}, Help: "name"})
		}
		return true
	})
}
