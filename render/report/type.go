package report

import (
	"ovillo/render/layout"
	"ovillo/render/page"
)

// The roles of type in a report: the faces of the pattern's own pages, one size smaller, since it is read at a desk.
var (
	kindType  = sans(9, 5)
	titleType = serif(24, 10)
	headType  = bold(serif(15, 7.5))
	groupType = bold(sans(10.5, 5))
	textType  = sans(9.5, 4.5)
	nameType  = bold(sans(9.5, 4.5))
	smallType = sans(8.5, 4)
	cellType  = sans(9, 4.25)
	columns   = sans(8.5, 4.25)
	running   = sans(8, 4)
)

func sans(size, leading float64) layout.Style {
	return layout.Style{Face: page.Sans, Strong: page.SansBold, Size: size, Leading: leading}
}

func serif(size, leading float64) layout.Style {
	return layout.Style{Face: page.Serif, Strong: page.SerifBold, Size: size, Leading: leading}
}

// bold makes a style whose plain face is the strong one.
func bold(s layout.Style) layout.Style {
	s.Face = s.Strong
	return s
}
