//go:build linux || darwin

package save

import (
	"bytes"
	"os"

	"golang.org/x/sys/unix"
)

// accessList is the attribute in which Linux keeps who else may do what with a file.
const accessList = "system.posix_acl_access"

// copyAttributes gives a new file the attributes of the one at a path: labels, colours, who else may read it. One that cannot be given is
// left out, but for the last kind: without it the new file might be open to more people than the old one.
func copyAttributes(f *os.File, path string) error {
	list := make([]byte, 64<<10)
	n, err := unix.Llistxattr(path, list)
	if err != nil {
		return nil // this disk has none
	}
	for name := range bytes.SplitSeq(bytes.TrimRight(list[:n], "\x00"), []byte{0}) {
		value := make([]byte, 64<<10)
		n, err := unix.Lgetxattr(path, string(name), value)
		if err == nil {
			err = unix.Fsetxattr(int(f.Fd()), string(name), value[:n], 0)
		}
		if err != nil && string(name) == accessList {
			return ErrOwner
		}
	}
	return nil
}
