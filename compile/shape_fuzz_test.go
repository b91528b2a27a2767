package compile_test

import (
	"os"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/format"
	"ovillo/lang/source"
)

// meaning is what a text comes to: the checked pattern without its places in the text, and what was found, in its order.
func meaning(text []byte) (p *plan.Pattern, found []string) {
	tree, list := lang.Parse(source.NewFile("", string(text)))
	if !list.HasErrors() {
		var more diag.List
		p, more = compile.Compile(tree)
		list = append(list, more...)
	}
	for _, d := range list {
		found = append(found, string(d.Code))
	}
	if p != nil {
		p = worded(bare(p))
	}
	return p, found
}

// FuzzShape brings any text into its usual shape: the pattern that it comes to is the same, stitch by stitch, and so is what is
// found in it. A text with errors comes to the same errors.
func FuzzShape(f *testing.F) {
	for _, path := range append(sources(f, casesAt+"/*.ovillo"), sources(f, "../examples/*.ovillo")...) {
		text, err := os.ReadFile(path)
		require.NoError(f, err)
		f.Add(string(text))
	}
	f.Add("terms us\nhook 3,5 mm\nfit head 4,5 (4 ,6, 7) cm\n")
	f.Add("sizes \"a\", \"b\", \"c\"\nend\nlet a = 5 (6, 6)\nlet b =10(12,  7)\nlet c = 4\npart p\nin rows\nchain a\nrow: sc in each=5(6,6)\nrow: inc, sc in each = 6 (7, 7)\nend\n")
	f.Fuzz(func(t *testing.T, text string) {
		if strings.ContainsAny(text, "\r\ufeff\u00a0") {
			return // blanks that mean nothing are taken away, which mends the error that they are
		}
		set, _ := format.Source([]byte(text))
		before, said := meaning([]byte(text))
		after, now := meaning(set)
		if !reflect.DeepEqual(said, now) {
			t.Errorf("found before: %v\nafter: %v\n%q", said, now, text)
		}
		if !reflect.DeepEqual(before, after) {
			t.Errorf("another pattern comes of\n%q", text)
		}
	})
}
