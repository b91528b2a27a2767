package report

import (
	"encoding/json"
	"io"
	"strings"

	"ovillo/compile/plan"
)

// The fields of the report for other programs. They are promised: fields may be added, none changes its meaning. Lengths are
// in micrometres and weights in milligrams; null stands where a size has no such thing, and lists of values have one value
// for each size, in the order of sizes.
type jsonReport struct {
	File     string         `json:"file"`
	Lang     string         `json:"lang"` // of the texts
	Title    string         `json:"title,omitempty"`
	By       string         `json:"by,omitempty"`
	Edition  int            `json:"edition,omitempty"`
	Date     string         `json:"date,omitempty"`
	Lines    int            `json:"lines"`
	Source   string         `json:"source"`            // mark of the text
	Numbers  string         `json:"numbers,omitempty"` // mark of all numbers; absent while the source has errors
	Sizes    []string       `json:"sizes"`
	Checks   []jsonCheck    `json:"checks"`
	Unknown  []string       `json:"unknown"` // what errors hide
	Measures []jsonMeasure  `json:"measures"`
	Rounded  []jsonRounded  `json:"rounded"`
	Counts   []jsonRowCount `json:"counts"`
	Cautions []jsonCaution  `json:"cautions"` // in the order in which the rules stand
}

// A caution that prints, in the language of the report.
type jsonCaution struct {
	ID       string   `json:"id"`       // of the rule; NONE where the source says too little for any
	Severity string   `json:"severity"` // error, warn or caution
	Text     string   `json:"text"`
	Source   string   `json:"source"`         // a standard, a law or an authority; "" for a rule of our own
	Read     string   `json:"read"`           // how well it was read: itself, summary, memory, or own for a rule of our own
	Seller   bool     `json:"seller"`         // for makers who sell what they make
	Sizes    []string `json:"sizes"`          // that it is for
	File     string   `json:"file,omitempty"` // one that the source uses
	Line     int      `json:"line,omitempty"` // of the source
	Reason   string   `json:"reason,omitempty"`
}

type jsonCheck struct {
	ID       string    `json:"id"`
	Group    Group     `json:"group"`
	How      How       `json:"how"`    // M by the program, m flagged by it, P by a person, M/m both
	Status   Status    `json:"status"` // held, found, in-part, nothing, not-checked, person
	Name     string    `json:"name"`
	Looked   []string  `json:"looked"`
	N        int       `json:"n"` // how many things were looked at
	Why      string    `json:"why,omitempty"`
	Notes    []string  `json:"notes,omitempty"`
	Findings []Finding `json:"findings"`
	Ask      string    `json:"ask,omitempty"`
}

type jsonMeasure struct {
	Name   string   `json:"name"`
	Letter string   `json:"letter,omitempty"`
	Values []*int64 `json:"values"`
	Wanted []*int64 `json:"wanted,omitempty"`
	Body   []*int64 `json:"body,omitempty"`
	Ease   []*int64 `json:"ease,omitempty"`
	// What the opening goes over, and as far as it stretches.
	Over      []*int64 `json:"over,omitempty"`
	Stretched []*int64 `json:"stretched,omitempty"`
	Memory    bool     `json:"fromMemory,omitempty"` // Body or Over rest on figures from memory
}

type jsonRounded struct {
	Name   string   `json:"name,omitempty"`
	File   string   `json:"file,omitempty"` // one that the source uses; none: the source itself
	Line   int      `json:"line"`
	Stitch string   `json:"stitch"`
	Unit   string   `json:"unit"` // stitches, rows, chains or times
	Counts []*int64 `json:"counts"`
	Wanted []*int64 `json:"wanted"`
	Got    []*int64 `json:"got"`
	Errors []*int64 `json:"errors"` // got less wanted
}

type jsonRowCount struct {
	Part     string `json:"part"`
	Row      int    `json:"row"`
	Label    string `json:"label,omitempty"`
	Size     string `json:"size"`
	Stitches int    `json:"stitches"`
	Spaces   int    `json:"spaces"`
	Taken    int    `json:"taken"` // places of the row below that were worked into
}

// JSON prints a report for other programs: one object.
func JSON(w io.Writer, r *Report) error {
	out := jsonReport{File: r.File, Lang: r.Lang, Title: r.Title, By: r.By, Lines: r.Lines, Source: r.Source, Numbers: r.Numbers,
		Sizes: filled(r.Sizes), Unknown: filled(r.Unknown), Checks: []jsonCheck{}, Measures: []jsonMeasure{}, Rounded: []jsonRounded{}, Counts: []jsonRowCount{}, Cautions: []jsonCaution{}}
	for _, x := range r.Results {
		out.Checks = append(out.Checks, jsonCheck{x.ID, x.Group, x.How, x.Status, x.Name(r.Lang), filled(x.Looked), x.N, x.Why, x.Notes, filled(x.Findings), x.Ask})
	}
	if p := r.pattern; p != nil {
		out.Edition, out.Date = p.Edition, p.Date
		out.figures(r, p)
		out.cautions(r, p)
	}
	var b strings.Builder
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(out); err != nil {
		return err
	}
	_, err := io.WriteString(w, unbound(b.String()))
	return err
}

// filled is a list that prints as [] where it is empty.
func filled[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}

var unitNames = map[plan.Unit]string{plan.UnitStitches: "stitches", plan.UnitRows: "rows", plan.UnitRepeats: "times", plan.UnitChains: "chains"}

func (out *jsonReport) figures(r *Report, p *plan.Pattern) {
	for _, m := range p.Measures {
		j := jsonMeasure{Name: m.Name, Letter: m.Letter, Values: lengths(m.Values), Wanted: lengths(m.Wanted)}
		if m.Fits != nil {
			j.Body, j.Ease, j.Memory = lengths(m.Fits.Values), lengths(m.Fits.Ease), p.Remembered(m.Fits.Body)
		}
		if m.Over != nil {
			j.Over, j.Stretched = lengths(m.Over.Values), lengths(m.Over.Stretched)
			j.Memory = j.Memory || p.Remembered(m.Over.Body)
		}
		out.Measures = append(out.Measures, j)
	}
	for i := range p.Rounded {
		x := &p.Rounded[i]
		counts := make([]*int64, len(x.Counts))
		for z, n := range x.Counts {
			if v := int64(n); n != plan.Absent {
				counts[z] = &v
			}
		}
		file, n := r.texts.line(x.Span.Start)
		out.Rounded = append(out.Rounded, jsonRounded{x.Let, file, n, string(x.Stitch), unitNames[x.Unit], counts,
			lengths(x.Wanted), lengths(x.Got), lengths(x.Errors())})
	}
	for _, part := range p.Parts {
		for _, number := range RowNumbers(part) {
			for z, size := range p.Sizes {
				if f, ok := FactOf(part, z, number); ok {
					out.Counts = append(out.Counts, jsonRowCount{part.Name, number, f.Label, size.Name, f.Stitches, f.Spaces, f.Taken})
				}
			}
		}
	}
}

// readNames are how a source was read. They are promised.
var readNames = map[plan.Read]string{plan.OwnRule: "own", plan.ReadItself: "itself", plan.ReadSummary: "summary", plan.ReadMemory: "memory"}

// cautions lists the cautions that print.
func (out *jsonReport) cautions(r *Report, p *plan.Pattern) {
	for _, c := range p.Cautions {
		j := jsonCaution{ID: c.ID, Severity: c.Severity, Text: c.Text[r.Lang], Source: c.Source, Read: readNames[c.Read], Seller: c.Seller,
			Sizes: []string{}, Reason: c.Reason[r.Lang]}
		for z, size := range p.Sizes {
			if c.For.Has(z) {
				j.Sizes = append(j.Sizes, size.Name)
			}
		}
		if c.At.End > 0 {
			j.File, j.Line = r.texts.line(c.At.Start)
		}
		out.Cautions = append(out.Cautions, j)
	}
}

// lengths are lengths in micrometres, nil where there is none.
func lengths(list plan.Lengths) []*int64 {
	var out []*int64
	for _, l := range list {
		if l == plan.NoLength {
			out = append(out, nil)
			continue
		}
		v := int64(l)
		out = append(out, &v)
	}
	return out
}
