package words

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/lazy"
	"ovillo/render/rich"
)

func (s *spanish) label(round bool, first, last int) rich.Text {
	w := s.rowWord(round)
	switch {
	case first == last:
		return rich.T(upper(w.One) + tie + strconv.Itoa(first))
	case last == first+1:
		return rich.T(upper(w.Many) + tie + strconv.Itoa(first) + " y" + tie + strconv.Itoa(last))
	}
	return rich.T(upper(w.Many) + tie + strconv.Itoa(first) + " a" + tie + strconv.Itoa(last))
}

func (s *spanish) bareLabel(round, several bool) rich.Text {
	w := s.rowWord(round)
	if several {
		return rich.T(upper(w.Many))
	}
	return rich.T(upper(w.One))
}

// namedLabel heads a row that has a name: "Vuelta de división (vuelta 18)".
func (s *spanish) namedLabel(name string, label rich.Text) rich.Text {
	return rich.T(name + " (" + lower(label.String()) + ")")
}

func (s *spanish) side(wrong bool) string {
	if wrong {
		return "revés"
	}
	return "derecho"
}

// times heads rows that read the same: "3 vueltas: ".
func (s *spanish) times(n num, round bool) rich.Text {
	w := s.rowWord(round)
	return fill("{}~"+timesOf(n, w.One, w.Many)+": ", n)
}

// begin is the beginning chain, and whether it counts where that is to be said.
func (s *spanish) begin(b beginning) rich.Text {
	total, ch := b.chains+b.and, s.short("ch")
	text := fill("{}~{}", total, ch.many)
	verb := "cuentan"
	if total == 1 {
		text, verb = fill("1~{}", ch.one), "cuenta"
	}
	if !b.explain {
		return text
	}
	where := ""
	if b.throughout {
		where = ", aquí y en adelante"
	}
	switch {
	case b.and > 0 && b.counts:
		return fill("{} ("+verb+" como {} y {}~{})", text, b.as.first(), b.and, ch.one)
	case b.counts:
		return fill("{} ("+verb+" como {}"+where+")", text, b.as.first())
	}
	return fill("{} (no "+verb+" como {}"+where+")", text, s.short("st").one)
}

// beginCounts says for the whole pattern whether a beginning chain counts.
func (s *spanish) beginCounts(chains int, f noun, counts bool) rich.Text {
	ch := s.short("ch")
	what, verb := fill(ch.the(true)+" {}~{} del comienzo", chains, ch.many), "cuentan"
	if chains == 1 {
		what, verb = fill(ch.the(false)+" {} del comienzo", ch.one), "cuenta"
	}
	if counts {
		return fill("{} "+verb+" como {}", what, f.first())
	}
	return fill("{} no "+verb+" como {}", what, s.short("st").one)
}

// joinWith closes a round.
func (s *spanish) joinWith(j joining) rich.Text {
	if !j.intoChain {
		return fill("cerrar con 1~{} en {}", j.with.one, j.first.first())
	}
	nth := j.nth
	if nth == 0 {
		nth = j.chains
	}
	ch := s.short("ch")
	return fill("cerrar con 1~{} en "+ch.the(false)+" {}~{} del comienzo", j.with.one, ordinalES(nth, ch.feminine), ch.one)
}

func (s *spanish) turn() rich.Text { return rich.T("girar") }

func (s *spanish) joinYarn(yarn string) rich.Text { return rich.T("unir " + s.theYarn(yarn)) }

// readsChart says which row of a chart is worked: "leer las hileras 3 y 4 del diagrama de derecha a izquierda".
func (s *spanish) readsChart(name string, r plan.ChartRow) rich.Text {
	first, last := r.First, r.Last
	w := s.rowWord(false)
	g := noun{feminine: w.Feminine}
	rows := fill(g.the(false)+" "+w.One+"~{}", first)
	switch {
	case last == first+1 || last == first-1:
		rows = fill(g.the(true)+" "+w.Many+"~{} y~{}", first, last)
	case last != first:
		rows = fill(g.the(true)+" "+w.Many+"~{} a~{}", first, last)
	}
	chart := "del diagrama"
	if name != "" {
		chart += " «" + name + "»"
	}
	way := map[plan.Reading]string{plan.FromRight: " de derecha a izquierda", plan.FromLeft: " de izquierda a derecha"}[r.Read]
	switch {
	case r.Seam && r.Read == plan.FromRight:
		way += ", pero primero la casilla de su extremo izquierdo"
	case r.Seam && r.Read == plan.FromLeft:
		way += ", pero primero la casilla de su extremo derecho"
	}
	return fill("leer {} {}"+s.sided(way), rows, chart)
}

func (s *spanish) joinYarnIn(yarn string, place rich.Text) rich.Text {
	return fill("unir {} en {}", s.theYarn(yarn), place)
}

func (s *spanish) rowsIn(n num, yarn string, round bool) rich.Text {
	w := s.rowWord(round)
	return fill("{}~"+timesOf(n, w.One, w.Many)+" en {}", n, yarn)
}

func (s *spanish) inStripes(stripes []rich.Text) rich.Text {
	return fill("rayas: {}", join(", ", stripes...))
}

func (s *spanish) changeHook(size string) rich.Text {
	return fill("cambiar {} de {}", to(rich.T(s.expandWord("el hook"))), size)
}

func (s *spanish) marksUp(n int, on, round bool) rich.Text {
	w := s.rowWord(round)
	every := ", en " + noun{feminine: w.Feminine}.agree("todos los ", "todas las ") + w.Many + " hasta "
	switch {
	case n == 1 && on:
		return rich.T("subir el marcador al llegar a él" + every + "quitarlo")
	case n == 1:
		return rich.T("subir el marcador al llegar a él")
	case on:
		return rich.T("subir los marcadores al llegar a ellos" + every + "quitarlos")
	}
	return rich.T("subir los marcadores al llegar a ellos")
}

func (s *spanish) marksOut(numbers []int, last, round bool) rich.Text {
	when := ""
	if last {
		w := s.rowWord(round)
		n := noun{feminine: w.Feminine}
		when = "al terminar " + n.the(false) + " " + n.agree("último", "última") + " " + w.One + ", "
	}
	if len(numbers) == 1 {
		return fill(when+"quitar el marcador~{}", numbers[0])
	}
	return fill(when+"quitar los marcadores~{}", s.and(figures(numbers)))
}

// measures says how tall the part is.
func (s *spanish) measures(called string, tall rich.Text) rich.Text {
	if called == "" {
		called = "la pieza"
	}
	verb := "mide"
	if _, plural := withArticle(called); plural {
		verb = "miden"
	}
	return fill("desde su comienzo, {} "+verb+" ahora {}", called, tall)
}

// blockHead says how often some rows are worked in all.
func (s *spanish) blockHead(rows int, round bool, n num) rich.Text {
	w := s.rowWord(round)
	g := noun{feminine: w.Feminine}
	// Without a number of its own the noun would be read with the one that follows: vueltas 4.
	what := g.agree("estos ", "estas ") + w.Many + ","
	switch {
	case rows == 1:
		what = g.agree("este ", "esta ") + w.One
	case rows > 1:
		what = g.agree("estos ", "estas ") + strconv.Itoa(rows) + tie + w.Many
	}
	if n.one() && !n.gaps() {
		return rich.T("tejer " + strings.TrimSuffix(what, ","))
	}
	return fill("tejer "+what+" {}~"+timesOf(n, "vez", "veces")+" en total", n)
}

// blockTimes heads rows of a block whose number differs between sizes: "Primero, 4 (5; 6) vueltas: ".
func (s *spanish) blockTimes(first bool, n num, round bool) rich.Text {
	if first {
		return fill("primero, {}", s.times(n, round))
	}
	return fill("después, {}", s.times(n, round))
}

// blockRow heads a row of a block by its place in it: "1.ª y 2.ª vueltas: ".
func (s *spanish) blockRow(round bool, from, to int, name string) rich.Text {
	w := s.rowWord(round)
	text := ordinalES(from, w.Feminine) + tie + w.One
	switch {
	case to == from+1:
		text = ordinalES(from, w.Feminine) + " y" + tie + ordinalES(to, w.Feminine) + tie + w.Many
	case to > from:
		text = ordinalES(from, w.Feminine) + " a" + tie + ordinalES(to, w.Feminine) + tie + w.Many
	}
	if name != "" {
		text += " (" + name + ")"
	}
	return rich.T(text + ": ")
}

// likeRow is a row of a block that is worked like an earlier one of it.
func (s *spanish) likeRow(nth int, round bool) rich.Text {
	w := s.rowWord(round)
	n := noun{feminine: w.Feminine}
	return rich.T("tejer como " + n.the(false) + " " + ordinalES(nth, w.Feminine) + tie + w.One)
}

func (s *spanish) onlySizes(sizes []string) rich.Text {
	return fill("Solo {} {}", s.sizesWord(len(sizes)), s.sizeList(sizes))
}

// ageSize is a size that is named by an age.
var ageSize = lazy.Regexp(`^([0-9]+)[ \x{00a0}](años?|mes(?:es)?)$`)

// sizeList writes names of sizes: M y L; 1, 2 y 3 años, where all are ages in the same unit.
func (s *spanish) sizeList(names []string) string {
	texts := make([]rich.Text, len(names))
	short := make([]string, len(names))
	unit := ""
	for i, n := range names {
		texts[i] = rich.T(n)
		m := ageSize().FindStringSubmatch(n)
		if m == nil {
			continue
		}
		u := "años"
		if strings.HasPrefix(m[2], "mes") {
			u = "meses"
		}
		if unit == "" || unit == u {
			unit, short[i] = u, m[1]
		}
	}
	alike := len(names) > 1
	for _, n := range short {
		alike = alike && n != ""
	}
	if !alike {
		return s.and(texts).String()
	}
	for i := range texts {
		texts[i] = rich.T(short[i])
	}
	return s.and(texts).String() + tie + unit
}

// startFoundation is a start that needs no chain.
func (s *spanish) startFoundation(n num, f noun) rich.Text {
	return fill("tejer {} sin "+s.word("ch")+" base (ver Puntos especiales)", s.amount(n, f))
}

func (s *spanish) joinRing(first noun, twist bool) rich.Text {
	care := ""
	if twist {
		care = ", cuidando de no torcer la labor"
	}
	return fill("unir con 1~{} en {} para formar un anillo"+care, s.short("slst").one, first.first())
}

// joins says which side faces and which yarn is joined.
func (s *spanish) joins(y joined) string {
	side := "Con el derecho de frente, unir "
	if y.wrong {
		side = "Con el revés de frente, unir "
	}
	return side + s.theYarn(verbatim(y.name))
}

// startAlong is a part that grows along runs of others. Without a yarn to join, it says only where it goes.
func (s *spanish) startAlong(a alongText) rich.Text {
	var out rich.Text
	st := s.short("st")
	if first := a.runs[0]; a.yarn.fresh {
		switch {
		case a.round:
			out = fill(s.joins(a.yarn)+" en el 2.º~{} {}; "+st.agree("el primero", "la primera")+" es la última esquina.", st.one, of(s.along(first)))
		case first.Kind == plan.RefRowEnds:
			out = fill(s.joins(a.yarn)+" en el "+firstEnd(first.Down, "primer", "último")+" {} {}.", s.places(plan.RowEnd).one, of(s.along(first)))
		case len(a.runs) == 1 && a.skip.some():
			out = fill(s.joins(a.yarn)+" en {}, después de contar {} {}.", st.next(), s.amount(a.skip, st), of(s.whole(first)))
		case len(a.runs) == 1 && first.counted():
			out = fill(s.joins(a.yarn)+" en {}.", s.one(first.first()))
		case len(a.runs) == 1 && first.Kind == plan.RefEdge:
			out = fill(s.joins(a.yarn)+" al comienzo {}.", of(s.along(first)))
		case len(a.runs) == 1:
			out = fill(s.joins(a.yarn)+" en {}.", s.along(first))
		default:
			out = fill(s.joins(a.yarn)+" al comienzo {}.", of(s.along(first)))
		}
	}
	if bridged(a.runs) {
		return join(" ", s.bridges(a.runs), out)
	}
	if len(a.runs) == 1 && !(a.rates && a.runs[0].Kind == plan.RefRowEnds) || !a.rates && a.yarn.fresh {
		return out // the first row says the rest
	}
	texts := make([]rich.Text, len(a.runs))
	for i, r := range a.runs {
		texts[i] = s.alongRun(r)
		if a.rates && r.Kind == plan.RefRowEnds {
			texts[i] = fill("{} ({})", texts[i], s.rate(r))
		}
	}
	lead := "Tejer primero {}."
	if len(texts) == 1 {
		lead = "Tejer {}."
	}
	return join(" ", out, fill(lead, join(", luego ", texts...)))
}

// bridges joins pieces with new chains between them, one after the other.
func (s *spanish) bridges(runs []named) rich.Text {
	texts := make([]rich.Text, len(runs))
	for i, r := range runs {
		texts[i] = s.along(r)
	}
	return fill(s.expand("Tejer {ch*} para unir las piezas en este orden, con el derecho de todas de frente: {}. Unir cada {ch} con 1~{} a la pieza que sigue."),
		join(", ", texts...), s.short("slst").one)
}

// alongRun heads what is worked along one run of several.
func (s *spanish) alongRun(r named) rich.Text {
	switch r.Kind {
	case plan.RefCorner:
		return fill("en {}", s.one(r))
	case plan.RefRowEnds:
		w := s.rowWord(false)
		n := noun{feminine: w.Feminine}
		first, last := n.agree("primero", "primera"), n.agree("último", "última")
		way := firstEnd(r.Down, "de "+n.the(false)+" "+n.agree("primer", "primera")+" "+w.One+" a "+n.the(false)+" "+last,
			"de "+n.the(false)+" "+last+" "+w.One+" a "+n.the(false)+" "+first)
		return fill("por {}, "+strings.ReplaceAll(strings.ReplaceAll(way, "de el ", "del "), "a el ", "al "), s.along(r))
	}
	return fill("por {}", s.along(r))
}

// rate is how many stitches go along the ends of rows.
func (s *spanish) rate(r named) rich.Text {
	st, ends := s.short("st"), s.places(plan.RowEnd)
	total := s.amount(r.count, st)
	switch {
	case r.Rate == 0:
		return fill("{} en {}", total, s.amount(r.ends, ends))
	case r.RateRows == 1:
		return fill("{}~{} en cada extremo de hilera: {}", r.Rate, nounFor(r.Rate, st), total)
	}
	return fill("{}~{} por cada {}~{}: {}", r.Rate, nounFor(r.Rate, st), r.RateRows, ends.many, total)
}

// along is a run as the edge of a new part. A foundation is an other side by its nature.
func (s *spanish) along(r named) rich.Text {
	switch {
	case r.newChain():
		return s.chains(r.count)
	case r.Kind == plan.RefSpace && r.Below && r.count.one() && !r.count.gaps():
		ch := s.short("ch")
		return fill("el otro lado "+of(rich.T(ch.the(false))).String()+" {} {}", ch.one, of(s.whole(r)))
	case r.Kind == plan.RefSpace && r.Below && !r.count.unknown() && !r.count.plain(): // no article agrees in every size
		ch := s.term("ch")
		return fill("el otro lado "+of(rich.T(noun{feminine: ch.Feminine}.the(false)+" "+ch.One)).String()+" {} ({})", of(s.whole(r)), s.chains(r.count))
	case r.Kind == plan.RefSpace && r.Below && !r.count.unknown():
		ch := s.short("ch")
		return fill("el otro lado de "+ch.the(true)+" {}~{} {}", r.count, ch.many, of(s.whole(r)))
	}
	if r.Below && r.Kind != plan.RefFoundation {
		return fill("el otro lado {}", of(s.run(r)))
	}
	return s.run(r)
}

// startIn is a part that starts in one place.
func (s *spanish) startIn(r named, y joined) rich.Text {
	return fill(s.joins(y)+" en {}.", s.one(r))
}

func (s *spanish) level(n int) rich.Text {
	sl, st := s.short("slst").one, s.short("st")
	if n == 1 {
		return fill("1~{} en {} para nivelar el borde", sl, st.next())
	}
	return fill("1~{} en cada "+st.agree("uno de los", "una de las")+" {}~{} siguientes para nivelar el borde", sl, n, st.many)
}

func (s *spanish) closeThrough(loops string) rich.Text {
	through := map[string]string{"front": "la hebra delantera", "back": "la hebra trasera", "both": "las dos hebras"}[loops]
	return rich.T(s.expand("cortar {el yarn} dejando un cabo largo. Con {el needle}, pasar el cabo por " + through + " de cada punto de la última {round}, fruncir y rematar"))
}

// moveStart moves the start of the round to a marker.
func (s *spanish) moveStart(marker int, moved num, out bool) rich.Text {
	w := s.rowWord(true)
	text := fill("A partir de aquí, "+noun{feminine: w.Feminine}.the(true)+" "+w.Many+" comienzan en el marcador~{}", marker)
	if moved.some() {
		text = fill("{}, {} después del comienzo anterior", text, s.amount(moved, s.short("st")))
	}
	if out {
		text = fill("{}; quitar el marcador al empezar "+noun{feminine: w.Feminine}.agree("el primero", "la primera"), text)
	}
	return stopped(text)
}

func (s *spanish) nowHave(counts []rich.Text) rich.Text { return fill("ahora hay {}", s.and(counts)) }

func (s *spanish) inSection(n num, called string) rich.Text {
	return fill("{} en {}", s.amount(n, s.short("st")), called)
}

// countOff places markers along a finished row.
func (s *spanish) countOff(o counting) rich.Text {
	from := "el comienzo " + of(rich.T(s.theRow(o.round))).String()
	if o.round && !o.spiral {
		from = "el cierre"
	}
	if !o.plain {
		return s.countSteps(o, from)
	}
	var texts []rich.Text
	for i := 0; i+1 < len(o.items); i += 2 {
		c, m := o.items[i], o.items[i+1]
		text := fill("el marcador~{} tras {}", m.marker, s.amount(c.n, s.short("st")))
		if i > 0 {
			text = fill("el {} tras {} más", m.marker, c.n)
		}
		if c.called != "" {
			text = s.called(text, c.called)
		}
		texts = append(texts, text)
	}
	last := o.items[len(o.items)-1]
	rest := fill("quedan {}", s.amount(last.n, s.short("st")))
	if last.n.one() {
		rest = fill("queda {}", s.amount(last.n, s.short("st")))
	}
	if last.called != "" {
		rest = s.called(rest, last.called)
	}
	return fill("No se teje nada. Contando desde "+from+", colocar {}; {}.", join(", ", texts...), rest)
}

// countSteps places markers step by step, where they stand in stitches or two sections meet without one.
func (s *spanish) countSteps(o counting, from string) rich.Text {
	st := s.short("st")
	var texts []rich.Text
	for _, it := range o.items {
		var text rich.Text
		switch {
		case it.marker > 0 && it.inNext:
			text = fill("colocar el marcador~{} en {}", it.marker, st.next())
		case it.marker > 0:
			text = fill("colocar el marcador~{} antes {}", it.marker, of(st.next()))
		default:
			text = fill("contar {}", s.amount(it.n, st))
			if it.called != "" {
				text = s.called(text, it.called)
			}
		}
		texts = append(texts, text)
	}
	return fill("No se teje nada. Desde "+from+": {}.", join(", ", texts...))
}

func (s *spanish) handedHook(size, yarn string) rich.Text {
	hook := s.word("hook") + " de " + size
	switch {
	case yarn == "":
		return rich.T(hook)
	case size == "":
		return rich.T(yarn)
	}
	return fill("{}, {}", yarn, hook)
}

func (s *spanish) worked(from rich.Text) rich.Text { return fill("se teje desde {}", from) }

func (s *spanish) theParts(titles []rich.Text) rich.Text {
	names := make([]rich.Text, len(titles))
	for i, t := range titles {
		names[i] = fill("«{}»", t)
	}
	return fill("las piezas {}", s.and(names))
}

// goesOn is a part that goes on where the yarn hangs, over some places of the edge alone.
func (s *spanish) goesOn(r named) rich.Text {
	if p := r.place; r.called == "" && !r.count.unknown() && r.count.plain() {
		return fill("continuar solo sobre "+p.the(true)+" {}~"+p.agree("primeros", "primeras")+" {} {}", r.count, p.many, of(s.whole(r)))
	}
	return fill("continuar solo sobre {}", s.along(r))
}

func (s *spanish) makeSeveral(n int) rich.Text {
	return rich.T("hacer" + tie + strconv.Itoa(n) + " iguales")
}
