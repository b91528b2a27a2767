//go:build !unix

package save

import (
	"io/fs"
	"os"
)

// alike gives a new file what the old one had. On these systems what people may do is the folder's to say.
func alike(*os.File, string, fs.FileInfo) error { return nil }

// namesOf is how many names a file has; where that is not told with the file, one.
func namesOf(fs.FileInfo) uint64 { return 1 }
