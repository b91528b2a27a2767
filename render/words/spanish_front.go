package words

import (
	"strconv"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// span is from the smallest to the largest: 56 a 62 cm.
func (s *spanish) span(lo, hi, unit string) string {
	if lo == hi {
		return lo + tie + unit
	}
	return lo + " a " + hi + tie + unit
}

// balls says how many balls are needed: 3 o 4 ovillos en 2 colores.
func (s *spanish) balls(lo, hi, yarns int) rich.Text {
	text := s.counted(lo, "ball")
	switch {
	case hi == lo+1:
		text = strconv.Itoa(lo) + " " + orWord(hi) + tie + s.counted(hi, "ball")
	case hi > lo:
		text = strconv.Itoa(lo) + " a " + s.counted(hi, "ball")
	}
	if yarns > 1 {
		text += " en " + s.counted(yarns, "color")
	}
	return rich.T(text)
}

func (s *spanish) gauge(sts, rows string, name rich.Text, round bool) rich.Text {
	if rows == "" {
		return fill("{}~{}", sts, name)
	}
	return fill("{}~{} y {}~"+numbered(rows, s.rowWord(round)), sts, name, rows)
}

func (s *spanish) stsOf(pattern string) noun {
	st := s.short("st")
	return noun{one: fill("{} en {}", st.one, pattern), many: fill("{} en {}", st.many, pattern)}
}

func (s *spanish) repeatsOf(pattern string) noun {
	return noun{one: fill("repetición de {}", pattern), many: fill("repeticiones de {}", pattern), feminine: true}
}

func (s *spanish) hooksFor(size string, parts rich.Text) rich.Text {
	if len(parts) == 0 {
		return rich.T(size)
	}
	return fill("{} para {}", size, parts)
}

func (s *spanish) markers(n int) rich.Text { return rich.T(s.counted(n, "marker")) }

func (s *spanish) buttonsNeeded(n num, size, material string) rich.Text {
	of := spanishMaterial[material]
	return fill("{}~"+timesOf(n, "botón"+of, "botones"+of)+" de {}", n, size)
}

// spanishMaterial says what a button is made of, behind the noun.
var spanishMaterial = map[string]string{"plastic": " de plástico", "wood": " de madera", "metal": " de metal", "glass": " de vidrio", "cloth": " de tela",
	"leather": " de cuero", "horn": " de asta", "bone": " de hueso", "shell": " de nácar", "feather": " de pluma", "fur": " de pelo"}

func (s *spanish) around(name string) string { return name + ", contorno" }

// ease heads the ease at a measure; the table of names knows its article.
func (s *spanish) ease(body string) string {
	ease := upper(s.word("ease"))
	for _, name := range spanishBody {
		if s.bare(s.expand(name)) == body {
			return ease + " en " + name
		}
	}
	return ease + ": " + body
}

var spanishMonths = [...]string{"enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre", "diciembre"}

// edition is the edition and its month.
func (s *spanish) edition(n int, year, month int) string {
	date := ""
	switch {
	case year > 0 && month > 0:
		date = spanishMonths[month-1] + " de " + strconv.Itoa(year)
	case year > 0:
		date = strconv.Itoa(year)
	}
	switch {
	case n == 0:
		return upper(date)
	case date == "":
		return "Edición " + strconv.Itoa(n)
	}
	return "Edición " + strconv.Itoa(n) + ", " + date
}

func (s *spanish) sew(a, b []named, m plan.Match, eased rich.Text) rich.Text {
	first, second := make([]rich.Text, len(a)), make([]rich.Text, len(b))
	for i, r := range a {
		first[i] = s.run(r)
	}
	for i, r := range b {
		second[i] = to(s.run(r))
	}
	text := fill("coser {} {}", s.and(first), s.and(second))
	if m.Rows > 0 {
		text = fill("{}, {}~{} por cada {}~{}", text, m.Stitches, nounFor(m.Stitches, s.short("st")), m.Rows, nounFor(m.Rows, s.places(plan.RowEnd)))
	}
	if eased != nil {
		text = fill("{}; embeber unos {} del borde más largo", text, eased)
	}
	return text
}

// cord makes a cord, threads it and finishes it.
func (s *spanish) cord(c cord) []rich.Text {
	it := rich.T("el cordón")
	var out []rich.Text
	if c.worked {
		it = s.run(c.part)
	} else {
		out = s.cordMade(c)
	}
	if c.threads {
		through := fill("pasarlo por {}", s.run(c.through))
		if c.worked {
			through = fill("pasar {} por {}", it, s.run(c.through))
		}
		if c.free != nil {
			through = fill("{} de modo que los dos extremos queden iguales: con la pieza abierta, cada uno mide {}", through, c.free)
		}
		out = append(out, through)
	}
	if text := s.cordEnds(c.ends, c.threads); text != "" {
		out = append(out, fill(text, of(it)))
	}
	if c.fixed {
		out = append(out, fill("coser {} al tejido a igual distancia de cada extremo, para que no se pueda sacar", it))
	}
	if c.inside {
		out = append(out, fill("con la pieza abrochada, {} no asoma", it))
	}
	if len(out) == 0 { // of a part that is a cord, nothing else is said
		out = append(out, s.cordSpared(it, c.ends == plan.NoEnds))
	}
	return out
}

// cordSpared is what a maker sees to in a part that is a cord, where nothing is done to it.
func (s *spanish) cordSpared(it rich.Text, endless bool) rich.Text {
	if endless {
		return fill("no dejar ningún extremo suelto en {}", it)
	}
	return fill("tirar con fuerza {} para probar si aguanta", of(it))
}

// cordMade is a cord of chains with slip stitches on them.
func (s *spanish) cordMade(c cord) []rich.Text {
	ch, sl := s.short("ch").one, s.short("slst").one
	with := "cordón: "
	if c.yarn != "" {
		with += "con " + s.theYarn(c.yarn) + ", "
	}
	back := fill("1~{} en {} y en cada {} hasta el final", sl, s.hookChain(2), ch)
	off := rich.T(s.line(fastenOff))
	length := c.length
	if c.known {
		if c.width != nil {
			length = fill("{} y tiene {} de ancho", length, c.width)
		}
		return []rich.Text{fill(with+"{}; {}", s.chains(c.chains), back), off, fill("el cordón mide {}", length)}
	}
	if c.width != nil {
		length = fill("{} y tenga {} de ancho", length, c.width)
	}
	return []rich.Text{fill(with+"tejer una "+s.word("ch")+" que mida {}; {}", length, back), off}
}

// cordEnds says how the ends of a cord are finished; {} is of the cord. One without ends that runs through nothing needs no word.
func (s *spanish) cordEnds(ends plan.Ends, threads bool) string {
	switch ends {
	case plan.EndsPlain:
		return "rematar los extremos {} sin nudos"
	case plan.EndsKnotted:
		return "hacer un nudo en cada extremo {}"
	case plan.EndsBeads:
		return "coser con firmeza una cuenta en cada extremo {}"
	case plan.EndsPompoms:
		return "coser con firmeza un pompón en cada extremo {}"
	case plan.EndsTassels:
		return "coser con firmeza una borla en cada extremo {}"
	case plan.EndsToggles:
		return "poner un tope en cada extremo {}"
	case plan.NoEnds:
		if threads {
			return "coser entre sí los dos extremos {}"
		}
	}
	return ""
}

// fringe cuts strands and knots them into an edge.
func (s *spanish) fringe(f fringe) []rich.Text {
	edges := make([]rich.Text, len(f.along))
	for i, r := range f.along {
		edges[i] = s.run(r)
	}
	cut := fill("cortar hebras de {}", f.cut)
	if f.known {
		cut = fill("cortar {}~"+timesOf(f.strands, "hebra", "hebras")+" de {}", f.strands, f.cut)
	}
	if f.yarn != "" {
		cut = fill("con {}, {}", s.theYarn(f.yarn), cut)
	}
	fold := rich.T("en cada lugar de ese borde, doblar una hebra por la mitad, sacar el doblez por el tejido con el ganchillo, pasar los cabos por él y apretar")
	if f.bundle > 1 {
		fold = fill("en cada lugar de ese borde, doblar {} hebras juntas por la mitad, sacar el doblez por el tejido con el ganchillo, pasar los cabos por él y apretar", f.bundle)
	}
	return []rich.Text{fill("fleco en {}: {}", s.and(edges), cut), fold, fill("igualar el fleco a {}", f.length)}
}

func (s *spanish) elastic(k elastic) []rich.Text {
	return []rich.Text{
		fill("cortar {} de "+s.word("elastic")+" de {} de ancho", k.length, k.width),
		fill("pasarla por {} sin torcerla y coser un extremo sobre el otro", s.run(k.through)),
	}
}

func (s *spanish) elasticNeeded(width, length rich.Text) rich.Text {
	return fill("{} de "+s.word("elastic")+" de {} de ancho", length, width)
}

func (s *spanish) pompom(k pompom) rich.Text {
	with := rich.Text(nil)
	switch {
	case k.takes != nil && k.yarn == "":
		with = fill("con unos {} de "+s.word("yarn")+", ", k.takes)
	case k.takes != nil:
		with = fill("con unos {} {}, ", k.takes, of(rich.T(s.theYarn(k.yarn))))
	case k.yarn != "":
		with = fill("con {}, ", s.theYarn(k.yarn))
	}
	if k.wraps == 0 {
		return fill("{}hacer un pompón de {} y coserlo", with, k.across)
	}
	return fill("{}hacer un pompón de {}: enrollar {}~veces en un cartón de ese ancho, atar, cortar y emparejar. Coserlo", with, k.across, k.wraps)
}

func (s *spanish) buttons(n num, size, material string) rich.Text {
	return fill("coser {}", s.buttonsNeeded(n, size, material))
}
