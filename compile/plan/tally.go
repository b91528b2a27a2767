package plan

import "iter"

// Tally is how many there are of each of a few things, in the order in which they were met. It is small: to look through it takes less
// than a map, and much less room.
type Tally[K comparable] []Tallied[K]

// Tallied is how many there are of a thing.
type Tallied[K comparable] struct {
	Of K
	N  int
}

// Count is how many there are of a thing; 0 if it was not met.
func (t Tally[K]) Count(of K) int {
	for i := range t {
		if t[i].Of == of {
			return t[i].N
		}
	}
	return 0
}

// Add adds n to how many there are of a thing.
func (t *Tally[K]) Add(of K, n int) {
	for i := range *t {
		if (*t)[i].Of == of {
			(*t)[i].N += n
			return
		}
	}
	*t = append(*t, Tallied[K]{of, n})
}

// All goes through the things that were met.
func (t Tally[K]) All() iter.Seq2[K, int] {
	return func(yield func(K, int) bool) {
		for i := range t {
			if !yield(t[i].Of, t[i].N) {
				return
			}
		}
	}
}

// Total is how many there are of all things.
func (t Tally[K]) Total() int {
	n := 0
	for i := range t {
		n += t[i].N
	}
	return n
}

// Map is the same as a map.
func (t Tally[K]) Map() map[K]int {
	out := make(map[K]int, len(t))
	for i := range t {
		out[t[i].Of] += t[i].N
	}
	return out
}
