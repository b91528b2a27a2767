package lang

import (
	"go/ast"
	"go/doc/comment"
	"go/parser"
	"go/token"
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// wrappers put a fragment of the reference into the block it belongs to; % is the fragment.
var wrappers = map[string]string{
	"":        "%",
	"file":    "%",
	"pattern": "pattern p\n%end\n",
	"sizes":   "sizes \"S\"\n%end\n",
	"gauge":   "gauge 10 cm\n%end\n",
	"yarn":    "yarn y\n%end\n",
	"sample":  "sample \"S\"\n%end\n",
	"stitch":  "stitch s\n%end\n",
	"chart":   "chart c\n%end\n",
	"part":    "part p\n%end\n",
	"shape":   "part p\nshape s: 30 rounds\n%end\nend\n",
	"motifs":  "motifs m of g\n%end\n",
	"finish":  "finish\n%end\n",
	"measure": "measure\n%end\n",
	"row":     "part p\n%end\n",
	"value":   "%",
}

// linePrefix makes a statement of each line of a fragment that is no statement itself.
var linePrefix = map[string]string{"row": "round: ", "value": "let v = "}

// referenceExamples gives the sources of the reference.
func referenceExamples(t testing.TB) []*source.File {
	text, err := os.ReadFile("reference.md")
	if err != nil {
		t.Fatal(err)
	}
	var files []*source.File
	for _, m := range regexp.MustCompile("(?ms)^```ovillo ?([a-z]*)[^\n]*\n(.*?)^```$").FindAllStringSubmatch(string(text), -1) {
		wrapper, ok := wrappers[m[1]]
		if !ok {
			t.Fatalf("a fragment of %q", m[1])
		}
		body := m[2]
		if prefix := linePrefix[m[1]]; prefix != "" {
			body = regexp.MustCompile(`(?m)^(.)`).ReplaceAllString(body, prefix+"$1")
		}
		files = append(files, source.NewFile("reference.md", strings.ReplaceAll(wrapper, "%", body)))
	}
	return files
}

// Every example of the reference is right, and between them they hold every statement and instruction there is.
func TestReference(t *testing.T) {
	seen := map[reflect.Type]bool{}
	examples := referenceExamples(t)
	if len(examples) < 45 {
		t.Fatalf("only %d examples were found", len(examples))
	}
	for _, f := range examples {
		tree, faults := Parse(f)
		if len(faults) > 0 {
			t.Errorf("an example of the reference:\n%s%s", f.Text, listed(faults))
		}
		Walk(tree, func(n Node) bool { seen[reflect.TypeOf(n)] = true; return true })
	}
	for _, n := range allStatements {
		if !seen[reflect.TypeOf(n)] {
			t.Errorf("the reference shows no %T", n)
		}
	}
	for _, n := range allItems {
		if !seen[reflect.TypeOf(n)] {
			t.Errorf("the reference shows no %T", n)
		}
	}
}

// Between them the examples set every field of every node of the tree, and each word that a field may hold: there is no form
// that the reference does not show.
func TestReferenceShowsEveryForm(t *testing.T) {
	set, types := map[string]bool{}, map[reflect.Type]bool{}
	for _, f := range referenceExamples(t) {
		tree, _ := Parse(f)
		Walk(tree, func(n Node) bool {
			v := reflect.ValueOf(n).Elem()
			types[v.Type()] = true
			for i := range v.NumField() {
				name := v.Type().Name() + "." + v.Type().Field(i).Name
				set[name] = set[name] || !v.Field(i).IsZero()
				if v.Field(i).Kind() == reflect.String {
					set[name+" "+v.Field(i).String()] = true
				}
			}
			return true
		})
	}
	for typ := range types {
		for i := range typ.NumField() {
			f := typ.Field(i)
			if name := typ.Name() + "." + f.Name; !set[name] {
				t.Errorf("no example of the reference sets %s", name)
			}
			for _, w := range wordsOf(typ.Name(), f) {
				if name := typ.Name() + "." + f.Name + " " + w; !set[name] {
					t.Errorf("no example of the reference shows %s", name)
				}
			}
		}
	}
}

// readByHand are the words of fields without tags.
var readByHand = map[string]string{
	"Work.Loop": "flo blo tlo", "Work.Cross": "front back", "Spread.How": "alternating centred", "RepEnd.Full": "around across",
	"Target.Prep": "below beside", "Kinds.A": "st sts space spaces chains gap gaps left", "Kinds.B": "space chain",
	"RowHead.One": "round row", "RowHead.For": "rounds rows", "RowHead.Many": "rounds",
}

// wordsOf gives the words that can be read into a field.
func wordsOf(node string, f reflect.StructField) []string {
	if f.Type.Kind() != reflect.String {
		return nil
	}
	out := strings.Fields(readByHand[node+"."+f.Name])
	for _, m := range regexp.MustCompile(`@\(([^)]*)\)|@'([a-z]+)'`).FindAllStringSubmatch(f.Tag.Get("parser"), -1) {
		out = append(out, regexp.MustCompile(`[a-z]+`).FindAllString(m[1]+m[2], -1)...)
	}
	return out
}

// The list of reserved words in the reference is the list there is.
func TestReferenceListsReservedWords(t *testing.T) {
	text, err := os.ReadFile("reference.md")
	if err != nil {
		t.Fatal(err)
	}
	_, list, _ := strings.Cut(string(text), "can name nothing:")
	list, _, _ = strings.Cut(list, "All other words")
	listed := map[string]bool{}
	for _, m := range regexp.MustCompile("`([a-z]+)`").FindAllStringSubmatch(list, -1) {
		listed[m[1]] = true
		if !Reserved(m[1]) {
			t.Errorf("%s is not reserved", m[1])
		}
	}
	for w, c := range classes {
		if c&reserved != 0 && !listed[w] {
			t.Errorf("%s is reserved and not listed", w)
		}
	}
}

// Each form that the comment of a statement or an instruction in tree.go shows, up to its first word, is shown in an
// example of the reference too.
func TestReferenceShowsFormsOfTree(t *testing.T) {
	var shown strings.Builder
	for _, f := range referenceExamples(t) {
		shown.WriteString(f.Text)
	}
	forms := formsOfTree(t)
	for _, n := range allStatements {
		checkFormsShown(t, shown.String(), forms, reflect.TypeOf(n).Elem().Name())
	}
	for _, n := range allItems {
		checkFormsShown(t, shown.String(), forms, reflect.TypeOf(n).Elem().Name())
	}
}

func checkFormsShown(t *testing.T, shown string, forms map[string][]string, node string) {
	if len(forms[node]) == 0 {
		t.Errorf("the comment of %s shows no form", node)
	}
	for _, form := range forms[node] {
		word, _, _ := strings.Cut(form, " ")
		begins := regexp.MustCompile(`(?m)(^|[:,(\[=])\s*` + regexp.QuoteMeta(word) + `([\s:,\])]|$)`)
		if !begins.MatchString(shown) {
			t.Errorf("%s: the reference shows nothing that begins like %q", node, form)
		}
	}
}

// formsOfTree gives the forms that the comments of tree.go show, by the name of the node: the indented lines of the first
// block of each, parted at the dots.
func formsOfTree(t *testing.T) map[string][]string {
	file, err := parser.ParseFile(token.NewFileSet(), "tree.go", nil, parser.ParseComments)
	if err != nil {
		t.Fatal(err)
	}
	forms := map[string][]string{}
	for _, d := range file.Decls {
		g, ok := d.(*ast.GenDecl)
		if !ok || g.Tok != token.TYPE || len(g.Specs) != 1 || g.Doc == nil {
			continue
		}
		name := g.Specs[0].(*ast.TypeSpec).Name.Name
		for _, b := range new(comment.Parser).Parse(g.Doc.Text()).Content {
			c, ok := b.(*comment.Code)
			if !ok {
				continue
			}
			for _, line := range strings.Split(strings.TrimSpace(c.Text), "\n") {
				if strings.TrimSpace(line) == "" {
					break // behind a blank line stands the grammar
				}
				forms[name] = append(forms[name], strings.Split(strings.TrimSpace(line), " · ")...)
			}
			break
		}
	}
	return forms
}
