package report

import (
	"strings"

	"ovillo/render/page"
	"ovillo/render/parallel"
	"ovillo/render/words"
)

// lettered is the largest number of sizes whose lists stand in the sentences. With more, the pages put letters there, and the
// figures into a strip below that serves both languages.
const lettered = 5

// foundStep is a step of a part as it was looked for on the pages.
type foundStep struct {
	st      words.StepText
	at      int    // where it begins in the text; -1 if it is not there
	named   bool   // there was something to look for: a step without a label bounds no other
	behind  string // the text from its own to the next step
	figures []string
}

// stepsIn looks for the steps of all parts in one language of a layout, in the order of the pattern: by their sentences or,
// where those hold letters, by their labels.
func (s *subject) stepsIn(e Edition, nth int) []foundStep {
	w, wide := e.Langs[nth], len(s.p.Sizes) > lettered
	text := spokenIn(e.Doc, w.Tag())
	if wide {
		text = spokenIn(e.Doc, "")
	}
	var list []foundStep
	from := 0
	for _, part := range s.p.Parts {
		for _, step := range part.Steps {
			f := foundStep{st: w.Step(s.p, part, step)}
			key := squeezed(f.st.Body.String())
			if wide {
				key = squeezed(f.st.Label.String())
			}
			f.named = key != ""
			if f.at = strings.Index(text[from:], key); f.at >= 0 {
				f.at += from
				from = f.at + len(key)
			}
			if !wide || nth == 0 {
				f.figures = f.wanted(wide)
			}
			list = append(list, f)
		}
	}
	end := len(text)
	for i := len(list) - 1; i >= 0; i-- {
		if list[i].at < 0 {
			continue
		}
		list[i].behind = text[list[i].at:end]
		if list[i].named {
			end = list[i].at
		}
	}
	return list
}

// wanted are the texts that the count of a step puts on the pages: one a size, or a line; of a line with lists in it the
// figures alone.
func (f *foundStep) wanted(wide bool) []string {
	c := f.st.Count
	switch {
	case c == nil:
		return nil
	case c.Slots != nil:
		return c.Slots
	case wide:
		return digits(c.Line.String())
	}
	return []string{c.Line.String()}
}

// gone says which steps are not on the pages, or not in their place, and which counts are not with their steps.
func (s *subject) gone(e Edition, list []foundStep) []Finding {
	var out []Finding
	for _, f := range list {
		if f.at < 0 {
			out = append(out, s.own(Error, stepGone, "edition", e.name(), "text", excerpt(f.st.Body.String())))
			continue
		}
		for _, want := range f.figures {
			if !strings.Contains(f.behind, squeezed(want)) {
				out = append(out, s.own(Error, countGone, "edition", e.name(), "text", excerpt(f.st.Body.String())))
				break
			}
		}
	}
	return out[:min(len(out), mostFaults)]
}

// digits are the numbers of a text.
func digits(s string) []string {
	return strings.FieldsFunc(s, func(r rune) bool { return r < '0' || r > '9' })
}

// spokenIn is the text of a document in one language, or in all for "", element by element as it is read aloud, without
// blanks.
func spokenIn(d *page.Document, tag string) string {
	texts := map[*page.Elem]*strings.Builder{}
	within := parallel.AroundLinks(d.Root)
	eachGlyphs(d, func(_ int, g page.Glyphs) {
		if block := within[g.Elem]; block != nil {
			g.Elem = block
		}
		if g.Elem == nil {
			return
		}
		if texts[g.Elem] == nil {
			texts[g.Elem] = &strings.Builder{}
		}
		texts[g.Elem].WriteString(g.Text)
		if tag == "" {
			texts[g.Elem].WriteString(g.Actual) // a letter that stands for a list says the list
		}
	})
	var b strings.Builder
	var down func(e *page.Elem, lang string)
	down = func(e *page.Elem, lang string) {
		if e.Lang != "" {
			lang = e.Lang
		}
		if t := texts[e]; t != nil && (tag == "" || lang == tag) {
			b.WriteString(t.String())
		}
		for _, k := range e.Kids {
			down(k, lang)
		}
	}
	if d.Root != nil {
		down(d.Root, d.Lang)
	}
	return squeezed(b.String())
}
