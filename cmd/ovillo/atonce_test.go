package main

import (
	"bytes"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// alongside are the sources of TestAtOnceAsOneAtATime beside the examples: one that is broken and one with nothing in it.
var alongside = map[string]string{
	"broken.ovillo": "pattern broken\n  title en \"Broken\" es \"Roto\"\n  terms us\nend\nsizes \"S\"\nend\npart strip\n  title en \"Strip\" es \"Tira\"\n" +
		"  in rows\n  chain 6\n  row: sc in each = 7\nend\n",
	"empty.ovillo": "",
}

// manySources puts the examples and what goes alongside into a folder and returns their names, the broken ones in the middle.
func manySources(t *testing.T, folder string, date time.Time) []string {
	t.Helper()
	copyExamples(t, folder, date)
	for name, text := range alongside {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644))
	}
	paths, err := filepath.Glob(filepath.Join(folder, "*.ovillo"))
	require.NoError(t, err)
	var names []string
	for _, path := range paths {
		names = append(names, filepath.Base(path))
	}
	require.Greater(t, len(names), 10)
	return append(names, "missing.ovillo")
}

// ranIn is what came of a command: what it said on both streams together, its code, and the files it left beside the sources.
type ranIn struct {
	said string
	code int
	made map[string]string
}

// runIn runs the command in a folder and collects what it makes in the folder out.
func runIn(t *testing.T, dir, out string, env []string, args ...string) ranIn {
	t.Helper()
	cmd := exec.Command("ovillo", args...)
	cmd.Dir, cmd.Env = dir, append(cmd.Environ(), env...)
	said, err := cmd.CombinedOutput()
	if exit := (*exec.ExitError)(nil); err != nil {
		require.ErrorAs(t, err, &exit)
	}
	r := ranIn{said: string(said), code: cmd.ProcessState.ExitCode(), made: map[string]string{}}
	list, err := os.ReadDir(out)
	require.NoError(t, err)
	for _, f := range list {
		data, err := os.ReadFile(filepath.Join(out, f.Name()))
		require.NoError(t, err)
		r.made[f.Name()] = string(data)
	}
	return r
}

// sameFiles compares made files without printing them.
func sameFiles(t *testing.T, want, got map[string]string) {
	t.Helper()
	require.Equal(t, slices.Sorted(maps.Keys(want)), slices.Sorted(maps.Keys(got)))
	for name := range want {
		if want[name] != got[name] {
			t.Errorf("%s has other bytes", name)
		}
	}
}

// TestAtOnceAsOneAtATime: all sources in one call, on several processors and on one, give the files, the words, their order and the code
// that they give one at a time. What is broken, empty or missing keeps nothing from the others.
func TestAtOnceAsOneAtATime(t *testing.T) {
	for _, line := range [][]string{
		{"build"},
		{"build", "--format", "html"},
		{"build", "--format", "json", "--messages", "es"},
		{"build", "--json", "--archive"},
		{"check"},
		{"check", "--json"},
		{"fmt"},
		{"fmt", "-d", "--to", "es"},
	} {
		t.Run(strings.Join(line, " "), func(t *testing.T) {
			dir := t.TempDir()
			names := manySources(t, dir, time.Unix(1e9, 0))
			runs := func(at string, env []string, names ...string) ranIn {
				args := append(slices.Clone(line), names...)
				require.NoError(t, os.MkdirAll(filepath.Join(dir, at), 0o755))
				if line[0] == "build" {
					args = append(args, "-o", at)
				}
				r := runIn(t, dir, filepath.Join(dir, at), env, args...)
				r.said = strings.ReplaceAll(r.said, at+string(filepath.Separator), "")
				return r
			}
			var alone ranIn
			for _, name := range names {
				r := runs("alone", nil, name)
				alone.said, alone.code, alone.made = alone.said+r.said, max(alone.code, r.code), r.made
			}
			require.Equal(t, failed, alone.code)
			for _, n := range []int{1, 2, 9} {
				r := runs(fmt.Sprintf("at-once-%d", n), []string{fmt.Sprintf("GOMAXPROCS=%d", n)}, names...)
				require.Equal(t, alone.code, r.code, "%d processors", n)
				require.Equal(t, strings.Split(alone.said, "\n"), strings.Split(r.said, "\n"), "%d processors", n)
				sameFiles(t, alone.made, r.made)
			}
		})
	}
}

// TestShardsAreTheWhole: when every job of a farm takes every n-th file, in a folder, a time zone, a language and with rights and processors
// of its own, all of them together make what one call makes.
func TestShardsAreTheWhole(t *testing.T) {
	if _, err := exec.LookPath("sh"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("there is no shell to set the rights of new files with")
		}
		t.Skip("there is no shell to set the rights of new files with")
	}
	dir := t.TempDir()
	names := manySources(t, dir, time.Unix(1e9, 0))
	names = names[:len(names)-1] // a farm lists what is there
	out := filepath.Join(dir, "out")
	require.NoError(t, os.Mkdir(out, 0o755))
	whole := runIn(t, dir, out, nil, append([]string{"build", "-o", "out"}, names...)...)
	require.Len(t, whole.made, len(names)-len(alongside))
	const shards = 3
	zones, locales := []string{"Pacific/Auckland", "America/Caracas", "UTC"}, []string{"es_MX.UTF-8", "C", "tr_TR.UTF-8"}
	parts, worst := map[string]string{}, clean
	for shard := range shards {
		home, elsewhere := t.TempDir(), t.TempDir()
		manySources(t, home, time.Date(2001+shard, 2, 3, 4, 5, 6, 0, time.UTC))
		out := filepath.Join(elsewhere, "out")
		require.NoError(t, os.Mkdir(out, 0o755))
		var own []string
		for i, name := range names {
			if i%shards == shard {
				own = append(own, filepath.Join(home, name))
			}
		}
		cmd := exec.Command("sh", append([]string{"-c", `umask "$0"; exec ovillo build -o out "$@"`, []string{"077", "022", "000"}[shard]}, own...)...)
		cmd.Dir = elsewhere
		cmd.Env = []string{"PATH=" + os.Getenv("PATH"), "HOME=" + home, "TMPDIR=" + elsewhere, "TZ=" + zones[shard], "LC_ALL=" + locales[shard],
			fmt.Sprintf("GOMAXPROCS=%d", 2*shard+1)}
		if said, err := cmd.CombinedOutput(); cmd.ProcessState.ExitCode() > faulty {
			t.Fatalf("%v\n%s", err, said)
		}
		worst = max(worst, cmd.ProcessState.ExitCode())
		list, err := os.ReadDir(out)
		require.NoError(t, err)
		for _, f := range list {
			require.NotContains(t, parts, f.Name())
			data, err := os.ReadFile(filepath.Join(out, f.Name()))
			require.NoError(t, err)
			parts[f.Name()] = string(data)
		}
	}
	require.Equal(t, whole.code, worst)
	sameFiles(t, whole.made, parts)
}

// TestAtOnceInOrder: however long the files take, what is said of them comes in their order, each stream in its place among the other,
// and no more of them are begun than may wait.
func TestAtOnceInOrder(t *testing.T) {
	var screen bytes.Buffer
	c := &call{out: &screen, err: &screen, lang: "en"}
	var paths []string
	for i := range 200 {
		paths = append(paths, fmt.Sprintf("%03d", i))
	}
	const processors = 4
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(processors))
	const most = processors*ahead + 1 // those that wait, and the one that they wait for
	var begun, held atomic.Int32
	full := make(chan struct{})
	code := c.each(append(paths, "./007"), func(c *call, path string) int {
		if n := begun.Add(1); n == most {
			close(full)
		}
		if path == "000" {
			<-full
			for range 1000 {
				runtime.Gosched() // whoever could begin another would
			}
			held.Store(begun.Load())
		}
		if path == "150" {
			panic("gave up")
		}
		fmt.Fprintf(c.out, "%s begins\n", path)
		fmt.Fprintf(c.err, "%s is odd\n", path)
		return c.print([]byte(path + " ends\n"))
	})
	require.Equal(t, failed, code)
	require.EqualValues(t, most, held.Load())
	require.EqualValues(t, 200, begun.Load(), "a file that is named twice is handled once")
	var want strings.Builder
	for _, path := range paths {
		if path == "150" {
			continue
		}
		fmt.Fprintf(&want, "%s begins\n%s is odd\n%s ends\n", path, path, path)
	}
	got := screen.String()
	at := strings.Index(got, "ovillo: ")
	require.Positive(t, at)
	end := at + strings.Index(got[at:], "\n") + 1
	require.Contains(t, got[at:end], "gave up")
	require.True(t, strings.HasPrefix(got[end:], "151 begins"), got[end:])
	require.Equal(t, want.String(), got[:at]+got[end:])
}

// TestAtOnceToAFullDisk: that the standard output takes no more is said, and is a failure.
func TestAtOnceToAFullDisk(t *testing.T) {
	var screen bytes.Buffer
	c := &call{out: full{}, err: &screen, lang: "en"}
	code := c.each([]string{"a", "b"}, func(c *call, path string) int { return c.print([]byte(path)) })
	require.Equal(t, failed, code)
	require.Equal(t, 2, strings.Count(screen.String(), "no space"), screen.String())
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, fmt.Errorf("no space") }
