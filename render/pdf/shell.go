package pdf

import (
	"bytes"
	"fmt"

	"github.com/go-pdf/fpdf"

	"ovillo/render/font"
	"ovillo/render/page"
)

// makeShell has fpdf write a file of our pages and the faces they use.
//
// fpdf cuts a face down to the runes that it drew itself. So it draws them all, on a page behind the last that is taken
// out again (claimPages). The library is archived and panics on what it does not expect; all we give it was checked,
// but a bug of ours must not end a program that calls us.
func makeShell(c *content) (shell []byte, err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("fpdf failed: %v", p)
		}
	}()
	last := c.sheets[len(c.sheets)-1]
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", Size: fpdf.SizeType{Wd: last.w, Ht: last.h}})
	f.SetCatalogSort(true)
	f.SetCompression(false) // of pages: fpdf makes a packer for each, which takes longer than packing (finishPages)
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	for _, s := range c.sheets {
		f.AddPageFormat("P", fpdf.SizeType{Wd: s.w, Ht: s.h})
		f.RawWriteBuf(bytes.NewReader(s.b))
	}
	f.AddPage()
	for face := range c.runes {
		used := &c.runes[face]
		if !used.used {
			continue
		}
		// fpdf writes into what it is given, so the program is a copy.
		f.AddUTF8FontFromBytes(shellFace(face), "", font.Of(page.Face(face)).Program())
		f.SetFont(shellFace(face), "", 10)
		f.Text(0, 0, string(used.list()))
	}
	var b bytes.Buffer
	if err := f.Output(&b); err != nil {
		return nil, fmt.Errorf("fpdf failed: %w", err)
	}
	return b.Bytes(), nil
}

// shellFace is the name of a face within the shell.
func shellFace(face int) string { return fmt.Sprintf("face%d", face) }

// claimPages finds the objects of our pages and drops the page that only registered the runes.
func (f *file) claimPages(c *content) error {
	for _, ref := range anyReference.FindAllSubmatch(between(f.objects[pagesObject], "/Kids [", "]"), -1) {
		f.pages = append(f.pages, decimal(ref[1]))
	}
	if len(f.pages) != len(c.sheets)+1 {
		return errShell
	}
	extra := f.pages[len(c.sheets)]
	f.pages = f.pages[:len(c.sheets)]
	stream, err := f.follow(extra, "/Contents")
	if err != nil {
		return err
	}
	f.drop(stream)
	f.drop(extra)
	kids := ""
	for _, n := range f.pages {
		kids += " " + reference(n)
	}
	f.set(pagesObject, fmt.Sprintf("<</Type /Pages /Kids [%s] /Count %d>>", kids[1:], len(f.pages)))
	return nil
}

// finishPages packs the pages and adds what fpdf does not know: sizes to the last thousandth, links, and the key under
// which the parent tree knows the marks of the page.
func (f *file) finishPages(c *content, p Profile) error {
	for i, s := range c.sheets {
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
		contents, err := f.follow(f.pages[i], "/Contents")
		if err != nil {
			return err
		}
		f.setStream(contents, "/Filter /FlateDecode", deflate(between(f.objects[contents], "stream\n", "\nendstream")))
		f.set(f.pages[i], fmt.Sprintf("<</Type /Page%s /Contents %s>>", entries, reference(contents)))
	}
	return nil
}
