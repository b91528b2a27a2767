package diag

// What stands at the place where a line could not be read on; every message of this file marks it so.
const (
	hereEn = `{end|the line ends here|“{found}” stands here}`
	hereEs = `{end|aquí acaba la línea|aquí está «{found}»}`
)

func writingNext() []Entry {
	return []Entry{
		{Code: "OV131", Severity: Error,
			En: Wording{
				Message: `{end|something is missing behind “{after}”|“{found}” does not fit here}`,
				Mark:    `{end|the line ends here|up to here the line can be read}`,
				Help: map[string]string{
					"form": `it is written like this: {={form}}`,
					"near": `a word like “{wrong}” that can stand here: {={near|or}}`},
				Explain: `Each kind of line has a fixed order of words, given in the reference. Up to the marked place the line follows it. The
word there may be misspelt, stand in the wrong place, or belong to a line of its own.`},
			Es: Wording{
				Message: `{end|falta algo detrás de «{after}»|«{found}» no encaja aquí}`,
				Mark:    `{end|aquí acaba la línea|hasta aquí se puede leer la línea}`,
				Help: map[string]string{
					"form": `se escribe así: {={form}}`,
					"near": `una palabra parecida a «{wrong}» que puede ir aquí: {={near|or}}`},
				Explain: `Cada clase de línea tiene un orden fijo de palabras, que da la referencia. Hasta el lugar marcado la línea lo sigue. La
palabra que hay allí puede estar mal escrita, en otro lugar o pertenecer a otra línea.`},
			Example: band(`round: sc in each around`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV132", Severity: Error,
			En: Wording{
				Message: `behind “{after}” comes {={words|or}}`,
				Mark:    hereEn,
				Help: map[string]string{
					"form": `it is written like this: {={form}}`,
					"near": `a word like “{wrong}” that can stand here: {={near|or}}`},
				Explain: `In some places only a few words can follow. They are named in the message, and the reference shows them in whole
lines.`},
			Es: Wording{
				Message: `detrás de «{after}» viene {={words|or}}`,
				Mark:    hereEs,
				Help: map[string]string{
					"form": `se escribe así: {={form}}`,
					"near": `una palabra parecida a «{wrong}» que puede ir aquí: {={near|or}}`},
				Explain: `En algunos lugares solo pueden seguir unas pocas palabras. El mensaje las nombra, y la referencia las muestra en líneas
completas.`},
			Example: band("round: sc in each\n  close through front lops"),
			Fixed:   band("round: sc in each\n  close through front loops")},

		{Code: "OV133", Severity: Error,
			En: Wording{
				Message: `a name is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write one word of letters, digits and {=_}, which begins with a letter: {={form}}`},
				Explain: `A name is one word: {=left_sleeve}, {=m1}, {=año}. It begins with a letter, and two words are joined by an underscore. What is
printed is said apart from it, with {=title} or {=call}, and may have several words.`},
			Es: Wording{
				Message: `falta un nombre detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir una palabra de letras, cifras y {=_} que empiece por letra: {={form}}`},
				Explain: `Un nombre es una sola palabra: {=left_sleeve}, {=m1}, {=año}. Empieza por una letra, y dos palabras se unen con un guion bajo.
Lo que se imprime se dice aparte, con {=title} o {=call}, y puede tener varias palabras.`},
			Example: band(`round: sc in each as 2`),
			Fixed:   band(`round: sc in each as second`)},

		{Code: "OV134", Severity: Error,
			En: Wording{
				Message: `“{word}” is a word of the language and cannot be a name`,
				Mark:    `a name is needed here`,
				Help:    map[string]string{"": `choose another, or lengthen it: {word}_1`},
				Explain: `Words such as {=in}, {=next}, {=round} or {=space} have a fixed meaning wherever they stand. If one of them could also be a
marker or a piece, a line that uses it would read two ways.`},
			Es: Wording{
				Message: `«{word}» es una palabra del lenguaje y no puede ser un nombre`,
				Mark:    `aquí hace falta un nombre`,
				Help:    map[string]string{"": `elegir otro, o alargarlo: {word}_1`},
				Explain: `Palabras como {=in}, {=next}, {=round} o {=space} tienen un significado fijo dondequiera que estén. Si una de ellas pudiera ser
también un marcador o una pieza, la línea que la usa se leería de dos maneras.`},
			Example: band(`round: sc in each as ring`),
			Fixed:   band(`round: sc in each as ring_1`)},

		{Code: "OV135", Severity: Error,
			En: Wording{
				Message: `a number is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `it is written like this: {={form}}`},
				Explain: `Here stands how many: a number, one for each size such as {=96 (104, 112)}, or the name of a value made with {=let}. A length
with a unit is no number of stitches: {=stitches( )} makes one of it.`},
			Es: Wording{
				Message: `falta un número detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `se escribe así: {={form}}`},
				Explain: `Aquí va cuántos: un número, uno por talla como {=96 (104, 112)}, o el nombre de un valor definido con {=let}. Una longitud
con unidad no es un número de puntos: {=stitches( )} la convierte.`},
			Example: band(`round: sc in next, ch, skip 1, sc in each`),
			Fixed:   band(`round: sc in next, ch 1, skip 1, sc in each    = 39 sts, 1 space`)},

		{Code: "OV136", Severity: Error,
			En: Wording{
				Message: `a value is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write a number, a length such as {=20 cm}, or the name of a value; a right line: {={form}}`},
				Explain: `A value is a number with or without a unit, a name given by {=let}, a measure such as {=fit.waist}, or something worked out
of these with {=+ - * /} and brackets.`},
			Es: Wording{
				Message: `falta un valor detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir un número, una longitud como {=20 cm} o el nombre de un valor; una línea correcta: {={form}}`},
				Explain: `Un valor es un número con unidad o sin ella, un nombre dado con {=let}, una medida como {=fit.waist}, o algo calculado a
partir de ellos con {=+ - * /} y paréntesis.`},
			Example: bandIn("let wide = 20 + * 2\n", `round: sc in each`),
			Fixed:   bandIn("let wide = 20 * 2\n", `round: sc in each`)},

		{Code: "OV137", Severity: Error,
			En: Wording{
				Message: `a text in quotes is missing behind “{after}”`,
				Mark:    hereEn,
				Help: map[string]string{
					"":       `it is written like this: {={form}}`,
					"quotes": `put it in quotes: "{found}"`},
				Explain: `What is printed as it stands, such as titles and the names of sizes, is written between straight quotation marks, so
that it may have blanks, signs and any word.`},
			Es: Wording{
				Message: `falta un texto entre comillas detrás de «{after}»`,
				Mark:    hereEs,
				Help: map[string]string{
					"":       `se escribe así: {={form}}`,
					"quotes": `ponerlo entre comillas: "{found}"`},
				Explain: `Lo que se imprime tal cual, como los títulos y los nombres de las tallas, va entre comillas rectas, de modo que puede
llevar espacios, signos y cualquier palabra.`},
			Example: bandIn("yarn sand\n  name en sand es arena\nend\n", `round: sc in each`),
			Fixed:   bandIn("yarn sand\n  name en \"sand\" es \"arena\"\nend\n", "yarn sand\n  round: sc in each")},

		{Code: "OV138", Severity: Error,
			En: Wording{
				Message: `the language of the text is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write {=en} or {=es} before each text: {={form}}`},
				Explain: `A pattern is printed in every language it is published in, so each text says which one it is for: {=en} for English, {=es}
for Spanish.`},
			Es: Wording{
				Message: `falta el idioma del texto detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir {=en} o {=es} delante de cada texto: {={form}}`},
				Explain: `El patrón se imprime en todos los idiomas en que se publica, así que cada texto dice para cuál es: {=en} para el inglés,
{=es} para el español.`},
			Example: bandIn("yarn sand\n  name \"sand\"\nend\n", `round: sc in each`),
			Fixed:   bandIn("yarn sand\n  name en \"sand\" es \"arena\"\nend\n", "yarn sand\n  round: sc in each")},

		{Code: "OV139", Severity: Error,
			En: Wording{
				Message: `a place is missing behind “{after}”`,
				Mark:    hereEn,
				Help: map[string]string{
					"row": `say where: {=next}, {=each}, {=same}, {=first}, {=last 2}, or the name of a marker or label`,
					"run": `name a label, or what lies in another part: {=body.right_gap}`},
				Explain: `A stitch is worked into something: the next place, each of several, a marked one, or the places of a label. A place of
another part is written with the name of the part and a point: {=body.right_gap}.`},
			Es: Wording{
				Message: `falta un lugar detrás de «{after}»`,
				Mark:    hereEs,
				Help: map[string]string{
					"row": `decir dónde: {=next}, {=each}, {=same}, {=first}, {=last 2}, o el nombre de un marcador o de una etiqueta`,
					"run": `nombrar una etiqueta, o algo de otra pieza: {=body.right_gap}`},
				Explain: `Un punto se teje en algo: en el lugar siguiente, en cada uno de varios, en uno marcado o en los de una etiqueta. Un
lugar de otra pieza se escribe con el nombre de la pieza y un punto: {=body.right_gap}.`},
			Example: band(`round: sc in`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV140", Severity: Error,
			En: Wording{
				Message: `a stitch is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `a number stands before its stitch: {=2 sc in next}`},
				Explain: `A number at the head of an instruction says how many stitches go into one place, so the stitch has to follow it.`},
			Es: Wording{
				Message: `falta un punto detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `el número va delante de su punto: {=2 sc in next}`},
				Explain: `Un número al principio de una instrucción dice cuántos puntos van en un mismo lugar, así que el punto tiene que
seguirle.`},
			Example: band(`round: 2 in each`),
			Fixed:   band(`round: 2 sc in each`)},

		{Code: "OV141", Severity: Error,
			En: Wording{
				Message: `an instruction is missing behind “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write what is worked: {={form}}`},
				Explain: `Behind the colon of a row and behind each comma stands an instruction: stitches with their place, chains, a skip, a
marker. A row without any has nothing to work.`},
			Es: Wording{
				Message: `falta una instrucción detrás de «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir lo que se teje: {={form}}`},
				Explain: `Detrás de los dos puntos de una hilera y detrás de cada coma va una instrucción: puntos con su lugar, cadenas, un
salto, un marcador. Una hilera sin ninguna no tiene nada que tejer.`},
			Example: band("round:\n  round: sc in each"),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV142", Severity: Error,
			En: Wording{
				Message: `a colon is missing here`,
				Mark:    `it parts what the line is from what follows`,
				Help:    map[string]string{"": `it is written like this: {={form}}`},
				Explain: `Before the colon stands which row it is, and for how long; behind it what is worked. Without the colon the first
stitch would read as the name of the row.`},
			Es: Wording{
				Message: `aquí faltan los dos puntos`,
				Mark:    `separan el comienzo de la línea de lo que sigue`,
				Help:    map[string]string{"": `se escribe así: {={form}}`},
				Explain: `Antes de los dos puntos va qué hilera es y hasta dónde llega; detrás, lo que se teje. Sin ellos, el primer punto se
leería como el nombre de la hilera.`},
			Example: band(`round sc in each`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV143", Severity: Error,
			En: Wording{
				Message: `a comma is missing between “{before}” and “{found}”`,
				Mark:    `something new begins here`,
				Help:    map[string]string{"": `write {before}, {found}`},
				Explain: `Instructions, counts, sizes and all other things in a row of several are parted by commas: {== 8 dc, 2 spaces}.`},
			Es: Wording{
				Message: `falta una coma entre «{before}» y «{found}»`,
				Mark:    `aquí empieza otra cosa`,
				Help:    map[string]string{"": `escribir {before}, {found}`},
				Explain: `Las instrucciones, las cuentas, las tallas y cualquier otra serie de varias cosas se separan con comas: {== 8 dc, 2
spaces}.`},
			Example: band(`round: sc in next 20 ch 1, skip 1, sc in each    = 39 sts, 1 space`),
			Fixed:   band(`round: sc in next 20, ch 1, skip 1, sc in each    = 39 sts, 1 space`)},

		{Code: "OV144", Severity: Error,
			En: Wording{
				Message: `behind {=but} stands a size in quotes and its value`,
				Mark:    hereEn,
				Help:    map[string]string{"": `name the size first: {=stitches(52 cm, sc) but "M" 91}`},
				Explain: `{=but} sets the value of one size by hand. It says which size, and then what the value is there; all other sizes keep the
value before it.`},
			Es: Wording{
				Message: `detrás de {=but} va una talla entre comillas y su valor`,
				Mark:    hereEs,
				Help:    map[string]string{"": `nombrar antes la talla: {=stitches(52 cm, sc) but "M" 91}`},
				Explain: `{=but} fija a mano el valor de una talla. Dice de qué talla se trata y luego cuál es el valor en ella; las demás conservan
el valor anterior.`},
			Example: bandIn("let wide = 40 but 44\n", `round: sc in each`),
			Fixed:   bandIn("let wide = 40 but \"M\" 44\n", `round: sc in each`)},

		{Code: "OV145", Severity: Error,
			En: Wording{
				Message: `the brackets behind a number hold the numbers of the other sizes, and nothing else`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write the numbers with commas between them: {=96 (104, 112)}; a unit stands behind the bracket`},
				Explain: `{=96 (104, 112)} is one number for each size, in their order. Anything to be worked out in it is written apart:
{=96 (104, 112) + 2}.`},
			Es: Wording{
				Message: `los paréntesis detrás de un número llevan los números de las demás tallas, y nada más`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir los números separados por comas: {=96 (104, 112)}; la unidad va detrás del paréntesis`},
				Explain: `{=96 (104, 112)} es un número por talla, en su orden. Lo que haya que calcular con ellos se escribe aparte:
{=96 (104, 112) + 2}.`},
			Example: bandIn("let wide = 40 (44 cm)\n", `round: sc in each`),
			Fixed:   bandIn("let wide = 40 (44) cm\n", `round: sc in each`)},

		{Code: "OV146", Severity: Error,
			En: Wording{
				Message: `something is missing behind the point in “{after}”`,
				Mark:    hereEn,
				Help:    map[string]string{"": `write a name, a number, {=first} or {=last}: {=body.right_gap}, {=corner.2}, {=front.last}`},
				Explain: `A point looks for something inside a part or a label: {=body.right_gap} is the right gap of the {=body}, {=corner.2} the second
corner. It stands without blanks; a sentence does not end in a point here.`},
			Es: Wording{
				Message: `falta algo detrás del punto en «{after}»`,
				Mark:    hereEs,
				Help:    map[string]string{"": `escribir un nombre, un número, {=first} o {=last}: {=body.right_gap}, {=corner.2}, {=front.last}`},
				Explain: `El punto busca algo dentro de una pieza o de una etiqueta: {=body.right_gap} es {=right_gap} de {=body}; {=corner.2}, la segunda
esquina. Va sin espacios; aquí las frases no acaban en punto.`},
			Example: bandIn("let half = fit.\n", `round: sc in each`),
			Fixed:   bandIn("let half = 20\n", `round: sc in each`)},
	}
}
