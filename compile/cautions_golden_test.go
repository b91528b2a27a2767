package compile_test

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/compile/plan"
)

// TestCautionsOfExamples writes which cautions each example prints: in which sizes, at which step of the finishing, for sellers, and
// with which reason of the designer's. The rules and their sources stand in compile/caution/data.
func TestCautionsOfExamples(t *testing.T) {
	var b bytes.Buffer
	for _, path := range sources(t, "../examples/*.ovillo") {
		p := checked(t, path)
		fmt.Fprintf(&b, "%s\n", strings.TrimSuffix(filepath.Base(path), ".ovillo"))
		for _, c := range p.Cautions {
			fmt.Fprintf(&b, "  %s\n", cautionLine(p, c))
		}
	}
	golden(t, "cautions.txt", b.Bytes())
}

// TestRightCautions names the cautions that four examples cannot do without, each with what calls for it, and some that they must not
// have.
func TestRightCautions(t *testing.T) {
	for _, c := range []struct{ source, need, not string }{
		// a drawstring at the waist of trousers from 1 to 4 years, sewn down and with plain ends
		{"marisma-leggings", "CORD-10 CORD-11", "CORD-01 CORD-25 SLEP-12 USCD-02"},
		// a soft toy for the youngest, its eyes embroidered
		{"salitre-seal", "OURS-01 PART-11 SLEP-07 LABL-09", "PART-01 PART-04 PART-05"},
		// a hat from 3 months, with a pompom
		{"duna-hat", "SLEP-02 PART-10 OTHR-02 TRAP-03", "CORD-28 SLEP-01"},
		// a blanket from birth, in an open ripple of smooth yarn
		{"resaca-blanket", "SLEP-01", "SLEP-03 PART-14"},
	} {
		has := map[string]bool{}
		for _, k := range checked(t, "../examples/"+c.source+".ovillo").Cautions {
			has[k.ID] = true
		}
		for _, id := range strings.Fields(c.need) {
			if !has[id] {
				t.Errorf("%s does not print %s", c.source, id)
			}
		}
		for _, id := range strings.Fields(c.not) {
			if has[id] {
				t.Errorf("%s prints %s", c.source, id)
			}
		}
	}
}

func cautionLine(p *plan.Pattern, c plan.Caution) string {
	line := fmt.Sprintf("%-8s %-7s", c.ID, c.Severity)
	if c.For != nil {
		var names []string
		for z, s := range p.Sizes {
			if c.For.Has(z) {
				names = append(names, s.Name)
			}
		}
		line += " only " + strings.Join(names, ", ")
	}
	if c.Step >= 0 {
		line += fmt.Sprintf(" at step %d", c.Step+1)
	}
	if c.Seller {
		line += " for sellers"
	}
	if r := c.Reason["en"]; r != "" {
		line += " reason: " + r
	}
	return line
}
