package compile_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// worn compiles a source that must have no errors.
func worn(t *testing.T, text string) *plan.Pattern {
	t.Helper()
	f, list := lang.Parse(source.NewFile("p.ovillo", text))
	require.False(t, list.HasErrors(), "%s\n%v", text, list)
	p, list := compile.Compile(f)
	require.False(t, list.HasErrors(), "%s\n%v", text, list)
	return p
}

// codesOf compiles a source and gives the codes of what was found.
func codesOf(t *testing.T, text string) map[diag.Code]bool {
	t.Helper()
	f, list := lang.Parse(source.NewFile("p.ovillo", text))
	require.False(t, list.HasErrors(), "%s\n%v", text, list)
	_, list = compile.Compile(f)
	codes := map[diag.Code]bool{}
	for _, d := range list {
		codes[d.Code] = true
	}
	return codes
}

// TestBodyFromTables holds which measures of the wearer a pattern gets: the designer's own first, then those of the table that the
// source uses, each with its sources and with whether a figure of it is from memory. The figures are those of the sources: chest
// of a toddler in size 80, 50.5 cm (ottobredesign.com), of a child of 4 years, 58.5 cm (Craft Yarn Council, from memory); upper
// arm of a child of 4 years, 19 cm (crochetkitten.com), of a year, 14.4 cm (WHO Child Growth Standards).
func TestBodyFromTables(t *testing.T) {
	p := worn(t, `pattern p
  kind blanket
  terms us
end
sizes "1 y", "4 y"
  body babies, children by age
  age  12 (48) months
  fit  waist 48 (52) cm, hand 12 (14) cm
end
gauge 10 cm
  sc 10 sts, 10 rows
end
let wide = stitches(fit.chest, sc)
let arm  = stitches(fit.upper_arm, sc)
part one
  chain stitches(fit.waist, sc)
  row: sc in each
end
`)
	mm := plan.Millimetre
	var names []string
	for _, b := range p.Body {
		names = append(names, b.Name)
	}
	require.Equal(t, "waist hand chest upper_arm", strings.Join(names, " "))
	require.Equal(t, plan.Lengths{480 * mm, 520 * mm}, p.Body[0].Values, "own figures stand before the table")
	require.Nil(t, p.Body[0].Sources)
	require.Equal(t, plan.Lengths{505 * mm, 585 * mm}, p.Body[2].Values)
	require.True(t, p.Body[2].Memory, "one of the two sizes is from memory")
	require.Len(t, p.Body[2].Sources, 2)
	require.Equal(t, plan.Lengths{144 * mm, 190 * mm}, p.Body[3].Values)
	require.False(t, p.Body[3].Memory)
	require.Equal(t, "WHO Child Growth Standards", p.Body[3].Sources[0].Name["en"])
	require.True(t, p.Remembered("chest"))
	require.False(t, p.Remembered("waist"))
}

// TestReferenceListsTables: the reference names every table, with its first and last size of each kind and each of its measures.
func TestReferenceListsTables(t *testing.T) {
	text, err := os.ReadFile("../lang/reference.md")
	require.NoError(t, err)
	for _, b := range standard.BodyTables() {
		_, line, ok := strings.Cut(string(text), "\n| `"+b.Name+"` |")
		require.True(t, ok, b.Name)
		line, _, _ = strings.Cut(line, "\n")
		if strings.HasSuffix(line, "| the same |") {
			line += string(text) // as babies
		}
		for _, m := range b.Measures {
			require.Contains(t, line, "`"+m+"`", b.Name)
		}
		rows := b.RowNames()
		for _, name := range []string{rows[0], rows[len(rows)-1]} {
			if _, _, aged := b.Ages(); aged && (b.Name == "hands" || b.Name == "feet") && name == rows[0] {
				continue // these go by age
			}
			require.Contains(t, line, `"`+name+`"`, b.Name)
		}
	}
}
