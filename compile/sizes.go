package compile

import (
	"slices"
	"strings"

	"ovillo/compile/fabric"
	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
)

// sizes reads the sizes and the wearer's measures.
func (c *checker) sizes() {
	b := blocks[*lang.Sizes](c.file.Body)
	if len(b) == 0 {
		c.say(codeNoSizes, c.start(), nil)
		return
	}
	if len(b) > 1 {
		c.report(diag.Diagnostic{Code: codeTwice, Span: b[1].Head, Args: diag.Args{"name": "sizes"},
			Related: []diag.Related{{Span: b[0].Head, Key: "first"}}})
	}
	c.sizesAt = b[0].Head
	seen := map[string]bool{}
	for _, n := range b[0].Node.(*lang.Sizes).Names {
		if seen[n.Text] {
			c.say(codeSizeTwice, n.Span(), diag.Args{"size": n.Text})
			continue
		}
		seen[n.Text] = true
		c.pat.Sizes = append(c.pat.Sizes, plan.Size{Name: n.Text, Names: plan.Text{}, Age: -1, AgeTo: -1})
	}
	if len(c.pat.Sizes) > maxSizes {
		c.say(codeManySizes, b[0].Head, diag.Args{"max": maxSizes, "have": len(c.pat.Sizes)})
		c.pat.Sizes = c.pat.Sizes[:maxSizes]
	}
	c.z = len(c.pat.Sizes)
	c.rows = make([]int, c.z)
	for i := range c.pat.Sizes {
		f := fabric.New(i, max(maxStitches/c.z, leastStitches))
		if room := c.room.take(); room != nil {
			f.In(room)
		}
		f.Plain, f.EachRow = stitchByStitch, rowByRow
		c.fabrics = append(c.fabrics, f)
	}
	for _, s := range b[0].Body {
		c.sizeLine(s)
	}
	c.bodies(b[0].Body)
	c.sizesInEach()
	c.nameSizes()
}

// maxSizes is the most sizes a pattern may have: twice the longest range seen in print.
const maxSizes = 24

func (c *checker) sizeLine(s *lang.Statement) {
	switch n := s.Node.(type) {
	case *lang.SizeNames:
		if len(n.Names) != c.z {
			c.say(codeSizeNames, n.Span(), diag.Args{"need": c.z, "have": len(n.Names)})
			return
		}
		for i, t := range n.Names {
			c.pat.Sizes[i].Names[n.Lang] = t.Text
		}
	case *lang.Age:
		c.ages(n)
	case *lang.Fit:
		for _, it := range n.Items {
			v := c.value(it.Value, nil)
			c.lets["fit."+it.Name.Text] = v
			if ls := v.Lengths(); ls != nil {
				c.pat.Body = append(c.pat.Body, plan.BodyMeasure{Name: it.Name.Text, Values: ls})
				c.fitAt[it.Name.Text] = it.Span()
			}
		}
	case *lang.Shown:
		i := c.sizeIndex(n.Size.Text)
		if i < 0 {
			c.say(codeNoSize, n.Size.Span(), c.sizeArgs(n.Size.Text))
			return
		}
		c.pat.Shown = i
	}
}

// ages reads for how old a wearer each size is made: the youngest, and the oldest if that is said.
func (c *checker) ages(n *lang.Age) {
	months := func(v value.Vector, set func(s *plan.Size, months int)) {
		for i := range c.pat.Sizes {
			if q := v.At(i); !v.Unknown && q.N != nil {
				m, _ := q.N.Float64()
				set(&c.pat.Sizes[i], int(m))
			}
		}
	}
	if n.To == nil {
		v := c.value(n.Value, nil)
		c.ageUnread = v.Unknown
		months(v, func(s *plan.Size, m int) { s.Age = m })
		return
	}
	from, to := value.Range(n.Value.E, n.To.E, &scope{c: c})
	c.ageUnread = from.Unknown
	months(from, func(s *plan.Size, m int) { s.Age = m })
	months(to, func(s *plan.Size, m int) { s.AgeTo = m })
	var bad []string
	for _, s := range c.pat.Sizes {
		if s.AgeTo >= 0 && s.AgeTo < s.Age {
			bad = append(bad, s.Name)
		}
	}
	if bad != nil {
		c.report(diag.Diagnostic{Code: codeAgeOrder, Span: n.To.Span(), Sizes: bad})
	}
}

// spelt finds a size that is called by a word: "small", "one size", but not "S", "2XL", "56" or "3-6 m".
var spelt = lazy.Regexp(`\p{L}{3}`)

// sizesInEach reports words for sizes that are printed in one language as they are written for another. The names behind sizes may
// be in any language of the pattern, and so one of them needs no others.
func (c *checker) sizesInEach() {
	var words []string
	lacking := slices.Clone(c.pat.Languages)
	for _, s := range c.pat.Sizes {
		for l := range s.Names {
			lacking = slices.DeleteFunc(lacking, func(m string) bool { return m == l })
		}
		if spelt().MatchString(s.Name) && ageName(s.Name, "es") == s.Name && s.Name != strings.ToUpper(s.Name) {
			words = append(words, s.Name)
		}
	}
	if len(words) > 0 && len(lacking) > 1 {
		c.say(codeSizesInOne, c.sizesAt, diag.Args{"sizes": words, "language": tongue(lacking[1])})
	}
}

// nameSizes fills in the names of sizes the source does not give. A size that is an age reads by itself in both
// languages; other names stand as they are.
func (c *checker) nameSizes() {
	for i := range c.pat.Sizes {
		s := &c.pat.Sizes[i]
		for _, l := range c.pat.Languages {
			if s.Names[l] == "" {
				s.Names[l] = ageName(s.Name, l)
			}
		}
	}
}

// ageName puts a size such as "2 y" or "6 m" into a language.
func ageName(name, lang string) string {
	if lang != "es" {
		return name
	}
	num, unit, ok := strings.Cut(name, " ")
	if !ok {
		return name
	}
	one := num == "1"
	switch unit {
	case "y", "yr", "yrs", "years", "year":
		if one {
			return num + " año"
		}
		return num + " años"
	case "m", "mo", "months", "month":
		if one {
			return num + " mes"
		}
		return num + " meses"
	}
	return name
}

// sizeNames are the names of the sizes, in order; not to be written to.
func (c *checker) sizeNames() []string {
	if len(c.names) != c.z { // asked for with every value
		c.names = make([]string, c.z)
		for i, s := range c.pat.Sizes {
			c.names[i] = s.Name
		}
	}
	return slices.Clip(c.names)
}

func (c *checker) sizeIndex(name string) int {
	for i, s := range c.pat.Sizes {
		if s.Name == name {
			return i
		}
	}
	return -1
}

func (c *checker) sizeArgs(name string) diag.Args {
	return diag.Args{"size": name, "known": c.sizeNames(), "near": lang.Near(name, c.sizeNames())}
}

// pick turns size names into a mask; names that are none are reported.
func (c *checker) pick(names []*lang.Str) []bool {
	out := make([]bool, c.z)
	for _, n := range names {
		switch i := c.sizeIndex(n.Text); {
		case i < 0:
			c.say(codeNoSize, n.Span(), c.sizeArgs(n.Text))
		case out[i]:
			c.say(codeSizeTwice, n.Span(), diag.Args{"size": n.Text})
		default:
			out[i] = true
		}
	}
	return out
}

// value works out a value in the sizes of a mask (nil: all).
func (c *checker) value(v *lang.Val, mask []bool) value.Vector {
	if v == nil {
		return value.Unknown
	}
	return c.eval(v.E, mask, nil)
}
