package lsp

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang"
	"ovillo/lang/source"
)

// examples are the names of all examples.
func examples(tb testing.TB) []string {
	files, err := filepath.Glob("../../../examples/*.ovillo")
	require.NoError(tb, err)
	require.GreaterOrEqual(tb, len(files), 10)
	var names []string
	for _, f := range files {
		names = append(names, strings.TrimSuffix(filepath.Base(f), ".ovillo"))
	}
	return names
}

var wholeText = map[string]any{"range": Range{End: Position{Line: 1 << 20}}}

// TestHintsAreTrue takes all counts of rows out of each source, and writes those that are shown into it: the checker, which works each
// row stitch by stitch, must find that they hold. Counts that are one too many are refused.
func TestHintsAreTrue(t *testing.T) {
	shown, written := 0, 0
	for _, name := range examples(t) {
		text := uncounted(t, example(t, name))
		c := opened(t, text, Options{})
		var hints []InlayHint
		c.ask("textDocument/inlayHint", wholeText, &hints)
		var edits []TextEdit
		for _, h := range hints {
			shown++
			edits = append(edits, h.TextEdits...)
			require.Regexp(t, `^= \d|^\d.* → \d`, h.Label)
		}
		written += len(edits)
		is := check(applied(t, text, edits))
		require.False(t, is.Found.HasErrors(), "%s\n%s\n%v", name, applied(t, text, edits), is.Found)
		for i, e := range edits {
			off := slices.Clone(edits)
			off[i].NewText = " = 1 + " + strings.TrimPrefix(strings.TrimSpace(e.NewText), "= ")
			if i%7 == 0 { // not all of them, for time
				require.True(t, check(applied(t, text, off)).Found.HasErrors(), "%s: %v", name, off[i])
			}
		}
	}
	t.Log(shown, "shown,", written, "written")
	require.Greater(t, written, 120)
}

// uncounted is a source without the counts of its rows.
func uncounted(tb testing.TB, text string) string {
	tree, _ := lang.Parse(source.NewFile("", text))
	var claims []source.Span
	lang.WalkStatements(tree.Body, func(s *lang.Statement) bool {
		switch n := s.Node.(type) {
		case *lang.Row:
			if n.Claims != nil {
				claims = append(claims, n.Claims.Span())
			}
		case *lang.ShapeRow:
			if n.Claims != nil {
				claims = append(claims, n.Claims.Span())
			}
		}
		return true
	})
	require.NotEmpty(tb, claims)
	for _, c := range slices.Backward(claims) {
		text = strings.TrimRight(text[:strings.LastIndexByte(text[:c.Start], '=')], " \n") + text[c.End:]
	}
	return text
}

func check(text string) desk.Checked {
	return desk.Check(desk.Source{File: source.NewFile("test.ovillo", text), Open: os.DirFS("../../../examples").(interface {
		ReadFile(string) ([]byte, error)
	}).ReadFile})
}

// TestHintsOfBrokenSource: where a line cannot be read, the rows above and below it keep the counts they had.
func TestHintsOfBrokenSource(t *testing.T) {
	text := example(t, "marisma-leggings")
	text = strings.Replace(strings.Replace(text, "  5 rounds: [fphdc, bphdc] around = cuff", "  5 rounds: [fphdc, bphdc] around", 1), "round: hdc in each              = around_hips", "round: hdc in each", 1)
	c := opened(t, text, Options{})
	var before, after []InlayHint
	c.ask("textDocument/inlayHint", wholeText, &before)
	require.Len(t, before, 4)
	broken := strings.Replace(text, "part body\n", "part body (\n\n", 1)
	c.change(2, broken)
	c.ask("textDocument/inlayHint", wholeText, &after)
	require.Len(t, after, len(before))
	for i := range after {
		require.Equal(t, before[i].Label, after[i].Label)
		require.Empty(t, after[i].TextEdits, "what was known before is not written")
	}
	require.Equal(t, before[3].Position.Line+1, after[3].Position.Line)
}
