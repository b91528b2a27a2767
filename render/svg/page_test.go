package svg

import (
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/render/font"
	"ovillo/render/page"
)

// onPage writes items as a page and reads it back as XML, so that it is at least that.
func onPage(t *testing.T, root *page.Elem, items ...page.Item) string {
	t.Helper()
	doc := &page.Document{Pages: []page.Page{{W: 210, H: 297, Items: items}, {W: 210, H: 297}}, Root: root, Lang: "en-US",
		Places: map[string]page.Place{"row": {Page: 1, Y: 148.5}}}
	out := string(PagesOf(doc, func(page.Picture) string { return "picture/x" }).Append(nil, 0))
	for d := xml.NewDecoder(strings.NewReader(out)); ; {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return out
		} else if err != nil {
			t.Fatal(err, out)
		}
	}
}

// TestLettersStandAsInPrint: each letter has a place, which is that of the measures by which lines are set, and the last one ends where
// the width of the run says.
func TestLettersStandAsInPrint(t *testing.T) {
	for _, g := range []page.Glyphs{
		{X: 20, Base: 50, Size: 11, Face: page.Sans, Text: "AVAVA Tú, 12 p"},
		{X: 20, Base: 50, Size: 38, Face: page.Serif, Text: "Té", Track: -0.012},
		{X: 20, Base: 50, Size: 9, Face: page.SansBold, Text: "n\u0303u\u00a0x"},
	} {
		out := onPage(t, nil, g)
		m := regexp.MustCompile(`y="50" x="([^"]*)"[^>]*>([^<]*)</text>`).FindStringSubmatch(out)
		require.NotNil(t, m, out)
		letters := []rune(m[2])
		places := strings.Fields(m[1])
		require.Len(t, places, len(letters))
		at := func(i int) float64 {
			v, err := strconv.ParseFloat(places[i], 64)
			require.NoError(t, err)
			return v
		}
		face := font.Of(g.Face)
		for i := range letters {
			before := string([]rune(font.Compose(g.Text))[:i+1])
			want := g.X + face.Tracked(before, g.Size, g.Track) - face.Width(string(letters[i]), g.Size)
			assert.InDelta(t, want, at(i), 0.011, "%s, letter %d", g.Text, i)
		}
		assert.NotContains(t, m[2], "\u00a0")
	}
}

func TestPageIsEscaped(t *testing.T) {
	out := onPage(t, nil,
		page.Glyphs{X: 1, Base: 1, Size: 9, Text: `<script>&"`, Expand: `"><b>`},
		page.Anchor{W: 1, H: 1, URI: `https://a.example/"><script>`, Label: `"><i>`},
		page.Picture{W: 1, H: 1})
	assert.NotRegexp(t, `<(script|b|i)\b`, out)
	assert.Contains(t, out, `&lt;script&gt;&amp;&#34;</text>`)
	assert.Contains(t, out, `<title>&#34;&gt;&lt;b&gt;</title>`)
	assert.Contains(t, out, `href="picture/x"`)
}

func TestLinksLeadWherePrintLeads(t *testing.T) {
	for uri, want := range map[string]string{
		"":                      `href="#page-2" data-y="50"`,
		"#row":                  `href="#page-2" data-y="50"`,
		"https://a.example/b":   `href="https://a.example/b" target="_blank" rel="noopener noreferrer"`,
		"mailto:a@a.example":    `href="mailto:a@a.example"`,
		"#nowhere":              "",
		"javascript:alert(1)":   "",
		"data:text/html,x":      "",
		"JavaScript:alert(1)":   "",
		"//a.example":           "",
		"file:///etc/passwd":    "",
		" javascript:alert(1)":  "",
		"java\tscript:alert(1)": "",
	} {
		out := onPage(t, nil, page.Anchor{X: 1, Y: 1, W: 9, H: 4, URI: uri, Page: 1, DestY: 148.5})
		if want == "" {
			assert.NotContains(t, out, "<a ", uri)
			continue
		}
		assert.Contains(t, out, "<a "+want, uri)
	}
}

// TestPageIsHeard: a figure is told once by what it shows, headings are headings, ornaments are silent, and each language is named.
func TestPageIsHeard(t *testing.T) {
	root := &page.Elem{Tag: "Document", Lang: "en-US"}
	head, figure := root.New("H2"), root.New("Figure")
	figure.Alt = "A hat, seen from the front"
	spanish := root.New("P")
	spanish.Lang = "es"
	word := func(text string, e *page.Elem) page.Glyphs {
		return page.Glyphs{X: 1, Base: 1, Size: 9, Text: text, Elem: e}
	}
	black := page.Black
	line := func(e *page.Elem) page.Path {
		return page.Path{Cmds: []page.Cmd{{Op: 'M'}, {Op: 'L', P: [3]page.Point{{X: 1, Y: 1}}}}, Stroke: &black, Width: 0.2, Elem: e}
	}
	out := onPage(t, root, word("Brim", head), line(figure), word("Borde", spanish), line(figure), word("7", nil))
	assert.Contains(t, out, `<g role="heading" aria-level="3"><text`)
	assert.Equal(t, 1, strings.Count(out, "A hat, seen from the front"))
	assert.Contains(t, out, `<g role="img" aria-label="A hat, seen from the front"><path`)
	assert.Contains(t, out, `<g lang="es"><text`)
	assert.Equal(t, 2, strings.Count(out, `aria-hidden="true"`), "the rest of the figure, and the ornament")
}

func TestFaceStyle(t *testing.T) {
	css := FaceStyle(func(f page.Face) string { return "face/" + font.Of(f).Name() })
	for f := page.Sans; f <= page.SerifBold; f++ {
		assert.Contains(t, css, `url("face/`+font.Of(f).Name()+`")`)
		assert.Contains(t, onPage(t, nil, page.Glyphs{Size: 9, Face: f, Text: "x"}), `class="`+classes[f]+`"`)
		assert.Contains(t, css, "svg text."+classes[f]+"{")
	}
}
