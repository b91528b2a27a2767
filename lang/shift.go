package lang

import (
	"reflect"

	"ovillo/lang/source"
)

// This file moves a tree that was read by itself to where its text stands behind a source.

// moved is a place of the file as it counts in the source. What is nowhere stays so.
func (u *usedFile) moved(s source.Span) source.Span {
	if s.IsZero() {
		return s
	}
	return source.Span{Start: s.Start + u.base, End: s.End + u.base}
}

// shift moves every place in the tree of the file.
func (u *usedFile) shift() {
	WalkStatements(u.Body, func(s *Statement) bool {
		s.Whole, s.Head = u.moved(s.Whole), u.moved(s.Head)
		for i := range s.Lines {
			s.Lines[i].Span = u.moved(s.Lines[i].Span)
		}
		if s.Node != nil {
			s.Inspect(func(n Node) bool {
				at := reflect.ValueOf(n).Elem().FieldByName("At").Addr().Interface().(*At)
				at.Pos.Offset += int(u.base)
				at.EndPos.Offset += int(u.base)
				return true
			})
		}
		return true
	})
}
