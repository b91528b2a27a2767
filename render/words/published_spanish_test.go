package words

import (
	"slices"
	"strings"
	"testing"

	"ovillo/compile/stitch"
	"ovillo/lang/terms"
)

// publishedTerm is a word for a stitch or a thing as a maker or a publisher of a country prints it, with what we print instead
// where we print something else.
type publishedTerm struct {
	reading, concept string
	one              []string // in full, with other words for it
	many, gender     string
	short            string
	departure        string // why we print another word, "" if we print this one
}

// publishedSpanish reads the Spanish words that were read in patterns and lists of makers, country by country; each row names its
// source. A country that has no reading of its own stands with its code all the same.
func publishedSpanish(t *testing.T) []publishedTerm {
	t.Helper()
	rows := tableRows(t, "testdata/spanish.csv")
	var out []publishedTerm
	for _, r := range rows[1:] {
		if r[6] == "" {
			t.Errorf("%v has no source", r)
		}
		out = append(out, publishedTerm{r[0], r[1], strings.Split(r[2], " / "), r[3], r[4], r[5], r[7]})
	}
	return out
}

// formsPublished are the stitches made of others that the list holds.
var formsPublished = map[string]stitch.Form{
	"front post sc": {ID: stitch.SC, Post: stitch.FrontPost, Together: 1}, "back post sc": {ID: stitch.SC, Post: stitch.BackPost, Together: 1},
	"front post hdc": {ID: stitch.HDC, Post: stitch.FrontPost, Together: 1}, "back post hdc": {ID: stitch.HDC, Post: stitch.BackPost, Together: 1},
	"front post dc": {ID: stitch.DC, Post: stitch.FrontPost, Together: 1}, "back post dc": {ID: stitch.DC, Post: stitch.BackPost, Together: 1},
	"front post tr": {ID: stitch.TR, Post: stitch.FrontPost, Together: 1},
	"sc together":   {ID: stitch.SC, Together: 2}, "sc 3 together": {ID: stitch.SC, Together: 3}, "hdc together": {ID: stitch.HDC, Together: 2},
	"dc together": {ID: stitch.DC, Together: 2}, "dc 3 together": {ID: stitch.DC, Together: 3},
}

// ours is what we print for a concept in a reading.
func ours(l *Language, concept string) publishedTerm {
	if f, ok := formsPublished[concept]; ok {
		n := l.voice.form(f)
		return publishedTerm{one: []string{strings.ReplaceAll(l.voice.formName(f), tie, " ")}, short: flat(n.one), gender: letterOf(n.feminine)}
	}
	t := l.read.Term(concept)
	one := strings.NewReplacer("{el yarn}", "el hilo").Replace(t.One)
	return publishedTerm{one: []string{one}, many: t.Many, short: t.Short, gender: letterOf(t.Feminine)}
}

// letterOf is the gender as a dictionary gives it.
func letterOf(feminine bool) string {
	if feminine {
		return "f"
	}
	return "m"
}

// same reports whether we print a published term: the word, and of its plural, its gender and its abbreviation what was published.
func (p publishedTerm) same(own publishedTerm) bool {
	at := slices.Index(p.one, own.one[0])
	first := at == 0 // plural and gender are those of the first word
	return at >= 0 && (p.short == "" || p.short == own.short) &&
		(!first || p.many == "" || own.many == "" || p.many == own.many) && (!first || p.gender == "" || p.many == "" || p.gender == own.gender)
}

// TestSpanishIsThePublishedOne: what makers of each country were read to print is what we print there, or it is said why not.
func TestSpanishIsThePublishedOne(t *testing.T) {
	same := 0
	for _, p := range publishedSpanish(t) {
		r, ok := terms.Standard().Reading(p.reading)
		if !ok || r.Tag() != p.reading {
			if p.departure == "" {
				t.Errorf("%s %s: there is no such reading, and no reason is given", p.reading, p.concept)
			}
			continue
		}
		own := ours(language(t, p.reading), p.concept)
		switch printed := p.same(own); {
		case printed && p.departure != "":
			t.Errorf("%s %s: %v is printed: no departure is needed", p.reading, p.concept, p.one)
		case printed:
			same++
		case p.departure == "":
			t.Errorf("%s %s: %v is published as %+v", p.reading, p.concept, own, p)
		}
	}
	if same < 70 {
		t.Errorf("only %d terms are the published ones", same)
	}
}
