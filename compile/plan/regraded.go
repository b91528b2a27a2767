package plan

// Regraded is what is different in a pattern that was worked at a maker's own gauge.
type Regraded struct {
	Changes []Change
	Stays   []string // the lines of the source's gauge that no other stands in place of, as the source writes them
}

// Change is a figure that is not the same at the maker's gauge as at the source's.
type Change struct {
	Of       ChangeOf
	Name     string // of the let, the measure or the yarn
	Old, New Value
	// Grams of a yarn. Old and New are empty then.
	OldGrams, NewGrams Nums
}

// ChangeOf says of what a [Change] is.
type ChangeOf uint8

// What can change.
const (
	ChangedLet ChangeOf = iota + 1
	ChangedMeasure
	ChangedYarn
)

// OwnGauges are the lines of the gauge that a maker's own stand in place of; none for the designer's edition.
func (p *Pattern) OwnGauges() []Gauge {
	var out []Gauge
	for _, g := range p.Gauges {
		if g.Was != nil {
			out = append(out, g)
		}
	}
	return out
}
