package lang

import (
	"reflect"

	"ovillo/lang/source"
)

// Names of the designer's own are never turned into another language. Other names stand for something that ovillo knows:
// stitches, measures of the body, fibres. Which is which shows in where a name stands.

// vocabularyOf gives, by the field of the tree that a name stands in, the vocabulary it may be from; a name of the
// designer's own goes before. All other names are the designer's.
var vocabularyOf = map[string]vocabulary{
	"Languages.Words":    languageCodes,
	"Terms.Word":         languageCodes,
	"Level.Word":         levels,
	"Kind.Word":          kinds,
	"Weight.Words":       weights,
	"Fit.Items":          measureNames,
	"Fibre.Items":        fibres,
	"Body.Tables":        bodyTables,
	"Measure.Name":       measureNames,
	"SampleMeasure.Name": measureNames,
	"Markets.Words":      markets,
	"Cord.Zone":          zones,
	"Cord.Role":          roles,
	"Cord.Ends":          endings,
	"Cord.Trim":          trims,
	"Elastic.Zone":       zones,
	"Fringe.Zone":        zones,
	"Surface.Word":       surfaces,
	"Notion.Kind":        things,
	"Notion.Material":    materials,
	"Button.Material":    materials,
	"LegendItem.Means":   meshNames,
	"SideEdge.Side":      sideNames,
	"GaugeLine.Stitch":   stitchNames,
	"Swatch.Stitch":      stitchNames,
	"Mesh.Stitch":        stitchNames,
	"Takes.Tall":         stitchNames,
	"Base.Stitch":        stitchNames,
	"Begin.Stitch":       stitchNames,
	"Begin.As":           stitchNames,
	"Foundation.Stitch":  stitchNames,
	"Lengthen.Stitch":    stitchNames,
	"RowOpt.As":          stitchNames,
	"Join.With":          stitchNames,
	"Work.Stitch":        stitchNames,
	"Claim.Name":         stitchNames,
}

// alwaysTheirs are the vocabularies that no name of the designer's own gets into: nothing else can stand there.
func (v vocabulary) alwaysTheirs() bool {
	switch v {
	case levels, kinds, weights, fibres, bodyTables, measureNames, functions, markets, zones, roles, endings, trims, surfaces, things, materials:
		return true
	}
	return false
}

// nameUse is a name, or the words of a path, with the vocabulary that each may be from.
type nameUse struct {
	at    source.Span // of the name, or of what the path stands in
	path  bool
	words []*string
	from  []vocabulary
}

// nameUses lists the names in a file, in the order of the source.
func (f *File) nameUses() []nameUse {
	w := nameWalker{}
	w.body(f.Body)
	return w.uses
}

type nameWalker struct {
	uses []nameUse
	sum  bool // in the check of a sum: names are measures
}

func (w *nameWalker) body(body []*Statement) {
	for _, s := range body {
		if s.Node != nil {
			_, w.sum = s.Node.(*CheckSum)
			w.node(s.Node, ownNames)
		}
		w.body(s.Body)
	}
}

// node walks through a node that stands in a field of a vocabulary.
func (w *nameWalker) node(n Node, from vocabulary) {
	switch n := n.(type) {
	case *Name:
		w.uses = append(w.uses, nameUse{n.Span(), false, []*string{&n.Text}, []vocabulary{from}})
		return
	case *Ref:
		w.path(n.Span(), n.Path, ownNames)
	case *Expr:
		head := ownNames
		switch {
		case n.Op == OpCall:
			head = functions
		case n.Op == OpName && w.sum:
			head = measureNames
		case n.Op == OpName && len(n.Path) == 1:
			head = stitchNames // whose gauge is meant: stitches(20 cm, dc)
		}
		w.path(n.Span(), n.Path, head)
	}
	v := reflect.ValueOf(n).Elem()
	for _, f := range partsOf(v.Type()) {
		field, inner := v.Field(f.index), vocabularyOf[v.Type().Name()+"."+v.Type().Field(f.index).Name]
		if _, item := n.(*FitItem); item && f.kind == partIfAny && v.Type().Field(f.index).Name == "Name" {
			inner = from // the items of two statements
		}
		switch f.kind {
		case onePart:
			w.node(field.Addr().Interface().(Node), inner)
		case partIfAny:
			if !field.IsNil() {
				w.node(field.Interface().(Node), inner)
			}
		case manyParts:
			for i := range field.Len() {
				w.node(field.Index(i).Interface().(Node), inner)
			}
		}
	}
}

// path notes the words of a path: what it begins with, then what is found inside.
func (w *nameWalker) path(at source.Span, path []string, head vocabulary) {
	if len(path) == 0 {
		return
	}
	u := nameUse{at: at, path: true}
	for i := range path {
		from := head
		switch {
		case i == 0 && len(path) > 1 && head == ownNames:
			from = fitNames
		case i == 1 && u.from[0] == fitNames && isFit(path[0]):
			from = measureNames
		case i > 0:
			from = memberNames
		}
		u.words, u.from = append(u.words, &path[i]), append(u.from, from)
	}
	w.uses = append(w.uses, u)
}

// isFit reports whether a path leads to a measure of the wearer, in any language.
func isFit(head string) bool {
	if head == "fit" {
		return true
	}
	for _, t := range standardWords() {
		if t.named[fitNames].english[plain(head)] != "" {
			return true
		}
	}
	return false
}

// ownNamesOf is the set of names that the designer gives to things.
func ownNamesOf(uses []nameUse) map[string]bool {
	own := map[string]bool{}
	for _, u := range uses {
		if !u.path && u.from[0] == ownNames {
			own[*u.words[0]] = true
		}
	}
	return own
}

// readNames brings the names of a source that is not in English, but for the designer's own, to the English ones, which the
// tree holds.
//
// own are the names that the designer gives to things, in this file and in those it is read with.
func (f *File) readNames(own map[string]bool) {
	if f.tongue == nil {
		return
	}
	f.own = own
	f.bringNames(f.nameUses(), own)
}

func (f *File) bringNames(uses []nameUse, own map[string]bool) {
	for _, u := range uses {
		for i, word := range u.words {
			*word = f.tongue.english(*word, u.from[i], own)
		}
	}
}

// english is the English word for a name from a vocabulary: the name itself if it is none of them.
func (t *tongue) english(word string, from vocabulary, own map[string]bool) string {
	switch {
	case from == ownNames || from == languageCodes || own[word] && !from.alwaysTheirs():
		return word
	case from == stitchNames:
		if w := t.named[stitchNames].english[plain(word)]; w != "" {
			return w
		}
		if w, n := t.stitches.stitch(func(n int) string { return map[int]string{0: word}[n] }); n == 1 {
			return w
		}
		return word
	}
	if w := t.named[from].english[plain(word)]; w != "" {
		return w
	}
	return word
}

// word is what a name of the tree is called in the language: the name itself if it has no word of its own there.
func (t *tongue) word(english string, from vocabulary, own map[string]bool) string {
	switch {
	case from == ownNames || from == languageCodes || own[english] && !from.alwaysTheirs():
		return english
	case from == stitchNames:
		if w := t.named[stitchNames].other[english]; w != "" {
			return w
		}
		if w, ok := t.stitches.write(english); ok {
			return w
		}
		return english
	}
	if w := t.named[from].other[english]; w != "" {
		return w
	}
	return english
}

// Says is what a token of the source is read as: the English word for one of the language, whatever the source is written
// in. Of a turn of phrase that English says in other words, each word says itself.
func (f *File) Says(t Token) string { return f.spelt.text(t, f.Source.Text) }

// Idiom is the line that says which language the source is written in; empty for one in English.
func (f *File) Idiom() source.Span { return f.idiom }

// WordEnd is where the word, or the turn of phrase, ends that begins with a token.
func (f *File) WordEnd(t Token) int32 {
	if f.spelt != nil && f.spelt.ends[t.Span.Start] > t.Span.End {
		return f.spelt.ends[t.Span.Start]
	}
	return t.Span.End
}

// Near returns which of some words of the language, or of the names that ovillo knows, may have been meant by a word of the
// source; the words and what is returned are English. See [Near].
func (f *File) Near(word string, known []string) []string { return f.spelt.near(word, known) }

// Names gives some names that ovillo knows as the source would write them: of what is made ("kind"), of fibres ("fibre").
func (f *File) Names(vocabularyOf string, english []string) []string {
	if f.tongue == nil {
		return english
	}
	var names []string
	for _, n := range english {
		names = append(names, f.tongue.word(n, vocabulary(vocabularyOf), nil))
	}
	return names
}

// CoderAt returns what gives the Coder of the file that holds a place; nil if there is but one file.
func (f *File) CoderAt() func(at source.Span) func(string) string {
	if len(f.used) == 0 {
		return nil
	}
	return func(at source.Span) func(string) string { return f.At(at).Coder() }
}

// Coder returns what puts English code into the words of the source, for messages; nil if the source is in English.
func (f *File) Coder() func(string) string {
	if f.tongue == nil {
		return nil
	}
	return f.tongue.code
}
