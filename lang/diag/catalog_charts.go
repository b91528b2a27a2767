package diag

import "strings"

// Codes 427 to 429 and 46x: rows from a chart. Those of the chart's own rows, marks and width stand among the forms.
func charts() []Entry {
	return []Entry{
		{Code: "OV460", Severity: Error,
			En: Wording{Message: `the chart is {need} {need|cell|cells} wide, which does not come out even over {have}`, Mark: `ends in the middle of the chart`,
				Related: belowEn,
				Help:    map[string]string{"": `{less} or {more} stitches would come out even`, "least": `{more} stitches would come out even`},
				Explain: `A row by chart works the chart whole, over and over. Change the count of the row below, keep some stitches out of it ({=sc by chart to last 2}), or say on purpose where the chart is cut: {=sc by chart centred around} puts its middle in the middle, {=sc by chart from column 3 around} begins at that column.`},
			Es: Wording{Message: `el gráfico tiene {need} {need|casilla|casillas} de ancho y no cuadra en {have}`, Mark: `acaba a mitad del gráfico`,
				Related: belowEs,
				Help:    map[string]string{"": `con {less} o {more} puntos cuadraría`, "least": `con {more} puntos cuadraría`},
				Explain: `Una hilera tejida según un gráfico lo repite entero, una y otra vez. Se puede cambiar la cuenta de la hilera anterior, dejar puntos fuera ({=sc by chart to last 2}) o decir a propósito por dónde se corta: {=sc by chart centred around} pone su centro en el centro, {=sc by chart from column 3 around} empieza en esa columna.`},
			Example: chartRows("chain 10, join", ". x x .", "rounds from chart wave: sc by chart around = 10"),
			Fixed:   chartRows("chain 12, join", ". x x .", "rounds from chart wave: sc by chart around = 6 sand, 6 kelp")},

		{Code: "OV461", Severity: Error,
			En: Wording{Message: `a chart {need} {need|cell|cells} wide has no middle over {have} {have|stitch|stitches}`, Mark: `cannot be centred`,
				Related: belowEn,
				Help:    map[string]string{"": `over {less} or {more} stitches it would lie in the middle`},
				Explain: `Centred, as many stitches stand before the chart's middle as behind it. So both numbers are odd, and a stitch is in the middle, or both are even.`},
			Es: Wording{Message: `un gráfico de {need} {need|casilla|casillas} no queda centrado en {have} {have|punto|puntos}`, Mark: `no se puede centrar`,
				Related: belowEs,
				Help:    map[string]string{"": `en {less} o {more} puntos quedaría en el centro`},
				Explain: `Si está centrado, hay tantos puntos antes del centro del gráfico como después. Por eso los dos números son impares, y en el centro hay un punto, o los dos son pares.`},
			Example: chartRows("chain 11, join", ". x x .", "rounds from chart wave: sc by chart centred around = 11"),
			Fixed:   chartRows("chain 10, join", ". x x .", "rounds from chart wave: sc by chart centred around = 10")},

		{Code: "OV462", Severity: Error,
			En: Wording{Message: `{have} {have|place|places} are no whole number of squares`, Mark: `ends in the middle of a square`,
				Related: belowEn,
				Help:    map[string]string{"": `{less} or {more} places would come out even`, "least": `{more} places would come out even`},
				Explain: `A square takes several places: its stitch, and those behind it. In a row one stitch more closes the last square; a round is closed by the stitch it began with.`},
			Es: Wording{Message: `{have} {have|lugar|lugares} no hacen un número entero de cuadros`, Mark: `acaba a mitad de un cuadro`,
				Related: belowEs,
				Help:    map[string]string{"": `con {less} o {more} lugares cuadraría`, "least": `con {more} lugares cuadraría`},
				Explain: `Un cuadro ocupa varios lugares: su punto y los que le siguen. En una hilera, un punto más cierra el último cuadro; una vuelta se cierra con el punto con el que empezó.`},
			Example: meshRows("9", ". x", "rows from chart net"),
			Fixed:   meshRows("7", ". x", "rows from chart net = 5 dc, 1 space")},

		{Code: "OV463", Severity: Error,
			En: Wording{Message: `the chart is {need} {need|square|squares} wide, and here there {have|is|are} {have}`, Mark: `ends in the middle of the chart`,
				Related: belowEn,
				Help:    map[string]string{"": `draw the chart {have} squares wide, or make the row below {need} squares wide, or twice as many`},
				Explain: `Squares by chart work the chart whole, once or several times. A square is a stitch and the places behind it; in a row one stitch more closes the last.`},
			Es: Wording{Message: `el gráfico tiene {need} {need|cuadro|cuadros} de ancho y aquí hay {have}`, Mark: `acaba a mitad del gráfico`,
				Related: belowEs,
				Help:    map[string]string{"": `dibujar el gráfico de {have} cuadros, o hacer la hilera anterior de {need} cuadros o del doble`},
				Explain: `Los cuadros que siguen un gráfico lo tejen entero, una vez o varias. Un cuadro es un punto y los lugares que le siguen; en una hilera, un punto más cierra el último.`},
			Example: meshRows("10", ". x", "rows from chart net"),
			Fixed:   meshRows("10", ". x .", "rows from chart net = 6 dc, 2 spaces")},

		{Code: "OV464", Severity: Error,
			En: Wording{Message: `this row of the chart is numbered {have}, but stands as row {need} from the bottom`, Mark: `is not row {have}`,
				Help:    map[string]string{"": `number the rows upwards from 1; the lowest is row 1, since it is worked first`},
				Explain: `A chart is drawn as the right side looks when the piece is held the way it grows. A number that does not fit means that a row is missing, or that the chart was drawn from the top.`},
			Es: Wording{Message: `esta hilera del gráfico lleva el número {have}, pero desde abajo es la {need}`, Mark: `no es la hilera {have}`,
				Help:    map[string]string{"": `numerar las hileras hacia arriba desde 1; la de abajo es la 1, porque se teje primero`},
				Explain: `Un gráfico se dibuja tal como se ve el derecho, con la pieza en el sentido en que crece. Un número que no encaja indica que falta una hilera o que el gráfico se dibujó desde arriba.`},
			Example: chartRows("chain 8, join", "1 | . x x .\n  2 | x . . x", "rounds from chart wave: sc by chart around = 8"),
			Fixed:   chartRows("chain 8, join", "2 | x . . x\n  1 | . x x .", "rounds from chart wave: sc by chart around = 8")},

		{Code: "OV465", Severity: Error,
			En: Wording{Message: `{word} is no square of a mesh`, Mark: `neither open nor filled`,
				Help:    map[string]string{"near": `write {={near|or}}`, "none": `write {=open} or {=filled}: {=legend "." open, "x" filled}`},
				Explain: `In a mesh a mark says whether its square is {=open}, with chains behind the stitch, or {=filled} with stitches. It has no yarn of its own.`},
			Es: Wording{Message: `{word} no es ningún cuadro de malla`, Mark: `ni abierto ni lleno`,
				Help:    map[string]string{"near": `escribir {={near|or}}`, "none": `escribir {=open} o {=filled}: {=legend "." open, "x" filled}`},
				Explain: `En una malla una marca dice si su cuadro está abierto ({=open}), con cadenas tras el punto, o lleno de puntos ({=filled}). No tiene hilo propio.`},
			Example: meshLegend(`"." open, "x" solid`),
			Fixed:   meshLegend(`"." open, "x" filled`)},

		{Code: "OV466", Severity: Error,
			En: Wording{Message: `a square is one plain stitch and 1 to {max} places behind it, the same in every size`, Mark: `makes no square`,
				Help:    map[string]string{"": `write {=mesh dc and 2}`},
				Explain: `The number is of the chains of an open square, and of the stitches of a filled one. All squares of a chart are alike.`},
			Es: Wording{Message: `un cuadro es un punto sencillo y de 1 a {max} lugares tras él, igual en todas las tallas`, Mark: `no hace ningún cuadro`,
				Help:    map[string]string{"": `escribir {=mesh dc and 2}`},
				Explain: `El número es el de las cadenas de un cuadro abierto y el de los puntos de uno lleno. Todos los cuadros de un gráfico son iguales.`},
			Example: meshOf("mesh dc and 0"),
			Fixed:   meshOf("mesh dc and 2")},

		{Code: "OV467", Severity: Error,
			En: Wording{Message: `something is worked by chart here, and the row is from none`, Mark: `by which chart?`,
				Help:    map[string]string{"": `name it before the colon: {=rounds from chart wave: sc by chart around}; or here: {=from chart wave row 4 around}`},
				Explain: `Rows from a chart take one row of it after the other, and {=by chart} says where in the row its cells go.`},
			Es: Wording{Message: `aquí se teje algo según un gráfico, y la hilera no sale de ninguno`, Mark: `¿según cuál?`,
				Help:    map[string]string{"": `nombrarlo antes de los dos puntos: {=rounds from chart wave: sc by chart around}; o aquí: {=from chart wave row 4 around}`},
				Explain: `Lo que se teje con {=from chart} toma una hilera del gráfico tras otra, y {=by chart} dice en qué parte de la hilera van sus casillas.`},
			Example: chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart around = 8\n  round: sc by chart around"),
			Fixed:   chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart around = 8\n  round: from chart wave row 1 around")},

		{Code: "OV468", Severity: Error,
			En: Wording{Message: `by chart one stitch goes into each stitch, in the yarn of its cell, and this says something else`, Mark: `cannot be worked by chart`,
				Help:    map[string]string{"": `write {=sc by chart around}, {=sc by chart to last 2}, or {=sc by chart in next 8}`},
				Explain: `The chart says the yarn of each stitch. A number in one place, a yarn of its own, a decrease or a space would leave its cells without a stitch each.`},
			Es: Wording{Message: `según un gráfico va un punto en cada punto, con el hilo de su casilla, y esto dice otra cosa`, Mark: `no se puede tejer según el gráfico`,
				Help:    map[string]string{"": `escribir {=sc by chart around}, {=sc by chart to last 2} o {=sc by chart in next 8}`},
				Explain: `El gráfico dice el hilo de cada punto. Un número en un mismo lugar, un hilo propio, una disminución o un espacio dejarían sus casillas sin un punto cada una.`},
			Example: chartRows("chain 8, join", ". x x .", "rounds from chart wave: 2 sc by chart around = 8"),
			Fixed:   chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart around = 8")},

		{Code: "OV469", Severity: Error,
			En: Wording{Message: `nothing in these rows is worked by the chart {chart}`, Mark: `from a chart that is not used`,
				Help:    map[string]string{"": `say which stitches are: {=sc by chart around}`},
				Explain: `A chart of colours says which yarn each stitch has, not which stitch it is: that stands behind the colon, with {=by chart}. Only the squares of a mesh need no list.`},
			Es: Wording{Message: `en estas hileras no se teje nada según el gráfico {chart}`, Mark: `de un gráfico que no se usa`,
				Help:    map[string]string{"": `decir qué puntos siguen el gráfico: {=sc by chart around}`},
				Explain: `Un gráfico de colores dice qué hilo lleva cada punto, no qué punto es: eso va tras los dos puntos, con {=by chart}. Solo los cuadros de una malla no necesitan lista.`},
			Example: chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc around = 8"),
			Fixed:   chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart around = 8")},

		{Code: "OV220", Severity: Warning,
			En: Wording{Message: `no row is worked from the chart {chart}`, Mark: `is left out of the pages`,
				Help:    map[string]string{"": `work rows from it, {=rows from chart {chart}: sc by chart across}, or take its block out`},
				Explain: `A chart prints where its rows are worked. One that no row names does not print at all; as a rule the rows that were to be worked from it were left out, or name another chart.`},
			Es: Wording{Message: `del gráfico {chart} no se teje ninguna hilera`, Mark: `no sale en las páginas`,
				Help:    map[string]string{"": `tejer hileras según él, {=rows from chart {chart}: sc by chart across}, o quitar su bloque`},
				Explain: `Un gráfico se imprime donde se tejen sus hileras. El que ninguna nombra no se imprime; por lo común faltan las hileras que iban a tejerse según él, o nombran otro gráfico.`},
			Example: chartRows("chain 8, join", ". x x .", "round, with kelp: sc around = 8"),
			Fixed:   chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart around = 8")},

		{Code: "OV428", Severity: Error,
			En: Wording{Message: `a mesh is worked by chart square by square, in {={stitch}} alone`, Mark: `is no way to work squares`,
				Help:    map[string]string{"": `write {={stitch} by chart across}, {={stitch} by chart to last 2}, or leave the list out`},
				Explain: `The squares of a mesh stand over those of the row below. They have their stitch from the chart, and are not cut or moved.`},
			Es: Wording{Message: `una malla se teje según el gráfico cuadro a cuadro, solo en {={stitch}}`, Mark: `así no se tejen cuadros`,
				Help:    map[string]string{"": `escribir {={stitch} by chart across}, {={stitch} by chart to last 2}, o no poner lista`},
				Explain: `Los cuadros de una malla van sobre los de la hilera anterior. Su punto lo da el gráfico, y no se cortan ni se desplazan.`},
			Example: meshRows("7", ". x", "rows from chart net: tr by chart across"),
			Fixed:   meshRows("7", ". x", "rows from chart net: dc by chart across = 5 dc, 1 space")},

		{Code: "OV429", Severity: Error,
			En: Wording{Message: `the chart has {have} {have|column|columns}, and column {need} is asked for`, Mark: `is not in the chart`,
				Help:    map[string]string{"": `ask for a column from 1 to {have}, counted from the right`},
				Explain: `Columns are counted from the right, as a row does that shows the right side. The column named stands at the right end of the stretch.`},
			Es: Wording{Message: `el gráfico tiene {have} {have|columna|columnas} y se pide la {need}`, Mark: `no está en el gráfico`,
				Help:    map[string]string{"": `pedir una columna de 1 a {have}, contadas desde la derecha`},
				Explain: `Las columnas se cuentan desde la derecha, como las encuentra una hilera del derecho. La que se nombra queda en el extremo derecho del tramo.`},
			Example: chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart from column 5 around = 8"),
			Fixed:   chartRows("chain 8, join", ". x x .", "rounds from chart wave: sc by chart from column 4 around = 8")},

		{Code: "OV427", Severity: Error,
			En: Wording{Message: `the {n} chains that are skipped count as the first {={stitch}} and are {yarn}, where the chart has {want}`, Mark: `begins in the chain itself`,
				Help:    map[string]string{"": `work a plain row first; or let the chains not count: {=row, begin with ch {n}}`},
				Explain: `In a row into a new chain the skipped chains are part of it, so they are of its yarn. Where they count as a stitch, that stitch cannot be of the yarn of its cell.`},
			Es: Wording{Message: `las {n} cadenas que se saltan cuentan como el primer {={stitch}} y son de {yarn}, donde el gráfico pide {want}`, Mark: `empieza en la propia cadena`,
				Help:    map[string]string{"": `tejer antes una hilera sencilla, o que las cadenas no cuenten: {=row, begin with ch {n}}`},
				Explain: `En una hilera sobre una cadena nueva, las cadenas que se saltan son parte de ella y por eso son de su hilo. Si cuentan como un punto, ese punto no puede ser del hilo de su casilla.`},
			Example: chartFlat("chain 8", "x . . x", "rows from chart wave: dc by chart across = 8"),
			Fixed:   chartFlat("chain 8", "x . . x", "row: dc in each = 8\n  rows from chart wave: dc by chart across = 8")},
	}
}

// chartFlat is chartRows back and forth, begun in sand.
func chartFlat(start, grid, rows string) string {
	text := chartRows(start, grid, rows)
	return strings.Replace(strings.Replace(text, "in joined rounds", "in rows", 1), "  yarn kelp\n  chain", "  yarn sand\n  chain", 1)
}

// chartRows is a part with rows from a chart of colours.
func chartRows(start, grid, rows string) string {
	return kelp(kelpBall+"\n"+kelpSwatch) + "\nyarn sand like kelp\n  name en \"sand\" es \"arena\"\nend\n\n" + scGauge +
		"\n\nchart wave\n  legend \"x\" kelp, \".\" sand\n  " + barred(grid) + "\nend\n\n" + trial("  yarn kelp\n  "+start+"\n  "+rows)
}

// meshRows is a part with rows of a mesh over a row of so many stitches.
func meshRows(chains, grid, rows string) string {
	return "chart net\n  mesh dc and 2\n  legend \".\" open, \"x\" filled\n  " + barred(grid) + "\nend\n\n" +
		flat("  chain "+chains+"\n  row: dc in each = "+chains+"\n  "+rows)
}

func meshLegend(legend string) string {
	return "chart net\n  mesh dc and 2\n  legend " + legend + "\n  | . x\nend\n\n" +
		flat("  chain 7\n  row: dc in each = 7\n  rows from chart net")
}

func meshOf(mesh string) string {
	return "chart net\n  " + mesh + "\n  legend \".\" open, \"x\" filled\n  | . x\nend\n\n" +
		flat("  chain 7\n  row: dc in each = 7\n  rows from chart net")
}

// barred puts a bar before the cells of a chart of one row.
func barred(grid string) string {
	if len(grid) > 1 && grid[0] >= '0' && grid[0] <= '9' {
		return grid
	}
	return "| " + grid
}
