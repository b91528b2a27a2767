package book

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"ovillo/render/layout"
)

// headline is the line at the top of every page but the first: the title, and the size where there is only one.
func (s *setter) headline() layout.Box {
	return s.each(func(sd side) layout.Box {
		text := sd.l.Title(s.p)
		if s.sizes == 1 {
			text += ", " + sd.l.InSize(s.p.Sizes[0])
		}
		text = strings.Join(append([]string{text}, s.kinds(sd)...), " · ")
		return layout.Text(shortened(text, s.runningTop, s.headRoom(sd)), s.runningTop, false, sd.margin(), nil)
	})
}

// footer is the line at the foot: edition and terms in each language, and the number of the page on the axis.
func (s *setter) footer(n, of int) layout.Box {
	var b layout.Box
	if s.edition.Has(Large) {
		return layout.Text(s.sides[0].l.PageOf(n, of), s.runningEnd, false, 0, nil)
	}
	for i, sd := range s.sides {
		room := s.columnW - 1
		if !s.two() {
			room = s.blockW - 20
		}
		b.Put(0, 0, layout.Text(s.imprint(sd, i == 0, room), s.runningEnd, false, sd.margin(), nil))
	}
	number := fmt.Sprintf("%d / %d", n, of)
	if s.two() {
		b.Put(0, 0, layout.TextCentred(number, s.runningEnd, true, s.spine, nil))
	} else {
		b.Put(0, 0, layout.TextRight(number, s.runningEnd, true, s.blockW, nil))
	}
	return b
}

// imprint is what the foot says: designer, edition and terms, as much of it as there is room for.
func (s *setter) imprint(sd side, first bool, room float64) string {
	var parts []string
	if first && s.p.By != "" {
		parts = append(parts, s.p.By)
	}
	if edition := sd.l.Edition(s.p); edition != "" {
		if len(parts) > 0 || !first {
			edition = lowerFirst(edition)
		}
		parts = append(parts, edition)
	}
	if !s.header {
		parts = append(parts, s.kinds(sd)...)
	}
	parts = append(parts, sd.l.ReadingNote())
	if own := sd.l.SetFor(s.p); own != "" {
		parts = append(parts, own) // last, so that it stays where there is little room
	}
	text := strings.Join(parts, " · ")
	for len(parts) > 1 && s.runningEnd.Width(text, false) > room {
		parts = parts[1:]
		text = strings.Join(parts, " · ")
	}
	return shortened(text, s.runningEnd, room)
}

// shortened cuts a text that must be one line, at a word, with a sign that it goes on.
func shortened(text string, style layout.Style, room float64) string {
	if style.Width(text, false) <= room {
		return text
	}
	for style.Width(text+"…", false) > room {
		cut := strings.LastIndexAny(text, " \u00A0")
		if cut < 0 {
			_, n := utf8.DecodeLastRuneInString(text)
			cut = len(text) - n
		}
		text = text[:cut]
	}
	return text + "…"
}
