package standard_test

import (
	"encoding/csv"
	"math"
	"math/big"
	"os"
	"strconv"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
)

// records reads a table of testdata without its head.
func records(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return all[1:]
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// TestHead compares with the medians of testdata/heads.csv (WHO Child Growth Standards), rounded there to a millimetre.
func TestHead(t *testing.T) {
	for _, r := range records(t, "heads.csv") {
		months := int(number(t, r[0]))
		low, mid, top, ok := standard.Head(months)
		if want := number(t, r[1]); !ok || math.Abs(mid.Cm()-want) > 0.051 || low >= mid || mid >= top {
			t.Errorf("%d months: %.2f, %.2f, %.2f; the median is %.1f", months, low.Cm(), mid.Cm(), top.Cm(), want)
		}
	}
	for _, months := range []int{-1, 61} {
		if _, _, _, ok := standard.Head(months); ok {
			t.Errorf("%d months has a head", months)
		}
	}
	before := plan.Length(0)
	for m := 0; m <= 60; m++ {
		_, mid, _, ok := standard.Head(m)
		if !ok || mid <= before {
			t.Errorf("the head does not grow at %d months: %d", m, mid)
		}
		before = mid
	}
}

// TestBabyOf compares with the size chart for babies and toddlers of ottobredesign.com (S18): size 80 at 12 months, chest
// 50.5, waist 51, inseam 30 cm; and with the chart of predprofil.ru (S19), inseam 27 cm.
func TestBabyOf(t *testing.T) {
	b, ok := standard.BabyOf(12)
	want := standard.Baby{Height: 80 * plan.Centimetre, AgeFrom: 12, AgeTo: 12, Chest: 505 * plan.Millimetre,
		Waist: 51 * plan.Centimetre, HipsOverNappy: 56 * plan.Centimetre, InseamLow: 27 * plan.Centimetre,
		InseamUp: 30 * plan.Centimetre, Arm: 28 * plan.Centimetre}
	if !ok || b != want {
		t.Errorf("12 months: %+v, %v", b, ok)
	}
	if b, ok := standard.BabyOf(5); !ok || b.Height != 68*plan.Centimetre {
		t.Errorf("5 months: %+v, %v", b, ok)
	}
	for _, m := range []int{-1, 25} {
		if b, ok := standard.BabyOf(m); ok {
			t.Errorf("%d months: %+v", m, b)
		}
	}
}

// TestFlatIncrease compares with testdata/circles.csv.
func TestFlatIncrease(t *testing.T) {
	for _, r := range records(t, "circles.csv") {
		sts, _ := new(big.Rat).SetString(r[1])
		rows, _ := new(big.Rat).SetString(r[2])
		if n := standard.FlatIncrease(sts, rows); math.Abs(n-number(t, r[3])) > 0.051 {
			t.Errorf("%s %s by %s: %.2f, want %s", r[0], r[1], r[2], n, r[3])
		}
	}
	if n := standard.FlatIncrease(nil, big.NewRat(1, 1)); n != 0 {
		t.Errorf("no gauge gives %g", n)
	}
}

// TestLies checks that the starts in print lie flat at the published gauges of testdata/circles.csv: 6 in sc, 8 to 10 in
// hdc, 12 in dc (mkcarroll.com 2009/5/14 and crochetrebellion.com/circle); the same pages say that 8 in sc ruffles.
func TestLies(t *testing.T) {
	for _, c := range []struct {
		add  float64
		flat float64
		want standard.Disc
	}{
		{6, 5.0, standard.Flat}, {6, 5.8, standard.Flat}, {8, 9.1, standard.Flat}, {10, 9.1, standard.Flat},
		{12, 11.3, standard.Flat}, {8, 5.5, standard.Ruffles}, {6, 9.1, standard.Cups}, {8, 11.3, standard.Cups},
	} {
		if got := standard.Lies(c.add, c.flat); got != c.want {
			t.Errorf("%g where %g is flat: %d", c.add, c.flat, got)
		}
	}
}
