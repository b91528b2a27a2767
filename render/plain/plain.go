package plain

import (
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Most is how many signs the box below a video takes: common practice, from memory.
const Most = 5000

// Options say how a text is made.
type Options struct {
	Lang  *words.Language
	Short bool // no longer than Most, as far as safety allows: what is left out is said
}

// Write writes a pattern as text. The same pattern gives the same bytes.
func Write(w io.Writer, p *plan.Pattern, o Options) error {
	if len(p.Sizes) == 0 {
		return fmt.Errorf("the pattern has no sizes")
	}
	t := &text{p: p, l: o.Lang.Keeping(p)}
	all := t.sections()
	if !o.Short {
		_, err := io.WriteString(w, joined(all))
		return err
	}
	_, err := io.WriteString(w, t.shortened(all))
	return err
}

// section is a stretch of the text. What is last to go has the lowest rank; rank 0 never goes.
type section struct {
	head string // "" where it has none
	body string
	rank int
	name string // what it is called where it is left out; "": its head
}

// text is what is being written.
type text struct {
	p *plan.Pattern
	l *words.Language
}

// sections are all of the text, in order.
func (t *text) sections() []section {
	l, p := t.l, t.p
	return slices.DeleteFunc([]section{
		{body: t.title()},
		{body: t.prose(p.Intro), rank: 4, name: l.Say(words.IntroName)},
		{head: l.CautionsHead(t.cautionCount()), body: t.cautions()},
		{head: l.Say(words.MaterialsHead), body: t.materials(), rank: 1},
		{head: l.Say(words.MeasuresOf), body: t.sizes(), rank: 2},
		{head: l.Say(words.ResizeHead), body: t.resizing(), rank: 3},
		{head: l.Say(words.RowsHead), body: t.rows(), rank: 7},
		{head: l.Say(words.AbbreviationsHead), body: t.abbreviations(), rank: 6},
		{head: l.Say(words.SpecialsHead), body: t.specials(), rank: 6},
		{head: l.CareHead(p), body: t.care(), rank: 5},
		{head: l.Say(words.LicenceHead), body: t.prose(p.Licence), rank: 5},
		{head: l.Say(words.SellersHead), body: t.sellers()},
		{head: l.SayWith(words.ShotsHead, l.InSize(t.shown().Sizes[0])), body: t.shots(), rank: 8},
	}, func(s section) bool { return s.body == "" })
}

// joined puts sections one below the other.
func joined(list []section) string {
	var b strings.Builder
	for i, s := range list {
		if i > 0 {
			b.WriteString("\n")
		}
		if s.head != "" {
			head, more, _ := strings.Cut(s.head, ",") // behind a comma may stand the name of a size, which has its own letters
			b.WriteString(plainly(strings.TrimSuffix(strings.ToUpper(head)+","+more, ",")) + "\n")
		}
		b.WriteString(strings.TrimRight(s.body, "\n") + "\n")
	}
	return b.String()
}

// shortened leaves out what has the highest rank until the text is short enough, and says what it left out. What is for safety stays,
// however long it is.
func (t *text) shortened(all []section) string {
	var out []string
	kept := slices.Clone(all)
	for {
		list := kept
		if len(out) > 0 {
			list = append(slices.Clone(kept), section{body: plainly(t.l.SayWith(words.LeftOutHead, strings.Join(out, ", ")))})
		}
		s := joined(list)
		last := -1
		for i, k := range kept {
			if k.rank > 0 && (last < 0 || k.rank > kept[last].rank) {
				last = i
			}
		}
		if utf8.RuneCountInString(s) <= Most || last < 0 {
			return s
		}
		out = append([]string{lower(kept[last].called())}, out...)
		kept = slices.Delete(kept, last, last+1)
	}
}

func (s section) called() string {
	if s.name != "" {
		return s.name
	}
	head, _, _ := strings.Cut(s.head, ",")
	return head
}

// plain signs: angle brackets are refused by boxes, and the signs of Markdown would be taken for markup there. The mark of a figure from
// memory is another one here.
var plainSigns = strings.NewReplacer("<", "‹", ">", "›", "*", "†", "`", "’", "\u00a0", " ", "\u202f", " ", "\u2009", " ")

func plainly(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' || r >= 0x7f && r < 0xa0 {
			return -1
		}
		return r
	}, s)
	lines := strings.Split(plainSigns.Replace(s), "\n")
	for i, line := range lines {
		if strings.HasPrefix(line, "#") { // would be a head
			lines[i] = "\u200a" + line
		}
	}
	return strings.Join(lines, "\n")
}

func say(t rich.Text) string { return plainly(t.String()) }

func lower(s string) string {
	r := []rune(s)
	if len(r) > 1 && strings.ToUpper(string(r[1])) == string(r[1]) {
		return s // capitals stay
	}
	return strings.ToLower(string(r[:min(1, len(r))])) + string(r[min(1, len(r)):])
}
