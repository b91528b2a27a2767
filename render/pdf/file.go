package pdf

import (
	"bytes"
	"compress/zlib"
	"crypto/sha256"
	"errors"
	"fmt"
	"regexp"
	"strconv"
)

// file is the objects of a PDF by their numbers.
type file struct {
	objects    [][]byte // [0] is not used
	free       []int    // numbers of objects that were dropped
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
	if n := len(f.free); n > 0 {
		number := f.free[n-1]
		f.free = f.free[:n-1]
		return number
	}
	f.objects = append(f.objects, nil)
	return len(f.objects) - 1
}

// drop gives up an object; its number is used again.
func (f *file) drop(n int) {
	f.objects[n] = []byte("null")
	f.free = append(f.free, n)
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
	b := fmt.Appendf(make([]byte, 0, len(data)+len(dict)+60), "<<%s /Length %d>>\nstream\n", dict, len(data))
	b = append(b, data...)
	f.objects[n] = append(b, "\nendstream"...)
}

// deflate packs as tightly as the format can.
func deflate(data []byte) []byte {
	var b bytes.Buffer
	z, err := zlib.NewWriterLevel(&b, zlib.BestCompression)
	if err != nil {
		return nil // only a level that does not exist fails
	}
	z.Write(data) // writing into memory does not fail
	z.Close()
	return b.Bytes()
}

// bytes puts the file together. Its ID is a digest of the rest, so that equal files have equal IDs.
func (f *file) bytes(version string) []byte {
	size := 1024
	for _, o := range f.objects {
		size += len(o) + 50
	}
	b := fmt.Appendf(make([]byte, 0, size), "%%PDF-%s\n%%\xe2\xe3\xcf\xd3\n", version)
	places := make([]int, len(f.objects))
	for n := 1; n < len(f.objects); n++ {
		places[n] = len(b)
		b = strconv.AppendInt(b, int64(n), 10)
		b = append(b, " 0 obj\n"...)
		b = append(b, f.objects[n]...)
		b = append(b, "\nendobj\n"...)
	}
	id := sha256.Sum256(b)
	table := len(b)
	b = fmt.Appendf(b, "xref\n0 %d\n0000000000 65535 f \n", len(places))
	for _, at := range places[1:] {
		b = fmt.Appendf(b, "%010d 00000 n \n", at)
	}
	return fmt.Appendf(b, "trailer\n<</Size %d /Root %s /Info %s /ID [<%X> <%X>]>>\nstartxref\n%d\n%%%%EOF\n",
		len(places), reference(f.root), reference(f.info), id[:16], id[:16], table)
}
