package main

import (
	"ovillo/lang"
	"ovillo/render/report"
)

// tally counts what the checks of a report look at and the checked pattern shows no more, since it is worked out there:
// lists of sizes, stated counts, schedules. A part like another counts once.
func tally(f *lang.File) report.Source {
	t := report.Source{Lines: f.Source.Lines()}
	texts := map[string]int{} // by language
	lang.Walk(f, func(n lang.Node) bool {
		switch n := n.(type) {
		case *lang.Expr:
			if len(n.Sizes) > 0 {
				t.Lists++
			}
			if n.Op == lang.OpBut {
				t.ByHand++
			}
		case *lang.Terms:
			t.Terms = true
		case *lang.Only:
			t.Only++
		case *lang.Claim:
			t.Stated++
		case *lang.Bracket, *lang.Repeat:
			t.Repeats++
		case *lang.Shape:
			t.Schedules++
		case *lang.Part:
			if n.Mirror != nil {
				t.Mirrors++
			}
		case *lang.Bi:
			texts[n.Lang]++
		}
		return true
	})
	lang.WalkStatements(f.Body, func(s *lang.Statement) bool {
		edges := 0
		for _, b := range s.Body {
			if _, ok := b.Node.(*lang.ShapeAt); ok {
				edges++
			}
		}
		if edges > 1 {
			t.Simultaneous += edges
		}
		if _, ok := s.Node.(*lang.Prose); ok {
			for _, line := range s.Lines {
				if line.Head != "" {
					texts[line.Head]++
				}
			}
		}
		return true
	})
	for i, count := range []int{texts["en"], texts["es"]} {
		if i == 0 || count < t.Texts {
			t.Texts = count
		}
	}
	return t
}
