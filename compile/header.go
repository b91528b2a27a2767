package compile

import (
	"slices"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/lazy"
)

// header reads the pattern block.
func (c *checker) header() {
	heads := blocks[*lang.Pattern](c.file.Body)
	if len(heads) == 0 {
		c.pat.Name = "pattern"
		c.pat.Languages = []string{"en", "es"}
		return
	}
	if len(heads) > 1 {
		c.report(diag.Diagnostic{Code: codeTwice, Span: heads[1].Head, Args: diag.Args{"name": "pattern"},
			Related: []diag.Related{{Span: heads[0].Head, Key: "first"}}})
	}
	h := heads[0]
	if n := h.Node.(*lang.Pattern).Name; n != nil {
		c.pat.Name = n.Text
	}
	c.headed(h)
}

// headed reads the lines of a header, its languages first.
func (c *checker) headed(h *lang.Statement) {
	c.pat.Languages = []string{"en", "es"}
	for _, s := range h.Body {
		if l, ok := s.Node.(*lang.Languages); ok {
			c.pat.Languages = nil
			for _, w := range l.Words {
				c.pat.Languages = append(c.pat.Languages, w.Text)
			}
		}
	}
	for _, s := range h.Body {
		c.headerLine(s)
	}
	if len(c.pat.Title) == 0 {
		c.say(codeNoTitle, h.Head, nil)
		c.pat.Title = plan.Text{}
		for _, l := range c.pat.Languages {
			c.pat.Title[l] = strings.ReplaceAll(c.pat.Name, "_", " ")
		}
	}
}

func (c *checker) headerLine(s *lang.Statement) {
	switch n := s.Node.(type) {
	case *lang.Title:
		c.pat.Title = c.text(n.Text, n)
	case *lang.Photo:
		if c.photo != nil {
			c.report(diag.Diagnostic{Code: codeTwice, Span: s.Head, Args: diag.Args{"name": "photo"},
				Related: []diag.Related{{Span: c.photo.Span(), Key: "first"}}})
			return
		}
		c.photo = n
	case *lang.By:
		c.pat.By = n.Name.Text
	case *lang.Edition:
		if v, ok := plainNumber(n.N); ok {
			c.pat.Edition = v
		}
		if n.Date != nil {
			c.editionDate(n.Date)
		}
	case *lang.Level:
		c.pat.Level = c.oneOf(n.Word, codeLevel, "basic", "easy", "intermediate", "complex")
	case *lang.Terms:
		c.pat.UKTerms = c.oneOf(n.Word, codeTerms, "us", "uk") == "uk"
	case *lang.Kind:
		c.pat.Kind, c.kindAt = n.Word.Text, n.Span()
	case *lang.Markets:
		c.offered(n)
	case *lang.Not:
		c.notForSale, c.notStuffed = c.notForSale || n.ForSale, c.notStuffed || n.Stuffed
	case *lang.Base:
		c.base = c.stitchID(n.Stitch)
	case *lang.Begin:
		c.setBegin(c.begins, n)
	case *lang.Style:
		c.style = n
	case *lang.Prose:
		c.headerProse(n.Word, c.prose(s))
	}
}

// offered reads where the pattern is offered.
func (c *checker) offered(n *lang.Markets) {
	known := []string{"eu", "us", "uk"}
	for _, w := range n.Words {
		switch {
		case !slices.Contains(known, w.Text):
			c.say(codeNoMarket, w.Span(), diag.Args{"word": w.Text, "known": c.file.Names("market", known)})
		case !slices.Contains(c.markets, w.Text):
			c.markets = append(c.markets, w.Text)
		}
	}
}

// isoDate is a month or a day of it as ISO 8601 writes them.
var isoDate = lazy.Regexp(`^([0-9]{4})-(0[1-9]|1[0-2])(?:-([0-9]{2}))?$`)

// editionDate reads the date of an edition. It is worked out here because nothing that decides what a page shows may
// know the time.
func (c *checker) editionDate(d *lang.Str) {
	if m := isoDate().FindStringSubmatch(d.Text); m != nil && (m[3] == "" || inMonth(m[1], m[2], m[3])) {
		c.pat.Date = d.Text
		return
	}
	c.say(codeEditionDate, d.Span(), diag.Args{"word": strconv.Quote(d.Text)})
}

// inMonth reports whether a month of the Gregorian calendar has that day.
func inMonth(year, month, day string) bool {
	y, _ := strconv.Atoi(year)
	d, _ := strconv.Atoi(day)
	days := 31
	switch month {
	case "04", "06", "09", "11":
		days = 30
	case "02":
		days = 28
		if y%4 == 0 && (y%100 != 0 || y%400 == 0) {
			days = 29
		}
	}
	return 1 <= d && d <= days
}

func (c *checker) headerProse(word string, p plan.Prose) {
	switch word {
	case "intro":
		c.pat.Intro = p
	case "care":
		c.pat.Care = p
	case "licence":
		c.pat.Licence = p
	case "changes":
		c.pat.Changes = p
	default:
		c.pat.Notes = append(c.pat.Notes, p)
	}
}

// oneOf checks a word against a closed list and returns it, "" if it is none of them.
func (c *checker) oneOf(w *lang.Name, code diag.Code, allowed ...string) string {
	for _, a := range allowed {
		if w.Text == a {
			return a
		}
	}
	c.say(code, w.Span(), diag.Args{"word": w.Text, "known": allowed, "near": c.file.Near(w.Text, allowed)})
	return ""
}

// text gathers a text in every language of the pattern; one that is missing is reported.
func (c *checker) text(list []*lang.Bi, at lang.Node) plan.Text {
	t := plan.Text{}
	texts := map[string]*written{}
	for _, b := range list {
		t[b.Lang] = b.Text.Text
		texts[b.Lang] = inQuotes(&b.Text)
	}
	if c.complete(t, at) {
		c.later = append(c.later, func() { c.sameNumbers(texts, nil) })
	}
	return t
}

// inQuotes is a text between quotation marks.
func inQuotes(s *lang.Str) *written {
	w := &written{}
	at := s.Span()
	at.Start++
	w.add(lang.RawLine{Span: at, Text: s.Text})
	return w
}

// complete reports the languages a text lacks.
func (c *checker) complete(t plan.Text, at lang.Node) bool {
	var missing []string
	for _, l := range c.pat.Languages {
		if t[l] == "" {
			missing = append(missing, l)
		}
	}
	if len(missing) > 0 {
		c.say(codeNoTranslation, at.Span(), diag.Args{"languages": missing})
	}
	return len(missing) == 0
}

// begin is how a row of a stitch begins.
type begin struct {
	chains plan.Nums
	counts bool
	as     stitch.ID
}

func (c *checker) setBegin(into map[stitch.ID]begin, n *lang.Begin) {
	id := c.stitchID(n.Stitch)
	if id == "" {
		return
	}
	into[id] = c.beginning(n.None, n.N, n.As)
}

func (c *checker) beginning(none bool, chains *lang.Cnt, as *lang.Name) begin {
	if none || chains == nil {
		return begin{}
	}
	b := begin{}
	if v, ok := plainNumber(chains); ok {
		b.chains = plan.Nums{v}
	}
	if as != nil {
		b.counts, b.as = true, c.stitchID(as)
	}
	return b
}

// plainNumber reads a whole number that stands as it is, where no sizes are needed.
func plainNumber(n *lang.Cnt) (int, bool) {
	if n == nil || n.E == nil {
		return 0, false
	}
	return plainFigure(n.E)
}

// plainFigure is an expression that is one whole number without a unit.
func plainFigure(e *lang.Expr) (int, bool) {
	if e == nil || e.Op != lang.OpNumber || len(e.Sizes) > 0 || e.Unit != "" || e.Text == "" {
		return 0, false
	}
	v := 0
	for _, r := range e.Text {
		if r < '0' || r > '9' || v > 1_000_000 {
			return 0, false
		}
		v = v*10 + int(r-'0')
	}
	return v, true
}
