package standard_test

import (
	"math/big"
	"testing"

	"ovillo/compile/standard"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// TestProportion finds the printed gauges of testdata/circles.csv usual. Those with stitches and rows exchanged, and those with rows
// counted over half the length, are noted where they lie beyond half or twice of what is usual.
func TestProportion(t *testing.T) {
	check := func(stitch string, sts, rows *big.Rat) diag.List {
		return standard.CheckProportion(stitch, stitch, sts, rows, source.Span{})
	}
	for _, r := range records(t, "circles.csv") {
		sts, _ := new(big.Rat).SetString(r[1])
		rows, _ := new(big.Rat).SetString(r[2])
		if found := check(r[0], sts, rows); found != nil {
			t.Errorf("a printed gauge, %s %s by %s: %v", r[0], r[1], r[2], found)
		}
	}
	rat := big.NewRat
	for _, c := range []struct {
		stitch    string
		sts, rows *big.Rat
		help      string // "": usual
	}{
		{"dc", rat(10, 1), rat(18, 1), "printed"}, // exchanged
		{"hdc", rat(9, 1), rat(13, 1), "printed"}, // exchanged
		{"dc", rat(18, 1), rat(4, 1), "printed"},  // rows over 4 cm
		{"sc", rat(20, 1), rat(10, 1), "printed"}, // rows over half the length
		{"tr", rat(10, 1), rat(10, 1), "memory"},  // no printed gauge was found of it
		{"sc", rat(20, 1), rat(16, 1), ""},        // exchanged, but sc is nearly square
		{"dc", rat(8, 1), rat(10, 1), ""},         // half of the least
		{"dc", rat(36, 1), rat(10, 1), ""},        // twice the most
		{"dtr", rat(1, 1), rat(10, 1), ""},        // nothing is known of it
		{"dc", rat(18, 1), nil, ""},               // no rows
		{"dc", nil, rat(18, 1), ""},               // nothing
		{"dc", rat(18, 1), new(big.Rat), ""},      // no rows, written as none
	} {
		found := check(c.stitch, c.sts, c.rows)
		if (len(found) > 0) != (c.help != "") || len(found) > 0 && (found[0].Code != "OV332" || found[0].Help != c.help) {
			t.Errorf("%s %v by %v: %v, want %q", c.stitch, c.sts, c.rows, found, c.help)
		}
	}
}

// TestPrintedStarts holds the starts in print against the printed gauges of testdata/circles.csv: the usual start of each stitch lies
// flat at some of them, by geometry. Starts: sc 6, hdc 8, dc 12 (mkcarroll.com 2009/5/14); sc 6, hdc 8, dc 10 to 12
// (crochetrebellion.com/circle); two more pages say hdc 8 to 10 and hdc 10. A stitch that is taller for its width takes more.
func TestPrintedStarts(t *testing.T) {
	flat := map[string][]float64{}
	for _, r := range records(t, "circles.csv") {
		sts, _ := new(big.Rat).SetString(r[1])
		rows, _ := new(big.Rat).SetString(r[2])
		flat[r[0]] = append(flat[r[0]], standard.FlatIncrease(sts, rows))
	}
	for stitch, starts := range map[string][]float64{"sc": {6}, "hdc": {8, 10}, "dc": {10, 12}} {
		for _, n := range starts {
			lies := false
			for _, f := range flat[stitch] {
				lies = lies || standard.Lies(n, f) == standard.Flat
			}
			if !lies {
				t.Errorf("%g in %s lies flat at none of %v", n, stitch, flat[stitch])
			}
		}
	}
	for _, pair := range [][2]string{{"sc", "hdc"}, {"hdc", "dc"}} {
		for _, low := range flat[pair[0]] {
			for _, high := range flat[pair[1]] {
				if low >= high {
					t.Errorf("%s takes %g a round and %s %g", pair[0], low, pair[1], high)
				}
			}
		}
	}
}
