// Package rich is text with just as much style as a pattern needs: the common coin between the languages, which write
// it, and the layout, which sets it.
package rich

import "strings"

// Run is a stretch of text in one style. Break opportunities are ordinary spaces; U+00A0 never breaks. A run inherits
// the face and size of the paragraph it stands in.
type Run struct {
	Text   string
	Strong bool   // the heavier weight: every second size, heads inside text, **strong** in prose
	Expand string // what an abbreviation stands for, for screen readers; "" if nothing
	Link   string // an address, "" if none
	// Spoken replaces the text for screen readers and for copying, where the signs alone would not be understood: the
	// sizes of a list of numbers ("1 y 112, 2 y 116").
	Spoken string
}

// Text is a paragraph.
type Text []Run

// T makes a paragraph of plain text.
func T(s string) Text { return Text{{Text: s}} }

// String returns the text without its style.
func (t Text) String() string {
	var b strings.Builder
	for _, r := range t {
		b.WriteString(r.Text)
	}
	return b.String()
}
