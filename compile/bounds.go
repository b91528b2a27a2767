package compile

import (
	"ovillo/lang"
	"ovillo/lang/diag"
)

// How many things a source may have of a kind. Each of them takes room on the pages and, worked in all sizes, in memory; no pattern
// comes near.
const (
	maxParts    = 500     // joined motifs with them
	maxCharts   = 200     // drawn ones with them
	maxCells    = 100_000 // of all charts together: a blanket of three hundred squares each way
	maxNotes    = 500     // and other texts outside the blocks
	maxYarns    = 200
	maxNotions  = 200
	maxOwn      = 500   // stitches and patterns of stitches
	maxMeasures = 1_000 // lines of the blocks
	maxFinish   = 1_000 // of the finishing
	maxBound    = 100   // patterns of a book
	maxMarks    = 500   // by their names
)

// kindOf is what a statement counts as, and the most there may be of it; "" if it is not counted.
func kindOf(s *lang.Statement) (key string, most, n int) {
	switch s.Node.(type) {
	case *lang.Part, *lang.Motifs:
		return "part", maxParts, 1
	case *lang.Chart:
		return "chart", maxCharts, 1
	case *lang.Prose:
		return "text", maxNotes, 1
	case *lang.Yarn:
		return "yarn", maxYarns, 1
	case *lang.Notion:
		return "notion", maxNotions, 1
	case *lang.Stitch, *lang.StitchPattern:
		return "own stitch", maxOwn, 1
	case *lang.MeasureBlock:
		return "measure", maxMeasures, len(s.Body)
	case *lang.Finish:
		return "step", maxFinish, len(s.Body)
	case *lang.Book:
		return "bound pattern", maxBound, len(s.Body)
	}
	return "", 0, 0
}

// tooMany reports the first kind of thing of which a source has more than it may have, at the statement with which it has.
func tooMany(f *lang.File) diag.List {
	have := map[string]int{}
	var first *lang.Statement
	var of string
	var max int
	count := func(s *lang.Statement, key string, most, n int) {
		if have[key] += n; key != "" && have[key] > most && first == nil {
			first, of, max = s, key, most
		}
	}
	for _, s := range f.Body {
		key, most, n := kindOf(s)
		count(s, key, most, n)
		switch s.Node.(type) {
		case *lang.Chart:
			count(s, "cell", maxCells, squaresOf(s))
		case *lang.Part:
			count(s, "marker", maxMarks, marksOf(s))
		}
	}
	if first == nil {
		return nil
	}
	return diag.List{{Code: codeTooMany, Span: first.Head, Args: diag.Args{"have": have[of], "max": max, "what": diag.Term{Key: of, N: 2}}}}
}

// marksOf counts the names of markers that a part places.
func marksOf(s *lang.Statement) int {
	names := map[string]bool{}
	lang.WalkStatements(s.Body, func(s *lang.Statement) bool {
		if s.Node != nil {
			lang.Inspect(s.Node, func(n lang.Node) bool {
				switch n := n.(type) {
				case *lang.Mark:
					if n.Name != nil {
						names[n.Name.Text] = true
					}
				case *lang.OffItem:
					if n.Mark != nil {
						names[n.Mark.Text] = true
					}
				}
				return true
			})
		}
		return true
	})
	return len(names)
}

// squaresOf counts the squares of a chart.
func squaresOf(s *lang.Statement) int {
	n := 0
	for _, l := range s.Lines {
		n += squaresIn(l)
	}
	return n
}

// squaresIn counts the squares of a line of a chart: its marks, one letter each.
func squaresIn(l lang.RawLine) int {
	n := 0
	for _, r := range l.Text {
		if r != ' ' && r != '\t' {
			n++
		}
	}
	return n
}
