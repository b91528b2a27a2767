package diag

import "strings"

// Codes 770 to 789: measures of the wearer, and how the piece suits them.

// wearing is a small source with some lines in its sizes, and lines behind them.
func wearing(lines, behind string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
  kind  sample
end

sizes "small", "large"
  names es "pequeña", "grande"
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

// measuring is such a source with some measures.
func measuring(lines, measures string) string {
	return wearing(lines, "") + "\nmeasure\n" + measures + "\nend\n"
}

// discOf is a small source with a round piece of so many more stitches in each round, and some measures.
func discOf(more, measures string) string {
	return `pattern trial
  title en "Trial disc" es "Disco de prueba"
  terms us
  kind  sample
end

sizes "one size"
  names es "talla única"
end

` + scGauge + `

part disc
  title en "Disc" es "Disco"
  in joined rounds
  ring
  round: ` + more + ` sc in ring = ` + more + `
  round: [2 sc in next] around = 2 * ` + more + `
  round: [sc in next, 2 sc in next] around = 3 * ` + more + `
  fasten off
end

measure
` + measures + `
end
`
}

const (
	aged      = "  age 48 (72) months\n"
	usesChest = "let wide = stitches(fit.chest, sc)\n\n"
	usesHead  = "let wide = stitches(fit.head, sc)\n\n"
)

func fits() []Entry {
	return []Entry{
		{Code: "OV770", Severity: Error,
			En: Wording{
				Message: `there is no table of body measures called {word}`,
				Help: map[string]string{
					"near": `did you mean {={near|or}}?`,
					"none": `the tables are {={known}}`},
				Explain: `The tables of body measures are part of the tool: {=babies}, {=children}, {=youth}, {=women}, {=men}, and {=heads}, {=hands} and {=feet} by
themselves. Each figure in them keeps its source, and whether it was read there or is from memory; the page says so. Measures of
your own stand in {=fit} lines and come before those of a table.`},
			Es: Wording{
				Message: `no hay ninguna tabla de medidas del cuerpo llamada {word}`,
				Help: map[string]string{
					"near": `parecidas: {={near|or}}`,
					"none": `las tablas son {={known}}`},
				Explain: `Las tablas de medidas del cuerpo forman parte de la herramienta: {=babies} (bebés), {=children} (niños), {=youth} (jóvenes),
{=women} (mujeres), {=men} (hombres) y, aparte, {=heads} (cabezas), {=hands} (manos) y {=feet} (pies). Cada cifra conserva su fuente y si se leyó
en ella o es de memoria; la página lo dice. Las medidas propias van en líneas {=fit} y pasan por delante de las de la tabla.`},
			Example: wearing(aged+"  body kids by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

		{Code: "OV771", Severity: Error,
			En: Wording{
				Message: `{tables|the table|the tables} {={tables}} {tables|has|have} no size {word}`,
				Help: map[string]string{
					"near": `did you mean {near|or}?`,
					"none": `the sizes are {known}`},
				Explain: `A size of a table is named as the table names it, in quotes, one for each size of the pattern. Sizes that are made for
an age can be found by age instead: {=body children by age}.`},
			Es: Wording{
				Message: `{tables|la tabla|las tablas} {={tables}} no {tables|tiene|tienen} la talla {word}`,
				Help: map[string]string{
					"near": `parecidas: {near|or}`,
					"none": `las tallas son {known}`},
				Explain: `Una talla de una tabla se nombra como la nombra la tabla, entre comillas, una por cada talla del patrón. Las tallas que
son para una edad se pueden buscar también por la edad: {=body children by age}.`},
			Example: wearing(aged+`  body children "four", "6"`, usesChest), Fixed: wearing(aged+`  body children "4", "6"`, usesChest)},

		{Code: "OV772", Severity: Error,
			En: Wording{
				Message: `the pattern has {need} {need|size|sizes}, and {have} {have|size|sizes} of the table {have|is|are} named`,
				Help:    map[string]string{"": `name one for each size, in the same order; the same one may stand twice`},
				Explain: `Each size of the pattern takes the wearer's measures from one size of the table, in their order.`},
			Es: Wording{
				Message: `el patrón tiene {need} {need|talla|tallas} y se {have|nombra|nombran} {have} {have|talla|tallas} de la tabla`,
				Help:    map[string]string{"": `nombrar una por cada talla, en el mismo orden; la misma puede figurar dos veces`},
				Explain: `Cada talla del patrón toma las medidas de quien la lleva de una talla de la tabla, en su orden.`},
			Example: wearing(aged+`  body children "4"`, usesChest), Fixed: wearing(aged+`  body children "4", "6"`, usesChest)},

		{Code: "OV773", Severity: Error,
			En: Wording{
				Message: `{tables|the table|the tables} {={tables}} {tables|has|have} no size for the age of {sizes}`,
				Help: map[string]string{
					"ages":  `{tables|it reaches|they reach} from {from} to {to} months; add another table, as in {=body babies, children by age}, or name the sizes`,
					"names": `its sizes go by their names: {=body women "Small", "Medium"}`},
				Explain: `By age, a size takes its measures from the smallest size of the table that is made for that age. Tables end: {=babies} at 24
months, {=children} at 10 years, {=youth} at 16, {=heads} by the growth curve at 5 years. Several tables may be named; the first that has
the age is meant.`},
			Es: Wording{
				Message: `{tables|la tabla|las tablas} {={tables}} no {tables|tiene|tienen} ninguna talla para la edad de {sizes}`,
				Help: map[string]string{
					"ages":  `{tables|va|van} de {from} a {to} meses; añadir otra tabla, como en {=body babies, children by age}, o nombrar las tallas`,
					"names": `sus tallas van por nombre: {=body women "Small", "Medium"}`},
				Explain: `Por la edad, una talla toma sus medidas de la talla más pequeña de la tabla que es para esa edad. Las tablas se acaban:
{=babies} a los 24 meses, {=children} a los 10 años, {=youth} a los 16, {=heads}, según la curva de crecimiento, a los 5. Se pueden nombrar
varias tablas; vale la primera que tiene la edad.`},
			Example: wearing(aged+"  body babies by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

		{Code: "OV774", Severity: Error,
			En: Wording{
				Message: `measures are asked for by age, and no age is given`,
				Help:    map[string]string{"": `say the ages: {=age 48 (72) months}`},
				Explain: `The line {=age} says for which age each size is made. The cautions need it as well.`},
			Es: Wording{
				Message: `se piden medidas por la edad y no se da ninguna edad`,
				Help:    map[string]string{"": `decir las edades: {=age 48 (72) months}`},
				Explain: `La línea {=age} dice para qué edad es cada talla. También la necesitan las precauciones.`},
			Example: wearing("  body children by age", usesChest), Fixed: wearing(aged+"  body children by age", usesChest)},

		{Code: "OV775", Severity: Error,
			En: Wording{
				Message: `{tables|the table|the tables} {={tables}} {tables|has|have} no {={name}} for {sizes}`,
				Help:    map[string]string{"": `give the measure yourself, for every size: {=fit {name} …}`},
				Explain: `A table gives a measure only if it has a figure for every size: a figure from elsewhere is not put in silently. A line {=fit}
of your own comes before the table and closes the gap.`},
			Es: Wording{
				Message: `{tables|la tabla|las tablas} {={tables}} no {tables|tiene|tienen} {={name}} para {sizes}`,
				Help:    map[string]string{"": `dar la medida, para todas las tallas: {=fit {name} …}`},
				Explain: `Una tabla da una medida solo si tiene una cifra para todas las tallas: no se toma de otra parte una cifra sin decirlo. Una
línea {=fit} propia pasa por delante de la tabla y llena el hueco.`},
			Example: wearing(aged+"  body children by age", usesHead), Fixed: wearing(aged+"  body children by age\n  fit head 50 (52) cm", usesHead)},

		{Code: "OV776", Severity: Note,
			En: Wording{
				Message: `{={name}} of the wearer is given as {have}; for that age the table {={table}} has {need}`,
				Help: map[string]string{
					"":       `check the figure for a slip; the table follows: {source}`,
					"memory": `check the figure for a slip; the table follows, from memory: {source}`},
				Explain: `Where the ages are known, your own figures are compared with the tables of body measures. A figure that lies more than
20 % off, and outside the neighbouring sizes as well, is as a rule a slip: another unit, two figures changed about, a measure laid
flat. It is a note: your figures stand.`},
			Es: Wording{
				Message: `para {={name}} se da {have}; la tabla {={table}} tiene para esa edad {need}`,
				Help: map[string]string{
					"":       `comprobar que la cifra no sea un error; la tabla sigue esta fuente: {source}`,
					"memory": `comprobar que la cifra no sea un error; la tabla sigue, de memoria, esta fuente: {source}`},
				Explain: `Si se conocen las edades, las cifras propias se comparan con las tablas de medidas del cuerpo. Una cifra que se
aparta más de un 20 % y queda además fuera de las tallas vecinas suele ser un error: otra unidad, dos cifras cambiadas, una
medida tomada en plano. Es una nota: valen las cifras propias.`},
			Example: wearing(aged+"  fit chest 85.5 (63.5) cm", ""), Fixed: wearing(aged+"  fit chest 58.5 (63.5) cm", "")},

		{Code: "OV777", Severity: Error,
			En: Wording{
				Message: `{={name}} does not go over {={body}}: around it is {have}; stretched, {most}; {={body}}, {need}`,
				Help: map[string]string{
					"":      `around it must be at least {least}, or its edge must stretch by {more}; a shoulder that buttons opens it too`,
					"plain": `around it must be at least {least}; or say how far its edge stretches, if it does by {more}: {=stretch 20 %}; a plain edge hardly stretches`},
				Explain: `What is pulled over the head must stretch to the head: the way round the opening, and as much more as the edge gives. How
far an edge stretches is measured on the swatch. Common practice, no source: 20 to 30 % in ribbing through the back loops or round
posts, next to nothing in a plain edge; where nothing is said, nothing is counted on. A fastening at the shoulder or the back makes
a small opening large.`},
			Es: Wording{
				Message: `{={name}} no pasa por {={body}}: de contorno mide {have}; estirado, {most}; {={body}}, {need}`,
				Help: map[string]string{
					"":      `de contorno debe medir al menos {least}, o su borde debe estirarse {more}; un hombro abotonado también lo abre`,
					"plain": `de contorno debe medir al menos {least}; o decir cuánto se estira su borde, si se estira {more}: {=stretch 20 %}; un borde liso apenas cede`},
				Explain: `Lo que se mete por la cabeza debe estirarse hasta la cabeza: el contorno de la abertura y lo que ceda su borde. Cuánto
cede un borde se mide en la muestra. Práctica común, sin fuente: de un 20 a un 30 % en un elástico por la hebra de atrás o en relieve, casi
nada en un borde liso; si no se dice nada, no se cuenta con nada. Un cierre en el hombro o en la espalda agranda una abertura
pequeña.`},
			Example: measuring("  fit head 14 (16) cm", "  neck = width of strip at row 1 goes over fit.head stretch 5 %"),
			Fixed:   measuring("  fit head 14 (16) cm", "  neck = width of strip at row 1 goes over fit.head stretch 20 %")},

		{Code: "OV778", Severity: Note,
			En: Wording{
				Message: `whether this {={kind}} goes over the head was not checked`,
				Help:    map[string]string{"": `measure the opening and say what goes over it: {=neck = around neckband at row 1 goes over fit.head stretch 20 %}`},
				Explain: `A garment of this kind is pulled over the head, as a rule, and children's heads are large beside their necks. A measure that
says {=goes over fit.head} is compared with the head in every size. A garment that buttons is not asked.`},
			Es: Wording{
				Message: `no se comprobó si esta prenda ({={kind}}) pasa por la cabeza`,
				Help:    map[string]string{"": `medir la abertura y decir por dónde pasa: {=neck = around neckband at row 1 goes over fit.head stretch 20 %}`},
				Explain: `Una prenda así se mete por la cabeza, por lo común, y la cabeza de los niños es grande para su cuello. Una medida que dice
{=goes over fit.head} se compara con la cabeza en todas las tallas. A una prenda que se abotona no se le pide.`},
			Example: strings.Replace(measuring(aged, "  width = width of strip at row 1"), "kind  sample", "kind  vest", 1),
			Fixed: strings.Replace(measuring(aged+"  fit head 50 (52) cm", "  width = width of strip at row 1\n  neck = 4 * width of strip at row 1 goes over fit.head"),
				"kind  sample", "kind  vest", 1)},

		{Code: "OV779", Severity: Note,
			En: Wording{
				Message: `an edge is counted on to stretch by {have} %, more than the {max} % that ribbing gives`,
				Help:    map[string]string{"": `measure it on the swatch, or make the opening wider`},
				Explain: `Common practice, no source: ribbing worked through the back loops or round posts stretches by 20 to 30 %, a plain edge
hardly at all. An edge that must stretch further is a struggle to put on and loses its shape.`},
			Es: Wording{
				Message: `se cuenta con que un borde se estire un {have} %, más del {max} % que da un elástico`,
				Help:    map[string]string{"": `medirlo en la muestra, o hacer más ancha la abertura`},
				Explain: `Práctica común, sin fuente: un elástico por la hebra de atrás o en relieve se estira de un 20 a un 30 %, un borde
liso casi nada. Un borde que debe estirarse más hace que la prenda cueste de poner, y pierde la forma.`},
			Example: measuring("  fit head 16 (18) cm", "  neck = width of strip at row 1 goes over fit.head stretch 40 %"),
			Fixed:   measuring("  fit head 16 (18) cm", "  neck = width of strip at row 1 goes over fit.head stretch 30 %")},

		{Code: "OV780", Severity: Note,
			En: Wording{
				Message: `no head is given: the opening is compared with the largest heads of the growth table, {need}`,
				Help:    map[string]string{"": `give the head yourself to go by it: {=fit head …}, or {=body heads by age} for the middle of the table`},
				Explain: `Where a source gives ages up to 5 years and no head, the 97th percentile of the WHO Child Growth Standards stands in, the larger
of boys and girls: an opening too small is the worse mistake. The page does not print it.`},
			Es: Wording{
				Message: `no se da la medida de la cabeza: la abertura se compara con las cabezas más grandes de la tabla de crecimiento, {need}`,
				Help:    map[string]string{"": `dar la medida de la cabeza, que vale entonces en su lugar: {=fit head …}, o {=body heads by age} para la mitad de la tabla`},
				Explain: `Si el patrón da edades de hasta 5 años y ninguna medida de la cabeza, vale el percentil 97 de los patrones de
crecimiento infantil de la OMS, el mayor de niños y niñas: una abertura demasiado pequeña es el error más grave. La página no lo imprime.`},
			Example: measuring("  age 24 (48) months", "  neck = 5 * width of strip at row 1 goes over fit.head"),
			Fixed:   measuring("  age 24 (48) months\n  body heads by age", "  neck = 5 * width of strip at row 1 goes over fit.head")},

		{Code: "OV781", Severity: Error,
			En: Wording{
				Message: `{={left}} comes to {have}, and {={right}} to {need}: more than {within} apart`,
				Help:    map[string]string{"": `one of the measures leaves out rows that another counts, or a part was changed alone; or say how far they may be apart: {=within 1 cm}`},
				Explain: `Measures that a maker adds up must add up: rise and inside leg make the length of trousers, side and armhole that of a top.
Each is worked out from the fabric by itself, so a sum that fails shows a band that was forgotten, or counted twice. Where nothing
is said, they may be 0.5 cm apart.`},
			Es: Wording{
				Message: `{={left}} da {have} y {={right}} da {need}: se apartan más de {within}`,
				Help:    map[string]string{"": `buscar hileras que una medida deja fuera y otra cuenta, o una pieza que se cambió sola; o decir cuánto se pueden apartar: {=within 1 cm}`},
				Explain: `Las medidas que se suman deben cuadrar: tiro y pierna interior hacen el largo de un pantalón, costado y sisa el de una prenda
de arriba. Cada una se calcula por su cuenta con el tejido, así que una suma que no cuadra descubre una tira olvidada o contada dos
veces. Si no se dice nada, se pueden apartar 0,5 cm.`},
			Example: measuring("", "  top = height of strip\n  leg = 2 * height of strip\n  all = 2 * height of strip\n  check top + leg equals all"),
			Fixed:   measuring("", "  top = height of strip\n  leg = 2 * height of strip\n  all = 3 * height of strip\n  check top + leg equals all")},

		{Code: "OV782", Severity: Warning,
			En: Wording{
				Message: `{={a}} and {={b}} come to {have}, and {={whole}} is {need}`,
				Help:    map[string]string{"": `a maker will add them up: take the same rows into both, give one another name, or state what adds up: {=check {a} + {b} equals {whole} within 2 cm}`},
				Explain: `Measures with these names are lengths that make up a third: rise and inside leg the length of trousers, side and armhole that
of a top. They are compared without being asked; a line {=check} that names all three takes the place of this.`},
			Es: Wording{
				Message: `{={a}} más {={b}} suman {have}, y {={whole}} es {need}`,
				Help:    map[string]string{"": `quien teje los sumará: tomar las mismas hileras en los dos, dar otro nombre a uno o decir qué cuadra: {=check {a} + {b} equals {whole} within 2 cm}`},
				Explain: `Las medidas con estos nombres son largos que suman otro: tiro y pierna interior el largo de un pantalón, costado y
sisa el de una prenda de arriba. Se comparan sin que se pida; una línea {=check} que nombra las tres ocupa el lugar de este aviso.`},
			Example: measuring("", "  rise = height of strip\n  inseam = 2 * height of strip\n  length = 2 * height of strip"),
			Fixed:   measuring("", "  rise = height of strip\n  inseam = 2 * height of strip\n  length = 3 * height of strip")},

		{Code: "OV783", Severity: Error,
			En: Wording{
				Message: `there is no measure called {word}`,
				Help: map[string]string{
					"near": `did you mean {={near|or}}?`,
					"none": `say in the {=measure} block what it is: {={word} = height of body}`},
				Explain: `A measure of the sample is compared with the measure of the same name in the {=measure} block, which is worked out from the
counts.`},
			Es: Wording{
				Message: `no hay ninguna medida llamada {word}`,
				Help: map[string]string{
					"near": `parecidas: {={near|or}}`,
					"none": `decir en el bloque {=measure} qué es: {={word} = height of body}`},
				Explain: `Una medida de la pieza de prueba se compara con la medida del mismo nombre en el bloque {=measure}, que se calcula con las
cuentas.`},
			Example: measuring("", "  width = width of strip at row 1") + "\nsample \"small\"\n  widht 12.5 cm\nend\n",
			Fixed:   measuring("", "  width = width of strip at row 1") + "\nsample \"small\"\n  width 12.5 cm\nend\n"},

		{Code: "OV784", Severity: Error,
			En: Wording{
				Message: `{={name}} does not go around, so laid flat it is what it is`,
				Help:    map[string]string{"": `take out {=flat}, or measure what goes around`},
				Explain: `Something that goes around is measured laid flat, where half of it shows; {=flat} doubles it. A measure goes around if it is
taken around a part, or across several flat pieces that lie on each other, such as {=width of back + width of front}.`},
			Es: Wording{
				Message: `{={name}} no da la vuelta: en plano mide lo mismo`,
				Help:    map[string]string{"": `quitar {=flat}, o medir lo que da la vuelta`},
				Explain: `Lo que da la vuelta se mide en plano, donde se ve la mitad; {=flat} la dobla. Una medida da la vuelta si se toma alrededor de una
pieza, o a lo ancho de varias piezas planas puestas una sobre otra, como {=width of back + width of front}.`},
			Example: measuring("", "  length = height of strip") + "\nsample \"small\"\n  length 5.5 cm flat\nend\n",
			Fixed:   measuring("", "  length = height of strip") + "\nsample \"small\"\n  length 5.5 cm\nend\n"},

		{Code: "OV785", Severity: Warning,
			En: Wording{
				Message: `{={name}} of the sample is {found}, and the counts give {need} in size {size}`,
				Mark:    `more than {within} apart`,
				Help:    map[string]string{"": `the sample is the truth: count a gauge on it and put that into the {=gauge} block, or check the measure; if both are right, say how far it may be off: {=within 2 cm}`},
				Explain: `The finished measures are counts over gauge. A sample that measures something else was worked at another gauge, was blocked
otherwise, or has other counts; whichever it is, makers will get what the sample shows. Common practice, no source: 1 cm, or 3 % of a
long measure, is near enough.`},
			Es: Wording{
				Message: `{={name}} de la pieza de prueba mide {found}, y las cuentas dan {need} en la talla {size}`,
				Mark:    `se apartan más de {within}`,
				Help:    map[string]string{"": `la pieza de prueba manda: contar una muestra en ella y ponerla en el bloque {=gauge}, o revisar la medida; si las dos están bien, decir cuánto se puede apartar: {=within 2 cm}`},
				Explain: `Las medidas terminadas son cuentas divididas por la muestra. Una pieza de prueba que mide otra cosa se tejió con otra tensión,
se bloqueó de otro modo o tiene otras cuentas; sea lo que sea, a quien teja le saldrá lo que enseña la pieza. Práctica común, sin
fuente: basta con 1 cm, o con un 3 % de una medida larga.`},
			Example: measuring("", "  width = width of strip at row 1") + "\nsample \"small\"\n  width 14.5 cm\nend\n",
			Fixed:   measuring("", "  width = width of strip at row 1") + "\nsample \"small\"\n  width 13 cm\nend\n"},

		{Code: "OV786", Severity: Error,
			En: Wording{
				Message: `{part} does not start in a ring, so it cannot be measured across`,
				Help:    map[string]string{"": `measure its width at a row; an oval that starts along a chain is {=2 * height of {part}} wide`},
				Explain: `Across a piece is from edge to edge through its middle: twice the height of its rounds. It is known only where the piece
starts in its middle, in a ring.`},
			Es: Wording{
				Message: `{part} no empieza en un anillo, así que no se puede medir de lado a lado`,
				Help:    map[string]string{"": `medir su ancho en una hilera; un óvalo que empieza en una cadena mide {=2 * height of {part}} de ancho`},
				Explain: `De lado a lado es de borde a borde pasando por el centro: dos veces el alto de sus vueltas. Solo se sabe si la pieza empieza
en su centro, en un anillo.`},
			Example: measuring("", "  diameter = across strip"), Fixed: discOf("6", "  diameter = across disc")},

		{Code: "OV787", Severity: Warning,
			En: Wording{
				Message: `{part} is measured across, and does not lie flat: its last round is {have} around, where a disc of that size is {need}`,
				Help:    map[string]string{"": `measure across a round where it is still flat: {=across {part} at round 6}; or increase more in each round`},
				Explain: `Across is the diameter of something flat. With fewer stitches than a circle needs, the piece stands up as a bowl, and twice the
height of its rounds is the way over the bowl. A flat circle grows in each round by about 6 times the height of a round over the
width of a stitch (plane geometry).`},
			Es: Wording{
				Message: `{part} se mide de lado a lado y no queda en plano: su última vuelta mide {have} de contorno, y un disco de ese tamaño, {need}`,
				Help:    map[string]string{"": `medir en una vuelta en la que aún quede plano: {=across {part} at round 6}; o aumentar más en cada vuelta`},
				Explain: `De lado a lado es el diámetro de algo plano. Con menos puntos de los que pide un círculo, la pieza se levanta como un cuenco,
y dos veces el alto de sus vueltas es el camino por encima del cuenco. Un círculo plano crece en cada vuelta unas 6 veces el alto de
una vuelta entre el ancho de un punto (geometría plana).`},
			Example: discOf("3", "  diameter = across disc"), Fixed: discOf("6", "  diameter = across disc")},

		{Code: "OV788", Severity: Note,
			En: Wording{
				Message: `{={name}} has an ease of {have}, with {={body}} of {need}: far from any usual fit`,
				Help:    map[string]string{"": `check that {={name}} goes all the way round, that it is compared with the right measure, and the units`},
				Explain: `What clings is a little smaller than its wearer, what is oversized 15 cm larger and more. A measure that is smaller by a fifth, or
larger by more than half, is as a rule the width of one piece where two lie on each other, or another measure of the body. Common
practice, no source: 20 % below to 60 % above.`},
			Es: Wording{
				Message: `{={name}} tiene una holgura de {have}, con {={body}} de {need}: muy lejos de lo que se suele llevar`,
				Help:    map[string]string{"": `comprobar que {={name}} da toda la vuelta y se compara con la medida debida, y revisar las unidades`},
				Explain: `Lo ceñido es algo más pequeño que quien lo lleva; lo muy holgado, 15 cm o más por encima. Una medida una quinta
parte más pequeña, o más de la mitad más grande, suele ser el ancho de una pieza donde hay dos, una sobre otra, u otra medida
del cuerpo. Práctica común, sin fuente: de un 20 % menos a un 60 % más.`},
			Example: measuring("  fit chest 30 (34) cm", "  chest = width of strip at row 1 fits fit.chest ease -20 to 6 cm"),
			Fixed:   measuring("  fit chest 24 (28) cm", "  chest = 2 * width of strip at row 1 fits fit.chest ease -20 to 6 cm")},
	}
}
