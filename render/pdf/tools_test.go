package pdf

import (
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the golden files")

// tool runs a program on the sample and returns what it prints. Where the program is not installed the test is skipped,
// but never on the build server, which installs it.
func tool(t *testing.T, o Options, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		if os.Getenv("CI") != "" {
			t.Fatalf("%s is not installed", name)
		}
		t.Skipf("%s is not installed", name)
	}
	path := filepath.Join(t.TempDir(), "sample.pdf")
	if err := os.WriteFile(path, written(t, sample(), o), 0o600); err != nil {
		t.Fatal(err)
	}
	for i, a := range args {
		if a == "FILE" {
			args[i] = path
		}
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Fatalf("%s: %v\n%s", name, err, out)
	}
	return string(out)
}

func eachProfile(t *testing.T, f func(t *testing.T, o Options)) {
	t.Run("normal", func(t *testing.T) { f(t, Options{}) })
	t.Run("archive", func(t *testing.T) { f(t, Options{Profile: Archive}) })
}

func TestSyntaxByQpdf(t *testing.T) {
	eachProfile(t, func(t *testing.T, o Options) {
		out := tool(t, o, "qpdf", "--check", "FILE")
		if !strings.Contains(out, "No syntax or stream encoding errors found") || strings.Contains(out, "WARNING") {
			t.Error(out)
		}
	})
}

func TestFontsByPoppler(t *testing.T) {
	eachProfile(t, func(t *testing.T, o Options) {
		lines := strings.Split(strings.TrimSpace(tool(t, o, "pdffonts", "FILE")), "\n")[2:]
		if len(lines) != 4 {
			t.Fatalf("%d fonts, want 4:\n%s", len(lines), strings.Join(lines, "\n"))
		}
		for i, want := range []string{"SourceSans3-Regular", "SourceSans3-SemiBold", "SourceSerif4-Regular", "SourceSerif4-SemiBold"} {
			row := regexp.MustCompile(`^[A-Z]{6}\+` + want + ` +CID TrueType +Identity-H +yes yes yes `)
			if !row.MatchString(lines[i]) {
				t.Errorf("%q is not an embedded part of %s with a map to Unicode", lines[i], want)
			}
		}
	})
}

func TestWordsByPoppler(t *testing.T) {
	out := tool(t, Options{}, "pdftotext", "-enc", "UTF-8", "FILE", "-")
	for _, want := range []string{
		"Tejido AVATAR", "Work 3 dc into each stitch of the last\nround, then 1 y 112, 2 y 116, 4 y 120 sts; see\n",
		"¿Cuántos puntos? ¡Pregunta! La 1.ª vuelta y el 2.º anillo: «ñandú» — 2½″ × 3′, 20 °C, A → B, n ≥ 3…",
		"Decompuesto: piña, árbol, über.",
	} {
		if !strings.Contains(out, want) {
			t.Errorf("%q is not in\n%s", want, out)
		}
	}
}

// volatile are the numbers of objects, which change with every change of the writer.
var volatile = regexp.MustCompile(`Object \d+ \d+`)

func TestStructureByPoppler(t *testing.T) {
	got := volatile.ReplaceAllString(tool(t, Options{}, "pdfinfo", "-struct-text", "FILE"), "Object")
	golden(t, "testdata/structure.txt", got)
}

func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("differs from %s; rewrite it with -update\n%s", path, got)
	}
}

func TestInfoByPoppler(t *testing.T) {
	eachProfile(t, func(t *testing.T, o Options) {
		out := tool(t, o, "pdfinfo", "FILE")
		version := "1.7"
		if o.Profile == Archive {
			version = "1.4"
		}
		for _, want := range []string{
			`Title: +Ovillo de prueba`, `Author: +Ana Muñoz & Bob`, `Tagged: +yes`, `Pages: +3`, `Metadata Stream: +yes`,
			`Page size: +595.276 x 841.89 pts \(A4\)`, `PDF version: +` + regexp.QuoteMeta(version),
		} {
			if !regexp.MustCompile(want).MatchString(out) {
				t.Errorf("%s is not in\n%s", want, out)
			}
		}
	})
}

// preflight is where Debian puts the classes of Apache PDFBox Preflight, a validator of PDF/A-1b.
const preflight = "/usr/share/java/preflight.jar:/usr/share/java/xmpbox.jar:/usr/share/java/pdfbox2.jar:/usr/share/java/fontbox2.jar:" +
	"/usr/share/java/commons-logging.jar:/usr/share/java/javax.activation.jar:/usr/share/java/jaxb-api.jar"

// The sample has pictures in greys and in colours, from PNG and from JPEG, one of them with a transparent corner.
func TestArchiveByPreflight(t *testing.T) {
	first, _, _ := strings.Cut(preflight, ":")
	if _, err := os.Stat(first); err != nil && os.Getenv("CI") == "" {
		t.Skip("Apache PDFBox Preflight is not installed")
	}
	out := tool(t, Options{Profile: Archive}, "java", "-cp", preflight, "org.apache.pdfbox.preflight.Validator_A1b", "FILE")
	if !strings.Contains(out, "is a valid PDF/A-1b file") {
		t.Error(out)
	}
}
