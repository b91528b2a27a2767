package pdf

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode/utf16"
)

// point is the number of points in a millimetre.
const point = 72 / 25.4

// appendNumber writes a number with up to three decimals, which is a third of a micrometre for lengths in points.
func appendNumber(b []byte, v float64) []byte {
	n := int64(math.Round(v * 1000))
	if n < 0 {
		b = append(b, '-')
		n = -n
	}
	b = strconv.AppendInt(b, n/1000, 10)
	f := n % 1000
	if f == 0 {
		return b
	}
	b = append(b, '.', byte('0'+f/100))
	if f %= 100; f != 0 {
		b = append(b, byte('0'+f/10))
		if f %= 10; f != 0 {
			b = append(b, byte('0'+f))
		}
	}
	return b
}

func number(v float64) string { return string(appendNumber(nil, v)) }

// rectangle writes the corners of a rectangle given in millimetres from the top left of a sheet h points high.
func rectangle(x, y, width, height, h float64) string {
	return fmt.Sprintf("[%s %s %s %s]", number(x*point), number(h-(y+height)*point), number((x+width)*point), number(h-y*point))
}

// textString writes a text for readers: plain if it is ASCII, else as UTF-16.
func textString(s string) string {
	if isPlain(s) {
		return byteString(s)
	}
	var b strings.Builder
	b.WriteString("<FEFF")
	for _, u := range utf16.Encode([]rune(s)) {
		fmt.Fprintf(&b, "%04X", u)
	}
	b.WriteByte('>')
	return b.String()
}

func isPlain(s string) bool {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > '~' {
			return false
		}
	}
	return true
}

// byteString writes bytes as a string of the file.
func byteString(s string) string {
	return "(" + byteEscapes.Replace(s) + ")"
}

var byteEscapes = strings.NewReplacer(`\`, `\\`, `(`, `\(`, `)`, `\)`)

// reference points to an object.
func reference(n int) string { return strconv.Itoa(n) + " 0 R" }

func appendReference(b []byte, n int) []byte {
	return append(strconv.AppendInt(b, int64(n), 10), " 0 R"...)
}
