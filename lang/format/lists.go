package format

import (
	"strings"

	"ovillo/lang/lazy"
	"ovillo/lang/source"
)

// This file lines up the numbers of the sizes: in neighbouring lines that have a number for each size, those of one size stand
// one below the other.

// A list as it stands behind an equals sign, or a number alone, with the words that follow it. What is reckoned is neither.
var listed = lazy.Regexp(`^= (-?[0-9.]+)(?: \((-?[0-9.]+(?:, -?[0-9.]+)*)\))?((?: [\pL%].*)?)$`)

// list is the cell of a line that holds numbers for the sizes.
type list struct {
	cell    *cell
	numbers []string // one, or one for each size
	rest    string   // what stands behind them
}

// alignLists widens the numbers of lists in a column, so that they come to stand in columns of their own.
func (p *page) alignLists(s stop) {
	var near []list
	var key any
	sizes := 0 // how many numbers the lists of near have; 0: it has none yet
	flush := func() {
		alignNumbers(near, sizes)
		near, sizes = nil, 0
	}
	for _, l := range p.lines {
		k := p.runOf(l, s)
		if k == (skip{}) {
			continue
		}
		if k == nil || k != key {
			flush()
			key = k
		}
		if k == nil || len(l.cells) == 0 {
			continue
		}
		at, there := listAt(l, s)
		if n := len(at.numbers); there && (n == 0 || n > 1 && sizes > 1 && n != sizes) {
			flush()
		}
		if len(at.numbers) > 0 {
			near = append(near, at)
			sizes = max(sizes, len(at.numbers))
		}
	}
	flush()
}

// listAt reads the cell of a line that stands in a column, if it is there; without numbers it is no list.
func listAt(l *line, s stop) (at list, there bool) {
	for i := range l.cells {
		c := &l.cells[i]
		if c.stop != s {
			continue
		}
		m := listed().FindStringSubmatch(c.text)
		if m == nil {
			return list{}, true
		}
		at = list{c, []string{m[1]}, m[3]}
		if m[2] != "" {
			at.numbers = append(at.numbers, strings.Split(m[2], ", ")...)
		}
		return at, true
	}
	return list{}, false
}

// alignNumbers brings the numbers of neighbours to one width, size by size. One list alone has nothing to stand in line with.
func alignNumbers(near []list, sizes int) {
	wide, lists := make([]int, sizes), 0
	for _, n := range near {
		if len(n.numbers) > 1 {
			lists++
		}
		for i, number := range n.numbers {
			wide[i] = max(wide[i], source.Cells(number))
		}
	}
	if lists < 2 {
		return
	}
	for _, n := range near {
		var b strings.Builder
		for i, number := range n.numbers {
			b.WriteString([]string{"= ", " (", ", "}[min(i, 2)] + strings.Repeat(" ", wide[i]-len(number)) + number)
		}
		if len(n.numbers) > 1 {
			b.WriteString(")")
		}
		n.cell.text = b.String() + n.rest
	}
}
