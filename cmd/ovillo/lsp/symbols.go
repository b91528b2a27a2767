package lsp

import (
	"strings"

	"ovillo/lang"
	"ovillo/lang/source"
)

// Kinds of symbol, by the numbers of the protocol. The trade has no classes and functions: the kinds are those whose signs an editor
// shows well.
const (
	symbolModule    = 2
	symbolNamespace = 3
	symbolClass     = 5
	symbolProperty  = 7
	symbolFunction  = 12
	symbolVariable  = 13
	symbolConstant  = 14
	symbolArray     = 18
	symbolObject    = 19
	symbolKey       = 20
	symbolEvent     = 24
)

// symbols lists what the document sets: the pattern, its sizes, gauge and yarns, values, parts with their rows, and measures.
func (q *query) symbols() (any, *failure) {
	return q.symbolsOf(q.parse().tree.Body), nil
}

func (q *query) symbolsOf(body []*lang.Statement) []DocumentSymbol {
	out := []DocumentSymbol{}
	for _, s := range body {
		if !q.mine(s.Head) {
			continue // of a file that is taken in
		}
		kind, name := q.symbolOf(s)
		if kind == 0 {
			out = append(out, q.symbolsOf(s.Body)...) // what stands in a repeat, or for some sizes only
			continue
		}
		head := source.Span{Start: s.Head.Start, End: min(s.Head.End, s.Whole.End)}
		if name != nil {
			head = name.Span()
		}
		label := q.file.Slice(s.Head)
		if name != nil {
			label = q.file.Slice(head)
		}
		one := DocumentSymbol{Name: oneLine(label), Kind: kind, Range: q.text.rangeOf(s.Whole), SelectionRange: q.text.rangeOf(head)}
		if name != nil {
			one.Detail = oneLine(q.file.Slice(s.Head))
		}
		one.Children = q.symbolsOf(s.Body)
		out = append(out, one)
	}
	return out
}

// symbolOf is the kind of the symbol that a statement is, 0 if none, and the name that it sets, nil if it has none.
func (q *query) symbolOf(s *lang.Statement) (int, *lang.Name) {
	switch n := s.Node.(type) {
	case *lang.Pattern:
		return symbolModule, n.Name
	case *lang.Sizes:
		return symbolArray, nil
	case *lang.Gauge, *lang.Finish, *lang.MeasureBlock, *lang.Sample:
		return symbolNamespace, nil
	case *lang.Yarn:
		if s.Block != "" {
			return symbolObject, n.Name
		}
	case *lang.Let:
		return symbolVariable, n.Name
	case *lang.Group:
		return symbolFunction, n.Name
	case *lang.Stitch:
		return symbolFunction, n.Name
	case *lang.StitchPattern:
		return symbolFunction, n.Name
	case *lang.Chart:
		return symbolArray, n.Name
	case *lang.Part:
		return symbolClass, n.Name
	case *lang.Motifs:
		return symbolClass, n.Name
	case *lang.Row:
		return symbolEvent, rowName(n.Head)
	case *lang.Shape:
		return symbolEvent, n.Label
	case *lang.CountOff:
		return symbolKey, nil
	case *lang.Measure:
		return symbolProperty, n.Name
	case *lang.Fit:
		return symbolConstant, nil
	}
	return 0, nil
}

// rowName is the name of a row, nil if it has none.
func rowName(h *lang.RowHead) *lang.Name {
	for _, n := range []*lang.Name{h.Label, h.FLabel, h.NLabel} {
		if n != nil {
			return n
		}
	}
	return nil
}

// oneLine is a text as it stands in a list: on one line, not too long for it.
func oneLine(s string) string {
	const most = 80
	s = strings.Join(strings.Fields(s), " ")
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
