package saying

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/words"
)

// This file reads every sentence that is printed for the examples and the worked constructions, for forms that makers are known to
// take in two ways, and for what must be said so that they do not. The forms are those of the complaints of readers: a repeat without
// its total, one in each of several against several in one, a beginning chain that may or may not count, a number of times that is
// nought, a count without its spaces.

// saidStep is a step as it is printed, with what its plan asks of the words.
type saidStep struct {
	only, label, slots, body, count string

	row     bool // it is worked
	begins  bool // it has the first beginning chain of its kind in the part
	skips   bool // it begins in a new chain, some of which are skipped
	lace    bool // it makes spaces
	blocked bool // rows are worked over and over
	tall    bool // its length is asked for
	some    bool // it is for some sizes
}

func (s saidStep) text() string {
	return strings.Join([]string{s.only, s.label, s.slots, s.body, s.count}, " | ")
}

// form is something that a sentence never holds.
type form struct {
	why   string
	wrong *regexp.Regexp
}

func forms(list ...string) []form {
	var out []form
	for i := 0; i < len(list); i += 2 {
		out = append(out, form{list[i], regexp.MustCompile(list[i+1])})
	}
	return out
}

// forbidden are the forms of each language that mean two things. What stands before a number that may be a list of sizes is looked
// at in all of them alike.
var forbidden = map[string][]form{
	"en": forms(
		"a repeat without its total", `\b[Rr]ep(eat)?\b`,
		"more without a total", `\bmore times\b|\btimes more\b|\badditional\b`,
		"a word for a number of times", `\b(once|twice|thrice)\b`,
		"several places without each", `\b(in|around|loop of|only of) (the )?(next|first|last|other) [0-9–]+( |$)`, // "in next 2-ch sp" is one place
		"nought times", `\b0 (\([^)]*\) )?times?\b`,
		"a bracket worked once", `\] 1 times?\b`,
		"how long instead of how many rows", `\b(work|worked) (even|straight)\b|\buntil\b.*\bmeasures\b`,
		"an increase or decrease that is not defined", `\b(inc|dec)\b`,
		"a stitch in a space or round it", `\bch-?[0-9]* ?loops?\b`,
	),
	"es": forms(
		"a repeat without its total", `\b[Rr]ep(etir|\b)`,
		"more without a total", `\bveces más\b|\bmás veces\b|\bvez más\b`,
		"a word for a number of times", `\b(una vez|dos veces|tres veces|once)\b`,
		"several places without each", `\b(pd|pr|pe|pb|mp|pma|pa|pad|cad\)?) en (los|las) (siguientes |primeros |primeras |últimos |últimas )?[0-9–]`,
		"nought times", `\b0 (\([^)]*\) )?veces\b`,
		"a bracket worked once", `\] 1 vez\b`,
		"how long instead of how many rows", `\b(recto|sin aumentar ni disminuir)\b|\bhasta (medir|que mida|que la pieza mida)\b`,
		"an increase or decrease that is not defined", `\b(aum|dism)\b`,
	),
}

var (
	// A dash stands for a size that has no such number, so that it stands among the numbers of sizes.
	sizeLists = regexp.MustCompile(`[0-9–][0-9,.¼½¾]*( \([0-9–,;.¼½¾ ]+\))+`)

	bracketEnd = map[string]*regexp.Regexp{
		"en": regexp.MustCompile(`\](,? )?([0-9–][^ ]*( \([0-9–, ]+\))* times\b|\(sizes? )`),
		"es": regexp.MustCompile(`\](,? )?([0-9–][^ ]*( \([0-9–; ]+\))* veces\b|\(solo tall[ae]s? )`),
	}
	saysCounts = map[string]*regexp.Regexp{
		"en": regexp.MustCompile(`(?i)\bch [0-9]+ \((counts as|does not count as)`),
		"es": regexp.MustCompile(`\b[0-9]+ cad \((cuentan? como|no cuentan? como)`),
	}
	saysSkipped = map[string]*regexp.Regexp{
		"en": regexp.MustCompile(`\(the ([0-9]+ )?skipped ch (counts? as|does not count as|do not count as)`),
		"es": regexp.MustCompile(`\(las? ([0-9]+ )?cad saltadas? (no )?cuentan? como`),
	}
	total    = map[string]string{"en": " in all", "es": " en total"}
	rowTimes = map[string]*regexp.Regexp{"en": regexp.MustCompile(`\btimes?\b`), "es": regexp.MustCompile(`\b(vez|veces)\b`)}
	spaces   = map[string]*regexp.Regexp{"en": regexp.MustCompile(`\bsps?\b`), "es": regexp.MustCompile(`\besp\b`)}
	onlySize = map[string]*regexp.Regexp{"en": regexp.MustCompile(`^Sizes? .+ only$`), "es": regexp.MustCompile(`^Solo tallas? .+`)}
	lengths  = map[string]*regexp.Regexp{"en": regexp.MustCompile(`now measures? [0-9–]`), "es": regexp.MustCompile(`miden? ahora [0-9–]`)}
	figures  = regexp.MustCompile(`[0-9]`)
	headEnds = regexp.MustCompile(`[.:] `)
)

// meaningFaults are the ways in which a printed step can be misread.
func meaningFaults(code string, s saidStep) []string {
	var out []string
	for _, f := range forbidden[code] {
		for _, text := range []string{s.label, s.body, s.count} {
			if hit := f.wrong.FindString(text); hit != "" {
				out = append(out, f.why+": "+hit)
			}
		}
	}
	if strings.Contains(sizeLists.ReplaceAllString(s.body, "1"), "–") {
		out = append(out, "a dash that is in no list")
	}
	if ends := strings.Count(s.body, "]"); ends != len(bracketEnd[code].FindAllString(s.body, -1)) {
		out = append(out, "a bracket without how often it is worked")
	}
	if !s.row {
		return out
	}
	need := func(ok bool, why string) {
		if !ok {
			out = append(out, why)
		}
	}
	need(figures.MatchString(s.label+s.slots), "a row without its number")
	if s.begins {
		need(saysCounts[code].MatchString(s.body), "a beginning chain that may count or not")
	}
	if s.skips {
		need(saysSkipped[code].MatchString(s.body), "skipped chains that may count or not")
	}
	if s.lace {
		need(spaces[code].MatchString(s.count) && strings.Contains(s.count, ","), "a count of a lace row without stitches and spaces")
	}
	if head := headEnds.Split(s.body, 2)[0]; s.blocked && rowTimes[code].MatchString(head) {
		need(strings.Contains(head, total[code]), "rows that are repeated without the total")
	}
	if s.some {
		need(onlySize[code].MatchString(s.only), "a step of some sizes that does not say of which")
	}
	if s.tall {
		need(lengths[code].MatchString(s.body), "a length that was asked for and is not said")
	}
	return out
}

// everySource are the examples, the worked constructions and the sources of what is spoken.
func everySource(t *testing.T) map[string]*plan.Pattern {
	out := map[string]*plan.Pattern{}
	for _, s := range slices.Concat(whole.Examples(t), whole.Cases(t), whole.Sources(t, spokenFolder...)) {
		out[s.Name] = s.Plan(t)
	}
	return out
}

// eachSaid calls f with every step of a pattern as a language says it.
func eachSaid(l *words.Language, p *plan.Pattern, f func(where string, s saidStep)) {
	for i, part := range p.Parts {
		where := p.Name + ", " + l.PartTitle(p, i)
		start := asSaid(l.Start(p, part))
		f(where, start)
		begun := map[plan.Begin]bool{}
		for _, step := range part.Steps {
			s := asSaid(l.Step(p, part, step))
			switch step := step.(type) {
			case *plan.Row:
				s.asks([]*plan.Row{step}, begun)
				s.tall, s.some = step.Tall != nil, !step.For.All() || !step.First.Everywhere()
			case *plan.Block:
				s.asks(step.Rows, begun)
				s.blocked, s.tall, s.some = true, step.Tall != nil, !step.For.All() || !step.First.Everywhere()
			}
			f(where, s)
		}
	}
}

func asSaid(st words.StepText) saidStep {
	s := saidStep{only: whole.Plain(st.Only), label: whole.Plain(st.Label), slots: strings.Join(st.Slots, " | "), body: whole.Plain(st.Body)}
	if st.Count != nil {
		s.count = strings.TrimSpace(whole.Plain(st.Count.Line) + " " + strings.Join(st.Count.Slots, " | ") + " " + whole.Plain(st.Count.Unit))
	}
	return s
}

// asks notes what the rows of a step ask of its words.
func (s *saidStep) asks(rows []*plan.Row, begun map[plan.Begin]bool) {
	s.row = true
	for _, r := range rows {
		b := plan.Begin{Chains: r.Begin.Chains, And: r.Begin.And, Counts: r.Begin.Counts}
		switch {
		case r.Begin.FromHook > 0:
			s.skips = s.skips || r.Begin.Skipped > 0
		case r.Begin.Chains > 0 && !begun[b]:
			begun[b], s.begins = true, true
		}
	}
	last := rows[len(rows)-1]
	s.lace = makesSpaces(last.Work)
}

// makesSpaces reports whether chains are worked among other stitches, and not into one place with them.
func makesSpaces(work []plan.Instr) bool {
	return slices.ContainsFunc(work, func(in plan.Instr) bool {
		return in.Op == plan.Chains && slices.ContainsFunc(in.N, func(n int) bool { return n > 0 }) || in.Op == plan.Repeat && makesSpaces(in.Body)
	})
}

func TestNothingPrintedMeansTwoThings(t *testing.T) {
	steps, asked := 0, map[string]int{}
	for name, p := range everySource(t) {
		for _, tag := range []string{"en-US", "en-GB", "es"} {
			l, err := words.For(tag)
			require.NoError(t, err)
			eachSaid(l, p, func(where string, s saidStep) {
				steps++
				for what, is := range map[string]bool{"begins": s.begins, "skips": s.skips, "lace": s.lace, "blocked": s.blocked, "tall": s.tall, "some": s.some} {
					if is {
						asked[what]++
					}
				}
				if tag == "en-GB" { // UK patterns put the number before the chain: what is forbidden is forbidden there too
					s.begins, s.skips = false, false
				}
				for _, f := range meaningFaults(l.Code(), s) {
					t.Errorf("%s: %s, in %s: %s", name, f, where, s.text())
				}
			})
		}
	}
	if steps < 1000 {
		t.Errorf("only %d steps were read", steps)
	}
	for _, what := range []string{"begins", "skips", "lace", "blocked", "tall", "some"} {
		if asked[what] < 10 {
			t.Errorf("%s was asked of %d steps only", what, asked[what])
		}
	}
}

// misread are changes to what is printed that give it a second meaning, and the languages in which they can be made.
var misread = []struct {
	name, code string
	change     func(s *saidStep) bool // whether the step could be changed so
}{
	{"one in each becomes several in one", "en", replaced(" in each of next ", " in next ")},
	{"one in each of the first", "en", replaced(" in each of first ", " in first ")},
	{"one in each of the last", "en", replaced(" in each of last ", " in last ")},
	{"one in each becomes several in one", "es", func(s *saidStep) bool {
		return replaced(" pb en cada uno de los ", " pb en los ")(s) || replaced(" pma en cada uno de los ", " pma en los ")(s) || replaced(" pa en cada uno de los ", " pa en los ")(s)
	}},
	{"more", "en", replaced(" times", " more times")},
	{"more", "es", replaced(" veces", " veces más")},
	{"a bare repeat", "en", replaced("Work these", "Repeat these")},
	{"a bare repeat", "es", replaced("Tejer estas", "Repetir estas")},
	{"the total of a block", "en", replaced(" in all", "")},
	{"the total of a block", "es", replaced(" en total", "")},
	{"how often a bracket is worked", "en", matched(`\] [0-9]+ (\([^)]*\) )?times`, "]")},
	{"how often a bracket is worked", "es", matched(`\] [0-9]+ (\([^)]*\) )?veces`, "]")},
	{"nought times", "en", matched(`\] [0-9]+ times`, "] 0 times")},
	{"nought times", "es", matched(`\] [0-9]+ veces`, "] 0 veces")},
	{"a bracket worked once", "en", matched(`\] [0-9]+ times`, "] 1 time")},
	{"a bracket worked once", "es", matched(`\] [0-9]+ veces`, "] 1 vez")},
	{"twice", "en", matched(`\] 2 times`, "] twice")},
	{"dos veces", "es", matched(`\] 2 veces`, "] dos veces")},
	{"whether the chain counts", "en", matched(` \((counts as|does not count as)[^)]*\)`, "")},
	{"whether the chain counts", "es", matched(` \((cuentan?|no cuentan?) como[^)]*\)`, "")},
	{"whether skipped chains count", "en", matched(` \(the ([0-9]+ )?skipped ch[^)]*\)`, "")},
	{"whether skipped chains count", "es", matched(` \(las? ([0-9]+ )?cad saltadas?[^)]*\)`, "")},
	{"the spaces of a count", "en", func(s *saidStep) bool { return s.lace && inCount(s, `, [0-9][^,]*sps?.*$`) }},
	{"the spaces of a count", "es", func(s *saidStep) bool { return s.lace && inCount(s, `, [0-9][^,]*esp.*$`) }},
	{"the number of a row", "en", func(s *saidStep) bool { was := s.row; s.label, s.slots = "Row", ""; return was }},
	{"the number of a row", "es", func(s *saidStep) bool { was := s.row; s.label, s.slots = "Hilera", ""; return was }},
	{"for which sizes", "en", func(s *saidStep) bool { was := s.some; s.only = ""; return was }},
	{"for which sizes", "es", func(s *saidStep) bool { was := s.some; s.only = ""; return was }},
	{"a dash outside of a list", "en", matched(`ch [0-9]+, `, "ch –, ")},
	{"a dash outside of a list", "es", matched(`[0-9]+ cad, `, "– cad, ")},
	{"a length instead of rows", "en", func(s *saidStep) bool {
		was := s.tall
		s.body = "Work even until the piece measures 20 cm."
		return was
	}},
	{"a length instead of rows", "es", func(s *saidStep) bool {
		was := s.tall
		s.body = "Seguir recto hasta que la pieza mida 20 cm."
		return was
	}},
}

func replaced(from, to string) func(*saidStep) bool {
	return func(s *saidStep) bool {
		if !strings.Contains(s.body, from) {
			return false
		}
		s.body = strings.Replace(s.body, from, to, 1)
		return true
	}
}

func matched(from, to string) func(*saidStep) bool {
	re := regexp.MustCompile(from)
	return func(s *saidStep) bool {
		at := re.FindStringIndex(s.body)
		if at == nil {
			return false
		}
		s.body = s.body[:at[0]] + to + s.body[at[1]:]
		return true
	}
}

func inCount(s *saidStep, from string) bool {
	was := s.count
	s.count = regexp.MustCompile(from).ReplaceAllString(s.count, "")
	return was != s.count
}

// Each change must be found in every step in which it can be made: a scan that lets one pass would let a printed one pass.
func TestWhatMeansTwoThingsIsFound(t *testing.T) {
	sources := everySource(t)
	for _, m := range misread {
		t.Run(m.code+" "+m.name, func(t *testing.T) {
			l, err := words.For(map[string]string{"en": "en-US", "es": "es"}[m.code])
			require.NoError(t, err)
			made, missed := 0, 0
			for name, p := range sources {
				eachSaid(l, p, func(where string, s saidStep) {
					// What is told of one row of a block may be told of another one too.
					if strings.HasPrefix(m.name, "whether") && (s.blocked || !s.begins && !s.skips) {
						return
					}
					if was := s.text(); m.change(&s) && s.text() != was {
						if made++; len(meaningFaults(m.code, s)) == 0 {
							if missed++; missed <= 3 {
								t.Errorf("%s: nothing is found in %s: %s", name, where, s.text())
							}
						}
					}
				})
			}
			if made < 3 {
				t.Errorf("the change could be made %d times only", made)
			}
		})
	}
}
