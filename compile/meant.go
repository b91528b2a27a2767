package compile

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// meant takes what the designer says of findings: a finding about a statement is a note if she has said before it that it
// is as she wants it, and why. What is wrong, and not only unusual, cannot be meant.
func (c *checker) meant() {
	faulty := c.out.HasErrors()
	byCode := map[string][]int{} // the findings of each code, in the order of their places
	for i, d := range c.out {
		byCode[string(d.Code)] = append(byCode[string(d.Code)], i)
	}
	for _, list := range byCode {
		slices.SortStableFunc(list, func(a, b int) int { return int(c.out[a].Span.Start) - int(c.out[b].Span.Start) })
	}
	c.meantIn(c.file.Body, faulty, byCode)
}

func (c *checker) meantIn(body []*lang.Statement, faulty bool, byCode map[string][]int) {
	next := make([]int, len(body)+1) // behind each statement the first that says something of its own
	next[len(body)] = len(body)
	for i := len(body) - 1; i >= 0; i-- {
		if next[i] = i; isMeant(body[i]) {
			next[i] = next[i+1]
		}
	}
	for i, s := range body {
		c.meantIn(s.Body, faulty, byCode)
		n, ok := s.Node.(*lang.Meant)
		if !ok {
			continue
		}
		found := false
		if k := next[i+1]; k < len(body) {
			found = c.meantAt(n, saidIn(body[k]), byCode[strings.ToUpper(n.Code.Text)])
		}
		if !found && !faulty { // beside a fault it may only be silent
			c.say(codeNotMeant, n.Span(), diag.Args{"code": n.Code.Text})
		}
	}
}

func isMeant(s *lang.Statement) bool { _, is := s.Node.(*lang.Meant); return is }

// saidIn is where a statement begins and ends, without the block it opens.
func saidIn(s *lang.Statement) source.Span {
	at := s.Head
	if s.Node != nil {
		at.End = max(at.End, s.Node.Span().End)
	}
	return at
}

// meantAt marks those findings of a list that begin within a statement.
func (c *checker) meantAt(n *lang.Meant, at source.Span, list []int) (found bool) {
	text := c.text(n.Text, n)
	why := diag.Said(text)
	first, _ := slices.BinarySearchFunc(list, at.Start, func(i int, start int32) int { return int(c.out[i].Span.Start) - int(start) })
	for _, i := range list[first:] {
		d := &c.out[i]
		if d.Span.Start >= at.End {
			break
		}
		found = true
		d.Meant = why // an error stays one
		if diag.Lookup(d.Code).Severity != diag.Error {
			c.reasoned(*d, at, text)
		}
	}
	return found
}

// reasoned gives the reason to the cautions of the rules that are behind a finding, if they are about the same statement.
func (c *checker) reasoned(d diag.Diagnostic, at source.Span, why plan.Text) {
	rules, _ := d.Args["rules"].([]string)
	for i := range c.pat.Cautions {
		k := &c.pat.Cautions[i]
		if slices.Contains(rules, k.ID) && k.At.Start >= at.Start && k.At.Start < at.End {
			k.Reason = why
		}
	}
}
