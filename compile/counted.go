package compile

import (
	"sort"
	"strings"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// tally is what a row made: stitches by form, spaces by the number of their chains.
type tally struct {
	sts, chains int
	forms       map[stitch.Form]int
	spaces      map[int]int
}

func (p *partState) tally(z int, res *fabric.Result) tally {
	t := tally{forms: map[stitch.Form]int{}, spaces: map[int]int{}}
	elems := p.c.fabrics[z].Elems
	for _, id := range res.Made {
		el := &elems[id]
		if el.Kind == fabric.Space {
			t.spaces[int(el.N)]++
			t.chains += int(el.N)
			continue
		}
		t.sts++
		t.forms[countAs(p.c.fabrics[z].FormOf(id))]++
	}
	return t
}

// countAs is the form under which a stitch is counted: a decrease and a stitch in one loop count as their stitch, a post
// stitch as itself.
func countAs(f stitch.Form) stitch.Form { return stitch.Form{ID: f.ID, Post: f.Post, Together: 1} }

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
		t := p.tally(z, w.last[z])
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
		return a.ID < b.ID || a.ID == b.ID && a.Post < b.Post
	})
	return out
}

// claims checks the counts a row states.
func (p *partState) claims(cl *lang.Claims, w *working) {
	if cl == nil {
		return
	}
	for _, it := range cl.Items {
		p.claim(it, w)
	}
	p.namesSpaces(cl, w)
}

// namesSpaces sees to it that the count of a row that made spaces says so: a bare number would be read as all there is.
func (p *partState) namesSpaces(cl *lang.Claims, w *working) {
	for _, it := range cl.Items {
		if it.Kind != nil || it.In != nil || it.Mult != nil {
			return
		}
		if it.Name != nil {
			if _, isStitch := p.c.form(it.Name.Text); !isStitch {
				return
			}
		}
	}
	s := newSpread(p.c)
	for z, on := range w.mask {
		if res := w.last[z]; on && res != nil {
			if n := total(p.tally(z, res).spaces); n > 0 {
				s.add(z, 0, n)
			}
		}
	}
	if s.any() {
		p.c.report(diag.Diagnostic{Code: codeSpaces, Span: cl.Span(), Sizes: s.sizes(), Args: diag.Args{"have": s.per(s.have)}})
	}
}

// claim checks one stated count in every size.
func (p *partState) claim(it *lang.Claim, w *working) {
	if it.More != nil {
		p.c.say(codeEachTime, it.Span(), nil)
		return
	}
	get := p.counter(it)
	if get == nil {
		return
	}
	if it.Mult != nil {
		p.multiple(it, w, get)
		return
	}
	want := p.c.cnt(it.N, p.lex)
	if want == nil {
		return
	}
	bad := newSpread(p.c)
	for z, on := range w.mask {
		res := w.last[z]
		if !on || res == nil || want[z] == plan.Absent || p.fab[z].Halted() {
			continue
		}
		have, f := get(z, res)
		if f != nil {
			f.Span = it.Span()
			p.c.gather(f, z, p)
			continue
		}
		if have != want[z] {
			bad.add(z, want[z], have)
			p.fab[z].Halt() // which of the two numbers is wrong is not known, so nothing after it is
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeCount, Span: it.Span(), Sizes: bad.sizes(), Args: diag.Args{
			"need": bad.per(bad.need), "have": bad.per(bad.have), "what": p.claimed(it), "part": p.plan.Name},
			Related: []diag.Related{{Span: w.n.List.Span(), Key: "made", Args: diag.Args{"have": bad.per(bad.have)}}}})
	}
}

// multiple checks = multiple of 6 plus 1.
func (p *partState) multiple(it *lang.Claim, w *working, get func(int, *fabric.Result) (int, *fabric.Fault)) {
	m, plus := p.c.cnt(it.Mult, p.lex), p.c.nums(0)
	if it.Plus != nil {
		plus = p.c.cnt(it.Plus, p.lex)
	}
	if m == nil || plus == nil {
		return
	}
	bad := newSpread(p.c)
	var below, above []int
	for z, on := range w.mask {
		if !on || w.last[z] == nil || m[z] < 1 {
			continue
		}
		have, _ := get(z, w.last[z])
		if r := ((have-plus[z])%m[z] + m[z]) % m[z]; r != 0 {
			bad.add(z, m[z], have)
			below, above = append(below, have-r), append(above, have-r+m[z])
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeMultiple, Span: it.Span(), Sizes: bad.sizes(), Args: diag.Args{
			"have": bad.per(bad.have), "multiple": bad.per(bad.need), "plus": plus[bad.at[0]], "below": bad.per(below), "above": bad.per(above)}})
	}
}

// claimed is the word of the source for what a claim counts.
func (p *partState) claimed(it *lang.Claim) any {
	switch {
	case it.Name != nil:
		return it.Name.Text
	case it.Kind != nil && strings.HasPrefix(it.Kind.A, "space"):
		return diag.Term{Key: "space", N: 2}
	case it.Kind != nil && strings.HasPrefix(it.Kind.A, "chain"):
		return diag.Term{Key: "chain", N: 2}
	case it.Slip:
		return diag.Term{Key: "slip stitch", N: 2}
	}
	return diag.Term{Key: "stitch", N: 2}
}

// counter is how the thing a claim speaks of is counted in a row.
func (p *partState) counter(it *lang.Claim) func(int, *fabric.Result) (int, *fabric.Fault) {
	switch {
	case it.In != nil:
		name := it.In.Path[0]
		return func(z int, _ *fabric.Result) (int, *fabric.Fault) { return p.fab[z].CountIn(name) }
	case it.Slip:
		return func(_ int, r *fabric.Result) (int, *fabric.Fault) { return r.Slips, nil }
	case it.Kind != nil:
		return p.kindCounter(it.Kind)
	case it.Name != nil:
		return p.nameCounter(it.Name)
	}
	return func(z int, r *fabric.Result) (int, *fabric.Fault) { return p.tally(z, r).sts, nil }
}

func (p *partState) kindCounter(k *lang.Kinds) func(int, *fabric.Result) (int, *fabric.Fault) {
	words := k.A + " " + k.B
	return func(z int, r *fabric.Result) (int, *fabric.Fault) {
		t, n := p.tally(z, r), 0
		if strings.Contains(words, "st") {
			n += t.sts
		}
		if strings.Contains(words, "space") {
			n += total(t.spaces)
		}
		if strings.Contains(words, "chain") {
			n += t.chains
		}
		return n, nil
	}
}

// nameCounter counts stitches of a kind, or the places of a label, written in the singular or the plural.
func (p *partState) nameCounter(n *lang.Name) func(int, *fabric.Result) (int, *fabric.Fault) {
	if f, ok := p.c.form(n.Text); ok {
		return func(z int, r *fabric.Result) (int, *fabric.Fault) {
			k := 0
			for g, v := range p.tally(z, r).forms {
				if g.ID == f.ID && (f.Post == stitch.NoPost || g.Post == f.Post) {
					k += v
				}
			}
			return k, nil
		}
	}
	name := n.Text
	if one, ok := strings.CutSuffix(name, "s"); ok && !p.names[name] && p.names[one] {
		name = one
	}
	if !p.names[name] {
		p.c.say(codeNoName, n.Span(), diag.Args{"word": n.Text, "near": lang.Near(n.Text, append(keys(p.names), p.c.stitchWords()...))})
		return nil
	}
	return func(z int, _ *fabric.Result) (int, *fabric.Fault) { return p.fab[z].CountIn(name) }
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
