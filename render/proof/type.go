package proof

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"ovillo/render/font"
	"ovillo/render/page"
)

// Measures of type.
const (
	leastX       = 1.2  // millimetres from the baseline to the top of an x: TYPE-01
	mostRunes    = 70   // in a line of running text: TYPE-06
	leastLeading = 1.25 // of the size: TYPE-08
	largeLeading = 1.15 // LARG-03
	leastHead    = 20.0 // points: LARG-02
)

// letters looks at the letters of a page: faces, sizes, lines.
func (l *looker) letters(n int) {
	for _, k := range l.sheets[n].texts {
		g := k.g
		f := font.Of(g.Face)
		for _, r := range f.Missing(g.Text) {
			l.at(Missing, n, k, fmt.Sprintf("U+%04X in %s", r, f.Name()))
		}
		size := fmt.Sprintf("%.2f points", g.Size)
		small := Small
		if l.promise.Large {
			small = LargeSmall
		}
		if g.Size < l.promise.Least-1e-9 {
			l.at(small, n, k, size)
		}
		if f.XHeight(g.Size) < leastX-1e-9 {
			l.at(SmallBody, n, k, size)
		}
		if l.promise.Large && isHead(g.Elem) && g.Size < leastHead-1e-9 {
			l.at(LargeHead, n, k, size)
		}
		if g.Angle != 0 {
			l.at(Rotated, n, k, fmt.Sprintf("%.0f degrees", g.Angle))
		}
	}
	l.running(n)
}

// running looks at the lines of running text: how long they are, how far apart, and in which language their neighbours are.
func (l *looker) running(n int) {
	for _, block := range l.blocks(n) {
		if !prose(block.elem) {
			continue
		}
		lines := linesOf(block.texts)
		for i, line := range lines {
			if length := utf8.RuneCountInString(strings.TrimSpace(line.text)); length > mostRunes && len(lines) > 1 {
				l.fault(LongLine, n, line.left, line.base, line.text, fmt.Sprintf("%d characters", length))
			}
			if i == 0 {
				continue
			}
			ratio := (line.base - lines[i-1].base) / (line.size * millimetres)
			rule, least := Tight, leastLeading
			if l.promise.Large {
				rule, least = LargeTight, largeLeading
			}
			if ratio < least-1e-6 {
				l.fault(rule, n, line.left, line.base, line.text, fmt.Sprintf("%.2f", ratio))
			}
		}
	}
	if l.promise.Large {
		l.facing(n)
	}
}

// block is the text of one paragraph on a page: that of its element, and of the links in it.
type block struct {
	elem  *page.Elem
	texts []ink
}

// blocks gathers the paragraphs of a page: not its headings, whose lines are few and tight, nor its figures.
func (l *looker) blocks(n int) []block {
	var list []block
	at := map[*page.Elem]int{}
	for _, k := range l.sheets[n].texts {
		e := l.tree.paragraph(k.g.Elem)
		if e == nil || isHead(e) || e.Tag == "Figure" {
			continue
		}
		i, ok := at[e]
		if !ok {
			i = len(list)
			at[e] = i
			list = append(list, block{elem: e})
		}
		list[i].texts = append(list[i].texts, k)
	}
	return list
}

// prose reports whether an element is text that is read line after line.
func prose(e *page.Elem) bool { return e.Tag == "P" || e.Tag == "LBody" || e.Tag == "Note" }

// line is what stands on one baseline of a paragraph.
type line struct {
	left, base, size float64
	text             string
}

// sunk is how far below the others a text of a line may stand, in ems: a letter in a ring, a raised figure.
const sunk = 0.3

func linesOf(texts []ink) []line {
	texts = slices.Clone(texts)
	slices.SortStableFunc(texts, func(a, b ink) int { return cmp.Compare(a.g.Base, b.g.Base) })
	var lines []line
	right := 0.0
	for i, k := range texts {
		if last := len(lines) - 1; i > 0 && k.g.Base-lines[last].base <= sunk*k.g.Size*millimetres {
			l := &lines[last]
			if k.left-right > 2 {
				l.text = "" // what stands far off is another column
			}
			l.text += k.g.Text
			l.size = max(l.size, k.g.Size)
		} else {
			lines = append(lines, line{k.left, k.g.Base, k.g.Size, k.g.Text})
		}
		right = k.right
	}
	return lines
}

// facing finds texts in two languages side by side.
func (l *looker) facing(n int) {
	lang := map[int]string{}
	for _, k := range l.sheets[n].texts {
		said := l.tree.lang[k.g.Elem]
		if k.g.Elem == nil || said == "" {
			continue
		}
		at := int(k.g.Base*10 + 0.5)
		if other, ok := lang[at]; ok && other != said {
			l.at(LargeFacing, n, k, other+" and "+said)
		}
		lang[at] = said
	}
}
