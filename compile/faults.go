package compile

import (
	"slices"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// faultKey tells causes apart: one place of the source, one kind of fault.
type faultKey struct {
	kind fabric.FaultKind
	span source.Span
	name string
}

// gathered is one fault with the sizes it holds for.
type gathered struct {
	sizes  []int
	faults []*fabric.Fault
	row    []int // number of the row, per size of sizes
	edge   []int // places of the edge it was worked along, per size of sizes
	below  source.Span
	part   *partState
}

// gather notes a fault of one size; sizes with the same cause become one message.
func (c *checker) gather(f *fabric.Fault, z int, p *partState) {
	k := faultKey{f.Kind, f.Span, f.Name}
	g := c.seen[k]
	if g == nil {
		g = &gathered{part: p, below: p.below[z]}
		c.seen[k] = g
		c.keys = append(c.keys, k)
	}
	if slices.Contains(g.sizes, z) {
		return
	}
	g.sizes, g.faults = append(g.sizes, z), append(g.faults, f)
	g.row, g.edge = append(g.row, p.number[z]+1), append(g.edge, len(p.fab[z].Edge()))
}

// flush reports what was gathered.
func (c *checker) flush() {
	for _, k := range c.keys {
		g := c.seen[k]
		args := c.faultArgs(k, g)
		c.report(diag.Diagnostic{Code: faultCode[k.kind], Span: k.span, Args: args, Sizes: c.namesOf(g.sizes), Help: faultHelp(k, g, args),
			Related: c.madeBelow(k, g)})
	}
}

// ofPlaces are the faults whose cause may lie in the row below, or in the start.
var ofPlaces = map[fabric.FaultKind]bool{fabric.TooFew: true, fabric.LeftOver: true, fabric.NotEven: true, fabric.NoRoom: true,
	fabric.LeaveOther: true, fabric.LastNotLast: true, fabric.SpaceInWay: true, fabric.Crowded: true, fabric.NoSpace: true, fabric.OtherSpace: true,
	fabric.UnevenCells: true, fabric.NoCentre: true, fabric.NoSquares: true, fabric.UnevenSquares: true}

// madeBelow points at what made the places of the edge, unless it is the very row that failed, worked again.
func (c *checker) madeBelow(k faultKey, g *gathered) []diag.Related {
	if !ofPlaces[k.kind] || k.name != "" || g.below.IsZero() || g.below.Start <= k.span.Start && k.span.End <= g.below.End {
		return nil
	}
	s := newSpread(c)
	for i, z := range g.sizes {
		s.add(z, 0, g.edge[i])
	}
	return []diag.Related{{Span: g.below, Key: "below", Args: diag.Args{"edge": s.per(s.have)}}}
}

// evenKinds are the faults of what does not come out even.
var evenKinds = map[fabric.FaultKind]bool{fabric.NotEven: true, fabric.UnevenCells: true, fabric.NoSquares: true}

// faultHelp chooses the remedy: a repeat that is longer than the row has no count below that would come out even, and where
// no place is left none can be offered.
func faultHelp(k faultKey, g *gathered, args diag.Args) string {
	switch {
	case evenKinds[k.kind] && diag.Fill("{less}", args, "en") == diag.Fill("{more}", args, "en"):
		return "least"
	case k.kind == fabric.TooFew && !slices.ContainsFunc(g.faults, func(f *fabric.Fault) bool { return f.Have > 0 }):
		return "none"
	}
	return nearHelp(args)
}

func (c *checker) namesOf(zs []int) []string {
	if len(zs) == c.z {
		return nil
	}
	var out []string
	for _, z := range zs {
		out = append(out, c.pat.Sizes[z].Name)
	}
	return out
}

// faultArgs are the facts of a message: what was needed and found in each size, and what would put it right.
func (c *checker) faultArgs(k faultKey, g *gathered) diag.Args {
	s := newSpread(c)
	var total, less, more, row []int
	for i, z := range g.sizes {
		f := g.faults[i]
		s.add(z, f.Need, f.Have)
		total, row = append(total, f.Total), append(row, g.row[i])
		l, m := f.Have, f.Have
		if f.Need > 0 {
			l, m = evenBeside(f)
		}
		less, more = append(less, l), append(more, m)
	}
	a := diag.Args{"need": s.alike(s.need), "have": s.per(s.have), "total": s.per(total), "less": s.per(less), "more": s.per(more),
		"row": s.per(row), "name": k.name, "part": g.part.plan.Name, "round": diag.Term{Key: rowWord(g.part), N: 1}, "n": s.need[0], "m": s.have[0]}
	a["where"] = diag.Term{Key: "size", N: 1}
	if k.kind == fabric.TooWide {
		a["where"] = a["round"]
	}
	if k.kind == fabric.Unknown || k.kind == fabric.NotHere {
		a["near"] = lang.Near(k.name, keys(g.part.names))
	}
	return a
}

// evenBeside are the numbers below and above what was found that would come out even.
func evenBeside(f *fabric.Fault) (less, more int) {
	over := 0 // places that belong to no pass
	switch f.Kind {
	case fabric.NotEven, fabric.UnevenCells, fabric.UnevenSquares:
	case fabric.NoSquares:
		over = f.Total
	case fabric.NoCentre:
		return f.Have - 1, f.Have + 1
	default:
		return f.Have, f.Have
	}
	less = f.Have - over
	less -= less % f.Need
	if less <= 0 {
		return f.Need + over, f.Need + over
	}
	return less + over, less + f.Need + over
}

func rowWord(p *partState) string {
	if p.style == plan.Rows {
		return "row"
	}
	return "round"
}

var faultCode = map[fabric.FaultKind]diag.Code{
	fabric.TooFew: "OV401", fabric.RunShort: "OV539", fabric.LeftOver: "OV402", fabric.SpaceInWay: "OV403", fabric.NoSpace: "OV404",
	fabric.NotEven: "OV405", fabric.TakesNothing: "OV406", fabric.Ahead: "OV407", fabric.OtherSpace: "OV408",
	fabric.NoGap: "OV409", fabric.LeaveOther: "OV410", fabric.StartSpace: "OV411", fabric.Between: "OV412",
	fabric.NothingDone: "OV413", fabric.NotRing: "OV414", fabric.NoRoom: "OV415", fabric.StatedOther: "OV416",
	fabric.Nested: "OV417", fabric.DrawnBelow: "OV418", fabric.Mismatch: "OV419", fabric.LastNotLast: "OV420",
	fabric.UnevenCells: "OV460", fabric.NoCentre: "OV461", fabric.NoSquares: "OV462", fabric.UnevenSquares: "OV463",
	fabric.TooMany: "OV421", fabric.TooWide: "OV421", fabric.Crowded: "OV425", fabric.ShortSpace: "OV486",
	fabric.Behind: "OV501", fabric.NotHere: "OV502", fabric.Unknown: "OV503", fabric.ManyPlaces: "OV504",
	fabric.Lost: "OV505", fabric.NoMiddle: "OV506", fabric.Placed: "OV507", fabric.NoNext: "OV508", fabric.NoMarker: "OV513", fabric.NoneMet: "OV514", fabric.NoStitches: "OV544",
	fabric.NotMarked: "OV516",
}
