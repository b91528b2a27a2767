package pdf

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"strings"

	"ovillo/render/font"
	"ovillo/render/page"
)

// embedFace adds a font and returns its object.
func (f *file) embedFace(i page.Face, c cutFace) int {
	face := font.Of(i)
	name := subsetTag(c.runes) + "+" + face.Name()
	program := f.addStream(fmt.Sprintf("/Filter /FlateDecode /Length1 %d", c.size), c.program)
	glyphs := f.addStream("/Filter /FlateDecode", c.glyphs)
	unicode := f.addStream("/Filter /FlateDecode", deflate(toUnicode(c.runes)))
	descriptor := f.add(f.describe(i, name, program, c.runes))
	descendant := f.add(fmt.Sprintf("<</Type /Font /Subtype /CIDFontType2 /BaseFont /%s"+
		" /CIDSystemInfo <</Registry (Adobe) /Ordering (Identity) /Supplement 0>>"+
		" /FontDescriptor %s /CIDToGIDMap %s /DW %d /W [%s]>>",
		name, reference(descriptor), reference(glyphs), face.Advance(0), widths(face, c.runes)))
	return f.add(fmt.Sprintf("<</Type /Font /Subtype /Type0 /BaseFont /%s /Encoding /Identity-H /DescendantFonts [%s] /ToUnicode %s>>",
		name, reference(descendant), reference(unicode)))
}

// describe writes the descriptor of a face.
func (f *file) describe(i page.Face, name string, program int, runes []rune) string {
	const serifs, symbolic = 2, 4 // symbolic: its glyphs are not those of the standard Latin set
	flags := symbolic
	if i == page.Serif || i == page.SerifBold {
		flags |= serifs
	}
	face := font.Of(i)
	ascent, descent, capHeight, xHeight := face.Vertical()
	box := face.Bounds()
	return fmt.Sprintf("<</Type /FontDescriptor /FontName /%s /Flags %d /FontBBox [%d %d %d %d] /ItalicAngle 0"+
		" /Ascent %d /Descent %d /CapHeight %d /XHeight %d /StemV %d /FontFile2 %s /CIDSet %s>>",
		name, flags, box[0], box[1], box[2], box[3], ascent, -descent, capHeight, xHeight, face.Stem(),
		reference(program), reference(f.addStream("/Filter /FlateDecode", deflate(cidSet(runes)))))
}

// subsetTag is the six letters that a font cut down to some glyphs carries before its name.
func subsetTag(runes []rune) string {
	sum := sha256.Sum256([]byte(string(runes)))
	var tag [6]byte
	for i := range tag {
		tag[i] = 'A' + sum[i]%26
	}
	return string(tag[:])
}

// widths lists the advances of the runes, neighbours together.
func widths(face *font.Face, runes []rune) string {
	var b strings.Builder
	for i, r := range runes {
		if i == 0 || runes[i-1] != r-1 {
			if i > 0 {
				b.WriteString("] ")
			}
			fmt.Fprintf(&b, "%d [%d", r, face.Advance(r))
		} else {
			fmt.Fprintf(&b, " %d", face.Advance(r))
		}
	}
	b.WriteString("]")
	return b.String()
}

// toUnicode maps the codes in use to themselves, for a code is its rune.
func toUnicode(runes []rune) []byte {
	var b bytes.Buffer
	b.WriteString("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n" +
		"/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n" +
		"/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n" +
		"1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n")
	const most = 100 // entries that one block may have
	for len(runes) > 0 {
		block := runes[:min(most, len(runes))]
		runes = runes[len(block):]
		fmt.Fprintf(&b, "%d beginbfchar\n", len(block))
		for _, r := range block {
			fmt.Fprintf(&b, "<%04X> <%04X>\n", r, r)
		}
		b.WriteString("endbfchar\n")
	}
	b.WriteString("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend")
	return b.Bytes()
}

// cidSet is a bit for each code that has a glyph; PDF/A-1 asks for it. Code 0 is the missing glyph, always there.
func cidSet(runes []rune) []byte {
	bits := make([]byte, runes[len(runes)-1]/8+1)
	bits[0] = 0x80
	for _, r := range runes {
		bits[r/8] |= 0x80 >> (r % 8)
	}
	return bits
}

// setResources writes what all pages draw with.
func (f *file) setResources(fonts [faceCount]int, pictures []int) {
	var b strings.Builder
	b.WriteString("<</ProcSet [/PDF /Text /ImageB /ImageC] /Font <<")
	for i, n := range fonts {
		if n > 0 {
			fmt.Fprintf(&b, " /F%d %s", i, reference(n))
		}
	}
	b.WriteString(">> /XObject <<")
	for i, n := range pictures {
		fmt.Fprintf(&b, " /I%d %s", i, reference(n))
	}
	b.WriteString(">>>>")
	f.set(resourcesObject, b.String())
}
