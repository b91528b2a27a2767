package lang

import (
	"slices"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// Rows from a chart are part of what is read by hand: of the head of a row, and of the work of stitches.

// Parse reads the chart that rows are worked from. What may stand behind its name is read by option.
func (f *FromChart) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if !r.take("from") {
		return participle.NextMatch
	}
	if !r.take("chart") {
		return r.want("chart")
	}
	f.Chart = &Name{}
	if err := r.must(f.Chart); err != nil {
		return err
	}
	r.close(&f.At, start)
	return nil
}

// option reads which rows of the chart, or how often, and reports whether that stands here. There is none without a chart.
func (f *FromChart) option(r reader) (bool, error) {
	if f == nil {
		return false, nil
	}
	if slices.Contains(missingWords["RowOpt"], r.Peek().Value) {
		return false, nil
	}
	if r.oneOf("row", "rows") == "" {
		n := &Cnt{}
		if ok, err := r.may(n); !ok || err != nil {
			return false, err
		}
		if !r.take("times") {
			return false, r.want("times")
		}
		f.Times = n
		r.close(&f.At, f.Pos)
		return true, nil
	}
	f.First = &Cnt{}
	if err := r.must(f.First); err != nil {
		return false, err
	}
	if r.take("to") {
		f.Last = &Cnt{}
		if err := r.must(f.Last); err != nil {
			return false, err
		}
	}
	r.close(&f.At, f.Pos)
	return true, nil
}

// Parse reads by chart, and from which column of it.
func (b *ByChart) Parse(lx *lexer.PeekingLexer) error {
	r := reader{lx}
	start := r.start()
	if !r.word("by") || r.after().Value != "chart" {
		return participle.NextMatch
	}
	r.Next()
	r.Next()
	if b.Centred = r.take("centred"); !b.Centred && r.take("from") {
		if !r.take("column") {
			return r.want("column")
		}
		b.Column = &Cnt{}
		if err := r.must(b.Column); err != nil {
			return err
		}
	}
	r.close(&b.At, start)
	return nil
}
