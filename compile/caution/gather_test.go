package caution

import (
	"slices"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// TestFactsOf gathers from a small pattern of trousers with a cord, a pompom, buttons in one size and a lacy round.
func TestFactsOf(t *testing.T) {
	row := plan.RowFact{Stitches: 16, Chains: 16, Spaces: 8, Width: 320 * mmm}
	p := &plan.Pattern{Kind: "trousers", Sizes: []plan.Size{{Name: "1 y", Age: 12}, {Name: "2 y", Age: -1}},
		Parts: []*plan.Part{{Name: "leg"}, {Name: "waistband", Span: source.Span{Start: 30, End: 40},
			Worked: [][]plan.RowFact{{{Stitches: 80, Width: 500 * mmm}, row}, {{Stitches: 80, Width: 500 * mmm}}}}},
		Finish: []plan.Finishing{
			{Kind: plan.MakeCord, Length: plan.Lengths{70 * cmm, 80 * cmm}, Free: plan.Lengths{10 * cmm, plan.NoLength},
				Through: &plan.Ref{Part: 1}, Span: source.Span{Start: 50, End: 60}},
			{Kind: plan.MakeCord, Length: plan.Lengths{70 * cmm, 80 * cmm}},
			{Kind: plan.SewButtons, Buttons: plan.Buttons{N: plan.Nums{plan.Absent, 2}}},
			{Kind: plan.SewButtons, Buttons: plan.Buttons{N: plan.Nums{0, 0}}},
			{Kind: plan.MakePompom},
		}}
	f := FactsOf(p, source.Span{Start: 1, End: 2}, source.Span{Start: 3, End: 4})
	if !slices.Equal(f.AgeMonths, []int{12, -1}) || len(f.Cords) != 2 || len(f.Buttons) != 1 || len(f.Pompoms) != 1 {
		t.Fatalf("facts %+v", f)
	}
	c := f.Cords[0]
	if c.Zone != Waist || c.Drawstring != True || c.Step != 0 || c.Opening[0] != 50*cmm || c.Opening[1] != plan.NoLength || c.At.Start != 50 {
		t.Errorf("a cord through the waistband: %+v", c)
	}
	if c := f.Cords[1]; c.Drawstring != Unknown || c.Zone != Waist || at(c.Opening, 0) != plan.NoLength {
		t.Errorf("a cord through nothing: %+v", c)
	}
	if b := f.Buttons[0]; !slices.Equal(b.For, plan.Sizes{false, true}) || b.Step != 2 {
		t.Errorf("buttons %+v", b)
	}
	// 32 chains and stitches in 320 mm are 10 mm each; two chains to a space.
	if f.Gap[0] != 20*mmm || f.Gap[1] != plan.NoLength || f.GapAt.Start != 30 {
		t.Errorf("openings %v at %v", f.Gap, f.GapAt)
	}
}
