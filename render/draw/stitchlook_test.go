package draw

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/png"
)

// compiled is a source that must check.
func compiled(t testing.TB, name, text string) *plan.Pattern {
	t.Helper()
	tree, _ := lang.Parse(source.NewFile(name, text))
	p, found := compile.Compile(tree)
	if found.HasErrors() {
		t.Fatalf("%s has errors: %+v", name, found)
	}
	return p
}

// TestLookAtCharts writes pictures of all charts to be looked at.
func TestLookAtCharts(t *testing.T) {
	if *pictures == "" {
		t.Skip("no folder for pictures")
	}
	text, err := os.ReadFile("testdata/symbols.ovillo")
	if err != nil {
		t.Fatal(err)
	}
	p := compiled(t, "symbols", string(text))
	for i, d := range p.Drawn {
		for _, s := range StitchChart(p, i, math.Inf(1), math.Inf(1), both...) {
			var dots bytes.Buffer
			if err := png.Write(&dots, s, 130); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(*pictures, d.Name+".png"), dots.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
			t.Log(d.Name, s.W, s.H, s.Desc["en"], s.Desc["es"])
		}
	}
}
