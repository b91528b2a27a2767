package words

import (
	"fmt"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

func (e *english) label(round bool, first, last int) rich.Text {
	w := e.rowWord(round)
	if first == last {
		return rich.T(upper(w.One) + tie + strconv.Itoa(first))
	}
	return rich.T(upper(w.Many) + tie + strconv.Itoa(first) + dash + strconv.Itoa(last))
}

func (e *english) bareLabel(round, several bool) rich.Text {
	w := e.rowWord(round)
	if several {
		return rich.T(upper(w.Many))
	}
	return rich.T(upper(w.One))
}

// namedLabel heads a row that has a name: "Dividing round (round 18)".
func (e *english) namedLabel(name string, label rich.Text) rich.Text {
	return rich.T(name + " (" + lower(label.String()) + ")")
}

func (e *english) side(wrong bool) string {
	if wrong {
		return "wrong side"
	}
	return "right side"
}

// times heads rows that read the same: "3 rounds: ".
func (e *english) times(n num, round bool) rich.Text {
	w := e.rowWord(round)
	return fill("{}~"+timesOf(n, w.One, w.Many)+": ", n)
}

// begin is the beginning chain, and whether it counts where that is to be said.
func (e *english) begin(b beginning) rich.Text {
	ch := e.chainsBy(b.chains + b.and)
	if !b.explain {
		return ch
	}
	where := ""
	if b.throughout {
		where = ", here and throughout"
	}
	counts, not := "counts", "does not count"
	if e.manner.Full && e.numberFirst() && b.chains+b.and > 1 {
		counts, not = "count", "do not count" // 3 chains are several; ch 3 and 3 ch are one thing
	}
	switch {
	case b.and > 0 && b.counts:
		return fill("{} ("+counts+" as first {} and {})", ch, b.as.one, e.chainsBy(b.and))
	case b.counts:
		return fill("{} ("+counts+" as first {}"+where+")", ch, b.as.one)
	}
	return fill("{} ("+not+" as a {}"+where+")", ch, e.short("st").one)
}

// beginCounts says for the whole pattern whether a beginning chain counts.
func (e *english) beginCounts(chains int, f noun, counts bool) rich.Text {
	if counts {
		return fill("A beginning {} counts as the first {}", e.chainsOf(e.short("ch").one, chains), f.one)
	}
	return fill("A beginning {} does not count as a {}", e.chainsOf(e.short("ch").one, chains), e.short("st").one)
}

// joinWith closes a round.
func (e *english) joinWith(j joining) rich.Text {
	ch := e.short("ch").one
	switch {
	case j.intoChain && j.top:
		return fill("join with {} in top of {}", j.with.one, e.chainsOf(ch, j.chains))
	case j.intoChain:
		return fill("join with {} in {}~{} of {}", j.with.one, e.ordinal(j.nth), ch, e.chainsOf(ch, j.chains))
	}
	return fill("join with {} in first {}", j.with.one, j.first.one)
}

func (e *english) turn() rich.Text { return rich.T("turn") }

func (e *english) joinYarn(yarn string) rich.Text { return rich.T("join " + yarn) }

// readsChart says which row of a chart is worked: "read rows 3 and 4 of the chart from right to left".
func (e *english) readsChart(name string, r plan.ChartRow) rich.Text {
	first, last := r.First, r.Last
	rows := fill("row~{}", first)
	switch {
	case last == first+1 || last == first-1:
		rows = fill("rows~{} and~{}", first, last)
	case last != first:
		rows = fill("rows~{} to~{}", first, last)
	}
	chart := "the chart"
	if name != "" {
		chart = "chart “" + name + "”"
	}
	way := map[plan.Reading]string{plan.FromRight: " from right to left", plan.FromLeft: " from left to right"}[r.Read]
	switch {
	case r.Seam && r.Read == plan.FromRight:
		way += ", but the cell at its left end first"
	case r.Seam && r.Read == plan.FromLeft:
		way += ", but the cell at its right end first"
	}
	return fill("read {} of {}"+e.sided(way), rows, chart)
}

func (e *english) joinYarnIn(yarn string, place rich.Text) rich.Text {
	return fill("join {} in {}", yarn, place)
}

func (e *english) rowsIn(n num, yarn string, round bool) rich.Text {
	w := e.rowWord(round)
	return fill("{}~"+timesOf(n, w.One, w.Many)+" in {}", n, yarn)
}

func (e *english) inStripes(stripes []rich.Text) rich.Text {
	return fill("stripes: {}", join(", ", stripes...))
}

func (e *english) changeHook(size string) rich.Text {
	return fill("change to the {} "+e.word("hook"), size)
}

func (e *english) marksUp(n int, on, round bool) rich.Text {
	row := e.rowWord(round).One
	switch {
	case n == 1 && on:
		return rich.T("move the marker up when you come to it, in every " + row + " until it is removed")
	case n == 1:
		return rich.T("move the marker up when you come to it")
	case on:
		return rich.T("move the markers up as you come to them, in every " + row + " until they are removed")
	}
	return rich.T("move the markers up as you come to them")
}

func (e *english) marksOut(numbers []int, last, round bool) rich.Text {
	when := ""
	if last {
		when = "after the last " + e.rowWord(round).One + ", "
	}
	if len(numbers) == 1 {
		return fill(when+"remove marker~{}", numbers[0])
	}
	return fill(when+"remove markers~{}", e.and(figures(numbers)))
}

// measures says how tall the part is.
func (e *english) measures(called string, tall rich.Text) rich.Text {
	if called == "" {
		called = "the piece"
	}
	return fill("from its start, {} now measures {}", called, tall)
}

// blockHead says how often some rows are worked in all.
func (e *english) blockHead(rows int, round bool, n num) rich.Text {
	w := e.rowWord(round)
	// Without a number of its own the noun would be read with the one that follows: rounds 4.
	what := "these " + w.Many + ","
	switch {
	case rows == 1:
		what = "this " + w.One
	case rows > 1:
		what = "these " + strconv.Itoa(rows) + tie + w.Many
	}
	if n.one() && !n.gaps() {
		return rich.T("work " + strings.TrimSuffix(what, ","))
	}
	return fill("work "+what+" {}~"+timesOf(n, "time", "times")+" in all", n)
}

// blockTimes heads rows of a block whose number differs between sizes: "First, 4 (5, 6) rounds: ".
func (e *english) blockTimes(first bool, n num, round bool) rich.Text {
	if first {
		return fill("first, {}", e.times(n, round))
	}
	return fill("then, {}", e.times(n, round))
}

// blockRow heads a row of a block by its place in it: "1st and 2nd rounds (plain): ".
func (e *english) blockRow(round bool, from, to int, name string) rich.Text {
	w := e.rowWord(round)
	text := e.ordinal(from) + tie + w.One
	switch {
	case to == from+1:
		text = e.ordinal(from) + " and " + e.ordinal(to) + tie + w.Many
	case to > from:
		text = e.ordinal(from) + " to " + e.ordinal(to) + tie + w.Many
	}
	if name != "" {
		text += " (" + name + ")"
	}
	return rich.T(text + ": ")
}

// likeRow is a row of a block that is worked like an earlier one of it.
func (e *english) likeRow(nth int, round bool) rich.Text {
	return rich.T("work as the " + e.ordinal(nth) + tie + e.rowWord(round).One)
}

func (e *english) onlySizes(sizes []string) rich.Text {
	return fill("{} {} only", upper(sizesWord(len(sizes), "size", "sizes")), e.sizeList(sizes))
}

// sizeList writes names of sizes: 1 y, 2 y and 3 y.
func (e *english) sizeList(names []string) string {
	texts := make([]rich.Text, len(names))
	for i, n := range names {
		texts[i] = rich.T(n)
	}
	return e.and(texts).String()
}

// startFoundation is a start that needs no chain.
func (e *english) startFoundation(n num, f noun) rich.Text {
	return fill("make {}~foundation {} (see Special stitches)", n, f.by(n))
}

func (e *english) joinRing(first noun, twist bool) rich.Text {
	care := ""
	if twist {
		care = ", being careful not to twist"
	}
	return fill("join with {} in first {} to form a ring"+care, e.short("slst").one, first.one)
}

// joins says which side faces and which yarn is joined.
func (e *english) joins(y joined) string {
	side, name := "With right side facing, join ", verbatim(y.name)
	if y.wrong {
		side = "With wrong side facing, join "
	}
	if name == "" {
		name = e.word("yarn")
	}
	return side + name
}

// startAlong is a part that grows along runs of others. Without a yarn to join, it says only where it goes.
func (e *english) startAlong(a alongText) rich.Text {
	var out rich.Text
	if first := a.runs[0]; a.yarn.fresh {
		switch {
		case a.round:
			out = fill(e.joins(a.yarn)+" in 2nd {} of {}; its first {} is the last corner.", e.short("st").one, e.along(first), e.short("st").one)
		case first.Kind == plan.RefRowEnds:
			out = fill(e.joins(a.yarn)+" at the "+firstEnd(first.Down, "first", "last")+" row end of {}.", e.along(first))
		case len(a.runs) == 1 && a.skip.some():
			out = fill(e.joins(a.yarn)+" in next {} behind the first {}~{} of {}.", e.short("st").one, a.skip, e.short("st").by(a.skip), e.whole(first))
		case len(a.runs) == 1 && first.counted():
			out = fill(e.joins(a.yarn)+" in {}.", e.one(first.first()))
		case len(a.runs) == 1 && first.Kind == plan.RefEdge:
			out = fill(e.joins(a.yarn)+" at the start of {}.", e.along(first))
		case len(a.runs) == 1:
			out = fill(e.joins(a.yarn)+" at {}.", e.along(first))
		default:
			out = fill(e.joins(a.yarn)+" at the start of {}.", e.along(first))
		}
	}
	if bridged(a.runs) {
		return join(" ", e.bridges(a.runs), out)
	}
	if len(a.runs) == 1 && !(a.rates && a.runs[0].Kind == plan.RefRowEnds) || !a.rates && a.yarn.fresh {
		return out // the first row says the rest
	}
	texts := make([]rich.Text, len(a.runs))
	for i, r := range a.runs {
		texts[i] = e.alongRun(r)
		if a.rates && r.Kind == plan.RefRowEnds {
			texts[i] = fill("{} ({})", texts[i], e.rate(r))
		}
	}
	return join(" ", out, fill("Work {}.", join(", then ", texts...)))
}

// bridges joins pieces with new chains between them, one after the other.
func (e *english) bridges(runs []named) rich.Text {
	texts := make([]rich.Text, len(runs))
	for i, r := range runs {
		texts[i] = e.along(r)
	}
	return fill("Make chains to join the pieces in this order, with the right sides of all of them facing: {}. Join each chain with {} to the piece that follows.",
		join(", ", texts...), e.short("slst").one)
}

// firstEnd chooses between the words for the row at which a side edge begins to be worked along. What is up and what is down is
// not said: a piece worked from the neck is held the other way round.
func firstEnd(down bool, first, last string) string {
	if down {
		return last
	}
	return first
}

// alongRun heads what is worked along one run of several.
func (e *english) alongRun(r named) rich.Text {
	switch r.Kind {
	case plan.RefCorner:
		return fill("in {}", e.one(r))
	case plan.RefRowEnds:
		way := firstEnd(r.Down, ", from the first row to the last", ", from the last row to the first")
		return fill("along {}"+way, e.along(r))
	}
	return fill("along {}", e.along(r))
}

// rate is how many stitches go along the ends of rows.
func (e *english) rate(r named) rich.Text {
	total := fill("{}~{}", r.count, e.short("st").by(r.count))
	ends := e.places(plan.RowEnd)
	switch {
	case r.Rate == 0:
		return fill("{} in {}~{}", total, r.ends, ends.by(r.ends))
	case r.RateRows == 1:
		return fill("{}~{} in each row end: {}", r.Rate, nounFor(r.Rate, e.short("st")), total)
	}
	return fill("{}~{} for every {}~{}: {}", r.Rate, nounFor(r.Rate, e.short("st")), r.RateRows, ends.many, total)
}

// along is a run as the edge of a new part. A foundation is an other side by its nature.
func (e *english) along(r named) rich.Text {
	switch {
	case r.newChain():
		return e.chains(r.count)
	case r.Kind == plan.RefSpace && r.Below && !r.count.unknown():
		return fill("the other side of the {}~{} of {}", r.count, e.short("ch").by(r.count), e.whole(r))
	}
	if r.Below && r.Kind != plan.RefFoundation {
		return fill("the other side of {}", e.run(r))
	}
	return e.run(r)
}

// startIn is a part that starts in one place.
func (e *english) startIn(r named, y joined) rich.Text {
	return fill(e.joins(y)+" in {}.", e.one(r))
}

func (e *english) level(n int) rich.Text {
	sl, st := e.short("slst").one, e.short("st")
	if n == 1 {
		return fill("{} in next {} to level the edge", sl, st.one)
	}
	return fill("{} in each of next {}~{} to level the edge", sl, n, st.many)
}

func (e *english) closeThrough(loops string) rich.Text {
	through := map[string]string{"front": "the front loop", "back": "the back loop", "both": "both loops"}[loops]
	return rich.T(e.line(fastenOff) + ", leaving a long tail. With the " + e.word("needle") + ", draw the tail through " + through + " of each " + e.term("st").Short + " of the last round, pull tight and secure it")
}

// moveStart moves the start of the round to a marker.
func (e *english) moveStart(marker int, moved num, out bool) rich.Text {
	st := e.short("st")
	text := fill("From here on the rounds begin at marker~{}", marker)
	if moved.some() {
		text = fill("{}, {}~{} after the old start", text, moved, st.by(moved))
	}
	if out {
		text = fill("{}; remove the marker as the first of them begins", text)
	}
	return stopped(text)
}

func (e *english) nowHave(counts []rich.Text) rich.Text {
	return fill("you now have {}", e.and(counts))
}

func (e *english) inSection(n num, called string) rich.Text {
	return fill("{}~{} in {}", n, e.short("st").by(n), called)
}

// countOff places markers along a finished row.
func (e *english) countOff(o counting) rich.Text {
	from := "the start of the " + e.rowWord(o.round).One
	if o.round && !o.spiral {
		from = "the join"
	}
	if !o.plain {
		return e.countSteps(o, from)
	}
	st := e.short("st")
	var texts []rich.Text
	for i := 0; i+1 < len(o.items); i += 2 {
		c, m := o.items[i], o.items[i+1]
		text := fill("marker~{} after {}~{}", m.marker, c.n, st.by(c.n))
		if i > 0 {
			text = fill("marker~{} after {} more", m.marker, c.n)
		}
		if c.called != "" {
			text = e.called(text, c.called)
		}
		texts = append(texts, text)
	}
	last := o.items[len(o.items)-1]
	rest := fill("{}~{} remain", last.n, st.many)
	if last.n.one() {
		rest = fill("1~{} remains", st.one)
	}
	if last.called != "" {
		rest = e.called(rest, last.called)
	}
	return fill("Work nothing. Counting from "+from+", place {}; {}.", join(", ", texts...), rest)
}

// countSteps places markers step by step, where they stand in stitches or two sections meet without one.
func (e *english) countSteps(o counting, from string) rich.Text {
	st := e.short("st")
	var texts []rich.Text
	for _, it := range o.items {
		var text rich.Text
		switch {
		case it.marker > 0 && it.inNext:
			text = fill("place marker~{} in next {}", it.marker, st.one)
		case it.marker > 0:
			text = fill("place marker~{} before next {}", it.marker, st.one)
		default:
			text = fill("count {}~{}", it.n, st.by(it.n))
			if it.called != "" {
				text = e.called(text, it.called)
			}
		}
		texts = append(texts, text)
	}
	return fill("Work nothing. From "+from+": {}.", join(", ", texts...))
}

func (e *english) handedHook(size, yarn string) rich.Text {
	switch {
	case yarn == "":
		return rich.T(size + " " + e.word("hook"))
	case size == "":
		return rich.T(yarn)
	}
	return fill("{}, {} {}", yarn, size, e.word("hook"))
}

func (e *english) worked(from rich.Text) rich.Text { return fill("worked from {}", from) }

func (e *english) theParts(titles []rich.Text) rich.Text { return fill("parts {}", e.and(titles)) }

// goesOn is a part that goes on where the yarn hangs, over some places of the edge alone.
func (e *english) goesOn(r named) rich.Text {
	if r.called == "" && !r.count.unknown() {
		return fill("continue over the first {}~{} of {} only", r.count, e.kind(r, !r.count.one()), e.whole(r))
	}
	return fill("continue over {} only", e.along(r))
}

func (e *english) makeSeveral(n int) rich.Text { return rich.T(fmt.Sprintf("make%s%d", tie, n)) }
