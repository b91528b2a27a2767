package compile_test

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// golden compares a text with the file of that name under testdata.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		require.NoError(t, os.MkdirAll(filepath.Dir(path), 0o755))
		require.NoError(t, os.WriteFile(path, got, 0o644))
		return
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err, "run the test with -update once, and read what it wrote")
	require.Equal(t, string(want), string(got))
}

// checked reads and checks a file that must have no errors.
func checked(t testing.TB, path string) *plan.Pattern {
	t.Helper()
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	sf := source.NewFile(filepath.Base(path), string(text))
	f, list := lang.Parse(sf)
	p, more := compile.Compile(f)
	list = append(list, more...)
	if list.HasErrors() {
		var b bytes.Buffer
		diag.Text(&b, sf, list, "en", false)
		t.Fatal(b.String())
	}
	return p
}

func sources(t testing.TB, pattern string) []string {
	t.Helper()
	paths, err := filepath.Glob(pattern)
	require.NoError(t, err)
	require.NotEmpty(t, paths, pattern)
	return paths
}

// counts writes the rows of a pattern, each with its counts in every size.
func counts(p *plan.Pattern) []byte {
	var b bytes.Buffer
	for _, part := range p.Parts {
		fmt.Fprintf(&b, "%s\n", part.Name)
		for z, rows := range part.Worked {
			fmt.Fprintf(&b, "  %s:", p.Sizes[z].Name)
			for i := 0; i < len(rows); {
				j := i
				for j+1 < len(rows) && rows[j+1].Stitches == rows[i].Stitches && rows[j+1].Spaces == rows[i].Spaces && rows[j+1].Taken == rows[i].Taken {
					j++
				}
				fmt.Fprintf(&b, " %d-%d: %d+%d of %d;", rows[i].Number, rows[j].Number, rows[i].Stitches, rows[i].Spaces, rows[i].Taken)
				i = j + 1
			}
			b.WriteByte('\n')
		}
	}
	return b.Bytes()
}

// TestCounts keeps the counts of every example: part, size, and rows as first-last: stitches+spaces of places taken.
func TestCounts(t *testing.T) {
	for _, path := range sources(t, "../examples/*.ovillo") {
		name := strings.TrimSuffix(filepath.Base(path), ".ovillo")
		t.Run(name, func(t *testing.T) { golden(t, "counts/"+name+".txt", counts(checked(t, path))) })
	}
}

// TestMessages keeps every message as it prints, in both languages, for the example behind its code.
func TestMessages(t *testing.T) {
	for _, language := range []string{"en", "es"} {
		for _, family := range []string{"1", "2", "3", "4", "5", "6", "7", "8", "9"} {
			var b bytes.Buffer
			for _, e := range diag.All() {
				if !strings.HasPrefix(string(e.Code), "OV"+family) {
					continue
				}
				list := raised(e)
				fmt.Fprintf(&b, "# %s\n", e.Code)
				require.NoError(t, diag.Text(&b, loadedExample(e), list, language, false))
				b.WriteByte('\n')
			}
			if b.Len() > 0 {
				golden(t, "messages/"+family+"xx."+language, b.Bytes())
			}
		}
	}
}

// TestSeveralErrors wants every cause of a source with several, and none that follows from another.
func TestSeveralErrors(t *testing.T) {
	list := found(`sizes "S", "M"
end

part one
  title en "One" es "Uno"
  in joined rounds
  chain 12 (13), join
  round: sc in each = 12 (13)
  round: [sc in next 2, ch 1, skip 1] around = 8 (9) sts, 4 spaces
  round: sc in each
end

part two like one
  title en "Two" es "Dos"
end

part three
  title en "Three" es "Tres"
  in rows
  chain 10
  row: hcd in each = 10
  row: sc in next 4
  row: sc in next 99
end
`)
	var codes []string
	for _, d := range list {
		codes = append(codes, string(d.Code))
	}
	// Size M does not come out in the repeat; size S, where it does, meets a space in the next round. Part two works the
	// same rows and says nothing again; in part three only the misspelt stitch is a cause.
	require.ElementsMatch(t, []string{"OV405", "OV403", "OV203"}, codes)
}

func BenchmarkCheckLeggings(b *testing.B) {
	text, err := os.ReadFile("../examples/marisma-leggings.ovillo")
	require.NoError(b, err)
	f, _ := lang.Parse(source.NewFile("leggings", string(text)))
	b.ReportAllocs()
	for b.Loop() {
		if p, list := compile.Compile(f); p == nil || list.HasErrors() {
			b.Fatal("the leggings do not check")
		}
	}
}

func BenchmarkCheckBlanket(b *testing.B) {
	f, _ := lang.Parse(source.NewFile("blanket", "sizes \"one\"\nend\n\npart blanket\n  in rows\n  chain 200\n  500 rows: sc in each = 200\nend\n"))
	b.ReportAllocs()
	for b.Loop() {
		if p, _ := compile.Compile(f); p == nil || len(p.Parts[0].Worked[0]) != 500 {
			b.Fatal("the blanket does not check")
		}
	}
}

// FuzzCompile feeds whole sources: whatever they hold, the checker ends, and what it says can be printed. Shrinking inputs takes
// most of the time unless it is bounded: -fuzzminimizetime 10x.
func FuzzCompile(f *testing.F) {
	compile.LimitStitches(f, 20_000)
	for _, pattern := range []string{"../examples/*.ovillo", "../lang/testdata/*.ovillo", casesAt + "/*.ovillo"} {
		for _, path := range sources(f, pattern) {
			text, err := os.ReadFile(path)
			require.NoError(f, err)
			f.Add(string(text))
		}
	}
	for _, e := range diag.All() {
		f.Add(e.Example)
	}
	f.Fuzz(func(t *testing.T, text string) {
		sf := source.NewFile("fuzz", text)
		tree, list := lang.Parse(sf)
		p, more := compile.Compile(tree)
		list = append(list, more...)
		var b bytes.Buffer
		if err := diag.Text(&b, sf, list, "es", false); err != nil {
			t.Fatal(err)
		}
		if !list.HasErrors() && p != nil {
			for z := range p.Sizes {
				p.In(z).Unrolled()
			}
			p.Unrolled()
			for _, part := range p.Parts {
				for z, rows := range part.Worked {
					for _, r := range rows {
						if r.Stitches < 0 || r.Spaces < 0 || r.Taken < 0 {
							t.Fatalf("%s, size %d, row %d: %+v", part.Name, z, r.Number, r)
						}
					}
				}
			}
		}
	})
}
