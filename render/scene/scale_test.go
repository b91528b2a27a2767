package scene

import (
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/render/page"
)

func TestEnlarged(t *testing.T) {
	black := page.Black
	s := &Scene{W: 10, H: 20, Title: map[string]string{"en": "A square"}, Items: []Item{
		Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 1, Y: 2}}}, {Op: 'C', P: [3]page.Point{{X: 3, Y: 4}, {X: 5, Y: 6}, {X: 7, Y: 8}}}},
			Stroke: &black, Width: 0.5, Dash: []float64{1, 2}},
		Label{X: 4, Y: 5, Text: "A", Height: 3, Anchor: End},
	}}
	before := *s
	require.Equal(t, &Scene{W: 15, H: 30, Title: s.Title, Items: []Item{
		Path{Cmds: []page.Cmd{{Op: 'M', P: [3]page.Point{{X: 1.5, Y: 3}}}, {Op: 'C', P: [3]page.Point{{X: 4.5, Y: 6}, {X: 7.5, Y: 9}, {X: 10.5, Y: 12}}}},
			Stroke: &black, Width: 0.75, Dash: []float64{1.5, 3}},
		Label{X: 6, Y: 7.5, Text: "A", Height: 4.5, Anchor: End},
	}}, s.Enlarged(1.5))
	require.Equal(t, before, *s, "the drawing itself stays as it is")
	require.Same(t, s, s.Enlarged(1))
	require.Nil(t, (*Scene)(nil).Enlarged(2))
}
