package diag

// Codes 6xx: counts.
var counts = []Entry{
	{Code: "OV601", Severity: Error,
		En: Wording{Message: `{need} {what} {need|is|are} stated, but {have} {have|is|are} made`, Mark: `states {need}`, Related: map[string]string{"made": `makes {have}`},
			Help:    map[string]string{"": `state {have}, or change the row so that it makes {need}`},
			Explain: `A stated count is compared with what the row makes, in every size. Which of the two is wrong the tool cannot know, so it stops here; later rows of the part are checked once these agree.`},
		Es: Wording{Message: `se {need|indica|indican} {need} {what}, pero {have|resulta|resultan} {have}`, Mark: `indica {need}`, Related: map[string]string{"made": `da {have}`},
			Help:    map[string]string{"": `indicar {have} o cambiar la vuelta para que dé {need}`},
			Explain: `La cuenta indicada se compara con lo que da la vuelta, en cada talla. Cuál de las dos está mal no se puede saber, así que aquí se detiene; las vueltas siguientes se comprueban cuando coincidan.`},
		Example: trial("  chain 12, join\n  round: sc in each = 13"),
		Fixed:   trial("  chain 12, join\n  round: sc in each = 12")},

	{Code: "OV602", Severity: Error,
		En: Wording{Message: `the row has {have}, which is not a "{rule}"`, Mark: `is not kept`,
			Help:    map[string]string{"": `the nearest that are: below, {below}; above, {above}`},
			Explain: `The count of the row must fit the stitch pattern that follows. The nearest counts that do are shown.`},
		Es: Wording{Message: `la vuelta tiene {have}, que no es «{rule}»`, Mark: `no se cumple`,
			Help:    map[string]string{"": `las más cercanas que sirven: por debajo, {below}; por encima, {above}`},
			Explain: `La cuenta de la vuelta debe servir para el punto que sigue. Se muestran las más cercanas que sirven.`},
		Example: trial("  chain 13, join\n  round: sc in each = multiple of 6"),
		Fixed:   trial("  chain 12, join\n  round: sc in each = multiple of 6")},

	{Code: "OV603", Severity: Error,
		En: Wording{Message: `{need} {need|place is|places are} counted off, but the edge has {have}`, Mark: `counts {need}`,
			Help:    map[string]string{"": `bring the numbers to {have} in all; a marker in a stitch counts one`},
			Explain: `Counting off walks along the whole edge, so its numbers add up to all of it.`},
		Es: Wording{Message: `se {need|cuenta|cuentan} {need} {need|lugar|lugares}, pero el borde tiene {have}`, Mark: `cuenta {need}`,
			Help:    map[string]string{"": `llevar los números a {have} en total; un marcador en un punto cuenta uno`},
			Explain: `count off recorre todo el borde, así que sus números suman todo.`},
		Example: trial("  chain 12, join\n  round: sc in each = 12\n  count off: 2, mark m, 9\n  round: sc to m, sc in each"),
		Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  count off: 2, mark m, 10\n  round: sc to m, sc in each")},

	{Code: "OV604", Severity: Error,
		En: Wording{Message: `the row makes {have} {have|space|spaces} too, which this count does not name`, Mark: `counts stitches alone`,
			Help:    map[string]string{"": `name them: = 12 sts, {have} spaces; or count places: = 16 sts and chains`},
			Explain: `A bare number counts stitches. Where a row has spaces as well, a maker would read it as everything there is, so both are named.`},
		Es: Wording{Message: `la vuelta hace además {have} {have|espacio|espacios} que esta cuenta no nombra`, Mark: `cuenta solo puntos`,
			Help:    map[string]string{"": `nombrarlos: = 12 sts, {have} spaces; o contar lugares: = 16 sts and chains`},
			Explain: `Un número solo cuenta puntos. Si la vuelta tiene también espacios, quien teje lo leería como todo lo que hay, así que se nombran ambos.`},
		Example: trial("  chain 12, join\n  round: [sc in next 2, ch 1, skip 1] around = 8"),
		Fixed:   trial("  chain 12, join\n  round: [sc in next 2, ch 1, skip 1] around = 8 sts, 4 spaces")},

	{Code: "OV605", Severity: Error,
		En: Wording{Message: `a change each time can be stated only behind the end of a repeat`, Mark: `belongs behind end`,
			Help:    map[string]string{"": `write end = + 8 each time, or state the count of this row`},
			Explain: `The count of a row is a number; how a repeat changes it each time is said for the repeat as a whole.`},
		Es: Wording{Message: `un cambio por cada vez solo se indica tras el final de una repetición (repeat)`, Mark: `va detrás de end`,
			Help:    map[string]string{"": `escribir end = + 8 each time, o indicar la cuenta de esta vuelta`},
			Explain: `La cuenta de una vuelta es un número; cuánto cambia en cada repetición se dice de la repetición entera.`},
		Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: inc around = + 6 each time"),
		Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  repeat 1 times\n    round: inc around\n  end = + 6 each time")},

	{Code: "OV606", Severity: Note,
		En: Wording{Message: `the part {part} states no counts`, Mark: `is checked only for coming out even`,
			Help:    map[string]string{"": `state some where they change: = 96`},
			Explain: `Every row is checked against the row below, but a repeat can come out even with the wrong numbers. A count stated by the designer catches that.`},
		Es: Wording{Message: `la pieza {part} no indica ninguna cuenta`, Mark: `solo se comprueba que cuadre`,
			Help:    map[string]string{"": `indicar algunas donde cambian: = 96`},
			Explain: `Cada vuelta se compara con la anterior, pero una repetición puede cuadrar con números equivocados. Una cuenta indicada por quien diseña lo descubre.`},
		Example: trial("  chain 12, join\n  round: sc in each"),
		Fixed:   trial("  chain 12, join\n  round: sc in each = 12")},

	{Code: "OV607", Severity: Warning,
		En: Wording{Message: `the sizes {small} and {large} come out alike, at {have} {unit}, though {gap} more is asked for`, Mark: `the same in both`,
			Help:    map[string]string{"": `take a smaller multiple, round another way, or set one size by hand with but; leave it if the sizes may be alike`},
			Explain: `A length is rounded to what the stitch pattern allows. Here the rounding takes away the whole difference between two sizes: whoever is between them gains nothing by choosing the larger one.`},
		Es: Wording{Message: `las tallas {small} y {large} quedan iguales, con {have} {unit}, aunque se pide {gap} más`, Mark: `lo mismo en las dos`,
			Help:    map[string]string{"": `usar un múltiplo menor, redondear de otra manera o fijar una talla a mano con but; dejarlo así si las tallas pueden ser iguales`},
			Explain: `Una longitud se redondea a lo que permite el punto. Aquí el redondeo se lleva toda la diferencia entre dos tallas: quien está entre ellas no gana nada al elegir la mayor.`},
		Example: gradeTrial("30 (31, 40) cm", "multiple of 8"),
		Fixed:   gradeTrial("30 (35, 40) cm", "multiple of 8")},

	{Code: "OV608", Severity: Warning,
		En: Wording{Message: `from {small} to {large} it grows by {have} {unit}, and by {need} between other sizes, though the lengths grow alike`, Mark: `grows in uneven steps`,
			Help:    map[string]string{"": `take a smaller multiple, or set one size by hand with but, which keeps the multiple; leave it if the step is meant`},
			Explain: `A length is rounded to what the stitch pattern allows, up in one size and down in the next. Each count is right by itself, but one step from size to size is then at least twice as wide as another.`},
		Es: Wording{Message: `de {small} a {large} crece {have} {unit}, y entre otras tallas {need}, aunque las longitudes crecen por igual`, Mark: `crece a saltos desiguales`,
			Help:    map[string]string{"": `usar un múltiplo menor o fijar una talla a mano con but, que conserva el múltiplo; dejarlo así si el salto es a propósito`},
			Explain: `Una longitud se redondea a lo que permite el punto, hacia arriba en una talla y hacia abajo en la siguiente. Cada cuenta es correcta por sí sola, pero un salto de talla a talla resulta al menos el doble de ancho que otro.`},
		Example: gradeTrial("30 (37.5, 45) cm", "multiple of 8"),
		Fixed:   gradeTrial("30 (35, 40) cm", "multiple of 8")},
	{Code: "OV609", Severity: Warning,
		En: Wording{Message: `{name} falls from {before} in size {small} to {have} in size {large}`, Mark: `is smaller in the larger size`,
			Help:    map[string]string{"": `compare the numbers of both sizes; often two numbers of a list have changed places`},
			Explain: `Sizes grow from left to right, and so does every finished measure. One that falls is as a rule a list with its numbers in the wrong order, or a count that was made from the wrong measure of the wearer.`},
		Es: Wording{Message: `{name} baja de {before} en la talla {small} a {have} en la talla {large}`, Mark: `es menor en la talla mayor`,
			Help:    map[string]string{"": `comparar los números de las dos tallas; muchas veces dos números de una lista están cambiados`},
			Explain: `Las tallas crecen de izquierda a derecha, y con ellas todas las medidas. Una que baja suele deberse a una lista con los números en otro orden, o a una cuenta sacada de otra medida del cuerpo.`},
		Example: growTrial("32 (40, 36)", ""),
		Fixed:   growTrial("32 (36, 40)", "")},

	{Code: "OV610", Severity: Warning,
		En: Wording{Message: `{name} stays at {have} from size {small} to size {large}, though the wearer grows by {gap}`, Mark: `does not grow`,
			Help:    map[string]string{"": `give the larger size more, or leave out one of the sizes`},
			Explain: `A size is chosen by the measures of the wearer. Two sizes with the same finished measure are one size: whoever pays for the larger one gets the smaller.`},
		Es: Wording{Message: `{name} se queda en {have} de la talla {small} a la talla {large}, aunque el cuerpo crece {gap}`, Mark: `no crece`,
			Help:    map[string]string{"": `dar más a la talla mayor o quitar una de las dos`},
			Explain: `La talla se elige por las medidas del cuerpo. Dos tallas con la misma medida terminada son una sola: quien elige la mayor recibe la menor.`},
		Example: growTrial("32 (36, 36)", " fits fit.chest ease -1 to 6 cm"),
		Fixed:   growTrial("32 (36, 40)", " fits fit.chest ease -1 to 6 cm")},

	{Code: "OV611", Severity: Warning,
		En: Wording{Message: `{name} stays at {have} from size {small} to size {large}, while {other} grows by {gap}`, Mark: `does not grow along`,
			Help:    map[string]string{"": `grade both, or say with a measure of the wearer that it may stay`},
			Explain: `The width of the body, the depth of the armhole and the width of the sleeve grow together: where one stands still, the larger size binds there, though every count is right.`},
		Es: Wording{Message: `{name} se queda en {have} de la talla {small} a la talla {large}, mientras que {other} crece {gap}`, Mark: `no crece a la par`,
			Help:    map[string]string{"": `graduar las dos, o compararla con una medida del cuerpo que no cambie`},
			Explain: `El ancho del cuerpo, el hondo de la sisa y el ancho de la manga crecen juntos: donde una medida se queda igual, la talla mayor aprieta, aunque todas las cuentas sean correctas.`},
		Example: growTrial("32 (36, 36)", "\n  armhole = height of band"),
		Fixed:   growTrial("32 (36, 40)", "\n  armhole = height of band")},

	{Code: "OV612", Severity: Warning,
		En: Wording{Message: `{name} grows by {have} from size {small} to size {large} and by {need} between other sizes, though the wearer grows alike`, Mark: `grows in uneven steps`,
			Help:    map[string]string{"": `spread the difference over the sizes; leave it if the step is meant`},
			Explain: `Where the wearer grows in even steps, the piece should. A step twice as wide as another comes from rounding to a wide stitch pattern, or from a number that was typed.`},
		Es: Wording{Message: `{name} crece {have} de la talla {small} a la talla {large} y {need} entre otras tallas, aunque el cuerpo crece por igual`, Mark: `crece a saltos desiguales`,
			Help:    map[string]string{"": `repartir la diferencia entre las tallas; dejarlo así si el salto es a propósito`},
			Explain: `Donde el cuerpo crece a pasos iguales, también debería hacerlo la pieza. Un salto el doble de ancho que otro viene de redondear a un punto de repetición ancha, o de un número escrito a mano.`},
		Example: growTrial("32 (34, 40)", " fits fit.chest ease -1 to 6 cm"),
		Fixed:   growTrial("32 (36, 40)", " fits fit.chest ease -1 to 6 cm")},

	{Code: "OV613", Severity: Note,
		En: Wording{Message: `these {unit} are even in {even} and odd in {odd}`, Mark: `even and odd`,
			Help:    map[string]string{"": `ask for one or the other in all sizes: even, odd or multiple of 2`},
			Explain: `Counts that are all even or all odd keep the middle, the halves and the pairs in the same place in every size. Mixed ones are right by themselves, but a motif in the middle or a rib will come out in half of the sizes only.`},
		Es: Wording{Message: `estos {unit} son pares en {even} e impares en {odd}`, Mark: `pares e impares`,
			Help:    map[string]string{"": `pedir lo mismo en todas las tallas: even, odd o multiple of 2`},
			Explain: `Si las cuentas son todas pares o todas impares, el centro, las mitades y las parejas caen igual en todas las tallas. Mezcladas son correctas, pero un motivo centrado o un elástico solo saldrá en la mitad de las tallas.`},
		Example: gradeTrial("30 (34, 38) cm", "nearest"),
		Fixed:   gradeTrial("30 (34, 38) cm", "even")},

	{Code: "OV614", Severity: Error,
		En: Wording{Message: `the section {name} has no places`, Mark: `none`,
			Help:    map[string]string{"": `check how its number is worked out in these sizes`},
			Explain: `A section that is counted off under a name is worked along later. With no places there is nothing to work along: in these sizes the numbers around it leave nothing for it.`},
		Es: Wording{Message: `la sección {name} no tiene ningún lugar`, Mark: `ninguno`,
			Help:    map[string]string{"": `revisar cómo se calcula su número en estas tallas`},
			Explain: `Una sección contada con nombre se teje después. Sin lugares no hay nada que tejer: en estas tallas los números de alrededor no le dejan nada.`},
		Example: trial("  in joined rounds\n  chain 12, join\n  round: sc in each = 12\n  count off: 12, 12 - 12 as sleeve"),
		Fixed:   trial("  in joined rounds\n  chain 12, join\n  round: sc in each = 12\n  count off: 8, 12 - 8 as sleeve")},

	{Code: "OV615", Severity: Note,
		En: Wording{Message: `this row of {part} shows the right side in {right} and the wrong side in {wrong}`, Mark: `not the same side in all sizes`,
			Help:    map[string]string{"": `make the rows below it even, or odd, in every size: rows(…, even), or rows for 21 cm, even:`},
			Explain: `The numbers of rows below are even in some sizes and odd in others. Whatever follows is then worked from the other side in half of the sizes, and the page cannot say which side faces. Rows of plain stitches look alike from both sides and are not reported; this one has stitches that do not.`},
		Es: Wording{Message: `esta hilera de {part} muestra el derecho en {right} y el revés en {wrong}`, Mark: `no es el mismo lado en todas las tallas`,
			Help:    map[string]string{"": `hacer que las hileras de debajo sean pares, o impares, en todas las tallas: rows(…, even) o rows for 21 cm, even:`},
			Explain: `El número de hileras de debajo es par en unas tallas e impar en otras. Lo que sigue se teje entonces por el otro lado en la mitad de las tallas, y la página no puede decir qué lado se ve. Las hileras de puntos lisos se ven iguales por los dos lados y no se avisan; esta lleva puntos que no.`},
		Example: sideTrial("4 (5)"),
		Fixed:   sideTrial("4 (6)")},
}

// sideTrial is a flat strip of two sizes with so many plain rows before the last one.
func sideTrial(rows string) string {
	return `pattern trial
  title en "Trial strip" es "Tira de prueba"
  terms us
end

sizes "S", "M"
end

part strip
  title en "Strip" es "Tira"
  in rows
  chain 12
  ` + rows + ` rows: sc in each = 12
  row ridge: sc flo in each = 12
  fasten off
end
`
}

// growTrial is a tube of three sizes with so many stitches, whose way round is the measure chest.
func growTrial(sts, more string) string {
	return `pattern trial
  title en "Trial band" es "Banda de prueba"
  terms us
end

sizes "S", "M", "L"
  age 18 years
  fit chest 19 (21, 23) cm
end

gauge 10 cm
  sc 16 sts, 18 rounds
end

part band
  title en "Band" es "Banda"
  in joined rounds
  chain ` + sts + `, join
  10 (20, 30) rounds: sc in each = ` + sts + `
  fasten off
end

measure
  chest = around band` + more + `
end
`
}

// gradeTrial is a small source of three sizes whose stitches are made from a length.
func gradeTrial(wide, multiple string) string {
	return `pattern trial
  title en "Trial band" es "Banda de prueba"
  terms us
end

sizes "S", "M", "L"
end

gauge 10 cm
  sc 16 sts, 18 rows
end

let cast = stitches(` + wide + `, sc, ` + multiple + `)

part band
  title en "Band" es "Banda"
  in joined rounds
  chain cast, join
  round: sc in each = cast
end
`
}
