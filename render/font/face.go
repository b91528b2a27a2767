package font

import (
	_ "embed"
	"fmt"
	"hash/fnv"
	"strconv"
	"sync"

	"golang.org/x/image/font"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"ovillo/render/page"
)

//go:embed files/SourceSans3-Regular.ttf
var sansRegular []byte

//go:embed files/SourceSans3-SemiBold.ttf
var sansSemiBold []byte

//go:embed files/SourceSerif4-Regular.ttf
var serifRegular []byte

//go:embed files/SourceSerif4-SemiBold.ttf
var serifSemiBold []byte

//go:embed files/SourceSans3-OFL.txt
var sansLicence string

//go:embed files/SourceSerif4-OFL.txt
var serifLicence string

// Licence is the licence of a family of faces.
type Licence struct{ Family, Text string }

// Licences are those of the embedded faces. Whoever hands the faces on hands them on as well.
func Licences() []Licence {
	return []Licence{{"Source Sans 3", sansLicence}, {"Source Serif 4", serifLicence}}
}

// Face is an embedded face. It is parsed on first use, once per process, and is safe for concurrent use.
type Face struct {
	name    string // PostScript name
	program []byte
	stem    int

	once sync.Once
	sfnt *sfnt.Font
	em   fixed.Int26_6 // the size at which a font unit is one whole pixel

	// The vertical measures in thousandths of an em, all positive.
	ascent, descent, capHeight, xHeight float64

	mu     sync.Mutex // guards buf
	buf    sfnt.Buffer
	glyphs cache
	kerns  cache
}

var faces = [...]*Face{
	page.Sans:      {name: "SourceSans3-Regular", program: sansRegular, stem: 82},
	page.SansBold:  {name: "SourceSans3-SemiBold", program: sansSemiBold, stem: 115},
	page.Serif:     {name: "SourceSerif4-Regular", program: serifRegular, stem: 90},
	page.SerifBold: {name: "SourceSerif4-SemiBold", program: serifSemiBold, stem: 125},
}

// Of returns the face. A face that does not exist measures as page.Sans: the writer refuses it by name.
func Of(f page.Face) *Face {
	if int(f) >= len(faces) {
		f = page.Sans
	}
	face := faces[f]
	face.once.Do(face.parse)
	return face
}

// parse panics if it fails: the files are part of the program, not input, and a test reads them all.
func (f *Face) parse() {
	s, err := sfnt.Parse(f.program)
	if err != nil {
		panic(fmt.Sprintf("embedded face %s: %v", f.name, err))
	}
	f.sfnt = s
	f.em = fixed.I(int(s.UnitsPerEm()))
	m, err := s.Metrics(&f.buf, f.em, font.HintingNone)
	if err != nil {
		panic(fmt.Sprintf("embedded face %s: %v", f.name, err))
	}
	f.ascent, f.descent = f.thousandths(m.Ascent), f.thousandths(m.Descent)
	f.capHeight, f.xHeight = f.thousandths(m.CapHeight), f.thousandths(m.XHeight)
}

func (f *Face) thousandths(v fixed.Int26_6) float64 { return float64(v) * 1000 / float64(f.em) }

// Name is the PostScript name: SourceSans3-Regular.
func (f *Face) Name() string { return f.name }

// Program returns a copy of the font file, for embedding.
func (f *Face) Program() []byte { return append([]byte(nil), f.program...) }

// Stem is the width of an upright stem in thousandths of an em, which PDF asks for.
func (f *Face) Stem() int { return f.stem }

// Bounds is the box round all glyphs in thousandths of an em: left, bottom, right, top.
func (f *Face) Bounds() [4]int {
	f.mu.Lock()
	defer f.mu.Unlock()
	b, err := f.sfnt.Bounds(&f.buf, f.em, font.HintingNone)
	if err != nil {
		return [4]int{}
	}
	t := func(v fixed.Int26_6) int { return int(f.thousandths(v)) }
	return [4]int{t(b.Min.X), t(-b.Max.Y), t(b.Max.X), t(-b.Min.Y)}
}

// Sum is a name for the content of the font file, for addresses under which it is kept.
func (f *Face) Sum() string {
	h := fnv.New64a()
	h.Write(f.program)
	return strconv.FormatUint(h.Sum64(), 36)
}
