// Package terms holds the words of the trade: what each reading calls a stitch, a tool, a piece of work.
//
// A reading is the words that one country, or one part of the trade, uses: US terms, UK terms, the Spanish of Mexico. The
// table (terms.csv) has one row a concept and one column a reading, so that a further reading is a further column. Where the
// words come from stands in SOURCES.md.
package terms

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"sync"
)

//go:embed terms.csv
var termsCSV string

// Term is the name of one concept in one reading. Blanks in it are plain blanks.
type Term struct {
	Short, Shorts string // the abbreviation, for one and for several; the name itself where the trade has no shorter one
	One, Many     string // in full
	Feminine      bool   // the gender of the noun, in a language that has genders
}

// Reading is one column of a table.
type Reading struct {
	tag, code string
	terms     map[string]Term
	own       map[string]bool // concepts with a cell in the column
	memory    map[string]bool // of them, those without a source
	table     *Table
}

// Table is the terms of several readings. It is never changed once it is read.
type Table struct {
	concepts []string
	tags     []string
	readings map[string]*Reading
	also     map[string]string // another tag of a reading, in lower case, to its own
}

// Standard is the table that the program comes with.
var Standard = sync.OnceValue(func() *Table {
	t, err := Read(termsCSV)
	if err != nil {
		panic("terms.csv: " + err.Error())
	}
	return t
})

// Read reads a table of terms. Its columns are concept, memory (the readings without a source) and one for each reading,
// headed by the reading's tag and by other tags it answers to. A cell is "abbreviation;name;plural;f", the abbreviation as
// "st|sts" where its plural differs. An empty cell falls back on the usual reading of the language, which is the one whose
// column comes first; there a hyphen says that the language has no such word. A concept without a cell in that column is an
// error, and so is a reading under memory that has no cell.
func Read(text string) (*Table, error) {
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return nil, err
	}
	if len(rows) == 0 || len(rows[0]) < 3 {
		return nil, fmt.Errorf("the table has no column of terms")
	}
	t := &Table{readings: map[string]*Reading{}, also: map[string]string{}}
	for _, head := range rows[0][2:] {
		if err := t.addReading(head); err != nil {
			return nil, err
		}
	}
	for _, row := range rows[1:] {
		if err := t.addConcept(row); err != nil {
			return nil, err
		}
	}
	return t, t.fallBack()
}

// addReading adds the column with a head.
func (t *Table) addReading(head string) error {
	names := strings.Fields(head)
	if len(names) == 0 {
		return fmt.Errorf("a column has no tag")
	}
	tag := names[0]
	code, _, _ := strings.Cut(tag, "-")
	if t.also[code] == "" { // the first column of a language is what its bare code stands for
		names = append(names, code)
	}
	for _, name := range names {
		name = strings.ToLower(name)
		if was := t.also[name]; was != "" && was != tag {
			return fmt.Errorf("%s and %s both answer to %s", was, tag, name)
		}
		t.also[name] = tag
	}
	if t.readings[tag] != nil {
		return fmt.Errorf("two columns for %s", tag)
	}
	t.tags = append(t.tags, tag)
	t.readings[tag] = &Reading{tag: tag, code: code, terms: map[string]Term{}, own: map[string]bool{}, memory: map[string]bool{}, table: t}
	return nil
}

// addConcept adds a row.
func (t *Table) addConcept(row []string) error {
	concept := row[0]
	if slices.Contains(t.concepts, concept) {
		return fmt.Errorf("two rows for %s", concept)
	}
	t.concepts = append(t.concepts, concept)
	for i, tag := range t.tags {
		if cell := row[i+2]; cell != "" {
			t.readings[tag].terms[concept], t.readings[tag].own[concept] = parse(cell), true
		}
	}
	for _, tag := range strings.Fields(row[1]) {
		if t.readings[tag] == nil || !t.readings[tag].own[concept] {
			return fmt.Errorf("%s: no term to remember in %q", concept, tag)
		}
		t.readings[tag].memory[concept] = true
	}
	return nil
}

// none is the cell of a language that has no such word.
const none = "-"

// fallBack gives every reading the terms it does not have itself.
func (t *Table) fallBack() error {
	for _, tag := range t.tags {
		r := t.readings[tag]
		base := t.readings[t.also[r.code]]
		for _, concept := range t.concepts {
			if _, ok := r.terms[concept]; ok {
				continue
			}
			word, ok := base.terms[concept]
			if !ok {
				return fmt.Errorf("%s: no term in %s", concept, base.tag)
			}
			r.terms[concept] = word
		}
	}
	for _, tag := range t.tags {
		r := t.readings[tag]
		for concept, word := range r.terms {
			if word.One == none {
				delete(r.terms, concept)
				delete(r.own, concept)
			}
		}
	}
	return nil
}

func parse(cell string) Term {
	f := strings.Split(cell, ";")
	short, shorts, ok := strings.Cut(f[0], "|")
	if !ok {
		shorts = short
	}
	t := Term{Short: short, Shorts: shorts, One: short, Many: shorts}
	if len(f) > 2 {
		t.One, t.Many = f[1], f[2]
	}
	t.Feminine = len(f) > 3 && f[3] == "f"
	return t
}

// Tags lists the readings in the order of the columns.
func (t *Table) Tags() []string { return slices.Clone(t.tags) }

// Concepts lists the concepts in the order of the rows.
func (t *Table) Concepts() []string { return slices.Clone(t.concepts) }

// Reading returns the reading of a tag, in any case: its own, another it answers to ("es-419"), or a bare language code,
// which stands for the usual reading of the language.
func (t *Table) Reading(tag string) (*Reading, bool) {
	r, ok := t.readings[t.also[strings.ToLower(tag)]]
	return r, ok
}

// Also lists the tags, beside those of the columns, that readings answer to, each with the tag of its reading.
func (t *Table) Also() map[string]string {
	out := map[string]string{}
	for name, tag := range t.also {
		if name != strings.ToLower(tag) {
			out[name] = tag
		}
	}
	return out
}

// Tag is the BCP 47 tag of the reading: "en-GB", "es".
func (r *Reading) Tag() string { return r.tag }

// Code is the code of its language: "en", "es".
func (r *Reading) Code() string { return r.code }

// Term returns the term of a concept. A table is complete (see [Read]), so a concept without a row is a slip of ours, and
// panics.
func (r *Reading) Term(concept string) Term {
	t, ok := r.terms[concept]
	if !ok {
		panic("the table of terms has no row " + concept)
	}
	return t
}

// Has reports whether the reading has a term for a concept.
func (r *Reading) Has(concept string) bool {
	_, ok := r.terms[concept]
	return ok
}

// Remembered reports whether the term of a concept stands in the column of this reading without a source. Such a term is used
// where its reading is chosen, but never shown as what others say.
func (r *Reading) Remembered(concept string) bool { return r.memory[concept] }

// Sourced reports whether a source says that this reading uses its term for a concept. A term that falls back on the usual
// reading of the language says nothing about the country.
func (r *Reading) Sourced(concept string) bool { return r.own[concept] && !r.memory[concept] }

// Others lists the other readings of the same language, in the order of the columns.
func (r *Reading) Others() []*Reading {
	list := []*Reading{}
	for _, tag := range r.table.tags {
		if o := r.table.readings[tag]; o.code == r.code && o != r {
			list = append(list, o)
		}
	}
	return list
}

// Table is the table that the reading is a column of.
func (r *Reading) Table() *Table { return r.table }
