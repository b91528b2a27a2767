// Package diag holds what the tool has to say about a source: diagnostics as facts, a catalogue of their wording in
// each language, and printers.
//
// A check reports a code, a place and numbers. It never writes a sentence: the sentences stand in the catalogue, one
// row a code, so that a message can be translated, looked up and tested. See catalog.go for how to add one.
package diag

import (
	"ovillo/lang/source"
)

// Code names a kind of message for good: it is never reused and never renumbered. The first digit is the family:
// 1 writing, 2 names, 3 values and sizes, 4 rows, 5 labels and markers, 6 counts, 7 measures and materials,
// 8 words and languages, 9 cautions.
type Code string

// Severity says what a message does: an Error stops the output, a Warning and a Note do not.
type Severity uint8

const (
	Error Severity = iota + 1
	Warning
	Note
)

// Args are the facts of a message, by the name of the hole they fill: an int, a string (shown as it is), a
// [PerSize], a [Term], a [Length], a [Said], or a []string or []Term (a list, joined in the language of the message).
type Args map[string]any

// PerSize is one value for each size named, in the pattern's order: "88 in 1 y, 100 in 2 y". When all values are equal and
// all sizes are concerned it prints as one number.
type PerSize struct {
	Names  []string
	Values []string
	All    bool // these are all the sizes of the pattern
}

// Term is a word of the trade that the catalogue puts into the language of the message, such as "stitch" or "space";
// N chooses singular or plural.
type Term struct {
	Key string
	N   int
}

// Said is a text in each language, such as the name of a table that was published: English stands in where a language has none.
type Said map[string]string

// Length is in micrometres; it prints in centimetres with the decimal sign of the language.
type Length int64

// Related points at the place that explains the cause. Key names a label of the code's catalogue row.
type Related struct {
	Span source.Span
	Key  string
	Args Args
}

// Edit is a change to the source that is certain to be what was meant, such as the right spelling of a name.
type Edit struct {
	Span source.Span
	Text string
}

// Diagnostic is one finding.
type Diagnostic struct {
	Code    Code
	Span    source.Span
	Args    Args
	Sizes   []string // names of the sizes concerned; nil: it holds for all
	Related []Related
	Help    string // which of the row's remedies to print, "" for the only or first one; "-" for none
	Edit    *Edit
	Meant   Said // why the designer wants it so; nil if she does not say. A warning is a note then
}

// Severity is what the finding does.
func (d Diagnostic) Severity() Severity {
	s := Lookup(d.Code).Severity
	if s == Warning && d.Meant != nil {
		return Note
	}
	return s
}

// List gathers diagnostics.
type List []Diagnostic

// Add appends a diagnostic.
func (l *List) Add(d Diagnostic) { *l = append(*l, d) }

// HasErrors reports whether any diagnostic stops the output.
func (l List) HasErrors() bool {
	for _, d := range l {
		if d.Severity() == Error {
			return true
		}
	}
	return false
}
