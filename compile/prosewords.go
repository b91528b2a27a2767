package compile

import (
	"regexp"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
	"ovillo/lang/source"
)

// This file reads the author's own sentences for what the rest of the page cannot put right: stitch names that another
// reading takes for another stitch, lengths in one unit alone, and rows called by a number.

var (
	proseWord = lazy.Regexp(`[A-Za-z0-9]+`)
	// A length in centimetres with no inches behind it, as `3 cm` but not `3 cm (1¼ in)`.
	centimetres = lazy.Regexp(`\d+(?:[.,]\d+)?\s?cm\b`)
	withInches  = lazy.Regexp(`^\s*(?:[(/=]|or\b)\s*[\d¼½¾.,/ ]+\s*(?:in\b|inch|″|")`)
	// A row called by its number, in the languages of the pages.
	calledRows = map[string]func() *regexp.Regexp{
		"en": lazy.Regexp(`(?i)\b(row|round)s?\s+(\d+)`),
		"es": lazy.Regexp(`(?i)\b(hilera|vuelta)s?\s+(\d+)`),
	}
)

// calledRow is a row that a sentence calls by its number.
type calledRow struct {
	at     source.Span
	round  bool // it is called a round
	number int
}

// proseWords reads one line of a language.
func (c *checker) proseWords(language string, l lang.RawLine) {
	at := func(from, to int) source.Span {
		return source.Span{Start: l.Span.Start + int32(from), End: l.Span.Start + int32(to)}
	}
	if rx := calledRows[language]; rx != nil && c.at != nil {
		for _, m := range rx().FindAllStringSubmatchIndex(l.Text, -1) {
			word := strings.ToLower(l.Text[m[2]:m[3]])
			n, err := strconv.Atoi(l.Text[m[4]:m[5]])
			if err == nil {
				c.at.cited = append(c.at.cited, calledRow{at(m[0], m[1]), word == "round" || word == "vuelta", n})
			}
		}
	}
	c.stitchNames(language, l.Text, at)
	if language != "en" {
		return // Spanish pages measure in centimetres
	}
	for _, m := range centimetres().FindAllStringIndex(l.Text, -1) {
		if !withInches().MatchString(l.Text[m[1]:]) {
			c.say(codeProseUnit, at(m[0], m[1]), diag.Args{"length": l.Text[m[0]:m[1]]})
		}
	}
	for _, m := range proseWord().FindAllStringIndex(l.Text, -1) {
		if !insideHole(l.Text, m[0]) {
			c.stitchNamed(l.Text[m[0]:m[1]], at(m[0], m[1]))
		}
	}
}

// insideHole reports whether a byte of a line stands between braces.
func insideHole(line string, i int) bool {
	return strings.LastIndexByte(line[:i], '{') > strings.LastIndexByte(line[:i], '}')
}

// stitchNamed looks at a word that may be the abbreviation of a stitch.
func (c *checker) stitchNamed(word string, at source.Span) {
	base := strings.TrimPrefix(strings.TrimPrefix(word, "fp"), "bp")
	if b, _, ok := cutNumber(base, "tog"); ok {
		base = b
	}
	here, ours := stitch.Named(base, c.pat.UKTerms)
	there, theirs := stitch.Named(base, !c.pat.UKTerms)
	switch {
	case ours && theirs && here.ID == there.ID, !ours && !theirs:
	case !ours:
		c.say(codeOtherTerms, at, diag.Args{"word": word, "terms": termsWord(!c.pat.UKTerms), "own": there.Word(c.pat.UKTerms)})
	default:
		c.say(codePlainAbbr, at, diag.Args{"word": word})
	}
}

func termsWord(uk bool) string {
	if uk {
		return "uk"
	}
	return "us"
}

// checkCited checks the rows of a part that its sentences call by number, once all of them are worked.
func (p *partState) checkCited() {
	last := 0
	for _, n := range p.number {
		last = max(last, n)
	}
	rounds := p.plan.Style != plan.Rows
	said := map[calledRow]bool{} // the languages say the same
	for _, r := range p.cited {
		one := calledRow{round: r.round, number: r.number}
		switch {
		case said[one]:
		case r.number > last:
			p.c.say(codeNoSuchRow, r.at, diag.Args{"need": r.number, "have": last, "part": p.plan.Name,
				"round": diag.Term{Key: rowWord(p), N: last}})
			said[one] = true
		case r.round != rounds && !p.mixed():
			p.c.say(codeRowOrRound, r.at, diag.Args{"part": p.plan.Name, "round": diag.Term{Key: rowWord(p), N: 2}})
			said[one] = true
		}
	}
}

// mixed reports whether a part has rows that are closed and rows that are not.
func (p *partState) mixed() bool {
	open, closed := false, false
	for _, facts := range p.plan.Worked {
		for _, f := range facts {
			open, closed = open || !f.Closed, closed || f.Closed
		}
	}
	return open && closed
}

// sameTitles reports a part that is titled as another one is: a page that sends the maker to it sends her to either.
func (c *checker) sameTitles() {
	for i, p := range c.pat.Parts {
		for _, q := range c.pat.Parts[:i] {
			for _, l := range c.pat.Languages {
				if p.Title[l] != "" && strings.EqualFold(p.Title[l], q.Title[l]) {
					c.report(diag.Diagnostic{Code: codeSameTitle, Span: c.parts[p.Name].head, Args: diag.Args{"title": p.Title[l]},
						Related: []diag.Related{{Span: c.parts[q.Name].head, Key: "first"}}})
					return
				}
			}
		}
	}
}
