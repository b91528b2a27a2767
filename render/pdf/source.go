package pdf

import (
	"fmt"
	"slices"
	"strings"

	"ovillo/render/page"
)

// addSource attaches the text that the document was made from, with the files that it uses, and returns entries of the catalog.
func (f *file) addSource(d *page.Document) string {
	if d.Source == nil {
		return ""
	}
	all := []page.Attachment{{Name: baseName(d.SourceName), Text: d.Source}}
	all = append(all, d.Used...)
	var specs, names []string
	for _, a := range all {
		specs = append(specs, f.addAttachment(d, a))
	}
	// A name tree is sorted by its names.
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return strings.Compare(textString(all[a].Name), textString(all[b].Name)) })
	for _, i := range order {
		names = append(names, textString(all[i].Name), specs[i])
	}
	return fmt.Sprintf(" /AF [%s] /Names <</EmbeddedFiles <</Names [%s]>>>>", strings.Join(specs, " "), strings.Join(names, " "))
}

// addAttachment attaches one text, and returns the reference to what describes it.
func (f *file) addAttachment(d *page.Document, a page.Attachment) string {
	params := fmt.Sprintf("/Size %d", len(a.Text))
	if d.Created != "" {
		params += fmt.Sprintf(" /ModDate (D:%s000000+00'00')", strings.ReplaceAll(d.Created, "-", ""))
	}
	stream := f.addStream("/Type /EmbeddedFile /Subtype /text#2Fplain /Filter /FlateDecode /Params <<"+params+">>", deflate(a.Text))
	name := textString(a.Name)
	return reference(f.add(fmt.Sprintf("<</Type /Filespec /F %s /UF %s /AFRelationship /Source /Desc (Source of this document)"+
		" /EF <</F %s /UF %s>>>>", name, name, reference(stream), reference(stream))))
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
