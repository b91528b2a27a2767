package diag

import "strings"

// How a pattern grows from size to size, codes 609 to 616 and 790 on.
func grading() []Entry {
	return []Entry{
		{Code: "OV609", Severity: Warning,
			En: Wording{Message: `{={name}} falls from {before} in size {small} to {have} in size {large}`, Mark: `is smaller in the larger size`,
				Help:    map[string]string{"": `compare the numbers of both sizes; often two numbers of a list have changed places`},
				Explain: `Sizes grow from left to right, and so does every finished measure. One that falls is as a rule a list with its numbers in the wrong order, or a count that was made from the wrong measure of the wearer.`},
			Es: Wording{Message: `{={name}} baja de {before} en la talla {small} a {have} en la talla {large}`, Mark: `es menor en la talla mayor`,
				Help:    map[string]string{"": `comparar los números de las dos tallas; muchas veces dos números de una lista están cambiados`},
				Explain: `Las tallas crecen de izquierda a derecha, y con ellas todas las medidas. Una que baja suele deberse a una lista con los números en otro orden, o a una cuenta sacada de otra medida del cuerpo.`},
			Example: growTrial("32 (40, 36)", ""),
			Fixed:   growTrial("32 (36, 40)", "")},

		{Code: "OV610", Severity: Warning,
			En: Wording{Message: `{={name}} stays at {have} from size {small} to size {large}, though the wearer grows by {gap}`, Mark: `does not grow`,
				Help:    map[string]string{"": `give the larger size more, or leave out one of the sizes`},
				Explain: `A size is chosen by the measures of the wearer. Two sizes with the same finished measure are one size: whoever pays for the larger one gets the smaller.`},
			Es: Wording{Message: `{={name}} se queda en {have} de la talla {small} a la talla {large}, aunque el cuerpo crece {gap}`, Mark: `no crece`,
				Help:    map[string]string{"": `dar más a la talla mayor o quitar una de las dos`},
				Explain: `La talla se elige por las medidas del cuerpo. Dos tallas con la misma medida terminada son una sola: quien elige la mayor recibe la menor.`},
			Example: growTrial("32 (36, 36)", fitted),
			Fixed:   growTrial("32 (36, 40)", fitted)},

		{Code: "OV611", Severity: Warning,
			En: Wording{Message: `{={name}} stays at {have} from size {small} to size {large}, while {={other}} grows by {gap}`, Mark: `does not grow along`,
				Help:    map[string]string{"": `grade both; if it may stay, say so before it with {=meant}`},
				Explain: `The width of the body, the depth of the armhole and the width of the sleeve grow together: where one stands still, the larger size binds there, though every count is right.`},
			Es: Wording{Message: `{={name}} se queda en {have} de la talla {small} a la talla {large}, mientras que {={other}} crece {gap}`, Mark: `no crece a la par`,
				Help:    map[string]string{"": `graduar las dos; si puede quedarse, decirlo antes con {=meant}`},
				Explain: `El ancho del cuerpo, el hondo de la sisa y el ancho de la manga crecen juntos: donde una medida se queda igual, la talla mayor aprieta, aunque todas las cuentas sean correctas.`},
			Example: growTrial("32 (36, 36)", "\n  armhole = height of band"),
			Fixed:   growTrial("32 (36, 40)", "\n  armhole = height of band")},

		{Code: "OV612", Severity: Warning,
			En: Wording{Message: `{={name}} grows by {have} from size {small} to size {large} and by {need} between other sizes, though the wearer grows alike`, Mark: `grows in uneven steps`,
				Help:    map[string]string{"": `spread the difference over the sizes; if the step is meant, say so before it with {=meant}`},
				Explain: `Where the wearer grows in even steps, the piece should. A step twice as wide as another comes from rounding to a wide stitch pattern, or from a number that was typed.`},
			Es: Wording{Message: `{={name}} crece {have} de la talla {small} a la talla {large} y {need} entre otras tallas, aunque el cuerpo crece a pasos iguales`, Mark: `crece a saltos desiguales`,
				Help:    map[string]string{"": `repartir la diferencia entre las tallas; si el salto es a propósito, decirlo antes con {=meant}`},
				Explain: `Donde el cuerpo crece a pasos iguales, también debería hacerlo la pieza. Un salto el doble de grande que otro viene de redondear a una puntada de repetición ancha, o de un número escrito a mano.`},
			Example: growTrial("32 (34, 40)", fitted),
			Fixed:   growTrial("32 (36, 40)", fitted)},

		{Code: "OV613", Severity: Note,
			En: Wording{Message: `these {unit} are even in {even} and odd in {odd}`, Mark: `even and odd`,
				Help:    map[string]string{"": `ask for one or the other in all sizes: {=even}, {=odd} or {=multiple of 2}`},
				Explain: `Counts that are all even or all odd keep the middle, the halves and the pairs in the same place in every size. Mixed ones are right by themselves, but a motif in the middle or a rib will come out in half of the sizes only.`},
			Es: Wording{Message: `la cuenta de {unit} es par en {even} e impar en {odd}`, Mark: `pares e impares`,
				Help:    map[string]string{"": `pedir lo mismo en todas las tallas: {=even}, {=odd} o {=multiple of 2}`},
				Explain: `Si las cuentas son todas pares o todas impares, el centro, las mitades y las parejas caen igual en todas las tallas. Mezcladas son correctas, pero un dibujo centrado o un elástico solo saldrá en la mitad de las tallas.`},
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
				Help:    map[string]string{"": `make the rows below it even, or odd, in every size: {=rows(…, even)}, or {=rows for 21 cm, even:}`},
				Explain: `The numbers of rows below are even in some sizes and odd in others. Whatever follows is then worked from the other side in half of the sizes, and the page cannot say which side faces. Rows of plain stitches look alike from both sides and are not reported; this one has stitches that do not.`},
			Es: Wording{Message: `esta hilera de {part} muestra el derecho en {right} y el revés en {wrong}`, Mark: `no es el mismo lado en todas las tallas`,
				Help:    map[string]string{"": `hacer que las hileras de debajo sean pares, o impares, en todas las tallas: {=rows(…, even)} o {=rows for 21 cm, even:}`},
				Explain: `El número de hileras de debajo es par en unas tallas e impar en otras. Lo que sigue se teje entonces por el otro lado en la mitad de las tallas, y la página no puede decir qué lado se ve. Las hileras de puntos lisos se ven iguales por los dos lados y no se avisan; esta lleva puntos que no.`},
			Example: sideTrial("4 (5)"),
			Fixed:   sideTrial("4 (6)")},

		{Code: "OV616", Severity: Note,
			En: Wording{Message: `there are steps here for {named}, and none for {missing}`, Mark: `the first of them`,
				Help:    map[string]string{"": `add a block for the missing sizes, or take them into one of these; leave it if they have nothing to do`},
				Explain: `Blocks for some sizes that stand side by side are as a rule ways of doing the same thing, one for each size. A size in none of them does nothing there.`},
			Es: Wording{Message: `aquí hay pasos para {named} y ninguno para {missing}`, Mark: `el primero`,
				Help:    map[string]string{"": `añadir un bloque para las tallas que faltan o incluirlas en uno de estos; dejarlo así si no tienen nada que hacer`},
				Explain: `Los bloques para algunas tallas que van uno junto a otro suelen ser maneras de hacer lo mismo, una por talla. Una talla que no está en ninguno no hace nada ahí.`},
			Example: onlyTrial(""),
			Fixed:   onlyTrial(", \"L\"")},

		{Code: "OV790", Severity: Note,
			En: Wording{Message: `measures of the wearer are given, but no measure of the piece is compared with them`, Mark: `used for nothing that is checked`,
				Help:    map[string]string{"": `say what fits: {=chest = around body fits fit.chest ease 4 to 8 cm}`},
				Explain: `A size fits if the piece is as much larger than the wearer as it is meant to be. The chest or the hips come first; the rest of the grading follows from them.`},
			Es: Wording{Message: `se dan medidas del cuerpo, pero ninguna medida de la pieza se compara con ellas`, Mark: `no sirven para comprobar nada`,
				Help:    map[string]string{"": `decir qué se ajusta: {=chest = around body fits fit.chest ease 4 to 8 cm}`},
				Explain: `Una talla queda bien si la pieza es tanto más grande que el cuerpo como se quiere. Primero el pecho o la cadera; el resto de la graduación sale de ahí.`},
			Example: strings.Replace(growTrial("32 (36, 40)", fitted), fitted, "", 1),
			Fixed:   growTrial("32 (36, 40)", fitted)},

		{Code: "OV791", Severity: Note,
			En: Wording{Message: `no finished measures are given for what is made ({={kind}})`, Mark: `is worn`,
				Help:    map[string]string{"": `add a {=measure} block: what whoever chooses a size has to know`},
				Explain: `Makers choose a size by the finished measures. A pattern for something worn that gives none leaves them to guess.`},
			Es: Wording{Message: `no se da ninguna medida terminada de esta prenda ({={kind}})`, Mark: `se lleva puesta`,
				Help:    map[string]string{"": `añadir un bloque {=measure}: lo que necesita saber quien elige la talla`},
				Explain: `La talla se elige por las medidas de la pieza terminada. Un patrón de algo que se lleva puesto y no da ninguna obliga a adivinar.`},
			Example: wornTrial(""),
			Fixed:   wornTrial("\nmeasure\n  chest = around band\nend\n")},
	}
}

// fitted is what compares a measure of growTrial with its wearer.
const fitted = " fits fit.chest ease -1 to 6 cm"

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
	wearer := ""
	if strings.Contains(more, "fit.chest") {
		wearer = "\n  fit chest 19 (21, 23) cm"
	}
	return `pattern trial
  title en "Trial band" es "Banda de prueba"
  terms us
end

sizes "S", "M", "L"
  age 18 years` + wearer + `
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

// onlyTrial is a tube of three sizes with rounds for S, and others for M and for the sizes behind it.
func onlyTrial(more string) string {
	return strings.Replace(growTrial("32 (36, 40)", ""), "  fasten off", `  only "S"
    2 rounds: sc in each
  end
  only "M"`+more+`
    4 rounds: sc in each
  end
  fasten off`, 1)
}

// wornTrial is a tube for grown-ups that is said to be a top, with what stands behind its part.
func wornTrial(after string) string {
	s := growTrial("32 (36, 40)", "")
	s, _, _ = strings.Cut(s, "\nmeasure\n")
	return strings.Replace(s, "  terms us", "  kind top\n  terms us", 1) + after
}
