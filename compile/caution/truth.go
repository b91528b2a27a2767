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

func (t Truth) not() Truth {
	switch t {
	case True:
		return False
	case False:
		return True
	}
	return Unknown
}

// verdict is a truth, and if it is not known the attributes that were not known and mattered.
type verdict struct {
	holds Truth
	lacks attributes
}

// and is false if one of two verdicts is, else unknown if one of them is.
func (v verdict) and(o verdict) verdict {
	switch {
	case v.holds == False || o.holds == False:
		return verdict{holds: False}
	case v.holds == Unknown || o.holds == Unknown:
		return verdict{Unknown, v.lacks | o.lacks}
	}
	return verdict{holds: True}
}

// or is true if one of two verdicts is, else unknown if one of them is.
func (v verdict) or(o verdict) verdict {
	switch {
	case v.holds == True || o.holds == True:
		return verdict{holds: True}
	case v.holds == Unknown || o.holds == Unknown:
		return verdict{Unknown, v.lacks | o.lacks}
	}
	return verdict{holds: False}
}
