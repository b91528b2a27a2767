package compile

import (
	"cmp"
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file reads seams and compares the lengths of their two edges.

// sew reads a seam.
func (c *checker) sew(n *lang.Sew, f *plan.Finishing) bool {
	a, lenA, lacksA := c.seamEdge(n.A)
	b, lenB, lacksB := c.seamEdge(n.B)
	if a == nil || b == nil {
		return false
	}
	if lacks := cmp.Or(lacksA, lacksB); lacks != "" && n.Within != nil {
		c.noGauge(lacks, n)
	} else if lacks != "" && !c.blind[lacks] {
		c.blind[lacks] = true
		c.say(codeSeamBlind, n.Span(), diag.Args{"stitch": c.word(lacks)})
	}
	f.Sewn, f.To, f.Match = a, b, c.match(a, b)
	tol := plan.Centimetre
	if n.Within != nil {
		if t := c.value(n.Within, nil).Lengths(); t != nil {
			tol = t[0]
		}
	}
	first := c.parts[c.pat.Parts[a[0].Part].Name]
	if f.Yarn = first.inHand; f.Yarn < 0 {
		f.Yarn = first.plan.Yarn
	}
	f.Length = make(plan.Lengths, c.z)
	f.Ease = easing(lenA, lenB)
	bad := newSpread(c)
	var have, need []string
	for z := range lenA {
		if f.Length[z] = plan.NoLength; lenA[z] == plan.NoLength || lenB[z] == plan.NoLength {
			continue
		}
		f.Length[z] = max(lenA[z], lenB[z]) * plan.Length(c.pieces(z, append(slices.Clone(a), b...)))
		if d := lenA[z] - lenB[z]; d > tol || -d > tol {
			bad.add(z, 0, 0)
			have, need = append(have, cmText(lenA[z])), append(need, cmText(lenB[z]))
		}
	}
	if bad.any() {
		h, w := bad.per(bad.need), bad.per(bad.need)
		h.Values, w.Values = have, need
		c.report(diag.Diagnostic{Code: codeSeam, Span: n.Span(), Sizes: bad.sizes(), Args: diag.Args{"have": h, "need": w, "within": diag.Length(tol)}})
	}
	return true
}

// pieces is how many of the parts that some edges belong to are made: as often is the seam sewn.
func (c *checker) pieces(z int, refs []plan.Ref) int {
	n := 1
	for _, r := range refs {
		n = max(n, int(c.parts[c.pat.Parts[r.Part].Name].pieces(z)))
	}
	return n
}

// easing is by how much one edge of a seam is longer than the other, to the nearest half centimetre: what a maker can see and
// pin (common practice, no source). It is nil where the edges are alike to that in every size.
func easing(a, b plan.Lengths) plan.Lengths {
	const step = plan.Centimetre / 2
	out, some := make(plan.Lengths, len(a)), false
	for z := range a {
		if a[z] == plan.NoLength || b[z] == plan.NoLength {
			out[z] = plan.NoLength
			continue
		}
		d := max(a[z]-b[z], b[z]-a[z])
		out[z] = (d + step/2) / step * step
		some = some || out[z] > 0
	}
	if !some {
		return nil
	}
	return out
}

// maxMatchRows is the most row ends over which a seam's rate is said: a maker has to keep count of them.
const maxMatchRows = 12

// match is the rate at which stitches meet ends of rows in a seam, if it is the same in every size.
func (c *checker) match(a, b []plan.Ref) plan.Match {
	ends := func(refs []plan.Ref) (rows, sts bool) {
		for _, r := range refs {
			rows, sts = rows || r.Kind == plan.RefRowEnds, sts || r.Kind != plan.RefRowEnds
		}
		return rows, sts
	}
	if rows, sts := ends(a); rows && !sts {
		a, b = b, a
	}
	if rows, _ := ends(a); rows {
		return plan.Match{}
	}
	if rows, sts := ends(b); !rows || sts {
		return plan.Match{}
	}
	var out plan.Match
	for z := range c.z {
		m := plan.Match{Stitches: placesIn(a, z), Rows: placesIn(b, z)}
		if m.Stitches < 1 || m.Rows < 1 {
			return plan.Match{}
		}
		k := gcd(m.Stitches, m.Rows)
		m.Stitches, m.Rows = m.Stitches/k, m.Rows/k
		if z > 0 && m != out || m.Rows > maxMatchRows {
			return plan.Match{}
		}
		out = m
	}
	return out
}

// placesIn is how many places some edges have together in a size.
func placesIn(refs []plan.Ref, z int) int {
	n := 0
	for _, r := range refs {
		n += r.Count[z]
	}
	return n
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// seamEdge reads one side of a seam: one edge, or several that follow one another. Its length is that of all of them; lacks is a
// stitch without whose gauge it is not known.
func (c *checker) seamEdge(edges []*lang.Edge) (out []plan.Ref, ls plan.Lengths, lacks stitch.ID) {
	sum := make(plan.Lengths, c.z)
	for _, e := range edges {
		ref, ls, no := c.edgeRef(e)
		if ref == nil {
			return nil, nil, ""
		}
		lacks = cmp.Or(lacks, no)
		out = append(out, *ref)
		for z, l := range ls {
			if l == plan.NoLength || sum[z] == plan.NoLength {
				sum[z] = plan.NoLength
				continue
			}
			sum[z] += l
		}
	}
	return out, sum, lacks
}

// edgeRef reads an edge of a seam: the ends of rows, a label, the last row of a part, or its foundation.
func (c *checker) edgeRef(n *lang.Edge) (*plan.Ref, plan.Lengths, stitch.ID) {
	if n.Side == nil {
		return c.placesRef(n.Ref)
	}
	e := c.sideEdge(n.Side, nil)
	if e == nil {
		return nil, nil, ""
	}
	ref, ls := e.ref(all(c.z)), make(plan.Lengths, c.z)
	var lacks stitch.ID
	for z := range ls {
		var no stitch.ID
		ls[z], no = e.length(z, e.run(z))
		lacks = cmp.Or(lacks, no)
	}
	return &ref, ls, lacks
}

// placesRef reads an edge that is places by name. lacks is a stitch that has no gauge, so that the length is not known. Chains are as
// wide as the stitches on them where they have none of their own.
func (c *checker) placesRef(n *lang.Ref) (at *plan.Ref, ls plan.Lengths, lacks stitch.ID) {
	p := c.parts[n.Path[0]]
	if p == nil || len(n.Path) < 2 {
		c.say(codeNoPart, n.Span(), diag.Args{"word": n.Path[0], "near": lang.Near(n.Path[0], keys(c.parts))})
		return nil, nil, ""
	}
	ref := plan.Ref{Part: p.index, Label: n.Path[1], Count: c.nums(plan.Absent), Called: p.plan.Called}
	ls = make(plan.Lengths, c.z)
	p.asked = true
	for z := range ls {
		var run fabric.Run
		var f *fabric.Fault
		switch n.Path[1] {
		case "edge":
			ref.Kind, run = plan.RefEdge, p.fab[z].EdgeRun()
		case "foundation":
			ref.Kind, run = plan.RefFoundation, p.fab[z].FoundationRun()
		default:
			run, f = p.fab[z].NamedRun(n.Path[1], false)
			ref.Kind, ref.Called = plan.RefStitches, p.calls[n.Path[1]]
		}
		if f != nil {
			c.say(codeNoName, n.Span(), diag.Args{"word": c.file.Source.Slice(n.Span()), "near": lang.Near(n.Path[1], keys(p.names))})
			return nil, nil, ""
		}
		ref.Count[z] = len(run.Places)
		width := 0.0
		for _, pl := range run.Places {
			id := c.fabrics[z].FormOf(pl.ID).ID
			w, _, _ := c.stitchSize(id, p.manner(p.style))
			width += w
			if c.gaugeFor(id, p.manner(p.style)) == nil && (id != stitch.Chain || w == 0) {
				lacks = id
			}
		}
		if ls[z] = micro(width); width == 0 || lacks != "" {
			ls[z] = plan.NoLength
		}
	}
	return &ref, ls, lacks
}
