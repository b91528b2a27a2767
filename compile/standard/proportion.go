package standard

import (
	"math/big"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// proportion is how tall a stitch is for its width.
type proportion struct {
	id     string // its abbreviation in United States terms
	lo, hi float64
	// The printed gauges the range was worked out from; "" for common practice, from memory.
	source string
}

// proportions of plain stitches, by arithmetic on printed gauges: single crochet 16 sts to 20 rows, 14 to 16 and 13 to 14;
// half double crochet 13 to 9; double crochet 13 to 8 and 18 to 10 (patterns of a large yarn publisher, Yarnspirations;
// crochetkitten.com, measuring gauge; niftynnifer, gauge; doradoes, golden loop).
var proportions = []proportion{
	{"sc", 0.80, 0.93, "printed gauges"},
	{"hdc", 1.44, 1.44, "printed gauges"},
	{"dc", 1.6, 1.8, "printed gauges"},
	{"tr", 2.4, 2.6, ""},
}

// CheckProportion notes a gauge by which a stitch is less than half or more than twice as tall for its width as is usual
// (OV332): stitches and rows were exchanged, as a rule, or counted over different lengths. id is its abbreviation in United
// States terms, word the stitch as the source names it. rowsPer may be nil.
func CheckProportion(id, word string, stsPer, rowsPer *big.Rat, at source.Span) diag.List {
	if stsPer == nil || rowsPer == nil || rowsPer.Sign() <= 0 {
		return nil
	}
	ratio, _ := new(big.Rat).Quo(stsPer, rowsPer).Float64()
	for _, p := range proportions {
		if p.id != id || ratio >= p.lo/2 && ratio <= 2*p.hi {
			continue
		}
		help := "memory"
		if p.source != "" {
			help = "printed"
		}
		usual := short(p.lo)
		if p.hi != p.lo {
			usual = span(usual, short(p.hi))
		}
		return diag.List{{Code: "OV332", Span: at, Help: help,
			Args: diag.Args{"stitch": word, "found": figure(short(ratio)), "usual": figure(usual)}}}
	}
	return nil
}
