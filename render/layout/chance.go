package layout

import (
	"slices"
	"unicode"
)

// chance is a place where a line may end: it ends before the letter end, and the next one starts at the letter next.
// What lies between, spaces, is dropped.
type chance struct {
	end, next int
	cost      float64 // how ugly it is to break here
	must      bool    // the line has to end here
	hyphen    float64 // in the middle of a word: how wide the hyphen is that the line then ends with; 0: no hyphen
}

// The costs of breaking, to be compared with the cost of a line that stays short: 100 for an empty line, falling with
// the square of what is missing.
const (
	costSoft   = 12 // in the middle of a word, at a soft hyphen
	costTwice  = 40 // a line that ends in a divided word, below another
	costHyphen = 6  // after a hyphen, dash or slash inside a compound
	costDangle = 4  // a line that ends in a bare number, a single letter or an opening bracket
	costTied   = 30 // at a no-break space, when a piece is wider than the line
	costMark   = 40 // after a mark, when a piece is wider than the line
	costTorn   = 60 // between two letters, when a piece is wider than the line
)

// chances lists the places where lines may end, the end of the text as the last. Pieces wider than the measure get
// places inside as well: text never leaves its column.
func (p *paragraph) chances(measure float64) []chance {
	var list []chance
	from := 0 // the start of the piece at hand
	word := 0 // the first of the chances in the word at hand
	soft := p.soft
	close := func(c chance) {
		wide := p.width(from, c.end) > measure
		for len(soft) > 0 && soft[0] <= from {
			soft = soft[1:]
		}
		var marks []int
		for len(soft) > 0 && soft[0] < c.end {
			marks, soft = append(marks, soft[0]), soft[1:]
		}
		switch {
		case wide:
			list = p.tear(list, from, c.end, marks, measure)
		case p.style.Hyphens:
			for _, k := range marks {
				list = append(list, p.divided(k))
			}
		}
		if c.must && !wide { // the last word stays whole
			kept := list[:word]
			for _, l := range list[word:] {
				if l.hyphen == 0 {
					kept = append(kept, l)
				}
			}
			list = kept
		}
		list = append(list, c)
		if c.next > c.end || c.must {
			word = len(list)
		}
		from = c.next
	}
	n := len(p.letters)
	for i := 0; i < n; i++ {
		switch r := p.letters[i].r; {
		case r == '\n':
			close(chance{end: p.blanksBefore(from, i), next: i + 1, must: true})
		case r == ' ' || r == zeroWidth:
			next := i + 1
			for next < n && p.letters[next].r == ' ' {
				next++
			}
			if next < n && p.letters[next].r != '\n' {
				close(chance{end: i, next: next, cost: p.dangle(from, i, next)})
			} // blanks before the end of a line belong to nothing, and the piece before them is still at hand
			i = next - 1
		case p.splits(i):
			close(chance{end: i + 1, next: i + 1, cost: costHyphen})
		}
	}
	close(chance{end: p.blanksBefore(from, n), next: n, must: true})
	return list
}

// blanksBefore is where the blanks before letter end begin, but not before letter from.
func (p *paragraph) blanksBefore(from, end int) int {
	for end > from && p.letters[end-1].r == ' ' {
		end--
	}
	return end
}

// splits reports whether a line may end after letter i, a hyphen, en dash or slash: only inside a compound of words,
// with two letters on each side, so never in a range or list of numbers, in "ch-4" or in "y/o".
func (p *paragraph) splits(i int) bool {
	switch p.letters[i].r {
	case '-', '–', '/':
	default:
		return false
	}
	if i < 2 || i+2 >= len(p.letters) {
		return false
	}
	for _, k := range [...]int{i - 2, i - 1, i + 1, i + 2} {
		if !unicode.IsLetter(p.letters[k].r) {
			return false
		}
	}
	return true
}

// dangle is the cost of ending a line with the piece from a up to b before the letter next: a number that has lost its
// noun, a single letter, or the initials before a number (EN 14682) leave the reader hanging.
func (p *paragraph) dangle(a, b, next int) float64 {
	if b <= a {
		return 0
	}
	digits, capitals := true, unicode.IsDigit(p.letters[next].r)
	for i := a; i < b; i++ {
		r := p.letters[i].r
		if !unicode.IsDigit(r) && r != '(' && r != '[' {
			digits = false
		}
		capitals = capitals && unicode.IsUpper(r)
	}
	if capitals {
		return 4 * costDangle
	}
	if digits || b-a == 1 && unicode.IsLetter(p.letters[a].r) {
		return costDangle
	}
	return 0
}

// divided is the chance to divide a word before letter k, with a hyphen at the end of the line.
func (p *paragraph) divided(k int) chance {
	run := p.runs[p.letters[k-1].run]
	return chance{end: k, next: k, cost: costSoft, hyphen: p.style.Width("-", run.Strong)}
}

// tear adds places inside a piece that is wider than the measure: at its no-break spaces, at its soft hyphens, after its marks,
// and between any two letters if nothing else helps.
func (p *paragraph) tear(list []chance, from, to int, soft []int, measure float64) []chance {
	part, parts := from, append(slices.Clone(soft), to) // what stands between two soft hyphens
	room := measure - p.style.Width("-", true)
	fits := len(soft) > 0 && p.width(part, parts[0]) <= room
	for i := from + 1; i < to; i++ {
		c := chance{end: i, next: i, cost: costTorn}
		switch prev := p.letters[i-1].r; {
		case i == parts[0]:
			c = p.divided(i)
			part, parts = i, parts[1:]
			fits = p.width(part, parts[0]) <= room
		case p.letters[i].r == noBreak:
			c = chance{end: i, next: i + 1, cost: costTied}
		case prev == noBreak:
			continue
		case !unicode.IsLetter(prev) && !unicode.IsDigit(prev):
			c.cost = costMark
		case fits:
			continue
		}
		if n := len(list); n > 0 && list[n-1].end >= c.end {
			continue
		}
		list = append(list, c)
	}
	return list
}
