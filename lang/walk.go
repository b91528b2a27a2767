package lang

import (
	"reflect"
	"sync"
)

// Walk calls fn for every node of a file, in the order of the source: the node of each statement, its parts, and then the
// statements of its block. If fn returns false, what is inside the node is left out, its block as well.
func Walk(f *File, fn func(Node) bool) { walkBody(f.Body, fn) }

// WalkStatements calls fn for every statement of a body and of the blocks in it, in the order of the source, those that
// could not be read as well. If fn returns false, the statements of its block are left out.
func WalkStatements(body []*Statement, fn func(*Statement) bool) {
	for _, s := range body {
		if fn(s) {
			WalkStatements(s.Body, fn)
		}
	}
}

func walkBody(body []*Statement, fn func(Node) bool) {
	for _, s := range body {
		if s.Node == nil || s.Inspect(fn) {
			walkBody(s.Body, fn)
		}
	}
}

// visit is a node, and how many nodes there are in it, itself among them.
type visit struct {
	node Node
	size int
}

// Inspect calls fn for the node of the statement as [Inspect] does.
func (s *Statement) Inspect(fn func(Node) bool) bool {
	if len(s.visits) == 0 || s.visits[0].node != Node(s.Node) {
		return Inspect(s.Node, fn)
	}
	first := true
	for i := 0; i < len(s.visits); {
		if v := s.visits[i]; fn(v.node) {
			i++
		} else {
			first = first && i > 0
			i += v.size
		}
	}
	return first
}

// list lists the nodes of the statement: a tree is walked many times, and to find the parts of a node takes longer than to read a list.
func (s *Statement) list() { s.visits = visits(make([]visit, 0, 8), s.Node) }

func visits(list []visit, n Node) []visit {
	at := len(list)
	list = append(list, visit{node: n})
	eachPart(n, func(part Node) { list = visits(list, part) })
	list[at].size = len(list) - at
	return list
}

// Inspect calls fn for a node and for every part of it, in the order of the source, and returns what fn returned for the
// node itself. If fn returns false, what is inside the node it was called for is left out.
func Inspect(n Node, fn func(Node) bool) bool {
	if !fn(n) {
		return false
	}
	eachPart(n, func(part Node) { Inspect(part, fn) })
	return true
}

// eachPart calls fn for the nodes that a node holds, not for those in them.
func eachPart(n Node, fn func(Node)) {
	v := reflect.ValueOf(n).Elem()
	for _, f := range partsOf(v.Type()) {
		field := v.Field(f.index)
		switch f.kind {
		case onePart:
			fn(field.Addr().Interface().(Node))
		case partIfAny:
			if !field.IsNil() {
				fn(field.Interface().(Node))
			}
		case manyParts:
			for i := range field.Len() {
				fn(field.Index(i).Interface().(Node))
			}
		}
	}
}

// partField is a field of a node that holds other nodes.
type partField struct {
	index int
	kind  partKind
}

type partKind uint8

const (
	onePart   partKind = iota // Str
	partIfAny                 // *Name
	manyParts                 // []*Bi, []Item
)

var nodeType = reflect.TypeFor[Node]()

var partFields sync.Map // reflect.Type to []partField

// partsOf gives the fields of a struct of the tree that hold nodes. The tree itself is the table of what a node is made
// of, so that no node can be forgotten here.
func partsOf(t reflect.Type) []partField {
	if known, ok := partFields.Load(t); ok {
		return known.([]partField)
	}
	var fields []partField
	for i := range t.NumField() {
		switch f := t.Field(i); {
		case f.Anonymous:
		case f.Type.Kind() == reflect.Struct && reflect.PointerTo(f.Type).Implements(nodeType):
			fields = append(fields, partField{i, onePart})
		case f.Type.Kind() == reflect.Slice && f.Type.Elem().Implements(nodeType):
			fields = append(fields, partField{i, manyParts})
		case f.Type.Implements(nodeType):
			fields = append(fields, partField{i, partIfAny})
		}
	}
	partFields.Store(t, fields)
	return fields
}
