package main

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"ovillo/cmd/ovillo/save"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/render/book"
	"ovillo/render/draw"
	"ovillo/render/png"
	"ovillo/render/scene"
	"ovillo/render/svg"
	"ovillo/render/words"
)

var drawCommand = command{
	name: "draw",
	args: text{"FILE [NAME…]", "ARCHIVO [NOMBRE…]"},
	line: text{"write drawings as SVG or PNG", "escribir dibujos en SVG o PNG"},
	long: text{
		"Without a name it lists the drawings that the pattern has. With names it writes them, or with a folder as -o and no\n" +
			"name all of them: schematic of hat.ovillo goes to hat-schematic.svg beside it, or where -o says: a file that ends\n" +
			"in .svg or .png, a folder, or - for the standard output. A drawing that is cut into sheets becomes several files.\n" +
			"Title and description go with it for those who do not see it, in the languages of --lang.",
		"Sin nombre enumera los dibujos que tiene el patrón. Con nombres los escribe o, si -o es una carpeta y no hay\n" +
			"nombres, todos: schematic de gorro.ovillo queda en gorro-schematic.svg, al lado, o donde diga -o: un archivo que\n" +
			"acabe en .svg o .png, una carpeta, o - para la salida estándar. Un dibujo repartido en hojas da varios archivos.\n" +
			"Lleva título y descripción para quien no lo ve, en los idiomas que diga --lang."},
	flags: []flagDef{
		{name: "-o", value: "PATH", help: text{"where the drawings go", "dónde quedan los dibujos"}},
		{name: "--size", value: "NAME", help: text{"the size that is drawn; without it, the one the pattern shows", "la talla que se dibuja; si no se indica, la que muestra el patrón"}, fill: sizesOf},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"languages of title, description and key; without it, those of the pattern",
			"idiomas del título, la descripción y la leyenda; si no se indica, los del patrón"}, fill: readingTags},
		{name: "--width", value: "MM", help: text{
			"draw it no wider than this; charts are cut into sheets: 85 for a phone",
			"no más ancho que esto; los diagramas se reparten en hojas: 85 para un teléfono"}},
		{name: "--dpi", value: "N", help: text{
			"PNG, with so many dots to the inch; without it, SVG, or 200 for a name that ends in .png",
			"PNG, con tantos puntos por pulgada; si no se indica, SVG, o 200 si el nombre acaba en .png"}},
		{name: editionFlag.name, value: editionFlag.value, help: text{
			"the edition whose drawings they are", "la edición de la que son los dibujos"}, fill: offerEditions(ofDrawings)},
		jsonFlag,
	},
	tail: func(lang string) string { return editionsHelp(lang, ofDrawings) },
	examples: []exampleLine{
		{text{"ovillo draw hat.ovillo", "ovillo draw gorro.ovillo"}, text{
			"the list of its drawings",
			"la lista de sus dibujos"}},
		{text{"ovillo draw hat.ovillo schematic --size M -o hat.png", "ovillo draw gorro.ovillo schematic --size M -o gorro.png"}, text{
			"one drawing, as a picture of dots",
			"un dibujo, como imagen de puntos"}},
		{text{"ovillo draw hat.ovillo -o . --dpi 300", "ovillo draw gorro.ovillo -o . --dpi 300"}, text{
			"all of them into this folder, for print",
			"todos en esta carpeta, para imprimir"}},
	},
	fill: drawingsOf,
	run:  runDraw,
}

// drawingsOf offers the drawings of the source on the line.
func drawingsOf(f *filling) (out []candidate) {
	if len(f.words) == 0 {
		return nil
	}
	if p := f.pattern(); p != nil {
		for _, d := range draw.Drawings(p) {
			if !slices.Contains(f.words, d.Name) {
				out = append(out, candidate{d.Name, ""})
			}
		}
	}
	return out
}

// The bounds of what can be asked for, and what goes without asking.
const (
	leastDPI, mostDPI, usualDPI = 20, 2400, 200
	leastWide, mostWide         = 70, 2000
)

// On a telephone held upright a picture is so many pixels wide, and letters under so many of them cannot be read: common practice,
// no source.
const phoneWide, phoneLeast = 320, 8

// ofDrawings are the editions that change drawings, and not only the pages they stand on.
const ofDrawings = book.LeftHanded | book.LowInk

// phoneMM is the width of a drawing that a telephone shows in its own size.
const phoneMM = 85

// drawOptions are the choices of the command line.
type drawOptions struct {
	draw.FileOptions
	edition edition // languages and size
	names   []string
	dpi     float64 // 0: SVG
	output  string  // "" : beside the source
}

func runDraw(c *call) int {
	if len(c.args) == 0 {
		return c.misuse(msgNeedsFile.with())
	}
	o, wrong := c.drawOptions()
	if wrong != nil {
		return c.misuse(*wrong)
	}
	if wrong := c.twoOnOutput(); wrong != nil {
		return c.misuse(*wrong)
	}
	return c.each(c.args[:1], func(c *call, path string) int { return c.draw(path, o) })
}

func (c *call) drawOptions() (o drawOptions, wrong *said) {
	refuse := func(s said) (drawOptions, *said) { return o, &s }
	o.names, o.output = c.args[1:], c.flags["-o"]
	if o.edition.kind, wrong = c.editionKind(ofDrawings); wrong != nil {
		return o, wrong
	}
	o.Left, o.LowInk = o.edition.kind.Has(book.LeftHanded), o.edition.kind.Has(book.LowInk)
	o.edition.size = c.flags["--size"]
	if c.has("--lang") {
		langs, wrong := readLangs(c.flags["--lang"])
		if wrong != nil {
			return o, wrong
		}
		for _, l := range langs {
			o.edition.langs = append(o.edition.langs, l.Tag())
		}
	}
	if o.Wide, wrong = c.number("--width", leastWide, mostWide); wrong != nil {
		return o, wrong
	}
	if o.dpi, wrong = c.number("--dpi", leastDPI, mostDPI); wrong != nil {
		return o, wrong
	}
	if c.has("-o") && o.output == "" {
		return refuse(msgFlagValue.with("flag", "-o", "value", "PATH"))
	}
	if c.args[0] == "-" && o.output == "" && len(o.names) > 0 {
		return refuse(msgDrawingOutside.with())
	}
	if o.output == "" || o.output == "-" || isFolder(o.output) {
		return o, nil
	}
	switch {
	case isPNG(o.output) && o.dpi == 0:
		o.dpi = usualDPI
	case isPNG(o.output):
	case !strings.EqualFold(filepath.Ext(o.output), ".svg"):
		return refuse(msgPictureKind.with("path", o.output))
	case o.dpi > 0:
		return refuse(msgFlagsClash.with("one", "--dpi", "other", "-o "+o.output))
	}
	if len(o.names) > 1 {
		return refuse(msgTooMany.with("what", o.names[1]))
	}
	return o, nil
}

// number reads a flag that is a number between two others; 0 where it is not given.
func (c *call) number(flag string, least, most float64) (float64, *said) {
	if !c.has(flag) {
		return 0, nil
	}
	v, err := strconv.ParseFloat(c.flags[flag], 64)
	if err != nil || !(v >= least && v <= most) {
		return 0, c.notInRange(flag, least, most)
	}
	return v, nil
}

// notInRange says what number a flag takes.
func (c *call) notInRange(flag string, least, most float64) *said {
	s := msgNumberRange.with("flag", flag, "least", fmt.Sprint(least), "most", fmt.Sprint(most), "value", c.flags[flag])
	return &s
}

func isPNG(path string) bool { return strings.EqualFold(filepath.Ext(path), ".png") }

// draw writes or lists the drawings of one source.
func (c *call) draw(path string, o drawOptions) int {
	s, p, code := c.checked(path)
	if code != clean {
		return code
	}
	o.edition = o.edition.of(p)
	if tag := o.edition.lacks(p); tag != "" {
		c.say(msgLacksLanguage.with("path", s.file.Name, "lang", tag, "has", strings.Join(p.Languages, ", ")))
		return failed
	}
	if o.edition.size != "" {
		z, ok := sizeNamed(p, o.edition.size)
		if !ok {
			c.say(msgNoSize.with("path", s.file.Name, "size", o.edition.size, "has", strings.Join(sizeNames(p), ", ")))
			return failed
		}
		q := *p
		q.Shown = z
		p = &q
	}
	for _, tag := range o.edition.langs {
		if l, err := words.For(tag); err == nil { // they are known
			o.Langs = append(o.Langs, l)
		}
	}
	drawn := draw.Drawings(p)
	if len(o.names) == 0 && o.output != "" && o.output != "-" && isFolder(o.output) || len(o.names) == 0 && o.output == "" {
		return c.allDrawings(s, p, drawn, o)
	}
	var known []string
	for _, d := range drawn {
		known = append(known, d.Name)
	}
	if len(o.names) == 0 {
		c.say(msgWhichDrawing.with("path", o.output, "source", s.file.Name, "has", strings.Join(known, ", ")))
		return failed
	}
	var files []drawnFile
	for _, name := range o.names {
		i := slices.Index(known, name)
		if i < 0 {
			c.say(msgNoDrawing.with("path", s.file.Name, "name", name, "has", strings.Join(nearestFirst(name, known), ", ")))
			return failed
		}
		sheets := drawn[i].Sheets(o.FileOptions)
		if len(sheets) == 0 {
			c.say(msgNotInSize.with("path", s.file.Name, "name", name, "size", sizeShown(p)))
			return failed
		}
		files = append(files, o.files(s, drawn[i], sheets)...)
	}
	return c.writeDrawings(s, files, o)
}

// nearestFirst puts the names that one may have meant before the others.
func nearestFirst(name string, known []string) []string {
	near := lang.Near(name, known)
	rest := slices.DeleteFunc(slices.Clone(known), func(k string) bool { return slices.Contains(near, k) })
	return append(near, rest...)
}

func sizeShown(p *plan.Pattern) string {
	if p.Shown >= 0 && p.Shown < len(p.Sizes) {
		return visible(p.Sizes[p.Shown].Name)
	}
	return "–"
}

// allDrawings lists all drawings, or writes them into a folder.
func (c *call) allDrawings(s *loaded, p *plan.Pattern, drawn []draw.Drawing, o drawOptions) int {
	var files []drawnFile
	var list strings.Builder
	for _, d := range drawn {
		sheets := d.Sheets(o.FileOptions)
		if len(sheets) == 0 {
			continue // this size has nothing to draw
		}
		files = append(files, o.files(s, d, sheets)...)
		line := c.dimensions(msgListed, sheets[0], "what", c.titleOf(sheets[0]))
		if len(sheets) > 1 {
			line = msgListedSheets.with("what", c.titleOf(sheets[0]), "n", strconv.Itoa(len(sheets)))
		}
		list.WriteString(pad(visible(d.Name), 16) + line.in(c.lang) + "\n")
	}
	switch {
	case len(files) == 0:
		c.say(msgNoDrawings.with("path", s.file.Name, "size", sizeShown(p)))
		return failed
	case o.output == "":
		c.tell(strings.TrimSuffix(list.String(), "\n"))
		return clean
	}
	return c.writeDrawings(s, files, o)
}

// titleOf is the title of a drawing in the language of the messages, or in the first it has.
func (c *call) titleOf(s *scene.Scene) string {
	var tags []string
	for tag := range s.Title {
		tags = append(tags, tag)
	}
	slices.Sort(tags)
	for _, tag := range tags {
		if code, _, _ := strings.Cut(tag, "-"); code == c.lang {
			return s.Title[tag]
		}
	}
	if len(tags) == 0 {
		return ""
	}
	return s.Title[tags[0]]
}

// dimensions fills a text with how large a drawing is.
func (c *call) dimensions(t text, s *scene.Scene, pairs ...string) said {
	return t.with(append(pairs, "wide", strconv.Itoa(int(math.Round(s.W))), "high", strconv.Itoa(int(math.Round(s.H))))...)
}

// drawnFile is a sheet of a drawing and where it goes.
type drawnFile struct {
	path    string
	sheet   *scene.Scene
	drawing draw.Drawing
	of      int // how many sheets it has
}

// files says where the sheets of a drawing go.
func (o drawOptions) files(s *loaded, d draw.Drawing, sheets []*scene.Scene) []drawnFile {
	ending := ".svg"
	if o.dpi > 0 {
		ending = ".png"
	}
	base := o.output
	folder := base == "" || base != "-" && isFolder(base)
	if folder {
		if base == "" {
			base = filepath.Dir(s.path)
		}
		stemmed := stem(s.path)
		if s.path == "-" {
			stemmed = "drawing"
		}
		base = filepath.Join(base, stemmed+"-"+d.Name+o.suffix()+ending)
	}
	var out []drawnFile
	for k, sheet := range sheets {
		path := base
		if len(sheets) > 1 && base != "-" {
			ext := filepath.Ext(base)
			path = strings.TrimSuffix(base, ext) + "-" + strconv.Itoa(k+1) + ext
		}
		out = append(out, drawnFile{path, sheet, d, len(sheets)})
	}
	return out
}

// suffix is put to the name of a drawing that is not the usual one, so that it does not take the place of that.
func (o drawOptions) suffix() string {
	s := o.edition.suffix()
	if o.Wide > 0 {
		s += "-" + strconv.FormatFloat(o.Wide, 'f', -1, 64) + "mm"
	}
	return s
}

// writeDrawings writes all drawings, once all of them are pictures in memory.
func (c *call) writeDrawings(s *loaded, files []drawnFile, o drawOptions) int {
	pictures := make([][]byte, len(files))
	for i, f := range files {
		if f.path == "-" && (f.of > 1 || len(files) > 1) {
			c.say(msgOneOnOutput.with("name", f.drawing.Name, "n", strconv.Itoa(len(files))))
			return failed
		}
		var b bytes.Buffer
		var err error
		if o.dpi > 0 {
			err = png.Write(&b, f.sheet, o.dpi)
		} else {
			err = svg.Write(&b, f.sheet)
		}
		var large *png.TooLarge
		switch {
		case errors.As(err, &large):
			why := whyTooManyDots.with("most", strconv.Itoa(png.Most/1_000_000), "dpi", strconv.Itoa(int(large.DPI)))
			c.say(msgCannotWrite.with("path", f.path, "why", why.in(c.lang)))
			return failed
		case err != nil:
			c.say(msgInternal.with("path", s.file.Name, "fault", err.Error()))
			return failed
		}
		pictures[i] = b.Bytes()
	}
	for i, f := range files {
		if f.path == "-" {
			return c.print(pictures[i])
		}
		err := refusePicture(f.path)
		if err == nil {
			err = save.Output(f.path, pictures[i])
		}
		if err != nil {
			c.say(msgCannotWrite.with("path", f.path, "why", reason(err, f.path).in(c.lang)))
			return failed
		}
		c.tell(c.dimensions(msgDrawn, f.sheet, "path", f.path, "what", c.titleOf(f.sheet)).in(c.lang))
		c.sayLegible(f, o)
	}
	return clean
}

// sayLegible says that a drawing has letters that a telephone makes too small, and what would help.
func (c *call) sayLegible(f drawnFile, o drawOptions) {
	pixels, fine := onPhone(f.sheet)
	if fine {
		return
	}
	o.Wide = phoneMM
	t := msgTooSmallStill
	if narrow := f.drawing.Sheets(o.FileOptions); !slices.ContainsFunc(narrow, func(s *scene.Scene) bool { _, fine := onPhone(s); return !fine }) {
		t = msgTooSmall
	}
	c.say(t.with("path", f.path, "n", strconv.Itoa(int(math.Round(pixels)))))
}

// onPhone is how many pixels high the smallest letters of a drawing are on a telephone, and whether they can be read. At its own size a
// picture has 96 pixels to the inch; a telephone only ever makes it smaller.
func onPhone(s *scene.Scene) (pixels float64, fine bool) {
	em := s.SmallestLetter()
	pixels = em * min(96/25.4, phoneWide/s.W)
	return pixels, em == 0 || pixels >= phoneLeast-0.1
}
