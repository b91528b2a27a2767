package fabric

import (
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

var chain = stitch.Form{ID: stitch.Chain, Together: 1}

func begun(t *testing.T, start func(*Part) *Fault) (*Fabric, *Part) {
	t.Helper()
	f := New(0, 100)
	p := f.Begin("p")
	if fault := start(p); fault != nil {
		t.Fatal(fault)
	}
	return f, p
}

func TestStarts(t *testing.T) {
	for _, c := range []struct {
		name   string
		start  func(*Part) *Fault
		edge   string
		closed bool
	}{
		{"a chain", func(p *Part) *Fault { return p.Foundation(chain, 4, false) }, "ssss", false},
		{"a chain that is joined", func(p *Part) *Fault { return p.Foundation(chain, 4, true) }, "ssss", true},
		{"stitches without a chain", func(p *Part) *Fault { return p.Foundation(sc, 4, false) }, "ssss", false},
		{"both sides: the two end chains are one place each", func(p *Part) *Fault { return p.BothSides(12) }, "ssssssssssssssssssssss", true},
		{"both sides of two chains", func(p *Part) *Fault { return p.BothSides(2) }, "ss", true},
		{"both sides of one chain", func(p *Part) *Fault { return p.BothSides(1) }, "s", true},
		{"a ring", func(p *Part) *Fault { p.Ring(); return nil }, "o", true},
		{"in a place", func(p *Part) *Fault { p.Free(); return nil }, "", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			f, p := begun(t, c.start)
			if got := written(f, p.Edge()); got != c.edge || p.Closed() != c.closed {
				t.Errorf("%q, closed %v; want %q, %v", got, p.Closed(), c.edge, c.closed)
			}
		})
	}
}

// An oval: the first chain is worked again at the end.
func TestOval(t *testing.T) {
	f, p := begun(t, func(p *Part) *Fault { return p.BothSides(12) })
	again := at(First)
	again.Per = nums(2)
	res := worked(t, p, rowOf(plan.SpiralRounds, next(11), per(3, 1), next(10), again))
	if len(res.Made) != 26 || res.Taken != 22 {
		t.Errorf("made %d, took %d; want 26 and 22", len(res.Made), res.Taken)
	}
	for i, id := range p.Edge()[14:24] {
		el := f.Elems[id]
		under := f.Elems[el.Into.ID].Into
		if under.Asp != OtherSide || under.ID != p.found[10-i] {
			t.Fatalf("stitch %d of the second side is not over the other side of chain %d", i, 10-i)
		}
	}
}

// The other side of a start is held upside down: in reverse order, the place of the join staying first.
func TestFoundationRun(t *testing.T) {
	for _, joined := range []bool{false, true} {
		_, p := begun(t, func(p *Part) *Fault { return p.Foundation(chain, 4, joined) })
		run := p.FoundationRun()
		var got []ID
		for _, pl := range run.Places {
			if pl.Asp != OtherSide {
				t.Errorf("a place that is not the other side")
			}
			got = append(got, pl.ID)
		}
		want := []ID{3, 2, 1, 0}
		if joined {
			want = []ID{0, 3, 2, 1}
		}
		for i := range want {
			if got[i] != want[i] {
				t.Fatalf("joined %v: %v, want %v", joined, got, want)
			}
		}
		if run.Closed != joined {
			t.Errorf("closed %v, want %v", run.Closed, joined)
		}
	}
}

// Runs of other parts and new chains make one edge, in the order named.
func TestFrom(t *testing.T) {
	f, p := begun(t, func(p *Part) *Fault { return p.Foundation(chain, 3, false) })
	worked(t, p, flat(each()))
	q := f.Begin("q")
	fresh, fault := q.ChainRun(2)
	if fault != nil {
		t.Fatal(fault)
	}
	if fault := q.From([]Run{p.EdgeRun(), fresh}, true); fault != nil {
		t.Fatal(fault)
	}
	if written(f, q.Edge()) != "sssss" || !q.Closed() {
		t.Errorf("the edge is %q, closed %v", written(f, q.Edge()), q.Closed())
	}
	for _, id := range p.Edge() {
		if f.Used(id) != 1 {
			t.Errorf("a stitch the part goes on from counts as used %d times", f.Used(id))
		}
	}
}

// What rests on a part that failed is unknown, not wrong.
func TestHaltedIsSilent(t *testing.T) {
	f, p := begun(t, func(p *Part) *Fault { return p.Foundation(chain, 3, false) })
	p.Halt()
	q := f.Begin("q")
	if fault := q.From([]Run{p.EdgeRun()}, false); fault != nil || !q.Halted() {
		t.Errorf("a part from one that failed: halted %v, %v", q.Halted(), fault)
	}
	r := f.Begin("r")
	r.Free()
	in := named(NamedEach, "x")
	in.Target.Ref.Part = "p"
	if _, fault := r.Work(round(in)); fault != nil || !r.Halted() {
		t.Errorf("a row into one that failed: halted %v, %v", r.Halted(), fault)
	}
}

func TestLimit(t *testing.T) {
	_, p := begun(t, func(p *Part) *Fault { return p.Foundation(chain, 90, false) })
	refused(t, p, flat(per(2, 90)), Fault{Kind: TooMany, Need: 1, Have: 100})
	if fault := p.Foundation(chain, 11, false); fault == nil || fault.Kind != TooMany {
		t.Errorf("a start beyond the limit: %v", fault)
	}
}
