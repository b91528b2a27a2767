package saying

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestLeftHanded: what reads otherwise for who holds the hook in the left hand, of every example and every worked construction, in
// both languages. Each line is printed as it is and as it becomes; a change of a golden file is to be read as prose.
func TestLeftHanded(t *testing.T) {
	goldenOfEach(t, append(whole.Examples(t), whole.Cases(t)...), "testdata/editions/left", leftHanded)
}

// leftHanded are the lines of a pattern that change, before and after, and what the maker is told.
func leftHanded(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	for _, tag := range []string{"en-US", "es"} {
		usual, err := words.For(tag)
		require.NoError(t, err)
		left := usual.With(words.Manner{Left: true})
		fmt.Fprintf(&b, "== %s\n%s\n", tag, whole.Plain(left.LeftHandedNote(p)))
		was, is := whole.Said(usual, p), whole.Said(left, p)
		require.Len(t, is, len(was))
		for i := range was {
			if was[i] != is[i] {
				fmt.Fprintf(&b, "- %s\n+ %s\n", was[i], is[i])
			}
		}
	}
	return b.String()
}
