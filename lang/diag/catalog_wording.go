package diag

import "strings"

// Codes 8xx: words.
func wording() []Entry {
	return []Entry{
		{Code: "OV801", Severity: Error,
			En: Wording{Message: `the text in {languages} is missing`, Mark: `lacks a language`,
				Help:    map[string]string{"": `add it, or name behind {=languages} in the header only those in which everything is written`},
				Explain: `Everything that prints is written in each language of the pattern; a page with a gap in one of them is not set.`},
			Es: Wording{Message: `falta el texto en {languages}`, Mark: `le falta un idioma`,
				Help:    map[string]string{"": `añadirlo, o nombrar detrás de {=languages} en el encabezado solo los idiomas en que está todo escrito`},
				Explain: `Todo lo que se imprime va en cada idioma del patrón; una página con un hueco en uno de ellos no se compone.`},
			Example: trialOf("  call strip en \"the strip\"\n  in rows\n  chain 6\n  row: sc in each = 6", ""),
			Fixed:   trialOf("  call strip en \"the strip\" es \"la tira\"\n  in rows\n  chain 6\n  row: sc in each = 6", "")},

		{Code: "OV802", Severity: Warning,
			En: Wording{Message: `the pattern has no title`, Mark: `prints under its short name`, Help: map[string]string{"": `add {=title en "…" es "…"}`},
				Explain: `The title stands at the head of the first page.`},
			Es: Wording{Message: `el patrón no tiene título`, Mark: `se imprime con su nombre corto`, Help: map[string]string{"": `añadir {=title en "…" es "…"}`},
				Explain: `El título encabeza la primera página.`},
			Example: "pattern trial\n  terms us\nend\n\n" + noHead, Fixed: "pattern trial\n  title en \"Trial\" es \"Prueba\"\nend\n\n" + noHead},

		{Code: "OV803", Severity: Warning,
			En: Wording{Message: `the part {part} has no title`, Mark: `prints under its short name`, Help: map[string]string{"": `add {=title en "…" es "…"}`},
				Explain: `The title of a part is its heading on the page.`},
			Es: Wording{Message: `la pieza {part} no tiene título`, Mark: `se imprime con su nombre corto`, Help: map[string]string{"": `añadir {=title en "…" es "…"}`},
				Explain: `El título de una pieza es su encabezado en la página.`},
			Example: "sizes \"S\"\nend\n\npart strip\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n", Fixed: noHead},

		{Code: "OV804", Severity: Error,
			En: Wording{Message: `the numbers differ between the languages: {found} here, {need} in the other`, Mark: `has {found}`, Related: map[string]string{"other": `has {need}`},
				Help:    map[string]string{"": `make them agree, or let the pattern put them in: {{name}}`},
				Explain: `A number that stands in one language alone is as a rule an older one that was forgotten in translation. Values put in by name are always the same.`},
			Es: Wording{Message: `los números no coinciden entre los idiomas: aquí {found}, en el otro {need}`, Mark: `tiene {found}`, Related: map[string]string{"other": `tiene {need}`},
				Help:    map[string]string{"": `hacer que coincidan o dejar que el patrón los ponga: {{nombre}}`},
				Explain: `Un número que está solo en un idioma suele ser uno antiguo olvidado al traducir. Los valores puestos por su nombre son siempre iguales.`},
			Example: noted("    en | Leave 30 loops.\n    es | Dejar 20 bucles."),
			Fixed:   noted("    en | Leave 30 loops.\n    es | Dejar 30 bucles.")},

		{Code: "OV805", Severity: Error,
			En: Wording{Message: `nothing is called {word}, so its value cannot be put in`, Mark: `is not known`,
				Help:    nearHelp(`near it: {near|or}`, `give it a value above the parts: {=let {word} = …}`),
				Explain: `Braces in a text put in a value that was declared with {=let}, a measure of the piece or of the wearer, a stitch, or what a part or a place is called.`},
			Es: Wording{Message: `nada se llama {word}, así que su valor no se puede poner`, Mark: `no se conoce`,
				Help:    nearHelp(`parecidos: {near|or}`, `darle un valor antes de las piezas: {=let {word} = …}`),
				Explain: `Las llaves en un texto ponen un valor declarado con {=let}, una medida de la pieza o del cuerpo, un punto, o el nombre de una pieza o de un lugar.`},
			Example: "let tail = 30 cm\n\n" + noted("    en | Leave a tail of {tale}.\n    es | Dejar un cabo de {tail}."),
			Fixed:   "let tail = 30 cm\n\n" + noted("    en | Leave a tail of {tail}.\n    es | Dejar un cabo de {tail}.")},

		{Code: "OV806", Severity: Warning,
			En: Wording{Message: `the text in {language} prints nowhere: the pattern is in {known}`, Mark: `is not a language of the pattern`,
				Help:    map[string]string{"": `add it to the languages in the header, or take the text out`},
				Explain: `A text in a language the pattern is not published in is kept and not used.`},
			Es: Wording{Message: `el texto en {language} no se imprime: el patrón está en {known}`, Mark: `no es un idioma del patrón`,
				Help:    map[string]string{"": `añadirlo a los idiomas del encabezado o quitar el texto`},
				Explain: `Un texto en un idioma en el que no se publica el patrón se conserva sin usarse.`},
			Example: noted("    en | Leave a tail.\n    es | Dejar un cabo.\n    fr | Laisser un bout."),
			Fixed:   noted("    en | Leave a tail.\n    es | Dejar un cabo.")},

		{Code: "OV807", Severity: Warning,
			En: Wording{Message: `the text says {word}, which is a name of {={terms}} terms`, Mark: `in the terms of this pattern: {={own}}`,
				Help:    map[string]string{"": `write {{{={own}}}}: it prints the name that the page uses`},
				Explain: `A pattern is written in one reading of the stitch names. A name of the other reading in a sentence of the author is taken for another stitch, or for none.`},
			Es: Wording{Message: `el texto dice {word}, que es un nombre de los términos {={terms}}`, Mark: `en los términos de este patrón: {={own}}`,
				Help:    map[string]string{"": `escribir {{{={own}}}}: imprime el nombre que usa la página`},
				Explain: `Un patrón se escribe con una sola lectura de los nombres de los puntos. Un nombre de la otra en una frase se toma por otro punto, o por ninguno.`},
			Example: noted("    en | Pull the last htr tight.\n    es | Tensar el último punto."),
			Fixed:   noted("    en | Pull the last {hdc} tight.\n    es | Tensar el último {hdc}.")},

		{Code: "OV808", Severity: Note,
			En: Wording{Message: `the text says {word}, which is another stitch in the other terms`, Mark: `stays as it is on every page`,
				Help:    map[string]string{"": `write {{{={word}}}}: it prints the name that the page uses, and lists it among the abbreviations`},
				Explain: `A page can be set in United States or United Kingdom terms, and all its stitch names change with them, but what the author wrote does not: dc in a text would then be read as another stitch. In braces, {{dc}}, it is put in like a value.`},
			Es: Wording{Message: `el texto dice {word}, que en los otros términos es otro punto`, Mark: `queda así en todas las páginas`,
				Help:    map[string]string{"": `escribir {{{={word}}}}: imprime el nombre que usa la página y lo pone entre las abreviaturas`},
				Explain: `Una página puede ir en términos de Estados Unidos o del Reino Unido, y con ellos cambian todos los nombres de puntos, pero no lo que escribió quien diseña: dc en un texto se leería como otro punto. Entre llaves, {{dc}}, se pone como un valor.`},
			Example: noted("    en | Pull the last sc tight.\n    es | Tensar el último punto bajo."),
			Fixed:   noted("    en | Pull the last {sc} tight.\n    es | Tensar el último {sc}.")},

		{Code: "OV809", Severity: Note,
			En: Wording{Message: `the text gives {length} alone, without inches`, Mark: `in one unit`,
				Help:    map[string]string{"": `name it, {=let tail = {length}}, and write {{tail}}: both units are printed`},
				Explain: `English pages give every length in centimetres and in inches. A length that is put in by its name is written in both, with the same rounding as everywhere.`},
			Es: Wording{Message: `el texto en inglés da {length} sin pulgadas`, Mark: `en una sola unidad`,
				Help:    map[string]string{"": `darle un nombre, {=let cabo = {length}}, y escribir {{cabo}}: se imprimen las dos unidades`},
				Explain: `Las páginas en inglés dan toda longitud en centímetros y en pulgadas. Una longitud puesta por su nombre se escribe en las dos, redondeada como en el resto.`},
			Example: noted("    en | Leave a tail of 30 cm.\n    es | Dejar un cabo de 30 cm."),
			Fixed:   "let tail = 30 cm\n\n" + noted("    en | Leave a tail of {tail}.\n    es | Dejar un cabo de {tail}.")},

		{Code: "OV810", Severity: Warning,
			En: Wording{Message: `the text speaks of {round} {need}, but {part} has {have} {have|row|rows}`, Mark: `there is none`,
				Help:    map[string]string{"": `check the number; it does not follow when rows are added or taken out`},
				Explain: `A row that a sentence calls by its number is looked up in its part. A number that no size has is as a rule left over from an earlier draft.`},
			Es: Wording{Message: `el texto habla de la {round} {need}, pero {part} tiene {have}`, Mark: `no existe`,
				Help:    map[string]string{"": `revisar el número; no cambia solo al añadir o quitar hileras`},
				Explain: `Una hilera que se nombra por su número se busca en su pieza. Un número que no existe en ninguna talla suele venir de un borrador anterior.`},
			Example: noted("    en | Fold at row 7.\n    es | Doblar por la hilera 7."),
			Fixed:   noted("    en | Fold at row 1.\n    es | Doblar por la hilera 1.")},

		{Code: "OV811", Severity: Warning,
			En: Wording{Message: `two parts have the title “{title}”`, Mark: `the second of them`, Related: map[string]string{"first": `the first`},
				Help:    map[string]string{"": `tell them apart: right and left, front and back; or work one part twice with {=make 2}`},
				Explain: `The pages send the maker from one part to another by their titles. Of two that are alike she cannot know which is meant.`},
			Es: Wording{Message: `dos piezas tienen el título «{title}»`, Mark: `la segunda`, Related: map[string]string{"first": `la primera`},
				Help:    map[string]string{"": `distinguirlas: derecha e izquierda, delantero y espalda; o tejer una pieza dos veces con {=make 2}`},
				Explain: `Las páginas remiten de una pieza a otra por su título. De dos iguales no se puede saber a cuál se refieren.`},
			Example: noHead + "\npart second\n  title en \"Strip\" es \"Otra tira\"\n  in rows\n  chain 8\n  row: sc in each = 8\nend\n",
			Fixed:   noHead + "\npart second\n  title en \"Other strip\" es \"Otra tira\"\n  in rows\n  chain 8\n  row: sc in each = 8\nend\n"},

		{Code: "OV812", Severity: Warning,
			En: Wording{Message: `{part} is worked in {round}, but the text calls them otherwise`, Mark: `the other word`,
				Help:    map[string]string{"": `use one word for one thing`},
				Explain: `Rows go back and forth, rounds go around. A page that says row where it means round makes the maker look for the turn.`},
			Es: Wording{Message: `{part} se teje en {round}, pero el texto las llama de otra manera`, Mark: `la otra palabra`,
				Help:    map[string]string{"": `usar una sola palabra para cada cosa`},
				Explain: `Las hileras van y vienen, las vueltas rodean. Una página que dice hilera donde hay vueltas hace buscar dónde se gira.`},
			Example: noted("    en | Fold at round 1.\n    es | Doblar por la vuelta 1."),
			Fixed:   noted("    en | Fold at row 1.\n    es | Doblar por la hilera 1.")},

		{Code: "OV813", Severity: Warning,
			En: Wording{Message: `nothing is reported as {code} about the line below`, Mark: `has nothing to explain`,
				Help:    map[string]string{"": `take it out, or put it right before the line that the message shows`},
				Explain: `A line that begins with {=meant} says why the next one is as it should be though a check finds it unusual. When the finding goes, its reason should go too: it would hide the next one.`},
			Es: Wording{Message: `la línea siguiente no da ningún aviso con el código {code}`, Mark: `no explica nada`,
				Help:    map[string]string{"": `quitarla o ponerla justo antes de la línea que muestra el mensaje`},
				Explain: `Una línea que empieza con {=meant} dice por qué la siguiente está bien aunque una comprobación la señale. Cuando el aviso desaparece, el motivo también debe desaparecer: taparía el siguiente.`},
			Example: "meant OV608 en \"one fan\" es \"un abanico\"\n" + noHead,
			Fixed:   noHead},

		{Code: "OV814", Severity: Error,
			En: Wording{Message: `the type of the pages does not have {signs}`, Mark: `cannot be printed`,
				Help: map[string]string{"": `write it in letters, or leave it out`,
					"instead": `write {instead} in its place`,
					"name":    `choose other letters for the name, or say what is printed instead: {=call … en "…" es "…"}, or a title`},
				Explain: `The pages are set in a type that has the letters of the European languages, Greek and Cyrillic among them, and the usual signs.
Small pictures, signs for boxes and snow, and other scripts would come out as empty boxes; so nothing is set.`},
			Es: Wording{Message: `la tipografía de las páginas no tiene {signs}`, Mark: `no se puede imprimir`,
				Help: map[string]string{"": `escribirlo con letras, o quitarlo`,
					"instead": `escribir {instead} en su lugar`,
					"name":    `elegir otras letras para el nombre, o decir qué se imprime: {=call … en "…" es "…"}, o un título`},
				Explain: `Las páginas se componen con una tipografía que tiene las letras de los idiomas europeos, también el griego y el cirílico, y
los signos habituales. Las imágenes pequeñas y otras escrituras saldrían como cuadros vacíos; por eso no se compone nada.`},
			Example: strings.Replace(noHead, "\"Strip\"", "\"Strip ☃\"", 1),
			Fixed:   noHead},
	}
}

const noHead = "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"

// noted is a part with a note in it.
func noted(lines string) string {
	return "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\n  note\n" + lines + "\n  end\nend\n"
}
