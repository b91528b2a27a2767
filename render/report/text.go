package report

import (
	"fmt"
	"io"
	"strings"
)

// Words of the report itself.
var (
	groupNames = map[Group]text{
		Reading:   {"Source", "Archivo"},
		Front:     {"Front matter", "Portada y datos"},
		Materials: {"Materials", "Materiales"},
		Gauge:     {"Gauge, sizes, measurements", "Muestra, tallas y medidas"},
		Counting:  {"Counts", "Cuentas"},
		Wording:   {"Words and style", "Palabras y estilo"},
		Charts:    {"Charts and schematic", "Gráficos y esquema"},
		File:      {"Pages and file", "Páginas y archivo"},
		Safety:    {"Safety", "Seguridad"},
	}
	statusNames = map[Status]text{
		Held:       {"held", "cumple"},
		Found:      {"found", "hallazgo"},
		InPart:     {"in part", "en parte"},
		Nothing:    {"none here", "no hay"},
		NotChecked: {"not seen", "sin mirar"},
		ForPerson:  {"person", "persona"},
	}
	severityNames = map[Severity]text{
		Error: {"error", "error"}, Warning: {"warning", "aviso"}, Note: {"note", "nota"},
	}

	hHead         = text{"Editor's report", "Informe de edición"}
	hSource       = text{"source", "archivo"}
	hUses         = text{"uses", "usa"}
	hEdition      = text{"edition", "edición"}
	hBy           = text{"by", "diseño"}
	hSizes        = text{"sizes", "tallas"}
	hLayouts      = text{"pages", "páginas"}
	hNumbers      = text{"numbers", "números"}
	hFound        = text{"found", "hallazgos"}
	hFindings     = text{"What was found", "Hallazgos"}
	hSummary      = text{"Summary", "Resumen"}
	hUnknown      = text{"Not known", "Lo que no se sabe"}
	hPerson       = text{"For a person to decide", "Lo que decide una persona"}
	hChecks       = text{"Every check", "Todas las comprobaciones"}
	tNothingFound = text{"Nothing was found.", "No se halló nada."}
	hTables       = text{"Figures", "Cifras"}
	hCounts       = text{"Counts of every row", "Cuentas de todas las hileras y vueltas"}

	tSourceLine  = text{"{file}, {lines} lines, mark {mark}", "{file}, {lines} líneas, marca {mark}"}
	tNumbersLine = text{
		"mark {mark}: the same as long as no count and no measurement changes",
		"marca {mark}: la misma mientras no cambie ninguna cuenta ni ninguna medida"}
	tNumbersNone = text{"not all known while the source has errors", "no se conocen todos mientras el patrón tenga errores"}
	nErrors      = noun{text{"error", "error"}, text{"errors", "errores"}}
	nWarnings    = noun{text{"warning", "aviso"}, text{"warnings", "avisos"}}
	nNotes       = noun{text{"note", "nota"}, text{"notes", "notas"}}
	tLine        = text{"line {line}", "línea {line}"}
	tLineIn      = text{"{file}, line {line}", "{file}, línea {line}"}
	tUsed        = text{"{file}, {lines} lines", "{file}, {lines} líneas"}
	tIn          = text{"in {sizes}", "en {sizes}"}
	tCountsNote  = text{"stitches, and spaces behind a +", "puntos y, detrás de +, espacios"}
)

// Text prints a report for a terminal.
func Text(w io.Writer, r *Report) error {
	p := textPrinter{r: r}
	p.head()
	p.summary()
	p.unknown()
	p.results()
	p.person()
	p.tables(hTables, r.Tables)
	p.tables(hCounts, r.Counts)
	_, err := io.WriteString(w, unbound(p.b.String()))
	return err
}

// unbound replaces the spaces that keep figures and units together on a page, which programs and terminals do not expect.
func unbound(s string) string { return strings.NewReplacer("\u00A0", " ", "\u202F", " ").Replace(s) }

type textPrinter struct {
	r *Report
	b strings.Builder
}

func (p *textPrinter) say(t text) string { return t.in(p.r.Lang) }

func (p *textPrinter) head() {
	title := p.say(hHead)
	if p.r.Title != "" {
		title += ": " + p.r.Title
	}
	p.b.WriteString(title + "\n")
	for _, line := range p.r.Facts() {
		fmt.Fprintf(&p.b, "  %-9s %s\n", line[0], line[1])
	}
}

// Facts are the lines at the head of a report: a name and what is to be said.
func (r *Report) Facts() [][2]string {
	say := func(t text) string { return t.in(r.Lang) }
	out := [][2]string{{say(hSource), tSourceLine.with(r.Lang, "file", r.File, "lines", fmt.Sprint(r.Lines), "mark", r.Source)}}
	for _, u := range r.texts.used {
		out = append(out, [2]string{say(hUses), tUsed.with(r.Lang, "file", u.Name, "lines", fmt.Sprint(strings.Count(string(u.Text), "\n")))})
	}
	if r.By != "" {
		out = append(out, [2]string{say(hBy), r.By})
	}
	if r.Edition != "" {
		out = append(out, [2]string{say(hEdition), r.Edition})
	}
	if len(r.Sizes) > 0 {
		out = append(out, [2]string{say(hSizes), strings.Join(r.Sizes, ", ")})
	}
	numbers := say(tNumbersNone)
	if r.Numbers != "" {
		numbers = tNumbersLine.with(r.Lang, "mark", r.Numbers)
	}
	out = append(out, [2]string{say(hNumbers), numbers})
	if len(r.Laid) > 0 {
		out = append(out, [2]string{say(hLayouts), strings.Join(r.Laid, "; ")})
	}
	return append(out, [2]string{say(hFound), strings.Join([]string{
		nErrors.count(r.Severe(Error), r.Lang), nWarnings.count(r.Severe(Warning), r.Lang), nNotes.count(r.Severe(Note), r.Lang)}, ", ")})
}

// Summary is the table of groups: how many checks of each came to what.
func (r *Report) Summary() Table {
	t := Table{Title: hSummary.in(r.Lang), Head: []string{""}, First: 1}
	for _, st := range Statuses {
		t.Head = append(t.Head, statusNames[st].in(r.Lang))
	}
	for _, g := range Groups {
		row := []string{groupNames[g].in(r.Lang)}
		for _, st := range Statuses {
			cell := dash
			if n := r.Of(g, st); n > 0 {
				cell = fmt.Sprint(n)
			}
			row = append(row, cell)
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func (p *textPrinter) summary() { p.b.WriteString("\n" + p.r.Summary().Aligned()) }

func (p *textPrinter) unknown() {
	if len(p.r.Unknown) == 0 {
		return
	}
	p.b.WriteString("\n" + p.say(hUnknown) + "\n")
	for _, line := range p.r.Unknown {
		p.b.WriteString("  " + line + "\n")
	}
}

func (p *textPrinter) results() {
	for _, g := range Groups {
		p.b.WriteString("\n" + groupNames[g].in(p.r.Lang) + "\n")
		for _, r := range p.r.Results {
			if r.Group == g {
				p.result(r)
			}
		}
	}
}

func (p *textPrinter) result(r *Result) {
	fmt.Fprintf(&p.b, "  %s  %-10s%s\n", r.ID, p.say(statusNames[r.Status]), r.Name(p.r.Lang))
	indent := strings.Repeat(" ", 17)
	if r.Why != "" && len(r.Findings) == 0 {
		p.b.WriteString(indent + r.Why + "\n")
	}
	if len(r.Looked) > 0 {
		p.b.WriteString(indent + strings.Join(r.Looked, ", ") + "\n")
	}
	for _, n := range r.Notes {
		p.b.WriteString(indent + n + "\n")
	}
	for _, f := range r.Findings {
		p.b.WriteString(indent + p.say(severityNames[f.Severity]) + place(f, p.r.Lang) + ": " + f.Message + code(f) + "\n")
		for _, more := range append(append([]string{}, f.Notes...), strings.Split(f.Help, "\n")...) {
			if more != "" {
				p.b.WriteString(indent + "  " + more + "\n")
			}
		}
	}
}

// place says where a finding is and for which sizes: " line 31, in 2 y".
func place(f Finding, lang string) string {
	var parts []string
	if f.Line > 0 {
		parts = append(parts, said(f.File, f.Line, lang))
	}
	if len(f.Sizes) > 0 {
		parts = append(parts, tIn.with(lang, "sizes", strings.Join(f.Sizes, ", ")))
	}
	if len(parts) == 0 {
		return ""
	}
	return ", " + strings.Join(parts, ", ")
}

func code(f Finding) string {
	if f.Code == "" {
		return ""
	}
	return " [" + f.Code + "]"
}

func (p *textPrinter) person() {
	p.b.WriteString("\n" + p.say(hPerson) + "\n")
	for _, r := range p.r.Results {
		if r.Ask != "" {
			fmt.Fprintf(&p.b, "  [ ] %s  %s\n", r.ID, r.Ask)
		}
	}
}

func (p *textPrinter) tables(head text, list []Table) {
	if len(list) == 0 {
		return
	}
	for i, t := range list {
		p.b.WriteString("\n" + t.Title)
		if head == hCounts && i == 0 {
			p.b.WriteString(": " + p.say(tCountsNote))
		} else if t.Note != "" {
			p.b.WriteString(": " + t.Note)
		}
		p.b.WriteString("\n" + t.Aligned())
	}
}
