package plan

import (
	"cmp"
	"slices"

	"ovillo/compile/stitch"
)

// CountsAfter are what prints under a row, given the row of each size; nil for a size that does not work it. One kind of
// stitch is counted by its name, several as stitches; with spaces each kind is counted apart.
func CountsAfter(rows []*RowFact) []Count {
	forms := make([]map[stitch.Form]int, len(rows))
	kinds, chains := map[stitch.Form]bool{}, map[int]bool{}
	for z, r := range rows {
		if r == nil {
			continue
		}
		forms[z] = map[stitch.Form]int{}
		for f, n := range r.ByForm.All() {
			forms[z][CountedAs(f)] += n
			kinds[CountedAs(f)] = true
		}
		for c := range r.BySpace.All() {
			chains[c] = true
		}
	}
	pick := func(get func(z int, r *RowFact) int) Nums {
		n := make(Nums, len(rows))
		for z, r := range rows {
			if n[z] = Absent; r != nil {
				n[z] = get(z, r)
			}
		}
		return n
	}
	var out []Count
	switch {
	case len(kinds) == 0:
	case len(kinds) == 1 || len(chains) > 0 && len(kinds) <= 3:
		for _, f := range shortToTall(kinds) {
			out = append(out, Count{Kind: CountForm, Form: f, N: pick(func(z int, _ *RowFact) int { return forms[z][f] })})
		}
	default:
		out = append(out, Count{Kind: CountSts, N: pick(func(_ int, r *RowFact) int { return r.Stitches })})
	}
	if len(chains) > 3 || len(chains) > 1 && spacesDiffer(rows) {
		return append(out, Count{Kind: CountSpaces, N: pick(func(_ int, r *RowFact) int { return r.Spaces })})
	}
	var long []int
	for c := range chains {
		long = append(long, c)
	}
	slices.SortFunc(long, func(a, b int) int { return b - a })
	for _, c := range long {
		out = append(out, Count{Kind: CountSpaces, Chains: c, N: pick(func(_ int, r *RowFact) int { return r.BySpace.Count(c) })})
	}
	return out
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
func shortToTall(forms map[stitch.Form]bool) []stitch.Form {
	at := map[stitch.ID]int{}
	for i, k := range stitch.Table {
		at[k.ID] = i
	}
	var out []stitch.Form
	for f := range forms {
		out = append(out, f)
	}
	slices.SortFunc(out, func(a, b stitch.Form) int {
		return cmp.Or(cmp.Compare(at[a.ID], at[b.ID]), cmp.Compare(a.ID, b.ID), cmp.Compare(a.Post, b.Post), cmp.Compare(a.Group, b.Group), cmp.Compare(a.Of, b.Of))
	})
	return out
}
