package compile

import (
	"slices"
	"strings"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// This file checks the counts that are stated: behind a row, between rows (have), and behind the end of a block.

// counting is how many there are, in one size, of the thing a claim speaks of.
type counting func(z int) (int, *fabric.Fault)

// claims checks the counts a row states.
func (p *partState) claims(cl *lang.Claims, w *working) {
	if cl == nil {
		return
	}
	came := make([]bool, p.c.z) // the sizes in which the row came out
	for z, on := range w.mask {
		came[z] = on && w.last[z] != nil && (p.final == nil || p.final[z])
	}
	for _, it := range cl.Items {
		if it.More != nil {
			p.c.say(codeEachTime, it.Span(), nil)
			continue
		}
		p.check(it, came, p.counter(it, w), w.n.List.Span())
	}
	p.namesSpaces(cl, w)
}

// have checks and prints counts between rows.
func (p *partState) have(n *lang.Have, mask []bool) {
	mask = p.live(mask)
	if !some(mask) {
		return
	}
	step := &plan.Counted{For: sizesOf(mask)}
	for _, it := range n.Claims.Items {
		if it.More != nil {
			p.c.say(codeEachTime, it.Span(), nil)
			continue
		}
		want := p.check(it, mask, p.liveCounter(it), source.Span{})
		if count, ok := p.printed(it); ok && want != nil {
			count.N = want
			step.Counts = append(step.Counts, count)
		}
	}
	if len(step.Counts) > 0 {
		p.add(step)
	}
}

// printed is the count that a claim between rows prints as.
func (p *partState) printed(it *lang.Claim) (plan.Count, bool) {
	switch {
	case it.Mult != nil:
		return plan.Count{}, false
	case it.In != nil:
		return plan.Count{Kind: plan.CountIn, Label: it.In.Path[0], Called: p.calls[it.In.Path[0]]}, true
	case it.Kind != nil && it.Kind.B != "":
		return plan.Count{}, false // stitches and chains together have no word of their own
	case it.Kind != nil && strings.HasPrefix(it.Kind.A, "space"):
		return plan.Count{Kind: plan.CountSpaces}, true
	case it.Kind != nil && strings.HasPrefix(it.Kind.A, "chain"):
		return plan.Count{Kind: plan.CountChains}, true
	case it.Name != nil:
		if f, ok := p.countedForm(it.Name.Text); ok {
			return plan.Count{Kind: plan.CountForm, Form: f}, true
		}
		if y, ok := p.c.yarnAt[it.Name.Text]; ok {
			return plan.Count{Kind: plan.CountYarn, Yarn: y}, true
		}
		name := p.labelNamed(it.Name.Text)
		return plan.Count{Kind: plan.CountIn, Label: name, Called: p.calls[name]}, true
	}
	return plan.Count{Kind: plan.CountSts}, true
}

// endClaims checks the count behind the end of a block: after its last pass, or the change in each. starts and times are
// those of a repeat; a schedule has none.
func (p *partState) endClaims(cl *lang.Claims, mask []bool, starts []int, times plan.Nums) {
	if cl == nil {
		return
	}
	mask = p.live(mask)
	for _, it := range cl.Items {
		switch {
		case it.More == nil:
			p.check(it, mask, p.liveCounter(it), source.Span{})
		case times == nil:
			p.c.say(codeEachTime, it.Span(), nil)
		default:
			p.eachTime(it, mask, starts, times)
		}
	}
}

// eachTime checks a change in every pass of a repeat.
func (p *partState) eachTime(it *lang.Claim, mask []bool, starts []int, times plan.Nums) {
	more := p.statedNums(it.More)
	if more == nil {
		return
	}
	want := p.c.nums(plan.Absent)
	for z, on := range mask {
		switch {
		case !on || times[z] == 0:
		case it.Less:
			want[z] = starts[z] - more[z]*times[z]
		default:
			want[z] = starts[z] + more[z]*times[z]
		}
	}
	p.differ(it, want, mask, p.liveCounter(it), source.Span{})
}

// check compares one stated count with what there is, and returns what is stated. made is the row it is the count of, if it
// is one.
func (p *partState) check(it *lang.Claim, mask []bool, get counting, made source.Span) plan.Nums {
	if get == nil {
		return nil
	}
	if it.Mult != nil {
		p.multiple(it, mask, get)
		return nil
	}
	want := p.statedNums(it.N)
	if want != nil {
		p.differ(it, want, mask, get, made)
	}
	return want
}

// statedNums works out a stated count. Where a size of the part is unknown already, a count that cannot be worked out is so for
// the same cause, as a rule, and is not reported again.
func (p *partState) statedNums(n *lang.Cnt) plan.Nums {
	before := len(p.c.out)
	v := p.c.cnt(n, p.lex)
	if v == nil && !slices.Equal(p.live(all(p.c.z)), all(p.c.z)) {
		p.c.out = p.c.out[:before]
	}
	return v
}

// differ reports the sizes in which a stated count differs. Which of the two numbers is wrong is not known, so nothing
// after it is.
func (p *partState) differ(it *lang.Claim, want plan.Nums, mask []bool, get counting, made source.Span) {
	bad := newSpread(p.c)
	for z, on := range mask {
		if !on || want[z] == plan.Absent || p.fab[z].Halted() {
			continue
		}
		have, f := get(z)
		if f != nil {
			f.Span = it.Span()
			p.c.gather(f, z, p)
			p.fab[z].Halt()
			continue
		}
		if have != want[z] && !p.fab[z].Halted() {
			bad.add(z, want[z], have)
			p.fab[z].Halt()
		}
	}
	if !bad.any() {
		return
	}
	d := diag.Diagnostic{Code: codeCount, Span: it.Span(), Sizes: bad.sizes(), Args: diag.Args{
		"need": bad.per(bad.need), "have": bad.per(bad.have), "what": p.claimed(it), "part": p.plan.Name}}
	if !made.IsZero() {
		d.Related = []diag.Related{{Span: made, Key: "made", Args: diag.Args{"have": bad.per(bad.have)}}}
	}
	p.c.report(d)
}

// multiple checks = multiple of 6 plus 1.
func (p *partState) multiple(it *lang.Claim, mask []bool, get counting) {
	m, plus := p.statedNums(it.Mult), p.c.nums(0)
	if it.Plus != nil {
		plus = p.statedNums(it.Plus)
	}
	if m == nil || plus == nil {
		return
	}
	bad := newSpread(p.c)
	var below, above []int
	for z, on := range mask {
		if !on || m[z] < 1 || p.fab[z].Halted() {
			continue
		}
		have, f := get(z)
		if f != nil {
			continue
		}
		if r := ((have-plus[z])%m[z] + m[z]) % m[z]; r != 0 {
			bad.add(z, m[z], have)
			below, above = append(below, have-r), append(above, have-r+m[z])
			p.fab[z].Halt()
		}
	}
	if bad.any() {
		p.c.report(diag.Diagnostic{Code: codeMultiple, Span: it.Span(), Sizes: bad.sizes(), Args: diag.Args{
			"have": bad.per(bad.have), "rule": p.c.file.Source.Slice(it.Span()), "below": bad.per(below), "above": bad.per(above)}})
	}
}

// namesSpaces sees to it that the count of a row that made spaces says so: a bare number would be read as all there is.
func (p *partState) namesSpaces(cl *lang.Claims, w *working) {
	for _, it := range cl.Items {
		if it.Kind != nil || it.In != nil || it.Mult != nil {
			return
		}
		if it.Name != nil {
			_, isStitch := p.countedForm(it.Name.Text)
			if _, isYarn := p.c.yarnAt[it.Name.Text]; !isStitch && !isYarn {
				return
			}
		}
	}
	s := newSpread(p.c)
	for z, on := range w.mask {
		if res := w.last[z]; on && res != nil && (p.final == nil || p.final[z]) {
			if n := p.tally(z, res.Made).spaces.Total(); n > 0 {
				s.add(z, 0, n)
			}
		}
	}
	if s.any() {
		p.c.report(diag.Diagnostic{Code: codeSpaces, Span: cl.Span(), Sizes: s.sizes(), Args: diag.Args{"have": s.per(s.have)}})
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

// counter is how the thing a claim speaks of is counted in a row. It is nil if there is no such thing; that was reported.
func (p *partState) counter(it *lang.Claim, w *working) counting {
	tally := func(z int) tally { return p.tally(z, w.last[z].Made) }
	switch {
	case it.In != nil:
		return p.inCounter(it.In, (*fabric.Part).CountHere)
	case it.Slip:
		return func(z int) (int, *fabric.Fault) { return w.last[z].Slips, nil }
	}
	return p.counterOf(it, tally)
}

// liveCounter is how it is counted on the edge between two rows.
func (p *partState) liveCounter(it *lang.Claim) counting {
	if it.In != nil {
		return p.inCounter(it.In, (*fabric.Part).CountIn)
	}
	return p.counterOf(it, func(z int) tally { return p.tally(z, p.fab[z].Edge()) })
}

// inCounter counts the places of a section or label, of this part or of another.
func (p *partState) inCounter(n *lang.Ref, count func(*fabric.Part, string) (int, *fabric.Fault)) counting {
	q, name := p, n.Path[0]
	if other, ok := p.c.parts[name]; ok && len(n.Path) > 1 {
		q, name, count = other, n.Path[1], (*fabric.Part).CountIn
	}
	if !q.names[name] {
		p.c.say(codeNoName, n.Span(), diag.Args{"word": p.c.file.Source.Slice(n.Span()), "near": lang.Near(name, keys(q.names))})
		return nil
	}
	return func(z int) (int, *fabric.Fault) {
		if q.fab[z].Halted() {
			p.fab[z].Halt()
			return 0, nil
		}
		return count(q.fab[z], name)
	}
}

func (p *partState) counterOf(it *lang.Claim, of func(z int) tally) counting {
	switch {
	case it.Kind != nil && it.Kind.Of != nil:
		chains := p.statedNums(it.Kind.Of)
		if chains == nil {
			return nil
		}
		return func(z int) (int, *fabric.Fault) { return of(z).spaces.Count(chains[z]), nil }
	case it.Kind != nil:
		return func(z int) (int, *fabric.Fault) { return ofKind(it.Kind, of(z)), nil }
	case it.Name != nil:
		return p.nameCounter(it.Name, of)
	}
	return func(z int) (int, *fabric.Fault) { return of(z).sts, nil }
}

// ofKind counts stitches, spaces, or chains in spaces, or two of them together.
func ofKind(k *lang.Kinds, t tally) int {
	words, n := k.A+" "+k.B, 0
	if strings.Contains(words, "st") {
		n += t.sts
	}
	if strings.Contains(words, "space") {
		n += t.spaces.Total()
	}
	if strings.Contains(words, "chain") {
		n += t.ch
	}
	return n
}

// nameCounter counts stitches of a kind or in a yarn, or the places of a label, written in the singular or the plural.
func (p *partState) nameCounter(n *lang.Name, of func(z int) tally) counting {
	if f, ok := p.countedForm(n.Text); ok {
		return func(z int) (int, *fabric.Fault) { return of(z).count(f), nil }
	}
	if y, ok := p.c.yarnAt[n.Text]; ok {
		return func(z int) (int, *fabric.Fault) { t := of(z); return t.in(y), nil }
	}
	name := p.labelNamed(n.Text)
	if !p.names[name] {
		p.c.say(codeNoName, n.Span(), diag.Args{"word": n.Text, "near": lang.Near(n.Text, append(keys(p.names), p.c.stitchWords()...))})
		return nil
	}
	return func(z int) (int, *fabric.Fault) { return p.fab[z].CountHere(name) }
}

// countedForm is the stitch that a word of a claim stands for: a group may stand in the plural.
func (p *partState) countedForm(word string) (stitch.Form, bool) {
	f, ok := p.c.form(word)
	if one, plural := strings.CutSuffix(word, "s"); !ok && plural {
		f, ok = p.c.form(one)
		ok = ok && f.Group != stitch.Single
	}
	return f, ok
}

// count is how many of a stitch there are: without a post, those round posts too.
func (t tally) count(f stitch.Form) int {
	if f.Group.Open() || f.Group == stitch.Picot {
		return t.groups[f]
	}
	k := 0
	for _, made := range t.kinds {
		g := plan.CountedAs(made.form)
		if g.ID == f.ID && g.Group == f.Group && g.Of == f.Of && (f.Post == stitch.NoPost || g.Post == f.Post) {
			k += made.n
		}
	}
	return k
}

// labelNamed is the label that a word of a claim stands for: corner for corners.
func (p *partState) labelNamed(word string) string {
	if one, ok := strings.CutSuffix(word, "s"); ok && !p.names[word] && p.names[one] {
		return one
	}
	return word
}
