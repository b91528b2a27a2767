package font

import (
	"encoding/binary"
	"slices"

	"golang.org/x/image/font/sfnt"
)

// Subset is a face cut down to some glyphs, to be embedded in a file of another kind.
type Subset struct {
	Program []byte   // a TrueType font with the tables that ISO 32000-1, 9.9, asks for, and no others
	Glyphs  []uint16 // the number in it of each rune's glyph; 0 is the missing glyph
}

// Subset cuts the face down to the glyphs of runes, their parts, and the missing glyph. Runes that the face draws alike share
// a glyph. The tables are those of the OpenType specification, 1.9.
func (f *Face) Subset(runes []rune) Subset {
	tables := tablesOf(f.program)
	c := cutter{glyf: tables["glyf"], loca: tables["loca"], long: tables["head"][indexToLocFormat+1] != 0, numbers: map[sfnt.GlyphIndex]uint16{}}
	c.number(0)
	s := Subset{Glyphs: make([]uint16, len(runes))}
	for i, r := range runes {
		g, _ := f.glyph(r)
		s.Glyphs[i] = c.number(g)
	}
	c.copyGlyphs()
	s.Program = join(append([]table{
		{"glyf", c.outlines},
		{"head", withUint16(withUint32(tables["head"], checksumAdjustment, 0), indexToLocFormat, 1)},
		{"hhea", withUint16(tables["hhea"], numberOfHMetrics, uint16(len(c.glyphs)))},
		{"hmtx", c.metrics(tables["hmtx"], int(binary.BigEndian.Uint16(tables["hhea"][numberOfHMetrics:])))},
		{"loca", c.places},
		{"maxp", withUint16(tables["maxp"], numGlyphs, uint16(len(c.glyphs)))},
	}, hintsOf(tables)...))
	return s
}

// Where the fields stand that are changed, in bytes from the start of their table.
const (
	checksumAdjustment = 8  // head
	indexToLocFormat   = 50 // head: 1 if places of glyphs are whole 32-bit numbers
	numberOfHMetrics   = 34 // hhea
	numGlyphs          = 4  // maxp
)

// hintsOf returns the programs that glyphs call, of which a face need not have any.
func hintsOf(tables map[string][]byte) (hints []table) {
	for _, tag := range []string{"cvt ", "fpgm", "prep"} {
		if t, ok := tables[tag]; ok {
			hints = append(hints, table{tag, t})
		}
	}
	return hints
}

// cutter copies glyphs and numbers them anew.
type cutter struct {
	glyf, loca []byte
	long       bool
	glyphs     []sfnt.GlyphIndex // the old numbers by the new ones
	numbers    map[sfnt.GlyphIndex]uint16
	outlines   []byte // the new table glyf
	places     []byte // the new table loca, of whole numbers
}

// number gives a glyph its new number.
func (c *cutter) number(g sfnt.GlyphIndex) uint16 {
	n, ok := c.numbers[g]
	if !ok {
		n = uint16(len(c.glyphs))
		c.numbers[g] = n
		c.glyphs = append(c.glyphs, g)
	}
	return n
}

// copyGlyphs copies the outlines; the parts that they name join the glyphs as it goes.
func (c *cutter) copyGlyphs() {
	for i := 0; i < len(c.glyphs); i++ {
		c.places = binary.BigEndian.AppendUint32(c.places, uint32(len(c.outlines)))
		at := len(c.outlines)
		c.outlines = append(c.outlines, c.outline(c.glyphs[i])...)
		c.renumber(c.outlines[at:])
		for len(c.outlines)%4 != 0 {
			c.outlines = append(c.outlines, 0)
		}
	}
	c.places = binary.BigEndian.AppendUint32(c.places, uint32(len(c.outlines)))
}

// outline is a glyph as it stands in the face; a space has none.
func (c *cutter) outline(g sfnt.GlyphIndex) []byte {
	place := func(i int) int { return 2 * int(binary.BigEndian.Uint16(c.loca[2*i:])) }
	if c.long {
		place = func(i int) int { return int(binary.BigEndian.Uint32(c.loca[4*i:])) }
	}
	return c.glyf[place(int(g)):place(int(g)+1)]
}

// renumber gives the parts of an outline that is put together from others their new numbers.
func (c *cutter) renumber(outline []byte) {
	const (
		header  = 10 // the number of contours, negative for parts, and the box
		words   = 0x0001
		scale   = 0x0008
		more    = 0x0020
		scales  = 0x0040
		matrix  = 0x0080
		perPart = 4 // flags and number
	)
	if len(outline) == 0 || int16(binary.BigEndian.Uint16(outline)) >= 0 {
		return
	}
	for part := outline[header:]; ; {
		flags := binary.BigEndian.Uint16(part)
		old := sfnt.GlyphIndex(binary.BigEndian.Uint16(part[2:]))
		binary.BigEndian.PutUint16(part[2:], c.number(old))
		if flags&more == 0 {
			return
		}
		size := perPart + 2
		if flags&words != 0 {
			size += 2
		}
		switch {
		case flags&scale != 0:
			size += 2
		case flags&scales != 0:
			size += 4
		case flags&matrix != 0:
			size += 8
		}
		part = part[size:]
	}
}

// metrics is the new table hmtx. In the old one, glyphs behind the first full ones are as wide as the last of those.
func (c *cutter) metrics(hmtx []byte, full int) (out []byte) {
	for _, g := range c.glyphs {
		i := int(g)
		if i < full {
			out = append(out, hmtx[4*i:4*i+4]...)
			continue
		}
		out = append(out, hmtx[4*(full-1):4*(full-1)+2]...)
		out = append(out, hmtx[4*full+2*(i-full):][:2]...)
	}
	return out
}

// table is a part of a font file, under a name of four letters.
type table struct {
	tag  string
	data []byte
}

// tablesOf takes a font file apart.
func tablesOf(program []byte) map[string][]byte {
	n := int(binary.BigEndian.Uint16(program[4:]))
	tables := make(map[string][]byte, n)
	for i := range n {
		entry := program[headerSize+entrySize*i:]
		at, size := binary.BigEndian.Uint32(entry[8:]), binary.BigEndian.Uint32(entry[12:])
		tables[string(entry[:4])] = program[at : at+size]
	}
	return tables
}

// The sizes of the head of a font file and of an entry of its directory, in bytes.
const (
	headerSize = 12
	entrySize  = 16
)

// join puts a font file together. The directory is in the order of the tags, as the specification asks.
func join(tables []table) []byte {
	slices.SortFunc(tables, func(a, b table) int { return slices.Compare([]byte(a.tag), []byte(b.tag)) })
	size := headerSize + entrySize*len(tables)
	for _, t := range tables {
		size += len(t.data) + 3
	}
	b := make([]byte, headerSize+entrySize*len(tables), size)
	power, log := 1, 0
	for power*2 <= len(tables) {
		power, log = power*2, log+1
	}
	binary.BigEndian.PutUint32(b, 0x00010000) // outlines of TrueType
	for i, v := range []int{len(tables), power * entrySize, log, (len(tables) - power) * entrySize} {
		binary.BigEndian.PutUint16(b[4+2*i:], uint16(v))
	}
	head := 0
	for i, t := range tables {
		if t.tag == "head" {
			head = len(b)
		}
		entry := b[headerSize+entrySize*i:]
		copy(entry, t.tag)
		binary.BigEndian.PutUint32(entry[4:], checksum(t.data))
		binary.BigEndian.PutUint32(entry[8:], uint32(len(b)))
		binary.BigEndian.PutUint32(entry[12:], uint32(len(t.data)))
		b = append(b, t.data...)
		for len(b)%4 != 0 {
			b = append(b, 0)
		}
	}
	const whole = 0xB1B0AFBA // what the words of a font file add up to
	binary.BigEndian.PutUint32(b[head+checksumAdjustment:], whole-checksum(b))
	return b
}

// checksum adds up the words of a table, as if zeros followed it to the end of a word.
func checksum(data []byte) (sum uint32) {
	for len(data) >= 4 {
		sum += binary.BigEndian.Uint32(data)
		data = data[4:]
	}
	var last [4]byte
	copy(last[:], data)
	return sum + binary.BigEndian.Uint32(last[:])
}

// withUint16 returns a copy of a table with one field changed.
func withUint16(data []byte, at int, v uint16) []byte {
	data = slices.Clone(data)
	binary.BigEndian.PutUint16(data[at:], v)
	return data
}

func withUint32(data []byte, at int, v uint32) []byte {
	data = slices.Clone(data)
	binary.BigEndian.PutUint32(data[at:], v)
	return data
}
