package words

import (
	"cmp"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
)

// OthersHead heads what other readings of the language call a stitch: "UK terms", "otros países".
func (l *Language) OthersHead() string { return l.otherReadings() }

// Abbreviations lists the abbreviations that the pattern uses, in the order of the language; none where nothing is abbreviated.
func (l *Language) Abbreviations(p *plan.Pattern) []Abbreviation {
	if l.keeps(p) {
		return l.kept.abbreviations()
	}
	return l.abbreviations(p)
}

func (l *Language) abbreviations(p *plan.Pattern) []Abbreviation {
	if l.read.manner.Full {
		return nil
	}
	c := l.context(p, nil, nil)
	used := l.printed(p)
	var forms []stitch.Form
	for _, f := range c.abbreviated() {
		if f.Group == stitch.Single && used.has(l.voice.form(f)) { // a group is called by its name, and is a special stitch
			forms = append(forms, f)
		}
	}
	var out []Abbreviation
	for _, f := range forms {
		out = append(out, c.abbreviation(f, slices.Contains(forms, plainForm(f.ID))))
	}
	for _, own := range p.Own {
		n := l.ownNoun(&own, stitch.Form{})
		if name := n.one[0].Expand; name != "" && used.has(n) {
			out = append(out, Abbreviation{Short: n.one.String(), Meaning: name})
		}
	}
	for _, concept := range []string{"st", "sp"} {
		// Where a country abbreviates a chain space no further there is nothing to explain.
		if t := l.read.term(concept); t.Short != t.One && used.has(l.read.short(concept)) {
			out = append(out, l.nounRow(concept))
		}
	}
	l.sortAbbreviations(out)
	return out
}

// SortAbbreviations puts rows in the order of the language.
func (l *Language) SortAbbreviations(list []Abbreviation) { l.sortAbbreviations(list) }

// printedForms lists the forms of the standard stitches that are printed, short to tall; a stitch, then what is made of
// it: several together, groups, then round the post from front and back. Loops are spelled out and need no row.
func (c *context) printedForms() []stitch.Form {
	var forms []stitch.Form
	add := func(f stitch.Form) {
		f.Loop = stitch.BothLoops
		f.Together = max(f.Together, 1)
		if _, ok := stitch.Of(f.ID); ok && !slices.Contains(forms, f) {
			forms = append(forms, f)
		}
	}
	for _, f := range c.p.Stitches {
		add(f)
	}
	c.eachPrinted(add)
	slices.SortFunc(forms, func(a, b stitch.Form) int {
		if d := height(a.ID) - height(b.ID); d != 0 {
			return d
		}
		if d := int(a.Post) - int(b.Post); d != 0 {
			return d
		}
		return cmp.Or(a.Together-b.Together, int(a.Group)-int(b.Group), a.Of-b.Of)
	})
	return forms
}

// eachPrinted calls f with forms that print without being made: those of chains that stand for a stitch, of gauges, of
// slip stitches that close.
func (c *context) eachPrinted(f func(stitch.Form)) {
	for _, g := range c.p.Gauges {
		if g.Pattern == "" {
			f(plainForm(g.Stitch))
		}
	}
	for _, part := range c.p.Parts {
		switch part.Start.Kind {
		case plan.StartChain, plan.StartBothSides:
			f(plainForm(stitch.Chain))
		case plan.StartJoined, plan.StartChainRing:
			f(plainForm(stitch.Chain))
			f(plainForm(stitch.Slip))
		}
	}
	eachRow(c.p, func(r *plan.Row) {
		if r.Begin.Chains > 0 {
			f(plainForm(stitch.Chain))
			if r.Begin.Counts && r.Begin.As != "" {
				f(plainForm(r.Begin.As))
			}
		}
		if r.Join.Kind == plan.JoinSlip {
			f(plainForm(stitch.Slip))
		}
	})
}

func height(id stitch.ID) int {
	return slices.IndexFunc(stitch.Table, func(k stitch.Kind) bool { return k.ID == id })
}

// abbreviation is the row of a form. Where its stitch has a row as well, that says what other countries call it, unless they
// write the form in a way of its own.
func (c *context) abbreviation(f stitch.Form, plain bool) Abbreviation {
	n := c.l.voice.form(f)
	a := Abbreviation{Short: n.one.String(), Meaning: c.l.voice.formName(f)}
	if many := n.many.String(); many != a.Short && n.one[0].Expand != "" && f == plainForm(f.ID) {
		a.Short += ", " + many
	}
	if f == plainForm(f.ID) {
		a.Others = c.l.othersSay(string(f.ID))
	} else {
		a.Others = c.othersForm(f, plain)
	}
	return a
}

// othersForm is what other readings call a derived form: their abbreviation, where the word "is made of" differs.
func (c *context) othersForm(f stitch.Form, plain bool) []string {
	return c.l.gather(func(o *Language) (string, bool) {
		if !o.read.Sourced(string(f.ID)) {
			return "", false
		}
		return o.voice.otherForm(f, plain), o.read.Term(string(f.ID)) != c.l.read.Term(string(f.ID))
	})
}

// othersGroup is what other readings call a group of stitches. A country with a word of its own for the group is told of; one that
// differs in the stitches of the group alone says so in their row, unless it writes both as one.
func (c *context) othersGroup(f stitch.Form) []string {
	group := groupConcept(f.Group)
	return c.l.gather(func(o *Language) (string, bool) {
		if o.read.Sourced(group) && o.read.Term(group) != c.l.read.Term(group) {
			return o.voice.otherForm(f, false), true
		}
		return o.voice.otherForm(f, true), o.read.Sourced(string(f.ID)) && o.read.Term(string(f.ID)) != c.l.read.Term(string(f.ID))
	})
}

// othersSay lists what other readings of the language say for a concept, each with its countries.
func (l *Language) othersSay(concept string) []string {
	own := l.read.term(concept)
	return l.gather(func(o *Language) (string, bool) {
		t := o.read.term(concept)
		return o.voice.otherTerm(t), t != own && o.read.Sourced(concept)
	})
}

// gather asks the other readings of the language and puts those that say the same on one line.
func (l *Language) gather(ask func(o *Language) (string, bool)) []string {
	var says []string
	where := map[string][]string{}
	for _, r := range l.read.others() {
		o := newLanguage(r, l.speak)
		say, differs := ask(o)
		if !differs || say == "" {
			continue
		}
		if _, ok := where[say]; !ok {
			says = append(says, say)
		}
		country := "country"
		if l.read.manner.Full {
			country = "reading"
		}
		where[say] = append(where[say], r.word(country))
	}
	for i, say := range says {
		if len(l.read.others()) > 1 {
			says[i] = say + " (" + strings.Join(where[say], ", ") + ")"
		}
	}
	return says
}

// nounRow explains a noun that is abbreviated, with its plural: "st, sts".
func (l *Language) nounRow(concept string) Abbreviation {
	t := l.read.term(concept)
	a := Abbreviation{Short: t.Short, Meaning: t.One + ", " + t.Many, Others: l.othersSay(concept)}
	if t.Shorts != t.Short {
		a.Short += ", " + t.Shorts
	}
	return a
}
