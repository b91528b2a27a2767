package book

import (
	"reflect"
	"testing"

	"ovillo/render/layout"
)

// A column that has come to its end has no head on the next page.
func TestColumnsThatAreDone(t *testing.T) {
	row := func(h float64) layout.Box { return layout.Box{H: h} }
	bands := abreast([][]layout.Box{{row(4), row(4)}, {row(8), row(4), row(4)}})
	var done [][]bool
	for _, b := range bands {
		done = append(done, b.done)
	}
	if want := [][]bool{{false, false}, {true, false}, {true, false}}; !reflect.DeepEqual(done, want) {
		t.Errorf("the columns are done %v, want %v", done, want)
	}
}
