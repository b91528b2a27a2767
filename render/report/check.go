package report

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
)

// How says who decides a check.
type How string

// The ways to decide.
const (
	Machine How = "M"   // the program
	Flagged How = "m"   // the program points at it, a person decides
	Person  How = "P"   // a person alone
	Both    How = "M/m" // the program decides a part of it and points at the rest
)

// Group is a group of checks.
type Group string

// The groups, in the order of the report.
const (
	Reading   Group = "source"
	Front     Group = "front"
	Materials Group = "materials"
	Gauge     Group = "gauge"
	Counting  Group = "counts"
	Wording   Group = "words"
	Charts    Group = "charts"
	File      Group = "file"
	Safety    Group = "safety"
)

// Groups lists the groups in their order.
var Groups = []Group{Reading, Front, Materials, Gauge, Counting, Wording, Charts, File, Safety}

// Check is a check of a technical editor. S01 and S02 are ours, T01 to T70 the editor's own.
type Check struct {
	ID    string // T33
	How   How
	Group Group
	// Codes are the codes of messages that are findings of this check. OV1 stands for those of its family that no other check
	// claims.
	Codes []string
	name  text
	ask   text // the question put to a person; empty if there is none
}

// Name is the name of a check in a language.
func (c *Check) Name(lang string) string { return c.name.in(lang) }

//go:embed checks.csv
var checksCSV string

// Checks lists all checks in their order.
var Checks = readChecks()

func readChecks() []*Check {
	rows, err := csv.NewReader(strings.NewReader(checksCSV)).ReadAll()
	if err != nil {
		panic("report: checks.csv: " + err.Error())
	}
	var list []*Check
	for _, r := range rows[1:] {
		c := &Check{ID: r[0], How: How(r[1]), Group: Group(r[2]), Codes: strings.Fields(r[3]), name: text{r[4], r[5]}, ask: text{r[6], r[7]}}
		if !slices.Contains(Groups, c.Group) || !slices.Contains([]How{Machine, Flagged, Person, Both}, c.How) {
			panic(fmt.Sprintf("report: checks.csv: %s is %q in the group %q", c.ID, c.How, c.Group))
		}
		list = append(list, c)
	}
	return list
}

// writing is the family of messages about how a source is written.
const writing = "OV1"

// CheckOf returns the check that a code of a message is a finding of; nil for a code that no check knows.
func CheckOf(code string) *Check {
	for _, c := range Checks {
		if slices.Contains(c.Codes, code) {
			return c
		}
	}
	if strings.HasPrefix(code, writing) {
		return Checks[0]
	}
	return nil
}

// decides reports whether the program decides the check, as far as it can be decided without a person.
func (h How) decides() bool { return h == Machine || h == Both }
