package desk

import (
	"slices"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Source is a source with what it may read.
type Source struct {
	File   *source.File
	Open   func(name string) ([]byte, error) // reads a file of its folder; nil: none are read
	Gauges []compile.OwnGauge                // at which it is checked; none: its own
	Memory *Memory                           // kept from one check of it to the next; nil: nothing is
}

// Checked is what came of a source.
type Checked struct {
	Source
	Tree    *lang.File
	Pattern *plan.Pattern // whole only if Found has no error; nil if there was nothing to check
	Shared  bool          // it holds nothing but what patterns share; Pattern is nil then, and nothing is missing
	Found   diag.List
	Book    *plan.Book          // if the source is a book, in place of Pattern
	Bound   []compile.Bound     // the patterns of the book, with what was found in each
	Fault   *compile.GaugeFault // one of Gauges that stands in place of none of the source; nothing was checked then
	Sound   bool                // the source has no error at its own gauge

	Value func(name string) (v plan.Value, ok bool) // see [compile.Outcome]; nil if there was nothing to check
	Used  []string                                  // the files that it takes in, named from its folder; those that cannot be read as well
}

// Check reads a source and works it in every size.
func Check(s Source) Checked {
	file, found := lang.Load(s.File, s.Open)
	s.Gauges = slices.Clone(s.Gauges)
	for i, g := range s.Gauges {
		if own, ok := compile.ReadOwnGauge(file.English(g.Text)); ok {
			own.Text = g.Text
			s.Gauges[i] = own
		}
	}
	c := Checked{Source: s, Tree: file, Found: found, Used: file.Used()}
	if found.HasErrors() {
		// The tree has holes; whatever the checker said of it might be the holes' doing.
		return c
	}
	room, done := s.Memory.room()
	out := compile.CompileWith(file, compile.Options{Gauges: s.Gauges, Open: s.Open, Picture: s.Memory.picture, Room: room})
	done() // not after a panic: what is in the room then, nobody knows
	c.Pattern, c.Fault, c.Sound, c.Value = out.Pattern, out.Fault, out.Sound, out.Value
	c.Book, c.Bound, c.Shared = out.Book, out.Bound, out.Shared
	for _, b := range c.Bound {
		c.Used = append(c.Used, b.Files()...)
	}
	c.Found = append(found, out.Found...)
	return c
}

// Printable reports whether the pattern may be printed.
func (c *Checked) Printable() bool { return c.Pattern != nil && c.Fault == nil && !c.Found.HasErrors() }

// Bindable reports whether the source is a book that may be printed.
func (c *Checked) Bindable() bool { return c.Book != nil && !c.Found.HasErrors() }

// Printer words what was found, in a language of the messages.
func (c *Checked) Printer(lang string, color bool) diag.Printer {
	return diag.Printer{Lang: lang, Color: color, Code: c.Tree.Coder(), CodeAt: c.Tree.CoderAt()}
}
