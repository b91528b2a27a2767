package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// printed is what the language writes about a pattern: the abbreviations that stand in it, and the whole of its text.
type printed struct {
	short map[string]bool
	text  string
}

// printed writes the pattern and keeps what is abbreviated in it, so that the table of abbreviations explains what the pages
// print and nothing else.
func (l *Language) printed(p *plan.Pattern) printed {
	out := printed{short: map[string]bool{}}
	var all strings.Builder
	l.eachText(p, func(t rich.Text) {
		for _, r := range t {
			all.WriteString(r.Text)
			if r.Expand != "" {
				out.short[small(strings.TrimRight(r.Text, ".:,;"))] = true
			}
		}
		all.WriteString("\n")
	})
	out.text = all.String()
	return out
}

// small makes the first letter small: an abbreviation at the head of a sentence is the same.
func small(s string) string {
	if s == "" || strings.ToUpper(s) == s {
		return s
	}
	return strings.ToLower(s[:1]) + s[1:]
}

// has reports whether an abbreviation is printed, for one or for several. One that is no shorter than its name is looked for in
// the text.
func (k printed) has(n noun) bool {
	return slices.ContainsFunc([]rich.Text{n.one, n.many}, func(t rich.Text) bool {
		if len(t) == 1 && t[0].Expand == "" {
			return strings.Contains(k.text, t[0].Text)
		}
		return k.short[small(t.String())]
	})
}

// eachText calls f with every text that the language writes about a pattern, but for the table of abbreviations.
func (l *Language) eachText(p *plan.Pattern, f func(rich.Text)) {
	prose := func(t plan.Prose) {
		for _, b := range l.Prose(p, t) {
			f(b.Text)
		}
	}
	facts := func(list []Fact) {
		for _, x := range list {
			f(x.Text)
		}
	}
	step := func(s StepText) {
		f(join(" ", s.Only, s.Label, s.Body))
		if s.Count != nil {
			f(s.Count.Line)
			f(s.Count.Unit)
		}
	}
	prose(p.Intro)
	for _, n := range p.Notes {
		prose(n)
	}
	facts(l.Facts(p))
	facts(l.SideNotes(p))
	facts(l.HowToRead(p))
	for _, s := range l.Specials(p) {
		f(s.Head)
		f(s.Text)
	}
	for i := range p.Charts {
		f(rich.T(l.ChartTitle(p, i)))
	}
	for i := range p.Drawn {
		f(l.StitchCaption(p, i))
	}
	for _, part := range p.Parts {
		f(l.PartNote(p, part))
		step(l.Start(p, part))
		for _, s := range part.Steps {
			step(l.Step(p, part, s))
		}
	}
	for _, k := range p.Finish {
		f(l.Finishing(p, k))
	}
	prose(p.Care)
	f(l.Contents(p))
	prose(p.Licence)
	prose(p.Changes)
}

// abbreviated lists the forms of the standard stitches that a pattern may print: what is made in it, and every stitch alone.
func (c *context) abbreviated() []stitch.Form {
	forms := c.printedForms()
	for _, k := range stitch.Table {
		if f := plainForm(k.ID); c.l.read.Has(string(k.ID)) && !slices.Contains(forms, f) {
			forms = append(forms, f)
		}
	}
	return forms
}
