package report

var (
	onPage = text{"{edition}, page {page}: {what}: {text}", "{edition}, página {page}: {what}: {text}"}

	lawOutside = text{"text stands in the margin", "un texto queda en el margen"}
	lawMeet    = text{"texts run into each other", "dos textos se pisan"}
	lawLonely  = text{"a head stands last on its page", "un título queda solo al pie de la página"}
	lawTorn    = text{"a line of a table is torn apart", "una línea de una tabla queda partida"}
	lawUnset   = text{"the fonts have no such letter", "las tipografías no tienen ese signo"}
	lawUntold  = text{"a picture has no description", "una imagen no tiene descripción"}
	lawStrayed = text{"text is missing from the reading order", "un texto falta en el orden de lectura"}
	lawMute    = text{"the language of a text is not said", "no se dice el idioma de un texto"}
	lawDead    = text{"a link leads nowhere", "un enlace no lleva a ninguna parte"}
	lawNoTree  = text{"{edition}: the file has no reading order", "{edition}: el archivo no tiene orden de lectura"}

	notSet    = text{"{edition}: the pages could not be set: {why}", "{edition}: no se pudieron componer las páginas: {why}"}
	stepGone  = text{"{edition}: this step is not on the pages, or not in its place: {text}", "{edition}: este paso no está en las páginas, o no en su lugar: {text}"}
	countGone = text{"{edition}: this count is not on the pages: {text}", "{edition}: esta cuenta no está en las páginas: {text}"}
)

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

// broken turns faults of pages into findings.
func (s *subject) broken(e Edition, law text, faults []fault) []Finding {
	var out []Finding
	for _, f := range faults[:min(len(faults), mostFaults)] {
		out = append(out, s.own(Error, onPage, "edition", e.name(), "page", s.number(f.page+1), "what", law.in(s.in.Lang), "text", f.what))
	}
	return out
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
		l.findings = append(l.findings, s.broken(e, lawOutside, outside(e.Doc))...)
		l.findings = append(l.findings, s.broken(e, lawMeet, overlapping(e.Doc))...)
		l.findings = append(l.findings, s.broken(e, lawLonely, lonely(e.Doc))...)
		l.findings = append(l.findings, s.broken(e, lawTorn, torn(e.Doc))...)
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
		l.findings = append(l.findings, s.broken(e, lawUnset, unset(e.Doc))...)
		silent, n := untold(e.Doc)
		pictures += n
		l.findings = append(l.findings, s.broken(e, lawUntold, silent)...)
		l.findings = append(l.findings, s.broken(e, lawStrayed, strayed(e.Doc))...)
		l.findings = append(l.findings, s.broken(e, lawMute, mute(e.Doc))...)
		l.findings = append(l.findings, s.broken(e, lawDead, dead(e.Doc))...)
	}
	l.at = []amount{{pages, nPages}, {pictures, nPictures}}
	return s.ofPagesUnless(l)
}
