package compile

import (
	"cmp"
	"math/big"
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/standard"
)

// contents works out what the finished piece is made of, as a label says it. It is known if every yarn that is used says its
// fibres, and these make a hundred; yarns of unlike fibres must have amounts too.
func (c *checker) contents() {
	var yarns []plan.Yarn
	for i, y := range c.pat.Yarns {
		if c.used[i] {
			yarns = append(yarns, y)
		}
	}
	c.pat.Contents = contentsOf(yarns, c.z)
}

// contentsOf adds up the fibres of some yarns for so many sizes, in falling order.
func contentsOf(yarns []plan.Yarn, sizes int) *plan.Contents {
	if len(yarns) == 0 {
		return nil
	}
	each := make([]fibreSum, len(yarns))
	alike := true
	for i, y := range yarns {
		for _, s := range y.Fibre {
			each[i].add(s.Fibre, int64(s.Percent))
		}
		if each[i].total() != 100 {
			return nil
		}
		alike = alike && slices.Equal(each[i].hundred(), each[0].hundred())
	}
	out := &plan.Contents{}
	for z := range sizes {
		all, unlike := each[0], false
		if !alike {
			var ok bool
			if all, unlike, ok = fibresOf(yarns, each, z, sizes); !ok {
				return nil
			}
		}
		out.Shares, out.Weighted = append(out.Shares, all.hundred()), append(out.Weighted, unlike)
	}
	return out
}

// fibresOf adds up the fibres of yarns by what a size takes of each. unlike: it takes several that are not made of the same.
func fibresOf(yarns []plan.Yarn, each []fibreSum, z, sizes int) (all fibreSum, unlike, ok bool) {
	var first []plan.Share
	for i, y := range yarns {
		if len(y.Amount) != sizes {
			return nil, false, false
		}
		weight := y.Amount[z].Milligrams
		if weight == 0 {
			continue
		}
		shares := each[i].hundred()
		unlike = unlike || first != nil && !slices.Equal(first, shares)
		first = shares
		for _, s := range each[i] {
			all.add(s.fibre, s.weight*weight)
		}
	}
	return all, unlike, true
}

// fibreSum is fibres with how much there is of each, in the order in which they were met. The unit is any.
type fibreSum []struct {
	fibre  string
	weight int64
}

// add adds so much of a fibre. Two words for one fibre, such as linen and flax, are one.
func (f *fibreSum) add(fibre string, weight int64) {
	for i := range *f {
		if one := &(*f)[i]; one.fibre == fibre || sameFibre(one.fibre, fibre) {
			one.weight += weight
			return
		}
	}
	*f = append(*f, struct {
		fibre  string
		weight int64
	}{fibre, weight})
}

func (f fibreSum) total() int64 {
	sum := int64(0)
	for _, s := range f {
		sum += s.weight
	}
	return sum
}

func sameFibre(a, b string) bool {
	x, known := standard.FibreName(a, "en")
	y, _ := standard.FibreName(b, "en")
	return known && x == y
}

// hundred gives the fibres in whole per cent that add up to a hundred, in falling order: each is rounded down, and what is left
// goes to those that lost most. No fibre is left out, or another might be called a hundred per cent, which is said only where
// there is no other (Regulation (EU) No 1007/2011, by its summary): a trace is 1 %, for which the largest share gives way.
func (f fibreSum) hundred() []plan.Share {
	total := f.total()
	if total == 0 {
		return nil
	}
	type part struct {
		plan.Share
		exact, lost *big.Rat
	}
	var parts []part
	left := 100
	for _, s := range f {
		exact := new(big.Rat).Mul(big.NewRat(s.weight, total), big.NewRat(100, 1))
		whole := int(floor(exact))
		parts = append(parts, part{plan.Share{Fibre: s.fibre, Percent: whole}, exact, new(big.Rat).Sub(exact, big.NewRat(int64(whole), 1))})
		left -= whole
	}
	slices.SortStableFunc(parts, func(a, b part) int { return cmp.Or(b.lost.Cmp(a.lost), b.exact.Cmp(a.exact)) })
	for i := range left {
		parts[i].Percent++
	}
	slices.SortStableFunc(parts, func(a, b part) int { return cmp.Or(b.exact.Cmp(a.exact), b.Percent-a.Percent) })
	var out []plan.Share
	for _, p := range parts {
		if p.Percent == 0 {
			p.Percent++
			out[0].Percent--
		}
		out = append(out, p.Share)
	}
	slices.SortStableFunc(out, func(a, b plan.Share) int { return b.Percent - a.Percent })
	return out
}
