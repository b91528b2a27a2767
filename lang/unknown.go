package lang

import (
	"slices"
	"strings"

	"ovillo/lang/diag"
)

// Lines that begin in a way no statement of the block begins.

// unknown reports such a line, once, and returns the form that it was most likely meant to have, so that its block is
// opened and the lines in it are read for what they are.
func (b *blocks) unknown(first int, g gathered) *form {
	t := b.tokens[first]
	word, top := b.text(t), b.top()
	switch {
	case b.faults.full():
		return nil
	case g.fault.tooLarge():
		b.faults.gathered(g, nil)
		return nil
	case t.Kind == Stray:
		b.faults.stray(t)
		return nil
	}
	if f, where := b.elsewhere(first); f != nil {
		b.astray(t, where)
		return f
	}
	switch {
	case g.says == 1 && (plainLetters(word) == "end" || englishFor(word) == "end"):
		return b.misspelt(t, true)
	case top.Block == InProse || top.Block == InChart:
		b.noBar(t)
		return nil
	case (top.Block == InMeasure || top.Block == InGauge) && Reserved(word):
		b.faults.add(diag.Diagnostic{Code: codeReserved, Span: t.Span, Args: diag.Args{"word": word}})
		return nil
	case top.Block != InGauge && top.Block != InMeasure && b.stitchesAhead(first):
		b.noRow(t)
		return nil
	}
	return b.misspelt(t, g.says == 1)
}

// elsewhere looks for the form of a line in the other blocks, and names the blocks it stands in by the words that open
// them; none is named for a statement that stands outside all blocks.
func (b *blocks) elsewhere(first int) (*form, []Block) {
	if b.tokens[first].Kind != Word {
		return nil, nil
	}
	var found *form
	var where []Block
	for _, block := range blockOrder {
		f := b.find(block, first)
		if f == nil || f == forms[block][anyName] {
			continue
		}
		if found == nil || found.opens == "" {
			found = f
		}
		where = append(where, block)
	}
	return found, where
}

// blockOrder is the order in which blocks are named.
var blockOrder = []Block{InFile, InPattern, InSizes, InGauge, InYarn, InSample, InStitch, InChart, InPart, InShape, InMotifs, InPatternOf, InFinish, InMeasure}

// astray reports a statement that stands in other blocks. A run of statements that all belong elsewhere has one cause.
func (b *blocks) astray(t Token, where []Block) {
	top := b.top()
	if top.astray == where[0] {
		return
	}
	top.astray = where[0]
	d := diag.Diagnostic{Code: codeAstray, Span: t.Span, Help: "in",
		Args: diag.Args{"word": b.written(t), "top": 0, "inside": b.faults.firstWord(top.Statement)}}
	if top.Block == InFile {
		d.Args["top"], d.Args["inside"] = 1, ""
	}
	var names []string
	for _, block := range where {
		if block != InFile {
			names = append(names, string(block))
		}
	}
	if d.Args["blocks"] = names; len(names) == 0 {
		d.Help = "file"
	}
	if len(b.stack) > 1 && top.Block != InFile {
		d.Related = []diag.Related{{Span: top.Head, Key: "open"}}
	}
	b.faults.add(d)
}

// noBar reports a line of a text or a chart that does not stand behind a bar.
func (b *blocks) noBar(t Token) {
	top := b.top()
	if top.astray == InProse {
		return
	}
	top.astray = InProse
	d := diag.Diagnostic{Code: codeNoBar, Span: t.Span, Args: diag.Args{"inside": b.faults.firstWord(top.Statement)}, Help: "prose"}
	if top.Block == InChart {
		d.Help = "chart"
	}
	b.faults.add(d)
}

// noRow reports stitches that stand in no row.
func (b *blocks) noRow(t Token) {
	top := b.top()
	if top.astray == InPart {
		return
	}
	top.astray = InPart
	b.faults.add(diag.Diagnostic{Code: codeNoRow, Span: t.Span, Args: diag.Args{"word": b.written(t)}})
}

// stitchesAhead reports whether a line reads like the instructions of a row.
func (b *blocks) stitchesAhead(first int) bool {
	t := b.tokens[first]
	word := b.text(t)
	switch t.Kind {
	case Sign:
		return word == "(" || word == "["
	case Number:
		return true
	case Word:
		if itemWords[word] != nil || word == "sl" || isStitchWord(word) {
			return true
		}
		switch b.textAt(b.sayingOnLine(first + 1)) {
		case "in", "to", "around", "between", "evenly":
			return !Reserved(word)
		}
	}
	return false
}

// isStitchWord reports whether a word looks like one of the trade's abbreviations: sc, fpdc, dc3tog. The names of all
// stitches are the compiler's business; here they only choose a message.
func isStitchWord(word string) bool {
	if base, ok := strings.CutSuffix(word, "tog"); ok {
		word = strings.TrimRight(base, "0123456789")
	}
	if len(word) > 3 {
		word = strings.TrimPrefix(strings.TrimPrefix(word, "fp"), "bp")
	}
	return slices.Contains([]string{"sc", "hdc", "dc", "tr", "dtr", "trtr", "htr", "ttr", "ss", "inc", "dec"}, word)
}

// misspelt reports a line that begins with a word nobody knows, with the words it may have been.
//
// A word that is alone on its line may be `end`.
func (b *blocks) misspelt(t Token, alone bool) *form {
	word, top := b.text(t), b.top()
	d := diag.Diagnostic{Code: codeUnknown, Span: t.Span, Args: diag.Args{"word": b.written(t)}}
	if english := englishFor(word); english != "" && t.Kind == Word && b.spelt.tongue == nil {
		d.Code, d.Args["english"] = codeOtherWord, english
		d.Edit = &diag.Edit{Span: t.Span, Text: english}
		b.faults.add(d)
		return b.meant(english)
	}
	var near []string
	if full := shortWords[strings.ToLower(word)]; full != "" {
		near = []string{full}
	} else if t.Kind == Word {
		known := lineWords(top.Block)
		if alone {
			known = append(known, "end")
		}
		if near = b.spelt.near(word, known); near == nil {
			near = b.spelt.near(word, allLineWords())
		}
	}
	if near == nil {
		d.Help, d.Args["right"] = "words", lineWords(top.Block)
		if f := forms[top.Block][anyName]; f != nil && top.Block != InPart {
			d.Help, d.Args["form"] = "name", f.right
		}
		b.faults.add(d)
		return nil
	}
	d.Help, d.Args["near"] = "near", near
	if len(near) == 1 {
		d.Edit = &diag.Edit{Span: t.Span, Text: near[0]}
	}
	b.faults.add(d)
	return b.meant(near[0])
}

// meant is the form of a line that was meant to begin with a word. The word end closes the block.
func (b *blocks) meant(word string) *form {
	if word == "end" {
		if len(b.stack) > 1 {
			b.close(b.lastEnd())
			b.credit++
		}
		return nil
	}
	return forms[b.top().Block][word]
}

// lineWords gives the words that a line can begin with in a block.
func lineWords(in Block) []string {
	var words []string
	for key := range forms[in] {
		word, _, _ := strings.Cut(key, " ")
		if key != anyName && key != anyNumber && !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	slices.Sort(words)
	return words
}

func allLineWords() []string {
	var words []string
	for _, block := range blockOrder {
		words = append(words, lineWords(block)...)
	}
	slices.Sort(words)
	return slices.Compact(words)
}
