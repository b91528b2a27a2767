package draw

import "ovillo/render/scene"

// KeyItem is one line of the key of a chart: a symbol, and what it stands for in each language by its tag, as plain text.
type KeyItem struct {
	Symbol *scene.Scene
	Says   map[string]string
}
