package words

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	tags "golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"

	"ovillo/compile/plan"
)

// decimalOf is the decimal sign that the data of golang.org/x/text (from the Unicode CLDR) has for a tag.
func decimalOf(tag string) string {
	s := message.NewPrinter(tags.MustParse(tag)).Sprint(number.Decimal(3.5, number.Scale(1)))
	return strings.Trim(s, "35")
}

// departs says for which tags the pages have another decimal sign than the data, and why. There is none.
var departs = map[string]string{}

// TestDecimalSignsAreThoseOfTheCountries compares the sign of every reading with the data of golang.org/x/text.
func TestDecimalSignsAreThoseOfTheCountries(t *testing.T) {
	for _, tag := range Tags() {
		if tag == "es-419" {
			continue // the pages know no Latin American Spanish by itself: it is the neutral reading, with the comma of es
		}
		got := strings.Trim(language(t, tag).Number(3.5, 1), "35")
		if want := decimalOf(tag); got != want && departs[tag] == "" {
			t.Errorf("%s: %q, the data have %q", tag, got, want)
		}
	}
	// The list itself, so that a change in the data does not go unseen.
	for tag, want := range map[string]string{"en-US": ".", "en-GB": ".", "es": ",", "es-ES": ",", "es-AR": ",", "es-CL": ",", "es-EC": ",", "es-MX": "."} {
		if got := strings.Trim(language(t, tag).Number(3.5, 1), "35"); got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
		if got := decimalOf(tag); got != want {
			t.Errorf("the data have %q for %s, want %q", got, tag, want)
		}
	}
}

// TestThousandsAreTheAcademys: four figures stand solid, from five on a narrow space parts groups of three (Ortografía of the
// Academy, 2010, and ISO 80000-1). The data of golang.org/x/text part them with a sign that another country reads as the decimal
// one, 1.234 or 1,234, and that is where the pages depart from it, in every reading.
func TestThousandsAreTheAcademys(t *testing.T) {
	for _, tag := range Tags() {
		l := language(t, tag)
		for v, want := range map[int]string{0: "0", 999: "999", 1234: "1234", 9999: "9999", 12345: "12\u202f345", 123456: "123\u202f456", 1234567: "1\u202f234\u202f567", -1234: "−1234", -12345: "−12\u202f345"} {
			if got := l.integer(v); got != want {
				t.Errorf("%s: %q, want %q", tag, got, want)
			}
			data := message.NewPrinter(tags.MustParse(tag)).Sprint(number.Decimal(v))
			solid := strings.NewReplacer("\u202f", "", "\u00a0", "", ".", "", ",", "", "−", "-").Replace
			if solid(data) != solid(want) {
				t.Errorf("%s: the data write %d as %q, other figures than %q", tag, v, data, want)
			}
		}
	}
	if data := message.NewPrinter(tags.Spanish).Sprint(number.Decimal(1234)); data == "1234" {
		t.Error("the data write 1234 solid now: there is nothing to depart from any more")
	}
}

// readBack reads a list of sizes as a maker does, by its signs alone.
func readBack(t *testing.T, text, sep string) []string {
	t.Helper()
	first, rest, several := strings.Cut(text, tie+"(")
	if !several {
		return []string{text}
	}
	rest, ok := strings.CutSuffix(rest, ")")
	if !ok {
		t.Fatalf("no end of the list in %q", text)
	}
	out := []string{first}
	for _, group := range strings.Split(rest, ") (") {
		out = append(out, strings.Split(group, sep+tie)...)
	}
	return out
}

// TestSizeListsReadBack writes lists of every length in every reading and reads the numbers back.
func TestSizeListsReadBack(t *testing.T) {
	seed := uint32(1)
	next := func(n int) int { // a small generator, the same every time
		seed = seed*1664525 + 1013904223
		return int(seed>>8) % n
	}
	for _, tag := range Tags() {
		l := language(t, tag)
		sep, decimal := ",", decimalOf(l.Tag())
		if l.Code() == "es" && decimal == "," {
			sep = ";"
		}
		for length := 1; length <= 13; length++ {
			for range 40 {
				n := make(plan.Nums, length)
				same := true
				for i := range n {
					n[i] = next(20000)
					if next(6) == 0 {
						n[i] = plan.Absent
					}
					same = same && n[i] == n[0]
				}
				text := l.Nums(n).String()
				for i, s := range readBack(t, text, sep) {
					s = strings.ReplaceAll(s, "\u202f", "")
					if want := strconv.Itoa(n[i]); s != want && !(s == "–" && n[i] == plan.Absent) {
						t.Fatalf("%s: %v is written %q, and number %d reads %q", tag, n, text, i, s)
					}
				}
				if got := len(readBack(t, text, sep)); got != length && !same {
					t.Fatalf("%s: %v is written %q, which has %d numbers", tag, n, text, got)
				}
				lengths := make(plan.Lengths, length)
				for i := range lengths {
					lengths[i] = plan.Length(next(3000)) * plan.Millimetre / 2
				}
				cm := strings.TrimSuffix(l.Lengths(lengths).String(), tie+"cm")
				for i, s := range readBack(t, cm, sep) {
					f, err := strconv.ParseFloat(strings.Replace(s, decimal, ".", 1), 64)
					if err != nil || fmt.Sprintf("%.1f", f) != fmt.Sprintf("%.1f", mustFloat(t, l.Cm(lengths[i]), decimal)) {
						t.Fatalf("%s: %q, and length %d reads %q", tag, cm, i, s)
					}
					if d := f*10 - float64(lengths[i])/float64(plan.Millimetre); d > 0.501 || d < -0.501 {
						t.Fatalf("%s: %d µm is written %q", tag, lengths[i], s)
					}
				}
			}
		}
	}
}

func mustFloat(t *testing.T, s, decimal string) float64 {
	t.Helper()
	f, err := strconv.ParseFloat(strings.Replace(s, decimal, ".", 1), 64)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// TestSemicolonsStandWhereTheCommaIsDecimal: in a list, the sign between sizes is never the one inside a number.
func TestSemicolonsStandWhereTheCommaIsDecimal(t *testing.T) {
	half := plan.Lengths{205 * plan.Millimetre, 220 * plan.Millimetre, 235 * plan.Millimetre}
	for _, tag := range Tags() {
		want := map[string]string{",": "20,5~(**22**;~23,5)~cm", ".": "20.5~(**22**,~23.5)~cm"}[decimalOf(language(t, tag).Tag())]
		if got := shown(language(t, tag).Lengths(half)); got != want {
			t.Errorf("%s: %s, want %s", tag, got, want)
		}
	}
}

// TestInchesAreOfTheExactLength: inches are the nearest quarter of the length itself, not of the centimetres that stand beside them.
func TestInchesAreOfTheExactLength(t *testing.T) {
	l := language(t, "en")
	quarters := map[string]int64{"": 0, "¼": 1, "½": 2, "¾": 3}
	parted := 0
	for v := plan.Length(0); v < 40*plan.Centimetre; v += 137 {
		text := l.Inches(v)
		whole := strings.TrimRight(text, "¼½¾")
		n, _ := strconv.ParseInt(whole, 10, 64)
		got := n*4 + quarters[strings.TrimPrefix(text, whole)]
		// |quarters × 25400/4 µm − v| ≤ 25400/8 µm
		if d := got*6350 - int64(v); d > 3175 || d < -3175 {
			t.Fatalf("%d µm is written %s in", v, text)
		}
		cm := plan.Length(mustFloat(t, l.Cm(v), ".") * float64(plan.Centimetre))
		if l.Inches(cm) != text {
			parted++
		}
	}
	if parted == 0 {
		t.Error("no length tells the exact inches from those of the rounded centimetres: the test proves nothing")
	}
}

// TestSameNumberInAllReadings is a table over all readings of how numbers are written.
func TestSameNumberInAllReadings(t *testing.T) {
	for _, tag := range Tags() {
		l := language(t, tag)
		comma := decimalOf(l.Tag()) == ","
		point := func(s string) string {
			if comma {
				return strings.ReplaceAll(s, ".", ",")
			}
			return s
		}
		p := tablePattern()
		c := l.context(p, p.Parts[0], nil)
		spanish := l.Code() == "es"
		say := func(en, es string) string {
			if spanish {
				return es
			}
			return en
		}
		percent := plan.Value{Amounts: []int64{12500, 12500, 12500}, Unit: plan.InPercent}
		grams := plan.Value{Amounts: []int64{50000, 50000, 50000}, Unit: plan.InGrams}
		for _, k := range []struct{ what, got, want string }{
			{"a number", l.Number(3.75, 2), point("3.75")},
			{"minus", l.Number(-2.5, 1), point("−2.5")},
			{"a percentage", c.value(percent).String(), point(say("12.5%", "12.5"+tie+"%"))},
			{"a weight", c.value(grams).String(), "50" + tie + "g"},
			{"grams", l.grams(62500), point("62.5" + tie + "g")},
			{"a range of rows", l.voice.label(false, 3, 17).String(), say("Rows"+tie+"3–17", "Hileras"+tie+"3 a"+tie+"17")},
			{"a range of lengths", l.voice.span("3", "17", "cm"), say("3 to 17"+tie+"cm", "3 a 17"+tie+"cm")},
			{"inches", l.Inches(plan.Inch*9/2) + tie + l.InchSign(), say("4½"+tie+"in", "4½"+tie+"pulg.")},
			{"one for all", l.Nums(plan.Nums{4, 4, 4}).String(), "4"},
			{"a change", c.change([]plan.Count{{Kind: plan.CountSts, N: plan.Nums{-2, -4, -4}}}).String(),
				say("Each time: −2"+tie+"(−4,"+tie+"−4) sts.", "Cada vez: −2"+tie+"(−4"+map[bool]string{true: ";", false: ","}[comma]+tie+"−4) p.")},
			{"a change of one", c.change([]plan.Count{{Kind: plan.CountSts, N: plan.Nums{1, 1, 1}}}).String(), say("Each time: +1"+tie+"st.", "Cada vez: +1"+tie+"p.")},
		} {
			if k.got != k.want {
				t.Errorf("%s: %s is written %q, want %q", tag, k.what, k.got, k.want)
			}
		}
	}
}
