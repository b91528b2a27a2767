package words

import (
	"math"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// Facts are the lines of the title page: sizes, level, yarn, hooks, gauge and terms. What the pattern does not say has no
// line.
func (l *Language) Facts(p *plan.Pattern) []Fact {
	c := l.context(p, nil, nil)
	var facts []Fact
	add := func(head line, text rich.Text) {
		if len(text) > 0 {
			facts = append(facts, Fact{Head: upper(l.voice.line(head)), Text: paragraph(text)})
		}
	}
	add(factOwnGauge, c.ownGauge())
	add(sizesHead(p), c.sizesFact())
	if name := l.voice.name(levelName, p.Level); name != "" {
		add(factLevel, fill("{}: {}", name, l.voice.name(levelText, p.Level)))
	}
	add(factYarn, c.yarnFact())
	add(hooksHead(p), c.hooksFact())
	if len(p.Gauges) > 0 && p.Gauges[0].Was == nil {
		add(factGauge, join("; ", append([]rich.Text{c.gauge(p.Gauges[0])}, c.motifSizes()...)...))
	}
	terms := fill(l.voice.line(termsText), upper(l.ReadingNote()), l.otherReadings())
	if l.read.manner.Full { // without abbreviations there is no list of them, above which the others stand
		terms = l.TermsNote(p)
	}
	add(factTerms, terms)
	return facts
}

// Title is the title of the pattern.
func (l *Language) Title(p *plan.Pattern) string {
	if t := l.read.of(p.Title); t != "" {
		return t
	}
	return upper(spaced(p.Name))
}

// YarnTableHead heads the table of yarns, with the weight of a ball if all weigh the same: "Yarn, balls of 50 g".
func (l *Language) YarnTableHead(p *plan.Pattern) string {
	for _, y := range p.Yarns {
		if y.BallWeight == 0 || y.BallWeight != p.Yarns[0].BallWeight {
			return l.voice.line(yarnTable)
		}
	}
	if len(p.Yarns) == 0 {
		return l.voice.line(yarnTable)
	}
	return fill(l.voice.line(yarnTableWeight), l.grams(p.Yarns[0].BallWeight)).String()
}

// grams writes a weight given in milligrams.
func (l *Language) grams(mg int64) string { return l.Number(float64(mg)/1000, 1) + tie + "g" }

// ReadingNote names the terms the page is written in: "US terms", "español neutro".
func (l *Language) ReadingNote() string { return l.read.word("reading") }

// otherReadings names the other readings of the language: the one there is, or all of them together.
func (l *Language) otherReadings() string {
	if others := l.read.others(); len(others) == 1 {
		return others[0].word("reading")
	}
	return l.voice.line(otherReadings)
}

func sizesHead(p *plan.Pattern) line {
	if len(p.Sizes) > 1 {
		return factSizes
	}
	return factSize
}

func hooksHead(p *plan.Pattern) line {
	if len(p.Hooks) > 1 {
		return factHooks
	}
	return factHook
}

// sizesFact names the sizes and the measure by which one of them is chosen: the first that is compared with the wearer.
func (c *context) sizesFact() rich.Text {
	text := rich.T(c.l.voice.sizeList(c.names()))
	m, ok := c.mainMeasure()
	if !ok {
		return text
	}
	name := lower(c.measureName(m, false))
	return join("; ", text, fill("{}: {} {}", lower(c.l.Say(FinishedPiece)), name, c.extent(m.Values)))
}

func (c *context) mainMeasure() (plan.Measure, bool) {
	for _, m := range c.p.Measures {
		if m.Fits != nil {
			return m, true
		}
	}
	if len(c.p.Measures) > 0 {
		return c.p.Measures[0], true
	}
	return plan.Measure{}, false
}

// extent writes the smallest and the largest of some lengths: 56 to 62 cm (22 to 24½ in).
func (c *context) extent(ls plan.Lengths) rich.Text {
	var known plan.Lengths
	for _, v := range ls {
		if v != plan.NoLength {
			known = append(known, v)
		}
	}
	if len(known) == 0 {
		return rich.T(dash)
	}
	lo, hi := slices.Min(known), slices.Max(known)
	cm := c.l.voice.span(c.l.Cm(lo), c.l.Cm(hi), "cm")
	if !c.l.voice.inches() {
		return rich.T(cm)
	}
	return fill("{} ({})", cm, c.l.voice.span(c.l.Inches(lo), c.l.Inches(hi), c.l.InchSign()))
}

// SizeName is the name of a size.
func (l *Language) SizeName(s plan.Size) string {
	if t := l.read.of(s.Names); t != "" {
		return nbsp(t)
	}
	return nbsp(s.Name)
}

// InSize names a size within a sentence: size 2 y. A name that says already that it is one, such as "one size", stands
// alone.
func (l *Language) InSize(s plan.Size) string {
	name := l.SizeName(s)
	for _, r := range append(l.read.others(), l.read) {
		if t := r.term("size"); slices.ContainsFunc(strings.Fields(name), func(w string) bool { return strings.EqualFold(w, t.One) }) {
			return name
		}
	}
	return fill(l.voice.line(sizeNamed), name).String()
}

// YarnName is the name of a yarn.
func (l *Language) YarnName(y plan.Yarn) string {
	if t := l.read.of(y.Names); t != "" {
		return t
	}
	return spaced(y.Name)
}

// WeightName is the name of a yarn weight class: "Light (DK)". An unknown class is given as it stands.
func (l *Language) WeightName(class string) string {
	if concept := "weight " + class; l.read.Has(concept) {
		return l.read.word(concept)
	}
	return upper(class)
}

// yarnFact is what yarn is needed, one entry for the yarns that are sold alike.
func (c *context) yarnFact() rich.Text {
	var texts []rich.Text
	var done []int
	for i, y := range c.p.Yarns {
		if slices.Contains(done, i) {
			continue
		}
		same := []plan.Yarn{}
		for k := i; k < len(c.p.Yarns); k++ {
			o := c.p.Yarns[k]
			if o.Weight == y.Weight && o.BallWeight == y.BallWeight && o.BallLength == y.BallLength {
				same, done = append(same, o), append(done, k)
			}
		}
		texts = append(texts, c.soldAlike(same))
	}
	return join("; ", texts...)
}

func (c *context) soldAlike(yarns []plan.Yarn) rich.Text {
	y := yarns[0]
	weight := ""
	if y.Weight != "" {
		weight = c.l.WeightName(y.Weight)
	}
	kind := join(", ", words(weight), c.l.ball(y))
	lo, hi := ballsNeeded(yarns)
	if hi == 0 {
		return kind
	}
	return join(": ", kind, c.l.voice.balls(lo, hi, len(yarns)))
}

// ballsNeeded is the fewest and the most balls that any size needs of some yarns together; 0 if that is not known.
func ballsNeeded(yarns []plan.Yarn) (lo, hi int) {
	n := len(yarns[0].Amount)
	for i := range n {
		sum := 0
		for _, y := range yarns {
			if len(y.Amount) != n || y.Amount[i].Balls == 0 {
				return 0, 0
			}
			sum += y.Amount[i].Balls
		}
		if lo == 0 || sum < lo {
			lo = sum
		}
		hi = max(hi, sum)
	}
	return lo, hi
}

// ball is what a ball of yarn holds: 50 g = 120 m (131 yd).
func (l *Language) ball(y plan.Yarn) rich.Text {
	var weight, length string
	if y.BallWeight > 0 {
		weight = l.grams(y.BallWeight)
	}
	if y.BallLength > 0 {
		length = l.Number(metres(y.BallLength), 0) + tie + "m"
		if l.voice.inches() {
			length += " (" + l.Number(metres(y.BallLength)/0.9144, 0) + tie + l.yardSign() + ")"
		}
	}
	return join(tie+"="+tie, words(weight), words(length))
}

func metres(v plan.Length) float64 { return v.Cm() / 100 }

func (c *context) hooksFact() rich.Text {
	var names []string
	for _, h := range c.p.Hooks {
		names = append(names, c.l.hook(h))
	}
	if len(names) == 0 {
		return nil
	}
	return c.list(names)
}

// gauge writes a gauge: 20 dc and 10 rounds = 10 cm (4 in) after washing and blocking.
func (c *context) gauge(g plan.Gauge) rich.Text {
	text := fill("{} = {}", c.counted(g), c.square(g.Over))
	if when := c.blocking(g); when != "" {
		text = fill("{} {}", text, when)
	}
	return text
}

// ownGauge says that a copy was set for a maker's own gauge, and for which one the designer's edition is; nil for the latter.
func (c *context) ownGauge() rich.Text {
	var own, was []rich.Text
	for _, g := range c.p.OwnGauges() {
		own, was = append(own, c.gauge(g)), append(was, c.counted(*g.Was))
	}
	if own == nil {
		return nil
	}
	return fill(c.l.voice.line(ownGaugeText), join("; ", own...), join("; ", was...))
}

// SetFor says for which gauge of a maker's own the pages were set: "set for 18 dc and 9 rounds"; "" for the designer's edition.
func (l *Language) SetFor(p *plan.Pattern) string {
	c := l.context(p, nil, nil)
	var own []rich.Text
	for _, g := range p.OwnGauges() {
		own = append(own, c.counted(g))
	}
	if own == nil {
		return ""
	}
	return fill(l.voice.line(ownGaugeFoot), join("; ", own...)).String()
}

// blocking says whether the swatch was blocked before it was counted; "" where the source does not say.
func (c *context) blocking(g plan.Gauge) string {
	switch g.Blocked {
	case plan.AfterBlocking:
		return c.l.voice.line(gaugeBlocked)
	case plan.BeforeBlocking:
		return c.l.voice.line(gaugeNotBlocked)
	}
	return ""
}

// gauges writes several gauges, those over the same length together: 10 cm (4 in) = 20 dc and 10 rounds; 20 ch.
func (c *context) gauges(gs []plan.Gauge) rich.Text {
	if len(gs) == 1 {
		return sentence(c.gauge(gs[0]))
	}
	var out []rich.Text
	for i := 0; i < len(gs); {
		first := gs[i]
		var alike []rich.Text
		for ; i < len(gs) && gs[i].Over == first.Over && gs[i].Blocked == first.Blocked; i++ {
			alike = append(alike, c.counted(gs[i]))
		}
		text := fill("{} = {}", c.square(first.Over), join("; ", alike...))
		if when := c.blocking(first); when != "" {
			text = fill("{}, {}", when, text)
		}
		out = append(out, sentence(text))
	}
	return join(" ", out...)
}

func (c *context) square(over plan.Length) string {
	text := c.l.Cm(over) + tie + "cm"
	if c.l.voice.inches() {
		text += " (" + c.l.Inches(over) + tie + c.l.InchesBehind(c.l.Inches(over)) + ")"
	}
	return text
}

func (c *context) counted(g plan.Gauge) rich.Text {
	number := func(thousandths int64) string { return c.l.Number(float64(thousandths)/1000, 2) }
	rows := ""
	if g.Rows > 0 {
		rows = number(g.Rows)
	}
	var of noun
	n := g.Sts
	switch {
	case g.Repeats > 0:
		n, of = g.Repeats, c.l.voice.repeatsOf(c.patternName(g.Called, g.Pattern))
	case g.Pattern != "":
		of = c.l.voice.stsOf(c.patternName(g.Called, g.Pattern))
	default:
		of = c.form(plainForm(g.Stitch))
	}
	name := of.many
	if n == 1000 {
		name = of.one
	}
	text := c.l.voice.gauge(number(n), rows, name, g.Rounds)
	if g.Hook > 0 {
		text = fill(c.l.voice.line(gaugeHook), text, c.l.hook(g.Hook))
	}
	return text
}

// numbered is a word behind a figure.
func numbered(figure string, t term) string {
	if figure == "1" {
		return t.One
	}
	return t.Many
}

// wide is the width of a swatch that can be measured in the middle: a fifth more than the gauge counts.
func wide(g plan.Gauge) int { return int(math.Ceil(float64(g.Sts) * 1.2 / 1000)) }
