//go:build unix

package save

import (
	"io/fs"
	"os"
	"syscall"
)

// alike gives a new file what the old one at a path had: the people it belongs to and what they may do.
func alike(f *os.File, path string, old fs.FileInfo) error {
	mine, err := f.Stat()
	if err != nil {
		return err
	}
	was, ok := old.Sys().(*syscall.Stat_t)
	is, also := mine.Sys().(*syscall.Stat_t)
	if ok && also && (was.Uid != is.Uid || was.Gid != is.Gid) {
		// Only an administrator may give a file away; those who share a file share its group.
		if f.Chown(int(was.Uid), int(was.Gid)) != nil && was.Gid != is.Gid && f.Chown(-1, int(was.Gid)) != nil {
			return ErrOwner
		}
	}
	// Behind the owner, since a change of owner may take rights away.
	if err := f.Chmod(old.Mode().Perm()); err != nil {
		return err
	}
	return copyAttributes(f, path)
}

// namesOf is how many names a file has.
func namesOf(info fs.FileInfo) uint64 {
	if s, ok := info.Sys().(*syscall.Stat_t); ok {
		return uint64(s.Nlink)
	}
	return 1
}
