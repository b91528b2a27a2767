package diag

// Codes 9xx: cautions.

// childTrial is a small source of something for a child, in a casing of 50 and 55 cm with finishing lines.
func childTrial(kind, age, part, finish string) string {
	if kind != "" {
		kind = "\n  kind " + kind
	}
	if age != "" {
		age = "\n  age " + age
	}
	return `pattern trial
  title en "Trial" es "Prueba"` + kind + `
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
  kind ` + kind + `
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

const throughBand = `through waistband round 2`

var cautions = []Entry{
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
		Example: childTrial("", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand),
		Fixed:   childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand)},

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
		Fixed:   childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand)},

	{Code: "OV903", Severity: Warning,
		En: Wording{
			Message: `it is not known where on the garment this cord is, so its safety rules cannot be decided`,
			Mark:    `at the waist, or at the neck?`,
			Help:    map[string]string{"": `say it behind the cord: {=at waist}, {=at neck}, {=at hood}, {=at chest}, {=at hem} or {=at sleeve}`},
			Explain: `At the neck and hood of children's clothes most cords are forbidden; at the waist they are allowed with short ends. Where
the cord does not say where it is, the tool goes by the name of the part it runs through, such as {=waistband} or {=hood}.`},
		Es: Wording{
			Message: `no se sabe en qué lugar de la prenda está este cordón ni, por tanto, qué normas de seguridad rigen`,
			Mark:    `¿en la cintura o en el cuello?`,
			Help:    map[string]string{"": `decirlo detrás del cordón: {=at waist}, {=at neck}, {=at hood}, {=at chest}, {=at hem} o {=at sleeve}`},
			Explain: `En el cuello y la capucha de la ropa infantil casi todos los cordones están prohibidos; en la cintura se permiten con
extremos cortos. Si el cordón no dice dónde está, la herramienta se guía por el nombre de la pieza por la que pasa, como {=waistband} o
{=hood}.`},
		Example: childTrial("cardigan", "12 (18) months", "border", "cord with kelp, length 55 (60) cm, through border round 2"),
		Fixed:   childTrial("cardigan", "12 (18) months", "waistband", "cord with kelp, length 55 (60) cm, "+throughBand)},

	{Code: "OV904", Severity: Warning,
		En: Wording{
			Message: `it is not known how far the ends of this cord hang free, so its safety rules cannot be decided`,
			Help:    map[string]string{"": `give its length and the row it runs through: {=cord with kelp, length 60 cm, through waistband round 2}`},
			Explain: `With the garment laid open, each end of a drawstring hangs out by half of what the cord is longer than the opening it
runs through. For that the tool needs the length of the cord, the row it runs through and the gauge of that row.`},
		Es: Wording{
			Message: `no se sabe cuánto cuelgan libres los extremos de este cordón ni, por tanto, qué normas de seguridad rigen`,
			Help:    map[string]string{"": `dar su largo y la hilera por la que pasa: {=cord with kelp, length 60 cm, through waistband round 2}`},
			Explain: `Con la prenda abierta y extendida, cada extremo de un cordón ajustable sobresale la mitad de la
diferencia entre el largo del cordón y el de la abertura por la que pasa. Para saberlo hacen falta el largo del cordón, la hilera por la que pasa y la muestra
de esa hilera.`},
		Example: childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, "+throughBand),
		Fixed:   childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand)},

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
		Example: childTrial("trowsers", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand),
		Fixed:   childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 60 (65) cm, "+throughBand)},

	{Code: "OV910", Severity: Error,
		En: Wording{
			Message: `a free end of this cord measures {found}, more than the {limit} that {source} allow{source|s|} at this age`,
			Mark:    `free end, with the piece laid open`,
			Help:    map[string]string{"": `the longest cord that keeps to the limit: {largest}`},
			Explain: `Cords on children's things have caught in doors, slides and vehicles, and children have died. Standards limit how far
an end may hang out with the garment laid open to its widest: (length of the cord − the opening it runs through) ÷ 2. Where several
markets have limits the strictest is shown, since the tool does not know where the piece will be sold. The figures were read in
summaries, not in the standards themselves; local law and an accredited test laboratory decide.`},
		Es: Wording{
			Message: `un extremo libre de este cordón mide {found}, más de lo que {source|permite|permiten} {source} a esta edad: {limit}`,
			Mark:    `extremo libre, con la pieza abierta y extendida`,
			Help:    map[string]string{"": `el cordón más largo que respeta el límite: {largest}`},
			Explain: `Los cordones de prendas infantiles se han enganchado en puertas, toboganes y vehículos, y han muerto niños. Las normas
limitan cuánto puede colgar un extremo con la prenda abierta al máximo: (largo del cordón − abertura por la que pasa) ÷ 2. Donde
varios mercados tienen límites se muestra el más estricto, porque no se sabe dónde se venderá la pieza. Las cifras se leyeron en
resúmenes, no en las normas mismas; deciden la ley local y un laboratorio de ensayo acreditado.`},
		Example: childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 90 (95) cm, "+throughBand),
		Fixed:   childTrial("trousers", "24 (36) months", "waistband", "cord with kelp, length 78 (83) cm, "+throughBand)},

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
			Message: `this drawstring at the neck or hood has free ends of {found}, and {source} allow{source|s|} none at this age`,
			Mark:    `free end, with the piece laid open`,
			Help:    map[string]string{"": `close it to a loop that does not stick out: at most {largest} long; or leave it out`},
			Explain: `From 7 to 13 years a drawstring at the hood or neck may have no free ends: with the garment laid open nothing sticks
out. The rule was read in summaries, not in the standard itself; local law and an accredited test laboratory decide.`},
		Es: Wording{
			Message: `este cordón de cuello o capucha tiene extremos libres de {found}, y {source} no {source|permite|permiten} ninguno a esta edad`,
			Mark:    `extremo libre, con la pieza abierta y extendida`,
			Help:    map[string]string{"": `cerrarlo en una lazada que no sobresalga, de {largest} como máximo, o quitarlo`},
			Explain: `De 7 a 13 años, un cordón ajustable en la capucha o el cuello no puede tener extremos libres: con la prenda abierta y
extendida nada sobresale. La regla se leyó en resúmenes, no en la norma misma; deciden la ley local y un laboratorio de ensayo
acreditado.`},
		Example: childTrial("romper", "96 (120) months", "neckband", "cord with kelp, length 60 (65) cm, through neckband round 2"),
		Fixed:   childTrial("romper", "96 (120) months", "neckband", "cord with kelp, length 50 (55) cm, through neckband round 2")},

	{Code: "OV913", Severity: Error,
		En: Wording{
			Message: `buttons are not put on toys for small children here`,
			Mark:    `a small part that can be swallowed`,
			Help:    map[string]string{"": `embroider the eyes, or crochet them`},
			Explain: `A button that comes off a toy can choke a child under 3. This is a rule of this tool, stricter than the law, which sets
tests that a maker cannot do at home; a soft toy counts as one for the youngest whatever its label says. Local law and an accredited
test laboratory decide.`},
		Es: Wording{
			Message: `aquí no se ponen botones en juguetes para niños pequeños`,
			Mark:    `una pieza pequeña que se puede tragar`,
			Help:    map[string]string{"": `bordar los ojos o tejerlos`},
			Explain: `Un botón que se suelta de un juguete puede asfixiar a un niño menor de 3 años. Es una regla de esta herramienta, más
estricta que la ley, que fija ensayos que no se pueden hacer en casa; un peluche cuenta como juguete para los más pequeños diga lo que
diga su etiqueta. Deciden la ley local y un laboratorio de ensayo acreditado.`},
		Example: childTrial("toy", "36 (48) months", "body", "button 12 mm, 2"),
		Fixed:   childTrial("toy", "36 (48) months", "body", "block")},

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
			Message: `no cot bumpers are made with this tool ({source})`,
			Help:    map[string]string{"": `make something for the room, and not for the cot`},
			Explain: `Babies have suffocated against padded cot bumpers. The United States have banned their sale since 12 November 2022, and
safe-sleep advice elsewhere rejects them. Refusing them everywhere is a decision of this tool.`},
		Es: Wording{
			Message: `con esta herramienta no se hacen protectores de cuna ({source})`,
			Help:    map[string]string{"": `hacer algo para la habitación, no para la cuna`},
			Explain: `Hay bebés que se han asfixiado contra protectores de cuna acolchados. Estados Unidos prohíbe venderlos desde el 12 de
noviembre de 2022, y los consejos de sueño seguro de otros países los rechazan. Rechazarlos en todas partes es una decisión de esta
herramienta.`},
		Example: childTrial("cot_bumper", "3 (6) months", "band", "block"),
		Fixed:   childTrial("curtain", "3 (6) months", "band", "block")},

	{Code: "OV920", Severity: Warning,
		En: Wording{
			Message: `a cord on a child's hat, scarf or mittens needs care`,
			Mark:    `a caution prints with this step`,
			Help:    map[string]string{"": `shape the piece so that it stays on without a cord`},
			Explain: `Hats, scarves and mittens are outside the standard for cords on clothes, but the next edition says to use its limits for
them, and cords there have the same dangers. The caution prints; local law and an accredited test laboratory decide.`},
		Es: Wording{
			Message: `un cordón en el gorro, la bufanda o las manoplas de un niño exige cuidado`,
			Mark:    `con este paso se imprime una precaución`,
			Help:    map[string]string{"": `dar a la pieza una forma que se sujete sin cordón`},
			Explain: `Los gorros, bufandas y manoplas quedan fuera de la norma de cordones en ropa, pero la próxima edición dice que se usen sus
límites también en ellos, y sus cordones tienen los mismos peligros. La precaución se imprime; deciden la ley local y un laboratorio
de ensayo acreditado.`},
		Example: childTrial("hat", "24 (36) months", "brim", "cord with kelp, length 60 (65) cm, through brim round 2"),
		Fixed:   childTrial("hat", "24 (36) months", "brim", "block")},

	{Code: "OV921", Severity: Warning,
		En: Wording{
			Message: `buttons on clothes for a child under 3 need care`,
			Mark:    `a caution prints with this step`,
			Help:    map[string]string{"": `sew them through backing fabric and try each with a firm pull`},
			Explain: `A button that comes off can be swallowed. Buttons on clothes are not banned, but they must stand a firm pull. The caution
prints; local law and an accredited test laboratory decide.`},
		Es: Wording{
			Message: `los botones en ropa para un menor de 3 años exigen cuidado`,
			Mark:    `con este paso se imprime una precaución`,
			Help:    map[string]string{"": `coserlos sobre un refuerzo y probar cada uno con un tirón fuerte`},
			Explain: `Un botón que se suelta se puede tragar. Los botones en la ropa no están prohibidos, pero deben aguantar un tirón fuerte. La
precaución se imprime; deciden la ley local y un laboratorio de ensayo acreditado.`},
		Example: childTrial("romper", "12 (18) months", "band", "button 12 mm, 3"),
		Fixed:   childTrial("romper", "12 (18) months", "band", "block")},

	{Code: "OV922", Severity: Warning,
		En: Wording{
			Message: `a pompom for a child under 3 needs care`,
			Mark:    `a caution prints with this step`,
			Help:    map[string]string{"": `leave it out for the youngest, or sew it through and through`},
			Explain: `A pompom can be pulled apart and mouthed. The figure behind this rule is recalled and was not read, so the page prints the
caution without it. Local law and an accredited test laboratory decide.`},
		Es: Wording{
			Message: `un pompón para un menor de 3 años exige cuidado`,
			Mark:    `con este paso se imprime una precaución`,
			Help:    map[string]string{"": `no ponerlo para los más pequeños, o coserlo de lado a lado`},
			Explain: `Un pompón se puede deshacer a tirones y acabar en la boca. La cifra de esta regla es de memoria y no se leyó, así que la página
imprime la precaución sin ella. Deciden la ley local y un laboratorio de ensayo acreditado.`},
		Example: childTrial("leggings", "12 (18) months", "band", "pompom with kelp, 5 cm, 80 wraps"),
		Fixed:   childTrial("leggings", "12 (18) months", "band", "block")},

	{Code: "OV923", Severity: Warning,
		En: Wording{
			Message: `openings of {found} in a baby's things are larger than {limit}`,
			Mark:    `by the gauge, as the fabric lies`,
			Help:    map[string]string{"": `choose a denser stitch, or line the piece`},
			Explain: `Openings of about 5 to 10 mm can trap a baby's finger or toe. No standard for clothes gives a figure; 5 mm is a limit of this
tool, taken from rules for cots and playpens. The opening is an estimate. The caution prints; the advice of a licensed health
professional and local law come first.`},
		Es: Wording{
			Message: `unas aberturas de {found} en cosas de bebé son mayores que {limit}`,
			Mark:    `según la muestra, con el tejido en reposo`,
			Help:    map[string]string{"": `elegir un punto más denso o forrar la pieza`},
			Explain: `Las aberturas de unos 5 a 10 mm pueden atrapar un dedo del bebé. Ninguna norma de ropa da una cifra; 5 mm es un límite de esta
herramienta, tomado de reglas para cunas y parques. La abertura es una estimación. La precaución se imprime; prevalecen el consejo de un
profesional sanitario titulado y la ley local.`},
		Example: lacyTrial("leggings", "3 (6) months", "2 (3)"), Fixed: lacyTrial("leggings", "24 (36) months", "2 (3)")},

	{Code: "OV924", Severity: Warning,
		En: Wording{
			Message: `a cocoon or nest for a baby needs care`,
			Mark:    `a caution prints`,
			Help:    map[string]string{"": `offer it for a few minutes awake and watched, never for sleep`},
			Explain: `Babies have suffocated asleep in soft things with sides. A cocoon is a thing for a few minutes awake and within reach. The
caution prints; the advice of a licensed health professional and local law come first.`},
		Es: Wording{
			Message: `un saco capullo o un nido para un bebé exige cuidado`,
			Mark:    `se imprime una precaución`,
			Help:    map[string]string{"": `ofrecerlo para unos minutos, con el bebé despierto y vigilado, nunca para dormir`},
			Explain: `Hay bebés que se han asfixiado dormidos en cosas blandas con bordes. Un saco capullo es para unos minutos, con el
bebé despierto y al alcance de la mano. La precaución se imprime; prevalecen el consejo de un profesional sanitario titulado y
la ley local.`},
		Example: childTrial("cocoon", "3 (6) months", "body", "block"),
		Fixed:   childTrial("blanket", "3 (6) months", "body", "block")},
}
