package main

import (
	"bytes"

	"github.com/rogpeppe/go-internal/diff"

	"ovillo/lang/format"
)

var fmtCommand = command{
	name: "fmt",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"set sources in their usual shape", "dar a los patrones su forma habitual"},
	long: text{
		"Only blanks change: indents, columns, empty lines. The result goes to the standard output. - reads the standard input.\n" +
			"A source may have errors; what cannot be read stays as it is.",
		"Solo cambian los blancos: sangrías, columnas, líneas vacías. El resultado va a la salida estándar. - lee la entrada\n" +
			"estándar. El patrón puede tener errores; lo que no se entiende queda como está."},
	flags: []flagDef{
		{name: "-w", help: text{"write the result into the file", "escribir el resultado en el archivo"}},
		{name: "-l", help: text{"list the files that would change", "nombrar los archivos que cambiarían"}},
		{name: "-d", help: text{"show what would change", "mostrar lo que cambiaría"}},
	},
	run: runFmt,
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
	return c.each(paths, c.fmt)
}

// fmt sets one source. What is wrong with it is for check to say.
func (c *call) fmt(path string) int {
	s, ok := c.load(path)
	if !ok {
		return failed
	}
	old := []byte(s.file.Text)
	set, _ := format.Source(old)
	same := bytes.Equal(old, set)
	switch {
	case c.has("-l"):
		if same {
			return clean
		}
		return c.print([]byte(visible(s.file.Name) + "\n"))
	case c.has("-d"):
		return c.print(diff.Diff(visible(s.file.Name)+".orig", old, visible(s.file.Name), set))
	case !c.has("-w"):
		return c.print(set)
	case same:
		return clean // the file keeps its date
	}
	if err := replaceFile(path, set); err != nil {
		c.say(msgCannotWrite.with("path", path, "why", reason(err, path).in(c.lang)))
		return failed
	}
	return clean
}
