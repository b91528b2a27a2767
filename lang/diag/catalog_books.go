package diag

// bookOf is a book with some lines.
func bookOf(lines string) string {
	return "book sea_set\n  title en \"The sea set\" es \"El conjunto del mar\"\n" + lines + "end\n"
}

var soundBook = bookOf("  pattern \"hat.ovillo\"\n  pattern \"mittens.ovillo\"\n")

// Codes 230 to 237: books.
func books() []Entry {
	return []Entry{
		{Code: "OV230", Severity: Error,
			En: Wording{
				Message: `the name {={file}} leads out of the folder of the book`,
				Mark:    `not a name inside it`,
				Help:    map[string]string{"": `put the patterns beside the book, or into folders there, and name them so: {=pattern "hat.ovillo"}, {=pattern "hats/hat.ovillo"}`},
				Explain: `A book is made of patterns that lie in its folder, or in folders there. A name begins in that folder, has / between
folders, and no .., \ or disk in it,
nor a name that some computers keep for a device; then it holds on every computer.`},
			Es: Wording{
				Message: `el nombre {={file}} sale de la carpeta del libro`,
				Mark:    `no es un nombre dentro de ella`,
				Help:    map[string]string{"": `poner los patrones junto al libro o en carpetas de ahí, y nombrarlos así: {=pattern "hat.ovillo"}, {=pattern "hats/hat.ovillo"}`},
				Explain: `Un libro se hace con patrones que están en su carpeta o en las que hay en ella. El nombre empieza en esa carpeta, lleva /
entre carpetas y no tiene .., \ ni unidad de disco,
ni un nombre que algunos ordenadores reservan para un dispositivo; así vale en cualquier ordenador.`},
			Example: bookOf("  pattern \"../hat.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV231", Severity: Error,
			En: Wording{
				Message: `there is no pattern {={file}} beside the book`,
				Mark:    `this file was not found`,
				Help:    map[string]string{"": `put the file there, or write its name as it is, with capitals and ending`},
				Explain: `The name of a pattern is looked for in the folder of the book. On some computers {=Hat.ovillo} and {=hat.ovillo} are two
files.`},
			Es: Wording{
				Message: `no hay ningún patrón {={file}} junto al libro`,
				Mark:    `este archivo no se encontró`,
				Help:    map[string]string{"": `poner ahí el archivo, o escribir su nombre tal como es, con mayúsculas y terminación`},
				Explain: `El nombre de un patrón se busca en la carpeta del libro. En algunos ordenadores {=Hat.ovillo} y {=hat.ovillo} son dos
archivos.`},
			Example: bookOf("  pattern \"Hat.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV232", Severity: Error,
			En: Wording{
				Message: `the pattern {={file}} cannot be read`,
				Mark:    `this is to be bound`,
				Help: map[string]string{
					"":       `see to it that the name is that of a file and that it may be opened`,
					"closed": `see to it that the name is that of a file and that it may be opened`,
					"folder": `save the book in the folder of its patterns and name it: what comes by the standard input lies in no folder`},
				Explain: `A name may be that of a folder, of something that is no file, or of a file that is closed to others. A book that comes by
the standard input lies in no folder, so that no pattern can be read for it.`},
			Es: Wording{
				Message: `el patrón {={file}} no se puede leer`,
				Mark:    `es el que va en el libro`,
				Help: map[string]string{
					"":       `comprobar que el nombre es el de un archivo y que se puede abrir`,
					"closed": `comprobar que el nombre es el de un archivo y que se puede abrir`,
					"folder": `guardar el libro en la carpeta de sus patrones e indicar su nombre: lo que llega por la entrada estándar no está en ninguna carpeta`},
				Explain: `El nombre puede ser el de una carpeta, el de algo que no es un archivo, o el de un archivo sin permiso de lectura. Un libro que
llega por la entrada estándar no está en ninguna carpeta, y no se puede leer ningún patrón para él.`},
			Example: bookOf("  pattern \"locked.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV233", Severity: Error,
			En: Wording{
				Message: `{={file}} cannot be bound as it is`,
				Mark:    `this pattern is not sound`,
				Help: map[string]string{
					"":       `mend what {=ovillo check} says of that file`,
					"errors": `mend what {=ovillo check} says of that file`,
					"book":   `name the patterns of that book one by one: a book cannot stand in a book`},
				Explain: `A book is set only if each of its patterns is sound by itself: with an error, nobody could say what its pages mean. A book
cannot stand in another one.`},
			Es: Wording{
				Message: `{={file}} no puede ir en el libro tal como está`,
				Mark:    `este patrón tiene fallos`,
				Help: map[string]string{
					"":       `corregir lo que {=ovillo check} dice de ese archivo`,
					"errors": `corregir lo que {=ovillo check} dice de ese archivo`,
					"book":   `nombrar uno por uno los patrones de ese libro: un libro no puede ir dentro de otro`},
				Explain: `Un libro se compone solo si cada uno de sus patrones está bien por sí mismo: con un error, nadie sabría qué dicen sus páginas.
Un libro no puede ir dentro de otro.`},
			Example: bookOf("  pattern \"faulty.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV234", Severity: Error,
			En: Wording{
				Message: `the book has no pattern`,
				Mark:    `nothing is bound here`,
				Help:    map[string]string{"": `name its patterns, in their order: {=pattern "hat.ovillo"}`},
				Explain: `A book binds patterns into one document. Each stands in a file of its own, beside the book.`},
			Es: Wording{
				Message: `el libro no tiene ningún patrón`,
				Mark:    `aquí falta un patrón`,
				Help:    map[string]string{"": `nombrar sus patrones, en orden: {=pattern "hat.ovillo"}`},
				Explain: `Un libro reúne patrones en un solo documento. Cada uno está en su propio archivo, junto al libro.`},
			Example: bookOf(""),
			Fixed:   soundBook},

		{Code: "OV235", Severity: Error,
			En: Wording{
				Message: `{={file}} is not written in “{language}”, which is a language of the book`,
				Mark:    `this pattern lacks it`,
				Help:    map[string]string{"": `add the texts of that language to the pattern, or say which languages the book has: {=languages en}`},
				Explain: `The pages of a book have the same languages from the first to the last. Where it says none, it is in English and Spanish.`},
			Es: Wording{
				Message: `{={file}} no está escrito en «{language}», que es un idioma del libro`,
				Mark:    `a este patrón le falta`,
				Help:    map[string]string{"": `añadir al patrón los textos de ese idioma, o decir qué idiomas tiene el libro: {=languages en}`},
				Explain: `Las páginas de un libro están en los mismos idiomas de la primera a la última. Si no dice cuáles, está en español y en inglés.`},
			Example: bookOf("  pattern \"hat.ovillo\"\n  pattern \"english.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV236", Severity: Error,
			En: Wording{
				Message: `{={file}} reads the names of stitches in other terms than the first pattern of the book`,
				Mark:    `other terms`,
				Help:    map[string]string{"": `write all patterns of a book in the same terms: {=terms us}, or {=terms uk}`},
				Explain: `In British terms a double crochet is what American terms call a single crochet. In one book, with one table of
abbreviations, a maker could not tell which is meant.`},
			Es: Wording{
				Message: `{={file}} lee los nombres de los puntos de otra manera que el primer patrón del libro`,
				Mark:    `otros términos`,
				Help:    map[string]string{"": `escribir todos los patrones de un libro con los mismos términos: {=terms us} o {=terms uk}`},
				Explain: `Lo que en los términos británicos se llama punto alto es en los estadounidenses un punto bajo. En un solo libro, con una sola
tabla de abreviaturas, nadie sabría cuál es.`},
			Example: bookOf("  pattern \"hat.ovillo\"\n  pattern \"british.ovillo\"\n"),
			Fixed:   soundBook},

		{Code: "OV237", Severity: Error,
			En: Wording{
				Message: `beside a book nothing else can stand in a file`,
				Mark:    `this belongs in a pattern`,
				Help:    map[string]string{"": `put it into a pattern, or into a file that patterns {=use}`},
				Explain: `A book says what is bound, and what is said of the whole. What is made stands in its patterns, each in a file of its own.`},
			Es: Wording{
				Message: `junto a un libro no puede haber nada más en el archivo`,
				Mark:    `esto es propio de un patrón`,
				Help:    map[string]string{"": `ponerlo en un patrón, o en un archivo común que los patrones toman con {=use}`},
				Explain: `Un libro dice qué reúne y lo que vale para el conjunto. Lo que se teje está en sus patrones, cada uno en su archivo.`},
			Example: soundBook + "let waist = 40\n",
			Fixed:   soundBook},
	}
}
