package diag

// Codes 3xx: values.

// strip is a small source whose part starts with `wide` chains; the lines given say what that is.
func strip(lines string) string { return stripOf(lines, "row: sc in each = wide") }

// stripOf is strip with another row.
func stripOf(lines, row string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
end

sizes "S", "M", "L"
end

gauge 10 cm
  sc 16 sts, 18 rows
end

` + lines + `

part strip
  title en "Strip" es "Tira"
  in rows
  chain wide
  ` + row + `
  fasten off
end
`
}

func values() []Entry {
	return []Entry{
		{Code: "OV301", Severity: Error,
			En: Wording{
				Message: `{found} numbers are given, but there {needed|is 1 size|are {needed} sizes} here`,
				Mark:    `one number for each size is needed`,
				Help:    map[string]string{"": `write one number for each of {sizes}, in this order, or a single number that serves all sizes`},
				Explain: `A number that differs by size is written as a list: the first size, then the others in brackets, in the
order in which the sizes are named. The list must have as many numbers as there are sizes: with one too few, every number
behind the gap would go to the wrong size. Inside a block for some sizes alone, the list has those sizes only. A single
number serves all sizes.`},
			Es: Wording{
				Message: `se dan {found} números, pero aquí hay {needed|una talla|{needed} tallas}`,
				Mark:    `hace falta un número por talla`,
				Help:    map[string]string{"": `escribir un número para cada talla, {sizes}, en este orden, o un solo número que sirva para todas`},
				Explain: `Un número que cambia con la talla se escribe como lista: la primera talla y, entre paréntesis, las demás, en
el orden en que se nombran las tallas. La lista debe tener tantos números como tallas haya: si falta uno, los que siguen al
hueco irían a la talla equivocada. Dentro de un bloque para algunas tallas, la lista lleva solo esas. Un solo número sirve
para todas las tallas.`},
			Example: strip(`let wide = 20 (22, 24, 26)`),
			Fixed:   strip(`let wide = 20 (22, 24)`)},

		{Code: "OV302", Severity: Error,
			En: Wording{
				Message: `nothing with a value is called {name}`,
				Mark:    `no value has this name here`,
				Help: map[string]string{
					"none": `give it a value above this line: {=let {name} = 20}`,
					"near": `a name like it that has a value: {={near|or}}`},
				Explain: `A name in a value must have been given one above: with {=let}, or as a measure of the wearer, which is written
{=fit.waist}. Labels and markers are places, not numbers, and have no value of their own.`},
			Es: Wording{
				Message: `nada que tenga valor se llama {name}`,
				Mark:    `ningún valor tiene aquí este nombre`,
				Help: map[string]string{
					"none": `darle un valor más arriba: {=let {name} = 20}`,
					"near": `un nombre parecido que sí tiene valor: {={near|or}}`},
				Explain: `Un nombre dentro de un valor debe haber recibido uno más arriba: con {=let}, o como medida de la persona, que se
escribe {=fit.waist}. Las etiquetas y los marcadores son lugares, no números, y no tienen valor propio.`},
			Example: stripOf(`let wide = 20 (22, 24)`, `row: sc in each = wdie`),
			Fixed:   stripOf(`let wide = 20 (22, 24)`, `row: sc in each = wide`)},

		{Code: "OV303", Severity: Error,
			En: Wording{
				Message: `{left} and {right} cannot be added or taken from each other`,
				Mark:    `{left} on the left, {right} on the right`,
				Help: map[string]string{
					"gauge":   `turn the length into stitches first: {=stitches(2 cm, sc)}; or the count into a length: {=length(4, sc)}`,
					"percent": `take the share first: {=fit.waist - fit.waist * 10 %}`,
					"unit":    `give both sides the same kind of unit`},
				Explain: `Units are part of a number. Four stitches and two centimetres have no sum until the gauge says how wide a
stitch is; write that with {=stitches( )} or {=length( )}. A percentage is a share of something: multiply by it first.`},
			Es: Wording{
				Message: `{left} y {right} no se pueden sumar ni restar`,
				Mark:    `a la izquierda {left}, a la derecha {right}`,
				Help: map[string]string{
					"gauge":   `convertir antes la longitud en puntos: {=stitches(2 cm, sc)}; o la cuenta en longitud: {=length(4, sc)}`,
					"percent": `calcular antes la parte: {=fit.waist - fit.waist * 10 %}`,
					"unit":    `dar a los dos lados la misma clase de unidad`},
				Explain: `Las unidades son parte del número. Cuatro puntos y dos centímetros no se pueden sumar mientras la muestra no diga
cuánto mide un punto; eso se escribe con {=stitches( )} o {=length( )}. Un porcentaje es una parte de algo: antes se multiplica por él.`},
			Example: strip(`let wide = 20 (22, 24) + 2 cm`),
			Fixed:   strip(`let wide = 20 (22, 24) + stitches(2 cm, sc)`)},

		{Code: "OV304", Severity: Error,
			En: Wording{
				Message: `{left} and {right} cannot be multiplied or divided like this`,
				Mark:    `{left} on the left, {right} on the right`,
				Help: map[string]string{
					"product":  `one side of a product must be a number without a unit, or a percentage`,
					"quotient": `divide by a number without a unit, by a percentage, or by a value of the same kind`},
				Explain: `A length times a length would be an area, and a number of stitches divided by a length a gauge; values of a
pattern are neither. A length may be taken several times, shared out, or divided by another length, which gives a plain
number.`},
			Es: Wording{
				Message: `{left} y {right} no se pueden multiplicar ni dividir así`,
				Mark:    `a la izquierda {left}, a la derecha {right}`,
				Help: map[string]string{
					"product":  `un lado de la multiplicación debe ser un número sin unidad o un porcentaje`,
					"quotient": `dividir entre un número sin unidad, un porcentaje o un valor de la misma clase`},
				Explain: `Una longitud por una longitud sería una superficie, y un número de puntos entre una longitud, una muestra; los
valores de un patrón no son ni lo uno ni lo otro. Una longitud se puede tomar varias veces, repartir o dividir entre otra
longitud, lo que da un número sin unidad.`},
			Example: strip(`let wide = stitches(20 cm * 2 cm, sc)`),
			Fixed:   strip(`let wide = stitches(20 cm * 2, sc)`)},

		{Code: "OV305", Severity: Error,
			En: Wording{
				Message: `this divides by zero`,
				Mark:    `zero here: {found}`,
				Help:    map[string]string{"": `divide by a value that is above zero in every size`},
				Explain: `Nothing can be shared out among none. A value that reaches zero in one size alone is enough; the message
names the sizes.`},
			Es: Wording{
				Message: `aquí se divide entre cero`,
				Mark:    `cero aquí: {found}`,
				Help:    map[string]string{"": `dividir entre un valor que sea mayor que cero en todas las tallas`},
				Explain: `No se puede repartir nada entre cero. Basta con que el valor llegue a cero en una sola talla; el mensaje
dice en cuáles.`},
			Example: strip(`let wide = 20 (22, 24) / (2 - 2)`),
			Fixed:   strip(`let wide = 20 (22, 24) / 2`)},

		{Code: "OV306", Severity: Error,
			En: Wording{
				Message: `the number {found} is too large or too finely divided to work with`,
				Help:    map[string]string{"": `keep numbers below 1000000000, and below as many parts of one`},
				Explain: `Numbers are kept exactly, as fractions. To keep that within reason, neither the number nor the parts it is
divided into may exceed a thousand million: far more than any piece of fabric needs.`},
			Es: Wording{
				Message: `el número {found} es demasiado grande o está dividido en partes demasiado finas`,
				Help:    map[string]string{"": `usar números menores que 1000000000, divididos en menos partes que esas`},
				Explain: `Los números se guardan exactos, como fracciones. Para que no crezcan sin medida, ni el número ni las partes en
que se divide pueden pasar de mil millones: mucho más de lo que necesita cualquier tejido.`},
			Example: strip(`let wide = 20000000000`),
			Fixed:   strip(`let wide = 20`)},

		{Code: "OV307", Severity: Error,
			En: Wording{
				Message: `there is no size {name} here`,
				Mark:    `this sets the value of size {name}`,
				Help:    map[string]string{"": `the sizes here are {sizes}; write the name exactly as one of them`},
				Explain: `Behind {=but} stands the name of a size, as it was given in the list of sizes, and the value it is to have
instead. Inside a block for some sizes alone, only those can be set.`},
			Es: Wording{
				Message: `aquí no hay talla {name}`,
				Mark:    `esto fija el valor de la talla {name}`,
				Help:    map[string]string{"": `las tallas son {sizes}; escribir el nombre igual que en la lista`},
				Explain: `Detrás de {=but} va el nombre de una talla, tal como está en la lista de tallas, y el valor que debe tener en
lugar del otro. Dentro de un bloque para algunas tallas, solo se pueden fijar esas.`},
			Example: strip(`let wide = 20 (22, 24) but "XL" 26`),
			Fixed:   strip(`let wide = 20 (22, 24) but "L" 26`)},

		{Code: "OV308", Severity: Error,
			En: Wording{
				Message: `size {size} is given a {found} where the others have a {needed}`,
				Mark:    `a {needed} is needed`,
				Help:    map[string]string{"": `give size {size} a value of the same kind as the others`},
				Explain: `A value set by hand for one size takes the place of the one that was worked out, so it has to be of the same
kind: a count for a count, a length for a length.`},
			Es: Wording{
				Message: `la talla {size} recibe otra clase de valor que las demás: {found}, no {needed}`,
				Mark:    `aquí hace falta: {needed}`,
				Help:    map[string]string{"": `dar a la talla {size} un valor de la misma clase que las demás`},
				Explain: `Un valor fijado a mano para una talla ocupa el lugar del calculado, así que debe ser de la misma clase: una
cuenta por una cuenta, una longitud por una longitud.`},
			Example: strip(`let wide = 20 (22, 24) but "L" 26 cm`),
			Fixed:   strip(`let wide = 20 (22, 24) but "L" 26`)},

		{Code: "OV309", Severity: Error,
			En: Wording{
				Message: `size {size} is set by hand twice`,
				Mark:    `set a second time`,
				Help:    map[string]string{"": `keep one value for size {size}`},
				Explain: `Each size can be set by hand once behind a value. Of two values for one size nobody could say which was
meant.`},
			Es: Wording{
				Message: `la talla {size} se fija a mano dos veces`,
				Mark:    `fijada por segunda vez`,
				Help:    map[string]string{"": `dejar un solo valor para la talla {size}`},
				Explain: `Cada talla se puede fijar a mano una vez detrás de un valor. De dos valores para una talla nadie sabría cuál es
el bueno.`},
			Example: strip(`let wide = 20 (22, 24) but "L" 26, "L" 28`),
			Fixed:   strip(`let wide = 20 (22, 24) but "L" 26`)},

		{Code: "OV310", Severity: Error,
			En: Wording{
				Message: `nothing that works out a value is called {name}`,
				Mark:    `a name before a bracket works out a value`,
				Help: map[string]string{
					"none": `values are worked out by {={names}}`,
					"near": `the name like it is {={near|or}}`},
				Explain: `A name with brackets behind it works out a value from others: {=stitches} and {=rows} turn a length into counts by
the gauge, {=length} turns a count of stitches back, {=whole} makes a whole number, {=min} and {=max} choose the least and the
greatest.`},
			Es: Wording{
				Message: `nada que calcule un valor se llama {name}`,
				Mark:    `un nombre delante de un paréntesis calcula un valor`,
				Help: map[string]string{
					"none": `los valores se calculan con {={names}}`,
					"near": `el nombre parecido es {={near|or}}`},
				Explain: `Un nombre con paréntesis detrás calcula un valor a partir de otros: {=stitches} y {=rows} convierten una longitud en
cuentas según la muestra, {=length} convierte una cuenta de puntos en longitud, {=whole} da un número entero, {=min} y {=max} eligen el
menor y el mayor.`},
			Example: strip(`let wide = stiches(20 cm, sc)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc)`)},

		{Code: "OV311", Severity: Error,
			En: Wording{
				Message: `{={name}} is given {found} {found|value|values} where it needs {needed}`,
				Mark:    `it is written {={form}}`,
				Help: map[string]string{
					"one":  `give it one value: {={form}}`,
					"two":  `give it two values: {={form}}`,
					"many": `give it two values or more: {={form}}`},
				Explain: `Each way to work out a value takes its own values, parted by commas: {=stitches} and {=rows} a length and a stitch,
{=length} a count and a stitch, {=whole} one count, {=min} and {=max} two values or more. Words that say how to round, and a multiple, may
follow in {=stitches}, {=rows} and {=whole}.`},
			Es: Wording{
				Message: `{={name}} recibe {found} {found|valor|valores} y necesita {needed}`,
				Mark:    `se escribe {={form}}`,
				Help: map[string]string{
					"one":  `darle un valor: {={form}}`,
					"two":  `darle dos valores: {={form}}`,
					"many": `darle dos valores o más: {={form}}`},
				Explain: `Cada forma de calcular lleva sus valores, separados por comas: {=stitches} y {=rows}, una longitud y un punto; {=length},
una cuenta y un punto; {=whole}, una cuenta; {=min} y {=max}, dos valores o más. En {=stitches}, {=rows} y {=whole} pueden seguir un múltiplo y
las palabras que dicen cómo redondear.`},
			Example: strip(`let wide = stitches(20 cm)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc)`)},

		{Code: "OV312", Severity: Error,
			En: Wording{
				Message: `{={name}} needs the name of a stitch as its second value`,
				Mark:    `a stitch such as {=dc}`,
				Help:    map[string]string{"": `name the stitch whose gauge is to be used: {={form}}`},
				Explain: `How many stitches measure a length depends on the stitch. The gauge is looked up under its name, so the name
stands in the brackets, behind the length or the count.`},
			Es: Wording{
				Message: `{={name}} necesita como segundo valor el nombre de un punto`,
				Mark:    `un punto, como {=dc}`,
				Help:    map[string]string{"": `nombrar el punto cuya muestra se usa: {={form}}`},
				Explain: `Cuántos puntos mide una longitud depende del punto. La muestra se busca por su nombre, así que el nombre va entre
los paréntesis, detrás de la longitud o de la cuenta.`},
			Example: strip(`let wide = stitches(20 cm, 16)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc)`)},

		{Code: "OV313", Severity: Error,
			En: Wording{
				Message: `{={left}} and {={right}} cannot both stand here`,
				Mark:    `only one of them can hold`,
				Help:    map[string]string{"": `keep one of the two`},
				Explain: `A count is rounded one way: to the nearest, up or down; it is even or odd; and it is a multiple of one number. To
ask for two multiples at once, ask for a multiple of their product or of their least common multiple.`},
			Es: Wording{
				Message: `{={left}} y {={right}} no pueden estar juntos aquí`,
				Mark:    `solo puede valer uno`,
				Help:    map[string]string{"": `dejar uno de los dos`},
				Explain: `Una cuenta se redondea de una manera: a la más cercana, hacia arriba o hacia abajo; es par o impar; y es múltiplo
de un número. Para pedir dos múltiplos a la vez, se pide el múltiplo de su producto o de su mínimo común múltiplo.`},
			Example: strip(`let wide = stitches(20 cm, sc, even, odd)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc, even)`)},

		{Code: "OV314", Severity: Error,
			En: Wording{
				Message: `{={name}} does not round, so it takes no multiple and no word for rounding`,
				Help:    map[string]string{"": `write {={form}}, and round with {=whole( )} if a whole number is wanted: {=whole(leg / 3, even)}`},
				Explain: `Only {=stitches}, {=rows} and {=whole} make whole numbers, and only they can be told how to round. The others give
their value exactly as it is.`},
			Es: Wording{
				Message: `{={name}} no redondea, así que no lleva múltiplo ni palabra de redondeo`,
				Help:    map[string]string{"": `escribir {={form}} y, si hace falta un número entero, redondear con {=whole( )}: {=whole(leg / 3, even)}`},
				Explain: `Solo {=stitches}, {=rows} y {=whole} dan números enteros, y solo en ellos se puede decir cómo redondear. Los demás dan el
valor exacto.`},
			Example: strip(`let wide = min(20, 22, even)`),
			Fixed:   strip(`let wide = min(20, 22)`)},

		{Code: "OV315", Severity: Error,
			En: Wording{
				Message: `a multiple needs whole numbers, here from {least} on, but this is {found}`,
				Help:    map[string]string{"": `write a multiple as the stitches of one repeat and the stitches that stand besides: {=multiple of 6 plus 1}`},
				Explain: `A multiple says that the stitches can be parted into repeats: so many in each repeat, at least one, and so many
besides, none or more.`},
			Es: Wording{
				Message: `un múltiplo se da con números enteros, aquí de {least} en adelante, y este es {found}`,
				Help:    map[string]string{"": `escribir el múltiplo con los puntos de una repetición y los que quedan aparte: {=multiple of 6 plus 1}`},
				Explain: `Un múltiplo dice que los puntos se pueden repartir en repeticiones: tantos en cada una, por lo menos uno, y tantos
aparte, ninguno o más.`},
			Example: strip(`let wide = stitches(20 cm, sc, multiple of 0)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc, multiple of 2)`)},

		{Code: "OV316", Severity: Error,
			En: Wording{
				Message: `a "{={rule}}" can never be "{={word}}"`,
				Help:    map[string]string{"": `leave out the word, or change the multiple`},
				Explain: `Every multiple of an even number is even, and stays odd for good once an odd number is added. Asking for the
other kind leaves no count that would do.`},
			Es: Wording{
				Message: `un «{={rule}}» nunca puede ser «{={word}}»`,
				Help:    map[string]string{"": `quitar la palabra o cambiar el múltiplo`},
				Explain: `Todo múltiplo de un número par es par, y es impar siempre si se le suma un número impar. Pedir lo contrario no
deja ninguna cuenta posible.`},
			Example: strip(`let wide = stitches(20 cm, sc, multiple of 6 plus 1, even)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc, multiple of 6 plus 1)`)},

		{Code: "OV317", Severity: Error,
			En: Wording{
				Message: `this is to be made whole from a value below zero: {found}`,
				Help:    map[string]string{"": `check the measures that are taken from each other, size by size`},
				Explain: `No number of stitches or rows is below zero. As a rule a measure was taken from a smaller one, in some sizes or
in all.`},
			Es: Wording{
				Message: `aquí se pide un número entero a partir de un valor menor que cero: {found}`,
				Help:    map[string]string{"": `revisar, talla por talla, las medidas que se restan`},
				Explain: `Ningún número de puntos o de hileras es menor que cero. Por lo común se restó una medida de otra menor, en algunas
tallas o en todas.`},
			Example: strip(`let wide = stitches(20 cm - 30 cm, sc)`),
			Fixed:   strip(`let wide = stitches(30 cm - 20 cm, sc)`)},

		{Code: "OV318", Severity: Error,
			En: Wording{
				Message: `rounding down leaves no count: the value is {found}, and the least count that is allowed is {least}`,
				Help:    map[string]string{"": `round up or to the nearest, or ask for a smaller multiple`},
				Explain: `With a multiple of 6 plus 5 the least count is 5. A length that measures fewer stitches than that cannot be
rounded down to one of the counts asked for.`},
			Es: Wording{
				Message: `redondear hacia abajo no deja ninguna cuenta: el valor es {found} y la menor cuenta permitida es {least}`,
				Help:    map[string]string{"": `redondear hacia arriba o a la más cercana, o pedir un múltiplo menor`},
				Explain: `Con un múltiplo de 6 más 5, la menor cuenta es 5. Una longitud que mide menos puntos que esos no se puede redondear
hacia abajo a una de las cuentas pedidas.`},
			Example: strip(`let wide = stitches(2 cm, sc, multiple of 6 plus 5, down)`),
			Fixed:   strip(`let wide = stitches(2 cm, sc, multiple of 6 plus 5, up)`)},

		{Code: "OV319", Severity: Error,
			En: Wording{
				Message: `{found} for size {size} is not a "{={rule}}", as the value must be`,
				Mark:    `set by hand`,
				Help:    map[string]string{"": `the nearest that would do: {near|or}`},
				Explain: `A value set by hand for one size keeps every check on the value it replaces. If the count was asked for as a
multiple, for the sake of the stitch pattern, the one set by hand must be such a multiple too.`},
			Es: Wording{
				Message: `{found} para la talla {size} no es «{={rule}}», como debe ser el valor`,
				Mark:    `fijado a mano`,
				Help:    map[string]string{"": `lo más cercano que sirve: {near|or}`},
				Explain: `Un valor fijado a mano para una talla conserva todas las comprobaciones del valor que reemplaza. Si la cuenta se
pidió como múltiplo, por la puntada, la fijada a mano también debe serlo.`},
			Example: strip(`let wide = stitches(20 (22, 24) cm, sc, multiple of 6 plus 1) but "L" 38`),
			Fixed:   strip(`let wide = stitches(20 (22, 24) cm, sc, multiple of 6 plus 1) but "L" 37`)},

		{Code: "OV320", Severity: Error,
			En: Wording{
				Message: `a whole number is needed here, but this is {found}`,
				Mark:    `not whole`,
				Help:    map[string]string{"": `the whole numbers below are {below}, those above {above}; change what it is worked out from, or round it with {=whole( )}`},
				Explain: `Stitches and rows cannot be cut. A value that was divided may be no whole number in one size although it is in
the others. Often the cure lies where the value comes from: ask there for a multiple, so that the division comes out even.`},
			Es: Wording{
				Message: `aquí hace falta un número entero, y este es {found}`,
				Mark:    `no es entero`,
				Help:    map[string]string{"": `los enteros por debajo son {below}; por encima, {above}; cambiar aquello de lo que se calcula o redondearlo con {=whole( )}`},
				Explain: `Los puntos y las hileras no se pueden partir. Un valor que se dividió puede no ser entero en una talla aunque lo
sea en las demás. A menudo el remedio está donde nace el valor: allí se pide un múltiplo, para que la división salga exacta.`},
			Example: strip(`let wide = 21 (22, 24) / 2`),
			Fixed:   strip(`let wide = 20 (22, 24) / 2`)},

		{Code: "OV321", Severity: Error,
			En: Wording{
				Message: `a count cannot be below zero, but this is {found}`,
				Help:    map[string]string{"": `check the counts that are taken from each other, size by size`},
				Explain: `A row cannot have fewer stitches than none. As a rule a count was taken from a smaller one, in some sizes or in
all. Zero is allowed: what is worked no times is left out for that size.`},
			Es: Wording{
				Message: `una cuenta no puede ser menor que cero, y esta es {found}`,
				Help:    map[string]string{"": `revisar, talla por talla, las cuentas que se restan`},
				Explain: `Una hilera no puede tener menos de cero puntos. Por lo común se restó una cuenta de otra menor, en algunas tallas
o en todas. El cero está permitido: lo que se teje cero veces se omite en esa talla.`},
			Example: strip(`let wide = 20 (22, 24) - 30`),
			Fixed:   strip(`let wide = 20 (22, 24) - 3`)},

		{Code: "OV322", Severity: Error,
			En: Wording{
				Message: `a {needed} is needed here, not a {found}`,
				Mark:    `this is a {found}`,
				Help: map[string]string{
					"gauge": `turn the length into a count by the gauge: {=stitches(20 cm, sc)} or {=rows(20 cm, sc)}`,
					"bare":  `write the number without a unit`,
					"unit":  `write the unit behind the number, as in {=21 cm}, {=50 g} or {=12 months}`},
				Explain: `Units are part of a number. Where stitches are counted a length will not do until the gauge has turned it into
stitches; where something is measured, a bare number says nothing until it has its unit.`},
			Es: Wording{
				Message: `aquí hace falta otra clase de valor: {needed}, no {found}`,
				Mark:    `clase de este valor: {found}`,
				Help: map[string]string{
					"gauge": `convertir la longitud en cuenta según la muestra: {=stitches(20 cm, sc)} o {=rows(20 cm, sc)}`,
					"bare":  `escribir el número sin unidad`,
					"unit":  `escribir la unidad detrás del número, como en {=21 cm}, {=50 g} o {=12 months}`},
				Explain: `Las unidades son parte del número. Donde se cuentan puntos no vale una longitud mientras la muestra no la convierta
en puntos; donde se mide algo, un número solo no dice nada mientras no lleve su unidad.`},
			Example: strip(`let wide = 20 (22, 24) cm`),
			Fixed:   strip(`let wide = stitches(20 (22, 24) cm, sc)`)},

		{Code: "OV325", Severity: Error,
			En: Wording{
				Message: `the finished piece can be measured only in the {=measure} block`,
				Mark:    `this measures what is not made yet`,
				Help:    map[string]string{"": `work from the length that is wanted, and state the measure at the end`},
				Explain: `Around, height, width and length of a part come out of its rows. A value that rows are made from cannot ask for
them, since it would have to be known before itself. State the wanted length with {=let}, make the rows from it, and let the
{=measure} block check what came out.`},
			Es: Wording{
				Message: `la pieza terminada solo se puede medir en el bloque {=measure}`,
				Mark:    `esto mide lo que aún no está hecho`,
				Help:    map[string]string{"": `partir de la longitud que se quiere y declarar la medida al final`},
				Explain: `El contorno, el alto, el ancho y el largo de una pieza salen de sus hileras. Un valor del que se hacen hileras no
puede preguntar por ellos, porque tendría que conocerse antes que él mismo. Con {=let} se dice la longitud que se quiere, con ella
se hacen las hileras, y el bloque {=measure} comprueba lo que salió.`},
			Example: strip(`let wide = stitches(width of strip at row 1, sc)`),
			Fixed:   strip(`let wide = stitches(20 cm, sc)`)},
	}
}
