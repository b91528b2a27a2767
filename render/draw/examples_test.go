package draw

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

// The schematic and the table of sizes say the same: in every example and every size, each measure that has a letter has a
// line in the drawing, and it is as long as the table says, or half as long where the caption says so.
func TestSchematicsSayWhatTheTablesSay(t *testing.T) {
	// A width beside a joint is drawn a little further down, where its letter has room.
	loose := map[string]float64{"marisma-leggings C": 0.06, "orilla-pullover E": 0.04, "rompiente-cardigan D": 0.06}
	files, err := filepath.Glob("../../examples/*.ovillo")
	if err != nil || len(files) == 0 {
		t.Fatal("no examples", err)
	}
	looked := 0
	for _, path := range files {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		tree, _ := lang.Parse(source.NewFile(path, string(text)))
		p, found := compile.Compile(tree)
		if found.HasErrors() {
			t.Fatalf("%s has errors", path)
		}
		name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
		for z := range p.Sizes {
			p.Shown = z
			drawn := lines(t, p)
			for _, m := range p.Measures {
				if m.Letter == "" || p.Parts[m.Of[0].Part].Grid != nil { // joined motifs have a drawing of their own
					continue
				}
				looked++
				want := m.Values[z].Cm()
				if m.Half {
					want /= 2
				}
				tolerance := 0.005
				if v := loose[name+" "+m.Letter]; v > 0 {
					tolerance = v
				}
				if got := drawn[m.Letter]; math.Abs(got-want) > tolerance*want {
					t.Errorf("%s, %s: %s (%s) is drawn %.2f cm long, the table has %.2f", name, p.Sizes[z].Name, m.Letter, m.Name, got, want)
				}
			}
		}
	}
	if looked < 50 {
		t.Errorf("only %d lines were looked at", looked)
	}
}
