package save

import (
	"encoding/binary"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/sys/unix"
)

// TestAttributes: labels, and who else may read a file, go with it.
func TestAttributes(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hat.ovillo")
	put(t, path, "old")
	// An access list as the system keeps it: version 2, then what each is, what it may do, and who it is. User 1234 may read; the group may
	// not, though the mode of the file says so, which then stands for the most that anybody named here may do.
	list := binary.LittleEndian.AppendUint32(nil, 2)
	for _, e := range []struct {
		tag, may uint16
		who      uint32
	}{{1, 6, ^uint32(0)}, {2, 4, 1234}, {4, 0, ^uint32(0)}, {0x10, 4, ^uint32(0)}, {0x20, 0, ^uint32(0)}} {
		list = binary.LittleEndian.AppendUint16(list, e.tag)
		list = binary.LittleEndian.AppendUint16(list, e.may)
		list = binary.LittleEndian.AppendUint32(list, e.who)
	}
	attributes := map[string][]byte{"user.colour": []byte("blue"), accessList: list}
	had := 0
	for name, value := range attributes {
		if err := unix.Setxattr(path, name, value, 0); err != nil {
			t.Logf("this disk takes no %s: %v", name, err)
			delete(attributes, name)
			continue
		}
		had++
	}
	if had == 0 {
		t.Skip("this disk takes no attributes")
	}
	before, err := os.Stat(path)
	require.NoError(t, err)
	require.NoError(t, Source(path, []byte("old"), []byte("new")))
	after, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, before.Mode(), after.Mode())
	for name, value := range attributes {
		got := make([]byte, 1024)
		n, err := unix.Getxattr(path, name, got)
		if assert.NoError(t, err, name) {
			assert.Equal(t, value, got[:n], name)
		}
	}
}
