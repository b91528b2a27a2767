package desk

import (
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"testing"

	"ovillo/lang/source"
)

// Only plain files of a folder are read, wherever a name or a link leads.
func TestFolder(t *testing.T) {
	top := t.TempDir()
	in := filepath.Join(top, "set")
	for path, text := range map[string]string{"outside": "secret", "set/a": "a", "set/b/c": "c"} {
		path = filepath.Join(top, path)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	for link, to := range map[string]string{"set/out": "../outside", "set/in": "b/c", "set/up": ".."} {
		if err := os.Symlink(to, filepath.Join(top, link)); err != nil {
			if os.Getenv("CI") != "" {
				t.Fatal(err)
			}
			t.Skip(err)
		}
	}
	if runtime.GOOS != "windows" {
		if err := os.Symlink("/dev/zero", filepath.Join(in, "zero")); err != nil {
			t.Fatal(err)
		}
	}
	odd := []string{"b", ".", "out", "up/outside", "../outside", filepath.Join(top, "outside"), "zero", "none", "b/../../outside", "in/x"}
	for name, make := range oddFiles {
		if err := make(filepath.Join(in, name)); err != nil {
			t.Fatal(err)
		}
		odd = append(odd, name)
	}
	open := Folder(in)
	for name, want := range map[string]string{"a": "a", "b/c": "c", "in": "c"} {
		if data, err := open(name); err != nil || string(data) != want {
			t.Errorf("%s is %q, %v", name, data, err)
		}
	}
	for _, name := range odd {
		if data, err := open(name); err == nil {
			t.Errorf("%s gives %q", name, data)
		}
	}
}

// What a source uses is told, and the messages name the file that they are about.
func TestUsed(t *testing.T) {
	folder := t.TempDir()
	if err := os.WriteFile(filepath.Join(folder, "common.ovillo"), []byte("let x = \n"), 0o666); err != nil {
		t.Fatal(err)
	}
	c := Check(Source{File: source.NewFile(filepath.Join(folder, "hat.ovillo"), "use \"common.ovillo\"\nuse \"none.ovillo\"\n"), Open: Folder(folder)})
	if want := []string{"common.ovillo", "none.ovillo"}; !slices.Equal(c.Used, want) {
		t.Errorf("it uses %v, want %v", c.Used, want)
	}
	records := c.Printer("en", false).Records(c.File, c.Found)
	if len(records) != 2 || records[1].File != filepath.Join(folder, "common.ovillo") || records[1].Line != 1 || records[1].Column != 7 {
		t.Errorf("found %+v", records)
	}
}
