package words

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// StitchWords lists the words by which the stitches of a pattern are known on its pages, the abbreviation first, from short
// stitches to tall ones, the designer's own last. The order is the same in every language, so that the words at one place mean
// one stitch. PlaceWords are the same for the chain, the stitch and the chain space, into which they are worked.
func (l *Language) StitchWords(p *plan.Pattern) [][]string {
	c := l.context(p, nil, nil)
	var out [][]string
	add := func(n noun, names ...string) {
		list := []string{n.one.String(), n.many.String()}
		for _, t := range []rich.Text{n.one, n.many} {
			for _, r := range t {
				list = append(list, r.Expand)
			}
		}
		var words []string
		for _, w := range append(list, names...) {
			if w != "" && !slices.Contains(words, w) {
				words = append(words, w)
			}
		}
		out = append(out, words)
	}
	for _, f := range c.printedForms() {
		if f.ID != stitch.Chain {
			add(c.l.voice.form(f), c.l.voice.formName(f))
		}
	}
	for i := range p.Own {
		add(l.ownNoun(&p.Own[i], stitch.Form{}))
	}
	return out
}

// PlaceWords lists the words for a chain, a stitch and a chain space, in this order. See StitchWords. A space has its short word
// alone: what stands between two stitches is a space as well.
func (l *Language) PlaceWords() [3][]string {
	full := func(concept string) []string {
		t := l.read.term(concept)
		return []string{t.Short, t.Shorts, t.One, t.Many}
	}
	return [3][]string{full("ch"), full("st"), full("sp")[:2]}
}
