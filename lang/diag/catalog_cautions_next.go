package diag

import "strings"

// Codes 906 to 919 and 925 to 939: what must be said of children's things, and what limits, ends, measures and claims are at fault.

// atWaist is a drawstring of trousers with something said of it.
func atWaist(length, more string) string {
	return waistTrial("trousers", "24 (36) months", "cord with kelp, length "+length+" cm, through waistband round 2"+more)
}

// onWaist is a cord of some other sort at the waist of a skirt.
func onWaist(more string) string {
	return childTrial("skirt", "24 (36) months", "band", "cord with kelp, at waist, ends plain, "+more)
}

func cautionsOfThings() []Entry {
	return []Entry{
		{Code: "OV906", Severity: Error,
			En: Wording{
				Message: `this is for children, and the source does not say what is made`,
				Help:    map[string]string{"": `say it in the header: {=kind trousers}, {=kind hat}, {=kind blanket}`},
				Explain: `Safety rules go by what a thing is and by who wears it. For something for children under 14 both must be said, since no
rule could be decided without.`},
			Es: Wording{
				Message: `esto es para niños, y el patrón no dice qué se hace`,
				Help:    map[string]string{"": `decirlo en el encabezado: {=kind trousers}, {=kind hat}, {=kind blanket}`},
				Explain: `Las normas de seguridad dependen de qué es la pieza y de quién la lleva. En algo para menores de 14 años hay que decir
las dos cosas, porque sin ellas no se puede decidir ninguna norma.`},
			Example: childTrial("", "24 (36) months", "band", "block"), Fixed: childTrial("skirt", "24 (36) months", "band", "block")},

		{Code: "OV907", Severity: Error,
			En: Wording{
				Message: `this is for children, and the source does not say of what age`,
				Help:    map[string]string{"": `give the ages of the youngest and the oldest of each size: {=age 0 (6) to 6 (12) months}`},
				Explain: `Most safety rules hold below a certain age, so things for children say for what age each size is. The youngest wearer
counts: a size for 6 to 8 years is one for a child of 6.`},
			Es: Wording{
				Message: `esto es para niños, y el patrón no dice de qué edad`,
				Help:    map[string]string{"": `dar las edades de la persona más joven y la mayor de cada talla: {=age 0 (6) to 6 (12) months}`},
				Explain: `La mayoría de las normas de seguridad rigen por debajo de cierta edad; por eso las piezas infantiles dicen para qué edad
es cada talla. Cuenta la persona más joven: una talla de 6 a 8 años es de 6.`},
			Example: childTrial("bib", "", "band", "block"), Fixed: childTrial("bib", "24 (36) months", "band", "block")},

		{Code: "OV908", Severity: Warning,
			En: Wording{
				Message: `it is not known {what}, so safety rules cannot be decided`,
				Help:    map[string]string{"": `words that say it: {={says|or}}`, "all": `words that say it: {={says}}`},
				Explain: `Some rules go by the height of the shortest child, by how far a size reaches, or by a measure of the finished piece. What
is not known is asked for and never taken as safe.`},
			Es: Wording{
				Message: `no se sabe {what}, y no se puede decir qué normas de seguridad rigen`,
				Help:    map[string]string{"": `palabras que lo dicen: {={says|or}}`, "all": `palabras que lo dicen: {={says}}`},
				Explain: `Algunas normas dependen de la estatura del niño más bajo, de hasta qué edad llega una talla o de una medida de la pieza
terminada. Lo que no se sabe se pregunta y nunca se da por seguro.`},
			Example: childTrial("romper", "120 (132) months", "hood", "cord with kelp, length 6 cm, at hood, as decoration, ends plain"),
			Fixed:   tallTrial("hood", "cord with kelp, length 6 cm, at hood, as decoration, ends plain")},

		{Code: "OV916", Severity: Error,
			En: Wording{
				Message: `a loop of this cord measures {found} around, more than the {limit} that {source} allow{source|s|} at this age`,
				Mark:    `around the loop`,
				Help:    map[string]string{"": `a loop that keeps to the limit: at most {limit} around`},
				Explain: `A head, an arm or a handle slips into a loop that sticks out. Standards limit how far around it may be: with the garment laid
open, and drawn up to fit. The figures were read in summaries, not in the standards themselves; local law and an accredited test
laboratory decide.`},
			Es: Wording{
				Message: `una lazada de este cordón mide {found} de contorno, más de lo que {source|permite|permiten} {source} a esta edad: {limit}`,
				Mark:    `contorno de la lazada`,
				Help:    map[string]string{"": `una lazada que respeta el límite: {limit} de contorno como máximo`},
				Explain: `Una cabeza, un brazo o un tirador se meten en una lazada que sobresale. Las normas limitan su contorno con la prenda abierta y
extendida, y ajustada al cuerpo. Las cifras se leyeron en resúmenes, no en las normas mismas; deciden la ley local y un laboratorio de
ensayo acreditado.`},
			Example: onWaist("loop 12 cm"), Fixed: onWaist("loop 7 cm")},

		{Code: "OV917", Severity: Error,
			En: Wording{
				Message: `the free ends of this cord are not plain, and {source} allow{source|s|} only plain ends here`,
				Mark:    `a knot or something on an end catches`,
				Help:    map[string]string{"": `weave the ends in and say {=ends plain}`},
				Explain: `A knot, a bead, a pompom, a tassel or a toggle on the end of a cord catches in gaps of slides, doors and vehicles. The rule
was read in summaries, not in the standard itself; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `los extremos libres de este cordón no son lisos, y {source} {source|permite|permiten} aquí solo extremos lisos`,
				Mark:    `un nudo o una pieza en un extremo se engancha`,
				Help:    map[string]string{"": `rematar los extremos y decir {=ends plain}`},
				Explain: `Un nudo, una cuenta, un pompón, una borla o un tope en el extremo de un cordón se engancha en toboganes, puertas y vehículos.
La regla se leyó en resúmenes, no en la norma misma; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: atWaist("60 (65)", ", ends knotted, fixed"), Fixed: atWaist("60 (65)", ", ends plain, fixed")},

		{Code: "OV918", Severity: Error,
			En: Wording{
				Message: `this cord shows outside or hangs below the edge, and {source} allow{source|s|} neither here`,
				Mark:    `at a hem, a cuff or a belt`,
				Help:    map[string]string{"": `keep it within the garment and say {=inside}, or leave it out`},
				Explain: `What hangs below a hem or out of a cuff is trodden on, or caught in a door, a pedal or a machine. The rule was read in
summaries, not in the standard itself; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `este cordón asoma o cuelga por debajo del borde, y {source} no {source|permite|permiten} ni lo uno ni lo otro aquí`,
				Mark:    `en un borde, un puño o un cinturón`,
				Help:    map[string]string{"": `dejarlo por dentro de la prenda y decir {=inside}, o quitarlo`},
				Explain: `Lo que cuelga por debajo de un borde o de un puño se pisa o se engancha en una puerta, un pedal o una máquina. La regla se leyó
en resúmenes, no en la norma misma; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: childTrial("trousers", "24 (36) months", "hem", "cord with kelp, length 52 (56) cm, through hem round 2, ends plain, fixed"),
			Fixed:   childTrial("trousers", "24 (36) months", "hem", "cord with kelp, length 52 (56) cm, through hem round 2, ends plain, fixed, inside")},

		{Code: "OV919", Severity: Error,
			En: Wording{
				Message: `this cord stretches, and {source} allow{source|s|} no elastic cord here`,
				Mark:    `near the neck`,
				Help:    map[string]string{"": `make it of yarn that does not stretch, or leave it out`},
				Explain: `An elastic cord that is caught stretches, and strikes the face when it comes loose. The rule was read in summaries, not in the
standard itself; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `este cordón es elástico, y {source} no {source|permite|permiten} aquí ninguno que lo sea`,
				Mark:    `cerca del cuello`,
				Help:    map[string]string{"": `hacerlo con un hilo que no dé de sí, o quitarlo`},
				Explain: `Un cordón elástico que se engancha se estira y golpea la cara al soltarse. La regla se leyó en resúmenes, no en la norma misma;
deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: childTrial("romper", "24 (36) months", "band", "cord with kelp, length 6 cm, at neck, as decoration, ends plain, elastic"),
			Fixed:   childTrial("romper", "24 (36) months", "band", "cord with kelp, length 6 cm, at neck, as decoration, ends plain")},

		{Code: "OV926", Severity: Error,
			En: Wording{
				Message: `this drawstring can be pulled out of its channel ({source})`,
				Mark:    `it is not fixed midway`,
				Help:    map[string]string{"": `sew it to the garment midway between its exits, and say {=fixed}`},
				Explain: `In the United States a drawstring in one piece at the waist or hem of upper outerwear is stitched through, so that one end
cannot be pulled long. The rule was read in summaries; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `este cordón ajustable se puede sacar de su jareta ({source})`,
				Mark:    `no está fijo en el medio`,
				Help:    map[string]string{"": `coserlo a la prenda en el punto medio entre sus salidas y decir {=fixed}`},
				Explain: `En Estados Unidos, un cordón de una sola pieza en la cintura o el bajo de una prenda exterior superior se fija con puntadas,
para que no se pueda alargar un extremo a tirones. La regla se leyó en resúmenes; deciden la ley local y un laboratorio de ensayo
acreditado.`},
			Example: waistTrial("jacket", "24 (36) months", "cord with kelp, length 55 (60) cm, through waistband round 2, ends plain"),
			Fixed:   waistTrial("jacket", "24 (36) months", "cord with kelp, length 55 (60) cm, through waistband round 2, ends plain, fixed")},

		{Code: "OV932", Severity: Error,
			En: Wording{
				Message: `{what} measures {found}, and the limit here is {limit} ({source})`,
				Help:    map[string]string{"": `the nearest measure that passes: {largest}`},
				Explain: `A toy or a ball that is too small blocks the throat; a sleep bag whose neck is too wide lets the baby slip inside, and one that
is too narrow presses it; a soother holder that is too long reaches round the neck. The figures were read in summaries or in the law, as
the caution says; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `{what} mide {found}, y el límite aquí es {limit} ({source})`,
				Help:    map[string]string{"": `la medida más cercana que se admite: {largest}`},
				Explain: `Un juguete o una pelota demasiado pequeños tapan la garganta; en un saco de dormir de cuello demasiado ancho el bebé se hunde, y
uno demasiado estrecho lo aprieta; un sujetachupetes demasiado largo rodea el cuello. Las cifras se leyeron en resúmenes o en la ley,
como dice la precaución; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: holderTrial("50"), Fixed: holderTrial("36")},
	}
}

// holderTrial is a small source of a soother holder of so many rows.
func holderTrial(rows string) string {
	return `pattern trial
  title en "Trial" es "Prueba"
  kind soother_holder` + washable + `
  terms us
end

sizes "S", "M"
  age 3 (6) months
end

` + scGauge + "\n\n" + kelp(kelpBall+"\n"+kelpSwatch) + `

part band
  title en "Band" es "Banda"
  yarn kelp
  in rows
  chain 6
  ` + rows + ` rows: sc in each = 6
  fasten off
end

measure
  length = height of band
end
`
}

// cautionsOfCords are findings about cords, toys, sleep and texts that the designer may mean, or that the rules of one market make.
func cautionsOfCords() []Entry {
	return []Entry{
		{Code: "OV925", Severity: Warning,
			En: Wording{
				Message: `drawn up to the wearer, {found} of this cord sticks out, more than {limit} ({source})`,
				Mark:    `its length, less the measure of the wearer`,
				Help:    map[string]string{"": `the longest cord that keeps to all limits: {largest}`},
				Explain: `A drawstring is worn drawn up, and then more of it hangs out than with the garment laid open. The figure is of an older
edition of the standard and was read in summaries; the caution prints, and local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `ajustado al cuerpo, sobresalen {found} de este cordón, más de {limit} ({source})`,
				Mark:    `su largo, menos la medida del cuerpo`,
				Help:    map[string]string{"": `el cordón más largo que respeta todos los límites: {largest}`},
				Explain: `Un cordón ajustable se lleva ajustado, y entonces cuelga más que con la prenda abierta. La cifra es de una edición anterior de
la norma y se leyó en resúmenes; la precaución se imprime, y deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: waistTrial("trousers", "24 (36) months", "cord with kelp, length 76 (83) cm, "+throughBand),
			Fixed:   waistTrial("trousers", "24 (36) months", "cord with kelp, length 76 (82) cm, "+throughBand)},

		{Code: "OV927", Severity: Warning,
			En: Wording{
				Message: `this drawstring is not fixed midway ({source})`,
				Mark:    `one end can be pulled long`,
				Help:    map[string]string{"": `sew it to the garment midway between its exits, and say {=fixed}`},
				Explain: `A drawstring that runs free can be pulled out at one end until it is long enough to catch. Stitched to the garment midway
between its exits it cannot. The rule was read in summaries; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `este cordón ajustable no está fijo en el medio ({source})`,
				Mark:    `un extremo se puede alargar a tirones`,
				Help:    map[string]string{"": `coserlo a la prenda en el punto medio entre sus salidas y decir {=fixed}`},
				Explain: `Un cordón ajustable que corre libre se puede sacar por un extremo hasta que sea tan largo que se enganche. Cosido a la prenda en
el punto medio entre sus salidas, no. La regla se leyó en resúmenes; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: atWaist("60 (65)", ", ends plain"), Fixed: atWaist("60 (65)", ", ends plain, fixed")},

		{Code: "OV928", Severity: Warning,
			En: Wording{
				Message: `{what} measures {found}, and at least {limit} is asked for ({source})`,
				Help:    map[string]string{"": `make it wider or thicker: {limit} or more`},
				Explain: `A tied belt that is narrow counts as a cord and takes the shorter limits of cords; a thin cord on a toy cuts. The caution
prints; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `{what} mide {found}, y se piden al menos {limit} ({source})`,
				Help:    map[string]string{"": `hacerlo más ancho o más grueso: {limit} o más`},
				Explain: `Un cinturón atado y estrecho cuenta como cordón y sigue los límites de los cordones, que son más cortos; un cordón fino en un
juguete corta. La precaución se imprime; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: onWaist("length 30 cm, as belt, width 2 cm, inside"), Fixed: onWaist("length 30 cm, as belt, width 3 cm, inside")},

		{Code: "OV929", Severity: Warning,
			En: Wording{
				Message: `the ends of this cord can fray ({source})`,
				Mark:    `nothing secures them`,
				Help:    map[string]string{"": `add {=weave in ends} to the finishing`},
				Explain: `A cut end that frays makes loose threads, and those wind round fingers and catch. Woven in, an end cannot fray. The caution
prints; local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `los extremos de este cordón se pueden deshilachar ({source})`,
				Mark:    `nada los asegura`,
				Help:    map[string]string{"": `añadir {=weave in ends} al acabado`},
				Explain: `Un extremo cortado que se deshilacha deja hebras sueltas, que se enrollan en los dedos y se enganchan. Rematado, no se
deshilacha. La precaución se imprime; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: strings.Replace(atWaist("60 (65)", ", ends plain, fixed"), "\n  weave in ends", "", 1), Fixed: atWaist("60 (65)", ", ends plain, fixed")},

		{Code: "OV930", Severity: Warning,
			En: Wording{
				Message: `{what} measures {found}, more than {limit} ({source}, a figure from memory)`,
				Help:    map[string]string{"": `make it {limit} long or shorter`},
				Explain: `A tab that is too long catches; on tight-fitting sleepwear whatever stands off the fabric takes fire first. The figures are
remembered and were not read, so the finding is a warning. Local law and an accredited test laboratory decide.`},
			Es: Wording{
				Message: `{what} mide {found}, más de {limit} ({source}, cifra de memoria)`,
				Help:    map[string]string{"": `hacerlo de {limit} o menos`},
				Explain: `Una trabilla demasiado larga se engancha; en la ropa de dormir ceñida, lo que sobresale del tejido es lo primero que arde. Las
cifras son de memoria y no se leyeron; por eso se trata de un aviso. Deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: onWaist("length 12 cm, as tab"), Fixed: onWaist("length 9 cm, as tab")},

		{Code: "OV931", Severity: Warning,
			En: Wording{
				Message: `this is for a child under 3, and the pattern does not say how to wash it ({source})`,
				Help:    map[string]string{"": `give a text of {=care} in the header`},
				Explain: `What a baby mouths and soils must be washable, and makers have to know how. The text says what every yarn and the stuffing can
stand. It is given in words, since the care symbols are protected trademarks.`},
			Es: Wording{
				Message: `esto es para un menor de 3 años, y el patrón no dice cómo lavarlo ({source})`,
				Help:    map[string]string{"": `dar un texto de {=care} en el encabezado`},
				Explain: `Lo que un bebé chupa y mancha debe poder lavarse, y quien teje tiene que saber cómo. El texto dice lo que resisten todos los
hilos y el relleno. Se da con palabras, porque los símbolos de cuidado son marcas registradas.`},
			Example: strings.Replace(childTrial("blanket", "12 (24) months", "band", "block"), washable, "", 1),
			Fixed:   childTrial("blanket", "12 (24) months", "band", "block")},
	}
}
