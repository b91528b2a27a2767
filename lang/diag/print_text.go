package diag

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"ovillo/lang/source"
)

// Text prints a list for people, as [Printer.Text] does, with code as it stands.
func Text(w io.Writer, f *source.File, l List, lang string, color bool) error {
	return Printer{Lang: lang, Color: color}.Text(w, f, l)
}

// Text prints a list for people: each diagnostic with the author's own lines and the places marked in them, and a line
// that counts them all. It prints nothing for an empty list.
//
//	error[612]: round 7 needs a multiple of 6 stitches, but size 2 has 88
//	  --> yoke.ovillo:41:14
//	 41 |     round 7: [sc in next 5, inc] around
//	    |              ^^^^^^^^^^^^^^^^^^^^^^^^^^ 88 = 14 × 6 + 4
//	 38 |     round 6: sc around = 88
//	    |              --------- size 2 gets its 88 stitches here
//	    = help: end round 6 with 84 stitches or 90
func (p Printer) Text(w io.Writer, f *source.File, l List) error {
	all := p.findings(l)
	if len(all) == 0 {
		return nil
	}
	found, more := capped(all)
	t := textPrinter{file: f, words: labelsFor(p.Lang), paint: plain}
	if p.Color {
		t.paint = ansi
	}
	for i := range found {
		t.finding(&found[i])
		t.out.WriteByte('\n')
	}
	if more > 0 {
		t.out.WriteString(Fill(t.words.more, Args{"n": more}, p.Lang) + "\n")
	}
	fmt.Fprintf(&t.out, "%s: %s\n", quotable(f.Name), summary(all, p.Lang))
	_, err := io.WriteString(w, t.out.String())
	return err
}

type textPrinter struct {
	file   *source.File // that of the fault, or of the marks
	words  *labels
	paint  func(ink, string) string
	out    strings.Builder
	gutter int // cells of the line numbers
}

// mark is a place on one line.
type mark struct {
	file   *source.File
	line   int
	a, b   int // bytes in the line
	label  string
	strong bool // the fault itself, not a related place
}

func (p *textPrinter) finding(f *finding) {
	head := fmt.Sprintf("%s[%s]", p.words.severity[f.severity], f.Code)
	fmt.Fprintf(&p.out, "%s: %s\n", p.paint(inkOf(f.severity), head), p.paint(bold, f.message))
	file := p.file
	defer func() { p.file = file }()
	marks := p.marks(f)
	p.gutter = 1
	for _, m := range marks {
		p.gutter = max(p.gutter, len(strconv.Itoa(m.line)))
	}
	p.file, _ = p.file.Within(f.Span)
	if len(marks) > 0 && marks[0].strong {
		p.place("-->", marks[0].place())
	} else {
		p.place("-->", quotable(p.file.Name))
	}
	for i, m := range marks {
		if m.file != p.file {
			p.file = m.file
			p.place(":::", m.place())
		}
		if i == 0 || marks[i-1].file != m.file {
			p.lines(ofOneFile(marks[i:]), f.severity)
		}
	}
	if len(f.Sizes) > 0 {
		p.remark(p.words.sizes, sizeList(f.Sizes))
	}
	p.remark(p.words.help, f.help)
	p.remark(p.words.meant, f.meant)
	for _, n := range f.notes {
		p.remark(p.words.note, n)
	}
}

// place prints where the lines below it are.
func (p *textPrinter) place(arrow, at string) {
	fmt.Fprintf(&p.out, "%s%s %s\n", strings.Repeat(" ", p.gutter), p.paint(quiet, arrow), at)
}

// place is a mark as others name it: file, line and column.
func (m mark) place() string {
	return fmt.Sprintf("%s:%d:%d", quotable(m.file.Name), m.line, m.file.Column(m.file.LineStart(m.line)+int32(m.a)))
}

// ofOneFile are the first marks that are in one file.
func ofOneFile(marks []mark) []mark {
	for i := range marks {
		if marks[i].file != marks[0].file {
			return marks[:i]
		}
	}
	return marks
}

// marks turns the spans of a finding into places on lines: the fault first, then the related places in file order.
func (p *textPrinter) marks(f *finding) []mark {
	var out []mark
	if !f.Span.IsZero() {
		out = p.markSpan(out, f.Span, f.mark, true)
	}
	for _, r := range f.related {
		out = p.markSpan(out, r.span, r.label, false)
	}
	return out
}

// markSpan marks a span; one that runs over several lines is marked on its first and on its last, with the label there.
func (p *textPrinter) markSpan(out []mark, s source.Span, label string, strong bool) []mark {
	file, s := p.file.Within(s)
	s = tighten(file, s)
	first, last := file.Line(s.Start), file.Line(max(s.Start, s.End-1))
	start := func(line int) int { return int(file.LineStart(line)) }
	if first == last {
		return append(out, mark{file, first, int(s.Start) - start(first), int(s.End) - start(first), label, strong})
	}
	head := strings.TrimRight(file.LineText(first), " \t")
	foot := file.LineText(last)
	blank := len(foot) - len(strings.TrimLeft(foot, " \t"))
	return append(out,
		mark{file, first, int(s.Start) - start(first), len(head), "", strong},
		mark{file, last, blank, int(s.End) - start(last), label, strong})
}

// tighten cuts a span to the file and drops the blanks round it, so that a mark stands under something. A place at the
// end of the file moves to the end of the last line that holds anything.
func tighten(f *source.File, s source.Span) source.Span {
	size := int32(len(f.Text))
	s.Start = min(max(s.Start, 0), size)
	s.End = min(max(s.End, s.Start), size)
	text := f.Slice(s)
	if trimmed := strings.TrimSpace(text); trimmed != "" {
		s.Start += int32(strings.Index(text, trimmed))
		s.End = s.Start + int32(len(trimmed))
		return s
	}
	if rest := strings.TrimSpace(f.Text[s.Start:]); rest == "" {
		end := int32(len(strings.TrimRight(f.Text, " \t\r\n")))
		s.Start = min(s.Start, end)
	}
	return source.Span{Start: s.Start, End: s.Start}
}

// lines prints the marked lines. Marks on one line share it, unless it is so long that each needs its own stretch.
func (p *textPrinter) lines(marks []mark, s Severity) {
	done := make([]bool, len(marks))
	for i, m := range marks {
		if done[i] {
			continue
		}
		l := layOut(p.file.LineText(m.line), m.a)
		long := l.width > widest || l.head || l.tail
		for k, n := range marks[i:] {
			if k > 0 && (n.line != m.line || long) {
				continue
			}
			done[i+k] = true
			first, cells := l.cells(n.a, n.b)
			text, at, shown := l.window(first, cells)
			if k == 0 {
				p.row(strconv.Itoa(n.line), text)
			}
			p.row("", p.markLine(n, at, shown, s))
		}
	}
}

func (p *textPrinter) markLine(m mark, at, n int, s Severity) string {
	sign, color := "-", quiet
	if m.strong {
		sign, color = "^", inkOf(s)
	}
	line := strings.Repeat(sign, n)
	if m.label != "" {
		line += " " + m.label
	}
	return strings.Repeat(" ", at) + p.paint(color, line)
}

func (p *textPrinter) row(number, text string) {
	bar := fmt.Sprintf(" %*s |", p.gutter, number)
	p.out.WriteString(strings.TrimRight(p.paint(quiet, bar)+" "+text, " ") + "\n")
}

// sizeList names sizes without "and": "1 y and 2 y" reads badly in Spanish, where y is that word.
func sizeList(names []string) string {
	clean := make([]string, len(names))
	for i, n := range names {
		clean[i] = quotable(n)
	}
	return strings.Join(clean, ", ")
}

// remark prints a line under the picture. Further lines of the text, such as forms that are right, stand below it.
func (p *textPrinter) remark(label, text string) {
	if text == "" {
		return
	}
	indent := strings.Repeat(" ", p.gutter+2)
	head := "= " + label + ": "
	lines := strings.Split(text, "\n")
	p.out.WriteString(indent + p.paint(bold, "= "+label+":") + " " + lines[0] + "\n")
	for _, l := range lines[1:] {
		p.out.WriteString(strings.TrimRight(indent+strings.Repeat(" ", len([]rune(head)))+l, " ") + "\n")
	}
}

// ink is a manner of writing on a terminal.
type ink string

const (
	bold   ink = "1"
	red    ink = "1;31"
	yellow ink = "1;33"
	cyan   ink = "1;36"
	quiet  ink = "34"
)

func inkOf(s Severity) ink {
	switch s {
	case Error:
		return red
	case Warning:
		return yellow
	}
	return cyan
}

func plain(_ ink, s string) string { return s }

func ansi(i ink, s string) string { return "\x1b[" + string(i) + "m" + s + "\x1b[0m" }
