package bounds

import (
	"go/ast"
	"go/constant"
	"go/format"
	"go/parser"
	"go/token"
	"go/types"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"ovillo/lang/diag"
)

const top = "../../.."

// boundName is what a constant that bounds something is called.
var boundName = regexp.MustCompile(`^(max|most|Max|Most)[A-Z]`)

// others are constants of such a name that bound nothing that comes in, with what they are.
var others = map[string]string{
	"lang.maxNear":               "how many names a message offers",
	"lang.maxNearRunes":          "longer words are not compared",
	"lang/format.mostHang":       "how far a line is indented",
	"lang/diag.Most":             "how many messages are printed",
	"compile.maxMatchRows":       "from how many rows on a seam is compared by its length",
	"compile.maxRateRows":        "of a rate at which stitches are picked up",
	"compile.mostRead":           "texts whose numbers are kept",
	"compile.mostPure":           "rows whose facts are kept",
	"compile/value.mostShared":   "numbers that are made once",
	"compile/fabric.mostPast":    "rows that are kept",
	"lang.mostReaders":           "statements that are read side by side",
	"compile.mostEase":           "a measure that is doubted",
	"compile.mostSigns":          "how many signs a message lists",
	"compile/compare.mostMade":   "what is written out to be compared",
	"render/draw.mostRowsSaid":   "what a description says",
	"render/book.mostOfContents": "how far a sheet is filled",
	"render/png.mostMitre":       "the corner of a stroke",
	"render/scene.mostSolid":     "ink",
	"render/scene.mostWide":      "ink",
	"render/scene.mostTint":      "ink",
	"render/report.mostFaults":   "how many are shown",
	"render/errata.mostItems":    "how many are named",
	"render/errata.mostRows":     "how many are named",
	"render/proof.mostRunes":     "a law of pages",
	"render/words.maxGathered":   "how many instructions are said at once",
	"render/words.mostSpoken":    "numbers that are said in words",
	"cmd/ovillo.mostLangs":       "languages side by side",
	"cmd/ovillo.mostDPI":         "dots of a picture that is asked for",
	"cmd/ovillo.mostHead":        "how much of a file is looked at to know its kind",
	"cmd/ovillo.mostWide":        "a drawing that is asked for",
	"cmd/ovillo.mostPort":        "a port",
	"cmd/ovillo/save.mostBase":   "letters of a name on the disk",
}

// values are the constants of the module and the variables that tests lower, by package and name.
func values(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	err := filepath.WalkDir(top, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() && (d.Name() == "testdata" || strings.HasPrefix(d.Name(), ".") && d.Name() != "..") {
			return errOr(err, d)
		}
		if !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return nil
		}
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			return err
		}
		rel, _ := filepath.Rel(top, filepath.Dir(name))
		for _, decl := range f.Decls {
			g, ok := decl.(*ast.GenDecl)
			if !ok || g.Tok != token.CONST && g.Tok != token.VAR {
				continue
			}
			for _, spec := range g.Specs {
				v := spec.(*ast.ValueSpec)
				for i, n := range v.Names {
					if i < len(v.Values) {
						out[path.Join(filepath.ToSlash(rel))+"."+n.Name] = worth(v.Values[i])
					}
				}
			}
		}
		return nil
	})
	if err != nil || len(out) < 100 {
		t.Fatal("the constants cannot be read: ", err)
	}
	return out
}

func errOr(err error, d fs.DirEntry) error {
	if err != nil || !d.IsDir() {
		return err
	}
	return filepath.SkipDir
}

// worth is the value of a constant expression of numbers alone, "" of anything else.
func worth(e ast.Expr) string {
	var b strings.Builder
	if format.Node(&b, token.NewFileSet(), e) != nil {
		return ""
	}
	v, err := types.Eval(token.NewFileSet(), nil, token.NoPos, b.String())
	if err != nil || v.Value == nil || v.Value.Kind() != constant.Int {
		return ""
	}
	return v.Value.ExactString()
}

// tested reports whether the tests of a package name a constant of it in their code.
func tested(t *testing.T, name string) bool {
	t.Helper()
	folder, short := path.Split(name)
	last, short, _ := strings.Cut(short, ".")
	files, err := filepath.Glob(filepath.Join(top, filepath.FromSlash(folder), last, "*_test.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		f, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		found := false
		ast.Inspect(f, func(n ast.Node) bool {
			id, ok := n.(*ast.Ident)
			found = found || ok && id.Name == short
			return !found
		})
		if found {
			return true
		}
	}
	return false
}

// TestTable holds the table of bounds against the constants: each row has the value and, where it names messages, the codes that there are;
// every constant of the table is named by a test of its package, so that none is without one; and every constant whose name says that it
// bounds something is in the table, or is said to bound nothing that comes in.
func TestTable(t *testing.T) {
	data, err := os.ReadFile(filepath.Join(top, "DEVELOPERS.md"))
	if err != nil {
		t.Fatal(err)
	}
	_, section, ok := strings.Cut(string(data), "\n## Bounds\n")
	section, _, _ = strings.Cut(section, "\n## ")
	if !ok {
		t.Fatal("DEVELOPERS.md has no section of bounds")
	}
	have, listed := values(t), map[string]bool{}
	for line := range strings.Lines(section) {
		cells := strings.Split(strings.Trim(line, "| \n"), "|")
		if len(cells) < 3 || !strings.Contains(line, "`") || !strings.HasPrefix(line, "| ") {
			continue
		}
		most, name := strings.TrimSpace(cells[1]), strings.Trim(cells[2], " `")
		listed[name] = true
		if v, known := have[name]; !known || v != most {
			t.Errorf("%s is %q, the table says %s", name, v, most)
		}
		if !tested(t, name) {
			t.Errorf("no test of its package names %s: one belongs there that goes to the bound, and one past it", name)
		}
		if _, err := strconv.Atoi(most); err != nil {
			t.Errorf("%s: %q is no number", name, most)
		}
		if len(cells) > 3 {
			for code := range strings.SplitSeq(cells[3], ",") {
				if code = strings.TrimSpace(code); code != "" && diag.Lookup(diag.Code(code)) == nil {
					t.Errorf("%s: there is no message %s", name, code)
				}
			}
		}
	}
	if tested(t, "compile.maxNothing") {
		t.Error("a constant that is not there is said to be tested")
	}
	if len(listed) < 40 {
		t.Fatalf("the table has %d rows", len(listed))
	}
	for name, v := range have {
		_, short, _ := strings.Cut(path.Base(name), ".")
		if boundName.MatchString(short) && v != "" && !listed[name] && others[name] == "" {
			t.Errorf("%s bounds something, and is not in the table", name)
		}
	}
	for name := range others {
		if _, known := have[name]; !known || listed[name] {
			t.Errorf("%s is not there, or in the table as well", name)
		}
	}
}
