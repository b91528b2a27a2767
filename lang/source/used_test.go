package source

import "testing"

func TestWithin(t *testing.T) {
	f := NewFile("hat.ovillo", "one\ntwo")
	if in, at := f.Within(Span{4, 99}); in != f || at != (Span{4, 99}) {
		t.Errorf("a file alone is %s %v", in.Name, at)
	}
	yarn, sizes := NewFile("yarn.ovillo", "three\nfour"), NewFile("sizes.ovillo", "five")
	a, b := f.Take(yarn), f.Take(sizes)
	for _, c := range []struct {
		span Span
		in   *File
		line int
		text string
	}{
		{Span{4, 7}, f, 2, "two"}, {Span{7, 7}, f, 2, ""},
		{Span{a, a + 5}, yarn, 1, "three"}, {Span{a + 6, a + 10}, yarn, 2, "four"}, {Span{a + 10, a + 10}, yarn, 2, ""},
		{Span{b, b + 4}, sizes, 1, "five"}, {Span{b + 2, b + 99}, sizes, 1, "ve"},
	} {
		in, at := f.Within(c.span)
		if in != c.in || in.Line(at.Start) != c.line || f.Slice(c.span) != c.text {
			t.Errorf("%v is in %s line %d: %q", c.span, in.Name, in.Line(at.Start), f.Slice(c.span))
		}
	}
	if len(f.Used()) != 2 || f.Used()[0] != yarn {
		t.Error("the files taken in are others")
	}
	if f.Alone(); len(f.Used()) != 0 {
		t.Error("a file alone still takes in others")
	}
}
