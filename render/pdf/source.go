package pdf

import (
	"fmt"
	"strings"

	"ovillo/render/page"
)

// addSource attaches the text that the document was made from, and returns entries of the catalog.
func (f *file) addSource(d *page.Document) string {
	if d.Source == nil {
		return ""
	}
	params := fmt.Sprintf("/Size %d", len(d.Source))
	if d.Created != "" {
		params += fmt.Sprintf(" /ModDate (D:%s000000+00'00')", strings.ReplaceAll(d.Created, "-", ""))
	}
	stream := f.addStream("/Type /EmbeddedFile /Subtype /text#2Fplain /Filter /FlateDecode /Params <<"+params+">>", deflate(d.Source))
	name := textString(baseName(d.SourceName))
	spec := f.add(fmt.Sprintf("<</Type /Filespec /F %s /UF %s /AFRelationship /Source /Desc (Source of this document)"+
		" /EF <</F %s /UF %s>>>>", name, name, reference(stream), reference(stream)))
	return fmt.Sprintf(" /AF [%s] /Names <</EmbeddedFiles <</Names [%s %s]>>>>", reference(spec), name, reference(spec))
}

// baseName is the last part of a path, whichever way its slashes lean: where the author keeps her files is nobody's
// business.
func baseName(path string) string {
	return path[strings.LastIndexAny(path, `/\`)+1:]
}

// setCatalog writes the root of the file.
func (f *file) setCatalog(entries string) {
	f.set(f.root, "<</Type /Catalog /Pages "+reference(pagesObject)+entries+">>")
}
