package font

import (
	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
)

// millimetres turns points into millimetres.
const millimetres = 25.4 / 72

// Width is the length of a text in millimetres at a size in points, with pair kerning.
func (f *Face) Width(s string, pt float64) float64 {
	return float64(f.units(Compose(s))) * pt / 1000 * millimetres
}

// Tracked is the length of a text whose letters stand apart by track ems more than usual.
func (f *Face) Tracked(s string, pt, track float64) float64 {
	s = Compose(s)
	gaps := -1
	for range s {
		gaps++
	}
	return (float64(f.units(s))/1000 + float64(max(gaps, 0))*track) * pt * millimetres
}

func (f *Face) units(s string) int {
	sum, prev := 0, rune(-1)
	for _, r := range s {
		if prev >= 0 {
			sum += f.Kern(prev, r)
		}
		sum += f.Advance(r)
		prev = r
	}
	return sum
}

// Advance is the width of a rune's glyph in thousandths of an em; that of the missing glyph for a rune it lacks.
func (f *Face) Advance(r rune) int {
	_, advance := f.glyph(r)
	return advance
}

// Kern is the correction between two runes in thousandths of an em: negative draws them together.
func (f *Face) Kern(a, b rune) int {
	if uint32(a) > 0xFFFF || uint32(b) > 0xFFFF {
		return 0
	}
	key := uint32(a)<<16 | uint32(b)
	if v, ok := f.kerns.get(key); ok {
		return int(int16(v))
	}
	ga, _ := f.glyph(a)
	gb, _ := f.glyph(b)
	k := 0
	f.mu.Lock()
	// An error means that the face has no correction for the pair.
	if v, err := f.sfnt.Kern(&f.buf, ga, gb, f.em, font.HintingNone); err == nil {
		k = int(f.thousandths(v))
	}
	f.mu.Unlock()
	f.kerns.put(key, uint32(uint16(int16(k))))
	return k
}

// glyph returns the number and the advance of a rune's glyph; number 0 is the missing glyph.
func (f *Face) glyph(r rune) (sfnt.GlyphIndex, int) {
	key := uint32(r)
	if v, ok := f.glyphs.get(key); ok {
		return sfnt.GlyphIndex(v & 0xFFFF), int(v >> 16)
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	g, err := f.sfnt.GlyphIndex(&f.buf, r)
	if err != nil {
		g = 0
	}
	advance := 0
	if a, err := f.sfnt.GlyphAdvance(&f.buf, g, f.em, font.HintingNone); err == nil {
		advance = int(f.thousandths(a) + 0.5) // whole numbers, as the width array of the PDF has them
	}
	f.glyphs.put(key, uint32(advance)<<16|uint32(g))
	return g, advance
}

// Ascent is the room above the baseline in millimetres.
func (f *Face) Ascent(pt float64) float64 { return f.ascent * pt / 1000 * millimetres }

// Descent is the room below the baseline in millimetres, positive.
func (f *Face) Descent(pt float64) float64 { return f.descent * pt / 1000 * millimetres }

// CapHeight is the height of a capital in millimetres.
func (f *Face) CapHeight(pt float64) float64 { return f.capHeight * pt / 1000 * millimetres }

// XHeight is the height of a small letter in millimetres.
func (f *Face) XHeight(pt float64) float64 { return f.xHeight * pt / 1000 * millimetres }

// Baseline is the distance in millimetres from the top of a line of the given leading to its baseline: the face's own
// height stands in the middle of the leading.
func (f *Face) Baseline(pt, leading float64) float64 {
	a, d := f.Ascent(pt), f.Descent(pt)
	return (leading-(a+d))/2 + a
}

// Vertical returns the four vertical measures in thousandths of an em, all positive.
func (f *Face) Vertical() (ascent, descent, capHeight, xHeight int) {
	return int(f.ascent), int(f.descent), int(f.capHeight), int(f.xHeight)
}
