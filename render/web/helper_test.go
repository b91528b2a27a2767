package web

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ovillo/compile"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/words"
)

// examples are the names of all examples.
func examples(t testing.TB) []string {
	t.Helper()
	paths, err := filepath.Glob(filepath.Join("..", "..", "examples", "*.ovillo"))
	require.NoError(t, err)
	require.NotEmpty(t, paths)
	var out []string
	for _, p := range paths {
		out = append(out, strings.TrimSuffix(filepath.Base(p), ".ovillo"))
	}
	return out
}

// example checks an example.
func example(t testing.TB, name string) *plan.Pattern {
	t.Helper()
	folder := filepath.Join("..", "..", "examples")
	data, err := os.ReadFile(filepath.Join(folder, name+".ovillo"))
	require.NoError(t, err)
	return checked(t, name, string(data), func(file string) ([]byte, error) { return os.ReadFile(filepath.Join(folder, file)) })
}

func checked(t testing.TB, name, text string, open func(string) ([]byte, error)) *plan.Pattern {
	t.Helper()
	tree, found := lang.Parse(source.NewFile(name, text))
	require.False(t, found.HasErrors(), name)
	out := compile.CompileWith(tree, compile.Options{Open: open})
	require.False(t, out.Found.HasErrors(), name)
	return out.Pattern
}

func speakers(t testing.TB, tags ...string) []*words.Language {
	t.Helper()
	var out []*words.Language
	for _, tag := range tags {
		l, err := words.For(tag)
		require.NoError(t, err)
		out = append(out, l)
	}
	return out
}

// written is a pattern as a page in both languages.
func written(t testing.TB, p *plan.Pattern, o Options) string {
	t.Helper()
	if o.Langs == nil {
		o.Langs = speakers(t, "en", "es")
	}
	var b bytes.Buffer
	require.NoError(t, Write(&b, p, o))
	return b.String()
}

// read parses a page with a parser that is not ours.
func read(t testing.TB, page string) *html.Node {
	t.Helper()
	doc, err := html.Parse(strings.NewReader(page))
	require.NoError(t, err)
	return doc
}

func attr(n *html.Node, name string) (string, bool) {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val, true
		}
	}
	return "", false
}

func hasClass(n *html.Node, class string) bool {
	c, _ := attr(n, "class")
	for _, f := range strings.Fields(c) {
		if f == class {
			return true
		}
	}
	return false
}

// find lists the elements below n, in order, that a reader of a view sees and that are asked for; view "" sees all.
func find(n *html.Node, view string, want func(*html.Node) bool) []*html.Node {
	var out []*html.Node
	for k := n.FirstChild; k != nil; k = k.NextSibling {
		if k.Type != html.ElementNode || view != "" && hasClass(k, "v") && !hasClass(k, view) {
			continue
		}
		if want(k) {
			out = append(out, k)
		}
		out = append(out, find(k, view, want)...)
	}
	return out
}

func tagged(tag string) func(*html.Node) bool {
	return func(n *html.Node) bool { return n.Data == tag }
}

func classed(class string) func(*html.Node) bool {
	return func(n *html.Node) bool { return hasClass(n, class) }
}

// seen is the text below n that is seen, not only heard.
func seen(n *html.Node) string {
	if n.Type == html.TextNode {
		return n.Data
	}
	if n.Type == html.ElementNode && (hasClass(n, "heard") || n.Data == "script" || n.Data == "style") {
		return ""
	}
	var b strings.Builder
	for k := n.FirstChild; k != nil; k = k.NextSibling {
		b.WriteString(seen(k))
	}
	return b.String()
}

// textOf is all text below n, as a browser holds it.
func textOf(n *html.Node) string {
	if n.Type == html.TextNode {
		return n.Data
	}
	var b strings.Builder
	for k := n.FirstChild; k != nil; k = k.NextSibling {
		b.WriteString(textOf(k))
	}
	return b.String()
}
