package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// layers says which package may import which, lowest first: a package may import what stands behind its colon and
// nothing else of ours. Do not add an entry to make a build pass: an entry is a decision about the design.
//
// What the table is there to keep: the plan knows neither the syntax nor the page; render never sees a source or a
// message; and only the command sees everything.
const layers = `
lang/atonce:
lang/lazy:
lang/source:
lang/diag:        lang/lazy lang/source
lang/terms:
lang/markdown:    lang/lazy
lang/sign:
lang/shared:
lang:             lang/lazy lang/source lang/diag lang/terms
lang/format:      lang/lazy lang/source lang/diag lang

compile/stitch:
compile/numeral:  lang/lazy
compile/picture:
compile/picture/files: lang/shared
compile/plan:     lang/source compile/stitch
compile/compare:  compile/stitch compile/numeral compile/plan
compile/fabric:   lang/source compile/stitch compile/plan
compile/value:    lang/diag lang compile/plan
compile/figure:   lang/source lang/diag compile/plan
compile/standard: lang/source lang/diag lang compile/plan
compile/caution:  lang/source lang/diag lang compile/plan
compile:          lang/atonce lang/lazy lang/source lang/diag lang/terms lang/markdown lang/sign lang compile/stitch compile/numeral compile/picture compile/plan compile/fabric compile/value compile/figure compile/standard compile/caution

render/rich:
render/page:
render/scene:     render/page
render/font:      render/page
render/sample:    compile/stitch compile/plan
render/hyphen:    render/rich
render/chart:     compile/stitch compile/plan render/page
render/words:     lang/lazy lang/terms lang/markdown compile/stitch compile/plan render/rich
render/layout:    render/rich render/page render/scene render/font
render/svg:       render/page render/scene render/font
render/png:       render/page render/scene render/font
render/proof:     render/page render/font
render/draw:      compile/stitch compile/plan render/chart render/page render/scene render/font render/words
render/book:      lang/atonce compile/stitch compile/plan render/rich render/page render/scene render/words render/layout render/draw render/hyphen
render/web:       compile/plan render/rich render/scene render/words render/draw render/svg
render/data:      compile/plan render/rich render/words
render/plain:     compile/plan render/rich render/words
render/parallel:  lang/lazy compile/plan render/page render/words render/font
render/report:    lang/lazy compile/stitch compile/plan render/rich render/page render/words render/layout render/font render/proof render/parallel
render/errata:    compile/stitch compile/plan compile/compare render/rich render/page render/words render/layout render/font render/book
render/pdf:       lang/atonce render/page render/font

cmd/ovillo/desk:  lang/source lang/diag lang compile/picture compile/plan compile render/page render/words render/book render/pdf
cmd/ovillo/lsp:   lang/source lang/diag lang/markdown lang lang/format compile/stitch compile/plan compile render/words cmd/ovillo/desk
cmd/ovillo/editor:
cmd/ovillo/browser:
cmd/ovillo/preview: lang/atonce lang/source lang/diag compile/plan render/page render/scene render/font render/words render/svg render/draw render/book render/report render/pdf cmd/ovillo/desk
cmd/ovillo/licence: render/font render/hyphen
cmd/ovillo/starter: lang/source lang/format lang
cmd/ovillo/whole: lang/source lang/diag compile/plan render/rich render/page render/parallel render/pdf render/words render/book cmd/ovillo/desk
cmd/ovillo/whole/laws:
cmd/ovillo/whole/reading:
cmd/ovillo/whole/saying:
cmd/ovillo/whole/spelling:
cmd/ovillo/save:
cmd/ovillo/trial:
cmd/ovillo/bounds:
cmd/ovillo/mutant:
cmd/ovillo:       *
`

// libraries says which packages may use which library, and why it is there at all.
var libraries = []struct{ path, users, reason string }{
	{"github.com/alecthomas/participle/v2", "lang", "the tree of the language is its grammar; what the statements mean is ours"},
	{"github.com/go-pdf/fpdf", "render/pdf", "a shell for page objects; moving to another is one package's work"},
	{"github.com/klauspost/compress", "render/pdf", "packs streams in less than half the time of the standard library"},
	{"github.com/yuin/goldmark", "lang/markdown", "the designer's prose is Markdown"},
	{"golang.org/x/image", "render/font render/pdf render/png", "reads the metrics, kerning and outlines of the faces, and fills areas of dots"},
	{"golang.org/x/text", "lang lang/diag lang/sign render/font render/words cmd/ovillo/starter", "Unicode: normal forms of names and of letters, the width of a letter in a terminal, the order of words in a language"},
	{"github.com/rogpeppe/go-internal/diff", "cmd/ovillo", "shows what fmt would change"},
	{"github.com/spf13/cobra", "cmd/ovillo", "the commands as a tree: completion in four shells, and the names that are alike"},
	{"github.com/spf13/pflag", "cmd/ovillo", "takes the command line apart, as people are used to"},
	{"github.com/bmatcuk/doublestar/v4", "cmd/ovillo", "names of files with * and **, where the shell leaves them as they are"},
	{"github.com/fsnotify/fsnotify", "cmd/ovillo/preview", "the system tells when a file is saved, in another way on each"},
	{"golang.org/x/sys", "cmd/ovillo/save", "a file that takes the place of another keeps its attributes, which the standard library does not know"},
	{"github.com/chromedp/chromedp", "cmd/ovillo/browser", "for tests alone: drives the browser in which they look at pages"},
	{"github.com/ledongthuc/pdf", "cmd/ovillo/whole", "for tests alone: reads the structure tree of finished PDFs across their pages"},
}

// testLibraries may be used by tests only.
var testLibraries = []string{
	"github.com/rogpeppe/go-internal", "github.com/stretchr/testify", "pgregory.net/rapid",
	"github.com/chromedp/cdproto",           // what a browser is asked and tells, beside chromedp
	"golang.org/x/net/html",                 // reads web pages as browsers do
	"github.com/santhosh-tekuri/jsonschema", // holds what is written as JSON against its schema
	"github.com/klippa-app/go-pdfium",       // reads finished PDFs, without anything installed
}

// outside says which parts of the standard library only the command may use: the core turns text into values and reads
// nothing else, so that the same source gives the same bytes everywhere.
var outside = map[string]string{
	"os":           "the core reads no files and no environment: sources come in as text",
	"os/exec":      "nothing is run",
	"time":         "the same source gives the same bytes, today and next year",
	"math/rand":    "the same source gives the same bytes, every time",
	"math/rand/v2": "the same source gives the same bytes, every time",
	"net":          "nothing is fetched",
	"net/http":     "nothing is fetched",
	"log":          "what is found is returned, not logged",
	"unsafe":       "nothing here is so slow",
}

// exceptions to outside, each with its reason.
var exceptions = map[string]string{
	"render/pdf: time": "the PDF library takes the date of the edition as a time; no clock is read",
}

const module = "ovillo/"

// forTests are the packages that nothing but tests may import.
var forTests = []string{"cmd/ovillo/browser", "cmd/ovillo/whole"}

// allowed reads the table of layers.
func allowed(t *testing.T) (order []string, may map[string][]string) {
	t.Helper()
	may = map[string][]string{}
	for line := range strings.SplitSeq(strings.TrimSpace(layers), "\n") {
		name, imports, ok := strings.Cut(line, ":")
		if !ok {
			continue
		}
		for _, i := range strings.Fields(imports) {
			if i != "*" && !slices.Contains(order, i) {
				t.Errorf("layers: %s may import %s, which does not stand below it", name, i)
			}
		}
		order = append(order, name)
		may[name] = strings.Fields(imports)
	}
	return order, may
}

// goFile is a source file with its package's folder.
type goFile struct {
	pkg  string
	test bool
	ast  *ast.File
}

// moduleFiles reads all Go files of the module.
func moduleFiles(t *testing.T, mode parser.Mode) ([]goFile, *token.FileSet) {
	t.Helper()
	root := filepath.Join("..", "..")
	set := token.NewFileSet()
	var out []goFile
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if name := d.Name(); d.IsDir() && (name == "testdata" || strings.HasPrefix(name, ".") && path != root) {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") {
			return nil
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		short, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		f, err := parser.ParseFile(set, filepath.ToSlash(short), text, mode)
		if err != nil {
			return err
		}
		out = append(out, goFile{filepath.ToSlash(filepath.Dir(short)), strings.HasSuffix(path, "_test.go"), f})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(out) < 20 {
		t.Fatalf("only %d Go files found", len(out))
	}
	return out, set
}

func TestLayers(t *testing.T) {
	_, may := allowed(t)
	files, set := moduleFiles(t, parser.ImportsOnly)
	reported := map[string]bool{}
	for _, f := range files {
		if _, ok := may[f.pkg]; !ok && !reported[f.pkg] {
			reported[f.pkg] = true
			t.Errorf("%s has no line in the table of layers", f.pkg)
		}
		for _, i := range f.ast.Imports {
			path, err := strconv.Unquote(i.Path.Value)
			if err != nil {
				t.Fatal(err)
			}
			if why := refused(f.pkg, path, f.test, may); why != "" {
				t.Errorf("%s: %s may not import %s: %s", set.Position(i.Pos()), f.pkg, path, why)
			}
		}
	}
}

// TestLayersTight finds entries that nothing uses any more: a table that allows more than is needed guards less.
func TestLayersTight(t *testing.T) {
	_, may := allowed(t)
	files, _ := moduleFiles(t, parser.ImportsOnly)
	used := map[string]bool{}
	for _, f := range files {
		for _, i := range f.ast.Imports {
			path := strings.Trim(i.Path.Value, `"`)
			if !f.test {
				used[f.pkg+" "+strings.TrimPrefix(path, module)] = true
			}
			for _, l := range libraries {
				if !f.test && (path == l.path || strings.HasPrefix(path, l.path+"/")) {
					used[f.pkg+" "+l.path] = true
				}
			}
		}
	}
	for pkg, imports := range may {
		for _, i := range imports {
			if i != "*" && !used[pkg+" "+i] {
				t.Errorf("%s no longer imports %s: take the entry out", pkg, i)
			}
		}
	}
	for _, l := range libraries {
		for _, pkg := range strings.Fields(l.users) {
			if !used[pkg+" "+l.path] {
				t.Errorf("%s no longer uses %s: take the entry out", pkg, l.path)
			}
		}
	}
	for e := range exceptions {
		pkg, path, _ := strings.Cut(e, ": ")
		if !used[pkg+" "+path] {
			t.Errorf("%s no longer imports %s: take the exception out", pkg, path)
		}
	}
}

// refused says why a package may not import a path, "" if it may. Tests may reach into any layer below the command and
// use the world, but a test library stays in tests.
func refused(pkg, path string, test bool, may map[string][]string) string {
	if ours, ok := strings.CutPrefix(path, module); ok {
		if slices.Contains(forTests, ours) && !test {
			return "it is for tests"
		}
		if test || pkg == ours || slices.Contains(may[pkg], ours) || slices.Contains(may[pkg], "*") {
			return ""
		}
		return "the table of layers has no such entry"
	}
	if !strings.Contains(strings.SplitN(path, "/", 2)[0], ".") {
		reason, ruled := outside[path]
		if !ruled || test || strings.HasPrefix(pkg, "cmd/") || exceptions[pkg+": "+path] != "" {
			return ""
		}
		return reason
	}
	within := func(lib string) bool { return path == lib || strings.HasPrefix(path, lib+"/") }
	for _, l := range libraries {
		if within(l.path) && (test || slices.Contains(strings.Fields(l.users), pkg)) {
			return ""
		}
	}
	if slices.ContainsFunc(testLibraries, within) {
		if test {
			return ""
		}
		return "it is for tests"
	}
	return "the library is not listed for this package"
}

// TestRefused sees every rule fire, so that an empty table could not pass unnoticed.
func TestRefused(t *testing.T) {
	_, may := allowed(t)
	for _, c := range []struct {
		pkg, path string
		test      bool
		refused   bool
	}{
		{"render/book", "ovillo/lang", false, true},
		{"compile/plan", "ovillo/lang", false, true},
		{"lang/diag", "ovillo/lang", false, true},
		{"compile", "ovillo/lang", false, false},
		{"cmd/ovillo", "ovillo/render/pdf", false, false},
		{"compile", "os", false, true},
		{"compile", "os", true, false},
		{"render/words", "time", false, true},
		{"render/pdf", "time", false, false},
		{"cmd/ovillo", "os", false, false},
		{"render/book", "github.com/go-pdf/fpdf", false, true},
		{"render/pdf", "github.com/go-pdf/fpdf", false, false},
		{"compile", "github.com/alecthomas/participle/v2/lexer", false, true},
		{"lang", "github.com/alecthomas/participle/v2/lexer", false, false},
		{"lang", "pgregory.net/rapid", false, true},
		{"lang", "pgregory.net/rapid", true, false},
		{"lang", "example.com/new", true, true},
		{"cmd/ovillo", "ovillo/cmd/ovillo/browser", false, true},
		{"cmd/ovillo", "ovillo/cmd/ovillo/browser", true, false},
		{"cmd/ovillo", "ovillo/cmd/ovillo/whole", false, true},
		{"cmd/ovillo", "github.com/ledongthuc/pdf", false, true},
		{"lang", "strings", false, false},
	} {
		if why := refused(c.pkg, c.path, c.test, may); (why != "") != c.refused {
			t.Errorf("%s importing %s (test %v): %q", c.pkg, c.path, c.test, why)
		}
	}
	for key, why := range outside {
		if why == "" {
			t.Errorf("%s is ruled out without a reason", key)
		}
	}
}

// TestTopLevel keeps the top of the repository to what it is meant to hold.
func TestTopLevel(t *testing.T) {
	want := []string{"lang", "compile", "render", "cmd", "examples", "testdata", "README.md", "DEVELOPERS.md", "go.mod", "go.sum"}
	entries, err := os.ReadDir(filepath.Join("..", ".."))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(want, e.Name()) {
			t.Errorf("%s stands at the top level", e.Name())
		}
	}
}

// TestTermsUsed checks that the words of the trade which checks ask for by a literal key stand in the catalogue.
func TestTermsUsed(t *testing.T) {
	files, set := moduleFiles(t, 0)
	known := termKeys(t, files)
	for _, f := range files {
		if f.test {
			continue
		}
		ast.Inspect(f.ast, func(n ast.Node) bool {
			lit, ok := n.(*ast.CompositeLit)
			if !ok || !isTerm(lit.Type) || len(lit.Elts) == 0 {
				return true
			}
			key := lit.Elts[0]
			if kv, ok := key.(*ast.KeyValueExpr); ok && fmt.Sprint(kv.Key) == "Key" {
				key = kv.Value
			}
			if s, ok := key.(*ast.BasicLit); ok && !known[s.Value] {
				t.Errorf("%s: no word for term %s in lang/diag/terms.go", set.Position(s.Pos()), s.Value)
			}
			return true
		})
	}
}

func isTerm(t ast.Expr) bool {
	if s, ok := t.(*ast.SelectorExpr); ok {
		return s.Sel.Name == "Term" && fmt.Sprint(s.X) == "diag"
	}
	return false
}

// termKeys reads the keys of the table of terms, as they are quoted there.
func termKeys(t *testing.T, files []goFile) map[string]bool {
	t.Helper()
	keys := map[string]bool{}
	for _, f := range files {
		if f.pkg != "lang/diag" || f.test {
			continue
		}
		ast.Inspect(f.ast, func(n ast.Node) bool {
			spec, ok := n.(*ast.ValueSpec)
			if !ok || !strings.HasPrefix(spec.Names[0].Name, "terms") || len(spec.Values) != 1 {
				return true
			}
			table, ok := spec.Values[0].(*ast.CompositeLit)
			if !ok {
				return true
			}
			for _, e := range table.Elts {
				keys[e.(*ast.KeyValueExpr).Key.(*ast.BasicLit).Value] = true
			}
			return false
		})
	}
	if len(keys) < 10 {
		t.Fatalf("only %d terms found", len(keys))
	}
	return keys
}
