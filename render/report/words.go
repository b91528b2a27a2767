package report

import (
	"strconv"
	"strings"
)

// text is something the report says, in each language. {name} is a hole.
type text struct{ en, es string }

func (t text) in(lang string) string {
	if lang == "es" {
		return t.es
	}
	return t.en
}

// with fills the holes of a text in a language: name, value, name, value …
func (t text) with(lang string, pairs ...string) string {
	filled := make([]string, len(pairs))
	for i, p := range pairs {
		if filled[i] = p; i%2 == 0 {
			filled[i] = "{" + p + "}"
		}
	}
	return strings.NewReplacer(filled...).Replace(t.in(lang))
}

// noun is what is counted.
type noun struct{ one, other text }

// amount is so much of something that was looked at.
type amount struct {
	n  int
	of noun
}

func (a amount) in(s *subject) string { return s.number(a.n) + " " + a.of.word(a.n).in(s.in.Lang) }

// word is the noun for a number of things.
func (n noun) word(k int) text {
	if k == 1 {
		return n.one
	}
	return n.other
}

// count says how many of a thing there are.
func (n noun) count(k int, lang string) string { return strconv.Itoa(k) + " " + n.word(k).in(lang) }

// The things that are counted.
var (
	nLines         = noun{text{"line", "línea"}, text{"lines", "líneas"}}
	nSizes         = noun{text{"size", "talla"}, text{"sizes", "tallas"}}
	nParts         = noun{text{"part", "pieza"}, text{"parts", "piezas"}}
	nRows          = noun{text{"row", "hilera"}, text{"rows", "hileras"}}
	nRounds        = noun{text{"round", "vuelta"}, text{"rounds", "vueltas"}}
	nPlaces        = noun{text{"place worked into", "lugar tejido"}, text{"places worked into", "lugares tejidos"}}
	nStated        = noun{text{"count stated in the source", "cuenta indicada en el patrón"}, text{"counts stated in the source", "cuentas indicadas en el patrón"}}
	nPrintedCounts = noun{text{"step with its count", "paso con su cuenta"}, text{"steps with their counts", "pasos con su cuenta"}}
	nStitchNames   = noun{text{"stitch name", "nombre de punto"}, text{"stitch names", "nombres de puntos"}}
	nYarns         = noun{text{"yarn", "hilo"}, text{"yarns", "hilos"}}
	nAmounts       = noun{text{"amount of yarn", "cantidad de hilo"}, text{"amounts of yarn", "cantidades de hilo"}}
	nSteps         = noun{text{"step from a size to the next", "paso de una talla a la siguiente"}, text{"steps from a size to the next", "pasos de una talla a la siguiente"}}
	nHooks         = noun{text{"hook", "ganchillo"}, text{"hooks", "ganchillos"}}
	nTools         = noun{text{"tool", "herramienta"}, text{"tools", "herramientas"}}
	nNotions       = noun{text{"notion", "accesorio"}, text{"notions", "accesorios"}}
	nGauges        = noun{text{"gauge", "muestra"}, text{"gauges", "muestras"}}
	nMeasures      = noun{text{"measurement", "medida"}, text{"measurements", "medidas"}}
	nFigures       = noun{text{"figure", "cifra"}, text{"figures", "cifras"}}
	nRounded       = noun{text{"length made into a count", "longitud convertida en puntos o hileras"}, text{"lengths made into counts", "longitudes convertidas en puntos o hileras"}}
	nSums          = noun{text{"sum of lengths", "suma de longitudes"}, text{"sums of lengths", "sumas de longitudes"}}
	nLists         = noun{text{"list of sizes", "lista de tallas"}, text{"lists of sizes", "listas de tallas"}}
	nOnly          = noun{text{"passage for some sizes alone", "pasaje para algunas tallas"}, text{"passages for some sizes alone", "pasajes para algunas tallas"}}
	nByHand        = noun{text{"number set by hand", "número puesto a mano"}, text{"numbers set by hand", "números puestos a mano"}}
	nStarts        = noun{text{"start on chains, stitches or a ring", "comienzo con cadenas, puntos o anillo"}, text{"starts on chains, stitches or a ring", "comienzos con cadenetas, puntos o anillo"}}
	nRepeats       = noun{text{"repeat", "repetición"}, text{"repeats", "repeticiones"}}
	nGroups        = noun{text{"group in one place", "grupo en un mismo lugar"}, text{"groups in one place", "grupos en un mismo lugar"}}
	nChanges       = noun{text{"change in the number of stitches", "cambio en el número de puntos"}, text{"changes in the number of stitches", "cambios en el número de puntos"}}
	nSchedules     = noun{text{"schedule of shaping", "plan de aumentos o disminuciones"}, text{"schedules of shaping", "planes de aumentos o disminuciones"}}
	nBegins        = noun{text{"beginning chain", "cadena inicial"}, text{"beginning chains", "cadenas iniciales"}}
	nJoins         = noun{text{"run taken up or left", "tramo retomado o dejado"}, text{"runs taken up or left", "tramos retomados o dejados"}}
	nEdges         = noun{text{"edge along row ends", "borde de hileras"}, text{"edges along row ends", "bordes de hileras"}}
	nSeams         = noun{text{"seam", "costura"}, text{"seams", "costuras"}}
	nMirrors       = noun{text{"mirrored part", "pieza simétrica"}, text{"mirrored parts", "piezas simétricas"}}
	nMarkers       = noun{text{"marker", "marcador"}, text{"markers", "marcadores"}}
	nNamedPlaces   = noun{text{"place reached in another way than in order", "lugar al que se llega fuera del orden"}, text{"places reached in another way than in order", "lugares a los que se llega fuera del orden"}}
	nAbbreviations = noun{text{"abbreviation", "abreviatura"}, text{"abbreviations", "abreviaturas"}}
	nOwn           = noun{text{"stitch of the designer's own", "punto propio"}, text{"stitches of the designer's own", "puntos propios"}}
	nWorked        = noun{text{"instruction with a number of stitches or places", "instrucción con un número de puntos o lugares"}, text{"instructions with a number of stitches or places", "instrucciones con un número de puntos o lugares"}}
	nReferences    = noun{text{"reference", "referencia"}, text{"references", "referencias"}}
	nFinishing     = noun{text{"step of the finishing", "paso del acabado"}, text{"steps of the finishing", "pasos del acabado"}}
	nCharts        = noun{text{"chart", "gráfico"}, text{"charts", "gráficos"}}
	nChartRows     = noun{text{"row of a chart", "hilera de un gráfico"}, text{"rows of charts", "hileras de gráficos"}}
	nLettered      = noun{text{"measurement on the drawing", "medida en el dibujo"}, text{"measurements on the drawing", "medidas en el dibujo"}}
	nEditions      = noun{text{"layout", "composición"}, text{"layouts", "composiciones"}}
	nPages         = noun{text{"page", "página"}, text{"pages", "páginas"}}
	nPassages      = noun{text{"passage of the pages", "texto de las páginas"}, text{"passages of the pages", "textos de las páginas"}}
	nStepsPrinted  = noun{text{"printed step", "paso impreso"}, text{"printed steps", "pasos impresos"}}
	nPictures      = noun{text{"picture", "imagen"}, text{"pictures", "imágenes"}}
	nCautions      = noun{text{"caution", "precaución"}, text{"cautions", "precauciones"}}
	nTexts         = noun{text{"text in each language", "texto en cada idioma"}, text{"texts in each language", "textos en cada idioma"}}
	nSidedRows     = noun{text{"row or round whose side is known", "hilera o vuelta de lado conocido"}, text{"rows and rounds whose side is known", "hileras y vueltas de lado conocido"}}
)
