package lsp

import (
	"bytes"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang"
	"ovillo/lang/source"
)

// clothes is a source of three hundred lines: nine parts in six sizes.
func clothes(tb testing.TB) string {
	b, err := os.ReadFile("testdata/clothes.ovillo")
	require.NoError(tb, err)
	require.Equal(tb, 300, bytes.Count(b, []byte("\n")))
	return string(b)
}

// BenchmarkKeystroke types into three hundred lines and waits for what is found, through the streams of the protocol: what an editor
// waits for. It reports the middle of all keystrokes and the slowest of twenty.
//
//	go test ./cmd/ovillo/lsp -run xxx -bench Keystroke -benchtime 200x
func BenchmarkKeystroke(b *testing.B) {
	text := clothes(b)
	c := opened(b, text, Options{})
	c.published(1)
	// A remark grows in the middle of a part, letter by letter, as one writes: every row is checked again each time.
	place := at(text, "to_armhole - 2 rows", 1)
	place.Character = 0
	var took []time.Duration
	version := 1
	type change struct {
		Range Range  `json:"range"`
		Text  string `json:"text"`
	}
	for b.Loop() {
		version++
		typed := "ñ"
		if version == 2 {
			typed = "# \n"
		}
		start := time.Now()
		c.notify("textDocument/didChange", map[string]any{"textDocument": map[string]any{"uri": testURI, "version": version},
			"contentChanges": []change{{Range{place, place}, typed}}})
		c.published(version)
		took = append(took, time.Since(start))
		if version == 2 {
			place.Character = 2
		}
	}
	slices.Sort(took)
	b.ReportMetric(float64(took[len(took)/2].Microseconds())/1000, "ms/middle")
	b.ReportMetric(float64(took[len(took)*95/100].Microseconds())/1000, "ms/p95")
}

// BenchmarkStages says where the time of a keystroke goes.
func BenchmarkStages(b *testing.B) {
	text := clothes(b)
	b.Run("parse", func(b *testing.B) {
		for b.Loop() {
			lang.Parse(source.NewFile("", text))
		}
	})
	b.Run("check", func(b *testing.B) {
		for b.Loop() {
			desk.Check(desk.Source{File: source.NewFile("", text)})
		}
	})
	c := desk.Check(desk.Source{File: source.NewFile("", text)})
	b.Run("words", func(b *testing.B) {
		for b.Loop() {
			c.Printer("en", false).Worded(c.File, c.Found)
		}
	})
	b.Run("names", func(b *testing.B) {
		for b.Loop() {
			newIndex(c.Tree)
		}
	})
	b.Run("rows", func(b *testing.B) {
		for b.Loop() {
			gatherRows(c.Pattern)
		}
	})
	b.Run("completion", func(b *testing.B) {
		for b.Loop() {
			labelsAt(b, text, strings.Index(text, "dc in each = half")+3)
		}
	})
	b.Run("change", func(b *testing.B) {
		t := newText(text, utf16Encoding)
		for b.Loop() {
			t = newText(text, utf16Encoding).with(Range{Position{150, 0}, Position{150, 0}}, fmt.Sprint("x", strings.Repeat("y", 3)))
		}
		_ = t
	})
}
