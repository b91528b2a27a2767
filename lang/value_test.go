package lang

import (
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// letValue reads one value, as a let line holds it.
func letValue(t *testing.T, text string) (*Expr, diag.List) {
	t.Helper()
	tree, faults := Parse(source.NewFile("value.ovillo", "let v = "+text+"\n"))
	if len(tree.Body) == 0 || tree.Body[0].Node == nil {
		return nil, faults
	}
	return tree.Body[0].Node.(*Let).Value.E, faults
}

func TestValues(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"96", "96"},
		{"010", "010"},
		{"96 (104, 112)", "96 (104, 112)"},
		{"-2 (3, -4)", "(-2 (3, -4))"},
		{"96 (104, 112) cm", "96 (104, 112) cm"},
		{"10cm", "10 cm"},
		{"3.75mm", "3.75 mm"},
		{"60 %", "60 %"},
		{"12 month", "12 months"},
		{"8 in", "8 in"},
		{"1 + 2 * 3", "(1 + (2 * 3))"},
		{"(1 + 2) * 3", "((1 + 2) * 3)"},
		{"1 - 2 - 3", "((1 - 2) - 3)"},
		{"8 / 4 / 2", "((8 / 4) / 2)"},
		{"-a * b", "((-a) * b)"},
		{"--a", "(-(-a))"},
		{"2 * -a", "(2 * (-a))"},
		{"fit.waist - 4 cm", "(fit.waist - 4 cm)"},
		{"corner.2", "corner.2"},
		{"leg * 2 but \"L\" 91", `((leg * 2) but "L" 91)`},
		{"leg but \"L\" 91, \"M\" 2 + 3", `((leg but "L" 91) but "M" (2 + 3))`},
		{"stitches(52 cm, dc, multiple of 6 plus 1, down)", "stitches(52 cm, dc, multiple of 6 plus 1, down)"},
		{"rows(19 cm, dc, even, ties up) + 1", "(rows(19 cm, dc, even, ties up) + 1)"},
		{"max(up, even + 1)", "max((even + 1), up)"},
		{"around body at row 2 + 4 cm", "(around body at row 2 + 4 cm)"},
		{"around body at row (a + b)", "around body at row (a + b)"},
		{"height of a + width of b + length of c", "((height of a + width of b) + length of c)"},
		{"length + 1", "(length + 1)"},
		{"count_1 * año", "(count_1 * año)"},
		{"an\u0303o", "año"}, // n and a tilde of its own are ñ
	} {
		e, faults := letValue(t, c.text)
		if e == nil {
			t.Errorf("%s: %s", c.text, listed(faults))
			continue
		}
		if got := e.String(); got != c.want {
			t.Errorf("%s reads %s, want %s", c.text, got, c.want)
		}
	}
}

func TestValuesThatAreNone(t *testing.T) {
	for _, c := range []struct {
		text string
		want diag.Code
	}{
		{"1 +* 2", codeValue},
		{"(1", codeOpenBracket},
		{"1)", codeBadBracket},
		{"(1]", codeBadBracket},
		{"()", codeValue},
		{"96 (104 112)", codeSizes},
		{"96 (a)", codeSizes},
		{"96 ()", codeSizes},
		{"1,5", codeDecimal},
		{"a.", codePoint},
		{"a..b", codePoint},
		{"a but 5", codeBut},
		{"next", codeValue},
		{"rows", codeValue},
		{"stitches(1 cm", codeOpenBracket},
		{"stitches(1 cm 2)", codeWords},
		{"stitches(multiple 2)", codeWords},
		{"stitches(ties 2)", codeWords},
		{"height of 5", codePlace},
		{"around a at 5", codeWords},
		{"5 6", codeFit},
		{"5dc", codeGlued},
		{"5.5.5", codeFit},
		{"“5”", codeCurlyQuote},
		{"5;", codeSemicolon},
		{"{5}", codeBrace},
		{strings.Repeat("-", 300) + "5", codeDepth},
	} {
		if _, faults := letValue(t, c.text); len(faults) != 1 || faults[0].Code != c.want {
			t.Errorf("%.40s: want %s, got %s", c.text, c.want, listed(faults))
		}
	}
}
