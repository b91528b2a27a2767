package report

import (
	"fmt"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestChecks: the list is that of an editor, whole and in order, worded in both languages.
func TestChecks(t *testing.T) {
	decided := 0
	for i, c := range Checks {
		want := fmt.Sprintf("T%02d", i) // the editor's own stand between ours, by their numbers
		switch i {
		case 0:
			want = "S01"
		case 71:
			want = "S02"
		}
		require.Equal(t, want, c.ID)
		for _, lang := range []string{"en", "es"} {
			require.NotEmpty(t, c.Name(lang), c.ID)
			require.Equal(t, c.How == Machine, c.ask.in(lang) == "", "%s: what a person decides, and nothing else, asks a question", c.ID)
		}
		if c.How.decides() {
			require.NotNil(t, looks[c.ID], "%s is decided by the program and looks at nothing", c.ID)
		}
		if c.How == Machine && c.ID != "S01" && c.ID != "S02" {
			decided++
		}
	}
	require.Len(t, Checks, 72)
	require.Equal(t, 46, decided)
	for id := range looks {
		require.True(t, slices.ContainsFunc(Checks, func(c *Check) bool { return c.ID == id }), id)
	}
}

// TestWordsAreThere: every group, status and severity has its words, and texts have the same holes in both languages.
func TestWordsAreThere(t *testing.T) {
	for _, lang := range []string{"en", "es"} {
		for _, g := range Groups {
			require.NotEmpty(t, groupNames[g].in(lang), g)
		}
		for _, st := range Statuses {
			require.NotEmpty(t, statusNames[st].in(lang), st)
		}
		for _, s := range []Severity{Error, Warning, Note} {
			require.NotEmpty(t, severityNames[s].in(lang), s)
		}
	}
}
