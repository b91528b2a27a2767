package standard

import (
	"math/big"
	"slices"
	"sync"

	"ovillo/compile/plan"
)

// Figure is one body measure in one size of a table. Where the table gives a range, Value is its middle.
type Figure struct {
	Value  plan.Length
	Memory bool   // recalled, not read in its source: it must be marked wherever it is printed
	Kind   string // body as printed, or derived by arithmetic on printed figures
	Source string // id in data/sources.csv
}

// BodyRow is one size of a table of body measures. From and To are the ages in months it is made for, -1 where the size goes
// by its name alone.
type BodyRow struct {
	Name     string
	From, To int
	Figures  map[string]Figure // by the name of the measure: chest, waist
}

// BodyTable is a table of body measures, smallest size first. It holds no measures of garments.
type BodyTable struct {
	Name     string // babies, children, youth, women, men, heads, hands, feet
	Rows     []*BodyRow
	Measures []string // that any of its rows has, in the order of the table
}

// BodyTables are the tables of body measures, those of whole bodies first.
var BodyTables = sync.OnceValue(func() []*BodyTable {
	var out []*BodyTable
	for _, r := range table("body.csv") {
		if len(out) == 0 || out[len(out)-1].Name != r["table"] {
			out = append(out, &BodyTable{Name: r["table"]})
		}
		t := out[len(out)-1]
		if n := len(t.Rows); n == 0 || t.Rows[n-1].Name != r["row"] {
			t.Rows = append(t.Rows, &BodyRow{Name: r["row"], From: r.age("from"), To: r.age("to"), Figures: map[string]Figure{}})
		}
		if !slices.Contains(t.Measures, r["measure"]) {
			t.Measures = append(t.Measures, r["measure"])
		}
		t.Rows[len(t.Rows)-1].Figures[r["measure"]] = Figure{Value: r.middle(), Memory: !r.read(), Kind: r["kind"], Source: r["source"]}
	}
	return out
})

// age reads an age in months, -1 where there is none.
func (r row) age(column string) int {
	if r[column] == "" {
		return -1
	}
	return r.whole(column)
}

// middle is the figure of a row in centimetres, or the middle of its range.
func (r row) middle() plan.Length {
	low := r.number("low")
	if r["high"] != "" {
		low.Add(low, r.number("high")).Mul(low, big.NewRat(1, 2))
	}
	v, _ := low.Mul(low, big.NewRat(int64(plan.Centimetre), 1)).Float64()
	return plan.Length(v)
}

// BodyTableOf finds a table of body measures.
func BodyTableOf(name string) (*BodyTable, bool) {
	for _, t := range BodyTables() {
		if t.Name == name {
			return t, true
		}
	}
	return nil, false
}

// BodyTableNames lists the tables.
func BodyTableNames() []string {
	var out []string
	for _, t := range BodyTables() {
		out = append(out, t.Name)
	}
	return out
}

// Row finds a size of the table by its name.
func (t *BodyTable) Row(name string) (*BodyRow, bool) {
	for _, r := range t.Rows {
		if r.Name == name {
			return r, true
		}
	}
	return nil, false
}

// RowNames lists the sizes of the table, smallest first.
func (t *BodyTable) RowNames() []string {
	var out []string
	for _, r := range t.Rows {
		out = append(out, r.Name)
	}
	return out
}

// heads is the one table that goes by a curve of growth.
const heads = "heads"

// ForAge returns the smallest size that is made for an age in months; false if the table has none. Heads follow the median
// of the WHO Child Growth Standards at that very age, see [Head].
func (t *BodyTable) ForAge(months int) (*BodyRow, bool) {
	if t.Name == heads {
		_, mid, _, ok := Head(months)
		if !ok {
			return nil, false
		}
		return &BodyRow{From: months, To: months, Figures: map[string]Figure{"head": {Value: mid, Kind: "derived", Source: growthSource}}}, true
	}
	var first *BodyRow
	for _, r := range t.Rows {
		if r.From < 0 {
			continue
		}
		if first == nil {
			first = r
		}
		if months >= first.From && months <= r.To {
			return r, true
		}
	}
	return nil, false
}

// Ages returns the youngest and the oldest age in months of the table; false if its sizes go by their names alone.
func (t *BodyTable) Ages() (from, to int, ok bool) {
	if t.Name == heads {
		return curve()[0].months, curve()[len(curve())-1].months, true
	}
	from, to = -1, -1
	for _, r := range t.Rows {
		if r.From < 0 {
			continue
		}
		if from < 0 {
			from = r.From
		}
		to = max(to, r.To)
	}
	return from, to, from >= 0
}

// sourceNames is how pages name the sources of body measures, by their ids.
var sourceNames = sync.OnceValue(func() map[string]plan.Text {
	m := map[string]plan.Text{}
	for _, r := range table("sources.csv") {
		if r["en"] != "" {
			m[r["id"]] = plan.Text{"en": r["en"], "es": r["es"]}
		}
	}
	return m
})

// SourceName is how a page names the source of body measures.
func SourceName(id string) plan.Text { return sourceNames()[id] }

// Around returns the figure of a measure for an age in months, and the span from the size before to the one behind; false if
// the table has none.
func (t *BodyTable) Around(months int, measure string) (f Figure, lo, hi plan.Length, ok bool) {
	row, ok := t.ForAge(months)
	if !ok {
		return Figure{}, 0, 0, false
	}
	if f, ok = row.Figures[measure]; !ok {
		return Figure{}, 0, 0, false
	}
	if t.Name == heads {
		lo, _, hi, _ = Head(months)
		return f, lo, hi, true
	}
	lo, hi = f.Value, f.Value
	at := slices.Index(t.Rows, row)
	for _, i := range []int{at - 1, at + 1} {
		if i < 0 || i >= len(t.Rows) || t.Rows[i].From < 0 {
			continue
		}
		if g, ok := t.Rows[i].Figures[measure]; ok {
			lo, hi = min(lo, g.Value), max(hi, g.Value)
		}
	}
	return f, lo, hi, true
}
