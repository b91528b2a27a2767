package compile_test

import (
	"os"
	"reflect"
	"regexp"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/format"
	"ovillo/lang/source"
)

// worked is the fabric of every part in every size.
func worked(t *testing.T, text string) [][][]plan.RowFact {
	t.Helper()
	f, list := lang.Parse(source.NewFile("written.ovillo", text))
	require.False(t, list.HasErrors(), text)
	p, _ := compile.Compile(f)
	require.NotNil(t, p)
	var out [][][]plan.RowFact
	for _, part := range p.Parts {
		out = append(out, part.Worked)
	}
	return out
}

var comment, comma = regexp.MustCompile(`(?m)#.*$`), regexp.MustCompile(`, `)

// How a source is laid out changes nothing about the fabric.
func TestLayoutChangesNothing(t *testing.T) {
	over := 0 // sources that were also spread over many lines; a comma inside a text cannot be
	for _, path := range append(sources(t, casesAt+"/*.ovillo"), sources(t, "../examples/*.ovillo")...) {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		want := worked(t, string(text))
		tidy, list := format.Source(text)
		require.Empty(t, list)
		require.True(t, reflect.DeepEqual(want, worked(t, string(tidy))), "%s tidied", path)
		loose := comma.ReplaceAllString(comment.ReplaceAllString(string(text), ""), ",   # in passing\n      ")
		if _, faults := lang.Parse(source.NewFile("loose", loose)); !faults.HasErrors() {
			require.True(t, reflect.DeepEqual(want, worked(t, loose)), "%s over many lines", path)
			over++
		}
	}
	require.Greater(t, over, 10)
}
