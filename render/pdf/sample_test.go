package pdf

import (
	"bytes"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"testing"

	"ovillo/render/font"
	"ovillo/render/page"
)

// sampleText is a builder of pages for tests: it sets lines one under the other.
type sampleText struct {
	d *page.Document
	y float64
}

func (s *sampleText) add(items ...page.Item) {
	p := &s.d.Pages[len(s.d.Pages)-1]
	p.Items = append(p.Items, items...)
}

func (s *sampleText) line(e *page.Elem, face page.Face, size, x float64, text string) page.Glyphs {
	g := page.Glyphs{X: x, Base: s.y, Size: size, Face: face, Text: text, Elem: e}
	s.add(g)
	return g
}

// end is where a run ends.
func end(g page.Glyphs) float64 { return g.X + font.Of(g.Face).Width(g.Text, g.Size) }

func (s *sampleText) page(label string) {
	s.d.Pages = append(s.d.Pages, page.Page{W: 210, H: 297, Label: label})
	s.y = 30
	s.add(page.Glyphs{X: 15, Base: 15, Size: 8.5, Text: "Ovillo de prueba"},
		page.Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 15, Y: 17}}}, {Op: 'L', P: [3]page.Point{{X: 195, Y: 17}}}},
			Stroke: &page.Black, Width: 0.2})
}

// sample is a document with everything that a document can have.
func sample() *page.Document {
	root := &page.Elem{Tag: "Document"}
	d := &page.Document{
		Root: root, Title: "Ovillo de prueba", Author: "Ana Muñoz & Bob <b@example.org>", Subject: "Two languages",
		Keywords: []string{"crochet", "ganchillo"}, Lang: "en-US", Langs: []string{"en-US", "es-ES"},
		Titles:   []page.InLang{{Lang: "en-US", Text: "Test ball"}, {Lang: "es-ES", Text: "Ovillo de prueba"}},
		Subjects: []page.InLang{{Lang: "en-US", Text: "Two languages"}, {Lang: "es-ES", Text: "Dos idiomas"}}, Created: "2026-03-01",
		Source: []byte("pattern «Prueba»\n"), SourceName: "patterns/prueba.ovi",
	}
	s := &sampleText{d: d}
	s.page("i")
	s.firstPage(root)
	s.page("1")
	s.tablePage(root)
	s.page("2")
	s.figurePage(root)
	d.Outline = []page.Outline{
		{Title: "A pattern / Un patrón", Level: 1, Page: 0, Y: 20}, {Title: "Sizes", Level: 3, Page: 1, Y: 20},
		{Title: "Figures", Level: 2, Page: 2, Y: 20}, {Title: "End", Level: 1, Page: 2, Y: 120},
	}
	return d
}

func (s *sampleText) firstPage(root *page.Elem) {
	s.line(root.New("H1"), page.Serif, 38, 15, "Tejido AVATAR")
	s.y += 15
	p := root.New("P")
	g := s.line(p, page.Sans, 11, 15, "Work 3\u00a0")
	dc := page.Glyphs{X: end(g), Base: s.y, Size: 11, Face: page.SansBold, Text: "dc", Expand: "double crochet", Elem: p}
	s.add(dc)
	s.line(p, page.Sans, 11, end(dc), " into each stitch of the last")
	s.y += 5
	g = s.line(p, page.Sans, 11, 15, "round, then ")
	for i, text := range []string{"112 (", "116", ", 120)"} {
		n := page.Glyphs{X: end(g), Base: s.y, Size: 11, Face: page.Face(i % 2), Text: text, Actual: "1 y 112, 2 y 116, 4 y 120", Elem: p}
		s.add(n)
		g = n
		if i == 0 { // an ornament between the runs of one replacement
			s.add(page.Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 15, Y: s.y + 2}}}, {Op: 'L', P: [3]page.Point{{X: 30, Y: s.y + 2}}}},
				Stroke: &page.Color{0.6, 0.3, 0.17}, Width: 0.3, Dash: []float64{0, 1}, Round: true})
		}
	}
	s.line(p, page.Sans, 11, end(g), " sts; see")
	s.y += 5
	link := p.New("Link")
	g = s.line(link, page.Sans, 11, 15, "example.org/ñ")
	s.add(page.Anchor{X: 15, Y: s.y - 4, W: end(g) - 15, H: 5, URI: "https://example.org/ñ?a=(1)", Label: "the site", Elem: link})
	s.line(p, page.Sans, 11, end(g), ".")
	s.y += 10
	es := root.New("Sect")
	es.Lang = "es-ES"
	s.line(es.New("H2"), page.SerifBold, 17, 15, "Cómo se teje")
	s.y += 8
	q := es.New("P")
	s.line(q, page.Sans, 11, 15, "¿Cuántos puntos? ¡Pregunta! La 1.ª vuelta y el 2.º anillo: «ñandú» — 2½″ × 3′, 20 °C, A → B, n ≥ 3…")
	s.y += 5
	s.line(q, page.SansBold, 11, 15, "Decompuesto: pin\u0303a, a\u0301rbol, u\u0308ber. Tiny WAVE To Ty L’AV P. V, 11 70 (1)")
	s.y += 5
	back := q
	s.line(back, page.Sans, 9, 15, "Ir a la tabla")
	s.add(page.Anchor{X: 15, Y: s.y - 3, W: 30, H: 4, Page: 1, DestY: 20, Label: "Ir a la tabla", Elem: back})
	s.y += 30
	s.add(page.Glyphs{X: 100, Base: s.y, Size: 12, Face: page.Serif, Text: "Turned", Angle: 90, Track: 0.1, Color: page.Color{0.1, 0.2, 0.5}})
}

func (s *sampleText) tablePage(root *page.Elem) {
	t := root.New("Table")
	tr := t.New("TR")
	h := tr.New("TH")
	h.Scope, h.Span = "Column", [2]int{1, 2}
	s.line(h, page.SansBold, 10, 15, "Size / Talla")
	h = tr.New("TH")
	h.Scope = "Column"
	s.line(h, page.SansBold, 10, 80, "cm")
	for _, row := range [][3]string{{"1 y", "chest", "56"}, {"2 y", "chest", "58"}} {
		s.y += 6
		tr = t.New("TR")
		h = tr.New("TH")
		h.Scope = "Row"
		s.line(h, page.Sans, 10, 15, row[0])
		s.line(tr.New("TD"), page.Sans, 10, 40, row[1])
		s.line(tr.New("TD"), page.Sans, 10, 80, row[2])
	}
	s.y += 10
	l := root.New("L")
	for _, text := range []string{"First", "Second"} {
		li := l.New("LI")
		s.line(li.New("Lbl"), page.SansBold, 11, 15, "•")
		s.line(li.New("LBody"), page.Sans, 11, 20, text)
		s.y += 5
	}
}

func (s *sampleText) figurePage(root *page.Elem) {
	f := root.New("Figure")
	f.Alt = "Un círculo"
	f.Box = &[4]float64{15, 30, 40, 40}
	const k = 0.5522847498 * 20
	x, y := 35.0, 50.0
	s.add(page.Path{Elem: f, Stroke: &page.Black, Width: 0.5, Fill: &page.Color{0.725, 0.796, 0.749}, Cmds: []page.Cmd{
		{Op: 'M', P: [3]page.Point{{X: x + 20, Y: y}}},
		{Op: 'C', P: [3]page.Point{{X: x + 20, Y: y + k}, {X: x + k, Y: y + 20}, {X: x, Y: y + 20}}},
		{Op: 'C', P: [3]page.Point{{X: x - k, Y: y + 20}, {X: x - 20, Y: y + k}, {X: x - 20, Y: y}}},
		{Op: 'C', P: [3]page.Point{{X: x - 20, Y: y - k}, {X: x - k, Y: y - 20}, {X: x, Y: y - 20}}},
		{Op: 'C', P: [3]page.Point{{X: x + k, Y: y - 20}, {X: x + 20, Y: y - k}, {X: x + 20, Y: y}}},
		{Op: 'Z'},
	}})
	for i, kind := range []string{"png", "jpeg", "png"} {
		f := root.New("Figure")
		f.Alt = "A photograph"
		at := 70 + float64(i)*45
		f.Box = &[4]float64{at, 30, 40, 30}
		s.add(page.Picture{X: at, Y: 30, W: 40, H: 30, Data: photo(kind, i == 2), Format: kind, Elem: f})
	}
	s.y = 120
	p := root.New("P")
	s.line(p, page.Sans, 11, 15, "The end of a")
	s.y += 5
	s.line(p, page.Sans, 11, 15, "half-")
	s.y += 5
	s.line(p, page.Sans, 11, 15, "done sentence.")
}

// photo is a picture with a dark corner at the top left; grey pictures are transparent at the bottom right.
func photo(kind string, gray bool) []byte {
	var b bytes.Buffer
	img := image.NewNRGBA(image.Rect(0, 0, 80, 60))
	for y := range 60 {
		for x := range 80 {
			c := color.NRGBA{uint8(3 * x), uint8(4 * y), 120, 255}
			if gray {
				c = color.NRGBA{uint8(2 * (x + y)), uint8(2 * (x + y)), uint8(2 * (x + y)), 255}
				if x > 60 && y > 40 {
					c.A = 0
				}
			}
			img.SetNRGBA(x, y, c)
		}
	}
	if kind == "png" {
		png.Encode(&b, img) // encoding into memory does not fail
	} else {
		jpeg.Encode(&b, img, nil)
	}
	return b.Bytes()
}

// written is the sample as a file.
func written(t testing.TB, d *page.Document, o Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, d, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}
