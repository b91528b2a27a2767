package main

import (
	"go/ast"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

func TestParseArgs(t *testing.T) {
	for _, c := range []struct {
		line    string
		command string
		args    []string
		flags   map[string]string
		wrong   text
	}{
		{line: "check a b", command: "check", args: []string{"a", "b"}},
		{line: "--messages es check a", command: "check", args: []string{"a"}, flags: map[string]string{"--messages": "es"}},
		{line: "check a --messages=es", command: "check", args: []string{"a"}, flags: map[string]string{"--messages": "es"}},
		{line: "check --json a --messages en", command: "check", args: []string{"a"}, flags: map[string]string{"--messages": "en", "--json": ""}},
		{line: "--json check -", command: "check", args: []string{"-"}, flags: map[string]string{"--json": ""}},
		{line: "check -- --json", command: "check", args: []string{"--json"}},
		{line: "check -h", command: "check", flags: map[string]string{"--help": ""}},
		{line: "", command: ""},
		{line: "-- check --json", command: "check", args: []string{"--json"}},
		{line: "check --gauge a --gauge=b c", command: "check", args: []string{"c"}, flags: map[string]string{"--gauge": "a;b"}},
		{line: "fmt --write a", command: "fmt", args: []string{"a"}, flags: map[string]string{"-w": ""}},
		{line: "build -o - a", command: "build", args: []string{"a"}, flags: map[string]string{"-o": "-"}},
		{line: "build -o=x a", command: "build", args: []string{"a"}, flags: map[string]string{"-o": "x"}},
		{line: "build --output=x a", command: "build", args: []string{"a"}, flags: map[string]string{"-o": "x"}},
		{line: "build -o= a", command: "build", wrong: msgFlagValue},
		{line: "knit a", command: "", wrong: msgNoCommand},
		{line: "chek a", command: "", wrong: msgNoCommandNear},
		{line: "check --colour a", command: "check", wrong: msgNoFlag},
		{line: "check --jsn a", command: "check", wrong: msgNoFlagNear},
		{line: "check -q a", command: "check", wrong: msgNoFlag},
		{line: "check -ñ a", command: "check", wrong: msgNoFlag},
		{line: "check ---json a", command: "check", wrong: msgNoFlag},
		{line: "check --=x a", command: "check", wrong: msgNoFlag},
		{line: "check --json=yes a", command: "check", wrong: msgFlagNoValue},
		{line: "check a --messages", command: "check", wrong: msgFlagValue},
		{line: "check a --messages fr", command: "check", wrong: msgFlagChoice},
		{line: "check a --json --json", command: "check", wrong: msgFlagTwice},
		{line: "explain --json", command: "explain", wrong: msgNotHere},
	} {
		got, wrong := parseArgs(strings.Fields(c.line))
		name := ""
		if got.command != nil {
			name = got.command.name
		}
		if name != c.command {
			t.Errorf("%q: command %q, want %q", c.line, name, c.command)
		}
		switch {
		case wrong != nil && wrong.text != c.wrong:
			t.Errorf("%q: refused with %q", c.line, wrong.in("en"))
		case wrong == nil && c.wrong != text{}:
			t.Errorf("%q: not refused", c.line)
		case wrong == nil && (!slices.Equal(got.args, c.args) || !maps.Equal(got.flags, c.flags)):
			t.Errorf("%q: args %q, flags %q", c.line, got.args, got.flags)
		}
	}
}

// unlikeFlags are the flags that may take other values in one command than in another, each with its reason. Their values are looked
// up when the command is known.
var unlikeFlags = map[string]string{
	"--format": "a report can be JSON, a list of corrections Markdown, and a pattern a web page; nothing can be all of them",
	"--paper":  "an editor's sheets are read at a desk: no telephone, no half sheet",
}

// Flags are looked up before the command is known, so one name cannot be a switch and take a value; and what is called alike is meant
// alike.
func TestFlagsAgree(t *testing.T) {
	first, unlike := map[string]flagDef{}, map[string]bool{}
	for _, c := range append(commands(), &command{name: "everywhere", flags: everywhere}) {
		for _, f := range c.flags {
			was, ok := first[f.name]
			if !ok {
				first[f.name], was = f, f
			}
			if (was.value == "") != (f.value == "") {
				t.Errorf("%s: %s is a switch here or elsewhere, and not both", c.name, f.name)
			}
			if was.value != f.value {
				unlike[f.name] = true
				if unlikeFlags[f.name] == "" {
					t.Errorf("%s: %s takes %q here and %q elsewhere", c.name, f.name, f.value, was.value)
				}
				if f.allowed == nil || was.allowed == nil {
					t.Errorf("%s: nothing says which values %s may have", c.name, f.name)
				}
			}
			if !regexp.MustCompile(`^(-[a-z]|--[a-z]{2,})$`).MatchString(f.name) {
				t.Errorf("%s: %s is not written as a flag", c.name, f.name)
			}
		}
	}
	for name := range unlikeFlags {
		if !unlike[name] {
			t.Errorf("%s takes the same everywhere: take the exception out", name)
		}
	}
}

// A flag that is a letter has a word beside it, and no two flags share one.
func TestFlagNames(t *testing.T) {
	seen := map[string]string{}
	for _, f := range allFlags() {
		word, letter := f.names()
		if word == "" {
			t.Errorf("%s has no word in otherNames", f.name)
		}
		for _, n := range []string{word, letter} {
			if other := seen[n]; n != "" && other != "" {
				t.Errorf("%s and %s are both %s", f.name, other, n)
			}
			seen[n] = f.name
		}
	}
}

// FuzzParseArgs reads any line: what is wrong with it is said in words of ours, of which each language has its own.
func FuzzParseArgs(f *testing.F) {
	for _, line := range []string{"check a --json", "chek", "-h", "build -o= a", "--\x00--", "fmt -wl a", "--messages=es --x", "-ñ", "---", "--=", "help --help=1",
		"check --gauge", "-test.v", "__complete ch"} {
		f.Add(line)
	}
	f.Fuzz(func(t *testing.T, line string) {
		c, wrong := parseArgs(strings.Fields(line))
		if wrong == nil {
			for name := range c.flags {
				if c.command.takes(name) == nil {
					t.Errorf("%q: %s is no flag", line, name)
				}
			}
			return
		}
		if wrong.text == whySystem || wrong.in("en") == wrong.in("es") {
			t.Errorf("%q: said by the library: %s", line, wrong.in("es"))
		}
	})
}

func TestMessageLanguage(t *testing.T) {
	for _, c := range []struct {
		flag string
		env  map[string]string
		want string
	}{
		{"", nil, "en"},
		{"", map[string]string{"LANG": "es_ES.UTF-8"}, "es"},
		{"", map[string]string{"LANG": "es"}, "es"},
		{"", map[string]string{"LANG": "ES_mx"}, "es"},
		{"", map[string]string{"LANG": "eu_ES.UTF-8"}, "en"},
		{"", map[string]string{"LANG": "C.UTF-8"}, "en"},
		{"", map[string]string{"LANG": "es_ES", "LC_ALL": "en_US"}, "en"},
		{"", map[string]string{"LANG": "en_US", "LC_MESSAGES": "es_AR"}, "es"},
		{"en", map[string]string{"LANG": "es_ES"}, "en"},
		{"es", nil, "es"},
		{"fr", map[string]string{"LANG": "es_ES"}, "es"},
	} {
		if got := messageLanguage(c.flag, func(k string) string { return c.env[k] }); got != c.want {
			t.Errorf("flag %q, environment %v: %s, want %s", c.flag, c.env, got, c.want)
		}
	}
}

// TestTexts reads every text literal of the command: both languages are there, and ask for the same holes.
func TestTexts(t *testing.T) {
	files, set := moduleFiles(t, 0)
	holes := func(s string) []string {
		found := regexp.MustCompile(`\{\w+\}`).FindAllString(s, -1)
		slices.Sort(found)
		return slices.Compact(found)
	}
	n := 0
	for _, f := range files {
		if f.pkg != "cmd/ovillo" || f.test {
			continue
		}
		ast.Inspect(f.ast, func(node ast.Node) bool {
			lit, ok := node.(*ast.CompositeLit)
			if !ok {
				return true
			}
			if id, ok := lit.Type.(*ast.Ident); !ok || id.Name != "text" {
				return true
			}
			n++
			if len(lit.Elts) != 2 {
				t.Errorf("%s: %d languages", set.Position(lit.Pos()), len(lit.Elts))
				return true
			}
			en, es := literal(lit.Elts[0]), literal(lit.Elts[1])
			if (en == "") != (es == "") || !slices.Equal(holes(en), holes(es)) {
				t.Errorf("%s: the languages differ: %q and %q", set.Position(lit.Pos()), en, es)
			}
			return true
		})
	}
	if n < 20 {
		t.Errorf("only %d texts found", n)
	}
}

// literal gives the text of a string literal, or of several that are added.
func literal(e ast.Expr) string {
	switch e := e.(type) {
	case *ast.BasicLit:
		s, _ := strconv.Unquote(e.Value)
		return s
	case *ast.BinaryExpr:
		return literal(e.X) + literal(e.Y)
	}
	return ""
}
