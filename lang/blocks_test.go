package lang

import (
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// outline writes the statements of a source by their first word, blocks in brackets; ? stands for one that was not read.
func outline(tree *File) string {
	var b strings.Builder
	var body func([]*Statement)
	body = func(list []*Statement) {
		for i, s := range list {
			if i > 0 {
				b.WriteByte(' ')
			}
			if s.Node == nil {
				b.WriteByte('?')
			}
			text := tree.Source.Slice(s.Head)
			b.WriteString(text[:max(wordEnd(text, 0), min(1, len(text)))])
			if s.Block != "" {
				b.WriteByte('(')
				body(s.Body)
				b.WriteByte(')')
			}
		}
	}
	body(tree.Body)
	return b.String()
}

// How lines make statements, statements make blocks, and what is left of them where something is missing.
func TestBlocks(t *testing.T) {
	for _, c := range []struct {
		name, text, want string
		codes            []diag.Code
	}{
		{"a line goes on behind a comma", "part a\nround: dc,\ndc\nend", "part(round)", nil},
		{"behind a colon", "part a\nround:\n\n# a comment\ndc\nend", "part(round)", nil},
		{"behind an operator", "let a = 1 +\n2 *\n3", "let", nil},
		{"in brackets", "part a\nround: [dc\n, sc\n] around\nend", "part(round)", nil},
		{"with a count of its own line", "part a\nround: dc\n\n= 5\nend", "part(round)", nil},
		{"behind an end", "part a\nrepeat 2 times\nend\n= 5\nend", "part(repeat(end))", nil},
		{"a number begins no row inside a row", "part a\nround: dc in next,\n5 dc in next\nend", "part(round)", nil},
		{"a value may begin with rows", "let a = 1 +\nrows(3 cm, dc)", "let", nil},
		{"a row wins over an open bracket", "part a\nround: [dc,\nround: dc\nend", "part(?round round)",
			[]diag.Code{codeOpenBracket}},
		{"rows win over a comma", "part a\nround: dc,\n4 (5, 6) rounds: dc\nend", "part(?round 4)", []diag.Code{codeUnfinished}},
		{"a note wins over a comma", "part a\nround: dc,\nnote\nend\nend", "part(?round note())", []diag.Code{codeUnfinished}},
		{"a step may be a name in a row", "part a\nround: dc,\nstep in each\nend", "part(round)", nil},
		{"end wins over a comma", "part a\nround: dc,\nend\nlet a = 1", "part(?round) let", []diag.Code{codeUnfinished}},
		{"the file ends in a bracket", "let a = (", "?let", []diag.Code{codeOpenBracket}},
		{"the file ends in a comma", "sizes \"S\",", "?sizes()", []diag.Code{codeUnfinished, codeOpenAtEnd}},

		{"a broken head opens its block", "part 5\nround: dc\nend", "?part(round)", []diag.Code{codeName}},
		{"a missing end", "part a\nround: dc\npart b\nend", "part(round) part()", []diag.Code{codeMissingEnd}},
		{"a missing end, and its end later", "part a\nrepeat 2 times\nsizes \"S\"\nend\nend\nend", "part(repeat()) sizes()",
			[]diag.Code{codeMissingEnd}},
		{"a stray end", "end\nlet a = 1", "let", []diag.Code{codeStrayEnd}},
		{"an end at the end", "part a\nrepeat 2 times", "part(repeat())", []diag.Code{codeOpenAtEnd}},
		{"an end with a broken count", "part a\nend = = 5\nlet a = 1", "part(?end) let", []diag.Code{codeNumber}},
		{"a misspelt head opens its block", "prt a\nround: dc\nend\nlet a = 1", "?prt(round) let", []diag.Code{codeUnknown}},
		{"a misspelt end closes", "part a\nround: dc\nedn\nlet a = 1", "part(round ?edn) let", []diag.Code{codeUnknown}},
		{"a Spanish end closes", "part a\nround: dc\nfin\nlet a = 1", "part(round ?fin) let", []diag.Code{codeOtherWord}},
		{"rows outside a part", "round: dc\nround: dc\nround: dc", "?round ?round ?round", []diag.Code{codeAstray}},
		{"a block in the wrong place keeps its lines", "only \"S\"\nround: dc\nend", "?only(round)", []diag.Code{codeAstray}},
		{"stitches outside a row", "part a\ndc in each\nsc in each\nround: dc\nsc\nend", "part(?dc ?sc round ?sc)",
			[]diag.Code{codeNoRow, codeNoRow}},
		{"lines of a text", "part a\nen | x\nes | y\nnote\nx\ny\nen | z\nend\nend", "part(note(?x ?y))",
			[]diag.Code{codeRawAstray, codeNoBar}},

		{"carriage returns", "part a\r\nround: dc,\r\ndc\r\nend\r\n", "part(round)", nil},
		{"a byte-order mark", "\ufeffpart a\nend", "part()", nil},
		{"tabs and no-break spaces", "part\ta\n\tround:\u00a0dc\nend", "part(round)", nil},
		{"no line end at the end", "let a = 1", "let", nil},
		{"nothing", "", "", nil},
		{"comments", "# a\n\n   # b", "", nil},
		{"one bad byte", "let a = 1\nlet \xff = 2\nlet b = \"\xfe\"", "let ?let ?let", []diag.Code{codeEncoding, codeValue}},
	} {
		tree, faults := Parse(source.NewFile("blocks.ovillo", c.text))
		if got := outline(tree); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
		if got := codes(faults); len(got) != len(c.codes) || len(got) > 0 && !equalCodes(got, c.codes) {
			t.Errorf("%s: %v, want %v%s", c.name, got, c.codes, listed(faults))
		}
		checkSpans(t, tree)
	}
}

func equalCodes(a, b []diag.Code) bool {
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// The word `the` says nothing before what it belongs to, and is a word like any other elsewhere.
func TestHarmlessWords(t *testing.T) {
	plain, _ := Parse(source.NewFile("plain.ovillo", "part a\nround: dc in next 5, skip rest, dc in same, leave rest, move m to middle one\nend"))
	for _, text := range []string{
		"part a\nround: dc in the next 5, skip the rest, dc in the same st, leave the rest, move m to the middle one\nend",
		"part a\nround: dc in next 5, skip the rest, dc in same, leave rest, move m to middle one\nend",
	} {
		tree, faults := Parse(source.NewFile("the.ovillo", text))
		if got, want := dumped(t, tree), dumped(t, plain); got != want {
			t.Errorf("%s\n%s%s", got, want, listed(faults))
		}
	}
	if _, faults := Parse(source.NewFile("the.ovillo", "part a\nround: dc in the\nend")); len(faults) != 1 {
		t.Errorf("the at the end: %s", listed(faults))
	}
}

func TestReserved(t *testing.T) {
	for _, w := range []string{"in", "next", "round", "rows", "space", "the", "end", "part", "on"} {
		if !Reserved(w) {
			t.Errorf("%s is not reserved", w)
		}
	}
	for _, w := range []string{"front", "left", "first", "last", "gap", "step", "plain", "dc", "sc2tog", "wave", "Next", ""} {
		if Reserved(w) {
			t.Errorf("%s is reserved", w)
		}
	}
	for w, c := range classes {
		if c&lineWord != 0 && c&reserved == 0 {
			t.Errorf("%s begins a statement wherever it stands, so it has to be reserved", w)
		}
	}
}
