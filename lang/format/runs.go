package format

// run tells runs of lines with a common column apart.
type run struct {
	group string
	of    any // the block, or the line if it stands alone
	para  int
}

// runOf names the run that a line belongs to for a column; nil if it belongs to none and ends the run above it.
func (p *page) runOf(l *line, s stop) any {
	has := len(l.cells) > 0 && l.cells[0].stop == s
	switch {
	case s == countStop && l.of != nil:
		return run{"count", l.of.root, l.para} // the counts of a part are read down one column
	case s == countStop, l.kind == commentLine && s != commentStop:
		return skip{}
	case s == commentStop && has:
		return run{"comment", nil, l.para}
	}
	if group := p.group(l); l.kind == codeLine && group != "" && s != commentStop {
		return run{group, l.of.parent, l.para}
	}
	if has {
		return run{"", l, l.para}
	}
	return nil
}

// skip is the run of lines that neither belong to a run nor end one.
type skip struct{}
