package diag

// Codes 2xx: names.

// nearHelp is the usual help for a word that is not known: the nearest ones, or how to go on if none is near.
func nearHelp(near, none string) map[string]string {
	return map[string]string{"near": near, "none": none}
}

func names() []Entry {
	return []Entry{
		{Code: "OV201", Severity: Error,
			En: Wording{Message: `{name} is there already`, Mark: `a second one of that name`, Related: map[string]string{"first": `the first one`},
				Help:    map[string]string{"": `give one of them another name`},
				Explain: `Values, groups, yarns, parts and own stitches share one set of names, so that a name means one thing wherever it stands.`},
			Es: Wording{Message: `{name} ya existe`, Mark: `otro con ese nombre`, Related: map[string]string{"first": `el primero`},
				Help:    map[string]string{"": `dar otro nombre a uno de los dos`},
				Explain: `Los valores, grupos, hilos, piezas y puntos propios comparten los nombres, para que cada nombre signifique una sola cosa.`},
			Example: "let leg = 10\nlet leg = 12\n\n" + trial("  chain 6, join\n  round: sc in each = 6"),
			Fixed:   "let leg = 10\nlet arm = 12\n\n" + trial("  chain 6, join\n  round: sc in each = 6")},

		{Code: "OV202", Severity: Error,
			En: Wording{Message: `nothing is called {word} here`, Mark: `is not known`,
				Help:    nearHelp(`near it: {near|or}`, `a place gets a name where it is made or passed: {=sc in next 4 as {word}}, or {=mark {word}}`),
				Explain: `Places are reached by the names that instructions give them with {=as}, and by markers. Places of another part are written with its name: {=body.right}.`},
			Es: Wording{Message: `aquí nada se llama {word}`, Mark: `no se conoce`,
				Help:    nearHelp(`parecidos: {near|or}`, `un lugar recibe su nombre donde se teje o se salta: {=sc in next 4 as {word}}, o {=mark {word}}`),
				Explain: `A los lugares se llega por los nombres que les dan las instrucciones con {=as} y por los marcadores. Los de otra pieza se escriben con su nombre: {=body.right}.`},
			Example: trial("  chain 6, join\n  round: sc in next 4 as rim, sc in next 2 = 6\n  round: sc in each of rym, sc in each"),
			Fixed:   trial("  chain 6, join\n  round: sc in next 4 as rim, sc in next 2 = 6\n  round: sc in each of rim, sc in each = 6")},

		{Code: "OV203", Severity: Error,
			En: Wording{Message: `{word} is no stitch in {={terms}} terms`, Mark: `is not a stitch`,
				Help:    nearHelp(`near it: {={near|or}}`, `the stitches are {=sc}, {=hdc}, {=dc}, {=tr} and taller ones, round posts such as {=fpdc} or {=bpdc}, several together such as {=dc2tog}, groups such as {=dc3cl}, and stitches of your own: {=stitch {word} … end}`),
				Explain: `The header says whether stitch names are read as in the United States or in the United Kingdom ({=terms us}, {=terms uk}). The same letters mean different stitches in the two.`},
			Es: Wording{Message: `{word} no es un punto en los términos {={terms}}`, Mark: `no es un punto`,
				Help:    nearHelp(`parecidos: {={near|or}}`, `los puntos son {=sc}, {=hdc}, {=dc}, {=tr} y otros más altos, en relieve como {=fpdc} o {=bpdc}, varios cerrados juntos como {=dc2tog}, grupos como {=dc3cl}, y los propios: {=stitch {word} … end}`),
				Explain: `El encabezado dice si los nombres de los puntos se leen como en Estados Unidos o en el Reino Unido ({=terms us}, {=terms uk}). Las mismas letras son puntos distintos en uno y otro.`},
			Example: trial("  chain 6, join\n  round: hcd in each = 6"),
			Fixed:   trial("  chain 6, join\n  round: hdc in each = 6")},

		{Code: "OV204", Severity: Error,
			En: Wording{Message: `there is no yarn {word}`, Mark: `is not described`,
				Help:    nearHelp(`near it: {near|or}`, `describe it above the parts: {=yarn {word} … end}`),
				Explain: `A yarn is described once, with its name in each language; parts then call it by its short name.`},
			Es: Wording{Message: `no hay ningún hilo {word}`, Mark: `no está descrito`,
				Help:    nearHelp(`parecidos: {near|or}`, `describirlo antes de las piezas: {=yarn {word} … end}`),
				Explain: `Un hilo se describe una vez, con su nombre en cada idioma; las piezas lo llaman después por su nombre corto.`},
			Example: kelp(kelpBall+"\n"+kelpSwatch) + "\n" + scGauge + "\n" + trial("  yarn kelb\n  chain 6, join\n  round, with kelp: sc in each = 6"),
			Fixed:   kelp(kelpBall+"\n"+kelpSwatch) + "\n" + scGauge + "\n" + trial("  yarn kelp\n  chain 6, join\n  round: sc in each = 6")},

		{Code: "OV205", Severity: Error,
			En: Wording{Message: `there is no part {word} above this line`, Mark: `is not a part`,
				Help:    nearHelp(`near it: {near|or}`, `parts are used only after they are worked`),
				Explain: `Parts stand in working order: a part can go on from another, be like it or its mirror, only below it.`},
			Es: Wording{Message: `antes de esta línea no hay ninguna pieza {word}`, Mark: `no es una pieza`,
				Help:    nearHelp(`parecidas: {near|or}`, `una pieza solo se usa después de tejerla`),
				Explain: `Las piezas van en el orden en que se tejen: solo después de otra puede una pieza seguirla, ser como ella o ser su reflejo.`},
			Example: trialOf("  in joined rounds\n  chain 6, join\n  round: sc in each = 6", "\npart other like strap\n  title en \"Other\" es \"Otra\"\n  chain 6\n  row: sc in each = 6\nend\n"),
			Fixed:   trialOf("  in joined rounds\n  chain 6, join\n  round: sc in each = 6", "\npart other like strip\n  title en \"Other\" es \"Otra\"\nend\n")},

		{Code: "OV206", Severity: Error,
			En: Wording{Message: `there is no size "{size}"`, Mark: `is not a size`,
				Help:    nearHelp(`near it: {near|or}`, `the sizes are {known}`),
				Explain: `Sizes are named exactly as in the {=sizes} line, in quotes.`},
			Es: Wording{Message: `no hay ninguna talla "{size}"`, Mark: `no es una talla`,
				Help:    nearHelp(`parecidas: {near|or}`, `las tallas son {known}`),
				Explain: `Las tallas se nombran tal como en la línea {=sizes}, entre comillas.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  only \"L\"\n    round: sc in each\n  end"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  only \"M\"\n    round: sc in each\n  end")},

		{Code: "OV207", Severity: Warning,
			En: Wording{Message: `the row {name} replaces nothing: {part} has no row of that name`, Mark: `is worked besides all others`,
				Help:    map[string]string{"": `give the row of {part} that label, or leave the label out here`},
				Explain: `In a part like another, a labelled row takes the place of the other's row of that label. Without one it is worked first, before all others.`},
			Es: Wording{Message: `la hilera {name} no sustituye nada: {part} no tiene ninguna con ese nombre`, Mark: `se teje además de las otras`,
				Help:    map[string]string{"": `dar ese nombre a la hilera de {part} o quitarlo aquí`},
				Explain: `En una pieza como otra, una hilera con nombre ocupa el lugar de la que se llama igual. Si no la hay, se teje antes que las demás.`},
			Example: trialOf("  in joined rounds\n  chain 6, join\n  round: sc in each = 6", "\npart other like strip\n  title en \"Other\" es \"Otra\"\n  chain 6, join\n  round first: sc in each = 6\nend\n"),
			Fixed:   trialOf("  in joined rounds\n  chain 6, join\n  round first: sc in each = 6", "\npart other like strip\n  title en \"Other\" es \"Otra\"\n  round first: sc in each = 6\nend\n")},

		{Code: "OV208", Severity: Error,
			En: Wording{Message: `the group {name} holds itself`, Mark: `leads back to itself`,
				Help:    map[string]string{"": `write out what it should hold`},
				Explain: `A named group stands for its list. If that list names the group again, it never ends.`},
			Es: Wording{Message: `el grupo {name} se contiene a sí mismo`, Mark: `vuelve a sí mismo`,
				Help:    map[string]string{"": `escribir lo que debe contener`},
				Explain: `Un grupo con nombre equivale a su lista. Si la lista lo nombra de nuevo, no termina nunca.`},
			Example: "group wave = [sc in next, wave]\n\n" + trial("  chain 6, join\n  round: sc in each = 6\n  round: wave around"),
			Fixed:   "group wave = [sc in next, skip 1]\n\n" + trial("  chain 6, join\n  round: sc in each = 6\n  round: wave around = 3")},

		{Code: "OV210", Severity: Error,
			En: Wording{Message: `the pattern names no sizes`, Mark: `there is no {=sizes} line`,
				Help:    map[string]string{"": `add, even for one size: {=sizes "one size" … end}`},
				Explain: `Everything is checked for each size, so there must be at least one.`},
			Es: Wording{Message: `el patrón no nombra ninguna talla`, Mark: `falta la línea {=sizes}`,
				Help:    map[string]string{"": `añadir, aunque sea una sola: {=sizes "única" … end}`},
				Explain: `Todo se comprueba para cada talla, así que debe haber al menos una.`},
			Example: "part strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n",
			Fixed:   "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},

		{Code: "OV211", Severity: Error,
			En: Wording{Message: `the size "{size}" stands twice`, Mark: `again`, Help: map[string]string{"": `name each size once`},
				Explain: `Sizes are told apart by their names.`},
			Es: Wording{Message: `la talla "{size}" aparece dos veces`, Mark: `otra vez`, Help: map[string]string{"": `nombrar cada talla una vez`},
				Explain: `Las tallas se distinguen por sus nombres.`},
			Example: "sizes \"S\", \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n",
			Fixed:   "sizes \"S\", \"M\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},

		{Code: "OV212", Severity: Error,
			En: Wording{Message: `{have} sizes are more than a pattern can have ({max})`, Mark: `too many`, Help: map[string]string{"": `split the range into two patterns`},
				Explain: `A page can show so many sizes and no more.`},
			Es: Wording{Message: `{have} tallas son más de las que admite un patrón ({max})`, Mark: `demasiadas`, Help: map[string]string{"": `repartirlas en dos patrones`},
				Explain: `En una página caben esas tallas y no más.`},
			Example: "sizes \"1\", \"2\", \"3\", \"4\", \"5\", \"6\", \"7\", \"8\", \"9\", \"10\", \"11\", \"12\", \"13\", \"14\", \"15\", \"16\", \"17\", \"18\", \"19\", \"20\", \"21\", \"22\", \"23\", \"24\", \"25\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n",
			Fixed:   "sizes \"1\", \"2\", \"3\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},

		{Code: "OV219", Severity: Error,
			En: Wording{Message: `there are {have} {what} in one source, and the most are {max}`, Mark: `with this there are too many`,
				Help:    map[string]string{"": `part the source into several patterns, which can share a file and be bound as a book`},
				Explain: `A pattern that a maker can follow has a dozen of them at most. So many are most likely data, or something that was pasted in many times by accident; they are not checked, so that the check ends soon.`},
			Es: Wording{Message: `hay {have} {what} en un solo archivo, y caben {max} como mucho`, Mark: `con esto ya sobran`,
				Help:    map[string]string{"": `repartir el archivo en varios patrones, que pueden usar un archivo común y reunirse en un libro`},
				Explain: `Un patrón que se pueda seguir tiene una docena, como mucho. Tantas cosas iguales son, casi seguro, datos o algo pegado muchas veces sin querer; no se comprueban, para que la comprobación termine pronto.`},
			Example: "sizes \"S\"\nend\n\nmeasure\n  width = 10 cm\n  # … 1001 times\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n",
			Fixed:   "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},

		{Code: "OV213", Severity: Error,
			En: Wording{Message: `{have} {have|name is|names are} given for {need} {need|size|sizes}`, Mark: `one name for each size`, Help: map[string]string{"": `give {need} names, in the order of the sizes`},
				Explain: `The names of the sizes in another language stand in the same order as the sizes themselves.`},
			Es: Wording{Message: `hay {have} {have|nombre|nombres} para {need} {need|talla|tallas}`, Mark: `un nombre por talla`, Help: map[string]string{"": `dar {need} nombres, en el orden de las tallas`},
				Explain: `Los nombres de las tallas en otro idioma van en el mismo orden que las tallas.`},
			Example: "sizes \"S\", \"M\"\n  names es \"P\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n",
			Fixed:   "sizes \"S\", \"M\"\n  names es \"P\", \"M\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},

		{Code: "OV214", Severity: Error,
			En: Wording{Message: `{word} is no level`, Mark: `is not a level`, Help: nearHelp(`near it: {={near|or}}`, `the levels are {={known}}`),
				Explain: `The levels are the four of the trade, from the simplest to the most demanding.`},
			Es: Wording{Message: `{word} no es un nivel`, Mark: `no es un nivel`, Help: nearHelp(`parecidos: {={near|or}}`, `los niveles son {={known}}`),
				Explain: `Los niveles son los cuatro habituales, del más sencillo al más exigente.`},
			Example: headed("  level esy"), Fixed: headed("  level easy")},

		{Code: "OV215", Severity: Error,
			En: Wording{Message: `{word} is no reading of stitch names`, Mark: `is not known`, Help: nearHelp(`near it: {={near|or}}`, `the readings are {={known}}`),
				Explain: `Stitch names are read as in the United States or as in the United Kingdom.`},
			Es: Wording{Message: `{word} no es una lectura de los nombres de puntos`, Mark: `no se conoce`, Help: nearHelp(`parecidas: {={near|or}}`, `las lecturas son {={known}}`),
				Explain: `Los nombres de los puntos se leen como en Estados Unidos o como en el Reino Unido.`},
			Example: headed("  terms uu"), Fixed: headed("  terms us")},

		{Code: "OV216", Severity: Error,
			En: Wording{Message: `{word} is no date of an edition`, Mark: `expected {="2026-03"} or {="2026-03-31"}`,
				Help:    map[string]string{"": `write the year, the month and, if it matters, the day, with hyphens between them`},
				Explain: `An edition is dated by its month, or by its day. The figures stand in one order in every language, the year first.`},
			Es: Wording{Message: `{word} no es la fecha de una edición`, Mark: `se esperaba {="2026-03"} o {="2026-03-31"}`,
				Help:    map[string]string{"": `escribir el año, el mes y, si hace falta, el día, separados por guiones`},
				Explain: `Una edición lleva la fecha de su mes o la de su día. Las cifras van en el mismo orden en todos los idiomas, con el año primero.`},
			Example: headed("  edition 2, \"3/2026\""), Fixed: headed("  edition 2, \"2026-03\"")},

		{Code: "OV217", Severity: Error,
			En: Wording{Message: `the pattern has no part to work`, Mark: `there is no part`,
				Help:    map[string]string{"": `add what is worked: {=part NAME … end}`},
				Explain: `Rows and rounds stand in parts, so there must be at least one, even if the whole piece is a single strip.`},
			Es: Wording{Message: `el patrón no tiene ninguna pieza que tejer`, Mark: `falta la pieza`,
				Help:    map[string]string{"": `añadir lo que se teje: {=part NOMBRE … end}`},
				Explain: `Las hileras y vueltas van dentro de piezas, así que debe haber al menos una, aunque todo sea una sola tira.`},
			Example: "pattern band\n  title en \"Band\" es \"Cinta\"\nend\nsizes \"S\"\nend\n",
			Fixed:   "pattern band\n  title en \"Band\" es \"Cinta\"\nend\nsizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"},
	}
}

// headed is a small source with a line in its header.
func headed(line string) string {
	return "pattern trial\n  title en \"Trial\" es \"Prueba\"\n" + line + "\nend\n\nsizes \"S\", \"M\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"
}
