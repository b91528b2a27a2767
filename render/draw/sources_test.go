package draw

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/png"
	"ovillo/render/scene"
)

var schematics = flag.String("schematics", "", "folder to write the schematic of every source to as PNG, to be looked at")

// sources are all examples and all worked constructions, checked. Where a construction has no gauge, its stitches are half a
// centimetre wide and its rows as tall as nominal ones, so that its shape is drawn like any other.
func sources(t *testing.T) map[string]*plan.Pattern {
	t.Helper()
	found := map[string]*plan.Pattern{}
	for _, folder := range []string{"../../examples", "../../testdata/cases"} {
		files, err := filepath.Glob(folder + "/*.ovillo")
		if err != nil || len(files) < 10 {
			t.Fatalf("%d sources in %s: %v", len(files), folder, err)
		}
		for _, path := range files {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			tree, _ := lang.Parse(source.NewFile(path, string(text)))
			p, said := compile.Compile(tree)
			if said.HasErrors() {
				t.Fatalf("%s has errors", path)
			}
			atNominal(p)
			found[strings.TrimSuffix(filepath.Base(path), ".ovillo")] = p
		}
	}
	return found
}

// atNominal gives rows without a gauge a nominal size.
func atNominal(p *plan.Pattern) {
	for _, part := range p.Parts {
		for _, rows := range part.Worked {
			for i := range rows {
				if r := &rows[i]; r.Width < 0 || r.Height < 0 {
					high := 1.0
					if k, ok := stitch.Of(r.Tall); ok && k.Height > 0 {
						high = k.Height
					}
					r.Width, r.Height = cmLength(float64(max(r.Stitches+r.Chains, 0))*stWide), cmLength(high*stWide)
				}
			}
		}
	}
}

// Every source is drawn in every size: with numbers that are some, within its room, every letter once, and none of them on
// anything else.
func TestEverySourceIsDrawn(t *testing.T) {
	looked := 0
	for name, p := range sources(t) {
		shown := p.Shown
		for z := range p.Sizes {
			p.Shown = z
			name := fmt.Sprintf("%s, %s", name, p.Sizes[z].Name)
			s, err := Schematic(p, roomW, roomH, both...)
			if errors.Is(err, ErrNoGauge) {
				t.Errorf("%s: %v", name, err)
				continue
			}
			looked++
			sound(t, name, s)
			inside(t, name, s, roomW, roomH)
			if mosaicOf(p) != nil {
				continue
			}
			keepClear(t, name, placed(t, p))
			seen := map[string]int{}
			for _, l := range labels(s) {
				seen[l.Text]++
			}
			for _, m := range p.Measures {
				if m.Letter != "" && seen[m.Letter] != 1 {
					t.Errorf("%s: letter %s is drawn %d times", name, m.Letter, seen[m.Letter])
				}
			}
			if z == shown && *schematics != "" {
				picture(t, filepath.Join(*schematics, p.Name+".png"), s)
			}
		}
		p.Shown = shown
	}
	if looked < 60 {
		t.Errorf("only %d drawings were looked at", looked)
	}
}

func picture(t *testing.T, path string, s *scene.Scene) {
	t.Helper()
	var b bytes.Buffer
	if err := png.Write(&b, s, 150); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}
