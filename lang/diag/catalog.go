package diag

import (
	"strconv"
	"strings"
	"sync"

	"ovillo/lang/lazy"
)

// Entry is one row of the catalogue: everything the tool says about one code.
//
// Texts are templates: {name} puts in an argument, {name|one|other} chooses by the number in name, {=…} is what a designer
// types. The page behind a code has no facts to put in. Both languages must have the same holes (a test compares them). To add
// a message: add a row to the catalogue file of its family, report it from the check with [Diagnostic], and add an example
// that raises it.
type Entry struct {
	Code     Code
	Severity Severity
	En, Es   Wording
	// Example is a whole small source that raises exactly this code; Fixed is the same source put right. A remark such as
	// `# … 3000 times` stands for the line above it, worth so many lines in all.
	Example, Fixed string
}

// manyTimes is the remark of an example that would fill a book.
var manyTimes = lazy.Regexp(`(?m)^(.*\n) *# … ([0-9]+) times\n`)

// Whole returns the example with every line as often as it is meant.
func (e *Entry) Whole() string {
	return manyTimes().ReplaceAllStringFunc(e.Example, func(s string) string {
		m := manyTimes().FindStringSubmatch(s)
		n, _ := strconv.Atoi(m[2])
		return strings.Repeat(m[1], n)
	})
}

// Wording is the text of a message in one language.
type Wording struct {
	Message string            // first sentence: true and complete without the picture
	Mark    string            // what stands under the marked place; may be empty
	Related map[string]string // labels of related places, by key
	Help    map[string]string // remedies, by key; "" is the usual one
	Explain string            // the page behind the code: why this is refused, and how to go on
}

// families holds the rows of each catalogue file; one file a family.
var families = []func() []Entry{writing, names, books, values, rows, rowForms, charts, drawings, textures, stitches, edges, motifs, marks, counts, grading, measures, materials, photos, yarnEnds,
	gauges, fits, wording, prose, cautions, cautionsOfThings, cautionsOfCare, cautionsOfCords, cautionsOfToys, cordsAndNotions, tongues}

// catalogue is every row, in the order of the families, and where each code stands in it. It is laid out when the first message is worded:
// most runs word none, and it is the largest table of the program.
var catalogue = sync.OnceValue(func() (c struct {
	rows   []Entry
	byCode map[Code]*Entry
}) {
	for _, family := range families {
		c.rows = append(c.rows, family()...)
	}
	c.byCode = make(map[Code]*Entry, len(c.rows))
	for i := range c.rows {
		e := &c.rows[i]
		if c.byCode[e.Code] != nil {
			panic("diag: code " + string(e.Code) + " stands twice in the catalogue")
		}
		c.byCode[e.Code] = e
	}
	return c
})

// Internal is the code of a fault of ours: something that cannot happen did. It has no row and no page of its own.
const Internal Code = "internal"

// Lookup returns the row of a code. An unknown code is a fault of the tool and gets a row that says so.
func Lookup(c Code) *Entry {
	if e := catalogue().byCode[c]; e != nil {
		return e
	}
	return &Entry{Code: c, Severity: Error,
		En: Wording{Message: "internal fault: message " + string(c) + " has no wording"},
		Es: Wording{Message: "fallo interno: el mensaje " + string(c) + " no tiene texto"}}
}

// All returns every row, in the order of the codes.
func All() []*Entry {
	rows := catalogue().rows
	out := make([]*Entry, len(rows))
	for i := range rows {
		out[i] = &rows[i]
	}
	return out
}
