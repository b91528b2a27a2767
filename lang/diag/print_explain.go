package diag

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
)

// pageWidth is the width of the page behind a code, in cells.
const pageWidth = 80

// Explain prints the page behind a code: what it says, why, and an example refused and put right. An unknown code is an
// error whose text is fit to be shown.
func Explain(w io.Writer, code Code, lang string) error {
	e, words := byCode[code], labelsFor(lang)
	if e == nil {
		return errors.New(Fill(words.noCode, Args{"code": string(code)}, lang))
	}
	var b strings.Builder
	text := e.in(lang)
	b.WriteString(wrap(fmt.Sprintf("%s[%s]: %s", words.severity[e.Severity], e.Code, outline(text.Message)), pageWidth))
	b.WriteString("\n\n" + wrapAll(text.Explain, pageWidth))
	for _, part := range [...]struct{ head, source string }{{words.refused, e.Example}, {words.right, e.Fixed}} {
		if part.source == "" {
			continue
		}
		b.WriteString("\n" + part.head + ":\n\n")
		for line := range strings.SplitSeq(strings.Trim(part.source, "\n"), "\n") {
			b.WriteString(strings.TrimRight("    "+line, " ") + "\n")
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// Index prints every code with its first sentence, in the order of the codes.
func Index(w io.Writer, lang string) error {
	all := All()
	slices.SortFunc(all, func(a, b *Entry) int { return strings.Compare(string(a.Code), string(b.Code)) })
	var b strings.Builder
	for _, e := range all {
		fmt.Fprintf(&b, "%s  %s\n", e.Code, outline(e.in(lang).Message))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// outline gives a template as it reads with its facts left open: "row … needs … stitches".
func outline(template string) string {
	var b strings.Builder
	pieces, _ := readTemplate(template)
	var walk func([]piece)
	walk = func(ps []piece) {
		for _, p := range ps {
			switch {
			case p.hole == "":
				b.WriteString(p.text)
			case len(p.forms) == 2:
				walk(p.forms[1])
			default:
				b.WriteString("…")
			}
		}
	}
	walk(pieces)
	return b.String()
}

// wrapAll breaks the paragraphs of a text into lines. A line that begins with a blank is a form to be shown as it is.
func wrapAll(text string, width int) string {
	var b strings.Builder
	var par []string
	flush := func() {
		if len(par) > 0 {
			b.WriteString(wrap(strings.Join(par, " "), width) + "\n")
			par = nil
		}
	}
	for line := range strings.SplitSeq(strings.Trim(text, "\n"), "\n") {
		switch {
		case strings.TrimSpace(line) == "":
			flush()
			b.WriteString("\n")
		case line[0] == ' ' || line[0] == '\t':
			flush()
			b.WriteString(strings.TrimRight(line, " \t") + "\n")
		default:
			par = append(par, strings.TrimSpace(line))
		}
	}
	flush()
	return b.String()
}

// wrap breaks a paragraph at blanks.
func wrap(text string, width int) string {
	var b strings.Builder
	used := 0
	for word := range strings.FieldsSeq(text) {
		n := layOut(word, 0).width
		switch {
		case used == 0:
		case used+1+n > width:
			b.WriteByte('\n')
			used = 0
		default:
			b.WriteByte(' ')
			used++
		}
		b.WriteString(word)
		used += n
	}
	return b.String()
}
