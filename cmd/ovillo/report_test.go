package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/stretchr/testify/require"

	"ovillo/compile"
	"ovillo/compile/picture/files"
	"ovillo/lang/diag"
	"ovillo/lang/source"
	"ovillo/render/page"
	"ovillo/render/pdf"
	"ovillo/render/report"
	"ovillo/render/words"

	"ovillo/cmd/ovillo/whole"
)

// TestReportDecides: for every check that the program decides there is a source that passes, with something looked at, and
// one in which something is found.
func TestReportDecides(t *testing.T) {
	for _, c := range report.Checks {
		if c.How != report.Machine || c.ID == "S01" || c.ID == "S02" {
			continue
		}
		t.Run(c.ID, func(t *testing.T) {
			t.Parallel()
			archive, err := txtar.ParseFile(filepath.Join("testdata", "report", c.ID+".txtar"))
			require.NoError(t, err)
			require.NotEmpty(t, strings.TrimSpace(string(archive.Comment)), "what the fault is")
			pass, code := reportOf(t, file(t, archive, "pass.ovillo"), nil)
			require.Equal(t, clean, code, printedReport(t, pass))
			held := resultOf(t, pass, c.ID)
			require.Equal(t, report.Held, held.Status, printedReport(t, pass))
			require.Positive(t, held.N, c.ID)
			fail, _ := reportOf(t, file(t, archive, "fail.ovillo"), nil)
			require.Equal(t, report.Found, resultOf(t, fail, c.ID).Status, printedReport(t, fail))
		})
	}
}

func file(t *testing.T, a *txtar.Archive, name string) string {
	t.Helper()
	for _, f := range a.Files {
		if f.Name == name {
			return string(f.Data)
		}
	}
	t.Fatalf("there is no %s", name)
	return ""
}

// reportOf makes the report on a source with the whole pipeline.
func reportOf(t *testing.T, text string, change func(in *report.Input)) (*report.Report, int) {
	t.Helper()
	l, err := words.For("en")
	require.NoError(t, err)
	in, code := reportInput(&loaded{path: "trial.ovillo", file: source.NewFile("trial.ovillo", text)}, []*words.Language{l})
	if change != nil {
		change(&in)
	}
	return report.Make(in), code
}

func resultOf(t *testing.T, r *report.Report, id string) *report.Result {
	t.Helper()
	for _, x := range r.Results {
		if x.ID == id {
			return x
		}
	}
	t.Fatalf("the report has no %s", id)
	return nil
}

func printedReport(t *testing.T, r *report.Report) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, report.Text(&b, r))
	return b.String()
}

// TestReportGolden: the whole report in both languages, on two examples, a small pattern that comes out and one that does not. A
// change is to be read as prose.
func TestReportGolden(t *testing.T) {
	for name, folder := range map[string]string{
		"hat": "testdata/reports", "broken": "testdata/reports", "duna-hat": "../../examples", "resaca-blanket": "../../examples"} {
		for _, lang := range []string{"en", "es"} {
			t.Run(name+"."+lang, func(t *testing.T) {
				path := filepath.Join(filepath.FromSlash(folder), name+".ovillo")
				data, err := os.ReadFile(path)
				require.NoError(t, err)
				l, err := words.For(lang)
				require.NoError(t, err)
				r, _ := (&call{}).reportOn(&loaded{path: path, file: source.NewFile(name+".ovillo", string(data))}, []*words.Language{l})
				got, golden := printedReport(t, r), filepath.Join("testdata", "reports", name+"."+lang+".txt")
				if *whole.Update {
					require.NoError(t, os.WriteFile(golden, []byte(got), 0o644))
				}
				want, err := os.ReadFile(golden)
				require.NoError(t, err)
				if string(want) != got {
					t.Errorf("%s does not hold what is reported now; read the difference and run with -update\n%s", golden, firstOther(string(want), got))
				}
			})
		}
	}
}

// firstOther is the first line in which two texts differ.
func firstOther(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return a[i] + "\n" + b[i]
		}
	}
	return "one of them is longer"
}

// TestReportOnEveryMessage makes the report on the example of every message, in all its forms: the finding stands under its
// check, and what else could not be looked at is never said to hold.
func TestReportOnEveryMessage(t *testing.T) {
	l, err := words.For("es")
	require.NoError(t, err)
	for _, e := range diag.All() {
		t.Run(string(e.Code), func(t *testing.T) {
			t.Parallel()
			s := &loaded{path: "x.ovillo", open: files.Open, file: source.NewFile("x.ovillo", e.Whole())}
			if own, ok := compile.ReadOwnGauge(e.OwnGauge()); ok {
				s.gauges = append(s.gauges, own)
			}
			r, code := (&call{}).reportOn(s, []*words.Language{l})
			require.True(t, code == faulty || e.Severity != diag.Error)
			got := resultOf(t, r, report.CheckOf(string(e.Code)).ID)
			require.Equal(t, report.Found, got.Status)
			require.True(t, slices.ContainsFunc(got.Findings, func(f report.Finding) bool { return f.Code == string(e.Code) }))
			require.Contains(t, printedReport(t, r), "["+string(e.Code)+"]")
			require.NoError(t, report.JSON(io.Discard, r))
			require.NoError(t, pdf.Write(io.Discard, report.Compose(r, report.Options{Words: l}), pdf.Options{}))
			for _, x := range r.Results {
				require.False(t, x.Status == report.Held && (x.N == 0 || x.Why != ""), x.ID)
				require.False(t, (x.Status == report.NotChecked || x.Status == report.Nothing || x.Status == report.InPart) && x.Why == "", x.ID)
			}
		})
	}
}

// TestReportOnManySizes: pages of many sizes, whose lists are letters and whose figures stand in strips, hold every count as
// well, and a count that is wrong there is seen.
func TestReportOnManySizes(t *testing.T) {
	for _, sizes := range []int{1, 6, 12} {
		var names, es, chains, places, rows []string
		for z := range sizes {
			names, es = append(names, fmt.Sprintf("%q", fmt.Sprint("mat ", z+1))), append(es, fmt.Sprintf("%q", fmt.Sprint("tapete ", z+1)))
			chains, places, rows = append(chains, fmt.Sprint(60+4*z)), append(places, fmt.Sprint(15+z)), append(rows, fmt.Sprint(10+z))
		}
		text := strings.NewReplacer("NAMES", strings.Join(names, ", "), "NOMBRES", strings.Join(es, ", "), "CHAINS", perSize(chains),
			"ROWS", perSize(rows), "PLACES", perSize(places)).Replace(`pattern trial
  title en "Trial" es "Prueba"
  by "Estudio Marisma"
  edition 1, "2026-03"
  level easy
  terms us
end
sizes NAMES
  names es NOMBRES
end
part strip
  title en "Strip" es "Tira"
  in joined rounds
  chain CHAINS, join
  ROWS rounds: hdc in each = CHAINS
  round: [hdc in next 2, ch 1, skip 2] around = CHAINS / 2 hdc, PLACES spaces
  fasten off
end
`)
		r, code := reportOf(t, text, nil)
		require.Equal(t, clean, code, printedReport(t, r))
		require.Equal(t, report.Held, resultOf(t, r, "T66").Status, printedReport(t, r))
		r, _ = reportOf(t, text, onPages(func(d *page.Document) {
			for i := range d.Pages {
				for k, it := range d.Pages[i].Items {
					if g, ok := it.(page.Glyphs); ok {
						g.Text, g.Actual = strings.ReplaceAll(g.Text, "60", "61"), strings.ReplaceAll(g.Actual, "60", "61")
						d.Pages[i].Items[k] = g
					}
				}
			}
		}))
		require.Equal(t, report.Found, resultOf(t, r, "T66").Status, sizes)
	}
}

// perSize writes numbers as a source does, one a size.
func perSize(list []string) string {
	if len(list) == 1 {
		return list[0]
	}
	return list[0] + " (" + strings.Join(list[1:], ", ") + ")"
}
