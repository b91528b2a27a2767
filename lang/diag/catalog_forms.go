package diag

import "strings"

// Codes 43x to 45x: how instructions and parts may be written, and schedules.
func rowForms() []Entry {
	return []Entry{
		{Code: "OV430", Severity: Error,
			En: Wording{Message: `{={number} {stitch}} reads two ways: one in each of {number} places, or {number} in one place`, Mark: `says neither`,
				Help:    map[string]string{"": `write {={stitch} in next {number}}, or {={number} {stitch} in next}`},
				Explain: `A number before a stitch always means in one place, and says which place. That is the difference makers stumble over most, so the two are kept apart.`},
			Es: Wording{Message: `{={number} {stitch}} se lee de dos maneras: uno en cada uno de {number} lugares, o {number} en un lugar`, Mark: `no dice cuál`,
				Help:    map[string]string{"": `escribir {={stitch} in next {number}}, o {={number} {stitch} in next}`},
				Explain: `Un número delante de un punto significa siempre en un solo lugar y dice en cuál. Es la diferencia que más confunde al tejer, por eso se distinguen.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: 2 sc, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: 2 sc in next, sc in each = 7")},

		{Code: "OV431", Severity: Error,
			En: Wording{Message: `two numbers here can be read two ways`, Mark: `how many, and where?`,
				Help:    map[string]string{"": `say one thing: {=[dec] 3 times}, {=dec around}, or {=2 inc}`},
				Explain: `An increase or decrease says by itself how many places it takes. A second number behind it could count places or shapings.`},
			Es: Wording{Message: `aquí hay dos números que se leen de dos maneras`, Mark: `¿cuántos y dónde?`,
				Help:    map[string]string{"": `decir una sola cosa: {=[dec] 3 times}, {=dec around} o {=2 inc}`},
				Explain: `Un aumento o una disminución dicen por sí mismos cuántos lugares ocupan. Un segundo número podría contar lugares o aumentos.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: dec in next 2, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: dec, sc in each = 5")},

		{Code: "OV432", Severity: Error,
			En: Wording{Message: `{={word}} needs to know its stitch, and the part names none`, Mark: `of which stitch?`,
				Help:    map[string]string{"": `say it once in the part or in the header: {=base sc}`},
				Explain: `{=inc}, {=dec} and the rows of a chart are worked in the base stitch, so that the same instructions serve any stitch.`},
			Es: Wording{Message: `{={word}} necesita saber su punto, y la pieza no dice ninguno`, Mark: `¿de qué punto?`,
				Help:    map[string]string{"": `decirlo una vez en la pieza o en el encabezado: {=base sc}`},
				Explain: `{=inc}, {=dec} y las hileras de un gráfico se tejen en el punto base, para que las mismas instrucciones sirvan con cualquier punto.`},
			Example: noBase("  chain 6, join\n  round: sc in each = 6\n  round: inc around"),
			Fixed:   noBase("  base sc\n  chain 6, join\n  round: sc in each = 6\n  round: inc around = 12")},

		{Code: "OV433", Severity: Error,
			En: Wording{Message: `{=together} needs the number of stitches that are drawn into one, two or more`, Mark: `how many together?`,
				Help:    map[string]string{"": `write {=3 dc together}, or {=dc3tog}`},
				Explain: `A decrease of any number is written with that number before the stitch.`},
			Es: Wording{Message: `{=together} necesita el número de puntos que se cierran en uno, dos o más`, Mark: `¿cuántos juntos?`,
				Help:    map[string]string{"": `escribir {=3 dc together}, o {=dc3tog}`},
				Explain: `Una disminución de cualquier número se escribe con ese número delante del punto.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: sc together, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: 3 sc together, sc in each = 4")},

		{Code: "OV434", Severity: Error,
			En: Wording{Message: `only {=inc} and {=dec} are spread evenly, not {={word}}`, Mark: `cannot be spread`,
				Help:    map[string]string{"": `write {=inc 6 evenly}, or {=dec 6 evenly}`},
				Explain: `Spreading shaping over a row sets plain stitches between the increases or decreases; the base stitch says which.`},
			Es: Wording{Message: `solo se reparten {=inc} y {=dec}, no {={word}}`, Mark: `no se puede repartir`,
				Help:    map[string]string{"": `escribir {=inc 6 evenly}, o {=dec 6 evenly}`},
				Explain: `Al repartir, entre los aumentos o disminuciones van puntos sencillos; el punto base dice cuáles.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: sc 2 evenly"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: inc 2 evenly = 8")},

		{Code: "OV435", Severity: Error,
			En: Wording{Message: `the group {name} says by itself where its stitches go`, Mark: `cannot be told where`,
				Help:    map[string]string{"": `repeat it: {={name} 4 times}, or {={name} across}`},
				Explain: `A named group stands for the list in its brackets. It can be repeated; a place for the whole of it has no meaning.`},
			Es: Wording{Message: `el grupo {name} ya dice dónde van sus puntos`, Mark: `no admite un lugar`,
				Help:    map[string]string{"": `repetirlo: {={name} 4 times}, o {={name} across}`},
				Explain: `Un grupo con nombre equivale a la lista de sus corchetes. Puede repetirse; un lugar para todo él no tiene sentido.`},
			Example: "group wave = [sc in next, skip 1]\n\n" + trial("  chain 6, join\n  round: sc in each = 6\n  round: wave in next"),
			Fixed:   "group wave = [sc in next, skip 1]\n\n" + trial("  chain 6, join\n  round: sc in each = 6\n  round: wave around = 3")},

		{Code: "OV436", Severity: Error,
			En: Wording{Message: `{=in each of {name}} works the whole run, so it cannot stop at a bound`, Mark: `stops inside the run`,
				Help:    map[string]string{"": `leave the bound out, or name the two runs apart`},
				Explain: `A run that is named is used whole, so that nothing of it is forgotten.`},
			Es: Wording{Message: `{=in each of {name}} teje todo el tramo y no puede detenerse antes`, Mark: `se detiene dentro del tramo`,
				Help:    map[string]string{"": `quitar el límite o dar nombre a cada tramo`},
				Explain: `Un tramo con nombre se usa entero, para que no se olvide nada.`},
			Example: trial("  chain 6, join\n  round: sc in next 6 as a = 6\n  round: sc in each of a to last 2"),
			Fixed:   trial("  chain 6, join\n  round: sc in next 6 as a = 6\n  round: sc in each of a = 6")},

		{Code: "OV437", Severity: Error,
			En: Wording{Message: `the beginning chain of {chains} cannot count as a stitch here, since the row does not begin with a plain {={stitch}}`,
				Mark:    `the first stitch of the row`,
				Help:    map[string]string{"": `say how this row begins: {=begin with ch {less}}`},
				Explain: `Where a beginning chain counts, it is the first stitch of the row. It cannot be a decrease, a post stitch or a stitch behind a skip; such a row begins with a chain that does not count, and says so in its head.`},
			Es: Wording{Message: `las {chains} cadenas del comienzo no pueden contar aquí como punto, porque la hilera no empieza con un {={stitch}} sencillo`,
				Mark:    `el primer punto de la hilera`,
				Help:    map[string]string{"": `decir cómo empieza esta hilera: {=begin with ch {less}}`},
				Explain: `Donde las cadenas del comienzo cuentan, son el primer punto. No pueden ser una disminución, un punto en relieve ni un punto tras un salto; tal hilera empieza con cadenas que no cuentan, y lo dice al comienzo.`},
			Example: flat("  base dc\n  chain 8\n  row: dc in each = 8\n  row: dec, dc in each"),
			Fixed:   flat("  base dc\n  chain 8\n  row: dc in each = 8\n  row, begin with ch 2: dec, dc in each = 7")},

		{Code: "OV438", Severity: Error,
			En: Wording{Message: `the part {part} does not say how it starts`, Mark: `starts from nothing`,
				Help:    map[string]string{"": `start it above its first row: {=chain 40}, {=ring}, {=foundation sc 40}, {=from PART.edge}, or {=start in PART.place}`},
				Explain: `A part starts with a chain, a ring or a foundation, or along places that are there already.`},
			Es: Wording{Message: `la pieza {part} no dice cómo empieza`, Mark: `empieza de la nada`,
				Help:    map[string]string{"": `empezarla antes de su primera hilera: {=chain 40}, {=ring}, {=foundation sc 40}, {=from PART.edge} o {=start in PART.place}`},
				Explain: `Una pieza empieza con cadenas, un anillo o puntos sin cadena base, o sobre lugares que ya existen.`},
			Example: trial("  round: sc in each = 6"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6")},

		{Code: "OV439", Severity: Error,
			En: Wording{Message: `the part {part} starts twice`, Mark: `a second start`,
				Help:    map[string]string{"": `keep one, or make a second part`},
				Explain: `A part is worked in one go from one start. Two starts joined later are two parts and a third one from both.`},
			Es: Wording{Message: `la pieza {part} empieza dos veces`, Mark: `un segundo comienzo`,
				Help:    map[string]string{"": `dejar uno o hacer otra pieza`},
				Explain: `Una pieza se teje de una vez desde un comienzo. Dos comienzos que se unen después son dos piezas y una tercera desde ambas.`},
			Example: trial("  chain 6, join\n  ring\n  round: sc in each = 6"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6")},

		{Code: "OV440", Severity: Error,
			En: Wording{Message: `a part cannot start with {have} {have|place|places}`, Mark: `this number`,
				Help:    map[string]string{"": `start with at least 1`},
				Explain: `A start needs at least one place to work into. A number far beyond any piece is refused as mistyped.`},
			Es: Wording{Message: `una pieza no puede empezar con {have} {have|lugar|lugares}`, Mark: `este número`,
				Help:    map[string]string{"": `empezar con 1 por lo menos`},
				Explain: `Un comienzo necesita al menos un lugar. Un número muy superior a cualquier pieza se toma por un error al escribir.`},
			Example: trial("  chain 0, join\n  round: sc in each = 0"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6")},

		{Code: "OV441", Severity: Error,
			En: Wording{Message: `{have} {what} are more than a pattern can have ({max})`, Mark: `this number`,
				Help:    map[string]string{"": `look for a figure too many`},
				Explain: `The limit lies far above any piece and protects against a number that was mistyped.`},
			Es: Wording{Message: `{have} {what} son más de las que admite un patrón ({max})`, Mark: `este número`,
				Help:    map[string]string{"": `buscar una cifra de más`},
				Explain: `El límite está muy por encima de cualquier pieza y protege de un número mal escrito.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  1000000 rounds: sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  10 rounds: sc in each")},

		{Code: "OV442", Severity: Error,
			En: Wording{Message: `{=rows for …} needs a length, and this is none`, Mark: `is no length`,
				Help:    map[string]string{"": `give it a unit: {=rounds for 21 cm}; or a number before the word: {=21 rounds}`},
				Explain: `A length is turned into rows by the gauge; a number of rows stands before the word.`},
			Es: Wording{Message: `{=rows for …} necesita una longitud, y esto no lo es`, Mark: `no es una longitud`,
				Help:    map[string]string{"": `darle una unidad: {=rounds for 21 cm}; o un número delante: {=21 rounds}`},
				Explain: `Una longitud se convierte en hileras según la muestra; un número de hileras va delante de la palabra.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  rounds for 12: sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  12 rounds: sc in each")},

		{Code: "OV443", Severity: Error,
			En: Wording{Message: `the part is {have} tall already, and is to be {need}`, Mark: `is behind`,
				Help:    map[string]string{"": `{=rows to …} measures from the start of the part; {=rows for …} adds a length`},
				Explain: `{=rows to 32 cm} works until the part is that tall, counted from its first row.`},
			Es: Wording{Message: `la pieza ya mide {have} y debía medir {need}`, Mark: `ya se pasó`,
				Help:    map[string]string{"": `{=rows to …} mide desde el comienzo de la pieza; {=rows for …} añade una longitud`},
				Explain: `{=rows to 32 cm} teje hasta que la pieza mide eso, contado desde su primera hilera.`},
			Example: roundGauged("  chain 6, join\n  30 rounds: sc in each = 6\n  rounds to 5 cm: sc in each"),
			Fixed:   roundGauged("  chain 6, join\n  30 rounds: sc in each = 6\n  rounds to 20 cm: sc in each")},

		{Code: "OV444", Severity: Error,
			En: Wording{Message: `the chart has {have} {have|row|rows}, and row {need} is asked for`, Mark: `is not in the chart`,
				Help:    map[string]string{"": `ask for a row from 1 to {have}`},
				Explain: `Rows of a chart are numbered from the bottom, as it is worked.`},
			Es: Wording{Message: `el gráfico tiene {have} {have|hilera|hileras} y se pide la {need}`, Mark: `no está en el gráfico`,
				Help:    map[string]string{"": `pedir una hilera de 1 a {have}`},
				Explain: `Las hileras de un gráfico se numeran desde abajo, como se tejen.`},
			Example: charted("| x . x .\n  | . x . x", "from chart wave row 3 around"),
			Fixed:   charted("| x . x .\n  | . x . x", "from chart wave row 2 around")},

		{Code: "OV445", Severity: Error,
			En: Wording{Message: `the mark {mark} is not in the legend of the chart`, Mark: `holds {mark}`,
				Help:    map[string]string{"": `add it to the legend, or use one of its marks`},
				Explain: `Each mark of a chart stands for a yarn, which the legend names.`},
			Es: Wording{Message: `la marca {mark} no está en la leyenda del gráfico`, Mark: `lleva {mark}`,
				Help:    map[string]string{"": `añadirla a la leyenda o usar una de sus marcas`},
				Explain: `Cada marca de un gráfico es un hilo, que la leyenda nombra.`},
			Example: charted("| x . o .", "from chart wave row 1 around"),
			Fixed:   charted("| x . x .", "from chart wave row 1 around")},

		{Code: "OV446", Severity: Error,
			En: Wording{Message: `this row of the chart has {have} {have|cell|cells}, and needs {need}`, Mark: `is of another width`,
				Help: map[string]string{"": `give every row {need} {need|cell|cells}, as many as row 1 has, the lowest`,
					"blank": `draw {need} {need|mark|marks} behind the bar, as in the other rows, or take the line out`,
					"none":  `draw a mark of the legend behind the bar for each cell, or take the line out`},
				Explain: `A chart is a grid: all its rows are as wide as row 1, the lowest.`},
			Es: Wording{Message: `esta hilera del gráfico tiene {have} {have|casilla|casillas} y necesita {need}`, Mark: `es de otro ancho`,
				Help: map[string]string{"": `dar a cada hilera {need} {need|casilla|casillas}, tantas como tiene la hilera 1, la de abajo`,
					"blank": `dibujar {need} {need|marca|marcas} tras la barra, como en las demás hileras, o quitar la línea`,
					"none":  `dibujar tras la barra una marca de la leyenda por cada casilla, o quitar la línea`},
				Explain: `Un gráfico es una cuadrícula: todas sus hileras son tan anchas como la hilera 1, la de abajo.`},
			Example: charted("| x . x\n  | x . x .", "from chart wave row 1 around"),
			Fixed:   charted("| x . x .\n  | x . x .", "from chart wave row 1 around")},

		{Code: "OV447", Severity: Error,
			En: Wording{Message: `the row comes to more than {max} instructions once its groups are written out`, Mark: `is written out too often`,
				Help:    map[string]string{"": `repeat the group instead of naming it again: {=[{name}] 10 times}`},
				Explain: `A named group stands for its list, so groups that name each other several times grow very fast. A group that is repeated is written out once.`},
			Es: Wording{Message: `la hilera llega a más de {max} instrucciones cuando se escriben sus grupos`, Mark: `se escribe demasiadas veces`,
				Help:    map[string]string{"": `repetir el grupo en lugar de nombrarlo otra vez: {=[{name}] 10 times}`},
				Explain: `Un grupo con nombre equivale a su lista, así que los grupos que se nombran unos a otros varias veces crecen muy deprisa. Un grupo que se repite se escribe una sola vez.`},
			Example: grown(5) + trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next, e, sc in each"),
			Fixed:   grown(2) + trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next, b, sc in each = 106")},

		{Code: "OV448", Severity: Error,
			En: Wording{Message: `a stitch of your own takes one place or more and makes up to {max} stitches`, Mark: `is neither`,
				Help:    map[string]string{"": `count what it takes of the row below and what it leaves for the row above: {=takes 1, makes 3}`},
				Explain: `A stitch of the designer's own says how many places of the row below it takes and how many stitches stand on the next row. It may make none, where it only closes something.`},
			Es: Wording{Message: `un punto propio ocupa uno o más lugares y hace hasta {max} puntos`, Mark: `no es así`,
				Help:    map[string]string{"": `contar lo que ocupa de la hilera anterior y lo que deja para la siguiente: {=takes 1, makes 3}`},
				Explain: `Un punto propio dice cuántos lugares de la hilera anterior ocupa y cuántos puntos quedan para la siguiente. Puede no hacer ninguno, si solo cierra algo.`},
			Example: ownStitch("takes 0, makes 1") + trial("  chain 6, join\n  round: sc in each = 6"),
			Fixed:   ownStitch("takes 1, makes 3") + trial("  chain 6, join\n  round: sc in each = 6\n  round: pebble in next, sc in each = 8")},

		{Code: "OV450", Severity: Error,
			En: Wording{Message: `a schedule needs a plain row and a shaped one`, Mark: `lacks one of them`,
				Help:    map[string]string{"": `add a line {=plain: …} and a line {=shaping: …} or {=at EDGE: …}`},
				Explain: `A schedule works plain rows, and shaped ones where it says so.`},
			Es: Wording{Message: `un plan necesita una hilera sencilla y una con aumentos o disminuciones`, Mark: `falta una de ellas`,
				Help:    map[string]string{"": `añadir una línea {=plain: …} y una línea {=shaping: …} o {=at BORDE: …}`},
				Explain: `Un plan teje hileras sencillas y, donde lo dice, hileras con aumentos o disminuciones.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    every 3 rounds 2 times\n  end"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    every 3 rounds 2 times\n  end = 10")},

		{Code: "OV451", Severity: Error,
			En: Wording{Message: `the schedule does not say when the shaped rows come`, Mark: `when?`,
				Help:    map[string]string{"": `say {=every 4 rounds 5 times}, {=on rounds 3, 6, 9}, or {=56 to 40} behind the number of rows`},
				Explain: `The intervals of a schedule are given, listed, or worked out from the stitches at its start and end.`},
			Es: Wording{Message: `el plan no dice cuándo van las hileras con aumentos o disminuciones`, Mark: `¿cuándo?`,
				Help:    map[string]string{"": `decir {=every 4 rounds 5 times}, {=on rounds 3, 6, 9}, o {=56 to 40} tras el número de hileras`},
				Explain: `Los intervalos de un plan se dan, se enumeran o se calculan con los puntos del comienzo y del final.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n  end"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    on rounds 2, 6\n  end = 10")},

		{Code: "OV452", Severity: Error,
			En: Wording{Message: `the rows of a schedule are listed from the first to the last`, Mark: `comes before the one listed earlier`,
				Help:    map[string]string{"": `put them in order`},
				Explain: `Row n of a schedule is the n-th row worked in it.`},
			Es: Wording{Message: `las hileras de un plan se enumeran de la primera a la última`, Mark: `va antes que la anterior de la lista`,
				Help:    map[string]string{"": `ponerlas en orden`},
				Explain: `La hilera n de un plan es la n-ésima que se teje en él.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    on rounds 4, 2\n  end"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    on rounds 2, 4\n  end = 10")},

		{Code: "OV453", Severity: Error,
			En: Wording{Message: `the stitches change by {have}, which cannot be made of steps of {need}`, Mark: `does not come out`,
				Help:    map[string]string{"": `choose numbers that differ by a multiple of {need}`},
				Explain: `Each shaped row changes the count by the same number. From start to end the change must be a multiple of it, and in the same direction.`},
			Es: Wording{Message: `la cuenta cambia en {have}, que no se alcanza en pasos de {need}`, Mark: `no cuadra`,
				Help:    map[string]string{"": `elegir números cuya diferencia sea múltiplo de {need}`},
				Explain: `Cada hilera con aumentos o disminuciones cambia la cuenta en el mismo número. Del comienzo al final el cambio debe ser múltiplo de ese número y en el mismo sentido.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 8 rounds, 12 to 9\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 8 rounds, 12 to 8\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end = 8")},

		{Code: "OV454", Severity: Error,
			En: Wording{Message: `the shaping needs {need} {need|row|rows}, and there {have|is|are} {have}`, Mark: `does not fit`,
				Help:    map[string]string{"": `allow more rows, or shape more in each`},
				Explain: `On right-side rows each shaping takes two rows, otherwise one.`},
			Es: Wording{Message: `los aumentos o disminuciones necesitan {need} {need|hilera|hileras}, y hay {have}`, Mark: `no cabe`,
				Help:    map[string]string{"": `dar más hileras o cambiar más puntos en cada una`},
				Explain: `En hileras del derecho cada una ocupa dos hileras; si no, una.`},
			Example: trial("  chain 20, join\n  round: sc in each = 20\n  shape taper: 3 rounds, 20 to 12\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end"),
			Fixed:   trial("  chain 20, join\n  round: sc in each = 20\n  shape taper: 4 rounds, 20 to 12\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end = 12")},

		{Code: "OV455", Severity: Error,
			En: Wording{Message: `the schedule needs {need} {need|row|rows}, and there {have|is|are} {have}`, Mark: `is longer than its rows`,
				Help:    map[string]string{"": `allow {need} rows, or shape fewer times`},
				Explain: `The intervals times their numbers are the rows a schedule needs. Rows left over are worked plain at the end; too few are refused.`},
			Es: Wording{Message: `el plan necesita {need} {need|hilera|hileras}, y hay {have}`, Mark: `es más largo que sus hileras`,
				Help:    map[string]string{"": `dar {need} hileras o repetir menos veces`},
				Explain: `Los intervalos, multiplicados por sus veces, dan las hileras que necesita un plan. Las que sobran se tejen sencillas al final; si faltan, se rechaza.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 5 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    every 3 rounds 2 times\n  end"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  shape taper: 6 rounds\n    plain: sc in each\n    shaping: dec, sc in each\n    every 3 rounds 2 times\n  end = 10")},

		{Code: "OV456", Severity: Error,
			En: Wording{Message: `row {row} is shaped and shows the wrong side, though the schedule asks for right-side rows`, Mark: `falls on the wrong side`,
				Help:    map[string]string{"": `begin the schedule on a wrong-side row: {=row 1 is wrong side}, or one plain row more before it`},
				Explain: `On right-side rows the intervals are even, so the side of the first shaped row decides all others.`},
			Es: Wording{Message: `la hilera {row} lleva aumentos o disminuciones y muestra el revés, aunque el plan pide hileras del derecho`, Mark: `cae en el revés`,
				Help:    map[string]string{"": `empezar el plan en una hilera del revés: {=row 1 is wrong side}, o una hilera sencilla más antes`},
				Explain: `En hileras del derecho los intervalos son pares, así que el lado de la primera decide el de todas.`},
			Example: flat("  chain 20\n  shape taper: 8 rows, 20 to 16, on right-side rows\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end = 16"),
			Fixed:   flat("  row 1 is wrong side\n  chain 20\n  shape taper: 8 rows, 20 to 16, on right-side rows\n    plain: sc in each\n    shaping: dec, sc to last 2, dec\n  end = 16")},

		{Code: "OV457", Severity: Error,
			En: Wording{Message: `shaping at an edge needs a flat part that names its two edges`, Mark: `which edge?`,
				Help:    map[string]string{"": `say which edge a right-side row meets first: {=edges armhole, neck}`},
				Explain: `Two schedules are merged row by row; for that the tool must know at which end of a row each edge lies.`},
			Es: Wording{Message: `dar forma a un borde necesita una pieza en hileras que nombre sus dos bordes`, Mark: `¿qué borde?`,
				Help:    map[string]string{"": `decir qué borde encuentra primero una hilera del derecho: {=edges armhole, neck}`},
				Explain: `Dos planes se unen hilera por hilera; para ello hay que saber en qué extremo está cada borde.`},
			Example: flat("  chain 20\n  row: sc in each = 20\n  shape v: 8 rows\n    plain: sc in each\n    at neck: dec on row 1, then every 2 rows, 3 times\n  end"),
			Fixed:   flat("  edges armhole, neck\n  chain 20\n  row: sc in each = 20\n  shape v: 8 rows\n    plain: sc in each\n    at neck: dec on row 1, then every 2 rows, 3 times\n  end = 17")},

		{Code: "OV458", Severity: Error,
			En: Wording{Message: `the edge {name} is shaped by two schedules at once`, Mark: `a second schedule for it`,
				Help:    map[string]string{"": `name the other edge, or work one schedule after the other`},
				Explain: `Each edge follows one schedule; two on one edge would meet on one row.`},
			Es: Wording{Message: `el borde {name} tiene dos planes a la vez`, Mark: `un segundo plan para él`,
				Help:    map[string]string{"": `nombrar el otro borde o tejer un plan tras otro`},
				Explain: `Cada borde sigue un plan; dos en un borde coincidirían en una hilera.`},
			Example: flat("  edges armhole, neck\n  chain 20\n  row: sc in each = 20\n  shape v: 8 rows\n    plain: sc in each\n    at neck: dec on row 1, then every 2 rows, 3 times\n    at neck: dec on row 2, then every 2 rows, 3 times\n  end"),
			Fixed:   flat("  edges armhole, neck\n  chain 20\n  row: sc in each = 20\n  shape v: 8 rows\n    plain: sc in each\n    at neck: dec on row 1, then every 2 rows, 3 times\n    at armhole: dec on row 2, then every 2 rows, 3 times\n  end = 14")},

		{Code: "OV459", Severity: Error,
			En: Wording{Message: `what is said here cannot be read from its other end, so the mirror of {part} cannot be made from it`, Mark: `has no mirror image of its own`,
				Help: map[string]string{"": `give the row a label, and write its mirror image under the same label in the part that mirrors {part}`,
					"deep": `put no more than {max} brackets or groups inside one another`},
				Explain: `A mirrored row is read from its other end. Stitches, increases, decreases, groups, repeats, skips and counted-off markers have a mirror image. What speaks of the stitch before it ({=in same}), of places by name, of a change of yarn or of crossing stitches has none that could not be read two ways, so it is the designer's to write.`},
			Es: Wording{Message: `lo que se dice aquí no se puede leer desde el otro extremo, así que de ello no se puede sacar el reflejo de {part}`, Mark: `no tiene reflejo propio`,
				Help: map[string]string{"": `dar nombre a la hilera y escribir su reflejo con el mismo nombre en la pieza que refleja {part}`,
					"deep": `poner como mucho {max} corchetes o grupos unos dentro de otros`},
				Explain: `Una hilera reflejada se lee desde su otro extremo. Los puntos, aumentos, disminuciones, grupos, repeticiones, saltos y marcadores contados tienen reflejo. Lo que habla del punto anterior ({=in same}), de lugares por su nombre, de un cambio de hilo o de puntos que se cruzan no tiene uno que se lea de una sola manera, así que lo escribe quien diseña.`},
			Example: mirrored("row: sc in next 3, sc in same, sc in each = 7"),
			Fixed:   mirrored("row: sc in next 2, 2 sc in next, sc in each = 7")},
	}
}

// noBase is a part without a base stitch.
func noBase(lines string) string {
	return "sizes \"S\", \"M\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in joined rounds\n" + lines + "\nend\n"
}

// roundGauged is a trial with a gauge that was counted in rounds.
func roundGauged(lines string) string {
	return scRounds + "\n\n" + trial(lines)
}

// charted is a part worked from a chart.
func charted(grid, row string) string {
	return kelp(kelpBall+"\n"+kelpSwatch) + "\nyarn sand like kelp\n  name en \"sand\" es \"arena\"\nend\n\n" + scGauge +
		"\n\nchart wave\n  legend \"x\" kelp, \".\" sand\n  " + grid + "\nend\n\n" +
		trial("  yarn kelp\n  chain 8, join\n  round: sc in each = 8\n  round: "+row)
}

// grown holds groups, each of which names the one above it ten times.
func grown(n int) string {
	names := []string{"a", "b", "c", "d", "e"}
	text, of := "", "sc in same"
	for _, name := range names[:n] {
		text += "group " + name + " = [" + strings.Repeat(of+", ", 9) + of + "]\n"
		of = name
	}
	return text + "\n"
}

// mirrored is a flat part with a row, and the mirror of the part.
func mirrored(row string) string {
	return trialOf("  in rows\n  chain 6\n  row: sc in each = 6\n  "+row, "\npart other mirror of strip\n  title en \"Other\" es \"Otra\"\nend\n")
}

// ownStitch is a stitch of the designer's own.
func ownStitch(takes string) string {
	return "stitch pebble\n  " + takes + "\n  name en \"pebble\" es \"guijarro\"\n  en | Work it.\n  es | Tejerlo.\nend\n\n"
}
