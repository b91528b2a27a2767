package lsp

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/lang/format"
)

// applied is a text with edits carried out, from the last to the first.
func applied(tb testing.TB, text string, edits []TextEdit) string {
	t := newText(text, utf16Encoding)
	type change struct {
		from, to int
		in       string
	}
	var all []change
	for _, e := range edits {
		s := t.span(e.Range)
		all = append(all, change{int(s.Start), int(s.End), e.NewText})
	}
	for i := len(all) - 1; i >= 0; i-- {
		if i > 0 {
			require.LessOrEqual(tb, all[i-1].to, all[i].from, "edits stand in order and apart")
		}
		text = text[:all[i].from] + all[i].in + text[all[i].to:]
	}
	return text
}

func TestFormatting(t *testing.T) {
	want := example(t, "duna-hat")
	for _, text := range []string{want, strings.ReplaceAll(want, "\n  ", "\n      "), strings.ReplaceAll(want, "  ", " ") + "\n\n", strings.ReplaceAll(want, "\n", "\r\n"), ""} {
		c := opened(t, text, Options{})
		var edits []TextEdit
		c.ask("textDocument/formatting", map[string]any{"options": map[string]any{"tabSize": 2, "insertSpaces": true}}, &edits)
		set, _ := format.Source([]byte(text))
		require.Equal(t, string(set), applied(t, text, edits))
	}
}

// TestEditsAreSmall: lines that stay as they are are not part of the edit, so that an editor keeps its place.
func TestEditsAreSmall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lines := rapid.SliceOf(rapid.SampledFrom([]string{"a\n", "b\n", "ñ\n", "\n", "a\r\n"}))
		old, set := strings.Join(lines.Draw(t, "old"), ""), strings.Join(lines.Draw(t, "set"), "")
		edits := newText(old, utf16Encoding).edits(old, set)
		if old == set {
			require.Empty(t, edits)
			return
		}
		got := newText(old, utf16Encoding).with(edits[0].Range, edits[0].NewText).body
		require.Equal(t, set, got)
		first := strings.SplitAfter(set, "\n")[0]
		if strings.HasPrefix(old, first) && strings.HasSuffix(first, "\n") {
			require.Positive(t, edits[0].Range.Start.Line)
		}
	})
}
