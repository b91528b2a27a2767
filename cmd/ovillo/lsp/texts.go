package lsp

import "strings"

// This file holds what the server itself says. What it says about a source stands in the catalogue of lang/diag.

// said is something that the server says, in each language of the messages. {name} is a hole.
type said struct{ en, es string }

// say fills the holes of a text: name, value, name, value …
func (s *server) say(w said, pairs ...string) string {
	text := w.en
	if s.options.Lang == "es" {
		text = w.es
	}
	for i := 0; i+1 < len(pairs); i += 2 {
		text = strings.ReplaceAll(text, "{"+pairs[i]+"}", pairs[i+1])
	}
	return text
}

var (
	// What stands under the pointer.
	msgSize      = said{"size", "talla"}
	msgWorth     = said{"value", "valor"}
	msgRows      = said{"rows", "hileras o vueltas"}
	msgStitches  = said{"stitches", "puntos"}
	msgSpaces    = said{"spaces", "espacios"}
	msgPlaces    = said{"places", "lugares"}
	msgOfPart    = said{" of {part}", " de {part}"}
	msgSetAt     = said{"Set in line {line}:", "Definido en la línea {line}:"}
	msgSetIn     = said{"Set in {file}, line {line}:", "Definido en {file}, línea {line}:"}
	msgPrintedAs = said{"In print:", "En las páginas:"}
	msgAsBefore  = said{"(As it was before the source could not be read any more.)", "(Como estaba antes de que el patrón dejara de entenderse.)"}

	// Changes that are offered.
	msgPut     = said{"put in {new}", "añadir {new}"}
	msgReplace = said{"write {new} in place of {old}", "poner {new} en lugar de {old}"}
	msgBlank   = said{"put in a blank", "añadir un espacio"}

	// Renaming.
	msgNoName      = said{"there is no name here that could be changed", "aquí no hay ningún nombre que se pueda cambiar"}
	msgFixedName   = said{"{name} is the name of a measure, which ovillo knows and the pages print", "{name} es el nombre de una medida, que ovillo conoce y las páginas imprimen"}
	msgNotSet      = said{"{name} is not set in this source", "{name} no se define en este patrón"}
	msgShared      = said{"{name} stands in {file} as well, which other patterns may use: it can be changed by hand alone", "{name} figura también en {file}, que quizá usen otros patrones: solo se puede cambiar a mano"}
	msgNoNameForm  = said{"a name is one word of letters, digits and _, and begins with a letter: {name} is not", "un nombre es una palabra de letras, cifras y _ que empieza por letra: {name} no lo es"}
	msgWordOfOurs  = said{"{name} is a word of the language", "{name} es una palabra del lenguaje"}
	msgStitchWord  = said{"{name} is the name of a stitch", "{name} es el nombre de un punto"}
	msgTakenName   = said{"{name} is the name of something else (line {line})", "{name} ya es el nombre de otra cosa (línea {line})"}
	msgUnlikeAfter = said{"with the name {name} the source would say something else", "con el nombre {name}, el patrón diría otra cosa"}
)

// shapings are the words that stand for a stitch that the part names.
var shapings = map[string]said{
	"inc": {"increase: two stitches of the part's base in one place", "aumento: dos puntos de la base de la pieza en un mismo lugar"},
	"dec": {"decrease: two places drawn together with the part's base stitch", "disminución: dos lugares cerrados juntos con el punto base de la pieza"},
}
