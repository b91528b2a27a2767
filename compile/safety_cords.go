package compile

import (
	"cmp"
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/lang"
)

// cordFacts is what is known of the cords that the finishing speaks of, and of what hangs from the fabric besides.
func (c *checker) cordFacts() []caution.Cord {
	var out []caution.Cord
	loose := c.looseChains()
	for _, s := range c.cords {
		f := c.cordFact(s)
		for _, l := range loose {
			if l.name != s.called {
				continue
			}
			if f.Length = l.length; l.loop && s.loop == nil {
				f.Loop, f.Role, f.End = l.around, cmp.Or(f.Role, "loop"), cmp.Or(f.End, "none") // an arch has no ends
				f.BehindNeck = behindNeck(f)
			}
		}
		out = append(out, f)
	}
	out = append(out, c.fringeFacts()...)
	for _, l := range loose {
		if !slices.ContainsFunc(c.cords, func(s saidCord) bool { return s.called == l.name }) {
			out = append(out, c.looseFact(l))
		}
	}
	return out
}

// cordFact is what is known of a cord. What the source does not say stays unknown, but for what the printed text settles: a cord of
// yarn does not stretch, and its ends do not fray where they are woven in.
func (c *checker) cordFact(s saidCord) caution.Cord {
	n := s.node
	f := caution.Cord{Zone: c.cordZone(s), Role: s.role, Length: s.length, Width: s.width, Thick: s.thick, End: s.end,
		Fray: c.frays(), Elastic: truthOf(n.Elastic), Anchored: ifSaid(n.Fixed, caution.True), Outside: ifSaid(n.Inside, caution.False),
		BelowHem: ifSaid(n.Inside || n.NoEnds || n.Above, caution.False), Name: "cord", Step: s.step, At: n.Span()}
	if s.made != nil {
		f.Name = s.called
	}
	if s.through != nil {
		if f.Role == "" {
			f.Role = "drawstring"
		}
		f.Opening = c.aroundRow(s.through, s.row)
		f.Drawn = c.wearerAt(f.Zone)
	}
	if c.girdle(s) {
		f.Drawn = c.beltAround(f.Zone)
	}
	if f.Role == "" && slices.ContainsFunc(s.loop, func(l plan.Length) bool { return l > 0 }) {
		f.Role = "loop"
	}
	f.Loop, f.LoopDrawn = c.loopOf(s, f)
	f.BehindNeck = behindNeck(f)
	return f
}

func truthOf(b bool) caution.Truth {
	if b {
		return caution.True
	}
	return caution.False
}

// ifSaid is what a word settles that the source may leave out.
func ifSaid(said bool, is caution.Truth) caution.Truth {
	if said {
		return is
	}
	return caution.Unknown
}

// cordZone is where a cord is: as the source says, or by the name of the part it runs through, or of the part that it is.
func (c *checker) cordZone(s saidCord) caution.Zone {
	switch {
	case s.zone != caution.UnknownZone:
		return s.zone
	case s.through != nil:
		return caution.ZoneOf(c.pat.Kind, s.through.plan.Name)
	case s.made != nil:
		return caution.ZoneOf(c.pat.Kind, s.made.plan.Name)
	}
	return caution.ZoneOf(c.pat.Kind, "")
}

// frays is false where the finishing weaves in the ends of the yarn, those of cords with them.
func (c *checker) frays() caution.Truth {
	for _, f := range c.pat.Finish {
		if f.Kind == plan.WeaveEnds {
			return caution.False
		}
	}
	return caution.Unknown
}

// aroundRow is how far round the row goes that a cord runs through, laid open.
func (c *checker) aroundRow(p *partState, row plan.Nums) plan.Lengths {
	out := c.rowAround(p, row)
	for z, l := range out {
		if l <= 0 {
			out[z] = plan.NoLength
		}
	}
	return out
}

// measureAt is the measure of the wearer where something is drawn up, by the zone.
var measureAt = map[caution.Zone]string{"waist": "waist", "chest": "chest", "head": "head", "cuff": "wrist", "nape": "neck", "neck": "neck"}

// wearerAt is how far round the wearer is at a zone, nil if that is not known.
func (c *checker) wearerAt(zone caution.Zone) plan.Lengths {
	name := measureAt[zone]
	for _, m := range c.pat.Body {
		if m.Name == name {
			return m.Values
		}
	}
	if v, ok := c.lets["fit."+name]; ok && name != "" {
		return v.Lengths()
	}
	return nil
}

// girdle reports whether a cord is a belt of one piece that goes round the wearer. Of two that are tied to each other, and of chains that
// hang from the fabric, it is not known where they begin, and the whole of each counts as free.
func (c *checker) girdle(s saidCord) bool {
	belts := 0
	for _, o := range c.cords {
		if o.role == "tie_belt" {
			belts++
		}
	}
	if s.role != "tie_belt" || s.through != nil || belts > 1 {
		return false
	}
	return s.made == nil || s.made.plan.Make <= 1 && s.called == s.made.plan.Name
}

// beltAround is how far round the wearer a belt goes before it is tied: at the waist, unless it sits elsewhere.
func (c *checker) beltAround(zone caution.Zone) plan.Lengths {
	if around := c.wearerAt(zone); around != nil {
		return around
	}
	if around := c.wearerAt(caution.Waist); around != nil && zone != caution.Chest {
		return around
	}
	return slices.Repeat(plan.Lengths{plan.NoLength}, c.z)
}

// loopOf is how far around a loop of a cord is that sticks out, laid open and drawn up. A drawstring with two ends has none; one that
// is joined into a ring sticks out by what is longer than its opening. A bow has loops, and a cord without ends may be one.
func (c *checker) loopOf(s saidCord, f caution.Cord) (open, drawn plan.Lengths) {
	open, drawn = make(plan.Lengths, c.z), make(plan.Lengths, c.z)
	beyond := func(z int, around plan.Lengths) plan.Length {
		if len(f.Length) == 0 || len(around) == 0 || f.Length[z] == plan.NoLength || around[z] == plan.NoLength {
			return plan.NoLength
		}
		return max(f.Length[z]-around[z], 0)
	}
	for z := range open {
		open[z], drawn[z] = plan.NoLength, plan.NoLength
		switch {
		case z < len(s.loop):
			open[z] = s.loop[z]
		case s.through != nil && s.node.NoEnds:
			open[z], drawn[z] = beyond(z, f.Opening), beyond(z, f.Drawn)
		case f.Role == "bow" || s.node.NoEnds:
		default:
			open[z], drawn[z] = 0, 0
		}
	}
	return open, drawn
}

// behindNeck tells whether a cord is tied behind the neck.
func behindNeck(f caution.Cord) caution.Truth {
	switch {
	case f.End == "none":
		return caution.False
	case f.Role == "halter", f.Role == "functional" && f.Zone == "nape":
		return caution.True
	case f.Role == "" || f.Zone == caution.UnknownZone:
		return caution.Unknown
	}
	return caution.False
}

// cordParts are the parts of the source that a cord is made of, by the name of the part.
func (c *checker) cordParts() map[string]*lang.Cord {
	out := map[string]*lang.Cord{}
	for _, s := range c.cords {
		if s.made != nil {
			out[s.made.plan.Name] = s.node // of its chains as well
		}
	}
	return out
}
