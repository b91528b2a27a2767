package lang

import (
	"math/rand/v2"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"ovillo/lang/source"
)

// seeds gives every source of the tests, good and bad.
func seeds(f *testing.F) {
	for _, s := range sources(f) {
		f.Add(s.Text)
	}
	names, err := filepath.Glob("testdata/messages/*.txtar")
	if err != nil {
		f.Fatal(err)
	}
	for _, name := range names {
		a, err := txtar.ParseFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(a.Files[0].Data))
	}
	f.Add("\ufeffpart año\r\n\tround:\u00a0dc in each\r\nend")
	f.Add("let x = 5dc \"a\\\"b\" 10cm 1.5.2 | a\n1 | b\n| c\n#")
}

// The tokens of any text tile it, and none is empty.
func FuzzLex(f *testing.F) {
	seeds(f)
	f.Fuzz(func(t *testing.T, text string) { checkTokens(t, text) })
}

func checkTokens(t *testing.T, text string) {
	at := int32(0)
	for _, k := range Tokens(text) {
		if k.Span.Start != at || k.Span.End <= at {
			t.Fatalf("token %v does not begin at %d", k, at)
		}
		if k.Kind < LineEnd || k.Kind > Stray {
			t.Fatalf("token %v is of no kind", k)
		}
		at = k.Span.End
	}
	if int(at) != len(text) {
		t.Fatalf("the tokens end at %d of %d", at, len(text))
	}
}

// Any text gives a tree whose spans are sound and messages that are complete, each at a place of the text.
func FuzzParse(f *testing.F) {
	seeds(f)
	f.Fuzz(func(t *testing.T, text string) { checkParse(t, text) })
}

func checkParse(t *testing.T, text string) {
	f := source.NewFile("fuzz.ovillo", text)
	tree, faults := Parse(f)
	checkSpans(t, tree)
	for _, d := range faults {
		complete(t, d)
		if d.Span.Start < 0 || d.Span.End < d.Span.Start || int(d.Span.End) > len(text) && d.Code != codeBigFile {
			t.Errorf("%s stands at %v", d.Code, d.Span)
		}
		if d.Edit != nil && (d.Edit.Span.Start < 0 || int(d.Edit.Span.End) > len(text)) {
			t.Errorf("%s changes %v", d.Code, d.Edit.Span)
		}
	}
	unread := false
	WalkStatements(tree.Body, func(s *Statement) bool { unread = unread || s.Node == nil; return true })
	if unread && len(faults) == 0 {
		t.Error("a statement was not read and nothing says so")
	}
}

// soupWords are the words and signs that lines are made of.
var soupWords = strings.Fields(`dc sc leg m1 5 2 42 ( ) [ ] , = : in next each to last first space st sts and chain gap left of as with
	around across 3 times before same skip ch leave rest join no turn mark move unmark evenly centred inc dec2 . + - * / together
	between below beside through marker this front crossing back third loop flo 1 rows rounds row round for 10cm mm % "S" "M" but
	multiple plus ties up even ending ws begin none kelp from chart sl the end middle one is wrong side every on then at by column
	open filled`)

// Lines of words in any order are read without a panic; an alternative of the grammar that could match nothing would not be.
func TestWordsInAnyOrder(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	var heads []string
	for _, block := range blockOrder {
		heads = append(heads, lineWords(block)...)
	}
	heads = append(heads, "5", "leg", "end", "round:", "round:", "round:", "let x =", "row a, even:", "4 rounds:", "group g = [")
	for range 3_000 {
		var b strings.Builder
		b.WriteString([]string{"part p\n", "pattern p\n", "sizes \"S\"\n", "gauge 10 cm\n", "yarn y\n", "measure\n", "finish\n",
			"part p\nshape: 5 rows\n", "stitch s\n", "chart c\n", ""}[random.IntN(11)])
		for range 1 + random.IntN(4) {
			b.WriteString(heads[random.IntN(len(heads))])
			for range random.IntN(12) {
				b.WriteString(" " + soupWords[random.IntN(len(soupWords))])
			}
			b.WriteString("\n")
		}
		checkParse(t, b.String())
		if t.Failed() {
			t.Fatalf("the source was:\n%s", b.String())
		}
	}
}

// Good lines with one word lost, doubled, changed or swapped are read without a panic, and have at most one message for one
// slip that stays on its line.
func TestLinesWithOneSlip(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	f := readSource(t, "forms.ovillo")
	for range 3_000 {
		words := strings.Fields(f.LineText(1 + random.IntN(f.Lines())))
		if len(words) < 2 {
			continue
		}
		i := random.IntN(len(words) - 1)
		switch random.IntN(4) {
		case 0:
			words = append(words[:i:i], words[i+1:]...)
		case 1:
			words[i], words[i+1] = words[i+1], words[i]
		case 2:
			words[i] = soupWords[random.IntN(len(soupWords))]
		case 3:
			words = append(words[:i:i], words[i:]...)
		}
		text := "part p\n" + strings.Join(words, " ") + "\nround: dc in each\nend\n"
		checkParse(t, text)
		if t.Failed() {
			t.Fatalf("the source was:\n%s", text)
		}
	}
}
