package figure

import (
	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Measured is a measure of the finished piece, as a check needs it.
type Measured struct {
	Name   string // identifier: hips
	Values plan.Lengths
	Sizes  []string // names of the sizes
	Span   source.Span
}

// Fits compares a measure with the wearer. Ease is the measure minus the wearer's, and should lie between lo and hi in
// every size; where it does not, one warning (OV755) names the sizes. Sizes in which a figure is not known are left out.
func Fits(m Measured, body string, wearer, lo, hi plan.Lengths) (*plan.Fit, diag.List) {
	n := len(m.Values)
	if n == 0 || len(wearer) != n || len(lo) != n || len(hi) != n {
		return nil, nil // a figure is unknown; that was reported
	}
	f := &plan.Fit{Body: body, Values: wearer, Ease: make(plan.Lengths, n), Lo: lo[0], Hi: hi[0]}
	var off sizeTable
	for i, v := range m.Values {
		f.Ease[i] = plan.NoLength
		if v == plan.NoLength || wearer[i] == plan.NoLength {
			continue
		}
		f.Ease[i] = v - wearer[i]
		if lo[i] == plan.NoLength || hi[i] == plan.NoLength || f.Ease[i] >= lo[i] && f.Ease[i] <= hi[i] {
			continue
		}
		off.add(m.Sizes, i, cm(f.Ease[i])+" cm", "")
	}
	if off.empty() {
		return f, nil
	}
	return f, diag.List{{Code: "OV755", Span: m.Span, Sizes: off.concerned(n), Args: diag.Args{
		"name": m.Name, "body": body, "have": off.found(n), "lo": length(lo[off.at[0]]), "hi": length(hi[off.at[0]])}}}
}

// UsualWithin is how far a measure may lie from the length wanted where the source does not say: 1 cm. Common practice,
// no source.
const UsualWithin = plan.Centimetre

// Wanted compares a measure with the length that is wanted. It may lie `within` of it either way; a nil within stands for
// [UsualWithin]. Where it does not, one error (OV756) names the sizes.
func Wanted(m Measured, wanted, within plan.Lengths) diag.List {
	n := len(m.Values)
	if within == nil {
		within = make(plan.Lengths, n)
		for i := range within {
			within[i] = UsualWithin
		}
	}
	if n == 0 || len(wanted) != n || len(within) != n {
		return nil // a figure is unknown; that was reported
	}
	var off sizeTable
	for i, v := range m.Values {
		if v == plan.NoLength || wanted[i] == plan.NoLength || within[i] == plan.NoLength {
			continue
		}
		if d := v - wanted[i]; d > within[i] || -d > within[i] {
			off.add(m.Sizes, i, cm(v)+" cm", cm(wanted[i])+" cm")
		}
	}
	if off.empty() {
		return nil
	}
	return diag.List{{Code: "OV756", Span: m.Span, Sizes: off.concerned(n), Args: diag.Args{
		"name": m.Name, "have": off.found(n), "need": off.needed(n), "within": length(within[off.at[0]])}}}
}

// sizeTable gathers what is found and what is needed in the sizes that a message concerns.
type sizeTable struct {
	at                   []int
	names, founds, needs []string
}

func (t *sizeTable) add(sizes []string, i int, found, needed string) {
	name := "?"
	if i < len(sizes) {
		name = sizes[i]
	}
	t.at = append(t.at, i)
	t.names, t.founds, t.needs = append(t.names, name), append(t.founds, found), append(t.needs, needed)
}

func (t *sizeTable) empty() bool { return len(t.at) == 0 }

// concerned names the sizes of the message, nil if it holds for all n.
func (t *sizeTable) concerned(n int) []string {
	if len(t.at) == n {
		return nil
	}
	return t.names
}

func (t *sizeTable) found(n int) diag.PerSize {
	return diag.PerSize{Names: t.names, Values: t.founds, All: len(t.at) == n}
}

func (t *sizeTable) needed(n int) diag.PerSize {
	return diag.PerSize{Names: t.names, Values: t.needs, All: len(t.at) == n}
}

func length(l plan.Length) diag.Length { return diag.Length(l) }
