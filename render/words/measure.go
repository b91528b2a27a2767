package words

import (
	"strings"

	"ovillo/compile/plan"
)

// MeasureName is the name of a measure of the finished piece, for a table: "Hips, around".
func (l *Language) MeasureName(m plan.Measure) string {
	return (&context{l: l}).measureName(m, isAround(m))
}

// measureName names a measure; around says that it is taken all around, where the name does not say so.
func (c *context) measureName(m plan.Measure, around bool) string {
	if t := c.l.theName(m.Text); t != "" {
		return t
	}
	name := c.l.pieceName(m.Name)
	if around {
		return c.l.voice.around(name)
	}
	return name
}

// Stretched is the name of an opening as it measures when its edge is stretched: "Neck, around (stretched by 20%)". A percentage
// that differs from size to size is listed.
func (l *Language) Stretched(p *plan.Pattern, m plan.Measure) string {
	return fill(l.voice.line(overStretched), l.MeasureName(m), l.context(p, nil, nil).tally(m.Over.Percent)).String()
}

// BodyName is the name of a measure of the wearer. A name that the language has no word for is printed as it stands,
// its words parted.
func (l *Language) BodyName(name string) string {
	if t := l.voice.name(wearerName, name); t != "" {
		return upper(t)
	}
	return l.pieceName(name)
}

func (l *Language) pieceName(name string) string {
	if t := l.voice.name(bodyName, name); t != "" {
		return upper(t)
	}
	return upper(spaced(name))
}

// Ease heads the ease at a measure of the wearer: "Ease at hips".
func (l *Language) Ease(body string) string { return l.voice.ease(lower(l.BodyName(body))) }

// spaced parts the words of an identifier.
func spaced(name string) string { return strings.ReplaceAll(name, "_", " ") }
