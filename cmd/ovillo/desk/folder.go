package desk

import (
	"errors"
	"io"
	"os"
	"path/filepath"

	"ovillo/compile/picture"
)

// errNotPlain is the error of a name that is no file's: a folder, a pipe, a device. To open one might wait for ever.
var errNotPlain = errors.New("not a plain file")

func openPlain(folder *os.Root, name string) (*os.File, error) {
	info, err := folder.Stat(name)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, errNotPlain
	}
	return folder.Open(name)
}

// Folder reads the files of a folder and of the folders in it, and no others, wherever a name or a link leads. It reads no
// more of one than tells that it is too large.
func Folder(path string) func(name string) ([]byte, error) {
	return func(name string) ([]byte, error) {
		folder, err := os.OpenRoot(path)
		if err != nil {
			return nil, err
		}
		defer folder.Close()
		f, err := openPlain(folder, filepath.FromSlash(name))
		if err != nil {
			return nil, err
		}
		defer f.Close()
		return io.ReadAll(io.LimitReader(f, picture.MostBytes+1))
	}
}
