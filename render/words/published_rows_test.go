package words

import (
	"slices"
	"strings"
	"testing"

	"ovillo/compile/stitch"
)

// departures says of each published abbreviation that we do not print why we do not.
func departures(t *testing.T) map[[2]string]string {
	t.Helper()
	rows := tableRows(t, "testdata/abbreviations_ours.csv")
	out := map[[2]string]string{}
	for _, r := range rows[1:] {
		key := [2]string{r[0], r[1]}
		if _, twice := out[key]; twice || r[2] == "" {
			t.Errorf("%v stands twice, or without a reason", key)
		}
		out[key] = r[2]
	}
	return out
}

// printedPair is what we print for one thing in both readings of English: its abbreviation, or the word where it has none.
type printedPair struct{ us, uk string }

// printedPairs are those of all stitches in all forms, and of all terms by their abbreviations and in full.
func printedPairs(t *testing.T) []printedPair {
	t.Helper()
	us, uk := language(t, "en-US"), language(t, "en-GB")
	var out []printedPair
	for _, k := range stitch.Table {
		for post := stitch.NoPost; post <= stitch.BackPost; post++ {
			for together := 1; together <= 3; together++ {
				f := stitch.Form{ID: k.ID, Post: post, Together: together}
				out = append(out, printedPair{flat(us.voice.form(f).one), flat(uk.voice.form(f).one)})
			}
		}
	}
	for _, concept := range us.read.Table().Concepts() {
		a, b := us.read.Term(concept), uk.read.Term(concept)
		out = append(out, printedPair{a.Short, b.Short}, printedPair{a.One, b.One})
	}
	return out
}

// publishedUnits are written alike in both readings.
var publishedUnits = []string{"cm", "mm", "m", "g", "in", "yd"}

// TestEveryPublishedAbbreviation: each row of the published list is what we print in both readings, or it is said why not.
func TestEveryPublishedAbbreviation(t *testing.T) {
	rows := tableRows(t, "testdata/abbreviations.csv")
	pairs, why := printedPairs(t), departures(t)
	same := 0
	for _, r := range rows[1:] {
		us, uk := strings.Split(r[0], " / "), strings.Split(r[2], " / ")
		if r[0] == "" { // a word without an abbreviation
			us, uk = strings.Split(r[1], " / "), strings.Split(r[3], " / ")
		}
		printed := r[4] == "measure" && slices.Contains(publishedUnits, r[0]) || slices.ContainsFunc(pairs, func(p printedPair) bool { return slices.Contains(us, p.us) && slices.Contains(uk, p.uk) })
		key := [2]string{r[0], r[1]}
		reason, departs := why[key]
		delete(why, key)
		switch {
		case printed && departs:
			t.Errorf("%v is printed: no departure is needed (%s)", key, reason)
		case printed:
			same++
		case !departs:
			t.Errorf("%v is not printed, and no reason is given", key)
		}
	}
	for key := range why {
		t.Errorf("%v is in no row of the published list", key)
	}
	if same < 40 {
		t.Errorf("only %d rows are printed", same)
	}
}
