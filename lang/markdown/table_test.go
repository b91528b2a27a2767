package markdown

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	tables "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/text"
	"pgregory.net/rapid"
)

// hasTable asks the extension of goldmark that reads tables.
func hasTable(source string) bool {
	found := false
	n := goldmark.New(goldmark.WithExtensions(extension.Table)).Parser().Parse(text.NewReader([]byte(source)))
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		_, is := n.(*tables.Table)
		found = found || is
		return ast.WalkContinue, nil
	})
	return found
}

// What is told of as a table is what goldmark reads as one.
func TestTablesAreThoseOfGoldmark(t *testing.T) {
	yes, no := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.OneOf(
			rapid.StringMatching(`[|:][|:\- ]{0,8}`), // dashes and a space before would open a list
			rapid.StringMatching(` ?\|?( ?:?-{1,3}:? ?\|){0,3}:?-?:?\|?`),
			rapid.StringMatching("[ab|\\\\`][ab|\\\\` -]{0,8}"),
			rapid.StringMatching(`(\| a ){1,3}\|?`),
		)
		source := strings.Join(rapid.SliceOfN(line, 1, 4).Draw(t, "lines"), "\n")
		_, faults := Read(source)
		got := false
		for _, f := range faults {
			got = got || f.What == Table
		}
		require.Equal(t, hasTable(source), got, "%q", source)
		if got {
			yes++
		} else {
			no++
		}
	})
	require.Greater(t, yes, 3)
	require.Greater(t, no, 3)
}
