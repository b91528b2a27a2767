package words

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

const no = plan.Absent

func TestNums(t *testing.T) {
	for _, k := range []struct {
		n      plan.Nums
		en, es string
	}{
		{plan.Nums{112, 116, 120, 124}, "112~(**116**,~120,~**124**)", "112~(**116**;~120;~**124**)"},
		{plan.Nums{3, 3, 3}, "3", "3"},
		{plan.Nums{7}, "7", "7"},
		{plan.Nums{no}, "–", "–"},
		{plan.Nums{no, 2, 3}, "–~(**2**,~3)", "–~(**2**;~3)"},
		{plan.Nums{2, no, 2}, "2~(**–**,~2)", "2~(**–**;~2)"},
		{plan.Nums{no, no}, "–~(**–**)", "–~(**–**)"},
		{plan.Nums{0, 1}, "0~(**1**)", "0~(**1**)"},
		{plan.Nums{-2, 3}, "−2~(**3**)", "−2~(**3**)"},
		{plan.Nums{1, 2, 3, 4, 5, 6}, "1~(**2**,~3,~**4**,~5,~**6**)", "1~(**2**;~3;~**4**;~5;~**6**)"},
		{plan.Nums{1, 2, 3, 4, 5, 6, 7}, "1~(**2**,~3,~**4**,~5) (**6**,~7)", "1~(**2**;~3;~**4**;~5) (**6**;~7)"},
		{plan.Nums{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, "1~(**2**,~3,~**4**,~5) (**6**,~7,~**8**,~9) (**10**)", "1~(**2**;~3;~**4**;~5) (**6**;~7;~**8**;~9) (**10**)"},
	} {
		if got := shown(language(t, "en").Nums(k.n)); got != k.en {
			t.Errorf("en %v: %s, want %s", k.n, got, k.en)
		}
		if got := shown(language(t, "es").Nums(k.n)); got != k.es {
			t.Errorf("es %v: %s, want %s", k.n, got, k.es)
		}
	}
}

func TestNumber(t *testing.T) {
	for _, k := range []struct {
		v      float64
		digits int
		en, es string
	}{
		{3.75, 2, "3.75", "3,75"}, {3.5, 2, "3.5", "3,5"}, {4, 2, "4", "4"}, {1234, 0, "1234", "1234"}, {12345.5, 1, "12\u202f345.5", "12\u202f345,5"},
		{-2.5, 1, "−2.5", "−2,5"}, {-0.01, 1, "0", "0"}, {0.05, 1, "0.1", "0,1"}, {33.25, 1, "33.3", "33,3"}, {0.125, 2, "0.13", "0,13"}, {-33.25, 1, "−33.3", "−33,3"}, {1000000, 0, "1\u202f000\u202f000", "1\u202f000\u202f000"},
	} {
		if got := language(t, "en").Number(k.v, k.digits); got != k.en {
			t.Errorf("en %v: %q, want %q", k.v, got, k.en)
		}
		if got := language(t, "es").Number(k.v, k.digits); got != k.es {
			t.Errorf("es %v: %q, want %q", k.v, got, k.es)
		}
	}
	if got := language(t, "es-MX").Number(2.5, 1); got != "2.5" {
		t.Errorf("Mexico writes the decimal point, got %q", got)
	}
}

func TestLengths(t *testing.T) {
	cm := func(v float64) plan.Length { return plan.Length(v * float64(plan.Centimetre)) }
	en, es := language(t, "en"), language(t, "es")
	for _, k := range []struct {
		v          plan.Length
		cm, es, in string
	}{
		{cm(57.2), "57.2", "57,2", "22½"}, {cm(22.9), "22.9", "22,9", "9"}, {cm(0), "0", "0", "0"}, {cm(0.5), "0.5", "0,5", "¼"}, {cm(0.2), "0.2", "0,2", "0"},
		{cm(2.54 * 4.75), "12.1", "12,1", "4¾"}, {cm(-3), "−3", "−3", "−1¼"}, {plan.NoLength, "–", "–", "–"}, {cm(16.846), "16.8", "16,8", "6¾"},
	} {
		if got := en.Cm(k.v); got != k.cm {
			t.Errorf("en %d: %q cm, want %q", k.v, got, k.cm)
		}
		if got := es.Cm(k.v); got != k.es {
			t.Errorf("es %d: %q cm, want %q", k.v, got, k.es)
		}
		if got := es.Inches(k.v); got != k.in {
			t.Errorf("%d: %q in, want %q", k.v, got, k.in)
		}
	}
	ls := plan.Lengths{cm(17), cm(18.5), plan.NoLength}
	if got := shown(en.Lengths(ls)); got != "17~(**18.5**,~–)~cm" {
		t.Errorf("en %s", got)
	}
	if got := shown(es.Lengths(ls)); got != "17~(**18,5**;~–)~cm" {
		t.Errorf("es %s", got)
	}
	if got := shown(es.Lengths(plan.Lengths{cm(4), cm(4)})); got != "4~cm" {
		t.Errorf("one length: %s", got)
	}
}

// Whoever hears a list hears each size with its figure, and nothing else.
func TestListsAreSpokenBySize(t *testing.T) {
	p := tablePattern()
	c := language(t, "en").context(p, p.Parts[0], nil)
	for _, k := range []struct {
		n    plan.Nums
		said string
	}{
		{plan.Nums{112, 116, 120}, "S~112, M~116, L~120"},
		{plan.Nums{no, 2, 3}, "S~–, M~2, L~3"},
	} {
		said := ""
		for _, r := range c.num(k.n).text {
			said += r.Spoken
		}
		if shown(rich.T(said)) != k.said {
			t.Errorf("%v is spoken %q, want %q", k.n, shown(rich.T(said)), k.said)
		}
	}
	if one := c.num(plan.Nums{4, 4, 4}).text; len(one) != 1 || one[0].Spoken != "" {
		t.Errorf("one number is spoken otherwise: %v", one)
	}
	long := tablePattern()
	long.Sizes = append(long.Sizes, long.Sizes[:3]...)
	for _, r := range language(t, "es").context(long, nil, nil).num(plan.Nums{1, 2, 3, 4, 5, 6}).text {
		if r.Spoken == "" {
			t.Errorf("%q is read as it stands", r.Text)
		}
	}
}

// A size list never breaks inside a group, and a step for some sizes writes one number where those agree.
func TestListsKeepTogether(t *testing.T) {
	p := tablePattern()
	c := language(t, "es").context(p, p.Parts[0], plan.Sizes{true, true, false})
	if got := shown(c.num(plan.Nums{8, 8, no}).text); got != "8" {
		t.Errorf("sizes that agree: %s", got)
	}
	if got := shown(c.num(plan.Nums{8, 9, no}).text); got != "8~(**9**;~–)" {
		t.Errorf("sizes that differ: %s", got)
	}
}
