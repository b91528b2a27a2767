package lsp

import "ovillo/lang/format"

// format sets the document in its usual shape, as one edit of the lines between the first and the last that change.
func (q *query) format() (any, *failure) {
	old := q.text.body
	set, _ := format.Source([]byte(old))
	return q.text.edits(old, string(set)), nil
}

// edits is what makes a text another one.
func (t *text) edits(old, set string) []TextEdit {
	if old == set {
		return []TextEdit{}
	}
	before := 0
	for i := 0; i < len(old) && i < len(set) && old[i] == set[i]; i++ {
		if old[i] == '\n' {
			before = i + 1
		}
	}
	was, is := old[before:], set[before:]
	behind := 0
	for i := 1; i <= len(was) && i <= len(is) && was[len(was)-i] == is[len(is)-i]; i++ {
		if lineBegins(was, len(was)-i) && lineBegins(is, len(is)-i) {
			behind = i
		}
	}
	was, is = was[:len(was)-behind], is[:len(is)-behind]
	return []TextEdit{{Range{t.position(before), t.position(before + len(was))}, is}}
}

// lineBegins reports whether a line begins at a byte of a text that begins with a line.
func lineBegins(s string, at int) bool { return at == 0 || s[at-1] == '\n' }
