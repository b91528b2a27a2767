package words

import (
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// span is from the smallest to the largest: 56 to 62 cm.
func (e *english) span(lo, hi, unit string) string {
	if lo == hi {
		return lo + tie + unit
	}
	return lo + " to " + hi + tie + unit
}

// balls says how many balls are needed: 3 or 4 balls in 2 colors.
func (e *english) balls(lo, hi, yarns int) rich.Text {
	text := e.count(lo, "ball")
	switch {
	case hi == lo+1:
		text = strconv.Itoa(lo) + " or " + strconv.Itoa(hi) + tie + e.term("ball").Many
	case hi > lo:
		text = strconv.Itoa(lo) + " to " + strconv.Itoa(hi) + tie + e.term("ball").Many
	}
	if yarns > 1 {
		text += " in " + e.count(yarns, "color")
	}
	return rich.T(text)
}

func (e *english) gauge(sts, rows string, name rich.Text, round bool) rich.Text {
	if rows == "" {
		return fill("{}~{}", sts, name)
	}
	return fill("{}~{} and {}~"+numbered(rows, e.rowWord(round)), sts, name, rows)
}

func (e *english) stsOf(pattern string) noun {
	st := e.short("st")
	return noun{one: fill("{} in {}", st.one, pattern), many: fill("{} in {}", st.many, pattern)}
}

func (e *english) repeatsOf(pattern string) noun {
	return noun{one: fill("repeat of {}", pattern), many: fill("repeats of {}", pattern)}
}

func (e *english) hooksFor(size string, parts rich.Text) rich.Text {
	if len(parts) == 0 {
		return rich.T(size)
	}
	return fill("{} for {}", size, parts)
}

func (e *english) markers(n int) rich.Text { return rich.T(e.markerCount(n)) }

func (e *english) markerCount(n int) string {
	t := e.term("marker")
	word := "stitch markers"
	if n == 1 {
		word = t.One
	}
	return strconv.Itoa(n) + tie + word
}

func (e *english) buttonsNeeded(n num, size, material string) rich.Text {
	of := englishMaterial[material]
	return fill("{}~"+timesOf(n, of+"button", of+"buttons")+" of {}", n, size)
}

// englishMaterial says what a button is made of, before the noun.
var englishMaterial = map[string]string{"plastic": "plastic ", "wood": "wooden ", "metal": "metal ", "glass": "glass ", "cloth": "fabric ", "leather": "leather ",
	"horn": "horn ", "bone": "bone ", "shell": "shell ", "feather": "feather ", "fur": "fur "}

func (e *english) around(name string) string { return name + ", around" }

func (e *english) ease(body string) string { return "Ease at " + body }

var englishMonths = [...]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}

// edition is the edition and its month.
func (e *english) edition(n int, year, month int) string {
	date := ""
	switch {
	case year > 0 && month > 0:
		date = englishMonths[month-1] + " " + strconv.Itoa(year)
	case year > 0:
		date = strconv.Itoa(year)
	}
	switch {
	case n == 0:
		return date
	case date == "":
		return "Edition " + strconv.Itoa(n)
	}
	return "Edition " + strconv.Itoa(n) + ", " + date
}

func (e *english) sew(a, b []named, m plan.Match, eased rich.Text) rich.Text {
	text := fill("sew {} to {}", e.edges(a), e.edges(b))
	if m.Rows > 0 {
		text = fill("{}, {}~{} to every {}~{}", text, m.Stitches, nounFor(m.Stitches, e.short("st")), m.Rows, nounFor(m.Rows, e.places(plan.RowEnd)))
	}
	if eased != nil {
		text = fill("{}; ease in about {} of the longer edge", text, eased)
	}
	return text
}

// edges names the edges on one side of a seam.
func (e *english) edges(runs []named) rich.Text {
	texts := make([]rich.Text, len(runs))
	for i, r := range runs {
		texts[i] = e.run(r)
	}
	return e.and(texts)
}

// cord makes a cord, threads it and finishes it. Its ends come after the threading, which a knot would not let through.
func (e *english) cord(c cord) []rich.Text {
	it := rich.T("it")
	var out []rich.Text
	if c.worked {
		it = e.run(c.part)
	} else {
		out = e.cordMade(c)
	}
	if c.threads {
		through := fill("thread {} through {}", it, e.run(c.through))
		if c.free != nil {
			through = fill("{} so that both ends are the same: with the piece laid open, each measures {}", through, c.free)
		}
		out = append(out, through)
	}
	if c.worked && c.threads {
		it = rich.T("it")
	}
	if text := e.cordEnds(c.ends, c.threads); text != "" {
		whose := rich.Text(nil) // the cord was just spoken of
		if c.worked && !c.threads {
			whose = fill(" of {}", it)
		}
		out = append(out, fill(text, whose))
	}
	if c.fixed {
		out = append(out, fill("sew {} to the fabric midway between its ends, so that it cannot be pulled out", it))
	}
	if c.inside {
		out = append(out, fill("with the piece fastened, {} does not show", it))
	}
	if len(out) == 0 { // of a part that is a cord, nothing else is said
		out = append(out, e.cordSpared(it, c.ends == plan.NoEnds))
	}
	return out
}

// cordMade is a cord of chains with slip stitches on them.
func (e *english) cordSpared(it rich.Text, endless bool) rich.Text {
	if endless {
		return fill("leave no loose end on {}", it)
	}
	return fill("pull {} hard to try it", it)
}

func (e *english) cordMade(c cord) []rich.Text {
	ch, sl := e.short("ch").one, e.short("slst").one
	with := "cord: "
	if c.yarn != "" {
		with += "with " + c.yarn + ", "
	}
	var out []rich.Text
	length := c.length
	if c.width != nil {
		length = fill("{} and is {} wide", length, c.width)
	}
	if c.known {
		return append(out,
			fill(with+"{}; {} in 2nd~{} from hook and in each {} across", e.chains(c.chains), sl, ch, ch),
			rich.T(e.line(fastenOff)), fill("the cord measures {}", length))
	}
	return append(out, fill(with+"work a "+e.word("ch")+" that measures {}; {} in 2nd~{} from hook and in each {} across", length, sl, ch, ch),
		rich.T(e.line(fastenOff)))
}

// cordEnds says how the ends of a cord are finished; {} says whose they are. One without ends that runs through nothing needs no word.
func (e *english) cordEnds(ends plan.Ends, threads bool) string {
	switch ends {
	case plan.EndsPlain:
		return "finish the ends{} without knots"
	case plan.EndsKnotted:
		return "knot each end{}"
	case plan.EndsBeads:
		return "sew a bead firmly to each end{}"
	case plan.EndsPompoms:
		return "sew a pompom firmly to each end{}"
	case plan.EndsTassels:
		return "sew a tassel firmly to each end{}"
	case plan.EndsToggles:
		return "fix a toggle to each end{}"
	case plan.NoEnds:
		if threads {
			return "sew the two ends{} together"
		}
	}
	return ""
}

// fringe cuts strands and knots them into an edge.
func (e *english) fringe(f fringe) []rich.Text {
	cut := fill("cut strands of {}", f.cut)
	if f.known {
		cut = fill("cut {}~"+timesOf(f.strands, "strand", "strands")+" of {}", f.strands, f.cut)
	}
	if f.yarn != "" {
		cut = fill("with {}, {}", f.yarn, cut)
	}
	fold := rich.T("at each place of that edge, fold one strand in half, draw the fold through with the hook, pull the ends through the fold and tighten")
	if f.bundle > 1 {
		fold = fill("at each place of that edge, fold {} strands together in half, draw the fold through with the hook, pull the ends through the fold and tighten", f.bundle)
	}
	return []rich.Text{fill("fringe along {}: {}", e.edges(f.along), cut), fold, fill("trim the fringe to {}", f.length)}
}

func (e *english) elastic(k elastic) []rich.Text {
	return []rich.Text{
		fill("cut {} of "+e.word("elastic")+" {} wide", k.length, k.width),
		fill("thread it through {}, without twisting it, and sew one end over the other", e.run(k.through)),
	}
}

func (e *english) elasticNeeded(width, length rich.Text) rich.Text {
	return fill("{} of "+e.word("elastic")+" {} wide", length, width)
}

func (e *english) pompom(k pompom) rich.Text {
	yarn, with := k.yarn, rich.Text(nil)
	switch {
	case k.takes != nil && yarn == "":
		with = fill("with about {} of "+e.term("yarn").One+", ", k.takes)
	case k.takes != nil:
		with = fill("with about {} of {}, ", k.takes, yarn)
	case yarn != "":
		with = fill("with {}, ", yarn)
	}
	if k.wraps == 0 {
		return fill("{}make a pompom of {} and sew it on", with, k.across)
	}
	return fill("{}make a pompom of {}: wrap {}~times round a card of that width, tie, cut and trim. Sew it on", with, k.across, k.wraps)
}

func (e *english) buttons(n num, size, material string) rich.Text {
	return fill("sew on {}", e.buttonsNeeded(n, size, material))
}
