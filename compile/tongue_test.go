package compile_test

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/caution"
	"ovillo/compile/plan"
	"ovillo/compile/standard"
	"ovillo/compile/stitch"
	"ovillo/lang"
	"ovillo/lang/source"
)

// A pattern is the same whatever language it is written in, and whichever country's names its stitches have.
func TestLanguagesAreTwins(t *testing.T) {
	for _, path := range append(sources(t, "../examples/*.ovillo"), sources(t, casesAt+"/*.ovillo")...) {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		if !strings.Contains(string(text), "terms") {
			continue
		}
		t.Run(path, func(t *testing.T) {
			want := worded(bare(clean(t, string(text))))
			for _, tag := range []string{"es", "es-AR"} {
				there, err := lang.Reword(source.NewFile(path, string(text)), tag)
				require.NoError(t, err)
				require.True(t, reflect.DeepEqual(want, worded(bare(clean(t, there)))), "%s\n%s", tag, there)
			}
		})
	}
}

// worded clears what a report quotes from the source as it is written.
func worded(p *plan.Pattern) *plan.Pattern {
	for i := range p.Sums {
		p.Sums[i].Left, p.Sums[i].Right = "", ""
	}
	return p
}

// Whatever ovillo knows by a name has one in each language: a word that stayed English in a Spanish source would show it.
func TestWhatIsKnownHasANameInEveryLanguage(t *testing.T) {
	var lines []string
	for _, k := range caution.Kinds() {
		lines = append(lines, "kind "+k)
	}
	for _, f := range standard.FibreWords() {
		lines = append(lines, "fibre "+f+" 100 %")
	}
	for _, k := range stitch.Table {
		if k.ID != stitch.Slip && k.ID != stitch.Chain {
			lines = append(lines, "base "+k.US)
		}
		if !k.Body {
			continue
		}
		lines = append(lines, "base fp"+k.US, "base bp"+k.US, "base "+k.US+"2tog")
		for _, g := range stitch.Groups {
			if g.Only == "" || g.Only == k.ID {
				lines = append(lines, "base "+k.US+"3"+g.Word)
			}
		}
	}
	for _, table := range standard.BodyTableNames() {
		lines = append(lines, "body "+table+" by age")
	}
	same := map[string]bool{"kind top": true, "kind poncho": true, "kind bolero": true, "fibre alpaca": true, "fibre angora": true,
		"fibre cupro": true, "fibre llama": true, "fibre lyocell": true, "fibre merino": true, "fibre modal": true, "fibre mohair": true,
		"fibre sisal": true, "fibre yak": true} // the same word in both languages
	for _, line := range lines {
		word := strings.Fields(line)[1]
		head, block := "", map[string]string{"kind": "pattern p\n", "base": "pattern p\n", "fibre": "yarn k\n", "body": "sizes \"a\"\n"}[strings.Fields(line)[0]]
		text := head + block + line + "\nend\n"
		there, err := lang.Reword(source.NewFile("a", text), "es")
		require.NoError(t, err, text)
		said := strings.Fields(strings.Split(strings.TrimSpace(there), "\n")[3])[1]
		require.True(t, said != word || same[strings.TrimSuffix(line, " 100 %")], "%s stays English in Spanish", line)
	}
}
