package book

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/page"
)

// Index says on which page of an edition something stands.
type Index struct {
	labels []string // of the pages
	steps  map[stepOf]int
	texts  []foundText
}

// stepOf is a step of a part; nil is its start.
type stepOf struct {
	part *plan.Part
	step plan.Step
}

// foundText is the text of an element without blanks, and its page.
type foundText struct {
	text string
	page int
}

// foundAs notes the element of the step that was just set.
func (s *setter) foundAs(part *plan.Part, step plan.Step) {
	s.stepElems[stepOf{part, step}] = s.list.Kids[len(s.list.Kids)-1]
}

// IndexOf sets a pattern and says where everything came to stand. Of a language that has pages of its own behind another's only
// those of the first are known.
func IndexOf(p *plan.Pattern, o Options) (*Index, error) {
	doc, volumes, err := compose(p, o)
	if err != nil {
		return nil, err
	}
	x := &Index{steps: map[stepOf]int{}}
	blocks := map[*page.Elem]*page.Elem{}
	parents := map[*page.Elem]*page.Elem{}
	var down func(e, block *page.Elem)
	down = func(e, block *page.Elem) {
		if e.Tag != "Link" && e.Tag != "Span" {
			block = e
		}
		blocks[e] = block
		for _, k := range e.Kids {
			parents[k] = e
			down(k, block)
		}
	}
	down(doc.Root, doc.Root)
	first := map[*page.Elem]int{}
	texts := map[*page.Elem]*strings.Builder{}
	var order []*page.Elem
	for n, pg := range doc.Pages {
		x.labels = append(x.labels, pg.Label)
		for _, it := range pg.Items {
			g, ok := it.(page.Glyphs)
			if !ok || g.Elem == nil {
				continue
			}
			for e := g.Elem; e != nil; e = parents[e] {
				if _, known := first[e]; known {
					break
				}
				first[e] = n
			}
			block := blocks[g.Elem]
			if texts[block] == nil {
				texts[block] = &strings.Builder{}
				order = append(order, block)
			}
			texts[block].WriteString(g.Text)
		}
	}
	for _, e := range order {
		x.texts = append(x.texts, foundText{solid(texts[e].String()), first[e]})
	}
	for i := len(volumes) - 1; i >= 0; i-- {
		for step, e := range volumes[i].stepElems {
			if n, known := first[e]; known {
				x.steps[step] = n
			}
		}
	}
	return x, nil
}

// solid is a text without blanks and without the hyphens at which lines end.
func solid(text string) string {
	return strings.Map(func(r rune) rune {
		if strings.ContainsRune(" \u00a0\u202f\n\u00ad-", r) {
			return -1
		}
		return r
	}, text)
}

// Step is the page of a step of a part, of its start for nil; "" if it is not printed.
func (x *Index) Step(part *plan.Part, step plan.Step) string {
	if n, known := x.steps[stepOf{part, step}]; known {
		return x.labels[n]
	}
	return ""
}

// Text is the page of a text: of one that stands alone before one that only begins so, and that before one that holds it. It is ""
// if there is none.
func (x *Index) Text(text string) string {
	key := solid(text)
	if key == "" {
		return ""
	}
	for _, is := range []func(s, key string) bool{func(s, key string) bool { return s == key }, strings.HasPrefix, strings.Contains} {
		for _, t := range x.texts {
			if is(t.text, key) {
				return x.labels[t.page]
			}
		}
	}
	return ""
}
