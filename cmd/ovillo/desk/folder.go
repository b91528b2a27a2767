package desk

import (
	"bytes"
	"io"
	"os"
	"path/filepath"

	"ovillo/compile/picture"
	"ovillo/lang"
)

// Folder reads the files of a folder and of the folders in it, and no others, wherever a name or a link leads. Of one that is too large
// it reads the beginning alone; how long the data are tells that it is, and zeros stand for the rest.
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
		info, err := f.Stat()
		if err != nil {
			return nil, err
		}
		most := int64(picture.MostBytes)
		if filepath.Ext(name) == ".ovillo" {
			most = lang.MostBytes // many may be named, and what stands for the rest takes memory
		}
		if info.Size() > most {
			data := make([]byte, most+1)
			_, err := io.ReadFull(f, data[:beginning])
			return data, err
		}
		var b bytes.Buffer
		b.Grow(int(info.Size()) + bytes.MinRead)
		_, err = b.ReadFrom(io.LimitReader(f, most+1))
		return b.Bytes(), err
	}
}

// beginning is how many bytes tell what kind of file one is.
const beginning = 4 << 10
