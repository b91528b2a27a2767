package lang

import (
	"errors"
	"strings"
	"text/scanner"

	"github.com/alecthomas/participle/v2"
)

// What participle would have taken where it stopped. It says so in the notation of the tags, which is not for makers' eyes:
// the first terms of it are what the statement could go on with.

// slipOf makes a slip of the error of a statement.
func slipOf(err error) *slip {
	var s *slip
	if errors.As(err, &s) {
		return s
	}
	var u *participle.UnexpectedTokenError
	if !errors.As(err, &u) {
		return &slip{kind: slipFit}
	}
	s = &slip{kind: slipFit, token: u.Unexpected}
	message := u.Message()
	if i := strings.LastIndex(message, " (expected "); i >= 0 {
		s.expect(strings.TrimSuffix(message[i+len(" (expected "):], ")"))
	}
	return s
}

// missingNodes tells which slip it is when a node of the tree does not stand where it must.
var missingNodes = map[string]slipKind{"Name": slipName, "Ref": slipPlace, "FromRun": slipPlace, "Cnt": slipNumber,
	"Val": slipValue, "Str": slipText, "LegendItem": slipText, "Bi": slipBi, "Word": slipBi, "List": slipList, "RepEnd": slipOften,
	"Target": slipWhere, "Claims": slipNumber, "Claim": slipNumber, "OffItem": slipNumber, "FitItem": slipName}

// missingWords gives the words that some nodes begin with.
var missingWords = map[string][]string{"RowOpt": {"even", "odd", "up", "down", "nearest", "ties", "ending", "begin", "with", "from"},
	"Bound": {"to"}, "As": {"as"}}

// expect reads the first terms of an expectation. A node says more than the words beside it.
func (s *slip) expect(notation string) {
	for _, term := range firstTerms(notation) {
		switch kind, isNode := missingNodes[term]; {
		case isNode && s.kind <= slipWords:
			s.kind = kind
		case strings.HasPrefix(term, `"`):
			s.words = append(s.words, strings.Trim(term, `"`))
		default:
			s.words = append(s.words, missingWords[term]...)
		}
	}
	if s.kind == slipFit && len(s.words) > 0 {
		s.kind = slipWords
	}
}

// firstTerms gives the words (in quotes) and the names of nodes that something in the notation of the tags can begin with.
func firstTerms(notation string) []string {
	n := &notationReader{}
	n.Init(strings.NewReader(notation))
	n.Error = func(*scanner.Scanner, string) {}
	n.next()
	terms, _ := n.alternatives()
	return terms
}

type notationReader struct {
	scanner.Scanner
	token rune
}

func (n *notationReader) next() { n.token = n.Scan() }

// alternatives reads sequences parted by bars; the second result is whether one of them may be empty.
func (n *notationReader) alternatives() (first []string, empty bool) {
	for {
		f, e := n.sequence()
		first, empty = append(first, f...), empty || e
		if n.token != '|' {
			return first, empty
		}
		n.next()
	}
}

func (n *notationReader) sequence() (first []string, empty bool) {
	empty = true
	for n.token != scanner.EOF && n.token != '|' && n.token != ')' {
		f, e := n.term()
		if empty {
			first = append(first, f...)
		}
		empty = empty && e
	}
	return first, empty
}

func (n *notationReader) term() (first []string, empty bool) {
	if n.token == '(' {
		n.next()
		first, empty = n.alternatives()
	} else {
		first = []string{n.TokenText()}
	}
	n.next()
	switch n.token {
	case '?', '*':
		empty = true
		n.next()
	case '+', '!':
		n.next()
	}
	return first, empty
}
