package pdf

import (
	"encoding/binary"
	"sync"

	"ovillo/render/font"
	"ovillo/render/page"
)

// cutFace is a face cut down to the runes in use, as two objects of a PDF.
type cutFace struct {
	runes   []rune
	size    int    // of the font file, in bytes
	program []byte // the font file, packed
	glyphs  []byte // the map from codes, which are runes, to its glyphs, packed
}

// pending is a face that is being cut; calling it waits.
type pending func() cutFace

// startCuts begins to cut the faces that a document uses, beside what else there is to do.
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
	p := pending(sync.OnceValue(func() cutFace { return cut(face, runes) }))
	shelf.faces[key] = p
	go p() // who calls it later waits for this
	return p
}

// cut cuts the face and packs what comes of it.
func cut(face int, runes []rune) cutFace {
	s := font.Of(page.Face(face)).Subset(runes)
	glyphs := make([]byte, 2*(int(runes[len(runes)-1])+1))
	for i, r := range runes {
		binary.BigEndian.PutUint16(glyphs[2*r:], s.Glyphs[i])
	}
	return cutFace{runes: runes, size: len(s.Program), program: deflate(s.Program), glyphs: deflate(glyphs)}
}

// embedFaces adds the fonts and returns their object numbers by face; 0 for a face not used.
func (f *file) embedFaces(cuts [faceCount]pending) (fonts [faceCount]int) {
	for i, wait := range cuts {
		if wait != nil {
			fonts[i] = f.embedFace(page.Face(i), wait())
		}
	}
	return fonts
}
