package compile

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// factsOf is what is known of a source, for the cautions. The source has no errors but those the cautions themselves raise.
func factsOf(t testing.TB, text string) caution.Facts {
	t.Helper()
	c := newChecker(parsed(t, text))
	c.check()
	for _, d := range c.out {
		if diag.Lookup(d.Code).Severity == diag.Error && !strings.HasPrefix(string(d.Code), "OV9") {
			t.Fatalf("%s %v\n%s", d.Code, d.Args, text)
		}
	}
	return c.cautionFacts()
}

func truthWord(t caution.Truth) string {
	return map[caution.Truth]string{caution.True: "True", caution.False: "False", caution.Unknown: "Unknown"}[t]
}

// piece is a small source: lines of the header, of the sizes, blocks behind the yarn, parts and the finishing may be put in.
type piece struct{ header, sizes, blocks, parts, finish string }

func (p piece) text() string {
	or := func(a, b string) string {
		if a == "" {
			return b
		}
		return a
	}
	return strings.NewReplacer("%header", p.header, "%sizes", or(p.sizes, `sizes "S", "M"
  age 12 (24) months
end`), "%blocks", p.blocks, "%parts", or(p.parts, `part body
  title en "Body" es "Cuerpo"
  in rows
  chain 40 (44)
  4 rows: sc in each
end`), "%finish", p.finish).Replace(`pattern trial
  title en "Trial" es "Prueba"
  terms us
  %header
end
%sizes
gauge 10 cm
  sc 20 sts, 20 rows
  dc 20 sts, 10 rows
  ch 20 sts
end
yarn kelp
  name en "kelp" es "alga"
  fibre cotton 60 %, wool 40 %
end
%blocks
%parts
finish
  %finish
  weave in ends
end
`)
}

func cms(ls plan.Lengths) string {
	var out []string
	for _, l := range ls {
		if l == plan.NoLength {
			out = append(out, "?")
			continue
		}
		out = append(out, fmt.Sprintf("%.4g", l.Cm()))
	}
	return strings.Join(out, " ")
}

func TestFactsOfWearers(t *testing.T) {
	for _, c := range []struct{ sizes, from, to, height, child string }{
		{"sizes \"S\", \"M\"\nend", "[-1 -1]", "[-1 -1]", "", "Unknown"},
		{"sizes \"S\", \"M\"\n  age 12 (24) months\nend", "[12 24]", "[24 -1]", "", "Unknown"},
		{"sizes \"S\", \"M\"\n  age 0 (6) to 6 (12) months\nend", "[0 6]", "[6 12]", "", "Unknown"},
		{"sizes \"S\", \"M\"\n  age 2 (4) to 4 (6) years\nend", "[24 48]", "[48 72]", "", "Unknown"},
		{"sizes \"S\", \"M\"\n  age 6 to 8 years\nend", "[72 72]", "[96 96]", "", "Unknown"},
		{"sizes \"0-3 m\", \"3-6 m\"\nend", "[-1 -1]", "[-1 -1]", "", "True"},
		{"sizes \"2 y\", \"4 y\"\nend", "[-1 -1]", "[-1 -1]", "", "True"},
		{"sizes \"Adult S\", \"Adult M\"\n  names es \"Adulto S\", \"Adulto M\"\nend", "[-1 -1]", "[-1 -1]", "", "False"},
		{"sizes \"Child\", \"Adult\"\n  names es \"Niño\", \"Adulto\"\nend", "[-1 -1]", "[-1 -1]", "", "True"},
		{"sizes \"S\", \"M\"\n  body babies \"56\", \"62\"\nend", "[-1 -1]", "[-1 -1]", "56 62", "True"},
		{"sizes \"S\", \"M\"\n  body children \"2\", \"4\"\nend", "[-1 -1]", "[-1 -1]", "", "True"},
		{"sizes \"S\", \"M\"\n  body women \"Small\", \"Medium\"\nend", "[-1 -1]", "[-1 -1]", "", "False"},
		{"sizes \"S\", \"M\"\n  fit height 98 (104) cm\nend", "[-1 -1]", "[-1 -1]", "98 104", "Unknown"},
	} {
		f := factsOf(t, piece{sizes: c.sizes}.text())
		assert.Equal(t, c.from, fmt.Sprint(f.AgeMonths), c.sizes)
		assert.Equal(t, c.to, fmt.Sprint(f.AgeTo), c.sizes)
		assert.Equal(t, c.height, cms(f.Height), c.sizes)
		assert.Equal(t, c.child, truthWord(f.Child), c.sizes)
	}
}

func TestFactsOfThePiece(t *testing.T) {
	plain := factsOf(t, piece{}.text())
	assert.Nil(t, plain.Markets)
	assert.Equal(t, caution.Unknown, plain.ForSale)
	assert.Equal(t, caution.False, plain.CareText)
	assert.Equal(t, caution.True, plain.FibreText)
	assert.Equal(t, 2, plain.Fibres)
	assert.Equal(t, caution.Unknown, plain.Fluffy)
	assert.Nil(t, plain.Length)

	said := factsOf(t, piece{header: `for eu, us
  not for sale
  kind bag
  care
    en | Wash by hand.
    es | Lavar a mano.
  end`, finish: "block\nend\nmeasure\n  length = height of body\n  neck = width of body\nend\nfinish"}.text())
	assert.Equal(t, []string{"eu", "us"}, said.Markets)
	assert.Equal(t, caution.False, said.ForSale)
	assert.Equal(t, caution.True, said.CareText)
	assert.Equal(t, "2 2", cms(said.Length))
	assert.Equal(t, "20 22", cms(said.NeckOpening))
	assert.Equal(t, caution.False, said.SoftFilled)

	fluffy := factsOf(t, strings.ReplaceAll(piece{}.text(), "cotton 60 %, wool 40 %", "mohair 100 %"))
	assert.Equal(t, caution.True, fluffy.Fluffy)
	assert.Equal(t, caution.True, fluffy.Raised)
	assert.Equal(t, 1, fluffy.Fibres)
	bare := factsOf(t, strings.ReplaceAll(piece{}.text(), "  fibre cotton 60 %, wool 40 %\n", ""))
	assert.Equal(t, caution.False, bare.FibreText)
	assert.Equal(t, -1, bare.Fibres)

	assert.Equal(t, caution.Unknown, factsOf(t, piece{header: "kind toy"}.text()).SoftFilled)
	toy := factsOf(t, piece{header: "kind toy", blocks: `notion en "toy stuffing" es "relleno", 30 g`}.text())
	assert.Equal(t, caution.True, toy.SoftFilled)
}

// TestBelowCrotch: from the nape to the waist and on to the crotch a child of 12 months measures 19 + 16 cm, one of 24 months 22.5 + 17 cm
// (standard/data: babies 80 and 92); older children are taller, and how much is asked for.
func TestBelowCrotch(t *testing.T) {
	for _, c := range []struct {
		kind, sizes string
		rows        int // of 1 cm
		want        caution.Truth
	}{
		{"poncho", "age 12 (24) months", 35, caution.False},
		{"poncho", "age 12 (24) months", 36, caution.True},
		{"poncho", "age 4 (6) years", 39, caution.False},
		{"poncho", "age 4 (6) years", 50, caution.Unknown},
		{"poncho", "age 4 (6) years\n  fit back_waist_length 25 (27) cm, crotch_depth 20 (21) cm", 45, caution.False},
		{"poncho", "age 4 (6) years\n  fit back_waist_length 25 (27) cm, crotch_depth 20 (21) cm", 46, caution.True},
		{"poncho", "shown \"S\"", 36, caution.Unknown},
		{"cardigan", "age 12 (24) months", 36, caution.Unknown}, // its kind tells
	} {
		p := piece{header: "kind " + c.kind, sizes: "sizes \"S\", \"M\"\n  " + c.sizes + "\nend", finish: "block\nend\nmeasure\n  length = height of body\nend\nfinish"}
		text := strings.Replace(p.text(), "4 rows: sc in each", fmt.Sprintf("%d rows: dc in each", c.rows), 1)
		assert.Equal(t, truthWord(c.want), truthWord(factsOf(t, text).BelowCrotch), "%s of %d cm, %s", c.kind, c.rows, c.sizes)
	}
	assert.Equal(t, caution.Unknown, factsOf(t, piece{header: "kind poncho"}.text()).BelowCrotch)
}

func TestFactsOfNotions(t *testing.T) {
	for _, c := range []struct{ notion, kinds, material, size string }{
		{`notion en "black embroidery thread" es "hilo de bordar negro"`, "", "", "?"},
		{`notion en "safety eyes" es "ojos de seguridad"`, "safety_eye", "", "?"},
		{`notion en "9 mm safety eyes" es "ojos de seguridad de 9 mm", 2`, "safety_eye", "", "0.9"},
		{`notion en "wooden beads" es "cuentas de madera", 3`, "bead", "wood", "?"},
		{`notion en "pompom maker" es "molde para pompones"`, "", "", "?"},
		{`notion en "a small pompom" es "un pompón pequeño"`, "pompom", "", "?"},
		{`notion en "snap fasteners" es "broches a presión", 3`, "snap", "", "?"},
		{`notion en "buttons and thread" es "botones e hilo"`, "button", "", "?"},
		{`notion en "toy stuffing" es "relleno para muñecos", 30 g`, "", "", "?"},
		{`notion en "plastic pellets" es "granulado de plástico", 30 g`, "weight", "plastic", "?"},
		{`notion en "glass beads for weight" es "cuentas de vidrio para el peso", 500 g`, "weight", "glass", "?"},
		{`notion en "weights" es "contrapesos", 500 g`, "weight", "", "?"},
		{`notion en "hooks and eyes" es "corchetes", 3`, "snap", "", "?"},
		{`notion en "safety pins" es "imperdibles"`, "", "", "?"},
		{`notion en "noses" es "hocicos", as eye 12 mm of plastic, 1`, "safety_eye", "plastic", "1.2"},
		{`notion en "button card" es "cartón de botones", as tool`, "", "", "?"},
		{`notion en "trim" es "remate", as rings of horn`, "ring", "other", "?"},
	} {
		f := factsOf(t, piece{blocks: c.notion}.text())
		var kinds []string
		size := plan.NoLength
		material := ""
		for _, p := range f.Parts {
			kinds, material, size = append(kinds, p.Kind), p.Material, p.Size
			assert.Equal(t, -1, p.Step)
		}
		assert.Equal(t, c.kinds, strings.Join(kinds, " "), c.notion)
		if kinds != nil {
			assert.Equal(t, c.material, material, c.notion)
			assert.Equal(t, c.size, cms(plan.Lengths{size}), c.notion)
		}
		assert.Equal(t, strings.Contains(c.kinds, "weight"), f.Weighted.Is == caution.True, c.notion)
		assert.Equal(t, strings.Contains(c.notion, "horn"), f.AnimalPart.Is == caution.True, c.notion)
	}
	for notion, asked := range map[string]bool{`notion en "a whatsit" es "un chisme"`: true, `notion en "a button" es "un botón"`: false} {
		assert.Equal(t, asked, saidCode(t, piece{blocks: notion}.text(), codeNotionWord), notion)
		assert.False(t, saidCode(t, piece{blocks: notion, sizes: "sizes \"S\", \"M\"\n  age 36 (48) months\nend"}.text(), codeNotionWord), notion)
	}
}

// saidCode reports whether a code is found in a source.
func saidCode(t *testing.T, text string, code diag.Code) bool {
	t.Helper()
	c := newChecker(parsed(t, text))
	c.check()
	for _, d := range c.out {
		if d.Code == code {
			return true
		}
	}
	return false
}

const beltAndBand = `part body
  title en "Body" es "Cuerpo"
  in joined rounds
  chain 80 (88), join
  4 rounds: sc in each
end
part belt
  title en "Belt" es "Cinturón"
  in rows
  chain 60 (64)
  6 rows: sc in each
end
part tube
  title en "Tube" es "Tubo"
  in spiral rounds
  chain 6, join
  30 rounds: sc in each
end`

func TestFactsOfCords(t *testing.T) {
	base := piece{header: "kind cardigan", sizes: "sizes \"S\", \"M\"\n  age 12 (24) months\n  fit waist 38 (40) cm\nend", parts: beltAndBand}
	one := func(line string) caution.Cord {
		t.Helper()
		p := base
		p.finish = line
		f := factsOf(t, p.text())
		require.Len(t, f.Cords, 1, line)
		return f.Cords[0]
	}
	c := one("cord with kelp, length 70 (74) cm, through body round 2, at waist")
	assert.Equal(t, "waist drawstring 70 74 40 44 38 40", fmt.Sprint(c.Zone, " ", c.Role, " ", cms(c.Length), " ", cms(c.Opening), " ", cms(c.Drawn)))
	assert.Equal(t, "0 0", cms(c.Loop))
	assert.Equal(t, caution.End(""), c.End)
	assert.Equal(t, [5]caution.Truth{caution.False, caution.False, caution.Unknown, caution.Unknown, caution.Unknown},
		[5]caution.Truth{c.Fray, c.Elastic, c.Anchored, c.Outside, c.BelowHem})
	assert.Equal(t, 0, c.Step)

	c = one("cord with kelp, length 70 (74) cm, through body round 2, at waist, ends knotted, fixed, inside, elastic, width 1 cm, thick 2 mm")
	assert.Equal(t, caution.End("knot"), c.End)
	assert.Equal(t, [4]caution.Truth{caution.True, caution.True, caution.False, caution.False}, [4]caution.Truth{c.Elastic, c.Anchored, c.Outside, c.BelowHem})
	assert.Equal(t, "1 1", cms(c.Width))
	assert.Equal(t, 2*plan.Millimetre, c.Thick)

	for end, kind := range map[string]string{"ends with beads": "bead", "ends with pompoms": "pompom", "ends with toggles": "other", "ends with tassels": "", "ends plain": ""} {
		p := base
		p.finish = "cord with kelp, length 20 cm, at hem, as tie, " + end
		got := ""
		for _, x := range factsOf(t, p.text()).Parts {
			got += x.Kind
		}
		assert.Equal(t, kind, got, end)
	}

	// Joined into a ring, what is longer than the opening sticks out as a loop, and more of it when it is drawn up.
	c = one("cord with kelp, length 46 (44) cm, through body round 2, at waist, no ends")
	assert.Equal(t, "6 0", cms(c.Loop))
	assert.Equal(t, "8 4", cms(c.LoopDrawn))
	assert.Equal(t, caution.End("none"), c.End)

	// A part that is a cord: across its stitches, and around a tube.
	c = one("cord of belt, at waist, as belt")
	assert.Equal(t, "belt tie_belt 30 32 3 3", fmt.Sprint(c.Name, " ", c.Role, " ", cms(c.Length), " ", cms(c.Width)))
	assert.Equal(t, -1, c.Step)
	assert.Equal(t, "38 40", cms(c.Drawn), "a belt is tied at the waist of the wearer")
	assert.Equal(t, "? ?", cms(one("cord with kelp, length 70 cm, at chest, as belt").Drawn))
	assert.Nil(t, one("cord with kelp, length 70 cm, at waist, as tie").Drawn)
	two := base
	two.finish = "cord with kelp, length 40 cm, at waist, as belt\n  cord with kelp, length 40 cm, at waist, as belt"
	for _, half := range factsOf(t, two.text()).Cords {
		assert.Nil(t, half.Drawn, "of two that are tied to each other the whole of each is free")
	}
	pair := base
	pair.parts, pair.finish = strings.Replace(beltAndBand, "es \"Cinturón\"", "es \"Cinturón\"\n  make 2", 1), "cord of belt, at waist, as belt"
	assert.Nil(t, factsOf(t, pair.text()).Cords[0].Drawn)
	c = one("cord of tube, at chest, as tie")
	assert.Equal(t, "functional 15 15 1.5 1.5", fmt.Sprint(c.Role, " ", cms(c.Length), " ", cms(c.Width)))

	for line, want := range map[string]caution.Truth{
		"cord of belt, at nape, as halter":                                 caution.True,
		"cord of belt, at nape, as halter, no ends":                        caution.False,
		"cord of belt, at nape, as tie":                                    caution.True,
		"cord of belt, at neck, as bow":                                    caution.False,
		"cord of belt":                                                     caution.Unknown,
		"cord with kelp, length 12 cm, at chest, as decoration, no ends":   caution.False,
		"cord with kelp, length 12 cm, at neck, as tie, ends with tassels": caution.False,
	} {
		assert.Equal(t, want, one(line).BehindNeck, line)
	}
	assert.Equal(t, "? ?", cms(one("cord with kelp, length 12 cm, at neck, as bow").Loop))
	c = one("cord with kelp, at neck, loop 7 cm, no ends")
	assert.Equal(t, "loop 7 7", fmt.Sprint(c.Role, " ", cms(c.Loop)))
	c = one("cord with kelp, at neck, loop 7 (12) cm, thick 4 (1) mm, no ends")
	assert.Equal(t, "loop 7 12, 1 mm", fmt.Sprint(c.Role, " ", cms(c.Loop), ", ", c.Thick/plan.Millimetre, " mm"), "each size has its own loop; the thinnest counts")

	// What the words stand for, and where it is by the names of parts.
	for word, zone := range map[string]caution.Zone{"nape": "nape", "short_sleeve": "short_sleeve", "wrist": "cuff", "ankle": "hem", "other": "other"} {
		assert.Equal(t, zone, one("cord with kelp, length 5 cm, at "+word).Zone)
	}
	assert.True(t, saidCode(t, base.text(), codeCordPart))
	for kind, want := range map[string]string{"cardigan": "at waist, as belt", "trousers": "as belt", "soother_holder": "as belt"} {
		c := newChecker(parsed(t, piece{header: "kind " + kind, parts: beltAndBand}.text()))
		c.check()
		i := slices.IndexFunc(c.out, func(d diag.Diagnostic) bool { return d.Code == codeCordPart })
		require.GreaterOrEqual(t, i, 0, kind)
		assert.Equal(t, want, c.out[i].Args["as"], kind)
	}
	base.finish = "cord of belt, at waist, as belt"
	assert.False(t, saidCode(t, base.text(), codeCordPart))
}

func TestFactsOfFringe(t *testing.T) {
	p := piece{header: "kind poncho", finish: "fringe with kelp, 8 (9) cm, along body.edge, at neck, 2 strands"}
	text := p.text()
	f := factsOf(t, text)
	require.Len(t, f.Cords, 1)
	k := f.Cords[0]
	assert.Equal(t, "fringe neck plain 8 9 0 0", fmt.Sprint(k.Role, " ", k.Zone, " ", k.End, " ", cms(k.Length), " ", cms(k.Loop)))
	assert.Equal(t, [2]caution.Truth{caution.True, caution.Unknown}, [2]caution.Truth{k.Fray, k.BelowHem})
	c := newChecker(parsed(t, text))
	c.check()
	step := c.pat.Finish[k.Step]
	assert.Equal(t, plan.Nums{80, 88}, step.Strands, "two in each of 40 and 44 places")
	assert.Equal(t, "18 20", cms(step.Cut), "twice as long, and 2 cm for the knot")
	p.finish = "fringe with kelp, 8 cm, along right edge of body, at hem"
	k = factsOf(t, p.text()).Cords[0]
	assert.Equal(t, caution.True, k.BelowHem)
}

func TestFactsOfSurfaces(t *testing.T) {
	for line, want := range map[string][2]caution.Truth{ // fluffy, raised
		"fibre cotton 100 %":                    {caution.Unknown, caution.Unknown},
		"fibre cotton 100 %\n  surface smooth":  {caution.False, caution.False},
		"fibre cotton 100 %\n  surface brushed": {caution.True, caution.True},
		"fibre cotton 100 %\n  surface looped":  {caution.False, caution.True},
		"fibre mohair 70 %, silk 30 %":          {caution.True, caution.True},
		"fibre angora 100 %\n  surface smooth":  {caution.False, caution.False}, // the designer has the yarn in her hand
		"fibre cotton 100 %\n  surface fluffy":  {caution.True, caution.True},
	} {
		f := factsOf(t, strings.ReplaceAll(piece{}.text(), "fibre cotton 60 %, wool 40 %", line))
		assert.Equal(t, want, [2]caution.Truth{f.Fluffy, f.Raised}, line)
	}
}

// A reason that is given before the line of a cord goes to the cautions of the rules behind the finding.
func TestReasons(t *testing.T) {
	c := newChecker(parsed(t, piece{}.text()))
	c.check()
	at := c.pat.Parts[0].Span
	c.pat.Cautions = []plan.Caution{{ID: "A", At: at}, {ID: "B", At: at}, {ID: "A"}}
	why := plan.Text{"en": "yes", "es": "sí"}
	c.reasoned(diag.Diagnostic{Args: diag.Args{"rules": []string{"A"}}}, at, why)
	assert.Equal(t, why, c.pat.Cautions[0].Reason)
	assert.Nil(t, c.pat.Cautions[1].Reason)
	assert.Nil(t, c.pat.Cautions[2].Reason)
}

// Reasons reach the cautions of a finding: before a line of the finishing, and before the kind of the piece in the header. Another code,
// or another line, leaves them alone.
func TestReasonsReachCautions(t *testing.T) {
	why := plan.Text{"en": "it is sewn through", "es": "va cosido de lado a lado"}
	meant := func(code string) string {
		return "meant " + code + ` en "it is sewn through" es "va cosido de lado a lado"` + "\n"
	}
	for _, c := range []struct {
		p        piece
		reasoned bool
	}{
		{piece{header: "kind hat", finish: meant("OV922") + "  pompom with kelp, 5 cm, 80 wraps"}, true},
		{piece{header: "kind hat", finish: "pompom with kelp, 5 cm, 80 wraps"}, false},
		{piece{header: "kind hat", finish: meant("OV921") + "  pompom with kelp, 5 cm, 80 wraps"}, false},
		{piece{header: "kind hat", finish: "pompom with kelp, 5 cm, 80 wraps\n" + meant("OV922") + "  block"}, false},
		{piece{header: meant("OV924") + "  kind cocoon"}, true},
		{piece{header: "kind cocoon"}, false},
	} {
		ch := newChecker(parsed(t, c.p.text()))
		ch.check()
		n := 0
		for _, k := range ch.pat.Cautions {
			if k.Reason != nil {
				assert.Equal(t, why, k.Reason)
				n++
			}
		}
		assert.Equal(t, c.reasoned, n > 0, c.p.text())
		assert.NotEmpty(t, ch.pat.Cautions)
	}
}
