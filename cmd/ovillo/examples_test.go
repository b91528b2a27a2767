package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/format"
	"ovillo/lang/source"
	"ovillo/render/book"
)

// sourcesIn reads all sources of a folder below the top of the repository.
func sourcesIn(t *testing.T, folder ...string) []*loaded {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join(append([]string{"..", ".."}, append(folder, "*.ovillo")...)...))
	if err != nil || len(paths) == 0 {
		t.Fatalf("no sources in %v (%v)", folder, err)
	}
	var out []*loaded
	for _, path := range paths {
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, &loaded{path: path, file: source.NewFile(filepath.Base(path), string(data))})
	}
	return out
}

// TestExamplesShine holds the examples to what they are there to show: no error, the usual shape, pages in every edition,
// and the same bytes each time.
func TestExamplesShine(t *testing.T) {
	for _, s := range sourcesIn(t, "examples") {
		t.Run(s.file.Name, func(t *testing.T) {
			t.Parallel()
			p, found := s.compile()
			if found.HasErrors() {
				t.Fatal(printed(t, s, found))
			}
			if set, _ := format.Source([]byte(s.file.Text)); string(set) != s.file.Text {
				t.Error("not in the usual shape: run ovillo fmt -w")
			}
			for _, e := range []edition{
				{langs: []string{"en", "es"}},
				{langs: []string{"en", "es"}, paper: book.Letter},
				{langs: []string{"en"}},
				{langs: []string{"es"}},
				{langs: []string{"es-MX", "en-GB"}},
			} {
				once, pages, err := setPages(p, e, s.file.Name)
				if err != nil || pages < 2 {
					t.Fatalf("%v: %d pages, %v", e, pages, err)
				}
				again, _, err := setPages(p, e, s.file.Name)
				if err != nil || !bytes.Equal(once, again) {
					t.Errorf("%v: other bytes the second time (%v)", e, err)
				}
			}
		})
	}
}

// TestCasesSet sets every worked construction: whatever checks can be printed.
func TestCasesSet(t *testing.T) {
	for _, s := range sourcesIn(t, "testdata", "cases") {
		t.Run(s.file.Name, func(t *testing.T) {
			t.Parallel()
			p, found := s.compile()
			if found.HasErrors() {
				t.Fatal(printed(t, s, found))
			}
			e := edition{}.of(p)
			if _, pages, err := setPages(p, e, s.file.Name); err != nil || pages < 1 {
				t.Errorf("%v: %d pages, %v", e.langs, pages, err)
			}
		})
	}
}

func printed(t *testing.T, s *loaded, found diag.List) string {
	t.Helper()
	var b strings.Builder
	if err := diag.Text(&b, s.file, found, "en", false); err != nil {
		t.Fatal(err)
	}
	return b.String()
}
