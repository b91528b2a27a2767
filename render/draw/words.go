package draw

import (
	"ovillo/compile/plan"
	"ovillo/render/words"
)

// speech is a language: its names of things, and what it says of drawings.
type speech struct {
	*words.Language
	words.Drawing
}

// looks names the mark of a yarn; the ground has none.
func (w speech) looks(m mark) string {
	return [...]string{lineMark: "", barMark: w.Bars, dotMark: w.Dots, dashMark: w.Dashes}[m]
}

// speak gives the speech of each language in which a drawing is to be described, by its tag.
func speak(langs []*words.Language) map[string]speech {
	all := map[string]speech{}
	for _, l := range langs {
		all[l.Tag()] = speech{l, l.Drawing()}
	}
	return all
}

// sizeOf is the name of the size that is drawn.
func (w speech) sizeOf(p *plan.Pattern) string { return w.SizeShown(p) }

// cm writes a length with one decimal at most.
func (w speech) cm(v float64) string { return w.Number(v, 1) }
