package compile

import (
	"regexp"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

var (
	holes   = regexp.MustCompile(`\{([\pL\pN_.]+)\}`)
	figures = regexp.MustCompile(`\d+(?:[.,]\d+)?`)
)

// prose reads a block of Markdown lines: the text of each language, and the values it puts in. A language without its text
// and a figure that stands in one language alone are reported.
func (c *checker) prose(s *lang.Statement) plan.Prose {
	p := plan.Prose{Text: plan.Text{}, Values: map[string]plan.Value{}, Spans: map[string]source.Span{}}
	last := ""
	for _, l := range s.Lines {
		head := l.Head
		if head == "" {
			head = last
		}
		last = head
		if p.Text[head] != "" {
			p.Text[head] += "\n"
		}
		if _, ok := p.Spans[head]; !ok {
			p.Spans[head] = l.Span
		}
		p.Text[head] += l.Text
		c.proseValues(&p, l)
		c.proseWords(head, l)
	}
	for l, at := range p.Spans {
		if !slices.Contains(c.pat.Languages, l) {
			c.say(codeProseLanguage, at, diag.Args{"language": l, "known": c.pat.Languages})
		}
	}
	var missing []string
	for _, l := range c.pat.Languages {
		if strings.TrimSpace(p.Text[l]) == "" {
			missing = append(missing, l)
		}
	}
	if len(missing) > 0 {
		c.say(codeNoTranslation, s.Head, diag.Args{"languages": missing})
		return p
	}
	c.sameFigures(p)
	return p
}

// proseValues looks up the values a line puts in: numbers, lengths, and stitches by their abbreviations.
func (c *checker) proseValues(p *plan.Prose, l lang.RawLine) {
	for _, m := range holes.FindAllStringSubmatchIndex(l.Text, -1) {
		name := l.Text[m[2]:m[3]]
		v, ok := c.lets[name]
		if f, stitch := c.form(name); !ok && stitch {
			c.useForm(f)
			p.Values[name] = plan.Value{Form: &f}
			continue
		}
		c.body.use(name)
		if !ok {
			at := source.Span{Start: l.Span.Start + int32(m[0]), End: l.Span.Start + int32(m[1])}
			c.say(codeProseName, at, diag.Args{"word": name, "near": lang.Near(name, keys(c.lets))})
			continue
		}
		worth := planValue(v)
		worth.Memory = c.body.remembers(name)
		p.Values[name] = worth
	}
}

func planValue(v value.Vector) plan.Value {
	if ls := v.Lengths(); ls != nil {
		return plan.Value{Lengths: ls}
	}
	if v.Unknown || v.Dim != value.Count {
		return plan.Value{}
	}
	n := make(plan.Nums, len(v.N))
	for i, x := range v.N {
		if n[i] = plan.Absent; x != nil && x.IsInt() {
			n[i] = int(x.Num().Int64())
		}
	}
	return plan.Value{Counts: n}
}

// sameFigures compares the figures that stand in the texts of the languages.
func (c *checker) sameFigures(p plan.Prose) {
	var first []string
	lang0 := ""
	for _, l := range c.pat.Languages {
		f := figuresOf(p.Text[l])
		if lang0 == "" {
			lang0, first = l, f
			continue
		}
		if !slices.Equal(first, f) {
			c.report(diag.Diagnostic{Code: codeProseNumber, Span: p.Spans[l],
				Args:    diag.Args{"here": l, "there": lang0, "found": f, "need": first},
				Related: []diag.Related{{Span: p.Spans[lang0], Key: "other", Args: diag.Args{"need": first}}}})
		}
	}
}

// figuresOf lists the figures of a text, decimal comma and point alike, in order of size so that word order is free.
func figuresOf(text string) []string {
	out := figures.FindAllString(holes.ReplaceAllString(text, ""), -1)
	for i := range out {
		out[i] = strings.ReplaceAll(out[i], ",", ".")
	}
	slices.Sort(out)
	return out
}
