package stitch

// Group is what several stitches that go into one place make together.
type Group uint8

// The groups.
const (
	Single     Group = iota // no group: one stitch
	Cluster                 // each left unfinished, all of them finished at once
	Bobble                  // a cluster of more stitches, which stands out
	Popcorn                 // whole stitches, drawn together at their heads afterwards
	Puff                    // long loops, drawn through at once
	Shell                   // whole stitches side by side
	Vee                     // two stitches with a chain between them
	CrossFront              // the later half of some stitches first, then the earlier half in front of them
	CrossBack               // the same, the earlier half behind
	Picot                   // a little ring of chains on the stitch just made
)

// GroupKind is one row of the table of groups.
type GroupKind struct {
	Group Group
	Word  string // behind the stitch and the number, in a source of any reading: dc3cl
	// Least and Most say how many stitches a group may have; 0: its word has no number. A cluster of one is its stitch, and
	// two in one place are an increase. Far more than any hook holds are refused as mistyped.
	Least, Most int
	// Only is the one stitch the group is made of, or "": any that has a body. A puff is made of the loops of a half double
	// crochet, a picot of chains (common practice, no source).
	Only ID
	// Usual is the number that the word alone means, or 0 if it must be said.
	Usual int
	// Over says that the group takes as many places as it has stitches, an even number.
	Over bool
}

// Groups is the table of groups.
var Groups = []GroupKind{
	{Group: Cluster, Word: "cl", Least: 2, Most: 20},
	{Group: Bobble, Word: "bob", Least: 3, Most: 20},
	{Group: Popcorn, Word: "pop", Least: 3, Most: 20},
	{Group: Puff, Word: "puff", Least: 2, Most: 20, Only: HDC},
	{Group: Shell, Word: "shell", Least: 3, Most: 20},
	{Group: Vee, Word: "vst", Usual: 2},
	{Group: CrossFront, Word: "cross", Least: 2, Most: 12, Over: true},
	{Group: CrossBack, Word: "crossback", Least: 2, Most: 12, Over: true},
	{Group: Picot, Word: "picot", Least: 2, Most: 20, Only: Chain, Usual: 3},
}

// Kind returns the table's row of a group.
func (g Group) Kind() (GroupKind, bool) {
	for _, k := range Groups {
		if k.Group == g {
			return k, true
		}
	}
	return GroupKind{}, false
}

// Closed reports whether the stitches of a group end as one: it is then one stitch of its row.
func (g Group) Closed() bool { return g == Cluster || g == Bobble || g == Popcorn || g == Puff }

// Open reports whether the stitches of a group stay stitches of their row.
func (g Group) Open() bool { return g == Shell || g == Vee || g.Crossed() }

// Crossed reports whether the stitches of a group cross each other.
func (g Group) Crossed() bool { return g == CrossFront || g == CrossBack }

// Takes is how many places of the row below one of the form takes.
func (f Form) Takes() int {
	switch {
	case f.Group == Picot:
		return 0
	case f.Group.Crossed():
		return f.Of
	}
	return max(f.Together, 1)
}

// Makes is what one of the form gives the next row: stitches, and chain spaces of one chain between them.
func (f Form) Makes() (stitches, spaces int) {
	switch f.Group {
	case Shell, CrossFront, CrossBack:
		return f.Of, 0
	case Vee:
		return 2, 1
	case Picot:
		return 0, 0
	}
	return 1, 0
}
