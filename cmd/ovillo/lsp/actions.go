package lsp

// actions offers the changes that are certain to be what was meant, for what was found in a range.
func (q *query) actions() (any, *failure) {
	out := []CodeAction{}
	select {
	case <-q.done:
	case <-q.ctx.Done():
	}
	asked := q.text.span(q.params.Range)
	for i := range q.worded {
		w := &q.worded[i]
		if w.Edit == nil || w.In != q.checked.File || w.Span.Start > asked.End || w.Span.End < asked.Start || !q.wants("quickfix") {
			continue
		}
		title := q.say(msgPut, "new", w.Edit.Text)
		if old := q.file.Slice(w.Edit.Span); old != "" {
			title = q.say(msgReplace, "old", old, "new", w.Edit.Text)
		}
		if w.Edit.Text == " " {
			title = q.say(msgBlank)
		}
		out = append(out, CodeAction{Title: oneLine(title), Kind: "quickfix", IsPreferred: true, Diagnostics: []Diagnostic{q.diagnostic(w)},
			Edit: &WorkspaceEdit{map[string][]TextEdit{q.doc.uri: {{q.text.rangeOf(w.Edit.Span), w.Edit.Text}}}}})
	}
	return out, nil
}

// wants reports whether a client asks for a kind of action; one that names none asks for all.
func (q *query) wants(kind string) bool {
	only := q.params.Context.Only
	for _, k := range only {
		if k == kind || k == "" {
			return true
		}
	}
	return len(only) == 0
}
