package value

import (
	"math/big"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

// Quantity is one number with its dimension, in the canonical unit of the dimension. A nil N stands for something that
// does not exist in the size at hand.
type Quantity struct {
	N   *big.Rat
	Dim Dim
}

// Vector is one quantity for each size, all of the same dimension.
type Vector struct {
	Dim Dim
	N   []*big.Rat // in the canonical unit; nil in a size in which the thing does not exist. Never written to.
	// Unknown says that the value could not be worked out; that was reported. N and Dim then mean nothing.
	Unknown bool
	// Fitted tells how a count was made from a length; nil for every other value.
	Fitted *Fitted
}

// Unknown is the vector of a value that could not be worked out.
var Unknown = Vector{Unknown: true}

// Same makes a vector that has the same number in n sizes. The number is in the canonical unit of the dimension.
func Same(x *big.Rat, d Dim, n int) Vector {
	v := Vector{Dim: d, N: make([]*big.Rat, n)}
	for i := range v.N {
		v.N[i] = x
	}
	return v
}

// Of makes a vector of counts; [plan.Absent] stands for a size in which there is none.
func Of(counts plan.Nums) Vector {
	v := Vector{N: make([]*big.Rat, len(counts))}
	for i, c := range counts {
		if c != plan.Absent {
			v.N[i] = whole(int64(c))
		}
	}
	return v
}

// OfLengths makes a vector of lengths; [plan.NoLength] stands for a size in which there is none.
func OfLengths(lengths plan.Lengths) Vector {
	v := Vector{Dim: Length, N: make([]*big.Rat, len(lengths))}
	for i, l := range lengths {
		if l != plan.NoLength {
			v.N[i] = big.NewRat(int64(l), int64(plan.Millimetre))
		}
	}
	return v
}

// At returns the quantity of size i.
func (v Vector) At(i int) Quantity {
	if v.Unknown || i < 0 || i >= len(v.N) {
		return Quantity{Dim: v.Dim}
	}
	return Quantity{v.N[i], v.Dim}
}

// Lengths returns the lengths rounded to micrometres, [plan.NoLength] where there is none. It is nil if the value is
// unknown or no length.
func (v Vector) Lengths() plan.Lengths {
	if v.Unknown || v.Dim != Length {
		return nil
	}
	out := make(plan.Lengths, len(v.N))
	for i, x := range v.N {
		if out[i] = plan.NoLength; x != nil {
			out[i] = plan.Length(roundTo(x, int64(plan.Millimetre)))
		}
	}
	return out
}

// Milligrams returns weights rounded to milligrams, 0 where there is none. It is nil if the value is unknown or no
// weight.
func (v Vector) Milligrams() []int64 {
	if v.Unknown || v.Dim != Mass {
		return nil
	}
	out := make([]int64, len(v.N))
	for i, x := range v.N {
		if x != nil {
			out[i] = roundTo(x, 1000)
		}
	}
	return out
}

// Thousandths returns the numbers in thousandths of their canonical unit, rounded, and none where there is no number.
func (v Vector) Thousandths(none int64) []int64 {
	out := make([]int64, len(v.N))
	for i, x := range v.N {
		if out[i] = none; x != nil {
			out[i] = roundTo(x, 1000)
		}
	}
	return out
}

// roundTo returns x times scale as a whole number, halves away from zero.
func roundTo(x *big.Rat, scale int64) int64 {
	if n, ok := small(x); ok {
		return n * scale
	}
	if n, d := x.Num(), x.Denom(); n.IsInt64() && d.IsInt64() {
		if n, d := n.Int64(), d.Int64(); max(n, -n, d) < 1<<31 && scale < 1<<30 {
			half := d
			if n < 0 {
				half = -d
			}
			return (2*n*scale + half) / (2 * d)
		}
	}
	doubled := new(big.Rat).Mul(x, big.NewRat(2*scale, 1))
	half := big.NewRat(int64(x.Sign()), 1)
	doubled.Add(doubled, half)
	q := new(big.Int).Quo(doubled.Num(), new(big.Int).Mul(doubled.Denom(), big.NewInt(2)))
	return q.Int64()
}

// floor returns the greatest whole number not above x.
func floor(x *big.Rat) int64 { return new(big.Int).Div(x.Num(), x.Denom()).Int64() }

// String shows a quantity as a message does: lengths in centimetres, a count that is not whole as a mixed number.
func (q Quantity) String() string {
	if q.N == nil {
		return "-"
	}
	d := dimensions[q.Dim]
	x := new(big.Rat).Quo(q.N, d.per)
	if q.Dim == Count && !x.IsInt() && x.Denom().BitLen() <= 10 {
		return mixed(x)
	}
	text := x.FloatString(2)
	if strings.Contains(text, ".") {
		text = strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		text = "0"
	}
	return text + d.unit
}

// mixed writes a fraction as the trade does: 44 1/2.
func mixed(x *big.Rat) string {
	sign := ""
	if x.Sign() < 0 {
		sign = "-"
	}
	whole, rest := new(big.Int).QuoRem(new(big.Int).Abs(x.Num()), x.Denom(), new(big.Int))
	part := rest.String() + "/" + x.Denom().String()
	if whole.Sign() == 0 {
		return sign + part
	}
	return sign + whole.String() + " " + part
}

// perSize gathers the values of some sizes for a message; pick says which, nil means all.
func perSize(names []string, v Vector, pick func(i int) bool) diag.PerSize {
	p := diag.PerSize{All: true}
	for i, x := range v.N {
		if x == nil || pick != nil && !pick(i) {
			p.All = false
			continue
		}
		p.Names = append(p.Names, names[i])
		p.Values = append(p.Values, Quantity{x, v.Dim}.String())
	}
	return p
}

// concerned returns the names of the sizes that a message concerns, nil if it concerns all.
func concerned(names []string, p diag.PerSize) []string {
	if len(p.Names) == len(names) {
		return nil
	}
	return p.Names
}
