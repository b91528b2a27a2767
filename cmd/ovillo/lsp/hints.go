package lsp

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

func itoa(n int) string { return strconv.Itoa(n) }

// hints shows, behind each row that does not say its count, the count after its last row. Where the count is one that the source
// could say, an editor can write it there.
func (q *query) hints() (any, *failure) {
	hints := []InlayHint{}
	k := q.pattern()
	if k == nil {
		return hints, nil
	}
	asked := q.text.span(q.params.Range)
	for _, r := range sourceRows(q.parse().tree.Body) {
		if r.counted || !q.mine(r.Head) || r.Head.Start > asked.End || r.Head.End < asked.Start {
			continue
		}
		if h, ok := q.hint(k, r); ok {
			hints = append(hints, h)
		}
	}
	return hints, nil
}

// hint is the count of one row. A row that several parts have is counted in its own; the others are named if theirs differs.
func (q *query) hint(k *known, r sourceRow) (InlayHint, bool) {
	all := k.rowsAt(r.Head.Start)
	if len(all) == 0 {
		return InlayHint{}, false
	}
	mine := all[0]
	for _, w := range all {
		if w.part.Name == r.part {
			mine = w
		}
	}
	label, ok := q.countLabel(mine, r.again)
	if !ok {
		return InlayHint{}, false
	}
	alike, sayable := true, true
	var tip []string
	for _, w := range all {
		other, _ := q.countLabel(w, r.again)
		alike = alike && other == label
		tip = append(tip, w.part.Name+" "+other)
		sayable = sayable && (r.only || w.last(stitches).Everywhere()) && (!r.again || w.steady())
	}
	h := InlayHint{Position: q.text.position(int(r.Head.End)), Label: label, PaddingLeft: true}
	if !alike {
		h.Tooltip = &Markup{"plaintext", strings.Join(tip, "\n")}
	} else if k.fresh && sayable {
		h.TextEdits = []TextEdit{{q.text.rangeOf(source.Span{Start: r.Head.End, End: r.Head.End}), " " + label}}
	}
	return h, true
}

// countLabel is the count after the last row, as the source would say it: = 64 (72), or = 90 sts, 30 spaces. Of a row that is worked in turn
// with others it is that of its first time and of its last: 98 → 44.
func (q *query) countLabel(w *worked, again bool) (string, bool) {
	last, ok := q.count(w.last(stitches), w.last(spaces))
	if !ok {
		return "", false
	}
	if again && !w.steady() {
		first, _ := q.count(w.first(stitches), w.first(spaces))
		return first + " → " + last, true
	}
	return "= " + last, true
}

func (q *query) count(sts, sps plan.Nums) (string, bool) {
	here := func(n int) bool { return n != plan.Absent }
	if !slices.ContainsFunc(sts, here) {
		return "", false
	}
	label := numbers(sts)
	if slices.ContainsFunc(sps, func(n int) bool { return n > 0 }) {
		label += " sts, " + numbers(sps) + " spaces"
	}
	if code := q.parse().tree.Coder(); code != nil {
		return code(label), true
	}
	return label, true
}
