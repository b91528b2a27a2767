package report

import (
	"cmp"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/parallel"
	"ovillo/render/words"
)

var (
	whyOneLanguage = text{"the pattern is in one language", "el patrón está en un solo idioma"}

	unlikePassage = text{
		"{edition}, “{part}”: what one language says, the other does not: “{one}”, “{other}”",
		"{edition}, «{part}»: lo que dice un idioma no lo dice el otro: «{one}», «{other}»"}
	unlikeNumbers = text{
		"{edition}, “{part}”: other numbers in one language ({has}) than in the other ({hasOther}): “{one}”, “{other}”",
		"{edition}, «{part}»: los números de un idioma ({has}) no son los del otro ({hasOther}): «{one}», «{other}»"}
	unlikeStitches = text{
		"{edition}, “{part}”: other stitches in one language ({has}) than in the other ({hasOther}): “{one}”, “{other}”",
		"{edition}, «{part}»: los puntos de un idioma ({has}) no son los del otro ({hasOther}): «{one}», «{other}»"}
	unlike = text{"{part}, step {n}: {one} in one language and {other} in the other", "{part}, paso {n}: {one} en un idioma y {other} en el otro"}
)

// unlikeTold are the words for what may differ between the pages of two languages.
var unlikeTold = map[parallel.Kind]text{
	parallel.Missing: unlikePassage, parallel.Numbers: unlikeNumbers, parallel.Stitches: unlikeStitches,
}

// lookLanguages compares what the languages of the pattern say: the counts of every step as they are written, and the pages, passage
// by passage, with their numbers, measures and stitches.
func lookLanguages(s *subject) look {
	if len(s.p.Languages) < 2 {
		return look{why: whyOneLanguage}
	}
	var langs []*words.Language
	for _, code := range s.p.Languages {
		if w, err := words.For(code); err == nil {
			langs = append(langs, w.Keeping(s.p))
		}
	}
	if len(langs) < 2 {
		return look{why: whyOneLanguage}
	}
	n := 0
	l := look{fabric: true}
	for i, part := range s.p.Parts {
		for k, step := range part.Steps {
			n++
			one, other := countOf(langs[0], s.p, part, step), countOf(langs[1], s.p, part, step)
			if !slices.Equal(one, other) {
				l.findings = append(l.findings, s.own(Error, unlike, "part", s.in.Words.PartTitle(s.p, i), "n", s.number(k+1),
					"one", strings.Join(one, " "), "other", strings.Join(other, " ")))
			}
		}
	}
	l.at = []amount{{n, nStepsPrinted}, {s.in.Source.Texts, nTexts}}
	if passages := s.unlikePages(&l); passages > 0 {
		l.at = append(l.at, amount{passages, nPassages})
	}
	return l
}

// unlikePages compares the pages in one language with those in the next, in a layout of both or in one layout each, and returns
// how many passages were compared.
func (s *subject) unlikePages(l *look) int {
	type pages struct {
		edition string
		langs   int // of the edition
		words   *words.Language
		said    []parallel.Passage
	}
	var all []pages
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		said := parallel.Of(e.Doc)
		for _, w := range e.Langs {
			all = append(all, pages{e.name(), len(e.Langs), w, parallel.In(said, w.Tag())})
		}
	}
	n := 0
	for i := 1; i < len(all); i++ {
		a, b := all[i-1], all[i]
		if a.langs != b.langs {
			continue
		}
		edition := a.edition
		if b.edition != edition {
			edition += " / " + b.edition
		}
		n += len(a.said)
		found := parallel.Compare(a.said, b.said, parallel.ReadingOf(a.words, s.p), parallel.ReadingOf(b.words, s.p))
		for _, d := range found[:min(len(found), mostFaults)] {
			l.findings = append(l.findings, s.own(Error, unlikeTold[d.Kind], "edition", edition, "part", cmp.Or(d.Head, d.OtherHead),
				"one", excerpt(d.One), "other", excerpt(d.Other), "has", strings.Join(d.Has, ", "), "hasOther", strings.Join(d.OtherHas, ", ")))
		}
	}
	return n
}

// countOf are the figures of the count of a step as a language prints them.
func countOf(w *words.Language, p *plan.Pattern, part *plan.Part, step plan.Step) []string {
	st := w.Step(p, part, step)
	if st.Count == nil {
		return nil
	}
	if st.Count.Slots != nil {
		return st.Count.Slots
	}
	return digits(st.Count.Line.String())
}
