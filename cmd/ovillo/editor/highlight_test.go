package editor

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"

	"ovillo/cmd/ovillo/browser"
	"ovillo/compile"
	"ovillo/lang"
	"ovillo/lang/source"
)

// stretch is a piece of a line with its scopes. Places count in UTF-16.
type stretch struct {
	From   int      `json:"from"`
	To     int      `json:"to"`
	Scopes []string `json:"scopes"`
}

// highlighted has vscode-textmate, the reader of grammars of a widely used editor, read the lines of some texts.
func highlighted(t *testing.T, texts []string) [][][]stretch {
	node, err := exec.LookPath("node")
	if err != nil {
		if os.Getenv("CI") != "" {
			t.Fatal("needs node")
		}
		t.Skip("needs node")
	}
	in, err := json.Marshal(texts)
	require.NoError(t, err)
	cmd := exec.Command(node, "testdata/scopes.js", grammarFile, browser.Package(t, "vscode-textmate"), browser.Package(t, "vscode-oniguruma"))
	cmd.Stdin = bytes.NewReader(in)
	var said bytes.Buffer
	cmd.Stderr = &said
	out, err := cmd.Output()
	require.NoError(t, err, said.String())
	var lines [][][]stretch
	require.NoError(t, json.Unmarshal(out, &lines))
	return lines
}

// scopesAt are the innermost scopes at a byte of a line.
func scopesAt(line string, all []stretch, at int) []string {
	unit := len(utf16.Encode([]rune(line[:at])))
	for _, s := range all {
		if s.From <= unit && unit < s.To {
			return s.Scopes
		}
	}
	return nil
}

func has(scopes []string, prefix string) bool {
	return slices.ContainsFunc(scopes, func(s string) bool { return strings.HasPrefix(s, prefix) })
}

// TestHighlighting compares what the grammar makes of every source with what the parser of the language makes of it, token by token.
func TestHighlighting(t *testing.T) {
	var names, texts []string
	for _, pattern := range []string{"../../../examples/*.ovillo", "../../../testdata/cases/*.ovillo"} {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		for _, f := range files {
			b, err := os.ReadFile(f)
			require.NoError(t, err)
			names, texts = append(names, f), append(texts, string(b))
		}
	}
	require.Greater(t, len(texts), 30)
	lines := highlighted(t, texts)
	seen := map[string]int{}
	for i, text := range texts {
		file := source.NewFile(names[i], text)
		tree, _ := lang.Parse(source.NewFile(names[i], text))
		expect := func(at int32, kind string, want ...string) {
			n := file.Line(at)
			line := file.LineText(n)
			scopes := scopesAt(line, lines[i][n-1], int(at-file.LineStart(n)))
			seen[kind]++
			if !slices.ContainsFunc(want, func(w string) bool { return has(scopes, w) }) {
				t.Errorf("%s:%d: %s %q has %v, not %s", names[i], n, kind, line, scopes, want)
			}
		}
		for _, tok := range lang.Tokens(text) {
			at := tok.Span.Start
			switch tok.Kind {
			case lang.Comment:
				expect(at, "comment", "comment.line")
			case lang.Quoted:
				expect(at, "text", "string.quoted")
			case lang.Prosaic:
				expect(at, "prose", "markup.other.prose")
			case lang.Number:
				line := file.LineText(file.Line(at))
				if before := text[:at]; !strings.HasSuffix(before, ".") && !strings.Contains(line, "|") {
					expect(at, "number", "constant.numeric")
				}
			case lang.Word:
				if tree.Coder() == nil && lang.Reserved(tok.Text(text)) && !strings.HasSuffix(text[:at], ".") {
					expect(at, "word", "keyword.", "storage.type", "support.function.value")
				}
			}
		}
		lang.Walk(tree, func(n lang.Node) bool {
			switch n := n.(type) {
			case *lang.Work:
				if n.Stitch != nil {
					if _, ok := compile.StitchNamed(n.Stitch.Text, false); ok {
						expect(n.Stitch.Span().Start, "stitch", "support.function.stitch")
					}
				}
			case *lang.As:
				if n.Name != nil {
					expect(n.Name.Span().Start, "label", "entity.name.label")
				}
			case *lang.Part:
				expect(n.Name.Span().Start, "part", "entity.name.type")
			case *lang.Let:
				expect(n.Name.Span().Start, "value", "entity.name.variable")
			}
			return true
		})
	}
	for _, kind := range []string{"comment", "text", "prose", "number", "word", "stitch", "label", "part", "value"} {
		if seen[kind] < 20 {
			t.Errorf("only %d of %s", seen[kind], kind)
		}
	}
	t.Log(fmt.Sprint(seen))
}

// TestEveryWordIsHighlighted: each word of the language, in both, is one wherever it stands alone.
func TestEveryWordIsHighlighted(t *testing.T) {
	var words []string
	for _, w := range append(lang.Words(), lang.WordsIn("es")...) {
		if w != "the" && w != "" {
			words = append(words, w)
		}
	}
	require.Greater(t, len(words), 350)
	lines := highlighted(t, []string{"( " + strings.Join(words, "\n( ") + "\n( nothing"})[0]
	for i, w := range words {
		scopes := scopesAt("( "+w, lines[i], 2)
		if !has(scopes, "keyword.") && !has(scopes, "support.function.stitch") {
			t.Errorf("%s has %v", w, scopes)
		}
	}
	if last := scopesAt("( nothing", lines[len(words)], 2); has(last, "keyword.") {
		t.Errorf("a name has %v", last)
	}
	// A quote that is not closed ends with its line.
	open := highlighted(t, []string{"title en \"a\nround: dc in each"})[0]
	require.True(t, has(scopesAt(`title en "a`, open[0], 9), "invalid.illegal"))
	require.True(t, has(scopesAt("round: dc in each", open[1], 0), "keyword."))
}
