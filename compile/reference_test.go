package compile_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// An example of the reference stands behind ```ovillo. Alone, that is a whole source. A word behind it says which piece of one
// the example is, and `on NAME` the source around it, a file of testdata/reference. There % is the place of the example, and {n}
// the width of an edge: the narrowest on which the example comes out. Each line of a row or a value is an example of its own,
// and so is each line of a piece that says `each`.
type referenceExample struct {
	line                int
	piece, around, text string
}

var referenceFence = regexp.MustCompile("(?ms)^```ovillo(?: ([a-z]+)( each)? on ([a-z-]+))?\n(.*?)^```$")

var lineByLine = map[string]bool{"row": true, "value": true}

func referenceExamples(t *testing.T) []referenceExample {
	text, err := os.ReadFile("../lang/reference.md")
	require.NoError(t, err)
	var out []referenceExample
	matches := referenceFence.FindAllSubmatchIndex(text, -1)
	require.Equal(t, bytes.Count(text, []byte("\n```ovillo")), len(matches), "each example says the piece it is, and the source around it: ```ovillo row on flat")
	for _, m := range matches {
		group := func(i int) string {
			if m[2*i] < 0 {
				return ""
			}
			return string(text[m[2*i]:m[2*i+1]])
		}
		e := referenceExample{piece: group(1), around: group(3), text: group(4)}
		e.line = bytes.Count(text[:m[8]], []byte("\n")) + 1
		if group(2) == "" && !lineByLine[e.piece] {
			out = append(out, e)
			continue
		}
		for _, l := range strings.SplitAfter(e.text, "\n") {
			if code, _, _ := strings.Cut(l, "#"); strings.TrimSpace(code) != "" {
				one := e
				one.text = l
				out = append(out, one)
			}
			e.line++
		}
	}
	return out
}

// TestReferenceChecks checks every example of the reference in the source around it. Every such source is used.
func TestReferenceChecks(t *testing.T) {
	examples := referenceExamples(t)
	require.Greater(t, len(examples), 150)
	unused := map[string]bool{}
	for _, path := range sources(t, "testdata/reference/*.ovillo") {
		unused[strings.TrimSuffix(filepath.Base(path), ".ovillo")] = true
	}
	for _, e := range examples {
		around := "%"
		if e.around != "" {
			text, err := os.ReadFile(filepath.Join("testdata", "reference", e.around+".ovillo"))
			require.NoError(t, err, "line %d", e.line)
			require.Equal(t, 1, strings.Count(string(text), "%"), "%s: one place for the example", e.around)
			around = string(text)
			delete(unused, e.around)
		}
		if said := checksOnSomeEdge(strings.Replace(around, "%", strings.TrimRight(e.text, "\n"), 1)); said != "" {
			t.Errorf("reference.md, line %d, on %q:\n%s\n%s", e.line, e.around, e.text, said)
		}
	}
	require.Empty(t, unused, "no example of the reference stands in these sources")
}

// checksOnSomeEdge checks a source with each width of its edge until one has no errors. It returns what is said of the
// widest, or nothing.
func checksOnSomeEdge(text string) string {
	widths := []int{0}
	if strings.Contains(text, "{n}") {
		widths = nil
		for n := 1; n <= 60; n++ {
			widths = append(widths, n)
		}
	}
	var said string
	for _, n := range widths {
		if said = errorsOf(strings.ReplaceAll(text, "{n}", strconv.Itoa(n))); said == "" {
			return ""
		}
	}
	return said
}

// errorsOf prints the errors of a source.
func errorsOf(text string) string {
	var errs diag.List
	for _, d := range found(text) {
		if diag.Lookup(d.Code).Severity == diag.Error {
			errs.Add(d)
		}
	}
	if len(errs) == 0 {
		return ""
	}
	var b bytes.Buffer
	if err := diag.Text(&b, source.NewFile("example", text), errs, "en", false); err != nil {
		return fmt.Sprint(err)
	}
	return b.String()
}
