package main

import (
	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file is the pipeline: source, checked pattern, pages, PDF.

// compile checks a source. The pattern may be used only if the list has no error.
func (s *loaded) compile() (*plan.Pattern, diag.List) {
	file, found := lang.Parse(s.file)
	if found.HasErrors() {
		// The tree has holes; whatever the checker said of it might be the holes' doing.
		return nil, found
	}
	p, more := compile.Compile(file)
	return p, append(found, more...)
}
