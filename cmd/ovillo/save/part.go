package save

import (
	"crypto/rand"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"
	"unicode/utf8"
)

// This file names the new files, and takes away those that somebody left who was killed.

const (
	ending   = ".part"
	signs    = 8         // of chance in a name
	mostBase = 100       // bytes of a name that go into that of its new file: it must be no longer than a disk takes
	stale    = time.Hour // no file takes so long to be written
)

// partsOf is how the names of new files for a path begin: with a point, so that they do not show up for the moment they live.
func partsOf(path string) string {
	base := filepath.Base(path)
	if len(base) > mostBase {
		n := mostBase
		for !utf8.RuneStart(base[n]) {
			n--
		}
		base = base[:n]
	}
	return "." + base + "."
}

// isPart reports whether a name is that of a new file for a path.
func isPart(name, path string) bool {
	chance, ok := strings.CutPrefix(name, partsOf(path))
	chance, ends := strings.CutSuffix(chance, ending)
	return ok && ends && len(chance) == signs && strings.Trim(chance, "abcdefghijklmnopqrstuvwxyz234567") == ""
}

// fresh makes a new file in the folder of a path.
func fresh(path string, mode fs.FileMode) (*os.File, error) {
	folder := filepath.Dir(path)
	for n := 0; ; n++ {
		name := filepath.Join(folder, partsOf(path)+strings.ToLower(rand.Text())[:signs]+ending)
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		switch {
		case errors.Is(err, fs.ErrExist) && n < 100:
			continue
		case errors.Is(err, fs.ErrPermission):
			return nil, fmt.Errorf("%w: %w", ErrShut, err)
		}
		return f, err
	}
}

// dropLeftovers takes away what others left who wrote the same file. How old they are is told by the new file, since the clock of the
// disk need not be ours.
func dropLeftovers(path string, fresh *os.File) {
	now, err := fresh.Stat()
	if err != nil {
		return
	}
	folder := filepath.Dir(path)
	entries, _ := os.ReadDir(folder) // none are found in a folder that cannot be read
	for _, e := range entries {
		if !isPart(e.Name(), path) || !e.Type().IsRegular() {
			continue
		}
		if info, err := e.Info(); err == nil && now.ModTime().Sub(info.ModTime()) > stale {
			os.Remove(filepath.Join(folder, e.Name()))
		}
	}
}
