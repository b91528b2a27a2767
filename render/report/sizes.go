package report

import (
	"fmt"
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// SizeLine is a line of the table of sizes: what is measured, and its figures for each size.
type SizeLine struct {
	Kind    string         // finished, stretched, body, ease, yarn: promised to other programs
	Head    string         // what the kind is called
	Name    string         // as the source has it
	Label   string         // as it is printed
	Figures [][]SizeFigure // by size; none where the size has none
}

// SizeFigure is one figure.
type SizeFigure struct {
	Exact   string // with a decimal point, as other programs read it
	Printed string // as it is printed
	Unit    string // cm, in, g, m, yd, balls
	Sign    string // the unit as it is printed
}

// Sizes lists what the finished piece measures, whom it fits, with what ease, and how much yarn it takes, in the order of the printed table.
func Sizes(p *plan.Pattern, l *words.Language) []SizeLine {
	var out []SizeLine
	lengths := func(kind string, head words.Key, name, label string, values plan.Lengths, memory bool) {
		line := SizeLine{Kind: kind, Head: l.Say(head), Name: name, Label: label}
		mark := ""
		if memory {
			mark = words.FromMemory
		}
		for _, v := range values {
			var f []SizeFigure
			if v != plan.NoLength {
				f = []SizeFigure{
					{strconv.FormatFloat(v.Cm(), 'f', -1, 64), l.Cm(v) + mark, "cm", "cm"},
					{strconv.FormatFloat(float64(v)/float64(plan.Inch), 'f', 2, 64), l.Inches(v) + mark, "in", l.InchSign()},
				}
			}
			line.Figures = append(line.Figures, f)
		}
		out = append(out, line)
	}
	for _, m := range p.Measures {
		lengths("finished", words.FinishedPiece, m.Name, l.MeasureName(m), m.Values, false)
	}
	for _, b := range p.Body {
		lengths("body", words.ToFitBody, b.Name, l.BodyName(b.Name), b.Values, b.Memory)
	}
	for _, m := range p.Measures {
		if m.Over != nil && !m.Over.Percent.Is(0) {
			lengths("stretched", words.ToFitBody, m.Name, l.Stretched(p, m), m.Over.Stretched, false)
		}
	}
	for _, m := range p.Measures {
		if m.Fits != nil && m.Fits.Ease != nil {
			lengths("ease", words.ToFitBody, m.Name, l.Ease(m.Fits.Body), m.Fits.Ease, p.Remembered(m.Fits.Body))
		}
	}
	for _, y := range p.Yarns {
		line := SizeLine{Kind: "yarn", Head: l.Say(words.YarnHead), Name: y.Name, Label: l.YarnName(y)}
		for _, a := range y.Amount {
			var f []SizeFigure
			if a.Balls > 0 {
				f = append(f, SizeFigure{strconv.Itoa(a.Balls), strconv.Itoa(a.Balls), "balls", l.Say(words.Balls)})
			}
			f = append(f, SizeFigure{strconv.FormatFloat(float64(a.Milligrams)/1000, 'f', -1, 64), l.Number(float64(a.Milligrams)/1000, 0), "g", "g"})
			if a.Length != plan.NoLength && a.Length > 0 {
				m := fmt.Sprintf("%.0f", float64(a.Length)/float64(1000*plan.Millimetre))
				f = append(f, SizeFigure{m, m, "m", "m"}, SizeFigure{strconv.Itoa(a.Yards), strconv.Itoa(a.Yards), "yd", "yd"})
			}
			line.Figures = append(line.Figures, f)
		}
		if len(y.Amount) == len(p.Sizes) {
			out = append(out, line)
		}
	}
	return out
}
