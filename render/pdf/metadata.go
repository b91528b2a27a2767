package pdf

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"ovillo/render/page"
)

// producer is what the file says made it.
const producer = "ovillo"

// addMetadata writes who made what and when, twice: in the old dictionary and in the packet that archives read. The two
// have to agree. It returns an entry of the catalog.
func (f *file) addMetadata(d *page.Document, p Profile) string {
	var b strings.Builder
	b.WriteString("<<")
	for _, e := range []struct{ key, text string }{
		{"Title", d.Title}, {"Author", d.Author}, {"Subject", d.Subject}, {"Keywords", keywords(d)},
		{"Creator", producer}, {"Producer", producer},
	} {
		if e.text != "" {
			fmt.Fprintf(&b, "/%s %s ", e.key, textString(e.text))
		}
	}
	if d.Created != "" {
		date := strings.ReplaceAll(d.Created, "-", "")
		fmt.Fprintf(&b, "/CreationDate (D:%s000000+00'00') /ModDate (D:%s000000+00'00')", date, date)
	}
	b.WriteString(">>")
	f.set(f.info, b.String())
	// Not packed: programs that know nothing of PDF look for the packet in the bytes.
	return " /Metadata " + reference(f.addStream("/Type /Metadata /Subtype /XML", []byte(packet(d, p))))
}

// packet is the metadata as XMP.
func packet(d *page.Document, p Profile) string {
	var b strings.Builder
	b.WriteString("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n" +
		"<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n" +
		"<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n" +
		"<rdf:Description rdf:about=\"\"" +
		" xmlns:dc=\"http://purl.org/dc/elements/1.1/\"" +
		" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\"" +
		" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\"" +
		" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\">\n")
	list := func(name, kind string, items ...item) {
		items = slices.DeleteFunc(items, func(i item) bool { return i.text == "" })
		if len(items) == 0 {
			return
		}
		fmt.Fprintf(&b, "<%s><rdf:%s>", name, kind)
		for _, i := range items {
			fmt.Fprintf(&b, "<rdf:li%s>%s</rdf:li>", i.attributes, xmlText(i.text))
		}
		fmt.Fprintf(&b, "</rdf:%s></%s>\n", kind, name)
	}
	plain := func(name, text string) {
		if text != "" {
			fmt.Fprintf(&b, "<%s>%s</%s>\n", name, xmlText(text), name)
		}
	}
	plain("dc:format", "application/pdf")
	list("dc:title", "Alt", alternatives(d.Title, d.Titles)...)
	list("dc:creator", "Seq", item{text: d.Author})
	list("dc:description", "Alt", alternatives(d.Subject, d.Subjects)...)
	list("dc:subject", "Bag", items(d.Keywords)...)
	list("dc:language", "Bag", items(languages(d))...)
	plain("pdf:Keywords", keywords(d))
	plain("pdf:Producer", producer)
	plain("xmp:CreatorTool", producer)
	if d.Created != "" {
		plain("xmp:CreateDate", d.Created+"T00:00:00+00:00")
		plain("xmp:ModifyDate", d.Created+"T00:00:00+00:00")
	}
	if p == Archive {
		plain("pdfaid:part", "1")
		plain("pdfaid:conformance", "B")
	}
	b.WriteString("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>")
	return b.String()
}

// item is an entry of a list of the packet.
type item struct{ attributes, text string }

func items(texts []string) (list []item) {
	for _, t := range texts {
		list = append(list, item{text: t})
	}
	return list
}

// alternatives is a text for everyone, which is what the old dictionary says too, and then in each language.
func alternatives(text string, each []page.InLang) []item {
	list := []item{{` xml:lang="x-default"`, text}}
	for _, e := range each {
		list = append(list, item{fmt.Sprintf(` xml:lang="%s"`, e.Lang), e.Text})
	}
	return list
}

// languages are those of the document, the main one first.
func languages(d *page.Document) []string {
	list := []string{d.Lang}
	for _, l := range d.Langs {
		if !slices.Contains(list, l) {
			list = append(list, l)
		}
	}
	return list
}

// keywords are the keywords as one text.
func keywords(d *page.Document) string { return strings.Join(d.Keywords, ", ") }

// xmlText escapes a text. What XML cannot hold at all becomes a replacement character.
func xmlText(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case r < ' ' && r != '\t' && r != '\n' && r != '\r', r == 0xFFFE, r == 0xFFFF:
			b.WriteRune(utf8.RuneError)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
