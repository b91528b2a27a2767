package proof

import (
	"fmt"
	"math"

	"ovillo/render/page"
)

// cell is the side of the squares in which texts are looked up, in millimetres.
const cell = 10.0

// grid finds the texts near a place.
type grid struct {
	texts      []ink
	around     box // all of them
	wide, high int
	cells      [][]int32
}

func gridOf(texts []ink) grid {
	g := grid{texts: texts, around: nothing}
	for _, k := range texts {
		g.around = g.around.with(page.Point{X: k.left, Y: k.top}).with(page.Point{X: k.right, Y: k.bottom})
	}
	const most = 1 << 9 // so that a text that is far out does not make it huge
	if len(texts) > 0 {
		g.wide = min(int((g.around.right-g.around.left)/cell)+1, most)
		g.high = min(int((g.around.bottom-g.around.top)/cell)+1, most)
	}
	g.cells = make([][]int32, g.wide*g.high)
	for i, k := range texts {
		g.each(k.box, func(c int) { g.cells[c] = append(g.cells[c], int32(i)) })
	}
	return g
}

// each calls f for the cells that a box touches.
func (g *grid) each(b box, f func(c int)) {
	if !(b.left <= g.around.right && b.right >= g.around.left && b.top <= g.around.bottom && b.bottom >= g.around.top) {
		return
	}
	place := func(v, from float64, n int) int { return min(max(int((v-from)/cell), 0), n-1) }
	x1 := place(b.right, g.around.left, g.wide)
	y0, y1 := place(b.top, g.around.top, g.high), place(b.bottom, g.around.top, g.high)
	for x := place(b.left, g.around.left, g.wide); x <= x1; x++ {
		for y := y0; y <= y1; y++ {
			f(y*g.wide + x)
		}
	}
}

// near calls f for the texts whose boxes meet b, some of them more than once.
func (g *grid) near(b box, f func(i int)) {
	g.each(b, func(c int) {
		for _, i := range g.cells[c] {
			if g.texts[i].meets(b) {
				f(int(i))
			}
		}
	})
}

// strange reports whether a text in a box does not belong to an element.
func (g *grid) strange(b box, e *page.Elem) (found bool) {
	g.near(b, func(i int) { found = found || g.texts[i].g.Elem == nil || g.texts[i].g.Elem != e })
	return found
}

// core is the heart of a text: what a line that only touches it stays clear of.
func (k ink) core() box { return k.box.grown(-0.15) }

// lines finds lines that go through texts. A label of a drawing may stand on the lines of its own drawing.
func (l *looker) lines(n int) {
	texts := l.sheets[n].texts
	g := &l.sheets[n].grid
	struck := make([]bool, len(texts))
	for k, it := range l.doc.Pages[n].Items {
		p, ok := it.(page.Path)
		if !ok || p.Stroke == nil || !g.strange(l.sheets[n].hulls[k].grown(hair), p.Elem) {
			continue
		}
		segments(p, func(a, b page.Point) {
			g.near(nothing.with(a).with(b).grown(hair), func(i int) {
				k := texts[i]
				if struck[i] || k.g.Elem != nil && k.g.Elem == p.Elem || !k.core().crosses(a, b) {
					return
				}
				struck[i] = true
				l.at(Struck, n, k, "")
			})
		})
	}
}

// grounds looks at what stands under each text, and over it: pictures, and areas that take its contrast or hide it.
func (l *looker) grounds(n int) {
	texts := l.sheets[n].texts
	g := &l.sheets[n].grid
	under := make([]page.Color, len(texts))
	for i := range under {
		under[i] = page.Color{1, 1, 1}
	}
	seen := make([]int, len(texts)) // the item that a text was last asked about
	for k, it := range l.doc.Pages[n].Items {
		nr, at := k+1, l.sheets[n].hulls[k]
		switch it := it.(type) {
		case page.Picture:
			b := box{it.X, it.Y, it.X + it.W, it.Y + it.H}
			g.near(b, func(i int) {
				if seen[i] == nr {
					return
				}
				seen[i] = nr
				l.at(OverPicture, n, texts[i], "")
			})
		case page.Path:
			l.colours(n, it, at)
			if it.Fill == nil {
				continue
			}
			g.near(at, func(i int) {
				k := texts[i]
				if seen[i] == nr || !covers(it, (k.left+k.right)/2, (k.top+k.bottom)/2) {
					return
				}
				seen[i] = nr
				if k.nr > nr-1 {
					under[i] = *it.Fill
					return
				}
				l.at(Struck, n, k, "")
			})
		}
	}
	for i, k := range texts {
		l.contrast(n, k, under[i])
	}
}

// contrast looks at how a text stands out from its ground. Text counts as large from 18 points, or from 14 in a strong
// face (WCAG 2.2, 1.4.3).
func (l *looker) contrast(n int, k ink, ground page.Color) {
	strong := k.g.Face == page.SansBold || k.g.Face == page.SerifBold
	large := k.g.Size >= 18 || k.g.Size >= 14 && strong
	c := Contrast(k.g.Color, ground)
	rule, least := Pale, 4.5
	if large {
		rule, least = PaleLarge, 3
	}
	if c >= least && l.promise.Large {
		rule, least = LargePale, 7
		if large {
			least = 4.5
		}
	}
	if c < least {
		l.at(rule, n, k, fmt.Sprintf("%.1f : 1, least %.1f", c, least))
	}
}

// colours looks at the colours of a path. A tint under a mark is an ornament and may be pale; a line may not. What is drawn in
// white takes away and says nothing.
func (l *looker) colours(n int, p page.Path, at box) {
	white := page.Color{1, 1, 1}
	if p.Stroke != nil && *p.Stroke != white && p.Elem != nil {
		if c := Contrast(*p.Stroke, white); c < 3 && (p.Fill == nil || Contrast(*p.Stroke, *p.Fill) < 3) {
			l.fault(PaleLine, n, at.left, at.top, "a line", fmt.Sprintf("%.1f : 1, least 3", c))
		}
	}
	for _, c := range []*page.Color{p.Stroke, p.Fill} {
		if l.promise.LowInk && c != nil && *c != page.Black && *c != white {
			l.fault(Tinted, n, at.left, at.top, "a line or an area", fmt.Sprint(*c))
		}
	}
}

// Contrast is the ratio of the lightness of two colours, from 1 to 21 (WCAG 2.2, definitions of contrast ratio and of
// relative luminance).
func Contrast(a, b page.Color) float64 {
	x, y := luminance(a), luminance(b)
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func luminance(c page.Color) float64 {
	part := func(v float64) float64 {
		if v <= 0.04045 {
			return v / 12.92
		}
		return math.Pow((v+0.055)/1.055, 2.4)
	}
	return 0.2126*part(c[0]) + 0.7152*part(c[1]) + 0.0722*part(c[2])
}
