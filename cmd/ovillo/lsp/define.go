package lsp

import "slices"

// named is the name at the place that is asked about; nil if none is there.
func (q *query) named() (*index, *use) {
	x := q.index()
	return x, x.at(q.text.offset(q.params.Position))
}

// definition is where a name was set. A label may be set in several places: in a part and in one that is like it.
func (q *query) definition() (any, *failure) {
	x, at := q.named()
	if at == nil {
		return nil, nil
	}
	places := []Location{}
	for _, i := range x.sets[at.key] {
		places = append(places, Location{q.doc.uri, q.text.rangeOf(x.uses[i].span)})
	}
	// The place that was asked about says nothing new where there are others: two parts set one name.
	if here := q.text.rangeOf(at.span); len(places) > 1 {
		places = slices.DeleteFunc(places, func(l Location) bool { return l.Range == here })
	}
	return places, nil
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
			places = append(places, Location{q.doc.uri, q.text.rangeOf(x.uses[i].span)})
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
		kind := read
		if x.uses[i].sets {
			kind = write
		}
		marks = append(marks, mark{q.text.rangeOf(x.uses[i].span), kind})
	}
	return marks, nil
}
