package compare_test

import (
	"fmt"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/lang/source"
	"ovillo/render/words"
)

var figure = regexp.MustCompile(`\b[0-9]+\b`)

func check(name, text string) desk.Checked {
	return desk.Check(desk.Source{File: source.NewFile(name, text), Open: desk.Folder("../../examples")})
}

func checks(name, text string) bool {
	c := check(name, text)
	return c.Printable()
}

// uncounted is a source whose rows do not say what they come to, so that more of what is edited still checks.
func uncounted(text string) string {
	return regexp.MustCompile(`(?m)^(  +[^ #="\n][^#="\n]*?)\s+= [^="\n]*$`).ReplaceAllString(text, "$1")
}

// swaps are words that are put in the place of another: stitches that fit as well, and sides.
var swaps = [][2]string{{"fphdc", "bphdc"}, {"dc", "hdc"}, {"hdc", "dc"}, {"sc", "hdc"}, {"pa", "pma"}, {"pb", "pma"}, {"front", "back"}, {"first", "last"}}

// edits are what one line of a part may become by one slip: a figure one larger, another stitch, the line gone or there twice.
func edits(line string) []string {
	var out []string
	for _, m := range figure.FindAllStringIndex(line, -1) {
		if v, err := strconv.Atoi(line[m[0]:m[1]]); err == nil {
			out = append(out, line[:m[0]]+fmt.Sprint(v+1)+line[m[1]:])
		}
	}
	for _, w := range swaps {
		if at := regexp.MustCompile(`\b` + w[0] + `\b`).FindStringIndex(line); at != nil {
			out = append(out, line[:at[0]]+w[1]+line[at[1]:])
		}
	}
	return append(out, "", line+line)
}

// mutants are copies of a source with one edit in its parts, those that check without an error.
func mutants(t *testing.T, name, text string, each int, do func(what string, p *plan.Pattern)) {
	t.Helper()
	at := 0
	inPart := false
	for n, line := range strings.SplitAfter(text, "\n") {
		switch {
		case strings.HasPrefix(line, "part ") || strings.HasPrefix(line, "pieza "):
			inPart = true
			continue
		case strings.HasPrefix(line, "end") || strings.HasPrefix(line, "fin"):
			inPart = false
		}
		if !inPart || strings.ContainsAny(line, "\"|") || strings.HasPrefix(strings.TrimSpace(line), "#") || strings.TrimSpace(line) == "" {
			continue
		}
		for _, edit := range edits(line) {
			if at++; at%each != 0 {
				continue
			}
			lines := strings.SplitAfter(text, "\n")
			lines[n] = edit
			if c := check(name, strings.Join(lines, "")); c.Printable() {
				do(fmt.Sprintf("%s:%d: %q became %q", name, n+1, strings.TrimSpace(line), strings.TrimSpace(edit)), c.Pattern)
			}
		}
	}
}

// told is what the pages say of the parts in one size, in English, without the numbers of the rows. It is written by what sets the
// pages, which knows nothing of comparing.
func told(t *testing.T, p *plan.Pattern) string {
	t.Helper()
	l, err := words.For("en")
	require.NoError(t, err)
	var b strings.Builder
	for _, part := range p.Parts {
		say := func(st words.StepText) {
			fmt.Fprintln(&b, st.Body.String())
			if st.Count != nil {
				fmt.Fprintln(&b, st.Count.Slots, st.Count.Line.String(), st.Count.Unit.String())
			}
		}
		fmt.Fprintln(&b, l.PartNote(p, part).String())
		say(l.Start(p, part))
		for _, s := range part.Steps {
			say(l.Step(p, part, s))
		}
	}
	return b.String()
}

// steps is what the pages say of some steps, with the numbers of their rows.
func steps(t *testing.T, p *plan.Pattern, part int, of []int) string {
	t.Helper()
	l, err := words.For("en")
	require.NoError(t, err)
	var b strings.Builder
	for _, i := range of {
		st := l.Start(p, p.Parts[part])
		if i != compare.Start {
			st = l.Step(p, p.Parts[part], p.Parts[part].Steps[i])
		}
		fmt.Fprintln(&b, st.Label.String(), st.Slots, st.Body.String(), l.CountLine(p, st.Count).String())
	}
	return b.String()
}

// fabric is what is made in one size, row by row, as the checker counted it.
func fabric(p *plan.Pattern) string {
	var b strings.Builder
	for _, part := range p.Parts {
		for _, f := range part.Worked[0] {
			var forms []string
			for form, n := range f.ByForm.All() {
				forms = append(forms, fmt.Sprint(form, n))
			}
			slices.Sort(forms)
			fmt.Fprintln(&b, part.Name, f.Number, f.Stitches, f.Spaces, f.Chains, f.Closed, forms)
		}
	}
	return b.String()
}

// TestEveryEditIsReported: a figure of a part that is changed is reported for exactly those sizes of which the pages tell something
// else or the fabric is another. Both are worked out here without the comparison.
func TestEveryEditIsReported(t *testing.T) {
	each := 19
	if os.Getenv("ALL_FILES") != "" {
		each = 1
	}
	edits, moved := 0, 0
	for name, text := range examples(t) {
		if bare := uncounted(text); checks(name, bare) {
			text = bare
		}
		was := pattern(t, name, text)
		mutants(t, name, text, each, func(what string, is *plan.Pattern) {
			edits++
			r := compare.Patterns(was, is)
			reported := map[int]bool{}
			for _, c := range r.Changes {
				if c.Topic == compare.Steps || c.Topic == compare.Heads || c.Topic == compare.Parts {
					for _, s := range c.Sites {
						reported[s.Size] = true
						if c.Topic != compare.Steps {
							continue
						}
						was, is := r.Sizes[s.Size].Was, r.Sizes[s.Size].Is
						if steps(t, was, c.Part.Old, s.Old) == steps(t, is, c.Part.New, s.New) && fabric(was) == fabric(is) {
							t.Errorf("%s: steps %v of part %d are reported, and the pages say the same of them", what, s.New, c.Part.New)
						}
					}
				}
			}
			for z, s := range r.Sizes {
				apart := fabric(s.Was) != fabric(s.Is)
				said := told(t, s.Was) != told(t, s.Is)
				if apart {
					moved++
				}
				switch {
				case apart && !reported[z]:
					t.Errorf("%s: the fabric is another in %s and nothing is reported", what, s.Was.Sizes[0].Name)
				case said && !reported[z]:
					t.Errorf("%s: the pages say something else in %s and nothing is reported", what, s.Was.Sizes[0].Name)
				case !apart && !said && reported[z]:
					t.Errorf("%s: a change is reported in %s and there is none", what, s.Was.Sizes[0].Name)
				}
			}
		})
	}
	t.Logf("%d edits that check, %d sizes of them with another fabric", edits, moved)
	require.Greater(t, edits, 15, "hardly any edit was tried")
	require.Greater(t, moved, 15)
}
