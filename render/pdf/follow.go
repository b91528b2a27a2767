package pdf

import (
	"bytes"
	"regexp"
	"strconv"
)

// anyReference finds every reference to an object.
var anyReference = regexp.MustCompile(`(\d+) 0 R`)

// follow returns the object that an entry of another refers to.
func (f *file) follow(n int, key string) (int, error) {
	if n <= 0 || n >= len(f.objects) {
		return 0, errShell
	}
	at := bytes.Index(f.objects[n], []byte(key+" "))
	if at < 0 {
		return 0, errShell
	}
	m := anyReference.FindSubmatch(f.objects[n][at:])
	if m == nil {
		return 0, errShell
	}
	to := decimal(m[1])
	if to <= 0 || to >= len(f.objects) {
		return 0, errShell
	}
	return to, nil
}

// decimal reads digits; what is too large for a number is no object.
func decimal(digits []byte) int {
	n, err := strconv.Atoi(string(digits))
	if err != nil {
		return 0
	}
	return n
}

func between(b []byte, open, shut string) []byte {
	_, rest, _ := bytes.Cut(b, []byte(open))
	inside, _, _ := bytes.Cut(rest, []byte(shut))
	return inside
}
