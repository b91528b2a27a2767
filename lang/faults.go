package lang

import (
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// faults gathers what is found wrong with the writing.
type faults struct {
	file     *source.File
	spelt    *spelt
	list     diag.List
	badBytes bool // the file is not UTF-8, which was said
}

func (f *faults) full() bool { return len(f.list) > maxFaults }

func (f *faults) add(d diag.Diagnostic) {
	switch {
	case len(f.list) < maxFaults:
		f.list.Add(d)
	case len(f.list) == maxFaults:
		f.list.Add(diag.Diagnostic{Code: codeMore, Span: d.Span, Args: diag.Args{"limit": maxFaults}})
	}
}

// missingEnd reports a statement that shows that the block above it has no `end`.
func (f *faults) missingEnd(t Token, open *Statement) {
	f.add(diag.Diagnostic{Code: codeMissingEnd, Span: t.Span,
		Args:    diag.Args{"word": f.file.Slice(t.Span), "open": f.firstWord(open)},
		Related: []diag.Related{{Span: open.Head, Key: "open"}}})
}

// openAtEnd reports blocks that are open at the end of the file, once for all of them.
func (f *faults) openAtEnd(open []*opened) {
	inner := open[len(open)-1].Statement
	d := diag.Diagnostic{Code: codeOpenAtEnd, Span: inner.Head, Args: diag.Args{"word": f.firstWord(inner), "n": len(open)}}
	for i := len(open) - 2; i >= 0 && len(d.Related) < 3; i-- {
		d.Related = append(d.Related, diag.Related{Span: open[i].Head, Key: "open"})
	}
	f.add(d)
}

// firstWord is the word that a statement begins with.
func (f *faults) firstWord(s *Statement) string {
	text := f.file.Slice(s.Head)
	return text[:max(wordEnd(text, 0), min(1, len(text)))]
}

// stray reports a token that belongs to nothing, with what it was most likely meant to be.
func (f *faults) stray(t Token) {
	text := t.Text(f.file.Text)
	d := diag.Diagnostic{Code: codeStraySign, Span: t.Span, Args: diag.Args{"sign": text}}
	switch {
	case isDigit(text[0]):
		n := digits(text, 0)
		if n+1 < len(text) && text[n] == '.' {
			n = digits(text, n+1)
		}
		d.Code, d.Args = codeGlued, diag.Args{"text": text, "number": text[:n], "word": text[n:]}
		d.Edit = &diag.Edit{Span: source.Span{Start: t.Span.Start + int32(n), End: t.Span.Start + int32(n)}, Text: " "}
	case text[0] == '"':
		d.Code, d.Args = codeOpenQuote, nil
		d.Span.End = d.Span.Start + 1
	case isCurlyQuote(text):
		d.Code = codeCurlyQuote
	case text == ";":
		d.Code, d.Args = codeSemicolon, nil
	case text == "{" || text == "}":
		d.Code = codeBrace
	case f.isBadByte(t):
		return // part of what was said about the file
	}
	f.add(d)
}

// foreign reports an English word of the language in a source that is in another one. It is read as what it says.
func (f *faults) foreign(t Token, in *tongue) {
	word := t.Text(f.file.Text)
	right := in.code(word)
	if right == word {
		return
	}
	f.add(diag.Diagnostic{Code: codeForeign, Span: t.Span, Args: diag.Args{"word": word, "right": right},
		Edit: &diag.Edit{Span: t.Span, Text: right}})
}

// isBadByte reports whether a token is a byte that is no UTF-8, of which there is one message for the file.
func (f *faults) isBadByte(t Token) bool {
	return f.badBytes && t.Kind == Stray && t.Span.End == t.Span.Start+1 && f.file.Text[t.Span.Start] >= 0x80
}

func isCurlyQuote(text string) bool {
	switch text {
	case "\u201c", "\u201d", "\u201e", "\u00ab", "\u00bb", "\u2018", "\u2019", "'":
		return true
	}
	return false
}
