package words

import (
	"strconv"

	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// This file explains stitches in Spanish.

// takesMakes says what a stitch takes of the row below and gives the next one.
func (s *spanish) takesMakes(takes, makes, spaces int) rich.Text {
	st := s.short("st")
	if spaces > 0 {
		sp := s.spaces(exactly(1), false)
		return fill("Toma {}~{}, da {}~{} y {}~{}.", takes, st.by(exactly(takes)), makes, st.by(exactly(makes)), spaces, sp.by(exactly(spaces)))
	}
	return fill("Toma {}~{}, da~{}.", takes, st.by(exactly(takes)), makes)
}

// specialName heads an explained stitch: Punto alto en relieve por delante (pa rel del).
func (s *spanish) specialName(f stitch.Form) rich.Text {
	if s.manner.Full {
		return rich.T(s.formName(f))
	}
	return rich.T(s.formName(f) + " (" + s.form(f).one.String() + ")")
}

// overTextES is the yarn overs before the hook goes in: "2 lazadas, ".
func overTextES(n int) string {
	switch n {
	case 0:
		return ""
	case 1:
		return "lazada, "
	}
	return strconv.Itoa(n) + tie + "lazadas, "
}

// special explains a stitch: a group in one place, a decrease, a stitch round a post, or an extended one.
func (s *spanish) special(x explained) rich.Text {
	switch {
	case x.form.Group != stitch.Single:
		return s.group(x)
	case x.form.Together > 1:
		return s.together(x)
	case x.back:
		way, next := " (quien teje con la izquierda: de derecha a izquierda)", " (con la izquierda: de la izquierda)"
		if s.manner.Left {
			way, next = "", ""
		}
		return fill(s.expand(s.sided("Tejer de izquierda a derecha, sin girar")+way+s.sided(": insertar {el hook} en el punto de la derecha")+next+", lazada, sacar un bucle; lazada, pasar por 2~bucles. {}"),
			s.takesMakes(1, 1, 0))
	case x.form.Post == stitch.NoPost:
		return fill("{}, lazada, sacar un bucle; lazada, pasar por 1~bucle; terminar como "+x.extends.agree("un", "una")+" {}. {}",
			upper(overTextES(x.overs)+s.expand("insertar {el hook} en el punto")), x.extends.one, s.takesMakes(1, 1, 0))
	}
	from := "de delante hacia atrás y de nuevo hacia delante, alrededor del cuerpo del punto, que queda en relieve por delante"
	if x.form.Post == stitch.BackPost {
		from = "de atrás hacia delante y de nuevo hacia atrás, alrededor del cuerpo del punto, que queda hundido"
	}
	how := overTextES(x.overs) + s.expand("insertar {el hook} ") + from
	return fill("{}. Terminar como "+x.base.agree("un", "una")+" {}. {}", upper(how), x.base.one, s.takesMakes(1, 1, 0))
}

// leg is a stitch but for its last step. A half double crochet keeps two loops, any other stitch one. Where it holds
// brackets of its own, nested says so.
func (s *spanish) leg(x explained, insert string) (steps string, nested bool) {
	steps = overTextES(x.overs) + s.expand(insert) + ", lazada, sacar un bucle"
	if x.form.Group == stitch.Puff {
		return steps + " largo", false
	}
	if x.extended {
		steps += ", lazada, pasar por 1" + tie + "bucle"
	}
	switch {
	case x.half || x.overs == 0:
	case x.overs == 1:
		steps += ", lazada, pasar por 2" + tie + "bucles"
	default:
		return steps + ", [lazada, pasar por 2" + tie + "bucles] " + strconv.Itoa(x.overs) + tie + "veces", true
	}
	return steps, false
}

// aroundES is how the hook goes in round a post.
func aroundES(p stitch.Post) string {
	return map[stitch.Post]string{
		stitch.FrontPost: "insertar {el hook} de delante hacia atrás y de nuevo hacia delante",
		stitch.BackPost:  "insertar {el hook} de atrás hacia delante y de nuevo hacia atrás",
	}[p]
}

// together explains a decrease: each stitch but for its last step, then all of them at once.
func (s *spanish) together(x explained) rich.Text {
	n := x.form.Together
	insert := "insertar {el hook} en el siguiente punto"
	if x.form.Post != stitch.NoPost {
		insert = aroundES(x.form.Post) + " alrededor del siguiente punto"
	}
	steps, nested := s.leg(x, insert)
	if nested {
		return fill("Hacer esto {}~veces: {}. Después, lazada y pasar por los {}~bucles. {}", n, steps, x.kept(n), s.takesMakes(n, 1, 0))
	}
	return fill("[{}] {}~veces; lazada, pasar por los {}~bucles. {}", upper(steps), n, x.kept(n), s.takesMakes(n, 1, 0))
}

// group explains several stitches in one place.
func (s *spanish) group(x explained) rich.Text {
	n, one, ch := x.form.Of, x.single, s.short("ch")
	in, insert := "en el mismo lugar", "insertar {el hook}"
	if x.form.Post != stitch.NoPost {
		in, insert = "alrededor del mismo punto", aroundES(x.form.Post)
	}
	makes, spaces := x.form.Makes()
	made := s.takesMakes(x.form.Takes(), makes, spaces)
	switch x.form.Group {
	case stitch.CrossFront, stitch.CrossBack:
		past := map[stitch.Group]string{stitch.CrossFront: "por delante", stitch.CrossBack: "por detrás"}[x.form.Group]
		st := s.short("st")
		next, skipped, those := st.next(), fill(st.the(false)+" {} "+skippedWord(st, false), st.one), "de este punto"
		if n > 2 {
			next, skipped, those = st.eachNext(exactly(n/2)), st.eachOf(exactly(n/2), "", skippedWord(st, true)), "de estos puntos"
		}
		return fill(upper(s.word("skip"))+" {}, 1~{} en {}; "+past+" "+those+", 1~{} en {}. {}", s.passed(exactly(n/2), spot{place: st}), one.one, next, one.one, skipped, made)
	case stitch.Shell:
		return fill("{}~{} "+in+". {}", n, one.many, made)
	case stitch.Vee:
		return fill("(1~{}, 1~{}, 1~{}) "+in+". {}", one.one, ch.one, one.one, made)
	case stitch.Picot:
		return fill("{}~{}, 1~{} en {}. Va sobre el punto anterior: no toma ningún punto y no se cuenta.",
			n, ch.many, s.short("slst").one, s.hookChain(n))
	case stitch.Popcorn:
		first := one.agree("el primero de estos", "la primera de estas")
		return fill("{}~{} "+in+s.expand("; soltar el bucle, insertar {el hook} de delante hacia atrás en ")+first+
			" {}~{}, tomar de nuevo el bucle y pasarlo (en una hilera del revés, insertar de atrás hacia delante). {}", n, one.many, n, one.many, made)
	}
	steps, nested := s.leg(x, insert)
	text := fill("Todo "+in+": [{}] {}~veces; lazada, pasar por los {}~bucles. ", steps, n, x.kept(n))
	if nested {
		text = fill("Todo "+in+", hacer esto {}~veces: {}. Después, lazada y pasar por los {}~bucles. ", n, steps, x.kept(n))
	}
	if x.form.Group == stitch.Bobble {
		text = fill("{}El relieve queda por detrás: empujarlo hacia el derecho. ", text)
	}
	return fill("{}{}", text, made)
}

// spikeSpecial explains a stitch that goes down into an older row.
func (s *spanish) spikeSpecial(spike, f noun) (head, text rich.Text) {
	return spike.one, fill(s.expand("Insertar {el hook} tantas hileras o vueltas más abajo como se indica y sacar un bucle hasta la altura de la labor, para que el tejido no se frunza; terminar como ")+f.agree("un", "una")+
		" {}. El punto que queda encima de ese lugar no se teje: el punto alargado lo cubre. {}", f.one, s.takesMakes(1, 1, 0))
}

// foundationSpecial explains stitches that make their own chain, from a new start or on from a row.
func (s *spanish) foundationSpecial(x explained, goesOn bool) (head, text rich.Text) {
	ch, chain := s.short("ch"), s.word("ch")
	head = fill("{} sin "+chain+" base", x.base.one)
	over := overTextES(x.overs)
	if goesOn {
		head = fill("{} a continuación de un punto", head)
		return head, fill("Primer punto: "+over+s.expand("insertar {el hook} en la base del punto recién tejido")+", lazada, sacar un bucle; lazada, pasar por 1~bucle (es la "+chain+
			" del punto); terminar como "+x.base.agree("un", "una")+" {}. Puntos siguientes: "+over+s.expand("insertar {el hook} en la "+chain+" del punto anterior y seguir igual. Cada uno hace su propia "+chain+" y da 1~punto."),
			x.base.one)
	}
	text = fill("Primer punto: {}~{}, "+over+s.expand("insertar {el hook} en {}")+", lazada, sacar un bucle; lazada, pasar por 1~bucle (es la "+chain+
		" del punto); terminar como "+x.base.agree("un", "una")+" {}. Puntos siguientes: "+over+s.expand("insertar {el hook} en la "+chain+" del punto anterior y seguir igual. Cada uno hace su propia "+chain+" y da 1~punto."),
		x.start, ch.many, s.hookChain(x.start), x.base.one)
	return head, text
}
