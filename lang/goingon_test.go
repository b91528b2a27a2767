package lang

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// TestGoesOn writes every statement of the examples word by word: each next word must be one that the statement before it can go on with,
// and one of those that are listed.
func TestGoesOn(t *testing.T) {
	paths, _ := filepath.Glob(filepath.Join("..", "examples", "*.ovillo"))
	words, asked := Words(), 0
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		text := string(data)
		file, _ := Parse(source.NewFile("", text))
		WalkStatements(file.Body, func(s *Statement) bool {
			for i, tok := range Tokens(text[s.Head.Start:s.Head.End]) {
				at := s.Head.Start + tok.Span.Start
				if i == 0 || tok.Kind != Word || asked%3 != 0 { // a third of them, for time
					asked++
					continue
				}
				asked++
				o := OpeningAt(text, int(at))
				word := file.Says(Token{Word, source.Span{Start: at, End: s.Head.Start + tok.Span.End}})
				switch {
				case len(o.Said) == 0:
					t.Errorf("%s: %q: nothing before %q", path, file.Source.Slice(s.Head), word)
				case word == "" || word == "the" || strings.Contains(word, " "): // it says nothing, or is a word of a turn of phrase
				case !o.GoesOn(word) && file.tongue == nil:
					t.Errorf("%s: %v does not go on with %q", path, o.Said, word)
				case Reserved(word) && !slices.Contains(words, word):
					t.Errorf("%q is not listed", word)
				}
			}
			return true
		})
	}
	if asked < 1000 {
		t.Errorf("only %d words", asked)
	}
	for _, x := range []struct{ text, no string }{
		{"part body\n  round: dc in ", "crossing"}, {"pattern x\n  level ", "cm"}, {"part body\n  in ", "each"}, {"let x = ", "part"}} {
		if o := OpeningAt(x.text, len(x.text)); o.Offers(x.no) || len(o.Said) == 0 {
			t.Errorf("%q goes on with %q", x.text, x.no)
		}
	}
}

// TestBeginnings reads each right form in its block.
func TestBeginnings(t *testing.T) {
	n := 0
	for block := range forms {
		for _, b := range Beginnings(block) {
			n++
			if !strings.HasPrefix(b.Right, b.Words) && b.Words != "round" && b.Words != "rows begin" {
				t.Errorf("%s: %q does not begin with %q", block, b.Right, b.Words)
			}
		}
	}
	if n < 100 {
		t.Errorf("only %d", n)
	}
}
