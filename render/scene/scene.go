// Package scene is a drawing as plain data: what the schematic and the charts are made of before they become part of a
// page, an SVG or a picture. Lengths are millimetres, x to the right, y downwards.
package scene

import "ovillo/render/page"

// Scene is a drawing of a given size.
type Scene struct {
	W, H  float64
	Items []Item
	// Title and Desc say in each language what the drawing shows, for those who do not see it.
	Title, Desc map[string]string
	// Groups are stretches of Items that are one thing, such as a row of a chart, in order and apart from one another; nil: none.
	Groups []Group
}

// Group is Items[From:To] of a drawing and what they are: "row 5".
type Group struct {
	Name     string
	From, To int
}

// Item is something in a drawing: a [Path] or a [Label].
type Item interface{ item() }

// Path is a line or an area.
type Path struct {
	Cmds   []page.Cmd
	Stroke *page.Color
	Width  float64
	Dash   []float64
	Round  bool
	Fill   *page.Color
}

// Label is a short text, such as the letter of a dimension line.
type Label struct {
	X, Y   float64 // of the anchor: the middle of the text's height
	Text   string
	Height float64 // of the type in millimetres (the em)
	Face   page.Face
	Anchor Anchor
}

// Anchor says which point of a label X is.
type Anchor uint8

// The anchors.
const (
	Middle Anchor = iota
	Start
	End
)

func (Path) item()  {}
func (Label) item() {}

// SmallestLetter is the height of the smallest type in a drawing, in millimetres; 0 where there are no letters.
func (s *Scene) SmallestLetter() float64 {
	least := 0.0
	for _, it := range s.Items {
		if l, ok := it.(Label); ok && (least == 0 || l.Height < least) {
			least = l.Height
		}
	}
	return least
}
