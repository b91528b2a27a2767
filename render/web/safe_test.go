package web

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// hat is a small pattern.
func hat(t testing.TB) *plan.Pattern {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "cmd", "ovillo", "testdata", "hat.ovillo"))
	require.NoError(t, err)
	return checked(t, "hat.ovillo", string(data), nil)
}

// may are the elements that a page holds.
var may = strings.Fields(`html head meta title style script body header main article section nav div p h1 h2 h3 h4 ul ol li dl dt dd figure figcaption
	img table thead tbody tr th td a abbr strong span small br label input select option button svg symbol defs path g use circle rect`)

// faults is what no page may hold, whatever a source says: other elements than ours, attributes that run something, addresses that are no
// links, more than one script.
func faults(doc *html.Node) []string {
	var out []string
	scripts := 0
	for _, n := range find(doc, "", func(*html.Node) bool { return true }) {
		if !slices.Contains(may, n.Data) {
			out = append(out, "element "+n.Data)
		}
		if n.Data == "script" {
			scripts++
		}
		for _, a := range n.Attr {
			low := strings.ToLower(strings.TrimSpace(a.Val))
			switch {
			case strings.HasPrefix(a.Key, "on"), a.Key == "style", a.Key == "srcdoc", a.Key == "action", a.Key == "formaction":
				out = append(out, "attribute "+a.Key)
			case a.Key == "href" && !strings.HasPrefix(low, "#") && !safe(low), a.Key == "src" && !strings.HasPrefix(low, "data:image/"):
				out = append(out, a.Key+" "+a.Val)
			}
		}
	}
	if scripts != 1 {
		out = append(out, fmt.Sprint(scripts, " scripts"))
	}
	return out
}

// FuzzPage: whatever the names and texts of a pattern are, the page has no markup but ours, and the title reads as it was written.
func FuzzPage(f *testing.F) {
	for _, s := range []string{"Hat", "<script>alert(1)</script>", "</style><img src=x onerror=alert(1)>", `" onmouseover="x`, "a & b < c > d ' \"", "[x](javascript:alert(1)) <b>", "[y](https://example.com/\"><script>)",
		"\x00\u2028]]>-->", "![p](http://example.com/p.png)", "&lt;script&gt;", "</title><script>", "1. a\n2. b\n   - c\n\n# d\n* e"} {
		f.Add(s, s)
	}
	p := hat(f)
	langs := speakers(f, "en", "es")
	f.Fuzz(func(t *testing.T, title, prose string) {
		if strings.ContainsRune(title, '\r') || strings.ContainsRune(prose, '\r') {
			return // a parser of pages turns these into line feeds, as a source has none
		}
		q := *p
		both := plan.Text{"en": title, "es": title}
		q.Title, q.By, q.Name = both, title, title
		q.Sizes = slices.Clone(p.Sizes)
		q.Sizes[0].Name, q.Sizes[0].Names = title, both
		q.Yarns = slices.Clone(p.Yarns)
		for i := range q.Yarns {
			q.Yarns[i].Names = both
		}
		text := plan.Prose{Text: plan.Text{"en": prose, "es": prose}}
		q.Intro, q.Care, q.Licence, q.Changes, q.Notes = text, text, text, text, []plan.Prose{text}
		page := written(t, &q, Options{Langs: langs})
		doc := read(t, page)
		if bad := faults(doc); len(bad) > 0 {
			t.Fatalf("%q, %q: %v", title, prose, bad)
		}
		var b strings.Builder
		escape(&b, title)
		if title != "" {
			require.Contains(t, page, "<h1>"+b.String()+"</h1>")
			require.Equal(t, html.UnescapeString(b.String()), textOf(find(doc, "", tagged("h1"))[0]))
		}
	})
}

// TestFaultsAreSeen: what is looked for above would be found.
func TestFaultsAreSeen(t *testing.T) {
	for _, c := range []struct{ body, want string }{
		{`<iframe src="data:image/x"></iframe>`, "element iframe"}, {`<p onclick="x">`, "attribute onclick"}, {`<a href="javascript:x">`, "href javascript:x"},
		{`<img src="https://example.com/a.png">`, "src https://example.com/a.png"}, {`<script></script><script></script>`, "2 scripts"}, {`<p style="x">`, "attribute style"},
	} {
		assert.Contains(t, faults(read(t, "<!DOCTYPE html><body>"+c.body)), c.want)
	}
}

// TestThePolicyNamesWhatIsThere: the hashes of the policy are those of the style and the script of the page, and nothing else may load.
func TestThePolicyNamesWhatIsThere(t *testing.T) {
	doc := read(t, written(t, hat(t), Options{}))
	policy := ""
	for _, m := range find(doc, "", tagged("meta")) {
		if v, _ := attr(m, "http-equiv"); v == "Content-Security-Policy" {
			policy, _ = attr(m, "content")
		}
	}
	for _, tag := range []string{"style", "script"} {
		found := find(doc, "", tagged(tag))
		require.Len(t, found, 1)
		h := sha256.Sum256([]byte(textOf(found[0])))
		assert.Contains(t, policy, tag+"-src 'sha256-"+base64.StdEncoding.EncodeToString(h[:])+"'")
	}
	assert.Contains(t, policy, "default-src 'none'")
	assert.NotContains(t, policy, "unsafe")
	assert.NotContains(t, policy, "http")
}

// TestPagesAreSmall: without its photograph the page of every example stays near 400 kB, and the same pattern gives the same bytes.
func TestPagesAreSmall(t *testing.T) {
	for _, name := range examples(t) {
		p := example(t, name)
		page := written(t, p, Options{})
		size := len(page)
		if p.Photo != nil {
			size -= 2 * base64.StdEncoding.EncodedLen(len(p.Photo.Data))
		}
		assert.Less(t, size, 420_000, name)
		assert.Equal(t, page, written(t, p, Options{}), name)
		assert.Empty(t, faults(read(t, page)), name)
	}
}

// TestEveryCautionIsThere: each caution is in every view that it is for, in both languages, and so is what stands below all of them.
func TestEveryCautionIsThere(t *testing.T) {
	said := 0
	for _, name := range examples(t) {
		p := example(t, name)
		doc := read(t, written(t, p, Options{}))
		_, views := (&page{all: p}).patterns()
		for k, l := range speakers(t, "en", "es") {
			article := find(doc, "", tagged("article"))[k]
			for i, view := range views {
				var b strings.Builder
				for _, s := range find(article, view, classed("cautions")) {
					b.WriteString(textOf(s))
				}
				for _, n := range find(article, view, func(n *html.Node) bool { id, _ := attr(n, "id"); return strings.HasSuffix(id, "-end") }) {
					b.WriteString(textOf(n))
				}
				for _, c := range p.Cautions {
					if i > 0 && !c.For.Has(i-1) {
						continue
					}
					said++
					assert.Contains(t, plain(b.String()), plain(firstWords(l.Caution(c).String())), "%s, %s, %s: %s", name, l.Tag(), view, c.ID)
				}
			}
		}
	}
	assert.Greater(t, said, 50)
}

// firstWords are enough of a caution to know it by: several in the same words are said once.
func firstWords(s string) string {
	r := []rune(s)
	return string(r[:min(len(r), 40)])
}

// TestTheLeftHand: drawings are mirrored, the text says so, and the page is another.
func TestTheLeftHand(t *testing.T) {
	p := example(t, "jarcia-headband")
	left := written(t, p, Options{Left: true})
	assert.NotEqual(t, written(t, p, Options{}), left)
	doc := read(t, left)
	note := speakers(t, "es")[0].With(words.Manner{Left: true, Screen: true}).LeftHandedNote(p).String()
	require.NotEmpty(t, note)
	assert.Contains(t, plain(seen(find(doc, "", tagged("article"))[1])), plain(note))
}
