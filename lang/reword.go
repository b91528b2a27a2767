package lang

import (
	"bytes"
	"fmt"
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
		if isName := !strings.ContainsAny(f.Source.Slice(u.at), " .(\t\n"); isName {
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
