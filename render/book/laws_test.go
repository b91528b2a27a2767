package book

import (
	"math"
	"strings"
	"testing"

	"ovillo/render/font"
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/proof"
)

// ink is where a run of glyphs stands: from the top of its capitals to a little below its baseline.
type ink struct {
	left, top, right, bottom float64
	g                        page.Glyphs
}

func inkOf(g page.Glyphs) ink {
	f := font.Of(g.Face)
	return ink{g.X, g.Base - f.CapHeight(g.Size), g.X + f.Tracked(g.Text, g.Size, g.Track), g.Base + f.Descent(g.Size)*0.4, g}
}

func inks(p page.Page) []ink {
	var list []ink
	for _, it := range p.Items {
		if g, ok := it.(page.Glyphs); ok {
			list = append(list, inkOf(g))
		}
	}
	return list
}

const hair = 0.02 // millimetres of tolerance

// TestPagesKeepTheLaws: nothing is outside the block, no text meets another, heads are followed, rows are whole, and all that
// package proof looks at.
func TestPagesKeepTheLaws(t *testing.T) {
	for _, paper := range []Paper{A4, A5, Phone} {
		w, h := paper.Block()
		_, _, left, top := paper.Sheet()
		promise := proof.Promise{Block: proof.Rect{X: left, Y: top, W: w, H: h}}
		for _, e := range editions {
			t.Run(paper.String()+" "+e.name, func(t *testing.T) {
				for _, f := range proof.Look(e.compose(t, paper), promise) {
					t.Error(f)
				}
			})
		}
	}
}

// TestTextKeepsOffTheSpine: with two languages the axis is free but for what belongs to it. Figures of many sizes, tapes
// and tables for both go across.
func TestTextKeepsOffTheSpine(t *testing.T) {
	for _, e := range editions {
		if len(e.langs) != 2 || e.sizes > 5 {
			continue
		}
		t.Run(e.name, func(t *testing.T) {
			for i, p := range e.compose(t, A4).Pages {
				for _, k := range inks(p) {
					tag := ""
					if k.g.Elem != nil {
						tag = k.g.Elem.Tag
					}
					masthead := i == 0 && k.top < 21+usual.mastheadType.Leading*2
					if tag == "TH" || tag == "TD" || tag == "Span" || tag == "Figure" || tag == "" || masthead {
						continue
					}
					if k.left < 15+usual.spineL-hair && k.right > 15+usual.spineL+hair || k.left < 15+usual.spineR-hair && k.right > 15+usual.spineR+hair {
						t.Errorf("page %d: %q from %.1f to %.1f", i+1, k.g.Text, k.left-15, k.right-15)
					}
				}
			}
		})
	}
}

// placedText is a piece of text of one element.
type placedText struct {
	page int
	y    float64
	g    page.Glyphs
}

// textOf lists the text below an element, page by page in the order of drawing.
func textOf(doc *page.Document, e *page.Elem) []placedText {
	inside := map[*page.Elem]bool{}
	var mark func(e *page.Elem)
	mark = func(e *page.Elem) {
		inside[e] = true
		for _, k := range e.Kids {
			mark(k)
		}
	}
	mark(e)
	var list []placedText
	for i, p := range doc.Pages {
		for _, it := range p.Items {
			if g, ok := it.(page.Glyphs); ok && inside[g.Elem] {
				list = append(list, placedText{i, g.Base, g})
			}
		}
	}
	return list
}

// walk calls f for every element.
func walk(e *page.Elem, f func(e *page.Elem)) {
	f(e)
	for _, k := range e.Kids {
		walk(k, f)
	}
}

// items lists the list items that are steps of parts: those with a label and a body whose text is instructions.
func stepItems(doc *page.Document) []*page.Elem {
	var list []*page.Elem
	for _, sect := range doc.Root.Kids {
		for _, k := range sect.Kids {
			if k.Tag != "L" || !hasHere(sect) {
				continue
			}
			list = append(list, k.Kids...)
		}
	}
	return list
}

// hasHere reports whether a section has a head of a part: a number before its name.
func hasHere(sect *page.Elem) bool {
	for _, k := range sect.Kids {
		if k.Tag == "H2" {
			return true
		}
	}
	return false
}

// TestRowsFace: both languages of a row start at the same height, and so do their counts.
func TestRowsFace(t *testing.T) {
	for _, e := range editions {
		if len(e.langs) != 2 {
			continue
		}
		t.Run(e.name, func(t *testing.T) {
			doc := e.compose(t, A4)
			rows := 0
			for _, item := range stepItems(doc) {
				var first, last [2]float64
				var seen [2]bool
				for _, x := range textOf(doc, item) {
					side := 0
					if x.g.X >= 15+usual.spineR-hair {
						side = 1
					}
					y := float64(x.page)*1000 + x.y
					if !seen[side] || y < first[side] {
						first[side] = y
					}
					if !seen[side] || y > last[side] {
						last[side] = y
					}
					seen[side] = true
				}
				if !seen[0] || !seen[1] {
					continue
				}
				rows++
				if math.Abs(first[0]-first[1]) > hair {
					t.Errorf("a row starts at %.2f and %.2f", first[0], first[1])
				}
			}
			if rows < 15 {
				t.Errorf("only %d rows have two sides", rows)
			}
		})
	}
}

// TestEveryStepIsPrintedOnce: the text of every step stands in the document once in each language, and in the order of
// the pattern.
func TestEveryStepIsPrintedOnce(t *testing.T) {
	for _, e := range editions {
		if e.sizes > 5 {
			continue // there the lists in the sentences are letters
		}
		t.Run(e.name, func(t *testing.T) {
			p, doc := e.pattern(), e.compose(t, A4)
			for _, l := range languages(t, e.langs...) {
				var printed strings.Builder
				for _, item := range stepItems(doc) {
					walk(item, func(k *page.Elem) {
						if k.Lang == l.Tag() && k.Tag == "P" {
							for _, x := range textOf(doc, k) {
								printed.WriteString(x.g.Text)
							}
							printed.WriteByte('\n')
						}
					})
				}
				text, from := squeezed(printed.String()), 0
				for _, part := range p.Parts {
					for _, step := range part.Steps {
						want := squeezed(l.Step(p, part, step).Body.String())
						at := strings.Index(text[from:], want)
						if at < 0 {
							t.Fatalf("%s: not in its place: %q", l.Tag(), l.Step(p, part, step).Body)
						}
						from += at + len(want)
					}
				}
			}
		})
	}
}

// squeezed drops what line breaking may drop.
func squeezed(s string) string {
	return strings.NewReplacer(" ", "", "\u00A0", "", "\n", "").Replace(s)
}

// TestHeightsAreModules: every strip is a whole number of quarter lines high, and so is the white above it, but for the
// tables, whose lines are 5.5 mm.
func TestHeightsAreModules(t *testing.T) {
	for _, e := range editions {
		t.Run(e.name, func(t *testing.T) {
			s := newSetter(e.pattern(), Options{}, languages(t, e.langs...), &page.Elem{Tag: "Document"})
			s.front()
			s.howToRead()
			s.abbreviations()
			s.specials()
			s.parts()
			s.finishing()
			s.colophon()
			for i, strip := range s.flow {
				for _, v := range []float64{strip.H, strip.Space, strip.Give} {
					if q := v / layout.Module; math.Abs(q-math.Round(q)) > 1e-6 {
						t.Errorf("strip %d: height %v, space %v, gives %v", i, strip.H, strip.Space, strip.Give)
						break
					}
				}
			}
		})
	}
}
