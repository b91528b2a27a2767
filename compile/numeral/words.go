package numeral

// language is how a language writes its numbers.
type language struct {
	words  map[string]int   // added up: twenty, two
	times  map[string]int   // multiply what stands before them: hundred, thousand
	and    map[string]bool  // may join two words of a number
	loose  map[string][]Rat // words that may stand for a number and need not
	point  byte             // the usual decimal sign; the other one groups thousands
	suffix map[string]bool  // of ordinals behind a figure
}

var (
	half, quarter, third = Rat{1, 2}, Rat{1, 4}, Rat{1, 3}
)

func whole(n int) Rat { return Rat{n, 1} }

// languages are those that prose is compared in. Articles (un, una, a) and words that also mean something else (once, second,
// may, half) are loose: they answer a number of the other language, and are never missed in it.
var languages = map[string]*language{
	"en": {
		point: '.',
		words: map[string]int{
			"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11, "twelve": 12,
			"thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
			"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
		},
		times:  map[string]int{"hundred": 100, "thousand": 1000},
		and:    map[string]bool{"and": true},
		suffix: map[string]bool{"st": true, "nd": true, "rd": true, "th": true},
		loose: map[string][]Rat{
			"one": {whole(1)}, "a": {whole(1)}, "an": {whole(1)}, "single": {whole(1)}, "once": {whole(1)}, "first": {whole(1)}, "only": {whole(1)},
			"both": {whole(2)}, "pair": {whole(2)}, "pairs": {whole(2)}, "twice": {whole(2)}, "double": {whole(2)}, "second": {whole(2)}, "either": {whole(2)},
			"other": {whole(2)}, "every": {whole(1)}, "each": {whole(1)}, "another": {whole(1)},
			"thrice": {whole(3)}, "triple": {whole(3)}, "third": {whole(3), third}, "thirds": {third}, "fourth": {whole(4), quarter}, "fifth": {whole(5)},
			"sixth": {whole(6)}, "seventh": {whole(7)}, "eighth": {whole(8)}, "ninth": {whole(9)}, "tenth": {whole(10)},
			"dozen": {whole(12)}, "half": {half}, "halves": {half}, "quarter": {quarter}, "quarters": {quarter}, "none": {whole(0)}, "no": {whole(0)}, "zero": {whole(0)},
			"january": {whole(1)}, "february": {whole(2)}, "march": {whole(3)}, "april": {whole(4)}, "may": {whole(5)}, "june": {whole(6)}, "july": {whole(7)},
			"august": {whole(8)}, "september": {whole(9)}, "october": {whole(10)}, "november": {whole(11)}, "december": {whole(12)},
		},
	},
	"es": {
		point: ',',
		words: map[string]int{
			"dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13,
			"catorce": 14, "quince": 15, "dieciséis": 16, "diecisiete": 17, "dieciocho": 18, "diecinueve": 19, "veinte": 20, "veintiún": 21,
			"veintiuno": 21, "veintiuna": 21, "veintidós": 22, "veintitrés": 23, "veinticuatro": 24, "veinticinco": 25, "veintiséis": 26,
			"veintisiete": 27, "veintiocho": 28, "veintinueve": 29, "treinta": 30, "cuarenta": 40, "cincuenta": 50, "sesenta": 60, "setenta": 70,
			"ochenta": 80, "noventa": 90, "cien": 100, "ciento": 100, "doscientos": 200, "doscientas": 200, "trescientos": 300, "trescientas": 300,
			"cuatrocientos": 400, "cuatrocientas": 400, "quinientos": 500, "quinientas": 500,
		},
		times: map[string]int{"mil": 1000},
		and:   map[string]bool{"y": true},
		// 2.ª, 3.er and what is also written: 2ª, 3er.
		suffix: map[string]bool{"ª": true, "º": true, "er": true, "a": true, "o": true, "as": true, "os": true, "ro": true, "do": true, "ra": true, "da": true, "to": true, "ta": true},
		loose: map[string][]Rat{
			"un": {whole(1)}, "una": {whole(1)}, "uno": {whole(1)}, "única": {whole(1)}, "único": {whole(1)}, "sola": {whole(1)}, "solo": {whole(1)},
			"primer": {whole(1)}, "primera": {whole(1)}, "primero": {whole(1)}, "primeros": {whole(1)}, "primeras": {whole(1)}, "cada": {whole(1)},
			"otra": {whole(1), whole(2)}, "otro": {whole(1), whole(2)},
			"ambos": {whole(2)}, "ambas": {whole(2)}, "par": {whole(2)}, "pares": {whole(2)}, "doble": {whole(2)}, "dobles": {whole(2)}, "segundo": {whole(2)}, "segunda": {whole(2)},
			"triple": {whole(3)}, "tercer": {whole(3)}, "tercera": {whole(3)}, "tercero": {whole(3)}, "tercio": {third}, "tercios": {third},
			"cuarto": {whole(4), quarter}, "cuarta": {whole(4), quarter}, "cuartos": {quarter}, "quinto": {whole(5)}, "quinta": {whole(5)}, "sexto": {whole(6)},
			"sexta": {whole(6)}, "séptima": {whole(7)}, "séptimo": {whole(7)}, "octava": {whole(8)}, "octavo": {whole(8)}, "novena": {whole(9)},
			"noveno": {whole(9)}, "décima": {whole(10)}, "décimo": {whole(10)}, "docena": {whole(12)}, "docenas": {whole(12)},
			"medio": {half}, "media": {half}, "medios": {half}, "medias": {half}, "mitad": {half}, "mitades": {half},
			"ningún": {whole(0)}, "ninguna": {whole(0)}, "ninguno": {whole(0)}, "cero": {whole(0)}, "sin": {whole(0)},
			"enero": {whole(1)}, "febrero": {whole(2)}, "marzo": {whole(3)}, "abril": {whole(4)}, "mayo": {whole(5)}, "junio": {whole(6)}, "julio": {whole(7)},
			"agosto": {whole(8)}, "septiembre": {whole(9)}, "setiembre": {whole(9)}, "octubre": {whole(10)}, "noviembre": {whole(11)}, "diciembre": {whole(12)},
		},
	},
}
