package caution

// Truth is whether something holds: it may not be known.
type Truth int8

// The truths. The zero value is that nothing is known.
const (
	Unknown Truth = iota
	True
	False
)

// truth makes a Truth of what is known.
func truth(b bool) Truth {
	if b {
		return True
	}
	return False
}

// lack says what is missing for a rule to be decided, in the order in which it is asked for: without the kind the age
// need not be asked, and so on.
type lack uint8

const (
	none lack = iota
	lackKind
	lackAge
	lackZone
	lackFree
	lackGap
)

// verdict is the conjunction of several truths: false if one of them is, else unknown if one of them is. It keeps the
// first thing that is missing.
type verdict struct {
	holds Truth
	lack  lack
}

func holds() verdict { return verdict{holds: True} }

// and adds a condition; what is missing if it is unknown is l.
func (v verdict) and(t Truth, l lack) verdict {
	switch {
	case v.holds == False || t == False:
		return verdict{holds: False}
	case t == Unknown && v.holds == True:
		return verdict{Unknown, l}
	case t == Unknown:
		return verdict{Unknown, min(v.lack, l)}
	}
	return v
}
