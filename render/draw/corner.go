package draw

import "ovillo/compile/plan"

// corners finds how many corners a motif has: a count of three to eight that is printed after several rounds under the
// same name and never changes, such as four spaces of a kind, while the round grows. 0 if there is none.
func corners(part *plan.Part, size int) int {
	type seen struct{ n, times int }
	counts := map[string]*seen{}
	for _, step := range part.Steps {
		for _, c := range countsOf(step) {
			n, name := inSize(c.N, size), nameOf(c)
			if s := counts[name]; s == nil {
				counts[name] = &seen{n, 1}
			} else if s.times++; s.n != n {
				s.n = 0
			}
		}
	}
	best := 0
	for _, s := range counts {
		if s.times > 1 && s.n >= 3 && s.n <= 8 && (best == 0 || s.n < best) {
			best = s.n
		}
	}
	return best
}

func countsOf(step plan.Step) []plan.Count {
	switch s := step.(type) {
	case *plan.Row:
		return s.Counts
	case *plan.Block:
		var all []plan.Count
		for _, r := range s.Rows {
			all = append(all, r.Counts...)
		}
		return append(all, s.Counts...)
	}
	return nil
}

// nameOf tells kinds of count apart.
func nameOf(c plan.Count) string {
	return string(rune('0'+c.Kind)) + " " + string(c.Form.ID) + " " + string(rune('0'+c.Chains)) + " " + c.Label
}
