package draw

import "math"

// tip is a rounded end of a strip. Its outline is a quarter of an ellipse on either side, from a start that may have
// some width to where the strip is even; down its middle it is as long as its rows are high.
type tip struct {
	f           frame // on the end, pointing into the strip
	rows        int
	deep        float64 // height of its rows
	wide, start float64 // widths where it ends and at the very end
}

// edge is half the width and the distance from the end where a round meets the outline that lies so deep in the middle.
func (t *tip) edge(deep float64) (half, at float64) {
	sin, cos := math.Sincos(deep / t.deep * math.Pi / 2)
	return t.start/2 + (t.wide-t.start)/2*sin, t.deep * (1 - cos)
}

// bend replaces the lines of the tip, but for its last one, by rounds that run over it. d are the depths of the lines.
func (t *tip) bend(lines []curve, d []float64) {
	for k := range t.rows {
		half, at := t.edge(d[k])
		if k == 0 {
			lines[k] = straight(t.f.at(-half, at), t.f.at(half, at))
			continue
		}
		lines[k] = bow(t.f, half, at, d[k])
	}
}

// outline is the edge on one side between two depths, without its ends.
func (t *tip) outline(side, from, to float64) []vec {
	const steps = 6
	var pts []vec
	for i := 1; i < steps; i++ {
		half, at := t.edge(from + (to-from)*float64(i)/steps)
		pts = append(pts, t.f.at(side*half, at))
	}
	return pts
}

// bow is a curve from side to side that hangs through in the middle.
func bow(f frame, half, edge, middle float64) curve {
	const steps = 12
	pts := make([]vec, 0, steps+1)
	for i := range steps + 1 {
		sin, cos := math.Sincos(math.Pi * float64(i) / steps)
		pts = append(pts, f.at(-half*cos, edge+(middle-edge)*sin))
	}
	return curve{pts: pts, smooth: true}
}
