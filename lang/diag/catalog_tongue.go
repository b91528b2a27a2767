package diag

import "strings"

// tongues are messages about the language that a source is written in.
func tongues() []Entry {
	return []Entry{
		{Code: "OV159", Severity: Error,
			En: Wording{
				Message: `“{word}” is English, and this source is written in another language`,
				Mark:    `an English word`,
				Help:    map[string]string{"": `write {={right}}`},
				Explain: `The first line of a source says in which language its words are. One source is written in one language, so that who reads it
has to know but one. “ovillo fmt --to” turns a whole source from one language into the other.`},
			Es: Wording{
				Message: `«{word}» es inglés, y este patrón está escrito en otro idioma`,
				Mark:    `una palabra en inglés`,
				Help:    map[string]string{"": `escribir {={right}}`},
				Explain: `La primera línea de un patrón dice en qué idioma están sus palabras. Un patrón se escribe en un solo idioma, para que quien
lo lea solo tenga que saber uno. «ovillo fmt --to» pasa un patrón entero de un idioma al otro.`},
			Example: spanishBand("vuelta: pb in cada"),
			Fixed:   spanishBand("vuelta: pb en cada")},

		{Code: "OV160", Severity: Error,
			En: Wording{
				Message: `no source can be written in the language that this line names`,
				Mark:    `not among those known`,
				Help:    map[string]string{"": `the tags that can stand here: {known|or}; without this line a source is in English`},
				Explain: `The first line may say that a source is not in English. The tag names the language, and the country whose names of stitches
it uses: es is neutral Spanish, es-MX that of Mexico.`},
			Es: Wording{
				Message: `no se puede escribir un patrón en el idioma que nombra esta línea`,
				Mark:    `no está entre los conocidos`,
				Help:    map[string]string{"": `las etiquetas que pueden ir aquí: {known|or}; sin esta línea, el patrón está en inglés`},
				Explain: `La primera línea puede decir que el patrón no está en inglés. La etiqueta nombra el idioma y el país cuyos nombres de puntos
usa: es es el español neutro; es-MX, el de México.`},
			Example: strings.Replace(spanishBand("vuelta: pb en cada"), "idioma es", "idioma es-XX", 1),
			Fixed:   spanishBand("vuelta: pb en cada")},
	}
}

// spanishBand is a small source in Spanish with some lines at its end.
func spanishBand(lines string) string {
	return `idioma es

patrón prueba
  términos us
fin
tallas "única"
fin
pieza banda
  en vueltas cerradas
  cadena 20, unir
  ` + lines + `
  rematar
fin
`
}
