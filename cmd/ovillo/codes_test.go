package main

import (
	"fmt"
	"go/ast"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"ovillo/lang/diag"
	"ovillo/render/report"
)

// TestCodes checks that every code which a package names has its wording. (That every wording has its check follows from
// the examples, which package compile runs.)
func TestCodes(t *testing.T) {
	files, set := moduleFiles(t, 0)
	raised := map[diag.Code]string{}
	form := regexp.MustCompile(`^OV[0-9]{3}$`)
	for _, f := range files {
		if f.test || f.pkg == "lang/diag" {
			continue
		}
		ast.Inspect(f.ast, func(n ast.Node) bool {
			if lit, ok := n.(*ast.BasicLit); ok {
				if s, err := strconv.Unquote(lit.Value); err == nil && form.MatchString(s) {
					raised[diag.Code(s)] = fmt.Sprint(set.Position(lit.Pos()))
				}
			}
			return true
		})
	}
	rows := map[diag.Code]bool{}
	for _, e := range diag.All() {
		rows[e.Code] = true
	}
	for _, code := range slices.Sorted(maps.Keys(raised)) {
		if !rows[code] {
			t.Errorf("%s: %s has no row in the catalogue", raised[code], code)
		}
	}
}

// TestEveryCodeHasItsCheck: whoever adds a message says which check of an editor it is a finding of, in render/report/checks.csv. Messages
// about how a source is written belong to the first check unless another one claims them.
func TestEveryCodeHasItsCheck(t *testing.T) {
	claimed := map[string]string{}
	for _, c := range report.Checks {
		for _, code := range c.Codes {
			if was, twice := claimed[code]; twice {
				t.Errorf("%s is a finding of %s and of %s", code, was, c.ID)
			}
			claimed[code] = c.ID
		}
	}
	known := map[string]bool{"OV1": true}
	for _, e := range diag.All() {
		known[string(e.Code)] = true
		if report.CheckOf(string(e.Code)) == nil {
			t.Errorf("%s is a finding of no check: give it a place in render/report/checks.csv (%s)", e.Code, e.En.Message)
		}
	}
	for code, id := range claimed {
		if !known[code] {
			t.Errorf("%s: there is no message %s", id, code)
		}
	}
}
