package draw

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// rowSteps finds the printed row of every row number of a part in a size.
func rowSteps(part *plan.Part, size int) map[int]*plan.Row {
	rows := map[int]*plan.Row{}
	put := func(r *plan.Row, from, to, shift int) {
		for n := from; n <= to; n++ {
			rows[n+shift] = r
		}
	}
	for _, step := range part.Steps {
		switch s := step.(type) {
		case *plan.Row:
			if first := inSize(s.First, size); first > 0 {
				put(s, first, inSize(s.Last, size), 0)
			}
		case *plan.Block:
			first, last := inSize(s.First, size), inSize(s.Last, size)
			each := passLength(s, size)
			if first <= 0 || each <= 0 {
				continue
			}
			for from := first; from <= last; from += each {
				for _, r := range s.Rows {
					if n := inSize(r.First, size); n > 0 {
						put(r, n, min(inSize(r.Last, size), last), from-first)
					}
				}
			}
		}
	}
	return rows
}

// passLength is the number of rows in one pass of a block.
func passLength(b *plan.Block, size int) int {
	first, last := 0, 0
	for _, r := range b.Rows {
		n := inSize(r.First, size)
		if n <= 0 {
			continue
		}
		if first == 0 || n < first {
			first = n
		}
		last = max(last, inSize(r.Last, size))
	}
	if first == 0 {
		return 0
	}
	return last - first + 1
}

// change is a stretch of a row along the edge below it, in places, with how many stitches more or less it makes than it
// takes.
type change struct {
	from, to, net float64
	valleys       int  // spots where places are passed over or drawn together
	leaves        bool // it leaves places for later
}

// changes walks through the instructions of a row that has so many places below it, 0 if they are not known. taken is how
// many places it takes in all. In rows that are worked over and over an instruction may only say where it ends: what is left of
// the places is its share.
func changes(work []plan.Instr, size int, below float64) (list []change, taken float64) {
	sum, open := 0.0, 0.0
	for i, in := range work {
		if !crossedLater(work, i) {
			takes, _, _ := effect(in, size)
			sum += takes
		}
		if unsaid(in) {
			open++
		}
	}
	at := 0.0
	for i, in := range work {
		if crossedLater(work, i) {
			continue
		}
		takes, makes, valleys := effect(in, size)
		if unsaid(in) && below > sum {
			takes, makes = (below-sum)/open, (below-sum)/open
		}
		if i == 0 && len(work) > 1 && in.Op == plan.Work && in.Form.ID == stitch.Slip {
			makes = 0 // slip stitches at the beginning only carry the yarn on
		}
		list = append(list, change{at, at + takes, makes - takes, valleys, in.Op == plan.LeaveRest})
		at += takes
	}
	return list, at
}

// unsaid reports whether an instruction works one stitch in each place up to where it ends, without saying how many that are.
func unsaid(in plan.Instr) bool {
	return in.Op == plan.Work && len(in.N) == 0 && (in.Reach == plan.ToEnd || in.Reach == plan.ToMark || in.Reach == plan.ToLast)
}

// effect is what an instruction takes and makes, in all its repeats, and how many valleys that gives.
func effect(in plan.Instr, size int) (takes, makes float64, valleys int) {
	n := float64(max(inSize(in.N, size), 0))
	per := 1.0
	if in.Per != nil {
		per = float64(inSize(in.Per, size))
	}
	switch in.Op {
	case plan.Work:
		if in.AfterBegin {
			return n + 1, n*per + 1, 0
		}
		sts, spaces := in.Form.Makes()
		return n, n * per * float64(sts+spaces), 0
	case plan.Decrease:
		if in.Body != nil {
			t, _, _ := effects(in.Body, size)
			return n * t, n, int(n)
		}
		return n * float64(max(in.Form.Together, 2)), n, int(n)
	case plan.SkipOver:
		return n, 0, min(int(n), 1)
	case plan.LeaveRest, plan.SlipOver:
		return n, 0, 0
	case plan.CrossOver:
		return n * float64(in.Form.Of), n * float64(in.Form.Of), 0
	case plan.Chains, plan.Lengthen:
		return 0, n, 0
	case plan.Repeat:
		t, m, v := effects(in.Body, size)
		return n * t, n * m, int(n) * v
	case plan.InOne:
		_, m, _ := effects(in.Body, size)
		return n, n * m, 0
	case plan.SpreadOut:
		return spreadOut(in.Spread, size)
	}
	return 0, 0, 0
}

// crossedLater reports whether what an instruction skips is worked by a later one that crosses, as in a cable: the row then
// passes nothing over. Each crossing belongs to the nearest skip before it that has none yet.
func crossedLater(work []plan.Instr, i int) bool {
	if work[i].Op != plan.SkipOver {
		return false
	}
	open := 0
	for _, in := range work[i+1:] {
		switch {
		case in.Op == plan.SkipOver:
			open++
		case in.Cross != plan.NoCross && open == 0:
			return true
		case in.Cross != plan.NoCross:
			open--
		}
	}
	return false
}

func effects(work []plan.Instr, size int) (takes, makes float64, valleys int) {
	for i, in := range work {
		if crossedLater(work, i) {
			continue
		}
		t, m, v := effect(in, size)
		takes, makes, valleys = takes+t, makes+m, valleys+v
	}
	return takes, makes, valleys
}

func spreadOut(s *plan.Spread, size int) (takes, makes float64, valleys int) {
	if s == nil {
		return 0, 0, 0
	}
	get := func(n plan.Nums) float64 { return float64(max(inSize(n, size), 0)) }
	groups := get(s.Long) + get(s.Short)
	plain := get(s.Long)*get(s.LongPlain) + get(s.Short)*get(s.ShortPlain) + get(s.Before) + get(s.After)
	if s.Increase {
		return plain + groups, plain + 2*groups, 0
	}
	return plain + 2*groups, plain + groups, 0
}
