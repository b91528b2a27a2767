package plan

import (
	"cmp"
	"slices"

	"ovillo/compile/stitch"
)

// CountsAfter are what prints under a row, given the row of each size; nil for a size that does not work it. One kind of
// stitch is counted by its name, several as stitches; with spaces each kind is counted apart.
func CountsAfter(rows []*RowFact) []Count {
	var kinds Tally[stitch.Form]
	var chains Tally[int]
	for _, r := range rows {
		if r == nil {
			continue
		}
		for f := range r.ByForm.All() {
			kinds.Add(CountedAs(f), 0)
		}
		for c := range r.BySpace.All() {
			chains.Add(c, 0)
		}
	}
	pick := func(get func(r *RowFact) int) Nums {
		n := make(Nums, len(rows))
		for z, r := range rows {
			if n[z] = Absent; r != nil {
				n[z] = get(r)
			}
		}
		return n
	}
	var out []Count
	switch {
	case len(kinds) == 0:
	case len(kinds) == 1 || len(chains) > 0 && len(kinds) <= 3:
		slices.SortFunc(kinds, shortToTall)
		for f := range kinds.All() {
			out = append(out, Count{Kind: CountForm, Form: f, N: pick(func(r *RowFact) int { return r.CountedAs(f) })})
		}
	default:
		out = append(out, Count{Kind: CountSts, N: pick(func(r *RowFact) int { return r.Stitches })})
	}
	if len(chains) > 3 || len(chains) > 1 && spacesDiffer(rows) {
		return append(out, Count{Kind: CountSpaces, N: pick(func(r *RowFact) int { return r.Spaces })})
	}
	slices.SortFunc(chains, func(a, b Tallied[int]) int { return b.Of - a.Of })
	for c := range chains.All() {
		out = append(out, Count{Kind: CountSpaces, Chains: c, N: pick(func(r *RowFact) int { return r.BySpace.Count(c) })})
	}
	return out
}

// CountedAs is how many stitches of a row are counted as a form.
func (r *RowFact) CountedAs(f stitch.Form) int {
	n := 0
	for form, of := range r.ByForm.All() {
		if CountedAs(form) == f {
			n += of
		}
	}
	return n
}

// CountedAs is the form under which a stitch is counted: a decrease, a stitch in one loop and a stitch of a shell count as
// their stitch, a post stitch and a cluster as themselves.
func CountedAs(f stitch.Form) stitch.Form {
	c := stitch.Form{ID: f.ID, Post: f.Post, Together: 1}
	if f.Group.Closed() {
		c.Group, c.Of = f.Group, f.Of
	}
	return c
}

// spacesDiffer reports whether the spaces of two sizes are of different kinds.
func spacesDiffer(rows []*RowFact) bool {
	var first *RowFact
	for _, r := range rows {
		switch {
		case r == nil:
		case first == nil:
			first = r
		default:
			for c := range r.BySpace.All() {
				if first.BySpace.Count(c) == 0 {
					return true
				}
			}
		}
	}
	return false
}

// shortToTall orders forms from short to tall, as the table of stitches does.
func shortToTall(a, b Tallied[stitch.Form]) int {
	at := func(id stitch.ID) int {
		return max(slices.IndexFunc(stitch.Table, func(k stitch.Kind) bool { return k.ID == id }), 0) // stitches of the designer's own come first
	}
	return cmp.Or(cmp.Compare(at(a.Of.ID), at(b.Of.ID)), cmp.Compare(a.Of.ID, b.Of.ID), cmp.Compare(a.Of.Post, b.Of.Post), cmp.Compare(a.Of.Group, b.Of.Group),
		cmp.Compare(a.Of.Of, b.Of.Of))
}
