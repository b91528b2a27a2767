package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// made is a kind of stitch in one yarn, with how many of it a row made.
type made struct {
	form stitch.Form
	yarn int
	n    int
}

// content is what a row made: stitches by kind and yarn, and the chains of its spaces.
type content struct {
	kinds  []made          // in the order of first use
	spaces plan.Tally[int] // by the number of their chains
	chains map[int]int     // by yarn
	rides  map[int]int     // the chains of picots, by yarn; they lie on no edge
}

// lastMade is what the last row of a part made.
type lastMade struct {
	ids []fabric.ID
	content
}

// contentOf counts what a row made, run by run. A row is of few kinds, so that to look through them takes less than a map. They are put
// into the room that is given, if it is enough.
func contentOf(f *fabric.Fabric, ids []fabric.ID, kinds []made) content {
	c := content{kinds: kinds[:0]}
	var room [8]fabric.FormID
	at := room[:0] // of the kinds
	riding := f.Riding()
	for i := 0; i < len(ids); {
		el := &f.Elems[ids[i]]
		j := i + 1
		if riding {
			for _, r := range f.RidesOn(ids[i]) {
				if c.rides == nil {
					c.rides = map[int]int{}
				}
				c.rides[int(el.Yarn)] += r.Of + 1 // and a slip stitch, which takes about as much as a chain
			}
		}
		if el.Kind == fabric.Space {
			if c.chains == nil {
				c.chains = map[int]int{}
			}
			c.spaces.Add(int(el.N), 1)
			c.chains[int(el.Yarn)] += int(el.N)
			i = j
			continue
		}
		for j < len(ids) {
			if o := &f.Elems[ids[j]]; o.Kind != el.Kind || o.Form != el.Form || o.Yarn != el.Yarn || riding && len(f.RidesOn(ids[j])) > 0 {
				break
			}
			j++
		}
		k := 0
		for k < len(at) && (at[k] != el.Form || c.kinds[k].yarn != int(el.Yarn)) {
			k++
		}
		if k == len(at) {
			at, c.kinds = append(at, el.Form), append(c.kinds, made{f.FormOf(ids[i]), int(el.Yarn), 0})
		}
		c.kinds[k].n += j - i
		i = j
	}
	return c
}

// plain reports whether any stitch is not worked round a post. A stitch round a post reaches down into the row below, so
// that beside plain stitches it does not make the row taller, however tall it is: a cable of trebles in rows of double
// crochet. Common practice, no source.
func (c content) plain() bool {
	return slices.ContainsFunc(c.kinds, func(k made) bool { return k.form.Post == stitch.NoPost })
}

// fact notes what a row is: its counts, its width and height by the gauge, and the fabric each yarn makes of it.
func (w *working) fact(z int, res *fabric.Result, yarn int) {
	p, c, m := w.p, w.p.c, w.p.manner(w.kick.style)
	got := w.content(z, res, yarn)
	f := plan.RowFact{Number: p.number[z], Label: rowLabel(w.n.Head), Slips: res.Slips, Taken: res.Taken + res.Named,
		Passed: res.Places - res.Taken, Closed: p.fab[z].Closed(), Wrong: p.wrong[z], Spaces: got.spaces.Total(), BySpace: got.spaces}
	// Rows that make the same have their counts together: most rows are like the one before, and nobody writes in them.
	same := p.same(z, got)
	if same != nil {
		f.ByForm, f.ByYarn = same.ByForm, same.ByYarn
	} else {
		f.ByForm = make(plan.Tally[stitch.Form], 0, len(got.kinds))
	}
	var width, height float64
	before := p.fabricOf(z)
	posts, plain := 0, got.plain()
	for _, k := range got.kinds {
		n := k.n
		f.Stitches += n
		if same == nil {
			f.ByForm.Add(k.form, n)
			f.ByYarn.Add(k.yarn, n)
		}
		sw, sh, _ := c.stitchSize(k.form.ID, m)
		width += sw * float64(n)
		if sh > height && !(plain && k.form.Post != stitch.NoPost) {
			height, f.Tall = sh, k.form.ID
		}
		if k.form.Post != stitch.NoPost {
			posts += n
		}
		p.addArea(k.yarn, z, sw*sh*k.form.Yarn()*float64(n))
	}
	beside := w.beside(z, res)
	var chainWidth, least, share float64
	if height == 0 || beside > 0 || len(got.rides)+len(got.chains) > 0 {
		chainWidth, least, share = c.chainSize(got, m)
	}
	if height == 0 {
		height = least
	}
	chain := chainWidth * height * share
	for y, n := range got.rides {
		p.addArea(y, z, chain*float64(n))
	}
	for y, n := range got.chains {
		f.Chains += n
		p.addArea(y, z, chain*float64(n))
	}
	f.Yarn = mostly(f.ByYarn, w.kick.yarn)
	p.addArea(f.Yarn, z, chain*float64(beside))
	width += chainWidth * float64(f.Chains)
	wide, tall, texture := w.textured(z, res, m)
	if texture != nil {
		width = wide
		if tall > 0 {
			height = tall
			c.weigh(p.texture, p.fabricOf(z)-before, wide*tall)
		}
	}
	p.measured(z, got, m, texture)
	f.Width, f.Height = micro(width), micro(height)
	if height == 0 {
		f.Width, f.Height = plan.NoLength, plan.NoLength
	}
	switch {
	case f.Spaces > 0 && f.Spaces*4 > f.Stitches:
		f.Texture = plan.Lace
	case posts*2 > f.Stitches:
		f.Texture = plan.Rib
	}
	p.tall[z] += height
	p.plan.Worked[z] = append(p.plan.Worked[z], f)
	last := &p.made[z]
	kinds := last.kinds
	if same == nil {
		kinds = append(kinds[:0], got.kinds...)
	}
	last.ids, last.content = res.Made, got
	last.kinds = kinds
}

// pureRow is what a row made that others are like.
type pureRow struct {
	of *fabric.Result
	content
}

// mostPure is of how many rows it is kept: of those of a stitch pattern in some sizes.
const mostPure = 64

// content is what a row made, in the yarn that it was begun with.
func (w *working) content(z int, res *fabric.Result, yarn int) content {
	c := w.p.c
	if !res.Pure {
		got := contentOf(c.fabrics[z], res.Made, c.kindsRoom)
		c.kindsRoom = got.kinds
		return got
	}
	for i := range w.p.pure {
		if r := &w.p.pure[i]; r.of == res {
			return r.content.in(yarn)
		}
	}
	if len(w.p.pure) == mostPure {
		w.p.pure = append(w.p.pure[:0], w.p.pure[1:]...)
	}
	w.p.pure = append(w.p.pure, pureRow{res, contentOf(c.fabrics[z], res.Made, nil)})
	return w.p.pure[len(w.p.pure)-1].content.in(yarn)
}

// in is what a row of one yarn made, in another.
func (c content) in(yarn int) content {
	if _, chains := c.chains[yarn]; chains == (c.chains != nil) && !slices.ContainsFunc(c.kinds, func(k made) bool { return k.yarn != yarn }) {
		return c
	}
	c.kinds = slices.Clone(c.kinds)
	for i := range c.kinds {
		c.kinds[i].yarn = yarn
	}
	if c.chains != nil {
		c.chains = map[int]int{yarn: total(c.chains)}
	}
	return c
}

// same is the last row of a size, if it made the same stitches; else nil.
func (p *partState) same(z int, got content) *plan.RowFact {
	if p.made == nil {
		p.made = make([]lastMade, p.c.z)
	}
	if before := p.plan.Worked[z]; len(before) > 0 && len(p.made[z].kinds) > 0 && slices.Equal(p.made[z].kinds, got.kinds) {
		return &before[len(before)-1]
	}
	return nil
}

// pieces is how many of the part are made.
func (p *partState) pieces(z int) float64 {
	n := float64(p.plan.Make)
	if p.plan.Motifs != nil {
		n *= float64(max(p.plan.Motifs[z], 0))
	}
	return n
}

// beside is how many chains a row has beside its stitches and spaces: those it begins with that do not count, and slip
// stitches, which take about as much as a chain.
func (w *working) beside(z int, res *fabric.Result) int {
	n := res.Slips
	if b := w.kick.begin; !b.Counts {
		n += b.Chains
	}
	if w.kick.style == plan.JoinedRounds || w.kick.style == plan.TurnedRounds {
		n++
	}
	return n
}

// chainSize is the width of a chain of a row, the height of a row of chains alone, and how much of a stitch's yarn a chain
// takes: by the first stitch of the row, or by the first gauge.
func (c *checker) chainSize(got content, m manner) (width, height, share float64) {
	var id stitch.ID
	switch {
	case len(got.kinds) > 0:
		id = got.kinds[0].form.ID
	default:
		i := slices.IndexFunc(c.pat.Gauges, func(g plan.Gauge) bool { return g.Rows > 0 })
		if i < 0 {
			return 0, 0, 0
		}
		id = c.pat.Gauges[i].Stitch
	}
	width, height, _ = c.stitchSize(id, m)
	if o, own := c.own[id]; own {
		id = o.Tall
	}
	chain, _ := stitch.Of(stitch.Chain)
	if k, ok := stitch.Of(id); ok {
		return width, height, chain.Yarn / k.Yarn
	}
	return width, width, chain.Yarn // of a stitch pattern: as if of single crochet
}

// mostly is the yarn of most stitches; at a tie the first.
func mostly(yarns plan.Tally[int], usual int) int {
	best := usual
	for y, n := range yarns.All() {
		if most := yarns.Count(best); n > most || n == most && y < best {
			best = y
		}
	}
	return best
}

// addArea adds fabric to what one piece of the part has of a yarn.
func (p *partState) addArea(yarn, z int, area float64) {
	if p.area == nil {
		p.area = make(yarnArea, len(p.c.pat.Yarns))
		for i := range p.area {
			p.area[i] = make([]float64, p.c.z)
		}
	}
	if yarn >= 0 && yarn < len(p.area) {
		p.c.used[yarn] = true
		p.area[yarn][z] += area
	}
}

// fabricOf is the fabric of all yarns in one piece of the part so far.
func (p *partState) fabricOf(z int) float64 {
	sum := 0.0
	for _, a := range p.area {
		sum += a[z]
	}
	return sum
}

// addChains adds the chains that a part starts with to its yarn.
func (p *partState) addChains(z, n int) {
	w, h, share := p.c.chainSize(content{}, p.manner(p.style))
	p.addArea(p.yarn, z, w*h*share*float64(n))
}
