//go:build unix

package desk

import (
	"errors"
	"os"
	"path/filepath"
	"syscall"
	"testing"
)

// oddFiles are what a folder can hold that is no file, with what makes it.
var oddFiles = map[string]func(path string) error{
	"pipe":         func(path string) error { return syscall.Mkfifo(path, 0o666) },
	"link to pipe": func(path string) error { return os.Symlink("pipe", path) },
	"in a ring":    func(path string) error { return os.Symlink(filepath.Base(path), path) },
	"terminal":     func(path string) error { return os.Symlink("/dev/tty", path) },
	"memory":       func(path string) error { return os.Symlink("/proc/self/environ", path) },
	"a descriptor": func(path string) error { return os.Symlink("/dev/fd/0", path) },
	"socket": func(path string) error {
		s, err := syscall.Socket(syscall.AF_UNIX, syscall.SOCK_STREAM, 0)
		if err != nil {
			return err
		}
		defer syscall.Close(s)
		return syscall.Bind(s, &syscall.SockaddrUnix{Name: path})
	},
}

// TestOpenSource: a file that a person names is opened, by a link as well; a pipe only where the system keeps those that shells make.
func TestOpenSource(t *testing.T) {
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name) }
	if err := os.WriteFile(at("a"), []byte("a"), 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("a", at("link")); err != nil {
		t.Fatal(err)
	}
	if err := syscall.Mkfifo(at("pipe"), 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("pipe", at("link to pipe")); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{at("a"), at("link"), os.DevNull} {
		f, err := OpenSource(name)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		f.Close()
	}
	for name, want := range map[string]error{"pipe": ErrNotPlain, "link to pipe": ErrNotPlain, ".": ErrFolder, "none": os.ErrNotExist} {
		if f, err := OpenSource(at(name)); !errors.Is(err, want) {
			t.Errorf("%s: %v, %v", name, f, err)
		}
	}
}
