package laws

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"ovillo/cmd/ovillo/whole"
	"ovillo/compile/plan"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/pdf"
)

// TestBookletsHoldEveryPage reads booklets back, half by half: each half of a side says what the page of half a sheet says that
// belongs there, and nothing stands across the fold.
func TestBookletsHoldEveryPage(t *testing.T) {
	for _, tool := range []string{"pdftotext", "qpdf"} {
		if _, err := exec.LookPath(tool); err != nil {
			if os.Getenv("CI") != "" {
				t.Fatal(tool + " is not installed")
			}
			t.Skip(tool + " is not installed")
		}
	}
	halves := map[book.Paper]book.Paper{book.A4: book.A5, book.Letter: book.HalfLetter}
	eachSource(t, func(t *testing.T, s *whole.Source, p *plan.Pattern) {
		paper := book.A4
		if len(p.Sizes)%2 == 0 {
			paper = book.Letter
		}
		langs := waysOf(t, s, p).all[0].langs
		pages := setting{halves[paper], 0, langs}.compose(t, p)
		sheets := setting{paper, book.Booklet, langs}.compose(t, p)
		n := (len(pages.Pages) + 3) / 4 * 4
		if len(sheets.Pages) != n/2 {
			t.Fatalf("%d sides for %d pages", len(sheets.Pages), len(pages.Pages))
		}
		dir := t.TempDir()
		byPage, booklet := filepath.Join(dir, "pages.pdf"), filepath.Join(dir, "booklet.pdf")
		writeDocument(t, byPage, pages)
		writeDocument(t, booklet, sheets)
		if out, err := exec.Command("qpdf", "--check", booklet).CombinedOutput(); err != nil || bytes.Contains(out, []byte("WARNING")) {
			t.Errorf("%v\n%s", err, out)
		}
		const points = 72 / 25.4
		half := int(sheets.Pages[0].W/2*points + 0.5)
		said := append(pagesRead(t, byPage), make([]string, 4)...) // the last pages of a booklet may be white
		left := pagesRead(t, booklet, "-x", "0", "-y", "0", "-W", fmt.Sprint(half), "-H", "700")
		right := pagesRead(t, booklet, "-x", fmt.Sprint(half), "-y", "0", "-W", fmt.Sprint(half), "-H", "700")
		for i := range sheets.Pages {
			a, b := n-i, i+1
			if i%2 == 1 {
				a, b = b, a
			}
			if left[i] != said[a-1] {
				t.Errorf("side %d, left, is not page %d: %q, want %q", i+1, a, left[i], said[a-1])
			}
			if right[i] != said[b-1] {
				t.Errorf("side %d, right, is not page %d: %q, want %q", i+1, b, right[i], said[b-1])
			}
		}
	})
}

func writeDocument(t *testing.T, name string, doc *page.Document) {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, doc, pdf.Options{}); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, b.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
}

// pagesRead are the texts of the pages of a file as another program reads them, in the order of drawing.
func pagesRead(t *testing.T, file string, more ...string) []string {
	t.Helper()
	out, err := exec.Command("pdftotext", append(append([]string{"-raw"}, more...), file, "-")...).Output()
	if err != nil {
		t.Fatal(err)
	}
	pages := strings.Split(strings.TrimSuffix(string(out), "\f"), "\f")
	for i, text := range pages {
		pages[i] = strings.Join(strings.Fields(text), " ")
	}
	return pages
}
