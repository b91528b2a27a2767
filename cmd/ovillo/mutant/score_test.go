package mutant

import (
	"cmp"
	"fmt"
	"maps"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"ovillo/compile/compare"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// The checker's own score. Of the edits that change what is worked, and after which the source can still be read, it is asked how many
// are noticed: by an error, or by a warning that the example has not. An edit that the comparison of patterns finds to change no row, no
// count and no start is no slip and does not count.

// notice is what became of an edit in what is worked.
type notice uint8

const (
	aside     notice = iota // it changes nothing that is worked, or is not in what is worked
	caught                  // an error or a new warning
	slippedBy               // neither
)

// judged says what became of a mutant.
func judged(o *outcome) notice {
	c := &o.checked
	inside := o.of.inRow(o.at) || worksAt(o)
	switch {
	case o.fault != "" || !inside:
		return aside
	case slices.ContainsFunc(c.Found, func(d diag.Diagnostic) bool {
		return d.Severity() == diag.Error && strings.HasPrefix(string(d.Code), "OV1")
	}):
		return aside
	case c.Found.HasErrors():
		return caught
	case c.Pattern == nil || o.of.base.Pattern == nil:
		return aside
	case !changed(o.of.base.Pattern, c.Pattern):
		return aside
	case newWarning(o.of.base.Found, c.Found):
		return caught
	}
	return slippedBy
}

// worksAt reports whether an edit lies in a statement of a part or in a value, from which rows take their numbers.
func worksAt(o *outcome) bool {
	found := false
	lang.WalkStatements(o.of.base.Tree.Body, func(s *lang.Statement) bool {
		switch s.Node.(type) {
		case *lang.Part, *lang.Let:
			found = found || s.Whole.Start <= o.at && o.at < s.Whole.End
		}
		return !found
	})
	return found
}

// changed reports whether two patterns differ in what is worked.
func changed(was, is *plan.Pattern) bool {
	r := compare.Patterns(was, is)
	return slices.ContainsFunc(r.Changes, func(c compare.Change) bool {
		return c.Topic == compare.Steps || c.Topic == compare.Heads || c.Topic == compare.Parts
	})
}

// newWarning reports whether a list has a warning, of a code and so often, that another has not.
func newWarning(was, is diag.List) bool {
	counts := map[diag.Code]int{}
	for _, d := range was {
		counts[d.Code]--
	}
	for _, d := range is {
		if counts[d.Code]++; counts[d.Code] > 0 && d.Severity() == diag.Warning {
			return true
		}
	}
	return false
}

// where is what kind of statement an edit lies in, and in which part of it.
func where(o *outcome) string {
	name := ""
	lang.WalkStatements(o.of.base.Tree.Body, func(s *lang.Statement) bool {
		if s.Head.Start <= o.at && o.at <= s.Head.End && s.Node != nil {
			name = strings.TrimPrefix(fmt.Sprintf("%T", s.Node), "*lang.")
		}
		return true
	})
	return name
}

// scoreFile holds the score that is recorded.
const scoreFile = "testdata/score.txt"

// score compares the score with the one that is recorded: it may rise, and must not fall.
func score(t *testing.T, outcomes []*outcome, whole bool) {
	counts := map[notice]int{}
	kinds := map[string][2]int{}
	var through []*outcome
	for _, o := range outcomes {
		n := judged(o)
		counts[n]++
		k := kinds[o.kind]
		switch n {
		case caught:
			k[0]++
		case slippedBy:
			k[1]++
			through = append(through, o)
		}
		kinds[o.kind] = k
	}
	all := counts[caught] + counts[slippedBy]
	if all == 0 {
		t.Fatal("no edit changes what is worked")
	}
	share := 1000 * counts[caught] / all
	t.Logf("of %d edits of what is worked that can be read and change something, %d are noticed: %d.%d %%", all, counts[caught], share/10, share%10)
	for _, kind := range slices.Sorted(maps.Keys(kinds)) {
		if k := kinds[kind]; k[0]+k[1] > 0 {
			t.Logf("  %-28s %4d noticed, %3d not", kind, k[0], k[1])
		}
	}
	tally := map[string]int{}
	for _, o := range through {
		tally[o.kind+", in "+where(o)]++
	}
	order := slices.SortedFunc(maps.Keys(tally), func(a, b string) int { return cmp.Or(tally[b]-tally[a], cmp.Compare(a, b)) })
	for _, k := range order[:min(10, len(order))] {
		t.Logf("  slips through %3d times: %s", tally[k], k)
	}
	for i, o := range through {
		if i < 400 && testing.Verbose() {
			t.Log("    " + o.what)
		}
	}
	key := "sample"
	if whole {
		key = "whole"
	}
	recorded := readScores(t)
	if *update {
		recorded[key] = share
		writeScores(t, recorded)
	}
	if want, ok := recorded[key]; !ok || share < want {
		t.Errorf("of %d slips in a thousand that change what is worked, %d were noticed (recorded in %s with -update)", want, share, scoreFile)
	}
}

// readScores reads how many of a thousand were noticed: of the sample, and of all.
func readScores(t *testing.T) map[string]int {
	data, err := os.ReadFile(scoreFile)
	if err != nil && !*update {
		t.Fatal(err)
	}
	out := map[string]int{}
	for line := range strings.Lines(string(data)) {
		key, n, _ := strings.Cut(strings.TrimSpace(line), " ")
		if out[key], err = strconv.Atoi(n); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

func writeScores(t *testing.T, scores map[string]int) {
	var b strings.Builder
	for _, key := range slices.Sorted(maps.Keys(scores)) {
		fmt.Fprintln(&b, key, scores[key])
	}
	if err := os.WriteFile(scoreFile, []byte(b.String()), 0o600); err != nil {
		t.Fatal(err)
	}
}
