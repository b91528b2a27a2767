package parallel

import (
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/words"
)

func list(said, seen string) Run { return Run{Text: said, List: true, Seen: seen} }

func text(s string) Run { return Run{Text: s} }

func TestNumbers(t *testing.T) {
	for _, c := range []struct {
		runs []Run
		want string
	}{
		{[]Run{text("9.8 to 11.8 cm (3¾ to 4¾ in)")}, "11.8 9.8"},
		{[]Run{text("9,8 a 11,8 cm")}, "11.8 9.8"},
		{[]Run{text("50 g = 130 m (142 yd), 3.75 mm (F-5) hook")}, "130 3.75 50"},
		{[]Run{text("12\u202f345 m")}, "12345"},
		{[]Run{text("sc in 2nd ch, 1 sc in both")}, "2 2"},
		{[]Run{text("1 pb en la 2.ª cad, en ambos")}, "2 2"},
		{[]Run{text("Ch "), list("1 y 1, 2 y 3", "1 (3)")}, "1 1 2 3 (1 3)"},
		{[]Run{list("1 año 1; 2 años 3", "1 (3)"), text(" cad")}, "1 1 2 3 (1 3)"},
		{[]Run{text("measures "), list("1 y 18, 2 y 19", "18 (19)"), text(" cm or "), list("1 y 7, 2 y 7½", "7 (7½)"), text(" in.")}, "1 18 2 19 (18 19)"},
		{[]Run{text("3 in sand, 14 in each")}, "14 3"},
	} {
		if got := strings.Join((Reading{}).of(Passage{Runs: c.runs}).numbers, " "); got != c.want {
			t.Errorf("%v: %q, want %q", c.runs, got, c.want)
		}
	}
}

func TestStitches(t *testing.T) {
	front := stitch.Form{ID: stitch.DC, Post: stitch.FrontPost, Together: 1}
	p := &plan.Pattern{Stitches: []stitch.Form{stitch.Plain(stitch.SC), stitch.Plain(stitch.DC), stitch.Plain(stitch.Slip), front}}
	for _, c := range []struct{ lang, text, want string }{
		{"en", "Ch 1, sc in next st, 2 dc in ch-2 sp; FPdc around next dc", "ch, sc, dc, sp, FPdc, dc"},
		{"es", "1 cad, 1 pb en el siguiente p, 2 pa en el esp de 2 cad; 1 pa rel del en el siguiente pa", "cad, pb, pa, esp, pa rel del, pa"},
		{"en-GB", "Ch 3, (2 tr, ch 1, 2 tr) in same sp; join with ss", "ch, tr, ch, tr, sp, ss"},
		{"es", "3 cad, (2 pa, 1 cad, 2 pa) en el mismo esp; cerrar con 1 pd", "cad, pa, cad, pa, esp, pd"},
		{"es", "Tejer 76 pb sin cadena base", "pb"},
		{"en", "Make 76 foundation sc", "sc"},
		{"en", "scarf, reach, dcs", ""},
	} {
		l, err := words.For(c.lang)
		if err != nil {
			t.Fatal(err)
		}
		r := ReadingOf(l, p)
		got := r.named(r.of(Passage{Runs: []Run{text(c.text)}}).stitches)
		for i := range got {
			got[i] = plain(got[i])
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %v, want %s", c.text, got, c.want)
		}
	}
}

// passages makes the passages of a section from texts that begin with their tag.
func passages(section int, lang string, texts ...string) []Passage {
	var out []Passage
	for _, s := range texts {
		tag, rest, _ := strings.Cut(s, " ")
		out = append(out, Passage{Section: section, Tag: tag, Lang: lang, Runs: []Run{text(rest)}})
	}
	return out
}

func TestCompare(t *testing.T) {
	en, _ := words.For("en")
	es, _ := words.For("es")
	p := &plan.Pattern{Stitches: []stitch.Form{stitch.Plain(stitch.SC), stitch.Plain(stitch.DC)}}
	r, q := ReadingOf(en, p), ReadingOf(es, p)
	table := passages(0, "en", "TH Here", "TD means", "TH sc", "TD single crochet")
	tabla := passages(0, "es", "TH Aquí", "TD significa")
	one := slices.Concat(table, passages(1, "en", "H2 Back", "Lbl Row 1", "P 2 sc in next st", "P 24 sts"), passages(2, "en", "H3 My notes"))
	for _, c := range []struct {
		name string
		kind Kind
		n    int
		body []string
	}{
		{"alike", 0, 0, []string{"H2 Espalda", "P Hilera 1", "P 2 pb en el siguiente p", "P 24 p"}},
		{"a number", Numbers, 1, []string{"H2 Espalda", "P Hilera 1", "P 3 pb en el siguiente p", "P 24 p"}},
		{"a stitch", Stitches, 1, []string{"H2 Espalda", "P Hilera 1", "P 2 pa en el siguiente p", "P 24 p"}},
		{"a count", Missing, 1, []string{"H2 Espalda", "P Hilera 1", "P 2 pb en el siguiente p"}},
		{"a label", Missing, 1, []string{"H2 Espalda", "P 2 pb en el siguiente p", "P 24 p"}},
		{"everything", Missing, 1, nil},
	} {
		other := slices.Concat(tabla, passages(1, "es", c.body...))
		got := Compare(one, other, r, q)
		if len(got) != c.n || c.n > 0 && got[0].Kind != c.kind {
			t.Errorf("%s: %+v", c.name, got)
		}
	}
}
