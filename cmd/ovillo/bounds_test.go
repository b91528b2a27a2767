package main

import (
	"bytes"
	"errors"
	"math"
	"os"
	"path/filepath"
	"runtime/debug"
	"strconv"
	"strings"
	"testing"
)

// A file as large as may be opened is read, be it no pattern; one a byte larger is not, and that is said with the number.
func TestMostMegabytes(t *testing.T) {
	path := filepath.Join(t.TempDir(), "large.ovillo")
	for over := range 2 {
		n := mostMegabytes<<20 + over
		f, err := os.Create(path)
		if err == nil {
			err = errors.Join(f.Truncate(int64(n)), f.Close())
		}
		if err != nil {
			t.Fatal(err)
		}
		for _, from := range []string{path, "-"} {
			var said bytes.Buffer
			c := &call{in: bytes.NewReader(make([]byte, n)), err: &said, lang: "en"}
			s, ok := c.load(from)
			if over == 0 && (!ok || len(s.file.Text) != n) || over == 1 && (ok || !strings.Contains(said.String(), strconv.Itoa(mostMegabytes)+" MB")) {
				t.Errorf("%d bytes from %s: read is %v, said %q", n, filepath.Base(from), ok, said.String())
			}
		}
	}
}

// Below what is spacious garbage is collected seldom, and near it as often as it takes: for the command, and for the server that runs all
// day.
func TestSpacious(t *testing.T) {
	percent, most := debug.SetGCPercent(100), debug.SetMemoryLimit(math.MaxInt64)
	defer debug.SetGCPercent(percent)
	defer debug.SetMemoryLimit(most)
	t.Setenv("GOGC", "")
	for what, c := range map[string]struct {
		most  int64
		begin func()
	}{
		"the command": {spacious, func() { collectSeldom(spacious) }},
		"the server":  {spaciousServer, func() { runLSP(&call{in: strings.NewReader(""), out: &bytes.Buffer{}, lang: "en"}) }},
	} {
		debug.SetMemoryLimit(math.MaxInt64)
		c.begin()
		if got := debug.SetMemoryLimit(-1); got != c.most || debug.SetGCPercent(100) != 400 {
			t.Errorf("%s has room for %d bytes, not %d", what, got, c.most)
		}
	}
}
