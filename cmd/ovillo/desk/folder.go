package desk

import (
	"io"
	"os"
	"path/filepath"

	"ovillo/compile/picture"
)

// Folder reads the files of a folder and of the folders in it, and no others, wherever a name or a link leads. It reads no
// more of one than tells that it is too large.
func Folder(path string) func(name string) ([]byte, error) {
	return func(name string) ([]byte, error) {
		folder, err := os.OpenRoot(path)
		if err != nil {
			return nil, err
		}
		defer folder.Close()
		f, err := OpenIn(folder, filepath.FromSlash(name))
		if err != nil {
			return nil, err
		}
		defer f.Close()
		return io.ReadAll(io.LimitReader(f, picture.MostBytes+1))
	}
}
