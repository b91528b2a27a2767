package lang

import (
	"io/fs"
	"path"
	"slices"
	"strings"
)

// InFolder is a name that stands in a file of a folder, from the folder of the source; ok is false if it may lead out of it, on any system:
// there is no way up, no disk, no sign that is a separator on one system and part of a name on another, no name that stands for a device,
// and none that is another file's for a system that passes over the end of names.
func InFolder(folder, name string) (full string, ok bool) {
	if name == "" || path.IsAbs(name) || strings.ContainsFunc(name, parts) || slices.ContainsFunc(strings.Split(name, "/"), strange) {
		return "", false
	}
	if full = path.Join(folder, name); path.Clean(name) == "." || !fs.ValidPath(full) {
		return "", false
	}
	return full, true
}

// parts reports whether a sign parts names, disks or streams of a file on some system, or ends a name for it.
func parts(r rune) bool { return r == '\\' || r == ':' || r < ' ' || r == 0x7f }

// strange reports whether a part of a name is no folder's or file's own. Windows passes over points and blanks at the end of a name, and
// takes some names for devices, in capitals or not, whatever ending they have.
func strange(part string) bool {
	switch {
	case part == "..":
		return true
	case part == "" || part == ".":
		return false // the same folder
	case strings.TrimRight(part, ". ") != part:
		return true
	}
	base, _, _ := strings.Cut(strings.ToLower(part), ".")
	base = strings.TrimRight(base, " ")
	if slices.Contains([]string{"con", "prn", "aux", "nul", "conin$", "conout$", "clock$"}, base) {
		return true
	}
	number, port := strings.CutPrefix(base, "com")
	if !port {
		number, port = strings.CutPrefix(base, "lpt")
	}
	return port && slices.Contains([]string{"0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "¹", "²", "³"}, number)
}
