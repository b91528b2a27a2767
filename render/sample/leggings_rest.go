package sample

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

func yarns() []plan.Yarn {
	fibre := []plan.Share{{Fibre: "cotton", Percent: 60}, {Fibre: "wool", Percent: 40}}
	yarn := func(en, es string, metres ...int64) plan.Yarn {
		y := plan.Yarn{
			Name: en, Names: plan.Text{"en": en, "es": es}, Weight: "light", Fibre: fibre,
			BallWeight: 50000, BallLength: 120000 * plan.Millimetre, Swatch: &plan.Swatch{Sts: 20, Rows: 10, Stitch: stitch.DC},
		}
		for _, m := range metres {
			// A ball is 120 m and 50 g.
			y.Amount = append(y.Amount, plan.YarnAmount{
				Milligrams: m * 50000 / 120, Length: plan.Length(m) * 1000 * plan.Millimetre, Balls: int((m + 119) / 120),
				Yards: int(m*1000/914/5+1) * 5,
			})
		}
		return y
	}
	return []plan.Yarn{yarn("sand", "arena", 220, 255, 290, 325), yarn("kelp", "alga", 70, 75, 80, 85)}
}

// contents are those of the yarns, which are alike.
func contents() *plan.Contents {
	return &plan.Contents{
		Shares:   slices.Repeat([][]plan.Share{{{Fibre: "cotton", Percent: 60}, {Fibre: "wool", Percent: 40}}}, 4),
		Weighted: make([]bool, 4),
	}
}

// cordLength leaves 12 cm free at each end with the waistband laid open.
func cordLength() plan.Lengths {
	ls := around(waist)
	for i := range ls {
		ls[i] += 24 * plan.Centimetre
	}
	return ls
}

func finishing() []plan.Finishing {
	tunnel := plan.Ref{
		Kind: plan.RefRow, Part: waistband, Called: plan.Text{"en": "the waistband", "es": "la pretina"}, Row: all(2), Count: waist,
	}
	return []plan.Finishing{
		{
			Kind: plan.FreeStep, Yarn: -1,
			Prose: prose("With the sand tails, close any gap at both ends of the crotch.",
				"Con los cabos de arena, cerrar los huecos a ambos lados de la entrepierna."),
		},
		{
			Kind: plan.MakeCord, Yarn: kelp, Length: cordLength(), Chains: each(func(i int) int { return waist[i] + 48 }),
			Through: &tunnel, Row: all(2), Free: cm(12, 12, 12, 12),
		},
		{Kind: plan.WeaveEnds, Yarn: -1},
		{Kind: plan.BlockPiece, Yarn: -1},
	}
}

// cautions are one of each way to read a source; the texts are those of the table of rules. Two belong to the cord.
func cautions() []plan.Caution {
	return []plan.Caution{
		{
			ID: "CORD-10", Severity: "error", Source: "EN 14682:2014", Basis: "read (4 secondary)", Read: plan.ReadSummary, Step: 1,
			Text: plan.Text{
				"en": "At the chest and waist of children's clothes, keep each free end to 14 cm (5 1/2 in) or shorter, with the garment laid open to its widest.",
				"es": "En el pecho y la cintura de prendas infantiles, dejar cada extremo libre en 14 cm como máximo, con la prenda abierta al máximo.",
			},
		},
		{
			ID: "CORD-25", Severity: "warn", Source: "EN 14682:2014", Basis: "read (2 secondary)", Read: plan.ReadSummary, Step: 1,
			Text: plan.Text{
				"en": "Stitch a drawstring to the garment midway between its exits so that it cannot be pulled out.",
				"es": "Coser el cordón ajustable a la prenda a mitad de camino entre sus salidas, para que no se pueda sacar.",
			},
			Reason: plan.Text{"en": "the cord is sewn down at the back seam", "es": "el cordón queda cosido en la costura trasera"},
		},
		{
			ID: "LABL-03", Severity: "warn", Source: "EU 1007/2011", Basis: "read (law)", Read: plan.ReadItself, Seller: true, Step: -1,
			Text: plan.Text{
				"en": "To label the finished piece, a seller needs what each yarn is made of, with names and percentages.",
				"es": "Para etiquetar la pieza terminada, quien vende necesita los nombres y porcentajes de fibra de cada hilo.",
			},
		},
	}
}

func measures() []plan.Measure {
	sum := func(a, b plan.Lengths) plan.Lengths {
		ls := make(plan.Lengths, len(a))
		for i := range ls {
			ls[i] = a[i] + b[i]
		}
		return ls
	}
	tall := func(p *plan.Part) plan.Lengths {
		ls := make(plan.Lengths, len(p.Worked))
		for i, rows := range p.Worked {
			for _, r := range rows {
				ls[i] += r.Height
			}
		}
		return ls
	}
	down := sum(tall(waistbandPart()), tall(bodyPart()))
	inside := tall(legPart(rightLeg))
	high := func(part int) plan.MeasuredOn { return plan.MeasuredOn{Kind: plan.Height, Part: part} }
	round := func(part int, row plan.Nums) []plan.MeasuredOn {
		return []plan.MeasuredOn{{Kind: plan.Around, Part: part, Row: row}}
	}
	hips := plan.Measure{Name: "hips", Letter: "A", Values: around(waist), Half: true, Of: round(body, all(2))}
	hips.Fits = &plan.Fit{Body: "hips", Values: cm(53, 55, 57, 59.5), Ease: cm(3, 3, 3, 2.5), Lo: 0, Hi: 6 * plan.Centimetre}
	cuff := each(func(i int) int { return len(legFacts(i)) })
	return []plan.Measure{
		hips,
		{Name: "rise", Letter: "B", Values: down, Of: []plan.MeasuredOn{high(waistband), high(body)}},
		{Name: "thigh", Letter: "C", Values: around(thigh), Half: true, Of: round(rightLeg, all(1))},
		{Name: "inseam", Letter: "D", Values: inside, Of: []plan.MeasuredOn{high(rightLeg)}},
		{Name: "ankle", Letter: "E", Values: around(ankle), Half: true, Of: round(rightLeg, cuff)},
		{Name: "length", Letter: "F", Values: sum(down, inside), Of: []plan.MeasuredOn{high(waistband), high(body), high(rightLeg)}},
	}
}
