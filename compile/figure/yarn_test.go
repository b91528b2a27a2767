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

// heavy is how heavy its fabric is.
func heavy(t interface{ Fatal(...any) }) figure.PerArea {
	per, missing := sample.PerArea()
	if missing != figure.Nothing {
		t.Fatal(missing)
	}
	return per
}

// fabrics are uses of fabric alone.
func fabrics(areas ...figure.Area) []figure.Use {
	var out []figure.Use
	for _, a := range areas {
		out = append(out, figure.Use{Fabric: a})
	}
	return out
}

// ball is the ball of that construction: 50 g, 120 m.
var ball = figure.Ball{Grams: rat("50"), MM: rat("120000")}

// TestYarn compares with the worked construction of yarn amounts, whose figures were worked out apart.
func TestYarn(t *testing.T) {
	var area []figure.Area
	for _, cm2 := range []figure.Area{6120, 6840, 7560, 8370} {
		area = append(area, cm2*figure.SquareCentimetre)
	}
	got, missing := figure.Yarn(fabrics(area...), heavy(t), ball, figure.Allowance)
	if missing != figure.Nothing {
		t.Fatalf("missing %s", missing)
	}
	of := func(fabric, allowance int64) plan.YarnSum { return plan.YarnSum{Fabric: fabric, Allowance: allowance} }
	want := []plan.YarnAmount{
		{Milligrams: 374_000, Length: 900_000 * plan.Millimetre, Yards: 985, Balls: 8, Of: of(340_000, 34_000)},
		{Milligrams: 418_000, Length: 1_005_000 * plan.Millimetre, Yards: 1100, Balls: 9, Of: of(380_000, 38_000)}, // 8 balls if it were rounded before the allowance
		{Milligrams: 462_000, Length: 1_110_000 * plan.Millimetre, Yards: 1215, Balls: 10, Of: of(420_000, 42_000)},
		{Milligrams: 511_500, Length: 1_230_000 * plan.Millimetre, Yards: 1345, Balls: 11, Of: of(465_000, 46_500)},
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
	got, _ = figure.Yarn(fabrics(share...), heavy(t), figure.Ball{}, figure.Allowance)
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
	got, missing := figure.Yarn([]figure.Use{{Pompoms: mm}}, nil, ball, new(big.Rat))
	if missing != figure.Nothing || got[0].Milligrams != 7167 || got[0].Balls != 1 || got[0].Length != 20_000*plan.Millimetre {
		t.Errorf("a pompom alone: %+v, %s", got, missing)
	}
}

func TestYarnMissing(t *testing.T) {
	one := fabrics(figure.SquareCentimetre)
	cord := []figure.Use{{Fabric: figure.SquareCentimetre, Cords: rat("100")}}
	for _, c := range []struct {
		name string
		uses []figure.Use
		per  figure.PerArea
		b    figure.Ball
		want figure.Missing
	}{
		{"no swatch", one, nil, ball, figure.NoSwatch},
		{"a cord and no ball", cord, heavy(t), figure.Ball{}, figure.NoBall},
		{"a cord and a ball without length", cord, heavy(t), figure.Ball{Grams: rat("50")}, figure.NoBall},
		{"no fabric at all", fabrics(figure.NoArea, 0), nil, figure.Ball{}, figure.Nothing},
		{"no ball and nothing besides", one, heavy(t), figure.Ball{}, figure.Nothing},
	} {
		got, missing := figure.Yarn(c.uses, c.per, c.b, figure.Allowance)
		if missing != c.want || (missing != figure.Nothing) != (got == nil) {
			t.Errorf("%s: got %v, missing %q", c.name, got, missing)
		}
	}
	for _, c := range []struct {
		name string
		s    figure.Swatch
		want figure.Missing
	}{
		{"no gauge of rows", figure.Swatch{Sts: rat("16"), Rows: rat("18"), StsPerMM: rat("1"), Grams: rat("1")}, figure.NoGauge},
		{"a swatch without weight", figure.Swatch{Sts: rat("16"), Rows: rat("18"), StsPerMM: rat("1"), RowsPerMM: rat("1"), Grams: rat("0")}, figure.NoSwatch},
		{"no swatch", figure.Swatch{}, figure.NoSwatch},
	} {
		if per, missing := c.s.PerArea(); missing != c.want || per != nil {
			t.Errorf("%s: got %v, missing %q", c.name, per, missing)
		}
	}
}

// A sample of 380 g and 6840 cm² gives the other sizes of the worked construction. What it uses by length is taken off first, and
// of two yarns that were weighed together each has its share of the fabric, as heavy as their swatches say.
func TestSampled(t *testing.T) {
	cm2 := func(n figure.Area) figure.Area { return n * figure.SquareCentimetre }
	per, missing := figure.Sampled(rat("380"), fabrics(cm2(6840)), []figure.Ball{ball}, nil)
	if missing != figure.Nothing || per[0].Cmp(heavy(t)) != 0 {
		t.Fatalf("%v, missing %q", per, missing)
	}
	pompom := figure.Use{Fabric: cm2(6840), Pompoms: figure.PompomYarn(120, 7*plan.Centimetre)}
	per, _ = figure.Sampled(rat("3871667/10000"), []figure.Use{pompom}, []figure.Ball{ball}, nil)
	if got, _ := new(big.Rat).Quo(per[0], heavy(t)).Float64(); math.Abs(got-1) > 1e-6 {
		t.Errorf("with a pompom of 7.1667 g the fabric is %g times as heavy", got)
	}
	two, balls := fabrics(cm2(300), cm2(100)), []figure.Ball{ball, ball}
	per, _ = figure.Sampled(rat("20"), two, balls, nil)
	if per[0].Cmp(per[1]) != 0 {
		t.Errorf("fabrics of two yarns: %v", per)
	}
	per, _ = figure.Sampled(rat("20"), two, balls, []figure.PerArea{rat("1"), rat("2")})
	if got, _ := figure.Yarn(two[1:], per[1], ball, new(big.Rat)); got[0].Milligrams != 8000 {
		t.Errorf("a third of the fabric, twice as heavy as the rest, has 8 g of 20: %+v", got)
	}
	if per, missing := figure.Sampled(rat("50"), fabrics(0), []figure.Ball{ball}, nil); per != nil || missing != figure.NoSwatch {
		t.Errorf("no fabric: %v, missing %q", per, missing)
	}
	cord := []figure.Use{{Fabric: 1, Cords: rat("120000")}}
	if per, missing := figure.Sampled(rat("50"), cord, []figure.Ball{ball}, nil); per != nil || missing != figure.Outweighed {
		t.Errorf("nothing left for the fabric: %v, missing %q", per, missing)
	}
	if per, missing := figure.Sampled(rat("50"), []figure.Use{pompom}, []figure.Ball{{}}, nil); per != nil || missing != figure.NoBall {
		t.Errorf("no ball: %v, missing %q", per, missing)
	}
}

// TestCord compares with the measurement the factor rests on: 4.8 to 5.1 inches of yarn in an inch of chain
// (windchilde.com/bluedepth, Crochet Yarn Estimating), here twice over for the way back.
func TestCord(t *testing.T) {
	per := new(big.Rat).Quo(figure.CordYarn(plan.Inch), rat("25.4"))
	if per.Cmp(rat("9.6")) < 0 || per.Cmp(rat("10.2")) > 0 {
		t.Errorf("an inch of cord takes %s inches of yarn", per.RatString())
	}
	if figure.CordYarn(plan.NoLength) != nil || figure.SeamYarn(plan.NoLength) != nil {
		t.Error("a cord or a seam of unknown length has yarn")
	}
	if mm := figure.SeamYarn(plan.Centimetre); mm.Cmp(rat("30")) != 0 { // common practice, no source
		t.Errorf("a centimetre of seam takes %s mm", mm.RatString())
	}
}

// TestMoreYarn checks that more fabric never takes less yarn, and that the balls always hold the grams and metres said.
func TestMoreYarn(t *testing.T) {
	per := heavy(t)
	rapid.Check(t, func(t *rapid.T) {
		a := figure.Area(rapid.Int64Range(0, 1e14).Draw(t, "area"))
		b := a + figure.Area(rapid.Int64Range(0, 1e13).Draw(t, "more"))
		cord := big.NewRat(rapid.Int64Range(0, 1e5).Draw(t, "cord"), 1)
		y, missing := figure.Yarn([]figure.Use{{Fabric: a, Cords: cord}, {Fabric: b, Cords: cord}}, per, ball, figure.Allowance)
		if missing != figure.Nothing {
			t.Fatalf("missing %s", missing)
		}
		if y[1].Milligrams < y[0].Milligrams || y[1].Length < y[0].Length || y[1].Balls < y[0].Balls {
			t.Fatalf("more fabric takes less: %+v", y)
		}
		for _, s := range y {
			if int64(s.Balls)*50_000 < s.Milligrams-1 {
				t.Fatalf("%+v", s)
			}
			if by := (s.Length + 120_000*plan.Millimetre - 1) / (120_000 * plan.Millimetre); int(by) != s.Balls {
				t.Fatalf("%d balls by the length: %+v", by, s)
			}
		}
	})
}

// Yards are worked out from the exact length and not from the rounded metres, and neither goes beyond the balls: whoever divides
// the length by that of a ball must come to as many balls as are said.
func TestLengths(t *testing.T) {
	for _, c := range []struct {
		grams  string
		b      figure.Ball
		metres int64
		yards  int
		balls  int
	}{
		{"100", ball, 240, 263, 2}, // 240 m are 262.5 yd; 265 yd would be a third ball
		{"98", ball, 240, 260, 2},  // 235.2 m are 257.2 yd; 240 m would be 265
		{"100.1", ball, 245, 265, 3},
		{"399", figure.Ball{Grams: rat("50"), MM: rat("118000")}, 942, 1030, 8}, // 941.6 m; 945 m would be 9 balls
		{"50", figure.Ball{Grams: rat("50"), MM: rat("118000")}, 118, 130, 1},   // 129.05 yd
	} {
		// A fabric of 1 µm² that weighs so much.
		got, _ := figure.Yarn(fabrics(1), rat(c.grams), c.b, new(big.Rat))
		want := plan.YarnAmount{Length: plan.Length(c.metres) * 1000 * plan.Millimetre, Yards: c.yards, Balls: c.balls}
		if got[0].Length != want.Length || got[0].Yards != want.Yards || got[0].Balls != want.Balls {
			t.Errorf("%s g: %+v, want %+v", c.grams, got[0], want)
		}
	}
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
