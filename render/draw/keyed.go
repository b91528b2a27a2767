package draw

import (
	"math"
	"strings"

	"ovillo/render/font"
	"ovillo/render/page"
	"ovillo/render/scene"
	"ovillo/render/words"
)

// The key under a drawing that stands by itself, in millimetres.
const (
	keyedGap   = 5.0 // from the drawing to its key
	keyedEm    = 3.2 // the type
	keyedLine  = 4.4
	keyedSpace = 1.8 // between two lines of the key
	keyedApart = 4.0 // from a symbol to its words, and from one language to the other
	keyedLeast = 60.0
)

// Keyed is a drawing with its key below: each symbol, and beside it what it stands for in each language. The key reads from left to
// right whichever way the drawing runs, so a drawing in the mirror is mirrored before it gets its key. The drawing stays as wide
// as it is, unless the key needs more.
func Keyed(s *scene.Scene, key []KeyItem, langs ...*words.Language) *scene.Scene {
	if s == nil || len(key) == 0 || len(langs) == 0 {
		return s
	}
	out := *s
	out.Items = append([]scene.Item(nil), s.Items...)
	symbol := 0.0
	for _, k := range key {
		symbol = max(symbol, k.Symbol.W)
	}
	out.W = max(out.W, keyedLeast)
	text := symbol + keyedApart
	beside := true // the languages stand beside one another where all of the key has room for that
	column := (out.W - text - keyedApart*float64(len(langs)-1)) / float64(len(langs))
	for _, k := range key {
		for _, l := range langs {
			beside = beside && keyedWidth(k.Says[l.Tag()]) <= column
		}
	}
	y := out.H + keyedGap
	for i, k := range key {
		if i > 0 {
			y += keyedSpace
		}
		var lines []scene.Label
		high := 0.0
		for n, l := range langs {
			at, down, room := text, high, out.W-text
			if beside {
				at, down, room = text+float64(n)*(column+keyedApart), 0, column
			}
			for r, line := range wrapped(k.Says[l.Tag()], room) {
				top := down + keyedLine*float64(r)
				lines = append(lines, scene.Label{X: at, Y: top + keyedLine/2, Text: line, Height: keyedEm, Face: page.Sans, Anchor: scene.Start})
				high = max(high, top+keyedLine)
				out.W = max(out.W, at+keyedWidth(line))
			}
		}
		tall := max(high, k.Symbol.H)
		for _, it := range k.Symbol.Items {
			out.Items = append(out.Items, shifted(it, vec{(symbol - k.Symbol.W) / 2, y + (tall-k.Symbol.H)/2}))
		}
		for _, l := range lines {
			l.Y += y + (tall-high)/2
			out.Items = append(out.Items, l)
		}
		y += tall
	}
	out.H = y
	return &out
}

// shifted is an item somewhere else.
func shifted(it scene.Item, by vec) scene.Item {
	switch it := it.(type) {
	case scene.Path:
		return moved(it, by)
	case scene.Label:
		it.X, it.Y = it.X+by.x, it.Y+by.y
		return it
	}
	return it
}

func keyedWidth(s string) float64 { return font.Of(page.Sans).Width(s, keyedEm*72/25.4) }

// wrapped breaks a text into lines no wider than a room, between words.
func wrapped(s string, room float64) []string {
	var out []string
	line := ""
	for word := range strings.SplitSeq(s, " ") { // a hard space is none at which a line may end
		if line != "" && keyedWidth(line+" "+word) > math.Max(room, 1) {
			out, line = append(out, line), ""
		}
		line = strings.TrimPrefix(line+" "+word, " ")
	}
	if line != "" {
		out = append(out, line)
	}
	return out
}
