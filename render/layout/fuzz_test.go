package layout

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"ovillo/render/rich"
)

// FuzzLayout draws paragraphs, flows and sheets of all kinds, and asks of them what is asked everywhere: letters are lost nowhere and
// stand in their column, strips stand each once, in their order, and on their sheets.
func FuzzLayout(f *testing.F) {
	f.Fuzz(rapid.MakeFuzz(func(t *rapid.T) {
		breakLaws(t)
		sheetLaws(t)
	}))
}

// FuzzBreak breaks any text in a column of any width: no line is wider than it.
func FuzzBreak(f *testing.F) {
	f.Add("Work 12 (14, 16) dc in each ch-3 sp around, join.", 40.0, 3.0, 0)
	f.Add("año\u0301\u00ad\u200b— ½\u00a0\n\n1.ª", 8.0, 0.0, 3)
	f.Fuzz(func(t *testing.T, text string, measure, indent float64, strong int) {
		if math.IsNaN(measure) || measure < 8 || measure > 1000 || math.IsNaN(indent) || indent < 0 || indent > measure/2 || len(text) > 2000 {
			return
		}
		cut := min(max(strong, 0), len(text))
		lines := Break(rich.Text{{Text: text[:cut], Strong: true}, {Text: text[cut:]}}, body, measure, indent)
		for _, l := range lines {
			if l.End() > measure+tolerance && len([]rune(l.String())) > 1 {
				t.Errorf("line %q ends at %.3f in a column of %.3f", l, l.End(), measure)
			}
		}
	})
}
