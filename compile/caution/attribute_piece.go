package caution

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// split takes the name of an attribute apart: cord.zone is the zone of a cord.
func split(name string) (element, string) {
	if of, rest, ok := strings.Cut(name, "."); ok {
		return element(of), rest
	}
	return piece, name
}

// unitOf is what one is, by the end of the name.
func unitOf(name string) int64 {
	switch {
	case strings.HasSuffix(name, "_cm"):
		return int64(plan.Centimetre)
	case strings.HasSuffix(name, "_mm"):
		return int64(plan.Millimetre)
	}
	return 1
}

func either(t, other Truth) Truth {
	if t == Unknown {
		return other
	}
	return t
}

// never is of what only a printer could do and this one does not.
func never(*view) Truth { return False }

var truthsOfPiece = map[string]func(*view) Truth{
	"for_sale":            func(e *view) Truth { return e.facts.ForSale },
	"sleep_use":           func(e *view) Truth { return e.facts.SleepUse.Is },
	"upper_outerwear":     func(e *view) Truth { return either(e.facts.Outerwear, Outerwear(e.facts.Kind)) },
	"ends_below_crotch":   func(e *view) Truth { return either(e.facts.BelowCrotch, BelowCrotch(e.facts.Kind)) },
	"ends_at_ankle":       func(e *view) Truth { return either(e.facts.AtAnkle, AtAnkle(e.facts.Kind)) },
	"one_piece":           func(e *view) Truth { return either(e.facts.OnePiece, OnePiece(e.facts.Kind)) },
	"tight_fitting":       func(e *view) Truth { return e.facts.Tight },
	"soft_filled":         func(e *view) Truth { return e.facts.SoftFilled },
	"weighted":            func(e *view) Truth { return e.facts.Weighted.Is },
	"whole_fits_cylinder": wholeFits,
	"has_floats":          func(e *view) Truth { return e.facts.Floats.Is },
	"raised_surface":      func(e *view) Truth { return e.facts.Raised },
	"fluffy_yarn":         func(e *view) Truth { return e.facts.Fluffy },
	"prints_care_symbols": never,
	"has_care_text":       func(e *view) Truth { return e.facts.CareText },
	"has_fibre_text":      func(e *view) Truth { return e.facts.FibreText },
	"says_pure":           func(e *view) Truth { return e.facts.SaysPure.Is },
	"animal_part":         func(e *view) Truth { return e.facts.AnimalPart.Is },
	"safety_claim":        func(e *view) Truth { return e.facts.SafetyClaim.Is },
	"adult_only_claim":    func(e *view) Truth { return e.facts.AdultOnly.Is },
}

var wordsOfPiece = map[string]func(*view) string{
	"kind":        func(e *view) string { return e.class },
	"prints_mark": func(*view) string { return "none" },
}

var numbersOfPiece = map[string]func(*view) reach{
	"age_min_months":      youngest,
	"age_declared_months": declared,
	"age_max_months":      oldest,
	"height_min_cm":       func(e *view) reach { return e.length(e.facts.Height) },
	"us_size":             usSize,
	"length_cm":           func(e *view) reach { return e.length(e.facts.Length) },
	"diameter_mm":         func(e *view) reach { return e.length(e.facts.Diameter) },
	"gap_mm":              func(e *view) reach { return e.length(e.facts.Gap) },
	"neck_opening_mm":     func(e *view) reach { return e.length(e.facts.NeckOpening) },
	"fibre_count": func(e *view) reach {
		if e.facts.Fibres < 0 {
			return anyNumber
		}
		return exactly(int64(e.facts.Fibres))
	},
}

// said tells where the source says what an attribute of the piece rests on.
var said = map[string]func(*Facts) source.Span{
	"sleep_use":        func(f *Facts) source.Span { return f.SleepUse.At },
	"weighted":         func(f *Facts) source.Span { return f.Weighted.At },
	"has_floats":       func(f *Facts) source.Span { return f.Floats.At },
	"animal_part":      func(f *Facts) source.Span { return f.AnimalPart.At },
	"says_pure":        func(f *Facts) source.Span { return f.SaysPure.At },
	"safety_claim":     func(f *Facts) source.Span { return f.SafetyClaim.At },
	"adult_only_claim": func(f *Facts) source.Span { return f.AdultOnly.At },
	"gap_mm":           func(f *Facts) source.Span { return f.GapAt },
}

// declared is the age of the youngest wearer of a size, as the source gives it.
func declared(e *view) reach {
	if a := months(e.facts.AgeMonths, e.size); a >= 0 {
		return exactly(int64(a))
	}
	return anyNumber
}

// youngest is the age that the rules go by. A size for 6 to 8 years is one for children under 7, so that of the youngest
// counts. A stuffed toy to cuddle is one for the youngest, whatever its label says (scope of EN 71-1: soft-filled toys for
// holding and cuddling count as toys for under 36 months); where only the rules of the United States hold, its label counts.
func youngest(e *view) reach {
	r := declared(e)
	if e.class != "toy" || !e.facts.inEurope() || e.rule != nil && e.rule.onlyUS() {
		return r
	}
	switch e.facts.SoftFilled {
	case True:
		return exactly(0)
	case Unknown:
		return reach{0, r.most}
	}
	return r
}

// inEurope reports whether rules of the European Union or the United Kingdom hold.
func (f *Facts) inEurope() bool {
	return len(f.Markets) == 0 || slices.Contains(f.Markets, "eu") || slices.Contains(f.Markets, "uk")
}

func oldest(e *view) reach {
	if a := months(e.facts.AgeTo, e.size); a >= 0 {
		return exactly(int64(a))
	}
	if a := months(e.facts.AgeMonths, e.size); a >= 0 {
		return reach{int64(a), anyNumber.most}
	}
	return anyNumber
}

// usSize derives the size of the United States from the age: 2T is one of two years, 3 to 16 are years, and what is
// smaller counts as 0. A size that begins below two years and goes beyond them counts as 2T.
func usSize(e *view) reach {
	age := months(e.facts.AgeMonths, e.size)
	switch {
	case age < 0:
		return anyNumber
	case age >= 24:
		return exactly(int64(age / 12))
	case months(e.facts.AgeTo, e.size) > 24:
		return exactly(2)
	}
	return exactly(0)
}

// The small-parts cylinder of 16 CFR 1501.4: 31.7 mm across, and up to 57.1 mm deep. What is longer than its diagonal cannot
// lie in it; what is at most as long as it is wide does.
const (
	cylinderWidth    = 31700
	cylinderDiagonal = 65400
)

// fits tells whether a thing fits the cylinder, by its largest measure.
func fits(largest reach) Truth {
	switch {
	case largest.most <= cylinderWidth:
		return True
	case largest.least > cylinderDiagonal:
		return False
	}
	return Unknown
}

func wholeFits(e *view) Truth {
	if across := e.length(e.facts.Diameter); across != anyNumber && across.least > cylinderWidth {
		return False // nowhere is it thin enough
	}
	length, across := e.length(e.facts.Length), e.length(e.facts.Diameter)
	if length == anyNumber || across == anyNumber {
		if length.least > cylinderDiagonal && length != anyNumber {
			return False
		}
		return Unknown // the other measure may be larger
	}
	return fits(exactly(max(length.least, across.least)))
}
