package draw

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// hat has a flat crown from a ring, an even side and a ribbed brim that grows on its edge.
func hat() *plan.Pattern {
	m := make1("hat", "hat")
	crown := m.part("crown", true, plan.StartRing).dc(12, 24, 36, 48, 60, 72, 84, 96).even(11)
	brim := m.part("brim", true, plan.StartFrom).with(1).rib(92, 5)
	brim.onEdge(crown)
	m.measure("head", around(crown, 12))
	m.measure("height", high(crown), high(brim))
	m.measure("brim", around(brim, brim.rows()))
	m.measure("depth", high(brim))
	return m.p
}

// pullover is a raglan worked from the neck down: yoke and body are one part.
func pullover() *plan.Pattern {
	m := make1("pullover", "pullover")
	band := m.part("neckband", true, plan.StartJoined).with(1).rib(88, 3)
	body := m.part("body", true, plan.StartFrom).onFoundation(band).dc(88).slope(232, 18)
	body.Steps = []plan.Step{&plan.CountOff{Items: offItems(30, 1, 12, 1, 30, 1, 12, 1)}}
	body.dc(148).even(30)
	divide := &body.Worked[0][19]
	divide.Stitches, divide.Spaces, divide.Chains, divide.Passed = 136, 2, 12, 96
	body.with(1).rib(148, 5)
	m.measure("neck", around(body, 1))
	m.measure("chest", around(body, 21))
	for i, name := range []string{"right_sleeve", "left_sleeve"} {
		s := m.part(name, true, plan.StartFrom).dc(54).even(3).slope(40, 32).with(1).rib(40, 6)
		s.on(plan.RefSpace, body, 20, 2+2*i, 2+2*i, 6)
		s.on(plan.RefSkipped, body, 19, 69+116*i-48, 69+116*i-1, 232)
		if i == 0 {
			m.measure("upper_arm", around(s, 1))
			m.measure("sleeve", high(s))
			m.measure("cuff", around(s, s.rows()))
		}
	}
	m.measure("length", high(band), high(body))
	return m.p
}

func offItems(counts ...int) []plan.OffItem {
	var items []plan.OffItem
	for _, n := range counts {
		items = append(items, plan.OffItem{N: plan.Nums{n}, Marker: -1})
	}
	return items
}

// roundYoke has its yoke as one part, and a body and two sleeves on runs of its edge.
func roundYoke() *plan.Pattern {
	m := make1("round_yoke", "pullover")
	yoke := m.part("yoke", true, plan.StartJoined).with(1).rib(80, 4).with(0).dc(80, 80)
	for n := 96; n <= 192; n += 16 {
		yoke.with(n/16%3).dc(n, n).with(0).dc(n)
	}
	last := yoke.rows()
	body := m.part("body", true, plan.StartFrom).dc(124).even(28).with(1).rib(124, 5)
	body.on(plan.RefEdge, yoke, last, 1, 56, 192).on(plan.RefEdge, yoke, last, 97, 152, 192)
	for i, name := range []string{"right_sleeve", "left_sleeve"} {
		s := m.part(name, true, plan.StartFrom).dc(46).slope(36, 30).with(1).rib(36, 5)
		s.on(plan.RefSection, yoke, last, 57+96*i, 96+96*i, 192)
		if i == 0 {
			m.measure("sleeve", high(s))
		}
	}
	m.measure("body", high(body))
	m.measure("yoke", high(yoke))
	m.measure("chest", around(body, 2))
	return m.p
}

// blanket is a flat ripple in stripes.
func blanket() *plan.Pattern {
	m := make1("blanket", "blanket")
	b := m.part("blanket", false, plan.StartChain)
	for k := range 60 {
		yarn := 0
		if k%10 > 6 {
			yarn = 1
		}
		b.with(yarn).dc(168)
		b.last().ByForm = plan.Tally[stitch.Form]{{Of: stitch.Form{ID: stitch.DC, Together: 1}, N: 156}, {Of: stitch.Form{ID: stitch.DC, Together: 3}, N: 12}}
	}
	m.measure("width", widthOf(b, 1))
	m.measure("length", high(b))
	return m.p
}

// jacket is flat pieces: back, fronts whose neck is shaped at one edge, and a sleeve.
func jacket() *plan.Pattern {
	m := make1("jacket", "garment")
	back := m.part("back", false, plan.StartChain).with(1).rib(80, 4).with(0).dc(80).even(25).slope(68, 4).even(14)
	front := halfFront(m, "right_front", true)
	left := halfFront(m, "left_front", false)
	sleeve := m.part("sleeve", false, plan.StartChain).with(1).rib(36, 5).with(0).dc(38).slope(60, 30).slope(10, 12)
	sleeve.Make = 2
	m.measure("back", widthOf(back, 10))
	m.measure("length", high(back))
	m.measure("front", widthOf(front, 10))
	m.measure("left", widthOf(left, 10))
	m.measure("sleeve", high(sleeve))
	m.measure("upper_arm", widthOf(sleeve, 35))
	return m.p
}

// halfFront is a front whose armhole is shaped at one edge and whose neck is at the other; it begins at the middle of
// the body on right-side rows if it is the right one.
func halfFront(m *maker, name string, right bool) *work {
	w := m.part(name, false, plan.StartChain).dc(40).even(25)
	for k := range 4 {
		w.narrow(1, right == (w.rows()%2 == 1))
		if k > 1 {
			w.even(1)
		}
	}
	w.even(2)
	for range 8 {
		w.narrow(2, right == (w.rows()%2 == 0))
	}
	return w
}

// mitten is worked from the cuff up and closed at the tip, with a thumb on an opening.
func mitten() *plan.Pattern {
	m := make1("mitten", "mittens")
	hand := m.part("hand", true, plan.StartJoined).rib(36, 6).dc(36).even(6)
	hand.dc(36).last().Passed = 8
	hand.even(8).slope(4, 4)
	thumb := m.part("thumb", true, plan.StartFrom).dc(16).even(4).dc(8, 4)
	thumb.on(plan.RefSkipped, hand, 13, 2, 9, 36)
	m.measure("hand", around(hand, 10))
	m.measure("length", high(hand))
	m.measure("thumb", high(thumb))
	return m.p
}

// upward is a pullover from the hem: body and sleeves are brought together in a yoke.
func upward() *plan.Pattern {
	m := make1("upward", "pullover")
	body := m.part("body", true, plan.StartJoined).with(1).rib(144, 5).with(0).dc(144).even(30)
	right := m.part("right_sleeve", true, plan.StartJoined).with(1).rib(36, 5).with(0).dc(36).slope(54, 34)
	left := m.part("left_sleeve", true, plan.StartJoined).with(1).rib(36, 5).with(0).dc(36).slope(54, 34)
	yoke := m.part("yoke", true, plan.StartFrom)
	b, r, l := body.last().Number, right.last().Number, left.last().Number
	yoke.on(plan.RefEdge, body, b, 1, 66, 144).on(plan.RefEdge, right, r, 4, 51, 54)
	yoke.on(plan.RefEdge, body, b, 73, 138, 144).on(plan.RefEdge, left, l, 4, 51, 54)
	yoke.dc(228).slope(88, 18).with(1).rib(88, 3)
	m.measure("chest", around(body, 10))
	m.measure("body", high(body))
	m.measure("sleeve", high(right))
	m.measure("yoke", high(yoke))
	return m.p
}

// skirt grows down from the foundation of its waistband and widens.
func skirt() *plan.Pattern {
	m := make1("skirt", "skirt")
	band := m.part("waistband", true, plan.StartJoined).with(1).rib(120, 5)
	s := m.part("skirt", true, plan.StartFrom).onFoundation(band).dc(120).slope(180, 30).even(5)
	m.measure("waist", around(band, 2))
	m.measure("hem", around(s, s.rows()))
	m.measure("length", high(band), high(s))
	return m.p
}

// motifs are things seen from above: a disc, an oval, and a square by its corners.
func motifs() *plan.Pattern {
	m := make1("motifs", "decor")
	disc := m.part("disc", true, plan.StartRing).dc(12, 24, 36, 48, 60, 72)
	oval := m.part("oval", true, plan.StartBothSides).dc(32, 44, 56, 68, 80)
	oval.Start.N = plan.Nums{14}
	square := m.part("square", true, plan.StartChainRing).dc(16, 32, 48, 64, 80)
	for k := range 5 {
		square.Steps = append(square.Steps, &plan.Row{First: plan.Nums{k + 1}, Last: plan.Nums{k + 1}, Times: plan.Nums{1},
			Counts: []plan.Count{{Kind: plan.CountSts, N: plan.Nums{16 * (k + 1)}}, {Kind: plan.CountIn, Label: "corner", N: plan.Nums{4}}}})
	}
	m.measure("disc", around(disc, 6))
	m.measure("oval", widthOf(oval, 5))
	m.measure("square", widthOf(square, 5))
	return m.p
}

// edged is a flat piece with rounds all round it.
func edged() *plan.Pattern {
	m := make1("edged", "blanket")
	b := m.part("middle", false, plan.StartChain).dc(100).even(39)
	edge := m.part("edging", true, plan.StartFrom).with(1).dc(360, 368, 376)
	edge.on(plan.RefEdge, b, 40, 1, 100, 100).on(plan.RefFoundation, b, 0, 1, 100, 100)
	m.measure("width", widthOf(b, 5))
	m.measure("length", high(b))
	return m.p
}

// glove has four fingers on its edge.
func glove() *plan.Pattern {
	m := make1("glove", "gloves")
	hand := m.part("hand", true, plan.StartJoined).rib(40, 6).dc(40).even(8)
	n := hand.rows()
	for i, name := range []string{"little", "ring", "middle", "index"} {
		f := m.part(name, true, plan.StartFrom).dc(12).even(5 + i%3).dc(6)
		f.on(plan.RefSection, hand, n, 1+5*i, 5+5*i, 40).on(plan.RefSection, hand, n, 36-5*i, 40-5*i, 40)
	}
	m.measure("palm", around(hand, 9))
	m.measure("hand", high(hand))
	return m.p
}

// cuffsUp is trousers worked from the cuffs: two legs that a body brings together.
func cuffsUp() *plan.Pattern {
	m := make1("cuffs_up", "trousers")
	right := m.part("right_leg", true, plan.StartJoined).with(1).rib(44, 4).with(0).dc(44).slope(60, 20).even(5)
	left := m.part("left_leg", true, plan.StartJoined).with(1).rib(44, 4).with(0).dc(44).slope(60, 20).even(5)
	body := m.part("body", true, plan.StartFrom).onEdge(right).onEdge(left).dc(116).even(16).with(1).rib(112, 4)
	m.measure("hips", around(body, 4))
	m.measure("inseam", high(left))
	m.measure("rise", high(body))
	return m.p
}
