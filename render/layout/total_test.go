package layout

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// The way in which sheets were filled before breaks were chosen over the whole: each as far as it goes. It is kept to compare
// with: the choice over the whole is never worse, and where it is no better its first sheets are as full, or fuller.

// greedily returns the strips with which sheets start.
func greedily(strips []Strip, first, rest float64) []int {
	b := &breaker{height: first, rest: rest}
	b.run(slices.Clone(strips))
	var starts []int
	at := 0
	for _, n := range b.counts {
		starts = append(starts, at)
		at += n
	}
	return starts
}

// costOf is what some breaks cost.
func costOf(strips []Strip, starts []int, first, rest float64) float64 {
	sum := 0.0
	for k, i := range starts {
		m := measure{height: rest}
		if k == 0 {
			m.height = first
		}
		j := endOf(starts, k, len(strips))
		m.resume(strips[i].Resume)
		for _, s := range strips[i:j] {
			m.add(s)
		}
		sum += m.cost(strips, i, j)
	}
	return sum
}

// flows draws flows of all kinds of strips.
func flows(t *rapid.T, most int) []Strip {
	n := rapid.IntRange(1, most).Draw(t, "n")
	var strips []Strip
	for i := range n {
		s := block("s", float64(rapid.IntRange(4, 40).Draw(t, "h"))*Module)
		s.Space = rapid.SampledFrom([]float64{0, 2.5, 7.5}).Draw(t, "space")
		s.Keep = rapid.IntRange(0, 2).Draw(t, "keep") == 0
		s.Yields = s.Keep && rapid.Bool().Draw(t, "yields")
		s.Heading = s.Keep && i < n-1 && rapid.Bool().Draw(t, "heading")
		s.Fresh = i > 0 && !strips[i-1].Keep && rapid.IntRange(0, 9).Draw(t, "fresh") == 0
		s.Give = min(s.Space, rapid.SampledFrom([]float64{0, 1.25, 2.5}).Draw(t, "give"))
		if rapid.IntRange(0, 3).Draw(t, "resume") == 0 {
			s.Resume = []Strip{block("again", 5)}
		}
		strips = append(strips, s)
	}
	strips[n-1].Keep, strips[n-1].Yields = false, false
	return strips
}

func TestBreaksAreNeverWorse(t *testing.T) {
	better := 0
	rapid.Check(t, func(t *rapid.T) {
		strips := flows(t, 40)
		first := rapid.SampledFrom([]float64{110, 100}).Draw(t, "first")
		now, before := breaks(strips, first, 100), greedily(strips, first, 100)
		a, b := costOf(strips, now, first, 100), costOf(strips, before, first, 100)
		switch {
		case a > b+slop:
			t.Fatalf("the breaks %v cost %v, %v only %v", now, a, before, b)
		case a < b-slop:
			better++
		case slices.Compare(now, before) < 0: // what costs the same is broken later: the first sheet that differs is fuller
			t.Fatalf("the breaks are %v and not %v, though they cost the same", now, before)
		}
	})
	if better == 0 {
		t.Error("no flow is better broken over the whole")
	}
}

// TestBreaksAreBest compares with every other way to break a short flow.
func TestBreaksAreBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		strips := flows(t, 9)
		got := costOf(strips, breaks(strips, 100, 100), 100, 100)
		for set := range 1 << (len(strips) - 1) {
			starts := []int{0}
			legal := true
			for i := 1; i < len(strips); i++ {
				if set>>(i-1)&1 == 1 {
					starts = append(starts, i)
				} else if strips[i].Fresh {
					legal = false
				}
			}
			if c := costOf(strips, starts, 100, 100); legal && c < got-slop {
				t.Fatalf("breaks %v cost %v, those chosen %v", starts, c, got)
			}
		}
	})
}

// TestFillAgrees: what Fill says is what Paginate does.
func TestFillAgrees(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		strips := flows(t, 30)
		n, last := Fill(strips, 110, 100)
		sheets := Paginate(strips, 110, 100)
		if n != len(sheets) || last != sheets[n-1].H {
			t.Fatalf("Fill says %d sheets and %v, Paginate makes %d and %v", n, last, len(sheets), sheets[len(sheets)-1].H)
		}
	})
}

// TestLastSheetIsNotScant: a last sheet of a few lines takes more from the one before, or is avoided where spaces give.
func TestLastSheetIsNotScant(t *testing.T) {
	var strips []Strip
	for range 10 {
		strips = append(strips, block("row", 17.5))
	}
	sheets := Paginate(strips, 197.5, 197.5)
	if len(sheets) != 1 {
		t.Fatalf("%d sheets, want all on one", len(sheets))
	}
	strips = append(strips, block("row", 17.5))
	if sheets = Paginate(strips, 197.5, 197.5); len(names(sheets[0])) != 9 || len(names(sheets[1])) != 2 {
		t.Errorf("%d and %d rows, want 9 and 2: one row alone is too little", len(names(sheets[0])), len(names(sheets[1])))
	}
	for i := range strips {
		strips[i].Give = 2.5
	}
	if sheets = Paginate(strips, 197.5, 197.5); len(sheets) != 1 && 11*17.5+10*2.5-25 <= 197.5 {
		t.Errorf("%d sheets, though the spaces give enough for one", len(sheets))
	}
}

func BenchmarkPaginate(b *testing.B) {
	var strips []Strip
	for i := range 9000 { // 300 sheets of 30
		s := block("row", 5+float64(i%3)*Module)
		s.Keep = i%4 == 0
		strips = append(strips, s)
	}
	b.ReportAllocs()
	for b.Loop() {
		Paginate(strips, 240, 230)
	}
}

// breaker fills sheets from top to bottom.
type breaker struct {
	height float64  // of the sheet at hand
	rest   float64  // of those that follow
	counts []int    // the strips of each sheet
	page   []filled // the strips of the sheet at hand
	y      float64
}

type filled struct {
	strip  Strip
	y      float64
	repeat bool // a repeated head
}

func (b *breaker) run(strips []Strip) {
	for i := 0; i < len(strips); {
		j := i + 1
		for j < len(strips) && strips[j-1].Keep && !strips[j].Fresh {
			j++
		}
		b.group(strips[i:j])
		i = j
	}
	if len(b.page) > 0 {
		b.close()
	}
}

// group places strips that stay together, on the sheet at hand or on the next.
func (b *breaker) group(g []Strip) {
	if g[0].Fresh && len(b.page) > 0 {
		b.close()
	}
	if b.fits(g) {
		b.place(g)
		return
	}
	if b.squeeze(g) {
		b.place(g)
		return
	}
	if n := b.yield(g); n > 0 {
		b.place(g[:n])
		b.close()
		b.group(g[n:])
		return
	}
	if len(b.page) > 0 && !b.onlyHeads() {
		b.close()
		if b.fits(g) {
			b.place(g)
			return
		}
	}
	// Taller than a sheet: the first strips that fit, then the rest.
	n := len(g) - 1
	for n > 1 && (!b.fits(g[:n]) || g[n-1].Heading) {
		n--
	}
	if n < 1 {
		b.place(g)
		return
	}
	b.place(g[:n])
	b.close()
	b.group(g[n:])
}

// mostWhite is how much of a sheet may stay empty for the sake of strips that are better kept together.
const mostWhite = 40.0

// yield returns how many strips of a group are set on the sheet at hand because moving all of them would leave it too
// empty; 0 for none.
func (b *breaker) yield(g []Strip) int {
	if len(b.page) == 0 || b.height-b.y <= mostWhite {
		return 0
	}
	for n := len(g) - 1; n > 0; n-- {
		if g[n-1].Yields && b.fits(g[:n]) {
			return n
		}
	}
	return 0
}

func (b *breaker) onlyHeads() bool {
	for _, p := range b.page {
		if !p.repeat {
			return false
		}
	}
	return true
}

func (b *breaker) fits(g []Strip) bool { return b.end(g) <= b.height+slop }

// end is how far down the sheet would be filled with the strips of g.
func (b *breaker) end(g []Strip) float64 {
	y := b.y
	if len(b.page) == 0 {
		for i, r := range g[0].Resume {
			if i > 0 {
				y += r.Space
			}
			y += r.H
		}
	}
	for _, s := range g {
		if y > 0 {
			y += s.Space
		}
		y += s.H
	}
	return y
}

// squeeze makes room for a group that is too tall by no more than what the spaces on the sheet can give.
func (b *breaker) squeeze(g []Strip) bool {
	short := b.end(g) - b.height
	give := g[0].Give
	for i, p := range b.page {
		if i > 0 {
			give += p.strip.Give
		}
	}
	if len(b.page) == 0 || short > give+slop {
		return false
	}
	need := Snap(short)
	own := min(need, g[0].Give)
	g[0].Space -= own
	g[0].Give -= own
	need -= own
	moved := 0.0
	for i := len(b.page) - 1; i > 0 && need > slop; i-- {
		d := min(need, b.page[i].strip.Give)
		if d == 0 {
			continue
		}
		b.page[i].strip.Give -= d
		for k := i; k < len(b.page); k++ {
			b.page[k].y -= d
		}
		need -= d
		moved += d
	}
	b.y -= moved
	return b.fits(g)
}

func (b *breaker) place(g []Strip) {
	if len(b.page) == 0 {
		for _, r := range g[0].Resume {
			b.put(r, true)
		}
	}
	for _, s := range g {
		b.put(s, false)
	}
}

func (b *breaker) put(s Strip, repeat bool) {
	if len(b.page) > 0 {
		b.y += s.Space
	}
	b.page = append(b.page, filled{s, b.y, repeat})
	b.y += s.H
}

// close finishes the sheet at hand.
func (b *breaker) close() {
	n := 0
	for _, p := range b.page {
		if !p.repeat {
			n++
		}
	}
	b.counts = append(b.counts, n)
	b.page, b.y, b.height = nil, 0, b.rest
}
