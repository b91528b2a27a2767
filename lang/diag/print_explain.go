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
func (p Printer) Explain(w io.Writer, code Code) error {
	e, words := catalogue().byCode[code], labelsFor(p.Lang)
	if e == nil {
		return errors.New(Fill(words.noCode, Args{"code": string(code)}, p.Lang))
	}
	var b strings.Builder
	text := e.in(p.Lang)
	b.WriteString(wrap(fmt.Sprintf("%s[%s]: %s", words.severity[e.Severity], e.Code, p.outline(text.Message)), pageWidth))
	b.WriteString("\n\n" + p.wrapAll(text.Explain, pageWidth))
	for _, part := range [...]struct{ head, source string }{{words.refused, e.Example}, {words.right, e.Fixed}} {
		if part.source == "" {
			continue
		}
		b.WriteString("\n" + part.head + ":\n\n")
		for line := range strings.SplitSeq(p.coded(strings.Trim(part.source, "\n")), "\n") {
			b.WriteString(strings.TrimRight("    "+line, " ") + "\n")
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// Index prints every code with its first sentence, in the order of the codes.
func (p Printer) Index(w io.Writer) error {
	all := All()
	slices.SortFunc(all, func(a, b *Entry) int { return strings.Compare(string(a.Code), string(b.Code)) })
	var b strings.Builder
	for _, e := range all {
		fmt.Fprintf(&b, "%s  %s\n", e.Code, p.outline(e.in(p.Lang).Message))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// wrapAll breaks the paragraphs of a text into lines, with code as it is printed. A line that begins with a blank is a form
// to be shown as it is.
func (p Printer) wrapAll(text string, width int) string {
	var b strings.Builder
	var par []string
	flush := func() {
		if len(par) > 0 {
			b.WriteString(wrap(p.fill(strings.Join(par, " "), nil), width) + "\n")
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
			b.WriteString(strings.TrimRight(p.fill(line, nil), " \t") + "\n")
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
