package words

// Manner is how a language writes what it says, where that is not as usual. The zero Manner is the usual one.
type Manner struct {
	Full  bool // nothing is abbreviated
	Named bool // in a list of numbers each stands behind the name of its size
	Left  bool // for a maker who holds the hook in the left hand: the work comes out mirrored
	// Screen is for a page on a screen: it explains boxes that are ticked there, and says nothing of columns and tapes, which paper has.
	Screen bool
}

// With returns the same language writing in another manner.
func (l *Language) With(m Manner) *Language {
	if m == l.read.manner {
		return l
	}
	r := *l.read
	r.manner = m
	return newLanguage(&r, l.speak)
}

// Manner returns how the language writes.
func (l *Language) Manner() Manner { return l.read.manner }
