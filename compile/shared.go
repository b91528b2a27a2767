package compile

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/markdown"
	"ovillo/lang/source"
)

// A file that patterns share is a shelf: a pattern takes from it what it names, and nothing is said of the rest. Yarns, values,
// lists of stitches, stitches, stitch patterns and charts are taken if they are named; a line of the gauge if its stitch is
// worked; a measure of the wearer if it is named, or else all of them; the hook if the pattern says none; care and licence if its header says none. Sizes, notions and notes are
// for all.

// taken is a file without what its pattern does not take from the files it uses.
func taken(f *lang.File) *lang.File {
	if !slices.ContainsFunc(f.Body, func(s *lang.Statement) bool { return f.Shared(s.Head) }) {
		return f
	}
	sh := &shelf{file: f, things: map[string]*lang.Statement{}, named: map[string]bool{}, worn: map[string]bool{}}
	for _, s := range f.Body {
		if f.Shared(s.Head) {
			sh.put(s)
		} else {
			sh.own(s)
		}
	}
	if y := sh.onlyYarn; y != nil && !sh.yarned {
		sh.name(y.Node.(*lang.Yarn).Name.Text)
	}
	out := *f
	out.Body = nil
	hook := sh.hooked
	for _, s := range f.Body {
		switch n := s.Node.(type) {
		case *lang.Hook:
			if f.Shared(s.Head) && hook {
				continue
			}
			hook = hook || f.Shared(s.Head)
		case *lang.Prose:
			if f.Shared(s.Head) && sh.prose[n.Word] {
				continue
			}
		case *lang.Yarn:
			if f.Shared(s.Head) && sh.named[n.Name.Text] {
				s = sh.unlike(s, 0)
			}
		case *lang.Sizes:
			if f.Shared(s.Head) {
				s = sh.fitted(s)
			}
		}
		if name := thingNamed(s); name == nil || !f.Shared(s.Head) || sh.named[name.Text] {
			out.Body = append(out.Body, s)
		}
	}
	return &out
}

// shelf is what lies in the shared files, and what the pattern names.
type shelf struct {
	file     *lang.File
	things   map[string]*lang.Statement // of the shared files, by name
	named    map[string]bool            // by the pattern, or by what it takes
	worn     map[string]bool            // measures of the wearer that are named
	onlyYarn *lang.Statement            // nil: there are none or several
	yarns    int
	yarned   bool            // the pattern has a yarn of its own, or names one
	hooked   bool            // it says its hook
	prose    map[string]bool // texts of its header
}

// thingNamed is the name of what is taken only if it is named; nil: something else.
func thingNamed(s *lang.Statement) *lang.Name {
	switch n := s.Node.(type) {
	case *lang.Yarn:
		return n.Name
	case *lang.Let:
		return n.Name
	case *lang.Group:
		return n.Name
	case *lang.Stitch:
		return n.Name
	case *lang.StitchPattern:
		return n.Name
	case *lang.Chart:
		return n.Name
	}
	return nil
}

// put lays a statement of a shared file on the shelf. What stands there for all may name things as well.
func (sh *shelf) put(s *lang.Statement) {
	name := thingNamed(s)
	if name == nil {
		if _, gauge := s.Node.(*lang.Gauge); !gauge {
			sh.names(s)
		}
		return
	}
	if _, twice := sh.things[name.Text]; !twice {
		sh.things[name.Text] = s
	}
	if _, yarn := s.Node.(*lang.Yarn); yarn {
		sh.onlyYarn = s
		if sh.yarns++; sh.yarns > 1 {
			sh.onlyYarn = nil
		}
	}
	if sh.named[name.Text] {
		sh.name(name.Text)
	}
}

// own notes what a statement of the pattern names and says.
func (sh *shelf) own(s *lang.Statement) {
	if sh.prose == nil {
		sh.prose = map[string]bool{}
	}
	switch s.Node.(type) {
	case *lang.Hook:
		sh.hooked = true
	case *lang.Yarn:
		sh.yarned = true
	case *lang.Pattern:
		for _, b := range s.Body {
			switch n := b.Node.(type) {
			case *lang.Hook:
				sh.hooked = true
			case *lang.Prose:
				sh.prose[n.Word] = true
			}
		}
	}
	sh.names(s)
}

// names notes everything that a statement names, in its texts as well.
func (sh *shelf) names(s *lang.Statement) {
	words := sh.file.At(s.Head)
	text := func(t string) {
		for _, h := range markdown.Holes(t) {
			name := words.Named(h.Name)
			sh.name(name)
			sh.fits(strings.Split(name, "."))
		}
	}
	one := []*lang.Statement{s}
	lang.WalkStatements(one, func(s *lang.Statement) bool {
		for _, l := range s.Lines {
			text(l.Text)
		}
		if s.Node == nil {
			return true
		}
		s.Inspect(func(n lang.Node) bool {
			switch n := n.(type) {
			case *lang.Name:
				sh.name(n.Text)
			case *lang.Ref:
				sh.name(n.Path[0])
				sh.fits(n.Path)
			case *lang.Expr:
				if len(n.Path) > 0 {
					sh.name(n.Path[0])
					sh.fits(n.Path)
				}
			case *lang.Str:
				text(n.Text)
			}
			return true
		})
		return true
	})
}

// fits notes a measure of the wearer that is named.
func (sh *shelf) fits(path []string) {
	if len(path) == 2 && path[0] == "fit" {
		sh.worn[path[1]] = true
	}
}

// fitted is the sizes of a shared file with those measures of the wearer that the pattern names; if it names none, with all.
func (sh *shelf) fitted(s *lang.Statement) *lang.Statement {
	if len(sh.worn) == 0 {
		return s
	}
	out := *s
	out.Body = nil
	for _, b := range s.Body {
		if n, ok := b.Node.(*lang.Fit); ok {
			fit, line := *n, *b
			fit.Items = slices.DeleteFunc(slices.Clone(n.Items), func(it *lang.FitItem) bool { return !sh.worn[it.Name.Text] })
			if line.Node = &fit; len(fit.Items) == 0 {
				continue
			}
			b = &line
		}
		out.Body = append(out.Body, b)
	}
	return &out
}

// name notes a name, and all that the thing of that name names.
func (sh *shelf) name(word string) {
	s := sh.things[word]
	if sh.named[word] && s == nil {
		return
	}
	sh.named[word] = true
	if s == nil {
		return
	}
	delete(sh.things, word)
	y, yarn := s.Node.(*lang.Yarn)
	if !yarn {
		sh.names(s)
		return
	}
	sh.yarned = true
	for n := 0; yarn && n <= mostAlike; n++ {
		sh.names(&lang.Statement{Head: s.Head, Body: s.Body})
		if y.Like == nil || sh.things[y.Like.Text] == nil {
			return
		}
		s = sh.things[y.Like.Text] // what it says is put in, see unlike
		y, yarn = s.Node.(*lang.Yarn)
	}
}

// mostAlike is how many yarns are followed behind one that is like another.
const mostAlike = 100

// unlike is a yarn of a shared file that is like another one there which the pattern does not name, with what that one says.
func (sh *shelf) unlike(s *lang.Statement, depth int) *lang.Statement {
	n := s.Node.(*lang.Yarn)
	if n.Like == nil || depth == mostAlike || sh.named[n.Like.Text] || sh.things[n.Like.Text] == nil {
		return s
	}
	other := sh.things[n.Like.Text]
	if _, yarn := other.Node.(*lang.Yarn); !yarn || other.Head.Start > s.Head.Start {
		return s
	}
	other = sh.unlike(other, depth+1)
	whole := *s
	own := *n
	own.Like = other.Node.(*lang.Yarn).Like
	whole.Node = &own
	whole.Body = slices.DeleteFunc(slices.Clone(other.Body), func(b *lang.Statement) bool {
		_, name := b.Node.(*lang.YarnName)
		return name
	})
	whole.Body = append(whole.Body, s.Body...)
	return &whole
}

// works reports whether the pattern works what a line of a shared gauge is about. Of several lines for one stitch, those are
// kept that were counted with a hook which the pattern names.
func (c *checker) works(l *lang.GaugeLine) bool {
	if !c.file.Shared(l.Span()) {
		return true
	}
	if c.worked == nil {
		c.lookAtWork()
	}
	hook := l.Hook == nil || c.hooksNamed[l.Hook.E.String()] || c.onlyLine(l)
	if l.Chain {
		return hook && c.chained
	}
	if f, ok := c.form(l.Stitch.Text); ok && c.patterns[l.Stitch.Text] == nil {
		return hook && c.worked[f.ID]
	}
	return hook && c.worked[stitch.ID(l.Stitch.Text)]
}

// onlyLine reports whether no other line of the shared gauge is about the same stitch.
func (c *checker) onlyLine(l *lang.GaugeLine) bool {
	for _, s := range blocks[*lang.Gauge](c.file.Body) {
		for _, b := range s.Body {
			if o, ok := b.Node.(*lang.GaugeLine); ok && o != l && o.Chain == l.Chain && (l.Chain || o.Stitch.Text == l.Stitch.Text) {
				return false
			}
		}
	}
	return true
}

// lookAtWork notes which stitches the pattern names, and with which hooks it is worked.
func (c *checker) lookAtWork() {
	c.worked, c.hooksNamed = map[stitch.ID]bool{c.base: true}, map[string]bool{}
	look := *c.file
	look.Body = slices.DeleteFunc(slices.Clone(look.Body), func(s *lang.Statement) bool {
		_, gauge := s.Node.(*lang.Gauge)
		return gauge
	})
	lang.Walk(&look, func(n lang.Node) bool {
		switch n := n.(type) {
		case *lang.Name:
			if c.patterns[n.Text] != nil {
				c.worked[stitch.ID(n.Text)] = true
			} else if f, ok := c.form(n.Text); ok {
				c.worked[f.ID] = true
			}
		case *lang.Expr:
			if n.Op == lang.OpName && len(n.Path) == 1 { // stitches(20 cm, dc)
				if f, ok := c.form(n.Path[0]); ok {
					c.worked[f.ID] = true
				}
			}
		case *lang.Hook:
			c.hooksNamed[n.Size.E.String()] = true
		case *lang.Chain, *lang.Lengthen:
			c.chained = true
		}
		return true
	})
	for id := range c.own { // worked as the stitch whose height it has
		if o := c.own[id]; c.worked[id] {
			c.worked[o.Tall] = true
		}
	}
}

// sharedProse takes a text of a shared file that the header does not say itself.
func (c *checker) sharedProse(s *lang.Statement, word string) {
	if word == "note" {
		c.pat.Notes = append(c.pat.Notes, c.prose(s))
		return
	}
	if was, twice := c.proseAt[word]; twice {
		c.report(diag.Diagnostic{Code: codeTwice, Span: s.Head, Args: diag.Args{"name": word},
			Related: []diag.Related{{Span: was, Key: "first"}}})
		return
	}
	if c.proseAt == nil {
		c.proseAt = map[string]source.Span{}
	}
	c.proseAt[word] = s.Head
	c.headerProse(word, c.prose(s))
}

// usedFiles are the files that the source takes in.
func usedFiles(f *lang.File) []plan.UsedFile {
	var out []plan.UsedFile
	for _, u := range f.UsedFiles() {
		out = append(out, plan.UsedFile{Name: u.Name, Text: []byte(u.Text)})
	}
	return out
}
