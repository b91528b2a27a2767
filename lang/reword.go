package lang

import (
	"bytes"
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Reword writes a source in another of the languages that sources are written in: "en", or a tag of [Tongues] such as
// "es-MX". Words of the language and the names that ovillo knows are put into it, between braces in texts as well; names of
// the designer's own, texts and remarks stay as they are, and so do line ends and blanks. The tree of what comes out is the
// tree of what went in.
//
// A source with errors is not reworded, since nobody knows what it means: the error is a [Faulty]. Where a name of the
// designer's is a word of the other language it is a [Taken].
func Reword(f *source.File, to string) (string, error) {
	tree, faults := Parse(f)
	if len(faults) > 0 {
		return "", &Faulty{faults}
	}
	text := tree.inEnglish()
	if to != "en" {
		t, ok := tongueNamed(to)
		if !ok {
			return "", fmt.Errorf("no source can be written in %q: there are en, %s", to, strings.Join(Tongues(), ", "))
		}
		english, _ := Parse(source.NewFile(f.Name, text))
		uses := english.nameUses()
		if tree.tongue == nil {
			if err := t.taken(uses); err != nil {
				return "", err
			}
		}
		t.stitches = stitchesOf(t.reading, english.inUKTerms())
		if err := t.clash(uses); err != nil {
			return "", err
		}
		text = t.write(english, uses)
	}
	again, faults := Parse(source.NewFile(f.Name, text))
	if at, same := sameMeaning(tree, again); !same || len(faults) > 0 {
		return "", &Taken{Span: at}
	}
	return text, nil
}

// Faulty is the error of a source that cannot be read.
type Faulty struct{ Faults diag.List }

func (e *Faulty) Error() string { return "the source has errors" }

// Taken is the error of a source with a name that is a word of the other language.
type Taken struct {
	Name string      // "" if it is not certain which name
	Span source.Span // of the first such name, or the statement in which it stands
}

func (e *Taken) Error() string { return "a name is a word of the other language: " + e.Name }

// inUKTerms reports whether the header says that stitches have their British names.
func (f *File) inUKTerms() bool {
	uk := false
	Walk(f, func(n Node) bool {
		if t, ok := n.(*Terms); ok {
			uk = t.Word.Text == "uk"
		}
		return true
	})
	return uk
}

// taken finds the first name of the designer's own that is a word of the language.
func (t *tongue) taken(uses []nameUse) error {
	for _, u := range uses {
		if name := *u.words[0]; !u.path && u.from[0] == ownNames && t.reserves(name) {
			return &Taken{name, u.at}
		}
	}
	return nil
}

// clash finds a name of the designer's own that is the word for something else the source uses, as v is for a double crochet
// on the River Plate.
func (t *tongue) clash(uses []nameUse) error {
	own := ownNamesOf(uses)
	for _, u := range uses {
		for i, word := range u.words {
			if other := t.word(*word, u.from[i], own); other != *word && own[other] && !u.from[i].alwaysTheirs() {
				return &Taken{other, u.at}
			}
		}
	}
	return nil
}

// reserves reports whether a word belongs to the language wherever it stands.
func (t *tongue) reserves(word string) bool {
	return slices.ContainsFunc(t.wordTable.read[plain(word)], func(w wording) bool {
		return len(w.other) == 1 && w.behind == nil && slices.ContainsFunc(w.english, Reserved)
	})
}

// inEnglish is the text of the file in English.
func (f *File) inEnglish() string {
	text := f.Source.Text
	if f.tongue == nil {
		return text
	}
	names := map[int32]string{} // by where they stand
	for _, u := range f.nameUses() {
		for i, at := range f.wordSpans(u) {
			names[at.Start] = *u.words[i]
		}
	}
	tokens := Tokens(text)
	_, line, _ := tongueOf(text, tokens)
	for i := range line {
		line[i].Kind = Comment
	}
	s := f.tongue.respell(text, tokens)
	var b strings.Builder
	last := int32(0) // up to where the text is written
	tokens = s.tokens[headEnd(text, s.tokens, line):]
	hyphen := func(i int) bool { return i >= 0 && i < len(tokens) && s.english[tokens[i].Span] == "-" }
	for i, t := range tokens {
		word, turned := s.english[t.Span]
		if name, ok := names[t.Span.Start]; ok && t.Kind == Word && t.Span.End > t.Span.Start {
			word, turned = name, true
		}
		switch {
		case turned && i > 0 && t.Span.Start == last && s.english[t.Span] != "" && isLetterBefore(text, t.Span.Start):
			b.WriteString(" " + word) // they share a word of the source
		case t.Kind == Blank && strings.Trim(t.Text(text), " \t\u00a0\ufeff") != "":
			last = -1 // an article: the blank behind it goes as well
			continue
		case t.Kind == Blank && (last == -1 || hyphen(i-1) || hyphen(i+1)):
		case turned:
			b.WriteString(word)
		case t.Kind == Prosaic:
			b.WriteString(f.tongue.inBraces(t.Text(text), f.own, (*tongue).english))
		default:
			b.WriteString(t.Text(text))
		}
		last = t.Span.End
	}
	return b.String()
}

// isLetterBefore reports whether a letter stands right before a place.
func isLetterBefore(text string, at int32) bool {
	c, _ := utf8.DecodeLastRuneInString(text[:at])
	return unicode.IsLetter(c)
}

// English puts a line of code that is written in one of the languages of sources into English; the tag says which. Stitches get
// their US names. What is no word of the language stays.
func English(code, tag string) string {
	t, ok := tongueNamed(tag)
	if !ok {
		return code
	}
	return t.inEnglish(code)
}

// English puts a line of code that is written as the source is into English, under its terms.
func (f *File) English(code string) string {
	if f.tongue == nil {
		return code
	}
	return f.tongue.inEnglish(code)
}

func (t *tongue) inEnglish(code string) string {
	var words []string
	s := t.respell(code, Tokens(code))
	for _, tok := range s.tokens {
		if !tok.Kind.silent() {
			words = append(words, s.text(tok, code))
		}
	}
	return strings.Join(words, " ")
}

// headEnd is the index of the first token behind the line that names the language, and behind one empty line below it.
func headEnd(text string, tokens, line []Token) int {
	end := line[len(line)-1].Span.End
	i := slices.IndexFunc(tokens, func(t Token) bool { return t.Span.Start >= end })
	if i < 0 {
		return len(tokens)
	}
	for n := 0; n < 2 && i < len(tokens) && tokens[i].Kind == LineEnd; n++ {
		i++
	}
	return i
}

// wordSpans gives the place of each word of a name or a path.
func (f *File) wordSpans(u nameUse) []source.Span {
	if len(u.words) == 1 && u.from[0] != functions {
		if isName := strings.IndexAny(f.Source.Slice(u.at), " .(\t\n") < 0; isName {
			return []source.Span{u.at}
		}
	}
	var spans []source.Span
	tokens := slices.DeleteFunc(Tokens(f.Source.Slice(u.at)), func(t Token) bool { return t.Kind.silent() })
	for i := range tokens {
		tokens[i].Span.Start += u.at.Start
		tokens[i].Span.End += u.at.Start
	}
	for first := range tokens {
		spans = spans[:0]
		for k, word := range u.words {
			i := first + 2*k
			if i >= len(tokens) || k > 0 && tokens[i-1].Text(f.Source.Text) != "." || !f.says(tokens[i], *word, u.from[k]) {
				break
			}
			spans = append(spans, tokens[i].Span)
		}
		if len(spans) == len(u.words) {
			return spans
		}
	}
	return nil
}

// says reports whether a token is a word of the tree as the source has it.
func (f *File) says(t Token, word string, from vocabulary) bool {
	written := spelling(t.Text(f.Source.Text))
	return written == word || f.tongue != nil && f.tongue.english(written, from, f.own) == word
}

// write is the text of a file that is in English in the language.
func (t *tongue) write(f *File, uses []nameUse) string {
	w := &turner{tongue: t, text: f.Source.Text, own: ownNamesOf(uses), names: map[int32]namedWord{}, tokens: Tokens(f.Source.Text)}
	for _, u := range uses {
		for i, at := range f.wordSpans(u) {
			w.names[at.Start] = namedWord{t.word(*u.words[i], u.from[i], w.own), u.from[i]}
		}
	}
	Walk(f, func(n Node) bool { w.nodes = append(w.nodes, nodeAt{n.Span(), nodeName(n)}); return true })
	w.b.WriteString(t.head + " " + t.reading.Tag() + "\n\n")
	w.run()
	return w.b.String()
}

// code turns a passage of code in a message. There is no tree to it, so that of several translations the usual one is taken.
func (t *tongue) code(english string) string {
	w := &turner{tongue: t, text: english, tokens: Tokens(english), loose: true}
	w.run()
	return w.b.String()
}

// turner writes English in another language.
type turner struct {
	*tongue
	text   string
	tokens []Token
	own    map[string]bool
	names  map[int32]namedWord
	nodes  []nodeAt // in the order of the source: a node stands before its parts
	loose  bool     // there is no tree: words that may be names are turned if they are in a vocabulary
	b      strings.Builder
	i      int
	first  bool
}

type namedWord struct {
	word string
	from vocabulary
}

type nodeAt struct {
	at   source.Span
	name string
}

func (w *turner) run() {
	w.first = true
	for w.i < len(w.tokens) {
		w.next()
	}
}

func (w *turner) next() {
	t := w.tokens[w.i]
	said := t.Text(w.text)
	name, named := w.names[t.Span.Start]
	switch {
	case t.Kind == LineEnd:
		w.put(said, 1)
		w.first = true
		return
	case t.Kind.silent():
		w.put(said, 1)
		return
	case t.Kind == Prosaic:
		said = w.inBraces(said, w.own, (*tongue).word)
	case t.Kind != Word, w.verbatim():
	case named && name.from != sideNames:
		said = name.word
	default:
		if other, n := w.phrase(); n > 0 {
			w.put(other, n)
			w.first = false
			return
		}
		if named {
			said = name.word
		} else if w.loose {
			said = w.looseName(said)
		}
	}
	w.put(said, 1)
	w.first = false
}

// put writes a text for the next n tokens that say something, with the blanks between them.
func (w *turner) put(text string, n int) {
	w.b.WriteString(text)
	for w.i++; n > 1; w.i++ {
		if !w.tokens[w.i].Kind.silent() {
			n--
		}
	}
}

// saying is the nth token from the current one on that says something on its line.
func (w *turner) saying(n int) (Token, bool) {
	for j := w.i; j < len(w.tokens) && w.tokens[j].Kind != LineEnd; j++ {
		if w.tokens[j].Kind.silent() {
			continue
		}
		if n == 0 {
			return w.tokens[j], true
		}
		n--
	}
	return Token{}, false
}

// verbatim reports whether a word is the code of a language before a text or a bar.
func (w *turner) verbatim() bool {
	next, ok := w.saying(1)
	said := w.tokens[w.i].Text(w.text)
	return ok && (next.Kind == Quoted && len(said) == 2 && !w.first || next.Kind == Sign && next.Text(w.text) == "|")
}

// phrase finds the translation of what begins with the next token, and how many tokens it stands for.
func (w *turner) phrase() (string, int) {
	t := w.tokens[w.i]
	if u := w.named[units].other[t.Text(w.text)]; u != "" && w.inside(t, "Expr") && w.innermost(t) == "Expr" {
		return u, 1
	}
	if other, n := w.stitch(t.Text(w.text)); n > 0 {
		return other, n
	}
	best, words := wording{}, 0
	for _, r := range w.wordTable.write[t.Text(w.text)] {
		if len(r.english) < words {
			break
		}
		if w.fits(r) && (r.where == "" && words == 0 || r.where != "" && w.inside(t, r.where)) {
			best, words = r, len(r.english)
		}
	}
	if words == 0 {
		return "", 0
	}
	return w.agree(best), words
}

// stitch finds the translation of a stitch that is a word of the language: a chain, a slip stitch.
func (w *turner) stitch(word string) (string, int) {
	english, n := word, 1
	if next, ok := w.saying(1); ok && word == "sl" && next.Text(w.text) == "st" {
		english, n = "sl st", 2
	}
	if english != "ch" && n == 1 {
		return "", 0
	}
	other, ok := w.stitches.write(english)
	if !ok {
		return "", 0
	}
	return other, n
}

// fits reports whether the words of a wording come next, and are no names of the designer's.
func (w *turner) fits(r wording) bool {
	for k, word := range r.english {
		t, ok := w.saying(k)
		if !ok || t.Text(w.text) != word {
			return false
		}
		if n, named := w.names[t.Span.Start]; named && n.from != sideNames {
			return false
		}
	}
	return true
}

// agree puts a word into the plural before a number.
func (w *turner) agree(r wording) string {
	text := strings.Join(r.other, " ")
	if len(r.english) != 1 || r.where != "" {
		return text
	}
	next, ok := w.saying(1)
	several := ok && (next.Kind == Number && next.Text(w.text) != "1" || next.Kind == Word && w.inside(next, "Cnt"))
	switch word := r.english[0]; {
	case (word == "next" || word == "last") && several:
		return text + "s"
	case word == "first" && !(ok && next.Text(w.text) == "st"):
		return text + "o"
	}
	return text
}

// inside reports whether a token stands in a node of a kind.
func (w *turner) inside(t Token, kind string) bool {
	return slices.ContainsFunc(w.around(t), func(n nodeAt) bool { return strings.TrimPrefix(n.name, ".") == kind })
}

// innermost is the kind of the smallest node that a token stands in.
func (w *turner) innermost(t Token) string {
	if in := w.around(t); len(in) > 0 {
		return strings.TrimPrefix(in[len(in)-1].name, ".")
	}
	return ""
}

// around lists the nodes that a token stands in, the outermost first.
func (w *turner) around(t Token) []nodeAt {
	end, _ := slices.BinarySearchFunc(w.nodes, t.Span.Start+1, func(n nodeAt, at int32) int { return int(n.at.Start - at) })
	var in []nodeAt
	for i := end - 1; i >= 0; i-- {
		n := w.nodes[i]
		if n.at.End >= t.Span.End {
			in = append(in, n)
		}
		if strings.HasPrefix(n.name, ".") {
			break // a statement: nothing before it reaches here
		}
	}
	slices.Reverse(in)
	return in
}

// looseName turns a name of a passage of which there is no tree, if it is in a vocabulary.
func (w *turner) looseName(word string) string {
	for _, v := range []vocabulary{stitchNames, memberNames, units, levels, kinds, weights, fibres, bodyTables, functions, measureNames} {
		if other := w.word(word, v, nil); other != word {
			return other
		}
	}
	return word
}

// braces are a name between braces; a word that goes with its number may follow.
var braces = regexp.MustCompile(`\{[\pL\pN_.]+`)

// inBraces turns what stands between braces in a text.
func (t *tongue) inBraces(text string, own map[string]bool, turn func(*tongue, string, vocabulary, map[string]bool) string) string {
	if !strings.Contains(text, "{") {
		return text
	}
	return braces.ReplaceAllStringFunc(text, func(s string) string {
		return "{" + t.braced(s[1:], own, turn)
	})
}

// braced turns one name between braces: a stitch, or a measure of the wearer.
func (t *tongue) braced(name string, own map[string]bool, turn func(*tongue, string, vocabulary, map[string]bool) string) string {
	head, rest, path := strings.Cut(name, ".")
	switch {
	case own[head]:
		return name
	case path && isFit(head):
		return turn(t, head, fitNames, own) + "." + turn(t, rest, measureNames, own)
	case path:
		return name
	}
	return turn(t, name, stitchNames, own)
}

// sameMeaning compares two trees, and gives the statement of the first where they part.
func sameMeaning(a, b *File) (source.Span, bool) {
	if bytes.Equal(a.meaning(), b.meaning()) {
		return source.Span{}, true
	}
	var at source.Span
	var before, behind []*Statement
	WalkStatements(a.Body, func(s *Statement) bool { before = append(before, s); return true })
	WalkStatements(b.Body, func(s *Statement) bool { behind = append(behind, s); return true })
	for i, s := range before {
		at = s.Head
		one, other := *s, &Statement{}
		if i < len(behind) {
			*other = *behind[i]
		}
		one.Body, other.Body = nil, nil
		if !bytes.Equal((&File{Source: a.Source, Body: []*Statement{&one}, tongue: a.tongue, own: a.own}).meaning(),
			(&File{Source: b.Source, Body: []*Statement{other}, tongue: b.tongue, own: b.own}).meaning()) {
			return at, false
		}
	}
	return at, false
}

// meaning is what is the same for a source in all languages.
func (f *File) meaning() []byte {
	var b bytes.Buffer
	Dump(&b, f) // a buffer takes all
	return b.Bytes()
}

// Braced is a text of the source with what stands between its braces as the tree would have it: in a source that is not in
// English a stitch, or a measure of the wearer, goes by its name there.
func (f *File) Braced(text string) string {
	if f.tongue == nil {
		return text
	}
	return f.tongue.inBraces(text, f.own, (*tongue).english)
}

// nodeName is the kind of a node; a statement has a point before it.
func nodeName(n Node) string {
	name := reflect.TypeOf(n).Elem().Name()
	if _, ok := n.(StatementNode); ok {
		return "." + name
	}
	return name
}

// Named is what a name between braces in a text is called in the tree: see [File.Braced].
func (f *File) Named(name string) string {
	if f.tongue == nil {
		return name
	}
	return f.tongue.braced(name, f.own, (*tongue).english)
}
