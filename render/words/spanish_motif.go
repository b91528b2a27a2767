package words

import "ovillo/render/rich"

func (s *spanish) makeMotifs(n num) rich.Text {
	row := s.rowWord(true)
	last := noun{feminine: row.Feminine}.agree("el último ", "la última ") + row.One
	return fill("hacer {}~"+timesOf(n, "motivo", "motivos")+", unidos entre sí en "+last, n)
}

func (s *spanish) motifs(g laid) rich.Text {
	return fill("{}~"+timesOf(g.n, "motivo", "motivos")+", {} a lo ancho y {} a lo largo, unidos mientras se tejen", g.n, g.across, g.down)
}

func (s *spanish) layMotifs(g laid) rich.Text {
	if !g.many {
		return rich.T("Hay un solo motivo y nada a lo que unirlo.")
	}
	order := "fila por fila desde arriba y cada fila desde la izquierda"
	switch {
	case g.across.one():
		order = "de arriba abajo"
	case g.down.one():
		order = "de izquierda a derecha"
	}
	row := s.rowWord(true)
	n := noun{feminine: row.Feminine}
	last, its := n.agree("el último ", "la última ")+row.One, n.agree("este", "esta")
	text := "Tejer los motivos uno tras otro en el orden de sus números, " + s.sided(order) + ". Tejer cada uno hasta " + last + " como está escrito. " +
		"En " + its + ", con el derecho de frente, unirlo a los motivos que ya están a su lado, sosteniendo la labor de modo que los " +
		"lados que se unen sean los primeros."
	if g.crossed {
		text += " Donde ya se juntan esquinas, unir a la esquina que queda en diagonal."
	}
	all := fill("En total hay {}~"+timesOf(g.shared, "lado común", "lados comunes")+" y {}~"+timesOf(g.joins, "unión", "uniones"), g.shared, g.joins)
	switch {
	case g.sides && g.corners:
		all = fill("{}: {}~en los "+s.short("sp").many.String()+" de los lados y {}~en las esquinas.", all, g.atSides, g.atCorners)
	default:
		all = fill("{}, todas en las esquinas.", all)
	}
	return join(" ", rich.T(text), all)
}

func (s *spanish) motifSize(side rich.Text) rich.Text { return fill("1~motivo = {} de lado", side) }

func (s *spanish) whichMotifs(n num, sides int, rest bool) rich.Text {
	which := ", el primero"
	switch {
	case sides == 2 || rest:
		which = ": todos los demás"
		if n.one() {
			which = ": el que queda"
		}
	case sides == 1:
		which = ": los demás de la fila de arriba y el primero de cada fila siguiente"
	}
	return fill("{}~"+timesOf(n, "motivo", "motivos")+which, n)
}

func (s *spanish) joinTo(space noun, again bool) rich.Text {
	where := fill(space.the(false)+" {} correspondiente", space.one)
	if !again {
		where = fill("{} del motivo contiguo", where)
	}
	return fill("1~{} en {}", s.short("slst").one, where)
}

func (s *spanish) startAround(r named, y joined) rich.Text {
	return fill(s.joins(y)+s.sided(" en {} después de la esquina superior derecha {}."), s.short("st").first(), of(s.owner(r)))
}
