package lsp

import (
	"fmt"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// publish tells the client what was found in a text, all of it at once.
func (d *document) publish(s *snapshot) {
	p := publishParams{URI: d.uri, Version: s.version, Diagnostics: []Diagnostic{}}
	for i := range s.worded {
		p.Diagnostics = append(p.Diagnostics, s.diagnostic(&s.worded[i]))
	}
	d.server.notify("textDocument/publishDiagnostics", p)
}

// severities by those of the protocol. A note is information.
var severities = map[diag.Severity]int{diag.Error: 1, diag.Warning: 2, diag.Note: 3}

// diagnostic puts a finding into the form of the protocol. One in a file that the source takes in stands at the head of the source,
// and names the place.
func (s *snapshot) diagnostic(w *diag.Worded) Diagnostic {
	out := Diagnostic{Severity: severities[w.Severity], Code: string(w.Code), Source: "ovillo", Message: w.Text}
	if w.In == s.checked.File {
		out.Range = s.text.rangeOf(w.Span)
	} else {
		out.Message = fmt.Sprintf("%s:%d: %s", w.In.Name, w.In.Line(w.Span.Start), w.Text)
		out.Related = append(out.Related, Related{s.location(w.In, w.Span), w.In.Name})
	}
	for _, r := range w.Related {
		if r.Text != "" {
			out.Related = append(out.Related, Related{s.location(r.In, r.Span), r.Text})
		}
	}
	if !s.doc.server.related {
		out.Related = nil
	}
	return out
}

// place is a place of the tree.
func (s *snapshot) place(at source.Span) Location {
	if s.mine(at) {
		return Location{s.doc.uri, s.text.rangeOf(at)}
	}
	in, at := s.parse().tree.Source.Within(at)
	for _, used := range s.parse().tree.UsedFiles() { // by its name from the folder of the source
		if used.Text == in.Text {
			in = used
		}
	}
	return s.beside(in, at)
}

// location is a place that was found in checking: in the document, or in a file that it takes in.
func (s *snapshot) location(in *source.File, at source.Span) Location {
	if in == s.checked.File {
		return Location{s.doc.uri, s.text.rangeOf(at)}
	}
	return s.beside(in, at)
}

// beside is a place in a file that the document takes in.
func (s *snapshot) beside(in *source.File, at source.Span) Location {
	return Location{s.doc.uriBeside(in.Name), newText(in.Text, s.text.encoding).rangeOf(at)}
}
