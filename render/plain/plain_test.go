package plain

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/words"
)

func patterns(t testing.TB) map[string]*plan.Pattern {
	t.Helper()
	folder := filepath.Join("..", "..", "examples")
	paths, err := filepath.Glob(filepath.Join(folder, "*.ovillo"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	out := map[string]*plan.Pattern{}
	for _, path := range paths {
		data, err := os.ReadFile(path)
		require.NoError(t, err)
		tree, _ := lang.Parse(source.NewFile(path, string(data)))
		c := compile.CompileWith(tree, compile.Options{Open: func(name string) ([]byte, error) { return os.ReadFile(filepath.Join(folder, name)) }})
		require.False(t, c.Found.HasErrors(), path)
		out[strings.TrimSuffix(filepath.Base(path), ".ovillo")] = c.Pattern
	}
	return out
}

// planned is a pattern that is sound, from its source.
func planned(t testing.TB, text string) *plan.Pattern {
	t.Helper()
	tree, said := lang.Parse(source.NewFile("cap.ovillo", text))
	require.False(t, said.HasErrors())
	c := compile.CompileWith(tree, compile.Options{})
	require.False(t, c.Found.HasErrors(), c.Found)
	return c.Pattern
}

func speaker(t testing.TB, tag string) *words.Language {
	t.Helper()
	l, err := words.For(tag)
	require.NoError(t, err)
	return l
}

func written(t testing.TB, p *plan.Pattern, o Options) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, Write(&b, p, o))
	return b.String()
}

// markdown finds what would be taken for markup at the beginning of a line or around words.
var markdown = regexp.MustCompile("(?m)^#|^ {0,3}[-*+] |[<>`*]|__|\\]\\(")

// TestPlain: no text has a sign that boxes refuse or take for markup, whole or short; a short one is short, says what it leaves out, and
// leaves out no caution.
func TestPlain(t *testing.T) {
	left, cautions := 0, 0
	for name, p := range patterns(t) {
		for _, tag := range []string{"en", "es", "es-MX", "en-GB"} {
			l := speaker(t, tag)
			whole, short := written(t, p, Options{Lang: l}), written(t, p, Options{Lang: l, Short: true})
			for _, s := range []string{whole, short} {
				assert.Empty(t, markdown.FindString(s), name)
				assert.True(t, utf8.ValidString(s), name)
				assert.NotContains(t, s, "\u00a0", name)
				for _, c := range p.Cautions {
					cautions++
					said := []rune(oneLine(plainly(l.Caution(c).String())))
					assert.Contains(t, oneLine(s), string(said[:min(len(said), 40)]), "%s, %s: %s", name, tag, c.ID)
				}
			}
			assert.LessOrEqual(t, utf8.RuneCountInString(short), Most, name)
			if short != whole {
				left++
				head, _, _ := strings.Cut(l.Say(words.LeftOutHead), "{}")
				assert.Contains(t, short, plainly(head), name)
			}
		}
	}
	assert.Greater(t, left, 10)
	assert.Greater(t, cautions, 50)
}

// TestManyCautions: safety is not cut, however long it is.
func TestManyCautions(t *testing.T) {
	p := *patterns(t)["duna-hat"]
	for i := range 200 {
		c := p.Cautions[0]
		c.Text = plan.Text{"en": strings.Repeat("take care ", 9) + strings.Repeat("i", i+1) + ".", "es": "."}
		p.Cautions = append(p.Cautions[:len(p.Cautions):len(p.Cautions)], c)
	}
	s := written(t, &p, Options{Lang: speaker(t, "en"), Short: true})
	assert.Greater(t, utf8.RuneCountInString(s), Most)
	assert.Equal(t, 200, strings.Count(s, strings.TrimSpace(strings.Repeat("take care ", 9))))
}

// TestResizing: what is worked out for the examples, by hand from their sources: the leggings have 4 sts each 5 mm (20 to 10 cm), a multiple of 4,
// rounds of 10 mm; the mittens of the set grow from a ring; the ripple 13 and 1 more, at 20 hdc to 10 cm.
func TestResizing(t *testing.T) {
	all := patterns(t)
	for _, c := range []struct{ name, tag, want string }{
		{"marisma-leggings", "en", "Waistband: The number at the start is a multiple of 4. With 4 stitches more or fewer there it is 2 cm (0.8 inches) wider or narrower around."},
		{"marisma-leggings", "es", "Cuerpo: Con 1 vuelta de más o de menos, el largo cambia en 1 cm."},
		{"resaca-blanket", "en", "The number at the start is a multiple of 13, plus 1. With 13 stitches more or fewer there it is 6.5 cm (2½ inches) wider or narrower."},
		{"jarcia-headband", "en", "The number at the start is the designer's"},
		{"bajamar-blanket", "es", "Cada motivo de más o de menos a lo ancho o a lo largo cambia la medida en 9 cm."},
	} {
		assert.Contains(t, written(t, all[c.name], Options{Lang: speaker(t, c.tag)}), c.want)
	}
}

// TestResizingFromAMiddle: a piece that grows to a number made from the gauge, worked until it measures a length. By hand: 16 stitches and 12
// rounds to 10 cm, so 2 stitches are 1.25 cm and a round is 0.83 cm.
func TestResizingFromAMiddle(t *testing.T) {
	src := `pattern cap
  title en "Cap" es "Gorro"
  terms us
  base hdc
  in joined rounds
end
sizes "S", "L"
end
gauge 10 cm
  hdc 16 sts, 12 rounds
end
hook 4.5 mm
let edge = stitches(42 (47) cm, hdc, multiple of 2)
let missing = edge - 64 (72)
part cap
  title en "Cap" es "Gorro"
  ring
  round: 8 hdc in ring
  repeat 7 (8) times
    round: inc 8 evenly
  end
  round: inc missing evenly = edge
  rounds to 16 (18) cm: hdc in each
  fasten off
end
`
	p := planned(t, src)
	assert.Contains(t, written(t, p, Options{Lang: speaker(t, "en")}),
		"Cap: It grows to 68 (76) stitches. With 2 stitches more or fewer there it is 1.3 cm (0.5 inches) wider or narrower around. With 1 round more or fewer it is 0.8 cm (0.3 inches) longer or shorter.")
	assert.Contains(t, written(t, p, Options{Lang: speaker(t, "es")}),
		"Gorro: Crece hasta 68 (76) puntos. Con 2 puntos de más o de menos ahí, el contorno cambia en 1,3 cm. Con 1 vuelta de más o de menos, el largo cambia en 0,8 cm.")
	assert.Contains(t, written(t, planned(t, strings.Replace(src, "stitches(42 (47) cm, hdc, multiple of 2)", "68 (76)", 1)), Options{Lang: speaker(t, "en")}),
		"Cap: With 1 stitch more or fewer in its widest round it is 0.6 cm (0.2 inches) wider or narrower around.")
}

// TestShots: each part is shown, and each row that gains or loses stitches, with its count in words.
func TestShots(t *testing.T) {
	s := written(t, patterns(t)["duna-hat"], Options{Lang: speaker(t, "en")})
	_, shots, ok := strings.Cut(s, "SHOT LIST, size 12 m\n")
	require.True(t, ok)
	for _, want := range []string{"Crown and side\n1. Start: ", "3. Round 2: 8 stitches more than before. Say: Sixteen half double crochets.", "Brim\n", "Finishing\n", "For the first time: front post half double crochet and back post half double crochet. Say: Eighty stitches."} {
		assert.Contains(t, shots, want)
	}
}

// FuzzPlainly: no text of an author brings a sign that boxes refuse.
func FuzzPlainly(f *testing.F) {
	for _, s := range []string{"# head", "a < b > c", "*x* `y`", "\x00\x7f\n#", "[a](b)"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		out := plainly(s)
		if strings.ContainsAny(out, "<>*`\x00\x7f") || strings.HasPrefix(out, "#") || strings.Contains(out, "\n#") {
			t.Fatalf("%q becomes %q", s, out)
		}
	})
}
