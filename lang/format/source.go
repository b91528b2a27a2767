package format

import (
	"strings"

	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Source sets the text of a source in its usual shape. The list is what reading the text found; a line with something in
// it that is no token is kept as it stands, and so is a source that is too large to be read.
func Source(text []byte) ([]byte, diag.List) {
	if len(text) > lang.MostBytes {
		_, found := lang.Parse(source.NewFile("", string(text[:lang.MostBytes+1])))
		return text, found
	}
	file := source.NewFile("", tidy(string(text)))
	tree, found := lang.Parse(file)
	if lang.TooLarge(found) {
		return text, found
	}
	if file.Text != string(text) {
		_, found = lang.Parse(source.NewFile("", string(text))) // the places in the list are those of the text as given
	}
	p := newPage(file.Text, tree)
	p.layOut()
	p.setBars()
	p.alignWords()
	p.hang()
	p.alignRest()
	out := p.join()
	if !sameWords(file.Text, out) {
		panic("format: a word was lost or changed") // the caller must not write such a text
	}
	return []byte(out), found
}

// sameWords reports whether two texts differ in nothing but blanks.
func sameWords(a, b string) bool {
	squeeze := strings.NewReplacer(" ", "", "\t", "", "\u00a0", "", "\r", "", "\n", "")
	return squeeze.Replace(a) == squeeze.Replace(b)
}

// join writes the lines, with no more than one blank line between two.
func (p *page) join() string {
	var b strings.Builder
	for _, l := range p.lines {
		if l.kind == blankLine && l.after == blankLine {
			continue
		}
		b.WriteString(strings.TrimRight(l.out, blanks))
		b.WriteByte('\n')
	}
	return b.String()
}
