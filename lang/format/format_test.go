package format

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/lang"
	"ovillo/lang/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// TestGolden sets testdata/*.in and compares with the file of the same name that ends in .out.
func TestGolden(t *testing.T) {
	for _, name := range files(t, "testdata/*.in") {
		t.Run(filepath.Base(name), func(t *testing.T) {
			got, _ := Source(read(t, name))
			golden := strings.TrimSuffix(name, ".in") + ".out"
			if *update {
				if err := os.WriteFile(golden, got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if want := read(t, golden); !bytes.Equal(got, want) {
				t.Errorf("got\n%s\nwant\n%s", got, want)
			}
			checkSame(t, read(t, name))
		})
	}
}

// TestSources sets every good source there is: nothing but its blanks may change, and not a second time.
func TestSources(t *testing.T) {
	for _, pattern := range []string{"../testdata/*.ovillo", "../../examples/*.ovillo"} {
		for _, name := range files(t, pattern) {
			t.Run(filepath.Base(name), func(t *testing.T) {
				if dump(t, read(t, name)) == "" {
					t.Fatal("the source has faults")
				}
				checkSame(t, read(t, name))
			})
		}
	}
}

// checkSame checks what holds for every text: setting it twice is setting it once, the words stay, and so does the tree.
func checkSame(t *testing.T, text []byte) {
	t.Helper()
	once, _ := Source(text)
	twice, _ := Source(once)
	if !bytes.Equal(once, twice) {
		t.Errorf("the second time it changes from\n%q\nto\n%q", once, twice)
	}
	if before, after := dump(t, text), dump(t, once); before != "" && before != after {
		t.Errorf("the tree changes from\n%s\nto\n%s", before, after)
	}
	if before, after := words(text), words(once); before != after {
		t.Errorf("the words change from\n%q\nto\n%q", before, after)
	}
}

// dump is the tree of a text; "" if it has faults.
func dump(t *testing.T, text []byte) string {
	t.Helper()
	tree, found := lang.Parse(source.NewFile("", string(text)))
	if found.HasErrors() {
		return ""
	}
	var b strings.Builder
	if err := lang.Dump(&b, tree); err != nil {
		t.Fatal(err)
	}
	return b.String() + "."
}

// words is a text without anything blank.
func words(text []byte) string {
	return strings.NewReplacer(" ", "", "\t", "", "\r", "", "\n", "", "\u00a0", "", "\ufeff", "").Replace(string(text))
}

func files(t testing.TB, pattern string) []string {
	t.Helper()
	names, err := filepath.Glob(pattern)
	if err != nil || len(names) == 0 {
		t.Fatalf("no files are called %s (%v)", pattern, err)
	}
	return names
}

func read(t testing.TB, name string) []byte {
	t.Helper()
	text, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// A line of as many words and signs as may be is set; one with a sign more stays as it is.
func TestLongest(t *testing.T) {
	for over := -1; over <= 1; over++ { // the shorter one ends in the same bracket as the longer
		n := longest + over
		text := "let  a = 1" + strings.Repeat("+1", (n-4)/2) + strings.Repeat(")", n%2) + "\n"
		got, _ := Source([]byte(text))
		if set := strings.HasPrefix(string(got), "let a = 1 + 1"); set != (over < 1) || over == 1 && string(got) != text {
			t.Errorf("a line of %d words and signs becomes %.40q", n, got)
		}
	}
}
