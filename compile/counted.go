package compile

import (
	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/diag"
)

// tally is what a row made: stitches by form and by yarn, spaces by the number of their chains.
type tally struct {
	content
	sts, ch int                 // stitches, and chains in spaces
	groups  map[stitch.Form]int // shells, V stitches and picots: what they are made of is counted among the others
}

func (p *partState) tally(z int, ids []fabric.ID) tally {
	f := p.c.fabrics[z]
	t := tally{content: p.contentOf(z, ids)}
	for chains, n := range t.spaces.All() {
		t.ch += chains * n
	}
	for _, k := range t.kinds {
		t.sts += k.n
		if k.form.Group.Open() {
			t.group(k.form, k.n)
		}
	}
	for g, n := range t.groups {
		sts, _ := g.Makes()
		t.groups[g] = n / sts
	}
	if f.Riding() {
		for _, id := range ids {
			for _, g := range f.RidesOn(id) {
				t.group(g, 1)
			}
		}
	}
	return t
}

// contentOf is what elements are, which mostly are those that the last row made.
func (p *partState) contentOf(z int, ids []fabric.ID) content {
	if p.made != nil && len(ids) > 0 {
		if m := &p.made[z]; len(m.ids) == len(ids) && &m.ids[0] == &ids[0] {
			return m.content
		}
	}
	return contentOf(p.c.fabrics[z], ids, nil)
}

func (t *tally) group(f stitch.Form, n int) {
	if t.groups == nil {
		t.groups = map[stitch.Form]int{}
	}
	t.groups[f] += n
}

// in is how many stitches are in a yarn.
func (t *tally) in(yarn int) int {
	n := 0
	for _, k := range t.kinds {
		if k.yarn == yarn {
			n += k.n
		}
	}
	return n
}

// byForm are the stitches by what they are counted as.
func (t *tally) byForm() plan.Tally[stitch.Form] {
	var out plan.Tally[stitch.Form]
	for _, k := range t.kinds {
		out.Add(plan.CountedAs(k.form), k.n)
	}
	return out
}

// counts are what prints under a row, or under the last of a run of rows.
func (p *partState) counts(w *working) []plan.Count {
	rows := make([]*plan.RowFact, p.c.z)
	for z := range rows {
		if w.last[z] == nil {
			continue
		}
		if f := plan.FactOf(p.plan.Worked[z], w.to[z]); f != nil { // of a run that is printed in pieces it may lie further back
			rows[z] = f
			continue
		}
		t := p.tally(z, w.last[z].Made)
		rows[z] = &plan.RowFact{Stitches: t.sts, Spaces: t.spaces.Total(), ByForm: t.byForm(), BySpace: t.spaces}
	}
	return plan.CountsAfter(rows)
}

func total(m map[int]int) int {
	n := 0
	for _, v := range m {
		n += v
	}
	return n
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
