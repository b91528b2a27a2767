package main

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
	"ovillo/render/book"
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
			"The report is in the language of the messages, or in the one that --lang says. As a PDF it goes to\n" +
			"hat-report.pdf beside hat.ovillo, or where -o says; as text or JSON to the standard output.",
		"El informe sigue las comprobaciones de quien edita patrones: qué se miró y cuánto, qué se halló, qué no se pudo\n" +
			"mirar y por qué, y qué queda para una persona; después, las cifras y todas las cuentas de todas las tallas.\n" +
			"Un patrón con errores también recibe su informe. El código de salida es el de check.\n" +
			"El informe va en el idioma de los mensajes o en el que diga --lang. Como PDF queda en gorro-report.pdf, al lado\n" +
			"de gorro.ovillo, o donde diga -o; como texto o JSON sale por la salida estándar."},
	flags: []flagDef{
		{name: "--format", value: "text|json|pdf", allowed: []string{"text", "json", "pdf"}, help: text{
			"what becomes of it; without it, text, or a PDF if -o is given",
			"en qué forma; si no se indica, texto, o un PDF si se da -o"}},
		{name: "-o", value: "PATH", help: text{"where the PDF goes", "dónde queda el PDF"}},
		{name: "--lang", value: "en|es|en,es", help: text{
			"the language of the report, one of them", "el idioma del informe, uno de ellos"}},
		{name: "--paper", value: "a4|letter", allowed: []string{"a4", "letter"}, help: text{
			"size of the sheet; without it, a4", "tamaño de la hoja; si no se indica, a4"}},
		gaugeFlag,
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
	return c.each(paths, func(path string) int { return c.report(path, o) })
}

// reportOptions are the choices of the command line.
type reportOptions struct {
	format string // text, json or pdf
	lang   *words.Language
	output string // of the PDF
	paper  book.Paper
}

func (c *call) reportOptions(path string) (o reportOptions, wrong *said) {
	refuse := func(s said) (reportOptions, *said) { return o, &s }
	tag := c.lang
	if c.has("--lang") {
		tag = c.flags["--lang"]
	}
	l, err := words.For(tag)
	switch {
	case strings.Contains(tag, ","):
		return refuse(msgOneLanguage.with())
	case err != nil:
		return refuse(msgNoLanguage.with("lang", tag, "known", strings.Join(words.Tags(), ", ")))
	}
	o.lang = l
	if o.format = c.flags["--format"]; o.format == "" {
		if o.format = "text"; c.has("-o") {
			o.format = "pdf"
		}
	}
	if c.flags["--paper"] == "letter" {
		o.paper = book.Letter
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
	r, code := c.reportOn(s, o.lang)
	if s.fault != nil {
		c.say(s.misfit())
		return failed
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
func (c *call) reportOn(s *loaded, l *words.Language) (*report.Report, int) {
	in, code := reportInput(s, l)
	return report.Make(in), code
}

// reportInput gathers what a report is made from, and says how the source fared.
func reportInput(s *loaded, l *words.Language) (report.Input, int) {
	p, found, tally := s.compileTallied()
	code := clean
	if found.HasErrors() || p == nil {
		code = faulty
	}
	in := report.Input{Lang: l.Code(), File: visible(filepath.Base(s.file.Name)), Text: s.file.Text, Source: tally, Pattern: p, Words: l,
		Findings: findingsOf(s, found, l.Code())}
	if code == clean {
		in.Editions = editionsOf(p)
	}
	return in, code
}

// findingsOf puts messages into words.
func findingsOf(s *loaded, found diag.List, lang string) []report.Finding {
	var out []report.Finding
	for _, r := range diag.Records(s.file, found, lang) {
		f := report.Finding{Code: string(r.Code), Severity: report.Severity(r.Severity), Line: r.Line, Column: r.Column,
			Message: r.Message, Mark: r.Mark, Help: r.Help, Notes: r.Notes, Sizes: r.Sizes}
		for _, rel := range r.Related {
			if rel.Message != "" {
				f.Notes = append(f.Notes, msgAtLine.with("line", fmt.Sprint(rel.Line), "text", rel.Message).in(lang))
			}
		}
		if r.Meant != "" {
			f.Notes = append(f.Notes, msgMeant.with("why", r.Meant).in(lang))
		}
		out = append(out, f)
	}
	return out
}

// editionsOf sets the pages of a pattern in every layout it has: its languages side by side, and each alone.
func editionsOf(p *plan.Pattern) []report.Edition {
	lists := [][]string{}
	if both := (edition{}).of(p).langs; len(both) > 1 {
		lists = append(lists, both)
	}
	for _, tag := range p.Languages {
		lists = append(lists, []string{tag})
	}
	var out []report.Edition
	for _, tags := range lists {
		var e report.Edition
		for _, tag := range tags {
			if l, err := words.For(tag); err == nil {
				e.Langs = append(e.Langs, l)
			}
		}
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

// reportPages writes the report as a PDF.
func (c *call) reportPages(s *loaded, r *report.Report, o reportOptions) int {
	doc := report.Compose(r, report.Options{Paper: o.paper, Words: o.lang})
	var b bytes.Buffer
	if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
		c.say(c.whyNotSet(s, err))
		return failed
	}
	return c.deliver(o.output, b.Bytes(), len(doc.Pages))
}
