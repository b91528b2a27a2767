//go:build unix

package save

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestOwner: an administrator who writes a file of somebody else leaves it to them, with what they may do.
func TestOwner(t *testing.T) {
	if os.Geteuid() != 0 {
		t.Skip("only an administrator gives files away")
	}
	path := filepath.Join(t.TempDir(), "hat.ovillo")
	put(t, path, "old")
	require.NoError(t, os.Chown(path, 1234, 4321))
	require.NoError(t, os.Chmod(path, 0o664))
	require.NoError(t, Source(path, []byte("old"), []byte("new")))
	info, err := os.Stat(path)
	require.NoError(t, err)
	s := info.Sys().(*syscall.Stat_t)
	assert.Equal(t, []uint32{1234, 4321}, []uint32{s.Uid, s.Gid})
	assert.Equal(t, os.FileMode(0o664), info.Mode().Perm())
	holds(t, path, "new")
}

// TestPipe: a pipe and a socket are no files.
func TestPipe(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "pipe")
	require.NoError(t, syscall.Mkfifo(path, 0o666))
	assert.ErrorIs(t, Output(path, nil), ErrNotPlain)
	s, err := syscall.Socket(syscall.AF_UNIX, syscall.SOCK_STREAM, 0)
	require.NoError(t, err)
	defer syscall.Close(s)
	require.NoError(t, syscall.Bind(s, &syscall.SockaddrUnix{Name: filepath.Join(dir, "socket")}))
	assert.ErrorIs(t, Output(filepath.Join(dir, "socket"), nil), ErrNotPlain)
	only(t, dir, "pipe", "socket")
}
