package lang

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"ovillo/lang/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// sources gives every good source there is: those of this package and the examples.
func sources(t testing.TB) []*source.File {
	var files []*source.File
	for _, pattern := range []string{"testdata/*.ovillo", "../examples/*.ovillo", "../examples/*/*.ovillo", "../testdata/*.ovillo"} {
		names, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range names {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			files = append(files, source.NewFile(name, string(text)))
		}
	}
	return files
}

func dumped(t testing.TB, f *File) string {
	var b bytes.Buffer
	if err := Dump(&b, f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestGoodSourcesParse(t *testing.T) {
	for _, f := range sources(t) {
		_, faults := Parse(f)
		for _, d := range faults {
			t.Errorf("%s:%d: %s %q %v", f.Name, f.Line(d.Span.Start), d.Code, f.Slice(d.Span), d.Args)
		}
	}
}

func TestTreesAreAsRecorded(t *testing.T) {
	for _, name := range []string{"leggings", "forms"} {
		tree, _ := Parse(readSource(t, name+".ovillo"))
		golden(t, "testdata/"+name+".tree", dumped(t, tree))
	}
}

func golden(t *testing.T, path, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s differs (write it anew with -update):\n%s", path, firstDifference(got, string(want)))
	}
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return "got  " + g[i] + "\nwant " + w[i]
		}
	}
	return "one is longer"
}

// nodeTypes gives every struct of the tree that can be reached from a statement or an instruction.
func nodeTypes() map[reflect.Type]bool {
	seen := map[reflect.Type]bool{}
	var visit func(t reflect.Type)
	visit = func(t reflect.Type) {
		switch t.Kind() {
		case reflect.Pointer, reflect.Slice:
			visit(t.Elem())
		case reflect.Struct:
			if !reflect.PointerTo(t).Implements(nodeType) || seen[t] {
				return
			}
			seen[t] = true
			for i := range t.NumField() {
				if !t.Field(i).Anonymous {
					visit(t.Field(i).Type)
				}
			}
		}
	}
	for _, n := range allStatements {
		visit(reflect.TypeOf(n))
	}
	for _, n := range allItems {
		visit(reflect.TypeOf(n))
	}
	return seen
}

// Every node of the tree, and every field of every node, is read from forms.ovillo at least once, and Walk comes past it.
func TestFormsHoldsEveryForm(t *testing.T) {
	tree, _ := Parse(readSource(t, "forms.ovillo"))
	set := map[reflect.Type]map[string]bool{}
	Walk(tree, func(n Node) bool {
		v := reflect.ValueOf(n).Elem()
		if set[v.Type()] == nil {
			set[v.Type()] = map[string]bool{}
		}
		for i := range v.NumField() {
			if !v.Field(i).IsZero() {
				set[v.Type()][v.Type().Field(i).Name] = true
			}
		}
		return true
	})
	for typ := range nodeTypes() {
		for i := range typ.NumField() {
			if name := typ.Field(i).Name; !set[typ][name] {
				t.Errorf("no form sets %s.%s", typ.Name(), name)
			}
		}
	}
}
