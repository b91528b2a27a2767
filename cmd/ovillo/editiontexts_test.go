package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestEditionTexts: what an edition says beside the rows, of every example in both languages: the map of the construction, what a
// tester is asked, and what the file says about itself. A change of a golden file is to be read as prose.
func TestEditionTexts(t *testing.T) {
	goldenOfEach(t, "../../examples", "testdata/editions", editionTexts)
}

// goldenOfEach compares what a function says of every pattern in a folder with the golden file of its name.
func goldenOfEach(t *testing.T, from, golden string, say func(t *testing.T, p *plan.Pattern) string) {
	paths, err := filepath.Glob(from + "/*.ovillo")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
		t.Run(name, func(t *testing.T) {
			_, p, err := compiled(path)
			require.NoError(t, err)
			got := say(t, p)
			file := filepath.Join(golden, name+".golden")
			if *update {
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
		fmt.Fprintf(&b, "%s\n%s\n%s\n", plainText(l.TesterNote(p)), plainText(l.LargePrintNote()), plainText(l.PhotoCaption(p)))
		fmt.Fprintf(&b, "-- %s\n", l.Say(words.MapHead))
		for _, s := range l.MapSteps(p) {
			fmt.Fprintf(&b, "%d %s: %s\n", s.Part, s.Title, plainText(s.Text))
		}
		fmt.Fprintf(&b, "-- %s\n", l.Say(words.TesterHead))
		for _, f := range l.TesterQuestions(p) {
			fmt.Fprintf(&b, "%s: %s\n", f.Head, plainText(f.Text))
		}
	}
	return b.String()
}

// TestMapSteps: the map has every part once, in the order of working, and what is done before a part stands before it.
func TestMapSteps(t *testing.T) {
	for _, folder := range [][]string{{"examples"}, {"testdata", "cases"}} {
		for _, s := range sourcesIn(t, folder...) {
			p, found := s.compile()
			require.False(t, found.HasErrors(), s.file.Name)
			for _, l := range words.Readings() {
				next, done := 0, 0
				for _, m := range l.MapSteps(p) {
					if m.Part >= 0 {
						require.Equal(t, next, m.Part, "%s in %s", s.file.Name, l.Tag())
						require.NotEmpty(t, m.Text, "%s in %s: %s", s.file.Name, l.Tag(), m.Title)
						next++
						continue
					}
					for _, f := range p.Finish {
						if f.Before == next+1 || next == len(p.Parts) && f.Before == 0 {
							done++
						}
					}
				}
				require.Equal(t, len(p.Parts), next, "%s in %s", s.file.Name, l.Tag())
				require.Equal(t, len(p.Finish), done, "%s in %s", s.file.Name, l.Tag())
			}
		}
	}
}
