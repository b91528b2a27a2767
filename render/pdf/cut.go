package pdf

import (
	"bytes"
	"fmt"
	"sync"

	"ovillo/render/font"
	"ovillo/render/page"
)

// cutFace is a face cut down to the runes in use, as two objects of a PDF.
type cutFace struct {
	runes   []rune
	program []byte // the font file
	glyphs  []byte // the map from codes, which are runes, to its glyphs
}

// pending is a face that is being cut; calling it waits.
type pending func() (cutFace, error)

// startCuts begins to cut the faces that a document uses, beside what else there is to do: fpdf takes longer for four
// faces than we for ten pages.
func startCuts(runes *[faceCount]runeSet) (cuts [faceCount]pending) {
	for i := range runes {
		if runes[i].used {
			cuts[i] = onShelf(i, runes[i].list())
		}
	}
	return cuts
}

// shelf keeps the faces cut last. A document is written over and over while its author works on it, and hardly ever
// with other letters than before.
var shelf = struct {
	sync.Mutex
	faces map[shelfKey]pending
}{faces: map[shelfKey]pending{}}

type shelfKey struct {
	face  int
	runes string
}

// shelfSize is the number of faces kept, of some 30 kB each.
const shelfSize = 32

// onShelf takes a face from the shelf or begins to cut it.
func onShelf(face int, runes []rune) pending {
	key := shelfKey{face, string(runes)}
	shelf.Lock()
	defer shelf.Unlock()
	if p, ok := shelf.faces[key]; ok {
		return p
	}
	if len(shelf.faces) >= shelfSize {
		clear(shelf.faces)
	}
	p := pending(sync.OnceValues(func() (cutFace, error) { return cut(face, runes) }))
	shelf.faces[key] = p
	go p() // who calls it later waits for this
	return p
}

// cut has fpdf write a file of one page on which every rune stands, for it embeds the glyphs that it drew, and keeps
// the font of that file.
func cut(face int, runes []rune) (cutFace, error) {
	b, err := drawAll(face, runes)
	if err != nil {
		return cutFace{}, err
	}
	f, err := readFile(b)
	if err != nil {
		return cutFace{}, err
	}
	descendant, err := f.follow(f.composite(), "/DescendantFonts")
	if err != nil {
		return cutFace{}, err
	}
	glyphs, err := f.follow(descendant, "/CIDToGIDMap")
	if err != nil {
		return cutFace{}, err
	}
	descriptor, err := f.follow(descendant, "/FontDescriptor")
	if err != nil {
		return cutFace{}, err
	}
	program, err := f.follow(descriptor, "/FontFile2")
	if err != nil {
		return cutFace{}, err
	}
	// Copies, so that the rest of the file can go.
	return cutFace{runes: runes, program: bytes.Clone(f.objects[program]), glyphs: bytes.Clone(f.objects[glyphs])}, nil
}

func drawAll(face int, runes []rune) (b []byte, err error) {
	defer recovered(&err)
	const name = "face"
	f := newShell(100, 100)
	f.AddPage()
	// fpdf writes into what it is given, so the program is a copy.
	f.AddUTF8FontFromBytes(name, "", font.Of(page.Face(face)).Program())
	f.SetFont(name, "", 10)
	f.Text(0, 0, string(runes))
	return output(f, len(font.Of(page.Face(face)).Program())/4)
}

// composite returns the object of the one composite font; 0, which follow refuses, if there is none.
func (f *file) composite() int {
	for n, o := range f.objects {
		if bytes.HasPrefix(o, []byte("<</Type /Font\n/Subtype /Type0\n")) {
			return n
		}
	}
	return 0
}

// embedFaces adds the fonts and returns their object numbers by face; 0 for a face not used.
func (f *file) embedFaces(cuts [faceCount]pending) (fonts [faceCount]int, err error) {
	for i, wait := range cuts {
		if wait == nil {
			continue
		}
		c, err := wait()
		if err != nil {
			return fonts, fmt.Errorf("%s: %w", font.Of(page.Face(i)).Name(), err)
		}
		fonts[i] = f.embedFace(page.Face(i), c)
	}
	return fonts, nil
}
