package compare_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/compare"
	"ovillo/compile/plan"
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
