package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
)

// What a file that stands in the way can be.
var (
	errNotPlain = errors.New("not an ordinary file")
	errFolder   = errors.New("a folder")
	errNotPages = errors.New("not a PDF")
	errNotSVG   = errors.New("not an SVG")
	errNotPNG   = errors.New("not a PNG")
	errNotText  = errors.New("not a text")
	errNotData  = errors.New("not data of a pattern")
	errNotHTML  = errors.New("not a web page")
)

// replaceFile puts data into a file, whole or not at all: it writes a new file in the same folder and renames it, so
// that a reader sees the old text or the new one, and an old file survives every failure. Links and devices are not
// followed, since what they point at was not named.
func replaceFile(path string, data []byte) (err error) {
	mode := fs.FileMode(0o666)
	old, err := os.Lstat(path)
	switch {
	case err == nil && old.IsDir():
		return errFolder
	case err == nil && !old.Mode().IsRegular():
		return errNotPlain
	case err == nil:
		mode = old.Mode().Perm()
	case !errors.Is(err, fs.ErrNotExist):
		return err
	}
	existed := err == nil
	f, err := freshBeside(path, mode)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if _, err = f.Write(data); err != nil {
		return err
	}
	if existed {
		// The mask of the process may have taken rights from the new file that the old one had.
		if err = f.Chmod(mode); err != nil {
			return err
		}
	}
	if err = f.Sync(); err != nil {
		return err
	}
	if err = f.Close(); err != nil {
		return err
	}
	if err = os.Rename(f.Name(), path); err != nil {
		return err
	}
	syncFolder(filepath.Dir(path))
	return nil
}

// freshBeside makes a new file in the folder of path. Its name begins with a point, so that it does not show up for the
// moment it lives.
func freshBeside(path string, mode fs.FileMode) (*os.File, error) {
	folder, base := filepath.Split(path)
	for n := 0; ; n++ {
		name := filepath.Join(folder, fmt.Sprintf(".%s.%d-%d", base, os.Getpid(), n))
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if !errors.Is(err, fs.ErrExist) || n > 100 {
			return f, err
		}
	}
}

// syncFolder makes the new name last. Not every file system can; the file itself is safe already.
func syncFolder(folder string) {
	if d, err := os.Open(folder); err == nil {
		d.Sync()
		d.Close()
	}
}

// refusePages reports why pages must not be written to a path: what stands there is not a PDF, so it was hardly meant.
func refusePages(path string) error {
	return refuse(path, errNotPages, func(head []byte) bool { return bytes.HasPrefix(head, []byte("%PDF-")) })
}

// refuseText reports why a text must not be written to a path: what stands there has another ending, or is a source, which may end in
// .txt too.
func refuseText(path string) error {
	text := strings.EqualFold(filepath.Ext(path), ".txt")
	return refuse(path, errNotText, func(head []byte) bool {
		return text && !sourceHead.Match(head)
	})
}

// refuseData reports why data must not be written to a path, as for pages.
func refuseData(path string) error {
	return refuse(path, errNotData, func(head []byte) bool { return bytes.Contains(head, []byte(`"format": "ovillo-pattern"`)) })
}

// sourceHead finds the line with which a source begins, in either language.
var sourceHead = regexp.MustCompile(`(?m)^[ \t]*(pattern|patrón|idioma)[ \t]`)

// refuseWeb reports why a web page must not be written to a path, as for pages.
func refuseWeb(path string) error {
	return refuse(path, errNotHTML, func(head []byte) bool {
		const begins = "<!doctype html"
		text := bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\ufeff")), " \t\r\n")
		return len(text) >= len(begins) && bytes.EqualFold(text[:len(begins)], []byte(begins))
	})
}

// refusePicture reports why a picture must not be written to a path, as for pages.
func refusePicture(path string) error {
	if isPNG(path) {
		return refuse(path, errNotPNG, func(head []byte) bool { return bytes.HasPrefix(head, []byte("\x89PNG\r\n\x1a\n")) })
	}
	return refuse(path, errNotSVG, func(head []byte) bool {
		text := bytes.TrimLeft(bytes.TrimPrefix(head, []byte("\ufeff")), " \t\r\n")
		return bytes.HasPrefix(text, []byte("<svg")) || bytes.HasPrefix(text, []byte("<?xml")) && bytes.Contains(text, []byte("<svg"))
	})
}

// refuse reports that the file at a path does not begin as it should. An empty one may be written over.
func refuse(path string, wrong error, begins func(head []byte) bool) error {
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return nil // the writing says what is wrong; opening a pipe would wait for ever
	}
	f, err := os.Open(path)
	if err != nil {
		return nil // what cannot be read is for the writing to judge
	}
	defer f.Close()
	head := make([]byte, 2048)
	n, err := io.ReadFull(f, head)
	if n == 0 || err != nil && !errors.Is(err, io.ErrUnexpectedEOF) || begins(head[:n]) {
		return nil
	}
	return wrong
}
