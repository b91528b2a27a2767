package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

// drawRow is a row that comes out over n stitches, as it is written; all says that one of its instructions may go as far as
// it can. It returns how many stitches the row makes.
func drawRow(t *rapid.T, n int) (text string, makes int) {
	var items []string
	add := func(takes, made int, format string, args ...any) {
		items = append(items, fmt.Sprintf(format, args...))
		n -= takes
		makes += made
	}
	for n > 0 {
		k := rapid.IntRange(1, n).Draw(t, "k")
		switch rapid.IntRange(0, 9).Draw(t, "what") {
		case 0:
			add(1, 1, "sc in next")
		case 1:
			add(1, 2, "inc")
		case 2:
			if n < 2 {
				continue
			}
			add(2, 1, "dec")
		case 3:
			add(k, 3*k, "3 sc in each of next %d", k)
		case 4:
			m := n / k
			add(k*m, (k-1)*m+2*m, "[sc in next %d, 2 sc in next] %d times", k-1, m)
		case 5:
			if n < 3 {
				continue
			}
			add(3, 2, "sc2tog, sc in next")
		case 6:
			if n < 4 {
				continue
			}
			add(4, 1, "[sc in next, skip 1, sc in next 2] together")
		case 7:
			add(1, 3, "sc3shell in next")
		case 8:
			add(1, 1, "sc2cl in next")
		default:
			add(k, k, "sc in next %d", k)
		}
	}
	return strings.Join(items, ", "), makes
}

// drawOpen is a row over n stitches with instructions that go as far as they can: to a marker before place m, or in it, and
// to the last few.
func drawOpen(t *rapid.T, n int, name string) (lines string, makes int) {
	m := rapid.IntRange(0, n-1).Draw(t, "marker")
	in := rapid.Bool().Draw(t, "in a stitch")
	lines = fmt.Sprintf("  count off: %d, mark %s, %d\n", m, name, n-m)
	if in {
		lines = fmt.Sprintf("  count off: %d, mark %s in next, %d\n", m, name, n-m-1)
	}
	var items []string
	fixed := func(k int) {
		if text, made := drawRow(t, k); text != "" {
			items, makes = append(items, text), makes+made
		}
	}
	open := func(from, to int, bound string) {
		items, makes = append(items, "sc "+bound), makes+to-from
	}
	before := rapid.IntRange(0, m).Draw(t, "before")
	first := rapid.IntRange(0, m-before).Draw(t, "first")
	fixed(first)
	if before > 0 {
		open(first, m-before, fmt.Sprintf("to %d before %s", before, name))
	} else {
		open(first, m, "to "+name)
	}
	least := before
	if in {
		least++ // the marked stitch itself is worked by a number, for from the other end one cannot stop behind it
	}
	k := rapid.IntRange(least, n-(m-before)).Draw(t, "behind")
	fixed(k)
	at := m - before + k
	last := rapid.IntRange(0, n-at).Draw(t, "last")
	open(at, n-last, fmt.Sprintf("to last %d", last))
	fixed(last)
	return lines + "  row: " + strings.Join(items, ", ") + "\n", makes
}

// The mirror of a part works into the mirrored places, row by row; and the mirror of the mirror is the part again.
func TestMirrorLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 10).Draw(t, "n")
		start, lines := n, ""
		for range rapid.IntRange(1, 4).Draw(t, "rows") {
			name := rapid.SampledFrom([]string{"m", "k"}).Draw(t, "name")
			text, makes := drawOpen(t, n, name)
			if rapid.Bool().Draw(t, "plain") {
				text, makes = drawRow(t, n)
				text = "  row: " + text + "\n"
			}
			lines += text
			n = makes
		}
		text := piece("rows", fmt.Sprintf("chain %d", start), lines) + mirrorPart("other", "piece") + mirrorPart("again", "other")
		clean(t, text)
		f, _ := lang.Parse(source.NewFile("mirror", text))
		one, edges := compile.Made(f, "piece", 0)
		other, _ := compile.Made(f, "other", 0)
		again, _ := compile.Made(f, "again", 0)
		for i := range one {
			if got, want := strings.Join(other[i], ", "), mirrorOf(one[i], edges[i]); got != want {
				t.Fatalf("%s\nrow %d of the mirror makes %s, want %s", lines, i+1, got, want)
			}
			if !slices.Equal(one[i], again[i]) {
				t.Fatalf("%s\nmirrored twice row %d makes %v, want %v", lines, i+1, again[i], one[i])
			}
		}
	})
}

// mirrorOf reads what a row made over an edge of n places from its other end.
func mirrorOf(made []string, n int) string {
	var out []string
	for _, s := range slices.Backward(made) {
		var form string
		var a, b int
		if _, err := fmt.Sscanf(s, "%s %d-%d", &form, &a, &b); err == nil {
			s = fmt.Sprintf("%s %d-%d", form, n-1-b, n-1-a)
		}
		out = append(out, s)
	}
	return strings.Join(out, ", ")
}

func mirrorPart(name, of string) string {
	return fmt.Sprintf("\npart %s mirror of %s\n  title en \"%s\" es \"%s\"\nend\n", name, of, name, name)
}

// Each size alone gives what it gives among the others.
func TestSizesAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sizes := rapid.IntRange(2, 4).Draw(t, "sizes")
		var reps, wide, deep, more []int
		for range sizes {
			reps = append(reps, rapid.IntRange(1, 5).Draw(t, "repeats"))
			wide = append(wide, rapid.IntRange(1, 6).Draw(t, "wide"))
			deep = append(deep, rapid.IntRange(0, 4).Draw(t, "deep"))
			more = append(more, rapid.IntRange(0, 1).Draw(t, "more"))
		}
		all := clean(t, graded(reps, wide, deep, more))
		for z := range sizes {
			one := clean(t, graded(reps[z:z+1], wide[z:z+1], deep[z:z+1], more[z:z+1]))
			if got, want := stitchesOf(all, 0, z), stitchesOf(one, 0, 0); !slices.Equal(got, want) {
				t.Fatalf("size %d: among others %v, alone %v\n%s", z, got, want, graded(reps, wide, deep, more))
			}
		}
	})
}

// graded is a source of several sizes: repeats of a width, a number of rows, and a row that only some sizes work.
func graded(reps, wide, deep, more []int) string {
	var names, bigger []string
	for z := range reps {
		names = append(names, fmt.Sprintf(`"%c"`, 'a'+z))
		if more[z] > 0 {
			bigger = append(bigger, names[z])
		}
	}
	text := "sizes " + strings.Join(names, ", ") + "\nend\n\nlet reps = " + list(reps) + "\nlet wide = " + list(wide) + "\n" + `
part piece
  title en "Piece" es "Pieza"
  base sc
  in joined rounds
  chain reps * (wide + 1), join
  round: [sc in next wide, inc] around                = reps * (wide + 2)
  round: [sc in next wide, dec] around = reps times   = reps * (wide + 1)
  ` + list(deep) + ` rounds: sc in each
`
	if len(bigger) > 0 {
		text += "  only " + strings.Join(bigger, ", ") + "\n    round: [sc in next wide, inc] around\n  end\n"
	}
	return text + "  round: inc reps evenly\n  round: sc to last wide, skip wide\n  fasten off\nend\n"
}

// list writes a number for each size.
func list(n []int) string {
	if len(n) == 1 {
		return fmt.Sprint(n[0])
	}
	var rest []string
	for _, v := range n[1:] {
		rest = append(rest, fmt.Sprint(v))
	}
	return fmt.Sprintf("%d (%s)", n[0], strings.Join(rest, ", "))
}

// What is set at even distances is set as far from the other end in the mirror.
func TestMirrorOfSpaced(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(8, 40).Draw(t, "n")
		k := rapid.IntRange(0, (n-2)/6).Draw(t, "times")
		where := rapid.SampledFrom([]string{"", " after 1", " before last 1"}).Draw(t, "where")
		what := rapid.SampledFrom([]string{"dec", "sc2tog, 3 sc in next", "skip 1, 2 sc in next"}).Draw(t, "what")
		first, last := rapid.IntRange(0, 1).Draw(t, "first"), rapid.IntRange(0, 1).Draw(t, "last")
		row := fmt.Sprintf("  row: sc in next %d, sc to last %d with [%s] %d times evenly%s, sc in next %d\n", first, last, what, k, where, last)
		text := piece("rows", fmt.Sprintf("chain %d", n), row) + mirrorPart("other", "piece")
		f, _ := lang.Parse(source.NewFile("mirror", text))
		if p, list := compile.Compile(f); p == nil || list.HasErrors() {
			t.Skip("no room")
		}
		one, edges := compile.Made(f, "piece", 0)
		other, _ := compile.Made(f, "other", 0)
		if got, want := strings.Join(other[0], ", "), mirrorOf(one[0], edges[0]); got != want {
			t.Fatalf("%s\nthe mirror makes %s, want %s", row, got, want)
		}
	})
}

// A number by its name, in slip stitches that become stitches left over, is the same number.
func TestMirrorOfNamedNumber(t *testing.T) {
	text := "let few = 3\n" + piece("rows", "chain 12", "  row: sc in each\n  row: sl st in next few, sc to last 2, dec = 8\n") + mirrorPart("other", "piece")
	p := clean(t, text)
	if got := stitchesOf(p, 1, 0); !slices.Equal(got, []int{12, 8}) {
		t.Fatalf("the mirror has %v stitches", got)
	}
}
