package markdown

import (
	"strings"

	"ovillo/lang/lazy"
)

// Hole is a value that a text puts in: {waist}, or {legs|leg|legs}, which writes the value with the word that goes with it.
type Hole struct {
	Name      string
	One, Many string // the word behind the value, for one and for several; "" and "" where none stands in the braces
	From, To  int    // in bytes of the text, braces included
}

// Counted reports whether the hole brings the word behind its value.
func (h Hole) Counted() bool { return h.One != "" || h.Many != "" }

var braces = lazy.Regexp(`\{[^{}\n]*\}`)

// Holes finds the values that a text puts in.
func Holes(source string) []Hole {
	var out []Hole
	for _, m := range braces().FindAllStringIndex(source, -1) {
		h := Hole{From: m[0], To: m[1]}
		parts := strings.Split(source[m[0]+1:m[1]-1], "|")
		h.Name = strings.TrimSpace(parts[0])
		if len(parts) == 3 {
			h.One, h.Many = strings.TrimSpace(parts[1]), strings.TrimSpace(parts[2])
		}
		if len(parts) == 3 && h.One != "" && h.Many != "" || len(parts) == 1 {
			out = append(out, h)
			continue
		}
		h.Name = source[m[0]+1 : m[1]-1] // no value has such a name, and so it is reported
		h.One, h.Many = "", ""
		out = append(out, h)
	}
	return out
}

// hidden is a text in which a character that the author does not use stands for each value, so that no sign of a value is taken
// for markup.
type hidden struct {
	text   string
	source []byte
	holes  map[rune]*Hole
	marks  []mark
}

// mark says where a hidden value stands: in the text that is read, and in that of the author.
type mark struct{ end, at int }

// firstHidden starts the characters that stand for values. They are private to a program by the character standard.
const firstHidden, lastHidden = '\uE000', '\uF8FF'

func hide(source string) *writer {
	h := &hidden{text: source, holes: map[rune]*Hole{}}
	var b strings.Builder
	next, from := firstHidden, 0
	for _, hole := range Holes(source) {
		for next <= lastHidden && strings.ContainsRune(source, next) {
			next++
		}
		if next > lastHidden {
			break
		}
		b.WriteString(source[from:hole.From])
		b.WriteRune(next)
		h.holes[next] = &hole
		h.marks = append(h.marks, mark{b.Len(), hole.To})
		next, from = next+1, hole.To
	}
	b.WriteString(source[from:])
	h.source = []byte(b.String())
	return &writer{hidden: h}
}

// at is a place of the text that is read, in the text of the author.
func (h *hidden) at(i int) int {
	moved := 0
	for _, m := range h.marks {
		if i >= m.end {
			moved = m.at - m.end
		}
	}
	return min(i+moved, len(h.text))
}

// shown puts the values back as the author wrote them.
func (h *hidden) shown(s string) string {
	for r, hole := range h.holes {
		s = strings.ReplaceAll(s, string(r), h.text[hole.From:hole.To])
	}
	return s
}

// plain writes text in a style, with values in the place of their characters.
func (h *hidden) plain(s string, style Run) []Run {
	var out []Run
	put := func(part string) {
		if part != "" {
			r := style
			r.Text = unescaped(part)
			out = append(out, r)
		}
	}
	from := 0
	for i, r := range s {
		hole, ok := h.holes[r]
		if !ok {
			continue
		}
		put(s[from:i])
		from = i + len(string(r))
		one := style
		one.Hole = hole
		out = append(out, one)
	}
	put(s[from:])
	return out
}
