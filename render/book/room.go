package book

import (
	"errors"

	"ovillo/render/layout"
)

// mostPages is how many pages a document may have. A book of thirty patterns has three hundred, and a thousand take half a gigabyte
// to set. It is a variable for tests alone.
var mostPages = 1_000

// MostPages is how many pages a document may have.
func MostPages() int { return mostPages }

// ErrLong is the error of a document that would have more pages than [MostPages].
var ErrLong = errors.New("more pages than a document may have")

// room is what a document being set has filled of the pages it may have. It is looked at while strips are made, so that a document
// that is far too long takes no more time and memory than the longest one that is not.
type room struct{ filled float64 }

// take notes that so many pages are filled. Where that is too much it leaves what sets the document by a panic, for [leave].
func (r *room) take(pages float64) {
	if r != nil {
		r.filled += pages
		r.holds(0)
	}
}

// give notes that strips are taken out of the flow again, on pages so high.
func (r *room) give(strips []layout.Strip, high float64) {
	for _, t := range strips {
		if r != nil {
			r.filled -= t.H / high
		}
	}
}

// holds leaves likewise where so many pages more would be too much.
func (r *room) holds(pages float64) {
	if r != nil && r.filled+pages > float64(mostPages) {
		panic(ErrLong)
	}
}

// leave is deferred by what sets a document: too long a one is an error.
func leave(err *error) {
	switch r := recover(); r {
	case nil:
	case ErrLong:
		*err = ErrLong
	default:
		panic(r)
	}
}

// tooLong reports whether the sheets of volumes are too many: white between strips fills them as well.
func tooLong(volumes []*setter) bool {
	n := 0
	for _, s := range volumes {
		n += len(s.sheets)
	}
	return n > mostPages
}
