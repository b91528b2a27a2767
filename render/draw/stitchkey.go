package draw

import (
	"fmt"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/chart"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// StitchKey is the key of chart i of p.Drawn in the size that is shown: each symbol in it once, the stitches from short to tall,
// then what begins, joins and lies below. That symbols differ between publishers is said once by KeyNote of the language.
func StitchKey(p *plan.Pattern, i int, langs ...*words.Language) []KeyItem {
	s := stitchesOf(p, i)
	if s == nil {
		return nil
	}
	k := &keyMaker{p: p, own: ownLetters(p), speech: speak(langs), seen: map[string]bool{}}
	var forms []stitch.Form
	begins, beginsAs, join, ring, below, many := false, map[stitch.Form]int{}, false, false, false, false
	for i := range s.Lines {
		line := &s.Lines[i]
		join = join || line.Joined
		for j := range line.Stitches {
			w := &line.Stitches[j]
			switch {
			case w.Kind == plan.WorkedRing:
				ring = true
				continue
			case w.Kind == plan.WorkedEnd:
				below = true
				continue
			case line.Base && w.Kind == plan.WorkedStitch && w.Form.ID != stitch.Chain:
				below = true
				continue
			case line.Base && w.Kind == plan.WorkedSpace:
				continue
			case w.Kind == plan.WorkedBegin:
				begins = true
				forms = append(forms, stitch.Plain(stitch.Chain))
			case w.Begin:
				beginsAs[plain(w.Form)] = max(w.Chains, 1)
				continue
			case w.Kind == plan.WorkedSpace:
				forms = append(forms, stitch.Plain(stitch.Chain))
				many = many || w.Chains > 12
			case w.Kind == plan.WorkedSlip:
				forms = append(forms, stitch.Plain(stitch.Slip))
			default:
				forms = append(forms, w.Form)
			}
			forms = append(forms, w.Rides...)
		}
	}
	for _, f := range sortedForms(forms, p) {
		k.stitch(f)
	}
	if begins {
		k.add(upright(1), func(w speech) string { return w.KeyBegin })
	}
	var as []stitch.Form
	for f := range beginsAs {
		as = append(as, f)
	}
	for _, f := range sortedForms(as, p) {
		k.add(upright(beginsAs[f]), func(w speech) string { return fmt.Sprintf(w.KeyBeginAs, w.StitchShort(p, f)) })
	}
	if join {
		k.add(func(q *pen) { q.dot(vec{}, slipWide/2*0.85) }, func(w speech) string { return w.KeyJoin })
	}
	if ring {
		k.add(func(q *pen) { q.oval(vec{}, vec{1, 0}, 2.4, 2.4, false) }, func(w speech) string { return w.KeyRing })
	}
	if below {
		k.add(func(q *pen) { q.line(straight(vec{}, vec{tickWide, 0}), lightLine) }, func(w speech) string { return w.KeyBelow })
	}
	if many {
		k.add(func(q *pen) {
			q.ink(curve{pts: []vec{{-4, 0}, {0, -1.6}, {4, 0}}, smooth: true})
			q.items = append(q.items, scene.Label{Y: -3.6, Text: "14", Height: numberEm, Face: page.Sans})
		}, func(w speech) string { return w.KeySpaces })
	}
	if n := firstCount(s); n > 0 {
		k.add(func(q *pen) {
			q.items = append(q.items, scene.Label{Text: fmt.Sprintf("(%d)", n), Height: numberEm, Face: page.Sans})
		}, func(w speech) string { return w.KeyCount })
	}
	return k.items
}

// firstCount is the first count that a chart prints, 0 if it prints none.
func firstCount(s *plan.Stitches) int {
	for i := range s.Lines {
		if line := &s.Lines[i]; s.Whole() && !line.Base && line.Number > 0 {
			return stitchCount(line)
		}
	}
	return 0
}

// plain is a form as the key has it: a stitch of an open group stands in a chart as the stitch it is.
func plain(f stitch.Form) stitch.Form {
	if f.Group == stitch.Shell || f.Group == stitch.Vee {
		f.Group, f.Of = stitch.Single, 0
	}
	f.Together = max(f.Together, 1)
	return f
}

// sortedForms lists each form once, chains and short stitches before tall ones, those of the designer's own last.
func sortedForms(forms []stitch.Form, p *plan.Pattern) []stitch.Form {
	at := func(id stitch.ID) int {
		if k := slices.IndexFunc(stitch.Table, func(k stitch.Kind) bool { return k.ID == id }); k >= 0 {
			return k
		}
		return len(stitch.Table) + slices.IndexFunc(p.Own, func(o plan.OwnStitch) bool { return o.ID == id })
	}
	var out []stitch.Form
	for _, f := range forms {
		if f = plain(f); !slices.Contains(out, f) {
			out = append(out, f)
		}
	}
	slices.SortStableFunc(out, func(a, b stitch.Form) int {
		for _, d := range [...]int{at(a.ID) - at(b.ID), int(a.Group) - int(b.Group), a.Together - b.Together, a.Of - b.Of, int(a.Post) - int(b.Post)} {
			if d != 0 {
				return d
			}
		}
		return int(a.Loop) - int(b.Loop)
	})
	return out
}

type keyMaker struct {
	p      *plan.Pattern
	own    map[stitch.ID]string
	speech map[string]speech
	seen   map[string]bool
	items  []KeyItem
}

// add adds a line of the key.
func (k *keyMaker) add(draw func(*pen), say func(speech) string) {
	q := &pen{scale: 1}
	draw(q)
	item := KeyItem{Symbol: framed(q), Says: map[string]string{}}
	for tag, w := range k.speech {
		item.Says[tag] = say(w)
	}
	k.items = append(k.items, item)
}

// stitch adds a stitch, drawn as it is in the chart.
func (k *keyMaker) stitch(f stitch.Form) {
	say := func(w speech) string { return w.StitchName(k.p, f) }
	known := true
	if _, known = stitch.Of(f.ID); known && f.Loop != stitch.ThirdLoop {
		if s, ok := Symbol(f); ok {
			item := KeyItem{Symbol: s, Says: map[string]string{}}
			for tag, w := range k.speech {
				item.Says[tag] = say(w)
			}
			k.items = append(k.items, item)
			return
		}
	}
	k.add(func(q *pen) {
		st := chart.Stitch{Head: page.Point{Y: -1.9}, Up: page.Point{Y: -1}, Room: 1.2}
		n := max(f.Together, 1)
		for i := range n {
			st.Feet = append(st.Feet, page.Point{X: 0.75 * (float64(i) - float64(n-1)/2)})
		}
		(&chartPen{symbolChart: &symbolChart{own: k.own}, pen: q, em: numberEm}).standing(f, &st)
	}, say)
}

// upright is chains that stand on one another.
func upright(n int) func(*pen) {
	return func(q *pen) {
		for i := range n {
			q.chain(vec{0, -chainWide * (float64(i) + 0.5)}, vec{0, -1}, chainWide*0.94)
		}
	}
}
