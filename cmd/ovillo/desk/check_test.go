package desk

import (
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ovillo/compile/picture"
	"ovillo/lang/source"
)

// TestMemory: what is kept of a photograph is what reading it anew would say, and another file in its place is seen.
func TestMemory(t *testing.T) {
	good, err := os.ReadFile(filepath.Join("..", "..", "..", "examples", "jarcia-headband.jpg"))
	require.NoError(t, err)
	m := &Memory{}
	for _, data := range [][]byte{good, good, []byte("no picture"), good} {
		want, wantErr := picture.Read(data)
		got, err := m.picture(data)
		assert.Equal(t, want, got)
		assert.Equal(t, wantErr, err)
	}
}

// BenchmarkCheck is what a keystroke costs: reading and checking of each example.
func BenchmarkCheck(b *testing.B) {
	paths, err := filepath.Glob(filepath.Join("..", "..", "..", "examples", "*.ovillo"))
	if err != nil || len(paths) == 0 {
		b.Fatal("no examples", err)
	}
	paths = append(paths, filepath.Join("..", "lsp", "testdata", "clothes.ovillo")) // three hundred lines
	defer debug.SetGCPercent(debug.SetGCPercent(400))                               // as the command does
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(strings.TrimSuffix(filepath.Base(path), ".ovillo"), func(b *testing.B) {
			b.ReportAllocs()
			memory := &Memory{}
			before := processorTime(b)
			for b.Loop() {
				Check(Source{File: source.NewFile(path, string(text)), Open: Folder(filepath.Dir(path)), Memory: memory})
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
