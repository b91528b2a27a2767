package lang

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"ovillo/lang/diag"
	"ovillo/lang/shared"
	"ovillo/lang/source"
)

// Every example of the writing family raises exactly its own code, every one put right raises nothing.
func TestExamplesRaiseTheirCode(t *testing.T) {
	n := 0
	for _, e := range diag.All() {
		if !strings.HasPrefix(string(e.Code), "OV1") {
			continue
		}
		n++
		_, faults := Load(source.NewFile("fixed.ovillo", e.Fixed), shared.Open)
		for _, d := range faults {
			t.Errorf("%s: put right, it says: %s: %s", e.Code, d.Code, diag.Message(d, "en"))
		}
		_, faults = Load(source.NewFile("example.ovillo", e.Whole()), shared.Open)
		if e.Code == codeMore && len(faults) == maxFaults+1 {
			faults = faults[maxFaults:] // it follows many others by its nature
		}
		if len(faults) != 1 || faults[0].Code != e.Code {
			t.Errorf("%s: the example raises %s", e.Code, listed(faults))
		}
		for _, d := range faults {
			complete(t, d)
		}
	}
	if n < 40 {
		t.Errorf("only %d codes of this family", n)
	}
}

func listed(l diag.List) string {
	var b strings.Builder
	for _, d := range l {
		fmt.Fprintf(&b, "\n  %s %v: %s", d.Code, d.Span, diag.Message(d, "en"))
	}
	return b.String()
}

// complete checks that a diagnostic leaves nothing open in its wording.
func complete(t testing.TB, d diag.Diagnostic) {
	t.Helper()
	for _, open := range diag.Incomplete(d) {
		t.Errorf("%s: %s", d.Code, open)
	}
}

// The messages of the sources in testdata/messages, as they are printed in both languages. Write them anew with -update,
// and read them as a maker would.
func TestMessagesAreAsRecorded(t *testing.T) {
	names, err := filepath.Glob("testdata/messages/*.txtar")
	if err != nil || len(names) == 0 {
		t.Fatal("no messages", err)
	}
	for _, name := range names {
		archive, err := txtar.ParseFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text := string(archive.Files[0].Data)
		base := strings.TrimSuffix(filepath.Base(name), ".txtar")
		f := source.NewFile(base+".ovillo", text)
		_, faults := Parse(f)
		got := &txtar.Archive{Comment: archive.Comment, Files: archive.Files[:1]}
		for _, lang := range []string{"en", "es"} {
			var b bytes.Buffer
			if err := diag.Text(&b, f, faults, lang, false); err != nil {
				t.Fatal(err)
			}
			got.Files = append(got.Files, txtar.File{Name: lang, Data: b.Bytes()})
		}
		golden(t, name, string(txtar.Format(got)))
		for _, d := range faults {
			complete(t, d)
		}
		if strings.Contains(text, "\n  round: dc in each\n") && strings.HasPrefix(text, "part body") {
			oneForOne(t, f, faults)
		}
	}
}

// oneForOne checks a source in which every other line is a good row: each line between has one message, and no good one has.
func oneForOne(t *testing.T, f *source.File, faults diag.List) {
	messages := map[int]int{}
	for _, d := range faults {
		messages[f.Line(d.Span.Start)]++
	}
	for line := 3; line < f.Lines()-1; line++ {
		want := line % 2
		if messages[line] != want {
			t.Errorf("%s:%d: %d messages, want %d: %s", f.Name, line, messages[line], want, f.LineText(line))
		}
	}
}
