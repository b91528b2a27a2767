package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"ovillo/compile/plan"
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
		switch rapid.IntRange(0, 6).Draw(t, "what") {
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
		default:
			add(k, k, "sc in next %d", k)
		}
	}
	return strings.Join(items, ", "), makes
}

// The mirror of a part has the stitches of the part in every row, and the mirror of the mirror is the part again.
func TestMirrorLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 10).Draw(t, "n")
		start, lines := n, ""
		for range rapid.IntRange(1, 4).Draw(t, "rows") {
			text, makes := drawRow(t, n)
			lines += "  row: " + text + "\n"
			n = makes
		}
		p := clean(t, piece("rows", fmt.Sprintf("chain %d", start), lines)+mirrorPart("other", "piece")+mirrorPart("again", "other"))
		a, b, c := p.Parts[0], p.Parts[1], p.Parts[2]
		if got, want := stitchesOf(p, 1, 0), stitchesOf(p, 0, 0); !slices.Equal(got, want) {
			t.Fatalf("%s\nthe mirror makes %v, the part %v", lines, got, want)
		}
		for i := range a.Steps {
			first, ok := a.Steps[i].(*plan.Row)
			if !ok {
				continue
			}
			back, again := b.Steps[i].(*plan.Row), c.Steps[i].(*plan.Row)
			if x, y := outline(first.Work), outline(again.Work); x != y {
				t.Fatalf("mirrored twice %s is %s", x, y)
			}
			if len(first.Work) != len(back.Work) {
				t.Fatalf("%d instructions, %d in the mirror", len(first.Work), len(back.Work))
			}
		}
	})
}

func mirrorPart(name, of string) string {
	return fmt.Sprintf("\npart %s mirror of %s\n  title en \"%s\" es \"%s\"\nend\n", name, of, name, name)
}

// outline is what instructions do, without where they stand in the source.
func outline(work []plan.Instr) string {
	var out []string
	for _, in := range work {
		out = append(out, fmt.Sprint(in.Op, in.Form.Together, in.Per, in.N, in.Reach, in.Last, outline(in.Body)))
	}
	return "(" + strings.Join(out, " ") + ")"
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
