package words

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strings"
	"sync"

	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

//go:embed terms.csv
var termsCSV string

// reading is the words that one country, or one part of the trade, uses for the things of the craft.
type reading struct {
	tag, code string
	terms     map[string]term
	// memory holds the concepts whose term no source was read for; such a term is used where its reading is chosen, but
	// never shown as what others say.
	memory map[string]bool
	all    *termTable
}

// term is the name of one concept in one reading.
type term struct {
	short, shorts string // abbreviation, for one and for several
	one, many     string // in full
	feminine      bool
}

// termTable is the whole of terms.csv.
type termTable struct {
	order    []string // concepts, in the order in which tables print them
	tags     []string // readings, in the order of the columns
	readings map[string]*reading
}

var standardTerms = sync.OnceValue(func() *termTable {
	t, err := readTerms(termsCSV, usual)
	if err != nil {
		panic("terms.csv: " + err.Error())
	}
	return t
})

// readTerms reads a table of terms. Its columns are concept, memory (the readings without a source) and one for each
// reading. A cell is "abbreviation;name;plural;f", the abbreviation as "st|sts" where its plural differs; an empty cell
// falls back on the reading that the language code stands for.
func readTerms(text string, fallback map[string]string) (*termTable, error) {
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		return nil, err
	}
	t := &termTable{readings: map[string]*reading{}}
	t.tags = rows[0][2:]
	for _, tag := range t.tags {
		code, _, _ := strings.Cut(tag, "-")
		t.readings[tag] = &reading{tag: tag, code: code, terms: map[string]term{}, memory: map[string]bool{}, all: t}
	}
	for _, row := range rows[1:] {
		t.order = append(t.order, row[0])
		for i, tag := range t.tags {
			if cell := row[i+2]; cell != "" {
				t.readings[tag].terms[row[0]] = parseTerm(cell)
			}
		}
		for _, tag := range strings.Fields(row[1]) {
			if t.readings[tag] == nil {
				return nil, fmt.Errorf("%s: no reading %q", row[0], tag)
			}
			t.readings[tag].memory[row[0]] = true
		}
	}
	return t, t.fallBack(fallback)
}

// fallBack gives every reading the terms it does not have itself.
func (t *termTable) fallBack(usual map[string]string) error {
	for _, tag := range t.tags {
		r := t.readings[tag]
		base := t.readings[usual[r.code]]
		for _, concept := range t.order {
			if _, ok := r.terms[concept]; ok {
				continue
			}
			if base == nil || base == r {
				return fmt.Errorf("%s: no term in %s", concept, tag)
			}
			word, ok := base.terms[concept]
			if !ok {
				return fmt.Errorf("%s: no term in %s", concept, base.tag)
			}
			r.terms[concept] = word
		}
	}
	return nil
}

func parseTerm(cell string) term {
	f := strings.Split(cell, ";")
	short, shorts, ok := strings.Cut(f[0], "|")
	if !ok {
		shorts = short
	}
	t := term{short: nbsp(short), shorts: nbsp(shorts), one: short, many: shorts}
	if len(f) > 2 {
		t.one, t.many = f[1], f[2]
	}
	t.feminine = len(f) > 3 && f[3] == "f"
	return t
}

// nbsp ties the words of a text.
func nbsp(s string) string { return strings.ReplaceAll(s, " ", "\u00a0") }

// term returns the term of a concept. The table is complete (see readTerms), so a missing one is a slip of ours.
func (r *reading) term(concept string) term {
	t, ok := r.terms[concept]
	if !ok {
		panic("terms.csv has no row " + concept)
	}
	return t
}

// word is the full name of a concept in the singular.
func (r *reading) word(concept string) string { return r.term(concept).one }

// noun is something that is counted in a sentence.
type noun struct {
	one, many rich.Text
	feminine  bool
}

// by picks the form for a number.
func (n noun) by(c num) rich.Text {
	if c.one() {
		return n.one
	}
	return n.many
}

// nounFor is the form of a noun that goes with a number.
func nounFor(count int, n noun) rich.Text {
	if count == 1 {
		return n.one
	}
	return n.many
}

// short is a concept by its abbreviation.
func (r *reading) short(concept string) noun { return abbreviated(r.term(concept)) }

func abbreviated(t term) noun {
	return noun{one: abbr(t.short, t.one), many: abbr(t.shorts, t.many), feminine: t.feminine}
}

// full is a concept by its full name.
func (r *reading) full(concept string) noun {
	t := r.term(concept)
	return noun{one: rich.T(t.one), many: rich.T(t.many), feminine: t.feminine}
}

// abbr is an abbreviation that screen readers expand.
func abbr(short, full string) rich.Text {
	if short == full {
		return rich.T(short)
	}
	return rich.Text{{Text: short, Expand: full}}
}

// concept is the row of the table for a stitch.
func concept(id stitch.ID) (string, bool) {
	_, ok := stitch.Of(id)
	return string(id), ok
}

// groupConcept is the row of the table for a group of stitches.
func groupConcept(g stitch.Group) string {
	k, _ := g.Kind()
	return k.Word
}

// others lists the readings of the same language that were read somewhere, but for this one.
func (r *reading) others() []*reading {
	list := []*reading{}
	for _, tag := range r.all.tags {
		if o := r.all.readings[tag]; o.code == r.code && o != r {
			list = append(list, o)
		}
	}
	return slices.Clip(list)
}
