package layout

import (
	"strings"

	"ovillo/render/page"
	"ovillo/render/rich"
)

// Run is a stretch of a line in one face, X millimetres from the start of the line.
type Run struct {
	X, Width float64
	Face     page.Face
	Text     string
	Expand   string
	Link     string
	Spoken   string
}

// Line is one line of text. X is where it starts from the edge of its column: the indent of a first line.
type Line struct {
	X, Width float64
	Runs     []Run
}

// String returns the text of a line.
func (l Line) String() string {
	var b strings.Builder
	for _, r := range l.Runs {
		b.WriteString(r.Text)
	}
	return b.String()
}

// End is the right edge of the line from the edge of its column.
func (l Line) End() float64 { return l.X + l.Width }

// line cuts the letters from a up to b out of the paragraph. Neighbours that look alike and carry nothing become one
// run.
func (p *paragraph) line(a, b int) Line {
	l := Line{Width: p.width(a, b)}
	for i := a; i < b; {
		run := p.runs[p.letters[i].run]
		j := i + 1
		for j < b && p.same(i, j) {
			j++
		}
		var text strings.Builder
		for k := i; k < j; k++ {
			if r := p.letters[k].r; r != zeroWidth {
				text.WriteRune(r)
			}
		}
		l.Runs = append(l.Runs, Run{
			X:      p.letters[i].x - p.letters[a].x,
			Width:  p.width(i, j),
			Face:   p.style.Of(run.Strong),
			Text:   text.String(),
			Expand: run.Expand, Link: run.Link, Spoken: run.Spoken,
		})
		i = j
	}
	return l
}

// hyphenate ends a line with the hyphen of a divided word. Whoever copies or hears the text gets a soft hyphen in its place,
// which is no sign: the word is whole.
func (l *Line) hyphenate(width float64) {
	last := l.Runs[len(l.Runs)-1]
	l.Runs = append(l.Runs, Run{X: l.Width, Width: width, Face: last.Face, Text: "-", Spoken: string(softHyphen)})
	l.Width += width
}

// same reports whether letters i and j can be written as one run.
func (p *paragraph) same(i, j int) bool {
	a, b := p.letters[i].run, p.letters[j].run
	if a == b {
		return true
	}
	x, y := p.runs[a], p.runs[b]
	return x.Strong == y.Strong && bare(x) && bare(y)
}

// bare reports whether a run is nothing but letters.
func bare(r rich.Run) bool { return r.Expand == "" && r.Link == "" && r.Spoken == "" }
