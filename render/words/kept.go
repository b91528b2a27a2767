package words

import (
	"slices"
	"sync"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// kept is what a language has found out and written about one pattern, so that it does so once: the pages print each step, and
// the table of abbreviations is made of what they print.
type kept struct {
	p             *plan.Pattern
	beginnings    func() *beginnings
	abbreviations func() []Abbreviation

	mu    sync.Mutex
	steps map[stepOf]StepText
}

type stepOf struct {
	part *plan.Part
	step plan.Step
}

// Keeping returns the language ready to set a pattern, which must not change from then on: each step of it and its
// abbreviations are written once and kept as long as the language returned is. Their texts are not to be changed in place.
// About other patterns, and in another manner, it writes as before.
func (l *Language) Keeping(p *plan.Pattern) *Language {
	if l.keeps(p) {
		return l
	}
	k := *l
	k.kept = &kept{
		p:             p,
		beginnings:    sync.OnceValue(func() *beginnings { return beginningsOf(p) }),
		abbreviations: sync.OnceValue(func() []Abbreviation { return k.abbreviations(p) }),
		steps:         map[stepOf]StepText{},
	}
	return &k
}

func (l *Language) keeps(p *plan.Pattern) bool { return l.kept != nil && l.kept.p == p }

// step returns the text of a step, which is written if nobody has asked for it. Two who ask at once both write it.
func (k *kept) step(part *plan.Part, s plan.Step, write func() StepText) StepText {
	key := stepOf{part, s}
	k.mu.Lock()
	st, ok := k.steps[key]
	k.mu.Unlock()
	if ok {
		return st
	}
	st = write().clipped()
	k.mu.Lock()
	k.steps[key] = st
	k.mu.Unlock()
	return st
}

// clipped is the text without room behind it: who adds to one of two copies does not write into the other.
func (st StepText) clipped() StepText {
	for _, t := range []*rich.Text{&st.Only, &st.Label, &st.Body} {
		*t = slices.Clip(*t)
	}
	st.Slots = slices.Clip(st.Slots)
	return st
}
