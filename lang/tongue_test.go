package lang

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/source"
)

// spanish is neutral Spanish.
func spanish(t testing.TB) *tongue {
	t.Helper()
	es, ok := tongueNamed("es")
	if !ok {
		t.Fatal("no Spanish")
	}
	return es
}

// everySource gives every source of the project that can be read, those of the reference included.
func everySource(t testing.TB) []*source.File {
	t.Helper()
	files := referenceExamples(t)
	err := filepath.WalkDir("..", func(path string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".ovillo" {
			return err
		}
		text, err := os.ReadFile(path)
		files = append(files, source.NewFile(path, string(text)))
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	good := slices.DeleteFunc(files, func(f *source.File) bool { _, faults := Parse(f); return len(faults) > 0 })
	if len(good) < 80 {
		t.Fatalf("only %d sources were found", len(good))
	}
	return good
}

// Every source goes into every language and back without a letter changed, and means the same there.
func TestRewordingAndBack(t *testing.T) {
	taken := 0
	for _, f := range everySource(t) {
		tags := []string{"es"}
		if strings.HasPrefix(f.Name, "../examples/") {
			tags = Tongues()
		}
		if tree, _ := Parse(f); tree.tongue != nil {
			english, err := Reword(f, "en")
			if err != nil {
				t.Errorf("%s to English: %v", f.Name, err)
			} else if back, err := Reword(source.NewFile(f.Name, english), tree.tongue.reading.Tag()); err != nil || articles.Replace(back) != articles.Replace(f.Text) {
				t.Errorf("%s by way of English is another text: %v\n%s", f.Name, err, firstOther(f.Text, back))
			}
			continue
		}
		for _, tag := range tags {
			there, err := Reword(f, tag)
			if e := (*Taken)(nil); asTaken(err, &e) && e.Name != "" {
				taken++
				continue
			}
			if err != nil {
				t.Errorf("%s to %s: %v (line %d)\n%s", f.Name, tag, err, lineOf(f, err), f.Text)
				break
			}
			g := source.NewFile(f.Name, there)
			back, err := Reword(g, "en")
			if err != nil {
				t.Errorf("%s from %s: %v", f.Name, tag, err)
				break
			}
			if back != f.Text {
				t.Errorf("%s by way of %s is another text:\n%s", f.Name, tag, firstOther(f.Text, back))
				break
			}
			if again, err := Reword(g, tag); err != nil || again != there {
				t.Errorf("%s in %s is not kept: %v\n%s", f.Name, tag, err, firstOther(there, again))
				break
			}
		}
	}
	if taken > 6 { // a few sources call things a, v and y
		t.Errorf("%d times a name stood in the way", taken)
	}
}

// articles takes off the articles that a source in Spanish may have and English has not.
var articles = strings.NewReplacer("en los siguientes", "en siguientes")

func asTaken(err error, e **Taken) bool { x, ok := err.(*Taken); *e = x; return ok }

func lineOf(f *source.File, err error) int {
	if e, ok := err.(*Taken); ok {
		return f.Line(e.Span.Start)
	}
	return 0
}

func firstOther(a, b string) string {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range x {
		if i >= len(y) || x[i] != y[i] {
			return "- " + x[i] + "\n+ " + strings.Join(y[min(i, len(y)):min(i+1, len(y))], "")
		}
	}
	return ""
}

// Nothing of the English language is left in a source that was put into Spanish: every word that is not a name, a text or a
// remark is one of the table.
func TestNoWordIsLeftBehind(t *testing.T) {
	for _, f := range everySource(t) {
		tree, _ := Parse(f)
		if tree.tongue != nil {
			continue
		}
		text, err := Reword(f, "es")
		if err != nil {
			continue // see above
		}
		g := source.NewFile(f.Name, text)
		there, _ := Parse(g)
		name := map[int32]bool{}
		for _, u := range there.nameUses() {
			for _, at := range there.wordSpans(u) {
				name[at.Start] = true
			}
		}
		for _, tok := range there.spelt.tokens {
			said := tok.Text(g.Text)
			if _, turned := there.spelt.english[tok.Span]; tok.Kind != Word || turned || name[tok.Span.Start] || slices.Contains([]string{"en", "es", "cm", "mm", "g", "kg", "m", "oz", "yd"}, said) {
				continue
			}
			t.Errorf("%s, line %d: %q is no word of the table", f.Name, g.Line(tok.Span.Start), said)
		}
	}
}

// The grammar is the measure of the table: every word in the tags of the tree, and every word of the classes, can be said.
func TestEveryWordOfTheGrammarHasATranslation(t *testing.T) {
	has := map[string]bool{}
	for _, list := range spanish(t).wordTable.write {
		for _, w := range list {
			for _, e := range w.english {
				has[e] = true
			}
		}
	}
	d := spanish(t).named[units]
	for u := range d.other {
		has[u] = true
	}
	same := strings.Fields("cm mm m g kg oz yd ch sl one the side wrong all time third loop established rs ws") // units, stitches, parts of phrases
	for _, w := range same {
		has[w] = true
	}
	words := regexp.MustCompile(`'([a-z]+)'`)
	text, err := os.ReadFile("tree.go")
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for _, line := range bytes.Split(text, []byte("\n")) {
		if !bytes.Contains(line, []byte("parser:")) {
			continue
		}
		for _, m := range words.FindAllSubmatch(line, -1) {
			if n++; !has[string(m[1])] {
				t.Errorf("%s has no Spanish word", m[1])
			}
		}
	}
	if n < 100 {
		t.Errorf("only %d words were found in the tags", n)
	}
	for w := range classes {
		if !has[w] && !strings.Contains("end to", w) {
			t.Errorf("%s has no Spanish word", w)
		}
	}
}

// One Spanish spelling, behind the same thing, stands for one English word: else what is read would be chance.
func TestSpanishIsReadInOneWay(t *testing.T) {
	es := spanish(t)
	for first, list := range es.wordTable.read {
		seen := map[string][]string{}
		for _, w := range list {
			key := plain(strings.Join(w.other, " ")) + "|" + strings.Join(w.behind, " ")
			if was, ok := seen[key]; ok && !reflect.DeepEqual(was, w.english) {
				t.Errorf("%s: %q is read as %q and as %q", first, key, was, w.english)
			}
			seen[key] = w.english
		}
	}
	for v, d := range es.named {
		back := map[string]string{}
		for en, other := range d.other {
			if was, ok := back[plain(other)]; ok {
				t.Errorf("%s: %q is %s and %s", v, other, en, was)
			}
			back[plain(other)] = en
			if d.english[plain(other)] != en {
				t.Errorf("%s: %q is read as %q, written for %q", v, other, d.english[plain(other)], en)
			}
			if v != functions && v != units && v != suffixes && es.reserves(other) {
				t.Errorf("%s: %q is a word of the language wherever it stands, so that it can be no name", v, other)
			}
		}
	}
}

func TestForeignWords(t *testing.T) {
	head := "idioma es\npatrón p\n  términos us\nfin\ntallas \"a\"\nfin\npieza b\n  en hileras\n  cadena 20\n"
	for _, c := range []struct{ line, code string }{
		{"hilera: pb en cada", ""},
		{"hilera: pb en los siguientes 5, pb hasta el final", ""},
		{"fila: pb en la siguiente, pb en cada", ""},
		{"hilera: pb en cada p", ""},
		{"hilera: 2pbjun, pb en cada", ""},
		{"hilera: pb2jun, pma rel del en siguiente, pb en cada", ""},
		{"row: pb en cada", "OV159"},
		{"hilera: pb in cada", "OV159"},
		{"hilrea: pb en cada", "OV111"},
		{"hilera: pb en cda", ""}, // a place called cda, for all that the grammar knows
	} {
		_, faults := Parse(source.NewFile("a", head+"  "+c.line+"\nfin\n"))
		got := ""
		if len(faults) > 0 {
			got = string(faults[0].Code)
		}
		if got != c.code || len(faults) > 1 {
			t.Errorf("%s: %v", c.line, faults)
		}
	}
}

// A word that is nearly one of the language is told the Spanish one.
func TestNearWordsAreThoseOfTheSource(t *testing.T) {
	f := source.NewFile("a", "idioma es\npatrón p\n  términos us\nfin\npiezza b\nfin\n")
	tree, faults := Parse(f)
	if len(faults) != 1 || !reflect.DeepEqual(faults[0].Args["near"], []string{"part"}) || tree.Coder()("part") != "pieza" {
		t.Errorf("%v", faults)
	}
}

// A name is what the source says, though it be a word in another place; and a name that can be none is refused by name.
func TestNamesStayNames(t *testing.T) {
	f := source.NewFile("a", "idioma es\npatrón recta\n  términos us\nfin\ntallas \"a\"\nfin\npieza largo\n  en hileras\n  cadena 20\n  hilera: pb en cada como medio\nfin\npieza b\n  en hileras\n  desde largo.medio\n  hilera: pb en cada\nfin\n")
	tree, faults := Parse(f)
	if len(faults) > 0 {
		t.Fatal(faults)
	}
	var b bytes.Buffer
	if err := Dump(&b, tree); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"Pattern Name=recta", "Part Name=largo", "Label=medio", "Ref=largo.medio"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in\n%s", want, b.String())
		}
	}
	_, err := Reword(source.NewFile("a", "pattern p\n  terms us\nend\nsizes \"a\"\nend\npart punto\nend\n"), "es")
	if e := (*Taken)(nil); !asTaken(err, &e) || e.Name != "punto" {
		t.Errorf("punto as a name: %v", err)
	}
	_, err = Reword(source.NewFile("a", "pattern\n"), "es")
	if _, ok := err.(*Faulty); !ok {
		t.Errorf("a source with errors: %v", err)
	}
}

// Code in messages, of which there is no tree, is put into words that can be read.
func TestCodeOfMessages(t *testing.T) {
	es := spanish(t)
	for english, want := range map[string]string{
		"dc in next 5":                "pa en siguientes 5",
		"rows for 20 cm: dc in each":  "hileras durante 20 cm: pa en cada",
		"fasten off":                  "rematar",
		"sl st in next 4":             "pd en siguientes 4",
		"(2 dc, ch 2, 2 dc) in next":  "(2 pa, cad 2, 2 pa) en siguiente",
		"end":                         "fin",
		"level easy":                  "nivel fácil",
		"in joined rounds":            "en vueltas cerradas",
		`title en "Body" es "Cuerpo"`: `título en "Body" es "Cuerpo"`,
	} {
		if got := es.code(english); got != want {
			t.Errorf("%s: %s, want %s", english, got, want)
		}
	}
	for block, table := range forms {
		for key, f := range table {
			if f.right != "" && !strings.ContainsAny(key, "#*") && es.code(f.right) == f.right {
				t.Errorf("%s, %s: %s stays English", block, key, f.right)
			}
		}
	}
}

func FuzzReword(f *testing.F) {
	for _, s := range everySource(f) {
		f.Add(s.Text)
		if there, err := Reword(s, "es"); err == nil {
			f.Add(there)
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		a := source.NewFile("a", text)
		there, err := Reword(a, "es-AR")
		if err != nil {
			return
		}
		if _, err := Reword(source.NewFile("b", there), "en"); err != nil {
			t.Errorf("there, but not back: %v\n%s", err, there)
		}
	})
}

// The reference has the table of words as it is.
func TestReferenceHasTheWords(t *testing.T) {
	text, err := os.ReadFile("reference.md")
	if err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(strings.NewReader(regexp.MustCompile("(?m)^#.*\n").ReplaceAllString(wordsCSV, ""))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	kind := ""
	for _, row := range rows[1:] {
		if row[0] != kind {
			kind = row[0]
			b.WriteString("\n| " + kind + " | Spanish |\n| --- | --- |\n")
		}
		_, words := behindOf(row[3])
		other := strings.Join(words, " ")
		if row[4] != "" {
			other += " (" + strings.ReplaceAll(row[4], "|", ", ") + ")"
		}
		b.WriteString("| " + row[1] + " | " + other + " |\n")
	}
	table := regexp.MustCompile("(?s)<!-- words -->\n.*<!-- /words -->")
	want := table.ReplaceAllString(string(text), "<!-- words -->\n"+b.String()+"\n<!-- /words -->")
	if *update {
		if err := os.WriteFile("reference.md", []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if want != string(text) {
		t.Error("the table of words in reference.md is an old one (write it anew with -update)")
	}
}
