package main

import (
	"context"
	"errors"
	"fmt"
	"math"
	"os"
	"os/signal"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/preview"
	"ovillo/compile/plan"
	"ovillo/lang/source"
)

var previewCommand = command{
	name: "preview",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"show the pages in a browser while the pattern is written", "mostrar las páginas en un navegador mientras se escribe el patrón"},
	long: text{
		"It prints the address of a page that shows the pages as they will print, the messages, the counts and the drawings,\n" +
			"and renews them each time a file is saved. While a source has errors its last good pages stay, marked as old. A folder\n" +
			"stands for all the patterns in it, later ones too. Nothing is written, and nothing but this computer can see the page.\n" +
			"With --port the address is the same each time, so that an open tab finds the preview again; others who work on this\n" +
			"computer can then see it as well. Control+C stops it.",
		"Escribe la dirección de una página que muestra las páginas tal como se imprimirán, los mensajes, el recuento y los\n" +
			"dibujos, y los renueva cada vez que se guarda un archivo. Mientras el patrón tiene errores quedan sus últimas páginas\n" +
			"buenas, marcadas como antiguas. Una carpeta vale por todos sus patrones, también los que lleguen después. No se\n" +
			"escribe ningún archivo, y la página solo se ve desde este ordenador. Con --port la dirección es siempre la misma, y\n" +
			"una pestaña abierta vuelve a encontrar la vista previa; entonces también pueden verla otras personas que usen este\n" +
			"ordenador. Se detiene con Control+C."},
	flags: []flagDef{
		{name: "--port", value: "N", help: text{"the port of the address; without it, one that is free", "el puerto de la dirección; si no se indica, uno libre"}},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"one language, or two side by side; without it, those of the pattern",
			"un idioma, o dos en columnas; si no se indica, los del patrón"}, fill: readingTags},
		editionFlag,
		paperFlag,
		sizeFlag,
	},
	tail: func(lang string) string { return editionsHelp(lang, allEditions) + readingsHelp(lang) },
	examples: []exampleLine{
		{text{"ovillo preview hat.ovillo", "ovillo preview gorro.ovillo"}, text{
			"the hat, while it is written",
			"el gorro, mientras se escribe"}},
		{text{"ovillo preview . --port 8080", "ovillo preview . --port 8080"}, text{
			"all patterns of this folder, always at one address",
			"todos los patrones de esta carpeta, siempre en la misma dirección"}},
	},
	run: runPreview,
}

// leastPort and mostPort are the ports that a person may ask for; those below are the system's.
const leastPort, mostPort = 1024, 65535

// previewGarbage has memory tidied up less often than usual: a preview works in short bursts, and its wait is a person's.
const previewGarbage = 400

func runPreview(c *call) int {
	e, wrong := c.edition()
	if wrong != nil {
		return c.misuse(*wrong)
	}
	o, code := c.previewOptions(e)
	if code != clean {
		return code
	}
	s, err := preview.Listen(o)
	switch {
	case errors.Is(err, syscall.EADDRINUSE):
		c.say(msgPortTaken.with("port", strconv.Itoa(o.Port)))
		return failed
	case err != nil:
		c.say(msgCannotServe.with("why", lastError(err).Error()))
		return failed
	}
	defer debug.SetGCPercent(debug.SetGCPercent(previewGarbage))
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	if c.print([]byte(s.Address()+"\n")) != clean {
		return failed
	}
	if onTerminal(c.err) {
		c.say(msgHowToStop.with())
	}
	context.AfterFunc(ctx, stop) // whoever asks twice need not wait
	if err := s.Run(ctx); err != nil {
		c.say(msgCannotServe.with("why", lastError(err).Error()))
		return failed
	}
	return clean
}

// previewOptions are what is shown. A file that is not there is hardly one that is going to be: it is refused.
func (c *call) previewOptions(e edition) (o preview.Options, code int) {
	port, wrong := c.number("--port", leastPort, mostPort)
	if wrong == nil && port != math.Trunc(port) {
		wrong = c.notInRange("--port", leastPort, mostPort)
	}
	if wrong != nil {
		return o, c.misuse(*wrong)
	}
	paths, ok := c.sources(0)
	if !ok {
		return o, failed
	}
	o = preview.Options{Port: int(port), Lang: c.lang, Choose: c.chooser(e)}
	for _, path := range paths {
		switch info, err := os.Stat(path); {
		case path == "-":
			return o, c.misuse(msgNoStdinHere.with())
		case err != nil:
			c.say(msgCannotRead.with("path", path, "why", reason(err, path).in(c.lang)))
			return o, failed
		case !info.IsDir():
			o.Files = append(o.Files, path)
		case len(preview.Sources(path)) == 0:
			c.say(msgNoSources.with("path", path))
			return o, failed
		default:
			o.Folders = append(o.Folders, path)
		}
	}
	o.Unread = func(name, path string, err error) string {
		return msgCannotRead.with("path", name, "why", reason(err, path).in(c.lang)).in(c.lang)
	}
	o.Unset = func(name string, err error) string {
		return c.whyNotSet(&loaded{file: source.NewFile(name, "")}, err).in(c.lang)
	}
	o.Fault = func(name string, fault any) string {
		return msgInternal.with("path", name, "fault", fmt.Sprint(fault)+whereFault()).in(c.lang)
	}
	return o, clean
}

// chooser says of a checked pattern how it is set, by the flags of the command line.
func (c *call) chooser(e edition) func(string, *plan.Pattern) (*plan.Pattern, desk.Look, string) {
	return func(name string, p *plan.Pattern) (*plan.Pattern, desk.Look, string) {
		e := e.of(p)
		if tag := e.lacks(p); tag != "" {
			return nil, desk.Look{}, msgLacksLanguage.with("path", name, "lang", tag, "has", strings.Join(p.Languages, ", ")).in(c.lang)
		}
		one, ok := e.only(p)
		if !ok {
			return nil, desk.Look{}, msgNoSize.with("path", name, "size", e.size, "has", strings.Join(sizeNames(p), ", ")).in(c.lang)
		}
		return one, desk.Look{Paper: e.paper, Edition: e.kind, Langs: e.langs}, ""
	}
}
