package compile_test

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
)

const casesAt = "../testdata/cases"

// TestCases checks sources against numbers that were closed independently of this program (testdata/cases/expected.csv).
func TestCases(t *testing.T) {
	f, err := os.Open(filepath.Join(casesAt, "expected.csv"))
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	require.NoError(t, err)
	patterns := map[string]*plan.Pattern{}
	for _, l := range lines[1:] {
		name := l[1]
		if patterns[name] == nil {
			patterns[name] = checked(t, filepath.Join(casesAt, name+".ovillo"))
		}
		c := closedCase{patterns[name], l[2], l[3], l[4], l[5]}
		want, err := strconv.ParseFloat(l[6], 64)
		require.NoError(t, err)
		got, err := c.number()
		if err != nil || math.Abs(got-want) > c.slack() {
			t.Errorf("%s %s: %s %s, size %s, %s: %v, the case says %v (%v)", l[0], name, c.part, c.row, c.size, c.what, got, want, err)
		}
	}
	for _, path := range sources(t, casesAt+"/*.ovillo") {
		if patterns[strings.TrimSuffix(filepath.Base(path), ".ovillo")] == nil {
			t.Errorf("%s: no number is expected of it", path)
		}
	}
}

// closedCase is one number of a worked construction.
type closedCase struct {
	p                     *plan.Pattern
	part, row, size, what string
}

// slack is how far a length may be off: the cases give a tenth of a centimetre.
func (c *closedCase) slack() float64 {
	if strings.HasSuffix(c.what, "cm") || c.what == "error" {
		return 0.0501
	}
	return 0
}

func (c *closedCase) number() (float64, error) {
	z := slices.IndexFunc(c.p.Sizes, func(s plan.Size) bool { return s.Name == c.size })
	if z < 0 {
		return 0, fmt.Errorf("no such size")
	}
	if c.part == "" {
		return c.whole(z)
	}
	part := partOf(c.p, c.part)
	if part == nil {
		return 0, fmt.Errorf("no such part")
	}
	if c.row == "total" {
		return c.total(part, z)
	}
	n, err := strconv.Atoi(c.row)
	if err != nil {
		return 0, err
	}
	i := slices.IndexFunc(part.Worked[z], func(f plan.RowFact) bool { return f.Number == n })
	if i < 0 {
		return 0, fmt.Errorf("no such row")
	}
	return c.ofRow(part, part.Worked[z][i], z)
}

// whole is a number of the pattern as a whole: of a measure, of the cord, the rows of a part.
func (c *closedCase) whole(z int) (float64, error) {
	if part := partOf(c.p, c.row); part != nil && (c.what == "rows" || strings.HasPrefix(c.what, "in ") || strings.HasPrefix(c.what, "shaped ")) {
		return c.ofPart(part, z)
	}
	if part := partOf(c.p, c.row); part != nil && part.Grid != nil {
		g := part.Grid
		n, ok := map[string]plan.Nums{"free": g.Kinds[0], "one side": g.Kinds[1], "two sides": g.Kinds[2], "shared": g.Shared,
			"side joins": g.AtSides, "corner joins": g.AtCorners}[c.what]
		switch {
		case ok:
			return float64(n[z]), nil
		case c.what == "joins":
			return float64(g.AtSides[z] + g.AtCorners[z]), nil
		}
	}
	for _, m := range c.p.Measures {
		switch {
		case m.Name == c.row && c.what == "cm":
			return cm(m.Values[z]), nil
		case m.Name == c.row && c.what == "error":
			return cm(m.Values[z] - m.Wanted[z]), nil
		}
	}
	for _, r := range c.p.Rounded {
		switch {
		case r.Let != c.row && (r.Row == "" || r.Row != c.row):
		case c.what == "error":
			return cm(r.Errors()[z]), nil
		case c.what == "count":
			return float64(r.Counts[z]), nil
		}
	}
	for _, f := range c.p.Finish {
		switch {
		case f.Kind == plan.MakeCord && c.what == "chains":
			return float64(f.Chains[z]), nil
		case f.Kind == plan.SewRuns && f.Match.Rows > 0 && c.what == "times": // how often the rate of a seam is worked
			return float64(f.Sewn[0].Count[z]) / float64(f.Match.Stitches), nil
		case f.Kind == plan.MakeCord && c.what == "cord cm":
			return cm(f.Length[z]), nil
		}
	}
	return 0, fmt.Errorf("nothing of that name is measured")
}

// total is a number of all rows of a part: the stitches, or those in a yarn.
func (c *closedCase) total(part *plan.Part, z int) (float64, error) {
	sum := 0
	for _, f := range part.Worked[z] {
		if c.what == "sts" {
			sum += f.Stitches
			continue
		}
		i := slices.IndexFunc(c.p.Yarns, func(y plan.Yarn) bool { return y.Name == c.what })
		if i < 0 {
			return 0, fmt.Errorf("no such yarn")
		}
		sum += f.ByYarn.Count(i)
	}
	return float64(sum), nil
}

// ofPart is a number of a part as a whole.
func (c *closedCase) ofPart(part *plan.Part, z int) (float64, error) {
	if c.what == "rows" {
		return float64(len(part.Worked[z])), nil
	}
	if label, ok := strings.CutPrefix(c.what, "in "); ok {
		for _, s := range slices.Backward(part.Steps) {
			if s, ok := s.(*plan.Counted); ok {
				for _, n := range s.Counts {
					if n.Label == label {
						return float64(n.N[z]), nil
					}
				}
			}
		}
		return 0, fmt.Errorf("nothing is stated of it")
	}
	shaped, every := 0, map[string]int{}
	for i, last := 1, 0; i < len(part.Worked[z]); i++ {
		if part.Worked[z][i].Stitches != part.Worked[z][i-1].Stitches {
			shaped++
			every[fmt.Sprintf("shaped every %d", i+1-last)]++
			last = i + 1
		}
	}
	if c.what == "shaped rows" {
		return float64(shaped), nil
	}
	return float64(every[c.what]), nil
}

// ofRow is a number of one row.
func (c *closedCase) ofRow(part *plan.Part, f plan.RowFact, z int) (float64, error) {
	switch c.what {
	case "sts":
		return float64(f.Stitches), nil
	case "places":
		return float64(f.Stitches + f.Chains), nil
	}
	if chains, ok := strings.CutPrefix(c.what, "ch-"); ok {
		return printedSpaces(part, f.Number, z, chains)
	}
	for i, y := range c.p.Yarns {
		if y.Name == c.what {
			r := printedRow(part, f.Number, z)
			if r == nil {
				return 0, fmt.Errorf("the row does not print")
			}
			return float64(inYarn(r.Work, z, i, r.Yarn)), nil
		}
	}
	n := 0
	for form, k := range f.ByForm.All() {
		if string(form.ID) == c.what {
			n += k
		}
	}
	return float64(n), nil
}

func partOf(p *plan.Pattern, name string) *plan.Part {
	for _, part := range p.Parts {
		if part.Name == name {
			return part
		}
	}
	return nil
}

func cm(l plan.Length) float64 { return float64(l) / float64(plan.Centimetre) }

// printedRow is the printed row that says how a row is worked.
func printedRow(part *plan.Part, number, z int) *plan.Row {
	for _, s := range part.Steps {
		if r, ok := s.(*plan.Row); ok && r.First[z] != plan.Absent && r.First[z] <= number && number <= r.Last[z] {
			return r
		}
	}
	return nil
}

// printedSpaces is the printed count of the spaces of so many chains.
func printedSpaces(part *plan.Part, number, z int, chains string) (float64, error) {
	r := printedRow(part, number, z)
	if r == nil {
		return 0, fmt.Errorf("the row does not print")
	}
	n := 0
	for _, c := range r.Counts {
		if c.Kind == plan.CountSpaces && strconv.Itoa(c.Chains) == chains {
			n += c.N[z]
		}
	}
	return float64(n), nil
}

// inYarn adds up the stitches that printed instructions make in a yarn.
func inYarn(work []plan.Instr, z, yarn, hand int) int {
	sum := 0
	for _, in := range work {
		now := hand
		if in.Yarn >= 0 {
			now = in.Yarn
		}
		switch in.Op {
		case plan.ChangeTo:
			hand = in.Yarn
		case plan.Repeat:
			sum += in.N[z] * inYarn(in.Body, z, yarn, hand)
		case plan.Work:
			if now == yarn {
				sum += in.N[z]
			}
		}
	}
	return sum
}
