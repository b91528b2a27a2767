package pdf

import (
	"bytes"
	"fmt"

	"github.com/go-pdf/fpdf"
)

// makeShell has fpdf write a file of as many pages as ours, of their sizes, with nothing on them: it would copy each page several times.
func makeShell(c *content) (b []byte, err error) {
	defer recovered(&err)
	f := newShell(c.sheets[0].w, c.sheets[0].h)
	for _, s := range c.sheets {
		f.AddPageFormat("P", fpdf.SizeType{Wd: s.w, Ht: s.h})
	}
	return output(f, len(c.sheets)<<9)
}

// newShell begins a file. Its pages are not packed by fpdf, which makes a packer for each.
func newShell(w, h float64) *fpdf.Fpdf {
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", Size: fpdf.SizeType{Wd: w, Ht: h}})
	f.SetCatalogSort(true)
	f.SetCompression(false)
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	return f
}

// output is the file, which has about so many bytes.
func output(f *fpdf.Fpdf, size int) ([]byte, error) {
	var b bytes.Buffer
	b.Grow(size)
	if err := f.Output(&b); err != nil {
		return nil, fmt.Errorf("fpdf failed: %w", err)
	}
	return b.Bytes(), nil
}

// recovered turns a panic of fpdf into an error. The library is archived and panics on what it does not expect; all we
// give it was checked, but a bug of ours must not end a program that calls us.
func recovered(err *error) {
	if p := recover(); p != nil {
		*err = fmt.Errorf("fpdf failed: %v", p)
	}
}

// claimPages finds the objects of the pages.
func (f *file) claimPages(c *content) error {
	kids := between(f.objects[pagesObject], "/Kids [", "]")
	for _, ref := range anyReference.FindAllSubmatch(kids, -1) {
		n := decimal(ref[1])
		if n <= 0 || n >= len(f.objects) {
			return errShell
		}
		f.pages = append(f.pages, n)
	}
	if len(f.pages) != len(c.sheets) {
		return errShell
	}
	f.set(pagesObject, fmt.Sprintf("<</Type /Pages /Kids [%s] /Count %d>>", bytes.TrimSpace(kids), len(f.pages)))
	return nil
}

// finishPages puts in the pages and adds what fpdf does not know: sizes to the last thousandth, links, and the key under
// which the parent tree knows the marks of the page.
func (f *file) finishPages(c *content, p Profile) error {
	for i, s := range c.sheets {
		contents, err := f.follow(f.pages[i], "/Contents")
		if err != nil {
			return err
		}
		f.setStream(contents, "/Filter /FlateDecode", s.packed)
		entries := fmt.Sprintf(" /MediaBox [0 0 %s %s] /Parent %s /Resources %s", number(s.w), number(s.h),
			reference(pagesObject), reference(resourcesObject))
		if c.tree != nil {
			entries += fmt.Sprintf(" /StructParents %d", i)
			if p == Normal {
				entries += " /Tabs /S"
			}
		}
		if len(s.links) > 0 {
			entries += " /Annots ["
			for _, l := range s.links {
				entries += " " + reference(l.object)
			}
			entries += "]"
		}
		f.set(f.pages[i], fmt.Sprintf("<</Type /Page%s /Contents %s>>", entries, reference(contents)))
	}
	return nil
}
