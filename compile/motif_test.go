package compile_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile/plan"
)

// squares is a source of square motifs of so many rounds, in two sizes, with a border of one stitch in each place.
func squares(rounds int, across, down string) string {
	var b strings.Builder
	b.WriteString("sizes \"a\", \"b\"\nend\n\npart square\n  title en \"S\" es \"C\"\n  in joined rounds\n  ring\n" +
		"  round: [3 dc in ring, ch 3 as corner] 4 times = 12 dc, 4 corners\n")
	for k := range rounds - 1 {
		fmt.Fprintf(&b, "  round: [(3 dc, ch 3 as corner, 3 dc) in next corner, ch 1 as side, [3 dc in next side, ch 1 as side] %d times] 4 times\n", k)
	}
	rule := "each corner and each side"
	if rounds == 1 {
		rule = "each corner"
	}
	fmt.Fprintf(&b, "end\n\nmotifs whole of square\n  title en \"W\" es \"T\"\n  %s across, %s down\n  joined in round %d: at %s, sl st in place of 1 ch\nend\n",
		across, down, rounds, rule)
	b.WriteString("\npart border\n  title en \"B\" es \"O\"\n  in joined rounds\n  from around whole\n" +
		"  round: [sc in each st and space to outer_corner, 3 sc in outer_corner] 4 times\nend\n")
	return b.String()
}

// Rectangles of motifs, drawn at random, keep the laws of a grid: corners, sides and squares obey Euler's formula, every
// corner that is met again is one join, and the outer edge holds what is on it once.
func TestMotifsKeepTheLawsOfAGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rounds := rapid.IntRange(1, 4).Draw(t, "rounds")
		across := rapid.SliceOfN(rapid.IntRange(1, 7), 2, 2).Draw(t, "across")
		down := rapid.SliceOfN(rapid.IntRange(1, 7), 2, 2).Draw(t, "down")
		p := clean(t, squares(rounds, fmt.Sprintf("%d (%d)", across[0], across[1]), fmt.Sprintf("%d (%d)", down[0], down[1])))
		g := partOf(p, "whole").Grid
		for z := range p.Sizes {
			a, d := across[z], down[z]
			vertices, sides, faces := (a+1)*(d+1), a*(d+1)+d*(a+1), a*d
			require.Equal(t, 1, vertices-sides+faces)
			require.Equal(t, faces, g.Kinds[0][z]+g.Kinds[1][z]+g.Kinds[2][z])
			require.Equal(t, 1, g.Kinds[0][z], "only the first meets no other")
			require.Equal(t, g.Shared[z], g.Kinds[1][z]+2*g.Kinds[2][z], "a shared side is joined once")
			require.Equal(t, sides-2*(a+d), g.Shared[z], "what is not outside is shared")
			require.Equal(t, g.Shared[z]*(rounds-1), g.AtSides[z])
			require.Equal(t, 4*faces-vertices, g.AtCorners[z], "of the corners that meet, the first is not joined")
			joints := 2*(a+d) - 4
			side := 3*rounds + rounds - 1
			require.Equal(t, 2*(a+d)*side+2*joints+3*4, partOf(p, "border").Worked[z][0].Stitches)
		}
	})
}

// What prints joins as often as the fabric is joined, and makes the stitches of the round without joins.
func TestPrintedJoinsAreThoseOfTheFabric(t *testing.T) {
	for rounds := range 4 {
		p := clean(t, squares(rounds+1, "3 (4)", "2 (5)"))
		whole, free := partOf(p, "whole"), partOf(p, "square")
		for z := range p.Sizes {
			joins := 0
			for _, s := range whole.Steps {
				j, ok := s.(*plan.JoinRound)
				if !ok || j.Row == nil {
					continue
				}
				joins += j.Motifs[z] * joinsIn(j.Row.Work, z)
				last := free.Worked[z][len(free.Worked[z])-1]
				require.Equal(t, last.Stitches, made(j.Row.Work, z)+1, "with the beginning chain")
				require.Equal(t, last.Chains, chainsIn(j.Row.Work, z)+joinsIn(j.Row.Work, z), "a join stands in place of a chain")
			}
			require.Equal(t, whole.Grid.AtSides[z]+whole.Grid.AtCorners[z], joins)
		}
	}
}

func joinsIn(work []plan.Instr, z int) int {
	n := 0
	for _, in := range work {
		switch in.Op {
		case plan.JoinTo:
			n++
		case plan.Repeat, plan.InOne:
			n += at(in.N, z, 1) * joinsIn(in.Body, z)
		}
	}
	return n
}

func chainsIn(work []plan.Instr, z int) int {
	n := 0
	for _, in := range work {
		switch in.Op {
		case plan.Chains:
			n += at(in.N, z, 1)
		case plan.Repeat, plan.InOne:
			n += at(in.N, z, 1) * chainsIn(in.Body, z)
		}
	}
	return n
}

// The motif may be written out, or start in the middle of a side: its sides are found all the same.
func TestMotifsWrittenOtherwise(t *testing.T) {
	for name, round := range map[string]string{
		"written out": "(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side, (3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side, " +
			"[(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side] 2 times",
		"up to the end":             "[(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side] around",
		"side first":                "[sc in next 3, ch 1 as side, (3 dc, ch 2 as corner, 3 dc) in next corner] 4 times",
		"two corners in one repeat": "[[(3 dc, ch 2 as corner, 3 dc) in next corner, ch 1 as side] 2 times] 2 times",
	} {
		t.Run(name, func(t *testing.T) {
			p := clean(t, "sizes \"a\"\nend\n\npart square\n  title en \"S\" es \"C\"\n  in joined rounds\n  ring\n"+
				"  round: [3 dc in ring, ch 2 as corner] 4 times = 12 dc, 4 corners\n  round: "+round+"\nend\n\n"+
				"motifs whole of square\n  title en \"W\" es \"T\"\n  3 across, 3 down\n  joined in round 2: at each corner and each side, sl st in place of 1 ch\nend\n")
			g := partOf(p, "whole").Grid
			require.Equal(t, plan.Nums{12}, g.Shared)
			require.Equal(t, plan.Nums{12}, g.AtSides)
			require.Equal(t, plan.Nums{20}, g.AtCorners)
		})
	}
}

// The whole is as many motifs wide, high and around as lie there, in every size; its yarn is that of all of them.
func TestMotifsAreMeasured(t *testing.T) {
	yarn := "gauge 10 cm\n  dc 20 sts, 10 rows\n  sc 20 sts, 20 rows\nend\nyarn sand\n  name en \"s\" es \"a\"\n  ball 50 g, 100 m\n  swatch 20 sts by 10 rows of dc, 4 g\nend\n\n"
	text := func(across string) string {
		s := strings.Replace(squares(2, across, "2"), "  joined in", "  each 6 cm\n  joined in", 1)
		s = s[:strings.Index(s, "\npart border")] + "\nmeasure\n  width = width of whole\n  length = height of whole\n  rim = around whole\nend\n"
		return strings.Replace(s, "\npart square", "\n"+yarn+"part square", 1)
	}
	p := clean(t, text("3 (10)"))
	require.Equal(t, plan.Lengths{18 * plan.Centimetre, 60 * plan.Centimetre}, p.Measures[0].Values)
	require.Equal(t, plan.Lengths{12 * plan.Centimetre, 12 * plan.Centimetre}, p.Measures[1].Values)
	require.Equal(t, plan.Lengths{60 * plan.Centimetre, 144 * plan.Centimetre}, p.Measures[2].Values)
	one := clean(t, text("1"))
	// Amounts are rounded up; ten times as many motifs take ten times as much, but for that.
	ten, each := p.Yarns[0].Amount[1].Milligrams, one.Yarns[0].Amount[0].Milligrams
	require.InDelta(t, 10*each, ten, float64(10*5000))
	require.Greater(t, ten, 5*each)
}
