package svg

import (
	"bufio"
	"fmt"
	"io"

	"ovillo/render/scene"
)

// Symbols writes drawings that stand in a web page as one picture that shows nothing by itself: a symbol for each, named id0, id1 …
// after the id given, which the page shows with use wherever it needs it. Each glyph is in it once. Titles and descriptions are left to
// the place of use, where they are in the language around it. No attribute is a style, which a page may forbid.
func Symbols(w io.Writer, id string, drawings []*scene.Scene) error {
	f := &file{Writer: bufio.NewWriter(w)}
	f.WriteString("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"0\" aria-hidden=\"true\" focusable=\"false\">\n")
	f.glyphs(drawings...)
	for i, s := range drawings {
		fmt.Fprintf(f, "<symbol id=\"%s%d\" viewBox=\"0 0 %s %s\" stroke-miterlimit=\"10\">\n", escape(id), i, num(s.W), num(s.H))
		f.items(s.Items)
		f.WriteString("</symbol>\n")
	}
	f.WriteString("</svg>\n")
	return f.Flush()
}
