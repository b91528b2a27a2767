//go:build unix

package trial

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// isPart reports whether a file is one that is still being written, or was when its writer died.
func isPart(name string) bool {
	return strings.HasPrefix(name, ".") && strings.HasSuffix(name, ".part")
}

func parts(t testing.TB, dir string) []string {
	return slices.DeleteFunc(names(t, dir), func(name string) bool { return !isPart(name) })
}

// TestKilled kills the command at many moments while it writes over many files: each is the old or the new one, whole. What it leaves
// behind is taken for nothing, and is gone when the same files are written some time later.
func TestKilled(t *testing.T) {
	const many = 30
	old, tidy := untidy(hat(t, "Taller Alba")), hat(t, "Taller Alba")
	for _, c := range []struct {
		name, ending string
		args         []string
		before       func(dir, source string) // makes the old file of a source
		after        string                   // the new file; "" if it is what a whole run makes
	}{
		{"fmt -w", ".ovillo", []string{"fmt", "-w", "*.ovillo"}, nil, tidy},
		{"build", ".json", []string{"build", "--format", "json", "*.ovillo"}, func(dir, source string) {
			put(t, filepath.Join(dir, source+".json"), "{\n  \"format\": \"ovillo-pattern\", \"old\": true }")
		}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			dir := folder(t)
			file := func(i int) string { return filepath.Join(dir, fmt.Sprintf("hat%02d%s", i, c.ending)) }
			begin := func() {
				for i := range many {
					put(t, filepath.Join(dir, fmt.Sprintf("hat%02d.ovillo", i)), old)
					if c.before != nil {
						c.before(dir, fmt.Sprintf("hat%02d", i))
					}
				}
			}
			begin()
			was := read(t, file(0))
			began := time.Now()
			require.Equal(t, 0, run(t, dir, c.args...).code)
			whole := time.Since(began)
			want := c.after
			if want == "" {
				want = read(t, file(0))
			}
			require.NotEqual(t, was, want)

			hits, kills, half := 0, 0, 0
			for ; kills < 600 && (hits < 6 || kills < 25); kills++ {
				begin()
				cmd := made(dir, c.args...)
				require.NoError(t, cmd.Start())
				time.Sleep(time.Duration(rand.Int64N(int64(whole))))
				cmd.Process.Signal(syscall.SIGKILL)
				cmd.Wait()
				done := 0
				for i := range many {
					switch read(t, file(i)) {
					case want:
						done++
					case was:
					default:
						t.Fatalf("%s is neither the old nor the new file", file(i))
					}
				}
				if done > 0 && done < many {
					half++
				}
				hits = len(parts(t, dir))
			}
			t.Logf("%d kills, %d among the files, %d in the middle of one", kills, half, hits)
			assert.Positive(t, half, "no kill came while files were written")
			assert.GreaterOrEqual(t, hits, 6, "no kill came in the middle of a file")

			// What is left is no source and no output of any command.
			begin()
			all := run(t, dir, "check", "*.ovillo", "--json")
			assert.Equal(t, 0, all.code, all.err)
			assert.NotContains(t, all.out+all.err, ".part")
			assert.Equal(t, 0, run(t, dir, "build", "hat00.ovillo").code)

			// It is taken away by who writes the same files again, when it is old enough to be nobody's.
			left := parts(t, dir)
			begin()
			require.Equal(t, 0, run(t, dir, c.args...).code)
			assert.Subset(t, parts(t, dir), left, "what may be another's work is left alone")
			for _, name := range left {
				hours := time.Now().Add(-2 * time.Hour)
				require.NoError(t, os.Chtimes(filepath.Join(dir, name), hours, hours))
			}
			begin()
			require.Equal(t, 0, run(t, dir, c.args...).code)
			assert.Empty(t, parts(t, dir))
		})
	}
}

// TestTwoAtOnce: several commands that write the same file at once leave it whole, and nothing else.
func TestTwoAtOnce(t *testing.T) {
	dir := folder(t)
	at := func(name string) string { return filepath.Join(dir, name) }
	put(t, at("hat.ovillo"), hat(t, "Taller Alba"))
	require.Equal(t, 0, run(t, dir, "build", "hat.ovillo").code)
	pages := read(t, at("hat.pdf"))
	for range 5 {
		put(t, at("rough.ovillo"), untidy(hat(t, "Taller Alba")))
		done := make(chan ran)
		for range 4 {
			go func() { done <- finish(t, made(dir, "build", "hat.ovillo")) }()
			go func() { done <- finish(t, made(dir, "fmt", "-w", "rough.ovillo")) }()
		}
		for range 8 {
			r := <-done
			assert.Equal(t, 0, r.code, r.err)
		}
		assert.True(t, pages == read(t, at("hat.pdf")), "the pages are others")
		assert.Equal(t, hat(t, "Taller Alba"), read(t, at("rough.ovillo")))
	}
	assert.ElementsMatch(t, []string{"hat.ovillo", "hat.pdf", "rough.ovillo"}, names(t, dir))

	fresh := make(chan ran)
	for range 8 {
		go func() { fresh <- finish(t, made(dir, "new", "sea-hat")) }()
	}
	begun := 0
	for range 8 {
		if r := <-fresh; r.code == 0 {
			begun++
		} else {
			r.said(t, "it is there already and is kept")
		}
	}
	assert.Equal(t, 1, begun, "only one may begin a pattern")
	assert.Equal(t, 0, run(t, dir, "check", "sea-hat.ovillo").code)
}

// writers are the commands that write, with where they write in a folder that has hat.ovillo, old.ovillo, rough.ovillo and notes.ovillo.
var writers = []struct {
	output string
	args   []string
}{
	{"hat.pdf", []string{"build", "hat.ovillo"}},
	{"hat.html", []string{"build", "hat.ovillo", "--format", "html"}},
	{"hat.json", []string{"build", "hat.ovillo", "--format", "json"}},
	{"hat-en.txt", []string{"build", "hat.ovillo", "--format", "text", "--lang", "en"}},
	{"hat-schematic.svg", []string{"draw", "hat.ovillo", "schematic"}},
	{"hat-schematic.png", []string{"draw", "hat.ovillo", "schematic", "--dpi", "100"}},
	{"hat-report.pdf", []string{"report", "hat.ovillo", "--format", "pdf"}},
	{"hat-errata.pdf", []string{"changes", "old.ovillo", "hat.ovillo", "--format", "pdf"}},
	{"list.txt", []string{"changes", "old.ovillo", "hat.ovillo", "-o", "list.txt"}},
	{"list.md", []string{"changes", "old.ovillo", "hat.ovillo", "--format", "markdown", "-o", "list.md"}},
	{"rough.ovillo", []string{"fmt", "-w", "rough.ovillo"}},
	{"notes.ovillo", []string{"changes", "old.ovillo", "notes.ovillo", "--notes", "-w"}},
	{"sea.ovillo", []string{"new", "sea"}},
}

// desk fills a folder with the sources of writers.
func desk(t testing.TB, dir string) {
	t.Helper()
	text := hat(t, "Taller Alba")
	later := strings.Replace(text, "hook 5 mm", "hook 5.5 mm", 1)
	require.NotEqual(t, text, later)
	for name, text := range map[string]string{"old": text, "hat": text, "rough": untidy(text), "notes": later} {
		put(t, filepath.Join(dir, name+".ovillo"), text)
	}
}

// isSource reports whether a writer rewrites a source, or begins one, rather than making something from it.
func isSource(output string) bool { return strings.HasSuffix(output, ".ovillo") }

// TestWriters: without obstacles they all write, and leave nothing else.
func TestWriters(t *testing.T) {
	dir := folder(t)
	desk(t, dir)
	before := names(t, dir)
	for _, w := range writers {
		was, _ := os.ReadFile(filepath.Join(dir, w.output))
		r := run(t, dir, w.args...)
		assert.Equal(t, 0, r.code, "%v: %s", w.args, r.err)
		assert.NotEqual(t, string(was), read(t, filepath.Join(dir, w.output)), w.output)
		if !slices.Contains(before, w.output) {
			before = append(before, w.output)
		}
	}
	assert.ElementsMatch(t, before, names(t, dir))
}

// TestInTheWay: a folder, a link, a pipe, a device, a file marked as read-only and one of another kind stay as they are, whatever writes.
func TestInTheWay(t *testing.T) {
	for _, w := range writers {
		t.Run(strings.Join(w.args, " "), func(t *testing.T) {
			for _, c := range []struct {
				name string
				put  func(path string)
				says string
			}{
				{"a folder", func(path string) { require.NoError(t, os.Mkdir(path, 0o755)) }, "folder"},
				{"a link", func(path string) {
					require.NoError(t, os.Rename(path, path+".real"))
					require.NoError(t, os.Symlink(filepath.Base(path)+".real", path))
				}, "it is a link to "},
				{"a link to nothing", func(path string) { require.NoError(t, os.Symlink("nothing", path)) }, ""},
				{"a pipe", func(path string) { require.NoError(t, syscall.Mkfifo(path, 0o644)) }, "it is a pipe or a device"},
				{"read-only", func(path string) { require.NoError(t, os.Chmod(path, 0o444)) }, "it is marked as read-only"},
			} {
				dir := folder(t)
				desk(t, dir)
				path := filepath.Join(dir, w.output)
				if !isSource(w.output) || w.args[0] == "new" { // an older one
					if c.name == "a link" || c.name == "read-only" {
						require.Equal(t, 0, run(t, dir, w.args...).code)
					}
				}
				if c.name != "a link" && c.name != "read-only" {
					os.Remove(path)
				}
				c.put(path)
				before, err := os.Lstat(path)
				require.NoError(t, err)
				there := names(t, dir)
				r := run(t, dir, w.args...)
				says := c.says
				if w.args[0] == "new" {
					says = "it is there already and is kept"
				}
				assert.Equal(t, 2, r.code, "%s: %s", c.name, r.err)
				assert.Contains(t, r.err, says, c.name)
				after, err := os.Lstat(path)
				require.NoError(t, err)
				assert.Equal(t, []any{before.Mode(), before.ModTime(), before.Size()}, []any{after.Mode(), after.ModTime(), after.Size()}, c.name)
				assert.Equal(t, there, names(t, dir), c.name)
			}
			if isSource(w.output) {
				return
			}
			for _, mine := range []string{untidy(hat(t, "Taller Alba")), "What I noted\n", "\x00\x01"} {
				dir := folder(t)
				desk(t, dir)
				put(t, filepath.Join(dir, w.output), mine)
				run(t, dir, w.args...).said(t, "is kept")
				assert.Equal(t, mine, read(t, filepath.Join(dir, w.output)))
			}
		})
	}
}
