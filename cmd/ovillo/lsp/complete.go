package lsp

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/words"
)

// complete lists the words that could stand at a place. The parser says which words of the language could; names follow from where
// they are set, and stitches from the terms of the source.
func (q *query) complete() (any, *failure) {
	c := q.completer()
	switch kind := c.tokenAt(); {
	case kind == lang.Prosaic:
		c.intoProse()
	case kind == lang.Comment, kind == lang.Stray && strings.HasPrefix(q.text.body[c.token.Start:], `"`):
	case kind == lang.Quoted:
		c.intoQuotes()
	default:
		c.intoCode()
	}
	return CompletionList{Items: c.items}, nil
}

// completer gathers what could stand at a place.
type completer struct {
	*query
	x      *index
	at     int         // the place
	from   int         // where the word that is being written begins
	token  source.Span // in which the place lies
	scope  string      // the part at the place
	coder  func(string) string
	uk     bool
	items  []CompletionItem
	offers map[string]bool
}

func (q *query) completer() *completer {
	c := &completer{query: q, x: q.index(), at: q.text.offset(q.params.Position), offers: map[string]bool{}, items: []CompletionItem{}}
	c.coder = c.x.tree.Coder()
	if c.coder == nil {
		c.coder = func(code string) string { return code }
	}
	c.uk = ukTerms(c.x.tree)
	for c.from = c.at; c.from > 0; {
		r, n := utf8.DecodeLastRuneInString(q.text.body[:c.from])
		if r != '_' && !unicode.IsLetter(r) && !unicode.IsDigit(r) && !unicode.Is(unicode.Mn, r) {
			break
		}
		c.from -= n
	}
	lang.WalkStatements(c.x.tree.Body, func(s *lang.Statement) bool {
		in := int(s.Whole.Start) <= c.at && c.at <= int(s.Whole.End)
		switch n := s.Node.(type) {
		case *lang.Part:
			if in && n.Name != nil {
				c.scope = n.Name.Text
			}
		case *lang.Chart:
			if in && n.Of != nil {
				c.scope = n.Of.Text
			}
		}
		return in
	})
	return c
}

// tokenAt is the kind of the token in which the place lies, 0 between two.
func (c *completer) tokenAt() lang.TokenKind {
	for _, t := range lang.Tokens(c.text.read()) {
		open := t.Kind == lang.Comment || t.Kind == lang.Prosaic || t.Kind == lang.Stray // goes on behind its last letter
		if int(t.Span.Start) < c.at && (c.at < int(t.Span.End) || open && c.at == int(t.Span.End)) {
			c.token = t.Span
			return t.Kind
		}
	}
	return 0
}

// add offers a word. Rank orders the kinds: 0 first.
func (c *completer) add(rank int, label string, kind int, detail string) *CompletionItem {
	if label == "" || c.offers[label] {
		return &CompletionItem{}
	}
	c.offers[label] = true
	c.items = append(c.items, CompletionItem{Label: label, Kind: kind, Detail: oneLine(detail), SortText: fmt.Sprintf("%d %s", rank, label),
		TextEdit: &TextEdit{c.text.rangeOf(source.Span{Start: int32(c.from), End: int32(c.at)}), label}})
	return &c.items[len(c.items)-1]
}

// intoCode offers what can stand in a statement, or begin one.
func (c *completer) intoCode() {
	o := lang.OpeningAt(c.text.body, c.from)
	switch {
	case len(o.Said) == 0:
		c.beginnings(o.Block)
	case o.Before(1) == ".":
		c.members(o.Before(2))
	default:
		c.names(&o)
		if o.GoesOn(`en "x"`) && !inRow(&o) {
			for _, l := range []string{"en", "es"} {
				c.add(3, l, kindConstant, "")
			}
		}
		for _, w := range lang.Words() {
			if o.Offers(w) {
				c.word(&o, w)
			}
		}
	}
}

// word offers a word of the language, as the source would write it.
func (c *completer) word(o *lang.Opening, w string) {
	label := c.coder(w)
	if said := strings.Join(o.Said, " "); c.x.tree.Coder() != nil {
		// What a word is called depends on what stands before it.
		before, both := strings.Fields(c.coder(said)), strings.Fields(c.coder(said+" "+w))
		if len(both) > len(before) && slices.Equal(both[:len(before)], before) {
			label = strings.Join(both[len(before):], " ")
		}
	}
	if label == w && c.x.tree.Coder() != nil {
		for _, turn := range c.x.tree.Turns(w) { // it stands in a turn of phrase alone
			c.add(4, turn, kindKeyword, "")
		}
		return
	}
	c.add(4, label, kindKeyword, "")
}

// beginnings offers how statements of a block begin.
func (c *completer) beginnings(block lang.Block) {
	for _, b := range lang.Beginnings(block) {
		right := c.coder(b.Right)
		label := b.Words
		if right != b.Right {
			label = firstWords(right, c.coder(b.Words))
		}
		c.add(1, label, kindKeyword, right)
	}
	if block != lang.InFile {
		c.add(2, c.coder("end"), kindKeyword, "")
	}
	switch block {
	case lang.InGauge:
		c.stitches(0)
	case lang.InMeasure, lang.InSample:
		c.vocabulary("measure")
	case lang.InPart:
		c.set(3, aVariable)
	}
}

// firstWords is what a right form begins with: as many words as the translation of its beginning has.
func firstWords(right, beginning string) string {
	words := strings.Fields(right)
	return strings.TrimRight(strings.Join(words[:min(len(strings.Fields(beginning)), len(words))], " "), ":")
}

// vocabularies are the names that ovillo knows, by the word that their statement begins with, or that stands before them.
var vocabularies = map[string]string{
	"kind": "kind", "level": "level", "weight": "weight", "fibre": "fibre", "surface": "surface", "for": "market", "body": "table", "fit": "measure",
}

// names offers the names that can stand next.
func (c *completer) names(o *lang.Opening) {
	first, before := o.Said[0], o.Before(1)
	vocabulary, known := vocabularies[first]
	switch {
	case !o.TakesName():
		return
	case known && (before == first || before == ","):
		c.vocabulary(vocabulary)
	case first == "terms" && before == first:
		c.add(0, "us", kindConstant, "")
		c.add(0, "uk", kindConstant, "")
	case first == "languages":
		for _, l := range []string{"en", "es"} {
			c.add(0, l, kindConstant, "")
		}
	case first == "cord" || first == "elastic" || first == "fringe" || first == "pompom":
		c.finishing(o)
	case slices.Contains([]string{"let", "part", "group", "chart", "yarn", "pattern", "mark"}, before) && !(before == "yarn" && o.Block != lang.InFile):
		return // a new name
	case before == "as" && first != "begin" && first != "takes" && !slices.Contains(o.Said, "begin"):
		return
	case before == "with" || first == "yarn" || first == "stripes" || before == "like" && first == "yarn":
		c.set(0, aYarn)
		if before == "with" {
			c.set(1, aStitch)
			c.add(2, "sc", kindFunction, "")
		}
	case first == "legend":
		c.set(0, aYarn)
		c.vocabulary("mesh")
	case first == "swatch":
		c.stitches(0)
	case before == "like" || before == "mirror" || first == "schematic" || before == "of" && first != "rows" && o.Block != lang.InPart:
		c.set(0, aPart)
	case before == "of":
		c.set(0, aStitchPattern)
		c.set(1, aPart)
		c.own(0)
	case before == "chart":
		c.set(0, aChart)
	case before == "move" || before == "unmark":
		c.kinds(0, aMarker)
	case first == "call" && before == first:
		c.kinds(0, aLabel, aMarker, aRow, anEdge)
		c.set(1, aPart)
	case inRow(o) && (before != "ch" && c.isStitch(before) || before == "inc" || before == "dec"):
		return // what stands behind a stitch is no name
	case first == "work":
		c.kinds(0, aRow)
	case first == "base" || first == "begin" || first == "takes" || first == "mesh" || before == "foundation":
		c.stitches(0)
	case slices.Contains([]string{":", "[", ",", ")", "("}, before) && inRow(o) || isNumber(before) && inRow(o):
		c.stitches(0)
		c.set(1, aVariable)
	case inRow(o) && (before == "=" || afterEquals(o)):
		c.set(0, aVariable)
		c.own(1)
		c.stitches(2)
	case inRow(o):
		c.own(0)
		c.set(1, aPart, aVariable)
	default:
		c.values(o)
	}
}

// inRow reports whether the opening is among the instructions of a row, or of something that has some.
func inRow(o *lang.Opening) bool {
	return (o.Block == lang.InPart || o.Block == lang.InShape || o.Block == lang.InPatternOf) && slices.Contains(o.Said, ":") && o.Said[0] != "count" ||
		o.Said[0] == "group"
}

func afterEquals(o *lang.Opening) bool { return o.Said[0] != "group" && slices.Contains(o.Said, "=") }

func isNumber(word string) bool { return word != "" && word[0] >= '0' && word[0] <= '9' }

// values offers what a value can be made of.
func (c *completer) values(o *lang.Opening) {
	c.set(0, aVariable)
	c.own(1)
	c.set(1, aPart)
	if o.GoesOn("stitches(") {
		for _, f := range lang.Vocabulary("function") {
			if o.GoesOn(f + "(") {
				c.add(1, c.coder(f), kindFunction, "")
			}
		}
		c.add(1, strings.TrimSuffix(c.coder("fit.waist"), "."+lastPart(c.coder("fit.waist"))), kindModule, "")
	}
	if slices.Contains(o.Said, "(") && o.Before(1) == "," {
		c.stitches(2) // stitches(20 cm, dc)
		if o.GoesOn("multiple of 2") {
			for _, w := range []string{"nearest", "up", "down", "even", "odd"} {
				c.word(o, w)
			}
		}
	}
	if o.Said[0] == "check" {
		c.kinds(0, aMeasure)
	}
	if o.Before(1) == "fits" || o.Before(1) == "over" {
		c.add(0, strings.TrimSuffix(c.coder("fit.waist"), "."+lastPart(c.coder("fit.waist"))), kindModule, "")
	}
}

func lastPart(path string) string { return path[strings.LastIndexByte(path, '.')+1:] }

// finishing offers names in a line of the finishing.
func (c *completer) finishing(o *lang.Opening) {
	switch o.Before(1) {
	case "with":
		c.set(0, aYarn)
		c.vocabulary("trim")
	case "at":
		c.vocabulary("zone")
	case "as":
		c.vocabulary("role")
	case "ends":
		c.vocabulary("ending")
	default:
		c.values(o)
	}
}

// vocabulary offers names that ovillo knows, as the source would write them.
func (c *completer) vocabulary(of string) {
	english := lang.Vocabulary(of)
	for i, name := range c.x.tree.Names(of, english) {
		detail := ""
		if name != english[i] {
			detail = english[i]
		}
		c.add(0, name, kindConstant, detail)
	}
}

// set offers the names of the source that stand for things of some kinds.
func (c *completer) set(rank int, kinds ...nameKind) {
	for _, u := range c.x.uses {
		if u.sets && u.key.scope == ofSource && slices.Contains(kinds, u.kind) && !u.within.Contains(source.Span{Start: int32(c.from), End: int32(c.from)}) {
			c.add(rank, u.key.name, completionKinds[u.kind], c.quoted(u.within))
		}
	}
}

var completionKinds = map[nameKind]int{aVariable: kindVariable, aYarn: kindColor, aGroup: kindFunction, aStitch: kindFunction, aStitchPattern: kindFunction,
	aChart: kindValue, aPart: kindModule, aLabel: kindRef, aMarker: kindRef, aRow: kindRef, anEdge: kindRef, aFit: kindConstant, aMeasure: kindVariable}

// own offers the labels, markers and sections of the part at hand.
func (c *completer) own(rank int) { c.kindsOf(rank, c.scope, aLabel, aMarker, anEdge) }

// kinds offers the names of some kinds in the part at hand, or the measures of the piece.
func (c *completer) kinds(rank int, kinds ...nameKind) { c.kindsOf(rank, c.scope, kinds...) }

func (c *completer) kindsOf(rank int, scope string, kinds ...nameKind) {
	for _, u := range c.x.uses {
		if !u.sets || u.key.scope == ofSource || !slices.Contains(kinds, u.kind) {
			continue
		}
		if k, ok := c.x.own(scope, u.key.name); u.key.scope == ofMeasure || ok && k == u.key {
			c.add(rank, u.key.name, completionKinds[u.kind], c.quoted(u.within))
		}
	}
}

// members offers what can stand behind the point of a path.
func (c *completer) members(of string) {
	switch {
	case of+"." == ofWearer:
		for _, u := range c.x.uses {
			if u.sets && u.key.scope == ofWearer {
				c.add(0, c.quoted(u.span), kindConstant, c.quoted(u.within))
			}
		}
		c.vocabulary("measure")
	case of+"." == ofMeasure:
		c.kinds(0, aMeasure)
	case c.x.kindOf(key{ofSource, of}) == aPart:
		c.kindsOf(0, of, aLabel, aMarker, aRow, anEdge)
		for _, m := range []string{"foundation", "edge"} {
			c.add(1, c.x.tree.Names("member", []string{m})[0], kindKeyword, "")
		}
	default:
		for _, m := range []string{"first", "last"} {
			c.add(0, lastPart(c.coder("x1."+m)), kindKeyword, "")
		}
	}
}

// stitches offers the stitches, each with its name in both languages.
func (c *completer) stitches(rank int) {
	c.set(rank, aStitch, aGroup, aStitchPattern)
	list := stitchMeanings(c.uk)
	for i, written := range c.x.tree.Names("stitch", list.words) {
		if list.meanings[i] != "" {
			c.add(rank, written, kindFunction, list.meanings[i])
		}
	}
	for w, said := range shapings {
		c.add(rank, c.x.tree.Names("stitch", []string{w})[0], kindFunction, c.say(said))
	}
}

// isStitch reports whether a word of the tree is a stitch, or something that is used like one.
func (c *completer) isStitch(word string) bool {
	_, ok := compile.StitchNamed(word, c.uk)
	kind := c.x.kindOf(key{ofSource, word})
	return ok || kind == aStitch || kind == aGroup
}

// meanings are the words for stitches, and what each means in both languages.
type meanings struct{ words, meanings []string }

// stitchMeanings are those under US or UK terms, which are worked out once.
func stitchMeanings(uk bool) meanings {
	if uk {
		return meaningsUK()
	}
	return meaningsUS()
}

var (
	meaningsUS = sync.OnceValue(func() meanings { return allMeanings(false) })
	meaningsUK = sync.OnceValue(func() meanings { return allMeanings(true) })
)

func allMeanings(uk bool) meanings {
	m := meanings{words: compile.StitchWords(uk)}
	for _, w := range m.words {
		m.meanings = append(m.meanings, meaningOf(w, uk))
	}
	return m
}

// meaningOf is the name of a stitch in both languages; "" if it is none.
func meaningOf(word string, uk bool) string {
	f, ok := compile.StitchNamed(word, uk)
	if !ok {
		return ""
	}
	tag := "en-US"
	if uk {
		tag = "en-GB"
	}
	p := &plan.Pattern{UKTerms: uk, Languages: []string{"en", "es"}, Stitches: []stitch.Form{f}}
	var names []string
	for _, t := range []string{tag, "es"} {
		if l, err := words.For(t); err == nil {
			names = append(names, l.StitchName(p, f))
		}
	}
	return strings.Join(names, " · ")
}

// intoProse offers the values that a text can put in, between braces.
func (c *completer) intoProse() {
	line := c.text.body[c.token.Start:c.at]
	open := strings.LastIndexByte(line, '{')
	if open < 0 || strings.ContainsRune(line[open:], '}') || strings.ContainsRune(line[open:], '|') {
		return
	}
	if inside := line[open+1:]; strings.Contains(inside, ".") {
		path, _, _ := strings.Cut(strings.TrimSpace(inside), ".")
		if c.x.tree.Named(path+".x") != path+".x" {
			path = strings.TrimSuffix(c.x.tree.Named(path+".x"), ".x")
		}
		c.members(path)
		return
	}
	c.set(0, aVariable, aPart)
	c.own(1)
}

// intoQuotes offers the sizes where a size stands.
func (c *completer) intoQuotes() {
	o := lang.OpeningAt(c.text.body, int(c.token.Start))
	sized := slices.Contains([]string{"only", "shown", "sample"}, first(o.Said)) || o.Before(1) == "but" || o.Before(1) == "size"
	if !sized {
		return
	}
	c.from = int(c.token.Start) + 1
	lang.Walk(c.x.tree, func(n lang.Node) bool {
		if sizes, ok := n.(*lang.Sizes); ok {
			for _, name := range sizes.Names {
				c.add(0, name.Text, kindConstant, "")
			}
		}
		return true
	})
}

func first(said []string) string {
	if len(said) == 0 {
		return ""
	}
	return said[0]
}
