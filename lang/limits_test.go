package lang

import (
	"strings"
	"testing"
	"time"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// Nothing in a source takes long, overflows the stack or fills a page with messages.
func TestLimits(t *testing.T) {
	part := func(row string) string { return "part a\n  round: " + row + "\n  round: dc in each\nend\n" }
	for _, c := range []struct {
		name, text string
		want       diag.Code
	}{
		{"ten megabytes of brackets", strings.Repeat("(", 10<<20), codeBigFile},
		{"ten megabytes of garbage", strings.Repeat("§½@;\x00 ", 10<<20/9), codeBigFile},
		{"as many brackets as a file may have", strings.Repeat("(", MostBytes), codeDepth},
		{"quotation marks", strings.Repeat(`"`, MostBytes), codeLong},
		{"texts in a line", strings.Repeat(`"a" `, MostBytes/4), codeLong},
		{"a line of a Spanish source", "idioma es\n" + strings.Repeat("pa en cada ", MostBytes/12), codeLong},
		{"brackets in a row", part(strings.Repeat("[", 1<<18)), codeDepth},
		{"brackets that close", part(strings.Repeat("[", 1<<16) + "dc" + strings.Repeat("] 2 times", 1<<16)), codeDepth},
		{"closing brackets", part(strings.Repeat(")", 1<<18)), codeBadBracket},
		{"minus signs", "let x = " + strings.Repeat("-", 9_000) + "1\n", codeDepth},
		{"brackets of a value", "let x = " + strings.Repeat("(", 201) + "1" + strings.Repeat(")", 201) + "\n", codeDepth},
		{"a long row", part(strings.Repeat("dc in next, ", 1<<16) + "dc"), codeLong},
		{"a long value", "let x = 1" + strings.Repeat(" + 1", 1<<17) + "\n", codeLong},
		{"a long text", "let x = \"" + strings.Repeat("a", 1<<19) + "\n", codeOpenQuote},
		{"a long word", "let x = 1 " + strings.Repeat("a", 1<<19) + "\n", codeLongName},
		{"a long first word", strings.Repeat("a", 1<<19) + "\n", codeLongName},
		{"a long point", "let x = 1 a" + strings.Repeat(".a", 4_000) + "\n", codeFit},
		{"many blocks", strings.Repeat("part a\n", maxLines-1), codeMissingEnd},
		{"nested blocks", "part a\n" + strings.Repeat("repeat 2 times\n", 300) + strings.Repeat("end\n", 301), codeDepth},
		{"bad bytes", strings.Repeat("\xff\n", maxLines-1), codeEncoding},
		{"many lines of garbage", strings.Repeat("qqq\n", maxLines-1), codeUnknown},
		{"many stray ends", strings.Repeat("end\n", maxLines-1), codeStrayEnd},
	} {
		start := time.Now()
		f := source.NewFile("limit.ovillo", c.text)
		tree, faults := Parse(f)
		// A busy machine is slow; time that grows with the square of the length would be hours.
		if took := time.Since(start); took > 20*time.Second {
			t.Errorf("%s: took %v", c.name, took)
		}
		if len(faults) == 0 || faults[0].Code != c.want {
			t.Errorf("%s: want %s first, got %v", c.name, c.want, codes(faults))
		}
		if len(faults) > maxFaults+1 {
			t.Errorf("%s: %d messages", c.name, len(faults))
		}
		if tree == nil || tree.Source != f {
			t.Errorf("%s: no tree", c.name)
		}
		for _, d := range faults[:min(len(faults), 3)] {
			complete(t, d)
			for lang, most := range map[string]int{"en": 1000, "es": 1000} {
				if n := len(diag.Message(d, lang)); n > most {
					t.Errorf("%s: a message of %d bytes", c.name, n)
				}
			}
		}
	}
}

// The depth wins over every other reason, since whatever reads a statement that is too deep may overflow.
func TestDepthWins(t *testing.T) {
	for _, row := range []string{
		`"open ` + strings.Repeat("[", 300),
		"@ " + strings.Repeat("(", 300) + "]",
		strings.Repeat("(", 300) + "\"open",
		") " + strings.Repeat("[", 300) + ",",
	} {
		f := source.NewFile("depth.ovillo", "part a\n  round: "+row+"\n  round: dc in each\nend\n")
		_, faults := Parse(f)
		deep := strings.Count(strings.SplitN(row, `"`, 2)[0], "[")+strings.Count(strings.SplitN(row, `"`, 2)[0], "(") > maxDepth
		if got := codes(faults); len(got) != 1 || deep && got[0] != codeDepth {
			t.Errorf("%.20s…: %v", row, got)
		}
	}
}

func TestMoreFaultsAreCounted(t *testing.T) {
	_, faults := Parse(source.NewFile("many.ovillo", strings.Repeat("qqq\n", 1000)))
	if len(faults) != maxFaults+1 || faults[maxFaults].Code != codeMore {
		t.Errorf("%d messages, the last is %s", len(faults), faults[len(faults)-1].Code)
	}
}

// As many faults as are kept are said, and nothing of more; of one more it is said that there are more, where it stands.
func TestAtTheBoundOfFaults(t *testing.T) {
	for over := range 2 {
		f := source.NewFile("many.ovillo", strings.Repeat("qqq\n", maxFaults+over))
		_, faults := Parse(f)
		if len(faults) != maxFaults+over {
			t.Fatalf("%d faults: %d messages", maxFaults+over, len(faults))
		}
		last := faults[len(faults)-1]
		if more := last.Code == codeMore; more != (over == 1) || f.Line(last.Span.Start) != maxFaults+over {
			t.Errorf("%d faults: the last message is %s in line %d", maxFaults+over, last.Code, f.Line(last.Span.Start))
		}
	}
}

func codes(l diag.List) []diag.Code {
	var out []diag.Code
	for _, d := range l[:min(len(l), 5)] {
		out = append(out, d.Code)
	}
	return out
}
