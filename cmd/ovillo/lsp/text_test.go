package lsp

import (
	"strings"
	"testing"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var anyText = rapid.Custom(func(t *rapid.T) string {
	return strings.Join(rapid.SliceOf(rapid.SampledFrom([]string{"a", "ñ", "é", "e\u0301", "🧶", "字", "\n", "\r\n", "\r", " "})).Draw(t, "text"), "")
})

// TestPositions compares places with the encoders of the standard library.
func TestPositions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		body := anyText.Draw(t, "body")
		for encoding, length := range map[string]func(string) int{
			utf8Encoding:  func(s string) int { return len(s) },
			utf16Encoding: func(s string) int { return len(utf16.Encode([]rune(s))) },
		} {
			x := newText(body, encoding)
			// Lines as the standard has them.
			lines := strings.Split(strings.ReplaceAll(strings.ReplaceAll(body, "\r\n", "\n"), "\r", "\n"), "\n")
			require.Len(t, x.starts, len(lines))
			for at := 0; at <= len(body); at++ {
				if at < len(body) && !utf8.RuneStart(body[at]) || at > 0 && at < len(body) && body[at-1] == '\r' && body[at] == '\n' {
					continue
				}
				p := x.position(at)
				from, _ := x.line(p.Line)
				require.Equal(t, length(body[from:at]), p.Character)
				require.Equal(t, at, x.offset(p))
			}
			for i, line := range lines {
				from, to := x.line(i)
				require.Equal(t, line, body[from:to])
				require.Equal(t, to, x.offset(Position{i, 1000}), "a place behind the line is at its end")
			}
			require.Equal(t, len(body), x.offset(Position{len(lines), 0}))
		}
	})
}
