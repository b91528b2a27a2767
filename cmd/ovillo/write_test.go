package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"

	"ovillo/cmd/ovillo/save"
)

// What cannot be written is refused with a reason in both languages.
func TestReasons(t *testing.T) {
	dir := t.TempDir()
	plain := filepath.Join(dir, "plain.pdf")
	if err := os.WriteFile(plain, []byte("kept"), 0o644); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link.pdf")
	if err := os.Symlink("plain.pdf", link); err != nil {
		t.Skip("no links here:", err)
	}
	folder := filepath.Join(dir, "folder.pdf")
	if err := os.Mkdir(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	shut := filepath.Join(dir, "shut.pdf")
	if err := os.WriteFile(shut, []byte("kept"), 0o444); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path   string
		err    error
		en, es string
	}{
		{link, save.ErrLink, "it is a link to " + plain + "; name that file itself", "es un enlace a " + plain + "; indicar ese archivo"},
		{os.DevNull, save.ErrNotPlain, "it is a pipe or a device, not an ordinary file", "es una tubería o un dispositivo, no un archivo corriente"},
		{folder, save.ErrFolder, "it is a folder", "es una carpeta"},
		{shut, save.ErrReadOnly, "it is marked as read-only and is kept", "está marcado como de solo lectura y se conserva"},
		{filepath.Join(dir, "gone", "a.pdf"), fs.ErrNotExist,
			"the folder " + filepath.Join(dir, "gone") + " does not exist", "la carpeta " + filepath.Join(dir, "gone") + " no existe"},
		{filepath.Join(plain, "a.pdf"), nil, plain + " is not a folder", plain + " no es una carpeta"},
	} {
		err := save.Output(c.path, []byte("new"))
		if err == nil || c.err != nil && !errors.Is(err, c.err) {
			t.Errorf("%s: %v, want %v", c.path, err, c.err)
			continue
		}
		why := reason(err, c.path)
		if en, es := why.in("en"), why.in("es"); en != c.en || es != c.es {
			t.Errorf("%s: %q and %q, want %q and %q", c.path, en, es, c.en, c.es)
		}
	}
}

func TestRefusePages(t *testing.T) {
	dir := t.TempDir()
	for name, want := range map[string]error{"%PDF-1.7 and so on": nil, "pattern hat": errNotPages, "": nil, "%PD": errNotPages} {
		path := filepath.Join(dir, "f")
		if err := os.WriteFile(path, []byte(name), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := refusePages(path); err != want {
			t.Errorf("over %q: %v, want %v", name, err, want)
		}
	}
	if err := refusePages(filepath.Join(dir, "gone")); err != nil {
		t.Errorf("a new file is refused: %v", err)
	}
}

// A text takes the place of one that begins as it does, and of no other.
func TestRefuseText(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hat-en.txt")
	for old, want := range map[string]error{"Hat\nfirst": nil, "Hat\r\nfirst": nil, "": nil, "My notes\n": errNotText, "Hats\n": errNotText,
		"Hat\npattern hat\n": errNotText} {
		if err := os.WriteFile(path, []byte(old), 0o644); err != nil {
			t.Fatal(err)
		}
		for name, refused := range map[string]error{"text": refuseText([]byte("Hat\nsecond"))(path), "list": refuseLike([]byte("Hat\nsecond"))(path)} {
			if refused != want {
				t.Errorf("%s over %q: %v, want %v", name, old, refused, want)
			}
		}
	}
	other := filepath.Join(filepath.Dir(path), "hat.md")
	if err := os.WriteFile(other, []byte("Hat\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := refuseText([]byte("Hat\n"))(other); err != errNotText {
		t.Errorf("a text over a file of another ending: %v", err)
	}
}

// A fault of ours in one file is said, counts as a failure, and does not keep the others from being handled.
func TestGuard(t *testing.T) {
	var out bytes.Buffer
	c := &call{err: &out, lang: "en"}
	var done atomic.Int32
	code := c.each([]string{"a.ovillo", "b.ovillo", "c.ovillo"}, func(_ *call, path string) int {
		done.Add(1)
		if path == "b.ovillo" {
			var none []int
			return none[len(path)]
		}
		return clean
	})
	if code != failed || done.Load() != 3 {
		t.Errorf("exit code %d after %d files", code, done.Load())
	}
	got := out.String()
	for _, want := range []string{"internal fault", "b.ovillo", "please report", "no file was written", "index out of range", "TestGuard"} {
		if !strings.Contains(got, want) {
			t.Errorf("the message lacks %q: %s", want, got)
		}
	}
	if strings.Contains(got, "a.ovillo") || strings.Count(got, "\n") != 1 {
		t.Errorf("the message says more than it should: %s", got)
	}
}

func TestWorstCodeWins(t *testing.T) {
	c := &call{}
	codes := map[string]int{"a": clean, "b": failed, "c": faulty}
	if got := c.each([]string{"a", "b", "c"}, func(_ *call, p string) int { return codes[p] }); got != failed {
		t.Errorf("exit code %d, want %d", got, failed)
	}
	if got := c.each([]string{"a", "c"}, func(_ *call, p string) int { return codes[p] }); got != faulty {
		t.Errorf("exit code %d, want %d", got, faulty)
	}
}
