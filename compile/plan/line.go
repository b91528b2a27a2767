package plan

// RightToLeft is the order in which the stitches of a line lie beside one another as the right side shows them, from the
// right: indices into Stitches. In a round that is turned the first stitches stand over the join, at the right, where the
// round before it began; the others come to meet them from the left.
func (l *Line) RightToLeft() []int {
	n := len(l.Stitches)
	out := make([]int, n)
	first := 0
	if l.Closed {
		first = l.overJoin()
	}
	for i := range out {
		switch {
		case !l.FromLeft:
			out[i] = i
		case i < first:
			out[i] = first - 1 - i
		default:
			out[i] = n - 1 - (i - first)
		}
	}
	return out
}

// overJoin is how many stitches at the beginning stand over the join: all that go into the first place that is worked into.
func (l *Line) overJoin() int {
	var at *Foot
	for i := range l.Stitches {
		feet := l.Stitches[i].Feet
		switch {
		case len(feet) == 0 && at != nil:
			return i
		case len(feet) == 0:
		case at == nil:
			at = &feet[0]
		case feet[0] != *at:
			return i
		}
	}
	return len(l.Stitches)
}
