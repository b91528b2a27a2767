package diag

// Codes 218, 422 to 426, 449, 488 and 497 to 499: what is drawn.
func drawings() []Entry {
	return []Entry{
		{Code: "OV218", Severity: Error,
			En: Wording{Message: `{part} is joined motifs and has no rows of its own to draw`, Mark: `has no rows`,
				Help:    map[string]string{"": `draw the motif: {=chart {motif}_drawn of {motif}}`},
				Explain: `Rows belong to the motif, which is a part like any other; a chart draws that. How the motifs lie is shown by their plan.`},
			Es: Wording{Message: `{part} son motivos unidos y no tiene hileras propias que dibujar`, Mark: `no tiene hileras`,
				Help:    map[string]string{"": `dibujar el motivo: {=chart {motif}_drawn of {motif}}`},
				Explain: `Las hileras son del motivo, que es una pieza como las demás; un gráfico dibuja ese. Cómo se colocan los motivos lo muestra su plano.`},
			Example: joined(square, "2 across, 3 down", joinedAt) + "\nchart plan_drawn of throw\nend\n",
			Fixed:   joined(square, "2 across, 3 down", joinedAt) + "\nchart plan_drawn of strip\nend\n"},

		{Code: "OV422", Severity: Error,
			En: Wording{Message: `a chart of the rows of {part} says which rows are drawn, and how much of them`, Mark: `says something else`,
				Help: map[string]string{"": `the stitches are drawn as they were worked: leave out marks, legend and mesh`,
					"both": `say either {=stitches} or {=repeats}`},
				Explain: `A chart of a part shows its rows in symbols, as they were worked; nothing of it is drawn by hand. In it stand a title, {=rows 1 to 6}, and either {=stitches 1 to 13} or {=repeats 2}. A grid of marks is a chart of its own, without a part behind its name.`},
			Es: Wording{Message: `un gráfico de las hileras de {part} dice qué hileras se dibujan y cuánto de ellas`, Mark: `dice otra cosa`,
				Help: map[string]string{"": `los puntos se dibujan como se tejieron: quitar los signos, la leyenda y la malla`,
					"both": `decir o bien {=stitches} o bien {=repeats}`},
				Explain: `Un gráfico de una pieza muestra sus hileras en símbolos, como se tejieron; nada se dibuja a mano. Lleva un título, {=rows 1 to 6} y, además, o bien {=stitches 1 to 13} o bien {=repeats 2}. Una cuadrícula de signos es un gráfico aparte, sin el nombre de una pieza detrás del suyo.`},
			Example: drawn("  stitches 1 to 6\n  repeats 1"),
			Fixed:   drawn("  repeats 1")},

		{Code: "OV423", Severity: Error,
			En: Wording{Message: `{part} has no row {want} to draw; its last is row {have}`, Mark: `are not all there`,
				Help:    map[string]string{"": `draw rows that the part has`},
				Explain: `Rows are drawn by the numbers that the pages print, from the lower to the higher, or by their names.`},
			Es: Wording{Message: `{part} no tiene la hilera {want} que se quiere dibujar; la última es la {have}`, Mark: `no están todas`,
				Help:    map[string]string{"": `dibujar hileras que la pieza tenga`},
				Explain: `Las hileras se dibujan por los números que imprimen las páginas, de menor a mayor, o por sus nombres.`},
			Example: drawn("  rows 1 to 9"),
			Fixed:   drawn("  rows 1 to 3")},

		{Code: "OV424", Severity: Error,
			En: Wording{Message: `places that the lowest row drawn is worked into: {have}`, Mark: `go beyond it`,
				Help:    map[string]string{"": `count from the right, from 1 up to that`},
				Explain: `{=stitches 1 to 13} counts what the lowest row is worked into, from the right, and draws it with everything that stands on it.`},
			Es: Wording{Message: `lugares en los que se teje la hilera más baja que se dibuja: {have}`, Mark: `van más allá`,
				Help:    map[string]string{"": `contar desde la derecha, desde 1 hasta ese número`},
				Explain: `{=stitches 1 to 13} cuenta los lugares en los que se teje la hilera más baja, desde la derecha, y los dibuja con todo lo que hay sobre ellos.`},
			Example: drawn("  stitches 3 to 40"),
			Fixed:   drawn("  stitches 3 to 10")},

		{Code: "OV426", Severity: Error,
			En: Wording{Message: `the rows have {have} repeats alike, not {want}`, Mark: `cannot be drawn`,
				Help:    map[string]string{"": `draw no more repeats than there are, or say which stitches: {=stitches 1 to 13}`},
				Explain: `Repeats are left out of a drawing only where all its rows repeat over the same stitches, so that what is left joins without a gap.`},
			Es: Wording{Message: `las hileras tienen {have} repeticiones iguales, no {want}`, Mark: `no se pueden dibujar`,
				Help:    map[string]string{"": `dibujar las repeticiones que hay, o decir qué puntos: {=stitches 1 to 13}`},
				Explain: `De un dibujo se quitan repeticiones solo si todas sus hileras se repiten sobre los mismos puntos, para que lo que queda encaje sin huecos.`},
			Example: drawn("  repeats 8"),
			Fixed:   drawn("  repeats 2")},

		{Code: "OV449", Severity: Error,
			En: Wording{Message: `the chart would have {have} stitches; the most are {max}`, Mark: `is too large to be read`,
				Help:    map[string]string{"": `draw fewer rows, or less of them: {=repeats 2}, {=stitches 1 to 40}`},
				Explain: `A chart is there to be read beside the text. One of so many stitches would cover dozens of sheets.`},
			Es: Wording{Message: `el gráfico tendría {have} puntos; como mucho pueden ser {max}`, Mark: `es demasiado grande para leerlo`,
				Help:    map[string]string{"": `dibujar menos hileras, o menos de cada una: {=repeats 2}, {=stitches 1 to 40}`},
				Explain: `Un gráfico está para leerlo junto al texto. Uno de tantos puntos ocuparía docenas de hojas.`},
			Example: drawnLarge(""),
			Fixed:   drawnLarge("  stitches 1 to 40\n")},

		{Code: "OV488", Severity: Error,
			En: Wording{Message: `{name} is a grid of marks and draws no rows of a part`, Mark: `belongs to a chart of a part`,
				Help:    map[string]string{"": `begin a chart of its own: {=chart {name}_stitches of body}`},
				Explain: `Which rows are drawn is said in a chart that names a part behind its own name. A grid shows all its rows.`},
			Es: Wording{Message: `{name} es una cuadrícula de signos y no dibuja hileras de una pieza`, Mark: `es de un gráfico de una pieza`,
				Help:    map[string]string{"": `empezar un gráfico aparte: {=chart {name}_stitches of body}`},
				Explain: `Qué hileras se dibujan se dice en un gráfico que nombra una pieza detrás de su nombre. Una cuadrícula muestra todas sus hileras.`},
			Example: charted("| x . x .\n  rows 1 to 2", "from chart wave row 1 around"),
			Fixed:   charted("| x . x .", "from chart wave row 1 around")},

		{Code: "OV497", Severity: Error,
			En: Wording{Message: `what the schematic shows was said before`, Mark: `a second line for it`,
				Help:    map[string]string{"": `name all parts in one line: {=schematic body, sleeve}`},
				Explain: `A pattern has one schematic. {=schematic} says which parts it shows, and in which order; {=schematic without} says which it leaves out.`},
			Es: Wording{Message: `ya se dijo qué muestra el esquema`, Mark: `otra línea para lo mismo`,
				Help:    map[string]string{"": `nombrar todas las piezas en una línea: {=schematic body, sleeve}`},
				Explain: `Un patrón tiene un esquema. {=schematic} dice qué piezas muestra y en qué orden; {=schematic without} dice cuáles deja fuera.`},
			Example: drawn("") + "\nschematic strip\nschematic strip\n",
			Fixed:   drawn("") + "\nschematic strip\n"},

		{Code: "OV498", Severity: Error,
			En: Wording{Message: `{part} stands in the line twice`, Mark: `the second time`,
				Help:    map[string]string{"": `name it once`},
				Explain: `The schematic shows each part once, however many of it are made.`},
			Es: Wording{Message: `{part} está dos veces en la línea`, Mark: `la segunda vez`,
				Help:    map[string]string{"": `nombrarla una vez`},
				Explain: `El esquema muestra cada pieza una vez, se tejan las que se tejan.`},
			Example: drawn("") + "\nschematic strip, strip\n",
			Fixed:   drawn("") + "\nschematic strip\n"},

		{Code: "OV499", Severity: Error,
			En: Wording{Message: `nothing is left for the schematic to show`, Mark: `leaves out every part`,
				Help:    map[string]string{"": `leave out less`},
				Explain: `A schematic shows at least one part. Where a part cannot be laid flat, it is left out by itself.`},
			Es: Wording{Message: `al esquema no le queda nada que mostrar`, Mark: `deja fuera todas las piezas`,
				Help:    map[string]string{"": `dejar fuera menos piezas`},
				Explain: `Un esquema muestra al menos una pieza. La que no se puede extender en plano queda fuera por sí sola.`},
			Example: drawn("") + "\nschematic without strip\n",
			Fixed:   drawn("") + "\nschematic strip\n"},
	}
}

// drawn is a source with a chart of its three rows, which repeat three stitches four times.
func drawn(lines string) string {
	if lines != "" {
		lines += "\n"
	}
	return flat("  chain 12\n  3 rows: [sc in next, dc in next 2] 4 times = 12") + "\nchart rows_drawn of strip\n" + lines + "end\n"
}

// drawnLarge is a source with a chart of very many stitches.
func drawnLarge(lines string) string {
	return flat("  chain 500\n  90 rows: sc in each = 500") + "\nchart all_of_it of strip\n" + lines + "end\n"
}
