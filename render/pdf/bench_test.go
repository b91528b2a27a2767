package pdf

import (
	"fmt"
	"io"
	"math"
	"testing"

	"ovillo/render/page"
)

// pattern is a document as a pattern makes it: dense two-column text of rows, figures in columns, a drawing a page.
func pattern(pages int) *page.Document {
	root := &page.Elem{Tag: "Document"}
	d := &page.Document{Root: root, Title: "Pattern", Lang: "en", Created: "2026-03-01"}
	s := &sampleText{d: d}
	for n := range pages {
		s.page(fmt.Sprint(n + 1))
		sect := root.New("Sect")
		s.line(sect.New("H2"), page.SerifBold, 17, 15, "Body / Cuerpo")
		d.Outline = append(d.Outline, page.Outline{Title: "Body", Level: 1, Page: n, Y: 30})
		list := sect.New("L")
		for row := range 14 {
			s.row(list.New("LI"), n*14+row)
		}
		s.drawing()
	}
	return d
}

// row is a round in two languages with its counts.
func (s *sampleText) row(li *page.Elem, round int) {
	top := s.y
	for side, text := range [2][3]string{
		{"Round", "Ch 3, work 3 dc in each ch-4 sp,", "skip 2 sts, ch 1, join with a sl st."},
		{"Vuelta", "3 cad, teje 3 pa en cada esp de 4 cad,", "salta 2 p, 1 cad, une con 1 pd."},
	} {
		s.y = top + 7
		x := 15 + 96*float64(side)
		body := li.New("LBody")
		body.Lang = [2]string{"en", "es"}[side]
		s.line(body.New("P"), page.SansBold, 11, x, fmt.Sprintf("%s %d", text[0], round+1))
		p := body.New("P")
		for _, line := range text[1:] {
			s.y += 5
			s.line(p, page.Sans, 11, x, line)
		}
		s.y += 5
		count := body.New("P")
		for slot := range 4 {
			s.line(count, page.Face(slot%2), 11, x+34+12.5*float64(slot), fmt.Sprint(44+4*slot+round))
			last := &s.d.Pages[len(s.d.Pages)-1].Items
			g := (*last)[len(*last)-1].(page.Glyphs)
			g.Actual = "1 y 44, 2 y 48, 3 y 52, 4 y 56"
			(*last)[len(*last)-1] = g
		}
	}
}

// drawing is five hundred lines.
func (s *sampleText) drawing() {
	for i := range 500 {
		sin, cos := math.Sincos(float64(i) / 20)
		s.add(page.Path{Stroke: &page.Black, Width: 0.16, Cmds: []page.Cmd{
			{Op: 'M', P: [3]page.Point{{X: 105, Y: 200}}},
			{Op: 'C', P: [3]page.Point{{X: 105 + 10*cos, Y: 200}, {X: 105, Y: 200 + 10*sin}, {X: 105 + 40*cos, Y: 200 + 40*sin}}},
		}})
	}
}

// BenchmarkWrite writes documents in four faces; cold, the faces are cut each time, as in the first run of a program.
func BenchmarkWrite(b *testing.B) {
	for _, pages := range []int{1, 10, 100} {
		d := pattern(pages)
		for _, cold := range []bool{true, false} {
			name := fmt.Sprintf("%d/%s", pages, map[bool]string{true: "cold", false: "warm"}[cold])
			b.Run(name, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					if cold {
						emptyShelf()
					}
					if err := Write(io.Discard, d, Options{}); err != nil {
						b.Fatal(err)
					}
				}
				b.ReportMetric(float64(len(written(b, d, Options{})))/1000, "kB")
			})
		}
	}
}

func emptyShelf() {
	shelf.Lock()
	defer shelf.Unlock()
	clear(shelf.faces)
}
