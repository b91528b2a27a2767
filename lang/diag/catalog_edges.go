package diag

// Codes 530 to 540 and 759: side edges, and what is worked along them.

// bandOf is a small flat part, and a second one that starts along it as a line says.
func bandOf(from, row string) string {
	return swatchOf(scGauge, "  in rows\n  chain 20 (24)\n  18 (20) rows: sc in each = 20 (24)", `
part band
  title en "Band" es "Banda"
`+from+`
`+row+`
  fasten off
end
`)
}

// mittOf is a tube with an opening, made by a row, and a part that starts round the opening.
func mittOf(opening string) string {
	return trialOf("  in joined rounds\n  chain 20, join\n  round: sc in each = 20\n  round: sc in next 8, "+opening+", sc to end", `
part thumb
  title en "Thumb" es "Pulgar"
  in joined rounds
  from around strip.thumb
  round: sc in each = 10
  fasten off
end
`)
}

// sideways is a band worked sideways and joined to a tube row by row, so many times over two rows.
func sideways(times string) string {
	return trialOf("  in joined rounds\n  chain 60 (72), join\n  3 rounds: sc in each = 60 (72)", `
part rib
  title en "Rib" es "Elástico"
  in rows
  chain 6
  row: sc in each, sl st in next 2 of strip.edge = 6
  repeat `+times+` times
    row, begin none: sc blo in each
    row: sc blo in each, sl st in next 2 of strip.edge
  end = 6
end
`)
}

func edges() []Entry {
	return []Entry{
		{Code: "OV530", Severity: Error,
			En: Wording{Message: `{part} has no side edge called {word}`, Mark: `of which side?`,
				Help:    map[string]string{"": `write {={names|or}}`},
				Explain: `A flat part has a right and a left edge, as its right side shows it with the start at the bottom: a row that shows the right side begins at the right edge. The part may give them names of its own: {=edges armhole, neck}.`},
			Es: Wording{Message: `{part} no tiene un borde lateral llamado {word}`, Mark: `¿de qué lado?`,
				Help:    map[string]string{"": `escribir {={names|or}}`},
				Explain: `Una pieza plana tiene un borde derecho y uno izquierdo, vistos por el derecho con el comienzo abajo: una hilera del derecho comienza en el borde derecho. La pieza puede darles nombre: {=edges armhole, neck}.`},
			Example: bandOf("  in rows\n  from front edge of strip", "  row: sc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from right edge of strip", "  row: sc in each = 18 (20)")},

		{Code: "OV531", Severity: Error,
			En: Wording{Message: `there are no ends of rows of {part} to work along here`, Mark: `1 is needed, 0 are there`,
				Help:    map[string]string{"": `name rows that the part works back and forth`},
				Explain: `The ends of rows are at the sides of flat work. A round has none, and of rows that are named by number or by their label only those count that the part works in that size.`},
			Es: Wording{Message: `aquí no hay extremos de hilera de {part} en los que tejer`, Mark: `hace falta 1, hay 0`,
				Help:    map[string]string{"": `nombrar hileras que la pieza teje de ida y vuelta`},
				Explain: `Los extremos de hilera están a los lados de las piezas planas. Una vuelta cerrada no los tiene, y de las hileras nombradas solo cuentan las que la pieza teje en esa talla.`},
			Example: bandOf("  in rows\n  from right edge of strip rows 30 to 40", "  row: sc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from right edge of strip rows 3 to 12", "  row: sc in each = 10")},

		{Code: "OV532", Severity: Error,
			En: Wording{Message: `a rate is two whole numbers that are the same in every size`, Mark: `how many for how many rows?`,
				Help:    map[string]string{"": `write {=at 4 per 3 rows}, or {=by gauge}`},
				Explain: `The rate says how many stitches are worked along how many ends of rows. It depends on the two gauges and not on the size; what a size needs besides is reached with {=multiple of … by …}.`},
			Es: Wording{Message: `una proporción son dos números enteros, iguales en todas las tallas`, Mark: `¿cuántos por cuántas hileras?`,
				Help:    map[string]string{"": `escribir {=at 4 per 3 rows}, o {=by gauge}`},
				Explain: `La proporción dice cuántos puntos se tejen en cuántos extremos de hilera. Depende de las dos muestras y no de la talla; lo demás se alcanza con {=multiple of … by …}.`},
			Example: bandOf("  in rows\n  from right edge of strip at 4 (5) per 3 rows", "  row: sc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from right edge of strip at 8 per 9 rows", "  row: sc in each = 16 (18)")},

		{Code: "OV533", Severity: Error,
			En: Wording{Message: `the rate cannot be worked out: {={stitch}} has no gauge`, Mark: `by which gauge?`,
				Help:    map[string]string{"": `add {={stitch}} to {=gauge}, or state the rate: {=at 4 per 3 rows}`},
				Explain: `By gauge, the height of the rows is set against the width of the stitch that the first row works along them. Both need a gauge of their own.`},
			Es: Wording{Message: `no se puede calcular la proporción: {={stitch}} no tiene muestra`, Mark: `¿con qué muestra?`,
				Help:    map[string]string{"": `añadir {={stitch}} a {=gauge}, o decir la proporción: {=at 4 per 3 rows}`},
				Explain: `Según la muestra, la altura de las hileras se compara con el ancho del punto que la primera hilera teje en ellas. Ambos necesitan su propia muestra.`},
			Example: bandOf("  in rows\n  from right edge of strip by gauge", "  row: hdc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from right edge of strip by gauge", "  row: sc in each = 16 (18)")},

		{Code: "OV534", Severity: Error,
			En: Wording{Message: `{part} is no flat piece with four sides`, Mark: `cannot be gone round`,
				Help:    map[string]string{"": `start along its last round: {=from {part}.edge}`},
				Explain: `All round a piece means along its last row, down its left edge, along its start and up its right edge. That needs a part that starts with chains or stitches and is worked back and forth to its end.`},
			Es: Wording{Message: `{part} no es una pieza plana de cuatro lados`, Mark: `no se puede rodear`,
				Help:    map[string]string{"": `comenzar en su última vuelta: {=from {part}.edge}`},
				Explain: `Rodear una pieza es seguir su última hilera, bajar por el borde izquierdo, seguir su comienzo y subir por el derecho. Hace falta una pieza que comience con cadenas o puntos y se teja de ida y vuelta hasta el final.`},
			Example: trialOf("  in joined rounds\n  chain 12, join\n  round: sc in each = 12", "part rim\n  title en \"Rim\" es \"Borde\"\n  from around strip\n  round: sc in each = 12\nend\n"),
			Fixed:   trialOf("  in joined rounds\n  chain 12, join\n  round: sc in each = 12", "part rim\n  title en \"Rim\" es \"Borde\"\n  from strip.edge\n  round: sc in each = 12\nend\n")},

		{Code: "OV535", Severity: Error,
			En: Wording{Message: `{name} is no opening with a chain over it`, Mark: `cannot be gone round`,
				Help:    map[string]string{"": `make the chain where the places are skipped: {=ch 4, skip 4 as thumb}`},
				Explain: `All round an opening means along the places that were skipped, into the corner, along the other side of the chain made over them, and into the other corner. The row that skips the places has to make that chain beside them.`},
			Es: Wording{Message: `{name} no es una abertura con cadenas por encima`, Mark: `no se puede rodear`,
				Help:    map[string]string{"": `hacer las cadenas donde se saltan los lugares: {=ch 4, skip 4 as thumb}`},
				Explain: `Rodear una abertura es seguir los lugares saltados, la esquina, el otro lado de las cadenas tejidas por encima y la otra esquina. La hilera que salta los lugares tiene que hacer esas cadenas junto a ellos.`},
			Example: mittOf("skip 4 as thumb"),
			Fixed:   mittOf("ch 4, skip 4 as thumb")},

		{Code: "OV536", Severity: Error,
			En: Wording{Message: `{name} is neither ends of rows nor new chains, so it cannot give or take stitches`, Mark: `cannot be changed`,
				Help:    map[string]string{"": `name a run along a side edge: {=right edge of front as {name}}`},
				Explain: `To bring an edge to a multiple, some run of it must be free to have a stitch more or fewer. Along the ends of rows that is so, and new chains can be made longer or shorter; stitches are as many as there are.`},
			Es: Wording{Message: `{name} no tiene extremos de hilera ni cadenas nuevas: no puede llevar puntos de más ni de menos`, Mark: `no se puede cambiar`,
				Help:    map[string]string{"": `nombrar un tramo de un borde lateral: {=right edge of front as {name}}`},
				Explain: `Para llevar un borde a un múltiplo, algún tramo tiene que poder tener un punto más o menos. Eso es posible en los extremos de hilera, y las cadenas nuevas pueden ser más o menos; los puntos son los que hay.`},
			Example: bandOf("  in rows\n  from strip.edge as top, right edge of strip as side, multiple of 4 by top", "  row: sc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from strip.edge as top, right edge of strip as side, multiple of 4 by side", "  row: sc in each = 40 (44)")},

		{Code: "OV537", Severity: Error,
			En: Wording{Message: `this edge cannot be brought to {need} places: it has {have}, and the runs that may change are too short`, Mark: `is out of reach`,
				Help:    map[string]string{"": `name a longer run behind {=by}, or choose a smaller multiple`},
				Explain: `Each run that may change keeps at least one stitch.`},
			Es: Wording{Message: `este borde no se puede llevar a {need} lugares: tiene {have}, y los tramos que pueden cambiar son demasiado cortos`, Mark: `no se alcanza`,
				Help:    map[string]string{"": `nombrar un tramo más largo detrás de {=by}, o elegir un múltiplo menor`},
				Explain: `Cada tramo que puede cambiar conserva al menos un punto.`},
			Example: bandOf("  in rows\n  from strip.edge, right edge of strip rows 1 to 2 as side, multiple of 15 by side", "  row: sc in each = 16 (18)"),
			Fixed:   bandOf("  in rows\n  from strip.edge, right edge of strip as side, multiple of 4 by side", "  row: sc in each = 40 (44)")},

		{Code: "OV538", Severity: Error,
			En: Wording{Message: `of this edge {need} places are to be joined, and {have} were`, Mark: `is not joined to its end`,
				Help:    map[string]string{"": `work as many rows as take the whole edge, or name a run that is shorter`},
				Explain: `A band that is worked sideways takes up the edge of another piece bit by bit: {=in next 2 of body.edge} goes on where the row before stopped. At the end of the part the whole edge has been joined, or the band is too short.`},
			Es: Wording{Message: `de este borde hay que unir {need} lugares, y se unieron {have}`, Mark: `no está unido hasta el final`,
				Help:    map[string]string{"": `tejer tantas hileras como pida el borde entero, o nombrar un tramo más corto`},
				Explain: `Una banda tejida de lado toma poco a poco el borde de otra pieza: {=in next 2 of body.edge} sigue donde paró la hilera anterior. Al acabar la pieza está unido el borde entero, o la banda queda corta.`},
			Example: sideways("28 (34)"), Fixed: sideways("29 (35)")},

		{Code: "OV539", Severity: Error,
			En: Wording{Message: `the next {need} places of {name} are needed here, and {have} are left of it`, Mark: `goes past the end of that edge`,
				Help:    map[string]string{"": `work fewer rows, or take fewer places in each`},
				Explain: `{=in next 2 of body.edge} goes on along that edge from row to row. When all of it has been joined there is nothing left to join to.`},
			Es: Wording{Message: `aquí hacen falta los {need} lugares siguientes de {name}, y quedan {have}`, Mark: `pasa del final de ese borde`,
				Help:    map[string]string{"": `tejer menos hileras, o tomar menos lugares en cada una`},
				Explain: `{=in next 2 of body.edge} avanza por ese borde de hilera en hilera. Cuando está unido entero ya no queda dónde unir.`},
			Example: sideways("30 (36)"), Fixed: sideways("29 (35)")},

		{Code: "OV540", Severity: Error,
			En: Wording{Message: `there is nothing to count: {={word}}`, Mark: `is not there at this point`,
				Help:    nearHelp(`near it: {near|or}`, `count what an earlier row made or skipped under a name, with its part before it if it is another: {=count of yoke.sleeve}`),
				Explain: `{=count of sleeve} is how many places a section, a label or an edge has where it is written. A {=let} stands before all parts, so it cannot count anything; what is counted has to be worked above.`},
			Es: Wording{Message: `no hay nada que contar: {={word}}`, Mark: `no existe en este punto`,
				Help:    nearHelp(`parecidos: {near|or}`, `contar lo que una hilera anterior hizo o saltó con un nombre, precedido de su pieza si es otra: {=count of yoke.sleeve}`),
				Explain: `{=count of sleeve} es cuántos lugares tiene una sección, una etiqueta o un borde donde se escribe. Un {=let} está antes de todas las piezas, así que no puede contar nada; lo que se cuenta tiene que estar tejido más arriba.`},
			Example: trial("  chain 20, join\n  round: sc in each = 20\n  repeat count of gap times\n    round: sc in each\n  end = 20"),
			Fixed:   trial("  chain 20, join\n  round: sc in next 12 as front, sc in each = 20\n  repeat count of front times\n    round: sc in each\n  end = 20")},

		{Code: "OV759", Severity: Warning,
			En: Wording{Message: `the stitches along this edge measure {have}, but the edge is {need} long`, Mark: `pulls in or spreads`,
				Help:    map[string]string{"": `let the gauges decide: {=by gauge}`},
				Explain: `A band with too few stitches pulls the edge in, one with too many frills. The stitches are measured by their gauge, the edge by the height of its rows. It is said where they differ by more than 1 cm and by more than three parts in a hundred (common practice, no source).`},
			Es: Wording{Message: `los puntos de este borde miden {have}, pero el borde mide {need}`, Mark: `frunce u ondula`,
				Help:    map[string]string{"": `dejar que decidan las muestras: {=by gauge}`},
				Explain: `Una banda con pocos puntos frunce el borde, con demasiados lo ondula. Los puntos se miden por su muestra, el borde por la altura de sus hileras. Se avisa si difieren en más de 1 cm y más de un 3 % (práctica común, sin fuente).`},
			Example: bandOf("  in rows\n  from right edge of strip at 4 per 3 rows", "  row: sc in each = 24 (27)"),
			Fixed:   bandOf("  in rows\n  from right edge of strip by gauge", "  row: sc in each = 16 (18)")},
	}
}
