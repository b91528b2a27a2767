package main

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/terms"
	"ovillo/render/words"
)

// TestExamplesInFull: with nothing abbreviated, no text of an example or a worked construction holds an abbreviation that its usual
// pages explain.
func TestExamplesInFull(t *testing.T) {
	for _, folder := range [][]string{{"examples"}, {"testdata", "cases"}} {
		for _, s := range sourcesIn(t, folder...) {
			p, found := s.compile()
			require.False(t, found.HasErrors(), s.file.Name)
			for _, tag := range terms.Standard().Tags() {
				usual, err := words.For(tag)
				require.NoError(t, err)
				var list []string
				for _, a := range usual.Abbreviations(p) {
					for _, short := range strings.Split(ties.Replace(a.Short), ", ") {
						if name := " " + a.Meaning + " "; !strings.Contains(name, " "+strings.TrimSuffix(short, "s")+" ") { // some have names in place of abbreviations
							list = append(list, regexp.QuoteMeta(short))
						}
					}
				}
				require.NotEmpty(t, list, "%s in %s", s.file.Name, tag)
				short := regexp.MustCompile(`(^|[^\pL\d])(` + strings.Join(list, "|") + `)($|[^\pL])`)
				require.True(t, slices.ContainsFunc(saidInAll(usual, p), short.MatchString), "%s in %s: the usual pages hold none", s.file.Name, tag)
				full := usual.With(words.Manner{Full: true, Named: true})
				require.Empty(t, full.Abbreviations(p))
				for _, text := range saidInAll(full, p) {
					require.NotRegexp(t, short, text, "%s in %s", s.file.Name, tag)
				}
			}
		}
	}
}
