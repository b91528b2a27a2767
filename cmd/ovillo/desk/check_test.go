package desk

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"ovillo/lang/source"
)

// BenchmarkCheck is what a keystroke costs: reading and checking of each example.
func BenchmarkCheck(b *testing.B) {
	paths, err := filepath.Glob(filepath.Join("..", "..", "..", "examples", "*.ovillo"))
	if err != nil || len(paths) == 0 {
		b.Fatal("no examples", err)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(strings.TrimSuffix(filepath.Base(path), ".ovillo"), func(b *testing.B) {
			b.ReportAllocs()
			before := processorTime(b)
			for b.Loop() {
				Check(Source{File: source.NewFile(path, string(text)), Open: Folder(filepath.Dir(path))})
			}
			b.ReportMetric(float64(processorTime(b)-before)/float64(b.N), "cpu-ns/op")
		})
	}
}

// processorTime is what the process has used of all processors, in nanoseconds: it tells more than the clock where others are at work.
func processorTime(b *testing.B) int64 {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		b.Fatal(err)
	}
	return u.Utime.Nano() + u.Stime.Nano()
}
