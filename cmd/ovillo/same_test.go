package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ovillo/render/pdf"
)

// sameSources are a pattern without a photograph and one with.
var sameSources = []string{"marisma-leggings.ovillo", "jarcia-headband.ovillo"}

// TestSameBytesTwentyTimes checks and sets a source over and over in one process.
func TestSameBytesTwentyTimes(t *testing.T) {
	for _, name := range sameSources {
		for _, profile := range []pdf.Profile{pdf.Normal, pdf.Archive} {
			var first []byte
			for run := range 20 {
				s, ok := loadExample(t, name)
				if !ok {
					return
				}
				p, found := s.compile()
				if found.HasErrors() {
					t.Fatal(printed(t, s, found))
				}
				if name == "jarcia-headband.ovillo" && p.Photo.Data == nil {
					t.Fatal("the photograph was not read")
				}
				file, _, err := setPages(p, edition{profile: profile}.of(p), s.file.Name)
				if err != nil {
					t.Fatal(err)
				}
				if run == 0 {
					first = file
				} else if !bytes.Equal(file, first) {
					t.Fatalf("%s, profile %d: run %d differs from the first", name, profile, run+1)
				}
			}
		}
	}
}

// loadExample loads a source as the command does, with what lies beside it.
func loadExample(t *testing.T, name string) (*loaded, bool) {
	t.Helper()
	var said bytes.Buffer
	c := &call{err: &said, lang: "en"}
	s, ok := c.load(filepath.Join("..", "..", "examples", name))
	if !ok {
		t.Errorf("%s was not loaded: %s", name, said.String())
	}
	return s, ok
}

// machine is the surroundings of a process.
type machine struct {
	env   []string
	umask string
}

// TestSameBytesOnOtherMachines runs the command in two surroundings that have nothing in common: time zone, languages, home,
// folder, dates of the files, number of processors, rights of new files.
func TestSameBytesOnOtherMachines(t *testing.T) {
	if _, err := exec.LookPath("sh"); err != nil {
		t.Skip("there is no shell to set the rights of new files with")
	}
	machines := []machine{
		{[]string{"TZ=Pacific/Auckland", "LANG=es_MX.UTF-8", "LC_ALL=es_MX.UTF-8", "GOMAXPROCS=1"}, "077"},
		{[]string{"TZ=America/Caracas", "LANG=C", "LC_ALL=C", "GOMAXPROCS=7", "GOGC=20"}, "000"},
	}
	for _, flags := range [][]string{nil, {"--archive"}, {"--edition", "booklet,left"}} {
		for _, name := range sameSources {
			var first []byte
			for i, m := range machines {
				home := t.TempDir()
				copyExamples(t, home, time.Date(2001+i, 2, 3, 4, 5, 6, 0, time.UTC))
				cmd := exec.Command("sh", append([]string{"-c", `umask "$0"; exec ovillo "$@"`, m.umask, "build", name, "-o", "out.pdf"}, flags...)...)
				cmd.Dir = home
				if i == 1 { // from another folder, by another path
					cmd = exec.Command("sh", append([]string{"-c", `umask "$0"; exec ovillo "$@"`, m.umask, "build", filepath.Join(home, name), "-o", filepath.Join(home, "out.pdf")}, flags...)...)
					cmd.Dir = t.TempDir()
				}
				cmd.Env = append([]string{"PATH=" + os.Getenv("PATH"), "HOME=" + home, "TMPDIR=" + home}, m.env...)
				if out, err := cmd.CombinedOutput(); err != nil {
					t.Fatalf("%v\n%s", err, out)
				}
				file, err := os.ReadFile(filepath.Join(home, "out.pdf"))
				if err != nil {
					t.Fatal(err)
				}
				if i == 0 {
					first = file
				} else if !bytes.Equal(file, first) {
					t.Errorf("%s %s: other bytes on another machine", name, strings.Join(flags, " "))
				}
			}
		}
	}
}

// copyExamples puts the examples and their photographs into a folder, as old as is said.
func copyExamples(t *testing.T, folder string, date time.Time) {
	t.Helper()
	from := filepath.Join("..", "..", "examples")
	list, err := os.ReadDir(from)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range list {
		if f.IsDir() {
			continue // sets, which have a test of their own
		}
		data, err := os.ReadFile(filepath.Join(from, f.Name()))
		if err != nil {
			t.Fatal(err)
		}
		to := filepath.Join(folder, f.Name())
		if err := os.WriteFile(to, data, 0o644); err != nil {
			t.Fatal(err)
		}
		if err := os.Chtimes(to, date, date); err != nil {
			t.Fatal(err)
		}
	}
}
