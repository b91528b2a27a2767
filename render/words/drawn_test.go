package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// A stitch that draws together places of several kinds says where each of its legs goes, and where it ends.
func TestLegsInWords(t *testing.T) {
	one := plan.Nums{1, 1, 1}
	leg := func(per int, over plan.PlaceKind) plan.Instr {
		in := bodyInstr(stitch.DC, one, per)
		in.Over, in.Chains = over, plan.Nums{2, 2, 2}
		return in
	}
	drawn := plan.Instr{Op: plan.Decrease, Form: stitch.Form{ID: stitch.DC, Together: 3}, N: one, Marker: -1, Yarn: -1, Body: []plan.Instr{
		leg(2, plan.Stitch), {Op: plan.SkipOver, N: plan.Nums{2, 2, 2}, Marker: -1, Yarn: -1}, leg(1, plan.Space)}}
	again := plan.Instr{Op: plan.Repeat, Reach: plan.Times, N: plan.Nums{4, 4, 4}, Marker: -1, Yarn: -1, Body: []plan.Instr{drawn, {Op: plan.Chains, N: one, Marker: -1, Yarn: -1}}}
	twice := drawn
	twice.N = plan.Nums{2, 2, 2}
	for tag, want := range map[string][3]string{
		"en-US": {"dc3tog: 2 legs in next st, skip next 2 sts, leg in next ch-2 sp", "[dc3tog: 2 legs in next st, skip next 2 sts, leg in next ch-2 sp; ch 1] 4 times",
			"[dc3tog: 2 legs in next st, skip next 2 sts, leg in next ch-2 sp] 2 times"},
		"es-AR": {"3vjun: 2 v sin cerrar en el siguiente p, saltar los 2 p siguientes, 1 v sin cerrar en el siguiente arco de 2 cad",
			"[3vjun: 2 v sin cerrar en el siguiente p, saltar los 2 p siguientes, 1 v sin cerrar en el siguiente arco de 2 cad; 1 cad] 4 veces",
			"[3vjun: 2 v sin cerrar en el siguiente p, saltar los 2 p siguientes, 1 v sin cerrar en el siguiente arco de 2 cad] 2 veces"},
	} {
		l := language(t, tag)
		for i, in := range []plan.Instr{drawn, again, twice} {
			if got := strings.ReplaceAll(say(l, 0, true, in), "~", " "); got != want[i] {
				t.Errorf("%s: %s\nwant %s", tag, got, want[i])
			}
		}
	}
}
