package terms_test

import (
	_ "embed"
	"encoding/csv"
	"strings"
	"testing"

	"ovillo/lang/terms"
)

//go:embed sources.csv
var sourcesCSV string

// Every cell has a source or says that it is remembered, and never both; no source is kept for a cell that has gone.
func TestEveryTermHasItsSource(t *testing.T) {
	rows, err := csv.NewReader(strings.NewReader(sourcesCSV)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{}
	for _, row := range rows[1:] {
		if row[2] == "" {
			t.Errorf("%s %s: no source", row[0], row[1])
		}
		for _, c := range strings.Fields(row[1]) {
			known[row[0]+" "+strings.ReplaceAll(c, "&", " ")] = true
		}
	}
	table, cells := terms.Standard(), 0
	for _, tag := range table.Tags() {
		r, _ := table.Reading(tag)
		for _, concept := range table.Concepts() {
			cell := tag + " " + concept
			switch {
			case r.Sourced(concept) && !known[cell]:
				t.Errorf("%s: neither a source nor remembered", cell)
			case r.Remembered(concept) && known[cell]:
				t.Errorf("%s: it has a source, and is said to be remembered", cell)
			case !r.Sourced(concept) && known[cell]:
				t.Errorf("%s: a source for a cell that is not there", cell)
			case r.Sourced(concept):
				cells++
			}
		}
	}
	if cells < 100 {
		t.Errorf("only %d cells have a source", cells)
	}
}
