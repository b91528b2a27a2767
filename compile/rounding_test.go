package compile

import (
	"fmt"
	"strings"
	"testing"

	"ovillo/lang"
)

// TestRoundRows rounds numbers of rows as the options of a header say. A row that shows the right side is followed by one
// that shows the wrong side, so that which side the last of n rows shows depends on n and on the side of the first.
func TestRoundRows(t *testing.T) {
	even, odd := &lang.RowOpt{Word: "even"}, &lang.RowOpt{Word: "odd"}
	up, down := &lang.RowOpt{Word: "up"}, &lang.RowOpt{Word: "down"}
	tiesUp, tiesDown := &lang.RowOpt{Ties: "up"}, &lang.RowOpt{Ties: "down"}
	rs, ws := &lang.RowOpt{Ending: "rs"}, &lang.RowOpt{Ending: "ws"}
	for _, c := range []struct {
		rows      float64
		opts      []*lang.RowOpt
		wrongNext bool
		want      int
	}{
		{57.6, nil, false, 58},
		{57.5, nil, false, 58},
		{57.5, []*lang.RowOpt{tiesDown}, false, 57},
		{57.4, nil, false, 57},
		{0, nil, false, 0},
		{57.6, []*lang.RowOpt{even}, false, 58},
		{63, []*lang.RowOpt{even, tiesUp}, false, 64},
		{63, []*lang.RowOpt{even, tiesDown}, false, 62},
		{63, []*lang.RowOpt{even}, false, 64},
		{64, []*lang.RowOpt{odd}, false, 65},
		{64, []*lang.RowOpt{odd, tiesDown}, false, 63},
		{64.4, []*lang.RowOpt{odd}, false, 65},
		{57.1, []*lang.RowOpt{up}, false, 58},
		{57.9, []*lang.RowOpt{down}, false, 57},
		{57, []*lang.RowOpt{up}, false, 57},
		{57.1, []*lang.RowOpt{even, up}, false, 58},
		{57.9, []*lang.RowOpt{even, down}, false, 56},
		{58.1, []*lang.RowOpt{odd, down}, false, 57},
		{9.9, []*lang.RowOpt{ws}, false, 10},
		{9.9, []*lang.RowOpt{rs}, false, 9},
		{10.2, []*lang.RowOpt{rs}, false, 11},
		{9.9, []*lang.RowOpt{rs}, true, 10},
		{9.9, []*lang.RowOpt{ws}, true, 9},
	} {
		var said []string
		for _, o := range c.opts {
			said = append(said, o.Word+o.Ties+o.Ending)
		}
		name := fmt.Sprintf("%v %s, wrong side next: %v", c.rows, strings.Join(said, " "), c.wrongNext)
		if got := roundRows(c.rows, c.opts, 0, c.wrongNext); got != c.want {
			t.Errorf("%s: %d, want %d", name, got, c.want)
		}
	}
}
