package compile

import (
	"math"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
)

// This file spreads stitches over the ends of rows: at a rate, or so many in all.

// group is a run of row ends that is worked several times over.
type group struct {
	times int
	cells []cell
}

// cell is n row ends with each stitches in every one; none means that they are passed over.
type cell struct{ n, each int }

// spreadAt spreads a stitches over every b row ends: whole groups of b, and what is left over at the same rate, to the nearest
// whole number. Fewer than one in each row end leave out the last of a group; more than one put the second into the last.
func spreadAt(ends, a, b int) []group {
	full, rest := ends/b, ends%b
	out := []group{{full, cellsOf(a, b)}}
	if rest > 0 {
		out = append(out, group{1, cellsOf((2*rest*a+b)/(2*b), rest)})
	}
	return out
}

// cellsOf spreads a stitches over b row ends as evenly as it goes.
func cellsOf(a, b int) []cell {
	var out []cell
	for i := range b {
		each := (i+1)*a/b - i*a/b
		if a < b {
			each = ceilDiv((i+1)*a, b) - ceilDiv(i*a, b)
		}
		if k := len(out) - 1; k >= 0 && out[k].each == each {
			out[k].n++
			continue
		}
		out = append(out, cell{1, each})
	}
	return out
}

func ceilDiv(a, b int) int { return (a + b - 1) / b }

// spreadOver spreads so many stitches over row ends: groups as alike as can be, the long ones first, and in each the row end that
// gets one more, or none, last.
func spreadOver(ends, stitches int) []group {
	each, more := stitches/ends, stitches%ends
	last := each + 1
	if each == 0 {
		each, last, more = 1, 0, ends-stitches
	}
	if more == 0 {
		return []group{{1, []cell{{ends, each}}}}
	}
	s := fabric.SpreadGroups(ends, more, 1, fabric.AtEnds)
	var out []group
	for _, g := range []struct{ times, plain int }{{s.Long, s.LongPlain}, {s.Short, s.ShortPlain}} {
		if g.times == 0 {
			continue
		}
		cells := []cell{{1, last}}
		if g.plain > 0 {
			cells = []cell{{g.plain, each}, {1, last}}
		}
		out = append(out, group{g.times, cells})
	}
	return out
}

// countsOf writes groups out: how many stitches each row end gets.
func countsOf(groups []group) (counts []int, total int) {
	for _, g := range groups {
		for range g.times {
			for _, c := range g.cells {
				for range c.n {
					counts = append(counts, c.each)
					total += c.each
				}
			}
		}
	}
	return counts, total
}

// rate is so many stitches for so many row ends.
type rate struct{ stitches, rows int }

// maxRateRows is the most row ends over which a rate is given: a maker has to keep count of them.
const maxRateRows = 8

// rateOf is the simplest rate that comes within two hundredths of a ratio, else the nearest there is. (That a rate of small
// numbers is wanted is common practice, no source.)
func rateOf(ratio float64) rate {
	best, off := rate{1, 1}, math.Inf(1)
	for rows := 1; rows <= maxRateRows; rows++ {
		k := max(int(math.Round(ratio*float64(rows))), 1)
		miss := math.Abs(float64(k)/float64(rows)-ratio) / ratio
		if miss < off-1e-9 {
			best, off = rate{k, rows}, miss
		}
		if off <= 0.02 {
			break
		}
	}
	return best
}

// toMultiple is the multiple (of m, plus e) nearest to n; of two as near the greater.
func toMultiple(n, m, e int) int {
	below := n - ((n-e)%m+m)%m
	if n-below < m-(n-below) {
		return below
	}
	if n == below {
		return n
	}
	return below + m
}

// instrs writes the groups of every size as instructions: groups of the same number are one, size by size.
func (pr *printer) instrs(form plan.Instr, sizes [][]group) []plan.Instr {
	most := 0
	for _, g := range sizes {
		most = max(most, len(g))
	}
	var out []plan.Instr
	for i := range most {
		out = append(out, pr.groupInstrs(form, sizes, i)...)
	}
	return out
}

// groupInstrs writes the group at i of every size. Sizes whose groups are built differently get their own words.
func (pr *printer) groupInstrs(form plan.Instr, sizes [][]group, i int) []plan.Instr {
	var out []plan.Instr
	done := make([]bool, len(sizes))
	for z := range sizes {
		if done[z] || i >= len(sizes[z]) {
			continue
		}
		shape := sizes[z][i].cells
		times, counts := pr.p.c.nums(plan.Absent), make([]plan.Nums, len(shape))
		for k := range counts {
			counts[k] = pr.p.c.nums(plan.Absent)
		}
		most := 0
		for y := range sizes {
			if sizes[y] == nil {
				continue
			}
			times[y] = 0
			for k := range counts {
				counts[k][y] = 0
			}
			if done[y] || i >= len(sizes[y]) || !sameShape(shape, sizes[y][i].cells) {
				continue
			}
			done[y], times[y] = true, sizes[y][i].times
			most = max(most, times[y])
			for k, c := range sizes[y][i].cells {
				counts[k][y] = c.n
			}
		}
		if len(shape) == 1 {
			for y := range times {
				if times[y] > 0 {
					counts[0][y] *= times[y]
				}
			}
			out = append(out, cellInstr(form, shape[0], counts[0], pr))
			continue
		}
		var body []plan.Instr
		for k, c := range shape {
			body = append(body, cellInstr(form, c, counts[k], pr))
		}
		if most <= 1 {
			out = append(out, body...)
			continue
		}
		for k := range body {
			body[k].N = inEvery(body[k].N, times)
		}
		out = append(out, plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: times, Body: body, Marker: -1, Yarn: -1})
	}
	return out
}

// inEvery gives a number that is the same wherever it is worked to the sizes that do not work it as well, so that it reads as one.
func inEvery(n, times plan.Nums) plan.Nums {
	one, same := 0, true
	for z, v := range n {
		if times[z] > 0 {
			same = same && (one == 0 || one == v)
			one = v
		}
	}
	if !same {
		return n
	}
	out := append(plan.Nums(nil), n...)
	for z := range out {
		if out[z] != plan.Absent {
			out[z] = one
		}
	}
	return out
}

func sameShape(a, b []cell) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].each != b[i].each {
			return false
		}
	}
	return true
}

// cellInstr is the instruction for row ends that are alike.
func cellInstr(form plan.Instr, c cell, n plan.Nums, pr *printer) plan.Instr {
	if c.each == 0 {
		return plan.Instr{Op: plan.SkipOver, N: n, Over: plan.RowEnd, Marker: -1, Yarn: -1}
	}
	out := form
	out.N, out.Over, out.Reach, out.Ref = n, plan.RowEnd, plan.Next, nil
	if c.each > 1 {
		out.Per = pr.p.c.nums(c.each)
	}
	return out
}
