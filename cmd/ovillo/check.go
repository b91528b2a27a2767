package main

import (
	"fmt"

	"ovillo/compile/plan"
	"ovillo/lang/diag"
)

var checkCommand = command{
	name: "check",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"say what does not come out", "decir qué no cuadra"},
	long: text{
		"Every row is worked stitch by stitch in every size. Nothing is written. - reads the standard input.\n" +
			"Messages go to the error stream; with --json they go to the standard output, one object a line.",
		"Cada vuelta se teje punto por punto en cada talla. No se escribe nada. - lee la entrada estándar.\n" +
			"Los mensajes van a la salida de errores; con --json, a la salida estándar, un objeto por línea."},
	flags: []flagDef{{name: "--json", help: text{"messages for other tools", "mensajes para otras herramientas"}}},
	run:   runCheck,
}

func runCheck(c *call) int {
	paths, ok := c.sources(0)
	if !ok {
		return failed
	}
	return c.each(paths, func(path string) int {
		s, ok := c.load(path)
		if !ok {
			return failed
		}
		p, found := s.compile()
		if c.has("--json") {
			if err := diag.JSON(c.out, s.file, found, c.lang); err != nil {
				return failed
			}
			if found.HasErrors() {
				return faulty
			}
			return clean
		}
		code := c.report(s, found)
		if code == clean {
			fmt.Fprintf(c.out, "%s: %s\n", visible(s.file.Name), c.outcome(p))
		}
		return code
	})
}

// outcome says what was checked.
func (c *call) outcome(p *plan.Pattern) string {
	return msgAllWell.with("sizes", nounSize.count(len(p.Sizes), c.lang), "parts", nounPart.count(len(p.Parts), c.lang)).in(c.lang)
}
