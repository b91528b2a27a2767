package figure

import (
	"strconv"
	"strings"

	"ovillo/compile/plan"
)

// cm writes a length in centimetres to a tenth of a millimetre, without needless zeros. The decimal sign is a point; the
// printer of messages puts in that of the language.
func cm(l plan.Length) string {
	sign := ""
	if l < 0 {
		sign, l = "-", -l
	}
	hundredths := (int64(l) + 50) / 100
	whole, part := hundredths/100, hundredths%100
	text := strconv.FormatInt(whole, 10)
	if part != 0 {
		text += "." + strings.TrimRight(strconv.FormatInt(100+part, 10)[1:], "0")
	}
	if text == "0" {
		sign = ""
	}
	return sign + text
}

// QuarterInches is a length in quarters of an inch, the nearest, halves away from zero: the step in which American
// patterns print (common practice, no source).
func QuarterInches(l plan.Length) int {
	const quarter = plan.Inch / 4
	if l < 0 {
		return -QuarterInches(-l)
	}
	return int((l + quarter/2) / quarter)
}

// Inches writes a length in inches to the nearest quarter: 19 3/4.
func Inches(l plan.Length) string {
	q := QuarterInches(l)
	sign := ""
	if q < 0 {
		sign, q = "-", -q
	}
	part := [...]string{"", "1/4", "1/2", "3/4"}[q%4]
	switch {
	case part == "":
		return sign + strconv.Itoa(q/4)
	case q < 4:
		return sign + part
	}
	return sign + strconv.Itoa(q/4) + " " + part
}

// Letter is the letter of measure number i from 0 on, as a drawing shows it: A to Z, then AA, AB and so on.
func Letter(i int) string {
	if i < 0 {
		return ""
	}
	const letters = 26
	s := ""
	for i++; i > 0; i = (i - 1) / letters {
		s = string(rune('A'+(i-1)%letters)) + s
	}
	return s
}
