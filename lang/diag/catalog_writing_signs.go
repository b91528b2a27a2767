package diag

func writingSigns() []Entry {
	return []Entry{
		{Code: "OV121", Severity: Error,
			En: Wording{
				Message: `the bracket “{sign}” is not closed`,
				Mark:    `nothing closes it`,
				Help:    map[string]string{"": `write {={other}} behind the last instruction that belongs to it`},
				Explain: `Square brackets hold what is repeated, round ones what goes into one place. Each needs its partner: without it the end
of the repeat would be a guess. An open bracket ends at the next line that begins something new.`},
			Es: Wording{
				Message: `falta cerrar «{sign}»`,
				Mark:    `nada lo cierra`,
				Help:    map[string]string{"": `escribir {={other}} detrás de la última instrucción que le pertenece`},
				Explain: `Los corchetes encierran lo que se repite; los paréntesis, lo que va en un mismo lugar. Cada uno necesita su pareja:
sin ella habría que adivinar dónde acaba la repetición. Un paréntesis abierto acaba en la siguiente línea que empieza algo
nuevo.`},
			Example: band("round: [sc in next, ch 1, skip 1 around\n  round: sc in each st and space"),
			Fixed:   band("round: [sc in next, ch 1, skip 1] around    = 20 sts, 20 spaces\n  round: sc in each st and space")},

		{Code: "OV122", Severity: Error,
			En: Wording{
				Message: `the bracket “{sign}” closes nothing, or one of another kind`,
				Mark:    `no bracket of this kind is open here`,
				Help:    map[string]string{"": `{=(} goes with {=)}, and {=[} with {=]}: the one opened last is closed first`},
				Explain: `Brackets close in pairs, the innermost first. A round bracket cannot close a square one, since they say different
things: {=[ … ]} is repeated, {=( … )} goes into one place.`},
			Es: Wording{
				Message: `«{sign}» no cierra nada, o cierra otro de distinta clase`,
				Mark:    `aquí no hay ninguno abierto de esta clase`,
				Help:    map[string]string{"": `{=(} va con {=)}, y {=[} con {=]}: el último abierto se cierra primero`},
				Explain: `Los paréntesis y los corchetes se cierran por parejas, primero el interior. Un paréntesis no puede cerrar un
corchete, porque dicen cosas distintas: {=[ … ]} se repite, {=( … )} va en un mismo lugar.`},
			Example: band(`round: [sc in next 2) 20 times`),
			Fixed:   band(`round: [sc in next 2] 20 times`)},

		{Code: "OV123", Severity: Error,
			En: Wording{
				Message: `this line is not finished: something must follow “{sign}”`,
				Mark:    `nothing that belongs to it follows`,
				Help:    map[string]string{"": `take the sign out, or write what it was to join; a right line: {={form}}`},
				Explain: `A line that ends in a comma, an equals sign or a sign of arithmetic goes on in the next one. Here the next line begins
something new instead.`},
			Es: Wording{
				Message: `esta línea no está acabada: falta algo detrás de «{sign}»`,
				Mark:    `no sigue nada que le pertenezca`,
				Help:    map[string]string{"": `quitar el signo, o escribir lo que debía unir; una línea correcta: {={form}}`},
				Explain: `Una línea que acaba en coma, en signo igual o en un signo de cálculo sigue en la siguiente. Aquí, en cambio, la línea
siguiente empieza algo nuevo.`},
			Example: band("round: sc in each,\n  round: sc in each"),
			Fixed:   band("round: sc in each\n  round: sc in each")},

		{Code: "OV124", Severity: Error,
			En: Wording{
				Message: `a blank is missing in “{text}”`,
				Mark:    `a number and a word, without a blank between them`,
				Help:    map[string]string{"": `put a space between them: {number} {word}`},
				Explain: `{=5dc} might be five stitches or a name. Only a unit may follow a number directly, as in {=10cm} and {=3.75mm}.`},
			Es: Wording{
				Message: `falta un espacio en «{text}»`,
				Mark:    `un número y una palabra, sin espacio entre ellos`,
				Help:    map[string]string{"": `poner un espacio entre ambos: {number} {word}`},
				Explain: `{=5dc} podría ser cinco puntos o un nombre. Solo una unidad puede ir pegada a su número, como en {=10cm} y {=3.75mm}.`},
			Example: band(`round: 2sc in each`),
			Fixed:   band(`round: 2 sc in each`)},

		{Code: "OV125", Severity: Error,
			En: Wording{
				Message: `the text that begins here is not closed on its line`,
				Mark:    `the quotation mark that opens it`,
				Help:    map[string]string{"": `write " behind its last letter; a quotation mark inside a text is written \"`},
				Explain: `A text in quotes ends on the line it begins on. That way one forgotten mark spoils one line, and not the rest of the
file.`},
			Es: Wording{
				Message: `el texto que empieza aquí no se cierra en su línea`,
				Mark:    `las comillas que lo abren`,
				Help:    map[string]string{"": `escribir " detrás de su última letra; unas comillas dentro de un texto se escriben \"`},
				Explain: `Un texto entre comillas acaba en la misma línea en que empieza. Así, unas comillas olvidadas estropean una línea y no el
resto del archivo.`},
			Example: bandIn("yarn sand\n  name en \"sand es \"arena\"\nend\n", `round: sc in each`),
			Fixed:   bandIn("yarn sand\n  name en \"sand\" es \"arena\"\nend\n", "yarn sand\n  round: sc in each")},

		{Code: "OV126", Severity: Error,
			En: Wording{
				Message: `texts stand between straight quotation marks ("), not between marks like {sign}`,
				Mark:    `this mark is of another kind`,
				Help:    map[string]string{"": `write " instead; word processors change it by themselves, plain text editors do not`},
				Explain: `Only the straight mark opens and closes a text, so that every other kind can stand inside it: es "el hilo «arena»".`},
			Es: Wording{
				Message: `los textos van entre comillas rectas ("), no entre signos como {sign}`,
				Mark:    `este signo es de otra clase`,
				Help:    map[string]string{"": `escribir " en su lugar; los procesadores de texto cambian este signo por su cuenta, los editores sencillos no`},
				Explain: `Solo las comillas rectas abren y cierran un texto, para que todas las demás puedan ir dentro: es "el hilo «arena»".`},
			Example: bandIn("hook 4 mm\nyarn sand\n  name en “sand” es “arena”\nend\n", `round: sc in each`),
			Fixed:   bandIn("hook 4 mm\nyarn sand\n  name en \"sand\" es \"arena\"\nend\n", "yarn sand\n  round: sc in each")},

		{Code: "OV127", Severity: Error,
			En: Wording{
				Message: `a semicolon has no meaning here`,
				Mark:    `this sign`,
				Help:    map[string]string{"": `part instructions by commas; begin a new row on a line of its own`},
				Explain: `In printed patterns a semicolon may part instructions or rows. Here a comma parts instructions and the end of the line
ends the row, so that there is one way to write it.`},
			Es: Wording{
				Message: `el punto y coma no tiene significado aquí`,
				Mark:    `este signo`,
				Help:    map[string]string{"": `separar las instrucciones con comas; empezar cada hilera en su propia línea`},
				Explain: `En los patrones impresos el punto y coma separa a veces instrucciones o hileras. Aquí la coma separa las
instrucciones y el final de la línea acaba la hilera, de modo que hay una sola manera de escribirlo.`},
			Example: band(`round: sc in next 20; sc in each`),
			Fixed:   band(`round: sc in next 20, sc in each`)},

		{Code: "OV128", Severity: Error,
			En: Wording{
				Message: `a curly bracket {sign} has a meaning only inside a text`,
				Mark:    `this sign`,
				Help:    map[string]string{"": `repeats stand in square brackets: {=[sc in next 2] 20 times}`},
				Explain: `Inside a text, {={{waist}}} puts in a value. In a row, square brackets hold a repeat and round ones what goes into one
place; curly ones have no use there.`},
			Es: Wording{
				Message: `una llave {sign} solo tiene significado dentro de un texto`,
				Mark:    `este signo`,
				Help:    map[string]string{"": `las repeticiones van entre corchetes: {=[sc in next 2] 20 times}`},
				Explain: `Dentro de un texto, {={{waist}}} pone un valor. En una hilera, los corchetes encierran una repetición y los paréntesis lo
que va en un mismo lugar; las llaves no tienen uso.`},
			Example: band(`round: {sc in next 2} 20 times`),
			Fixed:   band(`round: [sc in next 2] 20 times`)},

		{Code: "OV129", Severity: Error,
			En: Wording{
				Message: `the sign “{sign}” has no meaning here`,
				Mark:    `this sign`,
				Help:    map[string]string{"": `take it out; names are made of letters, digits and _`},
				Explain: `The signs of the language are {=( ) [ ] , : = + - * / . %} and the bar. A name may have letters of any language, digits
and the underscore: {=left_sleeve}. Anything may stand in texts and behind {=#}, which begins a remark.`},
			Es: Wording{
				Message: `el signo «{sign}» no tiene significado aquí`,
				Mark:    `este signo`,
				Help:    map[string]string{"": `quitarlo; los nombres se componen de letras, cifras y _`},
				Explain: `Los signos del lenguaje son {=( ) [ ] , : = + - * / . %} y la barra. Un nombre puede llevar letras de cualquier idioma,
cifras y el guion bajo: {=left_sleeve}. En los textos y detrás de {=#}, que empieza un comentario, puede ir cualquier cosa.`},
			Example: band(`round: sc in each @`),
			Fixed:   band(`round: sc in each`)},

		{Code: "OV130", Severity: Error,
			En: Wording{
				Message: `“{text}” is written with a decimal comma; here it must be a point`,
				Mark:    `read as two numbers`,
				Help:    map[string]string{"": `write {right}`},
				Explain: `A comma parts things of a list, so 3,75 would be two numbers. In a source the decimal sign is a point; each page is
printed with the sign that its language uses.`},
			Es: Wording{
				Message: `«{text}» lleva coma decimal; aquí debe ser un punto`,
				Mark:    `se lee como dos números`,
				Help:    map[string]string{"": `escribir {right}`},
				Explain: `La coma separa los elementos de una lista, así que 3,75 serían dos números. En el patrón el signo decimal es el punto;
cada página se imprime con el que usa su idioma.`},
			Example: bandIn("hook 3,75 mm\n", `round: sc in each`),
			Fixed:   bandIn("hook 3.75 mm\n", `round: sc in each`)},
	}
}
