package trial

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sources are the files of the module that are no tests, by their names from its folder.
func sources(t *testing.T) map[string]*ast.File {
	t.Helper()
	root := filepath.Join("..", "..", "..")
	out := map[string]*ast.File{}
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && (d.Name() == "testdata" || strings.HasPrefix(d.Name(), ".") && path != root):
			return filepath.SkipDir
		case !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go"):
			return nil
		}
		name, err := filepath.Rel(root, path)
		if err == nil {
			out[filepath.ToSlash(name)], err = parser.ParseFile(token.NewFileSet(), path, nil, 0)
		}
		return err
	})
	require.NoError(t, err)
	require.Greater(t, len(out), 300)
	return out
}

// imported is the path of the package that a name stands for in a file; "" if it stands for none.
func imported(f *ast.File, name string) string {
	for _, i := range f.Imports {
		path, _ := strconv.Unquote(i.Path.Value)
		called := path[strings.LastIndexByte(path, '/')+1:]
		if i.Name != nil {
			called = i.Name.Name
		}
		if called == name {
			return path
		}
	}
	return ""
}

// imports reports whether a file imports a package.
func imports(f *ast.File, path string) bool {
	return slices.ContainsFunc(f.Imports, func(i *ast.ImportSpec) bool { return i.Path.Value == strconv.Quote(path) })
}

// selected calls a function for each NAME.Name of a file, with the package that NAME is; "" if it is something else.
func selected(f *ast.File, found func(of, name string)) {
	ast.Inspect(f, func(n ast.Node) bool {
		if s, ok := n.(*ast.SelectorExpr); ok {
			of := ""
			if id, ok := s.X.(*ast.Ident); ok {
				of = imported(f, id.Name)
			}
			found(of, s.Sel.Name)
		}
		return true
	})
}

// writing are the names under which the standard library changes a disk, as functions of os, as methods of os.Root, as calls of the system.
var writing = strings.Fields(`Create CreateTemp MkdirTemp WriteFile OpenFile OpenInRoot Rename Remove RemoveAll Mkdir MkdirAll Link Symlink Truncate Chmod Chown Lchown
	Chtimes CopyFS`)

// harmless are those that are there and change nothing, by file and name.
var harmless = map[string]string{
	"cmd/ovillo/desk/plain.go OpenFile": "opens for reading, so as not to wait for a pipe",
}

// TestOneWriter: no package but save, and those that only tests use, changes what is on the disk.
func TestOneWriter(t *testing.T) {
	seen := map[string]bool{}
	inSave := 0
	for name, f := range sources(t) {
		pkg := name[:strings.LastIndexByte(name, '/')]
		if pkg == "cmd/ovillo/browser" || pkg == "compile/picture/files" || pkg == "lang/shared" {
			continue // for tests
		}
		selected(f, func(of, what string) {
			bad := slices.Contains(writing, what) && (of == "os" || of == "" && imports(f, "os")) ||
				of == "syscall" && (slices.Contains(writing, what) || what == "Open" || what == "Write" || what == "Unlink") || of == "io/ioutil"
			switch {
			case !bad:
			case pkg == "cmd/ovillo/save":
				inSave++
			case harmless[name+" "+what] != "":
				seen[name+" "+what] = true
			default:
				t.Errorf("%s uses %s: package save writes files, and nothing else does", name, what)
			}
		})
		assert.False(t, imports(f, "io/ioutil"), name)
		if imports(f, "golang.org/x/sys/unix") {
			assert.Equal(t, "cmd/ovillo/save", pkg, name)
		}
	}
	for entry := range harmless {
		assert.True(t, seen[entry], "%s is no longer there", entry)
	}
	assert.Greater(t, inSave, 10, "nothing is found where all of it is")
}

// TestNobodyDials: only the preview and the tests' browser have to do with a network, and of what it can do the preview only listens, on the
// loopback interface; only the reader of revisions runs another program, which is git.
func TestNobodyDials(t *testing.T) {
	forTests := []string{"cmd/ovillo/browser/"}
	listens, runs := 0, 0
	for name, f := range sources(t) {
		if slices.ContainsFunc(forTests, func(of string) bool { return strings.HasPrefix(name, of) }) {
			continue
		}
		for _, path := range []string{"net", "net/http"} {
			if imports(f, path) {
				assert.True(t, strings.HasPrefix(name, "cmd/ovillo/preview/"), "%s imports %s", name, path)
			}
		}
		for _, path := range []string{"net/rpc", "net/smtp", "crypto/tls", "net/http/httputil", "plugin", "net/http/pprof", "expvar"} {
			assert.False(t, imports(f, path), "%s imports %s", name, path)
		}
		if imports(f, "os/exec") {
			assert.True(t, name == "cmd/ovillo/desk/revision.go" || strings.HasPrefix(name, "cmd/ovillo/whole/"), "%s runs programs", name)
		}
		selected(f, func(of, what string) {
			switch {
			case of == "net":
				assert.Contains(t, []string{"Listen", "Listener", "JoinHostPort", "SplitHostPort"}, what, name)
				if what == "Listen" {
					listens++
				}
			case of == "net/http":
				for _, bad := range []string{"Get", "Post", "Head", "Client", "DefaultClient", "Transport", "NewRequest", "Dial", "ListenAndServe", "FileServer", "ServeFile", "Dir"} {
					assert.False(t, what == bad || strings.HasPrefix(what, bad+"F") || strings.HasPrefix(what, bad+"W"), "%s: http.%s", name, what)
				}
			case of == "os/exec" && strings.HasPrefix(name, "cmd/ovillo/desk/"):
				runs++
			case of == "syscall":
				assert.NotContains(t, []string{"Socket", "Connect", "ForkExec", "Exec", "StartProcess", "Bind"}, what, name)
			case of == "os":
				assert.NotEqual(t, "StartProcess", what, name)
			}
		})
	}
	assert.Equal(t, 1, listens)
	assert.Positive(t, runs)
}
