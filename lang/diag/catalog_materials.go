package diag

import "strings"

// Codes 715 to 749: what is needed, from yarn to buttons.

func materials() []Entry {
	return []Entry{
		{Code: "OV715", Severity: Error,
			En: Wording{
				Message: `what a sample weighs is a weight above zero`,
				Mark:    `this is none`,
				Help:    map[string]string{"": `write it in grams: {=weight 214 g}, or {=weight sand 180 g, kelp 34 g}`},
				Explain: `The sample is put on the scales when it is done, all of it or what was used of each yarn. From its weight, and the
fabric each size has, the yarn of all sizes is worked out.`},
			Es: Wording{
				Message: `lo que pesa una pieza de prueba es un peso mayor que cero`,
				Mark:    `esto no lo es`,
				Help:    map[string]string{"": `escribirlo en gramos: {=weight 214 g}, o {=weight sand 180 g, kelp 34 g}`},
				Explain: `La pieza de prueba se pesa al terminarla, entera o lo gastado de cada hilo. Con su peso, y el tejido que tiene cada
talla, se calcula el hilo de todas.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 40 cm\nend", kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 40 g\nend", kelpPart, "")},

		{Code: "OV716", Severity: Error,
			En: Wording{
				Message: `what is added to the yarn is a share of it, from 0 to 100 %`,
				Mark:    `this is none`,
				Help:    map[string]string{"": `write a percentage: {=allowance 10 %}`},
				Explain: `Ends, a swatch and a looser hand take yarn that the area of the pieces does not show. Where nothing is said, a tenth is
added; a header can say another share.`},
			Es: Wording{
				Message: `lo que se añade al hilo es una parte de él, del 0 al 100 %`,
				Mark:    `esto no lo es`,
				Help:    map[string]string{"": `escribir un porcentaje: {=allowance 10 %}`},
				Explain: `Los cabos, la muestra y una mano más suelta gastan hilo que la superficie de las piezas no deja ver. Si no se dice
nada, se añade una décima parte; el encabezado puede dar otra.`},
			Example: strings.Replace(swatchOf("", plainPart, ""), "terms us", "terms us\n  allowance 120 %", 1),
			Fixed:   strings.Replace(swatchOf("", plainPart, ""), "terms us", "terms us\n  allowance 12 %", 1)},

		{Code: "OV717", Severity: Error,
			En: Wording{
				Message: `a swatch of {={name}} cannot be counted in repeats`,
				Mark:    `{={name}} has no multiple`,
				Help:    map[string]string{"": `count its stitches: {=swatch 20 sts by 10 rows of {name}, 4 g}; or give the stitch pattern its multiple`},
				Explain: `A repeat is as many stitches as the multiple of a stitch pattern says. A single stitch has none, and nor has a stitch
pattern without a line for it.`},
			Es: Wording{
				Message: `una muestra de {={name}} no se puede contar en repeticiones`,
				Mark:    `{={name}} no tiene múltiplo`,
				Help:    map[string]string{"": `contar sus puntos: {=swatch 20 sts by 10 rows of {name}, 4 g}; o dar su múltiplo a la puntada`},
				Explain: `Una repetición tiene tantos puntos como dice el múltiplo de una puntada. Un punto suelto no tiene ninguno, ni
tampoco una puntada sin una línea que lo diga.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n  swatch 3 repeats by 18 rows of sc, 5 g"), kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV718", Severity: Warning,
			En: Wording{
				Message: `by the sample the fabric of {yarns} in size {size} weighs {have} g, by the swatch {need} g`,
				Mark:    `the amounts follow the sample`,
				Related: map[string]string{"swatch": `the swatch`},
				Help:    map[string]string{"": `weigh both again; if the sample is right, take the swatch out`},
				Explain: `The sample and the swatch tell of the same fabric, so they should agree. One that is more than 15 % heavier than the
other was as a rule weighed with something else, counted wrong, or worked with another hook. The sample is the truth as long as
it is the pattern that was made.`},
			Es: Wording{
				Message: `según la pieza de prueba, el tejido de {yarns} en la talla {size} pesa {have} g; según la muestra, {need} g`,
				Mark:    `las cantidades siguen a la pieza de prueba`,
				Related: map[string]string{"swatch": `la muestra pesada`},
				Help:    map[string]string{"": `pesar las dos otra vez; si la pieza de prueba está bien, quitar la muestra`},
				Explain: `La pieza de prueba y la muestra hablan del mismo tejido, así que deben coincidir. Si una pesa más de un 15 % más que la
otra, por lo común se pesó con algo más, se contó mal o se tejió con otro ganchillo. La pieza de prueba manda mientras sea lo que
dice el patrón.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch)+"\nsample \"S\"\n  weight 9 g\nend", kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch)+"\nsample \"S\"\n  weight 3.6 g\nend", kelpPart, "")},

		{Code: "OV719", Severity: Warning,
			En: Wording{
				Message: `this sample weighs no more than its cords, pompoms and seams take`,
				Help:    map[string]string{"": `weigh the whole piece, with all that belongs to it`},
				Explain: `What a cord, a pompom and a seam take is known from their lengths and from the ball. It is taken off the weight of the
sample, and what is left is the fabric; here nothing is left.`},
			Es: Wording{
				Message: `esta pieza de prueba no pesa más de lo que gastan sus cordones, pompones y costuras`,
				Help:    map[string]string{"": `pesar la pieza entera, con todo lo que lleva`},
				Explain: `Lo que gastan un cordón, un pompón y una costura se sabe por su longitud y por el ovillo. Se resta del peso de la pieza
de prueba y lo que queda es el tejido; aquí no queda nada.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 4 g\nend", kelpPart,
				"\nfinish\n  pompom with kelp, 7 cm, 120 wraps\nend\n"),
			Fixed: swatchOf(scGauge+"\n\n"+kelp(kelpBall)+"\nsample \"S\"\n  weight 11 g\nend", kelpPart,
				"\nfinish\n  pompom with kelp, 7 cm, 120 wraps\nend\n")},

		{Code: "OV720", Severity: Warning,
			En: Wording{
				Message: `size {size} takes less of the yarn {yarns} than the size before it: {have} g after {need} g`,
				Help:    map[string]string{"": `compare the counts of the two sizes: something falls from one to the next that should grow`},
				Explain: `A larger size is more fabric, so it takes at least as much yarn. Where an amount falls, some part has come out smaller
than in the size before it, as a rule because one number of a list was mistyped or two were exchanged.`},
			Es: Wording{
				Message: `la talla {size} gasta menos hilo {yarns} que la anterior: {have} g tras {need} g`,
				Help:    map[string]string{"": `comparar las cuentas de las dos tallas: algo que debía crecer baja de una a otra`},
				Explain: `Una talla mayor es más tejido, así que gasta por lo menos el mismo hilo. Si una cantidad baja, alguna pieza ha salido
más pequeña que en la talla anterior, por lo común porque un número de una lista se tecleó mal o se cambiaron dos.`},
			Example: swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), strings.Replace(kelpPart, "10 rows", "20 (10) rows", 1), ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), strings.Replace(kelpPart, "10 rows", "10 (20) rows", 1), "")},

		{Code: "OV721", Severity: Note,
			En: Wording{
				Message: `the block of the yarn {yarn} has no {={what|or}}`,
				Help:    map[string]string{"": `add what the label of the yarn says: {=weight light}, {=fibre cotton 100 %}, {=ball 50 g, 120 m}`},
				Explain: `A maker who cannot get this yarn looks for another by its class, its fibre and the length of a ball for its weight. What
is not said cannot be printed, and the maker has to guess.`},
			Es: Wording{
				Message: `al bloque del hilo {yarn} le falta {={what|or}}`,
				Help:    map[string]string{"": `añadir lo que dice la etiqueta del hilo: {=weight light}, {=fibre cotton 100 %}, {=ball 50 g, 120 m}`},
				Explain: `Quien no encuentra este hilo busca otro por su clase, su fibra y la longitud de un ovillo para su peso. Lo que no se dice
no se puede imprimir, y quien teje tiene que adivinarlo.`},
			Example: swatchOf(scGauge+"\n\nyarn kelp\n  name en \"kelp\" es \"alga\"\n  weight medium\n"+kelpBall+"\n"+kelpSwatch+"\nend", kelpPart, ""),
			Fixed:   swatchOf(scGauge+"\n\n"+kelp(kelpBall+"\n"+kelpSwatch), kelpPart, "")},

		{Code: "OV722", Severity: Warning,
			En: Wording{
				Message: `the hook of {hook} is listed and nothing is worked with it`,
				Help:    map[string]string{"": `take it out, or let a part go on with it: {=hook {hook}}`},
				Explain: `Every hook on the list of materials is bought or looked for. One that no row is worked with is as a rule left over from an
earlier draft, or each part has since been given a hook of its own.`},
			Es: Wording{
				Message: `el ganchillo de {hook} está en la lista y no se teje nada con él`,
				Help:    map[string]string{"": `quitarlo, o hacer que una pieza siga con él: {=hook {hook}}`},
				Explain: `Todo ganchillo de la lista de materiales se compra o se busca. Si no se teje con él ninguna hilera, por lo común quedó de
un borrador anterior, o después se dio a cada pieza su propio ganchillo.`},
			Example: swatchOf(scGauge+"\nhook 4 mm", "  hook 5 mm\n"+plainPart, ""),
			Fixed:   swatchOf(scGauge+"\nhook 5 mm", plainPart, "")},

		{Code: "OV723", Severity: Note,
			En: Wording{
				Message: `the page lists the {thing} by itself, so it will stand there twice`,
				Help:    map[string]string{"": `take out this line`},
				Explain: `Hooks, markers, needles, buttons and elastic are known from the rows and from the finishing, with how many are needed.
A second line for one of them can only agree with it or be wrong.`},
			Es: Wording{
				Message: `«{thing}» ya sale en la lista de la página sin pedirlo, así que saldrá dos veces`,
				Help:    map[string]string{"": `quitar esta línea`},
				Explain: `Los ganchillos, marcadores, agujas, botones y gomas elásticas se conocen por las hileras y los acabados, con cuántos hacen
falta. Una segunda línea para uno de ellos solo puede coincidir o estar mal.`},
			Example: swatchOf(scGauge+"\nnotion en \"yarn needle\" es \"aguja lanera\"", plainPart, ""),
			Fixed:   swatchOf(scGauge+"\nnotion en \"sewing thread\" es \"hilo de coser\"", plainPart, "")},

		{Code: "OV724", Severity: Error,
			En: Wording{
				Message: `the number of buttons is {have}, and that of the places of {name} is {need}`,
				Help:    map[string]string{"": `make the numbers agree, or leave the number out: {=button 12 mm for {name}} has one for each place`},
				Explain: `Each button needs its hole, in every size. Where the number of buttons is left out, there are as many as places.`},
			Es: Wording{
				Message: `el número de botones es {have}, y el de lugares de {name} es {need}`,
				Help:    map[string]string{"": `hacer coincidir los números, o quitar el número: {=button 12 mm for {name}} pone uno para cada lugar`},
				Explain: `Cada botón necesita su ojal, en todas las tallas. Si no se da el número de botones, hay tantos como lugares.`},
			Example: holesTrial("  button 12 mm, 4 for strip.hole"), Fixed: holesTrial("  button 12 mm, 5 for strip.hole")},

		{Code: "OV725", Severity: Warning,
			En: Wording{
				Message: `these buttons are for no places, though no button is for {name}`,
				Help:    map[string]string{"": `say what they are for: {=button 12 mm for {name}}`},
				Explain: `Places that are named like holes wait for buttons. Said with its places, a button is compared with them in every size;
alone, its number stands unchecked.`},
			Es: Wording{
				Message: `estos botones no son para ningún lugar, y ningún botón es para {name}`,
				Help:    map[string]string{"": `decir para qué son: {=button 12 mm for {name}}`},
				Explain: `Los lugares con nombre de ojal esperan botones. Si se dice para qué lugares es, un botón se compara con ellos en
todas las tallas; si no, su número queda sin comprobar.`},
			Example: holesTrial("  button 12 mm, 5"), Fixed: holesTrial("  button 12 mm for strip.hole")},

		{Code: "OV726", Severity: Warning,
			En: Wording{
				Message: `the elastic measures {have}, and what it runs through in {part} measures {need}`,
				Mark:    `longer than what it is to draw in`,
				Help:    map[string]string{"": `make it shorter than the row it runs through, and than the wearer there`},
				Explain: `Elastic is cut shorter than the wearer, so that it holds, and the fabric is gathered along it. Elastic that is longer than
the row it runs through gathers nothing.`},
			Es: Wording{
				Message: `la goma elástica mide {have}, y lo que recorre en {part} mide {need}`,
				Mark:    `más larga que lo que debe fruncir`,
				Help:    map[string]string{"": `hacerla más corta que la hilera por la que pasa y que el contorno de la persona en ese lugar`},
				Explain: `La goma elástica se deja más corta que el contorno de la persona, para que sujete. Una goma más larga que la
hilera por la que pasa no frunce nada.`},
			Example: swatchOf(scGauge, plainPart, "\nfinish\n  elastic 2 cm, length 14 cm, through strip row 3\nend\n"),
			Fixed:   swatchOf(scGauge, plainPart, "\nfinish\n  elastic 2 cm, length 11 cm, through strip row 3\nend\n")},

		{Code: "OV727", Severity: Warning,
			En: Wording{
				Message: `a tie or elastic at the wrist or ankle of a baby needs care`,
				Mark:    `a caution prints with this step`,
				Help:    map[string]string{"": `leave it out for the youngest: ribbing holds as well; or keep room for an adult finger`},
				Explain: `Elastic or a tie round a baby's wrist or ankle can cut off the blood. Cases are reported in medical journals, and test
houses list it among the hazards of children's clothes. No published figure was found; room for an adult's finger is a limit of
our own. The rule is TRAP-05; local law and the advice of a licensed health professional come first.`},
			Es: Wording{
				Message: `una atadura o una goma en la muñeca o el tobillo de un bebé exige cuidado`,
				Mark:    `con este paso se imprime una precaución`,
				Help:    map[string]string{"": `quitarla para los más pequeños: un elástico tejido sujeta igual; o dejar holgura para un dedo adulto`},
				Explain: `Una goma o una cinta en la muñeca o el tobillo de un bebé puede cortar la circulación. Hay casos en revistas médicas, y los
laboratorios de ensayo lo cuentan entre los peligros de la ropa infantil. No se encontró ninguna cifra publicada; la holgura para
un dedo adulto es un límite propio. La norma es TRAP-05; prevalecen la ley local y el consejo de un profesional sanitario titulado.`},
			Example: bootees("6 (9) months"), Fixed: bootees("18 (24) months")},
	}
}

// bootees is a small source of bootees with elastic, for wearers of some age.
func bootees(age string) string {
	return strings.Replace(strings.Replace(swatchOf(scGauge, plainPart, "\nfinish\n  elastic 5 mm, length 11 cm, through strip row 3\nend\n\nmeasure\n  width = width of strip at row 1\nend\n"),
		"age 18 years", "age "+age, 1), "terms us", "terms us\n  kind  bootees"+washable, 1)
}

// holesTrial is a small source with five buttonholes and a line of its finishing.
func holesTrial(button string) string {
	return swatchOf(scGauge, "  in rows\n  chain 20\n  3 rows: sc in each = 20\n"+
		"  row: sc in each with [ch 2 as hole, skip 2] 5 times evenly = 10 sts, 5 spaces\n  row: sc in each st and chain = 20",
		"\nfinish\n"+button+"\nend\n")
}
