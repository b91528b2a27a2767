package standard

import (
	"ovillo/compile/plan"
)

// growth is one row of the growth table.
type growth struct {
	months        int
	low, mid, top plan.Length // head: the smaller 3rd percentile, the mean of the medians, the larger 97th, of boys and girls
}

var heads = func() []growth {
	var out []growth
	for _, r := range table("growth.csv") {
		cm := func(column string) plan.Length { return r.length(column, plan.Centimetre) }
		out = append(out, growth{months: r.whole("age_months"),
			low: min(cm("head_boy_p3"), cm("head_girl_p3")),
			mid: (cm("head_boy_p50") + cm("head_girl_p50")) / 2,
			top: max(cm("head_boy_p97"), cm("head_girl_p97"))})
	}
	return out
}()

// Head returns the head circumference of children of an age in months: small, middle and large. Between two ages of the
// table it lies on the line between them. ok is false beyond the five years of the table. Source: WHO Child Growth
// Standards, head circumference for age.
func Head(months int) (low, mid, top plan.Length, ok bool) {
	last := heads[len(heads)-1]
	if months < heads[0].months || months > last.months {
		return 0, 0, 0, false
	}
	a, b := heads[0], last
	for _, h := range heads {
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

// Baby holds body measures of one size of babies and toddlers.
type Baby struct {
	Height              plan.Length // the European size
	AgeFrom, AgeTo      int         // months
	Chest, Waist        plan.Length
	HipsOverNappy       plan.Length
	InseamLow, InseamUp plan.Length // two charts differ; the shorter and the longer
	Arm                 plan.Length
}

// Babies is the table of babies and toddlers, smallest first.
var Babies = func() []Baby {
	var out []Baby
	for _, r := range table("babies.csv") {
		cm := func(column string) plan.Length { return r.length(column, plan.Centimetre) }
		out = append(out, Baby{Height: cm("height"), AgeFrom: r.whole("age_from"), AgeTo: r.whole("age_to"),
			Chest: cm("chest"), Waist: cm("waist"), HipsOverNappy: cm("hips"), Arm: cm("arm"),
			InseamLow: min(cm("inseam_a"), cm("inseam_b")), InseamUp: max(cm("inseam_a"), cm("inseam_b"))})
	}
	return out
}()

// BabyOf returns the smallest size of babies and toddlers that is made for an age in months, false beyond the table.
func BabyOf(months int) (Baby, bool) {
	for _, b := range Babies {
		if months >= 0 && months <= b.AgeTo {
			return b, true
		}
	}
	return Baby{}, false
}
