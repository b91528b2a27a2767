//go:build linux

package trial

import (
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// disk is a small one of its own, with room for so many kilobytes. A container in which even the administrator may not have one skips the
// test; TestTooLarge asks much the same without a disk.
func disk(t *testing.T, kilobytes int) string {
	t.Helper()
	if os.Geteuid() != 0 {
		without(t, "only an administrator can put in a disk")
	}
	dir := folder(t)
	err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "mode=0777,size="+strconv.Itoa(kilobytes)+"k")
	if errors.Is(err, syscall.EPERM) {
		t.Skip("no disk can be put into this container")
	}
	require.NoError(t, err)
	t.Cleanup(func() { assert.NoError(t, syscall.Unmount(dir, 0)) })
	return dir
}

// fill writes into a file until the disk is full, but for so many bytes.
func fill(t *testing.T, dir string, but int64) {
	t.Helper()
	f, err := os.Create(filepath.Join(dir, "filler"))
	require.NoError(t, err)
	defer f.Close()
	for err == nil {
		_, err = f.Write(make([]byte, 4096))
	}
	require.ErrorIs(t, err, syscall.ENOSPC)
	size, err := f.Seek(0, 1)
	require.NoError(t, err)
	require.NoError(t, f.Truncate((size-but)&^4095))
}

// all is what is in a folder, by name.
func all(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, name := range names(t, dir) {
		path := filepath.Join(dir, name)
		info, err := os.Lstat(path)
		require.NoError(t, err)
		out[name] = info.Mode().String()
		if info.Mode().IsRegular() {
			out[name] += " " + read(t, path)
		}
	}
	return out
}

// same asserts that nothing in a folder has changed, without printing whole files.
func same(t *testing.T, before, after map[string]string, about string) {
	t.Helper()
	for name, text := range before {
		now, there := after[name]
		assert.True(t, there, "%s: %s is gone", about, name)
		assert.True(t, !there || now == text, "%s: %s is another", about, name)
	}
	for name := range after {
		_, was := before[name]
		assert.True(t, was, "%s: %s is left behind", about, name)
	}
}

// TestFullDisk: on a disk that is full, or fills up half way through a file, old files stay whole and nothing is left behind.
func TestFullDisk(t *testing.T) {
	dir := disk(t, 1500)
	for _, w := range writers {
		for _, room := range []int64{0, 8192} { // none for a new file, or not enough but for small ones
			desk(t, dir)
			if w.args[0] != "new" && !isSource(w.output) { // an older one
				require.Equal(t, 0, run(t, dir, w.args...).code)
			}
			fill(t, dir, room)
			before := all(t, dir)
			r := run(t, dir, w.args...)
			about := strings.Join(w.args, " ")
			if r.code == 0 && room > 0 {
				require.Less(t, len(read(t, filepath.Join(dir, w.output))), 8192, "%s fits into more than there is", about)
				delete(before, w.output)
			} else {
				r.said(t, "cannot write "+w.output+": the disk is full")
			}
			after := all(t, dir)
			if r.code == 0 {
				delete(after, w.output)
			}
			same(t, before, after, about)
			es := run(t, dir, append(w.args, "--messages", "es")...)
			if r.code != 0 {
				es.said(t, "no se puede escribir "+w.output+": el disco está lleno")
			}
			for name := range after {
				require.NoError(t, os.Remove(filepath.Join(dir, name)))
			}
			os.Remove(filepath.Join(dir, w.output))
		}
	}
}

// TestReadOnlyDisk: on a disk that takes nothing, this is said.
func TestReadOnlyDisk(t *testing.T) {
	dir := disk(t, 1500)
	desk(t, dir)
	require.NoError(t, syscall.Mount("", dir, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""))
	before := all(t, dir)
	for _, w := range writers {
		run(t, dir, w.args...).said(t, "cannot write "+w.output+": the disk is read-only")
		run(t, dir, append(w.args, "--messages", "es")...).said(t, "el disco es de solo lectura")
	}
	same(t, before, all(t, dir), "")
}

// TestTooLarge: where no file may be larger than one kilobyte, what is larger is not written, and the old file stays whole.
func TestTooLarge(t *testing.T) {
	for _, w := range writers {
		dir := folder(t)
		desk(t, dir)
		about := strings.Join(w.args, " ")
		if w.args[0] != "new" && !isSource(w.output) {
			require.Equal(t, 0, run(t, dir, w.args...).code)
			if len(read(t, filepath.Join(dir, w.output))) <= 1024 {
				t.Log("too small to fail: " + about)
				continue
			}
		}
		before := all(t, dir)
		cmd := exec.Command("sh", append([]string{"-c", `ulimit -f 1 && exec "$@"`, "sh", command}, w.args...)...) // blocks of 512 bytes, or of 1024
		cmd.Dir, cmd.Env = dir, append(os.Environ(), "LC_ALL=en_US.UTF-8")
		finish(t, cmd).said(t, "cannot write "+w.output+": it is larger than this disk or this user is allowed")
		same(t, before, all(t, dir), about)
	}
}

// nobody is a user who owns nothing.
const nobody = 65534

// runAs runs the command as another user; only an administrator can.
func runAs(t *testing.T, dir string, groups []uint32, args ...string) ran {
	t.Helper()
	cmd := made(dir, args...)
	cmd.SysProcAttr = &syscall.SysProcAttr{Credential: &syscall.Credential{Uid: nobody, Gid: nobody, Groups: groups}}
	return finish(t, cmd)
}

// TestForbidden: a person who is not the administrator, in folders and with files that are not open to them.
func TestForbidden(t *testing.T) {
	if os.Geteuid() != 0 {
		without(t, "only an administrator can be somebody else")
	}
	at := func(dir, name string) string { return filepath.Join(dir, name) }
	give := func(t *testing.T, path string, owner, group int, mode fs.FileMode) {
		t.Helper()
		require.NoError(t, os.Chown(path, owner, group))
		require.NoError(t, os.Chmod(path, mode))
	}
	t.Run("a folder that is shut", func(t *testing.T) {
		for _, w := range writers {
			dir := folder(t)
			desk(t, dir)
			if w.args[0] != "new" && !isSource(w.output) {
				require.Equal(t, 0, run(t, dir, w.args...).code)
			}
			for _, name := range names(t, dir) {
				require.NoError(t, os.Chmod(at(dir, name), 0o666))
			}
			before := all(t, dir)
			runAs(t, dir, nil, w.args...).said(t, "cannot write "+w.output+": you may not write in the folder .")
			same(t, before, all(t, dir), w.output)
		}
	})
	t.Run("a file that is shut", func(t *testing.T) {
		for _, w := range writers {
			if w.args[0] == "new" {
				continue
			}
			dir := folder(t)
			desk(t, dir)
			if !isSource(w.output) {
				require.Equal(t, 0, run(t, dir, w.args...).code)
			}
			require.NoError(t, os.Chmod(dir, 0o777)) // so that the file could be replaced all the same
			before := all(t, dir)
			runAs(t, dir, nil, w.args...).said(t, "cannot write "+w.output+": permission denied")
			same(t, before, all(t, dir), w.output)
		}
	})
	t.Run("a source that is not shown", func(t *testing.T) {
		dir := folder(t)
		desk(t, dir)
		give(t, at(dir, "rough.ovillo"), 0, 0, 0o600)
		require.NoError(t, os.Chmod(dir, 0o777))
		runAs(t, dir, nil, "fmt", "-w", "rough.ovillo").said(t, "cannot read rough.ovillo: permission denied")
	})
	t.Run("an output that cannot be looked at", func(t *testing.T) {
		dir := folder(t)
		desk(t, dir)
		put(t, at(dir, "hat.pdf"), "what I wrote, by whatever name")
		give(t, at(dir, "hat.pdf"), nobody, nobody, 0o200)
		require.NoError(t, os.Chmod(dir, 0o777))
		before := all(t, dir)
		runAs(t, dir, nil, "build", "hat.ovillo").said(t, "cannot write hat.pdf: permission denied")
		same(t, before, all(t, dir), "")
	})
	t.Run("a folder where everybody keeps what is theirs", func(t *testing.T) {
		dir := folder(t)
		desk(t, dir)
		give(t, at(dir, "rough.ovillo"), 1000, nobody, 0o666)
		give(t, dir, 0, 0, 0o777|fs.ModeSticky)
		before := all(t, dir)
		runAs(t, dir, nil, "fmt", "-w", "rough.ovillo").said(t, "cannot write rough.ovillo: permission denied")
		same(t, before, all(t, dir), "")
	})
	t.Run("a folder that a group shares", func(t *testing.T) {
		const group = 4321
		dir := folder(t)
		desk(t, dir)
		give(t, dir, 1000, group, 0o775)
		give(t, at(dir, "rough.ovillo"), 1000, group, 0o664)
		r := runAs(t, dir, []uint32{group}, "fmt", "-w", "rough.ovillo")
		assert.Equal(t, 0, r.code, r.err)
		info, err := os.Stat(at(dir, "rough.ovillo"))
		require.NoError(t, err)
		assert.EqualValues(t, group, info.Sys().(*syscall.Stat_t).Gid, "the others lose it")
		assert.Equal(t, fs.FileMode(0o664), info.Mode().Perm())
		assert.Equal(t, hat(t, "Taller Alba"), read(t, at(dir, "rough.ovillo")))
	})
	t.Run("a file of a group that one is not in", func(t *testing.T) {
		dir := folder(t)
		desk(t, dir)
		give(t, at(dir, "rough.ovillo"), 1000, 4321, 0o666)
		require.NoError(t, os.Chmod(dir, 0o777))
		before := all(t, dir)
		runAs(t, dir, nil, "fmt", "-w", "rough.ovillo").said(t, "it belongs to others, and the new one could not be given to them")
		same(t, before, all(t, dir), "")
	})
	t.Run("the administrator gives it back", func(t *testing.T) {
		dir := folder(t)
		desk(t, dir)
		give(t, at(dir, "rough.ovillo"), 1000, 4321, 0o640)
		require.Equal(t, 0, run(t, dir, "fmt", "-w", "rough.ovillo").code)
		info, err := os.Stat(at(dir, "rough.ovillo"))
		require.NoError(t, err)
		s := info.Sys().(*syscall.Stat_t)
		assert.Equal(t, []uint32{1000, 4321, 0o640}, []uint32{s.Uid, s.Gid, uint32(info.Mode().Perm())})
	})
}
