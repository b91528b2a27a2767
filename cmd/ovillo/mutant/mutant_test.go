package mutant

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"slices"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/klippa-app/go-pdfium"
	"github.com/klippa-app/go-pdfium/requests"
	"github.com/klippa-app/go-pdfium/webassembly"

	"ovillo/cmd/ovillo/desk"
	"ovillo/lang/diag"
	"ovillo/render/book"
	"ovillo/render/page"
	"ovillo/render/pdf"
)

var update = flag.Bool("update", false, "write the golden files anew")

// How many mutants are made, and of them: how many are checked, and of those that check how many are set, and how many of these are opened
// with other programs. With ALL_FILES set in the environment all are checked and set.
const (
	made        = 10_000
	checkedEach = 10
	setEach     = 4
	openedEach  = 20
)

// outcome is what came of a mutant.
type outcome struct {
	*mutant
	checked desk.Checked
	fault   string // of ours
}

// TestMutants changes one thing in an example and checks it: it prints, or a message says what is wrong and where. Nothing panics.
func TestMutants(t *testing.T) {
	examples := readExamples(t)
	all := mutants(examples, made)
	whole := os.Getenv("ALL_FILES") != ""
	var some []*mutant
	for i, m := range all {
		if whole || (i/len(slips))%checkedEach == 0 {
			some = append(some, m)
		}
	}
	outcomes := checkAll(some)
	refused, printable, faults := 0, 0, 0
	var toSet []*outcome
	for _, o := range outcomes {
		switch {
		case o.fault != "":
			if faults++; faults < 20 {
				t.Errorf("%s: %s", o.what, o.fault)
			}
		case o.checked.Printable(), o.checked.Bindable():
			if printable++; whole || printable%setEach == 0 {
				toSet = append(toSet, o)
			}
		default:
			refused++
		}
	}
	t.Logf("%d mutants: %d refused with a message at its place, %d can be printed, %d are faults of ours", len(outcomes), refused, printable, faults)
	if refused == 0 || printable == 0 {
		t.Error("the edits are of one kind")
	}
	t.Run("pages", func(t *testing.T) { setAll(t, toSet) })
	t.Run("score", func(t *testing.T) { score(t, outcomes, whole) })
}

// checkAll checks mutants, several at once.
func checkAll(all []*mutant) []*outcome {
	outcomes := make([]*outcome, len(all))
	var next atomic.Int64
	var wait sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for i := int(next.Add(1) - 1); i < len(all); i = int(next.Add(1) - 1) {
				outcomes[i] = tried(all[i])
			}
		})
	}
	wait.Wait()
	return outcomes
}

// tried checks a mutant, and says what is wrong with how that ended.
func tried(m *mutant) (o *outcome) {
	o = &outcome{mutant: m}
	defer func() {
		if r := recover(); r != nil {
			o.fault = fmt.Sprintf("it panics: %v\n%s", r, debug.Stack())
		}
	}()
	o.checked = m.of.check(m.text)
	c := &o.checked
	found := slices.Clone(c.Found)
	for _, d := range found {
		if why := unsaid(c, d); why != "" {
			o.fault = why
			return o
		}
	}
	errs := c.Found.HasErrors()
	if !errs && c.Pattern == nil && c.Book == nil && !c.Shared {
		o.fault = "it neither checks nor says why"
	}
	for _, lang := range []string{"en", "es"} {
		var b strings.Builder
		if err := c.Printer(lang, false).Text(&b, c.Tree.Source, c.Found); err != nil || errs && b.Len() == 0 {
			o.fault = fmt.Sprintf("the messages cannot be printed: %v", err)
		}
	}
	return o
}

// unsaid says what a message lacks: a code with words, or a place in one of the files that were read.
func unsaid(c *desk.Checked, d diag.Diagnostic) string {
	if diag.Lookup(d.Code) == nil || diag.Message(d, "en") == "" || diag.Message(d, "es") == "" {
		return fmt.Sprintf("%q has no words", d.Code)
	}
	if open := diag.Incomplete(d); len(open) > 0 {
		return fmt.Sprintf("%s is incomplete: %v", d.Code, open)
	}
	file, at := c.Tree.Source.Within(d.Span)
	if at.Start < 0 || at.End < at.Start || int(at.End) > len(file.Text) {
		return fmt.Sprintf("%s is at %v of a file of %d bytes", d.Code, at, len(file.Text))
	}
	return ""
}

// setAll sets mutants as pages and reads what came of them: each with our own eyes, some with those of other programs.
func setAll(t *testing.T, all []*outcome) {
	dir := t.TempDir()
	errs := make([]error, len(all))
	pages := make([]int, len(all))
	var next atomic.Int64
	var wait sync.WaitGroup
	path := func(i int) string { return filepath.Join(dir, strconv.Itoa(i)+".pdf") }
	for range runtime.GOMAXPROCS(0) {
		wait.Go(func() {
			for i := int(next.Add(1) - 1); i < len(all); i = int(next.Add(1) - 1) {
				var data []byte
				if data, pages[i], errs[i] = set(all[i]); errs[i] == nil && i%openedEach == 0 {
					errs[i] = os.WriteFile(path(i), data, 0o600)
				}
			}
		})
	}
	wait.Wait()
	for i, err := range errs {
		if err != nil {
			t.Errorf("%s: %v", all[i].what, err)
		}
	}
	opened := openAll(t, len(all), path, pages)
	t.Logf("%d of them were set, and %d opened with other programs", len(all), opened)
	if len(all) > 0 && opened == 0 {
		t.Error("none was opened with another program")
	}
}

// set sets a mutant in two languages.
func set(o *outcome) (data []byte, pages int, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("it panics: %v\n%s", r, debug.Stack())
		}
	}()
	var b bytes.Buffer
	c := &o.checked
	look := desk.Look{Paper: book.A4}
	var doc *page.Document
	if c.Bindable() {
		look.Langs = c.Book.Head.Languages
		doc, err = desk.BookPages(c.Book, look)
	} else {
		look.Langs = c.Pattern.Languages[:min(2, len(c.Pattern.Languages))]
		doc, err = desk.Pages(c.Pattern, look)
	}
	if err == nil {
		err = pdf.Write(&b, doc, pdf.Options{})
	}
	if err != nil {
		return nil, 0, err
	}
	return b.Bytes(), len(doc.Pages), wrong(b.Bytes())
}

// wrong says what a file of pages lacks at its ends.
func wrong(data []byte) error {
	if !bytes.HasPrefix(data, []byte("%PDF-1.")) || !bytes.HasSuffix(bytes.TrimSpace(data), []byte("%%EOF")) {
		return errors.New("it is no whole PDF")
	}
	return nil
}

// openAll opens every file that was written with pdfium, which paints its first page, and with qpdf.
func openAll(t *testing.T, n int, path func(int) string, pages []int) (opened int) {
	pool, err := webassembly.Init(webassembly.Config{MinIdle: 1, MaxIdle: 1, MaxTotal: 1})
	if err != nil {
		t.Fatal(err)
	}
	defer pool.Close()
	reader, err := pool.GetInstance(0)
	if err != nil {
		t.Fatal(err)
	}
	defer reader.Close()
	_, err = exec.LookPath("qpdf")
	if err != nil && os.Getenv("CI") != "" {
		t.Error("qpdf is not installed")
	}
	for i := range n {
		data, readErr := os.ReadFile(path(i))
		if readErr != nil {
			continue
		}
		opened++
		if have, why := count(reader, data); why != nil || have != pages[i] {
			t.Errorf("file %d has %d pages, want %d: %v", i, have, pages[i], why)
		}
		if err == nil {
			if out, failed := exec.Command("qpdf", "--check", path(i)).CombinedOutput(); failed != nil || bytes.Contains(out, []byte("WARNING")) {
				t.Errorf("file %d: %s", i, out)
			}
		}
	}
	return opened
}

func count(reader pdfium.Pdfium, data []byte) (int, error) {
	doc, err := reader.OpenDocument(&requests.OpenDocument{File: &data})
	if err != nil {
		return 0, err
	}
	defer reader.FPDF_CloseDocument(&requests.FPDF_CloseDocument{Document: doc.Document})
	_, err = reader.RenderPageInDPI(&requests.RenderPageInDPI{DPI: 30, Page: requests.Page{ByIndex: &requests.PageByIndex{Document: doc.Document}}})
	if err != nil {
		return 0, err
	}
	n, err := reader.FPDF_GetPageCount(&requests.FPDF_GetPageCount{Document: doc.Document})
	if err != nil {
		return 0, err
	}
	return n.PageCount, nil
}
