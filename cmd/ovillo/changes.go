package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/save"
	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/lang/source"
	"ovillo/render/book"
	"ovillo/render/errata"
	"ovillo/render/layout"
	"ovillo/render/pdf"
	"ovillo/render/words"
)

var changesCommand = command{
	name: "changes",
	args: text{"OLD NEW", "ANTERIOR NUEVO"},
	line: text{"say what changed for those who make it", "decir qué cambia para quien lo teje"},
	long: text{
		"Two editions of a pattern are compared by what is made: which rows, in which sizes, what they said and what they\n" +
			"should say, with the pages it is on; and measures, materials, finishing and cautions. What is only said in other\n" +
			"words is no change; of the texts of the pattern the figures count. The list is in the languages of the pattern, or\n" +
			"in those that --lang names. As a PDF it goes to hat-errata.pdf beside hat.ovillo, or where -o says.\n" +
			"git:REV:PATH is a file as it stood at a revision of the repository: git:v1:hat.ovillo, git:HEAD~1:hat.ovillo.\n" +
			"With --notes it prints the list in short as the changes of the source, which the pages print as notes on the\n" +
			"edition; with -w it puts them into NEW, where there are none yet.",
		"Dos ediciones de un patrón se comparan por lo que se teje: qué hileras o vueltas, en qué tallas, qué decían y qué\n" +
			"deben decir, con las páginas en que están; y también medidas, materiales, acabado y precauciones. Lo que solo se\n" +
			"dice con otras palabras no es un cambio; de los textos del patrón cuentan las cifras. La lista va en los idiomas\n" +
			"del patrón o en los que diga --lang. Como PDF queda en gorro-errata.pdf, al lado de gorro.ovillo, o donde diga -o.\n" +
			"git:REV:RUTA es un archivo tal como estaba en una revisión del repositorio: git:v1:gorro.ovillo,\n" +
			"git:HEAD~1:gorro.ovillo.\n" +
			"Con --notes se muestra la lista abreviada como bloque de cambios del patrón, que las páginas imprimen en las notas\n" +
			"de la edición; con -w se pone en NUEVO, si todavía no tiene ninguno."},
	flags: []flagDef{
		{name: "--format", value: "text|markdown|pdf", allowed: []string{"text", "markdown", "pdf"}, help: text{
			"what becomes of it; without it, text", "en qué forma; si no se indica, texto"}},
		{name: "-o", value: "PATH", help: text{"where the list goes", "dónde queda la lista"}},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"the languages of the list; without it, those of the pattern",
			"los idiomas de la lista; si no se indican, los del patrón"}, fill: readingTags},
		{name: "--paper", value: "a4|letter", allowed: []string{"a4", "letter"}, help: text{
			"the sheet, and of which edition the pages are; without it, a4",
			"la hoja, y de qué edición son las páginas; si no se indica, a4"}},
		{name: "--notes", help: text{"print the notes on the edition, as the source has them", "mostrar las notas de la edición, como van en el patrón"}},
		{name: "-w", help: text{"with --notes: write them into NEW", "con --notes: escribirlas en NUEVO"}},
	},
	examples: []exampleLine{
		{text{"ovillo changes git:HEAD:hat.ovillo hat.ovillo", "ovillo changes git:HEAD:gorro.ovillo gorro.ovillo"}, text{
			"what changed since the last commit",
			"qué cambió desde la última revisión guardada"}},
		{text{"ovillo changes git:HEAD:hat.ovillo hat.ovillo --format pdf", "ovillo changes git:HEAD:gorro.ovillo gorro.ovillo --format pdf"}, text{
			"the same as a sheet for those who have the pattern, hat-errata.pdf",
			"lo mismo en una hoja para quienes tienen el patrón, gorro-errata.pdf"}},
	},
	run: runChanges,
}

// changesOptions are the choices of the command line.
type changesOptions struct {
	format string
	langs  []*words.Language // nil: those of the pattern
	output string            // "" for the standard output
	paper  book.Paper
}

func runChanges(c *call) int {
	switch {
	case len(c.args) < 2:
		return c.misuse(msgNeedsTwo.with())
	case len(c.args) > 2:
		return c.misuse(msgTooMany.with("what", c.args[2]))
	case countOf(c.args, "-") > 1:
		return c.misuse(msgStdinTwice.with())
	}
	o, wrong := c.changesOptions()
	if wrong != nil {
		return c.misuse(*wrong)
	}
	return c.guarded(c.args[1], func(c *call, path string) int { return c.compared(c.args[0], path, o) })
}

func (c *call) changesOptions() (o changesOptions, wrong *said) {
	refuse := func(one, other string) (changesOptions, *said) {
		s := msgFlagsClash.with("one", one, "other", other)
		return o, &s
	}
	if c.has("--lang") {
		if o.langs, wrong = readLangs(c.flags["--lang"]); wrong != nil {
			return o, wrong
		}
	}
	if o.format = c.flags["--format"]; o.format == "" {
		o.format = "text"
	}
	o.paper, _ = layout.PaperNamed(c.flags[paperFlag.name])
	o.output = c.flags["-o"]
	switch notes := c.has("--notes"); {
	case c.has("-w") && !notes:
		s := msgWriteNeedsNotes.with()
		return o, &s
	case notes && c.has("--format"):
		return refuse("--notes", "--format")
	case c.has("-w") && c.has("-o"):
		return refuse("-w", "-o")
	case c.has("-w") && c.args[1] == "-", c.has("-w") && c.revision(c.args[1]) != nil:
		s := msgWriteNeedsFile.with("path", c.args[1])
		return o, &s
	}
	if o.format != "pdf" || c.has("--notes") {
		return o, nil
	}
	path := c.args[1]
	if r := c.revision(path); r != nil {
		path = r.Path
	}
	o.output, wrong = c.outputNamed(path, stem(path)+"-errata.pdf", 1)
	return o, wrong
}

// compared compares two sources.
func (c *call) compared(older, newer string, o changesOptions) int {
	_, was, code := c.edited(older)
	if code != clean {
		return code
	}
	new, is, code := c.edited(newer)
	if code != clean {
		return code
	}
	r := compare.Patterns(was, is)
	switch {
	case !r.SameEdition():
	case is.Edition == 0:
		c.say(msgNoEdition.with("path", new.file.Name))
	default:
		c.say(msgSameEdition.with("path", new.file.Name, "edition", fmt.Sprint(is.Edition)))
	}
	langs := o.langs
	if langs == nil {
		langs = readingsOf(is, nil)
	}
	for _, l := range langs {
		if !slices.Contains(is.Languages, l.Code()) {
			c.say(msgLacksLanguage.with("path", new.file.Name, "lang", l.Tag(), "has", strings.Join(is.Languages, ", ")))
			return failed
		}
	}
	sheets, wrong := c.sheets(r, langs, o)
	if wrong != nil {
		c.say(*wrong)
		return failed
	}
	if c.has("--notes") {
		return c.editionNotes(new, r, sheets, o)
	}
	return c.list(new, sheets, is.Date, o)
}

// edited reads and checks one of the two sources. What is noted of them is not of interest here, errors are.
func (c *call) edited(word string) (*loaded, *plan.Pattern, int) {
	s, ok := c.loadEdition(word)
	if !ok {
		return nil, nil, failed
	}
	p, found := s.compile()
	if found.HasErrors() || p == nil {
		if err := c.printer(s).Text(c.err, s.file, found); err != nil {
			return nil, nil, failed
		}
		if p == nil && (s.book != nil || s.shared) && !found.HasErrors() {
			c.say(s.noPattern())
			return nil, nil, faulty
		}
		return nil, nil, c.verdict(s, p, found)
	}
	return s, p, clean
}

// revision is the revision that a word names; nil for a file, whatever its name looks like.
func (c *call) revision(word string) *desk.Revision {
	if _, err := os.Lstat(word); err == nil {
		return nil
	}
	if r, ok := desk.ReadRevision(word); ok {
		return &r
	}
	return nil
}

// loadEdition reads a source from a file or from a revision.
func (c *call) loadEdition(word string) (*loaded, bool) {
	r := c.revision(word)
	if r == nil {
		if _, err := os.Lstat(word); err != nil && strings.HasPrefix(word, "git:") {
			c.say(msgCannotRead.with("path", word, "why", whyNotRevision.in(c.lang)))
			return nil, false
		}
		return c.load(word)
	}
	const most = mostMegabytes << 20
	data, err := r.Read(most)
	if err == nil && len(data) > most {
		err = errTooLarge
	}
	if err != nil {
		c.say(msgCannotRead.with("path", word, "why", whyNoRevision(err, *r).in(c.lang)))
		return nil, false
	}
	return &loaded{path: word, file: source.NewFile(word, string(data)), open: r.Beside}, true
}

// whyNoRevision puts into words why a revision cannot be read.
func whyNoRevision(err error, r desk.Revision) said {
	switch {
	case errors.Is(err, desk.ErrNoGit):
		return whyNoGit.with()
	case errors.Is(err, desk.ErrNoRepository):
		return whyNoRepository.with()
	case errors.Is(err, desk.ErrNoRevision):
		return whyNoSuchRevision.with("rev", r.Rev)
	case errors.Is(err, desk.ErrFolder):
		return whyFolder.with()
	case errors.Is(err, fs.ErrNotExist):
		return whyNotInRevision.with("rev", r.Rev, "path", r.Path)
	}
	return reason(err, r.Path)
}

// sheets writes the list in each language, with the pages of the usual edition.
func (c *call) sheets(r *compare.Result, langs []*words.Language, o changesOptions) ([]*errata.Sheet, *said) {
	made := errata.Options{Paper: paperName(o.paper)}
	if !r.Same() {
		var err error
		if made.Old, err = indexOf(r.Old, o.paper); err == nil {
			made.New, err = indexOf(r.New, o.paper)
		}
		if err != nil {
			s := msgInternal.with("path", c.args[1], "fault", err.Error())
			return nil, &s
		}
	}
	var out []*errata.Sheet
	for _, l := range langs {
		out = append(out, errata.Make(r, l.Keeping(r.New), made))
	}
	return out, nil
}

func indexOf(p *plan.Pattern, paper book.Paper) (*book.Index, error) {
	langs := readingsOf(p, nil)
	return book.IndexOf(p, book.Options{Paper: paper, Langs: langs[:min(mostLangs, len(langs))]})
}

// paperName is what a paper is called in a sentence.
func paperName(p book.Paper) string {
	if p == book.Letter {
		return "Letter"
	}
	return "A4"
}

// list writes the list.
func (c *call) list(s *loaded, sheets []*errata.Sheet, date string, o changesOptions) int {
	var b bytes.Buffer
	var err error
	switch o.format {
	case "markdown":
		err = errata.Markdown(&b, sheets)
	case "pdf":
		doc := errata.Compose(sheets[:min(mostLangs, len(sheets))], o.paper, date)
		if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
			c.say(c.whyNotSet(s, err))
			return failed
		}
		return c.deliver(o.output, b.Bytes(), len(doc.Pages))
	default:
		err = errata.Text(&b, sheets)
	}
	if err != nil {
		return failed
	}
	return c.handOver(b.Bytes(), o)
}

// handOver prints a list, or writes it to a file.
func (c *call) handOver(data []byte, o changesOptions) int {
	if o.output == "" || o.output == "-" {
		return c.print(data)
	}
	err := refuseLike(data)(o.output)
	if err == nil {
		err = save.Output(o.output, data)
	}
	if err != nil {
		c.say(msgCannotWrite.with("path", o.output, "why", reason(err, o.output).in(c.lang)))
		return failed
	}
	return clean
}
