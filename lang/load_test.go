package lang

import (
	"io/fs"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// folder is a folder of texts.
type folder map[string]string

func (f folder) open(name string) ([]byte, error) {
	if text, ok := f[name]; ok {
		return []byte(text), nil
	}
	return nil, fs.ErrNotExist
}

func load(name string, f folder) (*File, diag.List) {
	return Load(source.NewFile("set/"+name, f[name]), f.open)
}

func codesIn(l diag.List) string {
	var list []string
	for _, d := range l {
		list = append(list, string(d.Code))
	}
	return strings.Join(list, " ")
}

// Every place of a used file is told as one in it: each node of the tree stands on the text that it stands on when its file is
// read by itself.
func TestUsedPlaces(t *testing.T) {
	files := folder{
		"hat.ovillo":    "use \"common.ovillo\"\nlet a = b + 1\n",
		"common.ovillo": "use \"yarn/all.ovillo\"\nlet b = 40 (44, 48)\nnote\n  en | Salt {b}.\n  es | Sal {b}.\nend\n",
		"yarn/all.ovillo": "yarn salt\n  name en \"salt\" es \"sal\"\n  ball 50 g, 120 m\nend\nuse \"more.ovillo\"\n" +
			"group wave = [sc in next, skip 2, 5 dc in next]\n",
		"yarn/more.ovillo": "chart w\n  legend \".\" salt\n  1 | . .\nend\n",
	}
	tree, found := load("hat.ovillo", files)
	if len(found) > 0 {
		t.Fatal(listed(found))
	}
	if got := tree.Used(); !slices.Equal(got, []string{"common.ovillo", "yarn/all.ovillo", "yarn/more.ovillo"}) {
		t.Errorf("it uses %v", got)
	}
	var heads []string
	WalkStatements(tree.Body, func(s *Statement) bool {
		in, at := tree.Source.Within(s.Head)
		heads = append(heads, in.Name+": "+strings.Fields(in.Slice(at))[0])
		for _, l := range s.Lines {
			if got := tree.Source.Slice(l.Span); strings.TrimSpace(got) != l.Text {
				t.Errorf("the line %q stands on %q", l.Text, got)
			}
		}
		return true
	})
	want := []string{"set/hat.ovillo: use", "set/common.ovillo: use", "set/yarn/all.ovillo: yarn", "set/yarn/all.ovillo: name", "set/yarn/all.ovillo: ball",
		"set/yarn/all.ovillo: use", "set/yarn/more.ovillo: chart", "set/yarn/more.ovillo: legend", "set/yarn/all.ovillo: group", "set/common.ovillo: let",
		"set/common.ovillo: note", "set/hat.ovillo: let"}
	if !slices.Equal(heads, want) {
		t.Errorf("the statements are\n%s\nwant\n%s", strings.Join(heads, "\n"), strings.Join(want, "\n"))
	}
	n := 0
	Walk(tree, func(node Node) bool {
		if name, ok := node.(*Name); ok {
			n++
			if got := tree.Source.Slice(name.Span()); got != name.Text {
				t.Errorf("%q stands on %q", name.Text, got)
			}
		}
		return true
	})
	if n < 6 {
		t.Errorf("only %d names", n)
	}
}

// What is wrong with how files are used.
func TestUsedWrongly(t *testing.T) {
	common := "let b = 40\n"
	many, deep := folder{"x.ovillo": ""}, folder{}
	for i := range 33 {
		n := string(rune('a'+i/26)) + string(rune('a'+i%26))
		many["x.ovillo"] += "use \"" + n + "\"\n"
		many[n] = common
		deep[n] = "use \"" + string(rune('a'+(i+1)/26)) + string(rune('a'+(i+1)%26)) + "\"\n"
	}
	deep["x.ovillo"] = "use \"aa\"\n"
	for name, c := range map[string]struct {
		files folder
		want  string
		text  string // what the first message is about
	}{
		"plain":       {folder{"x.ovillo": `use "a.ovillo"`, "a.ovillo": common}, "", ""},
		"twice":       {folder{"x.ovillo": "use \"a.ovillo\"\nuse \"./a.ovillo\"", "a.ovillo": common}, "", ""},
		"up":          {folder{"x.ovillo": `use "../a.ovillo"`}, "OV106", `"../a.ovillo"`},
		"up and back": {folder{"x.ovillo": `use "b/../a.ovillo"`, "a.ovillo": common}, "OV106", ""},
		"absolute":    {folder{"x.ovillo": `use "/etc/passwd"`}, "OV106", ""},
		"disk":        {folder{"x.ovillo": `use "c:a.ovillo"`}, "OV106", ""},
		"backslash":   {folder{"x.ovillo": `use "b\\a.ovillo"`}, "OV106", ""},
		"folder":      {folder{"x.ovillo": `use "."`}, "OV106", ""},
		"nothing":     {folder{"x.ovillo": `use ""`}, "OV106", ""},
		"missing":     {folder{"x.ovillo": `use "a.ovillo"`}, "OV107", `"a.ovillo"`},
		"missing below": {folder{"x.ovillo": `use "a.ovillo"`, "a.ovillo": `use "b.ovillo"`}, "OV107",
			`"b.ovillo"`},
		"itself":      {folder{"x.ovillo": `use "x.ovillo"`}, "OV110", `"x.ovillo"`},
		"back":        {folder{"x.ovillo": `use "a.ovillo"`, "a.ovillo": `use "x.ovillo"`}, "OV110", ""},
		"diamond":     {folder{"x.ovillo": "use \"a\"\nuse \"b\"", "a": `use "c"`, "b": `use "c"`, "c": common}, "", ""},
		"a part":      {folder{"x.ovillo": `use "a"`, "a": "part p\n  chain 4\nend\n"}, "OV162", "part p"},
		"drawn chart": {folder{"x.ovillo": `use "a"`, "a": "chart c of p\n  rows 1 to 2\nend\n"}, "OV162", ""},
		"intro":       {folder{"x.ovillo": `use "a"`, "a": "intro\n  en | Yes.\nend\n"}, "OV162", ""},
		"bad text":    {folder{"x.ovillo": `use "a"`, "a": "let b = \xff\n"}, "OV102", ""},
		"bad line":    {folder{"x.ovillo": `use "a"`, "a": "let b = \n"}, "OV123", ""},
		"large":       {folder{"x.ovillo": `use "a"`, "a": strings.Repeat("#"+strings.Repeat(" ", 126)+"\n", MostBytes/128)}, "OV109", ""},
		"too large":   {folder{"x.ovillo": `use "a"`, "a": strings.Repeat("#"+strings.Repeat(" ", 126)+"\n", MostBytes/128+1)}, "OV101", ""},
		"many":        {many, "OV161", `"bg"`},
		"deep":        {deep, "OV161", `"ai"`},
	} {
		t.Run(name, func(t *testing.T) {
			tree, found := load("x.ovillo", c.files)
			if codesIn(found) != c.want {
				t.Fatalf("found %q, want %q: %s", codesIn(found), c.want, listed(found))
			}
			for _, d := range found {
				complete(t, d)
			}
			if len(found) > 0 && c.text != "" && tree.Source.Slice(found[0].Span) != c.text {
				t.Errorf("it is said of %q, want %q", tree.Source.Slice(found[0].Span), c.text)
			}
		})
	}
	if _, found := Load(source.NewFile("<stdin>", `use "a"`), nil); codesIn(found) != "OV108" {
		t.Errorf("without files: %s", listed(found))
	}
	_, found := load("x.ovillo", folder{"x.ovillo": `use "a"`, "a": `use "b"`, "b": `use "a"`})
	if got := found[0].Args["chain"]; got != `"a" → "b" → "a"` {
		t.Errorf("the circle is %q", got)
	}
}

// A file is read in its own words, whichever they are, and the trees are the same.
func TestUsedInAnotherLanguage(t *testing.T) {
	body := "gauge 10 cm\n  dc 18 sts, 10 rows\nend\nstitch concha\n  takes 1, makes 3, tall as dc\n  name en \"shell\" es \"concha\"\n" +
		"  en | Work {dc}.\n  es | Tejer {dc}.\nend\nlet ancho = 40\n"
	there, err := Reword(source.NewFile("", body), "es-MX")
	if err != nil {
		t.Fatal(err)
	}
	inUK, err := Reword(source.NewFile("", "pattern p\n  terms uk\nend\n"+body), "es-MX")
	if err != nil {
		t.Fatal(err)
	}
	_, inUK, _ = strings.Cut(inUK, "fin\n")
	for name, c := range map[string]struct{ head, one, other string }{
		"us": {"", body, there},
		"uk": {"pattern p\n  terms uk\nend\n", body, "idioma es-MX\n" + inUK},
	} {
		main := c.head + "use \"a\"\npart p\n  chain ancho\n  row: concha in each\nend\n"
		one, found := load("x", folder{"x": main, "a": c.one})
		if len(found) > 0 {
			t.Fatal(listed(found))
		}
		other, found := load("x", folder{"x": main, "a": c.other})
		if len(found) > 0 {
			t.Fatal(listed(found))
		}
		if at, same := sameMeaning(one, other); !same {
			t.Errorf("%s: the trees part at %q", name, one.Source.Slice(at))
		}
	}
	spanish, err := Reword(source.NewFile("", "part p\n  chain 40\n  row: concha in each\nend\n"), "es")
	if err != nil {
		t.Fatal(err)
	}
	tree, found := load("x", folder{"x": "idioma es\nusar \"a\"\n" + strings.TrimPrefix(spanish, "idioma es\n"), "a": body})
	if len(found) > 0 || tree.At(source.Span{}).Coder() == nil || tree.At(tree.Body[1].Head).Coder() != nil {
		t.Errorf("an English file in a Spanish source: %s", listed(found))
	}
}

// Whatever stands in two files, they are read, each place lies in one of them, and nothing is read but what was asked for.
func FuzzLoad(f *testing.F) {
	f.Add("use \"a\"\nlet x = y\n", "let y = 4\nnote\n  en | {y}\nend\n")
	f.Add("idioma es\nusar \"a\"\nusar \"../a\"", "use \"b\"\npart p\nend\n")
	f.Add("use \"b\"\nuse \"a\"\n", "yarn s\n name en \"ñ\"\nidioma es")
	f.Fuzz(func(t *testing.T, one, other string) {
		files := folder{"x": one, "a": other, "b": one}
		asked := map[string]bool{}
		tree, found := Load(source.NewFile("x", one), func(name string) ([]byte, error) {
			if !fs.ValidPath(name) {
				t.Fatalf("%q is asked for", name)
			}
			asked[name] = true
			return files.open(name)
		})
		for name := range asked {
			if !slices.Contains(tree.Used(), name) {
				t.Errorf("%q was read in silence", name)
			}
		}
		end := int32(len(one))
		for _, u := range tree.UsedFiles() {
			end += 1 + int32(len(u.Text))
		}
		in := func(s source.Span, what string) {
			if s.Start < 0 || s.End > end+1 || s.Start > s.End {
				t.Fatalf("%s at %v of %d", what, s, end)
			}
			if file, at := tree.Source.Within(s); int(at.Start) > len(file.Text) {
				t.Fatalf("%s at %v is behind the end of its file", what, s)
			}
		}
		for _, d := range found {
			in(d.Span, string(d.Code))
			diag.Message(d, "en")
		}
		WalkStatements(tree.Body, func(s *Statement) bool { in(s.Whole, "a statement"); return true })
		Walk(tree, func(n Node) bool { in(n.Span(), "a node"); return true })
		var b strings.Builder
		if err := (diag.Printer{Lang: "es", CodeAt: tree.CoderAt()}).Text(&b, tree.Source, found); err != nil {
			t.Fatal(err)
		}
	})
}
