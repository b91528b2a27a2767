package compare_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/format"
	"ovillo/lang/source"
)

func pattern(t *testing.T, name, text string) *plan.Pattern {
	t.Helper()
	c := desk.Check(desk.Source{File: source.NewFile(name, text), Open: desk.Folder("../../examples")})
	require.True(t, c.Printable(), "%v", c.Found)
	return c.Pattern
}

func examples(t *testing.T) map[string]string {
	t.Helper()
	files, err := filepath.Glob("../../examples/*.ovillo")
	require.NoError(t, err)
	out := map[string]string{}
	for _, f := range files {
		data, err := os.ReadFile(f)
		require.NoError(t, err)
		out[filepath.Base(f)] = string(data)
	}
	return out
}

func TestNothingChangedInAPatternAgainstItself(t *testing.T) {
	for name, text := range examples(t) {
		a, b := pattern(t, name, text), pattern(t, name, "# another first line\n\n"+text)
		r := compare.Patterns(a, b)
		require.True(t, r.Same(), "%s: %+v", name, r.Changes)
		require.Empty(t, r.Shifts, name)
	}
}

// TestOtherWords: what is only written in another way is no change: in another language, in another shape, with other names, other
// words, rows parted or put together.
func TestOtherWords(t *testing.T) {
	for name, text := range examples(t) {
		was := pattern(t, name, text)
		to := "es"
		if strings.HasPrefix(text, "idioma") {
			to = "en"
		}
		again, err := lang.Reword(source.NewFile(name, text), to)
		require.NoError(t, err)
		same(t, name+" in "+to, was, pattern(t, name, again))
		shaped, _ := format.Source([]byte(strings.ReplaceAll(text, "  ", " ")))
		same(t, name+" in another shape", was, pattern(t, name, string(shaped)))
	}
	leggings := examples(t)["marisma-leggings.ovillo"]
	was := pattern(t, "marisma-leggings.ovillo", leggings)
	for what, edit := range map[string][]string{
		"labels renamed":           {"back_a", "rear_one", "right_gap", "gap_right", "m1", "edge1"},
		"parts renamed":            {"waistband", "band", "right_leg", "leg_a", "left_leg", "leg_b"},
		"titles":                   {`en "Body" es "Cuerpo"`, `en "Trunk" es "Tronco"`, `en "Marisma leggings"`, `en "Marisma tights"`},
		"a yarn renamed":           {"sand", "dune", "kelp", "weed"},
		"prose":                    {"Wash by hand or at 30 °C", "Wash at 30 °C, or by hand", "Lavar a mano o a 30 °C", "Lavar a 30 °C o a mano"},
		"a run as two":             {"  4 rounds: [fphdc, bphdc] around = around_hips", "  round: [fphdc, bphdc] around = around_hips\n  3 rounds: [fphdc, bphdc] around = around_hips"},
		"a repeat written out":     {"shaping: dc in next, dec, dc to last 3, dec, dc in last", "shaping: [dc in next] 1 times, dec, dc to last 3, dec, dc in next"},
		"a count that is not said": {"round: dc between each      = around_hips", "round: dc between each"},
		"figures worked out":       {"let bridge      = 4", "let bridge      = 2 + 2"},
		"an edition":               {`edition 2, "2026-03"`, `edition 3, "2026-09"`},
	} {
		text := leggings
		for i := 0; i < len(edit); i += 2 {
			require.Contains(t, text, edit[i], what)
			text = strings.ReplaceAll(text, edit[i], edit[i+1])
		}
		same(t, what, was, pattern(t, "marisma-leggings.ovillo", text))
	}
}

func same(t *testing.T, what string, was, is *plan.Pattern) {
	t.Helper()
	r := compare.Patterns(was, is)
	require.True(t, r.Same(), "%s: %+v", what, r.Changes)
	require.Empty(t, r.Shifts, what)
}

// TestOtherYarn: a part in another yarn is one change of the part, and none of its rows.
func TestOtherYarn(t *testing.T) {
	text := examples(t)["marisma-leggings.ovillo"]
	was := pattern(t, "marisma-leggings.ovillo", text)
	r := compare.Patterns(was, pattern(t, "marisma-leggings.ovillo", strings.Replace(text, "  yarn kelp\n  hook 3.25 mm\n  in joined", "  yarn sand\n  hook 3.25 mm\n  in joined", 1)))
	heads := 0
	for _, c := range r.Changes {
		require.NotEqual(t, compare.Steps, c.Topic, "%+v", c)
		if c.Topic == compare.Heads {
			heads++
		}
	}
	require.Equal(t, 1, heads)
}
