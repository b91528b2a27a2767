package saying

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/words"
)

// spokenFolder holds the sources that are there for what is said of them.
var spokenFolder = []string{"cmd", "ovillo", "whole", "saying", "testdata", "spoken"}

// What a page says in both languages of the sources under testdata/spoken and of the worked constructions. A change of a golden
// file is to be read as prose.
func TestSpoken(t *testing.T) {
	printed := whole.Path(t, "testdata", "cases", "printed")
	for _, c := range []struct {
		sources []*whole.Source
		golden  string
	}{
		{whole.Sources(t, spokenFolder...), "testdata/spoken/%s.golden"},
		{whole.Cases(t), printed + "/%s.txt"},
		{whole.Examples(t), "testdata/spoken/examples/%s.golden"},
	} {
		for _, s := range c.sources {
			name := strings.TrimSuffix(s.Name, ".ovillo")
			t.Run(name, func(t *testing.T) { compareSpoken(t, s.Plan(t), fmt.Sprintf(c.golden, name)) })
		}
	}
}

func compareSpoken(t *testing.T, p *plan.Pattern, golden string) {
	got := spoken(t, p)
	if *whole.Update {
		require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	if string(want) != got {
		t.Errorf("%s does not hold what is said now; read the difference and run with -update\n%s", golden, got)
	}
}

// spoken is all that is said of the parts of a pattern and of its finishing.
func spoken(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	both := func(f func(l *words.Language)) {
		for _, tag := range []string{"en-US", "es"} {
			l, err := words.For(tag)
			require.NoError(t, err)
			f(l)
		}
	}
	for i, part := range p.Parts {
		fmt.Fprintf(&b, "== %s\n", part.Name)
		both(func(l *words.Language) {
			fmt.Fprintf(&b, "-- %s\n", l.PartTitle(p, i))
			if note := whole.Plain(l.PartNote(p, part)); note != "" {
				fmt.Fprintf(&b, "   %s\n", note)
			}
			if start := l.Start(p, part); len(start.Body) > 0 {
				b.WriteString(whole.Step(start))
			}
			for _, s := range part.Steps {
				b.WriteString(whole.Step(l.Step(p, part, s)))
			}
		})
	}
	if len(p.Finish) > 0 {
		b.WriteString("== finishing\n")
		both(func(l *words.Language) {
			b.WriteString("--\n")
			for _, f := range p.Finish {
				fmt.Fprintln(&b, whole.Plain(l.Finishing(p, f)))
			}
		})
	}
	return b.String()
}
