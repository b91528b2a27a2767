package lang

import (
	"os"
	"testing"

	"ovillo/lang/source"
)

func readSource(t testing.TB, name string) *source.File {
	b, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return source.NewFile(name, string(b))
}

func TestLeggings(t *testing.T) {
	f := readSource(t, "leggings.ovillo")
	tree, faults := Parse(f)
	for _, d := range faults {
		t.Errorf("line %d: %s %q %v", f.Line(d.Span.Start), d.Code, f.Slice(d.Span), d.Args)
	}
	if len(tree.Body) != 16 {
		t.Errorf("%d statements", len(tree.Body))
	}
}
