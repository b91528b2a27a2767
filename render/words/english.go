package words

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// english is the voice of English. Its readings differ in the names of stitches and in a few words of the trade.
//
// Conventions: a stitch by itself is one stitch ("dc in next st"); a number before a stitch means that many in one place
// ("2 dc in next st"); one in each of several places is always said with "each" ("dc in each of next 2 sts"), so that the
// two are never mistaken for one another.
type english struct{ *reading }

// and writes a list: a, b and c.
func (e *english) and(items []rich.Text) rich.Text {
	n := len(items)
	if n < 2 {
		return join("", items...)
	}
	return fill("{} and {}", join(", ", items[:n-1]...), items[n-1])
}

// form is a stitch by its abbreviation, as the trade builds it: FPdc, dc2tog, 3-dc cluster.
func (e *english) form(f stitch.Form) noun {
	c, ok := concept(f.ID)
	if !ok {
		return noun{one: rich.T(string(f.ID)), many: rich.T(string(f.ID))}
	}
	if e.manner.Full {
		return e.formInFull(f, e.term(c))
	}
	if !f.Derived() {
		n := e.short(c)
		n.many = n.one
		return n
	}
	short := postPrefix(f.Post) + e.term(c).Short
	if f.Group != stitch.Single {
		g := e.term(groupConcept(f.Group))
		switch f.Group {
		case stitch.Vee:
			short += tie
		case stitch.Picot:
			short = e.chainsOf(rich.T(short), f.Of).String() + tie
		default:
			short = strconv.Itoa(f.Of) + "-" + short + tie
		}
		name := e.formName(f)
		return noun{one: abbr(short+g.Short, name), many: abbr(short+g.Shorts, name)}
	}
	if f.Together > 1 {
		short += strconv.Itoa(f.Together) + "tog"
	}
	text := abbr(short, e.formName(f))
	return noun{one: text, many: text}
}

// formInFull is a stitch by its name: front post double crochet, double crochet 2 together, cluster of 3 double crochets.
func (e *english) formInFull(f stitch.Form, t term) noun {
	post := postName(f.Post)
	switch {
	case f.Group != stitch.Single:
		g := e.term(groupConcept(f.Group))
		what := strings.TrimPrefix(e.formName(f), g.One)
		return noun{one: rich.T(g.One + what), many: rich.T(g.Many + what)}
	case f.Together > 1:
		text := rich.T(post + t.One + " " + strconv.Itoa(f.Together) + tie + "together")
		return noun{one: text, many: text}
	}
	return noun{one: rich.T(post + t.One), many: rich.T(post + t.Many)}
}

func postName(p stitch.Post) string {
	return [...]string{stitch.NoPost: "", stitch.FrontPost: "front post ", stitch.BackPost: "back post "}[p]
}

func postPrefix(p stitch.Post) string {
	return [...]string{stitch.NoPost: "", stitch.FrontPost: "FP", stitch.BackPost: "BP"}[p]
}

// formName is a stitch in full: front post double crochet, 2 double crochets worked together, cluster of 3 double crochets.
func (e *english) formName(f stitch.Form) string {
	c, ok := concept(f.ID)
	if !ok {
		return string(f.ID)
	}
	post := postName(f.Post)
	switch {
	case f.Group == stitch.Vee:
		return e.word(groupConcept(f.Group)) + " of " + post + e.term(c).Many
	case f.Group != stitch.Single:
		return e.word(groupConcept(f.Group)) + " of " + strconv.Itoa(f.Of) + tie + post + e.term(c).Many
	case f.Together > 1:
		return strconv.Itoa(f.Together) + tie + post + e.term(c).Many + " worked together"
	}
	return post + e.term(c).One
}

// ownStitch has a plural where it has no abbreviation.
func (e *english) ownStitch(name, short string) noun {
	if short != "" {
		text := abbr(nbsp(short), name)
		return noun{one: text, many: text}
	}
	ending := "s"
	for _, hiss := range []string{"s", "x", "z", "ch", "sh"} {
		if strings.HasSuffix(name, hiss) {
			ending = "es"
		}
	}
	return noun{one: rich.T(nbsp(name)), many: rich.T(nbsp(name + ending))}
}

// places names what is worked into.
func (e *english) places(k plan.PlaceKind) noun {
	full := func(one, many string) noun { return noun{one: rich.T(one), many: rich.T(many)} }
	st, sp, ch := e.short("st"), e.short("sp"), e.short("ch")
	switch k {
	case plan.FoundationCh, plan.ChainFromBack:
		return noun{one: ch.one, many: ch.many}
	case plan.Space:
		return noun{one: fill("{}~{}", ch.one, sp.one), many: fill("{}~{}", ch.one, sp.many)}
	case plan.StitchSpace:
		return noun{one: fill("{} or {}", st.one, sp.one), many: fill("{} and {}", st.many, sp.many)}
	case plan.StitchChain:
		return noun{one: fill("{} or {}", st.one, ch.one), many: fill("{} and {}", st.many, ch.many)}
	case plan.Gap:
		return full(e.expand("space between {st*.}"), e.expand("spaces between {st*.}"))
	case plan.Unworked:
		return noun{one: fill("unworked~{}", st.one), many: fill("unworked~{}", st.many)}
	case plan.RowEnd:
		return e.rowEnd(false)
	case plan.RingPlace:
		return full("ring", "rings")
	}
	return st
}

// rowEnd is short enough to be named each time.
func (e *english) rowEnd(bool) noun { return noun{one: rich.T("row end"), many: rich.T("row ends")} }

// rowsBelow is a place so many rows below.
func (e *english) rowsBelow(n noun, deep int, round bool) noun {
	w := e.rowWord(round).Many
	if deep == 1 {
		w = e.rowWord(round).One
	}
	n.one, n.many = fill("{} {}~{}~below", n.one, deep, w), fill("{} {}~{}~below", n.many, deep, w)
	return n
}

// spaces names chain spaces: ch-2 sp. Where the number comes first, 2-ch sp, no figure may stand before it: two of them are
// 2 sps of 2 ch.
func (e *english) spaces(chains num, any bool) noun {
	if any {
		return e.places(plan.Space)
	}
	ch, sp := e.chainsOf(e.short("ch").one, chains), e.short("sp")
	n := noun{one: fill("{}~{}", ch, sp.one), many: fill("{}~{}", ch, sp.many)}
	if e.numberFirst() {
		n.figured, n.many = fill("{} of~{}", sp.one, e.chainsBy(chains)), fill("{} of~{}", sp.many, e.chainsBy(chains))
	}
	return n
}

// chainsOf is several chains as one thing: ch-3, or 3-ch where the trade puts the number first.
func (e *english) chainsOf(ch rich.Text, n any) rich.Text {
	if e.numberFirst() {
		return fill("{}-{}", n, ch)
	}
	return fill("{}-{}", ch, n)
}

// numberFirst reports whether chains are counted like other stitches, 3 ch, or named first, ch 3.
func (e *english) numberFirst() bool { return e.word("chain count") == "number first" }

// stitchesIn names stitches in a yarn: sts in sand.
func (e *english) stitchesIn(n noun, yarn string) noun {
	return noun{one: fill("{} in {}", n.one, yarn), many: fill("{} in {}", n.many, yarn)}
}

// some writes how many of a noun: "dc" for one, "2 dc" for more, as instructions do.
func (e *english) some(n num, of noun) rich.Text {
	if n.one() {
		return of.one
	}
	return fill("{}~{}", n, of.many)
}

// ordinal is 2nd, 3rd, 4th.
func (e *english) ordinal(n int) string {
	suffix := "th"
	if n%100 < 11 || n%100 > 13 {
		switch n % 10 {
		case 1:
			suffix = "st"
		case 2:
			suffix = "nd"
		case 3:
			suffix = "rd"
		}
	}
	return strconv.Itoa(n) + suffix
}

// count writes a number with a word that follows it: 1 round, 3 rounds.
func (e *english) count(n int, concept string) string {
	t := e.term(concept)
	if n == 1 {
		return "1" + tie + t.One
	}
	return strconv.Itoa(n) + tie + t.Many
}

// bare takes the article from a name.
func (e *english) bare(name string) string {
	for _, a := range []string{"the ", "a ", "an "} {
		if rest, ok := strings.CutPrefix(name, a); ok {
			return rest
		}
	}
	return name
}

// rowWord is row or round.
func (e *english) rowWord(round bool) term {
	if round {
		return e.term("round")
	}
	return e.term("row")
}

func (e *english) line(l line) string {
	if handed[l] {
		return e.expand(englishLines[l])
	}
	return e.expand(e.sided(englishLines[l]))
}

func (e *english) fixed(k Key) string { return e.expand(englishFixed[k]) }

// expand puts the words of the reading into a text: {gauge}, {color*} for the plural, {st.} and {st*.} for the abbreviation.
func (e *english) expand(text string) string {
	for {
		before, rest, ok := strings.Cut(text, "{")
		if !ok {
			return text
		}
		word, after, _ := strings.Cut(rest, "}")
		if word == "" { // a blank that is filled in later
			return before + "{}" + e.expand(after)
		}
		value := ""
		word, short := strings.CutSuffix(word, ".")
		word, plural := strings.CutSuffix(word, "*")
		switch t := e.term(word); {
		case short && plural:
			value = t.Shorts
		case short:
			value = t.Short
		case plural:
			value = t.Many
		default:
			value = t.One
		}
		text = before + value + after
	}
}

func (e *english) name(k nameKind, id string) string { return e.expand(englishNames[k][id]) }

// otherForm tells a reader what a derived form is called in this reading.
func (e *english) otherForm(f stitch.Form, _ bool) string { return e.form(f).one.String() }

// mistaken warns of a name that stands for another stitch elsewhere.
func (e *english) mistaken(name string, meant noun) rich.Text {
	return fill("some patterns say “{}” for {} {}", name, e.article(meant.one), meant.one)
}

// otherTerm tells a reader what a concept is called in this reading.
func (e *english) otherTerm(t term) string {
	if t.One == t.Short {
		return t.Short
	}
	return t.Short + ", " + t.One
}

func (e *english) spoken(n int, _ bool) string { return englishNumber(n, e.Tag() == "en-GB") }
