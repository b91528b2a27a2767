package book

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestCareIsInWords: care symbols are trademarks (GINETEX), so care stands in words, in each language, on the page that says what
// the piece is made of; and no page says twice what the yarn is made of.
func TestCareIsInWords(t *testing.T) {
	eachPaper(t, func(t *testing.T, paper Paper, langs []string) {
		e := edition{sizes: 4, langs: langs}
		doc, p := e.compose(t, paper), e.pattern()
		for _, l := range languages(t, langs...) {
			care := squeezed(l.Prose(p, p.Care)[0].Text.String())
			label := squeezed(l.Contents(p).String())
			shares := squeezed(strings.TrimSuffix(l.Contents(p).String(), "."))
			shares = shares[strings.LastIndex(shares, ":")+1:]
			found := 0
			for i := range doc.Pages {
				text := squeezed(pageText(doc.Pages[i]))
				if strings.Contains(text, label) {
					found++
					require.Contains(t, text, care, l.Tag())
				}
				require.LessOrEqual(t, strings.Count(text, shares), 1, "%s, page %d", l.Tag(), i+1)
			}
			require.Equal(t, 1, found, "%s: pages with the label", l.Tag())
		}
	})
}

// eachPaper runs a test on papers of every width, with two languages and with one.
func eachPaper(t *testing.T, test func(t *testing.T, paper Paper, langs []string)) {
	for _, paper := range []Paper{A4, Letter, A5, Phone} {
		for _, langs := range [][]string{{"en-GB", "es"}, {"es-AR"}} {
			t.Run(paper.String()+" "+strings.Join(langs, " "), func(t *testing.T) { test(t, paper, langs) })
		}
	}
}
