package figure

import (
	"math"
	"math/big"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Area is in square micrometres: the product of two [plan.Length]. NoArea stands for a size that has no such fabric.
type Area int64

// NoArea is the area of a fabric that does not exist, or is not known.
const NoArea Area = -1

// AreaOf makes an area of square millimetres, rounded to square micrometres.
func AreaOf(mm2 float64) Area {
	if !(mm2 >= 0) { // not a number, or below zero
		return NoArea
	}
	const most = 1e18 // a square kilometre; beyond it the whole number would not hold the area
	return Area(math.Round(math.Min(mm2*1e6, most)))
}

// SquareCentimetre is exact.
const SquareCentimetre = Area(plan.Centimetre * plan.Centimetre)

// PerArea is how heavy a fabric is: grams for a square micrometre. The estimate of the yarn rests on it: the weight for a
// stitch differs by the stitch, the weight for an area hardly does (within about 2 % from single to double crochet, by one
// maker's measurements: windchilde.com/bluedepth, Crochet Yarn Estimating).
type PerArea = *big.Rat

// Swatch is a weighed piece of fabric, told in stitches and rows.
type Swatch struct {
	Sts, Rows           *big.Rat // counted on the swatch
	StsPerMM, RowsPerMM *big.Rat // gauge of its stitch
	Grams               *big.Rat
}

// PerArea is how heavy the fabric of the swatch is, nil with what is missing if the swatch does not tell.
func (s Swatch) PerArea() (PerArea, Missing) {
	if !known(s.Sts) || !known(s.Rows) || !known(s.Grams) {
		return nil, NoSwatch
	}
	if !known(s.StsPerMM) || !known(s.RowsPerMM) {
		return nil, NoGauge
	}
	a := new(big.Rat).Mul(s.Sts, s.Rows)
	a.Quo(a, s.StsPerMM)
	a.Quo(a, s.RowsPerMM)
	a.Mul(a, big.NewRat(int64(plan.Millimetre)*int64(plan.Millimetre), 1))
	return a.Quo(s.Grams, a), Nothing
}

// Sampled is how heavy the fabrics of a sample are that weighs so many grams: in each yarn, where each is weighed apart, it is
// called with that yarn alone, and otherwise with all of them. What the sample uses by length, such as a cord, is taken off
// before. like says how heavy the fabrics are beside one another; where it is nil, or a figure of it is, all are taken to be as
// heavy. The result is nil if there is no fabric, if nothing is left for it (Outweighed), or a length cannot be weighed (NoBall).
func Sampled(grams *big.Rat, uses []Use, balls []Ball, like []PerArea) ([]PerArea, Missing) {
	left := new(big.Rat).Set(grams)
	one := big.NewRat(1, 1)
	alike := len(like) != len(uses)
	for i, u := range uses {
		alike = alike || u.Fabric > 0 && !known(like[i])
		mm := u.byLength()
		if mm.Sign() == 0 {
			continue
		}
		per := balls[i].mmPerGram()
		if per == nil {
			return nil, NoBall
		}
		left.Sub(left, mm.Quo(mm, per))
	}
	sum := new(big.Rat)
	beside := make([]*big.Rat, len(uses))
	for i, u := range uses {
		if beside[i] = one; !alike {
			beside[i] = like[i]
		}
		if u.Fabric > 0 {
			sum.Add(sum, new(big.Rat).Mul(beside[i], big.NewRat(int64(u.Fabric), 1)))
		}
	}
	switch {
	case left.Sign() <= 0:
		return nil, Outweighed
	case sum.Sign() == 0:
		return nil, NoSwatch
	}
	left.Quo(left, sum)
	out := make([]PerArea, len(uses))
	for i, u := range uses {
		if u.Fabric > 0 {
			out[i] = new(big.Rat).Mul(left, beside[i])
		}
	}
	return out, Nothing
}

// known reports whether a figure is there and above zero.
func known(x *big.Rat) bool { return x != nil && x.Sign() > 0 }

// Ball is what a ball holds. A nil figure, or one that is not above zero, is not known.
type Ball struct {
	Grams *big.Rat
	MM    *big.Rat
}

func (b Ball) grams() *big.Rat {
	if !known(b.Grams) {
		return nil
	}
	return b.Grams
}

// mmPerGram is the length of a gram, nil if the ball does not tell.
func (b Ball) mmPerGram() *big.Rat {
	if !known(b.Grams) || !known(b.MM) {
		return nil
	}
	return new(big.Rat).Quo(b.MM, b.Grams)
}

// Allowance is what an estimate adds for ends, swatch and another hand: a tenth. Common practice, no source.
var Allowance = big.NewRat(1, 10)

// Missing says why an estimate cannot be made.
type Missing string

// What can be missing.
const (
	Nothing  Missing = ""
	NoSwatch Missing = "swatch" // no weighed swatch
	NoGauge  Missing = "gauge"  // no gauge of stitches and rows to measure the swatch by
	NoBall   Missing = "ball"   // yarn is given by length, and no ball says what a length weighs

	Outweighed Missing = "outweighed" // what a sample uses by length weighs as much as all of it
)

// missingCodes says how each is reported.
var missingCodes = map[Missing]diag.Code{NoSwatch: "OV703", NoGauge: "OV714", NoBall: "OV704"}

// Report notes at a yarn that its amount cannot be estimated, and why. Nothing gives no diagnostic.
func (m Missing) Report(yarn string, at source.Span) diag.List {
	code, ok := missingCodes[m]
	if !ok {
		return nil
	}
	return diag.List{{Code: code, Span: at, Args: diag.Args{"yarn": yarn}}}
}

// CheckUsed warns of a yarn that is named and of which nothing is made (OV705).
func CheckUsed(yarn string, used bool, at source.Span) diag.List {
	if used {
		return nil
	}
	return diag.List{{Code: "OV705", Span: at, Args: diag.Args{"yarn": yarn}}}
}

// Use is what one size uses of one yarn, with no allowance: fabric of an area, and lengths of yarn besides, in millimetres; nil
// where there is none.
type Use struct {
	Fabric                Area
	Cords, Pompoms, Seams *big.Rat
}

// byLength is the yarn that is known by its length, in millimetres.
func (u Use) byLength() *big.Rat {
	sum := new(big.Rat)
	for _, mm := range []*big.Rat{u.Cords, u.Pompoms, u.Seams} {
		if known(mm) {
			sum.Add(sum, mm)
		}
	}
	return sum
}

// Yarn estimates what each size needs of one yarn, from what it uses and how heavy the fabric is, nil if that is not known. All
// that is used is added up and the allowance put on before anything is rounded. A size that uses nothing needs nothing.
//
// If no estimate can be made it says what is missing and gives no amounts: an estimate that left something out would be
// bought from.
func Yarn(uses []Use, per PerArea, b Ball, allowance *big.Rat) ([]plan.YarnAmount, Missing) {
	perGram := b.mmPerGram()
	out := make([]plan.YarnAmount, len(uses))
	for i, u := range uses {
		sum, of := new(big.Rat), plan.YarnSum{}
		if u.Fabric > 0 {
			if per == nil {
				return nil, NoSwatch
			}
			sum.Mul(big.NewRat(int64(u.Fabric), 1), per)
			of.Fabric = milligrams(sum)
		}
		for _, part := range []struct {
			mm *big.Rat
			mg *int64
		}{{u.Cords, &of.Cords}, {u.Pompoms, &of.Pompoms}, {u.Seams, &of.Seams}} {
			if !known(part.mm) {
				continue
			}
			if perGram == nil {
				return nil, NoBall
			}
			g := new(big.Rat).Quo(part.mm, perGram)
			*part.mg = milligrams(g)
			sum.Add(sum, g)
		}
		more := new(big.Rat).Mul(sum, allowance)
		of.Allowance = milligrams(more)
		out[i] = round(sum.Add(sum, more), b)
		out[i].Of = of
	}
	return out, Nothing
}

// milligrams rounds a weight in grams to the nearest.
func milligrams(g *big.Rat) int64 { return nearestTo(g, big.NewRat(1, 1000)) }

// round works out, from the exact weight of one size in grams, what a page shows of it.
//
// A length is rounded up to five metres or yards, but only to the next one where five would go beyond the balls that hold the
// exact length: whoever divides the length by that of a ball must come to as many balls.
func round(grams *big.Rat, b Ball) plan.YarnAmount {
	y := plan.YarnAmount{Length: plan.NoLength, Milligrams: milligrams(grams)}
	if g := b.grams(); g != nil {
		y.Balls = int(ceilTo(grams, g))
	}
	per := b.mmPerGram()
	if per == nil {
		return y
	}
	mm := new(big.Rat).Mul(grams, per)
	hold := new(big.Rat).Mul(b.MM, big.NewRat(int64(y.Balls), 1))
	y.Length = plan.Length(upToFive(mm, hold, big.NewRat(1000, 1)) * 1000 * int64(plan.Millimetre))
	y.Yards = int(upToFive(mm, hold, big.NewRat(9144, 10)))
	return y
}

// upToFive is a length in units, rounded up to five of them or, where so many are not held, up to one.
func upToFive(mm, hold, unit *big.Rat) int64 {
	five := new(big.Rat).Mul(unit, big.NewRat(5, 1))
	n := 5 * ceilTo(mm, five)
	if new(big.Rat).Mul(unit, big.NewRat(n, 1)).Cmp(hold) > 0 {
		return ceilTo(mm, unit)
	}
	return n
}

// ceilTo is the least whole number of units that is not below x.
func ceilTo(x, unit *big.Rat) int64 {
	q := new(big.Rat).Quo(x, unit)
	n := new(big.Int).Div(q.Num(), q.Denom())
	if !q.IsInt() {
		n.Add(n, big.NewInt(1))
	}
	return n.Int64()
}

// nearestTo is the whole number of units nearest to x, halves up.
func nearestTo(x, unit *big.Rat) int64 {
	q := new(big.Rat).Quo(x, unit)
	q.Add(q, big.NewRat(1, 2))
	return new(big.Int).Div(q.Num(), q.Denom()).Int64()
}

// PompomYarn is the yarn of one pompom in millimetres: so many wraps over a former of a diameter, and a tie of 40 cm (as
// the worked constructions reckon).
func PompomYarn(wraps int, diameter plan.Length) *big.Rat {
	const tie = 400
	mm := big.NewRat(int64(diameter), int64(plan.Millimetre))
	mm.Mul(mm, big.NewRat(2*int64(wraps), 1))
	return mm.Add(mm, big.NewRat(tie, 1))
}

// knotLength is what the knot of a strand takes of its length. Common practice, no source.
const knotLength = 2 * plan.Centimetre

// FringeCut is how long a strand is cut that hangs as far as a length from both its ends when it is folded in half and knotted into an
// edge; [plan.NoLength] if that is not known.
func FringeCut(length plan.Length) plan.Length {
	if length <= 0 {
		return plan.NoLength
	}
	return 2*length + knotLength
}

// FringeYarn is the yarn of so many strands of a length, in millimetres; nil if either is not known.
func FringeYarn(strands int, cut plan.Length) *big.Rat {
	if strands <= 0 {
		return nil
	}
	return times(cut, int64(strands))
}

// seamFactor is how much longer the yarn of a seam is than the seam. Common practice, no source.
const seamFactor = 3

// SeamYarn is the yarn of a seam, in millimetres; nil if its length is not known.
func SeamYarn(length plan.Length) *big.Rat { return times(length, seamFactor) }

// times is a length so many times over, in millimetres; nil if it is not known.
func times(length plan.Length, n int64) *big.Rat {
	if length == plan.NoLength {
		return nil
	}
	return big.NewRat(int64(length)*n, int64(plan.Millimetre))
}

// cordFactor is how much longer the yarn of a cord is than the cord: chains take about 5 times their length (4.8 to 5.1
// measured by one maker: windchilde.com/bluedepth, Crochet Yarn Estimating), and the slip stitches worked back along them
// as much again (common practice, no source).
const cordFactor = 10

// CordYarn is the yarn of a cord of chains with slip stitches back along them, in millimetres; nil if the length is not
// known.
func CordYarn(length plan.Length) *big.Rat { return times(length, cordFactor) }
