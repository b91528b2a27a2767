package report

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/lazy"
	"ovillo/render/page"
)

var (
	whyNoText      = text{"there is no text", "no hay texto"}
	whyNoOwn       = text{"there are no stitches of the designer's own", "no hay puntos propios"}
	whyNoGroups    = text{"there are neither repeats nor groups", "no hay repeticiones ni grupos"}
	whyNoRefs      = text{"nothing refers to anything", "nada remite a nada"}
	whyNoFinishing = text{"there is no finishing", "no hay acabado"}

	noFinishing = text{"nothing says how the piece is finished, not even the ends", "nada dice cómo se termina la pieza, ni siquiera las hebras"}
	noAbbr      = text{"{edition}: the abbreviation {what} is in no table", "{edition}: la abreviatura {what} no está en ninguna tabla"}
	ownUnused   = text{"{what} is explained as a stitch of the designer's own, and never worked", "{what} se explica como punto propio y no se teje nunca"}
	noUse       = text{"{edition}: the abbreviation {what} is explained and not used", "{edition}: la abreviatura {what} se explica y no se usa"}
	endHidden   = text{"{part}: a note asks for something when the row is over: {text}", "{part}: una nota pide algo cuando la hilera ya ha terminado: {text}"}
	noLevel     = text{"neither a level nor a skill is named", "no se indica ni el nivel ni lo que hay que saber"}
	noField     = text{"the header does not say: {what}", "el encabezado no dice: {what}"}
	noTerms     = text{"the header does not say how the stitch names are to be read: terms us, or terms uk", "el encabezado no dice cómo se leen los nombres de los puntos: terms us o terms uk"}
	noReading   = text{"{edition}: the pages do not say which stitch names they use", "{edition}: las páginas no dicen qué nombres de puntos usan"}
	noTitleAt   = text{"{edition}, page {page}: the title is missing", "{edition}, página {page}: falta el título"}
	noFootAt    = text{"{edition}, page {page}: edition and terms are missing", "{edition}, página {page}: faltan la edición y los términos"}

	fieldBy      = text{"who designed it (by)", "de quién es el diseño (by)"}
	fieldEdition = text{"which edition it is (edition)", "qué edición es (edition)"}
	fieldDate    = text{"when it is published (edition 1, \"2026-03\")", "cuándo se publica (edition 1, \"2026-03\")"}
)

// lookFront looks for what every page must say: the title at its head and the terms at its foot.
func lookFront(s *subject) look {
	l := look{at: []amount{{len(s.p.Languages), nTexts}}, why: whyNoText}
	for _, f := range []struct {
		there bool
		name  text
	}{{s.p.By != "", fieldBy}, {s.p.Edition > 0, fieldEdition}, {s.p.Edition == 0 || s.p.Date != "", fieldDate}} {
		if !f.there {
			l.findings = append(l.findings, s.own(Note, noField, "what", f.name.in(s.in.Lang)))
		}
	}
	pages := 0
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		for i, pg := range e.Doc.Pages {
			pages++
			text := squeezed(artifacts(pg))
			for _, w := range e.Langs {
				title := w.Title(s.p)
				if i == 0 {
					text += squeezed(tagged(pg))
				}
				if cut := squeezed(title); !strings.Contains(text, cut) && !strings.Contains(text, short(cut)) {
					l.findings = append(l.findings, s.own(Warning, noTitleAt, "edition", e.name(), "page", s.number(i+1)))
				}
				if !strings.Contains(text, squeezed(w.ReadingNote())) {
					l.findings = append(l.findings, s.own(Warning, noFootAt, "edition", e.name(), "page", s.number(i+1)))
				}
			}
		}
	}
	l.at = append(l.at, amount{pages, nPages})
	return l
}

// short is the beginning of a title that a running head may cut.
func short(s string) string {
	r := []rune(s)
	return string(r[:min(len(r), 12)])
}

func lookLevel(s *subject) look {
	l := look{at: []amount{{len(s.p.Parts), nParts}}}
	if s.p.Level == "" {
		l.findings = []Finding{s.own(Note, noLevel)}
	}
	return l
}

// lookTerms looks for the reading of the stitch names in the header and on the pages.
func lookTerms(s *subject) look {
	l := look{at: []amount{{len(s.p.Stitches), nStitchNames}}, why: whyNoRows}
	if !s.in.Source.Terms {
		l.findings = append(l.findings, s.own(Warning, noTerms))
	}
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		all := squeezed(wholeText(e.Doc))
		for _, w := range e.Langs {
			if !strings.Contains(all, squeezed(w.ReadingNote())) {
				l.findings = append(l.findings, s.own(Error, noReading, "edition", e.name()))
			}
		}
	}
	return l
}

// lookAbbreviations compares the abbreviations that the pages explain with those that they use: each of them stands in a
// table, and somewhere else as well. A stitch of the designer's own that is never worked is explained for nothing.
func lookAbbreviations(s *subject) look {
	l := look{at: []amount{{len(s.in.Words.Abbreviations(s.p)), nAbbreviations}, {s.editions(), nEditions}}, why: whyNoText}
	for _, own := range s.p.Own {
		if !slices.ContainsFunc(s.p.Stitches, func(f stitch.Form) bool { return f.ID == own.ID }) {
			l.findings = append(l.findings, s.own(Warning, ownUnused, "what", string(own.ID)))
		}
	}
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			continue
		}
		table, used := explained(e.Doc)
		for _, w := range e.Langs {
			for _, a := range w.Abbreviations(s.p) {
				forms := strings.Split(a.Short, ", ")
				switch {
				case !stands(table, a.Short):
					l.findings = append(l.findings, s.own(Error, noAbbr, "edition", e.name(), "what", a.Short))
				case !slices.ContainsFunc(forms, func(f string) bool { return stands(used, f) }):
					l.findings = append(l.findings, s.own(Warning, noUse, "edition", e.name(), "what", a.Short))
				}
			}
		}
	}
	return s.ofPagesUnless(l)
}

// explained is the text of the tables of a document, and its other text.
func explained(d *page.Document) (table, rest string) {
	cell := map[*page.Elem]bool{}
	walk(d.Root, func(x *page.Elem) {
		if x.Tag == "TD" || x.Tag == "TH" {
			walk(x, func(k *page.Elem) { cell[k] = true })
		}
	})
	var in, out strings.Builder
	eachGlyphs(d, func(_ int, g page.Glyphs) {
		if cell[g.Elem] {
			in.WriteString(g.Text + " ")
			return
		}
		out.WriteString(g.Text + " ")
	})
	return in.String(), out.String()
}

// stands reports whether a text holds an abbreviation as a word of its own, at the head of a sentence or within.
func stands(text, short string) bool {
	text, short = strings.ToLower(spaced(text)), strings.ToLower(spaced(short))
	for from := 0; ; {
		i := strings.Index(text[from:], short)
		if i < 0 {
			return false
		}
		i += from
		before, _ := utf8.DecodeLastRuneInString(text[:i])
		after, _ := utf8.DecodeRuneInString(text[i+len(short):])
		if !unicode.IsLetter(before) && !unicode.IsLetter(after) {
			return true
		}
		from = i + len(short)
	}
}

// spaced makes all blanks of a text single ordinary spaces.
func spaced(s string) string { return strings.Join(strings.Fields(s), " ") }

func lookOwn(s *subject) look { return look{at: []amount{{len(s.p.Own), nOwn}}, why: whyNoOwn} }

func lookRowWords(s *subject) look {
	return look{at: s.workedAmounts(), why: whyNoRows, fabric: true}
}

func lookBrackets(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool { return in.Op == plan.Repeat })
	g := s.instructions(func(in *plan.Instr) bool { return in.Op == plan.InOne })
	if n == 0 {
		return look{at: []amount{{g, nGroups}}, why: whyNoGroups, fabric: true}
	}
	return look{at: []amount{{n, nRepeats}, {g, nGroups}}, fabric: true}
}

func lookNumbers(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool {
		return (in.Op == plan.Work || in.Op == plan.Decrease) && (in.N != nil || in.Per != nil)
	})
	return look{at: []amount{{n, nWorked}}, why: whyNoRows, fabric: true}
}

func lookParts(s *subject) look { return look{at: []amount{{len(s.p.Parts), nParts}}} }

// lookReferences counts what is reached by name: places in rows, runs that parts start on, edges that are sewn, values in
// prose.
func lookReferences(s *subject) look {
	n := s.instructions(func(in *plan.Instr) bool { return in.Ref != nil })
	for _, p := range s.p.Parts {
		n += len(p.Start.Runs)
		for _, step := range p.Steps {
			if note, ok := step.(*plan.NoteStep); ok {
				n += len(note.Prose.Values)
			}
		}
	}
	for _, f := range s.p.Finish {
		n += len(f.Sewn) + len(f.To) + len(f.Prose.Values)
		if f.Through != nil {
			n++
		}
	}
	n += len(s.p.Intro.Values)
	for _, t := range s.p.Notes {
		n += len(t.Values)
	}
	return look{at: []amount{{n, nReferences}}, why: whyNoRefs, fabric: true}
}

// hiddenEnds are the phrases by which something is asked for that should have stood before the end of a row.
var hiddenEnds = map[string]func() *regexp.Regexp{
	"en": lazy.Regexp(`(?i)\b(ending|finishing) (with|in|by|on)\b`),
	"es": lazy.Regexp(`(?i)\b(terminando|acabando|finalizando) (con|en|por)\b`),
}

// lookEnds counts the printed steps: what is to be done in one stands before its count. A note of the author may still ask
// for something when the row is over.
func lookEnds(s *subject) look {
	n := 0
	for _, p := range s.p.Parts {
		n += len(p.Steps)
	}
	return look{at: []amount{{n, nStepsPrinted}}, why: whyNoRows, findings: s.notesThat(hiddenEnds, endHidden), fabric: true}
}

// notesThat are the notes of parts in which a language uses one of its phrases, as findings; one a note.
func (s *subject) notesThat(phrases map[string]func() *regexp.Regexp, found text) []Finding {
	var out []Finding
	for i, p := range s.p.Parts {
		for _, step := range p.Steps {
			note, ok := step.(*plan.NoteStep)
			if !ok {
				continue
			}
			for _, code := range s.p.Languages {
				if re := phrases[code]; re != nil && re().MatchString(note.Prose.Text[code]) {
					out = append(out, s.own(Note, found, "part", s.in.Words.PartTitle(s.p, i), "text", excerpt(strings.TrimSpace(note.Prose.Text[code]))))
					break
				}
			}
		}
	}
	return out
}

func lookFinishing(s *subject) look {
	l := look{at: []amount{{len(s.p.Finish), nFinishing}}, why: whyNoFinishing}
	if len(s.p.Finish) == 0 && len(s.p.Parts) > 0 {
		l.findings = []Finding{s.own(Note, noFinishing)}
	}
	return l
}

// lookProse counts the designer's own texts, which a person reads.
func lookProse(s *subject) look {
	return look{at: []amount{{s.in.Source.Texts, nTexts}}, why: whyNoText, person: true}
}
