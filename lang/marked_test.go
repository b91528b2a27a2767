package lang

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ovillo/lang/diag"
)

// Whatever is code in the catalogue of messages is marked as such, {=…}, so that it can be printed in the words that a source
// is written in. These tests look for code that is not.

// languageWords are the words that the parser knows: those of the table of classes, those that begin a line, those in the
// tags of the tree and those that a Parse method asks for.
func languageWords(t *testing.T) map[string]bool {
	words := map[string]bool{}
	for w := range classes {
		words[w] = true
	}
	for _, w := range allLineWords() {
		words[w] = true
	}
	quoted := regexp.MustCompile(`'([a-z]+)'`)
	names, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.Field:
				if n.Tag != nil {
					for _, m := range quoted.FindAllStringSubmatch(n.Tag.Value, -1) {
						words[m[1]] = true
					}
				}
			case *ast.CallExpr:
				if f, ok := n.Fun.(*ast.SelectorExpr); ok && slices.Contains([]string{"take", "word", "oneOf", "want"}, f.Sel.Name) {
					for _, arg := range n.Args {
						if l, ok := arg.(*ast.BasicLit); ok {
							words[strings.Trim(l.Value, `"`)] = true
						}
					}
				}
			}
			return true
		})
	}
	if len(words) < 200 {
		t.Fatalf("only %d words of the language found", len(words))
	}
	return words
}

// bothLanguages are words of the language that are Spanish words as well, or signs of units in every language.
var bothLanguages = strings.Fields("no base plan sale cm mm g kg m x")

// texts gives every text of a wording a name.
func texts(w diag.Wording) map[string]string {
	m := map[string]string{"message": w.Message, "mark": w.Mark, "explain": w.Explain}
	for k, v := range w.Related {
		m["related "+k] = v
	}
	for k, v := range w.Help {
		m["help "+k] = v
	}
	return m
}

// parted divides a template into its prose, with | for every hole and passage, and its passages of code.
func parted(template string) (prose string, code []string) {
	var b strings.Builder
	for i := 0; i < len(template); i++ {
		rest := template[i:]
		switch {
		case strings.HasPrefix(rest, "{="):
			end := closing(rest)
			code = append(code, rest[2:end])
			b.WriteString(" | ")
			i += end
		case strings.HasPrefix(rest, "{{"):
			b.WriteString("{")
			i++
		case rest[0] == '{': // of a hole the name falls away, and its forms are prose
			i += strings.IndexAny(rest[1:], "|}")
			b.WriteString(" ")
		default:
			b.WriteByte(rest[0])
		}
	}
	return b.String(), code
}

// closing is the index of the brace that closes the one at the beginning.
func closing(s string) int {
	depth := 0
	for i := range len(s) {
		switch s[i] {
		case '{':
			depth++
		case '}':
			if depth--; depth == 0 {
				return i
			}
		}
	}
	return len(s)
}

var (
	proseWords = regexp.MustCompile(`[\pL_][\pL\d_.]*[\pL\d_]|[\pL_]`)
	calls      = regexp.MustCompile(`\b(stitches|rows|repeats|length|whole|min|max)\(`)
)

// unmarkedSpanish lists the words of the language in a Spanish text that are not marked as code.
func unmarkedSpanish(template string, words map[string]bool) []string {
	prose := proseOf(template)
	var out []string
	for _, w := range proseWords.FindAllString(prose, -1) {
		if (words[w] || isStitchWord(w)) && !slices.Contains(bothLanguages, w) {
			out = append(out, w)
		}
	}
	return out
}

// printedForms are stitches in prose that is about the printed forms of the trade, or about the texts of a pattern.
var printedForms = []string{`“sc 5” and “5 sc”`, `“*sc 3, inc; repeat from * around”`, `: dc in a text`, `: dc en un texto`, `{dc}`}

// foreign are stretches of other languages: links in the texts of a pattern, commands to type.
var foreign = regexp.MustCompile(`\[[^]]*\]\(https?:[^)]*\)|[“«]ovillo [^”»]*[”»]`)

// proseOf is the prose of a template, without the printed forms, links and commands it speaks of.
func proseOf(template string) string {
	prose, _ := parted(template)
	prose = foreign.ReplaceAllString(prose, "")
	for _, p := range printedForms {
		prose = strings.ReplaceAll(prose, p, "")
	}
	return prose
}

// unmarkedEnglish lists what can only be code in an English text and is not marked: the abbreviations of stitches, square brackets,
// calls. Other words of the language are words of prose as well.
func unmarkedEnglish(template string) []string {
	prose := proseOf(template)
	out := calls.FindAllString(prose, -1)
	for _, w := range proseWords.FindAllString(prose, -1) {
		if isStitchWord(w) || w == "ch" || w == "sts" || w == "sl" {
			out = append(out, w)
		}
	}
	if i := strings.IndexAny(prose, "[]"); i >= 0 {
		out = append(out, prose[i:i+1])
	}
	return out
}

// unmarkedTwin lists what is marked in the Spanish text and stands in the English one as prose alone.
func unmarkedTwin(en, es string, words map[string]bool) []string {
	prose, code := parted(en)
	_, other := parted(es)
	var out []string
	for _, p := range other {
		if !slices.ContainsFunc(proseWords.FindAllString(p, -1), func(w string) bool { return words[w] || isStitchWord(w) }) {
			continue // the name of an example
		}
		if slices.Contains(code, p) || strings.HasPrefix(p, "{") && strings.HasSuffix(p, "}") && len(code) >= len(other) {
			continue
		}
		if regexp.MustCompile(`(^|\PL)` + regexp.QuoteMeta(p) + `($|\PL)`).MatchString(prose) {
			out = append(out, p)
		}
	}
	return out
}

// TestCodeIsMarked looks for code that is not marked in the texts of every message.
func TestCodeIsMarked(t *testing.T) {
	words := languageWords(t)
	passages := 0
	for _, e := range diag.All() {
		en, es := texts(e.En), texts(e.Es)
		for _, key := range slices.Sorted(maps.Keys(es)) {
			if w := unmarkedSpanish(es[key], words); len(w) > 0 {
				t.Errorf("%s: the Spanish %s says %q outside {=…}: %s", e.Code, key, w, es[key])
			}
			if w := unmarkedEnglish(en[key]); len(w) > 0 {
				t.Errorf("%s: the English %s says %q outside {=…}: %s", e.Code, key, w, en[key])
			}
			if w := unmarkedTwin(en[key], es[key], words); len(w) > 0 {
				t.Errorf("%s: the English %s says %q outside {=…}, which the Spanish one marks: %s", e.Code, key, w, en[key])
			}
			_, code := parted(es[key])
			passages += len(code)
		}
	}
	if passages < 300 {
		t.Errorf("only %d passages of code in all messages", passages)
	}
}

// TestUnmarked tries the look-out on texts that have what it must find, and on texts that have not.
func TestUnmarked(t *testing.T) {
	words := languageWords(t)
	for text, want := range map[string]string{
		"escribir {=end} antes de end":                  "end",
		"dar un nombre con group":                       "group",
		"un punto, como dc3tog o fpdc":                  "dc3tog fpdc",
		"el bloque {=measure}, con {=let {name} = 20}":  "",
		"{n|una vez|{n} times}":                         "times",
		"no hay base, plan ni 10 cm; {={near|or}} o no": "",
		"en el cuello {where}":                          "",
	} {
		if got := strings.Join(unmarkedSpanish(text, words), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	for text, want := range map[string]string{
		"write {=sc in next} or dc":           "dc",
		"repeats stand in brackets: [ … ]":    "[",
		"turn it into stitches(2 cm, dc)":     "stitches( dc",
		"a row of stitches, {=[ch 1] around}": "",
	} {
		if got := strings.Join(unmarkedEnglish(text), " "); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	if got := unmarkedTwin("add a measure block", "añadir un bloque {=measure}", words); len(got) != 1 {
		t.Errorf("a word marked in Spanish alone: %q", got)
	}
	if got := unmarkedTwin("count it off", "contarlo con {=count off}", words); len(got) != 0 {
		t.Errorf("a word that English says in its own way: %q", got)
	}
}
