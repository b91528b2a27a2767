package compile_test

import (
	"testing"

	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// found reads and checks a source the way the command does.
func found(text string) diag.List {
	f, list := lang.Parse(source.NewFile("example.ovillo", text))
	if list.HasErrors() {
		return list
	}
	_, more := compile.Compile(f)
	return append(list, more...)
}

// tooLongToShow are the codes of sources that would fill a book: their example is a line that stands for one. The tests of
// the limits raise them.
var tooLongToShow = map[diag.Code]bool{"OV101": true, "OV104": true, "OV105": true}

// TestExamples checks the page behind every message: its example raises exactly that code, and the example put right
// raises it no more and has no errors.
func TestExamples(t *testing.T) {
	for _, e := range diag.All() {
		t.Run(string(e.Code), func(t *testing.T) {
			list := found(e.Example)
			if tooLongToShow[e.Code] {
				list = nil
			} else if len(list) == 0 {
				t.Errorf("the example raises nothing:\n%s", e.Example)
			}
			for _, d := range list {
				if d.Code != e.Code {
					t.Errorf("the example raises %s as well: %v\n%s", d.Code, d.Args, e.Example)
				}
				if gaps := diag.Incomplete(d); len(gaps) > 0 {
					t.Errorf("%s: %v", d.Code, gaps)
				}
			}
			for _, d := range found(e.Fixed) {
				if d.Code == e.Code || diag.Lookup(d.Code).Severity == diag.Error {
					t.Errorf("put right it still raises %s: %v\n%s", d.Code, d.Args, e.Fixed)
				}
			}
		})
	}
}
