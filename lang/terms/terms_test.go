package terms_test

import (
	"strings"
	"testing"

	"ovillo/lang/terms"
)

const small = `concept,memory,en-US,en-GB,es es-419,es-MX
sc,,sc;single crochet;single crochets,dc;double crochet;double crochets,pb;punto bajo;puntos bajos,mp;medio punto;medios puntos
ch,es-MX,ch;chain;chains,,cad;cadena;cadenas;f,cad;cadena;cadenas;f
st,,st|sts;stitch;stitches,,p;punto;puntos,
yarn,,yarn|yarns,,hilo|hilos,estambre|estambres
skipped,,skipped,missed,-,
`

func read(t *testing.T, text string) *terms.Table {
	t.Helper()
	table, err := terms.Read(text)
	if err != nil {
		t.Fatal(err)
	}
	return table
}

func TestCells(t *testing.T) {
	table := read(t, small)
	for _, c := range []struct {
		tag, concept string
		want         terms.Term
	}{
		{"en-GB", "sc", terms.Term{Short: "dc", Shorts: "dc", One: "double crochet", Many: "double crochets"}},
		{"en-US", "st", terms.Term{Short: "st", Shorts: "sts", One: "stitch", Many: "stitches"}},
		{"en-GB", "st", terms.Term{Short: "st", Shorts: "sts", One: "stitch", Many: "stitches"}}, // falls back
		{"es-MX", "ch", terms.Term{Short: "cad", Shorts: "cad", One: "cadena", Many: "cadenas", Feminine: true}},
		{"es-MX", "yarn", terms.Term{Short: "estambre", Shorts: "estambres", One: "estambre", Many: "estambres"}},
	} {
		r, ok := table.Reading(c.tag)
		if !ok {
			t.Fatalf("no reading %s", c.tag)
		}
		if got := r.Term(c.concept); got != c.want {
			t.Errorf("%s in %s is %+v, not %+v", c.concept, c.tag, got, c.want)
		}
	}
}

func TestTags(t *testing.T) {
	table := read(t, small)
	if got := strings.Join(table.Tags(), " "); got != "en-US en-GB es es-MX" {
		t.Errorf("tags %s", got)
	}
	for tag, want := range map[string]string{
		"en": "en-US", "EN": "en-US", "en-us": "en-US", "en-gb": "en-GB", "EN-GB": "en-GB", "es": "es", "es-419": "es", "ES-mx": "es-MX",
		"de": "", "": "", "es-AR": "", "en-": "",
	} {
		r, ok := table.Reading(tag)
		if got := ""; ok != (want != "") {
			t.Errorf("%q: found %v", tag, ok)
		} else if ok {
			if got = r.Tag(); got != want {
				t.Errorf("%q is %s, not %s", tag, got, want)
			}
		}
	}
	mx, _ := table.Reading("es-MX")
	if !mx.Remembered("ch") || mx.Remembered("yarn") || mx.Code() != "es" || mx.Table() != table {
		t.Errorf("reading %+v", mx)
	}
	if mx.Has("skipped") || !mx.Has("st") || mx.Sourced("ch") || mx.Sourced("st") || !mx.Sourced("yarn") {
		t.Errorf("es-MX has skipped %v, st %v; sourced: ch %v, st %v, yarn %v", mx.Has("skipped"), mx.Has("st"), mx.Sourced("ch"), mx.Sourced("st"), mx.Sourced("yarn"))
	}
	if o := mx.Others(); len(o) != 1 || o[0].Tag() != "es" {
		t.Errorf("others of es-MX: %v", o)
	}
	if also := table.Also(); len(also) != 2 || also["en"] != "en-US" || also["es-419"] != "es" {
		t.Errorf("also %v", also)
	}
}

func TestFaultyTablesAreRefused(t *testing.T) {
	for text, want := range map[string]string{
		"":                                         "no column",
		"concept,memory\n":                         "no column",
		"concept,memory, \n":                       "no tag",
		"concept,memory,xx,xx\n":                   "two columns",
		"concept,memory,xx,xx-A xx\nch,,a,b\n":     "both answer",
		"concept,memory,xx\nch,,\n":                "no term",
		"concept,memory,xx\nch,yy,a;b;c\n":         "no term to remember",
		"concept,memory,xx,xx-A\nch,xx-A,a;b;c,\n": "no term to remember",
		"concept,memory,xx\nch,,a\nch,,b\n":        "two rows",
		"concept,memory,xx\nch,,a,b\n":             "wrong number of fields",
		"concept,memory,xx,yy\nch,,a,\n":           "no term in yy",
	} {
		if _, err := terms.Read(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %s", text, err, want)
		}
	}
}

// A term is written as the trade writes it: trimmed, with a plural where it has a name, never with the tie that only
// printing puts in.
func TestStandardTable(t *testing.T) {
	table := terms.Standard()
	if len(table.Tags()) < 8 || len(table.Concepts()) < 40 {
		t.Fatalf("%d readings of %d concepts", len(table.Tags()), len(table.Concepts()))
	}
	for _, tag := range table.Tags() {
		r, _ := table.Reading(tag)
		for _, concept := range table.Concepts() {
			if !r.Has(concept) {
				continue
			}
			w := r.Term(concept)
			for _, s := range []string{w.Short, w.Shorts, w.One, w.Many} {
				if s == "" || strings.TrimSpace(s) != s || strings.ContainsAny(s, "\u00a0|;") {
					t.Errorf("%s in %s: %q", concept, tag, s)
				}
			}
		}
	}
}
