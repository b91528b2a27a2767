package figure_test

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/figure"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

func rat(s string) *big.Rat {
	x, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("test: no number: " + s)
	}
	return x
}

// The sample of the worked construction of yarn amounts: 380 g for 6840 cm², which is 18 cm² a gram. As a swatch of 16 by 18
// stitches at 16 and 18 to 10 cm (100 cm²) it weighs 100/18 g.
var sample = figure.Swatch{Sts: rat("16"), Rows: rat("18"), StsPerMM: rat("16/100"), RowsPerMM: rat("18/100"), Grams: rat("100/18")}

// ball is the ball of that construction: 50 g, 120 m.
var ball = figure.Ball{Grams: rat("50"), MM: rat("120000")}

// TestYarn compares with the worked construction of yarn amounts, whose figures were worked out apart.
func TestYarn(t *testing.T) {
	var area []figure.Area
	for _, cm2 := range []figure.Area{6120, 6840, 7560, 8370} {
		area = append(area, cm2*figure.SquareCentimetre)
	}
	got, missing := figure.Yarn(area, nil, sample, ball, figure.Allowance)
	if missing != figure.Nothing {
		t.Fatalf("missing %s", missing)
	}
	want := []plan.YarnAmount{
		{Milligrams: 374_000, Length: 900_000 * plan.Millimetre, Balls: 8},
		{Milligrams: 418_000, Length: 1_005_000 * plan.Millimetre, Balls: 9}, // 8 if it were rounded before the allowance
		{Milligrams: 462_000, Length: 1_110_000 * plan.Millimetre, Balls: 10},
		{Milligrams: 511_500, Length: 1_230_000 * plan.Millimetre, Balls: 11},
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("size %d: got %+v, want %+v", i, got[i], want[i])
		}
	}

	// Colour B: 25/56 of a tenth of the weight, in grams to one decimal.
	var share []figure.Area
	for _, a := range area {
		share = append(share, a/10*25/56)
	}
	got, _ = figure.Yarn(share, nil, sample, figure.Ball{}, figure.Allowance)
	for i, want := range []int64{167, 187, 206, 228} {
		if tenths := (got[i].Milligrams + 50) / 100; tenths != want {
			t.Errorf("colour B of size %d: %d tenths of a gram, want %d", i, tenths, want)
		}
		if got[i].Balls != 0 || got[i].Length != plan.NoLength {
			t.Errorf("without a ball: %+v", got[i])
		}
	}
}

// TestPompom compares with the same construction: 120 wraps on a former of 7 cm with a tie of 40 cm take 17.2 m, about 7.2 g.
func TestPompom(t *testing.T) {
	mm := figure.PompomYarn(120, 7*plan.Centimetre)
	if mm.Cmp(rat("17200")) != 0 {
		t.Errorf("a pompom takes %s mm", mm.RatString())
	}
	got, missing := figure.Yarn([]figure.Area{0}, []*big.Rat{mm}, figure.Swatch{}, ball, new(big.Rat))
	if missing != figure.Nothing || got[0].Milligrams != 7167 || got[0].Balls != 1 || got[0].Length != 20_000*plan.Millimetre {
		t.Errorf("a pompom alone: %+v, %s", got, missing)
	}
}

func TestYarnMissing(t *testing.T) {
	one := []figure.Area{figure.SquareCentimetre}
	for _, c := range []struct {
		name  string
		area  []figure.Area
		extra []*big.Rat
		s     figure.Swatch
		b     figure.Ball
		want  figure.Missing
	}{
		{"no swatch", one, nil, figure.Swatch{}, ball, figure.NoSwatch},
		{"no gauge of rows", one, nil, figure.Swatch{Sts: rat("16"), Rows: rat("18"), StsPerMM: rat("1"), Grams: rat("1")}, ball, figure.NoGauge},
		{"a swatch without weight", one, nil, figure.Swatch{Sts: rat("16"), Rows: rat("18"), StsPerMM: rat("1"), RowsPerMM: rat("1"), Grams: rat("0")}, ball, figure.NoSwatch},
		{"a cord and no ball", one, []*big.Rat{rat("100")}, sample, figure.Ball{}, figure.NoBall},
		{"a cord and a ball without length", one, []*big.Rat{rat("100")}, sample, figure.Ball{Grams: rat("50")}, figure.NoBall},
		{"no fabric at all", []figure.Area{figure.NoArea, 0}, nil, figure.Swatch{}, figure.Ball{}, figure.Nothing},
		{"no ball and nothing besides", one, []*big.Rat{nil}, sample, figure.Ball{}, figure.Nothing},
	} {
		got, missing := figure.Yarn(c.area, c.extra, c.s, c.b, figure.Allowance)
		if missing != c.want || (missing != figure.Nothing) != (got == nil) {
			t.Errorf("%s: got %v, missing %q", c.name, got, missing)
		}
	}
}

// TestCord compares with the measurement the factor rests on: 4.8 to 5.1 inches of yarn in an inch of chain
// (windchilde.com/bluedepth, Crochet Yarn Estimating), here twice over for the way back.
func TestCord(t *testing.T) {
	per := new(big.Rat).Quo(figure.CordYarn(plan.Inch), rat("25.4"))
	if per.Cmp(rat("9.6")) < 0 || per.Cmp(rat("10.2")) > 0 {
		t.Errorf("an inch of cord takes %s inches of yarn", per.RatString())
	}
	if figure.CordYarn(plan.NoLength) != nil {
		t.Error("a cord of unknown length has yarn")
	}
}

// TestMoreYarn checks that more fabric never takes less yarn, and that the balls always hold the grams and metres said.
func TestMoreYarn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := figure.Area(rapid.Int64Range(0, 1e14).Draw(t, "area"))
		b := a + figure.Area(rapid.Int64Range(0, 1e13).Draw(t, "more"))
		cord := big.NewRat(rapid.Int64Range(0, 1e5).Draw(t, "cord"), 1)
		y, missing := figure.Yarn([]figure.Area{a, b}, []*big.Rat{cord, cord}, sample, ball, figure.Allowance)
		if missing != figure.Nothing {
			t.Fatalf("missing %s", missing)
		}
		if y[1].Milligrams < y[0].Milligrams || y[1].Length < y[0].Length || y[1].Balls < y[0].Balls {
			t.Fatalf("more fabric takes less: %+v", y)
		}
		for _, s := range y {
			if int64(s.Balls)*50_000 < s.Milligrams-1 || s.Length%(5000*plan.Millimetre) != 0 {
				t.Fatalf("%+v", s)
			}
		}
	})
}

// TestReport checks that whatever is missing is said, each by a code of its own, and a yarn that is not used.
func TestReport(t *testing.T) {
	codes := map[diag.Code]bool{}
	for _, m := range []figure.Missing{figure.NoSwatch, figure.NoGauge, figure.NoBall} {
		l := m.Report("kelp", source.Span{Start: 3, End: 7})
		if len(l) != 1 || codes[l[0].Code] || l.HasErrors() {
			t.Fatalf("%s: %v", m, l)
		}
		codes[l[0].Code] = true
		if gaps := diag.Incomplete(l[0]); len(gaps) > 0 {
			t.Errorf("%s: %v", m, gaps)
		}
	}
	if l := figure.Nothing.Report("kelp", source.Span{}); l != nil {
		t.Errorf("nothing missing: %v", l)
	}
	if l := figure.CheckUsed("kelp", true, source.Span{}); l != nil {
		t.Errorf("a yarn in use: %v", l)
	}
	l := figure.CheckUsed("kelp", false, source.Span{})
	if len(l) != 1 || l[0].Code != "OV705" || len(diag.Incomplete(l[0])) > 0 {
		t.Errorf("a yarn not used: %v", l)
	}
}

func TestAreaOf(t *testing.T) {
	for mm2, want := range map[float64]figure.Area{100: figure.SquareCentimetre, 0: 0, 0.0000016: 2, -1: figure.NoArea,
		math.NaN(): figure.NoArea, math.Inf(1): 1e18} {
		if got := figure.AreaOf(mm2); got != want {
			t.Errorf("%g mm²: got %d, want %d", mm2, got, want)
		}
	}
}
