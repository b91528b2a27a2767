package words

import (
	"encoding/csv"
	"os"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/stitch"
)

// tableRows reads a table of the tests, its heads first.
func tableRows(t *testing.T, path string) [][]string {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// published reads the list of published abbreviations. Its rows were gathered from the yarn shops, makers and publishers
// whose keys stand in its source column (S45 funcrochetdesigns.com, S46 spotlightstores.com, S47 peanutandplum.co.uk, S51
// stitch4ever.com …; SOURCES.md has them all). The first US abbreviation is the key.
func published(t *testing.T) map[string]publishedRow {
	t.Helper()
	rows := tableRows(t, "testdata/abbreviations.csv")
	list := map[string]publishedRow{}
	for _, r := range rows[1:] {
		name, _, _ := strings.Cut(r[3], " (") // what it is called besides
		p := publishedRow{us: strings.Split(r[0], " / "), usName: r[1], uk: strings.Split(r[2], " / "), ukName: name, kind: r[4]}
		for _, short := range p.us {
			if _, ok := list[short]; !ok || p.kind == "stitch" {
				list[short] = p
			}
		}
	}
	return list
}

type publishedRow struct {
	us, uk         []string
	usName, ukName string
	kind           string
}

func TestEnglishAbbreviationsAreThePublishedOnes(t *testing.T) {
	list := published(t)
	us, uk := language(t, "en-US"), language(t, "en-GB")
	checked := 0
	for _, k := range stitch.Table {
		for post := stitch.NoPost; post <= stitch.BackPost; post++ {
			for together := 1; together <= 3; together++ {
				f := stitch.Form{ID: k.ID, Post: post, Together: together}
				short := flat(us.voice.form(f).one)
				row, ok := list[short]
				if !ok {
					continue // not every form is published
				}
				checked++
				if got := flat(uk.voice.form(f).one); !slices.Contains(row.uk, got) {
					t.Errorf("%s: the UK reading is %q, published %q", short, got, row.uk)
				}
				if together > 1 {
					continue // decreases are named in our own words
				}
				if got := us.voice.formName(f); got != row.usName {
					t.Errorf("%s: named %q, published %q", short, got, row.usName)
				}
				if got := uk.voice.formName(f); got != row.ukName {
					t.Errorf("%s: named %q in the UK, published %q", short, got, row.ukName)
				}
			}
		}
	}
	if checked < 20 {
		t.Errorf("only %d forms were found in the published list", checked)
	}
}

func TestEnglishNounsAndWordsAreThePublishedOnes(t *testing.T) {
	list := published(t)
	us, uk := language(t, "en-US"), language(t, "en-GB")
	for _, concept := range []string{"st", "sp"} {
		term := us.read.term(concept)
		row, ok := list[term.Short]
		if !ok || !strings.HasPrefix(row.usName, term.One) {
			t.Errorf("%s is %q, published %q", term.Short, term.One, row.usName)
		}
	}
	for _, k := range []struct{ concept, us, uk string }{{"gauge", "gauge", "tension"}, {"skip", "skip", "miss"}} {
		if us.read.word(k.concept) != k.us || uk.read.word(k.concept) != k.uk {
			t.Errorf("%s: %q and %q", k.concept, us.read.word(k.concept), uk.read.word(k.concept))
		}
	}
}

// A UK double crochet is a US single crochet: the readings must never share an abbreviation for two heights by slip.
func TestReadingsShiftByOneStep(t *testing.T) {
	us, uk := language(t, "en-US"), language(t, "en-GB")
	for _, k := range stitch.Table {
		if !k.Body || k.ID == stitch.TRTR {
			continue
		}
		if a := flat(us.voice.form(plainForm(k.ID)).one); a != k.US {
			t.Errorf("US %s is written %q", k.US, a)
		}
		if b := flat(uk.voice.form(plainForm(k.ID)).one); b != k.UK {
			t.Errorf("UK %s is written %q", k.UK, b)
		}
	}
}

// The Spanish of the stitches, as the translation chart and the makers named in SOURCES.md print it.
func TestSpanishAbbreviations(t *testing.T) {
	ladder := []stitch.ID{stitch.Chain, stitch.Slip, stitch.SC, stitch.HDC, stitch.DC, stitch.TR, stitch.DTR}
	want := map[string][]string{
		"es":    {"cad", "pd", "pb", "pma", "pa", "pad", "pat"},
		"es-MX": {"cad", "pd", "mp", "mmac", "mac", "macd", "mact"},
		"es-AR": {"cad", "pe", "mp", "mv", "v", "vd", "vt"},
		"es-CL": {"cad", "pd", "mp", "mpa", "pa", "pad", "pat"},
		"es-ES": {"cad", "pr", "pb", "pma", "pa", "pad", "pat"},
		"es-EC": {"cad", "pd", "mp", "pma", "barreta", "barreta doble", "barreta triple"},
	}
	for tag, shorts := range want {
		l := language(t, tag)
		for i, short := range shorts {
			if got := flat(l.voice.form(plainForm(ladder[i])).one); got != short {
				t.Errorf("%s: %s is %q, want %q", tag, ladder[i], got, short)
			}
		}
	}
	l := language(t, "es")
	for f, short := range map[stitch.Form]string{
		{ID: stitch.DC, Post: stitch.FrontPost, Together: 1}: "pa rel del",
		{ID: stitch.DC, Post: stitch.BackPost, Together: 1}:  "pa rel det",
		{ID: stitch.SC, Together: 2}:                         "2pbjun",
		{ID: stitch.HDC, Together: 2}:                        "2pmajun",
		{ID: stitch.DC, Together: 3}:                         "3pajun",
	} {
		if got := flat(l.voice.form(f).one); got != short {
			t.Errorf("%v is %q, want %q", f, got, short)
		}
	}
}

// Two stitches of one reading must not share an abbreviation.
func TestAbbreviationsAreTold(t *testing.T) {
	for _, tag := range Tags() {
		l := language(t, tag)
		seen := map[string]string{}
		for _, f := range append(spokenForms(), plainForm(stitch.Chain)) {
			if f.Loop != stitch.BothLoops {
				continue
			}
			short, name := flat(l.voice.form(f).one), l.voice.formName(f)
			if other, ok := seen[short]; ok {
				t.Errorf("%s: %q is both %q and %q", tag, short, other, name)
			}
			seen[short] = name
		}
	}
}
