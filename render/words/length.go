package words

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// Cm writes a length in centimetres, to the millimetre, without its unit. An unknown length is a dash.
func (l *Language) Cm(v plan.Length) string {
	if v == plan.NoLength {
		return dash
	}
	return l.Number(v.Cm(), 1)
}

// Inches writes a length in inches to the nearest quarter, without its unit: 22½. An unknown length is a dash.
func (l *Language) Inches(v plan.Length) string {
	if v == plan.NoLength {
		return dash
	}
	quarters := int(math.Round(float64(v) / float64(plan.Inch) * 4))
	sign := ""
	if quarters < 0 {
		sign, quarters = "−", -quarters
	}
	part := [4]string{"", "¼", "½", "¾"}[quarters%4]
	if quarters >= 4 || part == "" {
		part = strconv.Itoa(quarters/4) + part
	}
	if part == "0" {
		return part
	}
	return sign + part
}

// InchSign is how the language writes inches behind a figure: "in", "pulg."; "inches" where nothing is abbreviated.
func (l *Language) InchSign() string {
	if l.read.manner.Full {
		return l.voice.line(inchWord)
	}
	return l.voice.line(inchSign)
}

// InchesBehind is how inches are written behind a figure: 4 in; where nothing is abbreviated 4 inches and ¾ inch.
func (l *Language) InchesBehind(figure string) string {
	if l.read.manner.Full && slices.Contains([]string{"1", "¼", "½", "¾"}, strings.TrimPrefix(figure, "−")) {
		return l.voice.line(oneInch)
	}
	return l.InchSign()
}

// yardSign is how the language writes yards behind a figure.
func (l *Language) yardSign() string {
	if l.read.manner.Full {
		return l.voice.line(yardWord)
	}
	return "yd"
}

// Lengths writes a length for every size in centimetres: 17 (18, 19, 20) cm.
func (l *Language) Lengths(ls plan.Lengths) rich.Text {
	return l.lengths(ls, nil, l.Cm, "cm")
}

// lengths writes a length for every size in a unit.
func (l *Language) lengths(ls plan.Lengths, names []string, write func(plan.Length) string, unit string) rich.Text {
	figures := make([]string, len(ls))
	alike := true
	for i, v := range ls {
		figures[i] = write(v)
		alike = alike && figures[i] == figures[0]
	}
	if alike && len(figures) > 0 {
		if unit == l.InchSign() {
			unit = l.InchesBehind(figures[0])
		}
		return rich.T(figures[0] + tie + unit)
	}
	return append(l.list(figures, names), rich.Run{Text: tie + unit})
}

// both writes a length in centimetres and, where the reading measures in inches as well, in inches: 12 cm (4¾ in).
func (c *context) both(ls plan.Lengths) rich.Text {
	ls = c.kept(ls)
	names := c.names()
	cm := c.l.lengths(ls, names, c.l.Cm, "cm")
	if !c.l.voice.inches() {
		return cm
	}
	if _, single := sameLength(ls); !single && c.l.read.manner.Named {
		return c.namedLengths(ls)
	}
	in := c.l.lengths(ls, names, c.l.Inches, c.l.InchSign())
	if _, single := sameLength(ls); single {
		return fill("{} ({})", cm, in)
	}
	// A list has brackets already.
	return fill("{} "+c.l.voice.line(orInches)+" {}", cm, in)
}

// namedLengths writes lengths behind the names of their sizes, each in both units: (1 y: 56 cm or 22 in, 2 y: …).
func (c *context) namedLengths(ls plan.Lengths) rich.Text {
	figures := make([]string, len(ls))
	for i, v := range ls {
		figures[i] = dash
		if v != plan.NoLength {
			in := c.l.Inches(v)
			figures[i] = c.l.Cm(v) + tie + "cm " + c.l.voice.line(orInches) + " " + in + tie + c.l.InchesBehind(in)
		}
	}
	return c.l.list(figures, c.names())
}

// kept drops the lengths of sizes that the step is not for, if what is left is one length.
func (c *context) kept(ls plan.Lengths) plan.Lengths {
	var of plan.Lengths
	for i, v := range ls {
		if c.sizes.Has(i) {
			of = append(of, v)
		}
	}
	if v, ok := sameLength(of); ok {
		return plan.Lengths{v}
	}
	out := append(plan.Lengths{}, ls...)
	for i := range out {
		if !c.sizes.Has(i) {
			out[i] = plan.NoLength
		}
	}
	return out
}

func sameLength(ls plan.Lengths) (plan.Length, bool) {
	for _, v := range ls {
		if v != ls[0] {
			return 0, false
		}
	}
	if len(ls) == 0 {
		return 0, false
	}
	return ls[0], true
}
