package source

import "testing"

func TestLines(t *testing.T) {
	f := NewFile("a.ovillo", "one\r\ntwo\n\nvier")
	for i, want := range []string{"one", "two", "", "vier"} {
		if got := f.LineText(i + 1); got != want {
			t.Errorf("line %d is %q, want %q", i+1, got, want)
		}
	}
	if f.Lines() != 4 || f.LineText(0) != "" || f.LineText(5) != "" {
		t.Errorf("%d lines, beyond them %q and %q", f.Lines(), f.LineText(0), f.LineText(5))
	}
	for _, c := range []struct {
		offset int32
		line   int
	}{{0, 1}, {4, 1}, {5, 2}, {8, 2}, {9, 3}, {10, 4}, {14, 4}} {
		if got := f.Line(c.offset); got != c.line {
			t.Errorf("offset %d is on line %d, want %d", c.offset, got, c.line)
		}
	}
	if f.LineStart(2) != 5 || f.LineStart(0) != 0 || f.LineStart(9) != 14 {
		t.Errorf("lines start at %d, %d, %d", f.LineStart(2), f.LineStart(0), f.LineStart(9))
	}
}

func TestColumn(t *testing.T) {
	f := NewFile("a.ovillo", "a\tb\nan\u0303o x\nañ")
	for _, c := range []struct {
		offset int32
		want   int
	}{{0, 1}, {1, 2}, {2, 9}, {8, 3}, {9, 4}, {12, 1}, {13, 2}, {15, 3}, {99, 3}} {
		if got := f.Column(c.offset); got != c.want {
			t.Errorf("offset %d is in column %d, want %d", c.offset, got, c.want)
		}
	}
}

func TestSlice(t *testing.T) {
	f := NewFile("a.ovillo", "abcdef")
	for _, c := range []struct {
		span Span
		want string
	}{{Span{1, 3}, "bc"}, {Span{-5, 2}, "ab"}, {Span{4, 99}, "ef"}, {Span{3, 3}, ""}, {Span{5, 2}, ""}} {
		if got := f.Slice(c.span); got != c.want {
			t.Errorf("%v is %q, want %q", c.span, got, c.want)
		}
	}
}

func TestSpan(t *testing.T) {
	a, b := Span{2, 4}, Span{6, 9}
	if a.To(b) != (Span{2, 9}) || !a.To(b).Contains(a) || a.Contains(b) || a.IsZero() || !(Span{}).IsZero() {
		t.Error("spans do not add up")
	}
}
