package compile_test

import (
	"os"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// TestStretchesAreStitches: what is worked in stretches of stitches that are alike is, stitch for stitch and message for message,
// what working each by itself gives: of every example, case and form, and of every example of a message, right and wrong.
func TestStretchesAreStitches(t *testing.T) {
	texts := map[string]string{}
	for _, pattern := range []string{"../examples/*.ovillo", "../lang/testdata/*.ovillo", casesAt + "/*.ovillo"} {
		for _, path := range sources(t, pattern) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			texts[path] = string(text)
		}
	}
	for _, e := range diag.All() {
		texts["wrong "+string(e.Code)], texts["right "+string(e.Code)] = e.Example, e.Whole()
	}
	stitches := 0
	for name, text := range texts {
		f, found := lang.Parse(source.NewFile(name, text))
		if found.HasErrors() {
			continue
		}
		o := compile.Options{Open: files.Open}
		quick, made := compile.Worked(f, o, false)
		plain, wanted := compile.Worked(f, o, true)
		// What differs is too large to be shown.
		assert.True(t, reflect.DeepEqual(wanted, made), "%s: other stitches", name)
		assert.True(t, reflect.DeepEqual(plain.Found, quick.Found), "%s: other messages", name)
		assert.True(t, reflect.DeepEqual(plain.Pattern, quick.Pattern), "%s: another pattern", name)
		for _, elems := range made {
			stitches += len(elems)
		}
	}
	assert.Greater(t, stitches, 100_000, "there was something to work")
}
