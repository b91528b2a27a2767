package whole

import (
	"strings"

	"ovillo/render/page"
	"ovillo/render/parallel"
)

// So that the comparison of the languages is seen to fail, the Spanish of finished pages is tampered with here, one thing at a
// time: on the pages of the leggings in both languages.

// Unlike is what is done to the Spanish of the pages, what must be said to differ, and how often at least.
var Unlike = []struct {
	Name   string
	Kind   parallel.Kind
	Told   string                      // what the report says
	Change func(d *page.Document) bool // false: there was nothing to change
}{
	{"a number", parallel.Numbers, "other numbers", onSpanish(is("4\u00a0vueltas: 2\u00a0"), write("4\u00a0vueltas: 3\u00a0"))},
	{"how often", parallel.Numbers, "other numbers", onSpanish(says("; 2\u00a0años\u00a058"), write("58", "; 2\u00a0años\u00a059"))},
	{"what is printed for a size, not what is said", parallel.Numbers, "other numbers", onSpanish(says("; 2\u00a0años\u00a058"), write("59", "; 2\u00a0años\u00a058"))},
	{"a count", parallel.Numbers, "other numbers", onSpanish(says("4\u00a0años 124"), write("125", "4\u00a0años 125"))},
	{"a count of another size", parallel.Numbers, "other numbers", onSpanish(says("4\u00a0años 124"), write("120", "4\u00a0años 120"))},
	{"the numbers of rounds", parallel.Numbers, "other numbers", onSpanish(is("Vueltas\u00a02 a\u00a05"), write("Vueltas\u00a02 a\u00a06"))},
	{"the rounds of a size", parallel.Numbers, "other numbers", onSpanish(says("1\u00a0año 2–18, "), write("3–18", "1\u00a0año 3–18, "))},
	{"a hook", parallel.Numbers, "other numbers", onSpanish(holds("3,75\u00a0mm. Vueltas"), write("Arena\u00a0(A), ganchillo de 3,5\u00a0mm."))},
	{"which chain is joined to", parallel.Numbers, "other numbers", onSpanish(is(" en la 3.ª\u00a0"), write(" en la 2.ª\u00a0"))},
	{"a stitch", parallel.Stitches, "other stitches", onSpanish(is("pma\u00a0rel\u00a0del"), write("pma\u00a0rel\u00a0det"))},
	{"a taller stitch", parallel.Stitches, "other stitches", onSpanish(is(" en el primer\u00a0pma."), write(" en el primer\u00a0pa."))},
	{"a chain for a stitch", parallel.Stitches, "other stitches", onSpanish(is("primera "), write("primer pd de la "))},
	{"a round", parallel.Missing, "the other does not", withoutSpanishItem("Vuelta\u00a01")},
	{"a heading", parallel.Missing, "the other does not", onSpanish(is("Comienzo"), write(""))},
}

func is(text string) func(g page.Glyphs) bool {
	return func(g page.Glyphs) bool { return g.Text == text }
}

func says(text string) func(g page.Glyphs) bool {
	return func(g page.Glyphs) bool { return g.Actual == text }
}

func holds(text string) func(g page.Glyphs) bool {
	return func(g page.Glyphs) bool { return strings.Contains(g.Text, text) }
}

// write puts another text in the place of one, and of what is said for it.
func write(text string, said ...string) func(g *page.Glyphs) {
	return func(g *page.Glyphs) { g.Text, g.Actual = text, strings.Join(said, "") }
}

// onSpanish changes the first Spanish text behind the glossary that is wanted.
func onSpanish(wanted func(g page.Glyphs) bool, change func(g *page.Glyphs)) func(d *page.Document) bool {
	return func(d *page.Document) bool {
		for i := range d.Pages[4:] {
			items := d.Pages[4+i].Items
			for k := range items {
				// An abbreviation that leads to its row is in a link, which has the language of its sentence.
				if g, ok := items[k].(page.Glyphs); ok && g.Elem != nil && (g.Elem.Lang == "es" || g.Elem.Tag == "Link") && wanted(g) {
					change(&g)
					items[k] = g
					return true
				}
			}
		}
		return false
	}
}

// withoutSpanishItem takes the Spanish of the first step with a label off the pages.
func withoutSpanishItem(label string) func(d *page.Document) bool {
	return func(d *page.Document) bool {
		var of *page.Elem
		onSpanish(is(label), func(g *page.Glyphs) { of = g.Elem })(d)
		for _, li := range Elems(d, "LI") {
			if len(li.Kids) < 2 || !contains(li.Kids[1].Kids, of) {
				continue
			}
			for i := range d.Pages {
				var kept []page.Item
				for _, it := range d.Pages[i].Items {
					if g, ok := it.(page.Glyphs); !ok || g.Elem == nil || g.Elem.Lang != "es" || !contains(li.Kids[1].Kids, g.Elem) {
						kept = append(kept, it)
					}
				}
				d.Pages[i].Items = kept
			}
			return true
		}
		return false
	}
}

func contains(list []*page.Elem, e *page.Elem) bool {
	for _, k := range list {
		if k == e {
			return true
		}
	}
	return false
}

// Elems are the elements of a document with a tag.
func Elems(d *page.Document, tag string) []*page.Elem {
	var out []*page.Elem
	var down func(e *page.Elem)
	down = func(e *page.Elem) {
		if e.Tag == tag {
			out = append(out, e)
		}
		for _, k := range e.Kids {
			down(k)
		}
	}
	down(d.Root)
	return out
}
