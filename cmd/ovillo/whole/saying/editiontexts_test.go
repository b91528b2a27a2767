package saying

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestEditionTexts: what an edition says beside the rows, of every example in both languages: the map of the construction, what a
// tester is asked, and what the file says about itself. A change of a golden file is to be read as prose.
func TestEditionTexts(t *testing.T) {
	goldenOfEach(t, whole.Examples(t), "testdata/editions", editionTexts)
}

// goldenOfEach compares what a function says of every pattern with the golden file of its name.
func goldenOfEach(t *testing.T, sources []*whole.Source, golden string, say func(t *testing.T, p *plan.Pattern) string) {
	for _, s := range sources {
		name := strings.TrimSuffix(s.Name, ".ovillo")
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			got := say(t, s.Plan(t))
			file := filepath.Join(golden, name+".golden")
			if *whole.Update {
				require.NoError(t, os.MkdirAll(golden, 0o755))
				require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			require.Equal(t, string(want), got)
		})
	}
}

// editionTexts are the texts of editions for a pattern.
func editionTexts(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	for _, tag := range []string{"en-US", "es"} {
		l, err := words.For(tag)
		require.NoError(t, err)
		fmt.Fprintf(&b, "== %s\n%s\n%s\n", tag, l.Subject(p), strings.Join(l.Keywords(p), ", "))
		fmt.Fprintf(&b, "%s\n%s\n%s\n", whole.Plain(l.TesterNote(p)), whole.Plain(l.LargePrintNote()), whole.Plain(l.PhotoCaption(p)))
		fmt.Fprintf(&b, "-- %s\n", l.Say(words.MapHead))
		for _, s := range l.MapSteps(p) {
			fmt.Fprintf(&b, "%d %s: %s\n", s.Part, s.Title, whole.Plain(s.Text))
		}
		fmt.Fprintf(&b, "-- %s\n", l.Say(words.TesterHead))
		for _, f := range l.TesterQuestions(p) {
			fmt.Fprintf(&b, "%s: %s\n", f.Head, whole.Plain(f.Text))
		}
	}
	return b.String()
}

// TestMapSteps: the map has every part once, in the order of working, and what is done before a part stands before it.
func TestMapSteps(t *testing.T) {
	for _, folder := range [][]string{{"examples"}, {"testdata", "cases"}} {
		for _, s := range whole.Sources(t, folder...) {
			p := s.Plan(t)
			for _, l := range words.Readings() {
				next, done := 0, 0
				for _, m := range l.MapSteps(p) {
					if m.Part >= 0 {
						require.Equal(t, next, m.Part, "%s in %s", s.Name, l.Tag())
						require.NotEmpty(t, m.Text, "%s in %s: %s", s.Name, l.Tag(), m.Title)
						next++
						continue
					}
					for _, f := range p.Finish {
						if f.Before == next+1 || next == len(p.Parts) && f.Before == 0 {
							done++
						}
					}
				}
				require.Equal(t, len(p.Parts), next, "%s in %s", s.Name, l.Tag())
				require.Equal(t, len(p.Finish), done, "%s in %s", s.Name, l.Tag())
			}
		}
	}
}
