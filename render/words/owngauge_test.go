package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
	"ovillo/render/sample"
)

// TestOwnGauge names the maker's gauge and the designer's on the first page, and the maker's at the foot of each.
func TestOwnGauge(t *testing.T) {
	for tag, want := range map[string][3]string{
		"en": {"Your gauge. 18\u00a0dc and 9\u00a0rounds = 10\u00a0cm (4\u00a0in). This copy was set for it; the designer's edition is for 20\u00a0dc and 10\u00a0rounds.",
			"set for 18\u00a0dc and 9\u00a0rounds", "What was weighed has the designer's gauge: at yours, take the amounts as a guide."},
		"en-GB": {"Your tension. 18\u00a0tr and 9\u00a0rounds = 10\u00a0cm. This copy was set for it; the designer's edition is for 20\u00a0tr and 10\u00a0rounds.",
			"set for 18\u00a0tr and 9\u00a0rounds", "What was weighed has the designer's tension: at yours, take the amounts as a guide."},
		"es": {"Su muestra. 18\u00a0pa y 9\u00a0vueltas = 10\u00a0cm. Este ejemplar se ha compuesto para ella; la edición original es para 20\u00a0pa y 10\u00a0vueltas.",
			"compuesto para 18\u00a0pa y 9\u00a0vueltas", "Lo que se pesó tiene la muestra original: con la suya, las cantidades son orientativas."},
	} {
		l, err := For(tag)
		if err != nil {
			t.Fatal(err)
		}
		p := sample.Leggings()
		text := func(facts []Fact) (out string) {
			for _, f := range facts {
				out += f.Head + ". " + f.Text.String() + "\n"
			}
			return out
		}
		if before := text(l.Facts(p)) + text(l.SideNotes(p)); l.SetFor(p) != "" || strings.Contains(before, want[2]) {
			t.Errorf("%s: the designer's edition says it was set for another gauge", tag)
		}
		was := p.Gauges[0]
		own := was
		own.Sts, own.Rows, own.Was = 18000, 9000, &was
		p.Gauges = append([]plan.Gauge{own}, p.Gauges[1:]...)
		facts := text(l.Facts(p))
		if !strings.HasPrefix(facts, want[0]+"\n") {
			t.Errorf("%s: the first page says\n%s\nwant\n%s", tag, facts, want[0])
		}
		if got := l.SetFor(p); got != want[1] {
			t.Errorf("%s: the foot says %q, want %q", tag, got, want[1])
		}
		if notes := strings.ReplaceAll(text(l.SideNotes(p)), "\u00a0", " "); !strings.Contains(notes, want[2]) {
			t.Errorf("%s: the notes beside the drawing do not say %q:\n%s", tag, want[2], notes)
		}
	}
}
