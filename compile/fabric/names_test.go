package fabric

import (
	"testing"

	"ovillo/compile/plan"
)

// worked works rows that must come out, one after the other.
func worked(t *testing.T, p *Part, rows ...*Row) *Result {
	t.Helper()
	var res *Result
	for i, r := range rows {
		var f *Fault
		if res, f = p.Work(r); f != nil {
			t.Fatalf("row %d: %v", i+1, f)
		}
	}
	return res
}

// refused works a row that must not come out.
func refused(t *testing.T, p *Part, r *Row, want Fault) {
	t.Helper()
	_, f := p.Work(r)
	if f == nil {
		t.Fatalf("it is worked, but %v is wanted", &want)
	}
	if got := (Fault{Kind: f.Kind, Need: f.Need, Have: f.Have, Name: f.Name}); got != want {
		t.Fatalf("%+v, want %+v", got, want)
	}
}

func round(ops ...*Op) *Row { return rowOf(plan.JoinedRounds, ops...) }
func flat(ops ...*Op) *Row  { return rowOf(plan.Rows, ops...) }

// marked sets markers before (gap) or in places of the edge.
func marked(p *Part, steps ...OffStep) *Fault { return p.CountOff(steps) }

func off(n int) OffStep             { return OffStep{N: nums(n)} }
func offGap(name string) OffStep    { return OffStep{Marker: name} }
func offIn(name string) OffStep     { return OffStep{Marker: name, InNext: true} }
func offAs(n int, l string) OffStep { return OffStep{N: nums(n), Label: l} }

// where says where a marker stands: "2" in a stitch, "|2" in the gap before it, "" nowhere on the live edge.
func where(p *Part, name string) string {
	m := p.marks[name]
	switch {
	case m == nil || m.edge != p.edge.serial:
		return ""
	case m.gap:
		return "|" + itoa(m.at)
	}
	return itoa(m.at)
}

func itoa(n int) string { return string(rune('0' + n)) }

func TestMarkersRideUp(t *testing.T) {
	cases := []struct {
		name  string
		off   []OffStep
		style Style
		ops   []*Op
		want  string
	}{
		{"in a stitch, one stitch in it", []OffStep{off(2), offIn("m"), off(3)}, plan.JoinedRounds, []*Op{each()}, "2"},
		{"behind an increase", []OffStep{off(2), offIn("m"), off(3)}, plan.JoinedRounds, []*Op{per(2, 1), each()}, "3"},
		{"its stitch increased", []OffStep{off(2), offIn("m"), off(3)}, plan.JoinedRounds, []*Op{next(2), per(2, 1), each()}, ""},
		{"its stitch drawn together with the next", []OffStep{off(2), offIn("m"), off(3)}, plan.JoinedRounds, []*Op{next(2), dec(2, 1), each()}, ""},
		{"its stitch skipped", []OffStep{off(2), offIn("m"), off(3)}, plan.JoinedRounds, []*Op{next(2), skip(1), each()}, ""},
		{"in a stitch, turned", []OffStep{off(1), offIn("m"), off(4)}, plan.Rows, []*Op{each()}, "4"},
		{"in a gap", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{each()}, "|2"},
		{"in a gap behind an increase", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(1), per(2, 1), each()}, "|3"},
		{"in a gap before an increase", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(2), per(2, 1), each()}, "|2"},
		{"in a gap before chains", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(2), ch(1), each()}, "|2"},
		{"in a gap inside a decrease", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(1), dec(2, 1), each()}, ""},
		{"in a gap inside a skip", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(1), skip(2), each()}, ""},
		{"in a gap at the edge of a skip", []OffStep{off(2), offGap("m"), off(4)}, plan.JoinedRounds, []*Op{next(2), skip(2), each()}, "|2"},
		{"in a gap, turned", []OffStep{off(2), offGap("m"), off(4)}, plan.Rows, []*Op{each()}, "|4"},
		{"in the gap over the join", []OffStep{offGap("m"), off(6)}, plan.JoinedRounds, []*Op{each()}, "|0"},
		{"in a gap of a turned round", []OffStep{off(2), offGap("m"), off(4)}, plan.TurnedRounds, []*Op{each()}, "|5"},
		{"in a stitch of a turned round", []OffStep{off(2), offIn("m"), off(3)}, plan.TurnedRounds, []*Op{each()}, "4"},
		{"in the first stitch of a turned round", []OffStep{offIn("m"), off(5)}, plan.TurnedRounds, []*Op{each()}, "0"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, p := edged("ssssss", c.style != plan.Rows)
			if f := marked(p, c.off...); f != nil {
				t.Fatal(f)
			}
			worked(t, p, rowOf(c.style, c.ops...))
			if got := where(p, "m"); got != c.want {
				t.Errorf("the marker stands at %q, want %q", got, c.want)
			}
		})
	}
}

func TestMarkersMove(t *testing.T) {
	for _, c := range []struct {
		name string
		ops  []*Op
		want string
	}{
		{"to the middle one", []*Op{to(name("m")), per(3, 1), marks(Move, "m", plan.MiddleOne), each()}, "3"},
		{"to the first one", []*Op{to(name("m")), per(3, 1), marks(Move, "m", plan.FirstOne), each()}, "2"},
		{"to the last one made", []*Op{to(name("m")), per(3, 1), marks(Move, "m", plan.LastMade), each()}, "4"},
		{"to the next", []*Op{to(name("m")), marks(Move, "m", plan.NextOne), each()}, "2"},
		{"before the next", []*Op{to(name("m")), marks(Move, "m", plan.GapHere), each()}, "|2"},
		{"past chains to the stitch last made", []*Op{to(name("m")), next(1), ch(2), marks(Move, "m", plan.LastMade), each()}, "2"},
		{"away", []*Op{marks(Unmark, "m", 0), each()}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, p := edged("ssssss", true)
			marked(p, off(2), offIn("m"), off(3))
			worked(t, p, round(c.ops...))
			if got := where(p, "m"); got != c.want {
				t.Errorf("the marker stands at %q, want %q", got, c.want)
			}
		})
	}
}

func TestMarkersRefused(t *testing.T) {
	start := func() *Part {
		_, p := edged("ssssss", true)
		marked(p, off(2), offIn("m"), off(3))
		return p
	}
	refused(t, start(), round(next(4), to(name("m"))), Fault{Kind: Behind, Have: 2, Name: "m"})
	refused(t, start(), round(next(1), named(Named, "m"), each()), Fault{Kind: Ahead, Have: 1, Name: "m"})
	refused(t, start(), round(to(name("q"))), Fault{Kind: Unknown, Name: "q"})
	refused(t, start(), round(marks(Mark, "m", plan.NextOne), each()), Fault{Kind: Placed, Name: "m"})
	refused(t, start(), round(marks(Move, "q", plan.NextOne), each()), Fault{Kind: Unknown, Name: "q"})
	refused(t, start(), round(marks(Move, "m", plan.LastMade), each()), Fault{Kind: NothingDone, Name: "m"})
	refused(t, start(), round(to(name("m")), per(2, 1), marks(Move, "m", plan.MiddleOne), each()), Fault{Kind: NoMiddle, Have: 2, Name: "m"})
	refused(t, start(), round(to(Bound{Kind: ToName, Name: "m", N: nums(3)})), Fault{Kind: Behind, Have: 1, Name: "m"})
	p := start()
	worked(t, p, round(next(2), per(2, 1), each()))
	refused(t, p, round(to(name("m")), each()), Fault{Kind: Lost, Name: "m"})
}

func TestCountOff(t *testing.T) {
	_, p := edged("ss2sss", true)
	if f := marked(p, off(2), offGap("a"), offAs(3, "x"), offIn("b")); f != nil {
		t.Fatal(f)
	}
	if where(p, "a") != "|2" || where(p, "b") != "5" {
		t.Errorf("markers at %q and %q", where(p, "a"), where(p, "b"))
	}
	if n, f := p.CountIn("x"); n != 3 || f != nil {
		t.Errorf("the section holds %d, %v", n, f)
	}
	worked(t, p, round(next(2), nextOf(Spaces, 1), per(2, 2), each()))
	if n, _ := p.CountIn("x"); n != 5 {
		t.Errorf("the section grew to %d, want 5", n)
	}
	for _, c := range []struct {
		steps []OffStep
		want  Fault
	}{
		{[]OffStep{off(2), offGap("m"), off(3)}, Fault{Kind: StatedOther, Need: 5, Have: 8}},
		{[]OffStep{off(9)}, Fault{Kind: StatedOther, Need: 9, Have: 8}},
		{[]OffStep{off(8), offIn("m")}, Fault{Kind: TooFew, Need: 1, Name: "m"}},
	} {
		if f := p.CountOff(c.steps); f == nil || *f != c.want {
			t.Errorf("%v, want %v", f, &c.want)
		}
	}
}

func TestRotate(t *testing.T) {
	f, p := edged("s2ss", true)
	first := p.Edge()[2]
	marked(p, off(2), offGap("m"), off(2))
	if n, fault := p.RotateTo("m"); n != 2 || fault != nil {
		t.Fatalf("passed %d, %v", n, fault)
	}
	if p.Edge()[0] != first || written(f, p.Edge()) != "sss2" || where(p, "m") != "|0" {
		t.Errorf("the round is %q, the marker at %q", written(f, p.Edge()), where(p, "m"))
	}
	_, p = edged("ss", false)
	marked(p, off(1), offGap("m"), off(1))
	if _, fault := p.RotateTo("m"); fault == nil || fault.Kind != NotRing {
		t.Errorf("an open row begins elsewhere: %v", fault)
	}
}

// A label reads its old places until the row is done, so that a row can be worked into the places whose name it gives anew.
func TestLabelsGivenAnew(t *testing.T) {
	f, p := edged("ssss", true)
	worked(t, p, round(next(2), as(ch(2), "corner"), next(2), as(ch(2), "corner")))
	corner := func() *Op {
		return together(named(NextNamed, "corner"), next(1), as(ch(3), "corner"), next(1))
	}
	res := worked(t, p, round(slideTo(name("corner")), times(2, corner(), ch(1))))
	if got := written(f, res.Made); got != "s3s1s3s1" {
		t.Fatalf("made %q", got)
	}
	if n, _ := p.CountHere("corner"); n != 2 {
		t.Errorf("%d corners, want 2", n)
	}
	worked(t, p, round(eachOf(Stitches|Spaces)))
	if n, _ := p.CountHere("corner"); n != 0 {
		t.Errorf("%d corners on a row that made none", n)
	}
	if n, _ := p.CountIn("corner"); n != 2 {
		t.Errorf("the corners of the row before are %d, want 2", n)
	}
}

// What is passed over under a name is there at once, in place of what an earlier row passed over under it.
func TestSkippedLabelsAtOnce(t *testing.T) {
	f, p := edged("ssss", false)
	cross := func() []*Op {
		return []*Op{as(skip(2), "under"), next(2), named(NamedEach, "under")}
	}
	for range 2 {
		before := p.Edge()
		res := worked(t, p, flat(cross()...))
		if got := into(f, before, res.Made); got != "2 3 0 1" {
			t.Fatalf("worked into %q", got)
		}
		for _, id := range before {
			if f.Used(id) != 1 {
				t.Errorf("a column is used %d times", f.Used(id))
			}
		}
	}
}

func TestNamed(t *testing.T) {
	fresh := func() (*Fabric, *Part) {
		f, p := edged("sssss", true)
		worked(t, p, round(as(next(2), "a"), as(ch(3), "gap"), as(dec(2, 1), "d"), next(1)))
		return f, p
	}
	f, p := fresh()
	edge := p.Edge()
	res := worked(t, p, round(named(NamedEach, "a"), named(NamedEach, "gap"), next(2)))
	if got := into(f, edge, res.Made); got != "0 1 2c0 2c1 2c2 3 4" {
		t.Errorf("worked into %q", got)
	}
	_, p = fresh()
	refused(t, p, round(next(1), named(Named, "a")), Fault{Kind: ManyPlaces, Need: 1, Have: 2, Name: "a"})
	_, p = fresh()
	refused(t, p, round(named(Below, "d")), Fault{Kind: DrawnBelow, Name: "d"})
	_, p = fresh()
	refused(t, p, round(named(NamedEach, "gap")), Fault{Kind: Ahead, Have: 2, Name: "gap"})
	_, p = fresh()
	third := named(Named, "a")
	third.Target.Ref.Pick, third.Target.Ref.Nth = plan.NthOf, 3
	refused(t, p, round(third), Fault{Kind: TooFew, Need: 3, Have: 2, Name: "a"})
	_, p = fresh()
	refused(t, p, round(named(NamedEach, "nobody")), Fault{Kind: Unknown, Name: "nobody"})
	_, p = fresh()
	worked(t, p, round(eachOf(Stitches|Spaces)))
	refused(t, p, round(to(name("a"))), Fault{Kind: NotHere, Name: "a"})
}

// Below a space are its chains from their other side, from the last made to the first.
func TestBelowChains(t *testing.T) {
	f, p := edged("ss", true)
	worked(t, p, round(next(1), as(ch(3), "gap"), next(1)))
	q := f.Begin("q")
	run, fault := p.NamedRun("gap", true)
	if fault != nil {
		t.Fatal(fault)
	}
	if fault := q.From([]Run{run}, false); fault != nil {
		t.Fatal(fault)
	}
	var subs []int32
	for _, id := range q.Edge() {
		if pl := f.Elems[id].Into; pl.Asp == OtherSide {
			subs = append(subs, pl.Sub)
		}
	}
	if len(subs) != 3 || subs[0] != 2 || subs[2] != 0 {
		t.Errorf("chains %v, want 2 1 0", subs)
	}
	res := worked(t, q, flat(each()))
	if written(f, res.Made) != "sss" {
		t.Errorf("made %q", written(f, res.Made))
	}
}

// Layers are worked together place by place.
func TestThrough(t *testing.T) {
	f, p := edged("", true)
	if fault := p.Foundation(sc, 4, true); fault != nil {
		t.Fatal(fault)
	}
	worked(t, p, round(each()), round(each()))
	res := worked(t, p, round(named(Through, FoundationName)))
	if written(f, res.Made) != "ssss" || res.Taken != 4 {
		t.Errorf("made %q, took %d", written(f, res.Made), res.Taken)
	}
	worked(t, p, round(next(2), dec(2, 1)))
	refused(t, p, round(named(Through, FoundationName)), Fault{Kind: Mismatch, Need: 3, Have: 4, Name: FoundationName})
}
