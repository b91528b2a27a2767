package stitch_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/stitch"
)

// TestTurningChains compares the chains at the beginning of a row with those in print, by their US and UK names:
// dummies.com (turning chain), careyscraftycorner.tripod.com and woollykits.com for none at slip stitches, 1 for single
// crochet, 2, 3, 4, 5 for the taller ones (S79, S80, S82); crochetforall.com for the triple treble (S50). That they count as
// the first stitch of all but single crochet is from dummies.com and S81; for half double crochet print is divided, so that
// it is not compared.
func TestTurningChains(t *testing.T) {
	for _, want := range []struct {
		us, uk          string
		chains          int
		counts, divided bool
	}{
		{"slst", "ss", 0, false, false},
		{"sc", "dc", 1, false, false},
		{"hdc", "htr", 2, false, true},
		{"dc", "tr", 3, true, false},
		{"tr", "dtr", 4, true, false},
		{"dtr", "trtr", 5, true, false},
		{"trtr", "qtr", 6, true, true}, // of this one only the chains were read
	} {
		k, ok := stitch.Named(want.us, false)
		require.True(t, ok, want.us)
		require.Equal(t, want.chains, k.Begin, want.us)
		require.Equal(t, want.uk, k.Word(true), want.us)
		if !want.divided {
			require.Equal(t, want.counts, k.Counts, want.us)
		}
	}
}

// TestHeights compares the nominal heights with those measured by one maker on worsted yarn and a 5 mm hook (S84,
// windchilde.com/bluedepth, Crochet Yarn Estimating): rows of 0.34, 0.49 and 0.65 in for sc, hdc and dc, and with the ladder
// in print, one chain more for each taller stitch (S79 to S82): each taller stitch is taller by between a third and a whole
// single crochet.
func TestHeights(t *testing.T) {
	of := func(word string) stitch.Kind {
		k, ok := stitch.Named(word, false)
		require.True(t, ok, word)
		return k
	}
	sc := of("sc").Height
	require.InDelta(t, 0.49/0.34, of("hdc").Height/sc, 0.03)
	require.InDelta(t, 0.65/0.34, of("dc").Height/sc, 0.03)
	before := sc
	for _, word := range []string{"hdc", "dc", "tr", "dtr", "trtr"} {
		h := of(word).Height
		require.Greater(t, h, before+sc/3, word)
		require.Less(t, h, before+sc, word)
		before = h
	}
}

// TestYarn compares the yarn of stitches with the same measurements: 10.6, 15.7 and 20.4 in of yarn in an inch of one row of
// sc, hdc and dc, about 4.9 in an inch of chains; and with what follows by area, which hardly differs between them: 31.42,
// 32.08 and 31.6 in to the square inch.
func TestYarn(t *testing.T) {
	sc, _ := stitch.Named("sc", false)
	area := sc.Yarn / sc.Height
	for _, want := range []struct {
		us  string
		row float64
	}{{"ch", 4.9}, {"sc", 10.6}, {"hdc", 15.7}, {"dc", 20.4}} {
		k, ok := stitch.Named(want.us, false)
		require.True(t, ok, want.us)
		require.InEpsilon(t, want.row/10.6, k.Yarn/sc.Yarn, 0.02, want.us)
		if k.Height > 0 {
			require.InEpsilon(t, area, k.Yarn/k.Height, 0.03, want.us)
		}
	}
}
