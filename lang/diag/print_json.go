package diag

import (
	"encoding/json"
	"io"

	"ovillo/lang/source"
)

// Record is a diagnostic put into words, for other programs and for those who set it in their own way. Lines and columns
// are the ones the text printer shows: columns are cells, from 1. A diagnostic that is nowhere in particular has line 0. The bytes of an edit count from 0, the end left out.
type Record struct {
	Code     Code            `json:"code"`
	Severity string          `json:"severity"` // error, warning or note, whatever the language
	File     string          `json:"file"`
	Line     int             `json:"line"`
	Column   int             `json:"column"`
	End      RecordPlace     `json:"end"`
	Message  string          `json:"message"`
	Mark     string          `json:"mark,omitempty"`
	Help     string          `json:"help,omitempty"`
	Meant    string          `json:"meant,omitempty"` // why the designer wants it so; a warning is a note then
	Notes    []string        `json:"notes,omitempty"`
	Sizes    []string        `json:"sizes,omitempty"`
	Related  []RecordRelated `json:"related,omitempty"`
	Edit     *RecordEdit     `json:"edit,omitempty"`
}

// RecordPlace is a place in the source.
type RecordPlace struct {
	Line   int `json:"line"`
	Column int `json:"column"`
}

// RecordRelated is a place that explains the cause.
type RecordRelated struct {
	File    string      `json:"file,omitempty"` // if it is another one than that of the record
	Line    int         `json:"line"`
	Column  int         `json:"column"`
	End     RecordPlace `json:"end"`
	Message string      `json:"message"`
}

// RecordEdit is a change to the source that is certain to be what was meant.
type RecordEdit struct {
	File string `json:"file,omitempty"` // likewise
	From int    `json:"from"`
	To   int    `json:"to"`
	Text string `json:"text"`
}

// JSON prints a list for other tools: one object a line, all of them, in the order of the source.
func (p Printer) JSON(w io.Writer, f *source.File, l List) error {
	enc := json.NewEncoder(w)
	enc.SetEscapeHTML(false)
	for _, r := range p.Records(f, l) {
		if err := enc.Encode(r); err != nil {
			return err
		}
	}
	return nil
}

// Records puts a list into words, all of it, in the order of the source and each finding once.
func (p Printer) Records(f *source.File, l List) []Record {
	var out []Record
	for _, d := range p.findings(l) {
		in, span := f.Within(d.Span)
		r := Record{
			Code: d.Code, Severity: labelsIn["en"].severity[d.severity], File: in.Name,
			Message: d.message, Mark: d.mark, Help: d.help, Meant: d.meant, Notes: d.notes, Sizes: d.Sizes,
		}
		if !d.Span.IsZero() {
			s := tighten(in, span)
			start := placeOf(in, s.Start)
			r.Line, r.Column, r.End = start.Line, start.Column, placeOf(in, s.End)
		}
		for _, rel := range d.related {
			there, s := f.Within(rel.span)
			s = tighten(there, s)
			start := placeOf(there, s.Start)
			one := RecordRelated{Line: start.Line, Column: start.Column, End: placeOf(there, s.End), Message: rel.label}
			if there != in {
				one.File = there.Name
			}
			r.Related = append(r.Related, one)
		}
		if e := d.Edit; e != nil {
			there, s := f.Within(e.Span)
			r.Edit = &RecordEdit{From: int(s.Start), To: int(s.End), Text: p.at(d.Span).coded(e.Text)}
			if there != in {
				r.Edit.File = there.Name
			}
		}
		out = append(out, r)
	}
	return out
}

func placeOf(f *source.File, offset int32) RecordPlace {
	return RecordPlace{Line: f.Line(offset), Column: f.Column(offset)}
}
