package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// What a page says in both languages of the sources under testdata/spoken and of the worked constructions. A change of a golden
// file is to be read as prose.
func TestSpoken(t *testing.T) {
	for dir, golden := range map[string]string{"testdata/spoken": "testdata/spoken/%s.golden", "../../testdata/cases": "../../testdata/cases/printed/%s.txt", "../../examples": "testdata/spoken/examples/%s.golden"} {
		paths, err := filepath.Glob(dir + "/*.ovillo")
		require.NoError(t, err)
		require.NotEmpty(t, paths)
		for _, path := range paths {
			name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
			t.Run(name, func(t *testing.T) { compareSpoken(t, path, fmt.Sprintf(golden, name)) })
		}
	}
}

func compareSpoken(t *testing.T, path, golden string) {
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	file, found := lang.Parse(source.NewFile(filepath.Base(path), string(text)))
	p, more := compile.Compile(file)
	found = append(found, more...)
	if found.HasErrors() {
		for _, d := range found {
			t.Errorf("%s: %s %q %v", path, d.Code, file.Source.Slice(d.Span), d.Args)
		}
		return
	}
	got := spoken(t, p)
	if *update {
		require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	if string(want) != got {
		t.Errorf("%s does not hold what is said now; read the difference and run with -update\n%s", golden, got)
	}
}

// spoken is all that is said of the parts of a pattern and of its finishing.
func spoken(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	both := func(f func(l *words.Language)) {
		for _, tag := range []string{"en-US", "es"} {
			l, err := words.For(tag)
			require.NoError(t, err)
			f(l)
		}
	}
	for i, part := range p.Parts {
		fmt.Fprintf(&b, "== %s\n", part.Name)
		both(func(l *words.Language) {
			fmt.Fprintf(&b, "-- %s\n", l.PartTitle(p, i))
			if note := plainText(l.PartNote(p, part)); note != "" {
				fmt.Fprintf(&b, "   %s\n", note)
			}
			if start := l.Start(p, part); len(start.Body) > 0 {
				b.WriteString(stepSpoken(start))
			}
			for _, s := range part.Steps {
				b.WriteString(stepSpoken(l.Step(p, part, s)))
			}
		})
	}
	if len(p.Finish) > 0 {
		b.WriteString("== finishing\n")
		both(func(l *words.Language) {
			b.WriteString("--\n")
			for _, f := range p.Finish {
				fmt.Fprintln(&b, plainText(l.Finishing(p, f)))
			}
		})
	}
	return b.String()
}

func plainText(t rich.Text) string { return strings.ReplaceAll(t.String(), "\u00a0", " ") }

func stepSpoken(st words.StepText) string {
	var out []string
	for _, s := range []string{plainText(st.Only), strings.TrimSpace(plainText(st.Label) + " " + strings.Join(st.Slots, " | ")), plainText(st.Body)} {
		if s != "" {
			out = append(out, s)
		}
	}
	text := strings.Join(out, ": ")
	if c := st.Count; c != nil {
		text += " (" + strings.TrimSpace(plainText(c.Line)+" "+strings.Join(c.Slots, " | ")+" "+plainText(c.Unit)) + ")"
	}
	return text + "\n"
}
