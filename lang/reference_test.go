package lang

import (
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// wrappers put a fragment of the reference into the block it belongs to; % is the fragment.
var wrappers = map[string]string{
	"":        "%",
	"pattern": "pattern p\n%end\n",
	"part":    "part p\n%end\n",
	"finish":  "finish\n%end\n",
	"measure": "measure\n%end\n",
	"row":     "part p\n%end\n",
	"value":   "%",
}

// linePrefix makes a statement of each line of a fragment that is no statement itself.
var linePrefix = map[string]string{"row": "round: ", "value": "let v = "}

// referenceExamples gives the sources of the reference.
func referenceExamples(t *testing.T) []*source.File {
	text, err := os.ReadFile("reference.md")
	if err != nil {
		t.Fatal(err)
	}
	var files []*source.File
	for _, m := range regexp.MustCompile("(?ms)^```ovillo ?([a-z]*)\n(.*?)^```$").FindAllStringSubmatch(string(text), -1) {
		wrapper, ok := wrappers[m[1]]
		if !ok {
			t.Fatalf("a fragment of %q", m[1])
		}
		body := m[2]
		if prefix := linePrefix[m[1]]; prefix != "" {
			body = regexp.MustCompile(`(?m)^(.)`).ReplaceAllString(body, prefix+"$1")
		}
		files = append(files, source.NewFile("reference.md", strings.ReplaceAll(wrapper, "%", body)))
	}
	return files
}

// Every example of the reference is right, and between them they hold every statement and instruction there is.
func TestReference(t *testing.T) {
	seen := map[reflect.Type]bool{}
	examples := referenceExamples(t)
	if len(examples) < 45 {
		t.Fatalf("only %d examples were found", len(examples))
	}
	for _, f := range examples {
		tree, faults := Parse(f)
		if len(faults) > 0 {
			t.Errorf("an example of the reference:\n%s%s", f.Text, listed(faults))
		}
		Walk(tree, func(n Node) bool { seen[reflect.TypeOf(n)] = true; return true })
	}
	for _, n := range allStatements {
		if !seen[reflect.TypeOf(n)] {
			t.Errorf("the reference shows no %T", n)
		}
	}
	for _, n := range allItems {
		if !seen[reflect.TypeOf(n)] {
			t.Errorf("the reference shows no %T", n)
		}
	}
}

// The list of reserved words in the reference is the list there is.
func TestReferenceListsReservedWords(t *testing.T) {
	text, err := os.ReadFile("reference.md")
	if err != nil {
		t.Fatal(err)
	}
	_, list, _ := strings.Cut(string(text), "can name nothing:")
	list, _, _ = strings.Cut(list, "All other words")
	listed := map[string]bool{}
	for _, m := range regexp.MustCompile("`([a-z]+)`").FindAllStringSubmatch(list, -1) {
		listed[m[1]] = true
		if !Reserved(m[1]) {
			t.Errorf("%s is not reserved", m[1])
		}
	}
	for w, c := range classes {
		if c&reserved != 0 && !listed[w] {
			t.Errorf("%s is reserved and not listed", w)
		}
	}
}
