package diag

import (
	"slices"
	"strings"
)

// Codes 1xx: writing. The rows stand in six files: the file and its lines, what is too large, the files that patterns share, signs, what would have to come next, and slips of
// the pen in rows.
func writing() []Entry {
	return slices.Concat(writingFile(), writingSize(), writingShared(), writingLines(), writingSigns(), writingNext(), writingRows())
}

// band is a small source whose part is worked in rounds over forty stitches, with the lines given.
func band(lines string) string { return bandIn("", lines) }

// bandIn is band with lines above the part as well.
func bandIn(above, lines string) string {
	return `pattern trial
  title en "Trial band" es "Banda de prueba"
  terms us
end

sizes "S", "M"
end

gauge 10 cm
  sc 16 sts, 18 rows
end
` + above + `
part band
  title en "Band" es "Banda"
  in joined rounds
  chain 40, join
  ` + lines + `
  fasten off
end
`
}

func writingFile() []Entry {
	return []Entry{
		{Code: "OV101", Severity: Error,
			En: Wording{
				Message: `this file is larger than {limit} {limit|megabyte|megabytes}`,
				Explain: `A pattern is read as a whole, and one of this size would print as hundreds of pages. Most often such a file is no
pattern at all, but a picture or a document saved under the wrong name.`},
			Es: Wording{
				Message: `este archivo ocupa más de {limit} MB`,
				Explain: `El patrón se lee entero, y uno de este tamaño daría cientos de páginas. Casi siempre un archivo así no es un patrón,
sino una imagen o un documento guardado con otro nombre.`},
			Example: "# What a file of another kind holds, read as text.\n# … 45000 times\n",
			Fixed:   band(`round: sc in each`)},

		{Code: "OV102", Severity: Error,
			En: Wording{
				Message: `the text is not saved as UTF-8: the byte {byte} stands for no letter`,
				Mark:    `the first such byte`,
				Help:    map[string]string{"": `save the file anew and choose UTF-8 as its encoding`},
				Explain: `Letters are kept in a file as numbers, and there are several ways to do so. Patterns are kept as UTF-8, which every
editor can write and which has all letters of every language. A file in another encoding shows wrong letters where ñ or á
should stand.`},
			Es: Wording{
				Message: `el texto no está guardado como UTF-8: el byte {byte} no representa ninguna letra`,
				Mark:    `el primer byte de este tipo`,
				Help:    map[string]string{"": `guardar el archivo de nuevo y elegir UTF-8 como codificación`},
				Explain: `Las letras se guardan en un archivo como números, y hay varias maneras de hacerlo. Los patrones se guardan como
UTF-8, que cualquier editor sabe escribir y que tiene todas las letras de todos los idiomas. En un archivo con otra
codificación aparecen letras equivocadas donde debería haber ñ o á.`},
			Example: strings.Replace(band(`round: sc in each`), "Banda", "Ba\xf1ada", 1),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV103", Severity: Error,
			En: Wording{
				Message: `brackets or blocks stand inside one another more than {limit} deep`,
				Mark:    `this is one too many`,
				Help:    map[string]string{"": `give the inner list a name with {=group}, or close the brackets that were left open`},
				Explain: `A list may stand inside a list, and a block inside a block, but nobody can follow two hundred of them. Nearly always a
bracket was typed many times by accident.`},
			Es: Wording{
				Message: `hay más de {limit} paréntesis o bloques unos dentro de otros`,
				Mark:    `este ya sobra`,
				Help:    map[string]string{"": `dar un nombre a la lista interior con {=group}, o cerrar los paréntesis que quedaron abiertos`},
				Explain: `Una lista puede estar dentro de otra, y un bloque dentro de otro, pero nadie puede seguir doscientos. Casi siempre se
trata de un paréntesis repetido sin querer.`},
			Example: bandIn("let wide = "+strings.Repeat("(", 201)+"40"+strings.Repeat(")", 201)+"\n", `round: sc in each`),
			Fixed:   bandIn("let wide = (40)\n", `round: sc in each`)},

		{Code: "OV104", Severity: Error,
			En: Wording{
				Message: `this line has more than {limit} words`,
				Mark:    `up to here it was read`,
				Help:    map[string]string{"": `part it into several rows, or say what repeats once in square brackets: {=[ … ] 20 times}`},
				Explain: `The longest rows of real patterns have some hundreds of words. A longer one is most likely a text that was pasted in
by accident.`},
			Es: Wording{
				Message: `esta línea tiene más de {limit} palabras`,
				Mark:    `hasta aquí se ha leído`,
				Help:    map[string]string{"": `repartirla en varias hileras o escribir una sola vez lo que se repite, entre corchetes: {=[ … ] 20 times}`},
				Explain: `Las hileras más largas de los patrones reales tienen unos cientos de palabras. Una más larga es, casi seguro, un texto
pegado sin querer.`},
			Example: band("round:\n    sc in next,\n    # … 3000 times\n    sc in each"),
			Fixed:   band(`round: [sc in next 2] 20 times`)},

		{Code: "OV105", Severity: Note,
			En: Wording{
				Message: `more than {limit} faults were found; what comes after this place is not told`,
				Help:    map[string]string{"": `put the first ones right and check again`},
				Explain: `When nearly every line is at fault, the file is usually no pattern, or one sign near its beginning spoils all that
follows. The first messages are the ones to read.`},
			Es: Wording{
				Message: `se han encontrado más de {limit} fallos; los que siguen a este lugar no se muestran`,
				Help:    map[string]string{"": `corregir los primeros y comprobar de nuevo`},
				Explain: `Cuando casi todas las líneas tienen fallos, el archivo no suele ser un patrón, o un signo cercano al principio
estropea todo lo que sigue. Los primeros mensajes son los que conviene leer.`},
			Example: "Dear knitters and crocheters\n# … 600 times\n",
			Fixed:   band(`round: sc in each`)},
	}
}

func writingLines() []Entry {
	return []Entry{
		{Code: "OV111", Severity: Error,
			En: Wording{
				Message: `no line can begin with “{word}” here`,
				Mark:    `this word is not known at the beginning of a line`,
				Help: map[string]string{
					"near":  `a word like it that is known here: {={near|or}}`,
					"words": `a line can begin here with {={right|or}}`,
					"name":  `a line begins here with a name: {={form}}`},
				Explain: `The first word of a line says what the line is: {=round:} and {=row:} begin a row, {=let} names a value, {=part} begins a
piece. Each block knows some such words of its own. Most often the word is only misspelt.`},
			Es: Wording{
				Message: `aquí ninguna línea puede empezar por «{word}»`,
				Mark:    `esta palabra no se conoce al principio de una línea`,
				Help: map[string]string{
					"near":  `una palabra parecida que sí se conoce aquí: {={near|or}}`,
					"words": `aquí una línea puede empezar por {={right|or}}`,
					"name":  `aquí una línea empieza por un nombre: {={form}}`},
				Explain: `La primera palabra de una línea dice qué es esa línea: {=round:} y {=row:} empiezan una hilera, {=let} da nombre a un valor,
{=part} empieza una pieza. Cada bloque conoce algunas palabras propias. Casi siempre la palabra solo está mal escrita.`},
			Example: band(`rownd: sc in each`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV112", Severity: Error,
			En: Wording{
				Message: `“{word}” cannot stand {top|outside every block|inside “{inside}”}`,
				Mark:    `this line belongs elsewhere`,
				Related: map[string]string{"open": `this block is open here`},
				Help: map[string]string{
					"in":   `it stands in a block of its kind: {={blocks|or} … end}`,
					"file": `it stands outside all blocks: put it behind the {=end} of this one`},
				Explain: `A pattern is made of blocks, and each kind of block has lines of its own: rows stand in a {=part}, the ages in {=sizes},
the title in {=pattern}. A line in the wrong block would have no meaning there. It may also be that an {=end} is missing above, or
stands too early.`},
			Es: Wording{
				Message: `«{word}» no puede ir {top|fuera de todo bloque|dentro de «{inside}»}`,
				Mark:    `esta línea va en otro lugar`,
				Related: map[string]string{"open": `este es el bloque abierto aquí`},
				Help: map[string]string{
					"in":   `va dentro de un bloque de su clase: {={blocks|or} … end}`,
					"file": `va fuera de todos los bloques: ponerla detrás del {=end} que cierra este`},
				Explain: `Un patrón se compone de bloques, y cada clase de bloque tiene sus propias líneas: las hileras van en {=part}, las edades
en {=sizes}, el título en {=pattern}. En un bloque ajeno, una línea no tendría sentido. También puede ser que más arriba falte un
{=end}, o que esté antes de tiempo.`},
			Example: bandIn("round: sc in each\n", `round: sc in each`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV113", Severity: Error,
			En: Wording{
				Message: `stitches stand in a row, but this line begins with “{word}” and not with {=round:} or {=row:}`,
				Mark:    `no row has begun here`,
				Help:    map[string]string{"": `begin the line with what it is: {=round: sc in each}`},
				Explain: `Every row or round is a line of its own that says so first. That is how rows get their numbers. A row may go on in
the next line if the line ends in a comma or a colon, or if a bracket is open.`},
			Es: Wording{
				Message: `los puntos van en una hilera, pero esta línea empieza por «{word}» y no por {=round:} o {=row:}`,
				Mark:    `aquí no ha empezado ninguna hilera`,
				Help:    map[string]string{"": `empezar la línea por lo que es: {=round: sc in each}`},
				Explain: `Cada hilera o vuelta es una línea que empieza diciéndolo. Así reciben su número. Una hilera puede seguir en la línea
siguiente si la línea acaba en coma o en dos puntos, o si hay un paréntesis abierto.`},
			Example: band(`sc in each`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV114", Severity: Error,
			En: Wording{
				Message: `the block “{open}” has no {=end} before “{word}”`,
				Mark:    `this line stands outside that block`,
				Related: map[string]string{"open": `this block is still open`},
				Help:    map[string]string{"": `write {=end} on a line above this one`},
				Explain: `What begins with a word such as {=part}, {=sizes} or {=repeat} goes on up to a line that says {=end}. Where that line is
forgotten, the next block shows it: a part cannot stand inside a part.`},
			Es: Wording{
				Message: `al bloque «{open}» le falta su {=end} antes de «{word}»`,
				Mark:    `esta línea va fuera de ese bloque`,
				Related: map[string]string{"open": `este bloque sigue abierto`},
				Help:    map[string]string{"": `escribir {=end} en una línea anterior a esta`},
				Explain: `Lo que empieza por una palabra como {=part}, {=sizes} o {=repeat} sigue hasta una línea que dice {=end}. Cuando se olvida, se nota
en el bloque siguiente: una pieza no puede ir dentro de otra.`},
			Example: strings.Replace(band(`round: sc in each`), "18 rows\nend\n", "18 rows\n", 1),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV115", Severity: Error,
			En: Wording{
				Message: `this {=end} closes nothing`,
				Mark:    `no block is open here`,
				Help:    map[string]string{"": `take the line out, or put back the line that began its block`},
				Explain: `Each {=end} closes the block that was begun last. Here all blocks are closed already: there is one {=end} too many, or the
line that began the block is gone.`},
			Es: Wording{
				Message: `este {=end} no cierra nada`,
				Mark:    `aquí no hay ningún bloque abierto`,
				Help:    map[string]string{"": `quitar la línea, o reponer la que empezaba su bloque`},
				Explain: `Cada {=end} cierra el último bloque empezado. Aquí ya están todos cerrados: sobra un {=end}, o falta la línea que empezaba el
bloque.`},
			Example: band(`round: sc in each`) + "end\n",
			Fixed:   band(`round: sc in each`)},

		{Code: "OV116", Severity: Error,
			En: Wording{
				Message: `the file ends, but {n|the block “{word}” has|{n} blocks have} no {=end}`,
				Mark:    `this block is still open`,
				Related: map[string]string{"open": `and this one`},
				Help:    map[string]string{"": `write {=end} behind the last line of the block`},
				Explain: `Every block closes with a line that says {=end}, the last one of the file as well. A block that stays open may be one
whose lines were lost when the file was copied, so it is not closed in silence.`},
			Es: Wording{
				Message: `el archivo acaba, pero {n|al bloque «{word}» le|a {n} bloques les} falta su {=end}`,
				Mark:    `este bloque sigue abierto`,
				Related: map[string]string{"open": `y este también`},
				Help:    map[string]string{"": `escribir {=end} detrás de la última línea del bloque`},
				Explain: `Todo bloque se cierra con una línea que dice {=end}, también el último del archivo. Un bloque abierto puede ser uno cuyas
líneas se perdieron al copiar, y por eso no se cierra sin avisar.`},
			Example: strings.TrimSuffix(band(`round: sc in each`), "end\n"),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV117", Severity: Error,
			En: Wording{
				Message: `a line behind a bar cannot stand here`,
				Mark:    `this is a line of a text or of a chart`,
				Help:    map[string]string{"": `texts stand in a block of their own: {=note … end}, with lines such as {=en | Wash by hand.}`},
				Explain: `The bar parts the language of a line from its text, and the number of a chart's row from its cells. Such lines stand
in {=intro}, {=note}, {=step}, {=care}, {=licence}, {=changes}, {=stitch} and {=chart}, and nowhere else.`},
			Es: Wording{
				Message: `una línea con barra no puede ir aquí`,
				Mark:    `es una línea de un texto o de un gráfico`,
				Help:    map[string]string{"": `los textos van en un bloque propio: {=note … end}, con líneas como {=es | Lavar a mano.}`},
				Explain: `La barra separa el idioma de una línea de su texto, y el número de una hilera del gráfico de sus casillas. Estas líneas
van en {=intro}, {=note}, {=step}, {=care}, {=licence}, {=changes}, {=stitch} y {=chart}, y en ningún otro lugar.`},
			Example: band("round: sc in each\n  en | Turn it inside out.\n  es | Darle la vuelta."),
			Fixed:   band("round: sc in each\n  note\n    en | Turn it inside out.\n    es | Darle la vuelta.\n  end")},

		{Code: "OV118", Severity: Error,
			En: Wording{
				Message: `in “{inside}” every line stands behind a bar`,
				Mark:    `this line has no bar`,
				Help: map[string]string{
					"prose": `write the language and a bar before the text: {=en | Wash by hand.}`,
					"chart": `write the number of the row and a bar before its cells: {=1 | . x x .}`},
				Explain: `What stands behind the bar is taken as it is, so that a text may hold any word and any sign. Before the bar stands the
language of the text, or nothing if it goes on in the same language; in a chart it is the number of the row.`},
			Es: Wording{
				Message: `en «{inside}» todas las líneas van detrás de una barra`,
				Mark:    `esta línea no tiene barra`,
				Help: map[string]string{
					"prose": `escribir el idioma y una barra antes del texto: {=es | Lavar a mano.}`,
					"chart": `escribir el número de la hilera y una barra antes de sus casillas: {=1 | . x x .}`},
				Explain: `Lo que va detrás de la barra se toma tal cual, de modo que un texto puede llevar cualquier palabra y cualquier signo.
Delante de la barra va el idioma del texto, o nada si sigue en el mismo; en un gráfico, el número de la hilera.`},
			Example: band("round: sc in each\n  note\n    Turn it inside out.\n  end"),
			Fixed:   band("round: sc in each\n  note\n    en | Turn it inside out.\n    es | Darle la vuelta.\n  end")},

		{Code: "OV119", Severity: Error,
			En: Wording{
				Message: `“{word}” is written “{={english}}” in a source`,
				Mark:    `the Spanish word`,
				Help:    map[string]string{"": `write {={english}}; or write the whole source in Spanish, with idioma es as its first line`},
				Explain: `A source is in English unless its first line says otherwise, whatever language the pattern is published in: the Spanish
page is made from the same source. A source in Spanish begins with idioma es; “ovillo fmt --to” puts a whole source into it. Names that
you choose yourself may be in any language.`},
			Es: Wording{
				Message: `«{word}» se escribe «{={english}}» en el patrón`,
				Mark:    `la palabra española`,
				Help:    map[string]string{"": `escribir {={english}}, o escribir todo el patrón en español, con idioma es en la primera línea`},
				Explain: `El archivo de un patrón está en inglés si la primera línea no dice otra cosa, sea cual sea el idioma en que se publica: la
página en español se obtiene del mismo texto. Un archivo en español empieza con idioma es; «ovillo fmt --to» pasa un archivo entero. Los
nombres que elige quien diseña pueden estar en cualquier idioma.`},
			Example: band(`vuelta: sc in each`),
			Fixed:   band(`round: sc in each`)},
	}
}
