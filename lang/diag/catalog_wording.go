package diag

// Codes 8xx: words.
var wording = []Entry{
	{Code: "OV801", Severity: Error,
		En: Wording{Message: `the text in {languages} is missing`, Mark: `lacks a language`,
			Help:    map[string]string{"": `add it, or name the languages of the pattern in its header: languages en`},
			Explain: `Everything that prints is written in each language of the pattern; a page with a gap in one of them is not set.`},
		Es: Wording{Message: `falta el texto en {languages}`, Mark: `le falta un idioma`,
			Help:    map[string]string{"": `añadirlo o decir al comienzo los idiomas del patrón: languages es`},
			Explain: `Todo lo que se imprime va en cada idioma del patrón; una página con un hueco en uno de ellos no se compone.`},
		Example: trialOf("  call strip en \"the strip\"\n  in rows\n  chain 6\n  row: sc in each = 6", ""),
		Fixed:   trialOf("  call strip en \"the strip\" es \"la tira\"\n  in rows\n  chain 6\n  row: sc in each = 6", "")},

	{Code: "OV802", Severity: Warning,
		En: Wording{Message: `the pattern has no title`, Mark: `prints under its short name`, Help: map[string]string{"": `add title en "…" es "…"`},
			Explain: `The title stands at the head of the first page.`},
		Es: Wording{Message: `el patrón no tiene título`, Mark: `se imprime con su nombre corto`, Help: map[string]string{"": `añadir title en "…" es "…"`},
			Explain: `El título encabeza la primera página.`},
		Example: "pattern trial\n  terms us\nend\n\n" + noHead, Fixed: "pattern trial\n  title en \"Trial\" es \"Prueba\"\nend\n\n" + noHead},

	{Code: "OV803", Severity: Warning,
		En: Wording{Message: `the part {part} has no title`, Mark: `prints under its short name`, Help: map[string]string{"": `add title en "…" es "…"`},
			Explain: `The title of a part is its heading on the page.`},
		Es: Wording{Message: `la pieza {part} no tiene título`, Mark: `se imprime con su nombre corto`, Help: map[string]string{"": `añadir title en "…" es "…"`},
			Explain: `El título de una pieza es su encabezado en la página.`},
		Example: "sizes \"S\"\nend\n\npart strip\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n", Fixed: noHead},

	{Code: "OV804", Severity: Error,
		En: Wording{Message: `the numbers differ between the languages: {found} here, {need} in the other`, Mark: `has {found}`, Related: map[string]string{"other": `has {need}`},
			Help:    map[string]string{"": `make them agree, or let the pattern put them in: {{name}}`},
			Explain: `A number that stands in one language alone is as a rule an older one that was forgotten in translation. Values put in by name are always the same.`},
		Es: Wording{Message: `los números no coinciden entre los idiomas: aquí {found}, en el otro {need}`, Mark: `tiene {found}`, Related: map[string]string{"other": `tiene {need}`},
			Help:    map[string]string{"": `hacer que coincidan o dejar que el patrón los ponga: {{name}}`},
			Explain: `Un número que está solo en un idioma suele ser uno antiguo olvidado al traducir. Los valores puestos por su nombre son siempre iguales.`},
		Example: noted("    en | Leave a tail of 30 cm.\n    es | Dejar un cabo de 20 cm."),
		Fixed:   noted("    en | Leave a tail of 30 cm.\n    es | Dejar un cabo de 30 cm.")},

	{Code: "OV805", Severity: Error,
		En: Wording{Message: `nothing is called {word}, so its value cannot be put in`, Mark: `is not known`,
			Help:    nearHelp(`near it: {near|or}`, `give it a value above the parts: let {word} = …`),
			Explain: `Braces in a text put in a value that was declared with let, or a measure of the wearer.`},
		Es: Wording{Message: `nada se llama {word}, así que su valor no se puede poner`, Mark: `no se conoce`,
			Help:    nearHelp(`parecidos: {near|or}`, `darle un valor antes de las piezas: let {word} = …`),
			Explain: `Las llaves en un texto ponen un valor declarado con let o una medida del cuerpo.`},
		Example: "let tail = 30 cm\n\n" + noted("    en | Leave a tail of {tale}.\n    es | Dejar un cabo de {tail}."),
		Fixed:   "let tail = 30 cm\n\n" + noted("    en | Leave a tail of {tail}.\n    es | Dejar un cabo de {tail}.")},

	{Code: "OV806", Severity: Warning,
		En: Wording{Message: `the text in {language} prints nowhere: the pattern is in {known}`, Mark: `is not a language of the pattern`,
			Help:    map[string]string{"": `add it to the languages in the header, or take the text out`},
			Explain: `A text in a language the pattern is not published in is kept and not used.`},
		Es: Wording{Message: `el texto en {language} no se imprime: el patrón está en {known}`, Mark: `no es un idioma del patrón`,
			Help:    map[string]string{"": `añadirlo a los idiomas del comienzo o quitar el texto`},
			Explain: `Un texto en un idioma en el que no se publica el patrón se conserva sin usarse.`},
		Example: noted("    en | Leave a tail.\n    es | Dejar un cabo.\n    fr | Laisser un bout."),
		Fixed:   noted("    en | Leave a tail.\n    es | Dejar un cabo.")},
}

const noHead = "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\nend\n"

// noted is a part with a note in it.
func noted(lines string) string {
	return "sizes \"S\"\nend\n\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n  row: sc in each = 6\n  note\n" + lines + "\n  end\nend\n"
}
