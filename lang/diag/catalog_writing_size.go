package diag

import "strings"

// writingSize is what is too large in the writing, but for the file itself, its nesting and a statement.
func writingSize() []Entry {
	return []Entry{
		{Code: "OV163", Severity: Error,
			En: Wording{
				Message: `this file has more than {limit} lines`,
				Mark:    `from here on nothing was read`,
				Help:    map[string]string{"": `say what repeats once with {=repeat}; put patterns that stand in one file into files of their own`},
				Explain: `A pattern has some hundreds of lines. A file of so many is most likely a list of data, or something that was pasted in
many times by accident.`},
			Es: Wording{
				Message: `este archivo tiene más de {limit} líneas`,
				Mark:    `a partir de aquí no se ha leído nada`,
				Help:    map[string]string{"": `escribir una sola vez lo que se repite, con {=repeat}; poner en archivos distintos los patrones que están en uno solo`},
				Explain: `Un patrón tiene unos cientos de líneas. Un archivo con tantas es, casi seguro, una lista de datos o algo pegado muchas
veces sin querer.`},
			Example: band(`round: sc in each`) + "# A list.\n# … 120000 times\n",
			Fixed:   band(`round: sc in each`)},

		{Code: "OV164", Severity: Error,
			En: Wording{
				Message: `this word has more than {limit} letters`,
				Mark:    `too long for a word`,
				Help:    map[string]string{"": `choose a shorter name; a text for the pages stands between quotation marks`},
				Explain: `Names are there for the source alone, and the pages do not print them. A word of so many letters is most likely text
that was pasted in by accident.`},
			Es: Wording{
				Message: `esta palabra tiene más de {limit} letras`,
				Mark:    `demasiado larga para una palabra`,
				Help:    map[string]string{"": `elegir un nombre más corto; los textos para las páginas van entre comillas`},
				Explain: `Los nombres solo sirven dentro del propio archivo y no se imprimen. Una palabra con tantas letras es, casi seguro, un
texto pegado sin querer.`},
			Example: bandIn("let "+strings.Repeat("wide", 17)+" = 40\n", `round: sc in each`),
			Fixed:   bandIn("let wide = 40\n", `round: sc in each`)},

		{Code: "OV165", Severity: Error,
			En: Wording{
				Message: `this text has more than {limit} letters`,
				Help: map[string]string{
					"quoted": `a text in quotation marks is a title or a name; what needs more room stands in a {=note}`,
					"prose":  `part it into several notes, or leave out what the maker does not need`},
				Explain: `A title fills a line or two, and a note some pages at most. A longer text is most likely one that was pasted in by
accident.`},
			Es: Wording{
				Message: `este texto tiene más de {limit} letras`,
				Help: map[string]string{
					"quoted": `un texto entre comillas es un título o un nombre; lo que necesita más espacio va en una {=note}`,
					"prose":  `repartirlo en varias notas o quitar lo que no hace falta para tejer`},
				Explain: `Un título ocupa una línea o dos, y una nota unas páginas como mucho. Un texto más largo es, casi seguro, uno pegado sin
querer.`},
			Example: strings.Replace(band(`round: sc in each`), `en "Band"`, `en "`+strings.Repeat("Band ", 201)+`"`, 1),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV166", Severity: Error,
			En: Wording{
				Message: `this number has more than {limit} digits`,
				Help:    map[string]string{"": `write the number with the digits that it needs`},
				Explain: `No count and no measure of a crocheted piece has so many digits before its point or behind it. Nearly always a key was
held down by accident.`},
			Es: Wording{
				Message: `este número tiene más de {limit} cifras`,
				Help:    map[string]string{"": `escribir el número con las cifras que hacen falta`},
				Explain: `Ninguna cuenta ni medida de una pieza de ganchillo tiene tantas cifras antes o después del punto. Casi siempre se ha
dejado pulsada una tecla sin querer.`},
			Example: bandIn("let wide = 4"+strings.Repeat("0", 18)+"\n", `round: sc in each`),
			Fixed:   bandIn("let wide = 40\n", `round: sc in each`)},
	}
}
