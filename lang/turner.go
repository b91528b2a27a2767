package lang

import (
	"reflect"
	"slices"
	"strings"

	"ovillo/lang/source"
)

// write is the text of a file that is in English in the language.
func (t *tongue) write(f *File, uses []nameUse) string {
	w := t.turnerOf(f, uses)
	w.b.WriteString(t.head + " " + t.reading.Tag() + "\n\n")
	w.run()
	return w.b.String()
}

// turnerOf is what turns a file that is in English.
func (t *tongue) turnerOf(f *File, uses []nameUse) *turner {
	w := &turner{tongue: t, text: f.Source.Text, own: ownNamesOf(uses), names: map[int32]namedWord{}, tokens: Tokens(f.Source.Text)}
	for _, u := range uses {
		for i, at := range f.wordSpans(u) {
			w.names[at.Start] = namedWord{t.word(*u.words[i], u.from[i], w.own), u.from[i]}
		}
	}
	Walk(f, func(n Node) bool { w.nodes = append(w.nodes, nodeAt{n.Span(), nodeName(n)}); return true })
	return w
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
	for _, v := range []vocabulary{stitchNames, memberNames, units, levels, kinds, weights, fibres, bodyTables, meshNames, functions, measureNames} {
		if other := w.word(word, v, nil); other != word {
			return other
		}
	}
	return word
}

// nodeName is the kind of a node; a statement has a point before it.
func nodeName(n Node) string {
	name := reflect.TypeOf(n).Elem().Name()
	if _, ok := n.(StatementNode); ok {
		return "." + name
	}
	return name
}
