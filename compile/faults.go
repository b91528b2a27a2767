package compile

import (
	"cmp"
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
	part   *partState
}

// gather notes a fault of one size; sizes with the same cause become one message.
func (c *checker) gather(f *fabric.Fault, z int, p *partState) {
	k := faultKey{f.Kind, f.Span, f.Name}
	g := c.seen[k]
	if g == nil {
		g = &gathered{part: p}
		c.seen[k] = g
		c.keys = append(c.keys, k)
	}
	if slices.Contains(g.sizes, z) {
		return
	}
	g.sizes, g.faults = append(g.sizes, z), append(g.faults, f)
	g.row = append(g.row, p.number[z]+1)
}

// flush reports what was gathered.
func (c *checker) flush() {
	for _, k := range c.keys {
		g := c.seen[k]
		args, help := c.faultArgs(k, g), ""
		if k.kind == fabric.TooFew && !slices.ContainsFunc(g.faults, func(f *fabric.Fault) bool { return f.Have > 0 }) {
			help = "none"
		}
		c.report(diag.Diagnostic{Code: faultCode[k.kind], Span: k.span, Args: args, Sizes: c.namesOf(g.sizes), Help: cmp.Or(nearHelp(args), help)})
	}
}

// faultHelp chooses the remedy: a repeat that is longer than the row has no count below that would come out even.
func faultHelp(k faultKey, args diag.Args) string {
	if k.kind == fabric.NotEven && diag.Fill("{less}", args, "en") == diag.Fill("{more}", args, "en") {
		return "least"
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
		if f.Kind == fabric.NotEven && f.Need > 0 {
			l = f.Have - f.Have%f.Need
			if m = l + f.Need; l == 0 {
				l = m
			}
		}
		less, more = append(less, l), append(more, m)
	}
	a := diag.Args{"need": s.alike(s.need), "have": s.per(s.have), "total": s.per(total), "less": s.per(less), "more": s.per(more),
		"row": s.per(row), "name": k.name, "part": g.part.plan.Name, "round": diag.Term{Key: rowWord(g.part), N: 1}, "n": s.need[0], "m": s.have[0]}
	if k.kind == fabric.Unknown || k.kind == fabric.NotHere {
		a["near"] = lang.Near(k.name, keys(g.part.names))
	}
	return a
}

func rowWord(p *partState) string {
	if p.style == plan.Rows {
		return "row"
	}
	return "round"
}

var faultCode = map[fabric.FaultKind]diag.Code{
	fabric.TooFew: "OV401", fabric.LeftOver: "OV402", fabric.SpaceInWay: "OV403", fabric.NoSpace: "OV404",
	fabric.NotEven: "OV405", fabric.TakesNothing: "OV406", fabric.Ahead: "OV407", fabric.OtherSpace: "OV408",
	fabric.NoGap: "OV409", fabric.LeaveOther: "OV410", fabric.StartSpace: "OV411", fabric.Between: "OV412",
	fabric.NothingDone: "OV413", fabric.NotRing: "OV414", fabric.NoRoom: "OV415", fabric.StatedOther: "OV416",
	fabric.Nested: "OV417", fabric.DrawnBelow: "OV418", fabric.Mismatch: "OV419", fabric.LastNotLast: "OV420",
	fabric.TooMany: "OV421",
	fabric.Behind:  "OV501", fabric.NotHere: "OV502", fabric.Unknown: "OV503", fabric.ManyPlaces: "OV504",
	fabric.Lost: "OV505", fabric.NoMiddle: "OV506", fabric.Placed: "OV507", fabric.NoNext: "OV508",
}
