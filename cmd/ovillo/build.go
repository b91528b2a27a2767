package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/save"
	"ovillo/render/book"
	"ovillo/render/pdf"
	"ovillo/render/words"
)

var buildCommand = command{
	name: "build",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"set patterns as PDF or as web pages", "componer patrones en PDF o como página web"},
	long: text{
		"hat.ovillo becomes hat.pdf beside it, or where -o says: a file, a folder, or - for the standard output. A source\n" +
			"with errors gets no PDF, and an older one stays as it is. --lang may name the words of a country: en-GB,es-MX.\n" +
			"With --gauge the pattern is worked at your own gauge, and what changes is said. The pages say for which gauge they\n" +
			"are and go to hat-18x9.pdf, so that they are never taken for the designer's.\n" +
			"A PDF holds its source as an attachment. One made with --archive does not: it is of the kind that archives keep,\n" +
			"PDF/A-1b, which allows no attachment, and goes to hat-archive.pdf.\n" +
			"--format html makes hat.html: a page for a browser, whole in one file, with a choice of language and size and rows\n" +
			"to tick. It asks the network for nothing.\n" +
			"--format text makes hat-en.txt and hat-es.txt: for the box below a video, a blog, or to be read aloud, with how to make\n" +
			"the piece larger or smaller and a list of what a film has to show. --short keeps it to what such a box takes.\n" +
			"--format json makes hat.json: the checked pattern for other programs, in a shape that is promised.",
		"gorro.ovillo se convierte en gorro.pdf, al lado, o donde diga -o: un archivo, una carpeta, o - para la salida\n" +
			"estándar. De un patrón con errores no sale ningún PDF, y el que hubiera queda como estaba. --lang puede pedir\n" +
			"las palabras de un país: en-GB,es-MX.\n" +
			"Con --gauge el patrón se teje con otra muestra, y se dice qué cambia. Las páginas dicen para qué muestra son y\n" +
			"van a gorro-18x9.pdf, para que no se confundan con las originales.\n" +
			"Cada PDF lleva adjunto el archivo del patrón. Con --archive no lo lleva: es el PDF que se guarda en archivos\n" +
			"históricos y bibliotecas, PDF/A-1b, que no admite adjuntos, y va a gorro-archive.pdf.\n" +
			"--format html hace gorro.html: una página para el navegador, en un solo archivo, donde se elige idioma y talla y se\n" +
			"marcan las vueltas. No pide nada a la red.\n" +
			"--format text hace gorro-en.txt y gorro-es.txt: para la caja de un vídeo, un blog o leer en voz alta, con cómo hacer\n" +
			"la pieza más grande o más pequeña y qué planos pide el vídeo. --short lo deja en lo que cabe en esa caja.\n" +
			"--format json hace gorro.json: el patrón comprobado para otros programas, en una forma que no cambia."},
	flags: []flagDef{
		formatFlag,
		shortFlag,
		{name: "-o", value: "PATH", help: text{"where it goes", "dónde queda"}},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"one language, or two side by side; without it, those of the pattern",
			"un idioma, o dos en columnas; si no se indica, los del patrón"}, fill: readingTags},
		editionFlag,
		paperFlag,
		sizeFlag,
		gaugeFlag,
		jsonFlag,
		{name: "--archive", help: text{"make a PDF for keeping, PDF/A-1b", "hacer un PDF para conservar, PDF/A-1b"}},
	},
	tail: func(lang string) string { return editionsHelp(lang, allEditions) + readingsHelp(lang) },
	examples: []exampleLine{
		{text{"ovillo build hat.ovillo", "ovillo build gorro.ovillo"}, text{
			"its pages, in the languages of the pattern",
			"sus páginas, en los idiomas del patrón"}},
		{text{"ovillo build hat.ovillo --lang es-MX --size M -o hat-m.pdf", "ovillo build gorro.ovillo --lang es-MX --size M -o gorro-m.pdf"}, text{
			"one size alone, in the words of Mexico",
			"una sola talla, con las palabras de México"}},
		{text{"ovillo build hat.ovillo --edition large,left", "ovillo build gorro.ovillo --edition large,left"}, text{
			"large print, for the left hand",
			"letra grande, para tejer con la izquierda"}},
		{text{"ovillo build hat.ovillo --format html", "ovillo build gorro.ovillo --format html"}, text{
			"a page for the web, both languages and all sizes in it",
			"una página para la web, con los dos idiomas y todas las tallas"}},
		{text{"ovillo build hat.ovillo --format text --short --lang en -o -", "ovillo build gorro.ovillo --format text --short --lang es -o -"}, text{
			"what goes below a video",
			"lo que va debajo de un vídeo"}},
	},
	run: runBuild,
}

func runBuild(c *call) int {
	paths, ok := c.sources(0)
	if !ok {
		return failed
	}
	if wrong := c.readGauges(); wrong != nil {
		return c.misuse(*wrong)
	}
	e, wrong := c.edition()
	if wrong != nil {
		return c.misuse(*wrong)
	}
	if wrong := c.twoOnOutput(); wrong != nil {
		return c.misuse(*wrong)
	}
	f, wrong := c.product(e)
	if wrong != nil {
		return c.misuse(*wrong)
	}
	outputs, wrong := c.outputs(paths, e, f)
	if wrong != nil {
		return c.misuse(*wrong)
	}
	desk.Prepare()
	return c.each(paths, func(c *call, path string) int { return c.build(path, outputs[path], e, f) })
}

// build sets one source.
func (c *call) build(path, output string, e edition, f product) int {
	s, p, code := c.checkedAny(path)
	if code != clean {
		return code
	}
	if s.book != nil {
		return c.buildBook(s, output, e, f)
	}
	if p == nil {
		c.say(s.noPattern())
		return faulty
	}
	e = e.of(p)
	if tag := e.lacks(p); tag != "" {
		c.say(msgLacksLanguage.with("path", s.file.Name, "lang", tag, "has", strings.Join(p.Languages, ", ")))
		return failed
	}
	one, ok := e.only(p)
	if !ok {
		c.say(msgNoSize.with("path", s.file.Name, "size", e.size, "has", strings.Join(sizeNames(p), ", ")))
		return failed
	}
	p = one
	if f.publish != nil {
		return f.publish(c, s, p, e, output)
	}
	data, pages, err := setPages(p, e, s.attachedName(p))
	if err != nil {
		c.say(c.whyNotSet(s, err))
		return failed
	}
	return c.deliver(output, data, pages)
}

// deliver writes pages to where they go, and says so.
func (c *call) deliver(output string, data []byte, pages int) int {
	return c.deliverAs(output, data, refusePages, msgWritten.with("path", output, "pages", nounPage.count(pages, c.lang)))
}

// deliverAs writes a file to where it goes unless something of another kind stands there, and says so.
func (c *call) deliverAs(output string, data []byte, refused func(path string) error, written said) int {
	if output == "-" {
		return c.print(data)
	}
	err := refused(output)
	if err == nil {
		err = save.Output(output, data)
	}
	if err != nil {
		c.say(msgCannotWrite.with("path", output, "why", reason(err, output).in(c.lang)))
		return failed
	}
	c.tell(written.in(c.lang))
	return clean
}

// whyNotSet puts into words what an author can mend: a sign that the faces of the pages do not have, or pages without end. That
// anything else about a checked pattern cannot be set is a fault of ours.
func (c *call) whyNotSet(s *loaded, err error) said {
	if errors.Is(err, book.ErrLong) {
		return msgCannotSet.with("path", s.file.Name, "why", whyLong.with("most", strconv.Itoa(book.MostPages())).in(c.lang))
	}
	var missing *pdf.MissingError
	if !errors.As(err, &missing) {
		return msgInternal.with("path", s.file.Name, "fault", err.Error())
	}
	why := whyNoSign.with("sign", string(missing.Rune), "number", fmt.Sprintf("U+%04X", missing.Rune), "text", missing.Text)
	return msgCannotSet.with("path", s.file.Name, "why", why.in(c.lang))
}

// readLangs reads a list of tags: "en-GB,es-MX". Two readings of one language may stand side by side.
func readLangs(list string) (langs []*words.Language, wrong *said) {
	refuse := func(s said) ([]*words.Language, *said) { return nil, &s }
	for tag := range strings.SplitSeq(list, ",") {
		tag = strings.TrimSpace(tag)
		l, err := words.For(tag)
		switch {
		case err != nil:
			return refuse(msgNoLanguage.with("lang", tag, "known", strings.Join(words.Tags(), ", ")))
		case slices.ContainsFunc(langs, func(o *words.Language) bool { return o.Tag() == l.Tag() }):
			return refuse(msgLangTwice.with("lang", tag))
		case len(langs) == mostLangs:
			return refuse(msgTooMany.with("what", tag))
		}
		langs = append(langs, l)
	}
	return langs, nil
}

// readingsHelp lists what --lang takes, with what each is.
func readingsHelp(lang string) string {
	var b strings.Builder
	b.WriteString(msgReadings.in(lang) + "\n")
	for _, l := range words.Readings() {
		tags := strings.Join(append([]string{l.Tag()}, l.Also()...), ", ")
		fmt.Fprintf(&b, "    %s%s\n", pad(tags, 24), l.ReadingNote())
	}
	return b.String()
}

// outputs says where what is made of each source goes.
func (c *call) outputs(paths []string, e edition, f product) (map[string]string, *said) {
	to, from := map[string]string{}, map[string]string{}
	for _, path := range paths {
		out, wrong := c.output(path, e, f, len(paths))
		if wrong != nil {
			return nil, wrong
		}
		if other, taken := from[filepath.Clean(out)]; taken && other != path {
			s := msgSameOutput.with("one", other, "other", path, "path", out)
			return nil, &s
		}
		from[filepath.Clean(out)], to[path] = path, out
	}
	return to, nil
}

func (c *call) output(path string, e edition, f product, sources int) (string, *said) {
	return c.outputNamed(path, stem(path)+c.gaugeSuffix()+e.suffix()+f.ending, sources)
}

// outputNamed says where something goes that has a name of its own unless -o gives one.
func (c *call) outputNamed(path, name string, sources int) (string, *said) {
	o, given := c.flags["-o"]
	refuse := func(s said) (string, *said) { return "", &s }
	folder := given && isFolder(o)
	switch {
	case given && o == "":
		return refuse(msgFlagValue.with("flag", "-o", "value", "PATH"))
	case path == "-" && (!given || folder):
		return refuse(msgStdinNeedsOutput.with())
	case !given:
		return filepath.Join(filepath.Dir(path), name), nil
	case folder:
		return filepath.Join(o, name), nil
	case sources > 1:
		return refuse(msgOneOutput.with("path", o))
	}
	return o, nil
}

// isFolder reports whether a path names a folder: one that is there, or one that a slash at the end declares.
func isFolder(path string) bool {
	if strings.HasSuffix(path, "/") || strings.HasSuffix(path, string(filepath.Separator)) {
		return true
	}
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}
