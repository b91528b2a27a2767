package main

import (
	"strings"
)

var manualCommand = command{
	name: "manual",
	line: text{"print the manual page", "escribir la página de manual"},
	long: text{
		"All commands with their flags and examples on one page, in the language of the messages, in the form that man reads.",
		"Todas las órdenes, con sus opciones y ejemplos, en una página, en el idioma de los mensajes y en la forma que lee man."},
	examples: []exampleLine{
		{text{"ovillo manual > ovillo.1", "ovillo manual > ovillo.1"}, text{
			"then, to read it: man ./ovillo.1", "después, para leerla: man ./ovillo.1"}},
	},
}

// It prints all commands, itself among them: the knot is tied here.
func init() { manualCommand.run = runManual }

func runManual(c *call) int {
	if len(c.args) > 0 {
		return c.misuse(msgTooMany.with("what", c.args[0]))
	}
	return c.print([]byte(manual(c.lang, thisBuild())))
}

// manual is the page for man, in the macros that man(7) describes.
func manual(lang string, b build) string {
	var r roff
	day, _, _ := strings.Cut(b.Date, "T")
	r.WriteString(`.TH OVILLO 1 "` + day + `" "ovillo ` + escaped(b.Version) + "\"\n") // a date is read, and has no escapes
	r.macro("SH", manName.in(lang))
	about := msgAbout.in(lang)
	r.text("ovillo \\- " + escaped(strings.TrimSuffix(strings.TrimPrefix(about, "ovillo "), ".")))
	r.macro("SH", manSynopsis.in(lang))
	r.text("\\fBovillo\\fR \\fI" + escaped(manCommand.in(lang)) + "\\fR")
	r.macro("SH", manDescription.in(lang))
	r.lines(about)
	r.paragraph(manSource.in(lang))
	r.macro("SH", manCommands.in(lang))
	for _, k := range commands() {
		r.command(k, lang)
	}
	r.macro("SH", manEverywhere.in(lang))
	r.flags(everywhere, lang)
	r.macro("SH", manExit.in(lang))
	for _, e := range exitCodes {
		r.item(e.code, e.text.in(lang))
	}
	r.macro("SH", manEnvironment.in(lang))
	for _, e := range environment {
		r.item(e.name, e.text.in(lang))
	}
	return r.String()
}

// exitCodes are those of all commands.
var exitCodes = []struct {
	code string
	text
}{
	{"0", text{"clean; there may be warnings", "sin errores; puede haber avisos"}},
	{"1", text{"errors in a source", "errores en un patrón"}},
	{"2", text{"wrong use, or a file could not be read or written", "uso incorrecto, o un archivo que no se pudo leer o escribir"}},
}

// environment is what the command reads of it.
var environment = []struct {
	name string
	text
}{
	{"LC_ALL, LC_MESSAGES, LANG", text{
		"the language of the messages, unless --messages says it", "el idioma de los mensajes, si no lo dice --messages"}},
	{"NO_COLOR", text{
		"if it is set and not empty, messages have no colours; they have none outside a terminal either",
		"si está definida y no vacía, los mensajes no llevan colores; fuera de una terminal tampoco los llevan"}},
	{"TERM=dumb", text{"a terminal without colours", "una terminal sin colores"}},
}

// roff is a manual page in the making.
type roff struct{ strings.Builder }

// macro writes a request with its arguments.
func (r *roff) macro(name string, args ...string) {
	r.WriteString("." + name)
	for _, a := range args {
		r.WriteString(` "` + strings.ReplaceAll(escaped(a), `"`, `\(dq`) + `"`)
	}
	r.WriteString("\n")
}

// text writes a line of text, with its escapes.
func (r *roff) text(s string) {
	if strings.HasPrefix(s, ".") || strings.HasPrefix(s, "'") {
		s = `\&` + s
	}
	r.WriteString(s + "\n")
}

// paragraph writes plain text; its lines run on.
func (r *roff) paragraph(s string) {
	r.WriteString(".PP\n")
	r.lines(s)
}

// lines writes plain text, a line as a line.
func (r *roff) lines(s string) {
	for line := range strings.SplitSeq(strings.TrimSpace(s), "\n") {
		r.text(escaped(strings.TrimSpace(line)))
	}
}

// item writes a word and what it is.
func (r *roff) item(word, says string) {
	r.WriteString(".TP\n")
	r.text(`\fB` + escaped(word) + `\fR`)
	r.text(escaped(says))
}

// flags lists flags; what stands for a value is set apart from what is typed.
func (r *roff) flags(list []flagDef, lang string) {
	for _, f := range list {
		head := `\fB` + escaped(strings.TrimSuffix(strings.TrimSpace(f.spelled()), " "+f.value)) + `\fR`
		if f.value != "" {
			head += ` \fI` + escaped(f.value) + `\fR`
		}
		r.WriteString(".TP\n")
		r.text(head)
		r.text(escaped(f.help.in(lang)))
	}
}

// command writes what is known of a command.
func (r *roff) command(k *command, lang string) {
	r.macro("SS", strings.TrimSpace("ovillo "+k.name+" "+k.args.in(lang)))
	r.text(escaped(sentence(k.line.in(lang)) + "."))
	if long := k.long.in(lang); long != "" {
		r.paragraph(long)
	}
	r.flags(k.flags, lang)
	if k.tail != nil {
		r.WriteString(".PP\n.nf\n")
		for line := range strings.SplitSeq(strings.TrimRight(k.tail(lang), "\n"), "\n") {
			r.text(escaped(line))
		}
		r.WriteString(".fi\n")
	}
	if len(k.examples) > 0 {
		r.paragraph(msgExamples.in(lang))
	}
	for _, e := range k.examples {
		r.item(e.line.in(lang), e.does.in(lang))
	}
}

// escaped keeps a text from being read as an escape, and a hyphen of the command line a hyphen, so that it can be copied.
func escaped(s string) string {
	return strings.NewReplacer(`\`, `\e`, "-", `\-`, "~", `\(ti`, "^", `\(ha`, "`", `\(ga`).Replace(s)
}
