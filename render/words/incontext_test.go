package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// TestInContext reads rows of which an instruction is said otherwise than by itself.
func TestInContext(t *testing.T) {
	sc := stitch.Form{ID: stitch.SC, Together: 1}
	one := plan.Nums{1, 1, 1}
	to := func(n plan.Nums) plan.Instr {
		return plan.Instr{Op: plan.Work, Form: sc, N: plan.Nums{30, 30, 30}, Reach: plan.ToLast, Last: n, Marker: -1, Yarn: -1}
	}
	next := func(n, per plan.Nums) plan.Instr {
		return plan.Instr{Op: plan.Work, Form: sc, N: n, Per: per, Marker: -1, Yarn: -1}
	}
	end := plan.Instr{Op: plan.Work, Form: sc, N: plan.Nums{12, 12, 12}, Reach: plan.ToEnd, Marker: -1, Yarn: -1}
	unworked := plan.Instr{Op: plan.Work, Form: sc, N: plan.Nums{18, 18, 18}, Reach: plan.ToEnd, Over: plan.Unworked, Marker: -1, Yarn: -1}
	under := plan.Text{"en": "the cable", "es": "la trenza"}
	skip := plan.Instr{Op: plan.SkipOver, N: plan.Nums{2, 2, 2}, Label: "under", Called: under, Marker: -1, Yarn: -1}
	cross := plan.Instr{Op: plan.Work, Form: sc, N: plan.Nums{2, 2, 2}, Reach: plan.At, Cross: plan.CrossFront, Marker: -1, Yarn: -1,
		Ref: &plan.Ref{Kind: plan.RefSkipped, Own: true, Label: "under", Called: under, Pick: plan.EachOf, Count: plan.Nums{2, 2, 2}}}
	for _, c := range []struct {
		work   []plan.Instr
		en, es string
	}{
		{[]plan.Instr{to(one), next(one, plan.Nums{2, 2, 2})},
			"sc in each st to last st, 2 sc in last st", "1 pb en cada p hasta que quede 1 p, 2 pb en el último p"},
		{[]plan.Instr{to(plan.Nums{2, 2, 2}), next(one, nil), next(one, nil)},
			"sc in each st to last 2 sts, sc in each of last 2 sts", "1 pb en cada p hasta que queden 2 p, 1 pb en cada uno de los 2 últimos p"},
		{[]plan.Instr{end, unworked},
			"sc in each of next 12 sts, sc in each unworked st to end of round", "1 pb en cada uno de los 12 p siguientes, 1 pb en cada p sin tejer hasta el final de la vuelta"},
		{[]plan.Instr{skip, next(plan.Nums{2, 2, 2}, nil), cross},
			"skip next 2 sts, sc in each of next 2 sts, working in front of the stitches just made, sc in each of the 2 skipped sts",
			"saltar los 2 p siguientes, 1 pb en cada uno de los 2 p siguientes, por delante de los puntos recién tejidos, 1 pb en cada uno de los 2 p saltados"},
	} {
		for tag, want := range map[string]string{"en-US": c.en, "es": c.es} {
			l, err := For(tag)
			if err != nil {
				t.Fatal(err)
			}
			p := tablePattern()
			if got := strings.ReplaceAll(l.context(p, p.Parts[0], nil).body(c.work).String(), tie, " "); got != want {
				t.Errorf("%s:\n%s\nwant\n%s", tag, got, want)
			}
		}
	}
}
