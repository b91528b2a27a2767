package value_test

import (
	"math/big"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
)

func TestEval(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		// numbers, sizes and units. Inch, yard and ounce: international yard and pound agreement of 1959.
		{"96", "96 96 96"},
		{"96 (104, 112)", "96 104 112"},
		{"5 (-2, 3.5)", "5 -2 7/2"},
		{"3.75 mm", "15/4 15/4 15/4 mm"},
		{"21 cm", "210 210 210 mm"},
		{"2 m", "2000 2000 2000 mm"},
		{"1 in", "127/5 127/5 127/5 mm"},
		{"1 yd", "4572/5 4572/5 4572/5 mm"},
		{"1 yd / 36 in", "1 1 1"},
		{"1 kg", "1000 1000 1000 g"},
		{"16 oz", "45359237/100000 45359237/100000 45359237/100000 g"}, // a pound is 453.59237 g
		{"10 %", "10 10 10 %"},
		{"2 (3, 4) years", "24 36 48 months"},
		{"18 months", "18 18 18 months"},
		// arithmetic
		{"2 + 3 * 4 - 6 / 4", "25/2 25/2 25/2"},
		{"(2 + 3) * -4", "-20 -20 -20"},
		{"100 / 3 * 3", "100 100 100"},
		{"10 cm + 2 in", "754/5 754/5 754/5 mm"},
		{"50 cm * 10 %", "50 50 50 mm"},
		{"10 % * 40", "4 4 4"},
		{"50 % * 50 %", "25 25 25 %"},
		{"44 cm / 110 %", "400 400 400 mm"},
		{"10 % / 5 %", "2 2 2"},
		{"2 * 35 cm", "700 700 700 mm"},
		{"12 months / 2", "6 6 6 months"},
		{"leg - 2", "43 47 51"},
		{"fit.waist / 2", "250 275 300 mm"},
		// by hand
		{`leg but "M" 50`, "45 50 53"},
		{`leg but "M" 50, "L" leg + 1`, "45 50 54"},
		{`fit.waist but "S" 20 in`, "508 550 600 mm"},
		// calls
		{"stitches(44 cm, sc)", "70 70 70"},
		{"stitches(44 cm, sc, up)", "71 71 71"},
		{"stitches(44 cm, sc, down, even)", "70 70 70"},
		{"stitches(44 cm, sc, odd)", "71 71 71"},
		{"stitches(44 cm, sc, multiple of 6 plus 1)", "73 73 73"},
		{"stitches(44 cm, sc, multiple of 6 plus 1, down)", "67 67 67"},
		{"stitches(44 cm, sc, multiple of 3, odd)", "69 69 69"},
		{"stitches(44 cm, sc, multiple of 5 plus 2, even)", "72 72 72"},
		{"stitches(44 cm, sc, multiple of 4 (6, 8))", "72 72 72"},
		{"stitches(1 cm, sc, multiple of 6 plus 5)", "5 5 5"},
		{"rows(35 cm, sc, even)", "64 64 64"},
		{"rows(35 cm, sc, even, ties up)", "64 64 64"},
		{"rows(35 cm, sc, even, ties down)", "62 62 62"},
		{"rows(10 cm, hdc)", "14 14 14"},
		{"rows(10 cm, hdc, ties down)", "13 13 13"},
		{"length(38, dc)", "200 200 200 mm"},
		{"whole(leg / 2)", "23 25 27"},
		{"whole(leg / 2, down)", "22 24 26"},
		{"whole(leg / 2, multiple of 6 plus 1, up)", "25 25 31"},
		{`whole(leg / 2, even) but "M" 30`, "22 30 26"},
		{"min(leg, 47)", "45 47 47"},
		{"max(leg, 47, 50)", "50 50 53"},
		{"max(10 cm, 4 in)", "508/5 508/5 508/5 mm"},
	} {
		b := newBench("S", "M", "L")
		b.names["leg"] = value.Of(plan.Nums{45, 49, 53})
		b.names["fit.waist"] = value.OfLengths(plan.Lengths{500_000, 550_000, 600_000})
		if got := show(b.eval(t, c.text)); got != c.want {
			t.Errorf("%s\n got %s\nwant %s", c.text, got, c.want)
		}
		for _, d := range b.found {
			t.Errorf("%s: reports %s %v", c.text, d.Code, d.Args)
		}
	}
}

// refusals are values that must be refused, each with one diagnostic: its code, the text it marks, and some of its facts.
var refusals = []struct {
	text, code, mark string
	facts            diag.Args
	help             string
}{
	{"20 (22)", "OV301", "20 (22)", diag.Args{"needed": 3, "found": 2}, ""},
	{"20 (22, 24, 26) cm + 3", "OV301", "20 (22, 24, 26) cm", diag.Args{"needed": 3, "found": 4}, ""},
	{"lge * 2", "OV302", "lge", diag.Args{"name": "lge", "near": []string{"leg"}}, "near"},
	{"trunk", "OV302", "trunk", diag.Args{"name": "trunk"}, "none"},
	{"fit.wast", "OV302", "fit.wast", diag.Args{"near": []string{"fit.waist"}}, "near"},
	{"leg + 2 cm", "OV303", "leg + 2 cm", diag.Args{"left": diag.Term{Key: "count", N: 1}, "right": diag.Term{Key: "length", N: 1}}, "gauge"},
	{"leg - 10 %", "OV303", "leg - 10 %", nil, "percent"},
	{"1 + (2 cm - 3 g)", "OV303", "2 cm - 3 g", nil, "unit"},
	{"2 cm * 3 cm", "OV304", "2 cm * 3 cm", nil, "product"},
	{"20 / 10 cm", "OV304", "20 / 10 cm", nil, "quotient"},
	{"leg / (leg - 49)", "OV305", "(leg - 49)", diag.Args{"found": sizes("M", "0")}, ""},
	{"2000000000", "OV306", "2000000000", diag.Args{"found": "2000000000"}, ""},
	{"1000000 * leg * leg", "OV306", "1000000 * leg * leg", nil, ""},
	{"1 / 100000 / 100000", "OV306", "1 / 100000 / 100000", nil, ""},
	{"0.00000000001", "OV306", "0.00000000001", nil, ""},
	{"leg but \"XL\" 3", "OV307", "leg but \"XL\" 3", diag.Args{"name": "XL"}, ""},
	{"leg but \"L\" 3 cm", "OV308", "3 cm", diag.Args{"size": "L"}, ""},
	{"leg but \"L\" 3, \"L\" 4", "OV309", "4", diag.Args{"size": "L"}, ""},
	{"stiches(3 cm, sc)", "OV310", "stiches(3 cm, sc)", diag.Args{"near": []string{"stitches"}}, "near"},
	{"area(3 cm, sc)", "OV310", "area(3 cm, sc)", nil, "none"},
	{"stitches(3 cm)", "OV311", "stitches(3 cm)", diag.Args{"needed": 2, "found": 1}, "two"},
	{"min(3)", "OV311", "min(3)", nil, "many"},
	{"stitches(3 cm, 4)", "OV312", "4", diag.Args{"name": "stitches"}, ""},
	{"stitches(3 cm, sc, up, down)", "OV313", "stitches(3 cm, sc, up, down)", diag.Args{"left": "up", "right": "down"}, ""},
	{"stitches(3 cm, sc, ties up, ties down)", "OV313", "stitches(3 cm, sc, ties up, ties down)", nil, ""},
	{"stitches(3 cm, sc, multiple of 2, multiple of 3)", "OV313", "multiple of 3", nil, ""},
	{"max(3, 4, odd)", "OV314", "max(3, 4, odd)", nil, ""},
	{"length(3, sc, multiple of 2)", "OV314", "length(3, sc, multiple of 2)", nil, ""},
	{"stitches(30 cm, sc, multiple of 0)", "OV315", "0", diag.Args{"least": 1}, ""},
	{"stitches(30 cm, sc, multiple of 3 plus leg - 49)", "OV315", "leg - 49", diag.Args{"least": 0, "found": sizes("S", "-4")}, ""},
	{"stitches(30 cm, sc, multiple of leg / 2)", "OV315", "leg / 2", nil, ""},
	{"stitches(30 cm, sc, multiple of 2 cm)", "OV322", "2 cm", nil, "gauge"},
	{"stitches(30 cm, sc, multiple of 6 plus 1, even)", "OV316", "stitches(30 cm, sc, multiple of 6 plus 1, even)", diag.Args{"rule": "multiple of 6 plus 1", "word": "even"}, ""},
	{"stitches(fit.waist - 55 cm, sc)", "OV317", "stitches(fit.waist - 55 cm, sc)", diag.Args{"found": sizes("S", "-5 cm")}, ""},
	{"stitches(fit.waist - 50 cm, sc, multiple of 6 plus 5, down)", "OV318", "stitches(fit.waist - 50 cm, sc, multiple of 6 plus 5, down)", diag.Args{"found": sizes("S", "0"), "least": sizes("S", "5")}, ""},
	{"stitches(fit.waist, sc, multiple of 6 plus 1) but \"M\" 90", "OV319", "90", diag.Args{"rule": "multiple of 6 plus 1", "near": []string{"85", "91"}}, ""},
	{"stitches(30 cm, sc, even) but \"M\" 1", "OV319", "1", diag.Args{"near": []string{"0", "2"}}, ""},
	{"stitches(30 cm, sc, multiple of 6 plus 5) but \"M\" 2", "OV319", "2", diag.Args{"near": []string{"5"}}, ""},
	{"whole(3 cm)", "OV322", "3 cm", nil, "gauge"},
	{"whole(leg / 2, even) but \"M\" 23", "OV319", "23", diag.Args{"near": []string{"22", "24"}}, ""},
	{"whole(leg - 49)", "OV317", "whole(leg - 49)", diag.Args{"found": sizes("S", "-4")}, ""},
	{"stitches(30, sc)", "OV322", "30", nil, "unit"},
	{"length(30 cm, sc)", "OV322", "30 cm", nil, "gauge"},
	{"min(30, 3 cm)", "OV322", "3 cm", nil, "gauge"},
	{"max(3 cm, 3)", "OV322", "3", nil, "unit"},
	{"height of body", "OV325", "height of body", nil, ""},
	{"stitches(30 cm, tr)", "OV701", "tr", diag.Args{"stitch": "tr"}, ""},
	{"rows(30 cm, cord)", "OV702", "cord", diag.Args{"stitch": "cord"}, ""},
}

func sizes(nameValue ...string) diag.PerSize {
	var p diag.PerSize
	for i := 0; i < len(nameValue); i += 2 {
		p.Names, p.Values = append(p.Names, nameValue[i]), append(p.Values, nameValue[i+1])
	}
	return p
}

func TestRefusals(t *testing.T) {
	const lead = len("let v = ")
	for _, c := range refusals {
		b := newBench("S", "M", "L")
		b.names["leg"] = value.Of(plan.Nums{45, 49, 53})
		b.names["fit.waist"] = value.OfLengths(plan.Lengths{500_000, 550_000, 600_000})
		if v := b.eval(t, c.text); !v.Unknown {
			t.Errorf("%s: is %s, not unknown", c.text, show(v))
		}
		if len(b.found) != 1 {
			t.Errorf("%s: reports %d times: %v", c.text, len(b.found), b.found)
			continue
		}
		d := b.found[0]
		if string(d.Code) != c.code || d.Help != c.help {
			t.Errorf("%s: reports %s with remedy %q, not %s with %q", c.text, d.Code, d.Help, c.code, c.help)
		}
		if got := ("let v = " + c.text)[d.Span.Start:d.Span.End]; got != c.mark {
			t.Errorf("%s: marks %q, not %q (from %d)", c.text, got, c.mark, lead)
		}
		for k, want := range c.facts {
			if got := d.Args[k]; !sameFact(got, want) {
				t.Errorf("%s: %s is %v, not %v", c.text, k, got, want)
			}
		}
		for _, missing := range diag.Incomplete(d) {
			t.Errorf("%s: %s", c.text, missing)
		}
	}
}

// sameFact compares two facts of a message by what they hold.
func sameFact(a, b any) bool {
	p, ok := a.(diag.PerSize)
	if q, both := b.(diag.PerSize); ok && both {
		return strings.Join(p.Names, "|") == strings.Join(q.Names, "|") && strings.Join(p.Values, "|") == strings.Join(q.Values, "|")
	}
	l, ok := a.([]string)
	if m, both := b.([]string); ok && both {
		return strings.Join(l, "|") == strings.Join(m, "|")
	}
	return a == b
}

// TestOneCauseOneMessage checks that what is worked out from an unknown value stays silent.
func TestOneCauseOneMessage(t *testing.T) {
	b := newBench("S", "M")
	b.names["leg"] = value.Unknown
	v := b.eval(t, `stitches(leg, sc) + leg * (2 - leg) / min(leg, 3) but "S" leg`)
	if !v.Unknown || len(b.found) > 0 {
		t.Errorf("got %s and %v", show(v), b.found)
	}
	if _, ok := v.Counts(b, &lang.Expr{}); ok || len(b.found) > 0 {
		t.Errorf("counts of an unknown value: %v, %v", ok, b.found)
	}
	b.names["leg"] = value.Of(plan.Nums{1, 2})
	if v := b.eval(t, "(gone + 1) * (leg + 2 cm)"); !v.Unknown || len(b.found) != 2 {
		t.Errorf("two causes give %d messages", len(b.found))
	}
}

// TestUnread checks that what the parser could not read is silent here.
func TestUnread(t *testing.T) {
	b := newBench("S")
	for _, e := range []*lang.Expr{nil, {Op: lang.OpAdd}, {Op: lang.OpParen}, {Op: lang.OpNeg}, {Op: lang.OpBut, Text: "S"}} {
		if v := value.Eval(e, b); !v.Unknown || len(b.found) > 0 {
			t.Errorf("%v: got %s and %v", e, show(v), b.found)
		}
	}
	if v := newBench().eval(t, "3 (4, 5)"); !v.Unknown {
		t.Errorf("a pattern without sizes has the value %s", show(v))
	}
}

// TestBroken checks that an env that breaks its promise is reported as a fault of the tool, and not as one of the source.
func TestBroken(t *testing.T) {
	b := newBench("S", "M")
	b.names["leg"] = value.Of(plan.Nums{1, 2, 3})
	if v := b.eval(t, "leg"); !v.Unknown || len(b.found) != 1 || diag.Lookup(b.found[0].Code).En.Explain != "" {
		t.Errorf("got %s and %v", show(v), b.found)
	}
}

// TestLongSum works out a sum that leans to the left as far as a source may be long.
func TestLongSum(t *testing.T) {
	one := &lang.Expr{Op: lang.OpNumber, Text: "1"}
	sum := one
	for range 200_000 {
		sum = &lang.Expr{Op: lang.OpAdd, L: sum, R: one}
	}
	if got := show(value.Eval(sum, newBench("S"))); got != "200001" {
		t.Errorf("a long sum is %s", got)
	}
}

func TestMeasure(t *testing.T) {
	b := newBench("S", "M")
	b.measures = true
	if got := show(b.eval(t, "height of body - 2 * (width of body at row 3)")); got != "-500 -500 mm" {
		t.Errorf("got %s", got)
	}
}

func TestAbsent(t *testing.T) {
	b := newBench("S", "M")
	b.names["gusset"] = value.Of(plan.Nums{plan.Absent, 7})
	if got := show(b.eval(t, "(gusset * 2 - 4) / gusset")); got != "none 10/7" {
		t.Errorf("got %s", got)
	}
	n, ok := b.eval(t, "gusset + 1").Counts(b, &lang.Expr{})
	if !ok || n[0] != plan.Absent || n[1] != 8 {
		t.Errorf("got %v, %v", n, ok)
	}
	if l := b.eval(t, "gusset * 1 cm").Lengths(); l[0] != plan.NoLength || l[1] != 7*plan.Centimetre {
		t.Errorf("got %v", l)
	}
}

func TestCounts(t *testing.T) {
	for _, c := range []struct {
		text, code string
		found      diag.PerSize
	}{
		{"leg / 2", "OV320", sizes("S", "22 1/2", "M", "24 1/2", "L", "26 1/2")},
		{"leg * 2 / 4 but \"L\" 3", "OV320", sizes("S", "22 1/2", "M", "24 1/2")},
		{"leg / 200", "OV320", sizes("S", "9/40", "M", "49/200", "L", "53/200")},
		{"leg / 12347", "OV320", sizes("S", "0", "M", "0", "L", "0")},
		{"(44 - leg) / 2", "OV320", sizes("S", "-1/2", "M", "-2 1/2", "L", "-4 1/2")},
		{"leg - 50", "OV321", sizes("S", "-5", "M", "-1")},
	} {
		b := newBench("S", "M", "L")
		b.names["leg"] = value.Of(plan.Nums{45, 49, 53})
		n, ok := b.eval(t, c.text).Counts(b, &lang.Expr{})
		if ok || len(b.found) != 1 {
			t.Fatalf("%s: got %v, %v", c.text, n, b.found)
		}
		if d := b.found[0]; string(d.Code) != c.code || !sameFact(d.Args["found"], c.found) || len(diag.Incomplete(d)) > 0 {
			t.Errorf("%s: got %s %v", c.text, d.Code, d.Args)
		}
	}
	b := newBench("S", "M")
	if n, ok := b.eval(t, "0 (7, 1)").Counts(b, &lang.Expr{}); ok || n != nil {
		t.Errorf("three numbers for two sizes give %v", n)
	}
	if n, ok := b.eval(t, "2 cm").Counts(b, &lang.Expr{}); ok || n != nil || b.found[len(b.found)-1].Code != "OV322" {
		t.Errorf("a length gives %v and %v", n, b.found)
	}
}

func TestLengths(t *testing.T) {
	b := newBench("S")
	for text, want := range map[string]plan.Length{
		"1 in": plan.Inch, "1 cm / 3": 3333, "2 cm / 3": 6667, "-2 cm / 3": -6667, "0.0005 mm": 1, "-0.0005 mm": -1, "0.0004 mm": 0,
	} {
		if got := b.eval(t, text).Lengths(); len(got) != 1 || got[0] != want {
			t.Errorf("%s: got %v, want %v", text, got, want)
		}
	}
	if got := b.eval(t, "5 g").Lengths(); got != nil {
		t.Errorf("a weight has the lengths %v", got)
	}
	if got := b.eval(t, "1 oz").Milligrams(); len(got) != 1 || got[0] != 28350 {
		t.Errorf("an ounce is %v mg", got)
	}
}

func TestRange(t *testing.T) {
	for _, c := range [][4]string{
		{"0", "6 cm", "0 mm", "60 mm"}, {"-2", "6 cm", "-20 mm", "60 mm"}, {"0 (1)", "2 in", "0 mm", "254/5 mm"},
		{"1 in", "6 cm", "127/5 mm", "60 mm"}, {"1", "6", "1", "6"},
	} {
		b := newBench("S", "M")
		lo, hi := value.Range(parse(t, c[0]), parse(t, c[1]), b)
		first := func(v value.Vector) string {
			v.N = v.N[:1]
			return show(v)
		}
		if len(b.found) > 0 || first(lo) != c[2] || first(hi) != c[3] {
			t.Errorf("%s to %s: got %s to %s, %v", c[0], c[1], show(lo), show(hi), b.found)
		}
	}
}

func TestMask(t *testing.T) {
	b := newBench("S", "M", "L")
	v := b.eval(t, "stitches(44 (49, 54) cm, sc, multiple of 6 plus 1)")
	mask := []bool{true, false, true}
	p := v.Pick(mask)
	if got := show(p); got != "73 85" || p.Fitted.Step[1] != 6 || p.Fitted.Wanted[1].Cmp(big.NewRat(540, 1)) != 0 {
		t.Errorf("picked %s, %+v", got, p.Fitted)
	}
	s := p.Spread(mask)
	if got := show(s); got != "73 none 85" || s.Fitted.Wanted[1] != nil || s.Fitted.Errors()[1] != plan.NoLength ||
		s.Fitted.Errors()[2] != v.Fitted.Errors()[2] {
		t.Errorf("spread %s, %+v", got, s.Fitted)
	}
	if v.Pick(nil).Fitted != v.Fitted || !value.Unknown.Spread(mask).Unknown {
		t.Error("no mask, or an unknown value, is not left alone")
	}
}
