package standard

import (
	"ovillo/compile/plan"
	"sync"
)

// growth is one row of the growth table.
type growth struct {
	months        int
	low, mid, top plan.Length // head: the smaller 3rd percentile, the mean of the medians, the larger 97th, of boys and girls
}

// growthSource is the id of the source of the growth table.
const growthSource = "S04"

var curve = sync.OnceValue(func() []growth {
	var out []growth
	for _, r := range table("growth.csv") {
		cm := func(column string) plan.Length { return r.length(column, plan.Centimetre) }
		out = append(out, growth{months: r.whole("age_months"),
			low: min(cm("head_boy_p3"), cm("head_girl_p3")),
			mid: (cm("head_boy_p50") + cm("head_girl_p50")) / 2,
			top: max(cm("head_boy_p97"), cm("head_girl_p97"))})
	}
	return out
})

// Head returns the head circumference of children of an age in months: small, middle and large. Between two ages of the
// table it lies on the line between them. ok is false beyond the five years of the table. Source: WHO Child Growth
// Standards, head circumference for age.
func Head(months int) (low, mid, top plan.Length, ok bool) {
	last := curve()[len(curve())-1]
	if months < curve()[0].months || months > last.months {
		return 0, 0, 0, false
	}
	a, b := curve()[0], last
	for _, h := range curve() {
		if h.months <= months {
			a = h
		}
		if h.months >= months {
			b = h
			break
		}
	}
	span, into := plan.Length(max(1, b.months-a.months)), plan.Length(months-a.months)
	on := func(x, y plan.Length) plan.Length { return x + (y-x)*into/span }
	return on(a.low, b.low), on(a.mid, b.mid), on(a.top, b.top), true
}
