package lang

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// tooLongToShow are the codes whose examples would fill a book; TestLimits raises them.
var tooLongToShow = map[diag.Code]bool{codeBigFile: true, codeLong: true, codeMore: true}

// Every example of the writing family raises exactly its own code, every one put right raises nothing.
func TestExamplesRaiseTheirCode(t *testing.T) {
	n := 0
	for _, e := range diag.All() {
		if !strings.HasPrefix(string(e.Code), "OV1") {
			continue
		}
		n++
		_, faults := Parse(source.NewFile("fixed.ovillo", e.Fixed))
		for _, d := range faults {
			t.Errorf("%s: put right, it says: %s: %s", e.Code, d.Code, diag.Message(d, "en"))
		}
		if tooLongToShow[e.Code] {
			continue
		}
		_, faults = Parse(source.NewFile("example.ovillo", e.Example))
		if len(faults) != 1 || faults[0].Code != e.Code {
			t.Errorf("%s: the example raises %s", e.Code, listed(faults))
		}
		for _, d := range faults {
			complete(t, d)
		}
	}
	if n < 40 {
		t.Errorf("only %d codes of this family", n)
	}
}

func listed(l diag.List) string {
	var b strings.Builder
	for _, d := range l {
		fmt.Fprintf(&b, "\n  %s %v: %s", d.Code, d.Span, diag.Message(d, "en"))
	}
	return b.String()
}

// complete checks that a diagnostic leaves nothing open in its wording.
func complete(t testing.TB, d diag.Diagnostic) {
	t.Helper()
	for _, open := range diag.Incomplete(d) {
		t.Errorf("%s: %s", d.Code, open)
	}
}
