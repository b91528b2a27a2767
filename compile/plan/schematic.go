package plan

// Schematic is what the source asks of the schematic: which parts it shows, in which order. Nobody draws a piece; this only
// leaves some out or sets them in order. A nil one shows all parts in the order in which they are worked.
type Schematic struct {
	Parts   []int // indices into Pattern.Parts
	Without bool  // Parts are left out, and the others stay in their order; else these alone are shown, in this order
}
