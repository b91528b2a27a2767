package diag

import "ovillo/lang/source"

// Worded is a diagnostic put into words, with its places as bytes of the source: for editors, which mark them in their own way.
type Worded struct {
	Code     Code
	Severity Severity
	In       *source.File // in which the place is: the source, or one that it takes in
	Span     source.Span  // zero: nowhere in particular
	Text     string       // all that is said, on lines of its own: the message, which sizes, what would mend it
	Related  []WordedPlace
	Edit     *Edit // in the words of the source; nil if there is none
}

// WordedPlace is a place that explains the cause.
type WordedPlace struct {
	In   *source.File
	Span source.Span
	Text string
}

// Worded puts a list into words, all of it, in the order of the source and each finding once.
func (p Printer) Worded(f *source.File, l List) []Worded {
	words := labelsFor(p.Lang)
	var out []Worded
	for _, d := range p.findings(l) {
		w := Worded{Code: d.Code, Severity: d.severity, Text: d.message}
		if d.mark != "" {
			w.Text += " (" + d.mark + ")"
		}
		line := func(head, text string) {
			if text != "" {
				w.Text += "\n" + head + ": " + text
			}
		}
		line(words.sizes, sizeList(d.Sizes))
		line(words.help, d.help)
		line(words.meant, d.meant)
		for _, n := range d.notes {
			line(words.note, n)
		}
		if w.In = f; !d.Span.IsZero() {
			w.In, w.Span = placed(f, d.Span)
		}
		for _, r := range d.related {
			in, at := placed(f, r.span)
			w.Related = append(w.Related, WordedPlace{in, at, r.label})
		}
		if e := d.Edit; e != nil {
			w.Edit = &Edit{Span: e.Span, Text: p.coded(e.Text)}
		}
		out = append(out, w)
	}
	return out
}

// placed is the file in which a span lies, with the span as a mark would stand there.
func placed(f *source.File, s source.Span) (*source.File, source.Span) {
	in, s := f.Within(s)
	return in, tighten(in, s)
}
