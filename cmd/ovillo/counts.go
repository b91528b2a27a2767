package main

import (
	"bytes"
	"encoding/csv"
	"strconv"
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/report"
)

var countsCommand = command{
	name: "counts",
	args: text{"FILE", "ARCHIVO"},
	line: text{"count every row in every size", "contar cada hilera o vuelta en cada talla"},
	long: text{
		"The table has a line for each row and a column for each size: stitches, and spaces behind a +.\n" +
			"A part in several yarns ends with the stitches in each of them. Of joined motifs it counts motifs, sides and joins.\n" +
			"With --csv there is a line for each row and size; taken counts the places of the row below that were worked into.",
		"La tabla tiene una línea por hilera o vuelta y una columna por talla: los puntos y, detrás de +, los espacios.\n" +
			"Una pieza de varios hilos acaba con los puntos de cada uno. De los motivos unidos cuenta motivos, lados y uniones.\n" +
			"Con --csv hay una línea por hilera y talla; taken cuenta los lugares de la hilera anterior en los que se tejió."},
	flags: []flagDef{{name: "--csv", help: text{"values parted by commas", "valores separados por comas"}}, gaugeFlag},
	examples: []exampleLine{
		{text{"ovillo counts hat.ovillo", "ovillo counts gorro.ovillo"}, text{
			"the stitches of every row, a column for each size",
			"los puntos de cada hilera o vuelta, una columna por talla"}},
		{text{"ovillo counts hat.ovillo --csv > hat.csv", "ovillo counts gorro.ovillo --csv > gorro.csv"}, text{
			"the same for a spreadsheet",
			"lo mismo para una hoja de cálculo"}},
	},
	run: runCounts,
}

func runCounts(c *call) int {
	paths, ok := c.sources(1)
	if !ok {
		return failed
	}
	if wrong := c.readGauges(); wrong != nil {
		return c.misuse(*wrong)
	}
	return c.each(paths, func(c *call, path string) int {
		_, p, code := c.checked(path)
		if code != clean {
			return code
		}
		if c.has("--csv") {
			return c.print(countsCSV(p))
		}
		return c.print([]byte(countsTable(p, c.lang)))
	})
}

// csvHead is promised to other programs; it is the same in every language.
var csvHead = []string{"part", "row", "label", "size", "stitches", "spaces", "taken"}

// countsCSV lists the rows part by part, and each row size by size. Rows go by the number they are printed with, so that
// a row whose number differs from size to size stands once under each.
func countsCSV(p *plan.Pattern) []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Write(csvHead)
	for _, part := range p.Parts {
		for _, number := range report.RowNumbers(part) {
			for z, size := range p.Sizes {
				if f, ok := report.FactOf(part, z, number); ok {
					w.Write([]string{part.Name, strconv.Itoa(number), f.Label, size.Name,
						strconv.Itoa(f.Stitches), strconv.Itoa(f.Spaces), strconv.Itoa(f.Taken)})
				}
			}
		}
	}
	w.Flush() // a buffer does not fail
	return b.Bytes()
}

// countsTable is the table for people: a block a part, a column a size.
func countsTable(p *plan.Pattern, lang string) string {
	var b strings.Builder
	for i, t := range report.CountTables(p, lang) {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(t.Title + "\n" + t.Aligned())
	}
	return b.String()
}
