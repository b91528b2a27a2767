package compile

import (
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
)

// This file looks for what the pages leave out without a word: a chart from which nothing is worked, and a part that goes on from
// another and is made another number of times.

// chartsUnused warns of charts that no row is worked from: the pages do not show them. Where some part failed that is not known.
func (c *checker) chartsUnused() {
	if c.anyFailed() {
		return
	}
	for _, s := range c.file.Body {
		n, ok := s.Node.(*lang.Chart)
		if !ok || n.Of != nil {
			continue
		}
		if ch := c.charts[n.Name.Text]; ch != nil && !ch.bad && ch.index < 0 {
			c.say(codeChartUnused, s.Head, diag.Args{"chart": n.Name.Text})
		}
	}
}

// madeApart warns of a part that takes up the whole last row of another, and of which there are more or fewer.
func (c *checker) madeApart() {
	for _, part := range c.pat.Parts {
		st := part.Start
		if len(st.Runs) != 1 || st.Round || st.Runs[0].Own || st.Runs[0].Kind != plan.RefEdge || part.Motifs != nil || part.Grid != nil {
			continue
		}
		q := c.pat.Parts[st.Runs[0].Part]
		if q.Motifs != nil || q.Grid != nil || q.Make == part.Make {
			continue
		}
		c.report(diag.Diagnostic{Code: codeMadeApart, Span: c.parts[part.Name].head,
			Args:    diag.Args{"part": part.Name, "have": part.Make, "other": q.Name, "need": q.Make},
			Related: []diag.Related{{Span: c.parts[q.Name].head, Key: "other"}}})
	}
}
