package pdf

import (
	"bytes"
	"compress/zlib"
	"encoding/binary"
	"encoding/xml"
	"io"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/klippa-app/go-pdfium/requests"

	"ovillo/render/font"
	"ovillo/render/page"
)

func TestNumber(t *testing.T) {
	for v, want := range map[float64]string{
		0: "0", -0.0001: "0", 1: "1", -1.5: "-1.5", 12.3456: "12.346", 0.05: "0.05", 0.004: "0.004", -0.999: "-0.999",
		100.1: "100.1", 841.8897637795: "841.89", 14400: "14400",
	} {
		if got := number(v); got != want {
			t.Errorf("%g is written %s, want %s", v, got, want)
		}
	}
}

func TestTextString(t *testing.T) {
	for s, want := range map[string]string{
		"":         "()",
		"Hi (a\\)": `(Hi \(a\\\))`,
		"ñ":        "<FEFF00F1>",
		"🧶":        "<FEFFD83EDDF6>",
		"a\nb":     "<FEFF0061000A0062>",
		"a\xff":    "<FEFF0061FFFD>",
	} {
		if got := textString(s); got != want {
			t.Errorf("%q is written %s, want %s", s, got, want)
		}
	}
}

func TestAddress(t *testing.T) {
	for uri, want := range map[string]string{
		"https://example.org/ñ b?q=(1)&r=%20#top": "https://example.org/%C3%B1%20b?q=(1)&r=%20#top",
		"mailto:ana@example.org":                  "mailto:ana@example.org",
		"file:///etc/passwd":                      "",
		"example.org":                             "",
		"":                                        "",
		"https://example.org/\n":                  "",
	} {
		got, err := address(uri)
		if got != want || (err == nil) != (want != "") {
			t.Errorf("%q gives %q, %v; want %q", uri, got, err, want)
		}
	}
}

func TestNestClosesUpLevels(t *testing.T) {
	root := nest([]page.Outline{{Title: "a", Level: 2}, {Title: "b", Level: 5}, {Title: "c", Level: 3}, {Title: "d", Level: 1}, {Title: "e", Level: -7}})
	var b strings.Builder
	var walk func(e *entry)
	walk = func(e *entry) {
		for _, k := range e.kids {
			b.WriteString(k.Title)
			if len(k.kids) > 0 {
				b.WriteString("(")
				walk(k)
				b.WriteString(")")
			}
		}
	}
	walk(root)
	if b.String() != "a(bc)de" || root.count() != 5 {
		t.Errorf("%s, %d open; want a(bc)de, 5", b.String(), root.count())
	}
}

func TestPageLabels(t *testing.T) {
	for _, c := range []struct{ labels, want string }{
		{",,", ""},
		{"1,2,3", " /PageLabels <</Nums [0 <</S /D /St 1>>]>>"},
		{"i,1,2,5,6", " /PageLabels <</Nums [0 <</P (i)>> 1 <</S /D /St 1>> 3 <</S /D /St 5>>]>>"},
		{",1", " /PageLabels <</Nums [0 <</P ()>> 1 <</S /D /St 1>>]>>"},
		{"01,+2,0", " /PageLabels <</Nums [0 <</P (01)>> 1 <</P (+2)>> 2 <</P (0)>>]>>"},
	} {
		d := &page.Document{}
		for _, label := range strings.Split(c.labels, ",") {
			d.Pages = append(d.Pages, page.Page{Label: label})
		}
		if got := pageLabels(d); got != c.want {
			t.Errorf("%s gives %s, want %s", c.labels, got, c.want)
		}
	}
}

func TestPacketIsXML(t *testing.T) {
	d := sample()
	d.Title = "]]> <b>\x00\x1F & \uFFFE ñ 🧶"
	for _, p := range []Profile{Normal, Archive} {
		x := packet(d, p)
		dec := xml.NewDecoder(strings.NewReader(x))
		var text strings.Builder
		for {
			tok, err := dec.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatalf("%v in\n%s", err, x)
			}
			if c, ok := tok.(xml.CharData); ok {
				text.Write(c)
			}
		}
		if !strings.Contains(text.String(), "]]> <b>\uFFFD\uFFFD & \uFFFD ñ 🧶") {
			t.Errorf("the title is lost in\n%s", x)
		}
		if strings.Contains(x, "pdfaid:part") != (p == Archive) {
			t.Errorf("profile %d claims to be what it is not, or the reverse:\n%s", p, x)
		}
	}
}

// The elements below a paragraph stand where they are read; one without content stays with the one before it.
func TestReadingOrder(t *testing.T) {
	root := &page.Elem{Tag: "P"}
	span, empty, late := root.New("Span"), root.New("Span"), root.New("Span")
	tr, err := newTree(root)
	if err != nil {
		t.Fatal(err)
	}
	for i, e := range []*page.Elem{root, span, root, late, root} {
		tr.holdAll([]note{{tr.nodes[e], held{mark: i}}})
	}
	names := map[*node]string{tr.nodes[span]: "span", tr.nodes[empty]: "empty", tr.nodes[late]: "late"}
	var got []string
	for _, h := range tr.root.inOrder() {
		if h.node != nil {
			got = append(got, names[h.node])
		} else {
			got = append(got, number(float64(h.mark)))
		}
	}
	if want := []string{"0", "span", "empty", "2", "late", "4"}; !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
}

func TestJoins(t *testing.T) {
	for text, want := range map[string]bool{
		"word": false, "word ": true, "word\u00a0": true, "half-": true, "2–": true, "a –": false, "and/": true, "–": true, "": false, "(1)": false,
	} {
		if got := joins(text); got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

func TestToUnicodeNamesOnlyWhatIsThere(t *testing.T) {
	runes := make([]rune, 0, 150)
	for r := rune('A'); len(runes) < 150; r++ {
		runes = append(runes, r)
	}
	m := string(toUnicode(runes))
	if !strings.Contains(m, "100 beginbfchar") || !strings.Contains(m, "50 beginbfchar") || strings.Count(m, "> <") != 151 {
		t.Errorf("%s", m)
	}
}

func TestWidthsAreThoseOfTheFace(t *testing.T) {
	f := font.Of(page.Sans)
	if got := widths(f, []rune("ABe")); got != "65 [543 588] 101 [496]" {
		t.Errorf("%s", got)
	}
}

func TestSubsetTag(t *testing.T) {
	a, b := subsetTag([]rune("ab")), subsetTag([]rune("abc"))
	if a == b || len(a) != 6 || strings.Trim(a, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" {
		t.Errorf("%s and %s", a, b)
	}
}

// The profile is read as its own specification says: a table of tags, each within the file, and the curve of sRGB.
func TestProfile(t *testing.T) {
	p := profile()
	if int(binary.BigEndian.Uint32(p)) != len(p) || string(p[12:24]) != "mntrRGB XYZ " || string(p[36:40]) != "acsp" {
		t.Fatalf("header %q", p[:128])
	}
	tags := map[string][]byte{}
	for i := range int(binary.BigEndian.Uint32(p[128:])) {
		e := p[132+12*i:]
		at, size := binary.BigEndian.Uint32(e[4:]), binary.BigEndian.Uint32(e[8:])
		if at%4 != 0 || int(at+size) > len(p) {
			t.Fatalf("tag %s at %d, %d long, in %d bytes", e[:4], at, size, len(p))
		}
		tags[string(e[:4])] = p[at : at+size]
	}
	var white [3]float64
	for _, name := range []string{"rXYZ", "gXYZ", "bXYZ"} {
		for k := range white {
			white[k] += float64(binary.BigEndian.Uint32(tags[name][8+4*k:])) / 65536
		}
	}
	for k, want := range []float64{0.9642, 1, 0.8249} {
		if math.Abs(white[k]-want) > 0.0005 {
			t.Errorf("the primaries add up to %v, want D50", white)
		}
	}
	curve := tags["gTRC"]
	if got := float64(binary.BigEndian.Uint16(curve[12+2*512:])) / 65535; math.Abs(got-0.2147) > 0.001 {
		t.Errorf("half of full is %.4f of the light, want 0.2147", got)
	}
	if got := string(tags["desc"][12:16]); got != "sRGB" {
		t.Errorf("description %q", got)
	}
}

func inflate(data []byte) ([]byte, error) {
	z, err := zlib.NewReader(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	return io.ReadAll(z)
}

func TestDeflate(t *testing.T) {
	text := []byte(strings.Repeat("puntos ", 500))
	for range 3 { // the packer is used again
		if got, err := inflate(deflate(text)); err != nil || !bytes.Equal(got, text) {
			t.Fatalf("%d bytes, %v", len(got), err)
		}
	}
}

func TestShellOfAnotherShapeIsRefused(t *testing.T) {
	good, err := func() ([]byte, error) {
		c, err := drawPages(one(page.Glyphs{Size: 9, Text: "x"}), nil)
		if err != nil {
			return nil, err
		}
		return makeShell(c)
	}()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := readFile(good); err != nil {
		t.Fatal(err)
	}
	for cut := 0; cut < len(good); cut += 97 {
		if _, err := readFile(good[:cut]); err == nil {
			t.Errorf("the first %d of %d bytes pass for a file", cut, len(good))
		}
	}
	for _, s := range []string{"startxref\n", "xref\n0 9\nstartxref\n0\n", "xref\n0 2\n0000000000 65535 f \n9999999999 00000 n \nstartxref\n0\n"} {
		if _, err := readFile([]byte(s)); err == nil {
			t.Errorf("%q passes for a file", s)
		}
	}
}

// Titles, descriptions and labels are the author's: whatever they hold has to come back.
func TestHostileStringsComeBack(t *testing.T) {
	const nasty = "a) >> endobj ]]> \\ ( <</S /JavaScript>> ñ 🧶"
	d := sample()
	d.Title, d.Author, d.Pages[0].Label, d.SourceName = nasty, nasty, nasty, "a)>>.ovi"
	d.Root.Alt = nasty
	d.Outline[0].Title = nasty
	eachProfile(t, func(t *testing.T, o Options) {
		r := open(t, written(t, d, o))
		if got := must(r.FPDF_GetMetaText(&requests.FPDF_GetMetaText{Document: r.doc, Tag: "Title"})).of(t).Value; got != nasty {
			t.Errorf("title %q", got)
		}
		if got := must(r.FPDF_GetPageLabel(&requests.FPDF_GetPageLabel{Document: r.doc, Page: 0})).of(t).Label; got != nasty {
			t.Errorf("label %q", got)
		}
		if got := must(r.GetBookmarks(&requests.GetBookmarks{Document: r.doc})).of(t).Bookmarks[0].Title; got != nasty {
			t.Errorf("bookmark %q", got)
		}
	})
}
