package pdf

import (
	"encoding/xml"
	"slices"
	"strings"
	"testing"

	"github.com/klippa-app/go-pdfium/requests"
)

// entry of a list of the packet, with its language.
type xmpItem struct {
	Lang string `xml:"http://www.w3.org/XML/1998/namespace lang,attr"`
	Text string `xml:",chardata"`
}

// xmpList is an array of the packet, whichever of the three kinds it is.
type xmpList struct {
	Alt []xmpItem `xml:"http://www.w3.org/1999/02/22-rdf-syntax-ns# Alt>li"`
	Bag []xmpItem `xml:"http://www.w3.org/1999/02/22-rdf-syntax-ns# Bag>li"`
	Seq []xmpItem `xml:"http://www.w3.org/1999/02/22-rdf-syntax-ns# Seq>li"`
}

type xmpPacket struct {
	Title       xmpList `xml:"RDF>Description>title"`
	Creator     xmpList `xml:"RDF>Description>creator"`
	Description xmpList `xml:"RDF>Description>description"`
	Subject     xmpList `xml:"RDF>Description>subject"`
	Language    xmpList `xml:"RDF>Description>language"`
	Keywords    string  `xml:"RDF>Description>Keywords"`
	Producer    string  `xml:"RDF>Description>Producer"`
	Created     string  `xml:"RDF>Description>CreateDate"`
	Modified    string  `xml:"RDF>Description>ModifyDate"`
	Tool        string  `xml:"RDF>Description>CreatorTool"`
}

// inEach lists the entries with their languages.
func inEach(list []xmpItem) (all []string) {
	for _, i := range list {
		all = append(all, strings.TrimPrefix(i.Lang+"="+i.Text, "="))
	}
	return all
}

// What the old dictionary says and what the packet says is read by two readers, PDFium and the XML reader of the
// standard library, and has to agree. PDF/A-1 asks for that: ISO 19005-1, 6.7.3.
func TestBothMetadataAgree(t *testing.T) {
	eachProfile(t, func(t *testing.T, o Options) {
		file := written(t, sample(), o)
		_, rest, _ := strings.Cut(string(file), "<x:xmpmeta")
		text, _, whole := strings.Cut(rest, "</x:xmpmeta>")
		if !whole {
			t.Fatal("there is no packet in the bytes of the file")
		}
		var x xmpPacket
		if err := xml.Unmarshal([]byte("<x:xmpmeta"+text+"</x:xmpmeta>"), &x); err != nil {
			t.Fatal(err)
		}
		r := open(t, file)
		info := func(tag string) string {
			return must(r.FPDF_GetMetaText(&requests.FPDF_GetMetaText{Document: r.doc, Tag: tag})).of(t).Value
		}
		date := func(s string) string {
			return "D:" + strings.NewReplacer("-", "", ":", "", "T", "").Replace(s[:19]) + "+00'00'"
		}
		for _, c := range []struct{ tag, packet string }{
			{"Title", x.Title.Alt[0].Text}, {"Author", x.Creator.Seq[0].Text}, {"Subject", x.Description.Alt[0].Text},
			{"Keywords", x.Keywords}, {"Producer", x.Producer}, {"Creator", x.Tool},
			{"CreationDate", date(x.Created)}, {"ModDate", date(x.Modified)},
		} {
			if got := info(c.tag); got != c.packet || got == "" {
				t.Errorf("%s: the dictionary says %q, the packet %q", c.tag, got, c.packet)
			}
		}
		for _, c := range []struct {
			what      string
			got, want []string
		}{
			{"title", inEach(x.Title.Alt), []string{"x-default=Ovillo de prueba", "en-US=Test ball", "es-ES=Ovillo de prueba"}},
			{"description", inEach(x.Description.Alt), []string{"x-default=Two languages", "en-US=Two languages", "es-ES=Dos idiomas"}},
			{"subject", inEach(x.Subject.Bag), []string{"crochet", "ganchillo"}},
			{"language", inEach(x.Language.Bag), []string{"en-US", "es-ES"}},
		} {
			if !slices.Equal(c.got, c.want) {
				t.Errorf("%s: %q, want %q", c.what, c.got, c.want)
			}
		}
	})
}
