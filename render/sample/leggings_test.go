package sample

import (
	"testing"

	"ovillo/compile/plan"
)

func TestLeggingsRowsTakeWhatTheRowBelowOffers(t *testing.T) {
	p := Leggings()
	for _, part := range p.Parts {
		if len(part.Worked) != len(p.Sizes) {
			t.Fatalf("%s: facts for %d of %d sizes", part.Name, len(part.Worked), len(p.Sizes))
		}
		for i, rows := range part.Worked {
			offered := part.Start.N[i]
			if part.Start.Kind == plan.StartIn {
				offered = part.Start.N[i] - 1 // the space takes two stitches
			}
			for k, r := range rows {
				if r.Number != k+1 {
					t.Errorf("%s, size %d: row %d stands at place %d", part.Name, i, r.Number, k+1)
				}
				if r.Taken+r.Passed != offered {
					t.Errorf("%s, size %d, row %d: %d taken and %d passed of %d", part.Name, i, r.Number, r.Taken, r.Passed, offered)
				}
				made := 0
				for _, n := range r.ByForm.All() {
					made += n
				}
				if made != r.Stitches {
					t.Errorf("%s, size %d, row %d: %d stitches by form, %d in all", part.Name, i, r.Number, made, r.Stitches)
				}
				offered = r.Stitches + r.Spaces
			}
		}
	}
}

// printed collects how often each row number of a size is printed and the count behind it.
func printed(part *plan.Part, size int) (times map[int]int, counts map[int]int) {
	times, counts = map[int]int{}, map[int]int{}
	add := func(first, last plan.Nums, cs []plan.Count) {
		if first[size] == plan.Absent {
			return
		}
		for n := first[size]; n <= last[size]; n++ {
			times[n]++
		}
		if len(cs) > 0 {
			counts[last[size]] = cs[0].N[size]
		}
	}
	for _, s := range part.Steps {
		switch s := s.(type) {
		case *plan.Row:
			add(s.First, s.Last, s.Counts)
		case *plan.Block:
			add(s.First, s.Last, s.Counts)
		}
	}
	return times, counts
}

func TestLeggingsPrintEveryRowOnceWithItsCount(t *testing.T) {
	p := Leggings()
	for _, part := range p.Parts {
		for i, rows := range part.Worked {
			times, counts := printed(part, i)
			if len(times) != len(rows) {
				t.Errorf("%s, size %d: %d rows printed, %d worked", part.Name, i, len(times), len(rows))
			}
			for _, r := range rows {
				if times[r.Number] != 1 {
					t.Errorf("%s, size %d: row %d printed %d times", part.Name, i, r.Number, times[r.Number])
				}
				if c, ok := counts[r.Number]; ok && c != r.Stitches {
					t.Errorf("%s, size %d, row %d: count %d, worked %d", part.Name, i, r.Number, c, r.Stitches)
				}
			}
		}
	}
}

func TestLeggingsLegsGrowOnNeighbouringPlaces(t *testing.T) {
	p := Leggings()
	covered := make([]map[int]bool, len(p.Sizes))
	for i := range covered {
		covered[i] = map[int]bool{}
	}
	for _, part := range p.Parts[rightLeg:] {
		for _, o := range part.From {
			for i := range p.Sizes {
				if o.From[i] < 1 || o.To[i] < o.From[i] || o.To[i] > o.Of[i] {
					t.Errorf("%s, size %d: %s runs from %d to %d of %d", part.Name, i, o.Label, o.From[i], o.To[i], o.Of[i])
				}
				if o.Kind != plan.RefSkipped {
					continue
				}
				for n := o.From[i]; n <= o.To[i]; n++ {
					if covered[i][n] {
						t.Errorf("%s, size %d: place %d belongs to both legs", part.Name, i, n)
					}
					covered[i][n] = true
				}
			}
		}
	}
	for i := range p.Sizes {
		if len(covered[i]) != 2*leg[i] {
			t.Errorf("size %d: the legs take %d places, want %d", i, len(covered[i]), 2*leg[i])
		}
	}
}

func TestLeggingsCountOffIsTheWholeRound(t *testing.T) {
	off := Leggings().Parts[body].Steps[2].(*plan.CountOff)
	for i, want := range waist {
		sum := 0
		for _, it := range off.Items {
			if it.N != nil {
				sum += it.N[i]
			}
		}
		if sum != want {
			t.Errorf("size %d: counted off %d of %d", i, sum, want)
		}
	}
}

func TestLeggingsYarnAndCordFollowFromTheirParts(t *testing.T) {
	p := Leggings()
	for _, y := range p.Yarns {
		for i, a := range y.Amount {
			if int64(a.Balls)*y.BallWeight < a.Milligrams || int64(a.Balls-1)*y.BallWeight >= a.Milligrams {
				t.Errorf("%s, size %d: %d balls for %d mg", y.Name, i, a.Balls, a.Milligrams)
			}
		}
	}
	cord := p.Finish[1]
	for i, l := range cord.Length {
		if open := plan.Length(waist[i]) * stWide; l != open+2*cord.Free[i] {
			t.Errorf("size %d: cord of %v on %v around leaves no %v free", i, l, open, cord.Free[i])
		}
	}
}

func TestLeggingsAreMadeAnew(t *testing.T) {
	Leggings().Sizes[0].Name = "changed"
	if got := Leggings().Sizes[0].Name; got != "1 y" {
		t.Errorf("a change shows in the next fixture: %q", got)
	}
}
