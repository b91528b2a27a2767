package svg

import (
	"fmt"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
)

// Pages writes finished pages as SVG, to be looked at in a browser as they will print. Each letter stands at its own place, so that
// a line is the one of the print whatever the browser would make of it; the text stays text, to be found, copied and read out.
//
// Letters are in the embedded faces, which the page around must offer: see [FaceStyle]. A unit is a millimetre.
type Pages struct {
	doc     *page.Document
	picture func(page.Picture) string
	roles   map[*page.Elem]role
}

// PagesOf prepares the pages of a document. picture returns the address at which the page around finds a photograph.
func PagesOf(d *page.Document, picture func(page.Picture) string) *Pages {
	p := &Pages{doc: d, picture: picture, roles: map[*page.Elem]role{}}
	if d.Root != nil {
		p.learn(d.Root, role{lang: d.Lang})
	}
	return p
}

// role is what an element is to those who listen.
type role struct {
	of    *page.Elem // the figure, link or heading that it belongs to; nil: plain text
	level int        // of a heading; 0: none
	alt   string     // what a figure shows
	lang  string
}

// learn notes the role of an element and of all below it. What stands inside a figure or a heading belongs to that.
func (p *Pages) learn(e *page.Elem, within role) {
	if e.Lang != "" {
		within.lang = e.Lang
	}
	switch {
	case within.of != nil:
	case e.Tag == "Figure":
		within.of, within.alt = e, e.Alt
	case len(e.Tag) == 2 && e.Tag[0] == 'H' && e.Tag[1] >= '1' && e.Tag[1] <= '6':
		within.of, within.level = e, int(e.Tag[1]-'0')
	}
	p.roles[e] = within
	for _, k := range e.Kids {
		p.learn(k, within)
	}
}

// Anchor is the name of a page, from 0, to which links within the document lead: the id that the page around gives it.
func Anchor(number int) string { return "page-" + strconv.Itoa(number+1) }

// Append writes a page, from 0, behind b. The same document gives the same bytes.
func (p *Pages) Append(b []byte, number int) []byte {
	sheet := &p.doc.Pages[number]
	w := pageWriter{Pages: p, b: b}
	w.b = fmt.Appendf(w.b, `<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s" stroke-miterlimit="10" lang="%s">`,
		num(sheet.W), num(sheet.H), num(sheet.W), num(sheet.H), p.doc.Lang)
	told := map[*page.Elem]bool{}
	for k := 0; k < len(sheet.Items); {
		e, spoken := elemOf(sheet.Items[k])
		if !spoken { // the rectangle of a link: it stands by itself
			w.item(sheet.Items[k])
			k++
			continue
		}
		r := p.roles[e]
		end := k + 1
		for end < len(sheet.Items) {
			next, spoken := elemOf(sheet.Items[end])
			if !spoken || (next == nil) != (e == nil) || p.roles[next] != r {
				break
			}
			end++
		}
		w.open(e, r, told)
		for _, item := range sheet.Items[k:end] {
			w.item(item)
		}
		w.b = append(w.b, "</g>\n"...)
		k = end
	}
	return append(w.b, "</svg>\n"...)
}

// elemOf is the element that an item belongs to; nil for an ornament. Rectangles of links and marks of the order belong to none.
func elemOf(it page.Item) (e *page.Elem, spoken bool) {
	switch it := it.(type) {
	case page.Glyphs:
		return it.Elem, true
	case page.Path:
		return it.Elem, true
	case page.Picture:
		return it.Elem, true
	}
	return nil, false
}

// pageWriter writes one page.
type pageWriter struct {
	*Pages
	b []byte
}

// open begins what is one thing to those who listen. A figure is told once, however often something stands between its lines.
func (w *pageWriter) open(e *page.Elem, r role, told map[*page.Elem]bool) {
	w.b = append(w.b, "<g"...)
	switch {
	case e == nil, r.alt != "" && told[r.of]:
		w.b = append(w.b, ` aria-hidden="true"`...)
	case r.alt != "":
		told[r.of] = true
		w.b = append(w.b, ` role="img" aria-label="`...)
		w.b = append(appendText(w.b, r.alt), '"')
	case r.level > 0:
		w.b = fmt.Appendf(w.b, ` role="heading" aria-level="%d"`, min(r.level+1, 6)) // the page around has the first
	}
	if e != nil && r.lang != w.doc.Lang && r.lang != "" {
		w.b = append(append(append(w.b, ` lang="`...), r.lang...), '"')
	}
	w.b = append(w.b, '>')
}

func (w *pageWriter) item(it page.Item) {
	switch it := it.(type) {
	case page.Glyphs:
		w.text(it)
	case page.Path:
		w.path(it)
	case page.Picture:
		w.image(it)
	case page.Anchor:
		w.link(it)
	}
}

// classes name the faces, as in the ids of the letters of drawings.
var classes = [...]string{page.Sans: "s", page.SansBold: "sb", page.Serif: "r", page.SerifBold: "rb"}

func (w *pageWriter) text(g page.Glyphs) {
	if g.Text == "" {
		return
	}
	em := g.Size * 25.4 / 72
	w.b = append(append(append(w.b, `<text class="`...), classes[g.Face&3]...), `" font-size="`...)
	w.b = strconv.AppendFloat(w.b, em, 'f', 4, 64)
	w.b = append(w.b, `" y="`...)
	w.b = hundredths(w.b, hundred(g.Base))
	w.b = append(w.b, `" x="`...)
	letters, _ := font.Of(g.Face).Letters(g.Text)
	for i, l := range letters {
		if i > 0 {
			w.b = append(w.b, ' ')
		}
		w.b = hundredths(w.b, hundred(g.X+em*(float64(l.X)/1000+float64(i)*g.Track)))
	}
	w.b = append(w.b, '"')
	if g.Color != page.Black {
		w.b = append(append(append(w.b, ` fill="`...), ink(g.Color)...), '"')
	}
	if g.Angle != 0 {
		w.b = fmt.Appendf(w.b, ` transform="rotate(%s %s %s)"`, num(-g.Angle), num(g.X), num(g.Base))
	}
	w.b = append(w.b, '>')
	if g.Expand != "" {
		w.b = append(appendText(append(w.b, "<title>"...), g.Expand), "</title>"...)
	}
	for _, l := range letters {
		if l.Rune == '\u00a0' {
			l.Rune = ' ' // it has done its work; in print it is a blank as well
		}
		w.b = appendRune(w.b, l.Rune)
	}
	w.b = append(w.b, "</text>\n"...)
}

func (w *pageWriter) path(p page.Path) {
	if len(p.Cmds) == 0 || p.Fill == nil && p.Stroke == nil {
		return
	}
	w.b = append(w.b, "<path"...)
	w.b = append(w.b, style(scene.Path{Stroke: p.Stroke, Width: p.Width, Dash: p.Dash, Round: p.Round, Fill: p.Fill})...)
	w.b = append(w.b, ` d="`...)
	var t trace
	w.b = t.append(w.b, p.Cmds)
	w.b = append(w.b, "\"/>\n"...)
}

func (w *pageWriter) image(p page.Picture) {
	w.b = fmt.Appendf(w.b, `<image x="%s" y="%s" width="%s" height="%s" preserveAspectRatio="none" href="`, num(p.X), num(p.Y), num(p.W), num(p.H))
	w.b = append(appendText(w.b, w.picture(p)), "\"/>\n"...)
}

// schemes are the kinds of addresses that a page may lead to, as in print.
var schemes = []string{"http", "https", "mailto", "tel"}

// link makes a rectangle that leads to a place of the document, or out of it. What is no address leads nowhere.
func (w *pageWriter) link(a page.Anchor) {
	to, y, more := "", 0.0, ""
	if name, named := strings.CutPrefix(a.URI, "#"); named || a.URI == "" {
		place, known := page.Place{Page: a.Page, Y: a.DestY}, true
		if named {
			place, known = w.doc.Places[name]
		}
		if !known || place.Page < 0 || place.Page >= len(w.doc.Pages) {
			return
		}
		to, y = "#"+Anchor(place.Page), place.Y
		more = fmt.Sprintf(` data-y="%s"`, num(y/w.doc.Pages[place.Page].H*100)) // in hundredths of the height of its page
	} else {
		u, err := url.Parse(a.URI)
		if err != nil || !slices.Contains(schemes, u.Scheme) {
			return
		}
		to, more = u.String(), ` target="_blank" rel="noopener noreferrer"`
	}
	label := a.Label
	if label == "" {
		label = strings.TrimPrefix(a.URI, "#")
	}
	w.b = append(appendText(append(w.b, `<a href="`...), to), '"')
	w.b = append(w.b, more...)
	if label != "" {
		w.b = append(appendText(append(w.b, ` aria-label="`...), label), '"')
	}
	w.b = fmt.Appendf(w.b, "><rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"none\" pointer-events=\"all\"/></a>\n", num(a.X), num(a.Y), num(a.W), num(a.H))
}

// appendText writes a text so that it stands for itself in SVG and in HTML.
func appendText(b []byte, s string) []byte {
	for _, r := range s {
		b = appendRune(b, r)
	}
	return b
}

func appendRune(b []byte, r rune) []byte {
	switch {
	case r == '&':
		return append(b, "&amp;"...)
	case r == '<':
		return append(b, "&lt;"...)
	case r == '>':
		return append(b, "&gt;"...)
	case r == '"':
		return append(b, "&#34;"...)
	case r < ' ' || r == 0xFFFE || r == 0xFFFF: // no XML file may hold them
		return utf8.AppendRune(b, utf8.RuneError)
	}
	return utf8.AppendRune(b, r)
}

// FaceStyle is the style sheet by which a page offers the faces of [Pages]. address says where each is.
func FaceStyle(address func(page.Face) string) string {
	var b strings.Builder
	for f, class := range classes {
		fmt.Fprintf(&b, "@font-face{font-family:\"page-%s\";src:url(\"%s\") format(\"truetype\");font-display:block}\n", class, address(page.Face(f)))
		fmt.Fprintf(&b, "svg text.%s{font-family:\"page-%s\"}\n", class, class)
	}
	b.WriteString("svg text{white-space:pre;font-kerning:none;font-variant-ligatures:none;text-rendering:geometricPrecision}\n")
	return b.String()
}
