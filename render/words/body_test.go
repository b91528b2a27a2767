package words_test

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestBodyNotes holds what stands under the measures of the wearer.
func TestBodyNotes(t *testing.T) {
	council := []plan.BodySource{{ID: "a", Name: plan.Text{"en": "Council charts", "es": "tablas del consejo"}}}
	growth := []plan.BodySource{{ID: "b", Name: plan.Text{"en": "Growth curves", "es": "curvas de crecimiento"}}}
	for _, c := range []struct {
		body   []plan.BodyMeasure
		en, es string
	}{
		{nil, "", ""},
		{[]plan.BodyMeasure{{Name: "waist"}, {Name: "hips"}},
			"Body measures: the designer's figures.", "Medidas del cuerpo: cifras propias del patrón."},
		{[]plan.BodyMeasure{{Name: "head", Sources: growth}},
			"Body measures: Growth curves.", "Medidas del cuerpo: curvas de crecimiento."},
		{[]plan.BodyMeasure{{Name: "waist"}, {Name: "chest", Sources: council, Memory: true}, {Name: "hips", Sources: council, Memory: true}},
			"Body measures: waist (the designer's figures); chest and hips (Council charts).|* From memory, not checked against the table.",
			"Medidas del cuerpo: cintura (cifras propias del patrón); pecho y cadera (tablas del consejo).|* De memoria, sin cotejar con la tabla."},
	} {
		p := &plan.Pattern{Body: c.body}
		for tag, want := range map[string]string{"en": c.en, "es": c.es} {
			l, err := words.For(tag)
			if err != nil {
				t.Fatal(err)
			}
			if got := strings.ReplaceAll(strings.Join(l.BodyNotes(p), "|"), "\u00a0", " "); got != want {
				t.Errorf("%s: %s\nwant %s", tag, got, want)
			}
		}
	}
}
