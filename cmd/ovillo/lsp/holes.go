package lsp

import "ovillo/lang/markdown"

// hole is the name of a value that a text puts in, with its place in the text.
type hole struct {
	name     string
	from, to int
}

func holes(text string) []hole {
	var out []hole
	for _, h := range markdown.Holes(text) {
		from := h.From + 1
		for from < h.To && (text[from] == ' ' || text[from] == '\t') {
			from++
		}
		out = append(out, hole{h.Name, from, from + len(h.Name)})
	}
	return out
}
