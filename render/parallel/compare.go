package parallel

import "slices"

// Kind is what differs.
type Kind uint8

// What may differ between two readings of a document.
const (
	Missing  Kind = iota // a passage that only one of them has
	Numbers              // a number or a measure
	Stitches             // a stitch, or the order of stitches
)

func (k Kind) String() string {
	return [...]string{"a passage in one language alone", "numbers that differ", "stitches that differ"}[k]
}

// Difference is a place where two readings of a document do not say the same.
type Difference struct {
	Kind            Kind
	Head, OtherHead string // of the section
	One, Other      string // the passages; "" for one that is not there
	Has, OtherHas   []string
}

// Compare finds where two readings of a document differ. The passages of each are those of [In]: of one document in two
// languages, or of two documents.
//
// Sections answer to each other by their order, and passages by theirs. The tables of abbreviations are left out, since they
// differ between languages by right; before them stitches are not compared, since what is explained there goes by the words of
// a language. Pictures are compared if both readings describe theirs. A section of nothing but a head is room to write on.
func Compare(one, other []Passage, r, q Reading) []Difference {
	a, b := sections(one), sections(other)
	glossary := slices.IndexFunc(a, func(s section) bool { return s.glossary })
	both := pictures(one) && pictures(other)
	var out []Difference
	for i := range max(len(a), len(b)) {
		var x, y section
		if i < len(a) {
			x = a[i].with(both)
		}
		if i < len(b) {
			y = b[i].with(both)
		}
		if x.glossary && y.glossary || x.empty() && y.empty() {
			continue
		}
		out = append(out, x.compare(y, r, q, i > glossary)...)
	}
	return out
}

// contentsTag is that of the lines of a list of contents. They repeat the heads with the numbers of pages, which two documents
// have each for itself, and so is whether they have a list.
const contentsTag = "Reference"

// section is the passages of a section of a document.
type section struct {
	head     string
	passages []Passage
	glossary bool
}

func sections(all []Passage) []section {
	var out []section
	for _, p := range all {
		for len(out) <= p.Section {
			out = append(out, section{})
		}
		s := &out[p.Section]
		if p.Tag == contentsTag {
			if n := len(s.passages); n > 0 && s.passages[n-1].Tag == "H2" {
				s.passages = s.passages[:n-1] // the head of the list
			}
			continue
		}
		s.passages = append(s.passages, p)
		if s.head == "" && (p.Tag == "H1" || p.Tag == "H2") {
			s.head = p.Text()
		}
		s.glossary = s.glossary || p.Tag == "TD" && p.Lang != "" // the cells of other tables serve all languages
	}
	return out
}

func pictures(all []Passage) bool {
	return slices.ContainsFunc(all, func(p Passage) bool { return p.Tag == "Figure" })
}

// with leaves the pictures out if they are not wanted.
func (s section) with(pictures bool) section {
	if !pictures {
		s.passages = slices.DeleteFunc(slices.Clone(s.passages), func(p Passage) bool { return p.Tag == "Figure" })
	}
	return s
}

func (s section) empty() bool {
	return !slices.ContainsFunc(s.passages, func(p Passage) bool { return p.Tag != "H3" })
}

func (s section) compare(t section, r, q Reading, stitches bool) []Difference {
	var out []Difference
	differ := func(k Kind, one, other string, has, otherHas []string) {
		out = append(out, Difference{Kind: k, Head: s.head, OtherHead: t.head, One: one, Other: other, Has: has, OtherHas: otherHas})
	}
	for i := range max(len(s.passages), len(t.passages)) {
		if i == len(s.passages) || i == len(t.passages) {
			one, other := "", ""
			if i < len(s.passages) {
				one = s.passages[i].Text()
			} else {
				other = t.passages[i].Text()
			}
			differ(Missing, one, other, nil, nil)
			return out
		}
		p, o := s.passages[i], t.passages[i]
		f, g := r.of(p), q.of(o)
		alike := slices.Equal(f.numbers, g.numbers)
		same := !stitches || p.Tag == "H3" || slices.Equal(f.stitches, g.stitches)
		switch {
		case alike && same:
		case len(s.passages) != len(t.passages): // what follows stands beside something else
			differ(Missing, p.Text(), o.Text(), nil, nil)
			return out
		case !alike:
			differ(Numbers, p.Text(), o.Text(), f.numbers, g.numbers)
		default:
			differ(Stitches, p.Text(), o.Text(), r.named(f.stitches), q.named(g.stitches))
		}
	}
	return out
}
