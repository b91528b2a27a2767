package draw

import (
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/sample"
)

// order is the names of the parts of each group, as they stand on the page.
func order(t *testing.T, p *plan.Pattern) []string {
	t.Helper()
	l, err := chosen(p, courses)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, gr := range l.groups {
		var names []string
		for _, pt := range gr.patches {
			if n := p.Parts[pt.pc.part].Name; !slices.Contains(names, n) {
				names = append(names, n)
			}
		}
		slices.Sort(names)
		out = append(out, strings.Join(names, "+"))
	}
	return out
}

// The source chooses which pieces the schematic shows, and in which order.
func TestPartsAreChosen(t *testing.T) {
	for _, c := range []struct {
		p    *plan.Pattern
		show plan.Schematic
		want []string
	}{
		{jacket(), plan.Schematic{Parts: []int{3, 0}}, []string{"sleeve", "back"}},
		{jacket(), plan.Schematic{Parts: []int{1, 2}, Without: true}, []string{"back", "sleeve"}},
		{pullover(), plan.Schematic{Parts: []int{2, 3}, Without: true}, []string{"body+neckband"}},
		{pullover(), plan.Schematic{Parts: []int{2}}, []string{"right_sleeve"}},
		{sample.Leggings(), plan.Schematic{Parts: []int{1}, Without: true}, []string{"waistband", "right_leg", "left_leg"}},
		{sample.Leggings(), plan.Schematic{Parts: []int{3, 2, 0}}, []string{"left_leg", "right_leg", "waistband"}},
	} {
		c.p.Schematic = &c.show
		if got := order(t, c.p); !slices.Equal(got, c.want) {
			t.Errorf("%s, %+v: %v, want %v", c.p.Name, c.show, got, c.want)
		}
		s := must(Schematic(c.p, roomW, roomH, both...))
		inside(t, c.p.Name, s, roomW, roomH)
		for i, part := range c.p.Parts {
			if said := strings.Contains(s.Desc["en-US"], part.Title["en"]+":"); said != c.show.Shows(i) {
				t.Errorf("%s, %+v: %s is described: %v", c.p.Name, c.show, part.Name, said)
			}
		}
	}
}

// A yoke bends over the shoulders whether its sleeves are shown or not, and a measure of a part that is not shown has no line.
func TestWithoutSleeves(t *testing.T) {
	p := pullover()
	whole := only(t, laid(t, p), "right_sleeve").near()
	p.Schematic = &plan.Schematic{Parts: []int{2, 3}, Without: true}
	l, err := chosen(p, courses)
	if err != nil {
		t.Fatal(err)
	}
	yoke := l.named("body")[0]
	if !near(yoke.far().first(), whole.first()) {
		t.Error("the yoke without sleeves does not end where they would begin")
	}
	letters := ""
	for _, s := range labels(must(Schematic(p, roomW, roomH))) {
		letters += s.Text
	}
	if letters != "ABF" { // neck, chest and length
		t.Errorf("letters %s are drawn", letters)
	}
}

// Of joined motifs the border may be left out, or all but one motif.
func TestMosaicIsChosen(t *testing.T) {
	p := throw(4, 5)
	all := len(must(Schematic(p, roomW, roomH)).Items)
	p.Schematic = &plan.Schematic{Parts: []int{2}, Without: true}
	if got := len(must(Schematic(p, roomW, roomH)).Items); got >= all {
		t.Errorf("%d items without a border, %d with it", got, all)
	}
	p.Schematic = &plan.Schematic{Parts: []int{0}}
	s := must(Schematic(p, roomW, roomH))
	if b := extent(s.Items); b.width() < b.height()-0.01 || b.width() > b.height()+0.01 {
		t.Errorf("one motif is %.1f by %.1f", b.width(), b.height())
	}
}
