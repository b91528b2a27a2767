package lsp

import (
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
)

func TestDefinition(t *testing.T) {
	text := example(t, "marisma-leggings")
	c := opened(t, text, Options{})
	for _, x := range []struct {
		at    string
		n     int
		where []string // what stands where it is set
	}{
		{"leg, mark m2", 1, []string{"leg         = (around"}},
		{"m3 as front", 1, []string{"m3, leg, mark m4"}},
		{"right_gap\n  round first", 1, []string{"right_gap, skip to m2"}},
		{"front.1, dc beside", 1, []string{"front,\n    ch 4"}},
		{"kelp\n  hook 3.25 mm\n  in joined", 1, []string{"kelp like sand"}},
		{"waistband.foundation", 1, []string{"waistband\n  title"}},
		{"right_leg\n  title en \"Left", 1, []string{"right_leg\n  title en \"Right"}},
		{"divide    en", 1, []string{"divide:\n"}},
		{"inseam - 5 cm", 1, []string{"inseam 25 (30"}},
		{"rise + inseam equals", 1, []string{"rise   en"}},
		{"first:", 2, []string{"first:\n    4 dc in body.right_gap"}}, // two parts that are alike set one name
	} {
		var got []Location
		c.ask("textDocument/definition", where(at(text, x.at, x.n)), &got)
		var want []Location
		for _, w := range x.where {
			word := w[:strings.IndexFunc(w, func(r rune) bool { return !strings.ContainsRune("abcdefghijklmnopqrstuvwxyz_0123456789", r) })]
			from := at(text, w, 1)
			want = append(want, Location{testURI, Range{from, Position{from.Line, from.Character + len(word)}}})
		}
		require.Equal(t, want, got, x.at)
	}
	var none []Location
	c.ask("textDocument/definition", where(at(text, "in joined rounds", 1)), &none)
	require.Empty(t, none)
}

func TestReferences(t *testing.T) {
	text := example(t, "duna-hat") // in Spanish
	c := opened(t, text, Options{})
	tree, _ := lang.Parse(source.NewFile("", text))
	x := newIndex(tree)
	for k, sets := range x.sets {
		if k.scope != ofSource || x.uses[sets[0]].kind != aVariable {
			continue
		}
		var got []Location
		more := where(newText(text, utf16Encoding).position(int(x.uses[sets[0]].span.Start)))
		more["context"] = map[string]any{"includeDeclaration": true}
		c.ask("textDocument/references", more, &got)
		// In these sources a value has a name that is no other word: each place where it stands is one of it.
		count := 0
		for _, tok := range lang.Tokens(text) {
			if tok.Text(text) == k.name {
				count++
			}
		}
		require.GreaterOrEqual(t, len(got), count, k.name)
	}
}

// sources are all examples and worked cases, by name.
func sources(tb testing.TB) map[string]string {
	out := map[string]string{}
	for _, dir := range []string{"../../../examples", "../../../testdata/cases"} {
		files, err := filepath.Glob(filepath.Join(dir, "*.ovillo"))
		require.NoError(tb, err)
		for _, f := range files {
			b, err := os.ReadFile(f)
			require.NoError(tb, err)
			out[filepath.Base(f)] = string(b)
		}
	}
	require.Greater(tb, len(out), 30)
	return out
}

// TestRenamedSaysTheSame gives a random name of each source a new one, and compares the checked patterns number by number: nothing is
// different but that name. Source of the comparison: the checker, which knows nothing of the index of names.
func TestRenamedSaysTheSame(t *testing.T) {
	all := sources(t)
	var names []string
	for n := range all {
		names = append(names, n)
	}
	slices.Sort(names)
	type one struct {
		text string
		x    *index
		was  *plan.Pattern
		keys []key
	}
	known := map[string]*one{}
	for _, n := range names {
		tree, _ := lang.Parse(source.NewFile("", all[n]))
		o := &one{text: all[n], x: newIndex(tree), was: check(all[n]).Pattern}
		for k := range o.x.sets {
			if k.scope != ofWearer && k.scope != ofMeasure {
				o.keys = append(o.keys, k)
			}
		}
		slices.SortFunc(o.keys, func(a, b key) int { return strings.Compare(a.scope+"."+a.name, b.scope+"."+b.name) })
		known[n] = o
	}
	kinds := map[nameKind]int{}
	rapid.Check(t, func(t *rapid.T) {
		o := known[rapid.SampledFrom(names).Draw(t, "source")]
		if len(o.keys) == 0 {
			return
		}
		k := rapid.SampledFrom(o.keys).Draw(t, "name")
		fresh := rapid.StringMatching(`q[a-zñ]{3}_[0-9]`).Draw(t, "new")
		body := o.text
		for _, i := range slices.Backward(o.x.all[k]) {
			s := o.x.uses[i].span
			body = body[:s.Start] + fresh + body[s.End:]
		}
		now := check(body)
		if now.Found.HasErrors() {
			t.Fatalf("%v: %v\n%s", k, now.Found, body)
		}
		if d := unlike(reflect.ValueOf(o.was), reflect.ValueOf(now.Pattern), k.name, fresh); d != "" {
			t.Fatalf("%v: %s\n%s", k, d, body)
		}
		kinds[o.x.kindOf(k)]++
	})
	t.Log(kinds)
	require.GreaterOrEqual(t, len(kinds), 7)
}

// unlike says where two patterns differ but for a name and for places in the source; "" if they do not.
func unlike(a, b reflect.Value, old, fresh string) string {
	if a.Kind() != b.Kind() {
		return fmt.Sprintf("%v, %v", a.Kind(), b.Kind())
	}
	switch a.Kind() {
	case reflect.Pointer, reflect.Interface:
		if a.IsNil() || b.IsNil() {
			if a.IsNil() != b.IsNil() {
				return "one is missing"
			}
			return ""
		}
		return unlike(a.Elem(), b.Elem(), old, fresh)
	case reflect.Struct:
		if a.Type() == reflect.TypeFor[source.Span]() {
			return ""
		}
		for i := range a.NumField() {
			if name := a.Type().Field(i).Name; name != "Source" || a.Type() != reflect.TypeFor[plan.Pattern]() {
				if d := unlike(a.Field(i), b.Field(i), old, fresh); d != "" {
					return name + ": " + d
				}
			}
		}
	case reflect.Slice, reflect.Array:
		if a.Len() != b.Len() {
			return fmt.Sprintf("%d, %d", a.Len(), b.Len())
		}
		for i := range a.Len() {
			if d := unlike(a.Index(i), b.Index(i), old, fresh); d != "" {
				return fmt.Sprintf("%d: %s", i, d)
			}
		}
	case reflect.Map:
		if a.Len() != b.Len() {
			return fmt.Sprintf("%d, %d keys", a.Len(), b.Len())
		}
		for _, k := range a.MapKeys() {
			other := k
			if k.Kind() == reflect.String {
				other = reflect.ValueOf(renamedIn(k.String(), old, fresh)).Convert(k.Type())
			}
			if !b.MapIndex(other).IsValid() {
				return fmt.Sprintf("no key %v", other)
			}
			if d := unlike(a.MapIndex(k), b.MapIndex(other), old, fresh); d != "" {
				return fmt.Sprintf("%v: %s", k, d)
			}
		}
	case reflect.String:
		if a.String() != b.String() && renamedIn(a.String(), old, fresh) != b.String() {
			return fmt.Sprintf("%q, %q", a.String(), b.String())
		}
	default:
		if !a.Equal(b) {
			return fmt.Sprintf("%v, %v", a, b)
		}
	}
	return ""
}

// renamedIn is a text with a name changed in it: alone, in a path, in the plural or between braces.
func renamedIn(s, old, fresh string) string {
	var b strings.Builder
	for _, tok := range lang.Tokens(s) {
		switch word := tok.Text(s); {
		case word == old:
			b.WriteString(fresh)
		case tok.Kind == lang.Prosaic || tok.Kind == lang.Comment:
			b.WriteString(strings.ReplaceAll(word, old, fresh))
		default:
			b.WriteString(word)
		}
	}
	return b.String()
}

func TestRename(t *testing.T) {
	text := example(t, "marisma-leggings")
	c := opened(t, text, Options{})
	var edit WorkspaceEdit
	more := where(at(text, "bridge      =", 1))
	more["newName"] = "puente"
	c.ask("textDocument/rename", more, &edit)
	require.Equal(t, strings.NewReplacer("bridge      =", "puente      =", "2 * bridge)", "2 * puente)", "bridge / 2", "puente / 2", "mark m2, bridge,", "mark m2, puente,",
		"2 * bridge dc", "2 * puente dc").Replace(text), applied(t, text, edit.Changes[testURI]))
	var ready struct{ Placeholder string }
	c.ask("textDocument/prepareRename", more, &ready)
	require.Equal(t, "bridge", ready.Placeholder)
	for name, x := range map[string]struct {
		at   string
		want string
	}{
		"round":      {"bridge      =", "word of the language"},
		"dc":         {"bridge      =", "stitch"},
		"leg":        {"bridge      =", "line 52"},
		"2x":         {"bridge      =", "one word"},
		"two words":  {"bridge      =", "one word"},
		"around_hip": {"hips   en", "measure"},
		"left":       {"right,", "line"},
		"anything":   {"in joined", "no name"},
	} {
		more := where(at(text, x.at, 1))
		more["newName"], more["textDocument"] = name, map[string]any{"uri": testURI}
		m := c.answer(c.send("textDocument/rename", more))
		require.NotNil(t, m.Error, name)
		require.Contains(t, m.Error.Message, x.want, name)
		require.Equal(t, requestFailed, m.Error.Code)
	}
	// A name that means something in the language that the source is written in.
	spanish := example(t, "duna-hat")
	tree, _ := lang.Parse(source.NewFile("", spanish))
	for _, u := range newIndex(tree).uses {
		if u.sets && u.kind == aVariable {
			c := opened(t, spanish, Options{Lang: "es"})
			more := where(newText(spanish, utf16Encoding).position(int(u.span.Start)))
			more["newName"], more["textDocument"] = "vuelta", map[string]any{"uri": testURI}
			m := c.answer(c.send("textDocument/rename", more))
			require.NotNil(t, m.Error)
			require.Contains(t, m.Error.Message, "lenguaje")
			return
		}
	}
	t.Fatal("no value in the source")
}
