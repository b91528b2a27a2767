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
// heavy. The result is nil if there is no fabric, or nothing is left for it; NoBall if a length cannot be weighed.
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
	if sum.Sign() == 0 || left.Sign() <= 0 {
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
		grams := new(big.Rat)
		if u.Fabric > 0 {
			if per == nil {
				return nil, NoSwatch
			}
			grams.Mul(big.NewRat(int64(u.Fabric), 1), per)
		}
		if mm := u.byLength(); mm.Sign() > 0 {
			if perGram == nil {
				return nil, NoBall
			}
			grams.Add(grams, mm.Quo(mm, perGram))
		}
		grams.Mul(grams, new(big.Rat).Add(big.NewRat(1, 1), allowance))
		out[i] = amount(grams, b)
	}
	return out, Nothing
}

// amount rounds the grams of one size, the allowance included, in each of the ways a page shows them.
func amount(grams *big.Rat, b Ball) plan.YarnAmount {
	const fiveMetres = 5000 // millimetres
	y := plan.YarnAmount{Length: plan.NoLength, Milligrams: nearestTo(grams, big.NewRat(1, 1000))}
	if per := b.mmPerGram(); per != nil {
		mm := new(big.Rat).Mul(grams, per)
		y.Length = plan.Length(ceilTo(mm, big.NewRat(fiveMetres, 1))*fiveMetres) * plan.Millimetre
	}
	if g := b.grams(); g != nil {
		y.Balls = int(ceilTo(grams, g))
	}
	return y
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

// cordFactor is how much longer the yarn of a cord is than the cord: chains take about 5 times their length (4.8 to 5.1
// measured by one maker: windchilde.com/bluedepth, Crochet Yarn Estimating), and the slip stitches worked back along them
// as much again (common practice, no source).
const cordFactor = 10

// CordYarn is the yarn of a cord of chains with slip stitches back along them, in millimetres; nil if the length is not
// known.
func CordYarn(length plan.Length) *big.Rat {
	if length == plan.NoLength {
		return nil
	}
	mm := big.NewRat(int64(length), int64(plan.Millimetre))
	return mm.Mul(mm, big.NewRat(cordFactor, 1))
}
