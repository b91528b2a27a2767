package mutant

import (
	"fmt"
	"strings"
	"testing"
)

// FuzzChart works a chart of any squares, with any legend, in any way: it is set as pages, with its drawing, or a message says what is
// wrong.
func FuzzChart(f *testing.F) {
	f.Add(". x x .\nx . . x", `"." sand, "x" kelp`, "rows from chart c: sc by chart across", 12)
	f.Add(". x\nx .\n. .", `"." sand, "x" kelp`, "rows from chart c, rows 3 to 1, 2 times, with sand: sc blo by chart centred across", 7)
	f.Add("|x|.", `"x." kelp, "|" sand`, "row: from chart c row 2 across", 3)
	f.Add("x . x\n. . .", "", "rows from chart c: dc in next 3, dc by chart to last 3, dc in next 3", 13)
	f.Fuzz(func(t *testing.T, grid, legend, row string, wide int) {
		if len(grid) > 1000 || len(row) > 500 || wide < 1 || wide > 200 {
			return
		}
		mesh := "  legend " + legend + "\n"
		if legend == "" {
			mesh = "  mesh dc and 2\n  legend \".\" open, \"x\" filled\n"
		}
		text := fmt.Sprintf("pattern p\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"S\", \"M\"\nend\ngauge 10 cm\n  sc 20 sts, 24 rows\n  dc 18 sts, 10 rows\nend\n"+
			"yarn sand\n  name en \"sand\" es \"arena\"\nend\nyarn kelp\n  name en \"kelp\" es \"alga\"\nend\n"+
			"chart c\n  title en \"C\" es \"C\"\n%s  | %s\nend\n"+
			"part p\n  title en \"P\" es \"P\"\n  in rows\n  yarn sand\n  chain %d (%d)\n  row: sc in each\n  %s\n  fasten off\nend\nchart d of p\n  title en \"D\" es \"D\"\nend\n",
			mesh, strings.ReplaceAll(grid, "\n", "\n  | "), wide, 2*wide, row)
		m := &mutant{of: &example{name: "chart.ovillo"}, text: text}
		o := tried(m)
		if o.fault != "" {
			t.Fatal(o.fault)
		}
		if o.checked.Printable() {
			if _, _, err := set(o); err != nil {
				t.Fatal(err)
			}
		}
	})
}

// FuzzEdit changes any stretch of an example into anything: it is set as pages, or a message says what is wrong.
func FuzzEdit(f *testing.F) {
	examples := readExamples(f)
	f.Add(uint8(3), uint16(900), uint16(4), "12")
	f.Add(uint8(0), uint16(1500), uint16(0), "row: sc in each\n")
	f.Fuzz(func(t *testing.T, which uint8, at, long uint16, text string) {
		e := examples[int(which)%len(examples)]
		from := int(at) % len(e.text)
		to := min(from+int(long)%200, len(e.text))
		if len(text) > 400 {
			return
		}
		o := tried(&mutant{of: e, text: e.text[:from] + text + e.text[to:]})
		if o.fault != "" {
			t.Fatal(o.fault)
		}
		if o.checked.Printable() || o.checked.Bindable() {
			if _, _, err := set(o); err != nil {
				t.Fatal(err)
			}
		}
	})
}
