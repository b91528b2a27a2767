package lang

import (
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

const (
	codeBigFile    diag.Code = "OV101"
	codeEncoding   diag.Code = "OV102"
	codeDepth      diag.Code = "OV103"
	codeLong       diag.Code = "OV104"
	codeUnknown    diag.Code = "OV105"
	codeMissingEnd diag.Code = "OV108"
	codeStrayEnd   diag.Code = "OV109"
	codeOpenAtEnd  diag.Code = "OV110"
	codeRawOutside diag.Code = "OV111"
	codeUnread     diag.Code = "OV122"
)

type faults struct {
	file     *source.File
	list     diag.List
	badBytes bool
}

func (f *faults) add(d diag.Diagnostic) { f.list.Add(d) }

func (f *faults) gathered(g gathered, form *form) {
	f.add(diag.Diagnostic{Code: codeUnread, Span: g.at.Span, Args: diag.Args{"why": string(g.fault)}})
}

func (f *faults) unread(g gathered, form *form, err error) {
	f.add(diag.Diagnostic{Code: codeUnread, Span: g.head, Args: diag.Args{"why": err.Error()}})
}

func (f *faults) missingEnd(t Token, s *Statement, form *form) {
	f.add(diag.Diagnostic{Code: codeMissingEnd, Span: t.Span})
}

func (f *faults) openAtEnd(open []*opened) {
	f.add(diag.Diagnostic{Code: codeOpenAtEnd, Span: open[len(open)-1].Head})
}

func (b *blocks) unknown(first int, g gathered) *form {
	b.faults.add(diag.Diagnostic{Code: codeUnknown, Span: b.tokens[first].Span})
	return nil
}
