package trial

import (
	"bytes"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	desks "ovillo/cmd/ovillo/desk"
	"ovillo/compile/plan"
	"ovillo/lang"
	"ovillo/lang/source"
	"ovillo/render/pdf"
	"ovillo/render/web"
	"ovillo/render/words"
)

// This file puts into every text of a pattern what could break out of a page or of a PDF.

// hostile are texts, as a person could write them between the quotation marks of a source and in its prose.
var hostile = map[string]string{
	"brackets":         `)) (( ) >> endobj ( stream endstream`,
	"an object":        `) >> endobj 99 0 obj << /S /JavaScript /JS (app.alert(1)) >> endobj`,
	"an action":        `) /A << /S /Launch /F (program) >> /OpenAction (`,
	"backslashes":      `\\ \( \) \n \061 \\\\`,
	"one at the end":   `ends in \\`,
	"a comment":        `%PDF-1.7 % %%EOF startxref`,
	"hexadecimal":      `<41> <FEFF0041> <</A/B>>`,
	"a long word":      strings.Repeat("puntillas", 60),
	"a long text":      strings.Repeat("stitch after stitch ", 60),
	"a direction":      "abc \u202edef\u202c \u2066ghi\u2069 \u200fjkl\u200e",
	"joiners":          "a\u200db\u200cc\u00adde\ufefff",
	"controls":         "a\x01b\x1bc\x7fd",
	"newer controls":   "a\u0085b\u009bc",
	"no blanks":        "a\u2028b\u2029c",
	"not characters":   "a\ufffe\uffffb",
	"other planes":     "a\U0001f9f6b\U000e0001c",
	"accents":          "e" + strings.Repeat("\u0301", 60),
	"a script":         `<script>window.caught=1</script>`,
	"end of a script":  `</script><script>window.caught=1</script>`,
	"end of a style":   `</style><img src=x onerror=window.caught=1>`,
	"end of a title":   `</title></head><body onload=window.caught=1>`,
	"an attribute":     `" onmouseover="window.caught=1" x="`,
	"another one":      `' onfocus='window.caught=1' autofocus='`,
	"SVG":              `<svg onload=window.caught=1><script>window.caught=1</script></svg>`,
	"CDATA":            `]]><script>window.caught=1</script><![CDATA[`,
	"a reference":      `&lt;script&gt;window.caught=1&lt;/script&gt; &#106;avascript: &amp;`,
	"a frame":          `<iframe src="https://pattern.example/"></iframe>`,
	"a base":           `<base href="https://pattern.example/"><meta http-equiv=refresh content="0;url=https://pattern.example/">`,
	"a link to run":    `[x](javascript:window.caught=1)`,
	"one in capitals":  `[x](JaVaScRiPt:window.caught=1) [y](&#106;avascript:window.caught=1) [z](java&#10;script:window.caught=1)`,
	"a link of data":   `[x](data:text/html,<script>window.caught=1</script>)`,
	"a link to a file": `[x](file:///etc/passwd) [y](smb://pattern.example/x) [z](ovillo:x)`,
	"a link to a host": `[x](//pattern.example/x) [y](/x) [z](x.html) [w](\\\\pattern.example\\x)`,
	"a link outside":   `[x](https://pattern.example/a"onclick=window.caught=1) <https://pattern.example/b> https://pattern.example/c`,
	"a link's title":   `[x](https://pattern.example "t\" onmouseover=window.caught=1")`,
	"a broken address": `[x](https://[::1) [y](https://%zz) [z](http:) [w](mailto:)`,
	"a picture":        `![x](https://pattern.example/a.png) ![y](javascript:window.caught=1)`,
	"a far reference":  "[x]: javascript:window.caught=1",
	"values":           `{{x}} {} {a b} ${x} <%= x %>`,
	"places":           `{} a~b {`,
	"names of values":  `{stitches} {__proto__} {constructor}`,
}

// inBi finds the texts of a source that say in which language they are, and others that only print.
var (
	inBi  = regexp.MustCompile(`\b(en|es) "(?:[^"\\]|\\.)*"`)
	by    = regexp.MustCompile(`(?m)^(\s*(?:by|por)\s+)"(?:[^"\\]|\\.)*"`)
	prose = regexp.MustCompile(`(?m)^(\s*(?:en|es) \| ).*$`)
)

// spoilt is a source with a text in the place of its own: in the place numbered n, or in all if n is negative. total is how many there are.
func spoilt(source, text string, n int) (out string, total int) {
	quoted := `"` + strings.ReplaceAll(text, `"`, `\"`) + `"`
	put := func(in string, where *regexp.Regexp, with string) string {
		return where.ReplaceAllStringFunc(in, func(old string) string {
			total++
			if n >= 0 && total-1 != n {
				return old
			}
			begins := where.FindStringSubmatch(old)[1]
			return begins + with
		})
	}
	out = put(source, by, quoted)
	out = put(out, inBi, " "+quoted)
	return put(out, prose, text), total
}

// pieces are sources that have a text of every kind between them.
func pieces(t testing.TB) map[string]string {
	t.Helper()
	out := map[string]string{"signs.ovillo": read(t, filepath.Join("..", "..", "..", "compile", "testdata", "signs.ovillo"))}
	for _, name := range []string{"jarcia-headband.ovillo", "salitre-seal.ovillo"} {
		out[name] = read(t, filepath.Join("..", "..", "..", "examples", name))
	}
	return out
}

// checked is a source as the command checks it.
func checked(name, text string) desks.Checked {
	return desks.Check(desks.Source{File: source.NewFile(name, text), Open: desks.Folder(filepath.Join("..", "..", "..", "examples"))})
}

// TestEveryTextIsSpoilt: what spoilt finds is every text of the tree that is for people, in every statement that has some.
func TestEveryTextIsSpoilt(t *testing.T) {
	const mark = "spoilt text"
	kinds := map[string]bool{}
	note := func(kind string, texts ...*lang.Bi) {
		for _, b := range texts {
			kinds[kind] = true
			assert.Equal(t, mark, b.Text.Text, kind)
		}
	}
	for name, text := range pieces(t) {
		text, total := spoilt(text, mark, -1)
		require.Greater(t, total, 10, name)
		tree, _ := lang.Parse(source.NewFile(name, text))
		lang.Walk(tree, func(n lang.Node) bool {
			switch n := n.(type) {
			case *lang.By:
				kinds["by"] = true
				assert.Equal(t, mark, n.Name.Text)
			case *lang.Title:
				note("title", n.Text...)
			case *lang.Photo:
				note("photo", n.Alt...)
			case *lang.Notion:
				note("notion", n.Text...)
			case *lang.YarnName:
				note("yarn", n.Text...)
			case *lang.Abbr:
				note("abbr", n.Text...)
			case *lang.Call:
				note("call", n.Text...)
			case *lang.Meant:
				note("meant", n.Text...)
			case *lang.Measure:
				note("measure", n.Text...)
			}
			return true
		})
	}
	var missing []string
	for _, kind := range []string{"by", "title", "photo", "notion", "yarn", "abbr", "call", "meant", "measure"} {
		if !kinds[kind] {
			missing = append(missing, kind)
		}
	}
	assert.Empty(t, missing, "no piece has such a text")
}

// How many patterns are made with a text.
const (
	enough = 8
	tries  = 12 // places of a pattern that are tried, one by one
)

// sound are patterns that a hostile text can be brought into: all texts at once where the checker lets that pass, else one by one.
func sound(t testing.TB, text string, found func(name string, c *desks.Checked)) {
	t.Helper()
	taken := 0
	all := pieces(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		spoiled, total := spoilt(all[name], text, -1)
		if c := checked(name, spoiled); c.Printable() {
			found(name, &c)
			taken++
			continue
		}
		stride := max(1, total/tries) // texts of another length go into other places
		for n, here := len(text)%stride, 0; n < total && here < enough/4 && taken < enough; n += stride {
			one, _ := spoilt(all[name], text, n)
			if c := checked(name, one); c.Printable() {
				found(name, &c)
				taken, here = taken+1, here+1
			}
		}
	}
	t.Logf("in %d patterns", taken)
	assert.Positive(t, taken, "it is refused everywhere")
}

// ourLink is a link within a page, or a picture in it.
var ourLink = regexp.MustCompile(`^(A file://\S* #\S* $|IMG data:image/)`)

// bad is what no PDF of a pattern has: what runs, opens, sends or leads to another file.
var bad = regexp.MustCompile(`/(JavaScript|JS|Launch|SubmitForm|ImportData|ResetForm|GoToR|GoToE|OpenAction|AA|RichMedia|Rendition|Movie|Sound|XFA|AcroForm)\b`)

// address finds the addresses of a PDF.
var address = regexp.MustCompile(`/URI \(([^)]*)\)`)

// TestTextsInPDF: whatever the texts of a pattern are, its PDF is sound, runs nothing and leads nowhere but to addresses of the kinds that
// pages may have. A text that has no place on pages is refused by the check, never by what is made of it.
func TestTextsInPDF(t *testing.T) {
	needs(t, "qpdf")
	for name, text := range hostile {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			sound(t, text, func(piece string, c *desks.Checked) {
				p := c.Pattern
				doc, err := desks.Pages(p, desks.Look{Langs: p.Languages[:min(2, len(p.Languages))]})
				var b bytes.Buffer
				if err == nil {
					doc.Source, doc.SourceName = p.Source, piece
					err = pdf.Write(&b, doc, pdf.Options{})
				}
				if !assert.NoError(t, err, "%s: the check lets %q pass, and the pages do not", piece, text) {
					return
				}
				path := filepath.Join(dir, "a.pdf")
				require.NoError(t, os.WriteFile(path, b.Bytes(), 0o644))
				out, err := exec.Command("qpdf", "--check", path).CombinedOutput()
				assert.NoError(t, err, "%s: %s", piece, out)
				plain := filepath.Join(dir, "b.pdf")
				out, err = exec.Command("qpdf", "--qdf", "--object-streams=disable", "--remove-unreferenced-resources=no", path, plain).CombinedOutput()
				require.NoError(t, err, "%s", out)
				objects := withoutStrings(read(t, plain))
				assert.Empty(t, bad.FindAllString(objects, -1), "%s: %s", piece, text)
				for _, m := range address.FindAllStringSubmatch(read(t, plain), -1) {
					assert.Regexp(t, `^(https?://|mailto:|tel:)`, m[1], piece)
				}
			})
		})
	}
}

// withoutStrings is a PDF without its streams and strings: what it is made of, and none of what it says.
func withoutStrings(text string) string {
	text = regexp.MustCompile(`(?s)\nstream\n.*?\nendstream`).ReplaceAllString(text, "")
	var b strings.Builder
	deep := 0
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case deep > 0 && c == '\\':
			i++
		case c == '(':
			deep++
		case c == ')' && deep > 0:
			deep--
		case deep == 0:
			b.WriteByte(c)
		}
	}
	return b.String()
}

// TestWithoutStrings: what is looked for above would be found.
func TestWithoutStrings(t *testing.T) {
	got := withoutStrings(`<< /A (a \) /JS (b) \\) /S /JavaScript /JS (x) >>` + "\nstream\n/Launch\nendstream\n<< /OpenAction 1 0 R >>")
	assert.Equal(t, []string{"/JavaScript", "/JS", "/OpenAction"}, bad.FindAllString(got, -1))
}

// webPage is a pattern as a page.
func webPage(t testing.TB, p *plan.Pattern) string {
	t.Helper()
	var langs []*words.Language
	for _, tag := range p.Languages {
		l, err := words.For(tag)
		require.NoError(t, err)
		langs = append(langs, l)
	}
	var b bytes.Buffer
	require.NoError(t, web.Write(&b, p, web.Options{Langs: langs}))
	return b.String()
}
