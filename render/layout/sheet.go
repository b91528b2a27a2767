package layout

import "slices"

// Sheet is the body of one page.
type Sheet struct {
	Box   // H is how far down it is filled
	Marks []Mark
}

// Mark is where a strip with a name came to stand, from the top of its sheet.
type Mark struct {
	Name  string
	Sheet int
	Y     float64
}

// breaker fills sheets from top to bottom.
type breaker struct {
	height float64 // of the sheet at hand
	rest   float64 // of those that follow
	sheets []Sheet
	page   []placed // the strips of the sheet at hand
	y      float64
	dry    bool // only measures: the boxes of the strips stay where they are
}

type placed struct {
	strip  Strip
	y      float64
	repeat bool // a repeated head
}

// Paginate puts strips on sheets, the first of them first millimetres high, the others rest. Sheets are filled as far as they go; a group of strips that belong together
// moves to the next sheet as a whole, and the foot of the sheet stays open. A group that is taller than a sheet is broken
// where it must.
func Paginate(strips []Strip, first, rest float64) []Sheet {
	b := &breaker{height: first, rest: rest}
	b.run(slices.Clone(strips))
	return b.sheets
}

// Fill reports how many sheets Paginate would fill, and how far down the last of them. It sets nothing.
func Fill(strips []Strip, first, rest float64) (sheets int, last float64) {
	b := &breaker{height: first, rest: rest, dry: true}
	b.run(slices.Clone(strips))
	if n := len(b.sheets); n > 0 {
		return n, b.sheets[n-1].H
	}
	return 0, 0
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

const slop = 1e-6

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
	b.page = append(b.page, placed{s, b.y, repeat})
	b.y += s.H
}

// close finishes the sheet at hand.
func (b *breaker) close() {
	var sheet Sheet
	for _, p := range b.page {
		if b.dry {
			break
		}
		if p.strip.Mark != "" && !p.repeat {
			sheet.Marks = append(sheet.Marks, Mark{p.strip.Mark, len(b.sheets), p.y})
		}
		sheet.Put(0, p.y, p.strip.Box)
	}
	sheet.H = b.y
	b.sheets = append(b.sheets, sheet)
	b.page, b.y, b.height = nil, 0, b.rest
}
