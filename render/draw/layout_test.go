package draw

import (
	"math"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/sample"
)

func laid(t *testing.T, p *plan.Pattern) *layout {
	t.Helper()
	l, err := lie(p, courses)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// named finds the patches of a part by its name.
func (l *layout) named(name string) []*patch {
	var found []*patch
	for _, gr := range l.groups {
		for _, pt := range gr.patches {
			if l.g.p.Parts[pt.pc.part].Name == name {
				found = append(found, pt)
			}
		}
	}
	return found
}

func only(t *testing.T, l *layout, name string) *patch {
	t.Helper()
	found := l.named(name)
	if len(found) != 1 {
		t.Fatalf("%s: %d patches", name, len(found))
	}
	return found[0]
}

// What grows together hangs together, and what does not stands apart.
func TestGroups(t *testing.T) {
	for name, want := range map[string]int{"leggings": 1, "hat": 1, "pullover": 1, "blanket": 1, "roundyoke": 1, "jacket": 4,
		"mitten": 1, "upward": 1, "skirt": 1, "motifs": 3, "edged": 1, "glove": 1, "cuffsup": 1} {
		if got := len(laid(t, fixtures()[name]).groups); got != want {
			t.Errorf("%s: %d groups, want %d", name, got, want)
		}
	}
}

func near(a, b vec) bool { return a.sub(b).length() < 1e-6 }

// mirrored reports whether two outlines are mirror images.
func mirrored(a, b *patch) bool {
	x, y := a.outline(), b.outline()
	for _, p := range x {
		found := false
		for _, q := range y {
			found = found || near(vec{-p.x, p.y}, q)
		}
		if !found {
			return false
		}
	}
	return len(x) > 0
}

func TestHalvesAreSymmetric(t *testing.T) {
	for _, c := range []struct {
		p           *plan.Pattern
		left, right string
	}{
		{sample.Leggings(), "right_leg", "left_leg"}, {pullover(), "right_sleeve", "left_sleeve"},
		{roundYoke(), "right_sleeve", "left_sleeve"}, {upward(), "left_sleeve", "right_sleeve"},
		{cuffsUp(), "left_leg", "right_leg"}, {jacketTogether(), "right_front", "left_front"},
	} {
		l := laid(t, c.p)
		if a, b := only(t, l, c.left), only(t, l, c.right); !mirrored(a, b) {
			t.Errorf("%s: %s and %s are not mirror images", c.p.Name, c.left, c.right)
		}
		for _, gr := range l.groups {
			for _, pt := range gr.patches {
				if pt.side == 0 && pt.pc.lean == nil && !mirrored(pt, pt) {
					t.Errorf("%s: %s is not symmetric", c.p.Name, c.p.Parts[pt.pc.part].Name)
				}
			}
		}
	}
}

// jacketTogether is the fronts of the jacket alone.
func jacketTogether() *plan.Pattern {
	p := jacket()
	p.Parts, p.Measures = p.Parts[1:3], nil
	return p
}

// Work that grows downwards meets the wearer's right side first, which the reader sees on her left; work that grows
// upwards the other.
func TestRightAndLeft(t *testing.T) {
	for _, c := range []struct {
		p     *plan.Pattern
		first string
		side  int
	}{
		{sample.Leggings(), "right_leg", -1}, {sample.Leggings(), "left_leg", 1}, {pullover(), "right_sleeve", -1},
		{pullover(), "left_sleeve", 1}, {mitten(), "thumb", 1}, {glove(), "little", 1}, {glove(), "index", -1},
	} {
		pt := only(t, laid(t, c.p), c.first)
		if x := pt.bounds().middle().x; x*float64(c.side) <= 0 {
			t.Errorf("%s: %s lies at %.1f, want side %d", c.p.Name, c.first, x, c.side)
		}
	}
}

func TestRightAndLeftOnTheWrongSide(t *testing.T) {
	p := sample.Leggings()
	for i := range p.Parts[1].Worked {
		for k := range p.Parts[1].Worked[i] {
			p.Parts[1].Worked[i][k].Wrong = true
		}
	}
	if x := only(t, laid(t, p), "right_leg").bounds().middle().x; x < 0 {
		t.Errorf("the first leg met on the wrong side lies at %.1f, want it on the reader's right", x)
	}
}

// above reports whether one patch lies higher on the page than another.
func above(a, b *patch) bool { return a.bounds().middle().y < b.bounds().middle().y }

func TestWhichWayUp(t *testing.T) {
	for _, c := range []struct{ pattern, upper, lower string }{
		{"leggings", "waistband", "body"}, {"leggings", "body", "right_leg"}, {"hat", "crown", "brim"},
		{"mitten", "thumb", ""}, {"upward", "yoke", "body"}, {"skirt", "waistband", "skirt"}, {"glove", "index", "hand"},
		{"cuffsup", "body", "left_leg"}, {"roundyoke", "yoke", "body"},
	} {
		l := laid(t, fixtures()[c.pattern])
		lower := l.named(c.lower)
		if c.lower == "" {
			continue
		}
		if !above(only(t, l, c.upper), lower[len(lower)-1]) {
			t.Errorf("%s: %s is not above %s", c.pattern, c.upper, c.lower)
		}
	}
}

// A closed end is up, but on what stands or is worn the other way.
func TestClosedEnds(t *testing.T) {
	for kind, down := range map[string]bool{"hat": true, "": true, "bag": false, "socks": false} {
		m := make1("closed", kind)
		m.part("closed", true, plan.StartRing).dc(12, 24, 36, 48).even(20)
		if got := laid(t, m.p).groups[0].down; got != down {
			t.Errorf("%q grows down: %v, want %v", kind, got, down)
		}
	}
}

// Pieces meet: the edge that a part grows on is the edge it starts with.
func TestPiecesMeet(t *testing.T) {
	l := laid(t, sample.Leggings())
	band, body := only(t, l, "waistband"), only(t, l, "body")
	if !near(band.lines[0].first(), body.lines[0].first()) || !near(band.lines[0].last(), body.lines[0].last()) {
		t.Error("waistband and body do not share an edge")
	}
	legs := [2]*patch{only(t, l, "right_leg"), only(t, l, "left_leg")}
	crotch := legs[0].near().last()
	if !near(crotch, legs[1].near().first()) || !near(crotch, body.far().pts[1]) {
		t.Error("the legs do not meet at the crotch")
	}
	if !near(legs[0].near().first(), body.far().first()) || !near(legs[1].near().last(), body.far().last()) {
		t.Error("the legs do not start at the ends of the body's edge")
	}

	l = laid(t, pullover())
	pieces := l.named("body")
	if len(pieces) != 2 {
		t.Fatalf("yoke and body are %d pieces", len(pieces))
	}
	yoke, rest := pieces[0], pieces[1]
	sleeve := only(t, l, "right_sleeve")
	under := rest.near().first()
	if !near(yoke.far().pts[1], under) || !near(sleeve.near().last(), under) {
		t.Error("yoke, body and sleeve do not meet at the underarm")
	}
	if !near(sleeve.near().first(), yoke.far().first()) {
		t.Error("the sleeve does not reach the end of the shoulder")
	}
}

// Legs are turned out, by 7.5 degrees where nothing asks for more.
func TestLegsAreTurnedOut(t *testing.T) {
	m := make1("straight", "trousers")
	body := m.part("body", true, plan.StartJoined).dc(120).even(20)
	for i, name := range []string{"right", "left"} {
		leg := m.part(name, true, plan.StartFrom).dc(58).even(20)
		leg.on(plan.RefSection, body, 21, 60*i+2, 60*i+59, 120)
	}
	l := laid(t, m.p)
	left := only(t, l, "left")
	if got := math.Atan2(left.f.along.x, left.f.along.y); math.Abs(got-degrees(7.5)) > 1e-9 {
		t.Errorf("turned out by %.2f degrees", got*180/math.Pi)
	}
	// Narrower than half the body, they leave the bridge between them.
	gap := left.near().first().x - only(t, l, "right").near().last().x
	if want := 30 - 2*14.5*math.Cos(degrees(7.5)); math.Abs(gap-want) > 1e-6 {
		t.Errorf("the bridge is %.2f cm wide, want %.2f", gap, want)
	}
}

// The crown of a hat is as long down its middle as its rounds are high, and as wide as its last one where it ends.
func TestCrownIsRound(t *testing.T) {
	crown := only(t, laid(t, hat()), "crown")
	if crown.tips[0] == nil || crown.tips[0].rows != 8 {
		t.Fatalf("the crown is no dome of 8 rounds: %+v", crown.tips[0])
	}
	top := crown.lines[0].at(0.5)
	for k := range 9 {
		mid := crown.lines[k].pts[len(crown.lines[k].pts)/2]
		if deep := mid.y - top.y; math.Abs(deep-float64(k)) > 1e-6 && k < 8 {
			t.Errorf("round %d lies %.2f cm deep in the middle", k, deep)
		}
	}
	if got := crown.widthAt(8); math.Abs(got-24) > 1e-6 {
		t.Errorf("the crown ends %.2f cm wide, want 24", got)
	}
}

// The corners of a motif come from counts that stay the same.
func TestCorners(t *testing.T) {
	square := only(t, laid(t, motifs()), "square")
	if got := len(square.lines[5].pts); got != 4 {
		t.Errorf("the square has %d corners", got)
	}
	if b := square.bounds(); math.Abs(b.width()-10) > 1e-6 || math.Abs(b.height()-10) > 1e-6 {
		t.Errorf("the square is %.2f by %.2f", b.width(), b.height())
	}
	if got := len(only(t, laid(t, motifs()), "disc").lines[5].pts); got < 24 {
		t.Errorf("the disc has %d corners", got)
	}
}

// A front is shaped at the edge its rows say: its neck at the middle of the body, its armhole at the side.
func TestFrontsLean(t *testing.T) {
	right := only(t, laid(t, jacketTogether()), "right_front")
	left, rightEdge := right.sides()
	if got := left[0].x - left[len(left)-1].x; math.Abs(got+2) > 0.3 {
		t.Errorf("the armhole takes %.2f cm at the reader's left, want 2", -got)
	}
	if got := rightEdge[0].x - rightEdge[len(rightEdge)-1].x; math.Abs(got-8) > 0.3 {
		t.Errorf("the neck takes %.2f cm at the reader's right, want 8", got)
	}
}

// Rows that draw places together and stay as wide are a ripple.
func TestRipple(t *testing.T) {
	for _, r := range laid(t, blanket()).g.rows[0] {
		if r.waves != 12 {
			t.Fatalf("row %d has %d valleys, want 12", r.number, r.waves)
		}
	}
	for _, r := range laid(t, skirt()).g.rows[1] {
		if r.waves != 0 {
			t.Fatalf("row %d of a skirt has %d valleys", r.number, r.waves)
		}
	}
}

// The schematic shows the waves of a ripple where it begins and ends: as many valleys as are worked, between corners that are as far
// apart as without them.
func TestRippleHasWavesAtItsEdges(t *testing.T) {
	l := laid(t, blanket())
	pt := only(t, l, "blanket")
	wide, tall := pt.widthAt(0), pt.lines[60].first().sub(pt.lines[0].first()).length()
	l.trim()
	for _, k := range []int{0, 60} {
		c, valleys := pt.lines[k], 0
		for i := 1; i < len(c.pts)-1; i++ {
			if c.pts[i].y > c.pts[i-1].y && c.pts[i].y >= c.pts[i+1].y {
				valleys++
			}
		}
		if valleys != 12 {
			t.Errorf("line %d has %d valleys", k, valleys)
		}
		about(t, "the width", pt.widthAt(k), wide)
	}
	about(t, "the height", pt.lines[60].first().sub(pt.lines[0].first()).length(), tall)
	if len(pt.lines[30].pts) != 2 {
		t.Error("a row in between is bent")
	}
}

// A part may grow on a section by its name alone: the counting off tells where it lies.
func TestSectionsByName(t *testing.T) {
	m := make1("sections", "trousers")
	body := m.part("body", true, plan.StartJoined).dc(120).even(20)
	rows := plan.Nums{21}
	off := &plan.CountOff{Items: offItems(2, 56, 4, 56, 2)}
	off.Items[1].Label, off.Items[3].Label = "right", "left"
	body.Steps = []plan.Step{&plan.Row{First: plan.Nums{1}, Last: rows, Times: rows}, off}
	for _, name := range []string{"right", "left"} {
		leg := m.part(name, true, plan.StartFrom).dc(58).even(20)
		absent := plan.Nums{plan.Absent}
		leg.From = []plan.Origin{{Kind: plan.RefStitches, Part: body.index, Label: name, Row: absent, From: absent, To: absent, Of: absent}}
	}
	l := laid(t, m.p)
	if len(l.groups) != 1 {
		t.Fatalf("%d groups", len(l.groups))
	}
	if right, left := only(t, l, "right"), only(t, l, "left"); right.side != -1 || left.side != 1 || !mirrored(right, left) {
		t.Errorf("the legs lie at sides %d and %d", right.side, left.side)
	}
}

// An edging on a disc keeps its shape; a side that grows no further makes the disc the top of a hat.
func TestRoundsOnADisc(t *testing.T) {
	m := make1("doily", "decor")
	disc := m.part("disc", true, plan.StartRing).dc(12, 24, 36, 48)
	edging := m.part("edging", true, plan.StartFrom).dc(60, 72)
	edging.onEdge(disc)
	l := laid(t, m.p)
	if e := only(t, l, "edging"); !e.rings || math.Abs(e.bounds().width()-12) > 1e-6 || len(e.lines[2].pts) < 24 {
		t.Errorf("the edging is no ring of 12 cm: %.2f", e.bounds().width())
	}

	m = make1("hat", "hat")
	crown := m.part("crown", true, plan.StartRing).dc(12, 24, 36, 48)
	m.part("side", true, plan.StartFrom).dc(48).even(9).onEdge(crown)
	l = laid(t, m.p)
	if c := only(t, l, "crown"); c.rings || c.tips[0] == nil || !above(c, only(t, l, "side")) {
		t.Error("the crown is not the dome above the side")
	}
}
