package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// context is where a text stands: the pattern, the part and the sizes that the step at hand is for.
type context struct {
	l     *Language
	p     *plan.Pattern
	part  *plan.Part
	sizes plan.Sizes
	// worked is set once something was worked in the row.
	worked bool
	said   *said // what the row at hand has said in full
	legs   bool  // the stitches at hand are legs of one that draws them together
	flat   bool  // the row at hand is worked back and forth, in a part of rounds
	// before is what the rows of the block at hand say, by their place in it.
	before map[string]int
	nth    int // place of the row in the block; 0 outside of one
	begun  *beginnings
	nouns  sideNouns // what has a left and a right in the names of the pattern; nil: not gathered yet
}

// said is what a row has said in full, and need not say again.
type said struct {
	joins bool            // to what motifs are joined
	ends  bool            // what the end of a row is
	made  map[string]bool // for what chains are made
}

// once reports whether something is said for the first time in the row, and notes it.
func (s *said) once(name string) bool {
	if s == nil {
		return true
	}
	first := !s.made[name]
	if s.made == nil {
		s.made = map[string]bool{}
	}
	s.made[name] = true
	return first
}

func (l *Language) context(p *plan.Pattern, part *plan.Part, sizes plan.Sizes) *context {
	if sizes.All() {
		sizes = nil
	}
	return &context{l: l, p: p, part: part, sizes: sizes}
}

// round reports whether what is worked is a round.
func (c *context) round() bool { return c.part != nil && c.part.Style != plan.Rows && !c.flat }

// sizeNames lists the names of the sizes for which keep holds, among those of the step.
func (c *context) sizeNames(keep func(i int) bool) []string {
	var names []string
	for i, s := range c.p.Sizes {
		if c.sizes.Has(i) && keep(i) {
			names = append(names, c.l.SizeName(s))
		}
	}
	return names
}

// form names a stitch by its abbreviation, those of the designer's own included.
func (c *context) form(f stitch.Form) noun {
	if own := c.own(f.ID); own != nil {
		return c.l.ownNoun(own, f)
	}
	return c.l.voice.form(f)
}

func (c *context) own(id stitch.ID) *plan.OwnStitch {
	for i := range c.p.Own {
		if c.p.Own[i].ID == id {
			return &c.p.Own[i]
		}
	}
	return nil
}

// ownNoun names a stitch of the designer's own as the source does.
func (l *Language) ownNoun(own *plan.OwnStitch, f stitch.Form) noun {
	name := l.read.of(own.Names)
	if name == "" {
		name = string(own.ID)
	}
	if l.read.manner.Full {
		return l.voice.ownStitch(name, "")
	}
	return l.voice.ownStitch(name, l.read.of(own.Abbr))
}

// yarn is the name of a yarn of the pattern, "" for none.
func (c *context) yarn(i int) string {
	if i < 0 || i >= len(c.p.Yarns) {
		return ""
	}
	return c.l.YarnName(c.p.Yarns[i])
}

// marker is the printed number of a marker of the part.
func (c *context) marker(i int) int {
	if c.part == nil || i < 0 || i >= len(c.part.Markers) {
		return 0
	}
	return c.part.Markers[i].Number
}

// partName is what a part is called in a sentence, with its article.
func (c *context) partName(i int) string {
	if i < 0 || i >= len(c.p.Parts) {
		return ""
	}
	q := c.p.Parts[i]
	if name := c.l.theName(q.Called); name != "" {
		return name
	}
	return fill(c.l.voice.line(thePart), c.l.PartTitle(c.p, i)).String()
}

// partNames lists parts in a sentence. Those without a name of their own are named as one: the body and parts A and B.
func (c *context) partNames(parts []int) rich.Text {
	var texts, titles []rich.Text
	for _, i := range parts {
		if name := c.l.theName(c.p.Parts[i].Called); name != "" {
			texts = append(texts, rich.T(name))
		} else {
			titles = append(titles, rich.T(c.l.PartTitle(c.p, i)))
		}
	}
	switch {
	case len(titles) > 1:
		texts = append(texts, c.l.voice.theParts(titles))
	case len(titles) == 1:
		texts = append(texts, fill(c.l.voice.line(thePart), titles[0]))
	}
	return c.l.voice.and(texts)
}

// named makes a reference ready to be said.
func (c *context) named(r *plan.Ref) named {
	if r == nil {
		return named{}
	}
	n := named{Ref: *r, called: c.l.theName(r.Called)}
	if n.called == "" {
		n.called = c.l.role(r.Role)
	}
	if !r.Own {
		n.whose = c.partName(r.Part)
	}
	n.round = c.round()
	if r.Part >= 0 && r.Part < len(c.p.Parts) && !r.Own {
		n.round = c.p.Parts[r.Part].Style != plan.Rows
	}
	if r.Row != nil {
		n.row = c.num(r.Row)
	}
	if r.Count != nil {
		n.count = c.num(r.Count)
	}
	if r.Ends != nil {
		n.ends = c.num(r.Ends)
	}
	if r.ToRow != nil {
		n.toRow = c.num(r.ToRow)
	}
	n.place = c.refPlace(r)
	n.here = r.Own && n.called == "" && r.Row == nil && (r.Kind == plan.RefStitches || r.Kind == plan.RefSpace || r.Kind == plan.RefSkipped)
	return n
}

// refPlace names one place of a run.
func (c *context) refPlace(r *plan.Ref) noun {
	switch {
	case r.Kind == plan.RefSpace:
		return c.space(r.Chains)
	case r.Kind == plan.RefFoundation:
		return c.l.voice.places(plan.FoundationCh)
	case r.Kind == plan.RefStitches && r.Form.ID != "" && !r.Form.Derived():
		return c.form(r.Form)
	}
	// The long names of post stitches and decreases would be read together with what follows them.
	return c.l.voice.places(plan.Stitch)
}

// space names a chain space by its chains, where they are one number.
func (c *context) space(chains plan.Nums) noun {
	n := c.num(chains)
	_, ok := n.same()
	return c.l.voice.spaces(n, chains == nil || !ok)
}

// label is a name of the source for want of a printed one: words parted by spaces.
func (c *context) printed(called plan.Text, label string) string {
	if name := c.l.theName(called); name != "" {
		return name
	}
	return c.l.theLabel(label)
}

// patternName is the name of a stitch pattern, which has no side.
func (c *context) patternName(called plan.Text, label string) string {
	if name := c.l.read.of(called); name != "" {
		return name
	}
	return spaced(label)
}

// list writes texts as one: a, b and c.
func (c *context) list(names []string) rich.Text {
	texts := make([]rich.Text, len(names))
	for i, n := range names {
		texts[i] = rich.T(n)
	}
	return c.l.voice.and(texts)
}
