package lang

import (
	"slices"
	"strings"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// hints are the slips that makers make, told apart by what stands around the place where reading stopped. The first that
// fits is reported.
var hints = []func(*reading) (diag.Diagnostic, bool){
	strayHint, decimalHint, starHint, rowNumberHint, reservedHint, languageHint, quotesHint, groupHint, repeatHint, behindHint,
	inNumberHint, belowHint, colonHint, commaHint,
}

// strayHint: a sign that belongs to nothing, at or before the place.
func strayHint(r *reading) (diag.Diagnostic, bool) {
	for i := 0; i <= r.at && i < len(r.said); i++ {
		if r.is(i, Stray) {
			one := faults{file: r.file}
			one.stray(r.said[i])
			return one.list[0], true
		}
	}
	return diag.Diagnostic{}, false
}

// decimalHint: 3,75 with a comma. Sizes are parted by commas too, but nobody writes those without a blank outside brackets.
func decimalHint(r *reading) (diag.Diagnostic, bool) {
	depth := 0
	for i := 0; i <= r.at && i+1 < len(r.said); i++ {
		switch t := r.text(i); {
		case t == "(" || t == "[":
			depth++
		case t == ")" || t == "]":
			depth--
		case t == "," && depth == 0 && r.is(i-1, Number) && r.is(i+1, Number):
			whole := r.said[i-1].Span.To(r.said[i+1].Span)
			text := r.file.Slice(whole)
			if strings.ContainsAny(text, " \t\n\u00a0") {
				continue
			}
			right := strings.Replace(text, ",", ".", 1)
			return diag.Diagnostic{Code: codeDecimal, Span: whole, Args: diag.Args{"text": text, "right": right},
				Edit: &diag.Edit{Span: whole, Text: right}}, true
		}
	}
	return diag.Diagnostic{}, false
}

// starHint: *…; repeat from *, the trade's printed form.
func starHint(r *reading) (diag.Diagnostic, bool) {
	return diag.Diagnostic{Code: codeStar}, r.text(r.at) == "*" && r.slip.kind != slipValue
}

// rowNumberHint: round 5: …; rows number themselves.
func rowNumberHint(r *reading) (diag.Diagnostic, bool) {
	if r.form != firstSideForm || r.text(2) == "is" {
		return diag.Diagnostic{}, false
	}
	return diag.Diagnostic{Code: codeRowName, Span: r.span(1),
		Args: diag.Args{"word": r.shown(0), "number": r.text(1)}}, true
}

// reservedHint: a word of the language as a name.
func reservedHint(r *reading) (diag.Diagnostic, bool) {
	named := r.slip.kind == slipName || r.at > 0 && isRowWord(r.text(0)) && r.at == 1 && r.text(2) == ":"
	if !named || !r.is(r.at, Word) || !Reserved(r.text(r.at)) {
		return diag.Diagnostic{}, false
	}
	return diag.Diagnostic{Code: codeReserved, Args: diag.Args{"word": r.shown(r.at)}}, true
}

func isRowWord(word string) bool {
	return word == "row" || word == "round" || word == "rows" || word == "rounds"
}

// quotesHint: a text without its quotes.
func quotesHint(r *reading) (diag.Diagnostic, bool) {
	if r.slip.kind != slipText || r.is(r.at, Quoted) || r.at >= len(r.said) {
		return diag.Diagnostic{}, false
	}
	return diag.Diagnostic{Code: codeText, Help: "quotes", Args: r.facts()}, true
}

// languageHint: title Body, where the text reads as its language; or a second text without its language.
func languageHint(r *reading) (diag.Diagnostic, bool) {
	if !strings.Contains(r.form.right, ` es "`) {
		return diag.Diagnostic{}, false
	}
	if r.slip.kind == slipText && len(r.text(r.at-1)) != 2 && r.at > 1 {
		r.at--
		return diag.Diagnostic{Code: codeLanguage, Args: r.facts()}, true
	}
	return diag.Diagnostic{Code: codeLanguage, Args: r.facts()}, r.slip.kind == slipFit && r.is(r.at, Quoted)
}

// groupHint: (2 dc, ch 2) without a place; or with a number of times, which is a repeat.
func groupHint(r *reading) (diag.Diagnostic, bool) {
	if r.slip.kind != slipWhere || r.text(r.at-1) != ")" {
		return diag.Diagnostic{}, false
	}
	d := diag.Diagnostic{Code: codeNoPlace, Help: "place", Span: r.said[r.at-1].Span}
	if r.is(r.at, Number) || r.text(r.at) == "around" || r.text(r.at) == "across" || r.text(r.at) == "to" {
		d.Help = "repeat"
	}
	return d, true
}

// repeatHint: [sc, dc] without saying how often.
func repeatHint(r *reading) (diag.Diagnostic, bool) {
	if r.slip.kind != slipOften || r.text(r.at-1) != "]" {
		return diag.Diagnostic{}, false
	}
	return diag.Diagnostic{Code: codeHowOften, Span: r.said[r.at-1].Span}, true
}

// behindHint: dc 5. The number stands before the stitch, or behind `in next`.
func behindHint(r *reading) (diag.Diagnostic, bool) {
	if len(r.slip.words) != 1 || r.slip.words[0] != "times" {
		return diag.Diagnostic{}, false
	}
	n := r.at - 1 // where the number begins: it may have those of the other sizes
	for r.text(n) != "(" && n > 1 && r.text(r.at-1) == ")" {
		n--
	}
	if r.text(n) == "(" {
		n--
	}
	if n < 2 || !r.is(n, Number) || !r.isName(n-1) {
		return diag.Diagnostic{}, false
	}
	return diag.Diagnostic{Code: codeBehind, Span: r.said[n-1].Span.To(r.said[r.at-1].Span),
		Args: diag.Args{"stitch": r.shown(n - 1), "n": r.passage(n, r.at)}}, true
}

// inNumberHint: dc in 5.
func inNumberHint(r *reading) (diag.Diagnostic, bool) {
	return diag.Diagnostic{Code: codeInNumber, Args: diag.Args{"n": r.text(r.at)}}, r.slip.kind == slipInNumber
}

// belowHint: in next 2 rows below.
func belowHint(r *reading) (diag.Diagnostic, bool) {
	return diag.Diagnostic{Code: codeBelow, Args: diag.Args{"n": r.text(r.at - 1), "rows": r.shown(r.at)}}, r.slip.kind == slipBelow
}

// colonHint: a row whose header has no colon.
func colonHint(r *reading) (diag.Diagnostic, bool) {
	if !slices.Contains(r.slip.words, ":") {
		return diag.Diagnostic{}, false
	}
	at := r.at
	if isRowWord(r.text(0)) && (isStitchWord(r.text(1)) || itemWords[r.text(1)] != nil) {
		at = 1 // round dc in each: what reads as a name is the first stitch
	}
	d := diag.Diagnostic{Code: codeColon, Span: r.span(at), Args: diag.Args{"form": r.form.right}}
	if at > 0 {
		d.Span = behind(r.said[at-1])
	}
	return d, true
}

// commaHint: two instructions, counts or texts with nothing between them.
func commaHint(r *reading) (diag.Diagnostic, bool) {
	if r.at == 0 || r.at >= len(r.said) || !r.isComplete() {
		return diag.Diagnostic{}, false
	}
	if r.text(r.at) == "in" && isStitchWord(r.text(r.at-1)) && r.is(r.at-2, Number) {
		r.at-- // dc in next 5 dc in next: the stitch reads as the name of the five places
	}
	word := r.text(r.at)
	begins := r.is(r.at, Number) || r.is(r.at, Quoted) || word == "(" || word == "[" || itemWords[word] != nil && word != "with" ||
		isStitchWord(word)
	if !(begins && r.isList() || strings.Contains(r.form.right, ", "+word)) || r.isMisspelt(r.at-1) {
		return diag.Diagnostic{}, false
	}
	place := behind(r.said[r.at-1])
	start := r.itemStart(r.at)
	if start == 0 && r.at > 1 {
		start = 1 // behind the word that says what the line is
	}
	return diag.Diagnostic{Code: codeComma, Span: source.Span{Start: place.Start, End: r.said[r.at].Span.End},
		Args: diag.Args{"before": r.passage(start, r.at), "found": r.passage(r.at, r.itemEnd(r.at))}, Edit: &diag.Edit{Span: place, Text: ","}}, true
}

// isComplete reports whether nothing had to follow where reading stopped, but for a comma or for a bracket to be closed.
func (r *reading) isComplete() bool {
	switch r.slip.kind {
	case slipFit:
		return true
	case slipWords:
		return len(r.slip.words) == 1 && strings.Contains("),]", r.slip.words[0])
	}
	return false
}

// isList reports whether the statement holds things parted by commas.
func (r *reading) isList() bool { return r.isRow() || strings.Contains(listForms, "|"+r.text(0)+"|") }

// listForms are the first words of the other statements that hold a list.
const listForms = "|sizes|names|fit|fibre|ball|swatch|languages|legend|group|count|have|from|only|edges|end|"

func (r *reading) isRow() bool { return r.form.read != nil && strings.Contains(r.form.right, ": dc") }

// isMisspelt reports whether a name is near a word that stands behind others: nxt 5.
func (r *reading) isMisspelt(i int) bool {
	return r.isName(i) && !isStitchWord(r.text(i)) && r.spelt.near(r.text(i), positionWords) != nil
}
