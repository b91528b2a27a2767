package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// work is stitches and where they go: "2 pa en cada uno de los 3 p siguientes".
func (s *spanish) work(w working) rich.Text {
	st := s.amount(w.per, w.form)
	if w.per.one() {
		st = fill("1~{}", w.form.one)
	}
	if w.at.reach == nowhere {
		return st
	}
	if s.uneven(w.at) {
		return s.perPlace(st, w)
	}
	return s.dressed(fill("{} en {}", st, s.where(w.at)), w)
}

// uneven reports whether the places are a list of sizes of which one has a single place or none: the article of "cada uno
// de los" would not agree with it.
func (s *spanish) uneven(at spot) bool {
	switch at.reach {
	case plan.Next, plan.Last, plan.First:
		return at.ref.Kind == 0 && at.n.list && !at.n.plain() && !at.n.one()
	case plan.ThroughBoth, plan.NextOf:
		return at.n.list && !at.n.plain() && !at.n.one()
	}
	return false
}

// perPlace says one in each place without an article: "1 pb por p en 1 (2; 3) p".
func (s *spanish) perPlace(st rich.Text, w working) rich.Text {
	at := w.at
	text := s.dressed(fill("{} por {} en {}~{}", st, at.place.head(), at.n, at.place.many), w)
	switch at.reach {
	case plan.Last:
		return fill("{}, {}", text, s.bound(spot{reach: plan.ToEnd, round: at.round}))
	case plan.NextOf:
		return fill("{} {}", text, of(s.run(at.ref)))
	case plan.ThroughBoth:
		r := at.ref
		match := fill(r.place.the(false)+" {} correspondiente {}", r.place.one, of(s.run(r)))
		return fill("{}, tomando las dos capas, cada "+at.place.agree("uno", "una")+" junto con {}", text, match)
	}
	return text
}

// dressed adds the loops and the depth to a stitch and its place.
func (s *spanish) dressed(t rich.Text, w working) rich.Text {
	switch w.loop {
	case stitch.FrontLoop:
		t = fill("{}, solo por la hebra delantera", t)
	case stitch.BackLoop:
		t = fill("{}, solo por la hebra trasera", t)
	case stitch.ThirdLoop:
		t = fill("{}, por la tercera hebra", t)
	}
	if w.at.over == plan.ChainFromBack {
		t = fill("por el otro lado de la "+s.word("ch")+", {}", t)
	}
	return t
}

// theRow is la vuelta or la hilera.
func (s *spanish) theRow(round bool) string {
	t := s.rowWord(round)
	return noun{feminine: t.Feminine}.the(false) + " " + t.One
}

// where says into which places stitches go, without "en".
func (s *spanish) where(at spot) rich.Text {
	p := at.place
	switch at.reach {
	case plan.InRing:
		return rich.T("el anillo")
	case plan.InGapHere:
		return fill("el espacio antes {}", of(s.places(plan.Stitch).next()))
	case plan.At, plan.BelowOf, plan.BesideOf, plan.NextOf, plan.ThroughBoth:
		return s.whereNamed(at)
	case plan.First:
		if at.n.one() || at.n.unknown() {
			return p.first()
		}
		return p.eachFirst(at.n)
	case plan.Same:
		return fill(p.agree("el mismo", "la misma")+" {}", p.one)
	case plan.InMarked:
		if at.marker == 0 {
			return fill(p.the(false)+" {} "+p.agree("marcado", "marcada"), p.one)
		}
		return fill(p.the(false)+" {} con el marcador~{}", p.one, at.marker)
	case plan.Last:
		if at.n.one() || at.n.unknown() {
			return p.last()
		}
		return p.eachLast(at.n)
	case plan.Next:
		if at.ref.Kind != 0 {
			return s.kindOf(at.ref)
		}
		if at.n.one() || at.n.unknown() {
			return p.next()
		}
		return p.eachNext(at.n)
	}
	return s.whereTo(at)
}

// whereTo says how far, for stitches in each place up to somewhere.
func (s *spanish) whereTo(at spot) rich.Text {
	p := at.place
	n, few := at.few()
	switch {
	case at.reach == plan.ToEnd && few && !at.first && n == 1:
		return p.last()
	case at.reach == plan.ToEnd && few && !at.first:
		return p.eachLast(at.n)
	case few && n == 1:
		return fill("{}{}", p.next(), s.upTo(at))
	case few && at.reach != plan.ToEnd:
		return fill("{}{}", p.eachNext(at.n), s.upTo(at))
	case at.after && at.over == plan.Gap:
		return fill("{} y en cada "+p.agree("uno", "una")+" {}", p.next(), s.bound(at))
	case at.after && at.reach != plan.ToEnd && !p.compound():
		return fill("cada {} siguiente {}", p.one, s.bound(at))
	case at.after:
		return fill("{} y en {} {}", p.next(), s.each(at), s.bound(at))
	}
	return fill("{} {}", s.each(at), s.bound(at))
}

// each is every place: "cada p", "cada p y en cada esp".
func (s *spanish) each(at spot) rich.Text {
	st, sp, ch := s.short("st").one, s.short("sp").one, s.short("ch").one
	switch at.over {
	case plan.StitchSpace:
		return fill("cada {} y en cada {}", st, sp)
	case plan.StitchChain:
		return fill("cada {} y en cada {}", st, ch)
	}
	return fill("cada {}", at.place.one)
}

// upTo adds the bound to a number of places, as a check.
func (s *spanish) upTo(at spot) rich.Text {
	if at.reach == plan.ToEnd {
		return nil
	}
	return fill(", {}", s.bound(at))
}

// bound says where something ends: "hasta el marcador 2", "hasta que queden 3 p".
func (s *spanish) bound(at spot) rich.Text {
	st := s.short("st")
	var end rich.Text
	switch at.reach {
	case plan.ToEnd:
		return rich.T("hasta el final " + of(rich.T(s.theRow(at.round))).String())
	case plan.ToLast:
		if at.over == plan.FoundationCh {
			st = at.place
		}
		if at.last.one() || at.last.unknown() {
			return fill("hasta que quede 1~{}", st.one)
		}
		return fill("hasta que queden {}~{}", at.last, st.many)
	case plan.ToSpace:
		return fill("hasta {}", at.space.next())
	case plan.ToMark:
		switch {
		case at.marker > 0:
			end = fill("el marcador~{}", at.marker)
		case at.marked:
			end = fill("el siguiente {} marcado", s.places(plan.Stitch).one)
		default:
			end = rich.T("el siguiente marcador")
		}
	case plan.ToLabel:
		if end = s.run(at.ref); at.ref.Apart {
			end = s.kindOf(at.ref)
		}
	}
	if at.before.some() {
		return fill("hasta {}~{} antes {}", at.before, st.by(at.before), of(end))
	}
	return fill("hasta {}", end)
}

// decrease is stitches that each draw several places together. Places that are no stitches are named.
func (s *spanish) decrease(f noun, together int, n num, at spot) rich.Text {
	switch at.reach {
	case plan.ToEnd, plan.ToLast, plan.ToMark, plan.ToLabel, plan.ToSpace:
		return s.often(f.one, n, at)
	}
	over := at.over != plan.Stitch && at.over != plan.FoundationCh
	text := f.one
	if over {
		text = fill("{} en "+at.place.the(true)+" siguientes {}~{}", f.one, together, at.place.many)
	}
	if n.one() || n.unknown() {
		return text
	}
	if over {
		text = fill("[{}]", text)
	}
	return fill("{} {}~veces", text, n)
}

// often says how many times in all, and to where. That it goes on to the end of the row is only said where the number is not:
// beside it, it would be read as something else to do.
func (s *spanish) often(t rich.Text, n num, at spot) rich.Text {
	var end rich.Text
	switch at.reach {
	case plan.ToEnd:
		if n.unknown() {
			end = s.bound(at)
		}
	case plan.ToLast, plan.ToMark, plan.ToLabel, plan.ToSpace:
		end = s.bound(at)
	}
	if n.unknown() {
		return join(" ", t, end)
	}
	if n.one() { // once, and which sizes have it is said beside it
		return join(", ", t, end)
	}
	return join(", ", fill("{} {}~"+timesOf(n, "vez", "veces"), t, n), end)
}

// drawn is a decrease whose legs go into places of several kinds.
func (s *spanish) drawn(f noun, legs rich.Text, n num) rich.Text {
	text := fill("{}: {}", f.one, legs)
	if n.one() || n.unknown() {
		return text
	}
	return fill("[{}] {}~veces", text, n)
}

// unfinished is a leg of a decrease: a stitch that is not closed.
func (s *spanish) unfinished(f noun) noun {
	return noun{one: fill("{} sin~cerrar", f.one), many: fill("{} sin~cerrar", f.many), feminine: f.feminine}
}

// spike is a stitch that goes down into an older row.
func (s *spanish) spike(f noun) noun {
	return noun{one: fill("{} "+f.agree("alargado", "alargada"), f.one), many: fill("{} "+f.agree("alargados", "alargadas"), f.many), feminine: f.feminine}
}

// lengthen is stitches that stand on no place.
func (s *spanish) lengthen(f noun, n num) rich.Text {
	base := " sin~" + s.word("ch") + "~base"
	st := s.short("st")
	last := fill("la base {}", of(st.last()))
	if n.one() || n.unknown() {
		return fill("1~{}"+base+" en {}", f.one, last)
	}
	return fill("{}~{}"+base+", comenzando en {}", n, f.many, last)
}

func (s *spanish) chains(n num) rich.Text { return s.amount(n, s.short("ch")) }

// skip passes places over.
func (s *spanish) skip(n num, at spot, called string) rich.Text {
	text := fill(s.word("skip")+" {}", s.passed(n, at))
	if called != "" {
		return s.called(text, called)
	}
	return text
}

func (s *spanish) passed(n num, at spot) rich.Text {
	p := at.place
	switch {
	case at.reach == plan.ToEnd && n.one():
		return p.last()
	case at.reach == plan.ToEnd && !n.unknown() && n.plain():
		return fill(p.the(true)+" {}~"+p.agree("últimos", "últimas")+" {}", n, p.many)
	case at.reach == plan.Next && (n.one() || n.unknown()):
		return p.next()
	case at.reach == plan.Next && n.plain() && !p.compound():
		return fill(p.the(true)+" {}~{} siguientes", n, p.many)
	case at.reach == plan.Next:
		return fill("{}~{}", n, p.many)
	case n.unknown():
		return fill("{} {}", s.each(at), s.bound(at))
	}
	return fill("{}~{} {}", n, p.by(n), s.bound(at))
}

func (s *spanish) forWhat(called string) rich.Text {
	if called == "" {
		return nil
	}
	return rich.T(" para " + called)
}

func (s *spanish) leave(n num, called string) rich.Text {
	st := s.short("st")
	what := fill("sin tejer {}~{} al final", n, st.many)
	switch {
	case n.unknown():
		what = fill("sin tejer "+st.the(true)+" {} restantes", st.many)
	case n.one():
		what = fill("sin tejer {}", st.last())
	case n.plain():
		what = fill("sin tejer "+st.the(true)+" {}~"+st.agree("últimos", "últimas")+" {}", n, st.many)
	}
	return fill("dejar {}{}", what, s.forWhat(called))
}

// repeat is a bracket and how often it is worked in all.
func (s *spanish) repeat(body rich.Text, n num, at spot) rich.Text {
	return s.often(fill("[{}]", body), n, at)
}

// inOne puts a group into one place, or into each of several.
func (s *spanish) inOne(body rich.Text, n num, at spot) rich.Text {
	group := fill("({})", body)
	if s.uneven(at) {
		return s.perPlace(group, working{at: at})
	}
	return s.dressed(fill("{} en {}", group, s.where(at)), working{at: at})
}

// marker places, moves or removes a marker.
func (s *spanish) marker(do plan.Op, number int, where plan.MarkWhere) rich.Text {
	name := fill("el marcador~{}", number)
	if number == 0 {
		name = rich.T("el marcador")
	}
	if do == plan.RemoveMark {
		return fill("quitar {}", name)
	}
	st := s.short("st")
	done := st.agree("tejido", "tejida")
	at := map[plan.MarkWhere]rich.Text{
		plan.LastMade:  fill("{} "+done, st.last()),
		plan.NextOne:   st.next(),
		plan.GapHere:   fill("el espacio entre {} "+done+" y "+st.the(false)+" siguiente", st.last()),
		plan.FirstOne:  fill(st.agree("el primero de estos", "la primera de estas")+" {}", st.many),
		plan.MiddleOne: fill(st.agree("el del medio de estos", "la del medio de estas")+" {}", st.many),
		plan.LastOne:   fill(st.agree("el último de estos", "la última de estas")+" {}", st.many),
	}[where]
	if do == plan.MoveMark {
		return fill("subir {} {}", name, to(at))
	}
	return fill("colocar {} en {}", name, at)
}

func (s *spanish) change(yarn string) rich.Text {
	return rich.T("cambiar " + to(rich.T(s.theYarn(yarn))).String())
}

func (s *spanish) withYarn(t rich.Text, yarn string) rich.Text {
	return fill("con {}, {}", s.theYarn(yarn), t)
}

func (s *spanish) inYarn(n num, yarn string) rich.Text { return fill("{} en {}", n, yarn) }

// slideOver is slip stitches that only carry the yarn to another place.
func (s *spanish) slideOver(n num, at spot) rich.Text {
	sl := s.short("slst").one
	end := rich.Text(nil)
	switch at.reach {
	case plan.ToMark, plan.ToLabel, plan.ToLast, plan.ToSpace:
		end = fill(" {}", s.bound(at))
	}
	at.place = s.places(plan.Stitch)
	switch {
	case len(at.into) > 0 && !n.some():
		return fill("1~{} en {} (no cuenta)", sl, at.into)
	case len(at.into) > 0 && n.one():
		return fill("1~{} en {} y en {} (no cuentan)", sl, at.place.next(), at.into)
	case len(at.into) > 0 && !n.plain():
		return fill("1~{} por {} en {}~{} y 1~{} en {} (no cuentan)", sl, at.place.one, n, at.place.many, sl, at.into)
	case len(at.into) > 0:
		return fill("1~{} en {} y en {} (no cuentan)", sl, at.place.eachNext(n), at.into)
	case n.one():
		return fill("1~{} en {}{} (no cuenta)", sl, at.place.next(), end)
	case n.unknown():
		return fill("1~{} en cada {}{} (no cuentan)", sl, at.place.one, end)
	case !n.plain():
		return fill("1~{} por {} en {}~{}{} (no cuentan)", sl, at.place.one, n, at.place.many, end)
	}
	return fill("1~{} en {}{} (no cuentan)", sl, at.place.eachNext(n), end)
}

func (s *spanish) nextOne(r named) rich.Text { return s.kindOf(r) }

func (s *spanish) crossing(t rich.Text, c plan.Cross) rich.Text {
	if c == plan.CrossFront {
		return fill("por delante de los puntos recién tejidos, {}", t)
	}
	return fill("por detrás de los puntos recién tejidos, {}", t)
}

func (s *spanish) called(t rich.Text, name string) rich.Text { return fill("{} ({})", t, name) }

func (s *spanish) whichOne(nth, of int, f noun, name string) string {
	if 2*nth == of+1 {
		return f.agree("el del medio", "la del medio") + " es " + name
	}
	return f.the(false) + " " + ordinalES(nth, f.feminine) + " es " + name
}

func (s *spanish) made(t rich.Text, name string) rich.Text { return join("", t, s.forWhat(name)) }

func (s *spanish) inSizes(t rich.Text, sizes []string) rich.Text {
	return fill("{} (solo {} {})", t, s.sizesWord(len(sizes)), s.sizeList(sizes))
}

// sizesWord is talla or tallas.
func (s *spanish) sizesWord(n int) string {
	if n == 1 {
		return s.term("size").One
	}
	return s.term("size").Many
}

// fromHook is the first stitch of a row in a new chain, and what follows it.
func (s *spanish) fromHook(f noun, h hooked, rest spot) rich.Text {
	ch := s.short("ch")
	first := fill("{} en {}{}", s.amount(h.per, f), s.hookChain(h.nth), s.skipped(h))
	switch {
	case rest.n.unknown():
		return first
	case rest.reach == plan.ToEnd:
		return fill("{} y en cada {} {}", first, ch.one, s.bound(spot{reach: plan.ToEnd, round: rest.round}))
	case rest.n.one():
		return fill("{} y en {}", first, ch.next())
	case rest.n.plain():
		return fill("{} y en {}", first, ch.eachNext(rest.n))
	}
	return fill("{}, {} por {} en {}~{}", first, s.amount(h.per, f), ch.one, rest.n, ch.many)
}

// hookChain is "la 4.ª cad desde el ganchillo".
func (s *spanish) hookChain(nth int) rich.Text {
	ch := s.short("ch")
	return fill(ch.the(false)+" {}~{} desde "+s.expandWord("el hook"), ordinalES(nth, ch.feminine), ch.one)
}

// skipped says what the chains before the first stitch stand for.
func (s *spanish) skipped(h hooked) rich.Text {
	if h.skipped == 0 {
		return nil
	}
	ch := s.short("ch")
	what := fill(ch.the(true)+" {}~{} "+ch.agree("saltados", "saltadas"), h.skipped, ch.many)
	verb := "cuentan"
	if h.skipped == 1 {
		what, verb = fill(ch.the(false)+" {} "+ch.agree("saltado", "saltada"), ch.one), "cuenta"
	}
	if h.counts {
		return fill(" ({} "+verb+" como {})", what, h.as.first())
	}
	return fill(" ({} no "+verb+" como {})", what, s.short("st").one)
}

// startHook says where a row in a new chain starts that does not begin with plain stitches.
func (s *spanish) startHook(h hooked) rich.Text {
	return fill("comenzando en {}{}", s.hookChain(h.nth), s.skipped(h))
}

// asMade is each stitch as it presents; posts says that there are some round posts among them.
func (s *spanish) asMade(at spot, posts bool) rich.Text {
	st := s.short("st").one
	what := fill("cada {}", st)
	if at.after {
		what = fill("cada uno de los demás {}", s.short("st").many)
	}
	switch at.reach {
	case plan.ToMark, plan.ToLabel, plan.ToLast, plan.ToSpace:
		what = fill("{} {}", what, s.bound(at))
	}
	t := fill("tejer {} como se presenta", what)
	if posts {
		t = fill("{}: en relieve por delante donde el {} sobresale, en relieve por detrás donde queda hundido, y normal en los demás", t, st)
	}
	return t
}
