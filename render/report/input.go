package report

import (
	"slices"

	"ovillo/compile/plan"
	"ovillo/render/page"
	"ovillo/render/words"
)

// Input is all that a report is made from.
type Input struct {
	Lang     string          // of the report: en or es
	File     string          // what the source is called
	Text     string          // the source
	Used     []plan.UsedFile // the files it uses
	Source   Source          // how much there is in it
	Pattern  *plan.Pattern   // nil if there was nothing to check; it may have errors
	Findings []Finding       // every message of the checker, in the order of the source, worded in Lang
	Editions []Edition       // the pages, set in several ways; none for a source with errors
	Words    *words.Language // names things in the language of the report
}

// Finding is one thing that was found. Line 0: it is nowhere in particular.
type Finding struct {
	Code     string   `json:"code,omitempty"` // of the message; "" for what the report itself found
	Severity Severity `json:"severity"`
	File     string   `json:"file,omitempty"` // in which it is, if not in the source itself
	Line     int      `json:"line,omitempty"`
	Column   int      `json:"column,omitempty"`
	Message  string   `json:"message"`
	Mark     string   `json:"mark,omitempty"` // what stands under the marked place
	Help     string   `json:"help,omitempty"`
	Notes    []string `json:"notes,omitempty"`
	Sizes    []string `json:"sizes,omitempty"` // the sizes concerned; none: all
}

// Severity says what a finding does.
type Severity string

// The severities: an error stops the pages.
const (
	Error   Severity = "error"
	Warning Severity = "warning"
	Note    Severity = "note"
)

// Edition is the pages of a pattern in one layout.
type Edition struct {
	Langs []*words.Language
	Doc   *page.Document // nil if it could not be set
	Why   string         // why not
}

// Source says how much of what a check looks at stands in the source itself, and shows no more in the checked pattern.
type Source struct {
	Lines        int
	Terms        bool // it says in which terms its stitch names are
	Lists        int  // numbers for each size
	Only         int  // blocks for some sizes
	ByHand       int  // values of one size that are set by hand
	Stated       int  // stated counts
	Repeats      int
	Groups       int // lists of instructions in one place
	Schedules    int // of shaping
	Simultaneous int // schedules of shaping at two edges at once
	Mirrors      int
	Texts        int // texts written in more languages than one
}

// keeping is the input with languages that keep what they write of the pattern: the checks ask for each step many times.
func (in Input) keeping() Input {
	if in.Pattern == nil {
		return in
	}
	in.Words = in.Words.Keeping(in.Pattern)
	in.Editions = slices.Clone(in.Editions)
	for i := range in.Editions {
		e := &in.Editions[i]
		e.Langs = slices.Clone(e.Langs)
		for k, l := range e.Langs {
			e.Langs[k] = l.Keeping(in.Pattern)
		}
	}
	return in
}
