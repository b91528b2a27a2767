package words

import (
	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// FromMemory is the mark of a figure that is from memory, wherever one is printed.
const FromMemory = "*"

// BodyNotes are the lines under the measures of the wearer: where they are from, and what the mark of a remembered figure
// means. A pattern without such measures has none.
func (l *Language) BodyNotes(p *plan.Pattern) []string {
	if len(p.Body) == 0 {
		return nil
	}
	var order []string // sources as they are printed, in the order they come first
	from := map[string][]rich.Text{}
	memory := false
	for _, b := range p.Body {
		source := l.bodySource(b)
		if from[source] == nil {
			order = append(order, source)
		}
		from[source] = append(from[source], rich.T(lower(l.BodyName(b.Name))))
		memory = memory || b.Memory
	}
	var groups []rich.Text
	for _, source := range order {
		if len(order) == 1 {
			groups = append(groups, rich.T(source))
			continue
		}
		groups = append(groups, fill(l.voice.line(bodyFrom), l.voice.and(from[source]), source))
	}
	notes := []string{fill(l.voice.line(bodySources), join("; ", groups...)).String()}
	if memory {
		notes = append(notes, fill(l.voice.line(bodyMemory), FromMemory).String())
	}
	return notes
}

// bodySource says where a measure of the wearer is from.
func (l *Language) bodySource(b plan.BodyMeasure) string {
	if len(b.Sources) == 0 {
		return l.voice.line(bodyOwn)
	}
	var names []rich.Text
	for _, s := range b.Sources {
		names = append(names, rich.T(s.Name[l.read.Code()]))
	}
	return join("; ", names...).String()
}
