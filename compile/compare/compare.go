package compare

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// Topic says what a change is about.
type Topic uint8

// The topics, in the order in which a pattern is read.
const (
	Sizes    Topic = iota // a size came, went or has another name; Old and New are indices into the sizes of the patterns
	Ages                  // the wearer's age
	Body                  // a measure of the wearer
	Measures              // a measure of the finished piece
	Yarns                 // what a yarn is: its class, fibres, ball
	Amounts               // how much of it a size takes
	Fibres                // what the finished piece is made of
	Gauges                // a gauge
	Hooks                 // all hooks
	Notions               // all that is needed besides
	Texts                 // introduction, notes, care, licence: their figures
	Stitches              // a stitch of the designer's own
	Charts                // a chart from which rows are worked
	Parts                 // a part came or went
	Heads                 // how a part is worked: yarn, hook, rows or rounds, how many
	Steps                 // what is done in a part
	Finish                // a step of the finishing
	Cautions              // a caution
)

// Pair is the place of something in the old pattern and in the new one; -1 where it has none.
type Pair struct{ Old, New int }

// Size is a size that both patterns have, with both patterns in that size alone.
type Size struct {
	Pair
	Was, Is *plan.Pattern
}

// Change is one thing that means something else than before.
type Change struct {
	Topic Topic
	Name  string // of what is changed, where its topic has several with a name of the source
	Part  Pair   // of Heads, Steps and Parts: indices into the parts of the patterns
	// Old and New are indices into the full patterns: of the sizes, of the steps of the part (Start among them), of the steps of
	// the finishing.
	Old, New []int
	Sites    []Site // where sizes have it, in the order of the sizes
}

// Site is a change in one size. Old and New are indices into what the patterns of that size have of the topic.
type Site struct {
	Size     int // index into [Result.Sizes]
	Old, New []int
}

// Added reports whether a change gives something more and takes nothing away: a new size, a measure, a note.
func (c Change) Added() bool {
	switch c.Topic {
	case Sizes, Parts:
		return len(c.Old) == 0
	case Ages, Body, Measures, Texts, Charts, Gauges:
		for _, s := range c.Sites {
			if len(s.Old) > 0 {
				return false
			}
		}
		return true
	}
	return false
}

// Shift is rows of a part that are the same and have other numbers, in so many of the sizes.
type Shift struct {
	Part  Pair
	Runs  []Run
	Sizes []int // indices into [Result.Sizes]
}

// Result is all that changed.
type Result struct {
	Old, New *plan.Pattern
	Sizes    []Size
	Changes  []Change // in the order of the pattern
	Shifts   []Shift
}

// Same reports whether nothing changed in meaning.
func (r *Result) Same() bool { return len(r.Changes) == 0 }

// SameEdition reports whether the meaning changed and the number of the edition did not.
func (r *Result) SameEdition() bool { return !r.Same() && r.Old.Edition == r.New.Edition }

// Patterns compares two checked patterns. Neither is changed.
func Patterns(old, new *plan.Pattern) *Result {
	r := &Result{Old: old, New: new}
	to, back := sizesOf(old, new)
	r.sizes(to, back)
	for i, k := range to {
		if k >= 0 {
			r.Sizes = append(r.Sizes, Size{Pair{i, k}, old.In(i), new.In(k)})
		}
	}
	parts, partsBack := partsOf(old, new)
	for z := range r.Sizes {
		c := newComparison(r, z, parts, partsBack)
		c.front()
		c.parts()
		c.after()
	}
	r.join()
	slices.SortStableFunc(r.Changes, func(a, b Change) int { return r.place(a) - r.place(b) })
	return r
}

// join makes one change of those of a part that share a step: in one size a run of rows became longer, in another it is two runs.
func (r *Result) join() {
	share := func(a, b []int) bool {
		return slices.ContainsFunc(a, func(i int) bool { return slices.Contains(b, i) })
	}
	merged := func(a, b []int) []int {
		out := append(slices.Clone(a), b...)
		slices.Sort(out)
		return slices.Compact(out)
	}
	for i := 0; i < len(r.Changes); i++ {
		a := &r.Changes[i]
		for k := i + 1; a.Topic == Steps && k < len(r.Changes); k++ {
			b := r.Changes[k]
			if b.Topic != Steps || b.Part != a.Part || !share(a.Old, b.Old) && !share(a.New, b.New) {
				continue
			}
			a.Old, a.New = merged(a.Old, b.Old), merged(a.New, b.New)
			for _, s := range b.Sites {
				at := slices.IndexFunc(a.Sites, func(o Site) bool { return o.Size == s.Size })
				if at < 0 {
					a.Sites = append(a.Sites, s)
					continue
				}
				a.Sites[at].Old, a.Sites[at].New = merged(a.Sites[at].Old, s.Old), merged(a.Sites[at].New, s.New)
			}
			slices.SortFunc(a.Sites, func(x, y Site) int { return x.Size - y.Size })
			r.Changes = slices.Delete(r.Changes, k, k+1)
			k = i // what it holds now may be shared with one before
		}
	}
}

// place is where a change stands in the order of the pattern.
func (r *Result) place(c Change) int {
	at := int(c.Topic) * 1_000_000_000
	if c.Topic == Heads || c.Topic == Steps || c.Topic == Parts {
		at = int(Parts) * 1_000_000_000
	}
	part := c.Part.New
	if part < 0 {
		part = c.Part.Old
	}
	at += max(part, 0) * 1_000_000
	if c.Topic == Steps || c.Topic == Finish {
		step := r.newStep(c)
		at += (step + 2) * 10
	}
	return at
}

// newStep is the step of the new pattern beside which a change stands.
func (r *Result) newStep(c Change) int {
	if len(c.New) > 0 {
		return c.New[0]
	}
	return c.Old[0]
}

// sizesOf pairs sizes: by their names, and those of another name that are for the same wearer.
func sizesOf(old, new *plan.Pattern) (to, back []int) {
	name := func(p *plan.Pattern) []string {
		var out []string
		for _, s := range p.Sizes {
			out = append(out, s.Name)
		}
		return out
	}
	wearer := func(p *plan.Pattern, z int) string {
		s := p.Sizes[z]
		out := fmt.Sprint(s.Age, s.AgeTo)
		for _, b := range p.Body {
			out += fmt.Sprint(" ", b.Name, printed(b.Values[z]))
		}
		return out
	}
	known := func(p *plan.Pattern, z int) bool { return p.Sizes[z].Age >= 0 || len(p.Body) > 0 }
	to, back = named(name(old), name(new), func(i, k int) bool {
		return known(old, i) && wearer(old, i) == wearer(new, k)
	})
	if len(old.Sizes) == 1 && len(new.Sizes) == 1 {
		to[0], back[0] = 0, 0
	}
	return to, back
}

// sizes notes the sizes that came and went, and those that have another name. The name in another language is wording.
func (r *Result) sizes(to, back []int) {
	for i, k := range to {
		switch {
		case k < 0:
			r.Changes = append(r.Changes, Change{Topic: Sizes, Old: []int{i}})
		case r.Old.Sizes[i].Name != r.New.Sizes[k].Name:
			r.Changes = append(r.Changes, Change{Topic: Sizes, Old: []int{i}, New: []int{k}})
		}
	}
	for k, i := range back {
		if i < 0 {
			r.Changes = append(r.Changes, Change{Topic: Sizes, New: []int{k}})
		}
	}
}

// partsOf pairs parts: by their names, by their titles, and what is left between the same neighbours.
func partsOf(old, new *plan.Pattern) (to, back []int) {
	name := func(p *plan.Pattern) []string {
		var out []string
		for _, part := range p.Parts {
			out = append(out, part.Name)
		}
		return out
	}
	to, back = named(name(old), name(new), func(i, k int) bool {
		for code, title := range old.Parts[i].Title {
			if title == new.Parts[k].Title[code] {
				return true
			}
		}
		return false
	})
	inPlace(to, back)
	return to, back
}

// comparison is that of one size.
type comparison struct {
	r        *Result
	z        int // index into Result.Sizes
	old, new *book
	to, back []int // the parts
	moves    func(part, row int) where
}

func newComparison(r *Result, z int, to, back []int) *comparison {
	s := r.Sizes[z]
	c := &comparison{r: r, z: z, to: to, back: back, old: &book{p: s.Was}, new: &book{p: s.Is, parts: back}}
	_, c.new.yarns = c.pairYarns()
	_, c.new.charts = c.pairCharts()
	c.new.own = map[stitch.ID]stitch.ID{}
	_, own := c.pairOwn()
	for k, i := range own {
		if i >= 0 {
			c.new.own[s.Is.Own[k].ID] = s.Was.Own[i].ID
		}
	}
	for _, b := range []*book{c.old, c.new} {
		for _, part := range b.p.Parts {
			b.sites = append(b.sites, b.sitesOf(part))
		}
	}
	return c
}

func (c *comparison) pairYarns() (to, back []int) {
	name := func(p *plan.Pattern) (out []string) {
		for _, y := range p.Yarns {
			out = append(out, y.Name)
		}
		return out
	}
	to, back = named(name(c.old.p), name(c.new.p))
	inPlace(to, back)
	return to, back
}

func (c *comparison) pairCharts() (to, back []int) {
	name := func(p *plan.Pattern) (out []string) {
		for _, k := range p.Charts {
			out = append(out, k.Name)
		}
		return out
	}
	to, back = named(name(c.old.p), name(c.new.p))
	inPlace(to, back)
	return to, back
}

func (c *comparison) pairOwn() (to, back []int) {
	name := func(p *plan.Pattern) (out []string) {
		for _, o := range p.Own {
			out = append(out, string(o.ID))
		}
		return out
	}
	to, back = named(name(c.old.p), name(c.new.p))
	inPlace(to, back)
	return to, back
}

// note adds a change of this size to that of the sizes before it, if there is one.
func (c *comparison) note(k Change, old, new []int) {
	same := func(o Change) bool {
		return o.Topic == k.Topic && o.Name == k.Name && o.Part == k.Part && slices.Equal(o.Old, k.Old) && slices.Equal(o.New, k.New)
	}
	i := slices.IndexFunc(c.r.Changes, same)
	if i < 0 {
		i = len(c.r.Changes)
		c.r.Changes = append(c.r.Changes, k)
	}
	c.r.Changes[i].Sites = append(c.r.Changes[i].Sites, Site{c.z, old, new})
}

// one is a list of one index, none for -1.
func one(i int) []int {
	if i < 0 {
		return nil
	}
	return []int{i}
}

// item is something that is found by its name.
type item struct{ name, key string }

// items compares two lists of things with names.
func (c *comparison) items(topic Topic, old, new []item, to, back []int) {
	for i, k := range to {
		if k < 0 || old[i].key != new[k].key {
			c.note(Change{Topic: topic, Name: old[i].name}, one(i), one(k))
		}
	}
	for k, i := range back {
		if i < 0 {
			c.note(Change{Topic: topic, Name: new[k].name}, nil, one(k))
		}
	}
}

// byName compares two lists of things that keep their names.
func (c *comparison) byName(topic Topic, old, new []item, also ...func(i, k int) bool) {
	names := func(list []item) (out []string) {
		for _, x := range list {
			out = append(out, x.name)
		}
		return out
	}
	to, back := named(names(old), names(new), also...)
	c.items(topic, old, new, to, back)
}

// whole compares something that there is once.
func (c *comparison) whole(topic Topic, old, new string) {
	if old != new {
		there := func(key string) []int {
			if strings.Trim(key, "[]- ") == "" {
				return nil
			}
			return []int{0}
		}
		c.note(Change{Topic: topic}, there(old), there(new))
	}
}
