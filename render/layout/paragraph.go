package layout

import (
	"ovillo/render/font"
	"ovillo/render/rich"
)

const millimetres = 25.4 / 72 // a point

// letter is one rune of a paragraph with its place, were the paragraph one endless line. Kerning works between
// neighbours only, so a line cut out of the endless line keeps its width exactly.
type letter struct {
	r      rune
	run    int32 // index into the runs
	x, end float64
}

// paragraph is a text measured rune by rune.
type paragraph struct {
	style   Style
	runs    []rich.Run
	letters []letter
	soft    []int // the letters before which a word may be divided, in order, each once
}

// measureText puts the runes of a text on an endless line. Soft hyphens take no place: they are noted, but for those in links,
// in abbreviations and in what is said in other words, which are never divided. Spaces at the start are dropped.
func measureText(t rich.Text, s Style) *paragraph {
	p := &paragraph{style: s, runs: make([]rich.Run, len(t))}
	n := 0
	for i, run := range t {
		run.Text = font.Compose(run.Text)
		p.runs[i] = run
		n += len(run.Text)
	}
	p.letters = make([]letter, 0, n)
	scale := s.Size / 1000 * millimetres
	track := s.Track * s.Size * millimetres
	x := 0.0
	for i, run := range p.runs {
		face := font.Of(s.Of(run.Strong))
		for _, r := range run.Text {
			if r == softHyphen {
				n := len(p.letters)
				if again := len(p.soft) > 0 && p.soft[len(p.soft)-1] == n; n > 0 && !again && bare(run) {
					p.soft = append(p.soft, n)
				}
				continue
			}
			if r == ' ' && len(p.letters) == 0 {
				continue
			}
			if k := len(p.letters); k > 0 {
				prev := p.letters[k-1]
				if p.runs[prev.run].Strong == run.Strong {
					x += float64(face.Kern(prev.r, r)) * scale
				}
				x += track
			}
			end := x + float64(face.Advance(r))*scale
			if r == '\n' || r == zeroWidth {
				end = x
			}
			p.letters = append(p.letters, letter{r: r, run: int32(i), x: x, end: end})
			x = end
		}
	}
	return p
}

const (
	softHyphen = '\u00AD'
	zeroWidth  = '\u200B'
	noBreak    = '\u00A0'
)

// width is the length of the letters from a up to b.
func (p *paragraph) width(a, b int) float64 {
	if a >= b {
		return 0
	}
	return p.letters[b-1].end - p.letters[a].x
}
