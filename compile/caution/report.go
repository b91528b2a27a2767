package caution

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// childBelow is the age in months from which no rule holds: a wearer of 17 is beyond the last of them.
const childBelow = 204

// findings reports the rules that are crossed: one diagnostic for each code and thing, whichever rules are behind it.
func (ev *evaluation) findings() diag.List {
	var out diag.List
	done := make([]bool, len(ev.crossed))
	for i, c := range ev.crossed {
		if done[i] {
			continue
		}
		var same []crossing
		for j := i; j < len(ev.crossed); j++ {
			o := ev.crossed[j]
			if o.rule.code == c.rule.code && o.thing.element == c.thing.element && o.thing.index == c.thing.index {
				same, done[j] = append(same, o), true
			}
		}
		out.Add(ev.finding(same))
	}
	return out
}

// finding words the rules of one code that one thing crosses.
func (ev *evaluation) finding(hits []crossing) diag.Diagnostic {
	limit := map[int]plan.Length{} // the strictest limit that is crossed in each size
	var sources []string
	for _, h := range hits {
		for _, i := range h.sizes {
			if l, ok := limit[i]; !ok || h.rule.Limit < l {
				limit[i] = h.rule.Limit
			}
		}
		if h.rule.Standard != "" && !slices.Contains(sources, h.rule.Standard) {
			sources = append(sources, h.rule.Standard)
		}
	}
	var sizes []int
	for i := range limit {
		sizes = append(sizes, i)
	}
	slices.Sort(sizes)
	d := diag.Diagnostic{Code: hits[0].rule.code, Span: hits[0].thing.at, Sizes: ev.names(sizes),
		Args: diag.Args{"source": sources, "rule": hits[0].rule.ID}}
	switch hits[0].rule.measure {
	case freeEnd:
		c := ev.facts.Cords[hits[0].thing.index]
		d.Args["found"] = ev.perSize(sizes, func(i int) plan.Length { l, _, _ := c.free(i); return l })
		d.Args["limit"] = ev.perSize(sizes, func(i int) plan.Length { return limit[i] })
		d.Args["largest"] = ev.perSize(sizes, func(i int) plan.Length { return c.longest(i, limit[i]) })
	case opening:
		d.Span = ev.facts.GapAt
		d.Args["found"] = ev.perSize(sizes, func(i int) plan.Length { return at(ev.facts.Gap, i) })
		d.Args["limit"] = ev.perSize(sizes, func(i int) plan.Length { return limit[i] })
	}
	return d
}

// questions asks for what is missing: each thing once, and nothing that only matters once another is known.
func (ev *evaluation) questions() diag.List {
	var out diag.List
	if d, ok := ev.kindQuestion(); ok {
		return append(out, d)
	}
	var ages []int
	asked := map[lack]map[int]bool{lackZone: {}, lackFree: {}}
	for _, m := range ev.lacking {
		switch m.lack {
		case lackAge:
			if !slices.Contains(ages, m.size) {
				ages = append(ages, m.size)
			}
		case lackZone, lackFree:
			if m.thing.element == cord { // of elastic the caution prints, and nothing is asked
				asked[m.lack][m.thing.index] = true
			}
		}
	}
	if slices.Sort(ages); len(ages) > 0 {
		out.Add(diag.Diagnostic{Code: "OV902", Span: ev.facts.SizesAt, Sizes: ev.names(ages)})
	}
	for i, c := range ev.facts.Cords {
		switch {
		case asked[lackZone][i]:
			out.Add(diag.Diagnostic{Code: "OV903", Span: c.At})
		case asked[lackFree][i]:
			out.Add(diag.Diagnostic{Code: "OV904", Span: c.At})
		}
	}
	return out
}

// kindQuestion asks what is made, if a rule waits for it and there is something that can do harm or a child it is for; or
// says that the word for it is not known.
func (ev *evaluation) kindQuestion() (diag.Diagnostic, bool) {
	if ev.class != "" {
		return diag.Diagnostic{}, false
	}
	if ev.facts.Kind != "" {
		known := ev.facts.Words
		if known == nil {
			known = words
		}
		d := diag.Diagnostic{Code: "OV905", Span: ev.facts.KindAt, Help: "none",
			Args: diag.Args{"name": ev.facts.Kind, "names": known}}
		if near := lang.Near(ev.facts.Kind, known); len(near) > 0 {
			d.Help, d.Args["near"] = "near", near
		}
		return d, true
	}
	child := slices.ContainsFunc(ev.facts.AgeMonths, func(a int) bool { return a >= 0 && a < childBelow })
	waits := slices.ContainsFunc(ev.lacking, func(m missing) bool {
		return m.lack == lackKind && (m.thing.element != piece || child)
	})
	return diag.Diagnostic{Code: "OV901", Span: ev.facts.KindAt}, waits
}

// names are the names of some sizes, nil if they are all.
func (ev *evaluation) names(sizes []int) []string {
	if len(sizes) == len(ev.facts.SizeNames) {
		return nil
	}
	var out []string
	for _, i := range sizes {
		out = append(out, ev.facts.SizeNames[i])
	}
	return out
}

func (ev *evaluation) perSize(sizes []int, value func(i int) plan.Length) diag.PerSize {
	p := diag.PerSize{All: len(sizes) == len(ev.facts.SizeNames)}
	for _, i := range sizes {
		p.Names, p.Values = append(p.Names, ev.facts.SizeNames[i]), append(p.Values, cm(value(i)))
	}
	return p
}

// cm writes a length in centimetres to a tenth of a millimetre; the printer puts in the decimal sign of the language.
func cm(l plan.Length) string {
	text := strconv.FormatFloat(l.Cm(), 'f', 2, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " cm"
}
