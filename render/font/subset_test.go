package font

import (
	"bytes"
	"encoding/binary"
	"testing"
	"unicode"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
)

// runesOf lists all that a face draws.
func runesOf(f *Face) (runes []rune) {
	for r := rune(' '); r <= 0xffff; r++ {
		if g, _ := f.glyph(r); g != 0 && !unicode.Is(unicode.Cs, r) {
			runes = append(runes, r)
		}
	}
	return runes
}

// sameGlyph compares a glyph of a subset with that of the whole face, both as golang.org/x/image reads them.
func sameGlyph(t *testing.T, f *Face, whole sfnt.GlyphIndex, s *sfnt.Font, cut sfnt.GlyphIndex, r rune) {
	t.Helper()
	var a, b sfnt.Buffer
	want, err := f.sfnt.LoadGlyph(&a, whole, f.em, nil)
	if err != nil {
		t.Fatal(err)
	}
	got, err := s.LoadGlyph(&b, cut, f.em, nil)
	if err != nil {
		t.Fatalf("%s: %U: %v", f.name, r, err)
	}
	if len(got) != len(want) {
		t.Fatalf("%s: %U has %d steps, in the face %d", f.name, r, len(got), len(want))
	}
	for i := range got {
		if got[i] != want[i] {
			t.Fatalf("%s: %U differs at step %d: %v, in the face %v", f.name, r, i, got[i], want[i])
		}
	}
	advance := func(s *sfnt.Font, g sfnt.GlyphIndex) any {
		v, err := s.GlyphAdvance(&a, g, f.em, font.HintingNone)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	if got, want := advance(s, cut), advance(f.sfnt, whole); got != want {
		t.Fatalf("%s: %U is %v wide, in the face %v", f.name, r, got, want)
	}
}

// readable adds what golang.org/x/image asks of a font beside: a PDF has no use for these tables.
func readable(t *testing.T, f *Face, program []byte) *sfnt.Font {
	t.Helper()
	all := []table{}
	for tag, data := range tablesOf(program) {
		all = append(all, table{tag, data})
	}
	for _, tag := range []string{"cmap", "name", "OS/2", "post"} {
		all = append(all, table{tag, tablesOf(f.program)[tag]})
	}
	s, err := sfnt.Parse(join(all))
	if err != nil {
		t.Fatalf("%s: %v", f.name, err)
	}
	return s
}

func TestSubsetDrawsAsTheFaceDoes(t *testing.T) {
	for _, face := range all {
		f := Of(face)
		runes := runesOf(f)
		if len(runes) < 800 {
			t.Fatalf("%s: only %d runes", f.name, len(runes))
		}
		for _, chosen := range [][]rune{runes, []rune(" Añejo 12½ ×"), {'Ǻ'}, {' '}} {
			cut := f.Subset(chosen)
			s := readable(t, f, cut.Program)
			sameGlyph(t, f, 0, s, 0, 0)
			for i, r := range chosen {
				g, _ := f.glyph(r)
				sameGlyph(t, f, g, s, sfnt.GlyphIndex(cut.Glyphs[i]), r)
			}
		}
	}
}

// A subset has the tables that a PDF needs and no others, no glyph that is not used, and the sums that ISO/IEC 14496-22 (the
// OpenType specification, "otff" and "head") defines.
func TestSubsetIsSmallAndWhole(t *testing.T) {
	needed := map[string]bool{"glyf": true, "head": true, "hhea": true, "hmtx": true, "loca": true, "maxp": true} // ISO 32000-1, 9.9
	allowed := map[string]bool{"cvt ": true, "fpgm": true, "prep": true}
	for _, face := range all {
		f := Of(face)
		cut := f.Subset([]rune("aáb\u00a0 "))
		if len(cut.Program) > 8000 {
			t.Errorf("%s: four letters take %d bytes", f.name, len(cut.Program))
		}
		tables := tablesOf(cut.Program)
		for tag := range tables {
			if !needed[tag] && !allowed[tag] {
				t.Errorf("%s: table %q", f.name, tag)
			}
		}
		for tag := range needed {
			if tables[tag] == nil {
				t.Errorf("%s: no table %q", f.name, tag)
			}
		}
		n := int(binary.BigEndian.Uint16(tables["maxp"][4:]))
		if most := 1 + 4 + 1; n < 5 || n > most { // the missing glyph, a, á, b, the space, and the accent of á
			t.Errorf("%s: %d glyphs", f.name, n)
		}
		if got := len(tables["loca"]); got != 4*(n+1) {
			t.Errorf("%s: loca has %d bytes for %d glyphs", f.name, got, n)
		}
		if got := len(tables["hmtx"]); got != 4*n {
			t.Errorf("%s: hmtx has %d bytes for %d glyphs", f.name, got, n)
		}
		if sum := checksum(cut.Program); sum != 0xB1B0AFBA {
			t.Errorf("%s: the file adds up to %X", f.name, sum)
		}
		if cut.Glyphs[3] != cut.Glyphs[4] {
			t.Errorf("%s: two spaces of the same look have glyphs %d and %d", f.name, cut.Glyphs[3], cut.Glyphs[4])
		}
	}
}

// The sums of the tables of the faces were worked out by the program that made the files.
func TestChecksumsAreThoseOfTheFiles(t *testing.T) {
	for _, face := range all {
		f := Of(face)
		tables := tablesOf(f.program)
		for i := range tables {
			if i == "head" {
				continue // its sum is that without the sum of the file
			}
			entry := bytes.Index(f.program, []byte(i))
			if got, want := checksum(tables[i]), binary.BigEndian.Uint32(f.program[entry+4:]); got != want {
				t.Errorf("%s: %s adds up to %X, the file says %X", f.name, i, got, want)
			}
		}
		whole := tables["head"]
		if got, want := checksum(withUint32(whole, checksumAdjustment, 0)), binary.BigEndian.Uint32(f.program[bytes.Index(f.program, []byte("head"))+4:]); got != want {
			t.Errorf("%s: head adds up to %X, the file says %X", f.name, got, want)
		}
	}
}

func BenchmarkSubset(b *testing.B) {
	f := Of(all[0])
	runes := []rune(" ,-.0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyzáéíñóú½×–")
	for b.Loop() {
		f.Subset(runes)
	}
}
