package draw

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// languages are those that drawings are described in.
var languages = []string{"en", "es"}

// wording is what a language says about drawings, for those who do not see them.
type wording struct {
	comma string // decimal sign
	and   string

	here, hereAll, hereOne string

	schematic, flat, title, line string
	tube, sheet, dome, disc      string
	measure, half                string
	down, up, outward            string
	legs, sleeves, branch        string
	onEdge, empty                string
	yarn, ribs                   string
	bars, dots, dashes           string
	motifs, motifRows            string
	mosaic, border, motifSide    string
	chart, chartGrid             string
}

// looks names the mark of a yarn; the ground has none.
func (w wording) looks(m mark) string {
	return [...]string{lineMark: "", barMark: w.bars, dotMark: w.dots, dashMark: w.dashes}[m]
}

var english = wording{
	comma: ".", and: " and ",
	here:      "Where you are: %s",
	hereAll:   "A small drawing of the whole piece.",
	hereOne:   "A small drawing of the piece; solid: %s.",
	schematic: "Schematic: %s",
	flat:      "Size %s, to scale, laid flat.",
	title:     "Drawing: %s",
	line:      "Size %s, drawn from the pattern: one line is one row or round.",
	tube:      "%s: a tube %s cm wide laid flat at its start, %s cm at its end, %s cm long.",
	sheet:     "%s: a flat piece %s cm wide at its start, %s cm at its end, %s cm long.",
	dome:      "%s: closed at one end, %s cm wide laid flat at its widest, %s cm long.",
	disc:      "%s: rounds seen from above, %s cm from edge to edge.",
	measure:   "%s: %s, %s cm.",
	half:      "%s: %s, %s cm; the line shows half.",
	down:      "Worked from the top down.",
	up:        "Worked from the bottom up.",
	outward:   "Worked from the middle outwards.",
	legs:      "Two legs hang side by side.",
	sleeves:   "Sleeves hang at both sides.",
	branch:    "A smaller tube stands out at one side.",
	onEdge:    "%s goes round its edge.",
	empty:     "Nothing has been worked in this size.",
	yarn:      "Rows mostly of %s are drawn as %s.",
	ribs:      "Ribs are upright strokes.",
	bars:      "bars", dots: "dots", dashes: "short bars",
	mosaic:    "%d squares, %d across and %d down, seen from the right side.",
	border:    "%s goes round them.",
	motifSide: "Each is %s cm square.",
	motifs:    "Layout of the motifs: %s",
	motifRows: "Size %s: squares numbered row by row from the top left, %d across and %d down.",
	chart:     "Chart: %s",
	chartGrid: "%d cells wide and %d rows high, row 1 at the bottom; each row is written out where it is worked.",
}

var spanish = wording{
	comma: ",", and: " y ",
	here:      "Dónde estamos: %s",
	hereAll:   "Dibujo pequeño de la labor entera.",
	hereOne:   "Dibujo pequeño de la labor; en negro: %s.",
	schematic: "Esquema: %s",
	flat:      "Talla %s, a escala, en plano.",
	title:     "Dibujo: %s",
	line:      "Talla %s, dibujada a partir del patrón: cada línea es una hilera o vuelta.",
	tube:      "%s: tubo de %s cm de ancho en plano al principio, %s cm al final y %s cm de largo.",
	sheet:     "%s: pieza plana de %s cm de ancho al principio, %s cm al final y %s cm de largo.",
	dome:      "%s: cerrada por un extremo, %s cm de ancho máximo en plano y %s cm de largo.",
	disc:      "%s: vueltas vistas desde arriba, %s cm de borde a borde.",
	measure:   "%s: %s, %s cm.",
	half:      "%s: %s, %s cm; la línea muestra la mitad.",
	down:      "Se teje de arriba abajo.",
	up:        "Se teje de abajo arriba.",
	outward:   "Se teje del centro hacia fuera.",
	legs:      "Dos piernas cuelgan una al lado de la otra.",
	sleeves:   "A los dos lados cuelgan mangas.",
	branch:    "Un tubo más pequeño sale por un lado.",
	onEdge:    "%s rodea su borde.",
	empty:     "En esta talla no hay nada tejido.",
	yarn:      "Las hileras o vueltas sobre todo en %s se dibujan como %s.",
	ribs:      "El elástico se dibuja con trazos verticales.",
	bars:      "barras", dots: "puntos", dashes: "barras cortas",
	mosaic:    "%d cuadros, %d a lo ancho y %d a lo largo, vistos por el derecho.",
	border:    "%s los rodea.",
	motifSide: "Cada uno mide %s cm de lado.",
	motifs:    "Disposición de los motivos: %s",
	motifRows: "Talla %s: cuadros numerados fila por fila desde arriba a la izquierda, %d a lo ancho y %d a lo largo.",
	chart:     "Diagrama: %s",
	chartGrid: "%d casillas de ancho y %d hileras de alto, la hilera 1 abajo; cada hilera está escrita donde se teje.",
}

// speech is a language: its names of things, and what it says of drawings.
type speech struct {
	*words.Language
	wording
}

// speak gives the speech of each language that drawings are described in, by its code.
func speak() map[string]speech {
	all := map[string]speech{}
	for code, w := range map[string]wording{"en": english, "es": spanish} {
		// The codes are ours, and a test sees that words knows them.
		if l, err := words.For(code); err == nil {
			all[code] = speech{l, w}
		}
	}
	return all
}

// sizeOf is the name of the size that is drawn.
func (w speech) sizeOf(p *plan.Pattern) string {
	if p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return ""
	}
	return w.SizeName(p.Sizes[p.Shown])
}

// cm writes a length with one decimal at most.
func (w wording) cm(v float64) string {
	s := strconv.FormatFloat(v, 'f', 1, 64)
	s = strings.TrimSuffix(s, ".0")
	return strings.Replace(s, ".", w.comma, 1)
}
