package main

import (
	"bytes"
	"encoding/csv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/report"
	"ovillo/render/words"
)

var sizesCommand = command{
	name: "sizes",
	args: text{"FILE", "ARCHIVO"},
	line: text{"list what each size measures and takes", "listar lo que mide y gasta cada talla"},
	long: text{
		"The table has a column for each size: the finished piece and the wearer, in centimetres and inches, the ease, the yarn.\n" +
			"With --csv there is a line for each figure and size.",
		"La tabla tiene una columna por talla: la pieza terminada y el cuerpo, en centímetros y pulgadas, la holgura y el hilo.\n" +
			"Con --csv hay una línea por cifra y talla."},
	flags: []flagDef{
		{name: "--csv", help: text{"values parted by commas", "valores separados por comas"}},
		{name: "--lang", value: "TAG[,TAG]", help: text{
			"the language of the names, the first that is given; without it, that of the messages",
			"el idioma de los nombres, el primero que se dé; si no se indica, el de los mensajes"}, fill: readingTags},
		gaugeFlag,
	},
	examples: []exampleLine{
		{text{"ovillo sizes hat.ovillo", "ovillo sizes gorro.ovillo"}, text{
			"measures, ease and yarn, a column for each size",
			"medidas, holgura e hilo, una columna por talla"}},
		{text{"ovillo sizes hat.ovillo --csv > sizes.csv", "ovillo sizes gorro.ovillo --csv > tallas.csv"}, text{
			"the same for a spreadsheet",
			"lo mismo para una hoja de cálculo"}},
	},
	run: runSizes,
}

func runSizes(c *call) int {
	paths, ok := c.sources(1)
	if !ok {
		return failed
	}
	if wrong := c.readGauges(); wrong != nil {
		return c.misuse(*wrong)
	}
	tags := c.lang
	if c.has("--lang") {
		tags = c.flags["--lang"]
	}
	langs, wrong := readLangs(tags)
	if wrong != nil {
		return c.misuse(*wrong)
	}
	return c.each(paths, func(c *call, path string) int {
		_, p, code := c.checked(path)
		if code != clean {
			return code
		}
		t := report.Sizes(p, langs[0])
		if c.has("--csv") {
			return c.print(sizesCSV(p, t))
		}
		return c.print([]byte(sizesTable(p, t, langs[0])))
	})
}

// sizesHead is promised to other programs; it is the same in every language.
var sizesHead = []string{"kind", "name", "label", "size", "value", "unit"}

// sizesCSV lists the figures one by one, under the names that the source has.
func sizesCSV(p *plan.Pattern, lines []report.SizeLine) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Write(sizesHead)
	for _, line := range lines {
		for z, size := range p.Sizes {
			for _, f := range line.Figures[z] {
				w.Write([]string{line.Kind, line.Name, line.Label, size.Name, f.Exact, f.Unit})
			}
		}
	}
	w.Flush() // a buffer does not fail
	return b.Bytes()
}

// sizesTable is the table for people: a block for each kind, a column a size.
func sizesTable(p *plan.Pattern, lines []report.SizeLine, l *words.Language) string {
	var b strings.Builder
	var t *report.Table
	flush := func() {
		if t != nil {
			if b.Len() > 0 {
				b.WriteByte('\n')
			}
			b.WriteString(t.Title + "\n" + t.Aligned())
		}
	}
	for i, line := range lines {
		if i == 0 || line.Head != lines[i-1].Head {
			flush()
			t = &report.Table{Title: line.Head, Head: []string{"", ""}, First: 2}
			for _, z := range p.Sizes {
				t.Head = append(t.Head, visible(strings.ReplaceAll(l.SizeName(z), "\u00a0", " ")))
			}
		}
		for k := range most(line.Figures) {
			row := []string{line.Label, ""}
			if k > 0 {
				row[0] = ""
			}
			for z := range p.Sizes {
				cell := "–"
				if k < len(line.Figures[z]) {
					row[1], cell = line.Figures[z][k].Sign, line.Figures[z][k].Printed
				}
				row = append(row, cell)
			}
			t.Rows = append(t.Rows, row)
		}
	}
	flush()
	for _, note := range l.BodyNotes(p) {
		b.WriteString("\n" + visible(strings.ReplaceAll(note, "\u00a0", " ")) + "\n")
	}
	return b.String()
}

// most is how many figures any size has.
func most(figures [][]report.SizeFigure) int {
	n := 0
	for _, f := range figures {
		n = max(n, len(f))
	}
	return n
}
