package preview

import (
	"errors"
	"os"
	"path/filepath"
	"testing"
)

// A file as large as may be opened is read; one a byte larger is too large.
func TestMostBytes(t *testing.T) {
	path := filepath.Join(t.TempDir(), "large.ovillo")
	for over := range 2 {
		n := mostBytes + over
		f, err := os.Create(path)
		if err == nil {
			err = errors.Join(f.Truncate(int64(n)), f.Close())
		}
		if err != nil {
			t.Fatal(err)
		}
		data, info, err := readAll(os.Open(path))
		if over == 0 && (err != nil || len(data) != n || info.Size() != int64(n)) || over == 1 && !errors.Is(err, errTooLarge) {
			t.Errorf("%d bytes: %d were read, %v", n, len(data), err)
		}
	}
}
