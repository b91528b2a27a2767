package fabric

import (
	"math"
	"slices"

	"ovillo/compile/stitch"
)

// ID names an element of a fabric: a stitch, a chain space, a ring. IDs are given in the order of making.
type ID int32

// Kind says what an element of an edge is.
type Kind uint8

// The kinds of element.
const (
	Stitch Kind = iota // a stitch, or one chain of a foundation (its form is then ch)
	Space              // an unbroken run of chains between two stitches
	Slip               // a slip stitch: never on an edge, but it can be named
	Ring
	End // the end of a row, as a place of an edge that runs along a side
)

// Aspect says which side of an element is meant.
type Aspect uint8

// The aspects.
const (
	Top       Aspect = iota // the top of a stitch; a space as a whole
	GapAfter                // between it and the next
	OtherSide               // what lies below: the foot of a stitch, a chain from its other side
	Before                  // the side of a stitch before it
	After                   // the side after it
	OneChain                // one chain of a space: Place.Sub
)

// Place is something a hook can go into.
type Place struct {
	ID  ID
	Asp Aspect
	Sub int32
}

// Elem is an element of the fabric.
type Elem struct {
	Kind   Kind
	Form   FormID
	N      int32 // Space: its chains
	Into   Place // first place it was worked into; ID -1 if none
	Into2  Place // last place, for a stitch that draws several together
	Row    int32 // serial number of the row that made it
	Yarn   int32
	Facing bool   // made with the wrong side facing
	Used   uint16 // how often it was worked into, up to the most that can be counted
}

// firstElems is for how many elements a fabric has room at first: those of a bootee.
const firstElems = 1024

var nowhere = Place{ID: -1}

// FormID is the number of a form in its fabric: an element holds no text, so that a large fabric is one flat array.
type FormID uint16

// chainForm is the chain of a foundation, the first form of every fabric.
const chainForm FormID = 0

// Fabric is all the fabric of one size.
type Fabric struct {
	Size    int // index of the size: which number of an Op holds
	Elems   []Elem
	Parts   map[string]*Part
	Limit   int  // most elements allowed; 0: no limit
	Plain   bool // work stitch by stitch, even where one follows the other alike; the result is the same
	EachRow bool // work row by row, even where one follows the other alike; the result is the same to whoever asks for rows

	row     row // that is being worked; one at a time
	runs    room[ID]
	traces  room[Trace]
	results room[Result]

	rides  map[ID][]stitch.Form // the picots on an element
	behind map[ID]bool          // the elements that pass behind the stitches they cross
	legs   map[ID][]Place       // of an element that draws more than two places together: all of them
	spaced bool
	rows   int32
	steps  int // instructions carried out
	forms  []stitch.Form
}

// New makes an empty fabric for size number z.
func New(z, limit int) *Fabric {
	f := &Fabric{Size: z, Limit: limit, Parts: map[string]*Part{}}
	f.intern(stitch.Form{ID: stitch.Chain, Together: 1})
	return f
}

// Spaced reports whether any chain space was made.
func (f *Fabric) Spaced() bool { return f.spaced }

// Rows is the number of the last row of all.
func (f *Fabric) Rows() int32 { return f.rows }

func (f *Fabric) add(e *Elem) ID {
	f.spaced = f.spaced || e.Kind == Space
	if n := len(f.Elems); n == cap(f.Elems) {
		// Large slices grow by a quarter of their length, so that most of a fabric would be copied several times.
		f.Elems = slices.Grow(f.Elems, max(n, firstElems))
	}
	f.Elems = append(f.Elems, *e)
	return ID(len(f.Elems) - 1)
}

// Used reports how often an element was worked into.
func (f *Fabric) Used(id ID) int { return int(f.Elems[id].Used) }

func (f *Fabric) use(id ID) {
	if u := &f.Elems[id].Used; *u < math.MaxUint16 {
		*u++
	}
}

// intern gives a form its number.
func (f *Fabric) intern(form stitch.Form) FormID {
	for i := len(f.forms) - 1; i >= 0; i-- {
		if f.forms[i] == form {
			return FormID(i)
		}
	}
	f.forms = append(f.forms, form)
	return FormID(len(f.forms) - 1)
}

// standsOn keeps the places of an element that draws more than two together: the element itself has room for the first and the
// last.
func (f *Fabric) standsOn(id ID, legs []Place) {
	if len(legs) <= 2 {
		return
	}
	if f.legs == nil {
		f.legs = map[ID][]Place{}
	}
	f.legs[id] = slices.Clone(legs)
}

func (f *Fabric) passesBehind(id ID) {
	if f.behind == nil {
		f.behind = map[ID]bool{}
	}
	f.behind[id] = true
}

// Behind reports whether an element was worked behind the stitches that it crosses.
func (f *Fabric) Behind(id ID) bool { return f.behind[id] }

// Feet are the places that an element was worked into, in the order they were taken; none for chains.
func (f *Fabric) Feet(id ID) []Place {
	switch el := &f.Elems[id]; {
	case f.legs[id] != nil:
		return f.legs[id]
	case el.Into.ID < 0:
		return nil
	case el.Into != el.Into2:
		return []Place{el.Into, el.Into2}
	default:
		return []Place{el.Into}
	}
}

// Foot is the first or last place that an element was worked into; false for chains, which stand on none.
func (f *Fabric) Foot(id ID, last bool) (Place, bool) {
	el := &f.Elems[id]
	if f.legs != nil {
		if legs := f.legs[id]; legs != nil && last {
			return legs[len(legs)-1], true
		} else if legs != nil {
			return legs[0], true
		}
	}
	if last && el.Into.ID >= 0 {
		return el.Into2, true
	}
	return el.Into, el.Into.ID >= 0
}

// Riding reports whether any element has picots on it.
func (f *Fabric) Riding() bool { return len(f.rides) > 0 }

// RidesOn are the picots on an element.
func (f *Fabric) RidesOn(id ID) []stitch.Form { return f.rides[id] }

// FormOf is the stitch that an element is.
func (f *Fabric) FormOf(id ID) stitch.Form { return f.forms[f.Elems[id].Form] }
