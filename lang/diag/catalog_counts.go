package diag

// Codes 6xx: counts.
func counts() []Entry {
	return []Entry{
		{Code: "OV601", Severity: Error,
			En: Wording{Message: `the stated count of {what} is {need}, but {have} {have|is|are} made`, Mark: `states {need}`, Related: map[string]string{"made": `makes {have}`},
				Help:    map[string]string{"": `state {have}, or change the row so that it makes {need}`},
				Explain: `A stated count is compared with what the row makes, in every size. Which of the two is wrong the tool cannot know, so it stops here; later rows of the part are checked once these agree.`},
			Es: Wording{Message: `la cuenta indicada de {what} es {need}, pero {have|sale|salen} {have}`, Mark: `indica {need}`, Related: map[string]string{"made": `da {have}`},
				Help:    map[string]string{"": `indicar {have} o cambiar la hilera para que dé {need}`},
				Explain: `La cuenta indicada se compara con lo que da la hilera, en cada talla. Cuál de las dos está mal no se puede saber, así que la comprobación se detiene aquí; las hileras siguientes se comprueban cuando coincidan.`},
			Example: trial("  chain 12, join\n  round: sc in each = 13"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12")},

		{Code: "OV602", Severity: Error,
			En: Wording{Message: `the row has {have}, which is not a "{={rule}}"`, Mark: `is not kept`,
				Help:    map[string]string{"": `the nearest that are: below, {below}; above, {above}`},
				Explain: `The count of the row must fit the stitch pattern that follows. The nearest counts that do are shown.`},
			Es: Wording{Message: `la hilera tiene {have}, que no es «{={rule}}»`, Mark: `no se cumple`,
				Help:    map[string]string{"": `las más cercanas que sirven: por debajo, {below}; por encima, {above}`},
				Explain: `La cuenta de la hilera debe servir para la puntada que sigue. Se muestran las más cercanas que sirven.`},
			Example: trial("  chain 13, join\n  round: sc in each = multiple of 6"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = multiple of 6")},

		{Code: "OV603", Severity: Error,
			En: Wording{Message: `{need} {need|place is|places are} counted off, but the edge has {have}`, Mark: `counts {need}`,
				Help:    map[string]string{"": `bring the numbers to {have} in all; a marker in a stitch counts one`},
				Explain: `Counting off walks along the whole edge, so its numbers add up to all of it.`},
			Es: Wording{Message: `se {need|cuenta|cuentan} {need} {need|lugar|lugares}, pero el borde tiene {have}`, Mark: `cuenta {need}`,
				Help:    map[string]string{"": `llevar los números a {have} en total; un marcador en un punto cuenta uno`},
				Explain: `{=count off} recorre todo el borde, así que sus números suman todos los lugares.`},
			Example: trial("  chain 12, join\n  round: sc in each = 12\n  count off: 2, mark m, 9\n  round: sc to m, sc in each"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12\n  count off: 2, mark m, 10\n  round: sc to m, sc in each")},

		{Code: "OV604", Severity: Error,
			En: Wording{Message: `the row makes {have} {have|space|spaces} too, which this count does not name`, Mark: `counts stitches alone`,
				Help:    map[string]string{"": `name them: {== 12 sts, {have} spaces}; or count places: {== 16 sts and chains}`},
				Explain: `A bare number counts stitches. Where a row has spaces as well, a maker would read it as everything there is, so both are named.`},
			Es: Wording{Message: `la hilera hace además {have} {have|espacio|espacios} que esta cuenta no nombra`, Mark: `cuenta solo puntos`,
				Help:    map[string]string{"": `nombrarlos: {== 12 sts, {have} spaces}; o contar lugares: {== 16 sts and chains}`},
				Explain: `Un número solo cuenta puntos. Si la hilera tiene también espacios, quien teje lo leería como todo lo que hay, así que se nombran ambos.`},
			Example: trial("  chain 12, join\n  round: [sc in next 2, ch 1, skip 1] around = 8"),
			Fixed:   trial("  chain 12, join\n  round: [sc in next 2, ch 1, skip 1] around = 8 sts, 4 spaces")},

		{Code: "OV605", Severity: Error,
			En: Wording{Message: `a change each time can be stated only behind the end of a {=repeat}`, Mark: `belongs behind {=end}`,
				Help:    map[string]string{"": `write {=end = + 8 each time}, or state the count of this row`},
				Explain: `The count of a row is a number; how a repeat changes it each time is said for the repeat as a whole.`},
			Es: Wording{Message: `lo que la cuenta cambia cada vez solo se indica tras el final de una repetición ({=repeat})`, Mark: `va detrás de {=end}`,
				Help:    map[string]string{"": `escribir {=end = + 8 each time}, o indicar la cuenta de esta hilera`},
				Explain: `La cuenta de una hilera es un número; cuánto cambia en cada repetición se dice de la repetición entera.`},
			Example: trial("  chain 6, join\n  round: sc in each = 6\n  round: inc around = + 6 each time"),
			Fixed:   trial("  chain 6, join\n  round: sc in each = 6\n  repeat 1 times\n    round: inc around\n  end = + 6 each time")},

		{Code: "OV606", Severity: Note,
			En: Wording{Message: `the part {part} states no counts`, Mark: `is checked only for coming out even`,
				Help:    map[string]string{"": `state some where they change: {== 96}`},
				Explain: `Every row is checked against the row below, but a repeat can come out even with the wrong numbers. A count stated by the designer catches that.`},
			Es: Wording{Message: `la pieza {part} no indica ninguna cuenta`, Mark: `solo se comprueba que cuadre`,
				Help:    map[string]string{"": `indicar algunas donde cambian: {== 96}`},
				Explain: `Cada hilera se compara con la anterior, pero una repetición puede cuadrar con números equivocados. Una cuenta indicada por quien diseña lo descubre.`},
			Example: trial("  chain 12, join\n  round: sc in each"),
			Fixed:   trial("  chain 12, join\n  round: sc in each = 12")},

		{Code: "OV607", Severity: Warning,
			En: Wording{Message: `the sizes {small} and {large} come out alike, at {have} {unit}, though {gap} more is asked for`, Mark: `the same in both`,
				Help:    map[string]string{"": `take a smaller multiple, round another way, or set one size by hand with {=but}; if the sizes may be alike, say so before it with {=meant}`},
				Explain: `A length is rounded to what the stitch pattern allows. Here the rounding takes away the whole difference between two sizes: whoever is between them gains nothing by choosing the larger one.`},
			Es: Wording{Message: `las tallas {small} y {large} quedan iguales, con {have} {unit}, aunque se pide {gap} más`, Mark: `lo mismo en las dos`,
				Help:    map[string]string{"": `usar un múltiplo menor, redondear de otra manera o fijar una talla a mano con {=but}; si las tallas pueden ser iguales, decirlo antes con {=meant}`},
				Explain: `Una longitud se redondea a lo que permite la puntada. Aquí el redondeo se lleva toda la diferencia entre dos tallas: quien está entre ellas no gana nada al elegir la mayor.`},
			Example: gradeTrial("30 (31, 40) cm", "multiple of 8"),
			Fixed:   gradeTrial("30 (35, 40) cm", "multiple of 8")},

		{Code: "OV608", Severity: Warning,
			En: Wording{Message: `from {small} to {large} it grows by {have} {unit}, and by {need} between other sizes, though the lengths grow alike`, Mark: `grows in uneven steps`,
				Help:    map[string]string{"": `take a smaller multiple, or set one size by hand with {=but}, which keeps the multiple; if the step is meant, say so before it with {=meant}`},
				Explain: `A length is rounded to what the stitch pattern allows, up in one size and down in the next. Each count is right by itself, but one step from size to size is then at least twice as wide as another.`},
			Es: Wording{Message: `de {small} a {large} crece {have} {unit}, y entre otras tallas {need}, aunque las longitudes crecen a pasos iguales`, Mark: `crece a saltos desiguales`,
				Help:    map[string]string{"": `usar un múltiplo menor o fijar una talla a mano con {=but}, que conserva el múltiplo; si el salto es a propósito, decirlo antes con {=meant}`},
				Explain: `Una longitud se redondea a lo que permite la puntada, hacia arriba en una talla y hacia abajo en la siguiente. Cada cuenta es correcta por sí sola, pero un salto de talla a talla resulta al menos el doble de grande que otro.`},
			Example: gradeTrial("30 (37.5, 45) cm", "multiple of 8"),
			Fixed:   gradeTrial("30 (35, 40) cm", "multiple of 8")},

		{Code: "OV617", Severity: Warning,
			En: Wording{Message: `{part} goes on from {other}, but {have} of it {have|is|are} made and {need} of the other`, Mark: `is not made for each`,
				Related: map[string]string{"other": `its last row is taken up`},
				Help:    map[string]string{"": `say the same number with {=make} in both`},
				Explain: `A part that takes up the last row of another is worked on each piece of it. With another number, some pieces would lack what belongs to them, or there would be none left to work on.`},
			Es: Wording{Message: `{part} sigue desde {other}, pero de una se {have|hace {have}|hacen {have}} y de la otra {need}`, Mark: `no son tantas`,
				Related: map[string]string{"other": `se sigue desde su última hilera`},
				Help:    map[string]string{"": `decir en ambas el mismo número con {=make}`},
				Explain: `Una pieza que sigue en la última hilera de otra se teje sobre cada ejemplar de ella. Con otro número, a algunos les faltaría lo suyo, o no quedaría ninguno sobre el que tejer.`},
			Example: trialOf("  make 2\n  in joined rounds\n  chain 20, join\n  4 rounds: sc in each = 20", cuffOf("")),
			Fixed:   trialOf("  make 2\n  in joined rounds\n  chain 20, join\n  4 rounds: sc in each = 20", cuffOf("  make 2\n"))},
	}
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

// cuffOf is a part worked on the last row of a strip.
func cuffOf(lines string) string {
	return "\npart cuff\n  title en \"Cuff\" es \"Puño\"\n" + lines + "  in joined rounds\n  from strip.edge\n  2 rounds: sc in each = 20\nend\n"
}
