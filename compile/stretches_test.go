package compile_test

import (
	"os"
	"reflect"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/compile/plan"
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

// TestRoomHoldsNothing: in room that other sources have left, a source comes out as in new room, and what came of the others stays.
func TestRoomHoldsNothing(t *testing.T) {
	room := &compile.Room{}
	type kept struct {
		path      string
		had, held *plan.Pattern
	}
	var all []kept
	for range 2 {
		for _, path := range append(sources(t, "../examples/*.ovillo"), sources(t, casesAt+"/*.ovillo")...) {
			text, err := os.ReadFile(path)
			require.NoError(t, err)
			f, _ := lang.Parse(source.NewFile(path, string(text)))
			o := compile.Options{Open: files.Open}
			alone := compile.CompileWith(f, o)
			o.Room = room
			out := compile.CompileWith(f, o)
			assert.True(t, reflect.DeepEqual(alone.Found, out.Found), "%s: other messages", path)
			all = append(all, kept{path, alone.Pattern, out.Pattern})
		}
	}
	for _, k := range all {
		assert.True(t, reflect.DeepEqual(k.had, k.held), "%s: another pattern", k.path)
	}
}
