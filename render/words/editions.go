package words

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// This file holds the texts that belong to an edition of a pattern and to no row of it.

// editionNames are the kinds of edition that have a name.
var editionNames = map[string]line{
	"large": editionLarge, "low-ink": editionLowInk, "left": editionLeft, "tester": editionTester, "one-size": editionOneSize,
	"booklet": editionBooklet, "phone": editionPhone,
}

// EditionName is what a kind of edition is called at the head or the foot of a page: "large print". The kinds are "large",
// "low-ink", "left", "tester", "one-size", "booklet" and "phone"; any other has no name: "".
func (l *Language) EditionName(kind string) string {
	k, ok := editionNames[kind]
	if !ok {
		return ""
	}
	return l.voice.line(k)
}

// OnPage points at a page: "page 3".
func (l *Language) OnPage(n int) string { return fill(l.voice.line(onPage), n).String() }

// StepOnPage says where a step is that something belongs to: "The step is on page 10."
func (l *Language) StepOnPage(n int) string {
	return fill(l.voice.line(stepOnPage), n).String()
}

// PageOf is the number of a page and of how many: "8 of 24".
func (l *Language) PageOf(n, of int) string { return fill(l.voice.line(pageOf), n, of).String() }

// LargePrintNote says what the large print edition meets, by which guidelines, and that nobody certifies it.
func (l *Language) LargePrintNote() rich.Text { return paragraph(fill(l.voice.line(largePrintNote))) }

// TesterNote says what a test edition is for, and how its rows are referred to.
func (l *Language) TesterNote(p *plan.Pattern) rich.Text {
	return paragraph(fill(l.voice.line(testerNote), l.Title(p)))
}

// PhotoCaption says which size the photograph shows; nil if there is none, or the source does not say which size was made.
func (l *Language) PhotoCaption(p *plan.Pattern) rich.Text {
	if p.Photo == nil || p.Photo.Made.Name == "" {
		return nil
	}
	return paragraph(stopped(fill(l.voice.line(photoSize), l.InSize(p.Photo.Made))))
}

// PhotoAlt says what the photograph shows, for those who do not see it: the designer's words.
func (l *Language) PhotoAlt(p *plan.Pattern) string { return l.read.of(p.Photo.Alt) }

// TesterQuestions are the lines that a tester fills in: what is asked, and beside it what the pattern says, if it says something.
// A text of nil leaves the whole line to the tester.
func (l *Language) TesterQuestions(p *plan.Pattern) []Fact {
	c := l.context(p, nil, nil)
	var out []Fact
	ask := func(head string, text rich.Text) {
		out = append(out, Fact{Head: upper(head), Text: paragraph(text)})
	}
	says := func(text rich.Text) rich.Text {
		if len(text) == 0 {
			return nil
		}
		return fill(l.voice.line(testPattern), text)
	}
	ask(l.voice.line(testName), nil)
	if len(p.Sizes) > 1 {
		ask(l.voice.line(testSize), fill(l.voice.line(testCircle), join(", ", c.sizeTexts()...)))
	}
	for i, y := range p.Yarns {
		head := l.voice.line(testYarn)
		if len(p.Yarns) > 1 {
			head += " (" + YarnLetter(i) + ")"
		}
		ask(head, says(c.yarnSold(y)))
	}
	ask(l.voice.line(testHook), says(c.hooksFact()))
	for _, g := range p.Gauges {
		ask(l.voice.line(testGauge), says(c.gauge(g)))
	}
	worn := false
	for _, m := range p.Measures {
		head := l.MeasureName(m)
		if m.Letter != "" {
			head = m.Letter + " " + head
		}
		ask(head, says(c.both(m.Values)))
		worn = worn || m.Fits != nil
	}
	for _, y := range p.Yarns {
		head := l.voice.line(testYarnAll)
		if len(p.Yarns) > 1 {
			head = fill(l.voice.line(testYarnUsed), l.YarnName(y)).String()
		}
		ask(head, says(c.weightOf(y)))
	}
	ask(l.voice.line(testTime), nil)
	if worn {
		ask(l.voice.line(testFit), nil)
	}
	ask(l.voice.line(testUnclear), rich.T(l.voice.line(testUnclearWhere)))
	return out
}

// sizeTexts are the names of the sizes, each by itself.
func (c *context) sizeTexts() []rich.Text {
	var out []rich.Text
	for _, name := range c.names() {
		out = append(out, rich.T(name))
	}
	return out
}

// yarnSold is a yarn as it is sold: sand: light (DK), 50 g = 120 m.
func (c *context) yarnSold(y plan.Yarn) rich.Text {
	weight := ""
	if y.Weight != "" {
		weight = c.l.WeightName(y.Weight)
	}
	return join(", ", rich.T(c.l.YarnName(y)), words(weight), c.l.ball(y))
}

// weightOf is how much a yarn weighs that each size takes; nil if that is not known.
func (c *context) weightOf(y plan.Yarn) rich.Text {
	if len(y.Amount) != len(c.p.Sizes) {
		return nil
	}
	grams := make(plan.Nums, len(y.Amount))
	for i, a := range y.Amount {
		grams[i] = int((a.Milligrams + 999) / 1000)
	}
	return fill("{}~g", c.tally(grams))
}

// Subject says in one line what the pattern is of: "Crochet pattern: trousers. Sizes 1 y, 2 y, 3 y and 4 y."
func (l *Language) Subject(p *plan.Pattern) string {
	c := l.context(p, nil, nil)
	what := l.voice.name(kindName, p.Kind)
	if what == "" {
		what = l.Title(p)
	}
	out := sentence(fill(l.voice.line(subjectCraft), what))
	if len(p.Sizes) > 1 {
		out = join(" ", out, sentence(fill(l.voice.line(subjectSizes), l.voice.sizeList(c.names()))))
	}
	return plain(out)
}

// Keywords are the words by which a file is found: the craft, the kind of thing, its sizes, the names of its stitches, and
// the class of its yarn. None stands twice.
func (l *Language) Keywords(p *plan.Pattern) []string {
	var out []string
	seen := map[string]bool{"": true}
	add := func(words ...string) {
		for _, w := range words {
			if w = plain(rich.T(w)); !seen[w] {
				seen[w] = true
				out = append(out, w)
			}
		}
	}
	add(l.voice.line(keywordCraft), l.voice.line(keywordPattern), l.voice.name(kindName, p.Kind))
	for _, s := range p.Sizes {
		add(l.InSize(s))
	}
	for _, concept := range l.usedStitches(p) {
		add(l.read.word(concept))
	}
	for _, own := range p.Own {
		add(l.read.of(own.Names))
	}
	for _, y := range p.Yarns {
		if y.Weight != "" {
			add(l.WeightName(y.Weight))
		}
	}
	return out
}

// plain is a text for where nothing is set: with ordinary spaces.
func plain(t rich.Text) string { return plainSpaces.Replace(t.String()) }

var plainSpaces = strings.NewReplacer(tie, " ", "\u202f", " ")
