package lsp

import (
	"slices"

	"ovillo/lang"
)

// named is the name at the place that is asked about; nil if none is there.
func (q *query) named() (*index, *use) {
	x := q.index()
	return x, x.at(q.text.offset(q.params.Position))
}

// definition is where a name was set. A label may be set in several places: in a part and in one that is like it.
func (q *query) definition() (any, *failure) {
	x, at := q.named()
	if at == nil {
		return q.usedFile(), nil
	}
	places := []Location{}
	for _, i := range x.sets[at.key] {
		places = append(places, q.place(x.uses[i].span))
	}
	// The place that was asked about says nothing new where there are others: two parts set one name.
	if here := q.place(at.span); len(places) > 1 {
		places = slices.DeleteFunc(places, func(l Location) bool { return l == here })
	}
	return places, nil
}

// usedFile is the file that the statement at the place takes in; nil if it takes none.
func (q *query) usedFile() any {
	var out any
	at := int32(q.text.offset(q.params.Position))
	lang.WalkStatements(q.parse().tree.Body, func(s *lang.Statement) bool {
		if u, ok := s.Node.(*lang.Use); ok && s.Head.Start <= at && at <= s.Head.End {
			out = []Location{{URI: q.doc.uriBeside(u.File.Text)}}
		}
		return true
	})
	return out
}

// references are all places where a name stands.
func (q *query) references() (any, *failure) {
	x, at := q.named()
	if at == nil {
		return nil, nil
	}
	places := []Location{}
	for _, i := range x.all[at.key] {
		if q.params.Context.IncludeDeclaration || !x.uses[i].sets {
			places = append(places, q.place(x.uses[i].span))
		}
	}
	return places, nil
}

// highlight is references within a document: written where a name is set, read where it is used.
func (q *query) highlight() (any, *failure) {
	x, at := q.named()
	if at == nil {
		return nil, nil
	}
	type mark struct {
		Range Range `json:"range"`
		Kind  int   `json:"kind"`
	}
	const read, write = 2, 3
	marks := []mark{}
	for _, i := range x.all[at.key] {
		if !q.mine(x.uses[i].span) {
			continue
		}
		kind := read
		if x.uses[i].sets {
			kind = write
		}
		marks = append(marks, mark{q.text.rangeOf(x.uses[i].span), kind})
	}
	return marks, nil
}
