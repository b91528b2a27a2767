package value_test

import (
	"encoding/csv"
	"fmt"
	"math/big"
	"os"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/compile/value"
)

// TestPanel compares with a flat panel of the worked constructions (testdata/c01.csv), whose figures were worked out apart.
func TestPanel(t *testing.T) {
	f, err := os.Open("testdata/c01.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows = rows[1:]
	column := func(k int) (out []string) {
		for _, row := range rows {
			out = append(out, row[k])
		}
		return out
	}
	list := func(k int) string { c := column(k); return c[0] + " (" + strings.Join(c[1:], ", ") + ") cm" }

	b := newBench(column(0)...)
	wide := b.eval(t, "stitches("+list(1)+", sc, multiple of 6 plus 1)")
	high := b.eval(t, "rows("+list(6)+", sc, even, ties up)")
	if len(b.found) > 0 {
		t.Fatalf("reports %v", b.found)
	}
	compare := func(what string, k int, v value.Vector) {
		for i, want := range column(k) {
			x, _ := v.At(i).N.Float64()
			if v.Dim == value.Length {
				x /= 10
			}
			places := 0
			if _, after, ok := strings.Cut(want, "."); ok {
				places = len(after)
			}
			if got := strconv.FormatFloat(x, 'f', places, 64); got != want && !halfway(v.At(i).N, v.Dim, want) {
				t.Errorf("%s, size %s: %s, the case has %s", what, rows[i][0], got, want)
			}
		}
	}
	compare("stitches", 3, wide)
	compare("width", 4, value.Vector{Dim: value.Length, N: wide.Fitted.Got})
	compare("width error", 5, value.OfLengths(wide.Fitted.Errors()))
	compare("rows", 8, high)
	compare("length", 9, value.Vector{Dim: value.Length, N: high.Fitted.Got})

	// Set by hand, and still checked: XL 91 for 97 measures 56.9 cm.
	hand := b.eval(t, "stitches("+list(1)+`, sc, multiple of 6 plus 1) but "XL" 91`)
	if got := hand.Fitted.Errors()[3]; got != 56_875*10-590_000 {
		t.Errorf("the error of the size set by hand is %d", got)
	}
	if got := wide.Fitted.Errors()[3]; got != 606_250-590_000 {
		t.Errorf("setting a size by hand changed the value it was made from: %d", got)
	}
}

// halfway reports whether a length lies exactly between two printed figures; the case rounds such a tie to even.
func halfway(x *big.Rat, d value.Dim, want string) bool {
	if d != value.Length {
		return false
	}
	off := new(big.Rat).Sub(new(big.Rat).Quo(x, big.NewRat(10, 1)), rat(want))
	return off.Abs(off).Cmp(rat("0.05")) == 0
}

// TestRounding compares with the plainest way to round: try every count.
func TestRounding(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tenths := rapid.IntRange(0, 1200).Draw(t, "tenths of a millimetre") // 0 to 19.2 stitches
		of := rapid.IntRange(1, 9).Draw(t, "of")
		plus := rapid.IntRange(0, 9).Draw(t, "plus")
		way := rapid.SampledFrom([]string{"", "nearest", "up", "down"}).Draw(t, "way")
		ties := rapid.SampledFrom([]string{"", "ties up", "ties down"}).Draw(t, "ties")
		parity := rapid.SampledFrom([]string{"", "even", "odd"}).Draw(t, "parity")
		words := ""
		for _, w := range []string{way, ties, parity} {
			if w != "" {
				words += ", " + w
			}
		}
		b := newBench("S")
		b.gauges["sc"] = [2]string{"16", ""}
		text := fmt.Sprintf("stitches(%d.%d mm, sc, multiple of %d plus %d%s)", tenths/10, tenths%10, of, plus, words)
		v := value.Eval(parseRapid(t, text), b)
		want, ok := tryEvery(tenths*16, 1000, of, plus, way, ties, parity)
		if v.Unknown == ok {
			t.Fatalf("%s: got %s, %v; want %d, %v", text, show(v), b.found, want, ok)
		}
		if ok && show(v) != strconv.Itoa(want) {
			t.Fatalf("%s: got %s, want %d", text, show(v), want)
		}
	})
}

// tryEvery rounds num/den by trying every count up to well above it.
func tryEvery(num, den, of, plus int, way, ties, parity string) (best int, ok bool) {
	far := func(c int) int { return max(num-c*den, c*den-num) }
	for c := plus; c <= num/den+30; c++ {
		switch {
		case (c-plus)%of != 0, parity == "even" && c%2 != 0, parity == "odd" && c%2 == 0,
			way == "up" && c*den < num, way == "down" && c*den > num:
			continue
		case !ok || far(c) < far(best) || far(c) == far(best) && ties != "ties down":
			best, ok = c, true
		}
	}
	return best, ok
}

// TestBack checks that a count turned into a length and back is the same count, at any gauge.
func TestBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 100000).Draw(t, "n")
		b := newBench("S")
		b.gauges["sc"] = [2]string{fmt.Sprintf("%d.%d", rapid.IntRange(1, 60).Draw(t, "gauge"), rapid.IntRange(0, 99).Draw(t, "part")), ""}
		v := value.Eval(parseRapid(t, fmt.Sprintf("stitches(length(%d, sc), sc)", n)), b)
		if show(v) != strconv.Itoa(n) || v.Fitted.Errors()[0] != 0 {
			t.Fatalf("%d stitches become %s, %v", n, show(v), b.found)
		}
	})
}

// TestReadRounding checks the words behind a row's header.
func TestReadRounding(t *testing.T) {
	r, _, _, ok := value.ReadRounding([]string{"even", "down", "ties down", "even"})
	if !ok || r != (value.Rounding{Way: value.Down, TiesDown: true, Parity: value.Even}) {
		t.Errorf("got %+v, %v", r, ok)
	}
	if _, a, b, ok := value.ReadRounding([]string{"odd", "up", "even"}); ok || a != "odd" || b != "even" {
		t.Errorf("odd and even: got %s, %s, %v", a, b, ok)
	}
}

// TestRows checks the form that rows of a part ask by: a length, a stitch and words.
func TestRows(t *testing.T) {
	b := newBench("S", "M")
	length := value.OfLengths(plan.Lengths{17 * plan.Centimetre, 350 * plan.Millimetre})
	e := parse(t, "1")
	if v := value.Rows(length, "sc", value.Rounding{Parity: value.Even, TiesDown: true}, b, e); show(v) != "30 62" {
		t.Errorf("got %s, %v", show(v), b.found)
	}
	if v := value.Stitches(length, "sc", value.Rounding{}, b, e); show(v) != "27 56" {
		t.Errorf("got %s, %v", show(v), b.found)
	}
	if v := value.Rows(value.Of(plan.Nums{1, 2}), "sc", value.Rounding{}, b, e); !v.Unknown || b.found[0].Code != "OV322" {
		t.Errorf("a count for a length: got %s, %v", show(v), b.found)
	}
}
