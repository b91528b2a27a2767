package compile_test

import (
	"fmt"
	"os"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

// readings are the names of the stitches as the trade writes them in the United States and the United Kingdom: stitch4ever.com
// and spotlightstores.com; of trtr crochetforall.com; of the extended ones but for esc from memory.
var readings = map[string]string{"sc": "dc", "hdc": "htr", "dc": "tr", "tr": "dtr", "dtr": "trtr", "trtr": "qtr",
	"esc": "edc", "ehdc": "ehtr", "edc": "etr", "etr": "edtr", "rsc": "revdc"}

var stitchWord = regexp.MustCompile(`\b(fp|bp|)(e?sc|rsc|e?hdc|e?dc|e?tr|dtr|trtr)(\d+(?:tog|cl|bob|pop|puff|shell|cross|crossback)s?|vsts?|)\b`)

// inUK writes a source of United States terms in those of the United Kingdom. Texts and remarks stay as they are.
func inUK(text string) string {
	var out []string
	for _, line := range strings.Split(text, "\n") {
		code, remark := line, ""
		if i := strings.Index(line, "#"); i >= 0 {
			code, remark = line[:i], line[i:]
		}
		parts := strings.Split(code, `"`)
		for i := 0; i < len(parts); i += 2 {
			if !strings.Contains(line, " | ") {
				parts[i] = stitchWord.ReplaceAllStringFunc(parts[i], func(w string) string {
					m := stitchWord.FindStringSubmatch(w)
					return m[1] + readings[m[2]] + m[3]
				})
			}
		}
		out = append(out, strings.Join(parts, `"`)+remark)
	}
	return regexp.MustCompile(`terms( +)us`).ReplaceAllString(strings.Join(out, "\n"), "terms${1}uk")
}

// bare clears what two readings of one source cannot share: its text, the places in it, and which reading it is.
func bare(p *plan.Pattern) *plan.Pattern {
	p.UKTerms, p.Source = false, nil
	var clear func(reflect.Value)
	clear = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Pointer, reflect.Interface:
			if !v.IsNil() {
				clear(v.Elem())
			}
		case reflect.Slice:
			for i := range v.Len() {
				clear(v.Index(i))
			}
		case reflect.Struct:
			if v.Type() == reflect.TypeFor[source.Span]() {
				v.SetZero()
				return
			}
			for i := range v.NumField() {
				if v.Field(i).CanSet() {
					clear(v.Field(i))
				}
			}
		case reflect.Map:
			for _, k := range v.MapKeys() {
				if v.MapIndex(k).Type() == reflect.TypeFor[source.Span]() {
					v.SetMapIndex(k, reflect.Zero(reflect.TypeFor[source.Span]()))
				}
			}
		}
	}
	clear(reflect.ValueOf(p).Elem())
	return p
}

// twins checks a source in both readings and wants one plan.
func twins(t *testing.T, text string) {
	t.Helper()
	uk := inUK(text)
	require.NotEqual(t, text, uk, "nothing was translated")
	require.Equal(t, bare(clean(t, text)), bare(clean(t, uk)), uk)
}

// A source says the same in either reading, whatever its stitches are.
func TestReadingsAreTwins(t *testing.T) {
	head := "pattern trial\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"a\", \"b\"\nend\n"
	for _, k := range stitch.Table {
		if !k.Body {
			continue
		}
		w, rows := k.US, []string{}
		row := func(format string, args ...any) {
			rows = append(rows, fmt.Sprintf("  row, begin with ch 1: "+format, args...))
		}
		row("%s in each = 24 %s", w, w)
		row("fp%s in next 4, bp%s in each = 4 fp%s, 20 bp%s", w, w, w, w)
		row("%s flo in next 4, %s blo in next 4, %s third loop in each = 24 %s", w, w, w, w)
		row("%s2tog, %s3tog, 4 %s together, %s to last 2, fp%s2tog = 17 %s", w, w, w, w, w, w)
		for _, g := range stitch.Groups {
			if g.Only == "" || g.Only == k.ID {
				n := fmt.Sprint(g.Least + 2)
				if g.Usual > 0 {
					n = ""
				}
				rows = append(rows, "  row: sc in each st and space")
				where := " in next 2"
				if g.Over {
					where = " 2 times"
				}
				row("%s%s%s%s, %s in each", w, n, g.Word, where, w)
			}
		}
		text := head + "gauge 10 cm\n  " + w + " 15 sts, 10 rows\nend\npart strip\n  title en \"S\" es \"S\"\n  base " + w + "\n  begin " + w + " with ch 2 as " + w +
			"\n  in rows\n  foundation " + w + " 24\n" + strings.Join(rows, "\n") + "\n  row: sc in each st and space\n  row: " + w + " in next, inc, dec, " + w + " in each\nend\n"
		t.Run(w, func(t *testing.T) { twins(t, text) })
	}
}

func TestReverseIsATwin(t *testing.T) {
	twins(t, "pattern trial\n  title en \"T\" es \"T\"\n  terms us\nend\nsizes \"a\"\nend\npart strip\n  title en \"S\" es \"S\"\n  in rows\n  chain 9\n  row: sc in each\n  row: rsc in each = 9 rsc\nend\n")
}

// Every example, a whole garment each, and every worked construction is the same in the other reading.
func TestExamplesAreTwins(t *testing.T) {
	for _, path := range append(sources(t, "../examples/*.ovillo"), sources(t, casesAt+"/*.ovillo")...) {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		if !regexp.MustCompile(`terms +us`).Match(text) {
			continue
		}
		t.Run(path, func(t *testing.T) { twins(t, string(text)) })
	}
}

// The readings above are those of the table, and each of its stitches is there.
func TestReadingsOfTheTable(t *testing.T) {
	var words []string
	for _, k := range stitch.Table {
		require.Positive(t, k.Width, k.ID)
		require.Positive(t, k.Yarn, k.ID)
		if k.Body || k.Back {
			words = append(words, k.US)
			require.Equal(t, readings[k.US], k.UK)
		}
	}
	require.Len(t, readings, len(words))
	require.True(t, slices.IsSortedFunc(stitch.Table, func(a, b stitch.Kind) int {
		if a.Height < b.Height {
			return -1
		}
		return 1
	}), "from short to tall")
}
