package words

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/terms"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

// withColumn is the table of the program with one more column, whose cells are invented for this test alone.
func withColumn(t *testing.T, tag string, cells map[string]string) *Language {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "lang", "terms", "terms.csv"))
	if err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(string(data))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows[0] = append(rows[0], tag)
	for i := range rows[1:] {
		rows[i+1] = append(rows[i+1], cells[rows[i+1][0]])
	}
	var b strings.Builder
	if err := csv.NewWriter(&b).WriteAll(rows); err != nil {
		t.Fatal(err)
	}
	table, err := terms.Read(b.String())
	if err != nil {
		t.Fatal(err)
	}
	r, ok := table.Reading(tag)
	if !ok {
		t.Fatalf("no reading %s", tag)
	}
	return speak(&reading{Reading: r})
}

// A reading is a column and nothing else: with one more of it, in invented words, all pages are in those words, and the readings
// beside it are told of it.
func TestAReadingIsAColumn(t *testing.T) {
	for _, c := range []struct {
		tag   string
		cells map[string]string
		says  []string
		never []string
	}{
		{"es-CO", map[string]string{
			"dc": "zz;zapote;zapotes", "slst": "qq;quina;quinas;f", "hook": "garabato|garabatos", "row": "tirada|tiradas;tirada;tiradas;f",
			"size": "medida|medidas;medida;medidas;f", "decimal": ".", "yarn": "pita|pitas;pita;pitas;f", "ease": "juego|juegos",
			"reading": "español inventado", "country": "ZZ", "weight light": "Liviano",
		}, []string{"1 zz en ", "2zzjun", "Cerrar con 1 qq en ", "el garabato", "Medidas.", "la pita arena", "16.8", "español inventado", "Liviano"},
			[]string{"pa", "pd", "ganchillo", "talla", "hilo", "holgura"}},
		{"en-AU", map[string]string{
			"dc": "zz;zigzag;zigzags", "slst": "qq;quick stitch;quick stitches", "over": "wrap once", "skip": "hop", "skipped": "hopped", "gauge": "measure",
			"chain count": "number first", "inches": "no", "hook marks": "UK", "reading": "invented terms", "country": "ZZ", "weight light": "8 ply",
		}, []string{"zz in ", "zz2tog", "Join with qq in ", "hop 52", "hopped sts", "3 ch", "2-ch sp", "Measure", "invented terms", "8 ply", "mm (10)"},
			[]string{"dc", "skip", "skipped", "gauge"}},
	} {
		l := withColumn(t, c.tag, c.cells)
		p := sample.Leggings()
		said := dump(l, p)
		said = strings.ReplaceAll(strings.ReplaceAll(said, "~", " "), "**", "")
		for _, s := range c.says {
			if !strings.Contains(said, s) {
				t.Errorf("%s: %q is not said", c.tag, s)
			}
		}
		withoutTexts(reflect.ValueOf(p))
		own := ""
		l.eachText(p, func(text rich.Text) { own += text.String() + "\n" })
		for _, word := range tokens.FindAllString(own, -1) {
			for _, n := range c.never {
				if strings.EqualFold(word, n) {
					t.Errorf("%s: %q is said", c.tag, word)
				}
			}
		}
		if got := l.Abbreviations(&plan.Pattern{}); len(got) > 3 {
			t.Errorf("%s: an empty pattern has %d abbreviations", c.tag, len(got))
		}
	}
	if got := withColumn(t, "es-CO", map[string]string{"ease": "juego|juegos"}).Ease("hips"); got != "Juego en la cadera" {
		t.Errorf("ease: %q", got)
	}
	// Beside a third reading the two others of English name their countries, and are headed as others.
	au := withColumn(t, "en-AU", map[string]string{"dc": "zz;zigzag;zigzags", "reading": "invented terms", "country": "ZZ"})
	if au.OthersHead() != "other readings" || strings.ReplaceAll(strings.Join(au.othersSay("dc"), "; "), tie, " ") != "dc, double crochet (US); tr, treble crochet (UK)" {
		t.Errorf("%s: %v", au.OthersHead(), au.othersSay("dc"))
	}
}
