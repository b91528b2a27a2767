package layout

import (
	"math"

	"ovillo/render/font"
	"ovillo/render/page"
)

// Module is the unit of all vertical measures in millimetres: a quarter of a line of text.
const Module = 1.25

// Style is how a paragraph is set.
type Style struct {
	Face, Strong page.Face
	Size         float64 // points
	Leading      float64 // millimetres from line to line
	Track        float64 // extra space between letters, in ems
	MaxRunes     int     // the most characters in a line; 0: any number
	Hyphens      bool    // lines may end at soft hyphens; without it only a word that is wider than its line does
}

// Baseline is the distance from the top of a line to its baseline.
func (s Style) Baseline() float64 { return font.Of(s.Face).Baseline(s.Size, s.Leading) }

// Of returns the face of a run: the strong one or the plain one.
func (s Style) Of(strong bool) page.Face {
	if strong {
		return s.Strong
	}
	return s.Face
}

// Width is the length of a text in one face of the style.
func (s Style) Width(text string, strong bool) float64 {
	return font.Of(s.Of(strong)).Tracked(text, s.Size, s.Track)
}

// Snap rounds a height up to whole modules.
func Snap(h float64) float64 { return math.Ceil(h/Module-1e-6) * Module }

// Sans is a style of the plain face of the pages, its size in points and its leading in millimetres.
func Sans(size, leading float64) Style {
	return Style{Face: page.Sans, Strong: page.SansBold, Size: size, Leading: leading}
}

// Serif is the same in the face of titles.
func Serif(size, leading float64) Style {
	return Style{Face: page.Serif, Strong: page.SerifBold, Size: size, Leading: leading}
}

// Heavy makes a style whose plain face is the strong one: heads.
func Heavy(s Style) Style {
	s.Face = s.Strong
	return s
}
