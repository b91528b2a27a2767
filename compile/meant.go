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
	c.meantIn(c.file.Body, faulty)
}

func (c *checker) meantIn(body []*lang.Statement, faulty bool) {
	for i, s := range body {
		c.meantIn(s.Body, faulty)
		n, ok := s.Node.(*lang.Meant)
		if !ok {
			continue
		}
		found := false
		if at, ok := nextSaid(body[i+1:]); ok {
			found = c.meantAt(n, at)
		}
		if !found && !faulty { // beside a fault it may only be silent
			c.say(codeNotMeant, n.Span(), diag.Args{"code": n.Code.Text})
		}
	}
}

// nextSaid is the first statement that says something of its own: where it begins and ends, without the block it opens.
func nextSaid(body []*lang.Statement) (source.Span, bool) {
	for _, s := range body {
		if _, more := s.Node.(*lang.Meant); more {
			continue
		}
		at := s.Head
		if s.Node != nil {
			at.End = max(at.End, s.Node.Span().End)
		}
		return at, true
	}
	return source.Span{}, false
}

// meantAt marks the findings of a code that begin within a statement.
func (c *checker) meantAt(n *lang.Meant, at source.Span) (found bool) {
	text := c.text(n.Text, n)
	why := diag.Said(text)
	for i := range c.out {
		d := &c.out[i]
		if string(d.Code) != strings.ToUpper(n.Code.Text) || d.Span.Start < at.Start || d.Span.Start >= at.End {
			continue
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
