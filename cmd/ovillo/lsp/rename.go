package lsp

import (
	"slices"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// renamable is the name at the place that is asked about, if it may be changed.
func (q *query) renamable() (*index, *use, *failure) {
	x, at := q.named()
	switch {
	case at == nil:
		return x, nil, q.refuse(msgNoName)
	case at.key.scope == ofWearer || at.key.scope == ofMeasure:
		return x, nil, q.refuse(msgFixedName, "name", q.file.Slice(at.span))
	case len(x.sets[at.key]) == 0:
		return x, nil, q.refuse(msgNotSet, "name", q.file.Slice(at.span))
	}
	for _, i := range x.all[at.key] {
		if s := x.uses[i].span; !q.mine(s) {
			in, _ := x.tree.Source.Within(s)
			return x, nil, q.refuse(msgShared, "name", q.file.Slice(at.span), "file", in.Name)
		}
	}
	return x, at, nil
}

func (q *query) refuse(w said, pairs ...string) *failure {
	return &failure{requestFailed, q.say(w, pairs...)}
}

// prepareRename says which name would be changed.
func (q *query) prepareRename() (any, *failure) {
	_, at, wrong := q.renamable()
	if wrong != nil {
		return nil, wrong
	}
	return map[string]any{"range": q.text.rangeOf(at.span), "placeholder": q.file.Slice(at.span)}, nil
}

// rename changes a name wherever it stands for the same thing. The source must say the same with the new one.
func (q *query) rename() (any, *failure) {
	x, at, wrong := q.renamable()
	if wrong != nil {
		return nil, wrong
	}
	name := strings.TrimSpace(q.params.NewName)
	if wrong := q.fits(x, at, name); wrong != nil {
		return nil, wrong
	}
	edits := []TextEdit{}
	for _, i := range x.all[at.key] {
		edits = append(edits, TextEdit{q.text.rangeOf(x.uses[i].span), name})
	}
	if !q.saysTheSame(x, at, name) {
		return nil, q.refuse(msgUnlikeAfter, "name", name)
	}
	return WorkspaceEdit{map[string][]TextEdit{q.doc.uri: edits}}, nil
}

// fits reports why a new name cannot be that of a thing.
func (q *query) fits(x *index, at *use, name string) *failure {
	tokens := lang.Tokens(name)
	if len(tokens) != 1 || tokens[0].Kind != lang.Word {
		return q.refuse(msgNoNameForm, "name", name)
	}
	if lang.Reserved(name) || q.reworded(x.tree, name) {
		return q.refuse(msgWordOfOurs, "name", name)
	}
	if _, ok := compile.StitchNamed(name, ukTerms(x.tree)); ok || slices.Contains([]string{"inc", "dec"}, name) {
		return q.refuse(msgStitchWord, "name", name)
	}
	for i := range x.uses {
		// A name of the source is hidden by one of a part, and the other way round; two parts may have the same names.
		u := &x.uses[i]
		clash := u.key.scope == ofSource || at.key.scope == ofSource || u.key.scope == at.key.scope
		if u.key.name == name && u.key != at.key && clash && u.key.scope != ofWearer && u.key.scope != ofMeasure {
			in, at := x.tree.Source.Within(u.span)
			return q.refuse(msgTakenName, "name", name, "line", itoa(in.Line(at.Start)))
		}
	}
	return nil
}

// reworded reports whether a word means something in the language that the source is written in.
func (q *query) reworded(tree *lang.File, name string) bool {
	if tree.Coder() == nil {
		return false
	}
	idiom := q.file.Slice(tree.Idiom())
	set, _ := lang.Parse(source.NewFile("", idiom+"\n"+tree.Coder()("let")+" "+name+" = 1\n"))
	for _, s := range set.Body {
		if let, ok := s.Node.(*lang.Let); ok && let.Name.Text == name {
			return false
		}
	}
	return true
}

// saysTheSame reports whether what is found in the source is the same under a new name.
func (q *query) saysTheSame(x *index, at *use, name string) bool {
	body := q.text.body
	for _, i := range slices.Backward(x.all[at.key]) {
		s := x.uses[i].span
		body = body[:s.Start] + name + body[s.End:]
	}
	check := func(body string) desk.Checked {
		return desk.Check(desk.Source{File: source.NewFile(q.file.Name, body), Open: q.doc.opener()})
	}
	was, is := check(q.text.body), check(body)
	return len(newIndex(is.Tree).uses) == len(x.uses) && slices.Equal(codes(was.Found), codes(is.Found))
}

// codes are those of what was found, in order.
func codes(found diag.List) []diag.Code {
	var out []diag.Code
	for _, d := range found {
		out = append(out, d.Code)
	}
	return out
}

// ukTerms reports whether a source reads the names of stitches as in the United Kingdom.
func ukTerms(tree *lang.File) bool {
	uk := false
	lang.Walk(tree, func(n lang.Node) bool {
		if t, ok := n.(*lang.Terms); ok && t.Word != nil {
			uk = t.Word.Text == "uk"
		}
		return !uk
	})
	return uk
}
