package picture

import (
	"bytes"
	"encoding/binary"
)

// WayUp reads how a picture lies in a JPEG file, as the camera noted it: 1 upright, 2 to 8 as the field Orientation of Exif
// numbers them (Exif 2.32, JEITA CP-3451X, 4.6.4.A; the numbers are those of TIFF 6.0, section 8). It is 1 where nothing, or
// nothing that can be read, is noted.
func WayUp(data []byte) int {
	for i := 2; i+4 <= len(data) && data[i] == 0xff; {
		marker := data[i+1]
		if marker == 0xff { // a filler before a marker
			i++
			continue
		}
		if marker == 0xda || marker == 0xd9 { // the pixels begin, or the picture ends
			return 1
		}
		n := int(binary.BigEndian.Uint16(data[i+2:]))
		if n < 2 || i+2+n > len(data) {
			return 1
		}
		if body := data[i+4 : i+2+n]; marker == 0xe1 && bytes.HasPrefix(body, []byte("Exif\x00\x00")) {
			return orientation(body[6:])
		}
		i += 2 + n
	}
	return 1
}

// orientation reads the field from the first directory of a TIFF header.
func orientation(b []byte) int {
	var order binary.ByteOrder = binary.LittleEndian
	switch {
	case len(b) < 8:
		return 1
	case b[0] == 'M' && b[1] == 'M':
		order = binary.BigEndian
	case b[0] != 'I' || b[1] != 'I':
		return 1
	}
	const field, short, entry = 0x0112, 3, 12
	at := uint64(order.Uint32(b[4:]))
	if order.Uint16(b[2:]) != 42 || at+2 > uint64(len(b)) {
		return 1
	}
	n := uint64(order.Uint16(b[at:]))
	for k := range n {
		e := at + 2 + k*entry
		if e+entry > uint64(len(b)) {
			return 1
		}
		if order.Uint16(b[e:]) != field {
			continue
		}
		if v := int(order.Uint16(b[e+8:])); order.Uint16(b[e+2:]) == short && 1 <= v && v <= 8 {
			return v
		}
		return 1
	}
	return 1
}
