package starter

import (
	"strings"
	"testing"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang/source"
)

// FuzzSource begins a pattern of any name: there is a source, and it has no error.
func FuzzSource(f *testing.F) {
	for i, name := range []string{"sea-hat", "", "3", "pattern", "idioma", "part", "a\u0301", "帽", "{dc}", `"`, "\n", "ﬁ", "ø", "\xff", "-", "hat hat"} {
		f.Add(name, uint8(i), i%2 == 0)
	}
	f.Fuzz(func(t *testing.T, name string, kind uint8, spanish bool) {
		p := Pattern{Kind: Kinds()[int(kind)%len(Kinds())], Lang: "en", Name: name, File: "x.ovillo", Month: "2026-03"}
		if spanish {
			p.Lang = "es"
		}
		text, err := p.Source()
		if err != nil {
			t.Fatal(err)
		}
		if c := desk.Check(desk.Source{File: source.NewFile("x.ovillo", string(text))}); !c.Printable() {
			t.Errorf("%q: %v\n%.400s", name, c.Found, text)
		}
	})
}

// A kind goes by its name in both languages, and no two kinds share one.
func TestNamed(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range Kinds() {
		for _, name := range []string{k.Name, k.Nombre} {
			got, ok := Named(name)
			if !ok || got.Name != k.Name || seen[name] {
				t.Errorf("%s: %v %v", name, got.Name, seen[name])
			}
			seen[name] = true
		}
	}
	if _, ok := Named(strings.ToUpper(Kinds()[0].Name)); ok {
		t.Error("HAT is a kind")
	}
}
