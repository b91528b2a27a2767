package lang

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// A source that is as large as it may be says nothing of its size; one that is larger by one says so, and nothing else.
func TestAtTheBound(t *testing.T) {
	repeat := strings.Repeat
	prose := func(n int) string { return "note\n  en | " + repeat("a", n-5) + "\n  es | a\n  en | aaaaa\nend\n" }
	for _, c := range []struct {
		what string
		at   int
		text func(n int) string // as large as n
		code string
	}{
		{"bytes", MostBytes, func(n int) string { return "#" + repeat(" ", n-1) }, "OV101"},
		{"lines", maxLines, func(n int) string { return repeat("\n", n-1) }, "OV163"},
		{"letters of a name", maxName, func(n int) string { return "let " + repeat("ñ", n) + " = 1\n" }, "OV164"},
		{"letters of a word that fits nowhere", maxName, func(n int) string { return "let a = 1\nlet b = a + " + repeat("x", n) + "\n" }, "OV164"},
		{"digits of a number", maxDigits, func(n int) string { return "let a = " + repeat("9", n) + "\n" }, "OV166"},
		{"digits behind the point", maxDigits, func(n int) string { return "let a = 1." + repeat("9", n) + "\n" }, "OV166"},
		{"letters in quotes", maxQuoted, func(n int) string { return "part p\n  title en \"" + repeat("ñ", n) + "\" es \"a\"\nend\n" }, "OV165"},
		{"letters of a note", maxProse, prose, "OV165"},
		{"letters of a note in many lines", maxProse, func(n int) string {
			return "note\n" + repeat("  en | "+repeat("a", 20)+"\n", n/40) + repeat("  | "+repeat("b", 20)+"\n", n/40) + "  | " + repeat("c", n-n/40*40) + "\nend\n"
		}, "OV165"},
		{"words of a statement", maxTokens, func(n int) string { return "let a = 1" + repeat("+1", (n-4)/2) + repeat("-", n%2) + "\n" }, "OV104"},
		{"brackets", maxDepth, func(n int) string { return "let a = " + repeat("(", n) + "1" + repeat(")", n) + "\n" }, "OV103"},
		{"blocks", maxDepth, func(n int) string { return "part p\n" + repeat("repeat 2 times\n", n-1) + repeat("end\n", n) }, "OV103"},
	} {
		_, found := Parse(source.NewFile("at.ovillo", c.text(c.at)))
		if len(found) > 0 {
			t.Errorf("%d %s: %s", c.at, c.what, listed(found))
		}
		_, found = Parse(source.NewFile("past.ovillo", c.text(c.at+1)))
		if len(found) != 1 || string(found[0].Code) != c.code {
			t.Errorf("%d %s: want %s alone, got %s", c.at+1, c.what, c.code, listed(found))
		}
		for _, d := range found {
			complete(t, d)
		}
	}
}

// The bounds of a source hold for it and for the files it uses together.
func TestAtTheBoundOfFiles(t *testing.T) {
	chain := func(n int) func(string) ([]byte, error) {
		return func(name string) ([]byte, error) {
			var i int
			if _, err := fmt.Sscanf(name, "%d", &i); err != nil || i >= n {
				return []byte("let a = 1\n"), nil
			}
			return fmt.Appendf(nil, "use \"%d\"\n", i+1), nil
		}
	}
	remarks := func(bytes, lines int) func(string) ([]byte, error) {
		return func(string) ([]byte, error) {
			return []byte(strings.Repeat("\n", lines) + "#" + strings.Repeat(" ", bytes-lines-1)), nil
		}
	}
	uses := func(n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "use \"f%d\"\n", i)
		}
		return b.String()
	}
	one := "use \"a\"\n"
	for _, c := range []struct {
		what string
		text string
		open func(string) ([]byte, error)
		code string // "" for none
	}{
		{"as many files", uses(maxUsed), chain(0), ""},
		{"a file more", uses(maxUsed + 1), chain(0), "OV161"},
		{"as deep", "use \"1\"\n", chain(maxUseDepth), ""},
		{"deeper by one", "use \"1\"\n", chain(maxUseDepth + 1), "OV161"},
		{"as many bytes", one, remarks(MostBytes-len(one), 0), ""},
		{"a byte more", one, remarks(MostBytes-len(one)+1, 0), "OV109"},
		{"as many lines", one, remarks(maxLines, maxLines-3), ""},
		{"a line more", one, remarks(maxLines, maxLines-2), "OV109"},
	} {
		_, found := Load(source.NewFile("many.ovillo", c.text), c.open)
		if c.code == "" && len(found) > 0 || c.code != "" && (len(found) != 1 || string(found[0].Code) != c.code) {
			t.Errorf("%s: want %q alone, got %s", c.what, c.code, listed(found))
		}
		for _, d := range found {
			complete(t, d)
		}
	}
}
