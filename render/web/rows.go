package web

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/draw"
	"ovillo/render/rich"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// parts are the parts with their rows, each behind what is done before it.
func (v *view) parts() {
	v.drawing = map[string]bool{}
	for i := range v.p.Parts {
		v.steps(words.AssemblyHead, fmt.Sprint("assembly-", i), v.doneBefore(i+1))
		v.part(i)
	}
}

func (v *view) finishing() { v.steps(words.FinishingHead, "finishing", v.doneBefore(0)) }

// chapter is the head of a part or of steps, under its number.
func (v *view) chapter(s *section, title string) {
	v.number++
	s.add("h", el("h2", el("span", t(strconv.Itoa(v.number))).class("number"), t(" "+title)))
}

// rowList is the list that holds rows.
func rowList(kids []*node) *node { return el("ol", kids...).class("rows") }

func (v *view) part(n int) {
	part := v.p.Parts[n]
	s := v.section(fmt.Sprint("part-", n), "part")
	v.known = map[string]bool{}
	v.chapter(s, v.l.PartTitle(v.p, n))
	note := el("div", para(v.l.PartNote(v.p, part))).class("partnote")
	if here := v.here(n); here != nil {
		note.add(v.picture(here))
	}
	s.add("note", note)
	if start := v.l.Start(v.p, part); len(start.Body) > 0 {
		s.group("rows", rowList).put("start", v.row(part.Name+" start", start, 1))
	}
	for k, step := range part.Steps {
		id := k
		if k < len(v.step[n]) {
			id = v.step[n][k]
		}
		key := fmt.Sprint("step", id)
		v.grids(s, step)
		s.group("rows", rowList).put(key, v.row(part.Name+" "+strconv.Itoa(id), v.l.Step(v.p, part, step), ticks(step)))
		v.stitchCharts(s, n, step)
		if _, ok := step.(*plan.Grid); ok {
			if d := drawn(draw.Motifs(v.p, n, motifW, motifH, v.langs...), nil); d != nil {
				s.add("motifs", v.figure(d, true, t(v.l.SayWith(words.MotifCaption, v.drawnSize(v.p)))))
			}
		}
	}
	v.stitchCharts(s, n, nil)
}

// here is the drawing of the piece in which a part is marked; nil where there is but one part.
func (v *view) here(n int) *scene.Scene {
	if len(v.p.Parts) == 1 {
		return nil
	}
	if *v.small == nil {
		*v.small = draw.SmallPieceOf(v.p, hereW, hereH)
	}
	return drawn((*v.small).Here(n, v.langs...), nil)
}

// ticks is how many rows a step is, where that is one number in every size; 0 where there is nothing to tick.
func ticks(step plan.Step) int {
	count := func(first, last plan.Nums) int {
		n := make(plan.Nums, len(first))
		for z := range n {
			if n[z] = plan.Absent; first[z] != plan.Absent && last[z] != plan.Absent {
				n[z] = last[z] - first[z] + 1
			}
		}
		if same, ok := n.Same(); ok && same > 1 {
			return same
		}
		return 1
	}
	switch st := step.(type) {
	case *plan.Row:
		return count(st.First, st.Last)
	case *plan.Block:
		return count(st.First, st.Last)
	case *plan.JoinRound:
		if n, ok := st.Motifs.Same(); ok && n > 1 {
			return n
		}
	case *plan.NoteStep, *plan.Counted, *plan.Grid:
		return 0
	}
	return 1
}

// row is a step as an item of a list: its box and label, what is done, what it comes to.
func (v *view) row(key string, st words.StepText, n int) *node {
	li := el("li").class("row")
	if len(st.Only) > 0 {
		li.add(el("p", runs(st.Only)...).class("only"))
	}
	label := slices.Clone(st.Label)
	slots := st.Slots
	if slots != nil && v.one {
		label = append(label, rich.Run{Text: "\u00A0" + slots[0]})
		slots = nil
	}
	head := el("div").class("head")
	name := el("span", runs(label)...).class("label")
	if n > 0 {
		box := el("input").with("type", "checkbox")
		if len(label) == 0 {
			box.with("aria-label", shortened(st.Body.String()))
			li.addClass("bare")
		}
		head.add(el("label", box, name).class("tick"))
		li.with("data-k", key)
		if n > 1 {
			li.with("data-n", strconv.Itoa(n))
		}
	} else {
		head.add(name)
	}
	if slots != nil {
		head.add(v.figures(slots))
	}
	li.add(head)
	if len(st.Body) > 0 {
		li.add(el("p", runsKnowing(st.Body, v.known)...).class("do"))
	}
	return li.add(v.count(st.Count))
}

// shortened is the beginning of a text, for a name.
func shortened(s string) string {
	const most = 60
	if r := []rune(s); len(r) > most {
		return strings.TrimSpace(string(r[:most])) + "…"
	}
	return s
}

// count is what a row comes to.
func (v *view) count(c *words.CountText) *node {
	switch {
	case c == nil:
		return nil
	case c.Slots == nil:
		return el("p", runsKnowing(c.Line, v.known)...).class("count")
	case v.one:
		return el("p", runsKnowing(append(rich.T(c.Slots[0]+"\u00A0"), c.Unit...), v.known)...).class("count")
	}
	return el("p", el("span", runsKnowing(c.Unit, v.known)...).class("unit"), t(" "), v.figures(c.Slots)).class("count")
}

// figures are one for each size, each with the name of its size.
func (v *view) figures(slots []string) *node {
	n := el("span").class("figures")
	for i, f := range slots {
		figure := t(f)
		if i%2 == 1 {
			figure = el("strong", figure)
		}
		n.add(el("span", el("small", t(v.l.SizeName(v.p.Sizes[i]))), t(" "), figure), t(" "))
	}
	return n
}

// doneBefore lists the steps that belong before the part of a number; before none, 0, they are the last.
func (v *view) doneBefore(part int) []int {
	var list []int
	for i, f := range v.p.Finish {
		if f.Before == part {
			list = append(list, i)
		}
	}
	return list
}

// steps are steps of the finishing, each with the cautions that belong to it.
func (v *view) steps(title words.Key, key string, list []int) {
	if len(list) == 0 {
		return
	}
	s := v.section(key, "part")
	v.known = map[string]bool{}
	v.chapter(s, v.l.Say(title))
	for i, n := range list {
		st := words.StepText{Label: rich.T(strconv.Itoa(i + 1)), Body: v.l.Finishing(v.p, v.p.Finish[n])}
		li := v.row(key+" "+strconv.Itoa(i), st, 1)
		want := func(c plan.Caution) bool { return ofSafety(c) && c.Step == n }
		if groups := v.l.Cautions(v.p, want); len(groups) > 0 {
			box := el("div", el("p", el("strong", t(v.l.CautionsHead(countOf(groups)))))).class("cautions")
			li.add(box.add(v.cautionLists(groups)...))
		}
		s.group("rows", rowList).put(fmt.Sprint("step", i), li)
	}
}

// grids are the grids that a step is the first to be worked from.
func (v *view) grids(s *section, step plan.Step) {
	for _, r := range plan.RowsOf(step) {
		if r.Chart == nil {
			continue
		}
		i := r.Chart.Chart
		key := "grid " + v.p.Charts[i].Name
		if v.drawing[key] {
			continue
		}
		v.drawing[key] = true
		v.chart(s, key, draw.Grid(v.p, i, chartW, gridH, v.langs...), draw.GridKey(v.p, i, v.langs...), "", rich.T(v.l.ChartTitle(v.p, i)))
	}
}

// stitchCharts are the charts in symbols of part n whose last row a step works; without a step those that are left.
func (v *view) stitchCharts(s *section, n int, step plan.Step) {
	for i, c := range v.p.Drawn {
		key := "symbols " + c.Name
		if c.Part != n || v.drawing[key] || step != nil && !c.EndsIn(step, v.p.Shown) {
			continue
		}
		v.drawing[key] = true
		v.chart(s, key, draw.StitchChart(v.p, i, chartW, stitchesH, v.langs...), draw.StitchKey(v.p, i, v.langs...),
			v.l.Drawing().KeyNote, v.l.StitchCaption(v.p, i))
	}
}

// chart is the sheets of a chart, and below them its key with what is said of all of it.
func (v *view) chart(s *section, key string, sheets []*scene.Scene, items []draw.KeyItem, note string, caption rich.Text) {
	for k, d := range sheets {
		s.add(fmt.Sprint(key, k), v.figure(d, true, runs(caption)...))
	}
	if len(sheets) == 0 || len(items) == 0 {
		return
	}
	if len(sheets) > 1 {
		items = append(slices.Clone(items), draw.SharedKey(v.langs...))
	}
	list := el("ul").class("key")
	for _, it := range items {
		list.add(el("li", el("span", v.picture(&scene.Scene{W: it.Symbol.W, H: it.Symbol.H, Items: it.Symbol.Items})).class("sign"), el("span", t(it.Says[v.l.Tag()]))))
	}
	if note != "" {
		s.add(key+" note", el("p", t(note)).class("small"))
	}
	s.add(key+" key", list)
}
