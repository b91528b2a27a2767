package png

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"io"
	"maps"
	"math"
	"slices"

	"ovillo/render/scene"
)

// withNotes puts what is known of a drawing behind the head of a picture: how many dots a metre has (pHYs), and its title and
// description in each language (iTXt, UTF-8). Source: PNG, W3C Recommendation, sections 11.3.3.4 and 11.3.4.3; the numbers of the
// sections are from memory.
func withNotes(w io.Writer, picture []byte, s *scene.Scene, dpi float64) error {
	const head = 8 + 12 + 13 // the signature, and IHDR, which must stand first
	var b bytes.Buffer
	b.Write(picture[:head])
	metre := uint32(math.Round(dpi / 0.0254))
	b.Write(chunk("pHYs", append(binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32(nil, metre), metre), 1)))
	for _, lang := range slices.Sorted(maps.Keys(s.Title)) {
		for _, note := range [][2]string{{"Title", s.Title[lang]}, {"Description", s.Desc[lang]}} {
			if note[1] != "" {
				// The keyword, two zeros for text that is not compressed, the language, the keyword in it (none), the text.
				b.Write(chunk("iTXt", []byte(note[0]+"\x00\x00\x00"+lang+"\x00\x00"+note[1])))
			}
		}
	}
	b.Write(picture[head:])
	_, err := w.Write(b.Bytes())
	return err
}

// chunk is a piece of a PNG: how long it is, its kind, what is in it, and a sum over both.
func chunk(kind string, data []byte) []byte {
	out := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	out = append(append(out, kind...), data...)
	return binary.BigEndian.AppendUint32(out, crc32.ChecksumIEEE(out[4:]))
}
