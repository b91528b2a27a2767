package diag

import (
	"slices"
	"testing"
)

func TestFill(t *testing.T) {
	sizes := func(all bool, values ...string) PerSize {
		return PerSize{Names: []string{"1 y", "2 y", "3 y"}[:len(values)], Values: values, All: all}
	}
	for _, c := range []struct {
		template string
		args     Args
		en, es   string
	}{
		{"plain", nil, "plain", "plain"},
		{"{n}", Args{"n": 1234}, "1234", "1234"},
		{"{n} {n|a|b}", Args{"n": 1}, "1 a", "1 a"},
		{"{n} {n|a|b}", Args{"n": 0}, "0 b", "0 b"},
		{"{n} {n|a|b}", Args{"n": int64(-1)}, "-1 a", "-1 a"},
		{"{n|one {m}|{n} of {m}}", Args{"n": 2, "m": "x"}, "2 of x", "2 of x"},
		{"{{n}} {n}", Args{"n": 2}, "{n} 2", "{n} 2"},
		{"{gone}", Args{"n": 2}, "{gone}", "{gone}"},
		{"{l}", Args{"l": []string{"a"}}, "a", "a"},
		{"{l}", Args{"l": []string(nil)}, "", ""},
		{"{l}", Args{"l": []string{"a", "b", "c"}}, "a, b and c", "a, b y c"},
		{"{l}", Args{"l": []string{"a", "inicio"}}, "a and inicio", "a e inicio"},
		{"{l}", Args{"l": []string{"a", "hielo"}}, "a and hielo", "a y hielo"},
		{"{l|or}", Args{"l": []string{"a", "b"}}, "a or b", "a o b"},
		{"{l|or}", Args{"l": []string{"a", "ocho"}}, "a or ocho", "a u ocho"},
		{"{l|size|sizes}", Args{"l": []string{"a", "b"}}, "sizes", "sizes"},
		{"{p}", Args{"p": sizes(true, "88", "88", "88")}, "88", "88"},
		{"{p}", Args{"p": sizes(false, "88", "88")}, "88 in 1 y, 88 in 2 y", "88 en 1 y, 88 en 2 y"},
		{"{p}", Args{"p": sizes(true, "8.5 cm", "9 cm")}, "8.5 cm in 1 y, 9 cm in 2 y", "8,5 cm en 1 y, 9 cm en 2 y"},
		{"{p|a|b}", Args{"p": sizes(true, "1", "1")}, "a", "a"},
		{"{p|a|b}", Args{"p": sizes(false, "1", "1")}, "b", "b"},
		{"{t}", Args{"t": Term{"space", 1}}, "chain space", "espacio de cadena"},
		{"{t}", Args{"t": Term{"stitch", 5}}, "stitches", "puntos"},
		{"{t}", Args{"t": Term{"pebble", 5}}, "pebble", "pebble"},
		{"{x}", Args{"x": Length(125_000)}, "12.5 cm", "12,5 cm"},
		{"{x}", Args{"x": Length(-1_049)}, "-0.1 cm", "-0,1 cm"},
		{"{x}", Args{"x": Length(40)}, "0 cm", "0 cm"},
		{"{x}", Args{"x": Length(1_000_000)}, "100 cm", "100 cm"},
		{"{s}", Args{"s": "a\nb\x1b[1m"}, "a b�[1m", "a b�[1m"},
	} {
		if got := Fill(c.template, c.args, "en"); got != c.en {
			t.Errorf("%q in English: %q, want %q", c.template, got, c.en)
		}
		if got := Fill(c.template, c.args, "es"); got != c.es {
			t.Errorf("%q in Spanish: %q, want %q", c.template, got, c.es)
		}
	}
}

func TestHoles(t *testing.T) {
	got := Holes("{b} {a|x {c}|y} {{d}} {l|or} {b} {=ch {m}}")
	if want := []string{"a", "b", "c", "l", "m"}; !slices.Equal(got, want) {
		t.Errorf("holes %v, want %v", got, want)
	}
}

// TestCode fills passages of code: what is typed is handed over, what is said about it is not.
func TestCode(t *testing.T) {
	spanish := map[string]string{"ch": "cad", "ch 3": "cad 3", "group wave = [sc in next]": "grupo wave = [pb en sig]", "row": "hilera", "rows": "hileras",
		"ch 3, sc in next": "cad 3, pb en sig", "inc": "aum", "dec": "dism", "sizes": "tallas", "to": "a"}
	per := PerSize{Names: []string{"S", "M"}, Values: []string{"8", "9"}}
	for _, c := range []struct {
		template string
		args     Args
		plain    string
		want     string
	}{
		{"write {=ch}, not ch", nil, "write ch, not ch", "write cad, not ch"},
		{"{=ch {n}}", Args{"n": 3}, "ch 3", "cad 3"},
		{"{={right}}", Args{"right": "ch 3, sc in next"}, "ch 3, sc in next", "cad 3, pb en sig"},
		{"{=group {name} = [sc in next]}", Args{"name": "wave"}, "group wave = [sc in next]", "grupo wave = [pb en sig]"},
		{"{={n|row|rows}}", Args{"n": 1}, "row", "hilera"},
		{"{={n|row|rows}}", Args{"n": 2}, "rows", "hileras"},
		{"{n|a {=row}|some {=rows}}", Args{"n": 2}, "some rows", "some hileras"},
		{"{={l|or}}", Args{"l": []string{"inc", "ch", "dec"}}, "inc, ch or dec", "aum, cad or dism"},
		{"{=sizes {l}}", Args{"l": []string{"inc", "dec"}}, "sizes inc and dec", "tallas aum and dism"},
		{"{=ch {p} to row}", Args{"p": per}, "ch 8 in S, 9 in M to row", "cad 8 in S, 9 in M <to row>"},
		{"{=ch {t}}", Args{"t": Term{"row", 1}}, "ch row", "cad row"},
		{"{={gone}}", nil, "{gone}", "<{gone}>"},
		{"{=[a|b]}", nil, "[a|b]", "<[a|b]>"},
	} {
		if got := Fill(c.template, c.args, "en"); got != c.plain {
			t.Errorf("%q: %q, want %q", c.template, got, c.plain)
		}
		p := Printer{Lang: "en", Code: func(code string) string {
			if s, ok := spanish[code]; ok {
				return s
			}
			return "<" + code + ">"
		}}
		if got := p.fill(c.template, c.args); got != c.want {
			t.Errorf("%q with words of its own: %q, want %q", c.template, got, c.want)
		}
	}
	if got := (Printer{Code: func(s string) string { return "<" + s + ">" }}).outline("{n|a|{n} of {=ch {n}}}"); got != "… of <ch …>" {
		t.Errorf("an outline: %q", got)
	}
}

// A template that cannot be read is printed as it stands, and the test over the catalogue is told why.
func TestBrokenTemplate(t *testing.T) {
	for template, want := range map[string]error{
		"{n":            errHole,
		"{n|a":          errOpen,
		"{}":            errHole,
		"a } b":         errClose,
		"{n|a|b|c}":     errHole,
		"{n|a}":         errHole,
		"{not this}":    errHole,
		"{=":            errOpen,
		"{=ch {n}":      errOpen,
		"{=}":           errCode,
		"{=a {=b}}":     errCode,
		"{={n|{=b}|c}}": errCode,
	} {
		if _, err := readTemplate(template); err != want {
			t.Errorf("%q: %v, want %v", template, err, want)
		}
	}
	if got := Fill("{n|a", Args{"n": 1}, "en"); got != "{n|a" {
		t.Errorf("a broken template prints %q", got)
	}
}
