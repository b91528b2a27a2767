package compile_test

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// fanSource is a band of three sizes whose stitches grow in uneven steps, with lines before them.
func fanSource(before string) string {
	return `pattern band
  title en "Band" es "Banda"
  terms us
end
sizes "S", "M", "L"
end
gauge 10 cm
  sc 16 sts, 18 rows
end
` + before + `
let cast = stitches(30 (37.5, 45) cm, sc, multiple of 8)
part band
  title en "Band" es "Banda"
  in rows
  chain cast
  meant OV601 en "so it is" es "así es"
  row: sc in each = cast + 1
end
`
}

// TestMeant: a warning with a reason is a note that carries it; an error stays an error; and beside a fault a reason that
// has nothing to answer is left alone.
func TestMeant(t *testing.T) {
	const why = `meant OV608 en "one fan is eight stitches" es "un abanico son ocho puntos"`
	for _, c := range []struct {
		name, text string
		want       map[diag.Code]diag.Severity
	}{
		{"answered, and an error", fanSource(why), map[diag.Code]diag.Severity{"OV608": diag.Note, "OV601": diag.Error}},
		{"not answered", fanSource(""), map[diag.Code]diag.Severity{"OV608": diag.Warning, "OV601": diag.Error}},
		{"another line", fanSource(why + "\nlet other = 3"), map[diag.Code]diag.Severity{"OV608": diag.Warning, "OV601": diag.Error}},
		{"nothing left to answer", strings.Replace(fanSource(""), "= cast + 1", "= cast", 1),
			map[diag.Code]diag.Severity{"OV608": diag.Warning, "OV813": diag.Warning}},
		{"two reasons in a row", strings.Replace(fanSource(why+"\n"+strings.Replace(why, "OV608", "ov607", 1)), "= cast + 1", "= cast", 1),
			map[diag.Code]diag.Severity{"OV608": diag.Note, "OV813": diag.Warning}},
	} {
		t.Run(c.name, func(t *testing.T) {
			file := source.NewFile("band.ovillo", c.text)
			tree, slips := lang.Parse(file)
			require.Empty(t, slips)
			_, found := compile.Compile(tree)
			got := map[diag.Code]diag.Severity{}
			for _, d := range found {
				got[d.Code] = d.Severity()
			}
			require.Equal(t, c.want, got)
			var b bytes.Buffer
			require.NoError(t, diag.Text(&b, file, found, "es", false))
			require.Equal(t, c.want["OV608"] == diag.Note, strings.Contains(b.String(), "= a propósito: un abanico son ocho puntos"), b.String())
		})
	}
}
