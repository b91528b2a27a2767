package book

import "strings"

// Edition is what sets an edition apart from the usual one, in which two languages face each other. Several may be put
// together.
type Edition uint8

// The editions.
const (
	After      Edition = 1 << iota // two languages, one after the other
	Large                          // large print
	LowInk                         // black lines on white, nothing filled
	LeftHanded                     // for makers who hold the hook in the left hand
	Tester                         // for those who try the pattern out: numbers at the rows and room for queries
	Booklet                        // pages of half a sheet, two on each side of it, in the order in which they are folded
)

// editionNames are the names of the editions, in the order of their bits.
var editionNames = [...]string{"after", "large", "low-ink", "left", "tester", "booklet"}

// Editions lists the editions, each by itself.
func Editions() []Edition {
	list := make([]Edition, len(editionNames))
	for i := range list {
		list[i] = 1 << i
	}
	return list
}

// EditionNamed returns the edition of a name; the usual one is called facing.
func EditionNamed(name string) (e Edition, ok bool) {
	for i, n := range editionNames {
		if n == name {
			return 1 << i, true
		}
	}
	return 0, name == usualName
}

// usualName is the name of the usual edition.
const usualName = "facing"

// EditionNames lists the names of the editions, the usual one first.
func EditionNames() []string { return append([]string{usualName}, editionNames[:]...) }

// String names an edition, several with a hyphen between them: "large-left".
func (e Edition) String() string {
	var names []string
	for i, n := range editionNames {
		if e&(1<<i) != 0 {
			names = append(names, n)
		}
	}
	if names == nil {
		return usualName
	}
	return strings.Join(names, "-")
}

// Has reports whether all of some editions are among those put together.
func (e Edition) Has(some Edition) bool { return e&some == some }
