package lang

import (
	"unicode/utf8"

	"ovillo/lang/diag"
)

// How large a source may be. A pattern comes from anywhere, and whatever it holds, it is read in a moment and in little memory, or
// it is said what is too large. Each bound is far above what patterns have: the largest example has 8 kB and 250 lines.
const (
	MostBytes   = 2 << 20 // in a source with the files it uses: a book of six hundred pages
	maxLines    = 120_000 // likewise
	maxUsed     = 32      // files that a source takes in
	maxUseDepth = 8       // files that use one another
	maxTokens   = 10_000  // words and signs of a statement; the longest rows of real patterns have some hundred
	maxDepth    = 200     // brackets, signs or blocks inside one another
	maxName     = 64      // letters of a word
	maxDigits   = 18      // of a number, on each side of its point
	maxQuoted   = 1_000   // letters of a text in quotes
	maxProse    = 10_000  // letters of a text behind bars, in one language: three pages
	maxFaults   = 500     // diagnostics that are kept: a file that is no pattern would have one for every line
)

// TooLarge reports whether a source was not read at all, since it is too large. Its tree is empty.
func TooLarge(found diag.List) bool {
	return len(found) == 1 && (found[0].Code == codeBigFile || found[0].Code == codeManyLines)
}

// oversized is what is too long about a token; noSlip if nothing is.
func (b *blocks) oversized(t Token) slipKind {
	n := int(t.Span.End - t.Span.Start)
	switch {
	case t.Kind == Word && n > maxName && utf8.RuneCountInString(b.text(t)) > maxName:
		return slipLongName
	case t.Kind == Number && n > maxDigits && longNumber(b.text(t)):
		return slipLongNumber
	case t.Kind == Quoted && n > maxQuoted && utf8.RuneCountInString(b.text(t))-2 > maxQuoted:
		return slipLongText
	}
	return noSlip
}

// longNumber reports whether a number has more digits than a number may have.
func longNumber(text string) bool {
	n := digits(text, 0)
	return n > maxDigits || len(text)-n-1 > maxDigits
}

// oversize reports a token that is too long.
func (f *faults) oversize(kind slipKind, t Token) {
	d := diag.Diagnostic{Code: codeLongText, Span: t.Span, Args: diag.Args{"limit": maxQuoted}, Help: "quoted"}
	switch kind {
	case slipLongName:
		d.Code, d.Args, d.Help = codeLongName, diag.Args{"limit": maxName}, ""
	case slipLongNumber:
		d.Code, d.Args, d.Help = codeLongNumber, diag.Args{"limit": maxDigits}, ""
	}
	f.add(d)
}

// count counts the letters of a line behind a bar, and reports the line with which a text becomes too long. The lines of a chart are no
// text; its squares are counted where it is read.
func (b *blocks) count(l RawLine) {
	top := b.top()
	if top.Block == InChart {
		return
	}
	if l.Head != "" {
		top.voice = l.Head
	}
	if top.letters == nil {
		top.letters = map[string]int{}
	}
	was := top.letters[top.voice]
	now := was + utf8.RuneCountInString(l.Text)
	if top.letters[top.voice] = now; now > maxProse && was <= maxProse {
		b.faults.add(diag.Diagnostic{Code: codeLongText, Span: l.Span, Args: diag.Args{"limit": maxProse}, Help: "prose"})
	}
}
