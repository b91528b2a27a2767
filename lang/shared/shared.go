// Package shared makes the files that examples of messages use, for tests.
package shared

import (
	"bytes"
	"fmt"
	"io/fs"
)

// Open returns a file by its name: common.ovillo is as it should be, circle.ovillo uses itself by way of another one, whole.ovillo is a pattern,
// large.ovillo has nearly four megabytes, each of deep/1.ovillo and so on uses the next, and locked.ovillo cannot be opened.
func Open(name string) ([]byte, error) {
	var n int
	if _, err := fmt.Sscanf(name, "deep/%d.ovillo", &n); err == nil {
		return fmt.Appendf(nil, "use \"%d.ovillo\"\n", n+1), nil
	}
	switch name {
	case "common.ovillo", "shared/common.ovillo":
		return []byte(common), nil
	case "circle.ovillo":
		return []byte("use \"back.ovillo\"\n"), nil
	case "back.ovillo":
		return []byte("use \"circle.ovillo\"\n"), nil
	case "whole.ovillo":
		return []byte("part edge\n  chain 40\nend\n"), nil
	case "large.ovillo":
		return bytes.Repeat([]byte("# A long remark.\n"), 4<<20/17), nil
	case "locked.ovillo":
		return nil, fs.ErrPermission
	}
	return nil, fs.ErrNotExist
}

// common is a file with what patterns share: a yarn, a list of stitches and a number.
const common = `yarn sand
  name en "sand" es "arena"
end

group wave = [sc in next, skip 2, 5 dc in next, skip 2]

let turn_of_band = 40
`
