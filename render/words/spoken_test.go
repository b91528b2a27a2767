package words

import (
	"strconv"
	"testing"

	"ovillo/compile/numeral"
)

// TestSpokenNumbers reads every number back with the reader of numbers in prose, as far as that knows words; and looks at those whose form is
// easily missed.
func TestSpokenNumbers(t *testing.T) {
	for n := 2; n <= 599; n++ {
		for lang, said := range map[string]string{"en": englishNumber(n, false), "es": spanishNumber(n, n%2 == 0)} {
			if n%100 == 1 && n > 100 { // one is a word that may stand for a number, and is not added up by the reader
				continue
			}
			inWords, inFigures := numeral.Read("x "+said+" y", lang, nil), numeral.Read("x "+strconv.Itoa(n)+" y", lang, nil)
			if a, b := numeral.Compare(inWords, inFigures); len(inWords) != 1 || len(a)+len(b) > 0 {
				t.Errorf("%s: %d is said %q, which is read as %v", lang, n, said, inWords)
			}
		}
	}
	for _, c := range []struct {
		got, want string
	}{
		{spanishNumber(1, false), "un"}, {spanishNumber(1, true), "una"}, {spanishNumber(21, false), "veintiún"}, {spanishNumber(21, true), "veintiuna"},
		{spanishNumber(31, false), "treinta y un"}, {spanishNumber(31, true), "treinta y una"}, {spanishNumber(100, true), "cien"}, {spanishNumber(101, true), "ciento una"},
		{spanishNumber(200, true), "doscientas"}, {spanishNumber(500, false), "quinientos"}, {spanishNumber(700, true), "setecientas"}, {spanishNumber(900, false), "novecientos"},
		{spanishNumber(1000, false), "mil"}, {spanishNumber(1021, false), "mil veintiún"}, {spanishNumber(2200, true), "dos mil doscientas"}, {spanishNumber(11, true), "once"},
		{englishNumber(112, false), "one hundred twelve"}, {englishNumber(112, true), "one hundred and twelve"}, {englishNumber(1001, true), "one thousand and one"},
		{englishNumber(40, false), "forty"}, {englishNumber(99, false), "ninety-nine"}, {englishNumber(10000, false), ""}, {spanishNumber(-1, false), ""},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}
