// Package numeral reads the numbers of a sentence, in figures and in words, and compares those of two languages.
//
// A pattern in two languages says everything twice, and a number that was changed in one text only makes two different pieces. What
// is compared are values, not signs: 3.5 is 3,5, two is dos, ½ is 0,5, and the inches that English gives behind its
// centimetres are the same length. Sources: decimal signs and the space of five figures, Ortografía of the Academy (2010); the
// words are those of any dictionary.
package numeral

import (
	"cmp"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"ovillo/lang/lazy"
)

// Rat is an exact number, as a fraction in lowest terms with a denominator above zero.
type Rat struct{ N, D int }

func rat(n, d int) Rat {
	for a, b := max(n, -n), d; ; a, b = b, a%b {
		if b == 0 {
			return Rat{n / max(a, 1), d / max(a, 1)}
		}
	}
}

func (r Rat) float() float64 { return float64(r.N) / float64(r.D) }

func (r Rat) plus(o Rat) Rat { return rat(r.N*o.D+o.N*r.D, r.D*o.D) }

// Number is a number of a text.
type Number struct {
	Text     string // as it is written
	From, To int    // its place in the text, in bytes
	values   []Rat  // what it may be: 1.234 is read in two ways
	kind     kind
	unit     string // what it is given in, where that is known
	size     int    // of a size that is named, from 1; 0: it names none
}

const digits = "0123456789"

type kind uint8

const (
	figure kind = iota
	word        // a number in words: it may be put otherwise in the other language
	loose       // a word that may stand for a number, and need not
)

var (
	address = lazy.Regexp(`https?://\S+|\]\([^)\s]*\)|\S+@\S+`)
	bullet  = lazy.Regexp(`(?m)^[ \t]*[0-9]+[.)][ \t]`)
	// A figure: grouped by a narrow space, with a decimal sign, or whole; a fraction may stand behind it, or alone.
	figures = lazy.Regexp(`[0-9]{1,3}(?:[\x{202f}\x{2009}\x{a0}][0-9]{3})+(?:[.,][0-9]+)?|[0-9]+(?:[.,][0-9]+)*|[½¼¾⅓⅔⅛⅜⅝⅞]`)
	behind  = lazy.Regexp(`^[ \x{a0}]?(?:[½¼¾⅓⅔⅛⅜⅝⅞]|[0-9]{1,2}/(?:2|3|4|8|16)\b)`)
	slashed = lazy.Regexp(`^/([0-9]+)`)
	// The unit of a figure, or of the list that ends with it, once what stands between is passed.
	unitOf = lazy.Regexp(`^(cm|mm|kg|g|m|°[CF]|inches|inch|in|pulgadas|pulgada|pulg|″|"|yards|yard|yds|yd|oz|ft|feet)(?:\.|\b|[^\pL]|$)`)
	letter = lazy.Regexp(`(?:^|[^\pL])[A-Z][-/]$`)

	fractions = map[string]Rat{"½": half, "¼": quarter, "¾": {3, 4}, "⅓": third, "⅔": {2, 3}, "⅛": {1, 8}, "⅜": {3, 8}, "⅝": {5, 8}, "⅞": {7, 8}}
)

// Read finds the numbers of a text in a language ("en", "es"; of another language only figures are read). The names of the
// sizes, such as 2 y, are read as names.
func Read(text, lang string, sizes []string) []Number {
	l := languages[lang]
	if l == nil {
		l = &language{point: '.'}
	}
	// Most sentences hold neither: to look for their signs takes less than the expressions do.
	sentence := text
	if strings.Contains(text, "://") || strings.Contains(text, "](") || strings.Contains(text, "@") {
		sentence = blanked(sentence, address())
	}
	if strings.ContainsAny(text, digits) {
		sentence = blanked(sentence, bullet())
	}
	r := &reader{text: sentence, l: l}
	r.named(sizes)
	r.figures()
	r.words()
	slices.SortFunc(r.out, func(a, b Number) int { return cmp.Compare(a.From, b.From) })
	for i := range r.out {
		n := &r.out[i]
		n.Text = text[n.From:n.To]
		if n.kind != figure {
			continue
		}
		if m := unitOf().FindStringSubmatch(strings.TrimLeft(sentence[n.To:min(len(sentence), n.To+farthest)], beforeUnit)); m != nil {
			n.unit = m[1]
		}
	}
	return r.out
}

// farthest is how many bytes behind a figure its unit may stand: a list for as many sizes as there may be lies between them. A text
// of nothing but figures would otherwise be looked through from each of them.
const farthest = 400

// beforeUnit is what may stand between a figure and its unit: the rest of a list.
const beforeUnit = " \t\n\v\f\r\u00a00123456789½¼¾.,;:()/–-"

// letterLong is how many bytes the letter of a hook, its sign and the character before them have at most.
const letterLong = 2 + utf8.UTFMax

// blanked puts blanks in the place of what is no sentence.
func blanked(text string, what *regexp.Regexp) string {
	return what.ReplaceAllStringFunc(text, func(s string) string { return strings.Repeat(" ", len(s)) })
}

type reader struct {
	text string
	l    *language
	out  []Number
}

// take notes a number and blanks it, so that it is read once.
func (r *reader) take(n Number) {
	r.out = append(r.out, n)
	r.text = r.text[:n.From] + strings.Repeat("\x01", n.To-n.From) + r.text[n.To:]
}

// named finds the sizes by their names, the longest first. A name without a figure is no number.
func (r *reader) named(sizes []string) {
	order := make([]int, len(sizes))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return len(sizes[b]) - len(sizes[a]) })
	for _, i := range order {
		name := strings.ReplaceAll(sizes[i], "\u00a0", " ")
		if _, err := strconv.Atoi(name); err == nil || !strings.ContainsAny(name, digits) {
			continue
		}
		for from := 0; ; {
			at := strings.Index(strings.ReplaceAll(r.text[from:], "\u00a0", " "), name)
			if at < 0 || strings.Contains(r.text, "\u00a0") && !strings.HasPrefix(r.text[from+at:], name) {
				break
			}
			at += from
			before, _ := utf8.DecodeLastRuneInString(r.text[:at])
			after, _ := utf8.DecodeRuneInString(r.text[at+len(name):])
			if from = at + len(name); joins(before) || joins(after) {
				continue
			}
			r.take(Number{From: at, To: at + len(name), size: i + 1})
		}
	}
}

func joins(c rune) bool { return unicode.IsLetter(c) || unicode.IsDigit(c) }

// figures finds the numbers in figures.
func (r *reader) figures() {
	if !strings.ContainsAny(r.text, digits+"½¼¾⅓⅔⅛⅜⅝⅞") {
		return
	}
	for from := 0; ; {
		m := figures().FindStringIndex(r.text[from:])
		if m == nil {
			return
		}
		at, to := from+m[0], from+m[1]
		from = to
		for _, n := range r.figure(at, to) {
			from = max(from, n.To)
			r.take(n)
		}
	}
}

// figure reads one figure, with a fraction behind it; a date of several figures is read as each of them.
func (r *reader) figure(at, to int) []Number {
	s := r.text[at:to]
	n := Number{From: at, To: to}
	if v, ok := fractions[s]; ok {
		n.values = []Rat{v}
		return []Number{n}
	}
	if strings.Count(s, ".")+strings.Count(s, ",") > 1 && !grouped(s) {
		return r.several(at, s)
	}
	n.values = r.decimal(s)
	before := r.text[:at]
	switch m := slashed().FindStringSubmatchIndex(r.text[to:]); {
	case m != nil && !strings.HasPrefix(r.text[to+m[1]:], "/"):
		num, den := n.values[0], atoi(r.text[to+m[2]:to+m[3]])
		if num.D == 1 && num.N < den && slices.Contains([]int{2, 3, 4, 5, 8, 16}, den) {
			n.values, n.To = []Rat{rat(num.N, den)}, to+m[1]
			return []Number{n}
		}
	default:
		if f := behind().FindString(r.text[to:]); f != "" && n.values[0].D == 1 {
			n.values, n.To = []Rat{n.values[0].plus(fraction(f))}, to+len(f)
		}
	}
	if letter().MatchString(before[max(0, len(before)-letterLong):]) {
		n.kind, n.values = loose, n.values[:1] // G-6: the letter and number of a hook
	}
	if negative(before) {
		for i := range n.values {
			n.values[i].N = -n.values[i].N
		}
	}
	return []Number{n}
}

// several reads figures between signs as one number each: 1.2.2026.
func (r *reader) several(at int, s string) []Number {
	var out []Number
	for _, m := range regexp.MustCompile(`[0-9]+`).FindAllStringIndex(s, -1) {
		out = append(out, Number{From: at + m[0], To: at + m[1], values: []Rat{whole(atoi(s[m[0]:m[1]]))}})
	}
	return out
}

// negative reports whether a minus stands before a figure. A hyphen between words or figures is none.
func negative(before string) bool {
	rest, minus := strings.CutSuffix(before, "−")
	if !minus {
		if rest, minus = strings.CutSuffix(before, "-"); !minus {
			return false
		}
	}
	last, _ := utf8.DecodeLastRuneInString(rest)
	return rest == "" || unicode.IsSpace(last) || last == '('
}

func fraction(s string) Rat {
	s = strings.Trim(s, " \u00a0")
	if v, ok := fractions[s]; ok {
		return v
	}
	n, d, _ := strings.Cut(s, "/")
	return rat(atoi(n), max(atoi(d), 1))
}

// grouped reports whether all signs of a figure part groups of three: 1.234.567.
func grouped(s string) bool {
	parts := strings.FieldsFunc(s, func(c rune) bool { return c == '.' || c == ',' })
	for _, p := range parts[1:] {
		if len(p) != 3 {
			return false
		}
	}
	return true
}

// decimal reads a figure with at most one decimal sign. A sign before three figures may part thousands too.
func (r *reader) decimal(s string) []Rat {
	s = strings.NewReplacer("\u202f", "", "\u2009", "", "\u00a0", "").Replace(s)
	i := strings.IndexAny(s, ".,")
	if i < 0 {
		return []Rat{whole(atoi(s))}
	}
	solid := strings.NewReplacer(".", "", ",", "").Replace(s)
	if strings.Count(s, ".")+strings.Count(s, ",") > 1 {
		return []Rat{whole(atoi(solid))}
	}
	behind := s[i+1:]
	d := 1
	for range min(len(behind), 6) {
		d *= 10
	}
	v := rat(atoi(s[:i]+behind[:min(len(behind), 6)]), d)
	if len(behind) == 3 && s[0] != '0' {
		if s[i] == r.l.point {
			return []Rat{v, whole(atoi(solid))}
		}
		return []Rat{whole(atoi(solid)), v}
	}
	return []Rat{v}
}

// atoi reads figures; a number beyond all counts is as good as any other such.
func atoi(s string) int {
	n, err := strconv.Atoi(s)
	if err != nil || n > 1_000_000_000 {
		return 1_000_000_000
	}
	return n
}

// wordsOf are the places of the words of a text: letters that nothing parts.
func wordsOf(text string) [][2]int {
	var out [][2]int
	start := -1
	for i, c := range text {
		switch letter := unicode.IsLetter(c); {
		case letter && start < 0:
			start = i
		case !letter && start >= 0:
			out, start = append(out, [2]int{start, i}), -1
		}
	}
	if start >= 0 {
		out = append(out, [2]int{start, len(text)})
	}
	return out
}

// words finds the numbers in words.
func (r *reader) words() {
	all := wordsOf(r.text)
	for i := 0; i < len(all); i++ {
		at, to := all[i][0], all[i][1]
		w := strings.ToLower(r.text[at:to])
		if last, _ := utf8.DecodeLastRuneInString(r.text[:at]); last == '\x01' && r.l.suffix[w] {
			continue // 2nd, 1.er
		}
		if strings.HasSuffix(r.text[:at], "\x01.") && r.l.suffix[w] {
			continue
		}
		v, n := r.spelt(all[i:])
		if n > 0 {
			end := all[i+n-1][1]
			r.out = append(r.out, Number{From: at, To: end, values: []Rat{whole(v)}, kind: word})
			i += n - 1
			continue
		}
		if vs := r.l.loose[w]; vs != nil {
			r.out = append(r.out, Number{From: at, To: to, values: vs, kind: loose})
		}
	}
}

// spelt reads a number in words from the first of some words: twenty-two, treinta y dos, two hundred. It returns how many words it
// is, 0 if the first is no number.
func (r *reader) spelt(all [][2]int) (value, words int) {
	at := func(i int) string { return strings.ToLower(r.text[all[i][0]:all[i][1]]) }
	gap := func(i int) string { return r.text[all[i-1][1]:all[i][0]] } // before word i
	first := at(0)
	v, ok := r.l.words[first]
	if f, times := r.l.times[first]; times && !ok {
		v, ok = f, true // hundred, mil
	}
	if !ok {
		if first != "one" && first != "a" || len(all) < 2 || r.l.times[at(1)] == 0 || gap(1) != " " {
			return 0, 0
		}
		v = 1
	}
	n, part := 1, v // part: the last word, that a smaller one may be added to
	for n < len(all) && (gap(n) == " " || gap(n) == "-") {
		next, i := at(n), n
		if r.l.and[next] && n+1 < len(all) && gap(n+1) == " " && joinedByAnd(part) {
			i = n + 1
			next = at(i)
		}
		add, known := r.l.words[next]
		if next == "one" || next == "uno" || next == "una" || next == "un" {
			add, known = 1, part >= 20
		}
		times := r.l.times[next]
		switch {
		case times > 0 && v < times && i == n:
			v, part = v*times, times
		case known && add < 10 && part >= 20 && part < 100 && part%10 == 0, known && add < 100 && part >= 100:
			v, part = v+add, add
		default:
			return v, n
		}
		n = i + 1
	}
	return v, n
}

// joinedByAnd reports whether and may join a smaller number to this one: one hundred and five, treinta y dos.
func joinedByAnd(part int) bool {
	return part == 100 || part == 1000 || part >= 30 && part < 100 && part%10 == 0
}
