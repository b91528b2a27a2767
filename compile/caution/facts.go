package caution

import (
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

// Facts is what is known of a piece. All lists by size have one entry for each of SizeNames; a list that is nil says that
// nothing of the kind is known in any size.
type Facts struct {
	Kind      string // what is made, as the source says it; "" if it does not say
	KindAt    source.Span
	Words     []string // what a source may say is made, in its own language; nil: those of [Kinds]
	Markets   []string // where the pattern is offered: eu, uk, us; nil: anywhere
	SizeNames []string
	SizesAt   source.Span
	AgeUnread bool         // an age is given and could not be worked out, which is said where it stands
	AgeMonths []int        // the youngest wearer of each size, -1 if not known
	AgeTo     []int        // the oldest wearer, -1 if not known
	Height    plan.Lengths // the shortest wearer, NoLength if not known
	Child     Truth        // the sizes are those of children (a table of babies or children, or names such as "0-3 m"), when no age is given

	Cords    []Cord
	Parts    []Part
	Elastics []Elastic

	Length      plan.Lengths // the finished piece overall
	Gap         plan.Lengths // the largest opening of the fabric; NoLength if not known
	GapAt       source.Span
	NeckOpening plan.Lengths // around the neck opening
	Diameter    plan.Lengths // the smallest diameter of something round

	ForSale                               Truth // makers may sell what they make; Unknown is taken as True
	SoftFilled                            Truth
	CareText                              Truth
	FibreText                             Truth // every yarn names its fibres and their shares
	Fibres                                int   // how many different fibres the main yarn has, -1 if not known
	Fluffy                                Truth // a yarn that sheds
	Raised                                Truth // loops, pile, long fringe, a brushed surface
	Outerwear                             Truth // worn as an outer layer on the upper body
	BelowCrotch, AtAnkle, OnePiece, Tight Truth

	Floats, SleepUse, Weighted, AnimalPart, SaysPure, SafetyClaim, AdultOnly Said
}

// Said is something that the source says or shows, and where.
type Said struct {
	Is Truth
	At source.Span
}

// Cord is one string, chain of stitches, ribbon, tie, strap, strand of fringe or loop.
type Cord struct {
	Zone                                                          Zone
	Role                                                          Role         // "" if not known
	Length                                                        plan.Lengths // of the cord (of its longest end, if only one end is free); NoLength if not known
	Opening                                                       plan.Lengths // around the opening it runs through, laid open; NoLength if not known or none
	Drawn                                                         plan.Lengths // around the wearer where it is drawn up, or where a belt of one piece is tied; NoLength if not known
	Loop                                                          plan.Lengths // around a loop that sticks out, open flat: 0 none, NoLength not known
	LoopDrawn                                                     plan.Lengths // around that loop, drawn up to fit
	Width                                                         plan.Lengths
	Thick                                                         plan.Length
	End                                                           End // "" if not known
	Fray, Elastic, Anchored, BelowHem, Outside, Noose, BehindNeck Truth

	Name string     // what the source calls it: "cord", "fringe", the name of a part or label
	For  plan.Sizes // the sizes that have it; nil: all
	Step int        // index of its step in the finishing, -1 if none
	At   source.Span
}

// Role is what a cord is for, End how its free ends are finished. The words are those of the table of rules:
// drawstring functional decorative fringe bow tie_belt shoulder_strap halter tab zip_pull chin_tie joining loop;
// plain knot bead pompom tassel toggle none (none: no free end).
type (
	Role string
	End  string
)

// Part is one thing that is no yarn, or several alike: button bead bell safety_eye googly_eye snap zip pompom wire magnet battery
// pin squeaker rattle_insert ring foam weight other.
type Part struct {
	Kind     string
	Material string      // plastic wood metal glass yarn fabric other; "" if not known
	Size     plan.Length // its largest measure; NoLength if not known
	For      plan.Sizes  // the sizes that have it; nil: all
	Step     int         // -1 if it has no step in the finishing
	At       source.Span
}

// Elastic is elastic that runs through a row; at a wrist or an ankle its zone is that of sleeves.
type Elastic struct {
	Zone Zone
	Step int
	At   source.Span
}
