package caution

import (
	"encoding/csv"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/diag"
)

// softened are the rules that print a caution where the table they were made from is stricter, since the checker cannot
// know what the table asks; their notes say why.
var softened = map[string]bool{"CORD-23": true, "CORD-25": true, "CORD-29": true, "CORD-31": true, "PART-05": true}

// TestRulesTable compares each rule with the row of the table it was made from (testdata/table.csv, which names its
// sources): the words, the severity, the figure that is the limit and the ages of the trigger.
var numerals = regexp.MustCompile(`[0-9]+(?:,[0-9]+)?`)

func lastClause(s string) string { return s[strings.LastIndex(s, ";")+1:] }

func TestRulesTable(t *testing.T) {
	f, err := os.Open("testdata/table.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	table := map[string][]string{}
	for _, row := range rows[1:] {
		table[row[0]] = row
	}
	for _, r := range Rules {
		row := table[r.ID]
		if row == nil {
			t.Errorf("%s is not in the table", r.ID)
			continue
		}
		trigger, severity, figure := row[1], row[2], row[3]
		// One text serves US and UK pages, so that no word may stand in it that they spell in two ways.
		english := strings.Replace(row[5], "fibre filling", "stuffing", 1)
		if r.Figure != figure || r.Evidence != row[4] || r.Text["en"] != english {
			t.Errorf("%s: figure, evidence or words differ from the table", r.ID)
		}
		// The Spanish is ours: the page speaks in the infinitive, the table to the reader. Its figures and the clause that
		// defers to the law are the table's.
		if es, want := r.Text["es"], row[6]; !slices.Equal(numerals.FindAllString(es, -1), numerals.FindAllString(want, -1)) ||
			lastClause(es) != lastClause(want) {
			t.Errorf("%s: a figure or the last clause of the Spanish differs from the table", r.ID)
		}
		if (r.Severity != severity) != softened[r.ID] || softened[r.ID] && r.Severity != "caution" {
			t.Errorf("%s: severity %s, the table has %s", r.ID, r.Severity, severity)
		}
		if r.AgeBelow > 0 && !strings.HasPrefix(r.ID, "USCD") {
			if want := fmt.Sprintf("age_min_months < %d", r.AgeBelow); !strings.Contains(trigger, want) {
				t.Errorf("%s: the trigger %q lacks %q", r.ID, trigger, want)
			}
			if want := fmt.Sprintf("age_min_months >= %d", r.AgeFrom); r.AgeFrom > 0 && !strings.Contains(trigger, want) {
				t.Errorf("%s: the trigger %q lacks %q", r.ID, trigger, want)
			}
		}
		if r.Limit > 0 {
			cm := strings.TrimSuffix(cm(r.Limit), " cm")
			mm := fmt.Sprint(float64(r.Limit) / 1000)
			if !strings.Contains(trigger, "> "+cm) && !strings.Contains(trigger, "> "+mm) {
				t.Errorf("%s: neither %s cm nor %s mm is the limit of %q", r.ID, cm, mm, trigger)
			}
		}
	}
}

// TestUnitedStates checks what is not in a trigger as it stands: US sizes 2T to 12 and 2T to 16 are taken as 2 to 12 and 2
// to 16 years (16 CFR 1120 and the page of the Consumer Product Safety Commission on drawstrings, as summarised).
func TestUnitedStates(t *testing.T) {
	for _, r := range Rules {
		years := map[string]int{"USCD-01": 12, "USCD-02": 16}[r.ID]
		if years > 0 && (r.AgeFrom != 24 || r.AgeBelow != 12*(years+1)) {
			t.Errorf("%s: %d to below %d months", r.ID, r.AgeFrom, r.AgeBelow)
		}
	}
}

// TestRulesSound checks what the evaluation rests on: known words in every column, a message for every code with the
// weight the rule has, and words that defer to the law or to a licensed professional.
func TestRulesSound(t *testing.T) {
	known := map[string]bool{}
	for _, class := range classes {
		known[class] = true
	}
	zones := []Zone{Neck, Hood, Chest, Waist, Back, Hem, Sleeve, Other}
	weight := map[string]diag.Severity{"error": diag.Error, "warn": diag.Warning}
	for _, r := range Rules {
		for _, k := range r.kinds {
			if !known[k] {
				t.Errorf("%s: no kind is of the class %s", r.ID, k)
			}
		}
		for _, z := range r.zones {
			if !slices.Contains(zones, z) {
				t.Errorf("%s: no zone %s", r.ID, z)
			}
		}
		if !slices.Contains([]element{piece, cord, button, pompom, elastic}, r.element) ||
			!slices.Contains([]quantity{nothing, freeEnd, opening}, r.measure) || r.measure == freeEnd && r.element != cord {
			t.Errorf("%s: element %q, measure %q", r.ID, r.element, r.measure)
		}
		if (r.code == "") != (r.Severity == "caution") || r.code != "" && diag.Lookup(r.code).Severity != weight[r.Severity] {
			t.Errorf("%s: severity %s, code %q", r.ID, r.Severity, r.code)
		}
		if !strings.Contains(r.Text["en"], "local law") || !strings.Contains(r.Text["es"], "ley local") {
			t.Errorf("%s does not put the law first: %v", r.ID, r.Text)
		}
		if r.Severity == "error" && r.Evidence != "H" && r.Standard == "" {
			t.Errorf("%s: an error without the standard behind it", r.ID)
		}
		if len(r.Sources()) == 0 || len(r.Sources()) != len(r.sources) {
			t.Errorf("%s: sources %v, found %d", r.ID, r.sources, len(r.Sources()))
		}
	}
	for word, class := range classes {
		if word == "" || class == "" {
			t.Errorf("kind %q of class %q", word, class)
		}
	}
}

func TestZoneOf(t *testing.T) {
	for _, c := range []struct {
		kind, part string
		want       Zone
	}{
		{"trousers", "waistband", Waist}, {"trousers", "", Waist}, {"trousers", "left_hem", Hem}, {"cardigan", "body", UnknownZone},
		{"cardigan", "hood_edge", Hood}, {"dress", "Cuello", Neck}, {"hat", "crown", Other}, {"blanket", "", Other},
		{"", "waistband", Waist}, {"", "", UnknownZone}, {"gizmo", "x", UnknownZone},
	} {
		if got := ZoneOf(c.kind, c.part); got != c.want {
			t.Errorf("%s through %s: %q, want %q", c.kind, c.part, got, c.want)
		}
	}
}
