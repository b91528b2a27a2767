package errata

import (
	"fmt"
	"io"
	"strings"

	"ovillo/render/rich"
	"ovillo/render/words"
)

// Markdown writes lists as Markdown (CommonMark), one language after the other: for a blog or the page of a shop.
func Markdown(w io.Writer, sheets []*Sheet) error {
	var b strings.Builder
	for i, s := range sheets {
		if i > 0 {
			b.WriteString("\n---\n\n")
		}
		s.markdown(&b)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func (s *Sheet) markdown(b *strings.Builder) {
	fmt.Fprintf(b, "# %s: %s\n", escape(s.Title), lowered(s.Lang.Say(words.ErrataHead)))
	if s.Span != "" {
		fmt.Fprintf(b, "\n%s.\n", escape(s.Span))
	}
	if s.Empty() {
		fmt.Fprintf(b, "\n%s\n", s.Lang.Say(words.ErrataNone))
		return
	}
	if s.Pages != "" {
		fmt.Fprintf(b, "\n%s\n", escape(s.Pages))
	}
	for _, g := range s.Groups {
		fmt.Fprintf(b, "\n## %s\n", escape(g.Head))
		if g.Plain {
			b.WriteString("\n")
		}
		for _, e := range g.Entries {
			if g.Plain {
				for _, it := range e.Items {
					fmt.Fprintf(b, "- %s%s: %s\n", escape(e.Where), escape(bracketed(it.Sizes)), escape(plain(it.New)))
				}
				continue
			}
			fmt.Fprintf(b, "\n### %s\n", escape(e.Where))
			if e.Page != "" {
				fmt.Fprintf(b, "\n%s\n", escape(plain(rich.T(sentence(e.Page)))))
			}
			b.WriteString("\n")
			for _, it := range e.Items {
				indent := ""
				if it.Sizes != "" {
					fmt.Fprintf(b, "- %s\n", escape(plain(rich.T(it.Sizes))))
					indent = "  "
				}
				for _, line := range s.lines(it) {
					fmt.Fprintf(b, "%s- **%s** %s\n", indent, line.head, escape(plain(line.text)))
				}
			}
		}
	}
}

// escape keeps the signs of a text from being taken for Markdown.
func escape(text string) string {
	var b strings.Builder
	for _, r := range text {
		if strings.ContainsRune("\\`*_[]<>#|~&", r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// sentence begins a text with a capital.
func sentence(s string) string {
	for _, r := range s {
		return strings.ToUpper(string(r)) + s[len(string(r)):]
	}
	return s
}
