package pdf

import (
	"io"

	"ovillo/render/page"
)

// Profile is the kind of PDF.
type Profile uint8

const (
	// Normal is PDF 1.7, with the source of the document attached.
	Normal Profile = iota
	// Archive is PDF/A-1b, which is PDF 1.4 and allows no attachment.
	Archive
)

// Options say how to write. The zero value is the normal profile.
type Options struct {
	Profile Profile
}

// Write writes the document. It fails before the first byte if the document is not drawable: see [MissingError] for
// the case that an author can mend.
func Write(w io.Writer, d *page.Document, o Options) error {
	if err := check(d, o); err != nil {
		return err
	}
	t, err := newTree(d.Root)
	if err != nil {
		return err
	}
	runes := runesOf(d)
	cuts := startCuts(&runes)
	c, err := drawPages(d, t)
	if err != nil {
		return err
	}
	c.cuts = cuts
	shell, err := makeShell(c)
	if err != nil {
		return err
	}
	f, err := finish(shell, d, c, o)
	if err != nil {
		return err
	}
	file := f.packed
	version := "1.7"
	if o.Profile == Archive {
		file, version = f.plain, "1.4"
	}
	_, err = w.Write(file(version))
	return err
}

// finish adds to the objects of the shell all that makes them the document.
func finish(shell []byte, d *page.Document, c *content, o Options) (*file, error) {
	f, err := readFile(shell)
	if err != nil {
		return nil, err
	}
	if err := f.claimPages(c); err != nil {
		return nil, err
	}
	f.addLinks(d, c)
	catalog := f.addTree(c)
	if err := f.finishPages(c, o.Profile); err != nil {
		return nil, err
	}
	catalog += f.addOutline(d)
	catalog += pageLabels(d)
	catalog += f.addMetadata(d, o.Profile)
	catalog += f.addIntent()
	if o.Profile == Normal {
		catalog += f.addSource(d)
	}
	catalog += viewer(d, o.Profile)
	f.setCatalog(catalog)
	pictures := f.embedPictures(c.pictures)
	f.setResources(f.embedFaces(c.cuts), pictures) // last, for it waits
	return f, nil
}

// viewer is how the file wants to be opened: with its title, and printed at its true size, since drawings are to scale.
func viewer(d *page.Document, p Profile) string {
	s := " /ViewerPreferences <</DisplayDocTitle true"
	if p == Normal {
		s += " /PrintScaling /None"
	}
	s += ">>"
	if d.Lang != "" {
		s += " /Lang " + textString(d.Lang)
	}
	return s
}
