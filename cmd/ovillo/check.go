package main

import (
	"ovillo/compile"
	"ovillo/compile/plan"
)

var checkCommand = command{
	name: "check",
	args: text{"FILE…", "ARCHIVO…"},
	line: text{"say what does not come out", "decir qué no cuadra"},
	long: text{
		"Every row is worked stitch by stitch in every size. Nothing is written. - reads the standard input.\n" +
			"Messages go to the error stream; with --json they go to the standard output, one object a line.",
		"Cada hilera o vuelta se teje punto por punto en cada talla. No se escribe nada. - lee la entrada estándar.\n" +
			"Los mensajes van a la salida de errores; con --json, a la salida estándar, un objeto por línea."},
	flags: []flagDef{jsonFlag, gaugeFlag},
	examples: []exampleLine{
		{text{"ovillo check hat.ovillo", "ovillo check gorro.ovillo"}, text{
			"every row of the hat, in every size",
			"cada hilera o vuelta del gorro, en cada talla"}},
		{text{`ovillo check "*.ovillo" --json`, `ovillo check "*.ovillo" --json`}, text{
			"all sources of this folder, for another program",
			"todos los patrones de esta carpeta, para otro programa"}},
		{text{`ovillo check hat.ovillo --gauge "hdc 16 sts 12 rounds"`, `ovillo check gorro.ovillo --gauge "hdc 16 sts 12 rounds"`}, text{
			"whether it still comes out for hands that work tighter",
			"si cuadra también para quien teje más apretado"}},
	},
	run: runCheck,
}

func runCheck(c *call) int {
	paths, ok := c.sources(0)
	if !ok {
		return failed
	}
	if wrong := c.readGauges(); wrong != nil {
		return c.misuse(*wrong)
	}
	go compile.Prepare()
	return c.each(paths, func(c *call, path string) int {
		s, p, code := c.checkedAny(path)
		if code != clean || c.has(jsonFlag.name) {
			return code
		}
		well := ""
		switch {
		case s.book != nil:
			well = c.bookWell(s.book)
		case s.shared:
			well = msgSharedWell.with().in(c.lang)
		default:
			well = c.outcome(p)
		}
		return c.print([]byte(visible(s.file.Name) + ": " + well + "\n"))
	})
}

// outcome says what was checked.
func (c *call) outcome(p *plan.Pattern) string {
	return msgAllWell.with("sizes", nounSize.count(len(p.Sizes), c.lang), "parts", nounPart.count(len(p.Parts), c.lang)).in(c.lang)
}
