package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile"
	"ovillo/compile/plan"
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

	// Groups in one place.
	{"r 12", "round: dc3cl in each", "OV437"},
	{"r 12", "round, begin with ch 2: dc3cl in each = 12 dc3cl", "12"},
	{"r 12", "round: sc in next, [dc5bob in next, sc in next] 5 times, sc in each = 7 sc, 5 dc5bob", "12"},
	{"r 12", "round: sc in next 6, hdc4puff in next 3, dc5pop in each = 6 sc, 3 hdc4puff, 3 dc5pop, 0 dc", "12"},
	{"r 12", "round: [sc in next, skip 2, dc5shell in next, skip 2] around = 2 dc5shells, 10 dc, 2 sc", "12"},
	{"r 12", "round: sc in next, dcvst in next 3, sc in each = 3 dcvst, 6 dc, 9 sc, 3 spaces", "15+3"},
	{"r 12", "round: sc in next, dcvst in each\n  round: sc in next, dcvst in each space, skip rest = 11 dcvst, 1 sc, 11 spaces", "23+11"},
	{"r 12", "round: [sc in next 3, picot] around = 12 sc, 4 picots", "12"},
	{"r 12", "round: [sc in next 3, picot] around\n  round: sc in each = 0 picots", "12"},
	{"r 12", "round: sc in next, (2 sc, ch4picot, 2 sc) in next, sc in each = 1 ch4picot, 15 sts", "15"},
	{"r 12", "round: sc in next, [ch 2, picot, ch 2, skip 1, sc in next] 5 times, sc in each = 7 sc, 5 picots, 5 spaces of 4", "7+5"},
	{"r 12", "round: picot, sc in each", "OV413"},
	{"r 12", "round: sc in next, 2 picot, sc in each", "OV490"},
	{"r 12", "round: sc in each, picot as tip", "OV490"},
	{"r 12", "round: dc1cl in each", "OV491"},
	{"r 12", "round: sc3puff in each", "OV491"},
	{"r 12", "round: dc3cl2tog, sc in each", "OV203"},
	{"r 12", "round: 2 dc3cl together, sc in each", "OV492"},
	{"r 12", "round: fpsl in each", "OV203"},
	{"r 12", "round: sc in next, 2 dc3cl in each = 1 sc, 22 dc3cl", "23"},
	{"r 12", "round: sc in next 4, mark m, sc in next, dc3cl in next, sc in each\n  round: sc to m, sc in each", "12"},

	// Stitches that cross.
	{"r 12", "round: dc2cross around", "OV437"},
	{"r 12", "round, begin with ch 2: dc2cross around = 12 dc, 6 dc2cross", "12"},
	{"r 12", "round: sc in next, 2 dc4crossback, sc in next, dc2cross in last = 2 dc4crossbacks, 1 dc2cross, 10 dc, 2 sc", "12"},
	{"r 12", "round: sc in next 2, [fpdc2cross, sc in next 4] around", "OV405"},
	{"r 12", "round: sc in each\n  round: [sc in next, fpdc2cross, sc in next 3] around = 8 sc, 4 fpdc", "12"},
	{"r 12", "round: sc in next, dc3cross, sc in each", "OV491"},
	{"r 12", "round: sc in next 11, dc2cross", "OV401"},
	{"r 12", "round: sc in next, dc2cross in next 2, sc in each", "OV431"},
	{"r 12", "round: sc in next, dc2cross in next space, sc in each", "OV495"},
	{"r 12", "round: (sc, dc2cross) in next, sc in each", "OV417"},
	{"r 12", "round: sc in next, dc2cross as x, sc in each = 2 in x, 12 sts", "12"},

	// The other way.
	{"r 12", "round: rsc in each = 12 rsc", "12"},
	{"r 12", "round: sc in each\n  round: [rsc in next, ch 1, skip 1] around = 6 rsc, 6 spaces", "6+6"},
	{"r 12", "round: rsc in next 3, sc in each", "OV493"},
	{"r 12", "round: (rsc, dc) in next, rsc in each", "OV493"},
	{"r 12", "round: fprsc in each", "OV203"},
	{"r 12", "round: rsc2tog, rsc in each", "OV203"},
	{"r 12", "round: sc in next 3 as a, sc in each\n  round: rsc in next 10, rsc in a.3, rsc in each", "12"},
	{"r 12", "round: sc in next 3 as a, sc in each\n  round: rsc in each\n  round: sc in next 2, 3 sc in next, sc in each", "14"},
	{"f 12", "row: sc in each\n  row: sc in next 3 as a, sc in each\n  row: rsc in next 9, rsc in a.3, rsc in each", "12"},

	// Drawn together from places of several kinds.
	{"r 12", "round: [sc in next, skip 2, sc in next] together, sc in each", "9"},
	{"r 12", "round: sc in next, [[sc in next, skip 1, sc in next] together, ch 2] 3 times, sc in each = 6 sc, 3 spaces", "6+3"},
	{"r 12", "round: [sc in next, ch 1, skip 1] around\n  round: sc in next, [sc in next 2 spaces] together, sc in each st and space = 10 sc", "10"},
	{"r 12", "round: [sc in next, ch 1, skip 1] around\n  round: [sc in next, sc in next space, sc in next] together, sc in each st and space = 10 sc", "10"},
	{"r 12", "round: [sc in next, ch 1, skip 1] around\n  round: sc in next, sc2tog in next space, sc in each st and space", "OV495"},
	{"r 12", "round: sc in next, [sc in same, skip 1, sc in next] together, sc in each = 11", "11"},
	{"r 12", "round: [2 sc in next, skip 1, 2 sc in next] together as peak, sc in each = 10 sts, 1 in peak", "10"},
	{"r 12", "round: [sc in next, dc in next] together, sc in each", "OV496"},
	{"r 12", "round: [sc in next] together, sc in each", "OV496"},
	{"r 12", "round: [sc in next, ch 1, sc in next] together, sc in each", "OV496"},
	{"r 12", "round: [sc in each] together", "OV496"},
	{"r 12", "round: [sc in next 2 (3)] together, sc in each", "OV496"},
	{"r 12", "round: [sc in next 8, skip 4, sc in next] together", "OV401"},
	{"r 12", "round: sc in next 4, mark m, sc in each\n  round: sc in next 3, [sc in next 2] together, sc in each\n  round: sc to m, sc in each", "OV505"},
	{"f 12", "row: sc in each\n  row: [sc in next, skip 1, sc in next] together, sc in next 3, [fpdc in next, skip 1, dc in next] together, sc in each = 8", "8"},

	// Stitches on no place.
	{"f 12", "row: sc in each, foundation sc 6 = 18", "18"},
	{"f 12", "row: sc in each, foundation dc 6 = 12 sc, 6 dc\n  row: dc in next 2, sc in each", "18"},
	{"f 12", "row: sc in each, foundation sc 3 (5) as wing = 15 (17) sts, 3 (5) in wing", "15 (17)"},
	{"f 12", "row: sc in each, foundation sc 4 as wing\n  row: sc in each, sc below each of wing", "20"},
	{"r 12", "round: sc in next 4, foundation sc 3, skip 4, sc in each = 11", "11"},
	{"f 12", "row: foundation sc 6, sc in each", "OV413"},
	{"f 12", "row: sc in next 11, ch 1, foundation sc 6, skip 1", "OV413"},
	{"f 12", "row: sc in each, foundation sc 0 (2) = 12 (14)", "12 (14)"},
	{"r 12", "round: (sc, foundation sc 2) in next, sc in each", "OV417"},
	{"f 12", "row: sc in each, foundation dc2tog 2", "OV492"},

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
	{"r 12", "round: sc in each\n  count off: 4, mark m, 8\n  round: sc to m, sc in each\n  round: sc to m, sc to end, sc in marker", "OV516"},

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
	{"f 12", "shape s: 4 rows\n    plain: sc in each\n    shaping: dec, sc in each\n    every row 3 times\n  end", "9"},
	{"f 12", "shape s: 4 rows\n    plain: sc in each\n    shaping: dec, sc in each\n    first on row 2, every row, 3 times\n  end", "9"},
	{"f 12", "edges left, right\n  shape s: 4 rows\n    plain: sc in each\n    at left: dec on row 1, then every row, 3 times in all\n    at right: dec on row 4, then every row, 1 times in all\n  end", "8"},
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

	// Markers that are met, whichever they are.
	{"r 12", "round: sc in each\n  count off: 3, mark a in next, 3, mark b in next, 4\n  2 rounds: [sc to marker, 3 sc in marker, move marker to the middle one] 2 times, sc to end", "20"},
	{"r 12", "round: sc in each\n  count off: 3, mark a, 6, mark b, 3\n  2 rounds: [sc to 1 before marker, 2 sc in each of next 2] 2 times, sc to end", "20"},
	{"r 12", "round: sc in each\n  count off: 3 as s, 9 as t\n  round: sc to marker, sc to end", "OV513"},
	{"r 12", "round: sc in each\n  count off: 3, mark a in next, 8\n  round: sc to marker, unmark marker, sc in each\n  round: sc to a, sc in each", "OV503"},
	{"r 12", "round: sc in each\n  count off: 3, mark a in next, 8\n  round: sc to a, move marker", "OV514"},

	// As established.
	{"f 8", "row: dc in each\n  row, begin with ch 2: [fpdc, bpdc] across\n  row, begin with ch 2: as established = 4 fpdc, 4 bpdc", "8"},
	{"f 9", "row: sc in each\n  row: sc in next, [ch 2, skip 1, sc in next] across\n  2 rows: as established", "5+4"},
	{"f 9", "row: sc in each\n  row: inc, as established to last, inc", "11"},
	{"f 9", "row: as established", "OV544"},

	// At even distances.
	{"f 75", "row: sc in each\n  row: sc in each with [ch 2 as hole, skip 2] 5 times evenly after 4 = 65 sts, 5 holes", "65+5"},
	{"f 20 (22)", "row: sc in each\n  row: sc in each with [ch 2, skip 2] 3 times evenly", "14+3 (16+3)"},
	{"f 20", "row: sc in each\n  row: sc in each with [ch 2, skip 2] 3 (0) times evenly after 2", "14+3 (20)"},
	{"f 20", "row: sc in each\n  row: sc to last 4 with [5 sc in next] 3 times evenly before last 2, sc in each", "32"},
	{"f 20", "row: sc in each\n  row: sc in each with [dec] 4 times evenly after 2", "16"},
	{"f 20", "row: sc in each\n  row: sc in each with [(sc, ch 1, sc) in next] 4 times evenly", "24+4"},
	{"f 20", "row: sc in each\n  row: sc in each with [ch 2, skip 2] 8 times evenly after 2", "OV425"},
	{"f 20", "row: sc in each\n  row: sc in each with [ch 2, skip to last 1] 2 times evenly after 2", "OV471"},
	{"f 20", "row: sc in each\n  row: sc in each with [skip 0] 2 times evenly after 2", "OV471"},
	{"f 20", "row: sc in each\n  row: 2 sc in each with [ch 2, skip 2] 2 times evenly", "OV470"},
	{"f 20", "row: sc in each\n  row: dec with [ch 2, skip 2] 2 times evenly, sc in each", "OV470"},
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

// wholes are sources of several parts and what the last row of the last part comes to.
var wholes = []struct{ name, text, want string }{
	{"words of the United Kingdom", `pattern p
  title en "P" es "P"
  terms uk
end
sizes "S", "M"
end
part piece
  title en "Piece" es "Pieza"
  in rows
  chain 10
  row: dc in each = 10 dc
  row: tr in each = 10 tr
  row, begin with ch 2: tr2tog, tr in each = 9 tr
end
`, "9"},
	{"sc is no word of the United Kingdom", `pattern p
  title en "P" es "P"
  terms uk
end
sizes "S", "M"
end
part piece
  title en "Piece" es "Pieza"
  in rows
  chain 10
  row: sc in each = 10
end
`, "OV203"},
	{"a part like another, from other places", two(`
part other like piece
  title en "Other" es "Otra"
  chain 8
end
`), "8"},
	{"a part like another with one row of its own", two(`
part other like piece
  title en "Other" es "Otra"
  row rim: inc around = 20
end
`), "20"},
	{"on from the last row", two(`
part other
  title en "Other" es "Otra"
  in rows
  from piece.edge
  row: sc in each = 10
  row: sc in each
end
`), "10"},
	{"on from the other side of the chain", two(`
part other
  title en "Other" es "Otra"
  in rows
  from piece.foundation
  row: sc in each = 10
end
`), "10"},
	{"along two runs and a chain between", two(`
part other
  title en "Other" es "Otra"
  in joined rounds
  from piece.edge, chain 5, piece.foundation
  round: sc in each = 25
end
`), "25"},
	{"from a part that comes later", `sizes "S", "M"
end
part one
  title en "One" es "Una"
  in rows
  from two.edge
  row: sc in each = 10
end
part two
  title en "Two" es "Dos"
  in rows
  chain 10
  row: sc in each = 10
end
`, "OV202"},
	{"a row worked again by its name", `sizes "S", "M"
end
part piece
  title en "Piece" es "Pieza"
  base sc
  in joined rounds
  chain 6, join
  round grow: inc, sc in each
  round: sc in each = 7
  work grow
  work grow
end
`, "9"},
	{"rows for a length", gauged(`
  in rows
  chain 16
  rows for 10 cm, even: sc in each = 16
  rows to 20 cm: sc in each
  have 16 sts
`), "16"},
	{"a fault silences what rests on it", two(`
part broken
  title en "Broken" es "Rota"
  in rows
  chain 10
  row: sc in next 9
  row: sc in next 99
end
part other
  title en "Other" es "Otra"
  in rows
  from broken.edge
  row: sc in next 77
end
`), "OV402"},
	{"a cause in one size leaves the others checked", `sizes "S", "M"
end
part piece
  title en "Piece" es "Pieza"
  in rows
  chain 10 (12)
  row: [sc in next 5] across
  row: sc in next 11
end
`, "OV405 OV401"},
	{"a second name for one thing", "let a = 1\nlet a = 2\n" + two(""), "OV201"},
	{"a chart from the right and from the left", `sizes "S", "M"
end
gauge 10 cm
  sc 16 sts, 18 rows
end
yarn sand
  name en "sand" es "arena"
  ball 50 g, 120 m
  swatch 16 sts by 18 rows of sc, 5 g
end
yarn kelp like sand
  name en "kelp" es "alga"
end
chart steps
  legend "." sand, "x" kelp
  | x . . .
  | . x x x
end
part piece
  title en "Piece" es "Pieza"
  yarn sand
  base sc
  in rows
  chain 8
  row: from chart steps row 1 across = 8
  row: from chart steps row 2 2 times = 8
end
`, "8"},
}

// two is a part of ten stitches, and what follows it.
func two(rest string) string {
	return `sizes "S", "M"
end
part piece
  title en "Piece" es "Pieza"
  base sc
  in rows
  chain 10
  row rim: sc in each
  have multiple of 1
end
` + rest
}

// gauged is a part where the gauge is known.
func gauged(lines string) string {
	return `sizes "S", "M"
end
gauge 10 cm
  sc 16 sts, 18 rows
end
part piece
  title en "Piece" es "Pieza"
` + lines + "end\n"
}

// patterned is a part in a stitch pattern, where the gauge is known: sc rows of 5 mm, dc rows of 10 mm.
func patterned(start, lines string) string {
	return `sizes "S", "M"
end
gauge 10 cm
  sc 20 sts, 20 rows
  dc 20 sts, 10 rows
  waves 20 sts, 8 rows
end
stitch pattern mesh
  multiple of 2 plus 1
  set up: sc in each
  row 1: dc in each
  row 2: dc in next, [ch 1, skip 1, dc in next] across
  row 3: sc in each st and space
  may end after 1, 3
end
stitch pattern waves
  multiple of 6 plus 1
  row 1: sc in each
  row 2: 2 sc in next, sc in each
end
part piece
  title en "Piece" es "Pieza"
  in rows
  ` + start + "\n  " + lines + "\nend\n"
}

// patternCases are uses of stitch patterns: how many rows there are in each size, and what the last comes to, or the code.
var patternCases = []struct{ start, lines, rows, want string }{
	{"chain 21", "4 rows of mesh", "4", "21"},
	{"chain 21", "5 rows of mesh", "5", "21"},
	{"chain 21", "3 rows of mesh", "", "OV473"},
	{"chain 20 (21)", "4 rows of mesh", "", "OV472"},
	{"chain 21", "2 (4) rows of mesh\n  4 rows of mesh, from row 1", "6 (8)", "21"},
	{"chain 21", "row of mesh\n  row of mesh\n  row: sc in each\n  row of mesh", "", "OV473"},
	{"chain 21", "5 rows of mesh\n  row: sc in each\n  5 rows of mesh", "11", "21"},
	// A set-up row is 0.5 cm, the rows of a repeat 1, 1 and 0.5 cm; it may end after 1.5, 3, 4, 5.5, 6.5 cm.
	{"chain 21", "rows of mesh for 3.4 cm", "4", "21"},
	{"chain 21", "rows of mesh for 3.5 cm", "5", "21"},
	{"chain 21", "rows of mesh for 3.5 cm, ties down", "4", "21"},
	{"chain 21", "rows of mesh for 3.1 cm, up", "5", "21"},
	{"chain 21", "rows of mesh for 3.9 cm, down", "4", "21"},
	{"chain 21", "rows of mesh for 4 cm, even", "4", "21"},
	{"chain 21", "rows of mesh for 4 cm, ending ws", "4", "21"},
	{"chain 21", "row: sc in each\n  rows of mesh to 4.5 cm", "6", "21"},
	// By the gauge of the pattern a row is 1.25 cm. The count changes from row to row, and is asked for at the start alone.
	{"chain 19", "rows of waves for 5 cm", "4", "21"},
	{"chain stitches(10 cm, waves)", "2 rows of waves\n  2 rows of waves", "4", "21"},
	{"chain 6 * repeats(10 cm, waves) + 1", "row of waves", "1", "19"},
	{"chain 19", "repeat rows for 5 cm\n  2 rows of waves\n  end", "4", "21"},
	{"chain 19", "4 rows of wave", "", "OV202"},
	{"chain 19", "repeat rows for 5 cm\n  2 rows of wave\n  end", "", "OV202"},
	{"chain 19", "2 rows of waves, from row 3", "", "OV476"},
}

func TestStitchPatterns(t *testing.T) {
	for _, c := range patternCases {
		text := patterned(c.start, c.lines)
		if got := outcome(text); got != c.want {
			t.Errorf("%s: %s\n\tgives %s, want %s", c.start, c.lines, got, c.want)
		}
		if c.rows == "" {
			continue
		}
		f, _ := lang.Parse(source.NewFile("pattern", text))
		if p, _ := compile.Compile(f); p != nil {
			rows := fmt.Sprint(len(p.Parts[0].Worked[0]))
			if m := fmt.Sprint(len(p.Parts[0].Worked[1])); m != rows {
				rows += " (" + m + ")"
			}
			if rows != c.rows {
				t.Errorf("%s: %s\n\tworks %s rows, want %s", c.start, c.lines, rows, c.rows)
			}
		}
	}
}

// Rows of a stitch pattern are the rows that they stand for, written out.
func TestStitchPatternLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rows := []string{"sc in each", "2 sc in next, sc in each", "sc2tog, sc in each"}
		setup := rapid.IntRange(0, 2).Draw(t, "set-up rows")
		n := rapid.IntRange(1, 4).Draw(t, "rows")
		text := "stitch pattern it\n" + strings.Repeat("  set up: sc in each\n", setup)
		var once, all []string
		for range setup {
			once = append(once, "sc in each")
		}
		for i := range n {
			row := rapid.SampledFrom(rows).Draw(t, "row")
			all = append(all, row)
			text += fmt.Sprintf("  row %d: %s\n", i+1, row)
		}
		text += "end\n"
		uses, written := "", ""
		for range rapid.IntRange(1, 3).Draw(t, "uses") {
			k := rapid.IntRange(0, 9).Draw(t, "rows of it")
			uses += fmt.Sprintf("  %d rows of it\n", k)
			for range k {
				if len(once) > 0 {
					written, once = written+"  row: "+once[0]+"\n", once[1:]
					continue
				}
				written += "  row: " + all[0] + "\n"
				all = append(all[1:], all[0])
			}
		}
		by := clean(t, text+piece("rows", "chain 61", "  row: sc in each\n"+uses))
		out := clean(t, piece("rows", "chain 61", "  row: sc in each\n"+written))
		if got, want := stitchesOf(by, 0, 0), stitchesOf(out, 0, 0); !slices.Equal(got, want) {
			t.Fatalf("%s\n%s\nmakes %v, written out %v", text, uses, got, want)
		}
	})
}

// The yarn of a row follows its stripes, size by size, whatever is worked in it; what is printed of a run adds up to it.
func TestStripesLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sand, kelp := drawPair(t, "sand", 0, 3), drawPair(t, "kelp", 1, 3)
		lines, rows := "", [2]int{}
		for range rapid.IntRange(1, 4).Draw(t, "runs") {
			k := drawPair(t, "rows", 0, 9)
			lines += fmt.Sprintf("  %d (%d) rows: sc in each\n", k[0], k[1])
			if rapid.Bool().Draw(t, "repeat") {
				lines += "  repeat 3 times\n    row: sc in each\n    2 rows: dc in each\n  end\n"
				rows[0], rows[1] = rows[0]+9, rows[1]+9
			}
			rows[0], rows[1] = rows[0]+k[0], rows[1]+k[1]
		}
		text := "sizes \"S\", \"M\"\nend\nyarn sand\n  name en \"sand\" es \"arena\"\nend\nyarn kelp\n  name en \"kelp\" es \"alga\"\nend\n" +
			"part piece\n  title en \"Piece\" es \"Pieza\"\n  in rows\n" +
			fmt.Sprintf("  stripes sand %d (%d), kelp %d (%d)\n  chain 8\n", sand[0], sand[1], kelp[0], kelp[1]) + lines + "end\n"
		f, list := lang.Parse(source.NewFile("stripes", text))
		p, more := compile.Compile(f)
		if p == nil || append(list, more...).HasErrors() {
			t.Fatal(text, list, more)
		}
		for z, facts := range p.Parts[0].Worked {
			if len(facts) != rows[z] {
				t.Fatalf("%s\n%d rows, want %d", text, len(facts), rows[z])
			}
			for i, r := range facts {
				want := 0
				if i%(sand[z]+kelp[z]) >= sand[z] {
					want = 1
				}
				if r.Yarn != want {
					t.Fatalf("%s\nsize %d, row %d is in yarn %d, want %d", text, z, i+1, r.Yarn, want)
				}
			}
		}
		for _, s := range p.Parts[0].Steps {
			row, ok := s.(*plan.Row)
			if !ok || row.Stripes == nil {
				continue
			}
			for z := range row.First {
				if row.First[z] == plan.Absent {
					continue
				}
				sum := row.Stripes.Times[z] * (sand[z] + kelp[z])
				for _, st := range append(slices.Clone(row.Stripes.Lead), row.Stripes.Tail...) {
					sum += max(st.Rows[z], 0)
				}
				if sum != row.Last[z]-row.First[z]+1 {
					t.Fatalf("%s\nsize %d: the stripes of rows %d to %d come to %d", text, z, row.First[z], row.Last[z], sum)
				}
			}
		}
	})
}

func drawPair(t *rapid.T, what string, least, most int) [2]int {
	return [2]int{rapid.IntRange(least, most).Draw(t, what), rapid.IntRange(least, most).Draw(t, what)}
}

func TestWholes(t *testing.T) {
	for _, c := range wholes {
		if got := outcome(c.text); got != c.want {
			t.Errorf("%s: gives %s, want %s", c.name, got, c.want)
		}
	}
}
