package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/render/pdf"
)

// preflight is where Debian puts the classes of Apache PDFBox Preflight, a validator of PDF/A-1b (ISO 19005-1).
const preflight = "/usr/share/java/preflight.jar:/usr/share/java/xmpbox.jar:/usr/share/java/pdfbox2.jar:/usr/share/java/fontbox2.jar:" +
	"/usr/share/java/commons-logging.jar:/usr/share/java/javax.activation.jar:/usr/share/java/jaxb-api.jar"

// TestArchivesByPreflight has the archive of every example judged, and a PDF that is no archive, which has to be found
// out. Where the validator is not installed the test is skipped, but never on the build server.
func TestArchivesByPreflight(t *testing.T) {
	first, _, _ := strings.Cut(preflight, ":")
	_, noClasses := os.Stat(first)
	if _, err := exec.LookPath("java"); err != nil || noClasses != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("Apache PDFBox Preflight is not installed")
		}
		t.Skip("Apache PDFBox Preflight is not installed")
	}
	folder := t.TempDir()
	const other = "normal.pdf"
	want := map[string]bool{other: false}
	for _, s := range sourcesIn(t, "examples") {
		p, found := s.compile()
		if found.HasErrors() {
			t.Fatal(printed(t, s, found))
		}
		put := func(name string, profile pdf.Profile) {
			e := edition{profile: profile}.of(p)
			file, _, err := setPages(p, e, s.file.Name)
			if err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(filepath.Join(folder, name), file, 0o600); err != nil {
				t.Fatal(err)
			}
		}
		put(p.Name+".pdf", pdf.Archive)
		want[p.Name+".pdf"] = true
		put(other, pdf.Normal)
	}
	cmd := exec.Command("java", "-cp", preflight, "org.apache.pdfbox.preflight.Validator_A1b", "batch", folder)
	out, _ := cmd.CombinedOutput() // it fails because of the one that is no archive
	for name, valid := range want {
		verdict := "The file " + name + " is a valid PDF/A-1b file\n"
		if !valid {
			verdict = "The file " + name + " is not a valid PDF/A-1b file"
		}
		if !strings.Contains(string(out), verdict) {
			t.Errorf("%q is not said in\n%s", verdict, out)
		}
	}
}
