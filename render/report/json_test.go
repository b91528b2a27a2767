package report

import (
	"encoding/json"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestJSONKeepsItsFields: the names of the fields are promised to other programs.
func TestJSONKeepsItsFields(t *testing.T) {
	r, _ := madeOn(t, "en", 4, nil)
	var b strings.Builder
	require.NoError(t, JSON(&b, r))
	var all map[string]any
	require.NoError(t, json.Unmarshal([]byte(b.String()), &all))
	require.Equal(t, []string{"by", "cautions", "checks", "counts", "date", "edition", "file", "lang", "lines", "measures", "numbers", "rounded", "sizes", "source", "title", "unknown"},
		slices.Sorted(maps.Keys(all)))
	first := func(list string) map[string]any {
		entries := all[list].([]any)
		require.NotEmpty(t, entries, list)
		return entries[0].(map[string]any)
	}
	require.Subset(t, slices.Collect(maps.Keys(first("checks"))), []string{"id", "group", "how", "status", "name", "looked", "n", "findings"})
	require.Equal(t, []string{"part", "row", "size", "spaces", "stitches", "taken"}, slices.Sorted(maps.Keys(first("counts"))))
	require.Subset(t, slices.Collect(maps.Keys(first("measures"))), []string{"name", "values"})

	caution := func(i int) map[string]any { return all["cautions"].([]any)[i].(map[string]any) }
	require.Len(t, all["cautions"], 3)
	require.Equal(t, map[string]any{"id": "CORD-25", "severity": "warn", "source": "EN 14682:2014", "read": "summary", "seller": false, "sizes": []any{"1 y", "2 y", "3 y", "4 y"},
		"text": r.pattern.Cautions[1].Text["en"], "reason": r.pattern.Cautions[1].Reason["en"]}, caution(1))
	require.Equal(t, []any{"LABL-03", "itself", true}, []any{caution(2)["id"], caution(2)["read"], caution(2)["seller"]})

	require.Len(t, all["checks"], len(Checks))
	worked := 0
	for _, part := range r.pattern.Parts {
		for _, rows := range part.Worked {
			worked += len(rows)
		}
	}
	require.Len(t, all["counts"], worked)
	statuses := map[string]int{}
	for _, c := range all["checks"].([]any) {
		check := c.(map[string]any)
		statuses[check["status"].(string)]++
		if check["id"] == "T25" {
			require.Equal(t, "found", check["status"])
			found := check["findings"].([]any)[0].(map[string]any)
			require.Equal(t, map[string]any{"code": "OV607", "severity": "warning", "line": 12.0, "column": 3.0, "message": "two sizes come out alike",
				"help": "ask for more\nor for less", "sizes": []any{"1 y"}}, found)
		}
	}
	for _, st := range []Status{Held, Found, Nothing, ForPerson, NotChecked} {
		require.Positive(t, statuses[string(st)], st)
	}
}

// TestNothingIsCalledRight: what an error hides, and what cannot be looked at, is never said to hold.
func TestNothingIsCalledRight(t *testing.T) {
	_, l := madeOn(t, "en", 4, nil)
	unread := Make(Input{Lang: "en", File: "x", Words: l, Findings: []Finding{{Code: "OV121", Severity: Error, Line: 3, Message: "a bracket is open"}}})
	for _, r := range unread.Results {
		switch {
		case r.ID == "S01":
			require.Equal(t, Found, r.Status)
		case r.How == Person:
			require.Equal(t, ForPerson, r.Status, r.ID)
		default:
			require.Equal(t, NotChecked, r.Status, r.ID)
			require.NotEmpty(t, r.Why, r.ID)
		}
	}
	require.Empty(t, unread.Numbers)

	empty := Make(Input{Lang: "en", File: "x", Words: l})
	for _, r := range empty.Results {
		require.NotEqual(t, Held, r.Status, r.ID)
	}

	strange := Make(Input{Lang: "en", File: "x", Words: l, Findings: []Finding{{Code: "internal", Severity: Error, Message: "a fault of ours"}}})
	require.Equal(t, Found, strange.Results[0].Status)
	require.Equal(t, 1, strange.Severe(Error))
}
