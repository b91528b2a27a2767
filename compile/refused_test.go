package compile_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/diag"
)

// refusedCase is a worked construction with a slip in it: some text of the source is put in place of another.
type refusedCase struct {
	name, source string
	slips        []string // from, to, from, to …
	code         diag.Code
	need, have   string // the numbers of the message, where the case gives them
	sizes        string
}

var refusedCases = []refusedCase{
	{name: "a count by hand that is no multiple", source: "flat-panel",
		slips: []string{"let cast = stitches(wide, sc, multiple of 6 plus 1)", `let cast = stitches(wide, sc, multiple of 6 plus 1) but "S" 74`}, code: "OV319", sizes: "S"},
	{name: "one stitch too many below the shells", source: "shell-panel",
		slips: []string{"chain width\n", "chain width + 1\n"}, code: "OV472"},
	{name: "as many repeats as in the row with whole shells", source: "shell-panel",
		slips: []string{"shells - 1 times", "shells times"}, code: "OV401", need: "2", have: "0"},
	{name: "a beginning chain typed, and a stitch in each behind it", source: "dc-panel",
		slips: []string{"chain 40\n  row: dc in each                              = 40\n  row: dc in each ",
			"chain 40\n  row: dc in each                              = 40\n  row: ch 3, dc in next 40 "}, code: "OV437"},
	{name: "the beginning chain on top of the stitches of the row", source: "dc-panel",
		slips: []string{"chain 40\n  row: dc in each                              = 40\n  row: dc in each ",
			"chain 40\n  row: dc in each                              = 40\n  row: dc, dc in next 40 "}, code: "OV401", need: "40", have: "39"},
	{name: "the first stitch is not skipped", source: "dc-panel",
		slips: []string{"chain 40\n  row: dc in each                              = 40\n  row: dc in each ",
			"chain 40\n  row: dc in each                              = 40\n  row: dc, dc in same, dc in each "}, code: "OV601", need: "40", have: "41"},
	{name: "the repeat of the next round", source: "crown",
		slips: []string{"[hdc in next 3, 2 hdc in next] around", "[hdc in next 4, 2 hdc in next] 10 times"}, code: "OV401", need: "4", have: "0"},
	{name: "the same, closing with the wrong number of repeats", source: "crown",
		slips: []string{"[hdc in next 3, 2 hdc in next] around", "[hdc in next 4, 2 hdc in next] around"}, code: "OV601", need: "50", have: "48"},
	{name: "staggered wrongly", source: "ball",
		slips: []string{"[sc in next, inc, sc in next] around", "[sc in next 2, inc, sc in next] around"}, code: "OV405", need: "4", have: "18"},
	{name: "staggered wrongly, times stated", source: "ball",
		slips: []string{"[sc in next, inc, sc in next] around", "[sc in next 2, inc, sc in next] 6 times"}, code: "OV401", need: "1", have: "0"},
	{name: "a marker left in the side stitch", source: "raglan",
		slips: []string{"[hdc to marker, 3 hdc in marker, move marker to the middle one] 4 times",
			"hdc to marker, 3 hdc in marker, move marker to the first one, [hdc to marker, 3 hdc in marker, move marker to the middle one] 3 times"}, code: "OV601"},
	{name: "corner stitches given to nobody", source: "raglan",
		slips: []string{"hdc to r1, hdc in r1, ch under", "hdc to r1, ch under"}, code: "OV416", need: "38 in S, 42 in M, 48 in L, 52 in XL", have: "39 in S, 43 in M, 49 in L, 53 in XL"},
	{name: "the repeats of another size", source: "circular-yoke",
		slips: []string{"  shape wedges_out: 20 rounds", "  3 rounds: sc in each\n  round: [sc in next 3, 2 sc in next] 20 (20, 24) times\n  shape wedges_out: 16 rounds",
			"every 4 rounds 5 times", "every 4 rounds 4 times"}, code: "OV402", have: "8 in M", sizes: "M"},
	{name: "an odd sleeve against a rib", source: "circular-yoke",
		slips: []string{"part left_sleeve like", "part cuff\n  title en \"Cuff\" es \"Puño\"\n  from right_sleeve.edge\n  round: sc in each\n  round, begin none: [fpsc, bpsc] around\nend\n\npart left_sleeve like"},
		code:  "OV405", need: "2", have: "45 in M", sizes: "M"},
	{name: "one length of group for all", source: "spread",
		slips: []string{"10 times, [sc in next 4, 2 sc in next] 4 times", "14 times"}, code: "OV401", need: "5", have: "2"},
	{name: "a second chain between the legs", source: "trousers",
		slips: []string{"from below body.fork, body.held", "from chain crotch, body.held"}, code: "OV512"},
	{name: "two in each of forty row ends", source: "bands",
		slips: []string{"from right edge of right_front at 4 per 3 rows\n  row: sc in each = 80 (81, 88)",
			"from right edge of right_front\n  row: [2 sc in next] 40 times"}, code: "OV402", have: "20 in S, 21 in M, 26 in L"},
	{name: "too few in the last chain", source: "oval",
		slips: []string{"2 sc in first", "sc in first"}, code: "OV601", need: "26", have: "25"},
	{name: "straight parts too long", source: "oval",
		slips: []string{"sc in next, inc, sc in next 10, [sc in next, inc] 3 times, sc in next 10, [sc in next, inc] 2 times",
			"sc in next, inc, sc in next 11, [sc in next, inc] 3 times, sc in next 11, [sc in next, inc] 2 times"},
		code: "OV401", need: "1", have: "0"},
	{name: "fewer left than are left", source: "short-rows",
		slips: []string{"sc in next 18, leave 6", "sc in next 18, leave 5"}, code: "OV410", need: "5", have: "6"},
	{name: "the corner group in a side", source: "square",
		slips: []string{"(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side, 3 dc in next side, ch 1 as side] 4 times",
			"(3 dc, ch 2 as corner, 3 dc) in next side, ch 1 as side, 3 dc in next corner, ch 1 as side] 4 times"}, code: "OV408", have: "2"},
	{name: "a corner space at a join counted once", source: "motif-blanket",
		slips: []string{"= 242", "= 240"}, code: "OV601", need: "240", have: "242"},
	{name: "the corner spaces at joins left out", source: "motif-blanket",
		slips: []string{"[hdc in each st and space to outer_corner, 3 hdc in outer_corner] 4 times = 242", "[hdc in each, 3 hdc in outer_corner] 4 times"}, code: "OV403", have: "1"},
	{name: "a corner joined in place of more chains than it has", source: "motif-blanket",
		slips: []string{"place of 1 ch", "place of 3 ch"}, code: "OV486", need: "3", have: "2"},
	{name: "joined before the last round", source: "motif-blanket",
		slips: []string{"joined in round 4", "joined in round 3"}, code: "OV482", have: "4"},
	{name: "a row of twelve squares over thirteen", source: "filet",
		slips: []string{"2 | . . . . . . x . . . . . .", "2 | . . . . . . x . . . . ."}, code: "OV446", need: "13", have: "12"},
	{name: "a chart of twelve squares over thirteen", source: "filet",
		slips: []string{". . . .\n", ". . .\n", "x x x x x x x x x\n", "x x x x x x x x\n"}, code: "OV463", need: "12", have: "13"},
	{name: "one chain too many for whole squares", source: "filet",
		slips: []string{"chain 3 * 13 + 1", "chain 3 * 13 + 2", "row: dc in each = 40", "row: dc in each = 41"}, code: "OV462", need: "3", have: "41"},
	{name: "a mark that is not in the legend", source: "filet",
		slips: []string{"2 | . . . . . . x", "2 | . . . . . . o"}, code: "OV445"},
	{name: "valleys that skip one", source: "ripple",
		slips: []string{"skip 2,", "skip 1,"}, code: "OV405", need: "12", have: "143 in S, 169 in M, 195 in L"},
	{name: "a crossing that uses three of four columns", source: "cables",
		slips: []string{"fptr in next 2, fptr in each of under", "fptr in next, fptr in each of under"}, code: "OV402", have: "1"},
	{name: "a row of seven cells", source: "colours",
		slips: []string{"4 | . x x x x x x x", "4 | . x x x x x x"}, code: "OV446", need: "8", have: "7"},
	{name: "a round that the chart does not divide", source: "colours",
		slips: []string{"chain 8 * reps, join", "chain 8 * reps + 2, join"}, code: "OV460", need: "8", have: "98 in S, 114 in M, 130 in L"},
	{name: "the same in one size", source: "colours",
		slips: []string{"chain 8 * reps, join", `chain 8 * reps + 2 (0, 0), join`}, code: "OV460", need: "8", have: "98 in S", sizes: "S"},
	{name: "a chart numbered from the top", source: "colours",
		slips: []string{"1 | . . . . x . . .", "7 | . . . . x . . ."}, code: "OV464", need: "1", have: "7"},
	{name: "a row of the chart left out", source: "colours",
		slips: []string{"  3 | . . x x x x x .\n", ""}, code: "OV464", need: "3", have: "4"},
	{name: "a mark that is not in the legend", source: "colours",
		slips: []string{"3 | . . x x x", "3 | . . x o x"}, code: "OV445"},
	{name: "the stitches of a yarn counted wrongly", source: "colours",
		slips: []string{"= 12 (14, 16) sand", "= 12 (14, 18) sand"}, code: "OV601", need: "18 in L", have: "16 in L", sizes: "L"},
	{name: "a row of a chart in a part that names no base stitch", source: "colours",
		slips: []string{"  base  sc\n", "", "  rows from chart diamond, rows 1 to 4: sc by chart across = 12 (14, 16) sand, 84 (98, 112) kelp",
			"  row: from chart diamond row 1 across = 8 * reps"}, code: "OV432"},
	{name: "the stitches of the neck at the other edge", source: "mirrored-fronts",
		slips: []string{"es \"Delantero izquierdo\"\n", "es \"Delantero izquierdo\"\n  row base: sc in next 20\n",
			"row: sl st in next 8 as neck_base, sc", "row base: sl st in next 8 as neck_base, sc"}, code: "OV402", have: "8"},
	{name: "an odd difference by twos", source: "solved-taper",
		slips: []string{"44 (46, 48), on", "44 (47, 48), on"}, code: "OV453", sizes: "M"},
	{name: "a row with both shapings counted once", source: "two-shapings",
		slips: []string{"= 28", "= 29"}, code: "OV601", need: "29", have: "28"},
	{name: "a front chain that does not fit the crown", source: "earflaps",
		slips: []string{"let brow     = 26 (28)", "let brow     = 24 (28)"}, code: "OV602", have: "70 in S", sizes: "S"},
	{name: "eyelets on a count that is no multiple", source: "casing",
		slips: []string{"let waist = 120 (136, 152)", "let waist = 122 (136, 152)"}, code: "OV405", need: "4", have: "122 in S", sizes: "S"},
	{name: "a seam between edges that differ", source: "seams",
		slips: []string{"sew front.shoulder_1 to back.shoulder_1", "sew front.shoulder_1 to back.opening"}, code: "OV757"},
	{name: "an armhole three rows too long", source: "seams",
		slips: []string{"sew sleeve.edge to left edge of back rows 55 to", "sew sleeve.edge to left edge of back rows 52 (55, 55) to"},
		code:  "OV757", sizes: "S", need: "36.7 cm in S", have: "35.0 cm in S"},
	{name: "an odd number of row ends halved", source: "seams",
		slips: []string{"left edge of back rows 55 to 86 (90, 95) and", "left edge of back rows 55 to 85 (90, 94) and"},
		code:  "OV757", sizes: "S, L"},
	{name: "a row with a fixed middle, worked again", source: "readings",
		slips: []string{"row: sc in next, inc, sc in next 3, inc, sc in next      = 9", "4 rows: sc in next, inc, sc in next 3, inc, sc in next"}, code: "OV402", have: "2"},
}

// TestRefused checks that each slip is refused with one message, which names the numbers that the case names.
func TestRefused(t *testing.T) {
	for _, c := range refusedCases {
		t.Run(c.name, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join(casesAt, c.source+".ovillo"))
			require.NoError(t, err)
			// How wide a gap the count column needs is the formatter's affair.
			tight := func(s string) string { return regexp.MustCompile(` {2,}=`).ReplaceAllString(s, " =") }
			s := tight(string(text))
			for i := 0; i < len(c.slips); i += 2 {
				require.Contains(t, s, tight(c.slips[i]), "the source to be spoilt has changed")
				s = strings.ReplaceAll(s, tight(c.slips[i]), c.slips[i+1])
			}
			var errs diag.List
			for _, d := range found(s) {
				if diag.Lookup(d.Code).Severity == diag.Error {
					errs.Add(d)
				}
			}
			require.Len(t, errs, 1, "one cause, one message: %s", said(errs))
			d := errs[0]
			require.Equal(t, c.code, d.Code, said(errs))
			require.Equal(t, c.sizes, strings.Join(d.Sizes, ", "), said(errs))
			for hole, want := range map[string]string{"need": c.need, "have": c.have} {
				if want != "" {
					require.Equal(t, want, diag.Fill("{"+hole+"}", d.Args, "en"), said(errs))
				}
			}
		})
	}
}

// said is what a list says, for a test that did not expect it.
func said(l diag.List) string {
	var out []string
	for _, d := range l {
		out = append(out, fmt.Sprintf("%s %s", d.Code, diag.Fill(diag.Lookup(d.Code).En.Message, d.Args, "en")))
	}
	return strings.Join(out, "\n")
}

// TestWarned checks what the cases ask to be warned of: it is no error, and each warning says the numbers.
func TestWarned(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(casesAt, "flat-panel.ovillo"))
	require.NoError(t, err)
	var warned diag.List
	for _, d := range found(string(text)) {
		require.NotEqual(t, diag.Error, diag.Lookup(d.Code).Severity, "%s", d.Code)
		if diag.Lookup(d.Code).Severity == diag.Warning {
			warned.Add(d)
		}
	}
	require.Equal(t, "OV608 from L to XL it grows by 12 stitches, and by 6 between other sizes, though the lengths grow alike\n"+
		"OV608 from XL to 2XL it grows by 12 stitches, and by 6 between other sizes, though the lengths grow alike\n"+ // set by hand
		"OV607 the sizes XL and 2XL come out alike, at 64 rows, though 1 cm more is asked for", said(warned))
}
