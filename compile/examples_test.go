package compile_test

import (
	"testing"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// found reads and checks a source the way the command does.
func found(text string) diag.List { return foundAt("", text) }

// foundAt is found at a maker's own gauge; "": at that of the source.
func foundAt(gauge, text string) diag.List {
	f, list := lang.Load(source.NewFile("example.ovillo", text), files.Open)
	if list.HasErrors() {
		return list
	}
	o := compile.Options{Open: files.Open}
	if own, ok := compile.ReadOwnGauge(gauge); ok {
		o.Gauges = append(o.Gauges, own)
	}
	return append(list, compile.CompileWith(f, o).Found...)
}

// raised is what the example of a code raises. That there are too many messages follows many others by its nature.
func raised(e *diag.Entry) diag.List {
	list := foundAt(e.OwnGauge(), e.Whole())
	if e.Code == "OV105" && len(list) > 0 {
		return list[len(list)-1:]
	}
	return list
}

// loadedExample is the text of an example with those of the files that it uses, in which the places of its messages lie.
func loadedExample(e *diag.Entry) *source.File {
	f, _ := lang.Load(source.NewFile("example.ovillo", e.Whole()), files.Open)
	return f.Source
}

// TestExamples checks the page behind every message: its example raises exactly that code, and the example put right
// raises it no more and has no errors.
func TestExamples(t *testing.T) {
	for _, e := range diag.All() {
		t.Run(string(e.Code), func(t *testing.T) {
			list := raised(e)
			if len(list) == 0 {
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
			for _, d := range foundAt(e.OwnGauge(), e.Fixed) {
				if d.Code == e.Code || diag.Lookup(d.Code).Severity == diag.Error {
					t.Errorf("put right it still raises %s: %v\n%s", d.Code, d.Args, e.Fixed)
				}
			}
		})
	}
}
