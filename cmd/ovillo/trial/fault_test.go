//go:build linux

package trial

import (
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// traced is the command under strace, which tampers with calls of the system or lists them.
func traced(t testing.TB, dir string, options []string, args ...string) *exec.Cmd {
	t.Helper()
	needs(t, "strace")
	cmd := exec.Command("strace", append(append([]string{"-f", "-qq", "-e", "signal=none"}, options...), append([]string{command}, args...)...)...)
	cmd.Dir, cmd.Env = dir, append(os.Environ(), "LC_ALL=en_US.UTF-8", "GOMAXPROCS=1")
	return cmd
}

// TestKilledAtEachCall kills the command at the first, the second … of each kind of call by which files are made, until none is left:
// the file is the old or the new one, whole.
func TestKilledAtEachCall(t *testing.T) {
	for _, w := range writers {
		if w.output != "hat.json" && !isSource(w.output) {
			continue // all that is made from a source is written in one way
		}
		t.Run(strings.Join(w.args, " "), func(t *testing.T) {
			dir := folder(t)
			path := filepath.Join(dir, w.output)
			desk(t, dir)
			old := "" // there is none
			if !isSource(w.output) {
				old = "{\n  \"format\": \"ovillo-pattern\" }"
				put(t, path, old)
			} else if w.args[0] != "new" {
				old = read(t, path)
			}
			require.Equal(t, 0, run(t, dir, w.args...).code)
			want := read(t, path)
			require.NotEqual(t, old, want)
			killed, wholes := 0, map[string]int{}
			for _, call := range []string{"openat", "newfstatat,fstat,lstat", "write", "fchmod", "fsync", "close", "rename,renameat,renameat2", "link,linkat", "unlink,unlinkat"} {
				for n := 1; ; n++ {
					require.Less(t, n, 500, "there is no end to %s", call)
					if require.NoError(t, os.RemoveAll(path)); old != "" {
						put(t, path, old)
					}
					r := finish(t, traced(t, dir, []string{"-o", os.DevNull, "-e", "trace=" + call, "-e", "inject=" + call + ":signal=KILL:when=" + strconv.Itoa(n)}, w.args...))
					got, err := os.ReadFile(path)
					switch {
					case err != nil && old == "":
						wholes["none"]++
					case err == nil && string(got) == old:
						wholes["old"]++
					case err == nil && string(got) == want:
						wholes["new"]++
					default:
						t.Fatalf("killed at %s %d it is neither the old nor the new file (%v)", call, n, err)
					}
					if r.code == 0 {
						break
					}
					killed++
				}
			}
			t.Logf("killed %d times: %v", killed, wholes)
			assert.Greater(t, killed, 20)
			assert.Positive(t, wholes["old"]+wholes["none"])
			assert.Positive(t, wholes["new"])
			assert.NotEmpty(t, parts(t, dir), "it was never killed while it wrote")
		})
	}
}

// TestCallsThatFail has the system refuse what writing needs, once the new file is begun: the old one is whole, the new one is gone, and it
// is said.
func TestCallsThatFail(t *testing.T) {
	for _, w := range writers {
		if w.args[0] == "new" {
			continue
		}
		for _, c := range []struct{ calls, fault, says string }{
			{"fsync", "EIO", "the system says: input/output error"},
			{"fchmod", "EPERM", "permission denied"},
			{"rename,renameat,renameat2", "EIO", "the system says: input/output error"},
			{"rename,renameat,renameat2", "EDQUOT", "it is larger than this disk or this user is allowed"},
		} {
			dir := folder(t)
			desk(t, dir)
			if !isSource(w.output) {
				require.Equal(t, 0, run(t, dir, w.args...).code)
			}
			before := all(t, dir)
			r := finish(t, traced(t, dir, []string{"-o", os.DevNull, "-e", "trace=" + c.calls, "-e", "inject=" + c.calls + ":error=" + c.fault}, w.args...))
			r.said(t, "cannot write "+w.output+": "+c.says)
			same(t, before, all(t, dir), strings.Join(w.args, " ")+", "+c.calls)
		}
	}
}

// TestOnlyNewFilesAreOpened: whatever writes opens no file for writing but new ones that nobody had before, and the old one only to know
// whether it may.
func TestOnlyNewFilesAreOpened(t *testing.T) {
	for _, w := range writers {
		dir := folder(t)
		desk(t, dir)
		if w.args[0] != "new" && !isSource(w.output) {
			require.Equal(t, 0, run(t, dir, w.args...).code)
		}
		log := filepath.Join(folder(t), "calls")
		r := finish(t, traced(t, dir, []string{"-o", log, "-e", "trace=open,openat,openat2,creat,truncate,ftruncate,unlink,unlinkat,rename,renameat,renameat2,link,linkat,mkdir,mkdirat,symlink,symlinkat"}, w.args...))
		require.Equal(t, 0, r.code, r.err)
		fresh := 0
		for line := range strings.SplitSeq(read(t, log), "\n") {
			_, call, ok := strings.Cut(line, " ")
			if !ok || strings.Contains(call, "/sys/") || strings.Contains(call, "+++") {
				continue
			}
			call = strings.TrimSpace(call)
			about := strings.Join(w.args, " ") + ": " + call
			part := strings.Contains(call, `.part"`)
			switch {
			case strings.Contains(call, "O_CREAT") || strings.HasPrefix(call, "creat("):
				assert.True(t, part && strings.Contains(call, "O_EXCL") && !strings.Contains(call, "O_TRUNC"), about)
				fresh++
			case strings.HasPrefix(call, "open"):
				assert.NotContains(t, call, "O_TRUNC", about)
				assert.True(t, strings.Contains(call, "O_RDONLY") || strings.Contains(call, "O_RDWR") && strings.Contains(call, `"/dev/`) ||
					strings.Contains(call, "O_WRONLY") && strings.Contains(call, `"`+w.output+`"`), about)
			default: // it gets its name, or is taken away
				assert.True(t, part, about)
			}
		}
		assert.Equal(t, 1, fresh, "%v", w.args)
	}
}
