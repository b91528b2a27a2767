package pdf

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/klippa-app/go-pdfium"
	"github.com/klippa-app/go-pdfium/enums"
	"github.com/klippa-app/go-pdfium/references"
	"github.com/klippa-app/go-pdfium/requests"
	"github.com/klippa-app/go-pdfium/responses"
	"github.com/klippa-app/go-pdfium/webassembly"

	"ovillo/render/font"
	"ovillo/render/page"
)

// The files are read back by PDFium, which shares nothing with the writer.

// pool compiles PDFium once for all tests, which takes some seconds.
var pool = sync.OnceValues(func() (pdfium.Pool, error) {
	return webassembly.Init(webassembly.Config{MinIdle: 1, MaxIdle: 1, MaxTotal: 2})
})

// reading is a file opened by PDFium.
type reading struct {
	pdfium.Pdfium
	t   *testing.T
	doc references.FPDF_DOCUMENT
}

func open(t *testing.T, file []byte) *reading {
	t.Helper()
	p, err := pool()
	if err != nil {
		t.Fatal(err)
	}
	instance, err := p.GetInstance(time.Minute)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { instance.Close() })
	r := &reading{Pdfium: instance, t: t}
	r.doc = must(instance.OpenDocument(&requests.OpenDocument{File: &file})).of(t).Document
	return r
}

// result is an answer that may be an error.
type result[T any] struct {
	v   T
	err error
}

func must[T any](v T, err error) result[T] { return result[T]{v, err} }

func (r result[T]) of(t *testing.T) T {
	t.Helper()
	if r.err != nil {
		t.Fatal(r.err)
	}
	return r.v
}

func (r *reading) page(n int) requests.Page {
	return requests.Page{ByIndex: &requests.PageByIndex{Document: r.doc, Index: n}}
}

func (r *reading) text(n int) string {
	r.t.Helper()
	text := must(r.GetPageText(&requests.GetPageText{Page: r.page(n)})).of(r.t).Text
	return strings.ReplaceAll(text, "\r\n", "\n")
}

func TestText(t *testing.T) {
	for _, o := range []Options{{Normal}, {Archive}} {
		t.Run(fmt.Sprint("profile ", o.Profile), func(t *testing.T) { checkText(t, open(t, written(t, sample(), o))) })
	}
}

func checkText(t *testing.T, r *reading) {
	for n, want := range []string{
		"Ovillo de prueba\nTejido AVATAR\nWork 3 dc into each stitch of the last \nround, then 1 y 112, 2 y 116, 4 y 120 sts; see \nexample.org/ñ.\n" +
			"Cómo se teje\n¿Cuántos puntos? ¡Pregunta! La 1.ª vuelta y el 2.º anillo: «ñandú» — 2½″ × 3′, 20 °C, A → B, n ≥ 3… \n" +
			"Decompuesto: piña, árbol, über. Tiny WAVE To Ty L’AV P. V, 11 70 (1) \nIr a la tabla\n",
		"Ovillo de prueba\nSize / Talla cm\n1 y chest 56\n2 y chest 58\n• First\n• Second",
		"Ovillo de prueba\nThe end of a \nhalf\x02done sentence.", // the reader's sign of a hyphen at the end of a line
	} {
		if got := r.text(n); !strings.HasPrefix(got, want) {
			t.Errorf("page %d reads\n%q, want\n%q", n+1, got, want)
		}
	}
}

// origins returns where the glyphs of a page begin, by rune, without the spaces that the reader makes up.
func (r *reading) origins(n int) (runes []rune, x []float64) {
	r.t.Helper()
	text := must(r.FPDFText_LoadPage(&requests.FPDFText_LoadPage{Page: r.page(n)})).of(r.t).TextPage
	count := must(r.FPDFText_CountChars(&requests.FPDFText_CountChars{TextPage: text})).of(r.t).Count
	for i := range count {
		runes = append(runes, rune(must(r.FPDFText_GetUnicode(&requests.FPDFText_GetUnicode{TextPage: text, Index: i})).of(r.t).Unicode))
		x = append(x, must(r.FPDFText_GetCharOrigin(&requests.FPDFText_GetCharOrigin{TextPage: text, Index: i})).of(r.t).X)
	}
	return runes, x
}

// Layout trusts the widths that package font measures; so the glyphs have to stand where it says.
func TestGlyphsStandWhereMeasured(t *testing.T) {
	const text = "AVATAR To Ty. L’AV «Tú» 1170"
	for face := page.Sans; face <= page.SerifBold; face++ {
		f := font.Of(face)
		t.Run(f.Name(), func(t *testing.T) {
			g := page.Glyphs{X: 20, Base: 50, Size: 24, Face: face, Text: text}
			r := open(t, written(t, &page.Document{Pages: []page.Page{{W: 210, H: 297, Items: []page.Item{g}}}}, Options{}))
			runes, x := r.origins(0)
			if string(runes) != text {
				t.Fatalf("reads %q", string(runes))
			}
			for i := range runes {
				want := 20.0
				if i > 0 { // the kern before a glyph moves it too
					kern := float64(f.Kern(runes[i-1], runes[i])) / 1000 * 24 / point
					want += f.Width(string(runes[:i]), 24) + kern
				}
				if math.Abs(x[i]/point-want) > 0.01 {
					t.Errorf("glyph %d, %c, stands at %.3f mm, measured %.3f", i, runes[i], x[i]/point, want)
				}
			}
		})
	}
}

func TestFontsAreEmbedded(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	names := map[string]bool{}
	for n := range 3 {
		p := must(r.FPDF_LoadPage(&requests.FPDF_LoadPage{Document: r.doc, Index: n})).of(t).Page
		on := requests.Page{ByReference: &p}
		for i := range must(r.FPDFPage_CountObjects(&requests.FPDFPage_CountObjects{Page: on})).of(t).Count {
			o := must(r.FPDFPage_GetObject(&requests.FPDFPage_GetObject{Page: on, Index: i})).of(t).PageObject
			if must(r.FPDFPageObj_GetType(&requests.FPDFPageObj_GetType{PageObject: o})).of(t).Type != enums.FPDF_PAGEOBJ_TEXT {
				continue
			}
			f := must(r.FPDFTextObj_GetFont(&requests.FPDFTextObj_GetFont{PageObject: o})).of(t).Font
			name := must(r.FPDFFont_GetBaseFontName(&requests.FPDFFont_GetBaseFontName{Font: f})).of(t).BaseFontName
			names[name] = true
			if !must(r.FPDFFont_GetIsEmbedded(&requests.FPDFFont_GetIsEmbedded{Font: f})).of(t).IsEmbedded {
				t.Errorf("%s is not embedded", name)
			}
		}
	}
	if len(names) != 4 {
		t.Errorf("fonts %v, want the four faces", names)
	}
}

func TestBookmarks(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	var got []string
	var walk func(list []responses.GetBookmarksBookmark, depth int)
	walk = func(list []responses.GetBookmarksBookmark, depth int) {
		for _, b := range list {
			got = append(got, fmt.Sprintf("%d %s @%d", depth, b.Title, b.DestInfo.PageIndex))
			walk(b.Children, depth+1)
		}
	}
	walk(must(r.GetBookmarks(&requests.GetBookmarks{Document: r.doc})).of(t).Bookmarks, 1)
	want := []string{"1 A pattern / Un patrón @0", "2 Sizes @1", "2 Figures @2", "1 End @2"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

func TestLabelsAndTitle(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	for n, want := range []string{"i", "1", "2"} {
		if got := must(r.FPDF_GetPageLabel(&requests.FPDF_GetPageLabel{Document: r.doc, Page: n})).of(t).Label; got != want {
			t.Errorf("page %d is called %q, want %q", n+1, got, want)
		}
	}
	for tag, want := range map[string]string{
		"Title": "Ovillo de prueba", "Author": "Ana Muñoz & Bob <b@example.org>", "Subject": "Two languages",
		"Keywords": "crochet, ganchillo", "Producer": "ovillo", "CreationDate": "D:20260301000000+00'00'",
	} {
		if got := must(r.FPDF_GetMetaText(&requests.FPDF_GetMetaText{Document: r.doc, Tag: tag})).of(t).Value; got != want {
			t.Errorf("%s is %q, want %q", tag, got, want)
		}
	}
	if got := must(r.FPDFCatalog_GetLanguage(&requests.FPDFCatalog_GetLanguage{Document: r.doc})).of(t).Language; got != "en-US" {
		t.Errorf("the language is %q", got)
	}
}

func TestSourceIsAttached(t *testing.T) {
	attached := func(t *testing.T, o Options) []responses.Attachment {
		r := open(t, written(t, sample(), o))
		return must(r.GetAttachments(&requests.GetAttachments{Document: r.doc})).of(t).Attachments
	}
	t.Run("normal", func(t *testing.T) {
		list := attached(t, Options{})
		if len(list) != 1 || list[0].Name != "prueba.ovi" || string(list[0].Content) != "pattern «Prueba»\n" {
			t.Errorf("attached: %+v", list)
		}
	})
	t.Run("archive", func(t *testing.T) {
		if list := attached(t, Options{Profile: Archive}); len(list) > 0 {
			t.Errorf("the archive holds %d attachments", len(list))
		}
	})
}

// linkAt returns the address or the page that a click at a place leads to.
func (r *reading) linkAt(n int, x, y float64) string {
	r.t.Helper()
	at := requests.FPDFLink_GetLinkAtPoint{Page: r.page(n), X: x * point, Y: (297 - y) * point}
	l := must(r.FPDFLink_GetLinkAtPoint(&at)).of(r.t).Link
	if l == nil {
		return "none"
	}
	dest := must(r.FPDFLink_GetDest(&requests.FPDFLink_GetDest{Document: r.doc, Link: *l})).of(r.t).Dest
	if dest != nil {
		return fmt.Sprint(must(r.FPDFDest_GetDestPageIndex(&requests.FPDFDest_GetDestPageIndex{Document: r.doc, Dest: *dest})).of(r.t).Index)
	}
	a := must(r.FPDFLink_GetAction(&requests.FPDFLink_GetAction{Link: *l})).of(r.t).Action
	return *must(r.FPDFAction_GetURIPath(&requests.FPDFAction_GetURIPath{Document: r.doc, Action: *a})).of(r.t).URIPath
}

func TestLinks(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	for _, c := range []struct {
		x, y float64
		want string
	}{
		{20, 54, "https://example.org/%C3%B1?a=(1)"}, {20, 82, "1"}, {150, 54, "none"},
	} {
		if got := r.linkAt(0, c.x, c.y); got != c.want {
			t.Errorf("at %g, %g: %s, want %s", c.x, c.y, got, c.want)
		}
	}
}

func TestStructure(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	if !must(r.FPDFCatalog_IsTagged(&requests.FPDFCatalog_IsTagged{Document: r.doc})).of(t).IsTagged {
		t.Fatal("not tagged")
	}
	p := must(r.FPDF_LoadPage(&requests.FPDF_LoadPage{Document: r.doc, Index: 0})).of(t).Page
	tree := must(r.FPDF_StructTree_GetForPage(&requests.FPDF_StructTree_GetForPage{Page: requests.Page{ByReference: &p}})).of(t).StructTree
	top := must(r.FPDF_StructTree_GetChildAtIndex(&requests.FPDF_StructTree_GetChildAtIndex{StructTree: tree})).of(t).StructElement
	var b strings.Builder
	r.outline(&b, top, 0)
	// The Link of the last paragraph is not listed, for it holds no text: this reader goes by marks.
	const want = `Document
  H1
  P
    Span expand=double crochet
    Span actual=1 y 112, 2 y 116, 4 y 120
    Link
  Sect lang=es-ES
    H2
    P
`
	if b.String() != want {
		t.Errorf("structure\n%s, want\n%s", b.String(), want)
	}
}

// outline writes an element and those below it with what they say about themselves.
func (r *reading) outline(b *strings.Builder, e references.FPDF_STRUCTELEMENT, depth int) {
	fmt.Fprint(b, strings.Repeat("  ", depth), must(r.FPDF_StructElement_GetType(&requests.FPDF_StructElement_GetType{StructElement: e})).of(r.t).Type)
	// An error of these says that the element has no such text.
	if a, err := r.FPDF_StructElement_GetLang(&requests.FPDF_StructElement_GetLang{StructElement: e}); err == nil && a.Lang != "" {
		fmt.Fprint(b, " lang=", a.Lang)
	}
	if a, err := r.FPDF_StructElement_GetActualText(&requests.FPDF_StructElement_GetActualText{StructElement: e}); err == nil && a.Actualtext != "" {
		fmt.Fprint(b, " actual=", a.Actualtext)
	}
	if a, err := r.FPDF_StructElement_GetExpansion(&requests.FPDF_StructElement_GetExpansion{StructElement: e}); err == nil && a.Expansion != "" {
		fmt.Fprint(b, " expand=", a.Expansion)
	}
	b.WriteByte('\n')
	for i := range must(r.FPDF_StructElement_CountChildren(&requests.FPDF_StructElement_CountChildren{StructElement: e})).of(r.t).Count {
		// An error says that the child is a mark or a link, not an element.
		kid, err := r.FPDF_StructElement_GetChildAtIndex(&requests.FPDF_StructElement_GetChildAtIndex{StructElement: e, Index: i})
		if err == nil {
			r.outline(b, kid.StructElement, depth+1)
		}
	}
}

func TestDrawing(t *testing.T) {
	r := open(t, written(t, sample(), Options{}))
	const dpi = 100
	shot := must(r.RenderPageInDPI(&requests.RenderPageInDPI{Page: r.page(2), DPI: dpi})).of(t)
	defer shot.Cleanup()
	at := func(x, y float64) [3]uint8 {
		r, g, b, _ := shot.Result.RenderedImage.At(int(x/25.4*dpi), int(y/25.4*dpi)).RGBA()
		return [3]uint8{uint8(r >> 8), uint8(g >> 8), uint8(b >> 8)}
	}
	for _, c := range []struct {
		what string
		x, y float64
		want [3]uint8
	}{
		{"fill of the circle", 35, 50, [3]uint8{185, 203, 191}},
		{"paper beside the circle", 16, 31, [3]uint8{255, 255, 255}},
		{"top left of the PNG", 71, 31, [3]uint8{6, 8, 120}},
		{"top left of the JPEG", 116, 31, [3]uint8{6, 8, 120}},
		{"bottom right of the JPEG", 154, 59, [3]uint8{233, 230, 120}},
		{"transparent corner of the grey PNG", 198, 58, [3]uint8{255, 255, 255}},
		{"middle of the grey PNG", 180, 45, [3]uint8{140, 140, 140}},
	} {
		got := at(c.x, c.y)
		for i := range got {
			if d := int(got[i]) - int(c.want[i]); d < -12 || d > 12 {
				t.Errorf("%s is %v, want about %v", c.what, got, c.want)
				break
			}
		}
	}
}

func sizeOfPage(r *reading, n int) *requests.GetPageSize {
	return &requests.GetPageSize{Page: r.page(n)}
}
