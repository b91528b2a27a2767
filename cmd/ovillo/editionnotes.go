package main

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/save"
	"ovillo/compile/compare"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/errata"
)

// This file puts what changed into the source of the new edition, as its notes on the edition.

// editionNotes prints the notes, or writes them into the source.
func (c *call) editionNotes(s *loaded, r *compare.Result, sheets []*errata.Sheet, o changesOptions) int {
	if r.Same() {
		c.say(msgNoNotes.with("path", s.file.Name))
		return clean
	}
	tree, _ := lang.Parse(s.file)
	block := notesBlock(tree, sheets)
	if !c.has("-w") {
		return c.handOver([]byte(block), o)
	}
	if !r.New.Changes.Empty() {
		c.say(msgHasNotes.with("path", s.file.Name, "line", fmt.Sprint(lineOfNotes(tree))))
		return failed
	}
	text, line := withNotes(tree, block)
	if !c.keepsMeaning(s, text, r) {
		c.say(msgNotesUnsound.with("path", s.file.Name))
		return failed
	}
	if err := save.Source(s.path, []byte(s.file.Text), []byte(text)); err != nil {
		c.say(msgCannotWrite.with("path", s.path, "why", reason(err, s.path).in(c.lang)))
		return failed
	}
	fmt.Fprintln(c.out, msgNotesPut.with("path", s.path, "line", fmt.Sprint(line)).in(c.lang))
	return clean
}

// notesBlock is the block of a source that holds the notes, in the words that the source is written in.
func notesBlock(tree *lang.File, sheets []*errata.Sheet) string {
	say := func(word string) string {
		if code := tree.Coder(); code != nil {
			return code(word)
		}
		return word
	}
	var b strings.Builder
	b.WriteString("  " + say("changes") + "\n")
	for _, s := range sheets {
		for i, line := range s.Notes() {
			head := strings.Repeat(" ", len(s.Lang.Code()))
			if i == 0 {
				head = s.Lang.Code()
			}
			b.WriteString("    " + head + " | " + line + "\n")
		}
	}
	b.WriteString("  " + say("end") + "\n")
	return b.String()
}

// header is the statement that heads the pattern; nil if the source has none of its own.
func header(tree *lang.File) *lang.Statement {
	for _, s := range tree.Body {
		if _, ok := s.Node.(*lang.Pattern); ok && !tree.Shared(s.Whole) {
			return s
		}
	}
	return nil
}

// lineOfNotes is where the notes stand that a source has.
func lineOfNotes(tree *lang.File) int {
	if h := header(tree); h != nil {
		for _, s := range h.Body {
			if p, ok := s.Node.(*lang.Prose); ok && p.Word == "changes" {
				return tree.Source.Line(s.Head.Start)
			}
		}
	}
	return 1
}

// withNotes is the source with a block of notes at the end of its header, and the line on which it stands.
func withNotes(tree *lang.File, block string) (text string, line int) {
	text = tree.Source.Text
	h := header(tree)
	if h == nil {
		return text, 0
	}
	line = tree.Source.Line(h.Whole.End - 1)
	at := int(tree.Source.LineStart(line))
	if strings.Contains(text, "\r\n") {
		block = strings.ReplaceAll(block, "\n", "\r\n")
	}
	return text[:at] + block + text[at:], line
}

// keepsMeaning reports whether the source checks with its notes, and means what it meant.
func (c *call) keepsMeaning(s *loaded, text string, r *compare.Result) bool {
	again := desk.Check(desk.Source{File: source.NewFile(s.file.Name, text), Open: s.open})
	return again.Printable() && !again.Pattern.Changes.Empty() && compare.Patterns(r.New, again.Pattern).Same() &&
		slices.Equal(r.New.Languages, again.Pattern.Languages)
}
