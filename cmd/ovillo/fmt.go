package main

import (
	"bytes"
	"errors"
	"slices"
	"strconv"
	"strings"

	"github.com/rogpeppe/go-internal/diff"

	"ovillo/cmd/ovillo/save"
	"ovillo/lang"
	"ovillo/lang/format"
)

var fmtCommand = command{
	name: "fmt",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"set sources in their usual shape", "dar a los patrones su forma habitual"},
	long: text{
		"Only blanks change: indents, columns, empty lines. The result goes to the standard output. - reads the standard input.\n" +
			"A source may have errors; what cannot be read stays as it is. With --to its words change as well: a source in\n" +
			"Spanish begins with a line such as “idioma es” or “idioma es-MX”; what it means is the same in all languages.",
		"Solo cambian los blancos: sangrías, columnas, líneas vacías. El resultado va a la salida estándar. - lee la entrada\n" +
			"estándar. El patrón puede tener errores; lo que no se entiende queda como está. Con --to cambian también las\n" +
			"palabras: un patrón en español empieza con una línea como «idioma es» o «idioma es-MX»; lo que significa es lo mismo\n" +
			"en todos los idiomas."},
	flags: []flagDef{
		{name: "-w", help: text{"write the result into the file", "escribir el resultado en el archivo"}},
		{name: "-l", help: text{"list the files that would change", "nombrar los archivos que cambiarían"}},
		{name: "-d", help: text{"show what would change", "mostrar lo que cambiaría"}},
		{name: "--to", value: "LANG", help: text{
			"put the words of the language into another one: en, es, es-MX …; names and texts stay",
			"pasar las palabras del lenguaje a otro idioma: en, es, es-MX…; nombres y textos quedan igual"}, fill: tonguesOf},
	},
	examples: []exampleLine{
		{text{"ovillo fmt hat.ovillo", "ovillo fmt gorro.ovillo"}, text{
			"the hat in its usual shape, on the screen",
			"el gorro en su forma habitual, en pantalla"}},
		{text{`ovillo fmt -w "**/*.ovillo"`, `ovillo fmt -w "**/*.ovillo"`}, text{
			"all sources here and in the folders below, each in its file",
			"todos los patrones de esta carpeta y de las que contiene, cada uno en su archivo"}},
		{text{`ovillo fmt -l "*.ovillo"`, `ovillo fmt -l "*.ovillo"`}, text{
			"the names of those that would change",
			"los nombres de los que cambiarían"}},
		{text{"ovillo fmt hat.ovillo --to es > gorro.ovillo", "ovillo fmt gorro.ovillo --to en > hat.ovillo"}, text{
			"the same pattern, written in Spanish words",
			"el mismo patrón, escrito con palabras inglesas"}},
	},
	run: runFmt,
}

// tonguesOf offers the languages that a source may be written in.
func tonguesOf(*filling) []candidate {
	out := []candidate{{"en", ""}}
	for _, tag := range lang.Tongues() {
		out = append(out, candidate{tag, ""})
	}
	return out
}

func runFmt(c *call) int {
	paths, ok := c.sources(0)
	if !ok {
		return failed
	}
	var modes []string
	for _, f := range []string{"-w", "-l", "-d"} { // they say what becomes of the result, and exclude each other
		if c.has(f) {
			modes = append(modes, f)
		}
	}
	if len(modes) > 1 {
		return c.misuse(msgFlagsClash.with("one", modes[0], "other", modes[1]))
	}
	if c.has("-w") && countOf(paths, "-") > 0 {
		return c.misuse(msgFlagsClash.with("one", "-w", "other", "-"))
	}
	if to, ok := c.flags["--to"]; ok && to != "en" && !slices.Contains(lang.Tongues(), to) {
		return c.misuse(msgFlagChoice.with("flag", "--to", "value", to, "allowed", strings.Join(append([]string{"en"}, lang.Tongues()...), ", ")))
	}
	return c.each(paths, (*call).fmt)
}

// fmt sets one source. What is wrong with it is for check to say.
func (c *call) fmt(path string) int {
	s, ok := c.load(path)
	if !ok {
		return failed
	}
	old := []byte(s.file.Text)
	text, ok := c.reworded(s)
	if !ok {
		return failed
	}
	set, found := format.Source([]byte(text))
	code := clean
	if lang.TooLarge(found) { // it stays as it is, which would look as if it were in shape
		c.printer(s).Text(c.err, s.file, found)
		code = faulty
	}
	same := bytes.Equal(old, set)
	switch {
	case c.has("-l"):
		if same {
			return code
		}
		return c.print([]byte(visible(s.file.Name) + "\n"))
	case c.has("-d"):
		return max(code, c.print(diff.Diff(visible(s.file.Name)+".orig", old, visible(s.file.Name), set)))
	case !c.has("-w"):
		return max(code, c.print(set))
	case same:
		return code // the file keeps its date
	}
	if err := save.Source(path, old, set); err != nil {
		c.say(msgCannotWrite.with("path", path, "why", reason(err, path).in(c.lang)))
		return failed
	}
	return clean
}

// reworded is a source in the language that is asked for; without one, as it is.
func (c *call) reworded(s *loaded) (string, bool) {
	to, asked := c.flags["--to"]
	if !asked {
		return s.file.Text, true
	}
	text, err := lang.Reword(s.file, to)
	var faulty *lang.Faulty
	var taken *lang.Taken
	name := visible(s.file.Name)
	switch {
	case err == nil:
		return text, true
	case errors.As(err, &faulty):
		c.say(msgFaultyStays.with("path", name, "n", strconv.Itoa(len(faulty.Faults))))
	case errors.As(err, &taken) && taken.Name != "":
		c.say(msgNameTaken.with("path", name, "line", strconv.Itoa(s.file.Line(taken.Span.Start)), "name", taken.Name, "lang", to))
	case errors.As(err, &taken):
		c.say(msgLineTaken.with("path", name, "line", strconv.Itoa(s.file.Line(taken.Span.Start)), "lang", to))
	}
	return "", false
}
