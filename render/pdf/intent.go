package pdf

import (
	"encoding/binary"
	"fmt"
	"math"
	"sync"
)

// addIntent says that colours are those of sRGB, and returns an entry of the catalog.
func (f *file) addIntent() string {
	profile := f.addStream("/N 3 /Alternate /DeviceRGB /Filter /FlateDecode", packedProfile())
	intent := fmt.Sprintf("<</Type /OutputIntent /S /GTS_PDFA1 /OutputConditionIdentifier (sRGB) /Info (sRGB) /DestOutputProfile %s>>",
		reference(profile))
	return " /OutputIntents [" + intent + "]"
}

var packedProfile = sync.OnceValue(func() []byte { return deflate(profile()) })

// profile makes an ICC profile, version 2, of sRGB (IEC 61966-2-1): a matrix and three equal curves, with the primaries
// adapted to D50 as ICC wants.
func profile() []byte {
	curve := transferCurve()
	tags := []struct {
		name string
		data []byte
	}{
		{"desc", description("sRGB")},
		{"cprt", append([]byte("text\x00\x00\x00\x00"), "No copyright, use freely\x00"...)},
		{"wtpt", xyz(0xF6D6, 0x10000, 0xD32D)},
		{"rXYZ", xyz(0x6FA2, 0x38F5, 0x0390)},
		{"gXYZ", xyz(0x6299, 0xB785, 0x18DA)},
		{"bXYZ", xyz(0x24A0, 0x0F84, 0xB6CF)},
		{"rTRC", curve},
		{"gTRC", nil}, // the same bytes
		{"bTRC", nil},
	}
	table := binary.BigEndian.AppendUint32(nil, uint32(len(tags)))
	var data []byte
	at, size := 0, 0
	for _, tag := range tags {
		if tag.data != nil {
			at, size = 128+4+12*len(tags)+len(data), len(tag.data)
			data = append(data, tag.data...)
			for len(data)%4 != 0 {
				data = append(data, 0)
			}
		}
		table = append(table, tag.name...)
		table = binary.BigEndian.AppendUint32(table, uint32(at))
		table = binary.BigEndian.AppendUint32(table, uint32(size))
	}
	return append(append(header(128+len(table)+len(data)), table...), data...)
}

// header is the first 128 bytes of a display profile.
func header(size int) []byte {
	h := make([]byte, 128)
	binary.BigEndian.PutUint32(h, uint32(size))
	binary.BigEndian.PutUint32(h[8:], 0x02100000) // version 2.1
	copy(h[12:], "mntrRGB XYZ ")
	for i, v := range []uint16{2026, 1, 1, 0, 0, 0} {
		binary.BigEndian.PutUint16(h[24+2*i:], v)
	}
	copy(h[36:], "acsp")
	copy(h[68:], xyz(0xF6D6, 0x10000, 0xD32D)[8:])
	return h
}

// xyz is a colour in numbers of 16 whole and 16 fractional bits.
func xyz(x, y, z uint32) []byte {
	b := []byte("XYZ \x00\x00\x00\x00")
	for _, v := range []uint32{x, y, z} {
		b = binary.BigEndian.AppendUint32(b, v)
	}
	return b
}

// description is a name in the three scripts that the type has room for, two of them empty.
func description(name string) []byte {
	b := []byte("desc\x00\x00\x00\x00")
	b = binary.BigEndian.AppendUint32(b, uint32(len(name)+1))
	b = append(b, name...)
	return append(b, make([]byte, 1+8+3+67)...)
}

// transferCurve is the curve from stored values to light, in 1,024 steps.
func transferCurve() []byte {
	const steps = 1024
	b := []byte("curv\x00\x00\x00\x00")
	b = binary.BigEndian.AppendUint32(b, steps)
	for i := range steps {
		v := float64(i) / (steps - 1)
		light := v / 12.92
		if v > 0.04045 {
			light = math.Pow((v+0.055)/1.055, 2.4)
		}
		b = binary.BigEndian.AppendUint16(b, uint16(math.Round(light*65535)))
	}
	return b
}
