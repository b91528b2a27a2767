// Package stitch is the table of stitches: what each takes, makes and measures, and how a row of it usually begins.
//
// Stitches are known by their United States abbreviation whatever reading a source or a page uses; the words of each
// language stand with the languages, not here.
package stitch

// ID names a stitch kind: "sc", "dc". Own stitches of a pattern use their own name.
type ID string

// The standard stitches.
const (
	Chain ID = "ch"
	Slip  ID = "slst"
	SC    ID = "sc"
	HDC   ID = "hdc"
	DC    ID = "dc"
	TR    ID = "tr"
	DTR   ID = "dtr"
	TRTR  ID = "trtr"

	// Extended stitches: one yarn drawn through one loop before the stitch is finished.
	ESC  ID = "esc"
	EHDC ID = "ehdc"
	EDC  ID = "edc"
	ETR  ID = "etr"

	// RSC is reverse single crochet: the row goes the other way, without turning.
	RSC ID = "rsc"
)

// Post says that a stitch goes round the post of a stitch instead of into its top.
type Post uint8

// The posts.
const (
	NoPost Post = iota
	FrontPost
	BackPost
)

// Loop says which loops of a stitch are worked into.
type Loop uint8

// The loops.
const (
	BothLoops Loop = iota
	FrontLoop
	BackLoop
	ThirdLoop
)

// Form is a stitch as it is worked: its kind, round which post or into which loop, how many places it draws together (1
// for an ordinary stitch), and what group of it goes into one place (a group has Of stitches; Single has none).
type Form struct {
	ID       ID
	Post     Post
	Loop     Loop
	Together int
	Group    Group
	Of       int
}

// Plain is a stitch worked into the top of one place.
func Plain(id ID) Form { return Form{ID: id, Together: 1} }

// Base is the form that a post stitch, a decrease or a group is made of.
func (f Form) Base() Form { return Plain(f.ID) }

// Derived reports whether a form is more than its plain stitch, in one loop or both.
func (f Form) Derived() bool { return f.Post != NoPost || f.Together > 1 || f.Group != Single }

// Yarn is how much yarn a form takes, beside its plain stitch: stitches that share a head or a foot take nearly the yarn of
// as many whole ones (common practice, no source).
func (f Form) Yarn() float64 {
	legs := max(f.Together, 1)
	if f.Group.Closed() {
		legs *= max(f.Of, 1)
	}
	return float64(legs)
}
