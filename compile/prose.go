package compile

import (
	"cmp"
	"slices"
	"strings"

	"ovillo/compile/numeral"
	"ovillo/compile/plan"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
	"ovillo/lang/markdown"
	"ovillo/lang/source"
)

// written is the text of a block in one language, and where its lines stand in the source.
type written struct {
	text  string
	lines []writtenLine
}

type writtenLine struct {
	from int // where the line begins in the text
	span source.Span
}

func (w *written) add(l lang.RawLine) {
	if len(w.lines) > 0 {
		w.text += "\n"
	}
	w.lines = append(w.lines, writtenLine{len(w.text), l.Span})
	w.text += lang.Evened(l.Text)
}

// at is the place in the source of a stretch of the text, at most to the end of the line it begins in.
func (w *written) at(from, to int) source.Span {
	i := len(w.lines) - 1
	for i > 0 && w.lines[i].from > from {
		i--
	}
	l := w.lines[i]
	start := min(l.span.Start+int32(from-l.from), l.span.End)
	return source.Span{Start: start, End: max(start, min(l.span.Start+int32(to-l.from), l.span.End))}
}

// all is the place of the whole text, as far as its first line.
func (w *written) all() source.Span { return w.lines[0].span }

// prose reads a block of Markdown lines: the text of each language, and the values it puts in. A language without its text
// and a number that stands in one language alone are reported.
func (c *checker) prose(s *lang.Statement) plan.Prose {
	p := plan.Prose{Text: plan.Text{}, Values: map[string]plan.Value{}, Spans: map[string]source.Span{}}
	texts := map[string]*written{}
	var order []string
	last := ""
	for _, l := range s.Lines {
		head := cmp.Or(l.Head, last)
		last = head
		if texts[head] == nil {
			texts[head] = &written{}
			order = append(order, head)
		}
		texts[head].add(l)
		c.proseWords(head, l)
	}
	for _, l := range order {
		w := texts[l]
		p.Text[l], p.Spans[l] = w.text, w.all()
		if !slices.Contains(c.pat.Languages, l) {
			c.say(codeProseLanguage, w.all(), diag.Args{"language": l, "known": c.pat.Languages})
		}
		c.markup(w)
		c.putIn(l, w, p.Values)
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
	c.later = append(c.later, func() { c.sameNumbers(texts, p.Values) })
	return p
}

// markup reports signs of Markdown that the pages have nothing for.
func (c *checker) markup(w *written) {
	_, faults := markdown.Read(w.text)
	for _, f := range faults {
		if strings.HasPrefix(w.text[f.From:f.To], "</") {
			continue // it ends what was reported
		}
		c.report(diag.Diagnostic{Code: codeProseMarkup, Span: w.at(f.From, f.To), Args: diag.Args{"what": diag.Term{Key: "markdown " + string(f.What), N: 2}},
			Help: string(f.What)})
	}
}

// putIn looks up the values a text puts in: numbers, lengths, measures, names, and stitches by their abbreviations. What the text
// stands in is read before the values and the measures of the pattern are, so that they are looked up once those are known.
func (c *checker) putIn(language string, w *written, values map[string]plan.Value) {
	calls := map[string]plan.Text{}
	if c.at != nil {
		calls = c.at.calls
	}
	for _, h := range markdown.Holes(w.text) {
		if f, stitch := c.form(c.file.At(w.all()).Named(h.Name)); stitch && c.at != nil {
			c.useForm(f)
		}
		c.later = append(c.later, func() { c.putOneIn(language, w, h, values, calls) })
	}
}

// putAllIn looks up the values of all texts.
func (c *checker) putAllIn() {
	for _, put := range c.later {
		put()
	}
	c.later = nil
}

func (c *checker) putOneIn(language string, w *written, h markdown.Hole, values map[string]plan.Value, calls map[string]plan.Text) {
	known := c.file.At(w.all()).Named(h.Name)
	v, ok := c.lets[known]
	if f, stitch := c.form(known); !ok && stitch {
		c.useForm(f)
		values[h.Name] = plan.Value{Form: &f}
		return
	}
	c.body.use(known)
	if called := c.calledThere(known, calls); !ok && called != nil {
		values[h.Name] = plan.Value{Called: called}
		return
	}
	if !ok {
		c.say(codeProseName, w.at(h.From, h.To), diag.Args{"word": h.Name, "near": lang.Near(h.Name, c.putNames(calls))})
		return
	}
	worth := planValue(v)
	worth.Memory = c.body.remembers(known)
	values[h.Name] = worth
	if !h.Counted() {
		c.agrees(language, w, h, worth.Counts)
	}
}

// putNames lists what can be put into a text.
func (c *checker) putNames(calls map[string]plan.Text) []string {
	names := append(keys(c.lets), keys(calls)...)
	for name, p := range c.parts {
		if len(p.plan.Called) > 0 {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// calledThere is what something is called in a sentence: what a part calls its own, else a part.
func (c *checker) calledThere(name string, calls map[string]plan.Text) plan.Text {
	if t := calls[name]; len(t) > 0 {
		return t
	}
	if p := c.parts[name]; p != nil && len(p.plan.Called) > 0 {
		return p.plan.Called
	}
	return nil
}

// plurals find a word behind a value that does not go with one, and words that only look like it.
var (
	wordBehind = lazy.Regexp(`^[ \x{a0}]([\pL]+)`)
	noPlural   = map[string][]string{
		"en": {"is", "was", "has", "does", "as", "this", "its", "across", "plus", "less", "minus", "always", "times", "makes", "gives", "measures", "leaves"},
		"es": {"es", "más", "menos", "después", "antes", "entonces", "además", "tras", "pues", "las", "los", "sus", "es"},
	}
)

// agrees reports a value that is one in some size before a word in the plural: the edition of that size would say 1 sts.
func (c *checker) agrees(language string, w *written, h markdown.Hole, n plan.Nums) {
	m := wordBehind().FindStringSubmatch(w.text[h.To:])
	if m == nil || !strings.HasSuffix(m[1], "s") || strings.HasSuffix(m[1], "ss") || slices.Contains(noPlural[language], strings.ToLower(m[1])) {
		return
	}
	var sizes []string
	for z, v := range n {
		if v == 1 {
			sizes = append(sizes, c.pat.Sizes[z].Name)
		}
	}
	if len(sizes) > 0 {
		c.say(codeProsePlural, w.at(h.From, h.To+len(m[0])), diag.Args{"name": h.Name, "word": m[1], "sizes": sizes})
	}
}

func planValue(v value.Vector) plan.Value {
	if ls := v.Lengths(); ls != nil {
		return plan.Value{Lengths: ls}
	}
	if v.Unknown {
		return plan.Value{}
	}
	whole := v.Dim == value.Count
	n := make(plan.Nums, len(v.N))
	for i, x := range v.N {
		if n[i] = plan.Absent; x != nil {
			whole = whole && x.IsInt()
			if whole {
				n[i] = int(x.Num().Int64())
			}
		}
	}
	if whole {
		return plan.Value{Counts: n}
	}
	unit := map[value.Dim]plan.AmountUnit{value.Mass: plan.InGrams, value.Percent: plan.InPercent, value.Age: plan.InMonths}[v.Dim]
	return plan.Value{Amounts: v.Thousandths(plan.NoAmount), Unit: unit}
}

// sameNumbers compares the numbers that stand in the texts of the languages. A value that is put in stands for the same number in
// each, and must be put into each.
func (c *checker) sameNumbers(texts map[string]*written, values map[string]plan.Value) {
	if len(c.pat.Languages) == 0 {
		return
	}
	first := texts[c.pat.Languages[0]]
	for _, l := range c.pat.Languages[1:] {
		c.sameTwo(c.pat.Languages[0], first, l, texts[l], values)
	}
}

func (c *checker) sameTwo(langA string, a *written, langB string, b *written, values map[string]plan.Value) {
	onlyA, onlyB := numeral.Compare(c.numbersIn(langA, a), c.numbersIn(langB, b))
	onlyA, onlyB = append(onlyA, putInAlone(a, b, values)...), append(onlyB, putInAlone(b, a, values)...)
	if len(onlyA) == 0 && len(onlyB) == 0 {
		return
	}
	there, here := alone(onlyA), alone(onlyB)
	switch {
	case len(onlyA) == 0:
		c.report(diag.Diagnostic{Code: codeProseAlone, Span: b.at(onlyB[0].From, onlyB[0].To), Args: diag.Args{"here": tongue(langB), "there": tongue(langA), "found": here},
			Related: []diag.Related{{Span: a.all(), Key: "other"}}})
	case len(onlyB) == 0:
		c.report(diag.Diagnostic{Code: codeProseAlone, Span: a.at(onlyA[0].From, onlyA[0].To), Args: diag.Args{"here": tongue(langA), "there": tongue(langB), "found": there},
			Related: []diag.Related{{Span: b.all(), Key: "other"}}})
	default:
		c.report(diag.Diagnostic{Code: codeProseNumber, Span: b.at(onlyB[0].From, onlyB[0].To),
			Args:    diag.Args{"here": tongue(langB), "there": tongue(langA), "found": here, "need": there},
			Related: []diag.Related{{Span: a.at(onlyA[0].From, onlyA[0].To), Key: "other", Args: diag.Args{"need": there}}}})
	}
}

// tongue is the name of a language in a message; one without a name goes by its code.
func tongue(code string) any {
	if code == "en" || code == "es" {
		return diag.Term{Key: "language " + code, N: 1}
	}
	return code
}

// putInAlone lists the numbers that a text puts in and the other does not.
func putInAlone(w, other *written, values map[string]plan.Value) []numeral.Number {
	there := map[string]bool{}
	for _, h := range markdown.Holes(other.text) {
		if _, known := values[h.Name]; !known {
			return nil // a slip in a name was reported
		}
		there[h.Name] = true
	}
	var out []numeral.Number
	for _, h := range markdown.Holes(w.text) {
		if v, ok := values[h.Name]; ok && v.Form == nil && v.Called == nil && !there[h.Name] {
			out = append(out, numeral.Number{Text: w.text[h.From:h.To], From: h.From, To: h.To})
			there[h.Name] = true
		}
	}
	return out
}

// alone lists numbers for a message, the first of them if there are many.
func alone(numbers []numeral.Number) []string {
	const most = 12
	var out []string
	for i, n := range numbers {
		if i == most {
			return append(out, "…")
		}
		out = append(out, n.Text)
	}
	return out
}

// numbersIn reads the numbers of a text. What stands in braces is no figure of the author.
func (c *checker) numbersIn(language string, w *written) []numeral.Number {
	text := w.text
	for _, h := range markdown.Holes(text) {
		text = text[:h.From] + strings.Repeat("\x01", h.To-h.From) + text[h.To:]
	}
	var sizes []string
	for _, s := range c.pat.Sizes {
		sizes = append(sizes, cmp.Or(s.Names[language], s.Name))
	}
	return c.room.numbers(text, language, sizes)
}
