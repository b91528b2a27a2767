package whole

import (
	"bytes"
	"compress/zlib"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"

	readpdf "github.com/ledongthuc/pdf"
)

var (
	headOfStream = regexp.MustCompile(`(?s)^(\d+) 0 obj\n(<<.*?/Length (\d+).*?>>)\s*stream\n`)
	packedIndex  = regexp.MustCompile(`/Type /ObjStm /N (\d+) /First (\d+) `)
	ofTrailer    = regexp.MustCompile(`/Root .*?/ID \[.*?\]`)
	errUnpacked  = errors.New("not a file of streams alone")
)

// unpacked is a file with each of its objects by itself, under its number and as it was. The library that reads files in
// tests unpacks a stream of two hundred objects anew for each one that it looks at.
func unpacked(file []byte) ([]byte, error) {
	objects, trailer := map[int][]byte{}, ""
	at := bytes.Index(file, []byte(" 0 obj\n"))
	for at > 0 && file[at-1] != '\n' {
		at--
	}
	for rest := file[max(at, 0):]; !bytes.HasPrefix(rest, []byte("startxref")); {
		m := headOfStream.FindSubmatch(rest)
		if m == nil {
			return nil, errUnpacked
		}
		number, dict, length := atoi(m[1]), m[2], atoi(m[3])
		end := len(m[0]) + length
		after := []byte("\nendstream\nendobj\n")
		if end > len(rest) || !bytes.HasPrefix(rest[end:], after) {
			return nil, errUnpacked
		}
		switch of := packedIndex.FindSubmatch(dict); {
		case of != nil:
			if err := unpackInto(objects, rest[len(m[0]):end], atoi(of[1]), atoi(of[2])); err != nil {
				return nil, err
			}
		case bytes.Contains(dict, []byte("/Type /XRef")):
			trailer = string(ofTrailer.Find(dict))
		default:
			body := rest[bytes.IndexByte(rest, '\n')+1 : end+len("\nendstream")]
			objects[number] = body
		}
		rest = rest[end+len(after):]
	}
	return plainFile(objects, trailer), nil
}

func unpackInto(objects map[int][]byte, packed []byte, n, first int) error {
	z, err := zlib.NewReader(bytes.NewReader(packed))
	if err != nil {
		return err
	}
	all, err := io.ReadAll(z)
	if err != nil {
		return err
	}
	index := strings.Fields(string(all[:first]))
	if len(index) != 2*n {
		return errUnpacked
	}
	for i := range n {
		from, to := first+atoi([]byte(index[2*i+1])), len(all)
		if i+1 < n {
			to = first + atoi([]byte(index[2*i+3]))
		}
		objects[atoi([]byte(index[2*i]))] = bytes.TrimSuffix(all[from:to], []byte("\n"))
	}
	return nil
}

func plainFile(objects map[int][]byte, trailer string) []byte {
	last := 0
	for n := range objects {
		last = max(last, n)
	}
	b := []byte("%PDF-1.7\n")
	table := "0000000000 65535 f \n"
	for n := 1; n <= last; n++ {
		if objects[n] == nil {
			table += "0000000000 65535 f \n"
			continue
		}
		table += fmt.Sprintf("%010d 00000 n \n", len(b))
		b = fmt.Appendf(b, "%d 0 obj\n%s\nendobj\n", n, objects[n])
	}
	at := len(b)
	return fmt.Appendf(b, "xref\n0 %d\n%strailer\n<</Size %d %s>>\nstartxref\n%d\n%%%%EOF\n", last+1, table, last+1, trailer, at)
}

// atoi reads a number of which a pattern says that it is one.
func atoi(digits []byte) int {
	n, err := strconv.Atoi(string(digits))
	if err != nil {
		panic(err)
	}
	return n
}

// OpenFile opens a finished file with a library that shares nothing with the writer.
func OpenFile(file []byte) (*readpdf.Reader, error) {
	file, err := unpacked(file)
	if err != nil {
		return nil, err
	}
	return readpdf.NewReader(bytes.NewReader(file), int64(len(file)))
}
