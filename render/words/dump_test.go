package words

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/rich"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares a text with a file of testdata.
func golden(t *testing.T, name, got string) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	a, b := strings.Split(string(want), "\n"), strings.Split(got, "\n")
	for i := range max(len(a), len(b)) {
		x, y := lineOf(a, i), lineOf(b, i)
		if x != y {
			t.Fatalf("%s, line %d:\n want %s\n  got %s\n(run with -update after reading the change)", name, i+1, x, y)
		}
	}
}

func lineOf(lines []string, i int) string {
	if i >= len(lines) {
		return "(no line)"
	}
	return lines[i]
}

// shown makes the style of a text visible: **strong**, a tie as ~, [text](address).
func shown(t rich.Text) string {
	var b strings.Builder
	for _, r := range t {
		s := strings.ReplaceAll(r.Text, tie, "~")
		if r.Strong {
			s = "**" + s + "**"
		}
		if r.Link != "" {
			s = "[" + s + "](" + r.Link + ")"
		}
		b.WriteString(s)
	}
	return b.String()
}

// dump writes all that a language says about a pattern.
func dump(l *Language, p *plan.Pattern) string {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, format+"\n", args...) }
	facts := func(title string, fs []Fact) {
		line("\n# %s", title)
		for _, f := range fs {
			line("%s. %s", f.Head, shown(f.Text))
		}
	}
	prose := func(p2 plan.Prose) {
		for _, k := range l.Prose(p, p2) {
			line("%s", strings.TrimSpace(strings.Repeat("#", k.Head)+" "+k.Bullet+" "+shown(k.Text)))
		}
	}
	line("%s (%s)\n%s", l.Title(p), l.Tag(), l.Edition(p))
	prose(p.Intro)
	for _, n := range p.Notes {
		prose(n)
	}
	facts("facts", l.Facts(p))
	facts(l.Say(BeforeYouStart), l.SideNotes(p))
	for _, m := range p.Measures {
		line("%s %s: %s", m.Letter, l.MeasureName(m), shown(l.Lengths(m.Values)))
	}
	for _, m := range p.Body {
		line("%s: %s", l.BodyName(m.Name), shown(l.Lengths(m.Values)))
	}
	facts(l.Say(HowToReadHead), l.HowToRead(p))
	line("\n# %s", l.Say(AbbreviationsHead))
	line("%s", shown(l.TermsNote(p)))
	for _, a := range l.Abbreviations(p) {
		line("%s | %s | %s", a.Short, a.Meaning, strings.Join(a.Others, "; "))
	}
	line("\n# %s", l.Say(SpecialsHead))
	for _, s := range l.Specials(p) {
		line("%s\n    %s", shown(s.Head), shown(s.Text))
	}
	for i, part := range p.Parts {
		line("\n# %d %s\n%s", i+1, l.PartTitle(p, i), shown(l.PartNote(p, part)))
		dumpStep(&b, l.Start(p, part))
		for _, s := range part.Steps {
			dumpStep(&b, l.Step(p, part, s))
		}
	}
	line("\n# %s", l.Say(FinishingHead))
	for i, f := range p.Finish {
		line("%d. %s", i+1, shown(l.Finishing(p, f)))
	}
	cautions := func(head string, seller bool, standing Key) {
		groups := l.Cautions(p, func(k plan.Caution) bool { return k.Seller == seller })
		if len(groups) == 0 {
			return
		}
		line("\n# %s", head)
		for _, g := range groups {
			if g.Only != nil {
				line("%s:", shown(g.Only))
			}
			for _, item := range g.Items {
				line("- %s", shown(item.Text))
				for _, reason := range item.Reasons {
					line("  %s", shown(reason))
				}
			}
		}
		line("%s", l.Say(standing))
	}
	cautions(l.CautionsHead(len(p.Cautions)), false, CautionsStanding)
	line("\n# %s", l.CareHead(p))
	prose(p.Care)
	line("%s", shown(l.Contents(p)))
	prose(p.Licence)
	cautions(l.Say(SellersHead), true, SellersStanding)
	prose(p.Changes)
	return b.String()
}

func dumpStep(b *strings.Builder, s StepText) {
	if len(s.Body) == 0 {
		return
	}
	b.WriteString("\n")
	if s.Only != nil {
		fmt.Fprintf(b, "{%s}\n", shown(s.Only))
	}
	if s.Label != nil {
		fmt.Fprintf(b, "%s  %s\n", shown(s.Label), strings.Join(s.Slots, " | "))
	}
	fmt.Fprintf(b, "    %s\n", shown(s.Body))
	if s.Count != nil {
		fmt.Fprintf(b, "    = %s%s %s\n", shown(s.Count.Line), shown(s.Count.Unit), strings.Join(s.Count.Slots, " | "))
	}
}
