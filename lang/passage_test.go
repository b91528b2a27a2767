package lang

import (
	"strings"
	"testing"

	"ovillo/lang/source"
)

// TestPassages turns passages of messages whose words mean one thing here and another there.
func TestPassages(t *testing.T) {
	f, faults := Parse(source.NewFile("a.ovillo", "idioma es\n\npatrón prueba\nfin\n"))
	if len(faults) > 0 {
		t.Fatal(listed(faults))
	}
	code := f.Coder()
	for english, want := range map[string]string{
		"end":                           "fin",
		"sc in next 4 as rim":           "pb en siguientes 4 como rim",
		"[ … ] 20 times":                "[ … ] 20 veces",
		"rows for …":                    "hileras durante …",
		"button 12 mm for rim":          "botón 12 mm para rim",
		"weight sand 180 g":             "peso sand 180 g",
		"weight light":                  "grosor ligero",
		"around torso at row 2":         "contorno de torso a la altura de hilera 2",
		"sc in each, dc around":         "pb en cada, pa en toda la vuelta",
		"across torso at round 6":       "diámetro de torso a la altura de vuelta 6",
		"3 across, 4 down":              "3 a lo ancho, 4 a lo alto",
		"at waist":                      "zona cintura",
		"at 4 per 3 rows":               "a razón de 4 por cada 3 hileras",
		"at NECK: …":                    "en la orilla NECK: …",
		"56 to 40":                      "56 a 40",
		"within 2 cm":                   "tolerancia 2 cm",
		"4 in":                          "4 pulg",
		"in next 2 gaps":                "en siguientes 2 huecos",
		"body.right_gap":                "body.right_gap",
		"fit.waist":                     "persona.cintura",
		"kind hat":                      "tipo gorro",
		"= 8 dc, 2 spaces":              "= 8 pa, 2 espacios",
		"round: sc in each\nround: rim": "vuelta: pb en cada\nvuelta: rim",
		"":                              "",
		"not a form (":                  "not a form (",
	} {
		if got := code(english); got != want {
			t.Errorf("%q: %q, want %q", english, got, want)
		}
	}
}

// TestSettings checks that every setting lets something be read, and that no name in it is a word of a language.
func TestSettings(t *testing.T) {
	f, _ := Parse(source.NewFile("a.ovillo", "idioma es\n\npatrón prueba\nfin\n"))
	for _, s := range settings {
		found := false
		for _, english := range []string{"sc in each", "in next", "dc", "next", "to the last one", "= 8", "with q4", "2 times", "begin with ch 2", "q4.q5", "at 4 per 3 rows",
			"40", "ring", "plain: sc in each", "plain:", "at q4:", "56 to 40", "let q4 = 3", "terms us", "age 3 months", "sc 16 sts", "ball 50 g, 100 m", "weight 50 g", "takes 1, makes 1",
			"1 | x", "3 across, 4 down", "multiple of 6 plus 1", "block", "q4 = 3 cm", "at waist", "3 cm", "within 2 cm", "part q4", "row", "rows", "round:", "row:", "for 3 cm"} {
			_, ok := f.tongue.codeIn(english, s)
			found = found || ok
		}
		if !found {
			t.Errorf("nothing can be read in %q", strings.ReplaceAll(s.before+"…"+s.after, "\n", "⏎"))
		}
	}
}
