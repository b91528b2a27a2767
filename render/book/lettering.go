package book

import (
	"strings"

	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// lettering is what becomes of the lists of numbers in the sentences of a row if there are many sizes: the sentence has
// a letter in a circle, and the figures stand in the columns of the sizes below, behind the same letter. Both languages
// share the letters; the same figures have the same letter.
type lettering struct {
	figures [][]string // of the letters a, b, c …
}

const letters = "abcdefghijklmnopqrstuvwxyz"

// letterLists replaces the lists in the texts of a row by letters.
func letterLists(texts []words.StepText) lettering {
	var named lettering
	for i := range texts {
		texts[i].Body = named.replace(texts[i].Body)
		if c := texts[i].Count; c != nil && c.Slots == nil {
			line := *c
			line.Line = named.replace(c.Line)
			texts[i].Count = &line
		}
	}
	return named
}

// replace puts letters in the place of the lists of a text. A list is a run of runs that are spoken otherwise than they
// are written.
func (n *lettering) replace(t rich.Text) rich.Text {
	var out rich.Text
	for i := 0; i < len(t); {
		j := i
		for j < len(t) && t[j].Spoken != "" {
			j++
		}
		if j == i {
			out = append(out, t[i])
			i++
			continue
		}
		figures := listFigures(t[i:j])
		if k := n.index(figures); len(figures) > 1 && k < len(letters) {
			out = append(out, rich.Run{Text: letterRun(letters[k : k+1]), Strong: true, Spoken: spoken(t[i:j])})
		} else {
			out = append(out, t[i:j]...)
		}
		i = j
	}
	return out
}

// roundRoom stands on either side of a letter for its circle: a no-break space and a thin one.
const roundRoom = "\u00A0\u2009"

// letterRun is the letter with room for its circle.
func letterRun(letter string) string { return roundRoom + letter + roundRoom }

// listFigures takes the figures out of a list: 100 (104, 108) gives three. Decimal commas stay, but are told as points
// so that the languages agree.
func listFigures(list rich.Text) []string {
	var out []string
	for _, token := range strings.FieldsFunc(list.String(), func(r rune) bool { return r == ' ' || r == '\u00A0' || r == '(' || r == ')' }) {
		if token = strings.TrimRight(token, ",;"); token != "" {
			out = append(out, strings.ReplaceAll(token, ",", "."))
		}
	}
	return out
}

func spoken(list rich.Text) string {
	var b strings.Builder
	for _, r := range list {
		b.WriteString(r.Spoken)
	}
	return strings.TrimSpace(b.String())
}

// index returns the number of the letter of some figures, a new one if they have none yet.
func (n *lettering) index(figures []string) int {
	key := strings.Join(figures, " ")
	for i, f := range n.figures {
		if strings.Join(f, " ") == key {
			return i
		}
	}
	n.figures = append(n.figures, figures)
	return len(n.figures) - 1
}

// The circle round a letter.
const (
	circleD    = 4.2
	circleLine = 0.22
)

var circleType = layout.Heavy(layout.Serif(8.8, 5))

// circleLetters draws the letters of a text in their circles.
func (k *look) circleLetters(b *layout.Box) {
	items := b.Items
	b.Items = make([]page.Item, 0, len(items))
	for _, it := range items {
		g, ok := it.(page.Glyphs)
		if !ok || g.Actual == "" || !isLetter(g.Text) {
			b.Items = append(b.Items, it)
			continue
		}
		x := g.X + k.labelType.Width(g.Text, true)/2
		circled(b, x, g.Base-k.textType.Baseline(), strings.Trim(g.Text, roundRoom), g.Elem, g.Actual)
	}
}

func isLetter(text string) bool {
	return strings.HasPrefix(text, roundRoom) && len(strings.Trim(text, roundRoom)) == 1
}

// circled draws a letter in a circle with its middle at x, in a line that starts at top.
func circled(b *layout.Box, x, top float64, letter string, elem *page.Elem, actual string) {
	h := b.H
	box := layout.TextCentred(letter, circleType, false, x, elem)
	g := box.Items[0].(page.Glyphs)
	g.Actual = actual
	box.Items[0] = g
	b.Put(0, top, box)
	b.Add(layout.Circle(x, top+circleType.Leading/2+0.15, circleD/2-circleLine/2, circleLine))
	b.H = max(h, top+circleType.Leading)
}
