package pdf

import (
	"ovillo/render/page"
)

// path draws a line or an area.
func (s *sheet) path(p page.Path) error {
	if len(p.Cmds) == 0 || p.Fill == nil && p.Stroke == nil {
		return nil
	}
	if err := s.mark(p.Elem, "", ""); err != nil {
		return err
	}
	if p.Fill != nil {
		s.set(&s.pen.fill, paint(*p.Fill, "g", "rg"))
	}
	if p.Stroke != nil {
		s.set(&s.pen.stroke, paint(*p.Stroke, "G", "RG"))
		s.set(&s.pen.width, number(p.Width*point)+" w")
		s.set(&s.pen.dash, dashes(p.Dash))
		s.set(&s.pen.ends, lineEnds(p.Round))
	}
	for _, c := range p.Cmds {
		s.step(c)
	}
	switch {
	case p.Fill != nil && p.Stroke != nil:
		s.op("B")
	case p.Fill != nil:
		s.op("f")
	default:
		s.op("S")
	}
	return nil
}

func (s *sheet) step(c page.Cmd) {
	switch c.Op {
	case 'M':
		s.op("m", s.x(c.P[0].X), s.y(c.P[0].Y))
	case 'L':
		s.op("l", s.x(c.P[0].X), s.y(c.P[0].Y))
	case 'C':
		s.op("c", s.x(c.P[0].X), s.y(c.P[0].Y), s.x(c.P[1].X), s.y(c.P[1].Y), s.x(c.P[2].X), s.y(c.P[2].Y))
	case 'Z':
		s.op("h")
	}
}

func dashes(lengths []float64) string {
	b := []byte{'['}
	for i, d := range lengths {
		if i > 0 {
			b = append(b, ' ')
		}
		b = appendNumber(b, d*point)
	}
	return string(append(b, "] 0 d"...))
}

func lineEnds(round bool) string {
	if round {
		return "1 J 1 j"
	}
	return "0 J 0 j"
}
