package saying

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/lang/terms"
	"ovillo/render/words"
)

// TestExamplesInFull: with nothing abbreviated, no text of an example or a worked construction holds an abbreviation that its usual
// pages explain.
func TestExamplesInFull(t *testing.T) {
	for _, folder := range [][]string{{"examples"}, {"testdata", "cases"}} {
		for _, s := range whole.Sources(t, folder...) {
			p := s.Plan(t)
			for _, tag := range terms.Standard().Tags() {
				usual, err := words.For(tag)
				require.NoError(t, err)
				var list []string
				for _, a := range usual.Abbreviations(p) {
					for _, short := range strings.Split(whole.Ties.Replace(a.Short), ", ") {
						if name := " " + a.Meaning + " "; !strings.Contains(name, " "+strings.TrimSuffix(short, "s")+" ") { // some have names in place of abbreviations
							list = append(list, regexp.QuoteMeta(short))
						}
					}
				}
				require.NotEmpty(t, list, "%s in %s", s.Name, tag)
				short := regexp.MustCompile(`(^|[^\pL\d])(` + strings.Join(list, "|") + `)($|[^\pL])`)
				require.True(t, slices.ContainsFunc(whole.Said(usual, p), short.MatchString), "%s in %s: the usual pages hold none", s.Name, tag)
				full := usual.With(words.Manner{Full: true, Named: true})
				require.Empty(t, full.Abbreviations(p))
				for _, text := range whole.Said(full, p) {
					require.NotRegexp(t, short, text, "%s in %s", s.Name, tag)
				}
			}
		}
	}
}
