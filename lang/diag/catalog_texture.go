package diag

// Codes 47x and 48x: what is set at even distances, and stitch patterns.
func textures() []Entry {
	return []Entry{
		{Code: "OV470", Severity: Error,
			En: Wording{Message: `what is set evenly needs plain stitches to stand among, one in each place`, Mark: `stands among no plain stitches`,
				Help:    map[string]string{"": `begin with the stitch between: {=sc in each with [ … ] 5 times evenly}`},
				Explain: `A bracket that is set evenly stands among single stitches up to the end of the row, or to a bound: {=sc in each}, {=sc to last 3}. The distances are worked out from how many places there are.`},
			Es: Wording{Message: `lo que se reparte necesita puntos sencillos alrededor, uno en cada lugar`, Mark: `no tiene puntos sencillos alrededor`,
				Help:    map[string]string{"": `empezar con el punto que va entre medias: {=sc in each with [ … ] 5 times evenly}`},
				Explain: `Unos corchetes que se reparten van entre puntos sencillos hasta el final de la hilera o hasta un límite: {=sc in each}, {=sc to last 3}. Las distancias se calculan a partir de los lugares que hay.`},
			Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in next 20 with [ch 2, skip 2] 3 times evenly"),
			Fixed:   flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2, skip 2] 3 times evenly = 14 sts, 3 spaces")},

		{Code: "OV471", Severity: Error,
			En: Wording{Message: `how many places {={text}} takes cannot be told, so it cannot be set evenly`, Mark: `takes no certain number of places`,
				Help:    map[string]string{"": `let it take a number of stitches: {=[ch 2, skip 2]}, {=[dc5tog]}`},
				Explain: `To share out the stitches between, it must be known how many places the brackets take: one or more, and no instruction in them that goes as far as it can, or to a place by its name.`},
			Es: Wording{Message: `no se puede saber cuántos lugares ocupa {={text}}, así que no se puede repartir`, Mark: `no ocupa un número fijo de lugares`,
				Help:    map[string]string{"": `hacer que ocupe un número de puntos: {=[ch 2, skip 2]}, {=[dc5tog]}`},
				Explain: `Para repartir los puntos que van entre medias hay que saber cuántos lugares ocupan los corchetes: uno o más, y sin instrucciones que lleguen hasta donde puedan o a un lugar por su nombre.`},
			Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2] 3 times evenly"),
			Fixed:   flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2, skip 2] 3 times evenly = 14 sts, 3 spaces")},

		{Code: "OV472", Severity: Error,
			En: Wording{Message: `{name} comes out over a {={rule}}, and there are {have} stitches`, Mark: `does not suit these stitches`,
				Help:    map[string]string{"": `{below} or {above} stitches would do`},
				Explain: `A stitch pattern is made of repeats, and of the stitches beside them. Where it is begun, the stitches there must be as many as it says. {=stitches(44 cm, fans)} rounds a width to such a number.`},
			Es: Wording{Message: `{name} cuadra con un {={rule}}, y hay {have} puntos`, Mark: `no cuadra con estos puntos`,
				Help:    map[string]string{"": `servirían {below} o {above} puntos`},
				Explain: `Una puntada se compone de repeticiones y de los puntos que van a los lados. Donde empieza, los puntos deben ser tantos como dice. {=stitches(44 cm, fans)} redondea un ancho a un número así.`},
			Example: fans("  chain 15\n  4 rows of fans = 15"),
			Fixed:   fans("  chain 13\n  4 rows of fans = 13")},

		{Code: "OV473", Severity: Error,
			En: Wording{Message: `{have} {have|row|rows} of {name} {have|ends|end} after row {row} of it, and it may end only after {ends|or}`, Mark: `ends where it may not`,
				Help:    map[string]string{"": `{less} or {more} rows would do`},
				Explain: `{=may end after} says behind which rows of a stitch pattern something else can be worked: there its edge is as wide and as even as it was. A length is rounded to such a number of rows by itself.`},
			Es: Wording{Message: `{have} {have|hilera|hileras} de {name} {have|termina|terminan} tras su hilera {row}, y solo puede terminar tras {ends|or}`, Mark: `termina donde no puede`,
				Help:    map[string]string{"": `servirían {less} o {more} hileras`},
				Explain: `{=may end after} dice tras qué hileras de una puntada se puede tejer otra cosa: allí el borde es tan ancho y tan parejo como al principio. Una longitud se redondea sola a un número así de hileras.`},
			Example: fans("  chain 13\n  3 rows of fans\n  row: sc in each = 13"),
			Fixed:   fans("  chain 13\n  4 rows of fans\n  row: sc in each = 13")},

		{Code: "OV474", Severity: Error,
			En: Wording{Message: `this would be row {need} of {name}`, Mark: `is not number {need}`,
				Help:    map[string]string{"": `number the rows 1, 2, 3 as they are worked`},
				Explain: `The rows of a stitch pattern are numbered from 1, in the order in which they are worked, so that {=may end after 2} says what it means. What is worked only once goes before them: {=set up: sc in each}.`},
			Es: Wording{Message: `esta sería la hilera {need} de {name}`, Mark: `no es la número {need}`,
				Help:    map[string]string{"": `numerar las hileras 1, 2, 3 según se tejen`},
				Explain: `Las hileras de una puntada se numeran desde 1, en el orden en que se tejen, para que {=may end after 2} diga lo que dice. Lo que se teje una sola vez va antes: {=set up: sc in each}.`},
			Example: patterned("  row 1: sc in each\n  row 3: dc in each", "  chain 13\n  2 rows of fans = 13"),
			Fixed:   patterned("  row 1: sc in each\n  row 2: dc in each", "  chain 13\n  2 rows of fans = 13")},

		{Code: "OV475", Severity: Error,
			En: Wording{Message: `the stitch pattern {name} has no rows`, Mark: `holds nothing to work`,
				Help:    map[string]string{"": `give it some: {=row 1: sc in each}`},
				Explain: `A stitch pattern is worked row by row, over and over; it needs one row at least.`},
			Es: Wording{Message: `la puntada {name} no tiene hileras`, Mark: `no hay nada que tejer`,
				Help:    map[string]string{"": `darle alguna: {=row 1: sc in each}`},
				Explain: `Una puntada se teje hilera por hilera, una y otra vez; necesita al menos una.`},
			Example: patterned("  set up: sc in each", "  chain 13\n  row: sc in each = 13"),
			Fixed:   patterned("  row 1: sc in each", "  chain 13\n  2 rows of fans = 13")},

		{Code: "OV476", Severity: Error,
			En: Wording{Message: `{name} has the rows 1 to {have} alone`, Mark: `is none of them`,
				Help:    map[string]string{"": `name a row of it, from 1 to {have}`},
				Explain: `The rows of a stitch pattern are spoken of by their numbers. Set-up rows have none.`},
			Es: Wording{Message: `{name} solo tiene las hileras 1 a {have}`, Mark: `no es ninguna de ellas`,
				Help:    map[string]string{"": `nombrar una hilera suya, de 1 a {have}`},
				Explain: `De las hileras de una puntada se habla por su número. Las de preparación no lo tienen.`},
			Example: patterned("  row 1: sc in each\n  row 2: dc in each\n  may end after 4", "  chain 13\n  2 rows of fans = 13"),
			Fixed:   patterned("  row 1: sc in each\n  row 2: dc in each\n  may end after 2", "  chain 13\n  2 rows of fans = 13")},

		{Code: "OV477", Severity: Error,
			En: Wording{Message: `only rows of a stitch pattern are taken up from a certain row`, Mark: `belongs to a stitch pattern`,
				Help:    map[string]string{"": `name the pattern: {=4 rows of fans, from row 1}; or leave it out`},
				Explain: `A stitch pattern goes on where it stopped in the part; {=from row 1} takes it up at another row. A row that says itself what is worked has no such rows.`},
			Es: Wording{Message: `solo las hileras de una puntada se retoman desde cierta hilera`, Mark: `solo vale para una puntada`,
				Help:    map[string]string{"": `nombrar la puntada: {=4 rows of fans, from row 1}; o quitarlo`},
				Explain: `Una puntada sigue donde quedó en la pieza; {=from row 1} la retoma en otra hilera. Una línea que dice ella misma lo que se teje no tiene hileras que retomar.`},
			Example: flat("  chain 13\n  row, from row 1: sc in each = 13"),
			Fixed:   flat("  chain 13\n  row: sc in each = 13")},

		{Code: "OV478", Severity: Error,
			En: Wording{Message: `no number of rows of {name} ends after {ends|or} as the header asks`, Mark: `asks for an end that there is not`,
				Help:    map[string]string{"": `leave out {=even}, {=odd} or {=ending}, or let it end after another row too`},
				Explain: `Which rows of a stitch pattern show which side, and whether their number is even, is settled by how many rows it has. Together with {=may end after} nothing may be left.`},
			Es: Wording{Message: `ningún número de hileras de {name} termina tras {ends|or} como se pide`, Mark: `pide un final que no existe`,
				Help:    map[string]string{"": `quitar {=even}, {=odd} o {=ending}, o dejar que termine también tras otra hilera`},
				Explain: `Qué lado muestra cada hilera de una puntada, y si su número es par, depende de cuántas tenga. Junto con {=may end after} puede no quedar nada.`},
			Example: scGauge + "\n\n" + fans("  chain 13\n  rows of fans for 10 cm, odd\n  row: sc in each = 13"),
			Fixed:   scGauge + "\n\n" + fans("  chain 13\n  rows of fans for 10 cm, even\n  row: sc in each = 13")},

		{Code: "OV479", Severity: Error,
			En: Wording{Message: `a repeat of no stitches is none`, Mark: `needs 1 or more`,
				Help:    map[string]string{"": `say how many stitches a repeat takes: {=multiple of 6 plus 1}`},
				Explain: `The first number is how many stitches one repeat of the stitch pattern takes, the second how many stand beside the repeats.`},
			Es: Wording{Message: `una repetición de cero puntos no es una repetición`, Mark: `necesita 1 o más`,
				Help:    map[string]string{"": `decir cuántos puntos ocupa una repetición: {=multiple of 6 plus 1}`},
				Explain: `El primer número es cuántos puntos ocupa una repetición de la puntada; el segundo, cuántos van a los lados.`},
			Example: patterned("  multiple of 0 plus 1\n  row 1: sc in each", "  chain 13\n  2 rows of fans = 13"),
			Fixed:   patterned("  multiple of 1 plus 1\n  row 1: sc in each", "  chain 13\n  2 rows of fans = 13")},

		{Code: "OV543", Severity: Error,
			En: Wording{Message: `stripes of no rows are none`, Mark: `has no rows`,
				Help:    map[string]string{"": `say how many rows each yarn has: {=stripes sand 2, kelp 2}`},
				Explain: `The rows of a part take their yarns from the stripes in turn. In every size at least one of the yarns needs a row; one that has none there is left out.`},
			Es: Wording{Message: `unas rayas sin hileras no son rayas`, Mark: `no tiene hileras`,
				Help:    map[string]string{"": `decir cuántas hileras tiene cada hilo: {=stripes sand 2, kelp 2}`},
				Explain: `Las hileras de una pieza toman su hilo de las rayas por turno. En cada talla al menos un hilo necesita una hilera; el que no tiene ninguna se omite.`},
			Example: kelp(kelpBall+"\n"+kelpSwatch) + "\n" + scGauge + "\n\n" + flat("  stripes kelp 0\n  chain 13\n  2 rows: sc in each = 13"),
			Fixed:   kelp(kelpBall+"\n"+kelpSwatch) + "\n" + scGauge + "\n\n" + flat("  stripes kelp 2\n  chain 13\n  2 rows: sc in each = 13")},

		{Code: "OV544", Severity: Error,
			En: Wording{Message: `there are no stitches here to go on with as established`, Mark: `stands on chains`,
				Help:    map[string]string{"": `work a row of stitches first: {=dc in each}`},
				Explain: `{=as established} works on each stitch one of its kind, as it presents from this side. The chains of a start, a ring and slip stitches are no stitches of a kind.`},
			Es: Wording{Message: `aquí no hay puntos que se puedan seguir como se presentan`, Mark: `está sobre cadenas`,
				Help:    map[string]string{"": `tejer antes una hilera de puntos: {=dc in each}`},
				Explain: `{=as established} teje sobre cada punto uno de su clase, tal como se presenta por este lado. Las cadenas del comienzo, un anillo y los puntos deslizados no son puntos de una clase.`},
			Example: flat("  chain 12\n  row: as established = 12"),
			Fixed:   flat("  chain 12\n  row: dc in each = 12\n  row: as established = 12")},

		{Code: "OV323", Severity: Error,
			En: Wording{Message: `{={name}} has no repeats that could be counted`, Mark: `is no stitch pattern with a multiple`,
				Help:    map[string]string{"": `name a stitch pattern that says its multiple, or count stitches: {=stitches(78 cm, dc)}`},
				Explain: `{=repeats} counts repeats of a stitch pattern. How many stitches one takes is what its line {=multiple of} says.`},
			Es: Wording{Message: `{={name}} no tiene repeticiones que se puedan contar`, Mark: `no es una puntada con múltiplo`,
				Help:    map[string]string{"": `nombrar una puntada que diga su múltiplo, o contar puntos: {=stitches(78 cm, dc)}`},
				Explain: `{=repeats} cuenta repeticiones de una puntada. Cuántos puntos ocupa una lo dice su línea {=multiple of}.`},
			Example: scGauge + "\n\nlet n = repeats(20 cm, sc)\n\n" + flat("  chain n\n  row: sc in each = n"),
			Fixed:   scGauge + "\n\nlet n = stitches(20 cm, sc)\n\n" + flat("  chain n\n  row: sc in each = n")},
	}
}

// patterned is a flat part that is worked in a stitch pattern.
func patterned(pattern, lines string) string {
	return "stitch pattern fans\n" + pattern + "\nend\n\n" + flat(lines)
}

// fans is a flat part in a stitch pattern of two rows that may end only after the second.
func fans(lines string) string {
	return patterned("  multiple of 6 plus 1\n  row 1: sc in each\n  row 2, begin none: sc in next, [skip 2, 5 sc in next, skip 2, sc in next] across\n  may end after 2", lines)
}
