package compare

import (
	"maps"
	"slices"

	"ovillo/compile/numeral"
	"ovillo/compile/plan"
)

// sameFigures reports whether two texts give the same figures in every language that both have.
func (c *comparison) sameFigures(old, new plan.Prose) bool {
	for code, text := range old.Text {
		now, both := new.Text[code]
		if !both {
			continue
		}
		a := numeral.Read(text, code, namesOf(c.old.p, code))
		b := numeral.Read(now, code, namesOf(c.new.p, code))
		if !numeral.Same(text, a, now, b) {
			return false
		}
	}
	return c.sameValues(old.Values, new.Values)
}

// sameValues reports whether two texts put in the same values, whatever these are called.
func (c *comparison) sameValues(old, new map[string]plan.Value) bool {
	list := func(b *book, values map[string]plan.Value) []string {
		var out []string
		for _, name := range slices.Sorted(maps.Keys(values)) {
			v := values[name]
			if v.Called != nil {
				continue // it puts in a name
			}
			v.Memory = false
			out = append(out, b.key(v))
		}
		slices.Sort(out)
		return slices.Compact(out)
	}
	return slices.Equal(list(c.old, old), list(c.new, new))
}

func namesOf(p *plan.Pattern, code string) []string {
	var out []string
	for _, s := range p.Sizes {
		if name := s.Names[code]; name != "" {
			out = append(out, name)
		}
		out = append(out, s.Name)
	}
	return out
}
