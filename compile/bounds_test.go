package compile

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang"
	"ovillo/lang/source"
)

// As many things of a kind as there may be are checked; one more is refused, and then nothing else is said.
func TestAtTheBound(t *testing.T) {
	const part = "part strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"
	head := "pattern p\n  title en \"P\" es \"P\"\n  terms us\nend\nsizes \"S\"\nend\n"
	each := func(line string) func(int) string {
		return func(n int) string {
			var b strings.Builder
			b.WriteString(head)
			for i := range n {
				b.WriteString(strings.ReplaceAll(line, "#", fmt.Sprint(i)))
			}
			return b.String() + part
		}
	}
	within := func(block, line string) func(int) string {
		return func(n int) string { return head + block + "\n" + strings.Repeat("  "+line+"\n", n) + "end\n" + part }
	}
	for _, c := range []struct {
		what string
		at   int
		text func(n int) string
	}{
		{"parts", maxParts - 1, each("part p#\n  title en \"P#\" es \"P#\"\n  in rows\n  chain 6\nend\n")},
		{"charts", maxCharts, each("chart c#\n  legend \".\" a\n  1 | .\nend\n")},
		{"squares of charts", maxCells - 1, func(n int) string {
			return head + "yarn a\nend\nchart c\n  legend \".\" a\n" + strings.Repeat("  | "+strings.Repeat(".", 250)+"\n", n/250) + "end\n" +
				"chart d\n  legend \".\" a\n  | " + strings.Repeat(".", n%250+1) + "\nend\n" + part
		}},
		{"notes", maxNotes, each("note\n  en | Note #.\n  es | Nota #.\nend\n")},
		{"yarns", maxYarns, each("yarn y#\nend\n")},
		{"notions", maxNotions, each("notion en \"ring\" es \"anilla\"\n")},
		{"stitches", maxOwn, each("stitch s#\n  takes 1, makes 1, tall as sc\nend\n")},
		{"measures", maxMeasures, within("measure", "wide = 1 cm")},
		{"steps", maxFinish, within("finish", "weave in ends")},
		{"patterns of a book", maxBound, func(n int) string {
			return "book b\n" + strings.Repeat("  pattern \"a.ovillo\"\n", n) + "end\n"
		}},
	} {
		for over := range 2 {
			f, faults := lang.Parse(source.NewFile("many.ovillo", c.text(c.at+over)))
			if len(faults) > 0 {
				t.Fatalf("%s cannot be read: %s", c.what, faults[0].Code)
			}
			out := CompileWith(f, Options{})
			said := 0
			for _, d := range out.Found {
				if d.Code == codeTooMany {
					said++
				}
			}
			if said != over || over == 1 && (len(out.Found) != 1 || out.Pattern != nil) {
				t.Errorf("%d %s: %d messages in all, %d of the bound", c.at+over, c.what, len(out.Found), said)
			}
		}
	}
}
