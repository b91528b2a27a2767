package lang

import (
	"cmp"
	"slices"
	"unicode/utf8"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Parse reads a source by itself; the files that it uses are left aside (see [Load]). It always returns a tree; what could not be
// read is in the list.
func Parse(f *source.File) (*File, diag.List) {
	file, found := parse(f, false)
	if file.tongue != nil {
		file.readNames(ownNamesOf(file.nameUses()))
	}
	return file, found
}

// parse reads a source, but for its names. uk: the stitch names are the British ones, which another file says.
func parse(f *source.File, uk bool) (*File, diag.List) {
	b := &blocks{file: f, uk: uk, later: &sidebyside{}}
	file, found := b.parse()
	if b.later.read() {
		return file, found
	}
	b = &blocks{file: f, uk: uk} // what cannot be read is told in its turn
	return b.parse()
}

func (b *blocks) parse() (*File, diag.List) {
	f := b.file
	b.spelt, b.faults = &spelt{}, faults{file: f, spelt: &spelt{}}
	root := &Statement{Block: InFile}
	if len(f.Text) > MostBytes {
		b.faults.add(diag.Diagnostic{Code: codeBigFile, Span: source.Span{Start: MostBytes, End: MostBytes + 1},
			Args: diag.Args{"limit": MostBytes >> 20}})
		return &File{Source: f}, b.faults.list
	}
	if f.Lines() > maxLines {
		at := f.LineStart(maxLines + 1)
		b.faults.add(diag.Diagnostic{Code: codeManyLines, Span: source.Span{Start: at, End: at}, Args: diag.Args{"limit": maxLines}})
		return &File{Source: f}, b.faults.list
	}
	b.checkEncoding()
	tongue, idiom := b.cut()
	b.stack = []*opened{{Statement: root}}
	for b.skipSilent(); b.i < len(b.tokens); b.skipSilent() {
		b.line()
	}
	b.closeAtEnd()
	return &File{Source: f, Body: root.Body, tongue: tongue, idiom: idiom, spelt: b.spelt}, b.withoutEchoes(b.faults.list)
}

// withoutEchoes leaves out what is found in lines that use a value whose name could not be given: they cannot be read because of it.
func (b *blocks) withoutEchoes(list diag.List) diag.List {
	refused := map[string]bool{}
	for _, d := range list {
		if i := b.tokenAt(d.Span); d.Code == codeReserved && i > 1 && b.textAt(i-2) == "let" {
			refused[b.file.Slice(d.Span)] = true
		}
	}
	if len(refused) == 0 {
		return list
	}
	uses := map[int]bool{} // the lines
	for _, t := range b.tokens {
		if refused[b.file.Slice(t.Span)] {
			uses[b.file.Line(t.Span.Start)] = true
		}
	}
	return slices.DeleteFunc(list, func(d diag.Diagnostic) bool {
		return d.Code != codeReserved && uses[b.file.Line(d.Span.Start)]
	})
}

// tokenAt is the token that begins where a span does, -1 if none does.
func (b *blocks) tokenAt(at source.Span) int {
	i, ok := slices.BinarySearchFunc(b.tokens, at.Start, func(t Token, start int32) int { return cmp.Compare(t.Span.Start, start) })
	if !ok {
		return -1
	}
	return i
}

// cut cuts the source into tokens. Those of a source that is not in English are read as English, and its first line, which
// says so, as a remark.
func (b *blocks) cut() (*tongue, source.Span) {
	b.tokens = Tokens(b.file.Text)
	tongue, line, known := tongueOf(b.file.Text, b.tokens)
	if tongue == nil {
		return nil, source.Span{}
	}
	idiom := line[0].Span.To(line[len(line)-1].Span)
	if !known {
		b.faults.add(diag.Diagnostic{Code: codeTongue, Span: idiom, Args: diag.Args{"known": Tongues()}})
	}
	for i := range line {
		line[i].Kind = Comment
	}
	if b.uk {
		tongue.stitches = stitchesOf(tongue.reading, true)
	}
	b.spelt = tongue.respell(b.file.Text, b.tokens)
	b.tokens = b.spelt.tokens
	b.faults.spelt = b.spelt
	for _, t := range b.spelt.foreign {
		b.faults.foreign(t, tongue)
	}
	return tongue, idiom
}

// feed is what the parser of a statement reads from.
func (b *blocks) feed(g gathered) *feed {
	return &feed{text: b.file.Text, tokens: g.tokens, spelt: b.spelt, end: int(g.head.End)}
}

// checkEncoding reports the first byte that is no UTF-8; the rest of such a text is no better.
func (b *blocks) checkEncoding() {
	for i, r := range b.file.Text {
		if r != utf8.RuneError {
			continue
		}
		if _, n := utf8.DecodeRuneInString(b.file.Text[i:]); n == 1 {
			at := source.Span{Start: int32(i), End: int32(i + 1)}
			b.faults.add(diag.Diagnostic{Code: codeEncoding, Span: at, Args: diag.Args{"byte": hexByte(b.file.Text[i])}})
			b.faults.badBytes = true
			return
		}
	}
}

func hexByte(c byte) string {
	const digits = "0123456789ABCDEF"
	return "0x" + string(digits[c>>4]) + string(digits[c&15])
}

// blocks reads statements into blocks. The stack is explicit, so that nothing in a source can make it grow without bound.
type blocks struct {
	file   *source.File
	uk     bool
	tokens []Token
	spelt  *spelt
	later  *sidebyside // nil: statements are read one after the other, as they come
	i      int         // the next token
	stack  []*opened
	credit int // blocks that were closed for want of an `end`, or never opened: as many stray ones later are silent
	faults faults
}

// opened is a block that is open.
type opened struct {
	*Statement
	astray  Block          // the block of the statements that were last met here and stand in another one: one message for a run
	voice   string         // what stands before the last bar that had something before it
	letters map[string]int // of the lines behind bars, by that
}

func (b *blocks) top() *opened { return b.stack[len(b.stack)-1] }

func (b *blocks) skipSilent() { b.i = b.sayingFrom(b.i) }

// line reads what begins with the next token: a line behind a bar, the end of a block, or a statement.
func (b *blocks) line() {
	t := b.tokens[b.i]
	second := b.sayingOnLine(b.i + 1)
	switch {
	case b.isBar(b.i), second >= 0 && b.isBar(second):
		b.raw()
	case t.Kind == Word && b.text(t) == "end":
		b.end(b.gather())
	default:
		b.statement()
	}
}

// isBar reports whether the token at i is a bar with a text behind it.
func (b *blocks) isBar(i int) bool {
	t := b.tokens[i]
	return t.Kind == Sign && b.text(t) == "|"
}

// statement reads one statement and opens its block.
func (b *blocks) statement() {
	f := b.find(b.top().Block, b.i)
	if f == nil {
		f = b.findAbove()
	}
	first := b.i
	top := b.top()
	g := b.gather()
	n := &Statement{Whole: g.head, Head: g.head}
	b.append(n)
	if f == nil {
		b.open(n, b.unknown(first, g))
		return
	}
	top.astray = ""
	b.open(n, f)
	if g.fault != noSlip {
		b.faults.gathered(g, f)
		return
	}
	b.read(n, f, g)
}

// read reads what a statement says.
func (b *blocks) read(n *Statement, f *form, g gathered) {
	if b.later != nil {
		b.later.add(n, f, b.feed(g))
		return
	}
	node, err := f.read(b.feed(g).upgrade())
	if err != nil {
		b.faults.unread(g, f, err)
		return
	}
	n.Node = node
	n.list()
}

func (b *blocks) append(n *Statement) { b.top().Body = append(b.top().Body, n) }

// open opens the block of a statement, if it has one.
func (b *blocks) open(n *Statement, f *form) {
	if f == nil || f.opens == "" {
		return
	}
	if len(b.stack) > maxDepth {
		b.faults.add(diag.Diagnostic{Code: codeDepth, Span: n.Head, Args: diag.Args{"limit": maxDepth}})
		b.credit++
		return
	}
	n.Block = f.opens
	b.stack = append(b.stack, &opened{Statement: n})
}

// close closes the innermost block at a place.
func (b *blocks) close(at int32) {
	n := b.top()
	n.Whole.End = max(n.Whole.End, at)
	b.stack = b.stack[:len(b.stack)-1]
}

// find is the form of the statement that begins with the token at i in a block, or nil.
func (b *blocks) find(in Block, i int) *form {
	t, table := b.tokens[i], forms[in]
	if t.Kind == Number && table[anyNumber] != nil && b.rowsAhead(i) == (in == InPart) {
		return table[anyNumber]
	}
	if t.Kind != Word {
		return nil
	}
	word := b.text(t)
	if f := table[word+" "+b.second(i)]; f != nil {
		return f
	}
	if f := table[word]; f != nil {
		return f
	}
	if Reserved(word) && word != "rows" || in == InPart && !b.rowsAhead(i) || in == InMotifs && !b.acrossAhead(i) {
		return nil
	}
	return table[anyName]
}

// second is what the token behind token i on its line is called in a key of the table of statements.
func (b *blocks) second(i int) string {
	i = b.sayingOnLine(i + 1)
	if i >= 0 && b.tokens[i].Kind == Number {
		return anyNumber
	}
	return b.textAt(i)
}

// findAbove closes the blocks that a statement shows to have no `end`: it begins with a word that fits only further out.
func (b *blocks) findAbove() *form {
	for k := len(b.stack) - 2; k >= 0; k-- {
		f := b.find(b.stack[k].Block, b.i)
		if f == nil || f == forms[b.stack[k].Block][anyName] {
			continue
		}
		b.faults.missingEnd(b.tokens[b.i], b.top().Statement)
		for len(b.stack)-1 > k {
			b.close(b.lastEnd())
			b.credit++
		}
		return f
	}
	return nil
}

// lastEnd is the end of the last token before the current one that says something.
func (b *blocks) lastEnd() int32 {
	for i := b.i - 1; i >= 0; i-- {
		if !b.tokens[i].Kind.silent() {
			return b.tokens[i].Span.End
		}
	}
	return 0
}

// end closes a block, with the counts that may stand behind its `end`.
func (b *blocks) end(g gathered) {
	if len(b.stack) == 1 {
		if b.credit > 0 {
			b.credit--
		} else {
			b.faults.add(diag.Diagnostic{Code: codeStrayEnd, Span: g.tokens[0].Span})
		}
		return
	}
	if g.says > 1 {
		n := &Statement{Whole: g.head, Head: g.head}
		b.append(n)
		if g.fault != noSlip {
			b.faults.gathered(g, endForm)
		} else {
			b.read(n, endForm, g)
		}
	}
	b.close(g.head.End)
}

// closeAtEnd closes what is still open at the end of the file.
func (b *blocks) closeAtEnd() {
	if n := len(b.stack) - 1; n > 0 {
		b.faults.openAtEnd(b.stack[1:])
	}
	for len(b.stack) > 1 {
		b.close(b.lastEnd())
	}
}
