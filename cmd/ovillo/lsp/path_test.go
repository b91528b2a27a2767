package lsp

import (
	"path/filepath"
	"testing"
)

// TestPathOf: an address of another machine, by whatever name or number of slashes, is no file; a server would ask the network for it.
func TestPathOf(t *testing.T) {
	for uri, want := range map[string]string{
		"file:///a/hat.ovillo": "/a/hat.ovillo", "file://localhost/a/hat.ovillo": "/a/hat.ovillo", "file:///a%20b/hat.ovillo": "/a b/hat.ovillo",
		"file:///C:/a/hat.ovillo": "C:/a/hat.ovillo", "file://server/share/hat.ovillo": "", "file:////server/share/hat.ovillo": "",
		"file:///%2Fserver/share/hat.ovillo": "", "file:///%5C%5Cserver%5Cshare%5Chat.ovillo": "", "file:///%5Cserver/hat.ovillo": "", "file:///a%00.ovillo": "",
		"https://pattern.example/hat.ovillo": "", "untitled:hat": "", "file://127.0.0.1/a": "", "/a/hat.ovillo": "", "": "", "%zz": "",
	} {
		if got := filepath.ToSlash(pathOf(uri)); got != want {
			t.Errorf("%s is %q, want %q", uri, got, want)
		}
	}
}
