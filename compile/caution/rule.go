package caution

import (
	"embed"
	"encoding/csv"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

//go:embed data
var data embed.FS

// Rule is one row of the table of rules.
type Rule struct {
	ID       string
	Group    string
	Markets  []string // eu, uk, us; nil: all
	Trigger  string   // as it stands in the table
	Severity string   // error, warn or caution
	Figure   string   // the published figure, metric
	Inches   string   // and in inches
	Standard string   // as it is printed
	Basis    string   // how the source was read
	Evidence string   // A authority, B test house or journal, C trade or forum, H limit of our own, M memory
	Read     plan.Read
	Seller   bool // for makers who sell what they make
	Text     plan.Text
	Note     string

	sources []string
	when    *predicate
	causes  []cause
	uses    attributes   // all that the trigger asks
	asks    []*attribute // the same as a list
	limits  attributes   // the measures among them
	upper   []*attribute // the lengths of a cord among them that must not be too large
	element map[element]bool
}

// cause is a part of a trigger that is a finding by itself: the conditions of its attribute, without those of the other causes.
// Without an attribute it is the whole trigger.
type cause struct {
	attr *attribute
	code diag.Code
}

// Rules is the table of rules.
func Rules() []*Rule { return rules() }

var rules = sync.OnceValue(func() []*Rule {
	how := map[string]plan.Read{"itself": plan.ReadItself, "summary": plan.ReadSummary, "memory": plan.ReadMemory, "own": plan.OwnRule}
	var out []*Rule
	shared := conditions{}
	for _, r := range table("rules.csv") {
		rule := &Rule{ID: r["id"], Group: r["group"], Trigger: r["trigger"], Severity: r["severity"], Figure: r["figure"],
			Inches: r["inches"], Standard: r["standard"], Basis: r["basis"], Evidence: r["evidence"], Read: how[r["read"]],
			Seller: r["seller"] == "yes", Text: plan.Text{"en": r["en"], "es": r["es"]}, Note: r["note"],
			sources: strings.Fields(r["sources"])}
		if r["market"] != "all" {
			rule.Markets = strings.Fields(r["market"])
		}
		var err error
		if rule.when, err = shared.read(rule.Trigger, piece); err != nil {
			panic(fmt.Sprintf("caution: %s: %v", rule.ID, err))
		}
		rule.survey()
		if err := rule.takeCodes(r["code"]); err != nil {
			panic(fmt.Sprintf("caution: %s: %v", rule.ID, err))
		}
		out = append(out, rule)
	}
	return out
})

// survey finds out what the trigger asks.
func (r *Rule) survey() {
	r.element = map[element]bool{}
	r.when.walk(func(p *predicate) {
		if p.op == anyOf {
			r.element[p.element] = true
		}
		if p.attr != nil {
			if r.uses |= p.attr.bit(); p.attr.measured && p.op >= below {
				r.limits |= p.attr.bit()
			}
		}
	})
	r.asks = r.uses.list()
	for _, a := range r.limits.list() {
		if a.of == cord && a.name != "width_cm" && a.name != "thick_mm" {
			r.upper = append(r.upper, a)
		}
	}
}

// takeCodes reads the codes of the findings: one, or one for each attribute that is a cause of its own, as in
// "free_cm OV910, end OV917".
func (r *Rule) takeCodes(text string) error {
	for _, item := range strings.Split(text, ",") {
		switch f := strings.Fields(item); len(f) {
		case 0:
		case 1:
			c := cause{code: diag.Code(f[0])}
			if all := r.limits.list(); len(all) == 1 {
				c.attr = all[0]
			}
			r.causes = append(r.causes, c)
		default:
			c := cause{code: diag.Code(f[1])}
			for _, a := range r.asks {
				if a.name == f[0] || string(a.of)+"."+a.name == f[0] {
					c.attr = a
				}
			}
			if c.attr == nil {
				return fmt.Errorf("the trigger does not ask %s", f[0])
			}
			r.causes = append(r.causes, c)
		}
	}
	return nil
}

// others is what a cause leaves out of the trigger: the attributes of the other causes.
func (r *Rule) others(c cause) attributes {
	var s attributes
	if len(r.causes) > 1 {
		for _, o := range r.causes {
			if o.attr != c.attr {
				s |= o.attr.bit()
			}
		}
	}
	return s
}

// onlyUS reports whether the rule is one of the United States alone.
func (r *Rule) onlyUS() bool { return slices.Equal(r.Markets, []string{"us"}) }

// heldIn reports whether the rule holds in one of some markets; nil: anywhere.
func (r *Rule) heldIn(markets []string) bool {
	if r.Markets == nil || len(markets) == 0 {
		return true
	}
	return slices.ContainsFunc(markets, func(m string) bool { return slices.Contains(r.Markets, m) })
}

// Source is where a rule comes from.
type Source struct{ Title, Address, Kind, Read string }

// Sources returns the sources of the rule.
func (r *Rule) Sources() []Source {
	var out []Source
	for _, row := range table("sources.csv") {
		if slices.Contains(r.sources, row["key"]) {
			out = append(out, Source{row["title"], row["address"], row["kind"], row["read"]})
		}
	}
	return out
}

// table reads a table by the names of its columns. The tables are part of the program, so a broken one is a fault of the
// program.
func table(name string) []map[string]string {
	rows, err := tableIn(data, "data/"+name)
	if err != nil {
		panic(fmt.Sprintf("caution: %s: %v", name, err))
	}
	return rows
}

// tableIn reads a table with a row of names at its top.
func tableIn(files fs.FS, name string) ([]map[string]string, error) {
	f, err := files.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	names, err := r.Read()
	if err != nil {
		return nil, err
	}
	cells, err := r.ReadAll()
	var out []map[string]string
	for _, row := range cells {
		m := make(map[string]string, len(names))
		for i, column := range names {
			m[column] = row[i]
		}
		out = append(out, m)
	}
	return out, err
}
