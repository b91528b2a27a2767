package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// meanings are lines of a part and what they come to: the stitches and spaces of the last row in every size, or the code
// with which they are refused. The part has two sizes, a base stitch, and the start named; r is worked in rounds, f flat.
var meanings = []struct{ start, lines, want string }{
	// One in each, all in one.
	{"r 12", "round: sc in next 12", "12"},
	{"r 12", "round: 2 sc in each", "24"},
	{"r 12", "round: 2 sc in each of next 6, sc in each", "18"},
	{"r 12", "round: inc 6 times, sc in each", "18"},
	{"r 12", "round: 2 inc, sc in each", "14"},
	{"r 12", "round: sc 3 times, sc in each", "12"},
	{"r 12", "round: dec around", "6"},
	{"r 12", "round: sc2tog 2 times, sc in each", "10"},
	{"r 12", "round: 3 sc together, sc in each", "10"},
	{"r 12", "round: sc3tog around", "4"},
	{"r 12", "round: dec in next 2, sc in each", "OV431"},
	{"r 12", "round: 2 sc2tog in next, sc in each", "10"},
	{"r 12", "round: 5 sc, sc in each", "OV430"},
	{"r 12", "round: (2 sc, ch 1, 2 sc) in each", "48+12"},
	{"r 12", "round: (2 sc) in next 3, sc in each", "15"},
	{"r 12", "round: [sc, inc] around", "18"},
	{"r 12", "round: [sc in next 2, [inc] 2 times] around", "18"},

	// Sizes.
	{"r 12 (16)", "round: [sc in next 3, inc] around = 3 (4) times", "15 (20)"},
	{"r 12 (16)", "round: [sc in next 3, inc] 3 times, sc in each", "15 (19)"},
	{"r 12 (16)", "round: sc in each\n  only \"M\"\n    round: [sc in next 3, inc] around = 20\n  end\n  round: sc in each", "12 (20)"},
	{"r 12 (16)", "0 (2) rounds: inc, sc in each\n  round: sc in each", "12 (18)"},
	{"r 12", "round: sc in next 3 (4), skip 0 (1), sc in each", "12 (11)"},

	// Spaces.
	{"r 12", "round: [sc in next 2, ch 1, skip 1] around\n  round: sc in each st and space", "12"},
	{"r 12", "round: [sc in next 2, ch 3, skip 1] around\n  round: sc in each st and chain", "20"},
	{"r 12", "round: [sc in next 2, ch 3, skip 1] around\n  round: 3 sc in each space", "12"},
	{"r 12", "round: [sc in next 2, ch 1, skip 1] around\n  round: sc in each", "OV403"},
	{"r 12", "round: [sc in next 2, ch 1, skip 1] around\n  round: [sc in next 2, skip space] around", "8"},
	{"r 12", "round: [sc in next 2, ch 1, skip 1] around\n  round: skip 3, sc in each st and space", "OV403"},
	{"r 12", "round: [sc in next 2, ch 1, skip 1] around\n  round: [sc to the next space, 2 sc in next space] 4 times", "16"},
	{"f 9", "row: sc in each\n  row: sc in next, [ch 1, skip 1, sc in next] across", "5+4"},
	{"f 8", "row: sc in each\n  row: ch 2, skip 1, sc in each", "7+1"},

	// Gaps.
	{"r 12", "round: sc between each", "12"},
	{"f 12", "row: sc between each", "11"},
	{"f 12", "row: sc in next 5, sc in this gap, sc in each", "13"},

	// First, last, same.
	{"f 12", "row: sc in each\n  row: 2 sc in first, sc to last, 2 sc in last", "14"},
	{"f 12", "row: sc in each\n  row: sc to last 2, dec", "11"},
	{"f 12", "row: sc in each\n  row: sc in next, sc in same, sc in each", "13"},
	{"f 12", "row: sc in each\n  row: sc in next 12, sc in first", "13"},
	{"f 12", "row: sc in each\n  row: sc to last 13", "OV401"},

	// Short rows.
	{"f 12", "row: sc in each\n  row: sc in next 8, leave 4\n  row: sc in each\n  row: sc in each, sc in each left", "12"},
	{"f 12", "row: sc in each\n  row: sc in next 8, leave rest\n  row: sc in each\n  row: sc in each, sc in next left", "9"},
	{"f 12", "row: sc in each\n  row: sc in next 8, leave 4 as step\n  row: sc in each\n  row: sc in each, sc in each of step", "12"},
	{"f 12", "row: sc in each\n  row: sc in next 8", "OV402"},
	{"r 12", "round: sc in each\n  row: sc in next 8, leave 4\n  row: sc in each", "8"},

	// Markers and sections.
	{"r 12", "round: sc in each\n  count off: 4, mark m, 8\n  round: sc to m, inc, sc in each\n  round: sc to m, inc, sc in each", "14"},
	{"r 12", "round: sc in each\n  count off: 4, mark m in next, 7\n  3 rounds: sc to m, 3 sc in m, move m to the middle one, sc in each", "18"},
	{"r 12", "round: sc in each\n  count off: 4, mark m in next, 7\n  3 rounds: sc to 1 before m, dec, sc in each", "OV505"},
	{"r 12", "round: sc in each\n  count off: 6 as back, mark m, 6\n  round: inc, sc in each\n  have 7 in back", "13"},
	{"r 12", "round: sc in each\n  count off: 6 as back, mark m, 6\n  round: inc, sc in each\n  have 8 in back", "OV601"},
	{"r 12", "round: sc in next 4, mark m, sc in each\n  round: sc to m, 2 sc in m, sc in each", "13"},
	{"r 12", "round: sc in each\n  count off: 4, mark m, 8\n  rounds begin at m\n  round: sc in next 8, 2 sc in each", "16"},
	{"r 12", "round: sc in each\n  count off: 4, mark m, 8\n  round: sc to m, sc in each\n  round: sc to m, sc to end, sc in marker", "OV407"},

	// Labels.
	{"r 12", "round: sc in next 4 as a, sc in each\n  round: 2 sc in each of a, sc in each", "16"},
	{"r 12", "round: sc in next 4, ch 2 as gap, skip 2, sc in each\n  round: sc in next 4, 5 sc in gap, sc in each", "15"},
	{"r 12", "round: sc in next 4 as a, sc in each\n  round: sc in a, sc in each", "OV504"},
	{"r 12", "round: sc in next 4 as a, sc in each\n  round: sc in a.1, sc in each", "12"},
	{"r 12", "round: sc in next 4 as a, sc in each = 4 in a, 12 sts", "12"},
	{"r 12", "round: sc in next 4 as a, sc in each\n  round: sc in each = 4 in a, 12 sts", "OV601"},
	{"r 12", "round: sc in next 4 as a, sc in each\n  have 12 sts, 4 in a", "12"},
	{"r 12", "round: sc in each = 4 in b", "OV202"},

	// Counts.
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 8 sts, 4 spaces", "8+4"},
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 8 sc, 4 spaces of 2", "8+4"},
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 4 spaces of 3", "OV601"},
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 16 sts and chains", "8+4"},
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 12 sts and spaces", "8+4"},
	{"r 12", "round: [sc in next 2, ch 2, skip 1] around = 8", "OV604"},
	{"r 12", "round: sc in each = multiple of 4", "12"},
	{"r 12", "round: sc in each\n  have multiple of 5 plus 2", "12"},
	{"r 12", "round: sc in each\n  have multiple of 5", "OV602"},
	{"r 12", "round: [sc in next 2, hdc in next] around = 8 sc, 4 hdc", "12"},
	{"r 12", "round: [sc in next 2, hdc in next] around\n  have 8 sc, 4 hdc, 12 sts", "12"},
	{"r 12", "round: [sc in next 2, hdc in next] around\n  have 7 sc", "OV601"},
	{"r 12", "repeat 3 times\n    round: inc, sc in each\n  end = + 1 each time", "15"},
	{"r 12", "repeat 3 times\n    round: inc, sc in each\n  end = + 2 each time", "OV601"},
	{"r 12", "repeat 3 times\n    round: dec, sc in each\n  end = - 1 each time", "9"},
	{"r 12", "repeat 3 times\n    round: dec, sc in each\n  end = 9", "9"},
	{"r 12", "shape s: 4 rounds\n    plain: sc in each\n    shaping: inc, sc in each\n    every 2 rounds 2 times\n  end = + 1 each time", "OV605"},
	{"r 12", "round: sc in each = 12 (13)", "OV601"},

	// Beginnings.
	{"f 12", "row: dc in each\n  row: dc in each", "12"},
	{"f 12", "row: dc in each\n  row: fpdc in each", "OV437"},
	{"f 12", "row: dc in each\n  row: skip 1, dc in each", "OV437"},
	{"f 12", "row: dc in each\n  row, begin with ch 2: fpdc in each", "12"},
	{"f 12", "row: dc in each\n  row, begin none: skip 1, dc in each", "11"},

	// What a row may not do.
	{"r 12", "round: ch 2, sc in each", "OV411"},
	{"r 12", "round: [ch 1] around", "OV406"},
	{"r 12", "round: [sc in next 5] around", "OV405"},
	{"r 12", "round: (sc, sc in next 2) in next, sc in each", "14"},
	{"r 12", "round: [sc in next 2, sc in last] around", "OV420"},
	{"r 12", "round: sc in each, sc in next", "OV401"},
}

func TestMeaning(t *testing.T) {
	for _, c := range meanings {
		kind, n, _ := strings.Cut(c.start, " ")
		start := map[string]string{"r": "in joined rounds\n  chain " + n + ", join", "f": "in rows\n  chain " + n}[kind]
		text := "sizes \"S\", \"M\"\nend\n\npart piece\n  title en \"Piece\" es \"Pieza\"\n  base sc\n  " + start + "\n  " + c.lines + "\nend\n"
		if got := outcome(text); got != c.want {
			t.Errorf("%s: %s\n\tgives %s, want %s", c.start, c.lines, got, c.want)
		}
	}
}

// outcome is what the last row of a source comes to, or the codes with which it is refused.
func outcome(text string) string {
	f, list := lang.Parse(source.NewFile("meaning", text))
	p, more := compile.Compile(f)
	var codes []string
	for _, d := range append(list, more...) {
		if diag.Lookup(d.Code).Severity == diag.Error {
			codes = append(codes, string(d.Code))
		}
	}
	if len(codes) > 0 {
		return strings.Join(codes, " ")
	}
	var sizes []string
	for _, facts := range p.Parts[len(p.Parts)-1].Worked {
		last := facts[len(facts)-1]
		s := fmt.Sprint(last.Stitches)
		if last.Spaces > 0 {
			s += fmt.Sprintf("+%d", last.Spaces)
		}
		sizes = append(sizes, s)
	}
	if sizes[0] == sizes[1] {
		return sizes[0]
	}
	return sizes[0] + " (" + sizes[1] + ")"
}
