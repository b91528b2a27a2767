package words

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/lang/terms"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

func TestTheUsualMannerIsTheLanguageItself(t *testing.T) {
	l := language(t, "es")
	if l.With(Manner{}) != l {
		t.Error("the usual manner is another language")
	}
	large := l.With(Manner{Full: true, Named: true})
	if l.Manner() != (Manner{}) || large.Manner() != (Manner{Full: true, Named: true}) || large.Tag() != "es" {
		t.Error("a manner changed more than itself")
	}
	p := sample.Leggings()
	if dump(large.With(Manner{}), p) != dump(l, p) {
		t.Error("taken back, a manner leaves something behind")
	}
}

func TestLeggingsInOtherManners(t *testing.T) {
	for _, tag := range []string{"en-US", "es"} {
		golden(t, "leggings."+tag+".large.golden", dump(language(t, tag).With(Manner{Full: true, Named: true}), sample.Leggings()))
		golden(t, "everything."+tag+".large.golden", dump(language(t, tag).With(Manner{Full: true, Named: true}), everything()))
	}
}

// shortWords finds the abbreviations of a reading that are no words of it as well.
func shortWords(l *Language) *regexp.Regexp {
	var list []string
	full := map[string]bool{}
	for _, c := range terms.Standard().Concepts() {
		if l.read.Has(c) {
			t := l.read.Term(c)
			for _, w := range strings.Fields(t.One + " " + t.Many) {
				full[w] = true
			}
		}
	}
	for _, c := range terms.Standard().Concepts() {
		if !l.read.Has(c) {
			continue
		}
		for _, s := range []string{l.read.Term(c).Short, l.read.Term(c).Shorts} {
			if t := l.read.Term(c); s != t.One && s != t.Many && !full[s] && c != "country" {
				list = append(list, regexp.QuoteMeta(s))
			}
		}
	}
	list = append(list, "tog", "jun", "rel", "det")
	slices.Sort(list)
	any := strings.Join(slices.Compact(list), "|")
	return regexp.MustCompile(`(^|[^\pL\d])(FP|BP)?(` + any + `)([0-9]+tog)?($|[^\pL])|\d(` + any + `)jun`)
}

// TestNothingIsAbbreviated: in full no text holds an abbreviation of its reading, and none has to be expanded.
func TestNothingIsAbbreviated(t *testing.T) {
	for _, usual := range Readings() {
		short := shortWords(usual)
		found := 0
		seen := func(text rich.Text) string {
			for _, r := range text {
				if r.Expand != "" {
					return r.Text
				}
			}
			return short.FindString(flat(text))
		}
		rowCorpus(usual, func(_ string, text rich.Text) {
			if seen(text) != "" {
				found++
			}
		})
		if found < 100 {
			t.Errorf("%s: abbreviations were found in %d texts only, so the search is of little worth", usual.Tag(), found)
		}
		l := usual.With(Manner{Full: true})
		bad := 0
		check := func(what string, text rich.Text) {
			if s := seen(text); s != "" {
				if bad++; bad < 8 {
					t.Errorf("%s: %q stands in %q (%s)", l.Tag(), s, flat(text), what)
				}
			}
		}
		corpus(l, check)
		for _, p := range []*plan.Pattern{sample.Leggings(), everything()} {
			for i := range p.Own {
				p.Own[i].How = plan.Prose{} // what the designer writes out stays as it is
			}
			l.eachText(p, func(text rich.Text) { check(p.Name, text) })
			check(p.Name, l.TermsNote(p))
			if l.Abbreviations(p) != nil {
				t.Errorf("%s: %s has abbreviations to be explained", l.Tag(), p.Name)
			}
			for _, f := range l.TesterQuestions(p) {
				check(p.Name, join(" ", rich.T(f.Head), f.Text))
			}
		}
	}
}

// bareList is a list of sizes as it is usually written.
var bareList = regexp.MustCompile(`[0-9–][   ]\([0-9–+−][^()]*[,;][^()]*\)`)

// TestEveryNumberIsNamed: with the names of the sizes no list is written without them, and no figure is changed or lost.
func TestEveryNumberIsNamed(t *testing.T) {
	figures := regexp.MustCompile(`[0-9]+`)
	for _, tag := range []string{"en-US", "es"} {
		usual := language(t, tag)
		l := usual.With(Manner{Named: true})
		var before []string
		corpus(usual, func(_ string, text rich.Text) { before = append(before, flat(text)) })
		i, lists, bad := 0, 0, 0
		corpus(l, func(what string, text rich.Text) {
			was, is := before[i], flat(text)
			i++
			if bareList.MatchString(was) {
				lists++
			}
			a, b := figures.FindAllString(was, -1), figures.FindAllString(is, -1)
			slices.Sort(a) // centimetres and inches stand in two lists, and in one by size
			slices.Sort(b)
			if bareList.MatchString(is) || strings.Join(a, " ") != strings.Join(b, " ") {
				if bad++; bad < 8 {
					t.Errorf("%s: %q was %q (%s)", tag, is, was, what)
				}
			}
			for _, r := range text {
				if r.Spoken != "" {
					t.Errorf("%s: %q is spoken otherwise", tag, is)
				}
			}
		})
		if lists < 300 {
			t.Errorf("%s: only %d lists were looked at", tag, lists)
		}
	}
}

func TestNamedLists(t *testing.T) {
	p := sample.Leggings()
	n := plan.Nums{112, 116, 120, 124}
	for _, c := range []struct {
		tag   string
		n     plan.Nums
		sizes plan.Sizes
		want  string
	}{
		{"en-US", n, nil, "(**1~y**:~112, **2~y**:~116, **3~y**:~120, **4~y**:~124)"},
		{"es", n, nil, "(**1~año**:~112; **2~años**:~116; **3~años**:~120; **4~años**:~124)"},
		{"es-MX", n, nil, "(**1~año**:~112, **2~años**:~116, **3~años**:~120, **4~años**:~124)"},
		{"en-US", plan.Nums{8, 8, 8, 8}, nil, "8"},
		{"en-US", n, plan.Sizes{false, true, true, false}, "(**2~y**:~116, **3~y**:~120)"},
		{"en-US", n, plan.Sizes{false, false, true, false}, "120"},
		{"en-US", plan.Nums{plan.Absent, 2, 4, 6}, nil, "(**1~y**:~–, **2~y**:~2, **3~y**:~4, **4~y**:~6)"},
	} {
		l := language(t, c.tag).With(Manner{Named: true})
		if got := shown(l.context(p, nil, c.sizes).num(c.n).text); got != c.want {
			t.Errorf("%s: %v is written %s, not %s", c.tag, c.n, got, c.want)
		}
	}
	l := language(t, "en-US").With(Manner{Named: true})
	if got := shown(l.BySize(p, []string{"2–5", "2–6", "2–7", "2–8"})); got != "(**1~y**:~2–5, **2~y**:~2–6, **3~y**:~2–7, **4~y**:~2–8)" {
		t.Errorf("figures by size are %s", got)
	}
	if got := shown(l.context(p, nil, nil).both(plan.Lengths{plan.Inch, 2 * plan.Inch, 3 * plan.Inch, 4 * plan.Inch})); got !=
		"(**1~y**:~2.5~cm or 1~in, **2~y**:~5.1~cm or 2~in, **3~y**:~7.6~cm or 3~in, **4~y**:~10.2~cm or 4~in)" {
		t.Errorf("lengths by size are %s", got)
	}
}

func TestInchesInFull(t *testing.T) {
	for tag, want := range map[string][]string{"en-US": {"inch", "inches"}, "es": {"pulgada", "pulgadas"}} {
		l := language(t, tag).With(Manner{Full: true})
		for figure, one := range map[string]bool{"1": true, "½": true, "−¾": true, "−1": true, "0": false, "1½": false, "2": false, "−2": false} {
			is := want[1]
			if one {
				is = want[0]
			}
			if got := l.InchesBehind(figure); got != is {
				t.Errorf("%s: %s %s", tag, figure, got)
			}
		}
	}
}
