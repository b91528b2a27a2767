package compile

import (
	"strings"
	"testing"

	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// A line of a chart without marks is told how many it needs if another line tells, and what to do.
func TestChartLinesWithoutMarks(t *testing.T) {
	for _, c := range []struct {
		lines    string
		en, help string
	}{
		{"  2 | . .\n  1 |\n", "this row of the chart has 0 cells, and needs 2", "draw 2 marks behind the bar, as in the other rows, or take the line out"},
		{"  2 |\n  1 | .\n", "this row of the chart has 0 cells, and needs 1", "draw 1 mark behind the bar, as in the other rows, or take the line out"},
		{"  2 |\n  1 |\n", "this row of the chart has 0 cells, and needs 1 or more", "draw a mark of the legend behind the bar for each cell, or take the line out"},
		{"  2 | . . .\n  1 | . .\n", "this row of the chart has 3 cells, and needs 2", "give every row 2 cells, as many as row 1 has, the lowest"},
	} {
		f, faults := lang.Parse(source.NewFile("chart.ovillo", sizedHead(1)+"chart net\n  mesh dc and 1\n  legend \".\" open, \"x\" filled\n"+c.lines+"end\n"+
			flatPart("p", "chain 6", "row: sc in each = 6")))
		if len(faults) > 0 {
			t.Fatal(diag.Message(faults[0], "en"))
		}
		found := CompileWith(f, Options{}).Found
		if len(found) != 1 || found[0].Code != codeChartWidth {
			t.Errorf("%q: %v", c.lines, saidBy(found))
			continue
		}
		if got := diag.Message(found[0], "en"); got != c.en {
			t.Errorf("%q: %s", c.lines, got)
		}
		var b strings.Builder
		diag.Printer{Lang: "en"}.Text(&b, f.Source, found)
		if !strings.Contains(b.String(), "help: "+c.help+"\n") {
			t.Errorf("%q: %s", c.lines, b.String())
		}
	}
}
