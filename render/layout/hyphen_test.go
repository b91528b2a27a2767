package layout

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/render/page"
	"ovillo/render/rich"
)

var divided = func() Style { s := body; s.Hyphens = true; return s }()

func TestSoftHyphens(t *testing.T) {
	const text = "La entre\u00ADpierna se teje al final de la labor"
	for _, c := range []struct {
		name    string
		style   Style
		measure float64
		text    string
		want    []string
	}{
		{"only where one is used", divided, 25, text, []string{"La entrepierna", "se teje al final", "de la labor"}},
		{"a line that would be short", divided, 17.5, "La entre\u00ADpierna se teje", []string{"La entre-", "pierna", "se teje"}},
		{"not asked for", body, 20, text, []string{"La", "entrepierna", "se teje al", "final de", "la labor"}},
		{"wider than the column, though not asked for", body, 14, "La entre\u00ADpierna se", []string{"La", "entre-", "pierna", "se"}},
		{"never the last word", divided, 20, "Se teje la entre\u00ADpierna", []string{"Se teje la", "entrepierna"}},
		{"nor the one before a forced end", divided, 20, "Se teje la entre\u00ADpierna\nal final", []string{"Se teje la", "entrepierna", "al final"}},
		{"the last word, where it is wider than the column", divided, 14, "la entre\u00ADpierna", []string{"la entre-", "pierna"}},
		{"nor a part of the last word", divided, 23, "Se teje la entre\u00ADpierna-base", []string{"Se teje la", "entrepierna-", "base"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			lines := Break(rich.T(c.text), c.style, c.measure, 0)
			require.Equal(t, c.want, texts(lines))
			for _, l := range lines {
				require.LessOrEqual(t, l.End(), c.measure+tolerance)
			}
		})
	}
}

// TestHyphenIsNotSpoken: who copies or hears the text gets a soft hyphen, which is no sign.
func TestHyphenIsNotSpoken(t *testing.T) {
	lines := Break(rich.Text{{Text: "La "}, {Text: "entre\u00ADpierna", Strong: true}, {Text: " se teje"}}, divided, 17.5, 0)
	first := lines[0].Runs
	require.Equal(t, Run{X: first[2].X, Width: body.Width("-", true), Face: page.SansBold, Text: "-", Spoken: "\u00AD"}, first[2])
	require.InDelta(t, first[1].X+first[1].Width, first[2].X, 1e-9)
	var actual []string
	elem := &page.Elem{Tag: "P"}
	for _, it := range Set(lines, divided, 0, elem).Items {
		g := it.(page.Glyphs)
		require.Same(t, elem, g.Elem)
		actual = append(actual, g.Actual)
	}
	require.Equal(t, []string{"", "", "\u00AD", "", ""}, actual)
}

// TestNeverDivided: links, abbreviations and what is said in other words keep whole, whatever stands in them.
func TestNeverDivided(t *testing.T) {
	for _, run := range []rich.Run{
		{Text: "entre\u00ADpierna", Link: "https://studio.example"}, {Text: "entre\u00ADpierna", Expand: "inseam"}, {Text: "entre\u00ADpierna", Spoken: "inseam"},
	} {
		lines := Break(rich.Text{{Text: "La "}, run, {Text: " se teje"}}, divided, 22, 0)
		require.NotContains(t, strings.Join(texts(lines), "|"), "-")
	}
}

// TestDividedTwice: two divided lines below each other are worse than a short line.
func TestDividedTwice(t *testing.T) {
	words := strings.Repeat("mu\u00ADñe\u00ADqui\u00ADllas ", 12) + "fin"
	twice, once := 0, 0
	for measure := 30.0; measure < 90; measure++ {
		before := false
		for _, l := range texts(Break(rich.T(words), divided, measure, 0)) {
			now := strings.HasSuffix(l, "-")
			if now {
				once++
			}
			if now && before {
				twice++
			}
			before = now
		}
	}
	require.Greater(t, once, 20)
	require.Less(t, twice, once/4)
}

// TestSoftHyphenLaws: with soft hyphens anywhere, no line is too wide, and the lines give the text back but for the hyphens
// that divide words; off, nothing changes for words that fit.
func TestSoftHyphenLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.SampledFrom([]string{"mu\u00ADñe\u00ADqui\u00ADlla", "en\u00ADtre\u00ADpier\u00ADna", "de", "la\u00ADbor", "3\u00A0pun\u00ADtos", "fin"})
		text := strings.Join(rapid.SliceOfN(word, 1, 30).Draw(t, "words"), " ")
		measure := rapid.Float64Range(12, 80).Draw(t, "measure")
		style := body
		style.Hyphens = rapid.Bool().Draw(t, "hyphens")
		lines := Break(rich.T(text), style, measure, 0)
		var b strings.Builder
		for i, l := range lines {
			if l.End() > measure+tolerance {
				t.Fatalf("line %q ends at %.2f in %.2f", l, l.End(), measure)
			}
			s := l.String()
			last := l.Runs[len(l.Runs)-1]
			if last.Spoken == "\u00AD" {
				s = strings.TrimSuffix(s, "-")
				if i == len(lines)-1 {
					t.Fatalf("the last line ends with a hyphen: %q", l)
				}
			}
			b.WriteString(s)
		}
		squeeze := strings.NewReplacer(" ", "", "\u00A0", "", "\u00AD", "")
		if got, want := squeeze.Replace(b.String()), squeeze.Replace(text); got != want {
			t.Fatalf("lines give %q, text is %q", got, want)
		}
		if plain := Break(rich.T(strings.ReplaceAll(text, "\u00AD", "")), body, measure, 0); measure > 30 && !style.Hyphens && !same(texts(lines), texts(plain)) {
			t.Fatalf("not asked for, yet the lines are %q and not %q", texts(lines), texts(plain))
		}
	})
}
