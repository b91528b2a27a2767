package pdf

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"github.com/klauspost/compress/zlib"
	"regexp"
	"strconv"
	"sync"
)

// file is the objects of a PDF by their numbers.
type file struct {
	objects    [][]byte // [0] is not used
	root, info int
	pages      []int // objects of the pages
}

const (
	pagesObject     = 1 // where fpdf keeps the page tree
	resourcesObject = 2 // and what all pages draw with
)

var (
	errShell    = errors.New("fpdf wrote a file of an unknown shape")
	trailerRoot = regexp.MustCompile(`/Root (\d+) 0 R`)
	trailerInfo = regexp.MustCompile(`/Info (\d+) 0 R`)
)

// readFile takes apart a file as fpdf writes it: objects one after the other, a table of their places, a trailer.
func readFile(b []byte) (*file, error) {
	at := bytes.LastIndex(b, []byte("startxref\n"))
	if at < 0 {
		return nil, errShell
	}
	var table int
	if _, err := fmt.Sscanf(string(b[at:]), "startxref\n%d", &table); err != nil || table < 0 || table > at {
		return nil, errShell
	}
	places, err := readPlaces(b[table:at])
	if err != nil {
		return nil, err
	}
	f := &file{objects: make([][]byte, len(places))}
	for n := 1; n < len(places); n++ {
		if f.objects[n], err = readObject(b[:table], places[n]); err != nil {
			return nil, err
		}
	}
	f.root = trailerNumber(trailerRoot, b[table:at])
	f.info = trailerNumber(trailerInfo, b[table:at])
	if f.root <= 0 || f.root >= len(places) || f.info <= 0 || f.info >= len(places) {
		return nil, errShell
	}
	return f, nil
}

// readPlaces reads the table: "xref", "0 <count>", and lines of 20 bytes that begin with the place of an object.
func readPlaces(table []byte) ([]int, error) {
	lines := bytes.Split(table, []byte("\n"))
	var count int
	if len(lines) < 2 {
		return nil, errShell
	}
	if _, err := fmt.Sscanf(string(lines[1]), "0 %d", &count); err != nil || count < 1 || len(lines) < count+2 {
		return nil, errShell
	}
	places := make([]int, count)
	for n := 1; n < count; n++ {
		line := lines[n+2]
		if len(line) < 10 {
			return nil, errShell
		}
		at, err := strconv.Atoi(string(line[:10]))
		if err != nil {
			return nil, errShell
		}
		places[n] = at
	}
	return places, nil
}

// readObject returns what stands between "n 0 obj" and "endobj". A stream is skipped by its length, for its bytes may
// look like anything.
func readObject(b []byte, at int) ([]byte, error) {
	if at < 0 || at >= len(b) {
		return nil, errShell
	}
	b = b[at:]
	line := bytes.IndexByte(b, '\n')
	if line < 0 {
		return nil, errShell
	}
	b = b[line+1:]
	end := bytes.Index(b, []byte("endobj"))
	if s := bytes.Index(b, []byte("\nstream\n")); s >= 0 && s < end {
		m := streamLength.FindSubmatch(b[:s])
		if m == nil {
			return nil, errShell
		}
		n, err := strconv.Atoi(string(m[1]))
		if err != nil || s+n > len(b) {
			return nil, errShell
		}
		if end = bytes.Index(b[s+n:], []byte("endobj")); end >= 0 {
			end += s + n
		}
	}
	if end < 0 {
		return nil, errShell
	}
	return bytes.TrimRight(b[:end:end], "\n"), nil
}

var streamLength = regexp.MustCompile(`/Length (\d+)`)

func trailerNumber(key *regexp.Regexp, trailer []byte) int {
	m := key.FindSubmatch(trailer)
	if m == nil {
		return 0
	}
	n, err := strconv.Atoi(string(m[1]))
	if err != nil {
		return 0
	}
	return n
}

// reserve returns the number of a new object, to be set later.
func (f *file) reserve() int {
	f.objects = append(f.objects, nil)
	return len(f.objects) - 1
}

func (f *file) set(n int, body string) { f.objects[n] = []byte(body) }

func (f *file) add(body string) int {
	n := f.reserve()
	f.set(n, body)
	return n
}

// addStream adds a stream whose dictionary says how it is packed.
func (f *file) addStream(dict string, data []byte) int {
	n := f.reserve()
	f.setStream(n, dict, data)
	return n
}

func (f *file) setStream(n int, dict string, data []byte) {
	f.objects[n] = stream(dict, data)
}

func stream(dict string, data []byte) []byte {
	b := fmt.Appendf(make([]byte, 0, len(data)+len(dict)+60), "<<%s /Length %d>>\nstream\n", dict, len(data))
	b = append(b, data...)
	return append(b, "\nendstream"...)
}

// level weighs time against size, by what the leggings measure: 152 kB with 4, 143 with 5, 139 with 6; from 7 on it takes twice as long
// for one hundredth less.
const level = 6

// packers are kept because making one costs more than packing what this package packs.
var packers = sync.Pool{New: func() any {
	z, err := zlib.NewWriterLevel(nil, level)
	if err != nil {
		return err // only for a level that does not exist
	}
	return z
}}

// deflate packs. Writing into memory does not fail.
func deflate(data []byte) []byte {
	z, ok := packers.Get().(*zlib.Writer)
	if !ok {
		return nil
	}
	defer packers.Put(z)
	var b bytes.Buffer
	b.Grow(len(data)/3 + 64) // pages are packed to a quarter or so
	z.Reset(&b)
	z.Write(data)
	z.Close()
	return b.Bytes()
}

// plain puts the file together so that every reader since the first can take it apart. Its ID is a digest of the rest:
// equal files have equal IDs.
func (f *file) plain(version string) []byte {
	b, places := f.open(version, func(int) bool { return true })
	id := sha256.Sum256(b)
	table := len(b)
	b = fmt.Appendf(b, "xref\n0 %d\n0000000000 65535 f \n", len(places))
	for _, at := range places[1:] {
		b = fmt.Appendf(b, "%010d 00000 n \n", at)
	}
	b = fmt.Appendf(b, "trailer\n<<%s>>\n", f.trailer(len(places), id))
	return fmt.Appendf(b, "startxref\n%d\n%%%%EOF\n", table)
}

// open begins a file with the objects that are chosen, and returns the places they begin at.
func (f *file) open(version string, choose func(n int) bool) (b []byte, places []int) {
	size := 1024
	for _, o := range f.objects {
		size += len(o) + 50
	}
	b = fmt.Appendf(make([]byte, 0, size), "%%PDF-%s\n%%\xe2\xe3\xcf\xd3\n", version)
	places = make([]int, len(f.objects))
	for n := 1; n < len(f.objects); n++ {
		if choose(n) {
			places[n] = len(b)
			b = appendObject(b, n, f.objects[n])
		}
	}
	return b, places
}

func appendObject(b []byte, n int, body []byte) []byte {
	b = strconv.AppendInt(b, int64(n), 10)
	b = append(b, " 0 obj\n"...)
	b = append(b, body...)
	return append(b, "\nendobj\n"...)
}

func (f *file) trailer(size int, id [sha256.Size]byte) string {
	return fmt.Sprintf("/Size %d /Root %s /Info %s /ID [<%X> <%X>]", size, reference(f.root), reference(f.info), id[:16], id[:16])
}
