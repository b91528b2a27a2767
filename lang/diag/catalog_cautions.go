package diag

import "strings"

// Codes 9xx: cautions.

// childTrial is a small source of something for a child, in a casing of 50 and 55 cm with finishing lines.
func childTrial(kind, age, part, finish string) string {
	return childHeader(kind, "", age, part, finish)
}

// washable is a text of care, which things for the youngest need.
const washable = "\n  care\n    en | Wash by hand.\n    es | Lavar a mano.\n  end"

// childHeader is the same with more in its header.
func childHeader(kind, header, age, part, finish string) string {
	if kind != "" {
		kind = "\n  kind " + kind
	}
	if header != "" {
		header = "\n  " + header
	}
	if age != "" {
		age = "\n  age " + age
	}
	return `pattern trial
  title en "Trial" es "Prueba"` + kind + header + washable + `
  terms us
end

sizes "S", "M"` + age + `
end

` + scRounds + "\n\n" + kelp(kelpBall+"\n"+kelpSwatch) + `

part ` + part + `
  title en "Edge" es "Borde"
  yarn kelp
  in joined rounds
  chain 80 (88), join
  4 rounds: sc in each = 80 (88)
  fasten off
end

finish
  ` + finish + `
  weave in ends
end

measure
  width = around ` + part + `
end
`
}

// lacyTrial is a small source of socks for babies whose rounds have openings of some chains.
func lacyTrial(kind, age, chains string) string {
	return `pattern trial
  title en "Trial" es "Prueba"
  kind ` + kind + washable + `
  terms us
end

sizes "S", "M"
  age ` + age + `
end

` + scRounds + "\n\n" + kelp(kelpBall+"\n"+kelpSwatch) + `

part leg
  title en "Leg" es "Pierna"
  yarn kelp
  in joined rounds
  chain 24 (32), join
  round: [sc in next, ch ` + chains + `, skip ` + chains + `] around = 8 sts, 8 spaces
  fasten off
end

measure
  width = around leg
end
`
}

// tallTrial is a small source for children of over seven years and over 134 cm.
func tallTrial(part, finish string) string {
	return strings.Replace(childTrial("romper", "120 (132) months\n  fit height 140 (146) cm\n  fit waist 62 (63) cm", part, finish),
		"width = around "+part, "width = around "+part+" fits fit.waist ease -15 to 0 cm", 1)
}

// toyTrial is a small source of a toy whose size is known.
func toyTrial(kind, age, finish string) string {
	return strings.Replace(childTrial(kind, age, "body", finish), "width = around body", "height = around body / 2", 1)
}

// waistTrial is a small source with a cord in a casing at the waist of a wearer whose measure is known.
func waistTrial(kind, age, cord string) string {
	return strings.Replace(childTrial(kind, age+"\n  fit waist 53 (54.5) cm", "waistband", cord),
		"width = around waistband", "width = around waistband fits fit.waist ease -5 to 5 cm", 1)
}

// throughBand is a cord at the waist of which all is said.
const throughBand = `through waistband round 2, ends plain, fixed`

func cautions() []Entry {
	return []Entry{
		{Code: "OV901", Severity: Warning,
			En: Wording{
				Message: `the source does not say what is made, so the safety rules cannot be decided`,
				Help:    map[string]string{"": `say it in the header: {=kind trousers}, {=kind hat}, {=kind blanket}`},
				Explain: `Safety rules go by what a thing is and by who wears it. A cord at the waist of trousers has other limits than one
at a hood; a button on a toy is another matter than one on a cardigan. What is not known is asked for and never taken as safe.`},
			Es: Wording{
				Message: `el patrón no dice qué se hace, y no se puede saber qué normas de seguridad rigen`,
				Help:    map[string]string{"": `decirlo en el encabezado: {=kind trousers}, {=kind hat}, {=kind blanket}`},
				Explain: `Las normas de seguridad dependen de qué es la pieza y de quién la lleva. Un cordón en la cintura de un pantalón tiene
otros límites que uno en una capucha; un botón en un juguete no es lo mismo que en una chaqueta. Lo que no se sabe se pregunta y
nunca se da por seguro.`},
			Example: childTrial("", "14 (15) years", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand),
			Fixed:   waistTrial("trousers", "14 (15) years", "cord with kelp, length 60 (65) cm, "+throughBand)},

		{Code: "OV902", Severity: Warning,
			En: Wording{
				Message: `the source does not say for what age this is made, so safety rules for children cannot be decided`,
				Help:    map[string]string{"": `give the age of the youngest wearer of each size: {=age 12 (24) months}; for grown-ups, {=age 18 years}`},
				Explain: `Most safety rules hold below a certain age. Give the youngest age that each size is meant for: a size for 6 to 8
years counts as one for a child of 6. What is not known is asked for and never taken as safe; until it is known the cautions
print.`},
			Es: Wording{
				Message: `el patrón no dice para qué edad es, y no se puede saber qué normas de seguridad infantil rigen`,
				Help:    map[string]string{"": `dar la edad de la persona más joven de cada talla: {=age 12 (24) months}; para adultos, {=age 18 years}`},
				Explain: `La mayoría de las normas de seguridad rigen por debajo de cierta edad. Se da la edad más joven para la que se hace
cada talla: una talla de 6 a 8 años cuenta como de 6. Lo que no se sabe se pregunta y nunca se da por seguro; mientras tanto,
las precauciones se imprimen.`},
			Example: childTrial("trousers", "", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand),
			Fixed:   waistTrial("trousers", "24 (36) months", "cord with kelp, length 60 (65) cm, "+throughBand)},

		{Code: "OV903", Severity: Warning,
			En: Wording{
				Message: `of this it is not known {what}, so its safety rules cannot be decided`,
				Mark:    `at the waist, or at the neck?`,
				Help:    map[string]string{"": `words that say it: {={says|or}}`, "all": `words that say it: {={says}}`},
				Explain: `At the neck and hood of children's clothes most cords are forbidden; at the waist they are allowed with short ends. Where
the cord does not say where it is, the tool goes by the name of the part it runs through, such as {=waistband} or {=hood}.`},
			Es: Wording{
				Message: `de esto no se sabe {what}, y no se puede decir qué normas de seguridad rigen`,
				Mark:    `¿en la cintura o en el cuello?`,
				Help:    map[string]string{"": `palabras que lo dicen: {={says|or}}`, "all": `palabras que lo dicen: {={says}}`},
				Explain: `En el cuello y la capucha de la ropa infantil casi todos los cordones están prohibidos; en la cintura se permiten con
extremos cortos. Si el cordón no dice dónde está, la herramienta se guía por el nombre de la pieza por la que pasa, como {=waistband} o
{=hood}.`},
			Example: childTrial("cardigan", "12 (18) months", "border", "cord with kelp, length 55 (60) cm, through border round 2, ends plain, fixed"),
			Fixed:   childTrial("cardigan", "12 (18) months", "border", "cord with kelp, length 55 (60) cm, through border round 2, at waist, ends plain, fixed")},

		{Code: "OV904", Severity: Warning,
			En: Wording{
				Message: `this cord does not say {what}, so its safety rules cannot be decided`,
				Help:    map[string]string{"": `words that say it: {={says|or}}`, "all": `words that say it: {={says}}`},
				Explain: `The rules go by what a cord is for, how far its ends hang out and how they are finished. With the garment laid open,
each end of a drawstring hangs out by half of what the cord is longer than the opening it runs through; for that the tool needs the
length of the cord, the row it runs through and the gauge of that row. What is not known is asked for and never taken as safe.`},
			Es: Wording{
				Message: `de este cordón no se sabe {what}, y no se puede decir qué normas de seguridad rigen`,
				Help:    map[string]string{"": `palabras que lo dicen: {={says|or}}`, "all": `palabras que lo dicen: {={says}}`},
				Explain: `Las normas dependen de para qué es un cordón, cuánto cuelgan sus extremos y cómo se rematan. Con la prenda abierta y
extendida, cada extremo de un cordón ajustable sobresale la mitad de la diferencia entre el largo del cordón y el de la abertura por la
que pasa; para saberlo hacen falta el largo del cordón, la hilera por la que pasa y la muestra de esa hilera. Lo que no se sabe se
pregunta y nunca se da por seguro.`},
			Example: waistTrial("trousers", "24 (36) months", "cord with kelp, length 60 (65) cm, through waistband round 2, fixed"),
			Fixed:   waistTrial("trousers", "24 (36) months", "cord with kelp, length 60 (65) cm, "+throughBand)},

		{Code: "OV905", Severity: Warning,
			En: Wording{
				Message: `{name} is no known kind of thing, so the safety rules cannot be decided`,
				Help: map[string]string{
					"none": `the kinds are {={names}}`,
					"near": `a known kind like it: {={near|or}}`},
				Explain: `The safety rules go by a list of kinds. A word that is not on it cannot be matched to a rule; choose the nearest one,
such as {=garment} for clothes of any sort.`},
			Es: Wording{
				Message: `{name} no es una clase de pieza conocida, y no se puede saber qué normas de seguridad rigen`,
				Help: map[string]string{
					"none": `las clases son {={names}}`,
					"near": `una clase conocida parecida: {={near|or}}`},
				Explain: `Las normas de seguridad se guían por una lista de clases de piezas. Una palabra que no está en ella no se puede
relacionar con ninguna norma; conviene la más cercana, como {=garment} para cualquier prenda.`},
			Example: waistTrial("trowsers", "24 (36) months", "cord with kelp, length 60 (65) cm, "+throughBand),
			Fixed:   waistTrial("trousers", "24 (36) months", "cord with kelp, length 60 (65) cm, "+throughBand)},

		{Code: "OV910", Severity: Error,
			En: Wording{
				Message: `a free end of this cord measures {found}, more than the {limit} that {source} allow{source|s|} at this age`,
				Mark:    `free end, with the piece laid open`,
				Help:    map[string]string{"": `the longest cord that keeps to the limit: {largest}`},
				Explain: `Cords on children's things have caught in doors, slides and vehicles, and children have died. Standards limit how far
an end may hang out with the garment laid open to its widest: (length of the cord − the opening it runs through) ÷ 2 of a
drawstring, (length − waist of the wearer) ÷ 2 of a belt that goes round in one piece, and its whole length of any other cord. Where several
markets have limits the strictest is shown; {=for} in the header says which markets the pattern is for. The figures were read in
summaries, not in the standards themselves; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `un extremo libre de este cordón mide {found}, más de lo que {source|permite|permiten} {source} a esta edad: {limit}`,
				Mark:    `extremo libre, con la pieza abierta y extendida`,
				Help:    map[string]string{"": `el cordón más largo que respeta el límite: {largest}`},
				Explain: `Los cordones de prendas infantiles se han enganchado en puertas, toboganes y vehículos, y han muerto niños. Las normas
limitan cuánto puede colgar un extremo con la prenda abierta al máximo: (largo del cordón − abertura por la que pasa) ÷ 2 si es
ajustable, (largo − cintura de la persona) ÷ 2 si es un cinturón de una pieza, y todo su largo en los demás. Donde
varios mercados tienen límites se muestra el más estricto; {=for} en el encabezado dice para cuáles es el patrón. Las cifras se leyeron en
resúmenes, no en las normas mismas; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: waistTrial("trousers", "24 (36) months", "cord with kelp, length 80 (82) cm, "+throughBand),
			Fixed:   waistTrial("trousers", "24 (36) months", "cord with kelp, length 78 (82) cm, "+throughBand)},

		{Code: "OV911", Severity: Error,
			En: Wording{
				Message: `a cord is not allowed here on children's clothes of this age ({source})`,
				Mark:    `at the neck, hood or back`,
				Help:    map[string]string{"": `leave the cord out: shape the opening with ribbing, or close it with a button and a short loop`},
				Explain: `Drawstrings at the hood and neck have strangled children on slides and in doors. Standards forbid them for young
children whatever their length, and working cords at the back. The rule was read in summaries, not in the standard itself; local
law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `aquí no se permite un cordón en ropa infantil de esta edad ({source})`,
				Mark:    `en el cuello, la capucha o la espalda`,
				Help:    map[string]string{"": `quitar el cordón: dar forma a la abertura con un elástico tejido o cerrarla con un botón y una presilla corta`},
				Explain: `Los cordones de capucha y cuello han estrangulado a niños en toboganes y puertas. Las normas los prohíben para niños
pequeños sea cual sea su largo, y también los cordones funcionales en la espalda. La regla se leyó en resúmenes, no en la norma misma;
deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: childTrial("cardigan", "24 (36) months", "hood", "cord with kelp, length 55 (60) cm, through hood round 2"),
			Fixed:   childTrial("cardigan", "24 (36) months", "hood", "block")},

		{Code: "OV912", Severity: Error,
			En: Wording{
				Message: `a drawstring or halter at the neck or hood has free ends, and {source} allow{source|s|} none at this age`,
				Mark:    `its ends are free`,
				Help:    map[string]string{"": `close it to a ring that does not stick out, {=no ends}, or leave it out`},
				Explain: `From 7 to 13 years a drawstring at the hood or neck may have no free ends: with the garment laid open nothing sticks
out. The rule was read in summaries, not in the standard itself; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `un cordón ajustable o un tirante anudado en el cuello o la capucha tiene extremos libres, y {source} no {source|permite|permiten} ninguno a esta edad`,
				Mark:    `sus extremos son libres`,
				Help:    map[string]string{"": `cerrarlo en un anillo que no sobresalga, {=no ends}, o quitarlo`},
				Explain: `De 7 a 13 años, un cordón ajustable en la capucha o el cuello no puede tener extremos libres: con la prenda abierta y
extendida nada sobresale. La regla se leyó en resúmenes, no en la norma misma; deciden la ley local y un laboratorio de ensayo
acreditado.`},
			Example: tallTrial("neckband", "cord with kelp, length 50 (55) cm, through neckband round 2, ends plain, fixed"),
			Fixed:   tallTrial("neckband", "block")},

		{Code: "OV913", Severity: Error,
			En: Wording{
				Message: `{part} do not go on something for a child of this age ({source})`,
				Mark:    `it can be swallowed, or it weighs on the child`,
				Help:    map[string]string{"": `leave it out; eyes and noses can be embroidered or crocheted`},
				Explain: `A small hard part that comes off can choke a child under 3; magnets and batteries kill when swallowed; weights press on a
sleeping baby. Part of this is law, part is a rule of this tool that is stricter than the law, since the tests the law sets cannot be
done at home. A soft toy counts as one for the youngest whatever its label says. Local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `no se ponen {part} en algo para un niño de esta edad ({source})`,
				Mark:    `se puede tragar, o pesa sobre el niño`,
				Help:    map[string]string{"": `quitarlo; los ojos y hocicos se pueden bordar o tejer`},
				Explain: `Una pieza dura y pequeña que se suelta puede asfixiar a un menor de 3 años; los imanes y las pilas matan si se tragan; el peso
añadido oprime al bebé dormido. En parte es ley y en parte una regla de esta herramienta, más estricta que la ley, porque los ensayos que
fija la ley no se pueden hacer en casa. Un peluche cuenta como juguete para los más pequeños diga lo que diga su etiqueta. Deciden la ley
local y un laboratorio de ensayo acreditado.`},
			Example: toyTrial("rattle", "6 (12) months", "button 12 mm, 2"),
			Fixed:   toyTrial("rattle", "6 (12) months", "block")},

		{Code: "OV914", Severity: Error,
			En: Wording{
				Message: `openings of {found} on a baby's hands or feet are larger than {limit}`,
				Mark:    `by the gauge, as the fabric lies`,
				Help:    map[string]string{"": `work this piece in a closed fabric`},
				Explain: `Fingers and toes of babies have been caught in the open stitches of mittens and socks, and lost. No standard for clothes
gives a figure; 5 mm is a limit of this tool, taken from rules for cots and playpens. The opening is an estimate. The advice of a
licensed health professional and local law come first.`},
			Es: Wording{
				Message: `unas aberturas de {found} en manos o pies de un bebé son mayores que {limit}`,
				Mark:    `según la muestra, con el tejido en reposo`,
				Help:    map[string]string{"": `tejer esta pieza en un punto cerrado`},
				Explain: `Dedos de bebés han quedado atrapados en los calados de manoplas y calcetines, y se han perdido. Ninguna norma de ropa da
una cifra; 5 mm es un límite de esta herramienta, tomado de reglas para cunas y parques. La abertura es una estimación. Prevalecen el
consejo de un profesional sanitario titulado y la ley local.`},
			Example: lacyTrial("socks", "3 (6) months", "2 (3)"), Fixed: lacyTrial("socks", "24 (36) months", "2 (3)")},

		{Code: "OV915", Severity: Error,
			En: Wording{
				Message: `this tool makes nothing of this kind for this age: {=kind {name}} ({source})`,
				Help:    map[string]string{"": `make something else, or for an age at which it does no harm`},
				Explain: `Babies have suffocated against padded bumpers and pillows, have been strangled by necklaces, and have fallen out of slings
and swings. Some of these things are banned by law in the United States, others by the advice of doctors; to refuse them everywhere
is a decision of this tool.`},
			Es: Wording{
				Message: `con esta herramienta no se hace nada de esta clase para esta edad: {=kind {name}} ({source})`,
				Help:    map[string]string{"": `hacer otra cosa, o para una edad a la que no haga daño`},
				Explain: `Hay bebés que se han asfixiado contra protectores de cuna y almohadas, que han sido estrangulados por collares o que han
caído de portabebés y columpios. Algunas de estas cosas las prohíbe la ley de Estados Unidos y otras las desaconsejan los médicos;
rechazarlas en todas partes es una decisión de esta herramienta.`},
			Example: childTrial("cot_bumper", "3 (6) months", "band", "block"),
			Fixed:   childTrial("curtain", "3 (6) months", "band", "block")},
	}
}
