package compile

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile/caution"
)

// flat is a part of one size worked in rows, at 20 stitches and chains to 10 cm, with rows of sc 0.5 cm and of dc 1 cm tall.
func flat(rows string) piece {
	return piece{header: "kind blanket", sizes: "sizes \"S\"\n  age 12 months\nend", parts: "part body\n  title en \"Body\" es \"Cuerpo\"\n  in rows\n" + rows + "\nend"}
}

func TestHoles(t *testing.T) {
	for _, c := range []struct{ rows, gap, at string }{
		{"  chain 20\n  2 rows: sc in each", "0", ""},
		// A square of a mesh: two chains wide, as high as a dc. A probe passes the smaller way.
		{"  chain 20\n  row: dc in next 2, [ch 2, skip 2, dc in next 2] to last 2, dc in each\n  row: dc in each st and chain", "1", "dc in next 2, [ch 2"},
		{"  chain 20\n  row: dc in next 2, [ch 1, skip 1, dc in next] across\n  row: dc in each st and chain", "0.5", "[ch 1, skip 1"},
		// Chains over as many skipped stitches lie flat: as high as sc beside them, however many they are.
		{"  chain 21\n  row: sc in each\n  row: sc in next 8, ch 5, skip 5, sc in next 8\n  row: sc in each st and chain", "0.5", "ch 5, skip 5"},
		// A longer arch is pulled open: (5 chains + 2 stitches) / π.
		{"  chain 20\n  row: sc in each\n  row: sc in next 9, ch 5, skip 2, sc in next 9\n  row: sc in next 9, 2 sc in next space, sc in next 9", "1.114", "ch 5, skip 2"},
		// Skipped stitches between tall ones, half of what is skipped; between single crochet they close up.
		{"  chain 20\n  row: dc in next 8, skip 4, dc in next 8", "1", "skip 4"},
		{"  chain 20\n  row: dc in next 9, skip 1, dc in next 10", "0.25", "skip 1"},
		{"  chain 20\n  row: sc in next 8, skip 4, sc in next 8", "0", ""},
		// What other parts go on from is an opening of the piece, and buttons close theirs.
		{"  chain 20\n  row: sc in each\n  row: sc in next 6, ch 8 as sleeve, skip 8, sc in next 6\n  row: sc in each st and chain\nend\npart sleeve\n  title en \"Sleeve\" es \"Manga\"\n  in rows\n  from body.sleeve\n  row: sc in each", "0", ""},
		{"  chain 20\n  row: sc in each\n  row: sc in next 9, ch 2 as buttonholes, skip 2, sc in next 9\n  row: sc in each st and chain", "0", ""},
		{"  chain 20\n  row: sc in each\n  row: sc in next 9, ch 2 as corner, skip 2, sc in next 9\n  row: sc in each st and chain", "0.5", "as corner"},
	} {
		text := flat(c.rows).text()
		f := factsOf(t, text)
		assert.Equal(t, c.gap, cms(f.Gap), c.rows)
		if c.at == "" {
			assert.True(t, f.GapAt.IsZero(), c.rows)
		} else {
			assert.Contains(t, text[f.GapAt.Start:f.GapAt.End], c.at)
		}
	}
	// Without a gauge a hole is not known, and a closed fabric has none.
	bare := func(rows string) caution.Facts {
		return factsOf(t, "pattern p\n  terms us\n  title en \"A\" es \"A\"\nend\nsizes \"S\"\nend\npart body\n  in rows\n"+rows+"\nend\n")
	}
	assert.Equal(t, "?", cms(bare("  chain 20\n  row: dc in next 8, ch 4, skip 4, dc in next 8\n  row: dc in each st and chain").Gap))
	assert.Equal(t, "0", cms(bare("  chain 20\n  row: dc in each").Gap))
}

func TestLoopsAndLooseChains(t *testing.T) {
	for _, c := range []struct{ rows, want string }{
		{"  chain 20\n  2 rows: sc in each", ""},
		// A button loop: six chains over four stitches, 3 cm and 2.5 cm of base.
		{"  chain 20\n  row: sc in next 8, ch 6 as loop_1, skip 4, sc in next 8", "body.loop_1 loop none length 3 around 5.5"},
		{"  chain 20\n  row: sc in next 8, ch 6, skip 4, sc in next 8", "body loop none length 3 around 5.5"},
		// Of several the largest counts.
		{"  chain 20\n  row: sc in next 4, ch 6, skip 4, sc in next 2, ch 9, skip 4, sc in next 6", "body loop none length 4.5 around 7"},
		// Chains that lie flat are none, nor are those that were worked into.
		{"  chain 20\n  row: sc in next 8, ch 4, skip 4, sc in next 8", ""},
		{"  chain 20\n  row: sc in next 8, ch 6, skip 4, sc in next 8\n  row: sc in each st and chain", ""},
		// A chain at the end of a row hangs free, unless somebody works into it.
		{"  chain 20\n  row: sc in each, ch 40", "body   length 20 around 0"},
		{"  chain 20\n  row: sc in each, ch 40 as tie", "body.tie   length 20 around 0"},
		{"  chain 20\n  row: sc in each, ch 6\n  row: sc in each st and chain", ""},
		// So do chains of the start that nothing stands on.
		{"  chain 60\n  row: sc in next 20, leave rest", "body   length 20 around 0"},
		{"  chain 23\n  row: sc in next 20, leave rest", ""},
	} {
		f := factsOf(t, flat(c.rows).text())
		got := ""
		for _, k := range f.Cords {
			got += fmt.Sprintf("%s %s %s length %s around %s", k.Name, k.Role, k.End, cms(k.Length), cms(k.Loop))
			assert.Equal(t, -1, k.Step)
		}
		assert.Equal(t, c.want, got, c.rows)
	}
	// What is said of such chains in the finishing is said of them, and not of something else.
	p := flat("  chain 20\n  row: sc in each, ch 40 as tie")
	p.finish = "cord of body.tie, at neck, as chin_tie, ends plain"
	f := factsOf(t, p.text())
	require.Len(t, f.Cords, 1)
	assert.Equal(t, "body.tie chin_tie plain neck 20", fmt.Sprint(f.Cords[0].Name, " ", f.Cords[0].Role, " ", f.Cords[0].End, " ", f.Cords[0].Zone, " ", cms(f.Cords[0].Length)))
	// An arch has no ends, wherever it is said to be.
	p = flat("  chain 20\n  row: sc in next 8, ch 6, skip 4, sc in next 8")
	p.finish = "cord of body, at chest"
	f = factsOf(t, p.text())
	require.Len(t, f.Cords, 1)
	assert.Equal(t, "loop none chest 5.5 False", fmt.Sprint(f.Cords[0].Role, " ", f.Cords[0].End, " ", f.Cords[0].Zone, " ", cms(f.Cords[0].Loop), " ", truthWord(f.Cords[0].BehindNeck)))
	// A seam closes an edge.
	p = flat("  chain 20\n  row: sc in next 8, ch 6, skip 4, sc in next 8\nend\npart back\n  title en \"Back\" es \"Espalda\"\n  in rows\n  chain 20\n  row: sc in each")
	p.finish = "sew body.edge to back.edge within 4 cm"
	assert.Empty(t, factsOf(t, p.text()).Cords)
}

func TestFloats(t *testing.T) {
	sand := "yarn sand\n  name en \"sand\" es \"arena\"\n  fibre cotton 100 %\nend"
	for _, c := range []struct {
		rows, step string
		floats     bool
	}{
		{"  yarn kelp\n  chain 20\n  2 rows: sc in each", "", false},
		{"  yarn kelp\n  chain 20\n  row: sc in next 8, with sand, sc in next 4, with kelp, sc in next 8", "", true},
		{"  yarn kelp\n  chain 20\n  row: sc in next 8, with sand, sc in next 12", "", false}, // each yarn waits at its own edge
		{"  yarn kelp\n  chain 20\n  row, with sand: sc in each\n  row, with kelp: sc in each", "", false},
		{"  yarn kelp\n  chain 20\n  row: sc in next 8, with sand, sc in next 4, with kelp, sc in next 8", "Work over the yarn that rests.", false},
		{"  yarn kelp\n  chain 20\n  row: sc in next 8, with sand, sc in next 4, with kelp, sc in next 8", "Do not work over the yarn that rests.", true},
	} {
		p := flat(c.rows)
		p.blocks = sand
		if c.step != "" {
			p.finish = "note\n  en | " + c.step + "\n  es | Así.\nend"
		}
		f := factsOf(t, p.text())
		assert.Equal(t, c.floats, f.Floats.Is == caution.True, "%s %s", c.rows, c.step)
		assert.Equal(t, !c.floats, f.Floats.At.IsZero(), c.rows)
	}
	round := piece{blocks: sand, sizes: "sizes \"S\"\nend", parts: "part body\n  title en \"Body\" es \"Cuerpo\"\n  yarn kelp\n  in joined rounds\n  chain 20, join\n  round: sc in next 10, with sand, sc in next 10\nend"}
	assert.Equal(t, caution.True, factsOf(t, round.text()).Floats.Is, "in a round the first yarn is taken up again")
}
