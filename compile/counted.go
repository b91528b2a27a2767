package compile

import (
	"cmp"
	"sort"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
)

// tally is what a row made: stitches by form and by yarn, spaces by the number of their chains.
type tally struct {
	sts, chains int
	yarns       map[int]int
	forms       map[stitch.Form]int
	groups      map[stitch.Form]int // shells, V stitches and picots: what they are made of is counted among the others
	spaces      map[int]int
}

func (p *partState) tally(z int, made []fabric.ID) tally {
	t := tally{forms: map[stitch.Form]int{}, yarns: map[int]int{}, groups: map[stitch.Form]int{}, spaces: map[int]int{}}
	elems := p.c.fabrics[z].Elems
	for _, id := range made {
		el := &elems[id]
		for _, f := range p.c.fabrics[z].RidesOn(id) {
			t.groups[f]++
		}
		if el.Kind == fabric.Space {
			t.spaces[int(el.N)]++
			t.chains += int(el.N)
			continue
		}
		t.sts++
		t.yarns[int(el.Yarn)]++
		f := p.c.fabrics[z].FormOf(id)
		t.forms[countAs(f)]++
		if f.Group.Open() {
			t.groups[f]++
		}
	}
	for f, n := range t.groups {
		if f.Group.Open() {
			sts, _ := f.Makes()
			t.groups[f] = n / sts
		}
	}
	return t
}

// countAs is the form under which a stitch is counted: a decrease, a stitch in one loop and a stitch of a shell count as
// their stitch, a post stitch and a cluster as themselves.
func countAs(f stitch.Form) stitch.Form {
	c := stitch.Form{ID: f.ID, Post: f.Post, Together: 1}
	if f.Group.Closed() {
		c.Group, c.Of = f.Group, f.Of
	}
	return c
}

// counts are what prints under a row: one kind of stitch by its name, several as stitches; with spaces each kind apart.
func (p *partState) counts(w *working) []plan.Count {
	c := p.c
	ts := make([]*tally, c.z)
	forms := map[stitch.Form]bool{}
	spaces := map[int]bool{}
	for z := range ts {
		if w.last[z] == nil {
			continue
		}
		t := p.tally(z, w.last[z].Made)
		ts[z] = &t
		for f := range t.forms {
			forms[f] = true
		}
		for s := range t.spaces {
			spaces[s] = true
		}
	}
	pick := func(get func(*tally) int) plan.Nums {
		n := c.nums(plan.Absent)
		for z, t := range ts {
			if t != nil {
				n[z] = get(t)
			}
		}
		return n
	}
	var out []plan.Count
	switch {
	case len(forms) == 0:
	case len(forms) == 1 || len(spaces) > 0 && len(forms) <= 3:
		for _, f := range sortedForms(forms) {
			out = append(out, plan.Count{Kind: plan.CountForm, Form: f, N: pick(func(t *tally) int { return t.forms[f] })})
		}
	default:
		out = append(out, plan.Count{Kind: plan.CountSts, N: pick(func(t *tally) int { return t.sts })})
	}
	if len(spaces) > 3 || len(spaces) > 1 && sizesDiffer(ts) {
		return append(out, plan.Count{Kind: plan.CountSpaces, N: pick(func(t *tally) int { return total(t.spaces) })})
	}
	for _, s := range sortedKeys(spaces) {
		out = append(out, plan.Count{Kind: plan.CountSpaces, Chains: s, N: pick(func(t *tally) int { return t.spaces[s] })})
	}
	return out
}

// sizesDiffer reports whether the spaces of two sizes are of different kinds.
func sizesDiffer(ts []*tally) bool {
	var first *tally
	for _, t := range ts {
		switch {
		case t == nil:
		case first == nil:
			first = t
		default:
			for s := range t.spaces {
				if first.spaces[s] == 0 {
					return true
				}
			}
		}
	}
	return false
}

func total(m map[int]int) int {
	n := 0
	for _, v := range m {
		n += v
	}
	return n
}

func sortedKeys(m map[int]bool) []int {
	var out []int
	for k := range m {
		out = append(out, k)
	}
	sort.Sort(sort.Reverse(sort.IntSlice(out)))
	return out
}

// sortedForms orders forms from short to tall, as the table does.
func sortedForms(m map[stitch.Form]bool) []stitch.Form {
	at := map[stitch.ID]int{}
	for i, k := range stitch.Table {
		at[k.ID] = i
	}
	var out []stitch.Form
	for f := range m {
		out = append(out, f)
	}
	sort.Slice(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if at[a.ID] != at[b.ID] {
			return at[a.ID] < at[b.ID]
		}
		return cmp.Or(cmp.Compare(a.ID, b.ID), cmp.Compare(a.Post, b.Post), cmp.Compare(a.Group, b.Group), cmp.Compare(a.Of, b.Of)) < 0
	})
	return out
}

// spread gathers the sizes that fail one check.
type spread struct {
	c          *checker
	at         []int
	need, have []int
}

func newSpread(c *checker) *spread { return &spread{c: c} }

func (s *spread) add(z, need, have int) {
	s.at, s.need, s.have = append(s.at, z), append(s.need, need), append(s.have, have)
}

func (s *spread) any() bool { return len(s.at) > 0 }

// sizes names the sizes concerned, nil if they are all.
func (s *spread) sizes() []string {
	if len(s.at) == s.c.z {
		return nil
	}
	return s.names()
}

// names names the sizes concerned, all or not.
func (s *spread) names() []string {
	var out []string
	for _, z := range s.at {
		out = append(out, s.c.pat.Sizes[z].Name)
	}
	return out
}

// per puts numbers beside the names of their sizes.
func (s *spread) per(n []int) diag.PerSize {
	p := diag.PerSize{All: len(s.at) == s.c.z}
	for i, z := range s.at {
		p.Names = append(p.Names, s.c.pat.Sizes[z].Name)
		p.Values = append(p.Values, itoa(n[i]))
	}
	return p
}

// alike is the one number that holds in every size concerned, where another number of the message names the sizes; else the
// numbers beside the names of their sizes.
func (s *spread) alike(n []int) any {
	for _, v := range n[1:] {
		if v != n[0] {
			return s.per(n)
		}
	}
	return n[0]
}
