package report

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
)

// Status is what became of a check.
type Status string

// The statuses. Their names are promised to other programs.
const (
	Held       Status = "held"        // looked at, nothing found
	Found      Status = "found"       // something was found
	InPart     Status = "in-part"     // nothing found in what is known; an error hides the rest
	Nothing    Status = "nothing"     // the pattern has nothing of the kind
	NotChecked Status = "not-checked" // could not be looked at, see Why
	ForPerson  Status = "person"      // only a person can tell
)

// Statuses lists them in the order of the summary.
var Statuses = []Status{Held, Found, InPart, Nothing, NotChecked, ForPerson}

// Result is a check with what became of it.
type Result struct {
	*Check
	Status   Status
	Looked   []string  // what was looked at: "214 rows", "4 sizes"
	N        int       // how many things those are
	Why      string    // NotChecked, Nothing and InPart: why
	Findings []Finding // Found
	Notes    []string  // facts worth knowing
	Ask      string    // the question put to a person; "" if there is none
}

// Report is a whole report in one language.
type Report struct {
	Lang    string
	File    string
	Title   string
	By      string
	Edition string
	Sizes   []string // names of the sizes
	Lines   int
	Source  string // mark of the source text: changes with every letter
	Numbers string // mark of all counts and measures: changes with every number; "" if they are not all known
	Results []*Result
	Unknown []string // what errors hide
	Tables  []Table  // measures, rounding, ease, yarn: one column a size
	Counts  []Table  // every row of every part in every size
	Laid    []string // the layouts that were looked at

	pattern *plan.Pattern
	texts   texts
}

// Make carries out the checks.
func Make(in Input) *Report {
	in = in.keeping()
	s := newSubject(in)
	r := &Report{Lang: in.Lang, File: in.File, Lines: in.Source.Lines, Source: mark(in.texts().all()), pattern: in.Pattern, texts: in.texts()}
	for _, c := range Checks {
		r.Results = append(r.Results, s.result(c))
	}
	if p := in.Pattern; p != nil {
		r.Title, r.By, r.Edition = in.Words.Title(p), p.By, in.Words.Edition(p)
		for _, z := range p.Sizes {
			r.Sizes = append(r.Sizes, in.Words.SizeName(z))
		}
		r.Unknown = s.unknown()
		r.Tables = s.tables()
		r.Counts = s.countTables()
		if !s.errors {
			r.Numbers = numbersMark(p)
		}
	}
	for _, e := range in.Editions {
		if e.Doc != nil {
			r.Laid = append(r.Laid, e.name()+": "+amount{len(e.Doc.Pages), nPages}.in(s))
		}
	}
	return r
}

// Of counts the results of a group that have a status.
func (r *Report) Of(g Group, st Status) int {
	n := 0
	for _, x := range r.Results {
		if x.Group == g && x.Status == st {
			n++
		}
	}
	return n
}

// Severe counts the findings of a severity.
func (r *Report) Severe(of Severity) int {
	n := 0
	for _, x := range r.Results {
		for _, f := range x.Findings {
			if f.Severity == of {
				n++
			}
		}
	}
	return n
}

// subject is what the checks look at.
type subject struct {
	in     *Input
	p      *plan.Pattern
	z      int  // sizes
	errors bool // the source has errors
	read   bool // the source could be read to its end
	found  map[*Check][]Finding
	rows   []workedRow
}

func newSubject(in Input) *subject {
	s := &subject{in: &in, p: in.Pattern, read: true, found: map[*Check][]Finding{}}
	for _, f := range in.Findings {
		c := CheckOf(f.Code)
		if c == nil {
			c = Checks[0] // a fault of ours is of the kind that a source cannot be worked out
		}
		s.found[c] = append(s.found[c], f)
		s.errors = s.errors || f.Severity == Error
		s.read = s.read && !(f.Severity == Error && strings.HasPrefix(f.Code, writing))
	}
	if s.p != nil {
		s.z = len(s.p.Sizes)
		s.rows = rowsOf(s.p)
	}
	return s
}

// finds reports whether the checker has a finding of a check, so that the report need not say it again.
func (s *subject) finds(id string) bool {
	for c := range s.found {
		if c.ID == id {
			return true
		}
	}
	return false
}

// look is what a function that looks at something for a check has to say.
type look struct {
	at       []amount  // what there was to look at; the check has nothing to look at if the first is 0
	why      text      // why there is nothing, or why it was not looked at
	skipped  bool      // it was not looked at
	findings []Finding // what only the report finds
	notes    []string
	fabric   bool // it rests on rows, which an error may hide
	answered bool // the source answers the question that would be put to a person
	person   bool // the program only knows that there is something to decide
}

// result carries out one check.
func (s *subject) result(c *Check) *Result {
	r := &Result{Check: c, Findings: s.found[c], Ask: c.ask.in(s.in.Lang)}
	fn := looks[c.ID]
	var l look
	switch {
	case fn == nil:
		r.Status = ForPerson
	case s.p == nil && c.How == Person:
		r.Status = ForPerson
	case s.p == nil && c.ID != "S01":
		r.Status, r.Why = NotChecked, s.whyNoPattern()
	default:
		l = fn(s)
		r.Findings = append(slices.Clone(r.Findings), l.findings...)
		r.Notes = l.notes
		if l.answered {
			r.Ask = ""
		}
		if len(l.at) > 0 && l.at[0].n > 0 {
			for _, a := range l.at {
				if a.n > 0 {
					r.Looked, r.N = append(r.Looked, a.in(s)), r.N+a.n
				}
			}
		}
		s.judge(r, l)
	}
	switch {
	case len(r.Findings) > 0:
		r.Status, r.Why = Found, ""
	case r.Status == Nothing:
		r.Ask = ""
	}
	return r
}

// judge gives a check its status, as if nothing had been found.
func (s *subject) judge(r *Result, l look) {
	nothing := len(l.at) == 0 || l.at[0].n == 0
	switch {
	case r.How == Person:
		r.Status, r.Why = ForPerson, ""
		if nothing {
			r.Why = l.why.in(s.in.Lang)
		}
	case l.skipped:
		r.Status, r.Why = NotChecked, l.why.in(s.in.Lang)
	case nothing && s.errors && l.fabric:
		r.Status, r.Why = NotChecked, whyHidden.in(s.in.Lang)
	case nothing:
		r.Status, r.Why = Nothing, l.why.in(s.in.Lang)
	case l.person:
		r.Status = ForPerson
	case l.fabric && s.silent():
		r.Status, r.Why = InPart, whyInPart.in(s.in.Lang)
	default:
		r.Status = Held
	}
}

func (s *subject) whyNoPattern() string {
	if !s.read {
		return whyUnread.in(s.in.Lang)
	}
	return whyNoParts.in(s.in.Lang)
}

// silent reports whether an error hides rows of some part in some size.
func (s *subject) silent() bool {
	return slices.ContainsFunc(s.p.Parts, func(p *plan.Part) bool { return p.Silent != nil })
}

// unknown says, part by part, behind which row nothing is known.
func (s *subject) unknown() []string {
	var out []string
	for i, part := range s.p.Parts {
		if part.Silent == nil {
			continue
		}
		last := map[int][]string{}
		var order []int
		for z, on := range part.Silent {
			if !on {
				continue
			}
			n := 0
			if k := len(part.Worked[z]); k > 0 {
				n = part.Worked[z][k-1].Number
			}
			if last[n] == nil {
				order = append(order, n)
			}
			last[n] = append(last[n], s.in.Words.SizeName(s.p.Sizes[z]))
		}
		for _, n := range order {
			t := unknownBehind
			if n == 0 {
				t = unknownWhole
			}
			out = append(out, t.with(s.in.Lang, "part", s.in.Words.PartTitle(s.p, i), "row", rowWord(part).in(s.in.Lang), "n", s.number(n), "sizes", strings.Join(last[n], ", ")))
		}
	}
	return out
}

// rowWord is what a part calls its rows.
func rowWord(part *plan.Part) text {
	if part.Style == plan.Rows {
		return nRows.one
	}
	return nRounds.one
}

func (s *subject) number(n int) string { return s.in.Words.Number(float64(n), 0) }

// name is what a layout is called: "en + es", "en-GB + es-MX". The usual reading of a language goes without its country.
func (e Edition) name() string {
	var tags []string
	for _, l := range e.Langs {
		tag := l.Tag()
		if slices.Contains(l.Also(), l.Code()) {
			tag = l.Code()
		}
		tags = append(tags, tag)
	}
	return strings.Join(tags, " + ")
}

// Why a check was not made, or not wholly.
var (
	whyHidden  = text{"the errors may hide what there is to look at", "los errores pueden ocultar lo que hay que mirar"}
	whyInPart  = text{"behind a row that does not come out nothing is known", "tras una hilera que no cuadra no se sabe nada"}
	whyUnread  = text{"the source could not be read", "el archivo no se pudo leer"}
	whyNoParts = text{"there is nothing to work in the source", "el patrón no tiene nada que tejer"}
	whyNoPages = text{"the source has errors, so there are no pages", "el patrón tiene errores y por eso no hay páginas"}
	whyNotSet  = text{"the pages could not be set", "no se pudieron componer las páginas"}

	unknownBehind = text{"{part}: nothing is known behind {row} {n} in {sizes}", "{part}: no se sabe nada después de la {row} {n} en {sizes}"}
	unknownWhole  = text{"{part}: nothing is known in {sizes}", "{part}: no se sabe nada en {sizes}"}
)
