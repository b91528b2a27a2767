package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

// TestChange works repeats and asks what each pass changes. The numbers are by hand.
func TestChange(t *testing.T) {
	for _, k := range []struct{ name, rows, want string }{
		{"a run of rows", "3 rows: inc, sc in each to last 1, inc = 18 (22, 26)", "+2 sc"},
		{"decreases", "row: sc in each\nrepeat 3 times\n  row: sc in each\n  row: dec, sc in each to last 2, dec\nend\nrow: sc in each = 6 (10, 14)", "−2 sc"},
		{"nothing changes", "4 rows: sc in each", ""},
		{"one row is no repeat", "row: inc, sc in each", ""},
		{"sizes that differ", "row: sc in each\nrepeat 2 times\n  row: sc in each\n  row: [inc] 2 (3, 4) times, sc in each\nend", "+2 (3, 4) sc"},
		{"sizes with passes of their own", "row: sc in each\nrepeat 2 (3, 4) times\n  row: sc in each\n  row: inc, sc in each\nend", "+1 sc"},
		{"another stitch in the row before", "row: dc in each\nrepeat 2 times\n  row: sc in each\n  row: inc, sc in each\nend", "+1 sc"},
		{"not the same each time", "row: sc in each\nrepeat 2 times\n  row: [inc, sc in next] across\nend", ""},
	} {
		rows := "  " + strings.ReplaceAll(k.rows, "\n", "\n  ")
		text := "pattern one\n  terms us\n  base sc\nend\nsizes \"S\", \"M\", \"L\"\nend\npart one\n  title en \"One\" es \"Uno\"\n  in rows\n  chain 12 (16, 20)\n  row: sc in each\n" + rows + "\nend\n"
		f, list := lang.Parse(source.NewFile("change.ovillo", text))
		p, more := compile.Compile(f)
		require.NotNil(t, p, k.name)
		require.False(t, append(list, more...).HasErrors(), "%s: %v", k.name, append(list, more...))
		require.Equal(t, k.want, changesOf(p), k.name)
	}
}

// changesOf writes what the steps of the first part change.
func changesOf(p *plan.Pattern) string {
	var out []string
	for _, s := range p.Parts[0].Steps {
		var change []plan.Count
		switch s := s.(type) {
		case *plan.Row:
			change = s.Change
		case *plan.Block:
			change = s.Change
		}
		for _, k := range change {
			text := fmt.Sprintf("%+d", k.N[0])
			if _, one := k.N.Same(); !one {
				text += fmt.Sprintf(" (%d, %d)", k.N[1], k.N[2])
			}
			out = append(out, strings.Replace(text, "-", "−", 1)+" "+string(k.Form.ID))
		}
	}
	return strings.Join(out, "; ")
}
