package compile_test

import (
	"io/fs"
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// sharing checks a pattern that uses the file common.ovillo.
func sharing(t *testing.T, main, common string) (*plan.Pattern, diag.List) {
	t.Helper()
	open := func(name string) ([]byte, error) {
		if name == "common.ovillo" {
			return []byte(common), nil
		}
		return nil, fs.ErrNotExist
	}
	f, found := lang.Load(source.NewFile("main.ovillo", main), open)
	require.Empty(t, found)
	return compile.Compile(f)
}

const sharedShelf = `sizes "S", "M"
  fit head 40 (44) cm, hand 11 (12) cm
end
gauge 10 cm, blocked
  sc  20 sts, 24 rounds
  dc  20 sts, 11 rounds
  hdc 20 sts, 16 rounds, hook 3.5 mm
  ch  20 sts
end
hook 4 mm
yarn salt
  name en "salt" es "sal"
  weight light
  fibre wool 100 %
  surface smooth
  ball 50 g, 125 m
  swatch 20 sts by 24 rounds of sc, 5.4 g
end
yarn deep like salt
  name en "deep" es "profundo"
end
stitch pebble
  takes 1, makes 1, tall as sc
  name en "pebble" es "guijarro"
  abbr en "peb" es "guij"
  en | Pull up a loop.
  es | Sacar una hebra.
end
stitch broken
  takes 1, makes 1, tall as sc
end
let around_it = 80 (88)
let never = 1 / 0
care
  en | Wash by hand.
  es | Lavar a mano.
end
licence
  en | Free.
  es | Libre.
end
`

const sharingHat = `use "common.ovillo"
pattern p
  title en "P" es "P"
  terms us
  base sc
  begin sc with ch 1
  licence
    en | Not to be sold.
    es | No se vende.
  end
end
part band
  title en "Band" es "Banda"
  yarn deep
  in joined rounds
  foundation sc around_it, join
  6 rounds: sc in each
  fasten off
end
measure
  width en "Around" es "Contorno" = around band fits fit.head ease -4 to 2 cm
end
`

// A pattern takes from a shared file what it names, and nothing else of it is printed or looked at.
func TestSharedIsTakenAsNamed(t *testing.T) {
	p, found := sharing(t, sharingHat, sharedShelf)
	for _, d := range found {
		if diag.Lookup(d.Code).Severity != diag.Note {
			t.Errorf("%s: %s", d.Code, diag.Message(d, "en"))
		}
	}
	require.NotNil(t, p)
	var yarns, gauges, body []string
	for _, y := range p.Yarns {
		yarns = append(yarns, y.Name)
	}
	for _, g := range p.Gauges {
		gauges = append(gauges, string(g.Stitch))
	}
	for _, b := range p.Body {
		body = append(body, b.Name)
	}
	require.Equal(t, []string{"deep"}, yarns)
	require.Equal(t, int64(50_000), p.Yarns[0].BallWeight, "a yarn has what the one has that it is like")
	require.Len(t, p.Yarns[0].Amount, 2)
	require.Equal(t, []string{"sc"}, gauges)
	require.Equal(t, []string{"head"}, body)
	require.Empty(t, p.Own)
	require.Equal(t, "Wash by hand.", p.Care.Text["en"])
	require.Equal(t, "Not to be sold.", p.Licence.Text["en"], "the pattern's own text goes before")
	require.Len(t, p.Used, 1)
	require.Equal(t, sharedShelf, string(p.Used[0].Text))
}

// The same pattern in one file is the same pattern.
func TestSharedIsAsInOneFile(t *testing.T) {
	common, err := os.ReadFile("../examples/bahia/common.ovillo")
	require.NoError(t, err)
	hat, err := os.ReadFile("../examples/bahia/hat.ovillo")
	require.NoError(t, err)
	shared, _ := sharing(t, string(hat), string(common))
	whole := string(common)
	for _, gone := range [][2]string{{"  dc  20 sts, 11 rows\n", ""}, {"yarn amber like salt  # for a third pattern, to come\n  name en \"amber\" es \"ámbar\"\nend\n", ""},
		{", hand 11.5 (12, 13) cm", ""}} {
		require.Contains(t, whole, gone[0])
		whole = strings.Replace(whole, gone[0], gone[1], 1)
	}
	cut := func(word string) string { // a text goes into the header
		_, rest, ok := strings.Cut(whole, "\n"+word+"\n")
		require.True(t, ok)
		body, _, _ := strings.Cut(rest, "\nend\n")
		text := word + "\n" + body + "\nend\n"
		whole = strings.Replace(whole, text, "", 1)
		return text
	}
	head := cut("note") + cut("care") + cut("licence")
	main := strings.Replace(string(hat), "use \"common.ovillo\"\n", "", 1)
	main = strings.Replace(main, "  intro\n", head+"  intro\n", 1)
	f, found := lang.Parse(source.NewFile("one.ovillo", whole+main))
	require.Empty(t, found)
	one, found := compile.Compile(f)
	require.Empty(t, found)
	shared.Used = nil
	require.True(t, reflect.DeepEqual(worded(bare(one)), worded(bare(shared))), "the two differ")
}

// What is said twice is an error with both places, each in its file.
func TestSharedTwice(t *testing.T) {
	for what, add := range map[string]string{
		"yarn":   "yarn deep\n  name en \"a\" es \"b\"\nend\n",
		"sizes":  "sizes \"S\"\nend\n",
		"let":    "let around_it = 40\n",
		"gauge":  "gauge 10 cm\n  sc 18 sts, 20 rounds\nend\n",
		"stitch": "stitch pebble\n  takes 1, makes 1, tall as sc\n  name en \"pebble\" es \"guijarro\"\n  abbr en \"peb\" es \"guij\"\n  en | a\n  es | a\nend\n",
	} {
		t.Run(what, func(t *testing.T) {
			var b strings.Builder
			f, _ := lang.Load(source.NewFile("main.ovillo", sharingHat+add), func(string) ([]byte, error) { return []byte(sharedShelf), nil })
			out := compile.CompileWith(f, compile.Options{})
			require.True(t, out.Found.HasErrors())
			require.NoError(t, diag.Printer{Lang: "en"}.Text(&b, f.Source, out.Found))
			text := b.String()
			require.Contains(t, text, "main.ovillo:")
			require.Contains(t, text, "common.ovillo:")
			shown := 0
			for line := range strings.Lines(add) {
				if strings.Contains(text, "| "+strings.TrimRight(line, "\n")) {
					shown++
				}
			}
			require.Positive(t, shown, text)
		})
	}
}
