package pdf

import (
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"slices"
	"strconv"

	"ovillo/lang/atonce"
)

// packed puts the file together with the small objects in compressed streams, as PDF allows since 1.5. The structure
// tree has an object for every paragraph: this way the file is half as long.
func (f *file) packed(version string) []byte {
	streams := func(n int) bool { return bytes.HasSuffix(f.objects[n], []byte("\nendstream")) }
	b, places := f.open(version, streams)
	table := make([]byte, len(places)*entrySize, len(places)*(entrySize+1))
	for n, at := range places {
		putEntry(table, n, 1, at, 0)
	}
	putEntry(table, 0, 0, 0, 0xFFFF)
	var small []int
	for n := 1; n < len(f.objects); n++ {
		if !streams(n) {
			small = append(small, n)
		}
	}
	const together = 200 // a reader unpacks all of them to see one
	groups := slices.Collect(slices.Chunk(small, together))
	packed := make([][]byte, len(groups))
	atonce.Do(len(groups), func(i int) { packed[i] = f.group(groups[i]) })
	for k, group := range groups {
		holder := len(table) / entrySize
		for i, n := range group {
			putEntry(table, n, 2, holder, i)
		}
		table = append(table, make([]byte, entrySize)...)
		putEntry(table, holder, 1, len(b), 0)
		b = appendObject(b, holder, packed[k])
	}
	return f.closePacked(b, table)
}

// group is a stream of objects: their numbers and places first, then the objects.
func (f *file) group(numbers []int) []byte {
	size := 0
	for _, n := range numbers {
		size += len(f.objects[n]) + 1
	}
	var index []byte
	bodies := make([]byte, 0, size)
	for _, n := range numbers {
		index = strconv.AppendInt(index, int64(n), 10)
		index = strconv.AppendInt(append(index, ' '), int64(len(bodies)), 10)
		index = append(index, ' ')
		bodies = append(append(bodies, f.objects[n]...), '\n')
	}
	dict := fmt.Sprintf("/Type /ObjStm /N %d /First %d /Filter /FlateDecode", len(numbers), len(index))
	return stream(dict, deflate(append(index, bodies...)))
}

// entrySize is the length of an entry of the table: its kind, and two numbers of four and two bytes.
const entrySize = 1 + 4 + 2

func putEntry(table []byte, n int, kind byte, first, second int) {
	e := table[n*entrySize:]
	e[0] = kind
	binary.BigEndian.PutUint32(e[1:], uint32(first))
	binary.BigEndian.PutUint16(e[5:], uint16(second))
}

// closePacked adds the table of places, which is a stream as well, and lists itself.
func (f *file) closePacked(b, table []byte) []byte {
	id := sha256.Sum256(b)
	n, at := len(table)/entrySize, len(b)
	table = append(table, make([]byte, entrySize)...)
	putEntry(table, n, 1, at, 0)
	dict := fmt.Sprintf("/Type /XRef /W [1 4 2] %s /Filter /FlateDecode", f.trailer(n+1, id))
	b = appendObject(b, n, stream(dict, deflate(table)))
	return fmt.Appendf(b, "startxref\n%d\n%%%%EOF\n", at)
}
