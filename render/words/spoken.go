package words

import "strings"

// mostSpoken is the largest number that is written in words; beyond it figures are as easily said.
const mostSpoken = 9999

var (
	englishUnits = strings.Fields("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen")
	englishTens  = strings.Fields("- - twenty thirty forty fifty sixty seventy eighty ninety")
)

// englishNumber is a number as it is said; and: between hundreds and what follows, as the British do.
func englishNumber(n int, and bool) string {
	if n < 0 || n > mostSpoken {
		return ""
	}
	behind := func(rest int, before string) string {
		switch {
		case rest == 0:
			return before
		case and && rest < 100:
			return before + " and " + englishNumber(rest, and)
		}
		return before + " " + englishNumber(rest, and)
	}
	switch {
	case n < 20:
		return englishUnits[n]
	case n < 100 && n%10 == 0:
		return englishTens[n/10]
	case n < 100:
		return englishTens[n/10] + "-" + englishUnits[n%10]
	case n < 1000:
		return behind(n%100, englishUnits[n/100]+" hundred")
	}
	return behind(n%1000, englishUnits[n/1000]+" thousand")
}

var (
	spanishUnits = strings.Fields("cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve " +
		"veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve")
	spanishTens     = strings.Fields("- - - treinta cuarenta cincuenta sesenta setenta ochenta noventa")
	spanishHundreds = strings.Fields("- ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos")
)

// spanishNumber is a number as it is said before a noun: veintiún puntos, doscientas una cadenas.
func spanishNumber(n int, feminine bool) string {
	if n < 0 || n > mostSpoken {
		return ""
	}
	switch {
	case n < 30:
		word := spanishUnits[n]
		switch {
		case n%10 == 1 && n != 11 && feminine:
			word = strings.TrimSuffix(word, "uno") + "una"
		case n == 21:
			word = "veintiún"
		case n == 1:
			word = "un"
		}
		return word
	case n < 100 && n%10 == 0:
		return spanishTens[n/10]
	case n < 100:
		return spanishTens[n/10] + " y " + spanishNumber(n%10, feminine)
	case n == 100:
		return "cien"
	case n < 1000:
		word := spanishHundreds[n/100]
		if feminine && n >= 200 {
			word = strings.TrimSuffix(word, "os") + "as"
		}
		if n%100 == 0 {
			return word
		}
		return word + " " + spanishNumber(n%100, feminine)
	}
	word := "mil"
	if n >= 2000 {
		word = spanishNumber(n/1000, false) + " mil"
	}
	if n%1000 == 0 {
		return word
	}
	return word + " " + spanishNumber(n%1000, feminine)
}
