package caution

import (
	"slices"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// TestCases goes through testdata/cases.csv: for each rule of the table something that crosses it, and something just under its
// limit or just outside its condition.
func TestCases(t *testing.T) {
	byID := map[string]map[string]string{}
	for _, row := range rows(t, "cases.csv") {
		byID[row["rule"]] = row
	}
	for _, r := range Rules() {
		row := byID[r.ID]
		if row == nil {
			t.Errorf("%s has no case", r.ID)
			continue
		}
		if row["crosses"] == "program" {
			continue // TestProgramHolds
		}
		if row["crosses"] == row["keeps"] {
			t.Errorf("%s: both cases are the same", r.ID)
		}
		prints, found := Evaluate(factsOf(t, row["crosses"]))
		if !slices.Contains(ids(prints), r.ID) {
			t.Errorf("%s does not print for %q, only %v", r.ID, row["crosses"], ids(prints))
		}
		// A cord that is forbidden where it is has one finding, whatever else is wrong with it.
		settled := slices.ContainsFunc(found, func(d diag.Diagnostic) bool { return d.Code == banned || diag.Lookup(d.Code).Severity == diag.Error })
		if r.Severity != "caution" && !slices.Contains(behind(found), r.ID) && !(settled && r.Severity == "warn") {
			t.Errorf("%s finds nothing for %q, only %v", r.ID, row["crosses"], behind(found))
		}
		for _, d := range found {
			if gaps := diag.Incomplete(d); len(gaps) > 0 {
				t.Errorf("%s: %s: %v", r.ID, d.Code, gaps)
			}
			// A reason that is given for a finding finds its cautions by their rules and their place.
			for _, id := range behind(diag.List{d}) {
				if !slices.ContainsFunc(prints, func(c plan.Caution) bool { return c.ID == id && c.At == d.Span }) {
					t.Errorf("%s: no caution of %s stands where %s is found", r.ID, id, d.Code)
				}
			}
		}
		prints, found = Evaluate(factsOf(t, row["keeps"]))
		if slices.Contains(behind(found), r.ID) {
			t.Errorf("%s is a finding for %q", r.ID, row["keeps"])
		}
		if len(r.upper) == 0 && slices.Contains(ids(prints), r.ID) {
			t.Errorf("%s prints for %q", r.ID, row["keeps"])
		}
		for _, d := range found {
			if asks(d.Code) {
				t.Errorf("%s: all is known of %q, and yet %s asks %v", r.ID, row["keeps"], d.Code, d.Args)
			}
		}
	}
}

// asks reports whether a code asks for something that is missing.
func asks(c diag.Code) bool { return c >= "OV901" && c <= "OV909" }

// TestProgramHolds holds the rules that no source can cross: the pages draw neither symbols of care nor marks.
func TestProgramHolds(t *testing.T) {
	f := one("hat", 12)
	e := view{facts: &f, class: kinds().class[f.Kind]}
	for _, r := range Rules() {
		if r.ID == "LABL-01" || r.ID == "LABL-08" {
			if v := r.when.evaluate(&e); v.holds != False {
				t.Errorf("%s: %v", r.ID, v)
			}
		}
	}
}
