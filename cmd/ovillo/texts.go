package main

import "strconv"

// This file holds what the command itself says. What it says about a source stands in the catalogue of lang/diag.

var (
	msgAbout = text{
		"ovillo checks crochet patterns and sets them as pages in English and Spanish.",
		"ovillo comprueba patrones de ganchillo y los compone en páginas en inglés y español."}
	msgExitCodes = text{
		"Exit codes: 0 clean, 1 errors in a source, 2 wrong use, or a file could not be read or written.\n" +
			"More about a command: ovillo help COMMAND",
		"Códigos de salida: 0 sin errores, 1 errores en un patrón, 2 uso incorrecto, o un archivo que no se pudo leer o escribir.\n" +
			"Más sobre una orden: ovillo help ORDEN"}
	msgUse             = text{"Use:", "Uso:"}
	msgRevision        = text{"revision {revision} of {date}", "revisión {revision} del {date}"}
	msgRevisionChanged = text{"revision {revision} of {date}, changed since", "revisión {revision} del {date}, con cambios posteriores"}
	msgExamples        = text{"Examples:", "Ejemplos:"}
	msgSeeHelp         = text{"for more, type: ovillo help{topic}", "para saber más, escribir: ovillo help{topic}"}

	// A new pattern.
	msgNeedsName = text{"a name is needed, such as sea-hat", "hace falta un nombre, por ejemplo gorro-mar"}
	msgKinds     = text{"The kinds:", "Lo que se puede empezar:"}
	msgBegun     = text{"{path}: {kind}, {n} lines", "{path}: {kind}, {n} líneas"}
	msgNext      = text{"Next, type: {line}", "Ahora, escribir: {line}"}
	whyExists    = text{"it is there already and is kept", "ya existe y se conserva"}

	// The manual page.
	manName        = text{"NAME", "NOMBRE"}
	manSynopsis    = text{"SYNOPSIS", "SINOPSIS"}
	manCommand     = text{"COMMAND [FLAG…] [FILE…]", "ORDEN [OPCIÓN…] [ARCHIVO…]"}
	manDescription = text{"DESCRIPTION", "DESCRIPCIÓN"}
	manCommands    = text{"COMMANDS", "ÓRDENES"}
	manEverywhere  = text{"FLAGS OF ALL COMMANDS", "OPCIONES DE TODAS LAS ÓRDENES"}
	manExit        = text{"EXIT STATUS", "CÓDIGO DE SALIDA"}
	manEnvironment = text{"ENVIRONMENT", "ENTORNO"}
	manSource      = text{
		"A source is a text file whose name ends in .ovillo. Several may be named, also by signs such as *.ovillo and **/*.ovillo, between quotes or not; - is the standard input, and behind -o the standard output. Flags may stand anywhere; -- ends them.",
		"Un patrón es un archivo de texto cuyo nombre acaba en .ovillo. Se pueden dar varios, también con signos como *.ovillo y **/*.ovillo, entre comillas o no; - es la entrada estándar y, detrás de -o, la salida estándar. Las opciones pueden ir en cualquier lugar; -- las termina."}

	// The command line.
	msgNoCommand     = text{"there is no command {name}", "no existe la orden {name}"}
	msgNoFlag        = text{"there is no flag {flag}", "no existe la opción {flag}"}
	msgNoCommandNear = text{"there is no command {name}; similar: {near}", "no existe la orden {name}; parecidas: {near}"}
	msgNoFlagNear    = text{"there is no flag {flag}; similar: {near}", "no existe la opción {flag}; parecidas: {near}"}
	msgNotHere       = text{"{flag} is not a flag of {command}", "{flag} no es una opción de {command}"}
	msgFlagValue     = text{"{flag} needs a value: {flag} {value}", "{flag} necesita un valor: {flag} {value}"}
	msgFlagNoValue   = text{"{flag} takes no value", "{flag} no lleva valor"}
	msgFlagTwice     = text{"{flag} is given twice", "{flag} aparece dos veces"}
	msgFlagChoice    = text{
		"{flag} can be one of: {allowed}; not {value}",
		"{flag} admite uno de estos valores: {allowed}; {value} no"}
	msgFlagsClash = text{"{one} and {other} do not go together", "{one} y {other} no se pueden usar a la vez"}
	msgNeedsFile  = text{"a source is needed, such as hat.ovillo", "hace falta un patrón, por ejemplo gorro.ovillo"}
	msgNoMatch    = text{"no file matches {glob}", "ningún archivo corresponde a {glob}"}
	msgTooMany    = text{"{what} is one too many", "{what} está de más"}
	msgWhichShell = text{"say for which shell: {allowed}", "decir para qué programa de la terminal: {allowed}"}
	msgStdinTwice = text{"- (standard input) can be read only once", "- (la entrada estándar) solo se puede leer una vez"}

	// A maker's own gauge.
	msgGaugeForm = text{
		"\"{value}\" is no gauge; write a stitch, how many, and the rows or rounds if you counted them: --gauge \"dc 18 sts 9 rows\"",
		"«{value}» no es una muestra; escribir un punto, cuántos y, si se contaron, las hileras (rows) o vueltas (rounds): --gauge \"dc 18 sts 9 rows\""}
	msgGaugeNoLine = text{
		"{path} has no gauge that \"{value}\" could take the place of; it has: {lines}",
		"{path} no tiene una muestra a la que «{value}» pueda sustituir; tiene: {lines}"}
	msgGaugeNone = text{
		"{path} has no gauge, so that it cannot be worked at \"{value}\"",
		"{path} no tiene muestra, así que no se puede tejer con «{value}»"}
	msgGaugeSeveral = text{
		"\"{value}\" could stand for several lines of the gauge of {path}; say rows or rounds, or the hook: {lines}",
		"«{value}» puede sustituir varias líneas de la muestra de {path}; decir rows o rounds, o el ganchillo: {lines}"}
	msgGaugeTwice = text{
		"\"{value}\" takes the place of a gauge that another one has taken already; {path} has: {lines}",
		"«{value}» sustituye una muestra que otra ya sustituyó; {path} tiene: {lines}"}
	msgGaugeRepeats = text{
		"{path} has no stitch pattern whose repeats \"{value}\" could count; its gauge is: {lines}",
		"{path} no tiene una puntada cuyas repeticiones pueda contar «{value}»; su muestra es: {lines}"}
	msgGaugeSound = text{
		"{path} is sound at its own gauge; at the one given it does not come out:",
		"{path} cuadra con su propia muestra; con la indicada, no:"}
	msgGaugeHead = text{"{path} at {gauges}, before → now:", "{path} con {gauges}, antes → ahora:"}
	msgGaugeSame = text{"{path} at {gauges}: no value, measure or amount changes", "{path} con {gauges}: no cambia ningún valor, medida ni cantidad"}
	msgGaugeYarn = text{
		"  Yarn goes by area, from what was weighed at the pattern's gauge; at yours it is a guide.",
		"  El hilo se calcula por superficie, con lo que se pesó con la muestra del patrón; con la indicada es orientativo."}
	msgGaugeStays = text{
		"  The pattern's gauge stays for what you did not count: {lines}.",
		"  Para lo que no se contó sigue valiendo la muestra del patrón: {lines}."}
	msgYarnOf = text{"yarn {name}", "hilo {name}"}

	// Another language for a source.
	msgFaultyStays = text{
		"{path} stays as it is: it has errors, and what they are about cannot be put into another language; ovillo check shows them",
		"{path} queda como está: tiene errores, y no se puede pasar a otro idioma lo que no se entiende; ovillo check los muestra"}
	msgNameTaken = text{
		"{path}, line {line}: the name \"{name}\" is a word of the language in {lang}; give the thing another name first",
		"{path}, línea {line}: el nombre «{name}» es una palabra del lenguaje en {lang}; dar antes otro nombre"}
	msgLineTaken = text{
		"{path}, line {line}: a name in this line would be read as a word of the language in {lang}; give the thing another name first",
		"{path}, línea {line}: un nombre de esta línea se leería como palabra del lenguaje en {lang}; dar antes otro nombre"}

	// Drawings.
	msgNoDrawings   = text{"{path} has nothing to draw in {size}", "{path} no tiene nada que dibujar en {size}"}
	msgNoDrawing    = text{"{path} has no drawing {name}; it has: {has}", "{path} no tiene el dibujo {name}; tiene: {has}"}
	msgNotInSize    = text{"{path}: there is nothing to draw for {name} in {size}", "{path}: en {size} no hay nada que dibujar para {name}"}
	msgWhichDrawing = text{
		"{path} is one file: say which drawing goes into it, or name a folder for all of them; {source} has: {has}",
		"{path} es un solo archivo: decir qué dibujo va en él, o dar una carpeta para todos; {source} tiene: {has}"}
	msgPictureKind    = text{"{path} must end in .svg or .png, or be a folder", "{path} debe acabar en .svg o .png, o ser una carpeta"}
	msgDrawingOutside = text{"the standard input has no name: give the drawings a place with -o", "la entrada estándar no tiene nombre: dar un lugar a los dibujos con -o"}
	msgOneOnOutput    = text{"only one sheet of SVG goes to the standard output; {name} has {n}", "por la salida estándar solo sale una hoja SVG; {name} tiene {n}"}
	msgNumberRange    = text{"{flag} is a number from {least} to {most}; not {value}", "{flag} es un número de {least} a {most}; {value} no"}
	msgDrawn          = text{"{path}: {what}, {wide} × {high} mm", "{path}: {what}, {wide} × {high} mm"}
	msgListed         = text{"{what}, {wide} × {high} mm", "{what}, {wide} × {high} mm"}
	msgListedSheets   = text{"{what}, {n} sheets", "{what}, {n} hojas"}
	msgTooSmall       = text{
		"{path}: on the screen of a phone its smallest letters are {n} px high; with --width 85 they can be read",
		"{path}: en la pantalla de un teléfono sus letras más pequeñas miden {n} px; con --width 85 se leen bien"}
	msgTooSmallStill = text{
		"{path}: on the screen of a phone its smallest letters are {n} px high; enlarge it there, or print it",
		"{path}: en la pantalla de un teléfono sus letras más pequeñas miden {n} px; ampliarlo allí, o imprimirlo"}
	whyTooManyDots = text{
		"it would have more than {most} million dots; --dpi {dpi} would do",
		"tendría más de {most} millones de puntos; con --dpi {dpi} cabe"}

	// The preview.
	msgHowToStop   = text{"open this address in a browser; Control+C stops the preview", "abrir esta dirección en un navegador; Control+C detiene la vista previa"}
	msgPortTaken   = text{"port {port} is taken; name another with --port, or leave it out", "el puerto {port} está ocupado; indicar otro con --port, o ninguno"}
	msgCannotServe = text{"the preview cannot be shown: {why}", "no se puede mostrar la vista previa: {why}"}
	msgNoStdinHere = text{"- (standard input) cannot be previewed; name a file", "la vista previa no puede mostrar - (la entrada estándar); indicar un archivo"}
	msgNoSources   = text{"the folder {path} has no pattern: no file whose name ends in .ovillo", "la carpeta {path} no tiene ningún patrón: ningún archivo cuyo nombre acabe en .ovillo"}
	// Two editions compared.
	msgNeedsTwo        = text{"two sources are needed, the old one and the new one", "hacen falta dos patrones: el anterior y el nuevo"}
	msgWriteNeedsNotes = text{"-w goes with --notes", "-w se usa con --notes"}
	msgWriteNeedsFile  = text{"-w writes into a file, and {path} is none", "-w escribe en un archivo, y {path} no lo es"}
	msgSameEdition     = text{
		"{path}: what is made has changed, but this is still edition {edition}; with a new number nobody takes one for the other",
		"{path}: cambia lo que se teje, pero sigue siendo la edición {edition}; con otro número nadie confunde la una con la otra"}
	msgNoEdition = text{
		"{path}: what is made has changed, but the pattern gives no edition; with a number nobody takes one for the other",
		"{path}: cambia lo que se teje, pero el patrón no dice qué edición es; con un número nadie confunde la una con la otra"}
	msgHasNotes = text{
		"{path} has notes on the edition already, in line {line}, and they are kept; without -w the new ones are printed, to be put in by hand",
		"{path} ya tiene notas de la edición, en la línea {line}, y se conservan; sin -w se muestran las nuevas, para ponerlas a mano"}
	msgNoNotes        = text{"{path}: nothing changed in what is made, so there is nothing to note", "{path}: nada cambia en lo que se teje, así que no hay nada que anotar"}
	msgNotesPut       = text{"{path}: notes on the edition put in, line {line}", "{path}: notas de la edición puestas, línea {line}"}
	msgNotesUnsound   = text{"{path}: the notes would not check there and were not put in", "{path}: las notas no pasarían la comprobación y no se pusieron"}
	whyNotRevision    = text{"a file of a revision is written git:REV:PATH, as in git:HEAD:hat.ovillo", "un archivo de una revisión se escribe git:REV:RUTA, como git:HEAD:gorro.ovillo"}
	whyNoGit          = text{"git is not installed here", "git no está instalado aquí"}
	whyNoRepository   = text{"this folder is in no repository of git", "esta carpeta no está en ningún repositorio de git"}
	whyNoSuchRevision = text{"the repository has no revision {rev}", "el repositorio no tiene la revisión {rev}"}
	whyNotInRevision  = text{"at the revision {rev} there is no file {path}", "en la revisión {rev} no hay ningún archivo {path}"}

	// Reading and writing.
	msgCannotRead   = text{"cannot read {path}: {why}", "no se puede leer {path}: {why}"}
	msgCannotWrite  = text{"cannot write {path}: {why}", "no se puede escribir {path}: {why}"}
	whyMissing      = text{"it does not exist", "no existe"}
	whyNoFolder     = text{"the folder {folder} does not exist", "la carpeta {folder} no existe"}
	whyNotAFolder   = text{"{folder} is not a folder", "{folder} no es una carpeta"}
	whyFolder       = text{"it is a folder", "es una carpeta"}
	whyForbidden    = text{"permission denied", "permiso denegado"}
	whyReadOnly     = text{"the disk is read-only", "el disco es de solo lectura"}
	whyFull         = text{"the disk is full", "el disco está lleno"}
	whyNotPlain     = text{"it is a pipe or a device, not an ordinary file", "es una tubería o un dispositivo, no un archivo corriente"}
	whyLeadsOut     = text{"it is a link that leads out of its folder", "es un enlace que sale de su carpeta"}
	whyLink         = text{"it is a link to {to}; name that file itself", "es un enlace a {to}; indicar ese archivo"}
	whyReadOnlyFile = text{"it is marked as read-only and is kept", "está marcado como de solo lectura y se conserva"}
	whyShut         = text{"you may not write in the folder {folder}", "no hay permiso para escribir en la carpeta {folder}"}
	whyOwner        = text{
		"it belongs to others, and the new one could not be given to them",
		"es de otras personas, y no se les pudo dar el nuevo"}
	whyChanged = text{
		"another program has saved it meanwhile, and what it holds now is kept; try again",
		"otro programa lo guardó entretanto y se conserva lo que tiene ahora; volver a intentarlo"}
	whyTwoNames = text{
		"it has a second name (a hard link), which would go on to lead to the old text; copy it first",
		"tiene un segundo nombre (un enlace físico), que seguiría llevando al texto antiguo; copiarlo antes"}
	whyTooBig   = text{"it is larger than this disk or this user is allowed", "ocupa más de lo que se permite en este disco o a este usuario"}
	whyTooLarge = text{"it is larger than {most} MB", "ocupa más de {most} MB"}
	whyNotText  = text{
		"the file there does not begin as this text does, so it is another one, and is kept",
		"el archivo que hay allí no empieza como este texto, así que es otro y se conserva"}
	whyNotData    = text{"the file there is not the JSON of a pattern and is kept", "el archivo que hay allí no es el JSON de un patrón y se conserva"}
	whyNotWeb     = text{"the file there is not a web page and is kept", "el archivo que hay allí no es una página web y se conserva"}
	whyNotPages   = text{"the file there is not a PDF and is kept", "el archivo que hay allí no es un PDF y se conserva"}
	whyNotPicture = text{"the file there is no {kind} and is kept", "el archivo que hay allí no es un {kind} y se conserva"}
	whyNoSign     = text{
		"the type has no sign {sign} ({number}), as in: {text}",
		"la tipografía no tiene el signo {sign} ({number}), como en: {text}"}
	whyLong = text{
		"they would be more than {most}; part the pattern, or say once what repeats",
		"serían más de {most}; conviene repartir el patrón o escribir una sola vez lo que se repite"}
	whySystem   = text{"the system says: {error}", "el sistema dice: {error}"}
	msgInternal = text{
		"internal fault while working on {path}, please report it; no file was written ({fault})",
		"fallo interno al tratar {path}; por favor, comunicarlo; no se escribió ningún archivo ({fault})"}

	// Sources, sizes and pages.
	msgAllWell = text{
		"{sizes}, {parts}: every row comes out",
		"{sizes}, {parts}: todas las hileras y vueltas cuadran"}
	msgBookWell   = text{"{patterns}: every row comes out", "{patterns}: todas las hileras y vueltas cuadran"}
	msgSharedWell = text{
		"holds what patterns share; it is checked in full with those that use it",
		"contiene lo que comparten varios patrones; se comprueba del todo con los que lo usan"}
	msgIsShared = text{
		"{path} holds what patterns share, and no pattern of its own; name a pattern that uses it",
		"{path} contiene lo que comparten varios patrones y no tiene ninguno propio; indicar un patrón que lo use"}
	msgIsBook       = text{"{path} is a book; name one of its patterns", "{path} es un libro; indicar uno de sus patrones"}
	msgBookFlag     = text{"{path} is a book, which cannot be made with {flag}", "{path} es un libro, que no se puede hacer con {flag}"}
	msgNothing      = text{"{path}: there is no part to work", "{path}: no hay ninguna pieza que tejer"}
	msgWrittenSigns = text{"{path}: {n} signs", "{path}: {n} signos"}
	msgStillLong    = text{
		"{path}: {n} signs are more than {most}; what is left is about safety and is never cut",
		"{path}: {n} signos son más de {most}; lo que queda trata de seguridad y no se recorta nunca"}
	msgWrittenSize   = text{"{path}: {n} kB", "{path}: {n} kB"}
	msgWritten       = text{"{path}: {pages}", "{path}: {pages}"}
	msgNoLanguage    = text{"no pages can be set in the language {lang}; known are: {known}", "no se pueden componer páginas en el idioma {lang}; se conocen: {known}"}
	msgEditions      = text{"Editions; several may be put together, with commas between them:", "Ediciones; se pueden juntar varias, separadas por comas:"}
	msgReadings      = text{"What TAG may be, in any case:", "Lo que puede ser TAG, en mayúsculas o minúsculas:"}
	msgAtLine        = text{"line {line}: {text}", "línea {line}: {text}"}
	msgMeant         = text{"meant: {why}", "a propósito: {why}"}
	msgLangTwice     = text{"--lang names {lang} twice", "--lang nombra {lang} dos veces"}
	msgLacksLanguage = text{
		"{path} is not written in {lang}; its languages are: {has}",
		"{path} no está escrito en {lang}; sus idiomas son: {has}"}
	msgNoSize           = text{"{path} has no size {size}; its sizes are: {has}", "{path} no tiene la talla {size}; sus tallas son: {has}"}
	msgCannotSet        = text{"the pages of {path} cannot be set: {why}", "no se pueden componer las páginas de {path}: {why}"}
	msgOneOutput        = text{"{path} is no folder, and several sources cannot go into one file", "{path} no es una carpeta, y varios patrones no caben en un archivo"}
	msgSameOutput       = text{"{one} and {other} would both become {path}", "{one} y {other} irían los dos a {path}"}
	msgStdinNeedsOutput = text{"the standard input has no name: give the PDF one with -o FILE.pdf", "la entrada estándar no tiene nombre: dar uno al PDF con -o ARCHIVO.pdf"}
)

// noun is a word in the singular and the plural.
type noun struct{ one, other text }

var (
	nounSize    = noun{text{"1 size", "1 talla"}, text{"{n} sizes", "{n} tallas"}}
	nounPart    = noun{text{"1 part", "1 pieza"}, text{"{n} parts", "{n} piezas"}}
	nounPattern = noun{text{"1 pattern", "1 patrón"}, text{"{n} patterns", "{n} patrones"}}
	nounPage    = noun{text{"1 page", "1 página"}, text{"{n} pages", "{n} páginas"}}
)

// count says how many of a thing there are.
func (n noun) count(k int, lang string) string {
	if k == 1 {
		return n.one.in(lang)
	}
	return n.other.with("n", strconv.Itoa(k)).in(lang)
}
