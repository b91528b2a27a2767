package diag

import "strings"

// Codes 940 to 949: what the source says of cords, notions, ages and places, for the cautions.

// saidTrial is a small source with a part that is a belt, of a thing for the age that is given, with a line of the header, a notion and
// a line of the finishing.
func saidTrial(age, header, notion, finish string) string {
	return strings.NewReplacer("%age", age, "%header", header, "%notion", notion, "%finish", finish).Replace(`pattern trial
  title en "Trial" es "Prueba"
  kind coaster
  terms us%header
end

sizes "S", "M"
  age %age
end

` + scGauge + "\n\n" + kelp(kelpBall+"\n"+kelpSwatch) + `
%notion
part body
  title en "Body" es "Cuerpo"
  yarn kelp
  in rows
  chain 20 (24)
  4 rows: sc in each = 20 (24)
  fasten off
end

part belt
  title en "Belt" es "Cinturón"
  yarn kelp
  in rows
  chain 60 (64)
  6 rows: sc in each = 60 (64)
  fasten off
end

finish
  %finish
  weave in ends
end

measure
  width = width of body
end
`)
}

func cordsAndNotions() []Entry {
	return []Entry{
		{Code: "OV940", Severity: Error,
			En: Wording{
				Message: `no safety rules are known for {word}`,
				Mark:    `not one of the places`,
				Help:    map[string]string{"": `the places are {={known}}; without such a line all rules hold`},
				Explain: `The line {=for eu, us, uk} says where the pattern is offered, and leaves out the rules of all other places. The tool has
rules of the European Union, the United States and the United Kingdom. For any other place leave the line out: then all of them are
gone by, the strictest first, and local law has the last word.`},
			Es: Wording{
				Message: `no hay normas de seguridad de {word}`,
				Mark:    `no es uno de los lugares`,
				Help:    map[string]string{"": `los lugares son {={known}}; sin esa línea rigen todas las normas`},
				Explain: `La línea {=for eu, us, uk} dice dónde se ofrece el patrón y deja fuera las normas de los demás lugares. La herramienta tiene
normas de la Unión Europea, Estados Unidos y el Reino Unido. Para cualquier otro lugar se quita la línea: entonces se miran todas, la
más estricta primero, y la ley local tiene la última palabra.`},
			Example: saidTrial("18 years", "\n  for eu, mars", "", "cord of belt, at waist, as belt"),
			Fixed:   saidTrial("18 years", "\n  for eu, uk", "", "cord of belt, at waist, as belt")},

		{Code: "OV941", Severity: Error,
			En: Wording{
				Message: `{word} says nothing here`,
				Help: map[string]string{
					"none": `the words that can stand here: {={known}}`,
					"near": `a word like it that can stand here: {={near|or}}`},
				Explain: `Where a cord sits, what it is for and how it ends are told by words of a short list, and so are what a notion is and what it
is made of: the safety rules go by these words, and another one would be taken for nothing. The reference lists them under “Finishing”
and “Gauge, hook and yarn”.`},
			Es: Wording{
				Message: `{word} no dice nada aquí`,
				Help: map[string]string{
					"none": `palabras que pueden ir aquí: {={known}}`,
					"near": `una palabra parecida que puede ir aquí: {={near|or}}`},
				Explain: `El lugar de un cordón, para qué sirve y cómo acaba se dicen con palabras de una lista corta, y también qué es un material y
de qué está hecho: las normas de seguridad se guían por ellas, y otra palabra no diría nada. La referencia las enumera en los apartados
de acabado y de materiales.`},
			Example: saidTrial("18 years", "", "", "cord of belt, at waist, as girdle"),
			Fixed:   saidTrial("18 years", "", "", "cord of belt, at waist, as belt")},

		{Code: "OV942", Severity: Error,
			En: Wording{
				Message: `the oldest wearer is younger than the youngest`,
				Mark:    `behind {=to} stands the oldest`,
				Help:    map[string]string{"": `give both in the order of the sizes: {=age 0 (6) to 6 (12) months}`},
				Explain: `Behind {=age} stands how old the youngest wearer of each size is, behind {=to} how old the oldest. Both lists go from the
smallest size to the largest and have one number for each.`},
			Es: Wording{
				Message: `la persona de más edad es menor que la más joven`,
				Mark:    `tras {=to} va la edad mayor`,
				Help:    map[string]string{"": `dar las dos en el orden de las tallas: {=age 0 (6) to 6 (12) months}`},
				Explain: `Primero va la edad de la persona más joven de cada talla y detrás la de la mayor. Las dos listas van de la talla más
pequeña a la más grande y tienen un número para cada una.`},
			Example: saidTrial("20 (30) to 19 (40) years", "", "", "block"),
			Fixed:   saidTrial("20 (30) to 30 (40) years", "", "", "block")},

		{Code: "OV943", Severity: Warning,
			En: Wording{
				Message: `{part} is called like a cord, and the finishing says nothing of it`,
				Mark:    `a strap, a tie, a belt?`,
				Help:    map[string]string{"": `say what it is, in the finishing: {=cord of {part}, {as}}`},
				Explain: `Straps, ties and belts are cords to the safety rules, however they are worked. {=cord of …} says where such a part sits and
what it is for; its length and its width are worked out from its fabric in every size. What is not known is asked for and never taken
as safe. A part that is no cord at all can be called something else, or the reason is given with {=meant}.`},
			Es: Wording{
				Message: `{part} se llama como un cordón y el acabado no habla de esta pieza`,
				Mark:    `¿un tirante, una atadura, un cinturón?`,
				Help:    map[string]string{"": `decir en el acabado qué es: {=cord of {part}, {as}}`},
				Explain: `Para las normas de seguridad los tirantes, las ataduras y los cinturones son cordones, se tejan como se tejan. {=cord of …}
dice dónde va la pieza y para qué sirve; su largo y su ancho salen de su tejido en cada talla. Lo que no se sabe se pregunta y nunca se da
por seguro. Una pieza que no es ningún cordón puede llamarse de otro modo, o se da la razón con {=meant}.`},
			Example: saidTrial("24 (48) months", "", "", "block"),
			Fixed:   saidTrial("24 (48) months", "", "", "cord of belt, at other, as tab, no ends")},

		{Code: "OV944", Severity: Warning,
			En: Wording{
				Message: `it is not known what this is, so the safety rules for a child under 3 cannot be decided`,
				Mark:    `something that can come off?`,
				Help:    map[string]string{"": `say what it is: {=notion en "…" es "…", as button 12 mm of wood}`},
				Explain: `Whatever is put on or into a thing for a child under 3 may come off and be swallowed. Words such as button, bead, thread or
stuffing tell what a notion is; where they do not, {=as} does. What is not known is asked for and never taken as safe.`},
			Es: Wording{
				Message: `no se sabe qué es esto ni, por tanto, qué normas de seguridad rigen para un menor de 3 años`,
				Mark:    `¿algo que se puede soltar?`,
				Help:    map[string]string{"": `decir qué es: {=notion en "…" es "…", as button 12 mm of wood}`},
				Explain: `Lo que se pone en una pieza para un menor de 3 años se puede soltar y acabar tragado. Palabras como botón, cuenta, hilo o
relleno dicen qué es un material; donde no lo dicen, lo dice {=as}. Lo que no se sabe se pregunta y nunca se da por seguro.`},
			Example: saidTrial("12 (24) months", "", "notion en \"three whatsits\" es \"tres chismes\"\n", "cord of belt, at other, as tab, no ends"),
			Fixed:   saidTrial("12 (24) months", "", "notion en \"three whatsits\" es \"tres chismes\", as tool\n", "cord of belt, at other, as tab, no ends")},

		{Code: "OV945", Severity: Error,
			En: Wording{
				Message: `the length of {={part}} is worked out from its fabric, so it cannot be given as well`,
				Help:    map[string]string{"": `leave the length out, or change the stitches or rows of {={part}}`},
				Explain: `A part that is worked has the length that its stitches and rows give at the gauge. A length beside that could only repeat it
or contradict it.`},
			Es: Wording{
				Message: `el largo de {={part}} sale de su tejido, así que no se puede dar además`,
				Help:    map[string]string{"": `quitar el largo, o cambiar los puntos o las hileras de {={part}}`},
				Explain: `Una pieza tejida tiene el largo que sus puntos e hileras dan con la muestra. Otro largo al lado no podría más que repetirlo o
contradecirlo.`},
			Example: saidTrial("18 years", "", "", "cord of belt, length 50 cm, at waist, as belt"),
			Fixed:   saidTrial("18 years", "", "", "cord of belt, at waist, as belt")},

		{Code: "OV946", Severity: Error,
			En: Wording{
				Message: `this cord has no ends, and they are finished in some way`,
				Help:    map[string]string{"": `say one of the two: {=no ends}, or {=ends plain}`},
				Explain: `{=no ends} says that nothing hangs free: the cord is joined into a ring, or both its ends are sewn in. Then there is nothing to
knot, and nothing to put a bead on.`},
			Es: Wording{
				Message: `este cordón no tiene cabos, y se dice cómo se acaban`,
				Help:    map[string]string{"": `decir una de las dos cosas: {=no ends} o {=ends plain}`},
				Explain: `{=no ends} dice que nada cuelga libre: el cordón se cierra en un anillo, o sus dos extremos van cosidos. Entonces no hay nada
que anudar ni dónde poner una cuenta.`},
			Example: saidTrial("18 years", "", "", "cord of belt, at waist, as belt, no ends, ends knotted"),
			Fixed:   saidTrial("18 years", "", "", "cord of belt, at waist, as belt, ends knotted")},

		{Code: "OV947", Severity: Warning,
			En: Wording{
				Message: `a chain hangs from the piece here, and nothing says {what}, so its safety rules cannot be decided`,
				Mark:    `nothing is worked into it`,
				Help:    map[string]string{"": `say it in the finishing, as with {=cord of {name}, {as}}`},
				Explain: `Chains at the end of a row, or of a start, that nobody works into hang free, and an arch at an edge is a loop: to the safety
rules they are cords. How long they are comes from the gauge. Where they sit, what they are for and how they end stands in the finishing:
{=cord of …}, with the part and the label of the chains. What is not known is asked for and never taken as safe.`},
			Es: Wording{
				Message: `de la cadena que cuelga aquí de la pieza no se sabe {what}, y no se puede decir qué normas de seguridad rigen`,
				Mark:    `en ella no se teje nada`,
				Help:    map[string]string{"": `decirlo en el acabado, como con {=cord of {name}, {as}}`},
				Explain: `Las cadenas del final de una hilera o de un comienzo en las que no se teje cuelgan libres, y un arco en una orilla es una
presilla: para las normas de seguridad son cordones. Su largo sale de la muestra. Dónde van, para qué sirven y cómo acaban se dice en
el acabado: {=cord of …}, con la pieza y la etiqueta de las cadenas. Lo que no se sabe se pregunta y nunca se da por seguro.`},
			Example: strings.Replace(saidTrial("12 (24) months", "", "", "cord of belt, at other, as tab, no ends"), "4 rows: sc in each = 20 (24)", "row: sc in each, ch 20 as tie = 20 (24) sc, 1 space", 1),
			Fixed: strings.Replace(saidTrial("12 (24) months", "", "", "cord of belt, at other, as tab, no ends\n  cord of body.tie, at other, as tie, ends plain"),
				"4 rows: sc in each = 20 (24)", "row: sc in each, ch 20 as tie = 20 (24) sc, 1 space", 1)},
	}
}
