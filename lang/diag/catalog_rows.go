package diag

// Codes 4xx: rows.

// trial is a small source of one part worked in joined rounds, in two sizes.
func trial(lines string) string { return trialOf("  in joined rounds\n"+lines, "") }

// flat is a small source of one part worked back and forth.
func flat(lines string) string { return trialOf("  in rows\n"+lines, "") }

func trialOf(lines, after string) string {
	return `pattern trial
  title en "Trial" es "Prueba"
  terms us
end

sizes "S", "M"
end

part strip
  title en "Strip" es "Tira"
  base sc
` + lines + `
end
` + after
}

// belowEn and belowEs label what made the places a row is worked over.
var (
	belowEn = map[string]string{"below": `places to work into: {edge}`}
	belowEs = map[string]string{"below": `lugares en los que tejer: {edge}`}
)

func rows() []Entry {
	return []Entry{
		{Code: "OV401", Severity: Error,
			En: Wording{Message: `{need} {need|place is|places are} needed here, but only {have} {have|is|are} left in the row below`,
				Mark:    `runs out of stitches`,
				Related: belowEn,
				Help:    map[string]string{"": `work {have} here, or make more in the row below`, "none": `make more in the row below, or end the row before this`},
				Explain: `Every stitch needs a place in the row below. The instructions of the row are followed from its start; here they ask for more places than are left.`},
			Es: Wording{Message: `aquí hacen falta {need} {need|lugar|lugares}, pero en la hilera anterior solo {have|queda|quedan} {have}`,
				Mark:    `se acaban los puntos`,
				Related: belowEs,
				Help:    map[string]string{"": `tejer {have} aquí, o hacer más en la hilera anterior`, "none": `hacer más en la hilera anterior, o terminar la hilera antes de esto`},
				Explain: `Cada punto necesita un lugar en la hilera anterior. Las instrucciones se siguen desde el comienzo; aquí piden más lugares de los que quedan.`},
			Example: trial("  chain 10, join\n  round: sc in next 12 = 12"),
			Fixed:   trial("  chain 10, join\n  round: sc in next 10 = 10")},

		{Code: "OV402", Severity: Error,
			En: Wording{Message: `{have} {have|place|places} of the row below {have|is|are} left over at the end of the {round}`,
				Mark:    `ends before the row below does`,
				Related: belowEn,
				Help:    map[string]string{"": `work into them, or say what becomes of them: {=sc in each}, {=skip {have}}, or {=leave {have}}`},
				Explain: `A row takes every place of the row below, skips it by name or leaves it on purpose. What is simply not mentioned is as a rule a count that is wrong, or a repeat that belongs to another size.`},
			Es: Wording{Message: `al final de la {round} {have|sobra|sobran} {have} {have|lugar|lugares} de la anterior`,
				Mark:    `termina antes que la anterior`,
				Related: belowEs,
				Help:    map[string]string{"": `tejer en ellos o decir qué pasa con ellos: {=sc in each}, {=skip {have}} o {=leave {have}}`},
				Explain: `Una hilera ocupa cada lugar de la anterior, lo salta por su nombre o lo deja a propósito. Lo que no se menciona suele ser una cuenta equivocada o una repetición de otra talla.`},
			Example: trial("  chain 12, join\n  round: sc in next 10 = 10"),
			Fixed:   trial("  chain 12, join\n  round: sc in next 12 = 12")},

		{Code: "OV403", Severity: Error,
			En: Wording{Message: `a space of {have} {have|chain|chains} is in the way: a stitch was wanted next`,
				Mark:    `meets a chain space`,
				Related: belowEn,
				Help:    map[string]string{"": `say how spaces count: {=in each st and space}, {=in each st and chain}; or pass it with {=skip space}`},
				Explain: `A chain space can be worked as one place, chain by chain, or not at all, and the counts differ. So it is never walked over unsaid.`},
			Es: Wording{Message: `hay un espacio de {have} {have|cadena|cadenas} en medio: se esperaba un punto`,
				Mark:    `da con un espacio de cadena`,
				Related: belowEs,
				Help:    map[string]string{"": `decir cómo cuentan los espacios: {=in each st and space}, {=in each st and chain}; o pasarlo con {=skip space}`},
				Explain: `Un espacio de cadena puede tejerse como un lugar, cadena por cadena o no tejerse, y la cuenta cambia. Por eso nunca se pasa sin decirlo.`},
			Example: trial("  chain 6, join\n  round: sc in next 3, ch 2, sc in next 3 = 6 sts, 1 space\n  round: sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in next 3, ch 2, sc in next 3 = 6 sts, 1 space\n  round: sc in each st and chain = 8")},

		{Code: "OV404", Severity: Error,
			En: Wording{Message: `there is no chain space ahead in the row below`, Mark: `looks for a space`,
				Related: belowEn,
				Help:    map[string]string{"": `make one in the row below with {=ch}, or work into stitches here`},
				Explain: `An instruction that works into a space looks from where the hook is to the end of the row. Spaces that lie behind are not met again.`},
			Es: Wording{Message: `en lo que queda de la hilera anterior no hay ningún espacio de cadena`, Mark: `busca un espacio`,
				Related: belowEs,
				Help:    map[string]string{"": `hacer uno en la hilera anterior con {=ch}, o tejer aquí en los puntos`},
				Explain: `Una instrucción que teje en un espacio lo busca desde donde está el ganchillo hasta el final. Los espacios que quedaron atrás ya no se encuentran.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next 4, sc in next space, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in next 4, ch 1, sc in next 2 = 6 sts, 1 space\n  round: sc in next 4, sc in next space, sc in each = 7")},

		{Code: "OV405", Severity: Error,
			En: Wording{Message: `the repeat takes {need} {need|place|places} each time, which does not come out even over {have}`,
				Mark:    `is not worked a whole number of times`,
				Related: belowEn,
				Help:    map[string]string{"": `{less} or {more} places would come out even`, "least": `{more} places would come out even`},
				Explain: `A repeat that goes around, across or to a marker must meet its end exactly. Change the count of the row below, let the repeat stop earlier ({=to last 2}), or work the rest outside the brackets.`},
			Es: Wording{Message: `la repetición ocupa {need} {need|lugar|lugares} cada vez y no cuadra en {have}`,
				Mark:    `no se teje un número entero de veces`,
				Related: belowEs,
				Help:    map[string]string{"": `con {less} o {more} lugares cuadraría`, "least": `con {more} lugares cuadraría`},
				Explain: `Una repetición que llega hasta el final o hasta un marcador debe terminar justo allí. Se puede cambiar la cuenta de la hilera anterior, hacer que termine antes ({=to last 2}) o tejer el resto fuera de los corchetes.`},
			Example: trial("  chain 13, join\n  round: sc in each = 13\n  round: [sc in next 2, ch 1, skip 1] around"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  round: [sc in next 2, ch 1, skip 1] around = 8 sts, 4 spaces")},

		{Code: "OV406", Severity: Error,
			En: Wording{Message: `what is in the brackets takes no place, so it would be repeated for ever`, Mark: `never moves on`,
				Help:    map[string]string{"": `say how often: {=[ … ] 6 times}; or let it take a place`},
				Explain: `A repeat to the end of the row stops when the places are used up. One that takes none never gets there.`},
			Es: Wording{Message: `lo que va entre corchetes no ocupa ningún lugar y se repetiría sin fin`, Mark: `no avanza`,
				Help:    map[string]string{"": `decir cuántas veces: {=[ … ] 6 times}; o hacer que ocupe un lugar`},
				Explain: `Una repetición hasta el final termina cuando se acaban los lugares. Si no ocupa ninguno, no llega nunca.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next, [ch 1] around"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next, [ch 1, sc in next] around = 6 sts, 5 spaces")},

		{Code: "OV407", Severity: Error,
			En: Wording{Message: `{have} {have|place|places} before {name} {have|is|are} not accounted for`, Mark: `lies further on`,
				Help:    map[string]string{"": `work or skip up to it first: {=sc to {name}}, or {=skip to {name}}`},
				Explain: `A place can be worked into when it comes next, when it lies behind, or when it is on another edge. What lies before it must be worked or skipped by name.`},
			Es: Wording{Message: `{have|queda|quedan} {have} {have|lugar|lugares} sin tejer ni saltar antes de {name}`, Mark: `está más adelante`,
				Help:    map[string]string{"": `tejer o saltar primero hasta allí: {=sc to {name}}, o {=skip to {name}}`},
				Explain: `En un lugar se puede tejer cuando es el siguiente, cuando queda atrás o cuando está en otro borde. Lo que hay antes debe tejerse o saltarse por su nombre.`},
			Example: trial("  chain 8, join\n  round: sc in each = 8\n  count off: 4, mark m in next, 3\n  round: sc in m, sc in each"),
			Fixed:   trial("  chain 8, join\n  round: sc in each = 8\n  count off: 4, mark m in next, 3\n  round: sc to m, sc in m, sc in each = 8")},

		{Code: "OV408", Severity: Error,
			En: Wording{Message: `the next space is one of {have} {have|chain|chains}, not the one that is wanted`, Mark: `another kind of space comes first`,
				Related: belowEn,
				Help:    map[string]string{"": `work into that space first, or skip it: {=skip space}`},
				Explain: `Looking for a space of one kind, stitches are passed but never another space: otherwise a corner group would slip into a side unnoticed.`},
			Es: Wording{Message: `el siguiente espacio es de {have} {have|cadena|cadenas} y no el que se busca`, Mark: `antes hay otro tipo de espacio`,
				Related: belowEs,
				Help:    map[string]string{"": `tejer antes en ese espacio o saltarlo: {=skip space}`},
				Explain: `Al buscar un espacio de un tipo se pasan puntos, pero nunca otro espacio: si no, un grupo de esquina caería en un lado sin que se advirtiera.`},
			Example: trial("  chain 6, join\n  round: sc in next 3, ch 1, sc in next 3, ch 2 = 6 sts, 2 spaces\n  round: 3 sc in next space of 2, skip rest"),
			Fixed:   trial("  chain 6, join\n  round: sc in next 3, ch 2, sc in next 3, ch 1 = 6 sts, 2 spaces\n  round: 3 sc in next space of 2, skip rest = 3")},

		{Code: "OV409", Severity: Error,
			En: Wording{Message: `there is no gap between two stitches here`, Mark: `is not between two stitches`,
				Help:    map[string]string{"": `work into a stitch, or into the space`},
				Explain: `A gap lies between two neighbouring stitches: a round of n stitches has n, an open row one less. A chain space is not a gap.`},
			Es: Wording{Message: `aquí no hay ningún espacio entre dos puntos`, Mark: `no está entre dos puntos`,
				Help:    map[string]string{"": `tejer en un punto o en el espacio`},
				Explain: `Entre cada dos puntos vecinos hay un espacio: en una vuelta de n puntos, n; en una hilera abierta, uno menos. Un espacio de cadena es otra cosa.`},
			Example: flat("  chain 6\n  row: sc in each = 6\n  row: sc in this gap, sc in each"),
			Fixed:   flat("  chain 6\n  row: sc in each = 6\n  row: sc in next, sc in this gap, sc in each = 7")},

		{Code: "OV410", Severity: Error,
			En: Wording{Message: `{need} {need|stitch was|stitches were} to be left, but {have} {have|is|are} left`, Mark: `is not what is left`,
				Related: belowEn,
				Help:    map[string]string{"": `{=leave {have}}, or work more before: {=leave rest} takes whatever is left`},
				Explain: `The number behind {=leave} is checked: it must be exactly what remains of the row at this place.`},
			Es: Wording{Message: `se querían dejar {need} {need|punto|puntos}, pero quedan {have}`, Mark: `no es lo que queda`,
				Related: belowEs,
				Help:    map[string]string{"": `escribir {=leave {have}} o tejer más antes: {=leave rest} deja lo que haya`},
				Explain: `El número de {=leave} se comprueba: debe ser justo lo que queda de la hilera en ese lugar.`},
			Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in next 12, leave 6"),
			Fixed:   flat("  chain 20\n  row: sc in each = 20\n  row: sc in next 14, leave 6 = 14")},

		{Code: "OV411", Severity: Error,
			En: Wording{Message: `a joined round must begin with a stitch, and this one begins with chains`, Mark: `has nothing to join to`,
				Help:    map[string]string{"": `begin with the stitch that is joined to, and put the chains behind it`},
				Explain: `A round is closed with a slip stitch into its first stitch. Chains at the very start would be part of the beginning chain and cannot be told from it.`},
			Es: Wording{Message: `una vuelta cerrada debe empezar con un punto, y esta empieza con cadenas`, Mark: `no tiene dónde cerrarse`,
				Help:    map[string]string{"": `empezar con el punto en el que se cierra y poner las cadenas detrás`},
				Explain: `Una vuelta se cierra con un punto deslizado en su primer punto. Unas cadenas al principio se confundirían con las del comienzo.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: ch 2, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in each, ch 2 = 6 sts, 1 space")},

		{Code: "OV412", Severity: Error,
			En: Wording{Message: `{have} {have|stitch|stitches} left earlier {have|lies|lie} between the ends that are to be joined`, Mark: `cannot be closed yet`,
				Help:    map[string]string{"": `work into them first: {=sc in each left}`},
				Explain: `Short rows leave stitches beyond the turn. A round can be closed only when the work has gone over all of them.`},
			Es: Wording{Message: `{have|queda|quedan} {have} {have|punto|puntos} sin tejer entre los extremos que se cierran`, Mark: `todavía no se puede cerrar`,
				Help:    map[string]string{"": `tejer antes en ellos: {=sc in each left}`},
				Explain: `Las hileras cortas dejan puntos más allá del giro. Una vuelta solo puede cerrarse cuando se ha tejido sobre todos.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  round: sc in next 8, leave 4, turn\n  round: sc in each = 8"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  round: sc in next 8, leave 4, turn\n  row: sc in each, sc in each left = 12")},

		{Code: "OV413", Severity: Error,
			En: Wording{Message: `nothing was worked in this row yet, so there is no stitch to go back to`, Mark: `has nothing before it`,
				Help:    map[string]string{"": `name a place: {=in next}, {=in first}`},
				Explain: `{=in same} and a marker placed in the stitch last made speak of something that was worked before them in the same row.`},
			Es: Wording{Message: `en esta hilera aún no se ha tejido nada a lo que volver`, Mark: `no tiene nada delante`,
				Help:    map[string]string{"": `nombrar un lugar: {=in next}, {=in first}`},
				Explain: `{=in same} y un marcador en el último punto se refieren a algo tejido antes en la misma hilera.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in same, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: sc in next, sc in same, sc in each = 7")},

		{Code: "OV414", Severity: Error,
			En: Wording{Message: `this needs a round or a ring, and there is none here`, Mark: `finds no ring or round`,
				Help:    map[string]string{"": `begin the part with {=ring}, or with {=chain 4, ring}`},
				Explain: `Only the first round of a part that begins with a ring is worked into it; and only a round can begin at another place.`},
			Es: Wording{Message: `esto necesita una vuelta o un anillo, y aquí no hay ninguno`, Mark: `no encuentra anillo ni vuelta`,
				Help:    map[string]string{"": `empezar la pieza con {=ring}, o con {=chain 4, ring}`},
				Explain: `Solo la primera vuelta de una pieza que empieza con un anillo se teje en él; y solo una vuelta puede empezar en otro lugar.`},
			Example: trial("  chain 6, join\n  round: 6 sc in ring = 6"),
			Fixed:   trial("  ring\n  round: 6 sc in ring = 6")},

		{Code: "OV415", Severity: Error,
			En: Wording{Message: `the shaping needs {need} {need|stitch|stitches}, but there {have|is|are} only {have}`, Mark: `has no room`,
				Related: belowEn,
				Help:    map[string]string{"": `shape fewer times in this row`},
				Explain: `Each increase needs one stitch and each decrease two. Spread over a row, they must all find theirs.`},
			Es: Wording{Message: `los aumentos o disminuciones necesitan {need} {need|punto|puntos}, pero solo hay {have}`, Mark: `no caben`,
				Related: belowEs,
				Help:    map[string]string{"": `hacer menos en esta hilera`},
				Explain: `Cada aumento necesita un punto y cada disminución, dos. Repartidos en la hilera, todos deben encontrar los suyos.`},
			Example: trial("  chain 10, join\n  round: sc in each = 10\n  round: dec 6 evenly"),
			Fixed:   trial("  chain 10, join\n  round: sc in each = 10\n  round: dec 4 evenly = 6")},

		{Code: "OV416", Severity: Error,
			En: Wording{Message: `{need} {need|was|were} stated here, but it is {have}`, Mark: `is worked {have} {have|time|times}, or takes that many`,
				Help:    map[string]string{"": `state {have}, or change the row so that it comes to {need}`},
				Explain: `A number said again behind a repeat or a skip is a check of the designer's own: when it differs, one of the two is wrong.`},
			Es: Wording{Message: `aquí se {need|indica|indican} {need}, pero {have|resulta|resultan} {have}`, Mark: `se teje {have} {have|vez|veces}`,
				Help:    map[string]string{"": `indicar {have} o cambiar la hilera para que {need|resulte|resulten} {need}`},
				Explain: `Un número repetido tras una repetición o un salto es una comprobación de quien diseña: si no coincide, uno de los dos está mal.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  round: [sc in next 2, inc] around = 5 times = 16"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  round: [sc in next 2, inc] around = 4 times = 16")},

		{Code: "OV417", Severity: Error,
			En: Wording{Message: `this cannot stand inside a group that goes into one place`, Mark: `does not go into the same place`,
				Help:    map[string]string{"": `put it before or behind the round brackets`},
				Explain: `Round brackets hold what is worked into one place: stitches and chains, no places of their own, no second group and no decrease. A name for only a part of a space cannot be given either.`},
			Es: Wording{Message: `esto no puede ir dentro de un grupo que se teje en un solo lugar`, Mark: `no va en el mismo lugar`,
				Help:    map[string]string{"": `ponerlo antes o después de los paréntesis`},
				Explain: `Los paréntesis contienen lo que se teje en un lugar: puntos y cadenas, sin lugares propios, sin otro grupo y sin disminuciones. Tampoco se puede nombrar solo una parte de un espacio.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: (sc, dec) in next, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  round: (sc, ch 1, sc) in next, sc in each = 7 sts, 1 space")},

		{Code: "OV418", Severity: Error,
			En: Wording{Message: `what lies below {name} is not one place: a stitch there draws several together`, Mark: `stands on several stitches`,
				Help:    map[string]string{"": `work into the stitch itself, or into its side: {=beside {name}}`},
				Explain: `{=below} means the place a stitch was worked into. A decrease was worked into several, so there is no one answer.`},
			Es: Wording{Message: `debajo de {name} no hay un solo lugar: allí un punto cierra varios juntos`, Mark: `está sobre varios puntos`,
				Help:    map[string]string{"": `tejer en el punto mismo o en su costado: {=beside {name}}`},
				Explain: `{=below} significa el lugar en el que se tejió un punto. Una disminución se tejió en varios, así que no hay una sola respuesta.`},
			Example: flat("  chain 6\n  row: sc in each = 6\n  row: dec as d, sc in each = 5\n  row: sc in each, sc below d"),
			Fixed:   flat("  chain 6\n  row: sc in each = 6\n  row: sc in next as d, sc in each = 6\n  row: sc in each, sc below d = 7")},

		{Code: "OV419", Severity: Error,
			En: Wording{Message: `the two layers do not match: {need} {need|place|places} here, {have} in {name}`, Mark: `works two layers together`,
				Help:    map[string]string{"": `bring both to the same number of places`},
				Explain: `Two layers are worked together place by place, so they must have the same number.`},
			Es: Wording{Message: `las dos capas no coinciden: {need} {need|lugar|lugares} aquí, {have} en {name}`, Mark: `teje dos capas juntas`,
				Help:    map[string]string{"": `llevar ambas al mismo número de lugares`},
				Explain: `Dos capas se tejen juntas lugar por lugar, así que deben tener los mismos.`},
			Example: flat("  chain 6\n  row: sc in next 4 as a, sc in next 2 = 6\n  row: sc through each and a"),
			Fixed:   flat("  chain 6\n  row: sc in next 6 as a = 6\n  row: sc through each and a = 6")},

		{Code: "OV420", Severity: Error,
			En: Wording{Message: `{need} {need|was|were} to be the last of the row, but {have} {have|is|are} left`, Mark: `is not the end of the row`,
				Related: belowEn,
				Help:    map[string]string{"": `work up to it first: {=sc to last {need}}`},
				Explain: `{=in last} says that nothing lies between here and the end of the row. That is checked.`},
			Es: Wording{Message: `{need|debía ser el último|debían ser los últimos} {need}, pero {have|queda|quedan} {have}`, Mark: `no es el final de la hilera`,
				Related: belowEs,
				Help:    map[string]string{"": `tejer antes hasta allí: {=sc to last {need}}`},
				Explain: `{=in last} dice que no hay nada entre aquí y el final de la hilera. Eso se comprueba.`},
			Example: flat("  chain 8\n  row: sc in each = 8\n  row: sc in next 5, 2 sc in last"),
			Fixed:   flat("  chain 8\n  row: sc in each = 8\n  row: sc in next 7, 2 sc in last = 9")},

		{Code: "OV421", Severity: Error,
			En: Wording{Message: `the pattern would have more than {have} stitches in one {where}`, Mark: `goes beyond what can be checked`,
				Help:    map[string]string{"": `look for a number with a figure too many`},
				Explain: `Every stitch is followed, but for rows that do what the one before them did: those are only counted. The limit lies far above the largest blanket, and protects against a number that was mistyped.`},
			Es: Wording{Message: `el patrón tendría más de {have} puntos en una {where}`, Mark: `pasa de lo que se puede comprobar`,
				Help:    map[string]string{"": `buscar un número con una cifra de más`},
				Explain: `Se comprueba punto por punto, salvo las hileras que repiten la anterior, que solo se cuentan. El límite está muy por encima de la manta más grande y protege de un número mal escrito.`},
			Example: flat("  chain 1000\n  2000 rows: 2 sc in next, sc in each = 3000"),
			Fixed:   flat("  chain 1000\n  20 rows: 2 sc in next, sc in each = 1020")},

		{Code: "OV425", Severity: Error,
			En: Wording{Message: `what is set evenly needs {need} {need|stitch|stitches}, but there {have|is|are} only {have}`, Mark: `has no room`,
				Related: belowEn,
				Help:    map[string]string{"": `set fewer of them, or begin nearer the end: {=after 2}`},
				Explain: `Between any two stands at least one stitch, and at the far end no fewer than are counted off at the near one. Without {=after}, at least one stands at either end.`},
			Es: Wording{Message: `lo que se reparte necesita {need} {need|punto|puntos}, pero solo hay {have}`, Mark: `no cabe`,
				Related: belowEs,
				Help:    map[string]string{"": `repartir menos, o empezar más cerca del borde: {=after 2}`},
				Explain: `Entre dos queda al menos un punto, y en el otro extremo no menos de los que se cuentan en el primero. Sin {=after} queda al menos uno en cada extremo.`},
			Example: flat("  chain 20\n  row: sc in each = 20\n  row: sc in each with [ch 2, skip 2] 5 times evenly after 4"),
			Fixed:   flat("  chain 22\n  row: sc in each = 22\n  row: sc in each with [ch 2, skip 2] 5 times evenly after 4 = 12 sts, 5 spaces")},
	}
}
