package diag

import "strings"

// Codes 933 to 939: sleep, fire, claims and toys.

func cautionsOfToys() []Entry {
	return []Entry{
		{Code: "OV933", Severity: Error,
			En: Wording{
				Message: `a thing of this kind for a baby is not offered for sleep: {=kind {name}} ({source})`,
				Mark:    `here it is offered for sleep`,
				Help:    map[string]string{"": `say that it is for time awake and watched, or leave the words out`},
				Explain: `Babies under 12 months have suffocated with soft things in their bed. The advice of doctors is a firm flat bed with nothing in
it. A pattern may not offer such a thing to sleep in, on or with; the advice of a licensed health professional and local law come
first.`},
			Es: Wording{
				Message: `una pieza de esta clase para un bebé no se ofrece para dormir: {=kind {name}} ({source})`,
				Mark:    `aquí se ofrece para dormir`,
				Help:    map[string]string{"": `decir que es para ratos despierto y vigilado, o quitar esas palabras`},
				Explain: `Hay bebés menores de 12 meses que se han asfixiado con cosas blandas en la cuna. Los médicos aconsejan una cuna firme, plana y
vacía. Un patrón no puede ofrecer una cosa así para dormir en ella, sobre ella o con ella; prevalecen el consejo de un profesional
sanitario titulado y la ley local.`},
			Example: sleepy("blanket", "3 (6) months"), Fixed: childTrial("blanket", "3 (6) months", "band", "block")},

		{Code: "OV934", Severity: Warning,
			En: Wording{
				Message: `a soft toy counts as one for the youngest, whatever its label says ({source})`,
				Help:    map[string]string{"": `design it for children under 3, without hard parts, and give that age`},
				Explain: `What a baby will want to hold is given to babies. Toy law goes by that and not by the label: a stuffed toy for cuddling is
judged as one for under 3 even if it says 3+ or calls itself a collector's piece.`},
			Es: Wording{
				Message: `un peluche cuenta como juguete para los más pequeños, diga lo que diga su etiqueta ({source})`,
				Help:    map[string]string{"": `diseñarlo para menores de 3 años, sin piezas duras, y dar esa edad`},
				Explain: `Lo que un bebé querrá abrazar acaba en manos de bebés. La ley de juguetes se guía por eso y no por la etiqueta: un peluche para
abrazar se juzga como juguete para menores de 3 años aunque diga 3+ o se llame pieza de colección.`},
			Example: stuffed("36 (48) months"), Fixed: stuffed("12 (24) months")},

		{Code: "OV935", Severity: Error,
			En: Wording{
				Message: `in the United States children's sleepwear of this size is tight-fitting or flame-resistant by test ({source})`,
				Help:    map[string]string{"": `offer it as clothes for the day, or for other markets alone: {=for eu, uk}`},
				Explain: `Loose sleepwear catches fire. United States law asks for sleepwear over 9 months to size 14 to fit tightly, to published
dimensions, or to pass a test of flame resistance; crochet is usually neither. The rule was read on pages of the authority; local law
decides.`},
			Es: Wording{
				Message: `en Estados Unidos la ropa de dormir infantil de esta talla es ceñida o resistente a la llama por ensayo ({source})`,
				Help:    map[string]string{"": `hacer de la prenda ropa de día, o dejar el patrón solo para otros mercados: {=for eu, uk}`},
				Explain: `La ropa de dormir holgada prende. La ley de Estados Unidos pide que la ropa de dormir de más de 9 meses hasta la talla 14 sea
ceñida, según medidas publicadas, o supere un ensayo de resistencia a la llama; el ganchillo no suele cumplirlo. La regla se leyó en
páginas de la autoridad; decide la ley local.`},
			Example: childTrial("sleepwear", "24 (36) months", "band", "block"),
			Fixed:   childHeader("sleepwear", "for eu, uk", "24 (36) months", "band", "block")},

		{Code: "OV936", Severity: Error,
			En: Wording{
				Message: `these words say more than the finished piece can bear out ({source})`,
				Mark:    `such words need a test report, or one fibre alone`,
				Help:    map[string]string{"": `leave them out, and say plainly what it is made of`},
				Explain: `Only a test of the finished piece could bear out words such as safe, certified, compliant, flame-proof or non-toxic. And 100 %,
pure or all may be said only of a textile of one fibre.`},
			Es: Wording{
				Message: `estas palabras dicen más de lo que la pieza terminada puede sostener ({source})`,
				Mark:    `tales palabras piden un informe de ensayo, o una sola fibra`,
				Help:    map[string]string{"": `quitarlas y decir sin más de qué está hecha`},
				Explain: `Solo un ensayo de la pieza terminada puede sostener palabras como segura, certificada, conforme, ignífuga o no tóxica. Y 100 %,
puro o todo solo se dice de un textil de una sola fibra.`},
			Example: claiming("certified and non-toxic", "certificado y no tóxico"), Fixed: claiming("soft and light", "suave y ligero")},

		{Code: "OV937", Severity: Warning,
			En: Wording{
				Message: `rows of something for a baby are worked with two yarns, and strands may lie loose inside`,
				Help:    map[string]string{"": `catch the strand in at every stitch, or line the piece`},
				Explain: `Say in a note how the resting yarn is carried, or work each row with one yarn. A strand that is carried loose winds round a finger or a toe and cuts off the blood. Cases are reported in medical journals; no
figure was found, and the rule is one of this tool. The advice of a licensed health professional and local law come first.`},
			Es: Wording{
				Message: `hay hileras de algo para un bebé tejidas con dos hilos, y por dentro pueden quedar hebras sueltas`,
				Help:    map[string]string{"": `atrapar la hebra en cada punto, o forrar la pieza`},
				Explain: `Conviene decir en una nota cómo se lleva el hilo que descansa, o tejer cada hilera con un solo hilo. Una hebra que pasa suelta se enrolla en un dedo y corta la circulación. Hay casos en revistas médicas; no se encontró ninguna
cifra, y la regla es de esta herramienta. Prevalecen el consejo de un profesional sanitario titulado y la ley local.`},
			Example: floating("hat", "3 (6) months"), Fixed: floating("hat", "24 (36) months")},

		{Code: "OV938", Severity: Warning,
			En: Wording{
				Message: `{part} on a toy for a small child need care ({source})`,
				Mark:    `a hard part that can come off`,
				Help:    map[string]string{"": `embroider or crochet it instead; else have it tested`},
				Explain: `Stitches stretch and washers slip, so an eye of plastic can be pulled out of crochet. Toys for under 3 must hold a pull of 90 N,
50 N for a part of 6 mm or less, and a twist of 0.34 Nm, which cannot be tested at home. The figures were read in summaries; local law and
an accredited test laboratory decide.`},
			Es: Wording{
				Message: `hay que tener cuidado con {part} en un juguete para un niño pequeño ({source})`,
				Mark:    `una pieza dura que se puede soltar`,
				Help:    map[string]string{"": `bordarla o tejerla; si no, hacerla ensayar`},
				Explain: `Los puntos ceden y las arandelas se sueltan, y un ojo de plástico puede salirse del ganchillo. Los juguetes para menores de 3
años deben resistir una tracción de 90 N, 50 N si la pieza mide 6 mm o menos, y un giro de 0,34 Nm, que no se pueden ensayar en casa. Las
cifras se leyeron en resúmenes; deciden la ley local y un laboratorio de ensayo acreditado.`},
			Example: withNotion("rattle", "12 (24) months", `notion en "eyes" es "ojos", as eye 70 mm of plastic, 2`),
			Fixed:   withNotion("rattle", "12 (24) months", `notion en "sewing thread" es "hilo de coser", as thread, 2`)},

		{Code: "OV939", Severity: Warning,
			En: Wording{
				Message: `clothes for a child are offered for sleep ({source})`,
				Mark:    `here they are offered for sleep`,
				Help:    map[string]string{"": `offer them for the day, and leave the words out`},
				Explain: `Loose clothes of cotton catch fire easily, and sleepwear has rules of its own for that. The caution prints; local law decides.`},
			Es: Wording{
				Message: `ropa infantil se ofrece para dormir ({source})`,
				Mark:    `aquí se ofrece para dormir`,
				Help:    map[string]string{"": `dejar la prenda para el día, y quitar esas palabras`},
				Explain: `La ropa holgada de algodón prende con facilidad, y la de dormir tiene normas propias por eso. La precaución se imprime; decide la
ley local.`},
			Example: sleepy("cardigan", "24 (36) months"), Fixed: childTrial("cardigan", "24 (36) months", "band", "block")},
	}
}

// withNotion is a small source with a notion.
func withNotion(kind, age, notion string) string {
	return strings.Replace(toyTrial(kind, age, "block"), "\n\npart ", "\n\n"+notion+"\n\npart ", 1)
}

// stuffed is a small source of a soft toy.
func stuffed(age string) string {
	return withNotion("toy", age, `notion en "stuffing" es "relleno", as stuffing, 20`)
}

// claiming is a small source that praises what is made.
func claiming(en, es string) string {
	return childHeader("blanket", "intro\n    en | This blanket is "+en+".\n    es | Esta manta es "+es+".\n  end", "24 (36) months", "band", "block")
}

// sleepy is a small source that offers what is made for sleep.
func sleepy(kind, age string) string {
	return childHeader(kind, "intro\n    en | For the baby to sleep in.\n    es | Para que duerma el bebé.\n  end", age, "band", "block")
}

// floating is a small source with two yarns in a row.
func floating(kind, age string) string {
	src := strings.Replace(childTrial(kind, age, "body", "block"), "\n\npart ", "\n\nyarn sand like kelp\n  name en \"sand\" es \"arena\"\nend\n\npart ", 1)
	return strings.Replace(src, "4 rounds: sc in each = 80 (88)", "4 rounds: sc in next 4 with sand, sc in each with kelp = 80 (88)", 1)
}
