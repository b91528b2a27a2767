package reading

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"testing"

	"ovillo/cmd/ovillo/desk"
	"ovillo/cmd/ovillo/whole"
)

// objectNumbers change with every change of the writer.
var objectNumbers = regexp.MustCompile(`Object \d+ \d+`)

// TestStructureGolden keeps the leggings as Poppler reads them out: elements, attributes and text in the order of reading.
// Where Poppler is not installed the test is skipped, but never on the build server.
func TestStructureGolden(t *testing.T) {
	if _, err := exec.LookPath("pdfinfo"); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("poppler-utils is not installed")
		}
		t.Skip("poppler-utils is not installed")
	}
	s := whole.Example(t, "marisma-leggings.ovillo")
	file := s.File(t, desk.Look{})
	path := filepath.Join(t.TempDir(), "leggings.pdf")
	if err := os.WriteFile(path, file, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("pdfinfo", "-enc", "UTF-8", "-struct-text", path).CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	got := objectNumbers.ReplaceAllString(string(out), "Object")
	const golden = "testdata/marisma-leggings.txt"
	if *whole.Update {
		if err := os.MkdirAll(filepath.Dir(golden), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("the leggings are read otherwise than %s says; write it anew with -update and read the difference", golden)
	}
}
