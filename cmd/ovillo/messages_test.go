package main

import (
	"testing"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// TestWhole runs the example of every message through the compiler: what is printed leaves no hole open, names no help
// and no place that the catalogue does not word. (Package compile tests that each example raises its code.)
func TestWhole(t *testing.T) {
	for _, e := range diag.All() {
		s := &loaded{open: files.Open, file: source.NewFile("example.ovillo", e.Whole())}
		if own, ok := compile.ReadOwnGauge(e.OwnGauge()); ok {
			s.gauges = append(s.gauges, own)
		}
		_, found := s.compile()
		if len(found) == 0 {
			t.Errorf("%s: the example raises nothing", e.Code)
		}
		for _, d := range found {
			for _, fault := range diag.Incomplete(d) {
				t.Errorf("%s: %s", d.Code, fault)
			}
		}
	}
}
