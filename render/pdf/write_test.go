package pdf

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"os/exec"
	"strings"
	"sync"
	"testing"

	"ovillo/render/page"
)

// digestOnly makes the test binary print the digest of the sample instead of testing, for the test that looks from
// another place.
const digestOnly = "OVILLO_PDF_DIGEST"

func TestMain(m *testing.M) {
	if os.Getenv(digestOnly) == "" {
		os.Exit(m.Run())
	}
	var b bytes.Buffer
	if err := Write(&b, sample(), Options{}); err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	fmt.Printf("%x", sha256.Sum256(b.Bytes()))
}

func TestSameBytesEveryTime(t *testing.T) {
	eachProfile(t, func(t *testing.T, o Options) {
		first := written(t, sample(), o)
		for run := range 20 {
			if run%2 == 0 {
				emptyShelf()
			}
			if again := written(t, sample(), o); !bytes.Equal(first, again) {
				t.Fatalf("run %d differs from the first", run+2)
			}
		}
	})
}

func TestSameBytesElsewhere(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	want := fmt.Sprintf("%x", sha256.Sum256(written(t, sample(), Options{})))
	for _, env := range [][]string{
		{"TZ=Pacific/Auckland", "LANG=es_ES.UTF-8", "LC_ALL=es_ES.UTF-8"},
		{"TZ=America/Caracas", "LANG=C", "GOMAXPROCS=1"},
	} {
		cmd := exec.Command(self)
		cmd.Dir = t.TempDir()
		cmd.Env = append(append(os.Environ(), env...), digestOnly+"=1")
		got, err := cmd.Output()
		if err != nil || string(got) != want {
			t.Errorf("with %v: %s (%v), want %s", env, got, err, want)
		}
	}
}

func TestManyAtOnce(t *testing.T) {
	d := sample()
	want := written(t, d, Options{})
	var wg sync.WaitGroup
	for range 6 {
		wg.Go(func() {
			var b bytes.Buffer
			if err := Write(&b, d, Options{}); err != nil || !bytes.Equal(b.Bytes(), want) {
				t.Errorf("differs (%v)", err)
			}
		})
	}
	wg.Wait()
}

func TestOtherContentOtherID(t *testing.T) {
	id := func(d *page.Document) string {
		b := written(t, d, Options{Profile: Archive})
		_, tail, _ := bytes.Cut(b, []byte("/ID [<"))
		return string(tail[:32])
	}
	other := sample()
	other.Title = "Otro"
	if a, b := id(sample()), id(other); a == b {
		t.Errorf("two documents have the ID %s", a)
	}
}

// one is a document of one page with some items.
func one(items ...page.Item) *page.Document {
	return &page.Document{Pages: []page.Page{{W: 210, H: 297, Items: items}}}
}

func TestRefused(t *testing.T) {
	text := page.Glyphs{X: 15, Base: 20, Size: 11, Text: "Hola"}
	line := page.Path{Cmds: []page.Cmd{{Op: 'M'}, {Op: 'L'}}, Stroke: &page.Black, Width: 0.2}
	loop := &page.Elem{Tag: "P"}
	loop.Kids = []*page.Elem{loop}
	deep := &page.Elem{Tag: "Document"}
	for range 200 {
		deep = &page.Elem{Tag: "Sect", Kids: []*page.Elem{deep}}
	}
	textWith := func(change func(*page.Glyphs)) *page.Document { g := text; change(&g); return one(g) }
	lineWith := func(change func(*page.Path)) *page.Document { p := line; change(&p); return one(p) }
	rooted := func(e *page.Elem) *page.Document { d := one(text); d.Root = e; return d }
	for _, c := range []struct {
		d    *page.Document
		want string
	}{
		{nil, "needs a page"},
		{&page.Document{}, "needs a page"},
		{&page.Document{Pages: []page.Page{{W: math.NaN(), H: 297}}}, "page 1: a sheet of NaN × 297 mm"},
		{&page.Document{Pages: []page.Page{{W: 210, H: 9000}}}, "a sheet of 210 × 9000 mm"},
		{textWith(func(g *page.Glyphs) { g.Text = "Teje 編" }), `SourceSans3-Regular has no glyph for U+7DE8 '編' in "Teje 編"`},
		{textWith(func(g *page.Glyphs) { g.Text = "a\xff"; g.Face = page.SerifBold }), "SourceSerif4-SemiBold has no glyph for U+FFFD"},
		{textWith(func(g *page.Glyphs) { g.Text = "🧶" }), "U+1F9F6"},
		{textWith(func(g *page.Glyphs) { g.Size = 0 }), "a type size of 0 pt"},
		{textWith(func(g *page.Glyphs) { g.X = math.Inf(1) }), "text at +Inf mm"},
		{textWith(func(g *page.Glyphs) { g.Face = 9 }), "there is no face 9"},
		{textWith(func(g *page.Glyphs) { g.Color[1] = 255 }), "not within 0 and 1"},
		{textWith(func(g *page.Glyphs) { g.Elem = &page.Elem{Tag: "P"} }), ""}, // an untagged document
		{one(&text), "*page.Glyphs is not something to draw"},
		{one(nil), "<nil> is not something to draw"},
		{lineWith(func(p *page.Path) { p.Cmds = p.Cmds[1:] }), "begins with the step 'L'"},
		{lineWith(func(p *page.Path) { p.Cmds = []page.Cmd{{Op: 'M'}, {Op: 'Q'}} }), "the step 'Q'"},
		{lineWith(func(p *page.Path) { p.Cmds = []page.Cmd{{Op: 'M', P: [3]page.Point{{X: math.NaN()}}}} }), "path at NaN mm"},
		{lineWith(func(p *page.Path) { p.Width = -1 }), "a line -1 mm wide"},
		{lineWith(func(p *page.Path) { p.Dash = []float64{0, 0} }), "dashes without length"},
		{lineWith(func(p *page.Path) { p.Dash = []float64{math.NaN()} }), "a dash NaN mm long"},
		{lineWith(func(p *page.Path) { p.Fill = &page.Color{-1, 0, 0} }), "not within 0 and 1"},
		{one(page.Anchor{W: 1, H: 1, URI: "javascript:alert(1)"}), "none of the kinds http"},
		{one(page.Anchor{W: 1, H: 1, URI: "http://a b\x00%zz"}), "is not an address"},
		{one(page.Anchor{W: 1, H: 1, Page: 1}), "there is no page 2"},
		{one(page.Anchor{W: 0, H: 1, URI: "https://example.org"}), "a link without a size"},
		{rooted(&page.Elem{Tag: "Blob"}), `"Blob" is not a structure type`},
		{rooted(&page.Elem{Tag: "P", Lang: "es)"}), "not a language tag"},
		{rooted(&page.Elem{Tag: "TH", Scope: "Diagonal"}), `the scope "Diagonal"`},
		{rooted(&page.Elem{Tag: "TH", Span: [2]int{-1, 0}}), "spans -1 rows"},
		{rooted(&page.Elem{Tag: "L", Kids: []*page.Elem{nil}}), "an empty element"},
		{rooted(loop), "stands twice"},
		{rooted(deep), "deeper than 100"},
		{&page.Document{Root: &page.Elem{Tag: "Document"}, Pages: one(page.Glyphs{Size: 9, Text: "x", Elem: &page.Elem{Tag: "P"}}).Pages},
			"an element P that is not in the structure tree"},
	} {
		err := Write(io.Discard, c.d, Options{})
		if c.want == "" && err != nil {
			t.Errorf("refused: %v", err)
		}
		if c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)) {
			t.Errorf("error %v, want %q", err, c.want)
		}
	}
}

func TestRefusedAboutTheWhole(t *testing.T) {
	for _, c := range []struct {
		change func(*page.Document)
		o      Options
		want   string
	}{
		{func(d *page.Document) { d.Created = "March" }, Options{}, `"March", does not read YYYY-MM-DD`},
		{func(d *page.Document) { d.Lang = "english (US)" }, Options{}, "not a language tag"},
		{func(d *page.Document) { d.SourceName = "folder/" }, Options{}, "the source has no name"},
		{func(d *page.Document) { d.Outline = []page.Outline{{Title: "A", Page: 3}} }, Options{}, `bookmark 1, "A": there is no page 4`},
		{func(d *page.Document) {}, Options{Profile: 7}, "no profile 7"},
	} {
		d := sample()
		c.change(d)
		if err := Write(io.Discard, d, c.o); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("error %v, want %q", err, c.want)
		}
	}
}

func TestMissingErrorNamesThePlace(t *testing.T) {
	d := sample()
	d.Pages[1].Items = append(d.Pages[1].Items, page.Glyphs{Size: 11, Face: page.Serif, Text: "Ω≠編"})
	var b bytes.Buffer
	err := Write(&b, d, Options{})
	var missing *MissingError
	if !errors.As(err, &missing) {
		t.Fatalf("error %v, want a MissingError", err)
	}
	if missing.Page != 1 || missing.Rune != '編' || missing.Face != "SourceSerif4-Regular" {
		t.Errorf("%+v", missing)
	}
	if b.Len() > 0 {
		t.Errorf("%d bytes were written before the error", b.Len())
	}
}

// brokenPipe fails on every write.
type brokenPipe struct{}

func (brokenPipe) Write([]byte) (int, error) { return 0, io.ErrClosedPipe }

func TestErrorsOfTheWriterAreReturned(t *testing.T) {
	if err := Write(brokenPipe{}, one(), Options{}); !errors.Is(err, io.ErrClosedPipe) {
		t.Errorf("error %v", err)
	}
}

// Sheets without text, without tags, of other sizes, and with nothing on them at all.
func TestBareDocuments(t *testing.T) {
	letter := one()
	letter.Pages[0].W, letter.Pages[0].H = 279.4, 215.9
	letter.Pages = append(letter.Pages, page.Page{W: 100, H: 100})
	for _, d := range []*page.Document{one(), letter, {Pages: one().Pages, Root: &page.Elem{Tag: "Document"}}} {
		eachProfile(t, func(t *testing.T, o Options) {
			r := open(t, written(t, d, o))
			for n, p := range d.Pages {
				size := must(r.GetPageSize(sizeOfPage(r, n))).of(t)
				if math.Abs(size.Width-p.W*point) > 0.01 || math.Abs(size.Height-p.H*point) > 0.01 {
					t.Errorf("page %d is %g × %g points", n+1, size.Width, size.Height)
				}
			}
		})
	}
}

// Nothing that a text or a title holds may break the file or the writer.
func FuzzWrite(f *testing.F) {
	for _, s := range []string{"", "Hola", "ñ (a\\b) <c> [d]", "\x00\xff\n\r", "🧶編", "e\u0301\u0301", "]]> &amp; <?x", "\u202eabc", "endstream endobj 1 0 R"} {
		f.Add(s, s, s, 11.0, 20.0, byte(0))
	}
	f.Fuzz(func(t *testing.T, text, title, lang string, size, x float64, face byte) {
		root := &page.Elem{Tag: "Document", Alt: title, Lang: lang}
		p := root.New("P")
		d := &page.Document{
			Root: root, Title: title, Author: text, Keywords: []string{lang}, Lang: lang, Source: []byte(text), SourceName: title,
			Outline: []page.Outline{{Title: text, Level: int(face)}, {Title: title, Level: int(face) - 3}},
			Pages: []page.Page{{W: 210, H: 297, Label: title, Items: []page.Item{
				page.Glyphs{X: x, Base: 20, Size: size, Face: page.Face(face), Text: text, Actual: title, Expand: lang, Elem: p},
				page.Glyphs{X: x, Base: 30, Size: size, Face: page.Face(face), Text: text, Elem: p, Track: x, Angle: size},
				page.Anchor{X: x, Y: 1, W: size, H: 1, URI: title, Label: text, Elem: p},
			}}},
		}
		var b bytes.Buffer
		if err := Write(&b, d, Options{Profile: Profile(face % 2)}); err != nil {
			if b.Len() > 0 {
				t.Fatalf("%d bytes before the error %v", b.Len(), err)
			}
			return
		}
		if !bytes.HasPrefix(b.Bytes(), []byte("%PDF-1.")) || !bytes.HasSuffix(b.Bytes(), []byte("%%EOF\n")) {
			t.Fatalf("not a PDF: %q", b.Bytes()[:min(20, b.Len())])
		}
	})
}
