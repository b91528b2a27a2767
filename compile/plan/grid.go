package plan

// Grid is motifs of one kind that are joined to one another while they are worked: Down rows of Across motifs each, worked
// row by row, each row from the left. It is the first step of its part; a [JoinRound] for each kind of motif follows.
type Grid struct {
	Motif        int // index into Parts
	Across, Down Nums
	Each         Lengths // side of a motif; nil if the source does not say
	Round        Nums    // number of the joining round, the last of the motif
	Kinds        [3]Nums // how many motifs meet no other when they are worked, one, two
	Shared       Nums    // sides that two motifs share
	AtSides      Nums    // joins in the spaces of sides
	AtCorners    Nums    // joins at corners
}

// JoinRound is the joining round of the motifs that meet so many others, Sides of them: it is worked as the motif says where
// they meet none.
type JoinRound struct {
	Sides  int
	Motifs Nums // how many motifs
	Rest   bool // they are all but the first: no motif meets two others
	Row    *Row // nil where they meet none
	Off    bool // the yarn is cut behind it
	For    Sizes
}

func (*Grid) step()      {}
func (*JoinRound) step() {}
