package draw

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// This file reads a row of a chart back from its lines alone, as an eye would: it knows what the symbols look like, how wide the
// strokes are, and which way is up, and nothing of the row.

// trace is one line of a drawing: an open or a closed one.
type trace struct {
	pts            []vec // the ends of its pieces
	fine           []vec // along its curves
	closed, filled bool
	curved         bool
}

func (m trace) first() vec { return m.pts[0] }
func (m trace) last() vec  { return m.pts[len(m.pts)-1] }
func (m trace) mid() vec   { return m.first().to(m.last(), 0.5) }
func (m trace) dir() vec   { return m.last().sub(m.first()).unit() }
func (m trace) long() float64 {
	return m.last().sub(m.first()).length()
}

// marksOf takes the paths of a row apart.
func marksOf(items []scene.Item) []trace {
	var out []trace
	for _, it := range items {
		p, ok := it.(scene.Path)
		if !ok {
			continue
		}
		var one []page.Cmd
		flush := func() {
			if len(one) == 0 {
				return
			}
			m := trace{filled: p.Fill != nil}
			for _, c := range one {
				switch c.Op {
				case 'M', 'L':
					m.pts = append(m.pts, vec{c.P[0].X, c.P[0].Y})
				case 'C':
					m.pts = append(m.pts, vec{c.P[2].X, c.P[2].Y})
					m.curved = true
				case 'Z':
					m.closed = true
				}
			}
			m.fine = flatten(one)[0].pts
			out = append(out, m)
			one = nil
		}
		for _, c := range p.Cmds {
			if c.Op == 'M' {
				flush()
			}
			one = append(one, c)
		}
		flush()
	}
	return out
}

// seen is what was recognised in a row.
type seen struct {
	stitches []seenStitch
	chains   []int // chains that lie or stand in one line, by how many they are, in order of their number
	dots     int
}

type seenStitch struct {
	says       string
	head, foot vec
}

// chartReader reads rows; k is the scale of the drawing, up the direction away from the row below at a point.
type chartReader struct {
	k  float64
	up func(vec) vec
}

func (r chartReader) close(a, b vec, mm float64) bool { return a.sub(b).length() <= mm*r.k }

// on is how far along a straight mark a point lies, and whether it lies on it.
func (r chartReader) on(p vec, m trace) (float64, bool) {
	d := m.last().sub(m.first())
	t := p.sub(m.first()).dot(d) / max(d.dot(d), 1e-12)
	return t, t > 0.02 && t < 0.98 && p.sub(m.first().to(m.last(), t)).length() < 0.05*r.k
}

// read reads one row.
func (r chartReader) read(items []scene.Item) seen {
	var out seen
	var lines, curves, ovals, dots, boxes []trace
	for _, m := range marksOf(items) {
		switch {
		case m.filled && len(m.pts) == 5:
			dots = append(dots, m)
		case m.filled:
		case m.closed && m.curved:
			ovals = append(ovals, m)
		case m.closed:
			boxes = append(boxes, m)
		case m.curved:
			curves = append(curves, m)
		default:
			lines = append(lines, m)
		}
	}
	lines = r.mended(lines, curves)
	var tiny []vec
	for _, d := range dots {
		if wide := boxOf(d.fine).width() / r.k; wide < 0.9 {
			tiny = append(tiny, boxOf(d.fine).middle()) // of a picot
		} else {
			out.dots++
		}
	}
	ovals = slices.DeleteFunc(ovals, func(o trace) bool {
		at := boxOf(o.fine).middle()
		return slices.ContainsFunc(tiny, func(v vec) bool {
			return r.close(at, v, 3.6) && at.sub(v).dot(r.up(v)) > -0.3*r.k && boxOf(o.fine).width() < 2*r.k
		})
	})
	usedLine := make([]bool, len(lines))
	usedCurve := make([]bool, len(curves))
	usedOval := make([]bool, len(ovals))

	// Heads with a bar: the middle of a line is the end of others.
	isCap := make([]bool, len(lines))
	heads := map[int][]int{} // the stems of a cap
	bows := map[int][]int{}
	for i, c := range lines {
		for j, s := range lines {
			if i != j && (r.close(c.mid(), s.first(), 0.05) || r.close(c.mid(), s.last(), 0.05)) && math.Abs(c.dir().dot(s.dir())) < 0.85 {
				isCap[i] = true
				heads[i] = append(heads[i], j)
			}
		}
		for j, s := range curves {
			if r.close(c.mid(), s.first(), 0.05) || r.close(c.mid(), s.last(), 0.05) {
				isCap[i] = true
				bows[i] = append(bows[i], j)
			}
		}
	}
	isStem := make([]bool, len(lines))
	for _, stems := range heads {
		for _, j := range stems {
			isStem[j] = true
		}
	}
	// bars are the lines across a stem, by whether they are at right angles to it.
	bars := func(stem trace) (slashes, square int) {
		for i, b := range lines {
			if usedLine[i] || isCap[i] || isStem[i] {
				continue
			}
			if _, ok := r.on(b.mid(), stem); !ok || b.long() > 4.2*r.k {
				continue
			}
			switch turn := math.Abs(b.dir().dot(stem.dir())); {
			case turn < 0.1:
				square++
			case turn < 0.75:
				slashes++
			default:
				continue
			}
			usedLine[i] = true
		}
		return slashes, square
	}
	end := func(stem trace, head vec) vec {
		if r.close(stem.first(), head, 0.06) {
			return stem.last()
		}
		return stem.first()
	}
	tall := func(slashes, square int) string {
		name := []string{"hdc", "dc", "tr", "dtr", "trtr"}[min(slashes, 4)]
		if square > 0 {
			name = "e" + name
		}
		return name
	}
	for _, i := range sortedKeys(heads) {
		head := lines[i].mid()
		usedLine[i] = true
		name, foot := "", vec{}
		for n, j := range heads[i] {
			usedLine[j] = true
			one := tall(bars(lines[j]))
			if n > 0 && one != name {
				one = name + "|" + one
			}
			name, foot = one, foot.add(end(lines[j], head).times(1/float64(len(heads[i]))))
		}
		if n := len(heads[i]); n > 1 {
			name = fmt.Sprint(name, n, "tog")
		}
		name += r.below(curves, usedCurve, lines, usedLine, end(lines[heads[i][0]], head))
		out.stitches = append(out.stitches, seenStitch{name, head, foot})
	}
	bunch := func(bows []int, head vec) seenStitch {
		slashes, foot := 0, vec{}
		for _, j := range bows {
			usedCurve[j] = true
			foot = end(curves[j], head)
			mid := curves[j].pts[len(curves[j].pts)/2]
			for i, b := range lines {
				if !usedLine[i] && b.long() < 2.4*r.k && r.onCurve(b.mid(), curves[j]) && b.mid().sub(mid).length() < 4.5*r.k {
					usedLine[i] = true
					slashes++
				}
			}
		}
		return seenStitch{fmt.Sprintf("bunch of %d with %d", len(bows), slashes) + r.below(curves, usedCurve, lines, usedLine, foot), head, foot}
	}
	for _, i := range sortedKeys(bows) {
		usedLine[i] = true
		out.stitches = append(out.stitches, bunch(bows[i], lines[i].mid()))
	}
	// Bowed stems under an oval: a popcorn.
	for i, c := range curves {
		if usedCurve[i] {
			continue
		}
		var same []int
		for j, d := range curves {
			if !usedCurve[j] && r.close(c.first(), d.first(), 0.05) && r.close(c.last(), d.last(), 0.05) {
				same = append(same, j)
			}
		}
		if len(same) < 3 {
			continue
		}
		for o := range ovals {
			if r.close(boxOf(ovals[o].fine).middle(), c.first(), 1.2) {
				usedOval[o] = true
				st := bunch(same, c.first())
				st.says = "popcorn: " + st.says
				out.stitches = append(out.stitches, st)
				break
			}
		}
	}
	r.crosses(lines, usedLine, curves, usedCurve, &out)
	for _, b := range boxes {
		out.stitches = append(out.stitches, seenStitch{"own", boxOf(b.fine).middle(), boxOf(b.fine).middle()})
		for i, l := range lines {
			if !usedLine[i] && slices.ContainsFunc(b.pts, func(v vec) bool { return r.close(v, l.first(), 0.05) }) {
				usedLine[i] = true
			}
		}
	}
	for i := range lines {
		if !usedLine[i] {
			out.stitches = append(out.stitches, seenStitch{"a line that belongs to nothing", lines[i].mid(), lines[i].mid()})
		}
	}
	for i, c := range curves {
		switch {
		case usedCurve[i]:
		case len(c.pts) == 3: // the arc of many chains
			for _, it := range items {
				if l, ok := it.(scene.Label); ok && r.close(vec{l.X, l.Y}, c.pts[1], 4.5) {
					n := 0
					fmt.Sscan(l.Text, &n)
					out.chains = append(out.chains, n)
					break
				}
			}
		default:
			out.stitches = append(out.stitches, seenStitch{"a curve that belongs to nothing", c.mid(), c.mid()})
		}
	}
	out.chains = append(out.chains, r.chains(ovals, usedOval)...)
	sort.Ints(out.chains)
	return out
}

func sortedKeys(m map[int][]int) []int {
	var out []int
	for k := range m {
		out = append(out, k)
	}
	sort.Ints(out)
	return out
}

func (r chartReader) onCurve(p vec, c trace) bool {
	for i := 1; i < len(c.fine); i++ {
		a, b := c.fine[i-1], c.fine[i]
		d := b.sub(a)
		t := min(max(p.sub(a).dot(d)/max(d.dot(d), 1e-12), 0), 1)
		if p.sub(a.to(b, t)).length() < 0.12*r.k {
			return true
		}
	}
	return false
}

// mended joins the pieces of stems that are broken where others cross them.
func (r chartReader) mended(lines, curves []trace) []trace {
	for again := true; again; {
		again = false
		for i := 0; i < len(lines) && !again; i++ {
			for j := range lines {
				a, b := lines[i], lines[j]
				if i == j || a.last().sub(b.first()).length() > 2*r.k || a.dir().dot(b.dir()) < 0.9995 || b.first().sub(a.last()).length() < 0.05*r.k ||
					b.first().sub(a.last()).unit().dot(a.dir()) < 0.99 {
					continue
				}
				gap := trace{pts: []vec{a.last(), b.first()}}
				if !slices.ContainsFunc(lines, func(c trace) bool { return meet(gap.first(), gap.last(), c.first(), c.last()) }) &&
					(r.isBar(a, lines) || r.isBar(b, lines)) ||
					slices.ContainsFunc(curves, func(c trace) bool { return r.onCurve(a.mid(), c) || r.onCurve(b.mid(), c) }) {
					continue
				}
				lines[i] = trace{pts: []vec{a.first(), b.last()}}
				lines = slices.Delete(lines, j, j+1)
				again = true
				break
			}
		}
	}
	return lines
}

// isBar reports whether a line lies across another or on its end, as caps, arms and slashes do.
func (r chartReader) isBar(a trace, lines []trace) bool {
	return a.long() < 4.3*r.k && slices.ContainsFunc(lines, func(c trace) bool {
		if c.first() == a.first() && c.last() == a.last() {
			return false
		}
		_, on := r.on(a.mid(), c)
		return on || r.close(a.mid(), c.first(), 0.05) || r.close(a.mid(), c.last(), 0.05)
	})
}

// meet reports whether two stretches cross.
func meet(a, b, c, d vec) bool {
	side := func(p, q, x vec) float64 { return q.sub(p).normal().dot(x.sub(p)) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// below reads what is under a foot: a hook, or the sign of a loop.
func (r chartReader) below(curves []trace, used []bool, lines []trace, usedLine []bool, foot vec) string {
	for i, c := range curves {
		if used[i] || len(c.pts) != 5 {
			continue
		}
		chord := c.last().sub(c.first())
		right := r.up(foot).normal()
		switch {
		case r.close(c.first(), foot, 0.05) && chord.length() < 3.2*r.k && math.Abs(chord.dot(right)) > 0.8*r.k:
			used[i] = true
			if chord.dot(right) > 0 {
				return " front"
			}
			return " back"
		case !r.close(c.first(), foot, 0.05) && r.close(c.mid(), foot, 2.4) && chord.length() < 2.6*r.k && c.mid().sub(foot).dot(r.up(foot)) < 0:
			used[i] = true
			if c.pts[2].sub(c.mid()).dot(r.up(foot)) < 0 {
				return " back loop"
			}
			return " front loop"
		}
	}
	for i, l := range lines {
		if !usedLine[i] && math.Abs(l.long()-loopWide*r.k) < 0.02*r.k && r.close(l.mid(), foot, 1.8) && l.mid().sub(foot).dot(r.up(foot)) < -0.6*r.k {
			usedLine[i] = true
			return " third loop"
		}
	}
	return ""
}

// crosses reads what has no bar over its head: single crochet.
func (r chartReader) crosses(lines []trace, used []bool, curves []trace, usedCurve []bool, out *seen) {
	// A stem is a line across which the middle of another lies, at right angles; of a cross both are, and the steeper one is the stem.
	arms := map[int][]int{}
	for i, s := range lines {
		for j, b := range lines {
			if i == j || used[i] || used[j] || math.Abs(s.dir().dot(b.dir())) > 0.1 || b.long() > 4*r.k {
				continue
			}
			if _, ok := r.on(b.mid(), s); !ok {
				continue
			}
			if _, both := r.on(s.mid(), b); both && math.Abs(s.dir().dot(r.up(s.mid()))) < math.Abs(b.dir().dot(r.up(b.mid()))) {
				continue
			}
			arms[i] = append(arms[i], j)
		}
	}
	stems := sortedKeys(arms)
	done := map[int]bool{}
	top := func(i int) (head, foot vec) {
		a, b := lines[i].first(), lines[i].last()
		if b.sub(a).dot(r.up(a.to(b, 0.5))) > 0 {
			return b, a
		}
		return a, b
	}
	for _, i := range stems {
		if done[i] {
			continue
		}
		head, foot := top(i)
		n, name := 0, ""
		for _, j := range stems {
			if h, _ := top(j); !done[j] && r.close(h, head, 0.05) {
				done[j] = true
				n++
				used[j] = true
				for _, a := range arms[j] {
					used[a] = true
				}
				name = map[bool]string{true: "sc", false: "esc"}[len(arms[j]) == 1]
			}
		}
		if n > 1 {
			name = fmt.Sprint(name, n, "tog")
		}
		for c, w := range curves { // a wave over the head
			if !usedCurve[c] && len(w.pts) == 5 && r.close(w.mid(), head, 2) && w.mid().sub(head).dot(r.up(head)) > 0.5*r.k {
				usedCurve[c] = true
				name = "r" + name
			}
		}
		name += r.below(curves, usedCurve, lines, used, foot)
		out.stitches = append(out.stitches, seenStitch{name, head, foot})
	}
}

// chains gathers ovals that lie end to end.
func (r chartReader) chains(ovals []trace, used []bool) []int {
	type one struct {
		at, along vec
		long      float64
	}
	var list []one
	for i, o := range ovals {
		if used[i] {
			continue
		}
		at := o.pts[0].to(o.pts[2], 0.5)
		a := o.pts[0].sub(o.pts[2])
		list = append(list, one{at, a.unit(), a.length()})
	}
	group := make([]int, len(list))
	for i := range group {
		group[i] = i
	}
	var root func(int) int
	root = func(i int) int {
		if group[i] != i {
			group[i] = root(group[i])
		}
		return group[i]
	}
	for i, a := range list {
		for j, b := range list[:i] {
			d := b.at.sub(a.at)
			if d.length() < 1.22*max(a.long, b.long) && math.Abs(d.unit().dot(a.along)) > 0.45 && math.Abs(d.unit().dot(b.along)) > 0.45 {
				group[root(i)] = root(j)
			}
		}
	}
	size := map[int]int{}
	for i := range list {
		size[root(i)]++
	}
	var out []int
	for _, n := range size {
		out = append(out, n)
	}
	return out
}

func boxOf(pts []vec) box {
	var b box
	for _, v := range pts {
		b.add(v)
	}
	return b
}

func (s seen) String() string {
	count := map[string]int{}
	for _, st := range s.stitches {
		count[st.says]++
	}
	var all []string
	for name, n := range count {
		all = append(all, fmt.Sprint(n, " ", name))
	}
	sort.Strings(all)
	return strings.Join(all, ", ") + fmt.Sprintf("; chains %v; %d dots", s.chains, s.dots)
}
