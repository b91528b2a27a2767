package diag

import "strings"

// Codes 7xx: measures and materials.

// swatchOf is a small source with the lines given before its part, worked with the yarn main if there is one.
func swatchOf(lines, part, end string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
end

sizes "S", "M"
  age 18 years
end

` + lines + `

part strip
  title en "Strip" es "Tira"
` + part + `
  fasten off
end
` + end
}

const (
	scGauge = `gauge 10 cm
  sc 16 sts, 18 rows
end`

	scRounds = `gauge 10 cm
  sc 16 sts, 18 rounds
end`

	plainPart = `  in rows
  chain 20 (24)
  10 rows: sc in each = 20 (24)`

	kelpPart = "  yarn kelp\n" + plainPart
)

// kelp is the yarn kelp with some lines of its own, and what a yarn needs besides.
func kelp(lines string) string {
	for _, usual := range []string{"  weight medium", "  fibre  cotton 100 %"} {
		if word, _, _ := strings.Cut(strings.TrimSpace(usual), " "); !strings.Contains(lines, "  "+word+" ") {
			lines = usual + "\n" + lines
		}
	}
	return `yarn kelp
  name en "kelp" es "alga"
` + lines + `
end`
}

const (
	kelpBall   = `  ball 50 g, 120 m`
	kelpSwatch = `  swatch 16 sts by 18 rows of sc, 5 g`
)

func measures() []Entry {
	return []Entry{
		{Code: "OV701", Severity: Error,
			En: Wording{
				Message: `a length is asked for in {={stitch}}, but {={stitch}} has no gauge`,
				Mark:    `how many of these measure 10 cm?`,
				Help:    map[string]string{"": `add the gauge of {={stitch}} to the {=gauge} block: {={stitch} 16 sts, 18 rows}`},
				Explain: `A length becomes stitches, and stitches become a length, by the gauge: how many stitches and rows of this
stitch measure 10 cm. Every stitch that a length is asked in needs its own line in the {=gauge} block, measured on a swatch of
that stitch; one stitch cannot stand for another.`},
			Es: Wording{
				Message: `se pide una longitud en {={stitch}}, pero {={stitch}} no tiene muestra`,
				Mark:    `¿cuántos de estos miden 10 cm?`,
				Help:    map[string]string{"": `añadir la muestra de {={stitch}} al bloque {=gauge}: {={stitch} 16 sts, 18 rows}`},
				Explain: `Una longitud se convierte en puntos, y los puntos en longitud, según la muestra: cuántos puntos e hileras de este
punto miden 10 cm. Cada punto en el que se pide una longitud necesita su propia línea en el bloque {=gauge}, medida en una muestra
de ese punto; un punto no puede valer por otro.`},
			Example: strip(`let wide = stitches(20 cm, dc)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc)`)},

		{Code: "OV702", Severity: Error,
			En: Wording{
				Message: `rows of {={stitch}} are asked for by length, but its gauge gives no rows`,
				Mark:    `how many rows of these measure 10 cm?`,
				Help:    map[string]string{"": `add the rows to its line in the {=gauge} block: {={stitch} 16 sts, 18 rows}`},
				Explain: `The gauge of a stitch has two figures: how many stitches stand side by side in 10 cm, and how many rows stand on
each other. A length worked in rows needs the second.`},
			Es: Wording{
				Message: `se piden hileras de {={stitch}} por su longitud, pero su muestra no da hileras`,
				Mark:    `¿cuántas hileras de estas miden 10 cm?`,
				Help:    map[string]string{"": `añadir las hileras a su línea en el bloque {=gauge}: {={stitch} 16 sts, 18 rows}`},
				Explain: `La muestra de un punto tiene dos cifras: cuántos puntos caben uno al lado del otro en 10 cm y cuántas hileras caben
una sobre otra. Una longitud tejida en hileras necesita la segunda.`},
			Example: swatchOf("gauge 10 cm\n  sc 16 sts\nend\n\nlet tall = rows(10 cm, sc)",
				"  in rows\n  chain 20\n  tall rows: sc in each = 20", ""),
			Fixed: swatchOf(scGauge+"\n\nlet tall = rows(10 cm, sc)",
				"  in rows\n  chain 20\n  tall rows: sc in each = 20", "")},

		{Code: "OV703", Severity: Note,
			En: Wording{
				Message: `how much of the yarn {yarn} is needed cannot be estimated without a swatch or a sample that was weighed`,
				Help:    map[string]string{"": `weigh a swatch and say what it was: {=swatch 16 sts by 18 rows of sc, 5 g}`},
				Explain: `The yarn for each size is worked out from a piece that was weighed, a swatch or the sample of the whole pattern: its
weight for its area, times the area of the pattern. Without one the page leaves the amount open, which is among the things makers complain of most.`},
			Es: Wording{
				Message: `sin pesar una muestra o la pieza de prueba no se puede calcular cuánto hilo {yarn} hace falta`,
				Help:    map[string]string{"": `pesar una muestra y decir cómo es: {=swatch 16 sts by 18 rows of sc, 5 g}`},
				Explain: `El hilo de cada talla se calcula a partir de una pieza pesada, una muestra o la pieza de prueba entera: su peso por
superficie, por la superficie del patrón. Sin ella la página deja abierta la cantidad, una de las cosas de las que más se quejan quienes tejen.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV704", Severity: Note,
			En: Wording{
				Message: `how much of the yarn {yarn} is needed cannot be estimated without the weight and length of a ball`,
				Help:    map[string]string{"": `say what a ball holds: {=ball 50 g, 120 m}`},
				Explain: `Cords and pompoms take a length of yarn, fabric takes a weight. To add the two, the tool must know how long a gram
is, and only the ball says so.`},
			Es: Wording{
				Message: `sin el peso y la longitud de un ovillo no se puede calcular cuánto hilo {yarn} hace falta`,
				Help:    map[string]string{"": `decir qué lleva un ovillo: {=ball 50 g, 120 m}`},
				Explain: `Los cordones y pompones gastan una longitud de hilo; el tejido, un peso. Para sumarlos hay que saber cuánto mide un
gramo, y eso solo lo dice el ovillo.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpSwatch), kelpPart, "\nfinish\n  pompom with kelp, 5 cm, 80 wraps\nend\n"),
			Fixed: swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart,
				"\nfinish\n  pompom with kelp, 5 cm, 80 wraps\nend\n")},

		{Code: "OV705", Severity: Warning,
			En: Wording{
				Message: `the yarn {yarn} is described and never used`,
				Help:    map[string]string{"": `take out its block, or work a part with it: {=yarn {yarn}}`},
				Explain: `A yarn on the list of materials will be bought. One that no part, cord or pompom is made of is as a rule left over
from an earlier draft, or its name was written differently where it was meant.`},
			Es: Wording{
				Message: `el hilo {yarn} se describe y no se usa`,
				Help:    map[string]string{"": `quitar su bloque o tejer una pieza con él: {=yarn {yarn}}`},
				Explain: `Un hilo de la lista de materiales se compra. Si ninguna pieza, cordón o pompón se hace con él, por lo común quedó de
un borrador anterior o se escribió de otra manera donde se quería usar.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch)+"\nyarn sand like kelp\n  name en \"sand\" es \"arena\"\nend", kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV706", Severity: Note,
			En: Wording{
				Message: `{hook} is no usual size of hook`,
				Help:    map[string]string{"": `the usual size nearest to it is {near}`},
				Explain: `The size is printed as it stands. A size that no maker sells is as a rule a slip of the pen, such as 3.57 for 3.75.`},
			Es: Wording{
				Message: `{hook} no es una medida habitual de ganchillo`,
				Help:    map[string]string{"": `la medida habitual más cercana es {near}`},
				Explain: `La medida se imprime como está. Una medida que ningún fabricante vende suele ser un error al escribir, como 3,57 por
3,75.`},
			Example: swatchOf(scGauge+"\nhook 4.1 mm", plainPart, ""),
			Fixed:   swatchOf(scGauge+"\nhook 4 mm", plainPart, "")},

		{Code: "OV707", Severity: Warning,
			En: Wording{
				Message: `a hook of {hook} is far from what is usual for yarn of the class {={class}}`,
				Mark:    `usual for this class: {usual}`,
				Related: map[string]string{"hook": `the hook`},
				Help:    map[string]string{"": `check the class of the yarn and the size of the hook`},
				Explain: `The classes of yarn come with a range of hooks for cloth of usual firmness. Lace and toys leave it on purpose, so only
a hook less than half the smallest or far above the largest is reported: there the class or the hook is as a rule a slip.`},
			Es: Wording{
				Message: `un ganchillo de {hook} se aparta mucho de lo habitual para hilo de la clase {={class}}`,
				Mark:    `habitual para esta clase: {usual}`,
				Related: map[string]string{"hook": `el ganchillo`},
				Help:    map[string]string{"": `revisar la clase del hilo y la medida del ganchillo`},
				Explain: `Las clases de hilo llevan una serie de ganchillos para un tejido de firmeza corriente. Los calados y los muñecos se
salen de ella a propósito, así que solo se avisa de un ganchillo menor que la mitad del más fino o mucho mayor que el más grueso:
ahí la clase o el ganchillo suele ser un error.`},
			Example: swatchOf(scGauge+"\nhook 10 mm\n\n"+kelp("  weight light\n"+kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\nhook 5 mm\n\n"+kelp("  weight light\n"+kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV708", Severity: Warning,
			En: Wording{
				Message: `{found} stitches to 10 cm are far from what is usual for yarn of the class {={class}}`,
				Mark:    `usual for this class: {usual} stitches`,
				Related: map[string]string{"gauge": `the gauge`},
				Help:    map[string]string{"": `check the class of the yarn and the gauge`},
				Explain: `Each class of yarn makes stitches of a usual width. A gauge far outside it is as a rule a slip: a count over 5 cm, or
another class of yarn. Only figures far out are reported, since fabrics are made firmer and looser on purpose.`},
			Es: Wording{
				Message: `{found} puntos en 10 cm se apartan mucho de lo habitual para hilo de la clase {={class}}`,
				Mark:    `habitual para esta clase: {usual} puntos`,
				Related: map[string]string{"gauge": `la muestra`},
				Help:    map[string]string{"": `revisar la clase del hilo y la muestra`},
				Explain: `Cada clase de hilo da puntos de un ancho habitual. Una muestra muy alejada suele ser un error: una cuenta hecha en 5 cm
u otra clase de hilo. Solo se avisa de cifras muy alejadas, porque se teje más firme o más suelto a propósito.`},
			Example: swatchOf("gauge 10 cm\n  sc 40 sts, 44 rows\nend\nhook 5 mm\n\n"+kelp("  weight light\n"+kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\nhook 5 mm\n\n"+kelp("  weight light\n"+kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV709", Severity: Note,
			En: Wording{
				Message: `the fibre {name} is not one of those known here`,
				Help: map[string]string{
					"none": `it is printed as it stands; check that it is the name the law of the market asks for`,
					"near": `a known fibre like it: {={near|or}}`},
				Explain: `Fibre names are set by law in many markets, and buyers with allergies go by them. A known name is put into each
language of the page; an unknown one is printed as it stands in the source.`},
			Es: Wording{
				Message: `la fibra {name} no está entre las conocidas aquí`,
				Help: map[string]string{
					"none": `se imprime como está; comprobar que sea el nombre que pide la ley del mercado`,
					"near": `una fibra conocida parecida: {={near|or}}`},
				Explain: `En muchos mercados la ley fija los nombres de las fibras, y quien tiene alergias se guía por ellos. Un nombre
conocido se pone en cada idioma de la página; uno desconocido se imprime como está en el patrón.`},
			Example: swatchOf(scGauge+"\n\n"+kelp("  fibre coton 100 %\n"+kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp("  fibre cotton 100 %\n"+kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV712", Severity: Warning,
			En: Wording{
				Message: `the fibres add up to {sum} %, not to 100 %`,
				Help:    map[string]string{"": `write the shares as the label of the yarn gives them`},
				Explain: `The shares of the fibres are shares of the whole yarn, so together they are 100 %. A missing fibre is a missing
fact for whoever washes the piece or reacts to a fibre.`},
			Es: Wording{
				Message: `las fibras suman {sum} %, no 100 %`,
				Help:    map[string]string{"": `escribir las partes como las da la etiqueta del hilo`},
				Explain: `Las partes de las fibras son partes del hilo entero, así que juntas son el 100 %. Una fibra que falta es un dato que
falta a quien lava la pieza o a quien reacciona a una fibra.`},
			Example: swatchOf(scGauge+"\n\n"+kelp("  fibre cotton 60 %, wool 30 %\n"+kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp("  fibre cotton 60 %, wool 40 %\n"+kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV713", Severity: Warning,
			En: Wording{
				Message: `{name} is no class of yarn`,
				Help:    map[string]string{"": `the classes are {={names}}, thinnest first`},
				Explain: `The class says how thick a yarn is, so that makers can find another one. The names are those of the table that most
labels carry, with a number from 0 to 7.`},
			Es: Wording{
				Message: `{name} no es una clase de hilo`,
				Help:    map[string]string{"": `las clases son {={names}}, de la más fina a la más gruesa`},
				Explain: `La clase dice el grosor del hilo, para que se pueda buscar otro. Los nombres son los de la tabla que llevan casi todas
las etiquetas, con un número de 0 a 7.`},
			Example: swatchOf(scGauge+"\n\n"+kelp("  weight sport\n"+kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp("  weight fine\n"+kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV714", Severity: Note,
			En: Wording{
				Message: `how much of the yarn {yarn} is needed cannot be estimated without the gauge of its swatch`,
				Help:    map[string]string{"": `give the stitch of the swatch its line in the {=gauge} block, with stitches and rows`},
				Explain: `The swatch is told in stitches and rows. To know its area, the tool needs how many of each measure 10 cm.`},
			Es: Wording{
				Message: `sin la muestra del punto pesado no se puede calcular cuánto hilo {yarn} hace falta`,
				Help:    map[string]string{"": `dar al punto de la muestra pesada su línea en el bloque {=gauge}, con puntos e hileras`},
				Explain: `La muestra pesada se cuenta en puntos e hileras. Para saber su superficie hace falta cuántos de cada uno miden 10 cm.`},
			Example: swatchOf("gauge 10 cm\n  sc 16 sts\nend\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV750", Severity: Error,
			En: Wording{
				Message: `a gauge is counted over a length above zero`,
				Mark:    `not such a length`,
				Help:    map[string]string{"": `write the length that was measured: {=gauge 10 cm}`},
				Explain: `The {=gauge} block begins with the length over which stitches and rows were counted, as a rule 10 cm. Measure over 10 cm
or more: a count over 5 cm that is doubled gives a wrong gauge in dense fabrics.`},
			Es: Wording{
				Message: `una muestra se cuenta en una longitud mayor que cero`,
				Mark:    `no es una longitud así`,
				Help:    map[string]string{"": `escribir la longitud medida: {=gauge 10 cm}`},
				Explain: `El bloque {=gauge} empieza por la longitud en la que se contaron puntos e hileras, por lo común 10 cm. Conviene medir
en 10 cm o más: una cuenta hecha en 5 cm y doblada da una muestra falsa en tejidos densos.`},
			Example: swatchOf("gauge 10 g\n  sc 16 sts, 18 rows\nend", plainPart, ""),
			Fixed:   swatchOf(scGauge, plainPart, "")},

		{Code: "OV751", Severity: Error,
			En: Wording{
				Message: `the size of a hook is a length`,
				Help:    map[string]string{"": `write it in millimetres: {=hook 4 mm}`},
				Explain: `Hooks are told by the thickness of their shaft in millimetres. The names by letter and number are printed beside it,
from a table.`},
			Es: Wording{
				Message: `la medida de un ganchillo es una longitud`,
				Help:    map[string]string{"": `escribirla en milímetros: {=hook 4 mm}`},
				Explain: `Los ganchillos se nombran por el grosor de su vástago en milímetros. Los nombres con letra y número se imprimen al lado,
según una tabla.`},
			Example: swatchOf(scGauge+"\nhook 4", plainPart, ""),
			Fixed:   swatchOf(scGauge+"\nhook 4 mm", plainPart, "")},

		{Code: "OV752", Severity: Error,
			En: Wording{
				Message: `a length is asked of rows in {={stitch}}, and {={stitch}} has no gauge`,
				Help:    map[string]string{"": `add the gauge of {={stitch}} to the {=gauge} block: {={stitch} 16 sts, 18 rows}`},
				Explain: `How tall and wide rows come out is known only by the gauge of their stitch. Where rows are worked to a length, or the
piece is measured, each stitch in them needs its line in the {=gauge} block.`},
			Es: Wording{
				Message: `se pide una longitud en hileras de {={stitch}}, y {={stitch}} no tiene muestra`,
				Help:    map[string]string{"": `añadir la muestra de {={stitch}} al bloque {=gauge}: {={stitch} 16 sts, 18 rows}`},
				Explain: `El alto y el ancho de las hileras solo se conocen por la muestra de su punto. Donde se tejen hileras hasta una longitud,
o se mide la pieza, cada punto que llevan necesita su línea en el bloque {=gauge}.`},
			Example: swatchOf("", "  in rows\n  chain 20\n  rows for 10 cm: sc in each = 20", ""),
			Fixed:   swatchOf(scGauge, "  in rows\n  chain 20\n  rows for 10 cm: sc in each = 20", "")},

		{Code: "OV753", Severity: Error,
			En: Wording{
				Message: `a measure must be a length`,
				Mark:    `this is none`,
				Help:    map[string]string{"": `measure the piece: {=height of body}, {=around body at row 2}, {=width of back at row 1}`},
				Explain: `The {=measure} block states lengths of the finished piece, worked out from its rows and the gauge. The length of a cord
is a length too. A count of stitches is not; ask for the width of the row that has them.`},
			Es: Wording{
				Message: `una medida debe ser una longitud`,
				Mark:    `esto no lo es`,
				Help:    map[string]string{"": `medir la pieza: {=height of body}, {=around body at row 2}, {=width of back at row 1}`},
				Explain: `El bloque {=measure} da longitudes de la pieza terminada, calculadas con sus hileras y la muestra. El largo de un
cordón también es una longitud. Una cuenta de puntos no lo es; para ella se pide el ancho de la hilera que los tiene.`},
			Example: swatchOf(scGauge, plainPart, "\nmeasure\n  length = 20 (24)\nend\n"),
			Fixed:   swatchOf(scGauge, plainPart, "\nmeasure\n  length = height of strip\nend\n")},

		{Code: "OV754", Severity: Error,
			En: Wording{
				Message: `{part} has no {round} {need}: it ends after {have}`,
				Mark:    `{round} {need} is measured here`,
				Help:    map[string]string{"": `measure at a {round} that every size works`},
				Explain: `Rows are numbered from 1 in each part and each size. A row can be measured only if it is worked in every size; the
shortest size decides.`},
			Es: Wording{
				Message: `{part} no tiene la {round} {need}: acaba tras la {have}`,
				Mark:    `aquí se mide la {round} {need}`,
				Help:    map[string]string{"": `medir en una {round} que se teja en todas las tallas`},
				Explain: `Las hileras se numeran desde 1 en cada pieza y en cada talla. Solo se puede medir una hilera que se teje en todas las
tallas; decide la más corta.`},
			Example: swatchOf(scGauge, plainPart, "\nmeasure\n  width = width of strip at row 12\nend\n"),
			Fixed:   swatchOf(scGauge, plainPart, "\nmeasure\n  width = width of strip at row 10\nend\n")},

		{Code: "OV755", Severity: Warning,
			En: Wording{
				Message: `{={name}} has an ease of {have}, outside {lo} to {hi}`,
				Mark:    `ease is the finished measure minus {={body}} of the wearer`,
				Help:    map[string]string{"": `change the count that {={name}} comes from, the gauge, or the ease that is wanted; in small sizes one repeat of the stitch pattern may be more than the whole range`},
				Explain: `Ease is how much larger than the wearer a piece is. The source says between which limits it should lie; outside them
the piece will sit tighter or looser in some sizes than in the others. With large repeats not every size can be met: widen the
range on purpose, or change the repeat.`},
			Es: Wording{
				Message: `{={name}} tiene una holgura de {have}, fuera del margen de {lo} a {hi}`,
				Mark:    `la holgura es la medida terminada menos {={body}} de la persona`,
				Help:    map[string]string{"": `cambiar la cuenta de la que sale {={name}}, la muestra o la holgura deseada; en tallas pequeñas una repetición de la puntada puede ser más que todo el margen`},
				Explain: `La holgura es cuánto más grande que la persona es una pieza. El patrón dice entre qué límites debe estar; fuera
de ellos la pieza quedará en algunas tallas más ceñida o más suelta que en las demás. Con repeticiones grandes no siempre
se puede cumplir en todas las tallas: entonces se amplía el margen a propósito o se cambia la repetición.`},
			Example: easeTrial("12 (15)"), Fixed: easeTrial("11 (13)")},

		{Code: "OV756", Severity: Error,
			En: Wording{
				Message: `{={name}} comes out at {have}, but {need} is wanted within {within}`,
				Help:    map[string]string{"": `change the count that {={name}} comes from, or say how far it may be off: {=within 2 cm}`},
				Explain: `The measure was worked out from the rows and the gauge, and lies further from the wanted length than allowed. If no
limit is given, 1 cm is meant. Either the counts or the wish must give way.`},
			Es: Wording{
				Message: `{={name}} queda en {have}, pero se quiere {need} con un margen de {within}`,
				Help:    map[string]string{"": `cambiar la cuenta de la que sale {={name}}, o decir cuánto se puede apartar: {=within 2 cm}`},
				Explain: `La medida se calculó con las hileras y la muestra, y se aparta de la longitud deseada más de lo permitido. Si no se da
un margen, vale 1 cm. Tiene que ceder la cuenta o el deseo.`},
			Example: swatchOf(scGauge, plainPart, "\nmeasure\n  width = width of strip at row 1 wanted 12.5 (18) cm within 1 cm\nend\n"),
			Fixed:   swatchOf(scGauge, plainPart, "\nmeasure\n  width = width of strip at row 1 wanted 12.5 (15) cm within 1 cm\nend\n")},

		{Code: "OV757", Severity: Error,
			En: Wording{
				Message: `the two edges of this seam measure {have} and {need}, more than {within} apart`,
				Help:    map[string]string{"": `make the edges agree, or say how much is eased in: {=within 2 cm}`},
				Explain: `Two edges that are sewn together must be of about the same length in every size, or the longer one will pucker. If
no limit is given, 1 cm is meant.`},
			Es: Wording{
				Message: `los dos bordes de esta costura miden {have} y {need}, con más de {within} de diferencia`,
				Help:    map[string]string{"": `hacer que los bordes coincidan, o decir cuánto se embebe: {=within 2 cm}`},
				Explain: `Dos bordes que se cosen deben medir más o menos lo mismo en todas las tallas, o el más largo hará arrugas. Si no se da
un margen, vale 1 cm.`},
			Example: seamTrial("26 (30)"), Fixed: seamTrial("20 (24)")},

		{Code: "OV758", Severity: Error,
			En: Wording{
				Message: `how much is needed is a weight, a length or a number`,
				Mark:    `this is none of them`,
				Help:    map[string]string{"": `write the amount in {=g}, {=cm} or {=m}, or how many: {=notion en "toy stuffing" es "relleno", 30 g}`},
				Explain: `What stands behind a {=notion} is bought: by weight, such as stuffing, by length, such as elastic or ribbon, or by the piece,
such as snap fasteners. Where no amount is said, the name alone is printed.`},
			Es: Wording{
				Message: `lo que hace falta se dice con un peso, una longitud o un número`,
				Mark:    `esto no es nada de eso`,
				Help:    map[string]string{"": `escribir la cantidad en {=g}, {=cm} o {=m}, o cuántos son: {=notion en "toy stuffing" es "relleno", 30 g}`},
				Explain: `Lo que sigue a {=notion} se compra: por peso, como el relleno, por longitud, como la goma elástica o la cinta, o por piezas,
como los broches. Si no se dice la cantidad, se imprime solo el nombre.`},
			Example: swatchOf(scGauge+"\nnotion en \"toy stuffing\" es \"relleno\", 30 %", plainPart, ""),
			Fixed:   swatchOf(scGauge+"\nnotion en \"toy stuffing\" es \"relleno\", 30 g", plainPart, "")},
	}
}

// easeTrial is a small source whose piece has some ease over a waist of so many cm.
func easeTrial(waist string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
end

sizes "S", "M"
  fit waist ` + waist + ` cm
end

` + scGauge + `

part strip
  title en "Strip" es "Tira"
` + plainPart + `
  fasten off
end

measure
  waist = width of strip at row 1 fits fit.waist ease 1 to 3 cm
end
`
}

// seamTrial is a small source that sews two strips together; the second has so many stitches.
func seamTrial(second string) string {
	return swatchOf(scGauge, plainPart, `
part band
  title en "Band" es "Banda"
  in rows
  chain `+second+`
  4 rows: sc in each = `+second+`
  fasten off
end

finish
  sew strip.edge to band.edge
end
`)
}
