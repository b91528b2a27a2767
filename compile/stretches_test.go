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

// TestStretchesAreStitches: what is worked in stretches of stitches that are alike, and in runs of rows that are alike, is what
// working each stitch of each row by itself gives, message for message and figure for figure; in stretches stitch for stitch as well: of
// every example, case and form, and of every example of a message, right and wrong.
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
	stitches, worked := 0, 0
	for name, text := range texts {
		f, found := lang.Parse(source.NewFile(name, text))
		if found.HasErrors() {
			continue
		}
		o := compile.Options{Open: files.Open}
		plain, wanted := compile.Worked(f, o, compile.StitchByStitch)
		rows, made := compile.Worked(f, o, compile.RowByRow)
		usual, least := compile.Worked(f, o, compile.AsUsual)
		// What differs is too large to be shown.
		assert.True(t, reflect.DeepEqual(wanted, made), "%s: other stitches", name)
		assert.True(t, reflect.DeepEqual(plain.Found, rows.Found), "%s: other messages", name)
		assert.True(t, reflect.DeepEqual(plain.Pattern, rows.Pattern), "%s: another pattern", name)
		assert.True(t, reflect.DeepEqual(plain.Found, usual.Found), "%s: other messages, where rows are alike", name)
		assert.True(t, reflect.DeepEqual(plain.Pattern, usual.Pattern), "%s: another pattern, where rows are alike", name)
		for i := range made {
			if usual.Found.HasErrors() {
				break // it may be that it has too many
			}
			stitches += len(made[i])
			worked += len(least[i])
		}
	}
	assert.Greater(t, stitches, 100_000, "there was something to work")
	assert.Less(t, 2*worked, stitches, "most rows are like another")
	t.Logf("of %d stitches %d were worked", stitches, worked)
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

// FuzzCounted looks for sources in which rows that are counted, and not worked, come to something else.
func FuzzCounted(f *testing.F) {
	compile.LimitStitches(f, 20_000)
	for _, pattern := range []string{"../examples/*.ovillo", "../lang/testdata/*.ovillo", casesAt + "/*.ovillo"} {
		for _, path := range sources(f, pattern) {
			text, err := os.ReadFile(path)
			require.NoError(f, err)
			f.Add(string(text))
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		tree, found := lang.Parse(source.NewFile("fuzz", text))
		if found.HasErrors() {
			return
		}
		o := compile.Options{Open: files.Open}
		usual, _ := compile.Worked(tree, o, compile.AsUsual)
		plain, _ := compile.Worked(tree, o, compile.StitchByStitch)
		for _, d := range plain.Found {
			if d.Code == "OV421" {
				return // one of the two has less to follow, and comes further
			}
		}
		if !reflect.DeepEqual(plain.Found, usual.Found) {
			t.Errorf("stitch by stitch\n%v\nas usual\n%v", plain.Found, usual.Found)
		}
		if !reflect.DeepEqual(plain.Pattern, usual.Pattern) {
			t.Error("another pattern")
		}
	})
}
