package desk

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// ErrNotPlain is the error of a name that is no file's: a folder, a pipe, a socket, a device. To open one might wait for ever.
var ErrNotPlain = errors.New("not a plain file")

// OpenSource opens a file that a person named. Pipes and devices are opened only where the system keeps them, as in /dev/stdin and in
// /dev/fd/63, by which a shell hands over what another command says: elsewhere they are no person's source.
func OpenSource(path string) (*os.File, error) {
	if full := filepath.ToSlash(path); strings.HasPrefix(full, "/dev/") || strings.HasPrefix(full, "/proc/self/fd/") {
		return os.Open(path)
	}
	return openPlain(os.Stat, os.OpenFile, path)
}

// ErrLeadsOut is the error of a link that leads out of its folder.
var ErrLeadsOut = errors.New("a link that leads out of its folder")

// OpenIn opens a plain file of a folder.
func OpenIn(folder *os.Root, name string) (*os.File, error) {
	f, err := openPlain(folder.Stat, folder.OpenFile, name)
	var path *fs.PathError // that a link leads out has no error of its own, but it is none of these
	if errors.As(err, &path) && !errors.Is(err, fs.ErrNotExist) && !errors.Is(err, fs.ErrPermission) {
		if info, e := folder.Lstat(name); e == nil && info.Mode()&fs.ModeSymlink != 0 {
			return nil, ErrLeadsOut
		}
	}
	return f, err
}

// openPlain looks what a file is before it is opened, since to open some things does something, and again behind, since it may be another
// by then; so as not to wait for a pipe in between.
func openPlain(stat func(string) (fs.FileInfo, error), open func(string, int, fs.FileMode) (*os.File, error), name string) (*os.File, error) {
	info, err := stat(name)
	if err != nil {
		return nil, err
	}
	if err := plain(info); err != nil {
		return nil, err
	}
	f, err := open(name, os.O_RDONLY|unwaiting, 0)
	if err != nil {
		return nil, err
	}
	if info, err = f.Stat(); err == nil {
		err = plain(info)
	}
	if err != nil {
		f.Close()
		return nil, err
	}
	return f, nil
}

func plain(info fs.FileInfo) error {
	switch {
	case info.IsDir():
		return ErrFolder
	case !info.Mode().IsRegular():
		return ErrNotPlain
	}
	return nil
}
