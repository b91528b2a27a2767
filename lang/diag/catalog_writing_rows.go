package diag

func writingRows() []Entry {
	return []Entry{
		{Code: "OV151", Severity: Error,
			En: Wording{
				Message: `the group in round brackets does not say into which place it goes`,
				Mark:    `the group ends here`,
				Help: map[string]string{
					"place":  `say where: {=(2 dc, ch 2, 2 dc) in next}`,
					"repeat": `round brackets go into one place; what is repeated stands in square ones: {=[sc, dc] 4 times}`},
				Explain: `Round brackets hold stitches that all go into one place, so the place follows them. Square brackets hold stitches that
are worked one after the other, several times.`},
			Es: Wording{
				Message: `el grupo entre paréntesis no dice en qué lugar va`,
				Mark:    `aquí acaba el grupo`,
				Help: map[string]string{
					"place":  `decir dónde: {=(2 dc, ch 2, 2 dc) in next}`,
					"repeat": `los paréntesis van en un solo lugar; lo que se repite va entre corchetes: {=[sc, dc] 4 times}`},
				Explain: `Los paréntesis encierran puntos que van todos en un mismo lugar, y por eso les sigue el lugar. Los corchetes encierran
puntos que se tejen uno tras otro, varias veces.`},
			Example: band(`round: (sc, ch 1, sc), sc in each    = 41 sts, 1 space`),
			Fixed:   band(`round: (sc, ch 1, sc) in next, sc in each    = 41 sts, 1 space`)},

		{Code: "OV152", Severity: Error,
			En: Wording{
				Message: `the repeat in square brackets does not say how often it is worked`,
				Mark:    `the repeat ends here`,
				Help:    map[string]string{"": `say how often: {=6 times}, {=around}, {=across}, {=to m1} or {=to last 3}`},
				Explain: `A repeat says how often, or how far: {=[sc, dc] 6 times} is six in all; {=around} goes to the end of the round, and must come
out even there.`},
			Es: Wording{
				Message: `la repetición entre corchetes no dice cuántas veces se teje`,
				Mark:    `aquí acaba la repetición`,
				Help:    map[string]string{"": `decir cuántas: {=6 times}, {=around}, {=across}, {=to m1} o {=to last 3}`},
				Explain: `Una repetición dice cuántas veces, o hasta dónde: {=[sc, dc] 6 times} son seis en total; {=around} llega al final de la
vuelta, y allí debe cuadrar.`},
			Example: band(`round: [sc in next, 2 sc in next]`),
			Fixed:   band(`round: [sc in next, 2 sc in next] around`)},

		{Code: "OV153", Severity: Error,
			En: Wording{
				Message: `a number behind a stitch, “{stitch} {n}”, can be read in two ways`,
				Mark:    `one in each of {n}, or {n} in one place?`,
				Help:    map[string]string{"": "for one in each:\n{={stitch} in next {n}}\nfor all of them in one place:\n{={n} {stitch} in next}"},
				Explain: `Printed patterns write both “sc 5” and “5 sc”, and mean now five stitches, now five stitches in one. Here the number
before the stitch is how many go into one place, and the number behind “{=in next}” is how many places are worked.`},
			Es: Wording{
				Message: `un número detrás de un punto, «{stitch} {n}», puede leerse de dos maneras`,
				Mark:    `¿uno en cada uno de {n}, o {n} en un mismo lugar?`,
				Help:    map[string]string{"": "para uno en cada uno:\n{={stitch} in next {n}}\npara todos en un mismo lugar:\n{={n} {stitch} in next}"},
				Explain: `Los patrones impresos escriben tanto «pb 5» como «5 pb», y quieren decir unas veces cinco puntos y otras cinco puntos en
uno. Aquí el número delante del punto dice cuántos van en un lugar, y el número detrás de «{=in next}», en cuántos lugares.`},
			Example: band(`round: [sc 4, inc] around`),
			Fixed:   band("base sc\n  round: [sc in next 4, inc] around")},

		{Code: "OV154", Severity: Error,
			En: Wording{
				Message: `an asterisk does not mark a repeat here`,
				Mark:    `this sign`,
				Help:    map[string]string{"": `put what repeats in square brackets: {=[sc in next 3, inc] around}`},
				Explain: `“*sc 3, inc; repeat from * around” says where a repeat begins, but its end must be guessed. Square brackets show both;
the printed page may still use the form that its readers know. Between values the asterisk multiplies.`},
			Es: Wording{
				Message: `el asterisco no marca aquí una repetición`,
				Mark:    `este signo`,
				Help:    map[string]string{"": `poner entre corchetes lo que se repite: {=[sc in next 3, inc] around}`},
				Explain: `«*3 pb, 1 aum; rep desde *» dice dónde empieza una repetición, pero hay que adivinar dónde acaba. Los corchetes muestran
ambas cosas; la página impresa puede usar igualmente la forma que conocen sus lectores. Entre valores, el asterisco multiplica.`},
			Example: band(`round: *sc in next 3, 2 sc in next`),
			Fixed:   band(`round: [sc in next 3, 2 sc in next] around`)},

		{Code: "OV155", Severity: Error,
			En: Wording{
				Message: `“{=between next}” can be read in two ways`,
				Mark:    `one gap between two stitches, or two gaps?`,
				Help:    map[string]string{"": "for one gap: {=in next gap}\nfor two gaps: {=in next 2 gaps}\nfor all of them: {=between each}"},
				Explain: `Between two stitches lies one gap. “Between the next two” may mean that one gap or the next two gaps, so gaps are
counted by their own name.`},
			Es: Wording{
				Message: `«{=between next}» puede leerse de dos maneras`,
				Mark:    `¿un espacio entre dos puntos, o dos?`,
				Help:    map[string]string{"": "para uno: {=in next gap}\npara dos: {=in next 2 gaps}\npara todos: {=between each}"},
				Explain: `Entre dos puntos hay un espacio. «Entre los dos siguientes» puede ser ese espacio o los dos espacios siguientes, así que
estos espacios se cuentan por su propio nombre.`},
			Example: band(`round: sc between next 40`),
			Fixed:   band("round: sc in each\n  round: sc between each")},

		{Code: "OV156", Severity: Error,
			En: Wording{
				Message: `“{=in {n}}” does not say which {n} places`,
				Mark:    `a number`,
				Help:    map[string]string{"": `write {=in next {n}}`},
				Explain: `Places are the next ones, the last ones, or those of a name. A number alone leaves open where they lie.`},
			Es: Wording{
				Message: `«{=in {n}}» no dice qué {n} lugares`,
				Mark:    `un número`,
				Help:    map[string]string{"": `escribir {=in next {n}}`},
				Explain: `Los lugares son los siguientes, los últimos o los de un nombre. Un número solo no dice dónde están.`},
			Example: band(`round: sc in 40`),
			Fixed:   band(`round: sc in next 40`)},

		{Code: "OV157", Severity: Error,
			En: Wording{
				Message: `“{=in next {n} {rows} below}” can be read in two ways`,
				Mark:    `{n} places, or {n} {rows} down?`,
				Help:    map[string]string{"": `say what the place is: {=in next st {n} {rows} below}`},
				Explain: `The number behind “{=next}” counts places. To reach down, the place is named first and then how far down it lies.`},
			Es: Wording{
				Message: `«{=in next {n} {rows} below}» puede leerse de dos maneras`,
				Mark:    `¿{n} lugares, o {n} {rows} más abajo?`,
				Help:    map[string]string{"": `decir cuál es el lugar: {=in next st {n} {rows} below}`},
				Explain: `El número detrás de «{=next}» cuenta lugares. Para llegar más abajo se nombra primero el lugar y después a qué
distancia está.`},
			Example: band("round: sc in each\n  round: sc in each\n  round: sc in next 2 rounds below, skip 1, sc in each"),
			Fixed:   band("round: sc in each\n  round: sc in each\n  round: sc in next st 2 rounds below, skip 1, sc in each")},

		{Code: "OV158", Severity: Error,
			En: Wording{
				Message: `rows number themselves, so “{word} {number}” cannot begin one`,
				Mark:    `this number is not needed`,
				Help:    map[string]string{"": "leave the number out: {={word}: sc in each}\nor give the row a name: {={word} divide: sc in each}"},
				Explain: `Rows are numbered in the order in which they stand, in every size apart. A typed number would be wrong as soon as a row
is put in above it. Several rows that read the same are written {=4 rounds: …}`},
			Es: Wording{
				Message: `las hileras se numeran solas, así que «{word} {number}» no puede empezar una`,
				Mark:    `este número no hace falta`,
				Help:    map[string]string{"": "omitir el número: {={word}: sc in each}\no dar un nombre a la hilera: {={word} divide: sc in each}"},
				Explain: `Las hileras se numeran en el orden en que están, en cada talla por separado. Un número escrito a mano sería falso en
cuanto se añadiera otra antes. Varias iguales se escriben {=4 rounds: …}`},
			Example: band(`round 1: sc in each`),
			Fixed:   band(`round: sc in each`)},
	}
}
