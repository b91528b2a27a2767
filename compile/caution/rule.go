package caution

import (
	"embed"
	"encoding/csv"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

//go:embed data
var data embed.FS

// Element is what a rule looks at.
type element string

const (
	piece   element = "" // the piece itself
	cord    element = "cord"
	button  element = "button"
	pompom  element = "pompom"
	elastic element = "elastic"
)

// quantity is what a rule measures.
type quantity string

const (
	nothing quantity = ""     // it is enough that the thing is there
	freeEnd quantity = "free" // the free end of a cord
	opening quantity = "gap"  // the largest opening of the fabric
)

// Rule is one row of the table of rules.
type Rule struct {
	ID       string
	Severity string // error, warn or caution
	Figure   string // the published figure in words
	Standard string // as it is printed
	Basis    string // how the source was read
	Evidence string // A authority, B test house or journal, C trade or forum, H limit of our own, M memory
	Text     plan.Text
	AgeFrom  int // months, youngest wearer
	AgeBelow int // months; any age if it is not above zero
	Limit    plan.Length
	code     diag.Code // of a finding; "" if only the caution prints
	kinds    []string  // classes; nil for all
	element  element
	zones    []Zone // nil for all
	drawn    Truth  // the cord must be a drawstring, or must be none; Unknown: either
	measure  quantity
	sources  []string
}

// Rules is the table of rules.
var Rules = func() []Rule {
	var out []Rule
	for _, r := range table("rules.csv") {
		rule := Rule{ID: r["id"], Severity: r["severity"], Figure: r["figure"], Standard: r["standard"], Basis: r["basis"],
			Evidence: r["evidence"], Text: plan.Text{"en": r["en"], "es": r["es"]},
			AgeFrom: whole(r["age_from"]), AgeBelow: whole(r["age_below"]), Limit: millimetres(r["limit"]),
			code: diag.Code(r["code"]), element: element(r["element"]), measure: quantity(r["measure"]),
			sources: strings.Fields(r["sources"])}
		if r["kinds"] != "*" {
			rule.kinds = strings.Fields(r["kinds"])
		}
		for _, z := range strings.Fields(r["zones"]) {
			rule.zones = append(rule.zones, Zone(z))
		}
		switch r["drawstring"] {
		case "yes":
			rule.drawn = True
		case "no":
			rule.drawn = False
		}
		out = append(out, rule)
	}
	return out
}()

// Source is where a rule comes from.
type Source struct{ Title, Address, Read string }

// Sources returns the sources of the rule.
func (r Rule) Sources() []Source {
	var out []Source
	for _, row := range table("sources.csv") {
		if slices.Contains(r.sources, row["key"]) {
			out = append(out, Source{row["title"], row["address"], row["read"]})
		}
	}
	return out
}

// table reads a table by the names of its columns. The tables are part of the program, so a broken one is a fault of the
// program.
func table(name string) []map[string]string {
	f, err := data.Open("data/" + name)
	if err != nil {
		panic("caution: " + err.Error())
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil || len(all) == 0 {
		panic(fmt.Sprintf("caution: %s: %v", name, err))
	}
	var out []map[string]string
	for _, row := range all[1:] {
		m := map[string]string{}
		for i, column := range all[0] {
			m[column] = row[i]
		}
		out = append(out, m)
	}
	return out
}

func whole(text string) int {
	if text == "" {
		return 0
	}
	n, err := strconv.Atoi(text)
	if err != nil {
		panic("caution: " + err.Error())
	}
	return n
}

func millimetres(text string) plan.Length {
	if text == "" {
		return 0
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic("caution: " + err.Error())
	}
	return plan.Length(math.Round(x * float64(plan.Millimetre)))
}
