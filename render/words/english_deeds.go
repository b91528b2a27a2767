package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// work is stitches and where they go: "2 dc in each of next 3 sts".
func (e *english) work(w working) rich.Text {
	st := e.some(w.per, w.form)
	if w.at.reach == nowhere {
		return st
	}
	text := fill("{} {}", st, e.where(w))
	if w.at.over == plan.ChainFromBack {
		return fill("working along other side of chain, {}", text)
	}
	return text
}

// into is the preposition of a stitch: in, or around for a stitch round a post.
func into(p stitch.Post) string {
	if p != stitch.NoPost {
		return "around"
	}
	return "in"
}

// where says into which places stitches go, preposition and loops included.
func (e *english) where(w working) rich.Text {
	in := into(w.post) + " " + loopOf(w.loop)
	s := w.at
	switch s.reach {
	case plan.InRing:
		return rich.T(in + "ring")
	case plan.InGapHere:
		return fill(in+"space before next {}", e.places(plan.Stitch).one)
	case plan.At, plan.BelowOf, plan.BesideOf, plan.NextOf, plan.ThroughBoth:
		return e.whereNamed(in, s)
	}
	return e.whereNext(in, s)
}

func loopOf(l stitch.Loop) string {
	switch l {
	case stitch.FrontLoop:
		return "front loop only of "
	case stitch.BackLoop:
		return "back loop only of "
	case stitch.ThirdLoop:
		return "third loop of "
	}
	return ""
}

// whereNext says which places of the row at hand are meant.
func (e *english) whereNext(in string, s spot) rich.Text {
	one, many := s.place.one, s.place.many
	switch s.reach {
	case plan.First:
		if s.n.one() || s.n.unknown() {
			return fill(in+"first {}", one)
		}
		return fill(in+"each of first {}~{}", s.n, many)
	case plan.Same:
		return fill(in+"same {}", one)
	case plan.InMarked:
		if s.marker == 0 {
			return fill(in+"marked {}", one)
		}
		return fill(in+"{} with marker~{}", one, s.marker)
	case plan.Last:
		if s.n.one() || s.n.unknown() {
			return fill(in+"last {}", one)
		}
		return fill(in+"each of last {}~{}", s.n, many)
	case plan.Next:
		if s.ref.Kind != 0 {
			return fill(in+"next {}", e.kindOf(s.ref))
		}
		if s.n.one() || s.n.unknown() {
			return fill(in+"next {}", one)
		}
		return fill(in+"each of next {}~{}", s.n, many)
	}
	return e.whereTo(in, s)
}

// whereTo says how far, for stitches in each place up to somewhere.
func (e *english) whereTo(in string, s spot) rich.Text {
	each := e.eachOne(s)
	if s.after && s.over == plan.Gap {
		each = rich.T("of them")
	}
	n, few := s.few()
	switch {
	case s.reach == plan.ToEnd && few && !s.first:
		if n == 1 {
			return fill(in+"last {}", s.place.one)
		}
		return fill(in+"each of last {}~{}", s.n, s.place.many)
	case few && n == 1:
		return fill(in+"next {}{}", s.place.one, e.upTo(s))
	case few && s.reach != plan.ToEnd:
		return fill(in+"each of next {}~{}{}", s.n, s.place.many, e.upTo(s))
	case s.after:
		return fill(in+"next {} and "+in+"each {}{}", s.place.one, each, e.howFar(s))
	}
	return fill(in+"each {}{}", each, e.howFar(s))
}

// eachOne is a place behind "each": a stitch and a space are then both meant.
func (e *english) eachOne(s spot) rich.Text {
	st, sp, ch := e.short("st").one, e.short("sp").one, e.short("ch").one
	switch s.over {
	case plan.StitchSpace:
		return fill("{} and {}", st, sp)
	case plan.StitchChain:
		return fill("{} and {}", st, ch)
	}
	return s.place.one
}

// howFar says where "each" ends: " around", " to last 3 sts".
func (e *english) howFar(s spot) rich.Text {
	if s.reach != plan.ToEnd {
		return fill(" {}", e.bound(s))
	}
	switch {
	case !s.first || s.deep > 0:
		return rich.T(" to end of " + e.rowWord(s.round).One)
	case s.round:
		return rich.T(" around")
	}
	return rich.T(" across")
}

// upTo adds the bound to a number of places, as a check.
func (e *english) upTo(s spot) rich.Text {
	if s.reach == plan.ToEnd {
		return nil
	}
	return fill(", up {}", e.bound(s))
}

// bound says where something ends: "to marker 2", "to 2 sts before marker 2".
func (e *english) bound(s spot) rich.Text {
	st := e.short("st")
	var to rich.Text
	switch s.reach {
	case plan.ToLast:
		if s.over == plan.FoundationCh {
			st = s.place
		}
		if s.last.one() || s.last.unknown() {
			return fill("to last {}", st.one)
		}
		return fill("to last {}~{}", s.last, st.many)
	case plan.ToSpace:
		return fill("to next {}", s.space.one)
	case plan.ToMark:
		switch {
		case s.marker > 0:
			to = fill("marker~{}", s.marker)
		case s.marked:
			to = fill("next marked {}", st.one)
		default:
			to = rich.T("next marker")
		}
	case plan.ToLabel:
		if to = e.run(s.ref); s.ref.Apart {
			to = fill("next {}", e.kindOf(s.ref))
		}
	case plan.ToEnd:
		return rich.T("to end of " + e.rowWord(s.round).One)
	}
	if s.before.some() {
		return fill("to {}~{} before {}", s.before, st.by(s.before), to)
	}
	return fill("to {}", to)
}

// decrease is stitches that each draw several places together. Places that are no stitches are named.
func (e *english) decrease(f noun, together int, n num, s spot) rich.Text {
	switch s.reach {
	case plan.ToEnd, plan.ToLast, plan.ToMark, plan.ToLabel, plan.ToSpace:
		return e.often(f.one, n, s)
	}
	over := s.over != plan.Stitch && s.over != plan.FoundationCh
	text := f.one
	if over {
		text = fill("{} over next {}~{}", f.one, together, s.place.many)
	}
	if n.one() || n.unknown() {
		return text
	}
	if over {
		text = fill("[{}]", text)
	}
	return fill("{} {}~times", text, n)
}

// often says how many times in all, and to where. That it goes on to the end of the row is only said where the number is not:
// beside it, it would be read as something else to do.
func (e *english) often(t rich.Text, n num, s spot) rich.Text {
	var to rich.Text
	switch s.reach {
	case plan.ToEnd:
		if n.unknown() {
			to = e.bound(s)
		}
	case plan.ToLast, plan.ToMark, plan.ToLabel, plan.ToSpace:
		to = e.bound(s)
	}
	if n.unknown() {
		return join(" ", t, to)
	}
	if n.one() { // once, and which sizes have it is said beside it
		return join(", ", t, to)
	}
	t = fill("{} {}~{}", t, n, timesOf(n, "time", "times"))
	return join(", ", t, to)
}

func timesOf(n num, one, many string) string {
	if n.one() {
		return one
	}
	return many
}

// drawn is a decrease whose legs go into places of several kinds.
func (e *english) drawn(f noun, legs rich.Text, n num) rich.Text {
	text := fill("{}: {}", f.one, legs)
	if n.one() || n.unknown() {
		return text
	}
	return fill("[{}] {}~times", text, n)
}

// unfinished is a leg of a decrease.
func (e *english) unfinished(noun) noun {
	return noun{one: rich.T("leg"), many: rich.T("legs")}
}

// spike is a stitch that goes down into an older row.
func (e *english) spike(f noun) noun {
	return noun{one: fill("spike~{}", f.one), many: fill("spike~{}", f.many)}
}

// lengthen is stitches that stand on no place.
func (e *english) lengthen(f noun, n num) rich.Text {
	st := e.short("st").one
	if n.one() || n.unknown() {
		return fill("foundation {} in base of {} just made", f.one, st)
	}
	return fill("{}~foundation {}, starting in base of {} just made", n, f.many, st)
}

func (e *english) chains(n num) rich.Text { return e.chainsBy(n) }

// chainsBy is so many chains: ch 3, or 3 ch where the trade puts the number first.
func (e *english) chainsBy(n any) rich.Text {
	ch := e.short("ch")
	if !e.numberFirst() {
		return fill("{}~{}", ch.one, n)
	}
	switch n := n.(type) {
	case int:
		return fill("{}~{}", n, nounFor(n, ch))
	case num:
		return fill("{}~{}", n, ch.by(n))
	}
	return fill("{}~{}", n, ch.many)
}

// skip passes places over.
func (e *english) skip(n num, s spot, called string) rich.Text {
	return fill(e.word("skip")+" {}{}", e.passed(n, s), e.forWhat(called))
}

func (e *english) passed(n num, s spot) rich.Text {
	switch {
	case s.reach == plan.ToEnd && n.one():
		return fill("last {}", s.place.one)
	case s.reach == plan.ToEnd && !n.unknown():
		return fill("last {}~{}", n, s.place.many)
	case s.reach == plan.ToEnd:
		return fill("each {} to end of "+e.rowWord(s.round).One, s.place.one)
	case s.reach == plan.Next && (n.one() || n.unknown()):
		return fill("next {}", s.place.one)
	case s.reach == plan.Next:
		return fill("next {}~{}", n, s.place.many)
	case n.unknown():
		return fill("each {} {}", e.eachOne(s), e.bound(s))
	}
	return fill("{}~{} {}", n, s.place.by(n), e.bound(s))
}

func (e *english) forWhat(called string) rich.Text {
	if called == "" {
		return nil
	}
	return rich.T(" for " + called)
}

func (e *english) leave(n num, called string) rich.Text {
	st := e.short("st")
	what := fill("last {}~{}", n, st.many)
	switch {
	case n.one():
		what = fill("last {}", st.one)
	case n.unknown():
		what = fill("remaining {}", st.many)
	}
	return fill("leave {} unworked{}", what, e.forWhat(called))
}

// repeat is a bracket and how often it is worked in all.
func (e *english) repeat(body rich.Text, n num, s spot) rich.Text {
	return e.often(fill("[{}]", body), n, s)
}

// inOne puts a group into one place, or into each of several.
func (e *english) inOne(body rich.Text, n num, s spot) rich.Text {
	return fill("({}) {}", body, e.where(working{at: s}))
}

// marker places, moves or removes a marker.
func (e *english) marker(do plan.Op, number int, where plan.MarkWhere) rich.Text {
	name := fill("marker~{}", number)
	if number == 0 {
		name = rich.T("marker")
	}
	if do == plan.RemoveMark {
		return fill("remove {}", name)
	}
	st := e.short("st")
	if where == plan.GapHere {
		between := fill("between last {} made and next {}", st.one, st.one)
		if do == plan.MoveMark {
			return fill("move {} up to stand {}", name, between)
		}
		return fill("place {} {}", name, between)
	}
	at := map[plan.MarkWhere]rich.Text{
		plan.LastMade:  fill("last {} made", st.one),
		plan.NextOne:   fill("next {}", st.one),
		plan.FirstOne:  fill("first of these {}", st.many),
		plan.MiddleOne: fill("middle one of these {}", st.many),
		plan.LastOne:   fill("last of these {}", st.many),
	}[where]
	if do == plan.MoveMark {
		return fill("move {} up to {}", name, at)
	}
	return fill("place {} in {}", name, at)
}

func (e *english) change(yarn string) rich.Text { return rich.T("change to " + yarn) }

func (e *english) withYarn(t rich.Text, yarn string) rich.Text { return fill("with {}, {}", yarn, t) }

func (e *english) inYarn(n num, yarn string) rich.Text { return fill("{} in {}", n, yarn) }

// slideOver is slip stitches that only carry the yarn to another place.
func (e *english) slideOver(n num, s spot) rich.Text {
	sl := e.short("slst").one
	switch {
	case len(s.into) == 0:
	case !n.some():
		return fill("{} in {} (does not count)", sl, s.into)
	case n.one():
		return fill("{} in next {} and in {} (these do not count)", sl, e.places(plan.Stitch).one, s.into)
	default:
		return fill("{} in each of next {}~{} and in {} (these do not count)", sl, n, e.places(plan.Stitch).many, s.into)
	}
	to := rich.Text(nil)
	switch s.reach {
	case plan.ToMark, plan.ToLabel, plan.ToLast, plan.ToSpace:
		to = fill(" {}", e.bound(s))
	}
	if n.one() {
		return fill("{} in next {}{} (does not count)", sl, s.place.one, to)
	}
	if n.unknown() {
		return fill("{} in each {}{} (these do not count)", sl, s.place.one, to)
	}
	return fill("{} in each of next {}~{}{} (these do not count)", sl, n, s.place.many, to)
}

func (e *english) nextOne(r named) rich.Text { return fill("next {}", e.kindOf(r)) }

func (e *english) crossing(t rich.Text, c plan.Cross) rich.Text {
	if c == plan.CrossFront {
		return fill("working in front of the stitches just made, {}", t)
	}
	return fill("working behind the stitches just made, {}", t)
}

func (e *english) called(t rich.Text, name string) rich.Text { return fill("{} ({})", t, name) }

func (e *english) whichOne(nth, of int, f noun, name string) string {
	if 2*nth == of+1 {
		return "the middle one is " + name
	}
	return "the " + e.ordinal(nth) + " of them is " + name
}

func (e *english) made(t rich.Text, name string) rich.Text { return join("", t, e.forWhat(name)) }

func (e *english) inSizes(t rich.Text, sizes []string) rich.Text {
	return fill("{} ({} {} only)", t, sizesWord(len(sizes), "size", "sizes"), e.sizeList(sizes))
}

func sizesWord(n int, one, many string) string {
	if n == 1 {
		return one
	}
	return many
}

// fromHook is the first stitch of a row in a new chain, and what follows it.
func (e *english) fromHook(f noun, h hooked, rest spot) rich.Text {
	first := fill("{} in {}~{} from hook{}", e.some(h.per, f), e.ordinal(h.nth), e.short("ch").one, e.skipped(h))
	ch := e.short("ch").one
	switch {
	case rest.n.unknown():
		return first
	case rest.reach == plan.ToEnd:
		return fill("{} and in each {} across", first, ch)
	case rest.n.one():
		return fill("{} and in next {}", first, ch)
	}
	return fill("{} and in each of next {}~{}", first, rest.n, e.short("ch").many)
}

// skipped says what the chains before the first stitch stand for.
func (e *english) skipped(h hooked) rich.Text {
	if h.skipped == 0 {
		return nil
	}
	ch, skipped := e.short("ch").one, e.word("skipped")
	switch {
	case h.counts && h.skipped == 1:
		return fill(" (the {} {} counts as first {})", skipped, ch, h.as.one)
	case h.counts:
		return fill(" (the {}~{} {} count as first {})", h.skipped, skipped, e.short("ch").many, h.as.one)
	case h.skipped == 1:
		return fill(" (the {} {} does not count as a {})", skipped, ch, e.short("st").one)
	}
	return fill(" (the {}~{} {} do not count as a {})", h.skipped, skipped, e.short("ch").many, e.short("st").one)
}

// startHook says where a row in a new chain starts that does not begin with plain stitches.
func (e *english) startHook(h hooked) rich.Text {
	return fill("starting in {}~{} from hook{}", e.ordinal(h.nth), e.short("ch").one, e.skipped(h))
}

// asMade is each stitch as it appears; posts says that there are some round posts among them.
func (e *english) asMade(s spot, posts bool) rich.Text {
	which, st := "each ", e.short("st").one
	if s.after {
		which, st = "each of the other ", e.short("st").many
	}
	t := fill("work "+which+"{}{} as it appears", st, e.asFar(s))
	if posts {
		t = fill("{}: around the post from the front where a {} stands out, around the post from the back where it lies back, plain elsewhere", t, e.short("st").one)
	}
	return t
}

// asFar says where something ends that goes to the end of the row if nothing is said.
func (e *english) asFar(s spot) rich.Text {
	switch s.reach {
	case plan.ToMark, plan.ToLabel, plan.ToLast, plan.ToSpace:
		return fill(" {}", e.bound(s))
	}
	return nil
}
