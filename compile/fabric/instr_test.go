package fabric

import (
	"testing"

	"ovillo/compile/plan"
)

// rowCase is a row on a small edge: what it makes and where each element goes, or why it cannot be worked.
type rowCase struct {
	name, edge string
	style      Style
	ops        []*Op
	made, into string
	account    [4]int // taken, skipped, passed, left
	fault      Fault
}

var rowCases = []rowCase{
	{name: "one in each of the next", edge: "sss", ops: []*Op{next(3)}, made: "sss", into: "0 1 2", account: [4]int{3}},
	{name: "none in next", edge: "s", ops: []*Op{next(0), next(1)}, made: "s", into: "0", account: [4]int{1}},
	{name: "all in one", edge: "s", ops: []*Op{per(5, 1)}, made: "sssss", into: "0 0 0 0 0", account: [4]int{1}},
	{name: "two in each of next three", edge: "sss", ops: []*Op{per(2, 3)}, made: "ssssss", into: "0 0 1 1 2 2", account: [4]int{3}},
	{name: "more than there are", edge: "sss", ops: []*Op{next(5)}, fault: Fault{Kind: TooFew, Need: 5, Have: 3}},
	{name: "fewer than there are", edge: "sss", ops: []*Op{next(2)}, fault: Fault{Kind: LeftOver, Need: 2, Have: 1, Total: 3}},
	{name: "a space in the way", edge: "s3s", ops: []*Op{each()}, fault: Fault{Kind: SpaceInWay, Have: 3}},
	{name: "each stitch and space", edge: "s3s", ops: []*Op{eachOf(Stitches | Spaces)}, made: "sss", into: "0 1 2", account: [4]int{3}},
	{name: "each stitch and chain", edge: "s3s", ops: []*Op{eachOf(Stitches | InChains)}, made: "sssss", into: "0 1c0 1c1 1c2 2", account: [4]int{3}},
	{name: "not all chains of a space", edge: "s3", ops: []*Op{nextOf(Stitches|InChains, 3)}, fault: Fault{Kind: LeftOver, Need: 1, Have: 1, Total: 2}},
	{name: "each space passes stitches", edge: "ss2ss1s", ops: []*Op{eachOf(Spaces)}, made: "ss", into: "2 5", account: [4]int{2, 0, 5, 0}},
	{name: "no space ahead", edge: "2ss", ops: []*Op{nextOf(Spaces, 2)}, fault: Fault{Kind: NoSpace}},
	{name: "a space of another kind", edge: "s1s", ops: []*Op{spacesOf(2)}, fault: Fault{Kind: OtherSpace, Need: 2, Have: 1}},
	{name: "gaps of a row", edge: "ssss", ops: []*Op{eachOf(Gaps)}, made: "sss", into: "0g 1g 2g", account: [4]int{3, 0, 1, 0}},
	{name: "gaps of a round", edge: "ssss", style: plan.JoinedRounds, ops: []*Op{eachOf(Gaps)}, made: "ssss", into: "0g 1g 2g 3g", account: [4]int{4}},
	{name: "a space is no gap", edge: "s2s", ops: []*Op{eachOf(Gaps)}, fault: Fault{Kind: NoGap}},
	{name: "in this gap", edge: "ss", ops: []*Op{next(1), at(GapHere), next(1)}, made: "sss", into: "0 0g 1", account: [4]int{2}},
	{name: "no gap before the first of a row", edge: "ss", ops: []*Op{at(GapHere), next(2)}, fault: Fault{Kind: NoGap}},
	{name: "the gap over the join of a round", edge: "ss", style: plan.JoinedRounds, ops: []*Op{at(GapHere), next(2)}, made: "sss", into: "1g 0 1", account: [4]int{2}},
	{name: "in first, first", edge: "ss", ops: []*Op{at(First), next(1)}, made: "ss", into: "0 1", account: [4]int{2}},
	{name: "in first, again", edge: "ss", ops: []*Op{next(2), at(First)}, made: "sss", into: "0 1 0", account: [4]int{2}},
	{name: "in last", edge: "ss", ops: []*Op{next(1), at(Last)}, made: "ss", into: "0 1", account: [4]int{2}},
	{name: "in last before the last", edge: "sss", ops: []*Op{next(1), at(Last)}, fault: Fault{Kind: LastNotLast, Need: 1, Have: 2}},
	{name: "in same", edge: "ss", ops: []*Op{next(2), at(Same)}, made: "sss", into: "0 1 1", account: [4]int{2}},
	{name: "in same, at the start", edge: "ss", ops: []*Op{at(Same), next(2)}, fault: Fault{Kind: NothingDone}},
	{name: "in ring", edge: "o", style: plan.JoinedRounds, ops: []*Op{ring(6)}, made: "ssssss", into: "0 0 0 0 0 0", account: [4]int{1}},
	{name: "no ring", edge: "s", ops: []*Op{ring(6)}, fault: Fault{Kind: NotRing}},
	{name: "a ring is not a stitch", edge: "o", ops: []*Op{next(1)}, fault: Fault{Kind: TooFew, Need: 1}},

	{name: "a stitch that makes three", edge: "sss", ops: []*Op{next(1), making(next(1), 3), next(1)}, made: "sssss", into: "0 1 1 1 2", account: [4]int{3}},
	{name: "a stitch that makes none", edge: "sss", ops: []*Op{next(1), making(next(1), 0), next(1)}, made: "ss", into: "0 2", account: [4]int{3}},
	{name: "two together, making two", edge: "ss", ops: []*Op{making(dec(2, 1), 2)}, made: "ss", into: "0-1 0-1", account: [4]int{2}},
	{name: "two together", edge: "ssss", ops: []*Op{dec(2, 2)}, made: "ss", into: "0-1 2-3", account: [4]int{4}},
	{name: "three together, two left", edge: "ss", ops: []*Op{dec(3, 1)}, fault: Fault{Kind: TooFew, Need: 3, Have: 2}},
	{name: "together over a space", edge: "s1s", ops: []*Op{dec(2, 1), next(1)}, fault: Fault{Kind: SpaceInWay, Have: 1}},
	{name: "chains one behind the other are one space", edge: "ss", ops: []*Op{next(1), ch(2), ch(1), next(1)}, made: "s3s", into: "0 - 1", account: [4]int{2}},
	{name: "a slip stitch parts two spaces", edge: "sss", ops: []*Op{next(1), ch(2), slipped(1), ch(1), next(1)}, made: "s21s", into: "0 - - 2", account: [4]int{3}},
	{name: "no chains", edge: "ss", ops: []*Op{next(1), ch(0), next(1)}, made: "ss", into: "0 1", account: [4]int{2}},
	{name: "a label on half a space", edge: "ss", ops: []*Op{next(1), ch(2), as(ch(1), "x"), next(1)}, fault: Fault{Kind: Nested, Name: "x"}},
	{name: "skip", edge: "ssss", ops: []*Op{next(1), skip(2), next(1)}, made: "ss", into: "0 3", account: [4]int{2, 2, 0, 0}},
	{name: "skip more than there are", edge: "ss", ops: []*Op{next(1), skip(2)}, fault: Fault{Kind: TooFew, Need: 2, Have: 1}},
	{name: "skip stops at a space", edge: "s2s", ops: []*Op{skip(2), next(1)}, fault: Fault{Kind: SpaceInWay, Have: 2}},
	{name: "skip to the last", edge: "s2ss", ops: []*Op{skipTo(last(1)), next(1)}, made: "s", into: "3", account: [4]int{1, 3, 0, 0}},
	{name: "leave", edge: "ssss", ops: []*Op{next(1), leave(3)}, made: "s", into: "0", account: [4]int{1, 0, 0, 3}},
	{name: "leave what is not left", edge: "ssss", ops: []*Op{next(2), leave(3)}, fault: Fault{Kind: LeaveOther, Need: 3, Have: 2}},

	{name: "to the last two", edge: "ssss", ops: []*Op{to(last(2)), per(2, 2)}, made: "ssssss", into: "0 1 2 2 3 3", account: [4]int{4}},
	{name: "to the last, where only it is left", edge: "s", ops: []*Op{to(last(1)), next(1)}, made: "s", into: "0", account: [4]int{1}},
	{name: "to more than are left", edge: "ss", ops: []*Op{to(last(3)), next(2)}, fault: Fault{Kind: TooFew, Need: 3, Have: 2}},
	{name: "to a space", edge: "ss2s", ops: []*Op{to(Bound{Kind: ToSpace}), nextOf(Spaces, 1), next(1)}, made: "ssss", into: "0 1 2 3", account: [4]int{4}},
	{name: "to a space that is not there", edge: "ss", ops: []*Op{to(Bound{Kind: ToSpace})}, fault: Fault{Kind: NoSpace}},
	{name: "so many times", edge: "ssssss", ops: []*Op{times(3, next(1), skip(1))}, made: "sss", into: "0 2 4", account: [4]int{3, 3, 0, 0}},
	{name: "around", edge: "ssssss", style: plan.JoinedRounds, ops: []*Op{around(next(2), per(2, 1))}, made: "ssssssss", into: "0 1 2 2 3 4 5 5", account: [4]int{6}},
	{name: "around, over none", edge: "", style: plan.JoinedRounds, ops: []*Op{around(next(2))}, made: ""},
	{name: "around does not come out even", edge: "ssssssss", style: plan.JoinedRounds, ops: []*Op{around(next(2), per(2, 1))}, fault: Fault{Kind: NotEven, Need: 3, Have: 8, Total: 2}},
	{name: "around overshoots its bound", edge: "sssss", ops: []*Op{repeatTo(last(2), next(2)), next(2)}, fault: Fault{Kind: NotEven, Need: 2, Have: 3, Total: 2}},
	{name: "around is longer than the row", edge: "sssss", ops: []*Op{around(next(2), skip(1), next(20))}, fault: Fault{Kind: NotEven, Need: 23, Have: 5}},
	{name: "around skips more than there are", edge: "sssss", ops: []*Op{around(next(2), skip(4))}, fault: Fault{Kind: NotEven, Need: 6, Have: 5}},
	{name: "around, in last too soon", edge: "ssss", ops: []*Op{around(next(1), at(Last))}, fault: Fault{Kind: LastNotLast, Need: 1, Have: 3}},
	{name: "around takes nothing", edge: "ss", ops: []*Op{around(ch(1))}, fault: Fault{Kind: TakesNothing}},
	{name: "stated times", edge: "ssss", ops: []*Op{stating(around(next(2)), 3)}, fault: Fault{Kind: StatedOther, Need: 3, Have: 2}},

	{name: "a group in one place", edge: "sss", ops: []*Op{next(1), together(next(1), next(2), ch(2), next(2)), next(1)}, made: "sss2sss", into: "0 1 1 - 1 1 2", account: [4]int{3}},
	{name: "a group that ends in chains before one that begins so", edge: "ss", ops: []*Op{together(next(2), ch(1), next(1), ch(1))}, made: "1s11s1", into: "- 0 - - 1 -", account: [4]int{2}},
	{name: "a group in a group", edge: "s", ops: []*Op{together(next(1), together(next(1), next(1)))}, fault: Fault{Kind: Nested}},
	{name: "a decrease in a group", edge: "ss", ops: []*Op{together(next(1), dec(2, 1)), next(1)}, fault: Fault{Kind: Nested}},

	{name: "spread increases, the longer groups first", edge: "sssss", ops: []*Op{spread(2, 1, AtEnds)}, made: "sssssss", into: "0 1 2 2 3 4 4", account: [4]int{5}},
	{name: "spread decreases", edge: "sssss", ops: []*Op{spread(2, 2, AtEnds)}, made: "sss", into: "0 1-2 3-4", account: [4]int{5}},
	{name: "spread none", edge: "sss", ops: []*Op{spread(0, 1, AtEnds)}, made: "sss", into: "0 1 2", account: [4]int{3}},
	{name: "spread without room", edge: "sss", ops: []*Op{spread(2, 2, AtEnds)}, fault: Fault{Kind: NoRoom, Need: 4, Have: 3}},

	{name: "a round begins with chains", edge: "ss", style: plan.JoinedRounds, ops: []*Op{ch(1), next(2)}, fault: Fault{Kind: StartSpace}},
	{name: "a row may", edge: "ss", ops: []*Op{ch(1), next(2)}, made: "1ss", into: "- 0 1", account: [4]int{2}},
	{name: "slip stitches are on no edge", edge: "sss", ops: []*Op{slips(2), next(1)}, made: "s", into: "2", account: [4]int{3}},
	{name: "slip stitches to a bound pass", edge: "ss2s", ops: []*Op{slideTo(Bound{Kind: ToSpace}), nextOf(Spaces, 1), next(1)}, made: "ss", into: "2 3", account: [4]int{2, 0, 2, 0}},
}

func spacesOf(n int) *Op { o := nextOf(Spaces, 1); o.Target.Of = nums(n); return o }

func ring(n int) *Op { o := at(InRing); o.Per = nums(n); return o }

func making(o *Op, n int) *Op { o.Extra = n - 1; return o }

func stating(o *Op, n int) *Op { o.Stated = nums(n); return o }

func slips(n int) *Op { o := next(n); o.Form.ID = slip; return o }

func slideTo(b Bound) *Op { o := op(SlideTo, 0); o.N, o.Bound = nil, b; return o }

func TestRows(t *testing.T) {
	for _, c := range rowCases {
		t.Run(c.name, func(t *testing.T) {
			f, p := edged(c.edge, c.style != plan.Rows)
			before := p.Edge()
			res, fault := p.Work(rowOf(c.style, c.ops...))
			if fault != nil || c.fault.Kind != 0 {
				if fault == nil {
					t.Fatalf("it is worked, but %v is wanted", &c.fault)
				}
				if got := (Fault{Kind: fault.Kind, Need: fault.Need, Have: fault.Have, Name: fault.Name, Total: fault.Total}); got != c.fault {
					t.Fatalf("%+v, want %+v", got, c.fault)
				}
				if written(f, p.Edge()) != c.edge {
					t.Errorf("a row that cannot be worked changed the edge to %q", written(f, p.Edge()))
				}
				return
			}
			if got := written(f, res.Made); got != c.made {
				t.Errorf("made %q, want %q", got, c.made)
			}
			if got := into(f, before, res.Made); got != c.into {
				t.Errorf("worked into %q, want %q", got, c.into)
			}
			if got := [4]int{res.Taken, res.Skipped, res.Passed, res.Left}; got != c.account {
				t.Errorf("taken, skipped, passed, left %v, want %v", got, c.account)
			}
		})
	}
}
