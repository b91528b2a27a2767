package report

import (
	"ovillo/render/layout"
)

// The roles of type in a report: the faces of the pattern's own pages, one size smaller, since it is read at a desk.
var (
	kindType  = layout.Sans(9, 5)
	titleType = layout.Serif(24, 10)
	headType  = layout.Heavy(layout.Serif(15, 7.5))
	groupType = layout.Heavy(layout.Sans(10.5, 5))
	textType  = layout.Sans(9.5, 4.5)
	nameType  = layout.Heavy(layout.Sans(9.5, 4.5))
	smallType = layout.Sans(8.5, 4)
	cellType  = layout.Sans(9, 4.25)
	columns   = layout.Sans(8.5, 4.25)
	running   = layout.Sans(8, 4)
)
