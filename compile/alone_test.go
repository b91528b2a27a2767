package compile_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

// A file that patterns share is no pattern, and nothing is missing in it; what is wrong in it whoever uses it is found.
func TestSharedFileAlone(t *testing.T) {
	const common = "sizes \"S\", \"M\"\nend\ngauge 10 cm\n  sc 20 sts, 22 rounds\nend\nyarn salt\n  name en \"salt\" es \"sal\"\nend\nlet rib = 4 (5)\n"
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"as it is":               {common, nil},
		"without sizes":          {"let rib = 4 (5, 6)\nhook 4 mm\n", nil},
		"in one language":        {"yarn salt\n  name en \"salt\"\nend\ncare\n  en | By hand.\nend\n", nil},
		"names of other files":   {"sizes \"S\"\nend\nlet b = stitches(fit.head, sc) + edge\nyarn deep like salt\n  name en \"deep\" es \"hondo\"\nend\ngroup g = [pebble, sc]\nnote\n  en | Work {edge}.\n  es | Tejer {edge}.\nend\n", nil},
		"a unit of another kind": {common + "let width = rib + 3 cm\n", []string{"OV303"}},
		"twice":                  {common + "let rib = 3\n", []string{"OV201"}},
		"too few numbers":        {common + "let other = 3 (4, 5)\n", []string{"OV301"}},
		"a language is missing":  {common + "yarn deep\n  name en \"deep\"\nend\n", []string{"OV801"}},
		"a hook by weight":       {common + "hook 4 g\n", []string{"OV751"}},
		"a sign":                 {common + "note\n  en | Snow ☃.\n  es | Nieve.\nend\n", []string{"OV814"}},
	} {
		t.Run(name, func(t *testing.T) {
			f, found := lang.Load(source.NewFile("common.ovillo", c.text), nil)
			require.Empty(t, found)
			require.True(t, f.OnlyShared())
			out := compile.CompileWith(f, compile.Options{})
			require.True(t, out.Shared)
			require.Nil(t, out.Pattern)
			var codes []string
			for _, d := range out.Found {
				codes = append(codes, string(d.Code))
			}
			require.True(t, slices.Equal(c.want, codes), "found %v", out.Found)
			require.Equal(t, c.want == nil, out.Sound)
		})
	}
	for _, text := range []string{"", "pattern a\n  title en \"A\" es \"A\"\nend\n" + common, common + "part p\n  in rows\n  chain 3\nend\n", "measure width = width of p\n"} {
		f, _ := lang.Load(source.NewFile("p.ovillo", text), nil)
		require.False(t, compile.CompileWith(f, compile.Options{}).Shared, text)
	}
}
