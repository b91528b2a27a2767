package lang

import "strings"

// Words fall into classes. The table below is the only place where a word of the language gets its class.
//
// Reserved words are never names, wherever they stand: they are what lets a line be read without a table of names. Line
// words begin a statement wherever a line starts with one, whatever is open above it; none of them can begin a line that
// goes on with a well-formed statement. All other words of the language have their meaning by position and are free as
// names (front, left, plain, first, gap, step).

type class uint8

const (
	reserved     class = 1 << iota
	lineWord           // begins a statement whenever it begins a line
	proseWord          // begins a statement when it stands alone on its line
	unitWord           // a unit behind a number
	roundingWord       // how a call rounds
)

// classes is the table of words.
var classes = func() map[string]class {
	m := map[string]class{}
	for _, row := range []struct {
		class class
		words string
	}{
		// instructions
		{reserved, "ch skip leave rest turn join mark move unmark marker begin none with as from sl"},
		// places and bounds
		{reserved, `in next each same ring this to end before of and the st sts space spaces chain chains
		            between below beside through together`},
		// what may stand behind a stitch or a list
		{reserved, "flo blo tlo third loop crossing times around across evenly"},
		// counts
		{reserved, "plus multiple but for every on"},
		// rows and blocks
		{reserved, `row rows round rounds fasten have repeat only count shape part pattern sizes gauge let stitch group chart
		            finish measure note intro yarn hook motifs`},
		{lineWord, `row rows round rounds fasten have repeat only count shape part pattern sizes gauge let stitch group chart
		            finish measure yarn hook motifs end`},
		{proseWord, "intro note step care licence changes"},
		{unitWord, "cm mm in g kg oz m yd months month years year"},
		{roundingWord, "nearest up down even odd"},
	} {
		for _, w := range strings.Fields(row.words) {
			m[w] |= row.class
		}
	}
	return m
}()

// Reserved reports whether a word belongs to the language wherever it stands, so that it can name nothing.
func Reserved(word string) bool { return classes[word]&reserved != 0 }

func isUnit(word string) bool     { return classes[word]&unitWord != 0 }
func isRounding(word string) bool { return classes[word]&roundingWord != 0 }
