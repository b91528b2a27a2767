package value

import (
	"math/big"
	"sync"
)

// This file works whole numbers of a few figures, which nearly all numbers of a source are, without the care that fractions need. The
// results are the same. Numbers are shared: no Rat of a value is ever written to.

// mostShared is the number up to which whole numbers are made once.
const mostShared = 1024

var shared = sync.OnceValue(func() []big.Rat {
	out := make([]big.Rat, mostShared)
	for i := range out {
		out[i].SetInt64(int64(i))
	}
	return out
})

// whole is a whole number.
func whole(n int64) *big.Rat {
	if n >= 0 && n < mostShared {
		return &shared()[n]
	}
	return new(big.Rat).SetInt64(n)
}

// small is a number as an integer, if it is one so small that no sum or product of two such overflows.
func small(x *big.Rat) (int64, bool) {
	if !x.IsInt() || !x.Num().IsInt64() {
		return 0, false
	}
	n := x.Num().Int64()
	return n, n > -1<<31 && n < 1<<31
}

// smalls are two numbers as integers, if both are small.
func smalls(a, b *big.Rat) (m, n int64, ok bool) {
	m, first := small(a)
	n, second := small(b)
	return m, n, first && second
}

func sum(a, b *big.Rat) *big.Rat {
	if m, n, ok := smalls(a, b); ok {
		return whole(m + n)
	}
	return new(big.Rat).Add(a, b)
}

func difference(a, b *big.Rat) *big.Rat {
	if m, n, ok := smalls(a, b); ok {
		return whole(m - n)
	}
	return new(big.Rat).Sub(a, b)
}

func product(a, b *big.Rat) *big.Rat {
	if m, n, ok := smalls(a, b); ok {
		return whole(m * n)
	}
	return new(big.Rat).Mul(a, b)
}

// quotient is a divided by b, which is not zero.
func quotient(a, b *big.Rat) *big.Rat {
	if m, n, ok := smalls(a, b); ok && m%n == 0 {
		return whole(m / n)
	}
	return new(big.Rat).Quo(a, b)
}
