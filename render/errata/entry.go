package errata

import (
	"fmt"
	"strings"

	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// entry writes one change.
func (m *maker) entry(c compare.Change) Entry {
	switch c.Topic {
	case compare.Sizes:
		return m.size(c)
	case compare.Parts:
		return m.part(c)
	case compare.Steps:
		return m.steps(c)
	case compare.Finish:
		return m.finish(c)
	}
	e := Entry{Where: m.where(c)}
	e.Items = m.grouped(c, func(s compare.Site) (old, new rich.Text) {
		was, is := m.both(s)
		return m.said(c, was, s.Old), m.said(c, is, s.New)
	})
	if len(e.Items) > mostItems {
		if old, new := m.inAll(c, m.r.Old, false), m.inAll(c, m.r.New, true); len(old) > 0 && len(new) > 0 {
			e.Items = []Item{m.in(sitesOf(c), Item{Old: old, New: new})}
		}
	}
	e.Page = m.find(m.soughtIn(c, m.r.Old, false), m.soughtIn(c, m.r.New, true))
	e.short = m.shortOf(e)
	if figure := c.Topic == compare.Body || c.Topic == compare.Measures; figure && len(e.Items) == 1 && e.short == m.l.Say(words.Corrected) {
		e.short = m.l.SayWith(words.InPlaceOf, e.Items[0].New.String(), e.Items[0].Old.String())
	}
	return e
}

// size writes a size that came or went or has another name.
func (m *maker) size(c compare.Change) Entry {
	e := Entry{Where: m.l.Say(words.SizesHead)}
	var item Item
	if s, ok := at(m.r.Old.Sizes, c.Old); ok {
		item.Old = rich.T(m.l.SizeName(s))
	}
	if s, ok := at(m.r.New.Sizes, c.New); ok {
		item.New = rich.T(m.l.SizeName(s))
	}
	if item.Old.String() == item.New.String() { // in this language it is called as before
		item.Old, item.New = nameOf(m.r.Old.Sizes, c.Old), nameOf(m.r.New.Sizes, c.New)
	}
	e.Items = []Item{item}
	switch e.short = m.shortOf(e); {
	case len(item.Old) == 0:
		e.Where += ": " + item.New.String()
	case len(item.New) == 0:
		e.Where += ": " + item.Old.String()
	default:
		e.short = m.l.SayWith(words.InPlaceOf, item.New.String(), item.Old.String())
	}
	return e
}

func nameOf(sizes []plan.Size, of []int) rich.Text {
	s, ok := at(sizes, of)
	if !ok {
		return nil
	}
	return rich.T(s.Name)
}

// part writes a part that came or went.
func (m *maker) part(c compare.Change) Entry {
	var e Entry
	var item Item
	old, new := "", ""
	if i := c.Part.Old; i >= 0 {
		e.Where = m.l.PartTitle(m.r.Old, i)
		item.Old, old = rich.T(e.Where), lookUp(m.o.Old, rich.T(e.Where))
	}
	if i := c.Part.New; i >= 0 {
		e.Where = m.l.PartTitle(m.r.New, i)
		item.New, new = rich.T(e.Where), lookUp(m.o.New, rich.T(e.Where))
	}
	e.Items, e.Page = []Item{m.in(sitesOf(c), item)}, m.page(old, new)
	e.short = m.shortOf(e)
	return e
}

// where says what of a pattern a change is about.
func (m *maker) where(c compare.Change) string {
	l, new := m.l, m.r.New
	under := func(head, name string) string { return head + ": " + name }
	is, was := m.r.Sizes[c.Sites[0].Size].Is, m.r.Sizes[c.Sites[0].Size].Was
	site := c.Sites[0]
	switch c.Topic {
	case compare.Ages:
		return l.Say(words.AgeHead)
	case compare.Body:
		return under(l.Say(words.ToFitBody), l.BodyName(c.Name))
	case compare.Measures:
		if x, ok := at(is.Measures, site.New); ok {
			return under(l.Say(words.FinishedPiece), l.MeasureName(x))
		}
		x, _ := at(was.Measures, site.Old)
		return under(l.Say(words.FinishedPiece), l.MeasureName(x))
	case compare.Yarns, compare.Amounts:
		y, ok := at(is.Yarns, site.New)
		if !ok {
			y, _ = at(was.Yarns, site.Old)
		}
		if len(new.Yarns) == 1 && len(m.r.Old.Yarns) == 1 {
			return l.Say(words.YarnHead)
		}
		return under(l.Say(words.YarnHead), l.YarnName(y))
	case compare.Fibres:
		return l.Say(words.LabelHead)
	case compare.Gauges:
		return l.GaugeHead()
	case compare.Hooks:
		return l.HookHead(new)
	case compare.Notions:
		return l.NotionsHead()
	case compare.Texts:
		switch {
		case c.Name == "intro":
			return l.Say(words.IntroHead)
		case c.Name == "care":
			return l.Say(words.CareHead)
		case c.Name == "licence":
			return l.Say(words.LicenceHead)
		}
		return l.Say(words.NotesHead)
	case compare.Stitches:
		own, ok := at(is.Own, site.New)
		if !ok {
			own, _ = at(was.Own, site.Old)
		}
		return under(l.Say(words.SpecialsHead), l.StitchShort(new, formOf(own)))
	case compare.Charts:
		if len(site.New) > 0 {
			return l.ChartTitle(is, site.New[0])
		}
		return l.ChartTitle(was, site.Old[0])
	case compare.Heads:
		return l.PartTitle(new, c.Part.New)
	case compare.Cautions:
		return l.CautionsHead(1)
	}
	return ""
}

// said writes what a pattern of one size says of something, nil if it says nothing.
func (m *maker) said(c compare.Change, p *plan.Pattern, of []int) rich.Text {
	l := m.l
	if len(of) == 0 {
		return nil
	}
	switch c.Topic {
	case compare.Ages:
		return l.AgeOf(p.Sizes[0])
	case compare.Body:
		if b, ok := at(p.Body, of); ok {
			return l.LengthOf(p, b.Values[0])
		}
	case compare.Measures:
		if x, ok := at(p.Measures, of); ok {
			return l.LengthOf(p, x.Values[0])
		}
	case compare.Yarns:
		if y, ok := at(p.Yarns, of); ok {
			return l.YarnKind(p, y)
		}
	case compare.Amounts:
		if y, ok := at(p.Yarns, of); ok && len(y.Amount) > 0 {
			return l.AmountOf(y.Amount[0])
		}
	case compare.Fibres:
		return l.Contents(p)
	case compare.Gauges:
		if g, ok := at(p.Gauges, of); ok {
			return l.GaugeOf(p, g)
		}
	case compare.Hooks:
		return l.HooksOf(p)
	case compare.Notions:
		return l.NotionsOf(p)
	case compare.Texts:
		return m.text(c, p, of)
	case compare.Stitches:
		if o, ok := at(p.Own, of); ok {
			return l.SpecialOf(p, o.ID)
		}
	case compare.Charts:
		return m.chart(c, p, of)
	case compare.Heads:
		return l.PartNote(p, p.Parts[of[0]])
	case compare.Cautions:
		if k, ok := at(p.Cautions, of); ok {
			return l.Caution(k)
		}
	}
	return nil
}

// inAll writes a figure of all sizes as the pages do; nil for what has no list.
func (m *maker) inAll(c compare.Change, p *plan.Pattern, new bool) rich.Text {
	s := c.Sites[0]
	in, of := m.r.Sizes[s.Size].Was, s.Old
	if new {
		in, of = m.r.Sizes[s.Size].Is, s.New
	}
	switch c.Topic {
	case compare.Body:
		if b, ok := at(in.Body, of); ok {
			for _, full := range p.Body {
				if full.Name == b.Name {
					return m.l.LengthsOf(p, full.Values)
				}
			}
		}
	case compare.Measures:
		if x, ok := at(in.Measures, of); ok {
			for _, full := range p.Measures {
				if full.Name == x.Name {
					return m.l.LengthsOf(p, full.Values)
				}
			}
		}
	case compare.Amounts:
		if y, ok := at(in.Yarns, of); ok {
			for _, full := range p.Yarns {
				if full.Name == y.Name && len(full.Amount) > 0 {
					return m.l.AmountsOf(p, full.Amount)
				}
			}
		}
	}
	return nil
}

// text writes a text of the designer.
func (m *maker) text(c compare.Change, p *plan.Pattern, of []int) rich.Text {
	prose := map[string]plan.Prose{"intro": p.Intro, "care": p.Care, "licence": p.Licence}
	t, named := prose[c.Name]
	if !named {
		t, _ = at(p.Notes, of)
	}
	var out rich.Text
	for i, b := range m.l.Prose(p, t) {
		if i > 0 {
			out = append(out, rich.Run{Text: " "})
		}
		out = append(out, b.Text...)
	}
	return out
}

// mostRows is how many rows of a chart are written out.
const mostRows = 6

// chart writes the rows of a chart that have other cells, from the left as it shows them; of one that came or went its size.
func (m *maker) chart(c compare.Change, p *plan.Pattern, of []int) rich.Text {
	k, ok := at(p.Charts, of)
	if !ok {
		return nil
	}
	s := c.Sites[0]
	was, is := m.both(s)
	old, before := at(was.Charts, s.Old)
	now, after := at(is.Charts, s.New)
	rows := []int{}
	if before && after {
		rows = m.r.ChartRows(s, old, now)
	}
	if len(rows) == 0 || len(rows) > mostRows || width(old) != width(now) || len(old.Rows) != len(now.Rows) {
		text := fmt.Sprintf("%d × %d", width(k), len(k.Rows))
		if len(rows) > 0 {
			text += ". " + m.l.Say(words.ChartRowsHead) + strings.Trim(strings.ReplaceAll(fmt.Sprint(" ", rows), " [", " "), "]")
		}
		return rich.T(text)
	}
	var lines []string
	for _, n := range rows {
		lines = append(lines, fmt.Sprintf("%s: %s.", m.l.Numbered(&plan.Part{Style: plan.Rows}, n, n), m.cells(p, k, n)))
	}
	return rich.T(strings.Join(lines, " "))
}

// cells writes a row of a chart: 2 fog, 1 foam; of a mesh its open and filled squares as signs.
func (m *maker) cells(p *plan.Pattern, k plan.Chart, n int) string {
	var out []string
	row := k.Rows[n-1]
	for i := 0; i < len(row); {
		e := i
		for e < len(row) && row[e] == row[i] {
			e++
		}
		name := [...]string{"·", "x"}[min(max(row[i], 0), 1)]
		if k.Mesh.Behind == 0 {
			name = m.l.YarnName(p.Yarns[row[i]])
		}
		out = append(out, fmt.Sprintf("%d %s", e-i, name))
		i = e
	}
	return strings.Join(out, ", ")
}

func width(k plan.Chart) int {
	most := 0
	for _, row := range k.Rows {
		most = max(most, len(row))
	}
	return most
}

// finish writes a step of the finishing.
func (m *maker) finish(c compare.Change) Entry {
	e := Entry{Where: m.l.Say(words.FinishingHead)}
	say := func(p *plan.Pattern, of []int) rich.Text {
		if f, ok := at(p.Finish, of); ok {
			return m.l.Finishing(p, f)
		}
		return nil
	}
	e.Items = m.grouped(c, func(s compare.Site) (old, new rich.Text) {
		was, is := m.both(s)
		return say(was, s.Old), say(is, s.New)
	})
	old, new := say(m.r.Old, c.Old), say(m.r.New, c.New)
	if len(e.Items) > mostItems {
		e.Items = []Item{m.in(sitesOf(c), Item{Old: old, New: new})}
	}
	e.Page = m.find(old, new)
	e.short = m.shortOf(e)
	return e
}

// soughtIn is the text by which something is found on the pages.
func (m *maker) soughtIn(c compare.Change, p *plan.Pattern, new bool) rich.Text {
	l := m.l
	pick := func(s compare.Site) []int {
		if new {
			return s.New
		}
		return s.Old
	}
	of := pick(c.Sites[0])
	for _, s := range c.Sites {
		if len(of) == 0 {
			of = pick(s)
		}
	}
	if len(of) == 0 {
		return nil
	}
	in := m.r.Sizes[c.Sites[0].Size].Was
	if new {
		in = m.r.Sizes[c.Sites[0].Size].Is
	}
	first := func(t rich.Text) rich.Text {
		if r := []rune(t.String()); len(r) > 40 {
			return rich.T(string(r[:40]))
		}
		return t
	}
	switch c.Topic {
	case compare.Ages, compare.Sizes:
		return rich.T(l.Say(words.SizesHead))
	case compare.Body:
		return rich.T(l.BodyName(c.Name))
	case compare.Measures:
		if x, ok := at(in.Measures, of); ok {
			return rich.T(l.MeasureName(x))
		}
	case compare.Yarns, compare.Amounts:
		if y, ok := at(in.Yarns, of); ok {
			name := []rune(l.YarnName(y))
			return rich.T(strings.ToUpper(string(name[:1])) + string(name[1:]))
		}
	case compare.Heads:
		i := c.Part.Old
		if new {
			i = c.Part.New
		}
		return first(l.PartNote(p, p.Parts[i]))
	case compare.Charts:
		return rich.T(l.ChartTitle(in, of[0]))
	case compare.Gauges, compare.Hooks, compare.Notions:
		return rich.T(m.where(c))
	}
	return first(m.said(c, in, of))
}
