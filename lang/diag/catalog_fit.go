package diag

// Codes 770 to 789: measures of the wearer, and how the piece suits them.

// wearing is a small source with some lines in its sizes, and lines behind them.
func wearing(lines, behind string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
  kind  sample
end

sizes "small", "large"
` + lines + `
end

` + scGauge + `

` + behind + `part strip
  title en "Strip" es "Tira"
` + plainPart + `
  fasten off
end
`
}

const (
	aged      = "  age 48 (72) months\n"
	usesChest = "let wide = stitches(fit.chest, sc)\n\n"
	usesHead  = "let wide = stitches(fit.head, sc)\n\n"
)

var fits = []Entry{
	{Code: "OV770", Severity: Error,
		En: Wording{
			Message: `there is no table of body measures called {word}`,
			Help: map[string]string{
				"near": `did you mean {near|or}?`,
				"none": `the tables are {known}`},
			Explain: `The tables of body measures are part of the tool: babies, children, youth, women, men, and heads, hands and feet by
themselves. Each figure in them keeps its source, and whether it was read there or is from memory; the page says so. Measures of
your own stand in fit lines and come before those of a table.`},
		Es: Wording{
			Message: `no hay ninguna tabla de medidas del cuerpo llamada {word}`,
			Help: map[string]string{
				"near": `¿quiso decir {near|or}?`,
				"none": `las tablas son {known}`},
			Explain: `Las tablas de medidas del cuerpo forman parte de la herramienta: babies (bebés), children (niños), youth (jóvenes),
women (mujeres), men (hombres) y, aparte, heads (cabezas), hands (manos) y feet (pies). Cada cifra conserva su fuente y si se leyó
en ella o es de memoria; la página lo dice. Las medidas propias van en líneas fit y pasan por delante de las de la tabla.`},
		Example: wearing(aged+"  body kids by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

	{Code: "OV771", Severity: Error,
		En: Wording{
			Message: `{tables|the table|the tables} {tables} {tables|has|have} no size {word}`,
			Help: map[string]string{
				"near": `did you mean {near|or}?`,
				"none": `the sizes are {known}`},
			Explain: `A size of a table is named as the table names it, in quotes, one for each size of the pattern. Sizes that are made for
an age can be found by age instead: body children by age.`},
		Es: Wording{
			Message: `{tables|la tabla|las tablas} {tables} no {tables|tiene|tienen} la talla {word}`,
			Help: map[string]string{
				"near": `¿quiso decir {near|or}?`,
				"none": `las tallas son {known}`},
			Explain: `Una talla de una tabla se nombra como la nombra la tabla, entre comillas, una por cada talla del patrón. Las tallas que
son para una edad se pueden buscar también por la edad: body children by age.`},
		Example: wearing(aged+`  body children "four", "6"`, usesChest), Fixed: wearing(aged+`  body children "4", "6"`, usesChest)},

	{Code: "OV772", Severity: Error,
		En: Wording{
			Message: `the pattern has {need} {need|size|sizes}, and {have} {have|size|sizes} of the table {have|is|are} named`,
			Help:    map[string]string{"": `name one for each size, in the same order; the same one may stand twice`},
			Explain: `Each size of the pattern takes the wearer's measures from one size of the table, in their order.`},
		Es: Wording{
			Message: `el patrón tiene {need} {need|talla|tallas} y se {have|nombra|nombran} {have} {have|talla|tallas} de la tabla`,
			Help:    map[string]string{"": `nombre una por cada talla, en el mismo orden; la misma puede figurar dos veces`},
			Explain: `Cada talla del patrón toma las medidas de quien la lleva de una talla de la tabla, en su orden.`},
		Example: wearing(aged+`  body children "4"`, usesChest), Fixed: wearing(aged+`  body children "4", "6"`, usesChest)},

	{Code: "OV773", Severity: Error,
		En: Wording{
			Message: `{tables|the table|the tables} {tables} {tables|has|have} no size for the age of {sizes}`,
			Help: map[string]string{
				"ages":  `{tables|it reaches|they reach} from {from} to {to} months; add another table, as in body babies, children by age, or name the sizes`,
				"names": `its sizes go by their names: body women "Small", "Medium"`},
			Explain: `By age, a size takes its measures from the smallest size of the table that is made for that age. Tables end: babies at 24
months, children at 10 years, youth at 16, heads by the growth curve at 5 years. Several tables may be named; the first that has
the age is meant.`},
		Es: Wording{
			Message: `{tables|la tabla|las tablas} {tables} no {tables|tiene|tienen} ninguna talla para la edad de {sizes}`,
			Help: map[string]string{
				"ages":  `{tables|va|van} de {from} a {to} meses; añada otra tabla, como en body babies, children by age, o nombre las tallas`,
				"names": `sus tallas van por nombre: body women "Small", "Medium"`},
			Explain: `Por la edad, una talla toma sus medidas de la talla más pequeña de la tabla que es para esa edad. Las tablas se acaban:
babies a los 24 meses, children a los 10 años, youth a los 16, heads, según la curva de crecimiento, a los 5. Se pueden nombrar
varias tablas; vale la primera que tiene la edad.`},
		Example: wearing(aged+"  body babies by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

	{Code: "OV774", Severity: Error,
		En: Wording{
			Message: `measures are asked for by age, and no age is given`,
			Help:    map[string]string{"": `say the ages: age 48 (72) months`},
			Explain: `The line age says for which age each size is made. The cautions need it as well.`},
		Es: Wording{
			Message: `se piden medidas por la edad y no se da ninguna edad`,
			Help:    map[string]string{"": `diga las edades: age 48 (72) months`},
			Explain: `La línea age dice para qué edad es cada talla. También la necesitan las precauciones.`},
		Example: wearing("  body children by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

	{Code: "OV775", Severity: Error,
		En: Wording{
			Message: `{tables|the table|the tables} {tables} {tables|has|have} no {name} for {sizes}`,
			Help:    map[string]string{"": `give the measure yourself, for every size: fit {name} …`},
			Explain: `A table gives a measure only if it has a figure for every size: a figure from elsewhere is not put in silently. A line fit
of your own comes before the table and closes the gap.`},
		Es: Wording{
			Message: `{tables|la tabla|las tablas} {tables} no {tables|tiene|tienen} {name} para {sizes}`,
			Help:    map[string]string{"": `dé usted la medida, para todas las tallas: fit {name} …`},
			Explain: `Una tabla da una medida solo si tiene una cifra para todas las tallas: no se pone en silencio una cifra de otra parte. Una
línea fit propia pasa por delante de la tabla y llena el hueco.`},
		Example: wearing(aged+"  body children by age", usesHead), Fixed: wearing(aged+"  body children by age\n  fit head 50 (52) cm", usesHead)},

	{Code: "OV776", Severity: Note,
		En: Wording{
			Message: `{name} of the wearer is given as {have}; for that age the table {table} has {need}`,
			Help: map[string]string{
				"":       `check the figure for a slip; the table follows: {source}`,
				"memory": `check the figure for a slip; the table follows, from memory: {source}`},
			Explain: `Where the ages are known, your own figures are compared with the tables of body measures. A figure that lies more than
20 % off, and outside the neighbouring sizes as well, is as a rule a slip: another unit, two figures changed about, a measure laid
flat. It is a note: your figures stand.`},
		Es: Wording{
			Message: `{name} de la persona se da como {have}; para esa edad la tabla {table} tiene {need}`,
			Help: map[string]string{
				"":       `revise si la cifra es un error; la tabla sigue esta fuente: {source}`,
				"memory": `revise si la cifra es un error; la tabla sigue, de memoria, esta fuente: {source}`},
			Explain: `Si se conocen las edades, las cifras propias se comparan con las tablas de medidas del cuerpo. Una cifra que se aparta
más de un 20 % y queda además fuera de las tallas vecinas suele ser un error: otra unidad, dos cifras cambiadas, una medida tomada
en plano. Es una nota: valen sus cifras.`},
		Example: wearing(aged+"  fit chest 85.5 (63.5) cm", ""), Fixed: wearing(aged+"  fit chest 58.5 (63.5) cm", "")},
}
