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
