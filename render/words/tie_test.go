package words

import (
	"regexp"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

// loose finds what may not come apart at the end of a line: a figure and its noun or unit, a word and its number.
var loose = map[string]*regexp.Regexp{
	"en": regexp.MustCompile(`[0-9½¼¾] (sts?|sps?|dc|hdc|sc|tr|times?|rounds?|rows?|cm|mm|loops|ch)\b|\b([Cc]h|marker|markers|[Rr]ound|[Rr]ow|Rounds|Rows|these rounds|ch-[0-9]) [0-9]|\bsl st\b|ch-[0-9]+ sps?\b`),
	"es": regexp.MustCompile(`[0-9½¼¾] (p|cad|pa|pma|pb|esp|ve[cz]e?s?|vueltas?|hileras?|cm|mm|bucles)\b|\b(marcador|marcadores|[Vv]uelta|[Hh]ilera|Vueltas|Hileras|estas vueltas) [0-9]|rel (del|det)\b`),
}

func TestPairsAreTied(t *testing.T) {
	for _, tag := range []string{"en", "es"} {
		l := language(t, tag)
		shownBad := 0
		corpus(l, func(what string, text rich.Text) {
			if hit := loose[tag].FindString(text.String()); hit != "" && shownBad < 10 {
				shownBad++
				t.Errorf("%q may break in %q (%s)", hit, text.String(), what)
			}
		})
	}
}

// A short last word is tied to the one before it; a long one is not.
func TestLastWordsAreTied(t *testing.T) {
	for _, k := range []struct{ in, want string }{
		{"Join with it.", "Join with~it."},
		{"Join the stitches.", "Join the stitches."},
		{"seven letters.", "seven~letters."},
		{"Alone.", "Alone."},
		{"Ends with a list 1~(2).", "Ends with a list~1~(2)."},
		{"", ""},
	} {
		in := rich.T(strings.ReplaceAll(k.in, "~", tie))
		if got := shown(paragraph(in)); got != k.want {
			t.Errorf("%q: %q, want %q", k.in, got, k.want)
		}
	}
	// The last word may lie in several runs.
	got := shown(paragraph(rich.Text{{Text: "with the "}, {Text: "yarn", Strong: true}, {Text: "."}}))
	if got != "with the~**yarn**." {
		t.Errorf("got %q", got)
	}
}

// An abbreviation is expanded where it first stands in a step, and runs that look alike are one.
func TestAbbreviationsAreExpandedOnce(t *testing.T) {
	p := sample.Leggings()
	for _, tag := range []string{"en", "es"} {
		l := language(t, tag)
		for _, part := range p.Parts {
			for _, s := range part.Steps {
				st := l.Step(p, part, s)
				seen := map[string]int{}
				for i, r := range st.Body {
					if r.Text == "" {
						t.Errorf("%s: an empty run in %q", tag, st.Body)
					}
					if i > 0 && alike(st.Body[i-1], r) {
						t.Errorf("%s: %q and %q are alike", tag, st.Body[i-1].Text, r.Text)
					}
					if r.Expand != "" {
						seen[r.Expand]++
					}
				}
				for what, n := range seen {
					if n > 1 {
						t.Errorf("%s: %s is expanded %d times in %q", tag, what, n, st.Body)
					}
				}
				if _, ok := s.(*plan.Row); ok && len(seen) == 0 {
					t.Errorf("%s: nothing is expanded in %q", tag, st.Body)
				}
			}
		}
	}
}
