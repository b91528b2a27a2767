package compile

import (
	"slices"
	"strings"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// saidCord is a cord of the finishing, as far as the source speaks of it.
type saidCord struct {
	node    *lang.Cord
	step    int        // of the finishing, -1 if there is nothing to do
	made    *partState // the part that is the cord, or holds it; nil: chains with slip stitches on them
	called  string     // that part, or the part and the label of its chains
	through *partState // nil: it runs through nothing
	row     plan.Nums
	length  plan.Lengths
	width   plan.Lengths
	thick   plan.Length
	loop    plan.Lengths // nil: not said
	zone    caution.Zone
	role    caution.Role
	end     caution.End
}

// cord reads a cord: its length, the chains that make it, the free ends it leaves, and what it is for. It reports whether there is
// something to do.
func (c *checker) cord(n *lang.Cord, f *plan.Finishing) bool {
	s := saidCord{node: n, step: -1, thick: plan.NoLength}
	if n.Made != nil {
		if !c.cordMade(n, &s, f) {
			return false
		}
	} else {
		f.Yarn = c.yarn(n.Yarn)
		if n.Length != nil {
			if !c.cutLength(n.Length, f) {
				return false
			}
			s.length = f.Length
			f.Chains = c.chainsFor(f.Length, n.Length.Span())
		}
		c.useForm(stitch.Form{ID: stitch.Chain, Together: 1})
		c.useForm(stitch.Form{ID: stitch.Slip, Together: 1})
		if len(c.pat.Hooks) > 0 {
			c.hookUsed[c.pat.Hooks[0]] = true
		}
	}
	c.cordMeasures(n, &s, f)
	c.cordWords(n, &s, f)
	if n.Through != nil {
		if s.through = c.through(n.Through, n.Row, f); s.through == nil {
			return false
		}
		s.row = f.Row
		f.Free = c.freeEnds(s.through, f)
	}
	toDo := s.made == nil || s.through != nil || f.Fixed || f.Ends > plan.EndsPlain
	if toDo {
		s.step = len(c.pat.Finish)
	}
	c.cords = append(c.cords, s)
	return toDo
}

// cordMade finds the part that is a cord, or the chains of one under a label; false if there are none of that name, which was said.
func (c *checker) cordMade(n *lang.Cord, s *saidCord, f *plan.Finishing) bool {
	name := n.Made.Path[0]
	if s.made = c.parts[name]; s.made == nil {
		c.say(codeNoPart, n.Made.Span(), diag.Args{"word": name, "near": lang.Near(name, keys(c.parts))})
		return false
	}
	s.called = strings.Join(n.Made.Path, ".")
	if n.Length != nil {
		c.say(codeCordLength, n.Length.Span(), diag.Args{"part": s.called})
	}
	if len(n.Made.Path) > 1 {
		ref, ls, _ := c.placesRef(n.Made)
		if ref == nil {
			return false
		}
		f.Made, s.length = ref, ls
		return true
	}
	f.Made = &plan.Ref{Kind: plan.RefRow, Part: s.made.index, Called: s.made.plan.Called}
	s.length, s.width = c.stripOf(s.made)
	f.Length = s.length
	return true
}

// cordMeasures reads how wide and how thick a cord is, and how far round a loop of it that sticks out.
func (c *checker) cordMeasures(n *lang.Cord, s *saidCord, f *plan.Finishing) {
	read := func(v *lang.Val) plan.Lengths {
		if v == nil {
			return nil
		}
		w := c.value(v, nil)
		ls := w.Lengths()
		if ls == nil && !w.Unknown {
			c.say(codeMeasured, v.Span(), nil)
		}
		return ls
	}
	if ls := read(n.Width); ls != nil {
		s.width = ls
		f.Width = max(ls[0], 0)
	}
	if ls := read(n.Thick); ls != nil {
		s.thick = slices.Min(ls) // the thinnest cuts most
	}
	s.loop = read(n.Loop)
}

// What the words of a cord stand for. The words are ours; what they stand for is what the table of rules speaks of.
var (
	cordRoles = wordsFor[caution.Role]{{"drawstring", "drawstring"}, {"tie", "functional"}, {"bow", "bow"}, {"belt", "tie_belt"},
		{"halter", "halter"}, {"strap", "shoulder_strap"}, {"tab", "tab"}, {"zip_pull", "zip_pull"}, {"chin_tie", "chin_tie"},
		{"joining", "joining"}, {"decoration", "decorative"}, {"fringe", "fringe"}}
	cordZones = wordsFor[caution.Zone]{{"neck", "neck"}, {"nape", "nape"}, {"hood", "hood"}, {"head", "head"}, {"chest", "chest"},
		{"waist", "waist"}, {"back", "back"}, {"hem", "hem"}, {"sleeve", "sleeve"}, {"short_sleeve", "short_sleeve"}, {"cuff", "cuff"},
		{"wrist", "cuff"}, {"ankle", "hem"}, {"other", "other"}}
	elasticZones = append(wordsFor[caution.Zone]{{"cuff", "sleeve"}, {"wrist", "sleeve"}, {"ankle", "sleeve"}}, cordZones...)
	cordEnds     = wordsFor[plan.Ends]{{"plain", plan.EndsPlain}, {"knotted", plan.EndsKnotted}}
	cordTrims    = wordsFor[plan.Ends]{{"beads", plan.EndsBeads}, {"pompoms", plan.EndsPompoms}, {"tassels", plan.EndsTassels},
		{"toggles", plan.EndsToggles}}
	endOf = map[plan.Ends]caution.End{plan.EndsPlain: "plain", plan.EndsKnotted: "knot", plan.EndsBeads: "bead", plan.EndsPompoms: "pompom",
		plan.EndsTassels: "tassel", plan.EndsToggles: "toggle", plan.NoEnds: "none"}
)

// cordWords reads where a cord is, what it is for and how it ends.
func (c *checker) cordWords(n *lang.Cord, s *saidCord, f *plan.Finishing) {
	s.zone, _ = read(c, n.Zone, "zone", cordZones)
	s.role, _ = read(c, n.Role, "role", cordRoles)
	var at lang.Node
	if e, ok := read(c, n.Ends, "ending", cordEnds); ok {
		f.Ends, at = e, n.Ends
	}
	if e, ok := read(c, n.Trim, "trim", cordTrims); ok {
		f.Ends, at = e, n.Trim
	}
	if n.NoEnds {
		if at != nil {
			c.say(codeCordEnds, at.Span(), nil)
		}
		f.Ends = plan.NoEnds
	}
	s.end = endOf[f.Ends]
	f.Fixed, f.Inside = n.Fixed, n.Inside
}

// elasticPlace reads where on the body elastic is.
func (c *checker) elasticPlace(n *lang.Name) caution.Zone {
	z, _ := read(c, n, "zone", elasticZones)
	return z
}

// wordsFor is a closed list of words of the language, with what each stands for.
type wordsFor[T any] []struct {
	word string
	is   T
}

// read looks a word up in a closed list; false if none is said, or it is none of them, which is reported.
func read[T any](c *checker, n *lang.Name, vocabulary string, list wordsFor[T]) (is T, ok bool) {
	if n == nil {
		return is, false
	}
	var known []string
	for _, w := range list {
		if w.word == n.Text {
			return w.is, true
		}
		known = append(known, w.word)
	}
	c.unknownWord(n, vocabulary, known)
	return is, false
}

// unknownWord reports a word that is none of those that can stand in its place.
func (c *checker) unknownWord(n *lang.Name, vocabulary string, known []string) {
	known = c.file.Names(vocabulary, known)
	c.say(codeCautionWord, n.Span(), diag.Args{"word": n.Text, "known": known, "near": lang.Near(n.Text, known)})
}

// stripOf is how long and how wide a part is that is a narrow strip, in every size: worked along its length in a few rows, or across
// it in many. A tube is half as wide as it goes around.
func (c *checker) stripOf(p *partState) (long, wide plan.Lengths) {
	around := c.rowAround(p, nil)
	for z := range around {
		var tall plan.Length
		known, closed := !p.fab[z].Halted(), false
		for _, r := range p.plan.Worked[z] {
			known = known && r.Height > 0
			tall += r.Height
			closed = closed || r.Closed
		}
		across := around[z]
		switch {
		case !known || across <= 0:
			long, wide = append(long, plan.NoLength), append(wide, plan.NoLength)
		case closed:
			long, wide = append(long, tall), append(wide, across/2)
		default:
			long, wide = append(long, max(across, tall)), append(wide, min(across, tall))
		}
	}
	return long, wide
}
