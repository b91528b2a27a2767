package words

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"

	"golang.org/x/text/collate"
	locale "golang.org/x/text/language"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

// sortAbbreviations puts a list in the order of the language: figures by their value before letters, capitals beside small
// letters, ñ behind n. What a country keeps apart comes from the tables of Unicode.
func (l *Language) sortAbbreviations(list []Abbreviation) {
	order := collate.New(locale.Make(l.Tag()), collate.Numeric)
	slices.SortStableFunc(list, func(a, b Abbreviation) int { return order.CompareString(a.Short, b.Short) })
}

// TermsNote says, above the table of abbreviations, which reading the names are of, and which of them mean another stitch
// elsewhere: "The names are US terms. Careful: in UK terms, dc and tr are other stitches."
func (l *Language) TermsNote(p *plan.Pattern) rich.Text {
	texts := []rich.Text{fill(l.voice.line(termsAre), l.ReadingNote())}
	used := l.usedStitches(p)
	for _, o := range l.read.others() {
		var clash []rich.Text
		for _, concept := range used {
			if l.read.means(concept, o) != concept {
				clash = append(clash, l.read.short(concept).one)
			}
		}
		where := o.word("reading")
		switch len(clash) {
		case 0:
		case 1:
			texts = append(texts, fill(l.voice.line(otherStitch), where, clash[0]))
		default:
			texts = append(texts, fill(l.voice.line(otherStitches), where, l.voice.and(clash)))
		}
	}
	for _, m := range mistaken() {
		if m.code == l.Code() && slices.Contains(used, m.concept) && l.read.word(m.concept) == m.name {
			texts = append(texts, sentence(l.voice.mistaken(m.name, l.read.full(m.meant))))
		}
	}
	return paragraph(join(" ", texts...))
}

// usedStitches are the concepts of the standard stitches that the pattern uses, alone or in what is made of them.
func (l *Language) usedStitches(p *plan.Pattern) []string {
	var out []string
	for _, f := range l.context(p, nil, nil).printedForms() {
		if c := string(f.ID); !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}

// means returns which stitch a reader of another reading takes a stitch of this one for: another one, if it has its
// abbreviation or its name there, else the stitch itself.
func (r *reading) means(concept string, o *reading) string {
	own := r.Term(concept)
	for _, other := range stitchConcepts() {
		if !o.Has(other) {
			continue
		}
		if t := o.Term(other); other != concept && (t.Short == own.Short || t.One == own.One) {
			return other
		}
	}
	return concept
}

// misname is a name that some texts give to another stitch than the readings of the table do.
type misname struct{ code, name, concept, meant string }

//go:embed mistaken.csv
var mistakenCSV string

// mistaken lists the names of stitches that stand for another one in texts outside of the readings of the table.
var mistaken = sync.OnceValue(func() []misname {
	rows, err := csv.NewReader(strings.NewReader(mistakenCSV)).ReadAll()
	if err != nil {
		panic("mistaken.csv: " + err.Error())
	}
	var out []misname
	for _, row := range rows[1:] {
		out = append(out, misname{row[0], row[1], row[2], row[3]})
	}
	return out
})
