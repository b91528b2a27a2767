package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// ourPhrases are our phrases for the instructions of the published sentences of testdata/sentences.csv, by their idea. The numbers
// are those of the table.
func ourPhrases(l *Language) map[string]rich.Text {
	v := l.voice
	p := tablePattern()
	c := l.context(p, p.Parts[0], nil)
	c.worked = true
	one := plan.Nums{1, 1, 1}
	say := func(in plan.Instr, worked bool) rich.Text {
		inner := *c
		inner.worked = worked
		return run(inner.items([]plan.Instr{in}))
	}
	sc := func(reach plan.Reach, n int) plan.Instr {
		return tableInstr(plan.Work, reach, plan.Stitch, plan.Nums{n, n, n})
	}
	several := sc(plan.Next, 1)
	several.Per = plan.Nums{3, 3, 3}
	same := tableInstr(plan.Work, plan.Same, plan.Stitch, one)
	same.Form, same.Per = plainForm(stitch.DC), plan.Nums{2, 2, 2}
	group := tableInstr(plan.InOne, plan.Next, plan.Space, one)
	group.Body = []plan.Instr{bodyInstr(stitch.DC, one, 2), {Op: plan.Chains, N: plan.Nums{2, 2, 2}, Marker: -1, Yarn: -1}, bodyInstr(stitch.DC, one, 2)}
	post := sc(plan.Next, 1)
	post.Form = stitch.Form{ID: stitch.DC, Post: stitch.FrontPost, Together: 1}
	back := sc(plan.ToEnd, 20)
	back.Form = stitch.Form{ID: stitch.SC, Loop: stitch.BackLoop, Together: 1}
	four := exactly(4)
	chain := func(nth, skipped int, id stitch.ID, counts bool, rest spot) rich.Text {
		return v.fromHook(v.form(plainForm(id)), hooked{nth: nth, skipped: skipped, per: exactly(1), counts: counts, as: v.form(plainForm(id))}, rest)
	}
	return map[string]rich.Text{
		"chain n":                 sentence(v.chains(exactly(5))),
		"first stitch into chain": stopped(chain(2, 1, stitch.SC, false, spot{reach: plan.ToEnd, n: exactly(20)})),
		"start ch for taller st":  chain(4, 3, stitch.DC, true, spot{}),
		"each stitch":             stopped(say(sc(plan.ToEnd, 20), false)),
		"n stitches, one each":    stopped(say(sc(plan.Next, 2), true)),
		"n stitches into one":     stopped(say(several, true)),
		"same stitch":             stopped(say(same, true)),
		"group in one place":      stopped(say(group, true)),
		"skip":                    sentence(say(tableInstr(plan.SkipOver, plan.Next, plan.Stitch, plan.Nums{2, 2, 2}), true)),
		"decrease leaving k":      boundOf(v),
		"around post":             say(post, true),
		"loops":                   say(back, false),
		"turn":                    sentence(v.turn()),
		"no turn":                 sentence(rich.T(v.line(doNotTurn))),
		"turning ch counts":       sentence(v.begin(beginning{chains: 3, counts: true, as: v.form(plainForm(stitch.DC)), explain: true, throughout: true})),
		"does not count":          sentence(v.begin(beginning{chains: 1, as: v.form(plainForm(stitch.SC)), explain: true})),
		"join round":              sentence(v.joinWith(joining{with: l.read.short("slst"), first: v.form(plainForm(stitch.SC))})),
		"join, ch-3 start":        sentence(v.joinWith(joining{with: l.read.short("slst"), intoChain: true, nth: 3, chains: 3, top: true})),
		"ring":                    sentence(v.joinRing(v.places(plan.FoundationCh), true)),
		"leave unworked":          sentence(v.leave(four, "")),
		"make 2":                  sentence(v.makeSeveral(2)),
	}
}

func boundOf(v voice) rich.Text {
	at := spot{reach: plan.ToLast, last: exactly(3), n: num{}, place: v.places(plan.Stitch)}
	if e, ok := v.(*english); ok {
		return e.bound(at)
	}
	return v.(*spanish).bound(at)
}

// difference is where we differ from a published sentence on purpose, and why.
type difference struct{ idea, theirs, ours, why string }

var differences = map[string][]difference{
	"en-US": {
		{"first stitch into chain", "sc in 2nd ch from hook", "sc in 2nd ch from hook (the skipped ch does not count as a st)", "it is always said whether chains count"},
		{"start ch for taller st", "(3 skipped", "(the 3 skipped", "a sentence in brackets has its article"},
		{"n stitches, one each", "in next 2 sts", "in each of next 2 sts", "it is taken for two in one"},
		{"skip", "Sk ", "Skip ", "a word as short as its abbreviation is written out"},
		{"decrease leaving k", "until 3 sts rem", "to last 3 sts", "it says to which stitch, and needs no abbreviation"},
		{"loops", "in BLO of each st", "in back loop only of each st around", "no abbreviation to look up, and how far is said"},
		{"turning ch counts", "dc here", "dc, here", "the comma parts what it counts as from where"},
		{"join, ch-3 start", "beg ch-3", "ch-3", "only one chain of three begins the round"},
		{"leave unworked", "rem 4", "last 4", "it says which, and needs no abbreviation"},
	},
	"es": {
		{"first stitch into chain", "desde el ganchillo y 1 pb en cada cad hasta el final", "desde el ganchillo (la cad saltada no cuenta como p) y en cada cad hasta el final de la hilera", "it is always said whether chains count, and where the row ends"},
		{"around post", "1 pa en relieve por delante en", "1 pa rel del en", "its abbreviation"},
		{"loops", "cada p,", "cada p hasta el final de la vuelta,", "how far is said"},
		{"ring", "un aro, cuidando de no torcer la cadena", "un anillo, cuidando de no torcer la labor", "one word for a ring; what is joined need not be a chain"},
		{"leave unworked", "los 4 p restantes sin tejer", "sin tejer los 4 últimos p", "the name of what they are left for follows"},
	},
}

// Ten and more sentence patterns as they are published, with the keys of the pages that print them (SOURCES.md), are what our
// phrases say to the letter; where we differ it is on purpose, and said here.
func TestPublishedSentences(t *testing.T) {
	rows := tableRows(t, "testdata/sentences.csv")
	for column, tag := range []string{2: "en-US", 3: "es"} {
		if tag == "" {
			continue
		}
		ours, equal, used := ourPhrases(language(t, tag)), 0, map[string]bool{}
		for _, r := range rows[1:] {
			idea, source, want := r[0], r[1], r[column]
			exact := source != "" // the list names no page for some: they are compared, and not counted
			for _, d := range differences[tag] {
				if d.idea != idea {
					continue
				}
				if !strings.Contains(want, d.theirs) || d.why == "" {
					t.Errorf("%s, %s: %q is not in %q", tag, idea, d.theirs, want)
				}
				want, exact = strings.Replace(want, d.theirs, d.ours, 1), false
				used[d.idea] = true
			}
			text, ok := ours[idea]
			if got := flat(text); !ok || got != want {
				t.Errorf("%s, %s (%s): we say %q, want %q", tag, idea, source, got, want)
			} else if exact {
				equal++
			}
		}
		if equal < 10 {
			t.Errorf("%s: only %d sentences with a source are ours to the letter", tag, equal)
		}
		for _, d := range differences[tag] {
			if !used[d.idea] {
				t.Errorf("%s: no sentence for %q", tag, d.idea)
			}
		}
		t.Logf("%s: %d of %d to the letter", tag, equal, len(rows)-1)
	}
}
