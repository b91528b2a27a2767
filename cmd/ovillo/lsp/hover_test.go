package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

func TestHover(t *testing.T) {
	text := example(t, "marisma-leggings")
	c := opened(t, text, Options{})
	for _, x := range []struct {
		at   string
		want []string
	}{
		{"bphdc] around", []string{"back post half double crochet (BPhdc)", "en-GB: back post half treble crochet", "punto medio alto en relieve por detrás", "Takes 1 st, makes 1", "| 3 y | 2–5 | 120 |", "56 (58, 60, 62) times"}},
		{"rounds for rise", []string{"| size | rows | stitches |", "| 1 y | 2–18 | 112 |", "| 4 y | 2–21 | 124 |", "Vueltas"}},
		{"divide:\n", []string{"**divide** — row of body", "| 2 y | 20 | 8 | 2 |", "Dividing round", "Vuelta de división"}},
		{"leg, mark m2", []string{"value", "Set in line 52:", "let leg         = (around_hips", "| 2 y | 54 |"}},
		{"right_gap, skip to m2", []string{"label of body", "la pierna derecha", "| 1 y | 4 |"}},
		{"hips   en", []string{"measure of the piece", "| 1 y | 56 cm |"}},
		{"fit.inseam -", []string{"| 3 y | 34 cm |"}},
		{"fit.hips + 3", []string{"| 1 y | 53 cm |"}},
		{"shaping: dc", []string{"**right_leg**", "**left_leg**", "| 1 y |"}},
		{"dec, dc to last", []string{"two places drawn together", "dos lugares cerrados juntos"}},
		{"kelp\n  hook", []string{"yarn", "yarn kelp like sand"}},
	} {
		var h Hover
		c.ask("textDocument/hover", where(at(text, x.at, 1)), &h)
		for _, w := range x.want {
			require.Contains(t, h.Contents.Value, w, x.at)
		}
	}
	var none *Hover
	c.ask("textDocument/hover", where(at(text, "# Marisma", 1)), &none)
	require.Nil(t, none)
	c = opened(t, text, Options{}, `{"locale":"es","capabilities":{"textDocument":{"hover":{"contentFormat":["plaintext"]}}}}`)
	var h Hover
	c.ask("textDocument/hover", where(at(text, "bphdc] around", 1)), &h)
	require.Equal(t, "plaintext", h.Contents.Kind)
	require.Contains(t, h.Contents.Value, "hileras o vueltas")
	require.NotContains(t, h.Contents.Value, "**")
}

// TestHoverOfBrokenSource: what was known of lines that are as they were is still told, and said to be of before.
func TestHoverOfBrokenSource(t *testing.T) {
	text := example(t, "marisma-leggings")
	c := opened(t, text, Options{})
	c.published(1)
	broken := strings.Replace(text, "hook 3.75 mm\n", "hook 3,75 mm\n\n", 1)
	c.change(2, broken)
	var h Hover
	c.ask("textDocument/hover", where(at(broken, "rounds for rise", 1)), &h)
	require.Contains(t, h.Contents.Value, "| 1 y | 2–18 | 112 |")
	require.Contains(t, h.Contents.Value, "As it was before")
}

// TestEveryStitchIsExplained: in every source, each word that stands where a stitch does says something.
func TestEveryStitchIsExplained(t *testing.T) {
	seen := map[string]bool{}
	for name, text := range sources(t) {
		tree, _ := lang.Parse(source.NewFile("", text))
		x, uk := newIndex(tree), ukTerms(tree)
		var c *client
		lang.Walk(tree, func(n lang.Node) bool {
			w, ok := n.(*lang.Work)
			if !ok || w.Stitch == nil || seen[w.Stitch.Text] {
				return true
			}
			seen[w.Stitch.Text] = true
			if c == nil {
				c = opened(t, text, Options{})
			}
			var h Hover
			c.ask("textDocument/hover", where(newText(text, utf16Encoding).position(int(w.Stitch.Span().Start))), &h)
			require.NotEmpty(t, h.Contents.Value, "%s: %s", name, w.Stitch.Text)
			if f, ok := compile.StitchNamed(w.Stitch.Text, uk); ok && x.at(int(w.Stitch.Span().Start)) == nil {
				require.Contains(t, h.Contents.Value, "- es: ", "%s: %v", w.Stitch.Text, f)
			}
			return true
		})
	}
	require.Greater(t, len(seen), 12)
}
