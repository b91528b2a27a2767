package layout

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"ovillo/render/page"
)

// block is a strip of a height with its name as its only text.
func block(name string, h float64) Strip {
	s := Strip{Space: 2.5, Mark: name}
	s.Box = Text(name, body, false, 0, nil)
	s.H = h
	return s
}

// names lists the texts of a sheet from top to bottom, with their heights.
func names(s Sheet) []string {
	var out []string
	for _, it := range s.Items {
		out = append(out, it.(page.Glyphs).Text)
	}
	return out
}

func TestPaginateFills(t *testing.T) {
	sheets := Paginate([]Strip{block("a", 40), block("b", 40), block("c", 20)}, 100, 100)
	if len(sheets) != 2 || !same(names(sheets[0]), []string{"a", "b"}) || !same(names(sheets[1]), []string{"c"}) {
		t.Fatalf("sheets %v", sheets)
	}
	if sheets[0].H != 82.5 {
		t.Errorf("first sheet is filled to %v, want 82.5: no space at the top, 2.5 between", sheets[0].H)
	}
	if m := sheets[0].Marks[1]; m != (Mark{"b", 0, 42.5}) {
		t.Errorf("mark %v", m)
	}
}

func TestPaginateKeeps(t *testing.T) {
	strips := []Strip{block("a", 60), block("head", 10), block("b", 20), block("c", 20)}
	strips[1].Keep, strips[1].Heading = true, true
	strips[2].Keep = true
	sheets := Paginate(strips, 100, 100)
	if !same(names(sheets[0]), []string{"a"}) || !same(names(sheets[1]), []string{"head", "b", "c"}) {
		t.Errorf("sheets %v | %v, want the head with the two rows below it", names(sheets[0]), names(sheets[1]))
	}
}

func TestPaginateYields(t *testing.T) {
	strips := []Strip{block("a", 40), block("head", 10), block("b", 20), block("c", 40)}
	strips[1].Keep, strips[1].Heading = true, true
	strips[2].Keep, strips[2].Yields = true, true
	sheets := Paginate(strips, 100, 100)
	if !same(names(sheets[0]), []string{"a", "head", "b"}) {
		t.Errorf("sheets %v | %v, want the sheet filled", names(sheets[0]), names(sheets[1]))
	}
	strips[0].H = 62
	sheets = Paginate(strips, 100, 100)
	if !same(names(sheets[0]), []string{"a"}) {
		t.Errorf("sheets %v | %v, want the head kept with two rows where little is left", names(sheets[0]), names(sheets[1]))
	}
}

func TestFillMeasuresWithoutSetting(t *testing.T) {
	fig := &page.Elem{Tag: "Figure", Box: &[4]float64{0, 0, 10, 10}}
	strips := []Strip{block("a", 60), block("b", 60)}
	strips[1].Figures = []*page.Elem{fig}
	if n, h := Fill(strips, 100, 100); n != 2 || h != 60 {
		t.Errorf("%d sheets, the last filled to %v, want 2 and 60", n, h)
	}
	if *fig.Box != [4]float64{0, 0, 10, 10} {
		t.Errorf("the figure was moved to %v", *fig.Box)
	}
}

func TestPaginateResumes(t *testing.T) {
	strips := []Strip{block("a", 60), block("b", 60), block("c", 30)}
	for i := range strips {
		strips[i].Resume = []Strip{block("again", 10)}
	}
	sheets := Paginate(strips[1:], 100, 100)
	if !same(names(sheets[0]), []string{"again", "b"}) || !same(names(sheets[1]), []string{"again", "c"}) {
		t.Errorf("sheets %v | %v", names(sheets[0]), names(sheets[1]))
	}
	if len(sheets[0].Marks) != 1 || sheets[0].Marks[0].Y != 12.5 {
		t.Errorf("marks %v: want b alone, under the head and the space", sheets[0].Marks)
	}
	if got := len(Paginate(strips, 100, 100)); got != 3 {
		t.Errorf("%d sheets, want 3: the repeated head takes room", got)
	}
}

func TestPaginateGives(t *testing.T) {
	strips := []Strip{block("a", 40), block("part", 20), block("b", 31.25)}
	strips[1].Space, strips[1].Give = 7.5, 2.5
	sheets := Paginate(strips, 100, 100)
	if len(sheets) != 1 || sheets[0].H != 100 || sheets[0].Marks[1].Y != 46.25 {
		t.Fatalf("%d sheets, the first to %v: want one, 1.25 taken from above the part", len(sheets), sheets[0].H)
	}
	strips[2].H = 35
	if sheets = Paginate(strips, 100, 100); len(sheets) != 2 || sheets[0].Marks[1].Y != 47.5 {
		t.Errorf("%d sheets: what the space cannot give must not be taken", len(sheets))
	}
}

func TestPaginateFirstSheetIsTaller(t *testing.T) {
	sheets := Paginate([]Strip{block("a", 60), block("b", 45), block("c", 60), block("d", 45)}, 110, 100)
	if len(sheets) != 3 || len(names(sheets[0])) != 2 || len(names(sheets[1])) != 1 {
		t.Errorf("%d sheets, want the first to hold two blocks and the others one", len(sheets))
	}
}

func TestPaginateFresh(t *testing.T) {
	strips := []Strip{block("a", 10), block("b", 10)}
	strips[1].Fresh = true
	strips[0].Keep = true
	if got := len(Paginate(strips, 100, 100)); got != 2 {
		t.Errorf("%d sheets, want 2", got)
	}
	strips[0].Fresh = true
	if got := len(Paginate(strips[:1], 100, 100)); got != 1 {
		t.Errorf("%d sheets, want 1: no empty sheet before the first", got)
	}
}

// TestPaginateLaws: every strip is set once and in order, sheets are not over-full unless one strip is, what is kept
// together is together unless it is taller than a sheet, and no heading ends a sheet.
func TestPaginateLaws(t *testing.T) { rapid.Check(t, sheetLaws) }

// sheetLaws draws a flow and puts it on sheets.
func sheetLaws(t *rapid.T) {
	n := rapid.IntRange(1, 30).Draw(t, "n")
	var strips []Strip
	for i := range n {
		s := block(fmt.Sprint(i), float64(rapid.IntRange(4, 40).Draw(t, "h"))*Module)
		s.Keep = rapid.IntRange(0, 2).Draw(t, "keep") == 0
		s.Heading = s.Keep && i < n-1 && rapid.Bool().Draw(t, "heading")
		s.Fresh = i > 0 && !strips[i-1].Keep && rapid.IntRange(0, 9).Draw(t, "fresh") == 0
		s.Give = rapid.SampledFrom([]float64{0, 1.25, 2.5}).Draw(t, "give")
		if rapid.IntRange(0, 3).Draw(t, "resume") == 0 {
			s.Resume = []Strip{block("again", 5)}
		}
		strips = append(strips, s)
	}
	strips[n-1].Keep = false
	const height = 100
	sheets := Paginate(strips, height, height)
	next, on := 0, map[int]int{}
	for k, sheet := range sheets {
		if sheet.H > height+slop {
			t.Fatalf("sheet %d is filled to %v", k, sheet.H)
		}
		last := -1
		for _, name := range names(sheet) {
			if name == "again" {
				continue
			}
			if name != fmt.Sprint(next) {
				t.Fatalf("sheet %d has %s, want %d", k, name, next)
			}
			last = next
			on[next] = k
			next++
		}
		if last < 0 {
			t.Fatalf("sheet %d holds nothing", k)
		}
		if strips[last].Heading && groupHeight(strips, last) <= height {
			t.Fatalf("sheet %d ends with a heading", k)
		}
	}
	if next != n {
		t.Fatalf("%d strips of %d set", next, n)
	}
	for i := range n - 1 {
		if strips[i].Keep && on[i] != on[i+1] && groupHeight(strips, i) <= height {
			t.Fatalf("strips %d and %d are torn apart", i, i+1)
		}
	}
}

// groupHeight is the height of the group that strip i belongs to at the top of a sheet.
func groupHeight(strips []Strip, i int) float64 {
	from, to := i, i
	for from > 0 && strips[from-1].Keep {
		from--
	}
	for strips[to].Keep {
		to++
	}
	h := 0.0
	if len(strips[from].Resume) > 0 {
		h = 5 + strips[from].Space
	}
	for k := from; k <= to; k++ {
		if k > from {
			h += strips[k].Space
		}
		h += strips[k].H
	}
	return h
}

func TestBindAndLoosely(t *testing.T) {
	keeps := func(s []Strip) string {
		out := ""
		for _, x := range s {
			if x.Keep {
				out += "="
			} else {
				out += "."
			}
		}
		return out
	}
	for _, c := range []struct {
		got, want string
	}{
		{keeps(Bind(make([]Strip, 4))), "===."},
		{keeps(Loosely(make([]Strip, 7), 2)), "=....=."},
		{keeps(Loosely(make([]Strip, 3), 2)), "==."},
		{keeps(Loosely(make([]Strip, 1), 2)), "."},
	} {
		if c.got != c.want {
			t.Errorf("%s, want %s", c.got, c.want)
		}
	}
}
