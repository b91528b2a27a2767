package lang

import "strings"

// The words of the language are English whatever language a pattern is published in. Who writes one in Spanish is told
// the English one.
var spanishWords = func() map[string]string {
	m := map[string]string{}
	for _, row := range []struct{ english, spanish string }{
		{"pattern", "patrón"},
		{"title", "título"},
		{"by", "por autora autor diseñadora diseñador"},
		{"edition", "edición"},
		{"level", "nivel dificultad"},
		{"terms", "términos"},
		{"languages", "idioma idiomas lenguas"},
		{"kind", "tipo clase"},
		{"intro", "introducción presentación"},
		{"licence", "licencia"},
		{"changes", "cambios"},
		{"sizes", "talla tallas tamaño tamaños"},
		{"names", "nombres"},
		{"age", "edad edades"},
		{"fit", "cuerpo ajuste"},
		{"shown", "mostrada fotografiada"},
		{"gauge", "muestra tensión"},
		{"hook", "ganchillo aguja"},
		{"yarn", "hilo hilos lana"},
		{"name", "nombre"},
		{"weight", "peso grosor"},
		{"fibre", "fibra composición"},
		{"ball", "madeja"},
		{"swatch", "muestrario"},
		{"let", "sea"},
		{"group", "grupo"},
		{"stitch", "punto"},
		{"takes", "toma ocupa"},
		{"abbr", "abreviatura"},
		{"chart", "gráfico esquema diagrama"},
		{"legend", "leyenda"},
		{"part", "parte pieza"},
		{"call", "llamar"},
		{"begin", "comenzar"},
		{"make", "hacer"},
		{"chain", "cadeneta cadenetas cadena"},
		{"foundation", "montaje"},
		{"ring", "anillo"},
		{"start", "empezar inicio"},
		{"from", "desde"},
		{"count", "contar"},
		{"close", "cerrar"},
		{"fasten", "rematar"},
		{"repeat", "repetir"},
		{"only", "solo"},
		{"row", "hilera fila carrera"},
		{"rows", "hileras filas carreras"},
		{"round", "vuelta ronda"},
		{"rounds", "vueltas rondas"},
		{"work", "tejer"},
		{"note", "nota"},
		{"step", "paso"},
		{"care", "cuidado cuidados"},
		{"finish", "acabado acabados terminación"},
		{"sew", "coser"},
		{"cord", "cordón"},
		{"pompom", "pompón"},
		{"button", "botón botones"},
		{"block", "bloquear"},
		{"measure", "medida medidas"},
		{"end", "fin final"},
	} {
		for _, w := range strings.Fields(row.spanish) {
			m[plainLetters(w)] = row.english
		}
	}
	return m
}()

// shortWords are short forms of printed patterns for words that are written in full.
var shortWords = map[string]string{"rnd": "round", "rnds": "rounds", "rd": "round", "rds": "rounds", "rep": "repeat"}

// englishFor gives the word of the language for a Spanish one, written with or without accents; "" if there is none.
func englishFor(word string) string { return spanishWords[plainLetters(word)] }
