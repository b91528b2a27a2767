package compile

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file compares the sample, as it was measured, with what its counts give.

// How far a sample may be off where the source does not say: 1 cm, or 3 % of a long measure. Common practice, no source.
const (
	sampleWithin  = plan.Centimetre
	samplePercent = 3
)

// sampleMeasures compares the measures of the sample with those of its size.
func (c *checker) sampleMeasures() {
	if c.origin != nil {
		c.pat.Sample = c.origin.pat.Sample // it was made at the gauge of the source, and compared with that
		return
	}
	if c.sample == nil {
		return
	}
	for _, l := range blocks[*lang.Sample](c.file.Body)[0].Body {
		if n, ok := l.Node.(*lang.SampleMeasure); ok {
			c.sampleMeasure(n)
		}
	}
}

func (c *checker) sampleMeasure(n *lang.SampleMeasure) {
	m := c.firstMeasure([]string{n.Name.Text})
	if m == nil {
		known := c.measureNames()
		if slices.Contains(known, n.Name.Text) {
			return // it could not be worked out, which was reported
		}
		c.say(codeNoMeasure, n.Name.Span(), diag.Args{"word": n.Name.Text, "near": c.file.Near(n.Name.Text, known), "known": known})
		return
	}
	v := c.value(n.Value, nil)
	if v.Unknown {
		return
	}
	ls := v.Lengths()
	if ls == nil {
		c.say(codeMeasured, n.Value.Span(), nil)
		return
	}
	z := c.sample.size
	found, need := ls[z], m.Values[z]
	if found == plan.NoLength || need == plan.NoLength {
		return // the size has no such measure
	}
	if n.Flat {
		if !goesAround(m) {
			c.say(codeFlat, n.Span(), diag.Args{"name": n.Name.Text})
			return
		}
		found *= 2
	}
	within := max(sampleWithin, need*samplePercent/100)
	if n.Within != nil {
		if w := c.value(n.Within, nil).Lengths(); w != nil {
			within = w[z]
		}
	}
	off := found-need > within || need-found > within
	c.pat.Sample.Measures = append(c.pat.Sample.Measures, plan.SampleMeasure{Name: m.Name, Found: found, Worked: need, Off: off})
	if off {
		c.say(codeSampleOff, n.Span(), diag.Args{"name": n.Name.Text, "found": diag.Length(found), "need": diag.Length(need),
			"size": c.pat.Sizes[z].Name, "within": diag.Length(within)})
	}
}

// goesAround reports whether a measure goes all the way round: it is taken around parts, or across several flat pieces that lie
// on each other, such as back and front.
func goesAround(m *plan.Measure) bool {
	widths := 0
	for _, of := range m.Of {
		switch {
		case of.Minus || of.Kind == plan.Height || of.Kind == plan.Across || of.Kind == plan.Long:
			return false
		case of.Kind == plan.Width:
			widths++
		}
	}
	return len(m.Of) > 0 && widths != 1
}

// measureNames lists the measures of the source.
func (c *checker) measureNames() []string {
	var out []string
	for _, s := range blocks[*lang.MeasureBlock](c.file.Body) {
		for _, b := range s.Body {
			if m, ok := b.Node.(*lang.Measure); ok {
				out = append(out, m.Name.Text)
			}
		}
	}
	return out
}
