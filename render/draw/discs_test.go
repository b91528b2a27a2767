package draw

import (
	"math"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// discOf is a disc of so many rounds that begins with so many stitches and gets as many more in every round, at a gauge of
// stitches and rows on 10 cm.
func discOf(begin, rounds int, sts, rows float64, id stitch.ID) *plan.Pattern {
	m := make1("disc", "decor")
	disc := m.part("disc", true, plan.StartRing)
	for k := range rounds {
		disc.row(begin*(k+1), 10/rows, id)
		disc.last().Width = cmLength(float64(begin*(k+1)) * 10 / sts)
	}
	m.p.Measures = []plan.Measure{{Name: "across", Letter: "A", Values: plan.Lengths{cmLength(2 * float64(rounds) * 10 / rows)},
		Of: []plan.MeasuredOn{{Kind: plan.Across, Part: disc.index}}}}
	return m.p
}

// A flat disc is as wide as its rounds are high, twice: plane geometry. And at published gauges, with the usual number of stitches
// to begin with, the way round the disc that is drawn is the length of its last round, within one and a half stitches for each
// round: the allowance of the project's geometry facts, section 1 (arithmetic on read figures). Gauges of 4 inches are taken as 10 cm.
func TestFlatDiscs(t *testing.T) {
	const rounds, allowed = 9, 1.5
	for _, c := range []struct {
		source    string // of the gauge; the starts are those of sources S75 to S78, read
		id        stitch.ID
		begin     int
		sts, rows float64
	}{
		{"S11: 16 sc by 20 rows", stitch.SC, 6, 16, 20},
		{"S100: 14 sc by 16 rows", stitch.SC, 6, 14, 16},
		{"S11: 13 sc by 14 rows", stitch.SC, 6, 13, 14},
		{"S105: 13 hdc by 9 rows", stitch.HDC, 8, 13, 9},
		{"S11: 13 dc by 8 rows", stitch.DC, 10, 13, 8},
		{"S104: 18 dc by 10 rows", stitch.DC, 12, 18, 10},
	} {
		p := discOf(c.begin, rounds, c.sts, c.rows, c.id)
		pt := only(t, laid(t, p), "disc")
		if !pt.rings {
			t.Errorf("%s: the disc is not drawn from above", c.source)
			continue
		}
		for k := 1; k <= rounds; k++ {
			radius := pt.lines[k].bounds().width() / 2
			about(t, c.source+": the radius", radius, float64(k)*10/c.rows)
			round := 2 * math.Pi * radius
			worked := float64(c.begin*k) * 10 / c.sts
			if off := math.Abs(round-worked) / (10 / c.sts); off > allowed*float64(k) {
				t.Errorf("%s: round %d is %.1f cm long and drawn %.1f cm", c.source, k, worked, round)
			}
		}
		if got := lines(t, p)["A"]; math.Abs(got-2*rounds*10/c.rows) > 0.01 {
			t.Errorf("%s: the way across is drawn %.2f cm long", c.source, got)
		}
	}
}

func (c curve) bounds() box {
	var b box
	for _, p := range c.pts {
		b.add(p)
	}
	return b
}

// What is measured across a figure with six corners is the way from side to side.
func TestAcrossAHexagon(t *testing.T) {
	p := discOf(6, 5, 10, 10, stitch.SC)
	for k := range 5 {
		n := plan.Nums{k + 1}
		p.Parts[0].Steps = append(p.Parts[0].Steps, &plan.Row{First: n, Last: n, Times: plan.Nums{1},
			Counts: []plan.Count{{Kind: plan.CountIn, Label: "corner", N: plan.Nums{6}}}})
	}
	if pt := only(t, laid(t, p), "disc"); len(pt.lines[5].pts) != 6 {
		t.Fatalf("the figure has %d corners", len(pt.lines[5].pts))
	}
	about(t, "the way across", lines(t, p)["A"], 10)
}

// A tube is drawn half as wide as its stitches are over the gauge: in every source with a gauge and every size, wherever a round of
// one stitch is joined to something or ends the tube. The gauge is read from the source, not from the rows.
func TestTubesAreStitchesOverGauge(t *testing.T) {
	looked := 0
	for name, p := range sources(t) {
		for z := range p.Sizes {
			p.Shown = z
			if mosaicOf(p) != nil {
				continue
			}
			for _, gr := range laid(t, p).groups {
				for _, pt := range gr.patches {
					last := len(pt.pc.rows) - 1
					row := p.Parts[pt.pc.part].Worked[z][pt.pc.first+last] // a line is exact where the piece ends
					wide, ok := overGauge(p, row)
					if !ok || !pt.pc.closed || pt.pc.folded || pt.rings || pt.forks[0] || pt.forks[1] || pt.tips[0] != nil || pt.tips[1] != nil {
						continue
					}
					looked++
					if got := 2 * pt.widthAt(last+1); math.Abs(got-wide) > 0.002*wide {
						t.Errorf("%s: %s ends %.2f cm around, and is drawn %.2f", name, p.Parts[pt.pc.part].Name, wide, got)
					}
				}
			}
		}
	}
	if looked < 20 {
		t.Errorf("only %d tubes were looked at", looked)
	}
}

// overGauge is how long a round of one stitch is by the gauge of that stitch, where the source has but one for it.
func overGauge(p *plan.Pattern, row plan.RowFact) (float64, bool) {
	var only stitch.ID
	for form := range row.ByForm.All() {
		if only != "" && form.ID != only {
			return 0, false
		}
		only = form.ID
	}
	found, n := 0.0, 0
	for _, g := range p.Gauges {
		if g.Stitch == only && g.Pattern == "" {
			found, n = float64(row.Stitches+row.Chains)*g.Over.Cm()*1000/float64(g.Sts), n+1
		}
	}
	return found, n == 1
}
