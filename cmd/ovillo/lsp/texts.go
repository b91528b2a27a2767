package lsp

import "strings"

// This file holds what the server itself says. What it says about a source stands in the catalogue of lang/diag.

// words is something that the server says, in each language of the messages. {name} is a hole.
type words struct{ en, es string }

// say fills the holes of a text: name, value, name, value …
func (s *server) say(w words, pairs ...string) string {
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
	// Renaming.
	msgNoName      = words{"there is no name here that could be changed", "aquí no hay ningún nombre que se pueda cambiar"}
	msgFixedName   = words{"{name} is the name of a measure, which ovillo knows and the pages print", "{name} es el nombre de una medida, que ovillo conoce y las páginas imprimen"}
	msgNotSet      = words{"{name} is not set in this source", "{name} no se define en este patrón"}
	msgNoNameForm  = words{"a name is one word of letters, digits and _, and begins with a letter: {name} is not", "un nombre es una palabra de letras, cifras y _ que empieza por letra: {name} no lo es"}
	msgWordOfOurs  = words{"{name} is a word of the language", "{name} es una palabra del lenguaje"}
	msgStitchWord  = words{"{name} is the name of a stitch", "{name} es el nombre de un punto"}
	msgTakenName   = words{"{name} is the name of something else (line {line})", "{name} ya es el nombre de otra cosa (línea {line})"}
	msgUnlikeAfter = words{"with the name {name} the source would say something else", "con el nombre {name}, el patrón diría otra cosa"}
)
