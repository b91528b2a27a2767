package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/render/report"
)

// TestReportSeesUnlikeLanguages: check T69 of the report finds the same on composed pages.
func TestReportSeesUnlikeLanguages(t *testing.T) {
	data, err := os.ReadFile(whole.Example(t, "marisma-leggings.ovillo").Path)
	require.NoError(t, err)
	sound, _ := reportOf(t, string(data), nil)
	require.Equal(t, report.Held, resultOf(t, sound, "T69").Status)
	for _, u := range whole.Unlike {
		t.Run(u.Name, func(t *testing.T) {
			r, _ := reportOf(t, string(data), func(in *report.Input) { require.True(t, u.Change(in.Editions[0].Doc)) })
			got := resultOf(t, r, "T69")
			require.Equal(t, report.Found, got.Status)
			require.Contains(t, got.Findings[0].Message, u.Told)
		})
	}
}
