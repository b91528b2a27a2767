package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestReplaceFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "hat.pdf")
	for _, text := range []string{"first", "second, longer"} {
		if err := replaceFile(path, []byte(text)); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != text {
			t.Errorf("the file holds %q (%v), want %q", got, err, text)
		}
	}
	if err := os.Chmod(path, 0o604); err != nil {
		t.Fatal(err)
	}
	if err := replaceFile(path, []byte("third")); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o604 {
		t.Errorf("the rights of the file became %v (%v)", info.Mode().Perm(), err)
	}
	onlyFile(t, dir, "hat.pdf")
}

// What cannot be written is refused with a reason in both languages, and nothing is left behind.
func TestReplaceFileRefuses(t *testing.T) {
	dir := t.TempDir()
	plain := filepath.Join(dir, "plain.pdf")
	if err := os.WriteFile(plain, []byte("kept"), 0o644); err != nil {
		t.Fatal(err)
	}
	link := filepath.Join(dir, "link.pdf")
	if err := os.Symlink(plain, link); err != nil {
		t.Skip("no links here:", err)
	}
	folder := filepath.Join(dir, "folder.pdf")
	if err := os.Mkdir(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path   string
		err    error
		en, es string
	}{
		{link, errNotPlain, "it is a link or a device, not an ordinary file", "es un enlace o un dispositivo, no un archivo corriente"},
		{os.DevNull, errNotPlain, "it is a link or a device, not an ordinary file", "es un enlace o un dispositivo, no un archivo corriente"},
		{folder, errFolder, "it is a folder", "es una carpeta"},
		{filepath.Join(dir, "gone", "a.pdf"), fs.ErrNotExist,
			"the folder " + filepath.Join(dir, "gone") + " does not exist", "la carpeta " + filepath.Join(dir, "gone") + " no existe"},
		{filepath.Join(plain, "a.pdf"), nil, plain + " is not a folder", plain + " no es una carpeta"},
	} {
		err := replaceFile(c.path, []byte("new"))
		if err == nil || c.err != nil && !errors.Is(err, c.err) {
			t.Errorf("%s: %v, want %v", c.path, err, c.err)
			continue
		}
		why := reason(err, c.path)
		if en, es := why.in("en"), why.in("es"); en != c.en || es != c.es {
			t.Errorf("%s: %q and %q, want %q and %q", c.path, en, es, c.en, c.es)
		}
	}
	if got, err := os.ReadFile(plain); err != nil || string(got) != "kept" {
		t.Errorf("the file behind the link holds %q (%v)", got, err)
	}
	onlyFile(t, dir, "plain.pdf", "link.pdf", "folder.pdf")
}

// A failure half way, here a name that cannot be taken, removes the new file and keeps the old one.
func TestReplaceFileCleansUp(t *testing.T) {
	dir := t.TempDir()
	long := filepath.Join(dir, strings.Repeat("x", 250)+".pdf") // the name fits, the longer one of the new file does not
	if err := replaceFile(long, []byte("new")); err == nil {
		t.Skip("this file system takes names of any length")
	}
	onlyFile(t, dir)
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

func onlyFile(t *testing.T, dir string, want ...string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	left := map[string]bool{}
	for _, e := range entries {
		left[e.Name()] = true
	}
	for _, w := range want {
		if !left[w] {
			t.Errorf("%s is gone", w)
		}
		delete(left, w)
	}
	for name := range left {
		t.Errorf("%s is left behind", name)
	}
}

// A fault of ours in one file is said, counts as a failure, and does not keep the others from being handled.
func TestGuard(t *testing.T) {
	var out bytes.Buffer
	c := &call{err: &out, lang: "en"}
	var done []string
	code := c.each([]string{"a.ovillo", "b.ovillo", "c.ovillo"}, func(path string) int {
		done = append(done, path)
		if path == "b.ovillo" {
			var none []int
			return none[len(path)]
		}
		return clean
	})
	if code != failed || len(done) != 3 {
		t.Errorf("exit code %d after %v", code, done)
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
	if got := c.each([]string{"a", "b", "c"}, func(p string) int { return codes[p] }); got != failed {
		t.Errorf("exit code %d, want %d", got, failed)
	}
	if got := c.each([]string{"a", "c"}, func(p string) int { return codes[p] }); got != faulty {
		t.Errorf("exit code %d, want %d", got, faulty)
	}
}
