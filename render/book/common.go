package book

import (
	"slices"
	"strings"

	"ovillo/render/words"
)

// common is what the patterns of a book say in the same words, which stands once, in front of them: how to read them, their
// abbreviations, their special stitches. What one of them says in other words of the same thing stays with each.
type common struct {
	howTo    [][]words.Fact         // rows, a text a side
	short    [][]words.Abbreviation // of each side, its rows
	specials [][]words.Special      // rows, a text a side
	place    func(mark string) string
	explains func(sd side, short string) string // the place of the row of an abbreviation
}

// commonOf finds what the patterns of a book have in common.
func commonOf(patterns []*setter) *common {
	c := &common{}
	var howTo [][][]words.Fact
	var specials [][][]words.Special
	for _, s := range patterns {
		howTo = append(howTo, rowsOf(s, func(sd side) []words.Fact { return sd.l.HowToRead(s.p) }))
		specials = append(specials, rowsOf(s, func(sd side) []words.Special { return sd.l.Specials(s.p) }))
	}
	c.howTo = inAll(howTo, headOfFacts, wholeFacts)
	c.specials = inAll(specials, headOfSpecials, wholeSpecials)
	for i := range patterns[0].sides {
		var lists [][]words.Abbreviation
		for _, s := range patterns {
			lists = append(lists, s.sides[i].l.Abbreviations(s.p))
		}
		short := func(a words.Abbreviation) string { return a.Short }
		list := inAll(lists, short, wholeAbbreviation)
		for _, one := range lists {
			for _, a := range but(one, list, wholeAbbreviation) { // used in two senses: each stands beside its stitch
				c.specials = slices.DeleteFunc(c.specials, func(row []words.Special) bool {
					return strings.Contains(row[i].Head.String(), "("+a.Short+")")
				})
			}
		}
		patterns[0].sides[i].l.SortAbbreviations(list)
		c.short = append(c.short, list)
	}
	return c
}

// rowsOf puts the lists of the sides of a volume side by side.
func rowsOf[T any](s *setter, list func(sd side) []T) [][]T {
	var rows [][]T
	for i, sd := range s.sides {
		for k, one := range list(sd) {
			if k == len(rows) {
				rows = append(rows, make([]T, len(s.sides)))
			}
			rows[k][i] = one
		}
	}
	return rows
}

// inAll are the rows that are the same in each list which has a row of that head, in the order of the lists.
func inAll[T any](lists [][]T, head, whole func(T) string) []T {
	said := map[string]string{}
	differ := map[string]bool{}
	for _, list := range lists {
		for _, row := range list {
			h, w := head(row), whole(row)
			if was, known := said[h]; known && was != w {
				differ[h] = true
			}
			said[h] = w
		}
	}
	var out []T
	for _, list := range lists {
		at := 0 // behind the row of this list that was met last
		for _, row := range list {
			if differ[head(row)] {
				continue
			}
			if i := slices.IndexFunc(out, func(o T) bool { return head(o) == head(row) }); i >= 0 {
				at = i + 1
				continue
			}
			out = slices.Insert(out, at, row)
			at++
		}
	}
	return out
}

// but is a list without the rows of another one.
func but[T any](list, gone []T, whole func(T) string) []T {
	return slices.DeleteFunc(slices.Clone(list), func(row T) bool {
		return slices.ContainsFunc(gone, func(g T) bool { return whole(g) == whole(row) })
	})
}

const between = "\x00"

func headOfFacts(row []words.Fact) string {
	var b strings.Builder
	for _, f := range row {
		b.WriteString(f.Head + between)
	}
	return b.String()
}

func wholeFacts(row []words.Fact) string {
	var b strings.Builder
	for _, f := range row {
		b.WriteString(f.Head + between + f.Text.String() + between)
	}
	return b.String()
}

func headOfSpecials(row []words.Special) string {
	var b strings.Builder
	for _, sp := range row {
		b.WriteString(sp.Head.String() + between)
	}
	return b.String()
}

func wholeSpecials(row []words.Special) string {
	var b strings.Builder
	for _, sp := range row {
		b.WriteString(sp.Head.String() + between + sp.Text.String() + between)
	}
	return b.String()
}

func wholeAbbreviation(a words.Abbreviation) string {
	return a.Short + between + a.Meaning + between + strings.Join(a.Others, between)
}

// howToRows are the rows of how to read this volume.
func (s *setter) howToRows() [][]words.Fact {
	if s.cover {
		return s.common.howTo
	}
	rows := rowsOf(s, func(sd side) []words.Fact { return sd.l.HowToRead(s.p) })
	if s.common != nil {
		rows = but(rows, s.common.howTo, wholeFacts)
	}
	return rows
}

// specialRows are the stitches that this volume explains.
func (s *setter) specialRows() [][]words.Special {
	if s.cover {
		return s.common.specials
	}
	rows := rowsOf(s, func(sd side) []words.Special { return sd.l.Specials(s.p) })
	if s.common != nil {
		rows = but(rows, s.common.specials, wholeSpecials)
	}
	return rows
}

// shortForms are the abbreviations of a side that this volume explains.
func (s *setter) shortForms(nth int) []words.Abbreviation {
	if s.cover {
		return s.common.short[nth]
	}
	list := s.sides[nth].l.Abbreviations(s.p)
	if s.common != nil {
		list = but(list, s.common.short[nth], wholeAbbreviation)
	}
	return list
}

// elsewhere lets links lead to the rows of the abbreviations that stand in front of the book.
func (s *setter) elsewhere() {
	for i, sd := range s.sides {
		for _, a := range s.common.short[i] {
			for short := range strings.SplitSeq(a.Short, ", ") {
				s.explained[s.abbreviationPlace(sd, short)] = s.common.explains(sd, a.Short)
			}
		}
	}
}

// abbreviationsAt is the place of the table of abbreviations: that of the volume if it has one, else that in front of the book.
func (s *setter) abbreviationsAt() string {
	if s.common != nil && !slices.ContainsFunc([]int{0, len(s.sides) - 1}, func(i int) bool { return len(s.shortForms(i)) > 0 }) {
		return s.common.place(abbreviationsMark)
	}
	return s.place(abbreviationsMark)
}
