package draw

import (
	"bufio"
	"encoding/xml"
	"fmt"
	"io"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// capHeights are how tall capitals are in the faces, in ems: what stands on the middle of a label.
var capHeights = map[page.Face]float64{page.Sans: 0.66, page.SansBold: 0.66, page.Serif: 0.67, page.SerifBold: 0.67}

// SVG writes a scene as a picture of its own size in millimetres. Titles and descriptions are in it in every language
// the scene has them in.
func SVG(w io.Writer, s *scene.Scene) error {
	b := bufio.NewWriter(w)
	fmt.Fprintf(b, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\" role=\"img\">\n",
		num(s.W), num(s.H), num(s.W), num(s.H))
	for _, lang := range slices.Sorted(maps.Keys(s.Title)) {
		text(b, "title", lang, s.Title[lang])
		text(b, "desc", lang, s.Desc[lang])
	}
	for _, it := range s.Items {
		switch it := it.(type) {
		case scene.Path:
			svgPath(b, it)
		case scene.Label:
			svgLabel(b, it)
		}
	}
	b.WriteString("</svg>\n")
	return b.Flush()
}

func text(b *bufio.Writer, tag, lang, s string) {
	if s != "" {
		fmt.Fprintf(b, "  <%s lang=\"%s\">%s</%s>\n", tag, lang, escape(s), tag)
	}
}

func escape(s string) string {
	var b strings.Builder
	// A strings.Builder never fails.
	_ = xml.EscapeText(&b, []byte(s))
	return b.String()
}

func svgPath(b *bufio.Writer, p scene.Path) {
	b.WriteString("  <path d=\"")
	for i, c := range p.Cmds {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteByte(c.Op)
		for k := range operands(c.Op) {
			if k > 0 {
				b.WriteByte(' ')
			}
			b.WriteString(num(c.P[k].X) + " " + num(c.P[k].Y))
		}
	}
	b.WriteString("\" fill=\"" + ink(p.Fill) + "\"")
	if p.Stroke != nil {
		fmt.Fprintf(b, " stroke=\"%s\" stroke-width=\"%s\"", ink(p.Stroke), num(p.Width))
		if p.Round {
			b.WriteString(" stroke-linecap=\"round\" stroke-linejoin=\"round\"")
		}
		if len(p.Dash) > 0 {
			parts := make([]string, len(p.Dash))
			for i, d := range p.Dash {
				parts[i] = num(d)
			}
			fmt.Fprintf(b, " stroke-dasharray=\"%s\"", strings.Join(parts, " "))
		}
	}
	b.WriteString("/>\n")
}

// operands is how many points a step of a path has.
func operands(op byte) int {
	switch op {
	case 'M', 'L':
		return 1
	case 'C':
		return 3
	}
	return 0
}

func svgLabel(b *bufio.Writer, l scene.Label) {
	family, weight := "Source Sans 3, sans-serif", ""
	if l.Face == page.Serif || l.Face == page.SerifBold {
		family = "Source Serif 4, serif"
	}
	if l.Face == page.SansBold || l.Face == page.SerifBold {
		weight = " font-weight=\"600\""
	}
	anchor := map[scene.Anchor]string{scene.Middle: "middle", scene.Start: "start", scene.End: "end"}[l.Anchor]
	fmt.Fprintf(b, "  <text x=\"%s\" y=\"%s\" font-family=\"%s\"%s font-size=\"%s\" text-anchor=\"%s\">%s</text>\n",
		num(l.X), num(baseline(l)), family, weight, num(l.Height), anchor, escape(l.Text))
}

// baseline is where the letters of a label stand, so that capitals have their middle at its Y.
func baseline(l scene.Label) float64 {
	return l.Y + l.Height*capHeights[l.Face]/2
}

func ink(c *page.Color) string {
	if c == nil {
		return "none"
	}
	return fmt.Sprintf("#%02x%02x%02x", channel(c[0]), channel(c[1]), channel(c[2]))
}

func channel(v float64) int { return int(math.Round(clamp(v, 0, 1) * 255)) }

// num writes a length to a hundredth of a millimetre, the finest a printer can tell.
func num(v float64) string {
	s := strconv.FormatFloat(v, 'f', 2, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" || s == "" {
		return "0"
	}
	return s
}
