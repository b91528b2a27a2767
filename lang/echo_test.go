package lang_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ovillo/lang"
	"ovillo/lang/source"
)

// TestRefusedNameIsOneMessage: a value that is called by a word of the language is refused once; the rows that use it are not blamed,
// those that do not are looked at as ever.
func TestRefusedNameIsOneMessage(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"used": {"let around = 24\npart hat\n  ring\n  round: 8 sc in ring\n  round: inc (around - 16) evenly = around\n  round: sc in each = around\nend\n",
			[]string{"OV134 1"}},
		"spanish":       {"idioma es\nsea cada = 24\npieza gorro\n  vuelta: aum (cada - 16) repartidos = cada\nfin\n", []string{"OV134 2"}},
		"another fault": {"let around = 24\npart hat\n  round: sc in each = around\n  round: sc in each = each\nend\n", []string{"OV134 1", "OV135 4"}},
	} {
		f := source.NewFile("echo.ovillo", c.text)
		_, found := lang.Parse(f)
		var got []string
		for _, d := range found {
			got = append(got, string(d.Code)+" "+string(rune('0'+f.Line(d.Span.Start))))
		}
		assert.Equal(t, c.want, got, name+": "+strings.TrimSpace(c.text))
	}
}

// A sum in brackets is how many in every language of sources, and behind any stitch.
func TestSumBehindAStitch(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"part p\n  round: inc (10 - 2) evenly\nend\n", "inc"},
		{"idioma es\npieza p\n  vuelta: aum (10 - 2) repartidos\nfin\n", "inc"},
		{"part p\n  round: pop (10 - 2) times\nend\n", "pop"},
	} {
		tree, found := lang.Parse(source.NewFile("p.ovillo", c.text))
		if len(found) > 0 {
			t.Errorf("%q: %v", c.text, found)
			continue
		}
		var b strings.Builder
		lang.Dump(&b, tree)
		if !strings.Contains(b.String(), "Stitch="+c.want) || !strings.Contains(b.String(), "(10 - 2)") {
			t.Errorf("%q is read as %s", c.text, b.String())
		}
	}
}
