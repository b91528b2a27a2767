package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang/lazy"
)

// This file keeps what a person has from being replaced by something else. Package save writes.

// What a file that stands in the way can be.
var (
	errNotPages = errors.New("not a PDF")
	errNotSVG   = errors.New("not an SVG")
	errNotPNG   = errors.New("not a PNG")
	errNotText  = errors.New("not a text")
	errNotData  = errors.New("not data of a pattern")
	errNotHTML  = errors.New("not a web page")
)

// refusePages reports why pages must not be written to a path: what stands there is not a PDF, so it was hardly meant.
func refusePages(path string) error {
	return refuse(path, errNotPages, func(head []byte) bool { return bytes.HasPrefix(head, []byte("%PDF-")) })
}

// refuseText reports why a text must not be written to a path: what stands there is not an older state of it, which would begin with the
// same line, or it has another ending, or is a source, which may end in .txt too.
func refuseText(data []byte) func(path string) error {
	return func(path string) error {
		if !strings.EqualFold(filepath.Ext(path), ".txt") {
			return refuse(path, errNotText, func([]byte) bool { return false })
		}
		return refuseLike(data)(path)
	}
}

// refuseLike is refuseText for a list of any ending.
func refuseLike(data []byte) func(path string) error {
	first, _, _ := bytes.Cut(data, []byte("\n"))
	return func(path string) error {
		return refuse(path, errNotText, func(head []byte) bool {
			line, _, _ := bytes.Cut(head, []byte("\n"))
			return bytes.Equal(bytes.TrimSuffix(line, []byte("\r")), first[:min(len(first), mostHead)]) && !sourceHead().Match(head)
		})
	}
}

// refuseData reports why data must not be written to a path, as for pages.
func refuseData(path string) error {
	return refuse(path, errNotData, func(head []byte) bool { return bytes.Contains(head, []byte(`"format": "ovillo-pattern"`)) })
}

// sourceHead finds the line with which a source begins, in either language.
var sourceHead = lazy.Regexp(`(?m)^[ \t]*(pattern|patrón|idioma)[ \t]`)

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

// mostHead is how much of a file is looked at to know what it is.
const mostHead = 2048

// refuse reports that the file at a path does not begin as it should, or cannot be looked at. An empty one may be written over.
func refuse(path string, wrong error, begins func(head []byte) bool) error {
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return nil // the writing says what is wrong; opening a pipe would wait for ever
	}
	f, err := desk.OpenSource(path)
	if err != nil {
		return err
	}
	defer f.Close()
	head := make([]byte, mostHead)
	n, err := io.ReadFull(f, head)
	switch {
	case errors.Is(err, io.EOF):
		return nil
	case err != nil && !errors.Is(err, io.ErrUnexpectedEOF):
		return err
	case begins(head[:n]):
		return nil
	}
	return wrong
}
