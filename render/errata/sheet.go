package errata

import (
	"slices"
	"strings"

	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Sheet is the list of corrections in one language.
type Sheet struct {
	Lang    *words.Language
	Title   string // of the pattern
	By      string
	Span    string // from which edition to which; "" if none is known
	Edition string // the new one
	Pages   string // of which edition the pages are; "" if none are given
	Groups  []Group
}

// Group is the corrections, the cautions, what is new, or rows with other numbers.
type Group struct {
	Head    string
	Plain   bool // its entries are lines without old and new
	Entries []Entry
}

// Entry is one place of the pattern.
type Entry struct {
	Where string
	Page  string // "page 6 (now 7)"; "" if it is not known
	Items []Item

	short string // what is said of it in the edition notes
	every bool   // every size has it, one thing or another
}

// Item is what stood at a place and what should stand there, in some sizes. Old or New is nil where there was or is nothing.
type Item struct {
	Sizes    string // "" for all
	Old, New rich.Text

	names []string // of the sizes; none for all
}

// Empty reports whether there is nothing to correct.
func (s *Sheet) Empty() bool { return len(s.Groups) == 0 }

// Options say how a list is made.
type Options struct {
	Paper    string      // its name, where pages are given
	Old, New *book.Index // where everything stands; nil: no pages are given
}

// maker makes the list of one language.
type maker struct {
	r *compare.Result
	l *words.Language
	o Options
}

// Make writes what changed in a language.
func Make(r *compare.Result, l *words.Language, o Options) *Sheet {
	m := &maker{r, l, o}
	s := &Sheet{Lang: l, Title: l.Title(r.New), By: r.New.By, Span: l.ErrataSpan(r.Old, r.New), Edition: l.Edition(r.New)}
	if o.Old != nil && !r.Same() {
		s.Pages = l.SayWith(words.ErrataPages, o.Paper)
	}
	var wrong, cautions, more []Entry
	for _, c := range r.Changes {
		e := m.entry(c)
		e.every = len(c.Sites) == len(r.Sizes)
		switch {
		case c.Topic == compare.Cautions:
			cautions = append(cautions, e)
		case c.Added():
			more = append(more, e)
		default:
			wrong = append(wrong, e)
		}
	}
	add := func(head string, list []Entry) {
		if len(list) > 0 {
			s.Groups = append(s.Groups, Group{Head: head, Entries: list})
		}
	}
	add(l.CautionsHead(len(cautions)), cautions)
	add(l.Say(words.CorrectionsHead), wrong)
	add(l.Say(words.AdditionsHead), more)
	if shifts := m.shifts(); len(shifts) > 0 {
		s.Groups = append(s.Groups, Group{Head: l.Say(words.NumbersHead), Plain: true, Entries: shifts})
	}
	return s
}

// shifts are rows that are the same and have other numbers.
func (m *maker) shifts() []Entry {
	var out []Entry
	for _, s := range m.r.Shifts {
		part := m.r.New.Parts[s.Part.New]
		var runs []string
		for _, run := range s.Runs {
			was, is := m.l.Numbered(part, run.From, run.To), m.l.Numbered(part, run.From+run.By, run.To+run.By)
			runs = append(runs, was+" → "+is)
		}
		e := Entry{Where: m.l.PartTitle(m.r.New, s.Part.New)}
		e.Items = []Item{m.in(s.Sizes, Item{New: rich.T(strings.Join(runs, "; "))})}
		if n := len(out); n > 0 && out[n-1].Where == e.Where {
			out[n-1].Items = append(out[n-1].Items, e.Items...)
			continue
		}
		out = append(out, e)
	}
	return out
}

// in says for which sizes an item is.
func (m *maker) in(list []int, it Item) Item {
	if len(list) == len(m.r.Sizes) {
		return it
	}
	var of []int
	for _, z := range list {
		of = append(of, m.r.Sizes[z].New)
		it.names = append(it.names, m.l.SizeName(m.r.New.Sizes[m.r.Sizes[z].New]))
	}
	it.Sizes = m.l.SizesNamed(m.r.New, of)
	return it
}

// grouped puts sizes together in which the same stood there and the same should stand there.
func (m *maker) grouped(c compare.Change, say func(s compare.Site) (old, new rich.Text)) []Item {
	var out []Item
	var sizes [][]int
	for _, site := range c.Sites {
		old, new := say(site)
		i := slices.IndexFunc(out, func(o Item) bool { return o.Old.String() == old.String() && o.New.String() == new.String() })
		if i < 0 {
			i = len(out)
			out, sizes = append(out, Item{Old: old, New: new}), append(sizes, nil)
		}
		sizes[i] = append(sizes[i], site.Size)
	}
	for i := range out {
		out[i] = m.in(sizes[i], out[i])
	}
	return out
}

// sitesOf are all sizes of a change.
func sitesOf(c compare.Change) []int {
	var out []int
	for _, s := range c.Sites {
		out = append(out, s.Size)
	}
	return out
}

// page says on which page something is, by the pages of the old and of the new edition.
func (m *maker) page(old, new string) string {
	switch {
	case old == "" && new == "":
		return ""
	case old == "":
		return m.l.SayWith(words.PageThen, new)
	case new == "" || new == old:
		return onPage(m.l, old)
	}
	return m.l.SayWith(words.PageNow, old, new)
}

// onPage is a page by its label.
func onPage(l *words.Language, label string) string {
	return strings.Replace(l.OnPage(0), "0", label, 1)
}

// find is the page of a text in the old and in the new edition.
func (m *maker) find(old, new rich.Text) string {
	return m.page(lookUp(m.o.Old, old), lookUp(m.o.New, new))
}

func lookUp(x *book.Index, text rich.Text) string {
	if x == nil {
		return ""
	}
	return x.Text(text.String())
}

// at is an element of a list, and false where there is none.
func at[T any](list []T, of []int) (x T, ok bool) {
	if len(of) == 0 || of[0] < 0 || of[0] >= len(list) {
		return x, false
	}
	return list[of[0]], true
}

// both are the two patterns of a site in its size.
func (m *maker) both(s compare.Site) (was, is *plan.Pattern) {
	return m.r.Sizes[s.Size].Was, m.r.Sizes[s.Size].Is
}
