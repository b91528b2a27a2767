package lang

import (
	"path"
	"strings"
	"testing"
)

func TestInFolder(t *testing.T) {
	for name, want := range map[string]string{
		"a.jpg": "set/a.jpg", "b/a.jpg": "set/b/a.jpg", "./a.jpg": "set/a.jpg", "b//a.jpg": "set/b/a.jpg", ".hidden": "set/.hidden", "..a": "set/..a",
		"a..b": "set/a..b", "ñandú 1.jpg": "set/ñandú 1.jpg", "console.jpg": "set/console.jpg", "nulo": "set/nulo", "com10": "set/com10", "com": "set/com",
		"auxiliar/a": "set/auxiliar/a", "lpta": "set/lpta", "%2e%2e/a": "set/%2e%2e/a",
	} {
		if got, ok := InFolder("set", name); !ok || got != want {
			t.Errorf("%q is %q, %v; want %q", name, got, ok, want)
		}
	}
	for _, name := range []string{
		"", ".", "./", "..", "../a", "a/../../b", "b/..", "a/../b", "/a", "//server/a", "/", "c:a", "C:/a", "c:\\a", "\\a", "\\\\server\\a", "b\\..\\a", "a\x00.jpg", "a\n",
		"a.jpg::$DATA", "a:b", "con", "CON", "Con.jpg", "b/nul", "NUL.tar.gz", "aux/a.jpg", "prn ", "com1", "COM1.jpg", "com¹", "lpt9.txt", "conin$", "CONOUT$", "nul .txt",
		"a.jpg.", "a.jpg ", "b./a", "b /a", "...", ".. /a", ".. ./a", "a\x7f", "\xff.jpg",
	} {
		if got, ok := InFolder("set", name); ok {
			t.Errorf("%q is taken, as %q", name, got)
		}
	}
}

// FuzzInFolder: whatever the name, what comes of it lies in the folder.
func FuzzInFolder(f *testing.F) {
	for _, name := range []string{"a", "../a", "a/./b", "..", "/", "b//..//a", "c:\\a", "nul", "\x00"} {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, name string) {
		full, ok := InFolder("set", name)
		if !ok {
			return
		}
		if full != path.Clean(full) || !strings.HasPrefix(full, "set/") || strings.ContainsAny(full, "\\:\x00") || strings.Contains("/"+full+"/", "/../") {
			t.Errorf("%q is taken, as %q", name, full)
		}
	})
}
