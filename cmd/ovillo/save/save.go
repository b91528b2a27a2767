package save

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// Why a file is not written. Those of the system come as they are.
var (
	ErrFolder   = errors.New("a folder")
	ErrLink     = errors.New("a link")
	ErrNotPlain = errors.New("not an ordinary file")
	ErrReadOnly = errors.New("marked as read-only")
	ErrShut     = errors.New("the folder takes no files")
	ErrOwner    = errors.New("it could not be given back to those it belongs to")
	ErrChanged  = errors.New("changed since it was read")
	ErrTwoNames = errors.New("it has two names")
)

// Output writes a file that is made anew each time: it replaces what is there, or begins it. A link, a device and a folder are not
// written to, since what they lead to was not named, nor is a file that is marked as read-only. What replaces a file has its permissions
// and belongs to the same people.
func Output(path string, data []byte) error {
	return replace(path, data, func(fs.FileInfo) error { return nil })
}

// Source writes a person's own file anew, of which was is what was read: if it holds something else by now, it is kept. A file that
// has two names is kept as well, because one of them would go on to lead to the old text.
func Source(path string, was, data []byte) error {
	return replace(path, data, func(old fs.FileInfo) error {
		if old == nil {
			return fs.ErrNotExist // somebody has taken it away
		}
		if namesOf(old) > 1 {
			return ErrTwoNames
		}
		now, err := os.ReadFile(path)
		if err == nil && !bytes.Equal(now, was) && !bytes.Equal(now, data) {
			return ErrChanged
		}
		return err
	})
}

// replace writes a file. may is asked last of all, with what is to be replaced; nil if nothing is.
func replace(path string, data []byte, may func(old fs.FileInfo) error) error {
	old, err := standing(path)
	if err != nil {
		return err
	}
	f, err := written(path, data, old)
	if err != nil {
		return err
	}
	defer os.Remove(f) // it is gone once it has its name
	if now, err := standing(path); err != nil {
		return err
	} else if err := may(now); err != nil {
		return err
	}
	if err := os.Rename(f, path); err != nil {
		return err
	}
	syncFolder(filepath.Dir(path))
	return nil
}

// New writes a file that is not there yet; if it is, or comes meanwhile, it is kept, and the error is a [fs.ErrExist].
func New(path string, data []byte) error {
	if _, err := os.Lstat(path); err == nil {
		return fs.ErrExist
	}
	f, err := written(path, data, nil)
	if err != nil {
		return err
	}
	defer os.Remove(f)
	err = os.Link(f, path) // unlike a renaming it takes nobody's place
	if err != nil && !errors.Is(err, fs.ErrExist) {
		err = claim(f, path) // a disk that has no links
	}
	if err == nil {
		syncFolder(filepath.Dir(path))
	}
	return err
}

// claim gives a file a name that nothing has, by an empty file that is replaced.
func claim(f, path string) error {
	empty, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	empty.Close()
	if err = os.Rename(f, path); err != nil {
		os.Remove(path)
	}
	return err
}

// standing is the file that stands at a path and may be replaced; nil if there is none.
func standing(path string) (fs.FileInfo, error) {
	old, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, err
	case old.IsDir():
		return nil, ErrFolder
	case old.Mode()&fs.ModeSymlink != 0:
		return nil, ErrLink
	case !old.Mode().IsRegular():
		return nil, ErrNotPlain
	case old.Mode().Perm()&0o222 == 0:
		return nil, ErrReadOnly // an administrator may write it all the same, and does not want to
	}
	// To rename asks for leave of the folder alone; who may not write the file itself is not to replace it either.
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return f.Stat()
}

// written is the name of a new file in the folder of a path that holds data, synced, with the permissions of an old one, if there is one.
// If it cannot be written it is taken away.
func written(path string, data []byte, old fs.FileInfo) (name string, err error) {
	mode := fs.FileMode(0o666)
	if old != nil {
		mode = 0o600 // nobody sees more of the new text than of the old one
	}
	f, err := fresh(path, mode)
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	dropLeftovers(path, f)
	if _, err = f.Write(data); err != nil {
		return "", err
	}
	if old != nil {
		if err = alike(f, path, old); err != nil {
			return "", err
		}
	}
	if err = f.Sync(); err != nil {
		return "", err
	}
	return f.Name(), f.Close()
}

// syncFolder makes the new name last. Not every file system can; the file itself is safe already.
func syncFolder(folder string) {
	if d, err := os.Open(folder); err == nil {
		d.Sync()
		d.Close()
	}
}
