package words

import "ovillo/compile/plan"

// countOff writes a counting off. Where counts and markers take turns and every marker stands between two stitches, it
// says behind how many stitches each one goes; any other is written step by step.
func (c *context) countOff(o *plan.CountOff) StepText {
	k := counting{round: c.round(), spiral: c.part.Style == plan.SpiralRounds, plain: true}
	label := SectionsLabel
	for i, it := range o.Items {
		marker := it.N == nil
		if marker {
			label = MarkersLabel
		}
		one := counted{called: c.l.theName(it.Called), inNext: it.InNext, more: i > 0}
		if marker {
			one.marker = c.marker(it.Marker)
		} else {
			one.n = c.num(it.N)
		}
		if marker != (i%2 == 1) || it.InNext {
			k.plain = false
		}
		if !marker && !one.n.some() {
			continue
		}
		if !marker {
			one.n = c.tally(it.N) // a marker stands behind none, too
		}
		k.items = append(k.items, one)
	}
	if len(k.items)%2 == 0 || len(k.items) != len(o.Items) {
		k.plain = false
	}
	return c.step(fill(c.l.voice.fixed(label)), c.l.voice.countOff(k))
}
