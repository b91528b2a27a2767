package lang

import (
	"strings"

	"ovillo/lang/lazy"
)

// braces are a name between braces; a word that goes with its number may follow.
var braces = lazy.Regexp(`\{[\pL\pN_.]+`)

// inBraces turns what stands between braces in a text.
func (t *tongue) inBraces(text string, own map[string]bool, turn func(*tongue, string, vocabulary, map[string]bool) string) string {
	if !strings.Contains(text, "{") {
		return text
	}
	return braces().ReplaceAllStringFunc(text, func(s string) string {
		return "{" + t.braced(s[1:], own, turn)
	})
}

// braced turns one name between braces: a stitch, or a measure of the wearer.
func (t *tongue) braced(name string, own map[string]bool, turn func(*tongue, string, vocabulary, map[string]bool) string) string {
	head, rest, path := strings.Cut(name, ".")
	switch {
	case own[head]:
		return name
	case path && isFit(head):
		return turn(t, head, fitNames, own) + "." + turn(t, rest, measureNames, own)
	case path:
		return name
	}
	return turn(t, name, stitchNames, own)
}

// Braced is a text of the source with what stands between its braces as the tree would have it: in a source that is not in
// English a stitch, or a measure of the wearer, goes by its name there.
func (f *File) Braced(text string) string {
	if f.tongue == nil {
		return text
	}
	return f.tongue.inBraces(text, f.own, (*tongue).english)
}

// Named is what a name between braces in a text is called in the tree: see [File.Braced].
func (f *File) Named(name string) string {
	if f.tongue == nil {
		return name
	}
	return f.tongue.braced(name, f.own, (*tongue).english)
}
