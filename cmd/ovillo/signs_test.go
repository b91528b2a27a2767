package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"

	"ovillo/lang/sign"
	"ovillo/lang/source"
	"ovillo/render/font"
	"ovillo/render/page"

	"ovillo/cmd/ovillo/whole"
)

// signsOfTheFaces are the signs that every face draws, as lang/sign keeps them.
func signsOfTheFaces() string {
	var b strings.Builder
	b.WriteString("# The code points that all faces of the pages draw. Written by the tests of the command: go test ./cmd/ovillo -run Signs -update\n")
	all := func(r rune) bool {
		if unicode.Is(unicode.Cs, r) || unicode.Is(unicode.Cc, r) {
			return false
		}
		for f := page.Sans; f <= page.SerifBold; f++ {
			if font.Of(f).Missing(string(r)) != nil {
				return false
			}
		}
		return true
	}
	for r := rune(1); r <= 0xffff; r++ {
		if !all(r) {
			continue
		}
		end := r
		for end < 0xffff && all(end+1) {
			end++
		}
		if end == r {
			fmt.Fprintf(&b, "%04X\n", r)
		} else {
			fmt.Fprintf(&b, "%04X-%04X\n", r, end)
		}
		r = end
	}
	return b.String()
}

// What the check of a source lets pass is what the faces have, and nothing else.
func TestSignsAreThoseOfTheFaces(t *testing.T) {
	path := filepath.Join("..", "..", "lang", "sign", "signs.txt")
	want := signsOfTheFaces()
	if *whole.Update {
		require.NoError(t, os.WriteFile(path, []byte(want), 0o644))
	}
	got, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, want, string(got))
	for _, r := range "aÁñ¿«»½×–“☃" {
		require.Equal(t, r != '☃', sign.Has(r), "%c", r)
	}
}

// Whatever the check of a source lets pass can be set: a note with each of the signs comes to pages without a fault.
func TestEverySignCanBeSet(t *testing.T) {
	var line, notes strings.Builder
	n := 0
	for r := rune(0xa1); r <= 0xffff; r++ {
		if !sign.Has(r) || unicode.IsSpace(r) {
			continue
		}
		n++
		fmt.Fprintf(&line, "%c ", r)
		if n%40 == 0 {
			fmt.Fprintf(&notes, "    en | %s\n    es | %s\n", line.String(), line.String())
			line.Reset()
		}
	}
	require.Greater(t, n, 800)
	notes.WriteString("    en | parted\tby\r tabs\n    es | separado\tpor\t tabuladores\n")
	text := "pattern trial\n  title en \"Trial\tby tabs\" es \"Prueba\"\n  terms us\nend\nsizes \"S\"\nend\npart strip\n  title en \"Strip\" es \"Tira\"\n  in rows\n  chain 6\n" +
		"  row: sc in each = 6\n  note\n" + notes.String() + "  end\nend\n"
	s := &loaded{path: "trial.ovillo", file: source.NewFile("trial.ovillo", text)}
	p, found := s.compile()
	require.False(t, found.HasErrors(), printed(t, s, found))
	for _, langs := range [][]string{{"en", "es"}, {"es"}} {
		_, pages, err := setPages(p, edition{langs: langs}, "trial.ovillo")
		require.NoError(t, err)
		require.Positive(t, pages)
	}
}
