package errata

import (
	"fmt"
	"io"
	"strings"

	"ovillo/render/rich"
	"ovillo/render/words"
)

// lineW is how wide the lines of a list in text are.
const lineW = 78

// Text writes lists as plain text, one language after the other.
func Text(w io.Writer, sheets []*Sheet) error {
	var b strings.Builder
	for i, s := range sheets {
		if i > 0 {
			b.WriteString("\n\n")
		}
		s.text(&b)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func (s *Sheet) text(b *strings.Builder) {
	head := s.Title + ": " + lowered(s.Lang.Say(words.ErrataHead))
	fmt.Fprintf(b, "%s\n%s\n", head, strings.Repeat("=", len([]rune(head))))
	if s.Span != "" {
		fmt.Fprintln(b, s.Span)
	}
	if s.Empty() {
		fmt.Fprintln(b, s.Lang.Say(words.ErrataNone))
		return
	}
	if s.Pages != "" {
		wrap(b, "", s.Pages)
	}
	for _, g := range s.Groups {
		fmt.Fprintf(b, "\n%s\n%s\n", g.Head, strings.Repeat("-", len([]rune(g.Head))))
		for _, e := range g.Entries {
			if g.Plain {
				for _, it := range e.Items {
					wrap(b, "", e.Where+bracketed(it.Sizes)+": "+plain(it.New))
				}
				continue
			}
			where := e.Where
			if e.Page != "" {
				where += " · " + plain(rich.T(e.Page))
			}
			fmt.Fprintf(b, "\n%s\n", plain(rich.T(where)))
			for _, it := range e.Items {
				if it.Sizes != "" {
					wrap(b, "  ", plain(rich.T(it.Sizes)))
				}
				for _, line := range s.lines(it) {
					for i, row := range strings.Split(line.text.String(), "\n") {
						if row = plain(rich.T(row)); i == 0 {
							row = line.head + " " + row
						}
						wrap(b, strings.Repeat("  ", min(i, 1)+1), row)
					}
				}
			}
		}
	}
}

// said is a text behind what it is.
type said struct {
	head string
	text rich.Text
}

// lines are what stood there and what should stand there, or what came or went.
func (s *Sheet) lines(it Item) []said {
	say := s.Lang.Say
	switch {
	case len(it.Old) == 0:
		return []said{{say(words.PutIn), it.New}}
	case len(it.New) == 0:
		return []said{{say(words.LeftOut), it.Old}}
	}
	return []said{{say(words.ItSaid), it.Old}, {say(words.ItShouldSay), it.New}}
}

// bracketed are sizes behind what they are of.
func bracketed(sizes string) string {
	if sizes == "" {
		return ""
	}
	return " (" + lowered(sizes) + ")"
}

// plain is a text in one line, with ordinary blanks, for a terminal.
func plain(t rich.Text) string {
	return strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\n", " ").Replace(t.String())
}

// wrap writes a text in lines that hang two letters in behind the first.
func wrap(b *strings.Builder, indent, text string) {
	at := 0
	for i, word := range strings.Fields(text) {
		n := len([]rune(word))
		switch {
		case i == 0:
			b.WriteString(indent)
			at = len(indent)
		case at+1+n > lineW:
			b.WriteString("\n" + indent + "  ")
			at = len(indent) + 2
		default:
			b.WriteString(" ")
			at++
		}
		b.WriteString(word)
		at += n
	}
	b.WriteString("\n")
}
