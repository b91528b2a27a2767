package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang"
	"ovillo/lang/source"
)

const withPhoto = `pattern trial
  title en "Trial" es "Prueba"
  terms us
  %
end
sizes "S", "M"
end
part strip
  title en "Strip" es "Tira"
  in rows
  chain 6
  row: sc in each = 6
end
`

func TestPhoto(t *testing.T) {
	const words = ` en "A strip." es "Una tira."`
	for _, c := range []struct{ lines, want string }{
		{`photo "hat.jpg" size "M"` + words, ""},
		{`photo "pictures/hat.jpg"` + words, ""},
		{`photo "hat.jpg" size "L"` + words, "OV206 L"},
		{`photo "hat.jpg"`, "OV801 hat.jpg"},
		{`photo "hat.jpg" en "A strip."`, "OV801 hat.jpg"},
		{`photo "hat.jpg" en "A strip of 3 cm." es "Una tira de 4 cm."`, "OV804 4"},
		{`photo "hat.jpg"` + words + "\n  photo \"hat.jpg\"" + words, "OV201 photo"},
		{`photo "none.jpg"` + words, "OV729 none.jpg"},
		{`photo "hat.tif"` + words, "OV730 hat.tif"},
		{`photo "locked.jpg"` + words, "OV730 locked.jpg"},
		{`photo "pictures/../hat.jpg"` + words, "OV728 hat.jpg"},
		{`photo "/hat.jpg"` + words, "OV728 hat.jpg"},
	} {
		f, list := lang.Parse(source.NewFile("trial.ovillo", strings.Replace(withPhoto, "%", c.lines, 1)))
		require.Empty(t, list, c.lines)
		out := compile.CompileWith(f, compile.Options{Open: files.Open})
		if c.want == "" {
			require.Empty(t, out.Found, c.lines)
			require.Equal(t, "jpeg", out.Pattern.Photo.Format)
			require.Equal(t, [2]int{1000, 40}, [2]int{out.Pattern.Photo.W, out.Pattern.Photo.H})
			require.NotEmpty(t, out.Pattern.Photo.Data)
			continue
		}
		code, about, _ := strings.Cut(c.want, " ")
		require.Len(t, out.Found, 1, c.lines)
		require.Equal(t, code, string(out.Found[0].Code), c.lines)
		require.Contains(t, f.Source.Slice(out.Found[0].Span), about, c.lines)
	}
}

// The size that was made for the photograph is known in an edition of one size, whichever that is.
func TestPhotoInOneSize(t *testing.T) {
	f, _ := lang.Parse(source.NewFile("trial.ovillo", strings.Replace(withPhoto, "%", `photo "hat.jpg" size "M" en "A strip." es "Una tira."`, 1)))
	p := compile.CompileWith(f, compile.Options{Open: files.Open}).Pattern
	require.Equal(t, "1 M", fmt.Sprint(p.Photo.Size, " ", p.Photo.Made.Name))
	require.Equal(t, "-1 M", fmt.Sprint(p.In(0).Photo.Size, " ", p.In(0).Photo.Made.Name))
	require.Equal(t, "0 M", fmt.Sprint(p.In(1).Photo.Size, " ", p.In(1).Photo.Made.Name))
	require.Equal(t, 1, p.Photo.Size)
}
