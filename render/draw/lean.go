package draw

import "ovillo/compile/plan"

// leans works out how far a flat piece leans: for its start and every row, how far its middle lies to the reader's right
// of the middle of its start, when it grows upwards. What a row changes near its beginning or end it changes at that edge;
// changes in between or all along widen both edges alike.
func leans(part *plan.Part, pieces []*piece, size int) {
	steps := rowSteps(part, size)
	at := 0.0
	for _, pc := range pieces {
		if pc.closed {
			continue
		}
		pc.lean = make([]float64, 1, len(pc.rows)+1)
		first := at
		for k, r := range pc.rows {
			if k+pc.first > 0 {
				at += shift(steps[r.number], r, size)
			}
			pc.lean = append(pc.lean, at-first)
		}
	}
}

// shift is how far one row moves the middle to the reader's right. What a ripple does at its ends makes half a wave there.
func shift(row *plan.Row, r course, size int) float64 {
	if row == nil || r.waves > 0 {
		return 0
	}
	list, taken := changes(row.Work, size)
	begin, end := 0.0, 0.0
	for _, c := range list {
		if taken <= 0 || c.net == 0 {
			continue
		}
		mid, wide := (c.from+c.to)/2/taken, (c.to-c.from)/taken
		switch {
		case wide < 0.45 && mid < 0.3:
			begin += c.net
		case wide < 0.45 && mid > 0.7:
			end += c.net
		}
	}
	// A row on the right side begins at the reader's right.
	moved := (begin - end) / 2 * r.stitch
	if r.wrong {
		return -moved
	}
	return moved
}
