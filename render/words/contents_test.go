package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/render/sample"
)

// Every fibre that a source may name has a name of each language, so that no English word stands on a Spanish page.
func TestEveryFibreHasAName(t *testing.T) {
	if n := len(standard.FibreWords()); n < 30 {
		t.Fatalf("only %d fibres", n)
	}
	for _, tag := range Tags() {
		for _, word := range standard.FibreWords() {
			if language(t, tag).voice.name(fibreName, word) == "" {
				t.Errorf("%s: %s has no name", tag, word)
			}
		}
	}
}

// What goes on a label: one line where all sizes are alike, else size by size; an estimate is called so, and what is not counted is
// said where there is anything.
func TestContentsOnALabel(t *testing.T) {
	cotton := []plan.Share{{Fibre: "cotton", Percent: 100}}
	blend := []plan.Share{{Fibre: "wool", Percent: 62}, {Fibre: "cotton", Percent: 38}}
	other := []plan.Share{{Fibre: "wool", Percent: 61}, {Fibre: "cotton", Percent: 39}}
	for _, c := range []struct {
		name     string
		shares   [][]plan.Share
		weighted bool
		notions  plan.Notions
		en, es   string
	}{
		{"one fibre", [][]plan.Share{cotton, cotton, cotton, cotton}, false, plan.Notions{Needle: true}, "Fiber content: 100% cotton.", "Composición: 100 % algodón."},
		{"weighed, all alike", [][]plan.Share{blend, blend, blend, blend}, true, plan.Notions{},
			"Fiber content: 62% wool, 38% cotton. An estimate: each yarn counts by the weight of it that the size takes.",
			"Composición: 62 % lana, 38 % algodón. Es una estimación: cada hilo cuenta según el peso que lleva la talla."},
		{"size by size", [][]plan.Share{blend, other, other, blend}, true, plan.Notions{},
			"Fiber content: sizes 1 y and 4 y: 62% wool, 38% cotton; sizes 2 y and 3 y: 61% wool, 39% cotton. An estimate: each yarn counts by the weight of it that the size takes.",
			"Composición: tallas 1 y 4 años: 62 % lana, 38 % algodón; tallas 2 y 3 años: 61 % lana, 39 % algodón. Es una estimación: cada hilo cuenta según el peso que lleva la talla."},
		{"with buttons", [][]plan.Share{cotton, cotton, cotton, cotton}, false, plan.Notions{Buttons: []plan.Buttons{{Size: 15 * plan.Millimetre, N: plan.Nums{3, 3, 3, 3}}}},
			"Fiber content: 100% cotton. Trimmings, fastenings and stuffing are not counted.", "Composición: 100 % algodón. No se cuentan adornos, cierres ni relleno."},
	} {
		p := sample.Leggings()
		p.Contents, p.Notions = &plan.Contents{Shares: c.shares, Weighted: make([]bool, 4)}, c.notions
		p.Contents.Weighted[1] = c.weighted
		for tag, want := range map[string]string{"en-US": c.en, "en-GB": strings.ReplaceAll(c.en, "Fiber", "Fibre"), "es": c.es} {
			if got := strings.ReplaceAll(language(t, tag).Contents(p).String(), tie, " "); got != want {
				t.Errorf("%s, %s:\n got %s\nwant %s", c.name, tag, got, want)
			}
		}
	}
}

// Without amounts yarns of unlike fibres are named one by one; if one of them says nothing, so does the label.
func TestContentsThatAreNotKnown(t *testing.T) {
	p := sample.Leggings()
	p.Contents = nil
	p.Yarns[1].Fibre = []plan.Share{{Fibre: "alpaca", Percent: 100}}
	for tag, want := range map[string]string{
		"en-US": "Fiber content by yarn: sand: 60% cotton, 40% wool; kelp: 100% alpaca.", "es-MX": "Composición de cada estambre: arena: 60 % algodón, 40 % lana; alga: 100 % alpaca.",
	} {
		if got := strings.ReplaceAll(language(t, tag).Contents(p).String(), tie, " "); got != want {
			t.Errorf("%s:\n got %s\nwant %s", tag, got, want)
		}
	}
	p.Yarns[0].Fibre = nil
	for _, l := range Readings() {
		if got := l.Contents(p); got != nil {
			t.Errorf("%s: %q", l.Tag(), got)
		}
		if got := l.CareHead(p); got != l.Say(CareHead) {
			t.Errorf("%s: care is headed %q", l.Tag(), got)
		}
	}
}
