package lsp

import (
	"cmp"
	"slices"
	"strings"

	"ovillo/lang"
	"ovillo/lang/source"
)

// This file finds every name of a source and what it stands for.
//
// Values, yarns, stitches, groups, charts and parts share one scope, that of the source. Labels, markers, sections, rows and edges
// belong to a part: they stand alone in it, and behind the name of the part elsewhere. A part that is like another has the names of
// both; what a group or a stitch pattern sets belongs to each part that works it.

// nameKind says what a name stands for.
type nameKind uint8

const (
	aVariable nameKind = iota + 1
	aYarn
	aGroup
	aStitch
	aStitchPattern
	aChart
	aPart
	aLabel
	aMarker
	aRow
	anEdge
	aFit     // a measure of the wearer
	aMeasure // a measure of the piece
)

// The scopes that are neither the source nor a part.
const (
	ofSource  = ""
	ofWearer  = "fit."
	ofMeasure = "measure."
)

// key is a name in the scope that it holds in: the source, or the first of the parts that share it.
type key struct{ scope, name string }

// use is a place where a name stands.
type use struct {
	span   source.Span
	key    key
	kind   nameKind
	sets   bool        // the name is set here
	within source.Span // the statement
	part   string      // the part in which it stands; "" in none
}

// index is the names of a source.
type index struct {
	tree *lang.File
	uses []use // in the order of the source
	sets map[key][]int
	all  map[key][]int
	*finder
}

// at is the name at a place, or just before it; nil if none is there.
func (x *index) at(offset int) *use {
	i, _ := slices.BinarySearchFunc(x.uses, int32(offset), func(u use, at int32) int { return cmp.Compare(u.span.End, at) })
	if i < len(x.uses) && int(x.uses[i].span.Start) <= offset {
		return &x.uses[i]
	}
	return nil
}

// kindOf is what a name stands for, by where it is set.
func (x *index) kindOf(k key) nameKind {
	if at := x.sets[k]; len(at) > 0 {
		return x.uses[at[0]].kind
	}
	return 0
}

// look says where a name is looked for.
type look uint8

const (
	inSource    look = iota // in the source alone
	inPart                  // in its part alone
	inBoth                  // in its part, then in the source
	inSourceAnd             // in the source, then in its part
	inEdges                 // in its part, if it names an edge there: right edge of front is no label
	inPlural                // as inBoth, and in the singular if it is set so alone: 4 corners
)

// found is a name before it is known what it stands for.
type found struct {
	span  source.Span
	name  string
	scope string // the part, or what it stands behind
	look  look
	kind  nameKind // of a name that is set; 0: it is used
	in    *lang.Statement
	part  string
}

// finder walks over a source.
type finder struct {
	file   *source.File
	names  []found
	at     *lang.Statement
	scope  string // the part, group or stitch pattern that the statement belongs to
	motif  string // the part that the motifs at hand are of
	global map[string]nameKind
	local  map[key]nameKind    // by scope and name
	says   map[key]bool        // the scopes in which a name stands, set or not
	like   map[string][]string // parts that share their names
	works  map[string][]string // groups and stitch patterns that are worked in a part, both ways
	group  map[string]bool     // scopes that are no parts
	roots  map[key]key
}

func newIndex(tree *lang.File) *index {
	f := &finder{file: tree.Source, global: map[string]nameKind{}, local: map[key]nameKind{}, says: map[key]bool{}, like: map[string][]string{},
		works: map[string][]string{}, group: map[string]bool{}, roots: map[key]key{}}
	f.body(tree.Body, true)
	x := &index{tree: tree, sets: map[key][]int{}, all: map[key][]int{}, finder: f}
	edges := map[key]bool{}
	for _, n := range f.names {
		if k, ok := f.resolve(&n); ok && n.kind == anEdge {
			edges[k] = true
		}
	}
	for _, n := range f.names {
		if k, ok := f.resolve(&n); ok && (n.look != inEdges || edges[k]) {
			x.uses = append(x.uses, use{span: n.span, key: k, kind: n.kind, sets: n.kind != 0, within: n.in.Head, part: n.part})
		}
	}
	slices.SortFunc(x.uses, func(a, b use) int { return cmp.Compare(a.span.Start, b.span.Start) })
	for i, u := range x.uses {
		x.all[u.key] = append(x.all[u.key], i)
		if u.sets {
			x.sets[u.key] = append(x.sets[u.key], i)
		}
	}
	return x
}

func (f *finder) body(body []*lang.Statement, top bool) {
	for _, s := range body {
		outer := f.scope
		f.at = s
		if s.Node != nil {
			f.enter(s.Node, top)
			s.Inspect(f.node)
		}
		f.prose(s)
		f.body(s.Body, false)
		f.scope = outer
	}
}

// enter notes what a statement names, and the scope that its block has.
func (f *finder) enter(n lang.StatementNode, top bool) {
	switch n := n.(type) {
	case *lang.Let:
		f.set(n.Name, ofSource, aVariable)
	case *lang.Group:
		f.set(n.Name, ofSource, aGroup)
		f.into(n.Name, true)
	case *lang.Stitch:
		f.set(n.Name, ofSource, aStitch)
	case *lang.StitchPattern:
		f.set(n.Name, ofSource, aStitchPattern)
		f.into(n.Name, true)
	case *lang.Chart:
		f.set(n.Name, ofSource, aChart)
		if n.Of != nil {
			f.use(n.Of, inSource)
			f.scope = n.Of.Text
		}
	case *lang.Motifs:
		f.set(n.Name, ofSource, aPart)
		f.use(n.Of, inSource)
		f.into(n.Name, false)
		if n.Of != nil {
			f.motif = n.Of.Text
		}
	case *lang.Part:
		f.set(n.Name, ofSource, aPart)
		f.into(n.Name, false)
		for _, other := range []*lang.Name{n.Like, n.Mirror} {
			if other != nil {
				f.use(other, inSource)
				f.like[n.Name.Text] = append(f.like[n.Name.Text], other.Text)
				f.like[other.Text] = append(f.like[other.Text], n.Name.Text)
			}
		}
	case *lang.Yarn:
		if top {
			f.set(n.Name, ofSource, aYarn)
		} else {
			f.use(n.Name, inSource)
		}
		f.use(n.Like, inSource)
	case *lang.Fit:
		for _, i := range n.Items {
			f.set(i.Name, ofWearer, aFit)
		}
	case *lang.Measure:
		f.set(n.Name, ofMeasure, aMeasure)
	case *lang.SampleMeasure:
		f.add(n.Name, found{scope: ofMeasure, look: inPart})
	case *lang.MotifJoin:
		for _, l := range n.Labels {
			f.add(l, found{scope: f.motif, look: inPart})
		}
	}
}

// into goes into the block of a thing that has names of its own.
func (f *finder) into(n *lang.Name, group bool) {
	if n != nil {
		f.scope, f.group[n.Text] = n.Text, group
	}
}

// node notes the names that a part of a statement holds by itself.
func (f *finder) node(n lang.Node) bool {
	switch n := n.(type) {
	case *lang.As:
		f.set(n.Name, f.scope, aLabel)
	case *lang.Mark:
		if n.Verb == "mark" {
			f.set(n.Name, f.scope, aMarker)
		} else {
			f.use(n.Name, inPart)
		}
	case *lang.OffItem:
		f.set(n.Mark, f.scope, aMarker)
	case *lang.FromRun:
		f.set(n.Mark, f.scope, aMarker)
		for _, by := range n.By {
			f.use(by, inPart)
		}
	case *lang.RowHead:
		for _, l := range []*lang.Name{n.Label, n.FLabel, n.NLabel} {
			f.set(l, f.scope, aRow)
		}
		f.worked(n.Of)
	case *lang.Shape:
		f.set(n.Label, f.scope, aRow)
	case *lang.Edges:
		f.set(n.First, f.scope, anEdge)
		f.set(n.Last, f.scope, anEdge)
	case *lang.ShapeAt:
		f.use(n.Edge, inPart)
	case *lang.WorkRow:
		f.use(n.Label, inPart)
	case *lang.Call:
		f.use(n.Name, inBoth)
	case *lang.SideEdge:
		f.use(n.Part, inSource)
		if n.Part != nil {
			f.add(n.Side, found{scope: n.Part.Text, look: inEdges})
			f.add(n.Label, found{scope: n.Part.Text, look: inPart})
		}
	case *lang.Work:
		f.worked(n.Stitch)
		f.use(n.With, inSource)
	case *lang.Claim:
		f.use(n.Name, inPlural)
	case *lang.Schematic:
		for _, p := range n.Parts {
			f.use(p, inSource)
		}
	case *lang.Ref:
		f.path(n.Span(), n.Path, inBoth)
	case *lang.Expr:
		f.expr(n)
	default:
		for _, name := range sourceNames(n) {
			f.use(name, inSource)
		}
	}
	return true
}

// sourceNames are the names in a node that can only be names of the source.
func sourceNames(n lang.Node) []*lang.Name {
	switch n := n.(type) {
	case *lang.Stripe:
		return []*lang.Name{n.Yarn}
	case *lang.YarnWeight:
		return []*lang.Name{n.Yarn}
	case *lang.LegendItem:
		return []*lang.Name{n.Means}
	case *lang.RowOpt:
		return []*lang.Name{n.Yarn, n.As}
	case *lang.ChangeYarn:
		return []*lang.Name{n.Yarn}
	case *lang.Together:
		return []*lang.Name{n.With}
	case *lang.Bracket:
		return []*lang.Name{n.With}
	case *lang.Cord:
		return []*lang.Name{n.Yarn}
	case *lang.Fringe:
		return []*lang.Name{n.Yarn}
	case *lang.Pompom:
		return []*lang.Name{n.Yarn}
	case *lang.FromChart:
		return []*lang.Name{n.Chart}
	case *lang.ChartRow:
		return []*lang.Name{n.Chart}
	case *lang.GaugeLine:
		return []*lang.Name{n.Stitch}
	case *lang.Swatch:
		return []*lang.Name{n.Stitch}
	case *lang.Base:
		return []*lang.Name{n.Stitch}
	case *lang.Begin:
		return []*lang.Name{n.Stitch, n.As}
	case *lang.Foundation:
		return []*lang.Name{n.Stitch}
	case *lang.Lengthen:
		return []*lang.Name{n.Stitch}
	case *lang.Join:
		return []*lang.Name{n.With}
	case *lang.Mesh:
		return []*lang.Name{n.Stitch}
	case *lang.Takes:
		return []*lang.Name{n.Tall}
	}
	return nil
}

func (f *finder) add(n *lang.Name, as found) {
	if n == nil {
		return
	}
	as.span, as.name, as.in, as.part = n.Span(), n.Text, f.at, f.scope
	f.names = append(f.names, as)
	if as.look != inSource {
		f.says[key{as.scope, as.name}] = true
	}
}

func (f *finder) set(n *lang.Name, scope string, kind nameKind) {
	if n == nil {
		return
	}
	if scope == ofSource {
		if f.global[n.Text] == 0 {
			f.global[n.Text] = kind
		}
		f.add(n, found{look: inSource, kind: kind})
		return
	}
	if k := (key{scope, n.Text}); f.local[k] == 0 {
		f.local[k] = kind
	}
	f.add(n, found{scope: scope, look: inPart, kind: kind})
}

func (f *finder) use(n *lang.Name, in look) { f.add(n, found{scope: f.scope, look: in}) }

// worked is the use of a stitch, which may be a group or a stitch pattern with names of its own.
func (f *finder) worked(n *lang.Name) {
	if n == nil {
		return
	}
	f.use(n, inSource)
	if f.scope != "" && n.Text != f.scope {
		f.works[f.scope] = append(f.works[f.scope], n.Text)
		f.works[n.Text] = append(f.works[n.Text], f.scope)
	}
}

// expr notes the names in one node of an expression.
func (f *finder) expr(e *lang.Expr) {
	switch e.Op {
	case lang.OpName:
		in := inSourceAnd
		if len(e.Path) > 1 {
			in = inBoth
		}
		if _, sum := f.at.Node.(*lang.CheckSum); sum && len(e.Path) == 1 {
			f.pathIn(e.Span(), e.Path, ofMeasure, inPart)
			return
		}
		f.path(e.Span(), e.Path, in)
	case lang.OpMeasure:
		if len(e.Path) == 0 {
			return
		}
		span := e.Span()
		if words := f.words(span); len(words) > 1 { // the first says what is measured
			span.Start = words[1].Span.Start
			if e.R != nil {
				span.End = e.R.Span().Start
			}
			f.path(f.cut(span, e.Path), e.Path, inBoth)
		}
	}
}

// cut narrows a span to the path that stands in it.
func (f *finder) cut(span source.Span, path []string) source.Span {
	words := f.words(span)
	for i := range words {
		if last := i + 2*len(path) - 2; last < len(words) && f.file.Slice(words[i].Span) == path[0] {
			return words[i].Span.To(words[last].Span)
		}
	}
	return source.Span{}
}

// words are the tokens of a span that say something.
func (f *finder) words(span source.Span) []lang.Token {
	var out []lang.Token
	for _, t := range lang.Tokens(f.file.Slice(span)) {
		if t.Kind == lang.Word || t.Kind == lang.Number || t.Kind == lang.Sign || t.Kind == lang.Stray {
			t.Span.Start, t.Span.End = t.Span.Start+span.Start, t.Span.End+span.Start
			out = append(out, t)
		}
	}
	return out
}

func (f *finder) path(span source.Span, path []string, in look) { f.pathIn(span, path, f.scope, in) }

// pathIn notes the words of a path: `body.right` is the name of a part and one of its own.
func (f *finder) pathIn(span source.Span, path []string, scope string, in look) {
	words := f.words(span)
	if len(path) == 0 || len(words) < 2*len(path)-1 {
		return
	}
	words = words[len(words)-2*len(path)+1:] // an article may stand before it
	name := func(i int) *lang.Name {
		n := &lang.Name{Text: path[i]}
		n.Pos.Offset, n.EndPos.Offset = int(words[2*i].Span.Start), int(words[2*i].Span.End)
		return n
	}
	if len(path) > 1 && (path[0]+"." == ofWearer || path[0]+"." == ofMeasure) {
		f.add(name(1), found{scope: path[0] + ".", look: inPart})
		return
	}
	f.add(name(0), found{scope: scope, look: in})
	if len(path) > 1 {
		f.add(name(1), found{scope: path[0], look: inPart})
	}
}

// prose notes the values that texts put in.
func (f *finder) prose(s *lang.Statement) {
	for _, l := range s.Lines {
		if f.file.Slice(l.Span) != l.Text {
			continue
		}
		for _, h := range holes(l.Text) {
			from := l.Span.Start + int32(h.from)
			f.pathIn(source.Span{Start: from, End: l.Span.Start + int32(h.to)}, strings.Split(h.name, "."), f.scope, inSourceAnd)
		}
	}
}

// resolve finds what a name stands for.
func (f *finder) resolve(n *found) (key, bool) {
	source, inSourceToo := key{ofSource, n.name}, f.global[n.name] != 0
	switch n.look {
	case inSource:
		return source, inSourceToo
	case inSourceAnd:
		if inSourceToo && f.global[n.name] != aPart {
			return source, true
		}
	}
	if k, ok := f.own(n.scope, n.name); ok {
		return k, true
	}
	if one, ok := strings.CutSuffix(n.name, "s"); ok && n.look == inPlural && !inSourceToo {
		if k, ok := f.own(n.scope, one); ok {
			n.span.End--
			return k, true
		}
	}
	return source, inSourceToo && n.look != inPart && n.look != inEdges
}

// own finds a name among those of a part and of all that shares it.
func (f *finder) own(scope, name string) (key, bool) {
	asked := key{scope, name}
	if k, ok := f.roots[asked]; ok {
		return k, k.name != ""
	}
	seen, queue := map[string]bool{scope: true}, []string{scope}
	root, set := "", false
	for len(queue) > 0 {
		s := queue[0]
		queue = queue[1:]
		if f.local[key{s, name}] != 0 {
			if set = true; root == "" || s < root {
				root = s
			}
		}
		next := slices.Clone(f.like[s])
		for _, w := range f.works[s] {
			if f.group[w] && f.mentions(w, name, map[string]bool{}) || f.group[s] && !f.group[w] {
				next = append(next, w)
			}
		}
		for _, w := range next {
			if !seen[w] {
				seen[w] = true
				queue = append(queue, w)
			}
		}
	}
	var k key
	if set {
		k = key{root, name}
	}
	f.roots[asked] = k
	return k, set
}

// mentions reports whether a name stands in a group, or in one that is worked in it.
func (f *finder) mentions(group, name string, seen map[string]bool) bool {
	if seen[group] {
		return false
	}
	seen[group] = true
	return f.says[key{group, name}] || slices.ContainsFunc(f.works[group], func(w string) bool { return f.group[w] && f.mentions(w, name, seen) })
}
