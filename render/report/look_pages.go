package report

import (
	"ovillo/render/layout"
	"ovillo/render/page"
	"ovillo/render/proof"
)

var (
	onPage = text{"{edition}, page {page}: {what}: {text}", "{edition}, página {page}: {what}: {text}"}

	lawNoTree = text{"{edition}: the file has no reading order", "{edition}: el archivo no tiene orden de lectura"}

	notSet    = text{"{edition}: the pages could not be set: {why}", "{edition}: no se pudieron componer las páginas: {why}"}
	stepGone  = text{"{edition}: this step is not on the pages, or not in its place: {text}", "{edition}: este paso no está en las páginas, o no en su lugar: {text}"}
	countGone = text{"{edition}: this count is not on the pages: {text}", "{edition}: esta cuenta no está en las páginas: {text}"}
)

// laws say what breaks each law of finished pages. Those of the first list are seen on the pages, those of the second by who
// reads or hears the file.
var laws = map[proof.Rule]text{
	proof.Outside:     {"text stands in the margin", "un texto queda en el margen"},
	proof.Meeting:     {"texts run into each other", "dos textos se pisan"},
	proof.LastHead:    {"a head stands last on its page", "un título queda solo al pie de la página"},
	proof.CountAway:   {"a count stands on another page than its row", "una cuenta queda en otra página que su hilera"},
	proof.TornRow:     {"a row, or a line of a table, is torn apart", "una hilera, o una línea de una tabla, queda partida"},
	proof.TornCaution: {"a caution is torn apart", "una precaución queda partida"},
	proof.Empty:       {"a page is empty", "una página queda vacía"},
	proof.Struck:      {"a line goes through a text", "una línea tacha un texto"},
	proof.OverPicture: {"a text stands on a picture", "un texto queda sobre una imagen"},
	proof.Rotated:     {"a text is not horizontal", "un texto no está en horizontal"},
	proof.Small:       {"type is under 8 points", "la letra tiene menos de 8 puntos"},
	proof.SmallBody:   {"letters are under 1.2 mm", "la letra mide menos de 1,2 mm"},
	proof.LongLine:    {"a line has more than 70 characters", "una línea tiene más de 70 caracteres"},
	proof.Tight:       {"lines stand too close", "las líneas quedan demasiado juntas"},
	proof.Pale:        {"a text is too pale", "un texto es demasiado claro"},
	proof.PaleLarge:   {"a text is too pale", "un texto es demasiado claro"},
	proof.PaleLine:    {"a line of a drawing is too pale", "una línea de un dibujo es demasiado clara"},
}

var lawsOfFiles = map[proof.Rule]text{
	proof.Missing:       {"the fonts have no such letter", "las tipografías no tienen ese signo"},
	proof.NoDescription: {"a picture has no description", "una imagen no tiene descripción"},
	proof.Untagged:      {"text is missing from the reading order", "un texto falta en el orden de lectura"},
	proof.NoLanguage:    {"the language of a text is not said", "no se dice el idioma de un texto"},
	proof.DeadLink:      {"a link leads nowhere", "un enlace no lleva a ninguna parte"},
	proof.MuteLink:      {"a link does not say where it leads", "un enlace no dice adónde lleva"},
	proof.SkippedLevel:  {"a level of heads is skipped", "se salta un nivel de títulos"},
	proof.NoHeaderCell:  {"a table has no heads", "una tabla no tiene encabezados"},
	proof.BrokenList:    {"a list has no items", "una lista no tiene elementos"},
}

// editions counts the layouts that were set.
func (s *subject) editions() int {
	n := 0
	for _, e := range s.in.Editions {
		if e.Doc != nil {
			n++
		}
	}
	return n
}

// ofPages is a look that rests on the pages: without them it was not made.
func (s *subject) ofPages(l look) look {
	switch {
	case s.editions() > 0:
		return l
	case s.errors:
		return look{skipped: true, why: whyNoPages}
	}
	return look{skipped: true, why: whyNotSet}
}

// mostFaults is how many faults of one law are told of a layout.
const mostFaults = 3

// broken turns the faults of a layout against some laws into findings.
func (s *subject) broken(e Edition, laws map[proof.Rule]text) []Finding {
	told := map[proof.Rule]int{}
	var out []Finding
	for _, f := range proof.Look(e.Doc, proof.Promise{Block: blockOf(e.Doc)}) {
		law, ok := laws[f.Rule]
		if told[f.Rule]++; ok && told[f.Rule] <= mostFaults {
			out = append(out, s.own(Error, onPage, "edition", e.name(), "page", s.number(f.Page+1), "what", law.in(s.in.Lang), "text", excerpt(f.Words)))
		}
	}
	return out
}

// blockOf is the text block of the paper that a document is set on.
func blockOf(d *page.Document) proof.Rect {
	for n := range layout.Papers() {
		p := layout.Paper(n)
		if w, h, left, top := p.Sheet(); len(d.Pages) > 0 && d.Pages[0].W == w && d.Pages[0].H == h {
			w, h = p.Block()
			return proof.Rect{X: left, Y: top, W: w, H: h}
		}
	}
	return proof.Rect{}
}

// composed are the layouts that could be set; that one could not is a finding.
func (s *subject) composed(l *look) []Edition {
	var out []Edition
	for _, e := range s.in.Editions {
		if e.Doc == nil {
			l.findings = append(l.findings, s.own(Error, notSet, "edition", e.name(), "why", e.Why))
			continue
		}
		out = append(out, e)
	}
	return out
}

// lookPages looks at what is printed and where: every step and every count of every part, in their order, inside the margins.
func lookPages(s *subject) look {
	l := look{}
	pages, steps := 0, 0
	for _, e := range s.composed(&l) {
		pages += len(e.Doc.Pages)
		l.findings = append(l.findings, s.broken(e, laws)...)
		for nth := range e.Langs {
			list := s.stepsIn(e, nth)
			steps += len(list)
			l.findings = append(l.findings, s.gone(e, list)...)
		}
	}
	l.at = []amount{{pages, nPages}, {s.editions(), nEditions}, {steps, nStepsPrinted}}
	return s.ofPagesUnless(l)
}

// ofPagesUnless is ofPages, but pages that could not be set are a finding and not a check that was not made.
func (s *subject) ofPagesUnless(l look) look {
	if len(l.findings) > 0 {
		return l
	}
	return s.ofPages(l)
}

func excerpt(s string) string {
	if r := []rune(s); len(r) > 60 {
		return string(r[:60]) + "…"
	}
	return s
}

// lookFile looks at what the file says beside the letters on its pages.
func lookFile(s *subject) look {
	l := look{}
	pages, pictures := 0, 0
	for _, e := range s.composed(&l) {
		pages += len(e.Doc.Pages)
		if e.Doc.Root == nil {
			l.findings = append(l.findings, s.own(Error, lawNoTree, "edition", e.name()))
			continue
		}
		l.findings = append(l.findings, s.broken(e, lawsOfFiles)...)
		pictures += picturesOf(e.Doc)
	}
	l.at = []amount{{pages, nPages}, {pictures, nPictures}}
	return s.ofPagesUnless(l)
}
