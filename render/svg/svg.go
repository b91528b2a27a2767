// Package svg writes a drawing as a picture in SVG. It draws nothing of its own: what is in the scene is in the file.
//
// A unit of the file is a millimetre, and its width and height are those of paper, so that it prints in its true size; on a
// narrower window it shrinks as a whole.
//
// Letters are written as outlines, each glyph once. A picture of a schematic is placed by its letters, and in a face that is not the
// one they were measured in they would stand elsewhere, or be missed: an SVG cannot count on a face being there, and one embedded
// as a whole is larger than most drawings. Nothing is lost to those who listen: a picture is read by its title and description,
// which stand in the file as text in each language, and the letters of a drawing without its lines say nothing.
package svg

import (
	"bufio"
	"encoding/xml"
	"fmt"
	"hash/fnv"
	"io"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"ovillo/render/page"
	"ovillo/render/scene"
)

// Write writes a scene. The same scene gives the same bytes.
func Write(w io.Writer, s *scene.Scene) error {
	f := &file{Writer: bufio.NewWriter(w), name: name(s)}
	f.head(s)
	f.glyphs(s)
	at := 0
	for i, g := range s.Groups {
		f.items(s.Items[at:g.From])
		fmt.Fprintf(f, "<g id=\"%s-%d\" aria-label=\"%s\">\n<title>%s</title>\n", f.name, i+1, escape(g.Name), escape(g.Name))
		f.items(s.Items[g.From:g.To])
		f.WriteString("</g>\n")
		at = g.To
	}
	f.items(s.Items[at:])
	f.WriteString("</svg>\n")
	return f.Flush()
}

// file is what is being written. An error of the writer stays in it until it is flushed.
type file struct {
	*bufio.Writer
	name string // the beginning of the ids, which must differ between two drawings that are put into one page
}

// name makes a name from what a drawing is: no clock and no chance is in it.
func name(s *scene.Scene) string {
	h := fnv.New32a()
	fmt.Fprint(h, s.W, s.H, len(s.Items))
	for _, lang := range slices.Sorted(maps.Keys(s.Title)) {
		fmt.Fprint(h, lang, s.Title[lang], s.Desc[lang])
	}
	return fmt.Sprintf("d%08x", h.Sum32())
}

// head begins the picture and says in every language of the scene what it shows. Which of the languages is read is for the
// reader's program to choose; one that chooses none reads all of them.
func (f *file) head(s *scene.Scene) {
	fmt.Fprintf(f, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\" style=\"max-width:100%%;height:auto\" stroke-miterlimit=\"10\" role=\"img\"",
		num(s.W), num(s.H), num(s.W), num(s.H))
	langs := slices.Sorted(maps.Keys(s.Title))
	ids := func(kind string, texts map[string]string) string {
		var out []string
		for _, lang := range langs {
			if texts[lang] != "" {
				out = append(out, f.name+"-"+kind+"-"+lang)
			}
		}
		return strings.Join(out, " ")
	}
	if all := ids("title", s.Title); all != "" {
		fmt.Fprintf(f, " aria-labelledby=\"%s\"", all)
	}
	if all := ids("desc", s.Desc); all != "" {
		fmt.Fprintf(f, " aria-describedby=\"%s\"", all)
	}
	f.WriteString(">\n")
	for _, lang := range langs {
		f.text("title", lang, s.Title[lang])
	}
	for _, lang := range langs {
		f.text("desc", lang, s.Desc[lang])
	}
	fmt.Fprintf(f, "<rect width=\"%s\" height=\"%s\" fill=\"#fff\"/>\n", num(s.W), num(s.H))
}

func (f *file) text(tag, lang, s string) {
	if s != "" {
		fmt.Fprintf(f, "<%s id=\"%s-%s-%s\" lang=\"%s\" xml:lang=\"%s\">%s</%s>\n", tag, f.name, tag, lang, lang, lang, escape(s), tag)
	}
}

// escape also leaves out what no XML file may hold.
func escape(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a strings.Builder never fails
	return b.String()
}

// items writes items, those with the same lines and colours together: what stays in view is drawn in the order of the scene.
func (f *file) items(items []scene.Item) {
	for len(items) > 0 {
		n := 1
		switch first := items[0].(type) {
		case scene.Path:
			for n < len(items) && alike(first, items[n]) {
				n++
			}
			f.paths(items[:n])
		case scene.Label:
			f.label(first)
		}
		items = items[n:]
	}
}

// alike reports whether an item is a path that looks like another.
func alike(p scene.Path, it scene.Item) bool {
	q, ok := it.(scene.Path)
	same := func(a, b *page.Color) bool { return a == b || a != nil && b != nil && *a == *b }
	return ok && same(p.Fill, q.Fill) && same(p.Stroke, q.Stroke) &&
		(p.Stroke == nil || p.Width == q.Width && p.Round == q.Round && slices.Equal(p.Dash, q.Dash))
}

// paths writes paths that look alike. Lines without an area become one path. Areas stay apart, since two that overlap would
// take something from each other in one.
func (f *file) paths(items []scene.Item) {
	first := items[0].(scene.Path)
	look := style(first)
	if first.Fill == nil {
		f.WriteString("<path" + look + " d=\"")
		var t trace
		for _, it := range items {
			t.cmds(f.Writer, it.(scene.Path).Cmds)
		}
		f.WriteString("\"/>\n")
		return
	}
	outside, inside := look, ""
	if len(items) == 1 {
		outside, inside = "", look
	} else {
		f.WriteString("<g" + outside + ">\n")
	}
	for _, it := range items {
		f.WriteString("<path" + inside + " d=\"")
		var t trace
		t.cmds(f.Writer, it.(scene.Path).Cmds)
		f.WriteString("\"/>\n")
	}
	if len(items) > 1 {
		f.WriteString("</g>\n")
	}
}

func style(p scene.Path) string {
	var b strings.Builder
	switch {
	case p.Fill == nil:
		b.WriteString(" fill=\"none\"")
	case *p.Fill != page.Black:
		b.WriteString(" fill=\"" + ink(*p.Fill) + "\"")
	}
	if p.Stroke == nil {
		return b.String()
	}
	fmt.Fprintf(&b, " stroke=\"%s\" stroke-width=\"%s\"", ink(*p.Stroke), num(p.Width))
	if p.Round {
		b.WriteString(" stroke-linecap=\"round\" stroke-linejoin=\"round\"")
	}
	if len(p.Dash) > 0 {
		parts := make([]string, len(p.Dash))
		for i, d := range p.Dash {
			parts[i] = num(d)
		}
		b.WriteString(" stroke-dasharray=\"" + strings.Join(parts, " ") + "\"")
	}
	return b.String()
}

func ink(c page.Color) string {
	at := func(i int) int { return int(math.Round(max(0, min(1, c[i])) * 255)) }
	s := fmt.Sprintf("#%02x%02x%02x", at(0), at(1), at(2))
	if s[1] == s[2] && s[3] == s[4] && s[5] == s[6] {
		return "#" + s[1:2] + s[3:4] + s[5:6]
	}
	return s
}

// num writes a length to a hundredth of a millimetre, the finest a printer can tell.
func num(v float64) string { return string(hundredths(nil, hundred(v))) }

func hundred(v float64) int { return int(math.Round(v * 100)) }

// hundredths writes a number of hundredths behind what is written already: 50 as .5.
func hundredths(b []byte, n int) []byte {
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	if n >= 100 || n == 0 {
		b = strconv.AppendInt(b, int64(n/100), 10)
	}
	if frac := n % 100; frac != 0 {
		b = append(b, '.', byte('0'+frac/10))
		if frac%10 != 0 {
			b = append(b, byte('0'+frac%10))
		}
	}
	return b
}
