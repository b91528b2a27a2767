package compile

import (
	"math/big"
	"slices"
	"strings"

	"ovillo/compile/picture"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
)

// This file works a source at a maker's own gauge: the lines of its gauge are replaced, and everything is checked again.

// OwnGauge is what a maker counted on a swatch, in place of a line of the source's gauge and over the same length.
type OwnGauge struct {
	Stitch  string // as the source names it
	Sts     *big.Rat
	Repeats bool        // repeats of a stitch pattern were counted, not stitches
	Rows    *big.Rat    // nil: not said, and those of the source stay
	Way     string      // rows or rounds; "" if Rows is nil
	Hook    plan.Length // it was counted with; 0: the main one
	Text    string      // as it was written
}

// ownForm is how a maker's gauge is written: dc 18 sts, 9 rows, hook 3.5 mm. The commas may be left out.
var ownForm = lazy.Regexp(`^([\pL_][\pL\pN_]*) +([0-9]+(?:\.[0-9]+)?) +(sts?|repeats?)(?: *,? *([0-9]+(?:\.[0-9]+)?) +(rows?|rounds?))?(?: *,? *hook +([0-9]+(?:\.[0-9]+)?) *mm)?$`)

// ReadOwnGauge reads a maker's gauge; ok is false if it is not written as one, or a number of it is zero.
func ReadOwnGauge(text string) (g OwnGauge, ok bool) {
	g.Text = strings.Join(strings.Fields(text), " ")
	m := ownForm().FindStringSubmatch(g.Text)
	if m == nil {
		return g, false
	}
	number := func(s string) *big.Rat { x, _ := new(big.Rat).SetString(s); return x }
	g.Stitch, g.Sts, g.Repeats = m[1], number(m[2]), strings.HasPrefix(m[3], "repeat")
	if m[4] != "" {
		g.Rows, g.Way = number(m[4]), strings.TrimSuffix(m[5], "s")+"s"
	}
	if m[6] != "" {
		mm, _ := number(m[6]).Float64()
		g.Hook = micro(mm * float64(plan.Millimetre))
	}
	return g, g.Sts.Sign() > 0 && (g.Rows == nil || g.Rows.Sign() > 0) && (m[6] == "" || g.Hook > 0)
}

// GaugeFault says why a maker's gauge cannot be put in place of one of the source.
type GaugeFault struct {
	Kind GaugeFaultKind
	Own  OwnGauge
	Near []string // the lines that there are
}

// GaugeFaultKind is the kind of a [GaugeFault].
type GaugeFaultKind uint8

// The kinds.
const (
	GaugeNoLine  GaugeFaultKind = iota + 1 // the source has no gauge of that stitch, or none that was counted so
	GaugeSeveral                           // it has several, and nothing says which is meant
	GaugeTwice                             // one line is replaced twice
	GaugeRepeats                           // repeats of what has none
)

// Options are what may be chosen when a source is checked.
type Options struct {
	Gauges []OwnGauge // none: the gauge of the source
	// Open reads a file that the source names, by its name from the folder of the source, with slashes. It is called for the
	// photograph alone, and never for a name that leads out of that folder. It need not read on behind 40 MB. nil: no files are
	// read, and nothing is said of them.
	Open func(name string) ([]byte, error)
	// Picture reads a photograph as [picture.Read] does, or keeps what that read before; nil: picture.Read.
	Picture func(data []byte) (picture.Picture, error)
	Room    *Room // to work in; nil: memory is taken anew
}

// Outcome is what came of checking a source.
type Outcome struct {
	Book  *plan.Book // if the source is a book; whole only if Found has no error
	Bound []Bound    // the patterns of the book, in their order, those with errors as well

	Shared bool // the source holds nothing but what patterns share: then there is no pattern, and nothing is missing

	Pattern *plan.Pattern // nil if there was nothing to check; it may be printed only if Found has no error
	Found   diag.List
	Fault   *GaugeFault // a gauge that cannot be put in place of one of the source; nothing was checked then
	// Sound says that the source has no error at its own gauge, so that errors are those of the gauge that was chosen.
	Sound bool
	// Value is what a name of a value stands for, such as leg, fit.waist or measure.hips; ok is false if there is none. nil if there was
	// nothing to check.
	Value func(name string) (v plan.Value, ok bool)
}

// CompileWith checks a source with options. At a maker's gauge the source is checked at its own one first: a weighed swatch or
// sample was made at that, and the pattern says what is different.
func CompileWith(f *lang.File, o Options) Outcome {
	if found := tooMany(f); found != nil {
		return Outcome{Found: found}
	}
	if books := blocks[*lang.Book](f.Body); len(books) > 0 {
		return checkBook(f, books, o)
	}
	if f.OnlyShared() {
		return checkAlone(f, o)
	}
	origin := newChecker(f)
	origin.reads(o)
	defer func() { o.Room.giveBack(origin.fabrics) }()
	origin.check()
	if len(o.Gauges) == 0 || origin.out.HasErrors() || origin.empty() {
		return origin.outcome()
	}
	c := newChecker(f)
	c.chosen, c.origin = o.Gauges, origin
	c.reads(o)
	defer func() { o.Room.giveBack(c.fabrics) }()
	c.check()
	if c.misfit != nil {
		return Outcome{Fault: c.misfit, Sound: true}
	}
	if !c.empty() {
		c.changed()
	}
	out := c.outcome()
	out.Sound = true
	return out
}

// reads sets how files are read, and the room to work in.
func (c *checker) reads(o Options) {
	c.room = o.Room
	if c.open, c.readPicture = o.Open, o.Picture; c.readPicture == nil {
		c.readPicture = picture.Read
	}
}

// empty reports whether there was nothing to check.
func (c *checker) empty() bool { return len(c.pat.Sizes) == 0 || len(c.pat.Parts) == 0 }

func (c *checker) outcome() Outcome {
	if c.empty() {
		return Outcome{Found: c.out}
	}
	return Outcome{Pattern: c.pat, Found: c.out, Sound: !c.out.HasErrors(), Value: c.worth()}
}

// worth looks values up by their names. It holds on to nothing of the checker but them.
func (c *checker) worth() func(name string) (plan.Value, bool) {
	lets := c.lets
	return func(name string) (plan.Value, bool) {
		v, ok := lets[name]
		if !ok {
			return plan.Value{}, false
		}
		return planValue(v), true
	}
}

// regrade puts the maker's gauges in place of those of the source.
func (c *checker) regrade() {
	done := map[*gaugeOf]bool{}
	for _, own := range c.chosen {
		g, fault := c.lineFor(own)
		if fault == 0 && done[g] {
			fault = GaugeTwice
		}
		of := 1
		if fault == 0 && own.Repeats {
			if of = c.repeatWidth(own.Stitch); of == 0 {
				fault = GaugeRepeats
			}
		}
		if fault != 0 {
			c.misfit = &GaugeFault{Kind: fault, Own: own, Near: c.gaugeLines()}
			return
		}
		done[g] = true
		p := &c.pat.Gauges[slices.Index(c.lines, g)]
		was := *p
		p.Was = &was
		sts := new(big.Rat).Mul(own.Sts, big.NewRat(int64(of), 1))
		g.sts, p.Sts, p.Repeats = new(big.Rat).Quo(sts, g.over), thousandths(sts), 0
		if own.Repeats {
			p.Repeats = thousandths(own.Sts)
		}
		if own.Rows != nil {
			g.rows, p.Rows, p.Rounds = new(big.Rat).Quo(own.Rows, g.over), thousandths(own.Rows), own.Way == "rounds"
		}
	}
}

// lineFor finds the line of the gauge that a maker's gauge replaces.
func (c *checker) lineFor(own OwnGauge) (*gaugeOf, GaugeFaultKind) {
	id := stitch.ID(own.Stitch)
	if own.Stitch == "ch" {
		id = stitch.Chain
	} else if c.patterns[own.Stitch] == nil {
		f, _ := c.form(own.Stitch)
		id = f.ID
	}
	var fit []*gaugeOf
	for _, g := range c.gauge[id] {
		if g.by == eitherWay || own.Way == "" || g.by.key()+"s" == own.Way {
			fit = append(fit, g)
		}
	}
	hook := func(g *gaugeOf) bool { return c.hookOf(g.hook) == c.hookOf(own.Hook) }
	if own.Hook != 0 || slices.ContainsFunc(fit, hook) {
		fit = slices.DeleteFunc(fit, func(g *gaugeOf) bool { return !hook(g) })
	}
	switch len(fit) {
	case 0:
		return nil, GaugeNoLine
	case 1:
		return fit[0], 0
	}
	return nil, GaugeSeveral
}

// repeatWidth is over how many stitches a repeat of a stitch pattern goes, 0 if that cannot be told.
func (c *checker) repeatWidth(name string) int {
	sp := c.patterns[name]
	if sp == nil || sp.of == nil || sp.bad {
		return 0
	}
	if n, _, ok := c.multipleOf(sp, nil); ok {
		if k, one := n.Same(); one {
			return k
		}
	}
	return 0
}

// gaugeLines are the lines of the source's gauge, as it writes them.
func (c *checker) gaugeLines() []string {
	var out []string
	for _, g := range c.lines {
		out = append(out, strings.Join(strings.Fields(c.file.Source.Slice(g.at)), " "))
	}
	return out
}
