// Package page is the page model: finished pages as plain data. Layout makes it, the PDF writer (and a text dump for
// tests) reads it. All lengths are millimetres, x to the right and y downwards from the top left corner of the sheet,
// but type sizes, which are points.
package page

// Face is one of the embedded faces.
type Face uint8

// The faces of a document.
const (
	Sans      Face = iota // text
	SansBold              // semibold
	Serif                 // titles
	SerifBold             // semibold
)

// Document is a laid-out document.
type Document struct {
	Pages      []Page
	Outline    []Outline
	Root       *Elem // structure tree; nil for an untagged document
	Title      string
	Author     string
	Subject    string
	Keywords   []string // in all languages
	Lang       string   // main language: en-US
	Langs      []string // all languages of the text, if there are several; the main one is among them
	Titles     []InLang // the title in each language, beside Title, which is what a window shows
	Subjects   []InLang // the subject in each language, beside Subject
	Created    string   // date of the edition, "2026-03-01"; fixes the dates of the file, which has none without it
	Source     []byte   // attached under SourceName if not nil
	SourceName string
	Used       []Attachment     // the files that the source uses, attached beside it
	Places     map[string]Place // what an [Anchor] can lead to by name
}

// Attachment is a file that is attached: a name, with slashes between folders, and a text.
type Attachment struct {
	Name string
	Text []byte
}

// InLang is a text in one of the languages of a document, by its tag.
type InLang struct{ Lang, Text string }

// Place is a place in the document, so far from the top of a page.
type Place struct {
	Page int // from 0
	Y    float64
}

// Outline is a bookmark.
type Outline struct {
	Title string
	Level int // 1 is the top
	Page  int // from 0
	Y     float64
}

// Page is one sheet.
type Page struct {
	W, H  float64
	Items []Item
	Label string // printed number
	// Order is the position of the page in the order of reading, for pages that are drawn in another order than they are
	// read. Pages of the same order, such as 0 for all, are read as they are drawn.
	Order int
}

// Item is something on a page.
type Item interface{ item() }

// Glyphs is a run of text in one face on one line. Its width is what package font measures.
type Glyphs struct {
	X, Base float64 // start of the baseline
	Size    float64 // points
	Face    Face
	Text    string
	Color   Color
	Track   float64 // extra space between letters, in ems
	Elem    *Elem   // the structure element it belongs to; nil: an artifact (header, footer, ornament)
	// Actual is the text in place of this one for those who listen or copy, "" if none. Runs that follow each other with
	// the same Elem and Actual are replaced together, by one text; ornaments may stand between them.
	Actual string
	Expand string  // what an abbreviation stands for; runs are taken together as above
	Angle  float64 // degrees counter-clockwise, round (X, Base); 0 as a rule
}

// Path is a line or an area.
type Path struct {
	Cmds   []Cmd
	Stroke *Color // nil: no line
	Width  float64
	Dash   []float64
	Round  bool // round ends and joins
	Fill   *Color
	Elem   *Elem // nil: artifact
}

// Picture is a photograph.
type Picture struct {
	X, Y, W, H float64
	Data       []byte // PNG or JPEG, checked by the caller
	Format     string // "png" or "jpeg"
	Elem       *Elem
}

// Anchor makes a rectangle a link to an address or to a place in the document.
type Anchor struct {
	X, Y, W, H float64
	URI        string // "#name" is a place of the document by its name, see [Document]
	Page       int    // from 0, if URI is empty
	DestY      float64
	Label      string // what the link leads to, for those who listen; without it, the address
	Elem       *Elem  // a Link, which holds the text of the link as well
}

// Folio begins another page on the same sheet: what follows stands at this position in the order of reading, whatever the
// Order of the sheet. Two pages of a booklet side by side are read far apart.
type Folio struct{ Order int }

func (Glyphs) item()  {}
func (Path) item()    {}
func (Picture) item() {}
func (Anchor) item()  {}
func (Folio) item()   {}

// Color is red, green and blue from 0 to 1.
type Color [3]float64

// Black is the colour of all text.
var Black = Color{0, 0, 0}

// Cmd is a step of a path.
type Cmd struct {
	Op byte // M L C Z
	P  [3]Point
}

// Point is a place on the page.
type Point struct{ X, Y float64 }

// Elem is an element of the structure tree, by the standard structure types: Document, Sect, H1, H2, P, L, LI, Lbl,
// LBody, Table, TR, TH, TD, Figure, Span, Link, Note.
type Elem struct {
	Tag   string
	Lang  string
	Alt   string
	Scope string      // TH: Row, Column or Both
	Box   *[4]float64 // Figure: x, y, w, h in millimetres on its page
	Kids  []*Elem     // in reading order; text belongs to an element through its items
	Span  [2]int      // TH, TD: rows and columns spanned; 0 means 1
}

// New adds a child.
func (e *Elem) New(tag string) *Elem {
	c := &Elem{Tag: tag}
	if e != nil {
		e.Kids = append(e.Kids, c)
	}
	return c
}
