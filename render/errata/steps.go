package errata

import (
	"strings"

	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/book"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// mostItems is for how many groups of sizes a row is written out in plain numbers. Where more differ it is written as the pages have
// it, with the numbers of all sizes.
const mostItems = 2

func formOf(o plan.OwnStitch) stitch.Form { return stitch.Plain(o.ID) }

// steps writes what changed in a part.
func (m *maker) steps(c compare.Change) Entry {
	old, new := m.r.Old.Parts[c.Part.Old], m.r.New.Parts[c.Part.New]
	was, is := m.written(m.r.Old, old, c.Old), m.written(m.r.New, new, c.New)
	e := Entry{Where: m.l.PartTitle(m.r.New, c.Part.New)}
	label := was.label
	if label == "" {
		label = is.label
	}
	if label != "" {
		e.Where += ", " + lowered(label)
	}
	named := was.label != is.label && was.label != "" && is.label != "" || len(c.Old) > 1 || len(c.New) > 1
	e.Items = m.grouped(c, func(s compare.Site) (rich.Text, rich.Text) {
		a, b := m.both(s)
		return m.written(a, a.Parts[c.Part.Old], s.Old).text(named), m.written(b, b.Parts[c.Part.New], s.New).text(named)
	})
	if len(e.Items) > mostItems {
		e.Items = []Item{m.in(sitesOf(c), Item{Old: was.text(named), New: is.text(named)})}
	}
	e.Page = m.page(pageOf(m.o.Old, old, c.Old), pageOf(m.o.New, new, c.New))
	e.short = m.shortOf(e)
	if x, y := was.counts(), is.counts(); x != y && x != "" && y != "" && len(e.Items) == 1 {
		e.short = m.l.Say(words.CountHead) + " " + m.l.SayWith(words.InPlaceOf, y, x)
	}
	return e
}

// written is some steps of a part as the pages say them.
type written struct {
	label string // of all of them: "Round 12, Round 13"
	steps []step
}

type step struct{ label, body, count rich.Text }

// written writes steps, in a pattern of one size with plain numbers.
func (m *maker) written(p *plan.Pattern, part *plan.Part, of []int) written {
	var w written
	var labels []string
	for _, i := range of {
		st := m.step(p, part, i)
		one := step{label: m.l.StepLabel(p, st), body: st.Body, count: m.l.CountLine(p, st.Count)}
		w.steps = append(w.steps, one)
		if s := one.label.String(); s != "" {
			if len(labels) > 0 {
				s = lowered(s)
			}
			labels = append(labels, s)
		}
	}
	w.label = strings.Join(labels, ", ")
	return w
}

func (m *maker) step(p *plan.Pattern, part *plan.Part, i int) words.StepText {
	if i == compare.Start {
		return m.l.Start(p, part)
	}
	return m.l.Step(p, part, part.Steps[i])
}

// text is the steps in one line; named: each behind its label.
func (w written) text(named bool) rich.Text {
	var out rich.Text
	for i, s := range w.steps {
		if i > 0 {
			out = append(out, rich.Run{Text: "\n"})
		}
		if named && len(s.label) > 0 {
			out = append(append(out, s.label...), rich.Run{Text: ": "})
		}
		out = append(out, s.body...)
		if len(s.count) > 0 {
			out = append(append(append(out, rich.Run{Text: " ("}), s.count...), rich.Run{Text: ")"})
		}
	}
	return out
}

// counts are the figures of what one row comes to, "" if it is not one kind of stitch.
func (w written) counts() string {
	if len(w.steps) != 1 {
		return ""
	}
	text := w.steps[0].count.String()
	end := strings.LastIndexFunc(text, func(r rune) bool { return r >= '0' && r <= '9' || r == ')' })
	figures := strings.TrimRight(text[:end+1], " \u00a0")
	if strings.ContainsFunc(figures, func(r rune) bool { return !strings.ContainsRune("0123456789(),; –\u00a0\u202f", r) }) {
		return ""
	}
	return strings.ReplaceAll(figures, "\u00a0", " ")
}

// pageOf is the page of the first of some steps.
func pageOf(x *book.Index, part *plan.Part, of []int) string {
	if x == nil {
		return ""
	}
	for _, i := range of {
		var s plan.Step
		if i != compare.Start {
			s = part.Steps[i]
		}
		if page := x.Step(part, s); page != "" {
			return page
		}
	}
	return ""
}

// lowered makes the first letter small, as a label is in the middle of a line.
func lowered(s string) string {
	for i, r := range s {
		if i == 0 {
			return strings.ToLower(string(r)) + s[len(string(r)):]
		}
	}
	return s
}

// shortOf says in a few words what is done about an entry, for the edition notes.
func (m *maker) shortOf(e Entry) string {
	old, new := false, false
	for _, it := range e.Items {
		old, new = old || len(it.Old) > 0, new || len(it.New) > 0
	}
	trim := func(k words.Key) string { return lowered(strings.TrimSuffix(m.l.Say(k), ":")) }
	switch {
	case !old:
		return trim(words.PutIn)
	case !new:
		return trim(words.LeftOut)
	}
	return m.l.Say(words.Corrected)
}
