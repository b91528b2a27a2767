package draw

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/png"
	"ovillo/render/sample"
	"ovillo/render/scene"
	"ovillo/render/svg"
)

var (
	update   = flag.Bool("update", false, "write the golden drawings anew")
	pictures = flag.String("pictures", "", "folder to write the drawings to as PNG, to be looked at")
)

// drawings are the scenes kept as golden files.
func drawings() map[string]*scene.Scene {
	all := map[string]*scene.Scene{}
	for name, p := range map[string]*plan.Pattern{"leggings": sample.Leggings(), "hat": hat(), "pullover": pullover(), "blanket": blanket(), "throw": throw(4, 5)} {
		all[name+"-schematic"] = must(Schematic(p, roomW, roomH, both...))
		all[name+"-title"] = must(Title(p, titleW, titleH, both...))
		all[name+"-here"] = Here(p, 0, 11, 12.5, both...)
		all[name+"-map"] = Map(p, 120, 60, both...)
	}
	all["tide-grid"] = Grid(tide(13, 9), 0, endless, endless, both...)[0]
	all["tide-sheet"] = Grid(tide(40, 12), 0, 110, 80, both...)[1]
	all["leaf-grid"] = Grid(leaf(), 0, endless, endless, both...)[0]
	all["throw-plan"] = Motifs(throw(4, 5), 1, titleW, titleH, both...)
	return all
}

// TestGolden compares the drawings with the files in testdata. Look at the pictures of a change before it is kept:
// go test -run Golden -update -pictures /tmp
func TestGolden(t *testing.T) {
	for name, s := range drawings() {
		var b bytes.Buffer
		if err := svg.Write(&b, s); err != nil {
			t.Fatal(err)
		}
		if *pictures != "" {
			var dots bytes.Buffer
			if err := png.Write(&dots, s, 150); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(*pictures, name+".png"), dots.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		file := filepath.Join("testdata", name+".svg")
		if *update {
			if err := os.WriteFile(file, b.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(b.Bytes(), want) {
			t.Errorf("%s differs from %s (%d and %d bytes); -update writes it anew", name, file, b.Len(), len(want))
		}
	}
}

func TestSameDrawingEveryTime(t *testing.T) {
	for name, s := range drawings() {
		var a, b bytes.Buffer
		if svg.Write(&a, s) != nil || svg.Write(&b, drawings()[name]) != nil {
			t.Fatal("cannot write")
		}
		if a.String() != b.String() {
			t.Errorf("%s is drawn in two ways", name)
		}
	}
}

func TestDrawingsAreDescribed(t *testing.T) {
	p := sample.Leggings()
	s := must(Schematic(p, roomW, roomH, both...))
	for lang, words := range map[string][]string{
		"en-US": {"Schematic: Vega leggings", "Size 2", "Waistband: a tube 29 cm wide", "Two legs hang side by side.", "A: Hips", "58 cm; the line shows half", "F: ", "47.4 cm"},
		"es":    {"Esquema: Mallas Vega", "Talla 2", "Pretina: tubo de 29 cm de ancho", "Dos piernas", "A: Cadera", "la línea muestra la mitad", "47,4 cm"},
	} {
		text := strings.ReplaceAll(s.Title[lang]+" "+s.Desc[lang], "\u00a0", " ")
		for _, w := range words {
			if !strings.Contains(text, w) {
				t.Errorf("%s: %q is not in: %s", lang, w, text)
			}
		}
	}
	title := must(Title(p, titleW, titleH, both...))
	for lang, w := range map[string]string{"en-US": "Rows mostly of kelp are drawn as bars.", "es": "Las hileras o vueltas sobre todo en alga se dibujan como barras."} {
		if !strings.Contains(title.Desc[lang], w) {
			t.Errorf("%s: %s", lang, title.Desc[lang])
		}
	}
	here := Here(p, 2, 11, 12.5, both...)
	if !strings.Contains(here.Desc["en-US"], "Right leg") || !strings.Contains(here.Desc["es"], "Pierna derecha") {
		t.Errorf("here: %v", here.Desc)
	}
}

func TestOtherPatternsAreDescribed(t *testing.T) {
	for _, c := range []struct {
		p     *plan.Pattern
		words string
	}{
		{hat(), "crown: closed at one end, 24 cm wide"}, {pullover(), "Sleeves hang at both sides."}, {blanket(), "blanket: a flat piece 84 cm wide"},
		{mitten(), "A smaller tube stands out at one side."}, {motifs(), "rounds seen from above, 12 cm"}, {edged(), "goes round its edge"},
		{skirt(), "Worked from the top down."}, {upward(), "Worked from the bottom up."},
	} {
		desc := strings.ToLower(must(Schematic(c.p, roomW, roomH, both...)).Desc["en-US"])
		if !strings.Contains(desc, strings.ToLower(c.words)) {
			t.Errorf("%s: %q is not in: %s", c.p.Name, c.words, desc)
		}
	}
}

func BenchmarkSchematic(b *testing.B) {
	bench(b, func(p *plan.Pattern) { must(Schematic(p, roomW, roomH, both...)) })
}
func BenchmarkTitle(b *testing.B) {
	bench(b, func(p *plan.Pattern) { must(Title(p, titleW, titleH, both...)) })
}
func BenchmarkHere(b *testing.B) { bench(b, func(p *plan.Pattern) { Here(p, 0, 11, 12.5, both...) }) }

func bench(b *testing.B, draw func(*plan.Pattern)) {
	for name, p := range map[string]*plan.Pattern{"leggings": sample.Leggings(), "pullover": pullover(), "blanket": blanket(), "jacket": jacket()} {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				draw(p)
			}
		})
	}
}
