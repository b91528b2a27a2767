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

// Sources under testdata/spoken, and what a page says of each step in both languages. A change of a golden file is to be read
// as prose.
func TestSpoken(t *testing.T) {
	paths, err := filepath.Glob("testdata/spoken/*.ovillo")
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	for _, path := range paths {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		file, found := lang.Parse(source.NewFile(filepath.Base(path), string(text)))
		p, more := compile.Compile(file)
		found = append(found, more...)
		for _, d := range found {
			if found.HasErrors() {
				t.Errorf("%s: %s %q %v", path, d.Code, file.Source.Slice(d.Span), d.Args)
			}
		}
		if found.HasErrors() {
			continue
		}
		got, golden := spoken(t, p), strings.TrimSuffix(path, ".ovillo")+".golden"
		if *update {
			require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
		}
		want, err := os.ReadFile(golden)
		require.NoError(t, err)
		if string(want) != got {
			t.Errorf("%s does not hold what is said now; read the difference and run with -update\n%s", golden, got)
		}
	}
}

// spoken is all that is said of the steps of a pattern.
func spoken(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	for i, part := range p.Parts {
		fmt.Fprintf(&b, "== %s\n", part.Name)
		for _, tag := range []string{"en-US", "es"} {
			l, err := words.For(tag)
			require.NoError(t, err)
			fmt.Fprintf(&b, "-- %s\n", l.PartTitle(p, i))
			for _, s := range part.Steps {
				b.WriteString(stepSpoken(l.Step(p, part, s)))
			}
		}
	}
	return b.String()
}

func stepSpoken(st words.StepText) string {
	plain := func(t rich.Text) string { return strings.ReplaceAll(t.String(), "\u00a0", " ") }
	var out []string
	for _, s := range []string{plain(st.Only), strings.TrimSpace(plain(st.Label) + " " + strings.Join(st.Slots, " | ")), plain(st.Body)} {
		if s != "" {
			out = append(out, s)
		}
	}
	text := strings.Join(out, ": ")
	if c := st.Count; c != nil {
		text += " (" + strings.TrimSpace(plain(c.Line)+" "+strings.Join(c.Slots, " | ")+" "+plain(c.Unit)) + ")"
	}
	return text + "\n"
}
