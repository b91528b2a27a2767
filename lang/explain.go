package lang

import (
	"strings"

	"github.com/alecthomas/participle/v2/lexer"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Why a statement could not be read, in one diagnostic.

// reading is a statement that could not be read, seen from the place where reading stopped.
type reading struct {
	*faults
	form *form
	said []Token // the tokens that say something
	at   int     // index in said of the token that does not fit; len(said) at the end of the statement
	slip *slip
}

// gathered reports what is wrong with a statement before it is read.
func (f *faults) gathered(g gathered, form *form) {
	switch g.fault {
	case slipDepth:
		f.add(diag.Diagnostic{Code: codeDepth, Span: g.at.Span, Args: diag.Args{"limit": maxDepth}})
		return
	case slipLong:
		f.add(diag.Diagnostic{Code: codeLong, Span: g.at.Span, Args: diag.Args{"limit": maxTokens}})
		return
	case slipLongName, slipLongNumber, slipLongText:
		f.oversize(g.fault, g.at)
		return
	}
	for _, t := range g.tokens {
		if t.Kind == Stray {
			f.stray(t)
			return
		}
	}
	d := diag.Diagnostic{Span: g.at.Span, Args: diag.Args{"sign": f.file.Slice(g.at.Span), "form": form.right}}
	switch g.fault {
	case slipOpen:
		d.Code = codeOpenBracket
		d.Args["other"] = map[string]string{"(": ")", "[": "]"}[f.file.Slice(g.at.Span)]
	case slipClosing:
		d.Code = codeBadBracket
	case slipUnfinished:
		d.Code = codeUnfinished
		if d.Args["sign"] == ":" {
			d.Code, d.Span = codeList, behind(g.at)
			d.Args = diag.Args{"after": ":", "found": "", "end": 1, "form": form.right}
		}
	}
	f.add(d)
}

// behind is the place right behind a token.
func behind(t Token) source.Span { return source.Span{Start: t.Span.End, End: t.Span.End} }

// unread reports why a statement could not be read.
func (f *faults) unread(g gathered, form *form, err error) {
	r := &reading{faults: f, form: form, slip: slipOf(err)}
	for _, t := range g.tokens {
		if !t.Kind.silent() {
			r.said = append(r.said, t)
		}
	}
	r.at = r.index(r.slip.token)
	for i := 0; i <= r.at && i < len(r.said); i++ {
		if f.isBadByte(r.said[i]) {
			return
		}
	}
	f.add(r.explain())
}

// index finds the token of participle among those of the statement.
func (r *reading) index(t lexer.Token) int {
	if t.Type == tEOF {
		return len(r.said)
	}
	for i, s := range r.said {
		if int(s.Span.Start) >= t.Pos.Offset {
			return i
		}
	}
	return len(r.said)
}

// text is what the token at i is read as, "" beyond the ends.
func (r *reading) text(i int) string {
	if i < 0 || i >= len(r.said) {
		return ""
	}
	return r.spelt.text(r.said[i], r.file.Text)
}

// shown is the token at i as the source has it, "" beyond the ends.
func (r *reading) shown(i int) string {
	if i < 0 || i >= len(r.said) {
		return ""
	}
	return r.spelt.shown(r.said[i], r.file.Text)
}

// is reports whether the token at i is of a kind.
func (r *reading) is(i int, k TokenKind) bool {
	return i >= 0 && i < len(r.said) && r.said[i].Kind == k
}

// isName reports whether the token at i may be a name.
func (r *reading) isName(i int) bool { return r.is(i, Word) && !Reserved(r.text(i)) }

// span is the place of the token at i, or right behind the statement.
func (r *reading) span(i int) source.Span {
	if i < len(r.said) {
		return r.said[i].Span
	}
	return behind(r.said[len(r.said)-1])
}

// explain finds the first hint that fits; the last one always does.
func (r *reading) explain() diag.Diagnostic {
	for _, hint := range hints {
		if d, ok := hint(r); ok {
			if d.Span.IsZero() {
				d.Span = r.span(r.at)
			}
			return d
		}
	}
	return r.next()
}

// next says what would have to come next.
func (r *reading) next() diag.Diagnostic {
	d := diag.Diagnostic{Code: nextCodes[r.slip.kind], Span: r.span(r.at),
		Args: r.facts()}
	switch r.slip.kind {
	case slipPlace:
		if d.Help = "run"; r.inInstructions() {
			d.Help = "row"
		}
	case slipFit, slipWords:
		d.Help = "form"
		if i, near := r.nearWord(); near != nil {
			d.Help, d.Args["wrong"], d.Args["near"] = "near", r.shown(i), near
			if r.slip.kind == slipFit {
				d.Span, d.Args["found"], d.Args["end"] = r.span(i), r.shown(i), 0
			}
		}
	}
	return d
}

// facts are what the messages about what would have to come next are made of.
func (r *reading) facts() diag.Args {
	a := diag.Args{"after": r.before(), "found": strings.Trim(r.shown(r.at), `"`), "end": 0,
		"form": r.rightForm(), "limit": maxDepth}
	if r.at >= len(r.said) {
		a["end"] = 1
	}
	if r.slip.kind == slipWords {
		a["words"] = quotedSigns(r.slip.words)
	}
	return a
}

// quotedSigns puts the signs among some words in quotes, so that a comma does not read as one of the sentence.
func quotedSigns(words []string) []string {
	var quoted []string
	for _, w := range words {
		if wordEnd(w, 0) == 0 {
			w = `"` + w + `"`
		}
		quoted = append(quoted, w)
	}
	return quoted
}

// nextCodes gives the code for what would have to come next.
var nextCodes = map[slipKind]diag.Code{slipFit: codeFit, slipWords: codeWords, slipName: codeName, slipNumber: codeNumber,
	slipValue: codeValue, slipText: codeText, slipBi: codeLanguage, slipPlace: codePlace, slipStitch: codeStitch, slipList: codeList,
	slipOften: codeHowOften, slipWhere: codeNoPlace, slipPoint: codePoint, slipBut: codeBut, slipSizes: codeSizes,
	slipBetween: codeBetween, slipInNumber: codeInNumber, slipBelow: codeBelow, slipDepth: codeDepth}

// before is what stands before the token that does not fit: a word, or a sign with the word before it.
func (r *reading) before() string {
	if r.at == 0 {
		return ""
	}
	i := r.at - 1
	if r.is(i, Sign) && i > 0 {
		i--
	}
	return r.file.Slice(r.said[i].Span.To(r.said[r.at-1].Span))
}

// nearWord finds a word of the language misspelt: the token that does not fit, or the one before it.
func (r *reading) nearWord() (at int, near []string) {
	known := r.slip.words
	if len(known) == 0 {
		known = positionWords
	}
	for _, i := range []int{r.at, r.at - 1} {
		if !r.isName(i) || i == 0 {
			continue
		}
		if near := r.spelt.near(r.text(i), known); near != nil {
			return i, near
		}
	}
	return 0, nil
}

// positionWords are the words that stand behind others in a row; one of them misspelt reads as a name.
var positionWords = strings.Fields(`around across times evenly together in next each same first last ring to end before between
	below beside through space spaces chain chains skip leave rest turn join mark move unmark marker with as crossing flo blo tlo
	third loop alternating centred gap gaps`)
