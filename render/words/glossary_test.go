package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// Each language has its own order: figures by their value, then letters, capitals beside small ones; ñ is a letter of its own in
// Spanish, and an n with a sign in English.
func TestAbbreviationsStandInTheOrderOfTheLanguage(t *testing.T) {
	mixed := "hdc|p|ñu|2" + tie + "pajun|FPdc|10pajun|nv|ob|dc|Hdc|pa rel del|pad|pa|éz|ez|nz"
	for tag, want := range map[string]string{
		"en-GB": "2 pajun|10pajun|dc|ez|éz|FPdc|hdc|Hdc|ñu|nv|nz|ob|p|pa|pa rel del|pad",
		"es":    "2 pajun|10pajun|dc|ez|éz|FPdc|hdc|Hdc|nv|nz|ñu|ob|p|pa|pa rel del|pad",
		"es-MX": "2 pajun|10pajun|dc|ez|éz|FPdc|hdc|Hdc|nv|nz|ñu|ob|p|pa|pa rel del|pad",
	} {
		var list []Abbreviation
		for _, s := range strings.Split(mixed, "|") {
			list = append(list, Abbreviation{Short: s})
		}
		language(t, tag).sortAbbreviations(list)
		var got []string
		for _, a := range list {
			got = append(got, strings.ReplaceAll(a.Short, tie, " "))
		}
		if s := strings.Join(got, "|"); s != want {
			t.Errorf("%s:\n got %s\nwant %s", tag, s, want)
		}
	}
}

// What a reader of another country must know first stands above the table.
func TestTermsNoteWarnsOfNamesThatMeanAnotherStitch(t *testing.T) {
	for _, c := range []struct {
		tag, want string
		used      []stitch.ID
	}{
		{"en-US", "The names of stitches are US terms. Careful: in UK terms, dc is another stitch.", []stitch.ID{stitch.SC, stitch.DC}},
		{"en-GB", "The names of stitches are UK terms. Careful: in US terms, dc and tr are other stitches.", []stitch.ID{stitch.SC, stitch.DC}},
		{"en-US", "The names of stitches are US terms. Careful: in UK terms, dc, tr and dtr are other stitches.", []stitch.ID{stitch.DC, stitch.TR, stitch.DTR}},
		{"en-US", "The names of stitches are US terms.", []stitch.ID{stitch.SC, stitch.HDC}},
		{"es", "Los nombres de los puntos son los del español neutro.", []stitch.ID{stitch.SC, stitch.DC}},
		{"es-AR", "Los nombres de los puntos son los del español rioplatense. Algunos patrones llaman «medio punto» a la mv.", []stitch.ID{stitch.SC}},
		{"es-CL", "Los nombres de los puntos son los del español de Chile. Algunos patrones llaman «medio punto» al medio punto alto.", []stitch.ID{stitch.SC}},
	} {
		p := &plan.Pattern{Sizes: []plan.Size{{Name: "one", Age: -1}}}
		for _, id := range c.used {
			p.Stitches = append(p.Stitches, stitch.Plain(id))
		}
		want := strings.ReplaceAll(c.want, "a la mv", "a la media vareta")
		if got := strings.ReplaceAll(language(t, c.tag).TermsNote(p).String(), tie, " "); got != want {
			t.Errorf("%s:\n got %s\nwant %s", c.tag, got, want)
		}
	}
}

// Only what a source says of a country is told of it: a term that falls back on the usual one says nothing.
func TestOthersSayWhatASourceSays(t *testing.T) {
	for _, c := range []struct{ tag, concept, want string }{
		{"en-US", "dc", "tr, treble crochet"},
		{"en-GB", "slst", "sl st, slip stitch"},
		{"es", "sc", "medio punto (MX, AR, UY, CL, EC)"},
		{"es", "hdc", "media vareta (AR, UY)"}, // Mexico and Chile are remembered, Ecuador falls back
		{"es-AR", "slst", "punto deslizado (neutro, MX); punto raso (ES)"},
		{"es-MX", "tr", "punto alto doble (neutro, ES); vareta doble (AR, UY); barreta doble (EC)"},
	} {
		if got := strings.ReplaceAll(strings.Join(language(t, c.tag).othersSay(c.concept), "; "), tie, " "); got != c.want {
			t.Errorf("%s, %s:\n got %s\nwant %s", c.tag, c.concept, got, c.want)
		}
	}
}

// What is made of a stitch is told of in other words where its stitch has no row, or where other countries build the name anew.
func TestOthersOfDerivedForms(t *testing.T) {
	front := stitch.Form{ID: stitch.DC, Post: stitch.FrontPost, Together: 1}
	two := stitch.Form{ID: stitch.DC, Together: 2}
	cluster := stitch.Form{ID: stitch.DC, Together: 1, Group: stitch.Cluster, Of: 3}
	for _, c := range []struct {
		tag   string
		form  stitch.Form
		plain bool
		want  string
	}{
		{"en-US", front, true, "FPtr"}, {"en-GB", two, true, "dc2tog"}, {"es", two, true, ""},
		{"es", two, false, "2 macizos cerrados juntos (MX); 2 varetas cerradas juntas (AR, UY); 2 barretas simples cerradas juntas (EC)"},
		{"es-AR", front, false, "punto alto en relieve por delante (neutro, ES, CL); macizo en relieve por delante (MX); barreta simple en relieve por delante (EC)"},
		{"en-US", cluster, true, "3-tr cluster"},
	} {
		l := language(t, c.tag)
		ctx := l.context(&plan.Pattern{}, nil, nil)
		got := ctx.othersForm(c.form, c.plain)
		if c.form.Group != stitch.Single {
			got = ctx.othersGroup(c.form)
		}
		if s := strings.ReplaceAll(strings.Join(got, "; "), tie, " "); s != c.want {
			t.Errorf("%s %v:\n got %s\nwant %s", c.tag, c.form, s, c.want)
		}
	}
	ctx := language(t, "es").context(&plan.Pattern{}, nil, nil)
	if got := strings.ReplaceAll(ctx.elsewhere(cluster).String(), tie, " "); got != "Otros países: bodoque de 3 macizos (MX)." {
		t.Errorf("a cluster elsewhere: %s", got)
	}
}

func TestMistakenNamesAreOfTheTable(t *testing.T) {
	for _, m := range mistaken() {
		found := false
		for _, l := range Readings() {
			found = found || l.Code() == m.code && l.read.Has(m.meant) && l.read.word(m.concept) == m.name
		}
		if !found {
			t.Errorf("no reading calls %s %q", m.concept, m.name)
		}
	}
	if len(mistaken()) == 0 {
		t.Error("no names")
	}
}
