package words

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"

	"ovillo/compile/plan"
	"ovillo/lang/lazy"
	"ovillo/lang/markdown"
	"ovillo/render/rich"
)

// This file changes left and right over. Who holds the hook in the left hand works the same instructions, and the piece comes out
// mirrored: what the pattern calls the left sleeve is then the right one, a drawing that is mirrored too is read from the other end.

// sideWord is a word of a text that names a side, or a word that goes with one.
type sideWord struct {
	from, to int    // where it stands
	other    string // the word for the other side
	sure     bool   // it does name a side of the work
	noun     string // what the side belongs to, as it is written: sleeve
}

// sideKind says of what kind a text is in which sides are looked for.
type sideKind uint8

const (
	sideLine  sideKind = iota // of the program: whatever is not the face of the fabric is a side
	sideName                  // a name that the designer gives to a part or a place
	sideProse                 // a sentence of the designer, in which the same words may mean something else
)

// sideNouns are what can have a left and a right.
type sideNouns map[string]bool

// has reports whether a word is one of the nouns, or the plural of one.
func (n sideNouns) has(word string) bool {
	word = strings.ToLower(word)
	for _, w := range []string{word, strings.TrimSuffix(word, "s"), strings.TrimSuffix(word, "es")} {
		if n[w] {
			return true
		}
	}
	return false
}

func nounList(words string) sideNouns {
	out := sideNouns{}
	for _, w := range strings.Fields(words) {
		out[w] = true
	}
	return out
}

//go:embed sided.csv
var sidedCSV string

var sidedLists = sync.OnceValue(func() map[string]sideNouns {
	rows, err := csv.NewReader(strings.NewReader(sidedCSV)).ReadAll()
	if err != nil {
		panic("sided.csv: " + err.Error())
	}
	out := map[string]sideNouns{}
	for _, row := range rows[1:] {
		if out[row[0]] == nil {
			out[row[0]] = sideNouns{}
		}
		out[row[0]][row[1]] = true
	}
	return out
})

// sided are the parts of a garment, of a toy and of the body that have a left and a right, and words that stand between.
func sided(lang string) sideNouns { return sidedLists()[lang] }

// swapped writes a text with those words in place that are sure.
func swapped(text string, words []sideWord) string {
	slices.SortFunc(words, func(a, b sideWord) int { return a.from - b.from })
	var b strings.Builder
	at := 0
	for _, w := range words {
		if w.sure {
			b.WriteString(text[at:w.from] + w.other)
			at = w.to
		}
	}
	return b.String() + text[at:]
}

// likeIt writes a word with the capitals of another.
func likeIt(word, other string) string {
	switch {
	case strings.ToUpper(other) == other:
		return strings.ToUpper(word)
	case strings.ToUpper(other[:1]) == other[:1]:
		return upper(word)
	}
	return word
}

// theName is what the designer calls a part or a place.
func (l *Language) theName(t plan.Text) string {
	name := l.read.of(t)
	if !l.read.manner.Left {
		return name
	}
	return swapped(name, l.voice.sides(name, sideName, nil))
}

// theLabel is a name of the source for want of a printed one: its words parted by spaces. It may be in any language.
func (l *Language) theLabel(label string) string { return l.read.spelled(label) }

func (r *reading) spelled(label string) string {
	name := spaced(label)
	if r.manner.Left {
		name = swapped(name, englishSides(name, sideName, nil))
		name = swapped(name, spanishSides(name, sideName, nil))
	}
	return name
}

// sentencesSided changes the sides in what the designer writes, where they stand with the name of a part, an edge or a part of the
// body.
func (c *context) sentencesSided(text string) string {
	if !c.l.read.manner.Left {
		return text
	}
	return swapped(text, c.l.voice.sides(text, sideProse, c.sideNouns()))
}

// sideNouns are what the names of the pattern give a left or a right.
func (c *context) sideNouns() sideNouns {
	if c.nouns != nil {
		return c.nouns
	}
	c.nouns = sideNouns{}
	eachName(c.p, func(t plan.Text) {
		name := c.l.read.of(t)
		for _, w := range c.l.voice.sides(name, sideName, nil) {
			if w.noun != "" {
				c.nouns[strings.ToLower(w.noun)] = true
			}
		}
	})
	return c.nouns
}

// eachName calls f with the names that the designer gives to parts and places.
func eachName(p *plan.Pattern, f func(plan.Text)) {
	for _, part := range p.Parts {
		f(part.Title)
		f(part.Called)
		for _, m := range part.Markers {
			f(m.Called)
		}
		for _, r := range part.Start.Runs {
			f(r.Called)
		}
		for _, s := range part.Steps {
			if o, ok := s.(*plan.CountOff); ok {
				for _, it := range o.Items {
					f(it.Called)
				}
			}
		}
	}
	eachRow(p, func(r *plan.Row) {
		f(r.Called)
		for _, k := range r.Counts {
			f(k.Called)
		}
	})
	eachInstr(p, func(in *plan.Instr) {
		f(in.Called)
		if in.Ref != nil {
			f(in.Ref.Called)
		}
	})
	for _, m := range p.Measures {
		f(m.Text)
	}
	for _, k := range p.Charts {
		f(k.Title)
	}
}

// eachProse calls f with what the designer writes in sentences.
func eachProse(p *plan.Pattern, f func(plan.Prose)) {
	f(p.Intro)
	for _, n := range p.Notes {
		f(n)
	}
	for _, own := range p.Own {
		f(own.How)
	}
	for _, part := range p.Parts {
		for _, s := range part.Steps {
			if n, ok := s.(*plan.NoteStep); ok {
				f(n.Prose)
			}
		}
	}
	for _, k := range p.Finish {
		f(k.Prose)
	}
	f(p.Care)
	f(p.Changes)
}

// LeftHandedNote tells who holds the hook in the left hand what was changed over, and what could not be; nil but in that manner.
func (l *Language) LeftHandedNote(p *plan.Pattern) rich.Text {
	if !l.read.manner.Left {
		return nil
	}
	c := l.context(p, nil, nil)
	buttons := slices.ContainsFunc(p.Finish, func(f plan.Finishing) bool { return f.Kind == plan.SewButtons })
	key := leftNote
	switch {
	case buttons:
		key = leftNoteButtons
	case !l.namesSides(p):
		key = leftNoteNothing
	}
	out := rich.T(l.voice.line(key))
	if len(p.Charts) > 0 {
		out = join(" ", out, rich.T(l.voice.line(leftNoteChart)))
	}
	if p.Photo != nil {
		out = join(" ", out, rich.T(l.voice.line(leftNotePhoto)))
	}
	if kept := c.keptSides(); len(kept) > 0 {
		out = join(" ", out, fill(l.voice.line(leftNoteKept), join("; ", kept...)))
	}
	return paragraph(out)
}

// namesSides reports whether the pages of a pattern read otherwise with left and right changed over.
func (l *Language) namesSides(p *plan.Pattern) bool {
	m := l.read.manner
	m.Left = false
	return l.allText(p) != l.With(m).allText(p)
}

// allText is all that is written about a pattern, with the titles and the names of its measures.
func (l *Language) allText(p *plan.Pattern) string {
	var b strings.Builder
	l.eachText(p, func(t rich.Text) { b.WriteString(t.String() + "\n") })
	for i := range p.Parts {
		b.WriteString(l.PartTitle(p, i) + "\n")
	}
	for _, m := range p.Measures {
		b.WriteString(l.MeasureName(m) + "\n")
	}
	return b.String()
}

// keptSides are the clauses of the designer's sentences in which a left or a right was found that may not belong to the work.
func (c *context) keptSides() []rich.Text {
	var out []rich.Text
	eachProse(c.p, func(t plan.Prose) {
		blocks, _ := markdown.Read(c.l.read.of(t.Text))
		for _, b := range blocks {
			for _, r := range b.Runs {
				for _, s := range clausesOf(r.Text) {
					if slices.ContainsFunc(c.l.voice.sides(s, sideProse, c.sideNouns()), func(w sideWord) bool { return !w.sure }) {
						out = append(out, c.l.voice.quoted(c.sentencesSided(s)))
					}
				}
			}
		}
	})
	return out
}

// clausesOf parts a text at its stops and commas, but for those within figures.
func clausesOf(text string) []string {
	var out []string
	for _, s := range clauseEnd().Split(text+" ", -1) {
		if s = strings.TrimSpace(s); s != "" {
			out = append(out, s)
		}
	}
	return out
}

var clauseEnd = lazy.Regexp(`[.,;:!?]\s`)
