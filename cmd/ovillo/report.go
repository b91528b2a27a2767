package main

import (
	"bytes"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/render/book"
	"ovillo/render/layout"
	"ovillo/render/pdf"
	"ovillo/render/report"
	"ovillo/render/words"
)

var reportCommand = command{
	name: "report",
	args: text{"FILE", "ARCHIVO"},
	line: text{"report as a technical editor does", "informar como quien edita patrones"},
	long: text{
		"The report goes through the checks of a technical editor: what was looked at and how much of it, what was found,\n" +
			"what could not be looked at and why, and what stays for a person; then the figures and every count of every size.\n" +
			"A source with errors gets its report as well. The exit code is that of check.\n" +
			"The report is in the language of the messages, or in the first that --lang names, and looks at the pages in all\n" +
			"languages of the pattern, with the words that --lang names. As a PDF it goes to hat-report.pdf beside hat.ovillo,\n" +
			"or where -o says; as text or JSON to the standard output.",
		"El informe sigue las comprobaciones de quien edita patrones: qué se miró y cuánto, qué se halló, qué no se pudo\n" +
			"mirar y por qué, y qué queda para una persona; después, las cifras y todas las cuentas de todas las tallas.\n" +
			"Un patrón con errores también recibe su informe. El código de salida es el de check.\n" +
			"El informe va en el idioma de los mensajes o en el primero que diga --lang, y mira las páginas en todos los idiomas\n" +
			"del patrón, con las palabras que diga --lang. Como PDF queda en gorro-report.pdf, al lado de gorro.ovillo, o donde\n" +
			"diga -o; como texto o JSON sale por la salida estándar."},
	flags: []flagDef{
		{name: "--format", value: "text|json|pdf", allowed: []string{"text", "json", "pdf"}, help: text{
			"what becomes of it; without it, text, or a PDF if -o is given",
			"en qué forma; si no se indica, texto, o un PDF si se da -o"}},
		{name: "-o", value: "PATH", help: text{"where the PDF goes", "dónde queda el PDF"}},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"the pages to look at; the report is in the first", "las páginas que se miran; el informe va en el primero"}, fill: readingTags},
		{name: "--paper", value: "a4|letter", allowed: []string{"a4", "letter"}, help: text{
			"size of the sheet; without it, a4", "tamaño de la hoja; si no se indica, a4"}},
		gaugeFlag,
	},
	tail: readingsHelp,
	examples: []exampleLine{
		{text{"ovillo report hat.ovillo", "ovillo report gorro.ovillo"}, text{
			"the report as text",
			"el informe como texto"}},
		{text{"ovillo report hat.ovillo --format pdf", "ovillo report gorro.ovillo --format pdf"}, text{
			"the report as pages, hat-report.pdf",
			"el informe en páginas, gorro-report.pdf"}},
	},
	run: runReport,
}

func runReport(c *call) int {
	paths, ok := c.sources(1)
	if !ok {
		return failed
	}
	if wrong := c.readGauges(); wrong != nil {
		return c.misuse(*wrong)
	}
	o, wrong := c.reportOptions(paths[0])
	if wrong != nil {
		return c.misuse(*wrong)
	}
	return c.each(paths, func(c *call, path string) int { return c.report(path, o) })
}

// reportOptions are the choices of the command line.
type reportOptions struct {
	format string            // text, json or pdf
	langs  []*words.Language // of the report; and of the pages, where the pattern has them
	output string            // of the PDF
	paper  book.Paper
}

func (c *call) reportOptions(path string) (o reportOptions, wrong *said) {
	refuse := func(s said) (reportOptions, *said) { return o, &s }
	tags := c.lang
	if c.has("--lang") {
		tags = c.flags["--lang"]
	}
	if o.langs, wrong = readLangs(tags); wrong != nil {
		return o, wrong
	}
	if o.format = c.flags["--format"]; o.format == "" {
		if o.format = "text"; c.has("-o") {
			o.format = "pdf"
		}
	}
	o.paper, _ = layout.PaperNamed(c.flags[paperFlag.name])
	if !fullSheet(o.paper) {
		s := msgFlagChoice.with("flag", paperFlag.name, "value", o.paper.String(), "allowed", "a4, letter")
		return o, &s
	}
	if o.format != "pdf" {
		for _, flag := range []string{"-o", "--paper"} {
			if c.has(flag) {
				return refuse(msgFlagsClash.with("one", "--format "+o.format, "other", flag))
			}
		}
		return o, nil
	}
	o.output, wrong = c.outputNamed(path, stem(path)+c.gaugeSuffix()+"-report.pdf", 1)
	return o, wrong
}

// report writes the report on one source.
func (c *call) report(path string, o reportOptions) int {
	s, ok := c.load(path)
	if !ok {
		return failed
	}
	r, code := c.reportOn(s, o.langs)
	if s.fault != nil {
		c.say(s.misfit())
		return failed
	}
	if s.book != nil || s.shared { // what was found is for check to say
		c.say(s.noPattern())
		return faulty
	}
	var b bytes.Buffer
	switch o.format {
	case "json":
		if err := report.JSON(&b, r); err != nil {
			return failed
		}
		return max(c.print(b.Bytes()), code)
	case "text":
		if err := report.Text(&b, r); err != nil {
			return failed
		}
		return max(c.print(b.Bytes()), code)
	}
	return max(c.reportPages(s, r, o), code)
}

// reportOn checks a source, sets its pages if it can, and makes the report.
func (c *call) reportOn(s *loaded, langs []*words.Language) (*report.Report, int) {
	in, code := reportInput(s, langs)
	return report.Make(in), code
}

// reportInput gathers what a report is made from, and says how the source fared.
func reportInput(s *loaded, langs []*words.Language) (report.Input, int) {
	l := langs[0]
	p, found, tally := s.compileTallied()
	code := clean
	if found.HasErrors() || p == nil {
		code = faulty
	}
	in := report.Input{Lang: l.Code(), File: visible(filepath.Base(s.file.Name)), Text: s.file.Text, Used: s.used, Source: tally, Pattern: p, Words: l,
		Findings: findingsOf(s, found, l.Code())}
	if code == clean {
		in.Editions = editionsOf(p, langs)
	}
	return in, code
}

// findingsOf puts messages into words.
func findingsOf(s *loaded, found diag.List, lang string) []report.Finding {
	var out []report.Finding
	for _, r := range (diag.Printer{Lang: lang, Code: s.code(), CodeAt: s.coderAt}).Records(s.file, found) {
		f := report.Finding{Code: string(r.Code), Severity: report.Severity(r.Severity), File: s.usedName(r.File), Line: r.Line, Column: r.Column,
			Message: r.Message, Mark: r.Mark, Help: r.Help, Notes: r.Notes, Sizes: r.Sizes}
		for _, rel := range r.Related {
			if rel.Message != "" {
				line := fmt.Sprint(rel.Line)
				if rel.File != "" {
					line += " (" + visible(filepath.Base(rel.File)) + ")"
				}
				f.Notes = append(f.Notes, msgAtLine.with("line", line, "text", rel.Message).in(lang))
			}
		}
		if r.Meant != "" {
			f.Notes = append(f.Notes, msgMeant.with("why", r.Meant).in(lang))
		}
		out = append(out, f)
	}
	return out
}

// usedName is what a report calls the file of a message: "" for the source itself.
func (s *loaded) usedName(file string) string {
	if file == s.file.Name {
		return ""
	}
	return visible(strings.TrimPrefix(file, strings.TrimSuffix(s.file.Name, filepath.Base(s.file.Name))))
}

// editionsOf sets the pages of a pattern in every layout it has: its languages side by side, and each alone, in the readings
// asked for.
func editionsOf(p *plan.Pattern, asked []*words.Language) []report.Edition {
	langs := readingsOf(p, asked)
	lists := [][]*words.Language{}
	if both := langs[:min(mostLangs, len(langs))]; len(both) > 1 {
		lists = append(lists, both)
	}
	for _, l := range langs {
		lists = append(lists, []*words.Language{l})
	}
	var out []report.Edition
	for _, list := range lists {
		e := report.Edition{Langs: list}
		doc, err := book.Compose(p, book.Options{Langs: e.Langs})
		if err == nil {
			err = pdf.Check(doc)
			e.Doc = doc
		}
		if err != nil {
			e.Why = err.Error()
		}
		out = append(out, e)
	}
	return out
}

// readingsOf are the languages of a pattern: two that were asked for before the others, else all in the order of the pattern, each
// in the reading asked for or else in its usual one.
func readingsOf(p *plan.Pattern, asked []*words.Language) []*words.Language {
	var out []*words.Language
	for _, l := range asked {
		if slices.Contains(p.Languages, l.Code()) {
			out = append(out, l)
		}
	}
	for _, code := range p.Languages {
		has := slices.ContainsFunc(out, func(l *words.Language) bool { return l.Code() == code })
		if l, err := words.For(code); err == nil && !has {
			out = append(out, l)
		}
	}
	if len(asked) == 1 {
		slices.SortStableFunc(out, func(a, b *words.Language) int {
			return slices.Index(p.Languages, a.Code()) - slices.Index(p.Languages, b.Code())
		})
	}
	return out
}

// reportPages writes the report as a PDF.
func (c *call) reportPages(s *loaded, r *report.Report, o reportOptions) int {
	doc := report.Compose(r, report.Options{Paper: o.paper, Words: o.langs[0]})
	var b bytes.Buffer
	if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
		c.say(c.whyNotSet(s, err))
		return failed
	}
	return c.deliver(o.output, b.Bytes(), len(doc.Pages))
}
