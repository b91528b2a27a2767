package plan

import (
	"math"
	"slices"

	"ovillo/compile/stitch"
	"ovillo/lang/source"
)

// Pattern is a checked pattern.
type Pattern struct {
	Name      string // identifier of the source, also the usual name of the output file
	Title     Text
	By        string
	Edition   int
	Date      string // of the edition, "2026-03" or ""
	Level     string // basic, easy, intermediate, complex or ""
	Kind      string // what is made: trousers, hat … ; "" unknown
	UKTerms   bool   // the source used United Kingdom terms (the page may use either)
	Languages []string
	Intro     Prose
	Notes     []Prose
	Care      Prose
	Licence   Prose
	Changes   Prose

	Photo *Photo // for the first page; nil if the source names none

	Sizes    []Size
	Shown    int // index of the size that is drawn
	Body     []BodyMeasure
	Gauges   []Gauge
	Hooks    []Length // all hooks used, the main one first
	Yarns    []Yarn
	Contents *Contents // what the finished piece is made of; nil if that is not known
	Sample   *Sample   // the piece that was made; nil if the source tells of none

	Allowance int // how much yarn is added to what the pieces take, in thousandths
	Own       []OwnStitch
	Charts    []Chart        // those that rows are worked from, in the order of the source
	Drawn     []*StitchChart // rows that are drawn in symbols, in the order of the source
	Schematic *Schematic     // which parts the schematic shows; nil: all
	Parts     []*Part
	Finish    []Finishing
	Measures  []Measure
	Sums      []Sum
	Notions   Notions
	Cautions  []Caution
	Stitches  []stitch.Form // every form that is printed, in the order of first use
	Rounded   []Rounded     // every length that became a count, in the order of the source

	Regraded *Regraded // what a maker's own gauge changes; nil at the gauge of the source

	Source []byte // the source text, for embedding
	Used   []UsedFile
}

// Photo is a picture of the finished piece.
type Photo struct {
	File   string // its name, from the folder of the source
	Alt    Text   // what it shows, for those who do not see it
	Size   int    // index of the size that was made for it; -1 if not known, or if the pattern is in other sizes alone
	Made   Size   // that size; empty if it is not known
	Data   []byte // the file, the right way up; nil if no files are read
	Format string // "jpeg" or "png"
	W, H   int    // pixels
}

// Size is one size. Names holds its name in each language; AgeFrom and AgeTo are in months, -1 if not known.
type Size struct {
	Name  string
	Names Text
	Age   int // of the youngest wearer, in months; -1 if not said
	AgeTo int // of the oldest; -1 if not said
}

// BodyMeasure is a measure of the wearer: fit.waist.
type BodyMeasure struct {
	Name    string
	Values  Lengths
	Sources []BodySource // the tables it is from; nil: the designer's own figures
	Memory  bool         // the figure of a size is from memory: all are marked wherever they are printed
}

// Book is patterns that are bound in one document.
type Book struct {
	Head     *Pattern // what the book says of itself: title, designer, edition, languages, texts. It has no parts
	Patterns []*Pattern
	Files    []string // the name of the file of each, from the folder of the book
}

// UsedFile is a file that the source takes in, with its name from the folder of the source.
type UsedFile struct {
	Name string
	Text []byte
}

// BodySource is a published table of body measures.
type BodySource struct {
	ID   string // row of the table of sources
	Name Text
}

// Remembered reports whether a measure of the wearer rests on a figure from memory.
func (p *Pattern) Remembered(name string) bool {
	for _, b := range p.Body {
		if b.Name == name {
			return b.Memory
		}
	}
	return false
}

// Gauge says how many stitches and rows of a stitch measure Over. Sts and Rows are in thousandths.
type Gauge struct {
	Stitch    stitch.ID
	Pattern   string // the stitch pattern it is the gauge of; "" if it is that of a stitch
	Called    Text   // the printed name of that stitch pattern; nil if the source gives none
	Over      Length
	Sts, Rows int64  // thousandths; Rows 0: not given
	Repeats   int64  // thousandths of a repeat of the stitch pattern; 0 if stitches were counted
	Rounds    bool   // rounds were counted, not rows
	Hook      Length // it was counted with; 0: the main one
	Blocked   Blocking
	Was       *Gauge // the source's, where a maker's own stands in place of it; else nil
}

// Blocking says whether a gauge was counted on a swatch that was washed and blocked.
type Blocking uint8

// The states of a swatch.
const (
	BlockingUnsaid Blocking = iota
	AfterBlocking
	BeforeBlocking
)

// Yarn is one yarn with the amount each size needs.
type Yarn struct {
	Name        string
	Names       Text
	Weight      string // class by the standard names: light, medium …; "" not given
	Fibre       []Share
	BallWeight  int64        // milligrams, 0 if not given
	BallLength  Length       // 0 if not given
	Amount      []YarnAmount // one a size; nil if it cannot be estimated
	WhyNoAmount string       // "swatch", "gauge" or "" : what is missing
	Swatch      *Swatch      // the swatch that was weighed; nil if there is none
	BySample    bool         // the estimate rests on the sample, not on the swatch
}

// Swatch is a weighed piece of fabric, so many stitches or repeats by so many rows.
type Swatch struct {
	Sts     int
	Repeats bool // Sts are repeats of the stitch pattern
	Rows    int
	Rounds  bool // they are rounds
	Stitch  stitch.ID
	Pattern string // the stitch pattern it is of; "" if it is of a stitch
	Called  Text   // the printed name of that; nil if the source gives none
}

// Sample is the piece that was made and weighed.
type Sample struct {
	Size       int     // which size it is; -1 where the pattern is in other sizes alone
	Made       Size    // that size
	Milligrams []int64 // by yarn, as they stand in Pattern.Yarns; 0: not weighed apart
	All        int64   // milligrams of all yarns together; 0: not weighed so
	Measures   []SampleMeasure
}

// SampleMeasure is a measure of the sample beside what its counts give.
type SampleMeasure struct {
	Name          string // of a measure of the pattern
	Found, Worked Length // as measured, once around where it goes around; by counts and gauge
	Off           bool   // they are further apart than allowed
}

// Sum is measures that the source checks for adding up, as it writes them; they do.
type Sum struct {
	Left, Right string
	Values      Lengths
}

// Share is a fibre and its percentage.
type Share struct {
	Fibre   string
	Percent int
}

// Contents is what the finished piece is made of: the fibres of its yarns, without trimmings and stuffing.
type Contents struct {
	Shares   [][]Share // one list a size: whole per cent that make a hundred, in falling order; nil for a size that takes no yarn
	Weighted []bool    // by size: yarns of unlike fibres are weighed by the amounts it takes, which is an estimate
}

// Alike reports whether all sizes are made of the same.
func (c *Contents) Alike() bool {
	for _, s := range c.Shares {
		if !slices.Equal(s, c.Shares[0]) {
			return false
		}
	}
	return true
}

// YarnAmount is what one size needs, the allowance included. Everything is rounded up from the exact weight; none of the figures
// is worked out from another.
type YarnAmount struct {
	Milligrams int64
	Length     Length // to five metres, but never more than the balls hold; NoLength if the ball gives none
	Yards      int    // to five yards, likewise; 0 if the ball gives no length
	Balls      int    // 0 if the ball is not known
	Of         YarnSum
}

// YarnSum is what an amount is made up of, in milligrams.
type YarnSum struct {
	Fabric, Cords, Pompoms, Seams int64
	Allowance                     int64
}

// OwnStitch is a stitch of the designer's own.
type OwnStitch struct {
	ID           stitch.ID
	Names, Abbr  Text
	Takes, Makes int
	Tall         stitch.ID
	How          Prose
}

// Prose is Markdown in each language; {name} in it stands for a value.
type Prose struct {
	Text   Text
	Values map[string]Value
	Spans  map[string]source.Span
}

// Empty reports whether there is no text in any language.
func (p Prose) Empty() bool { return len(p.Text) == 0 }

// Value is a value that prose puts in: counts, lengths or other amounts, one a size, the abbreviation of a stitch, or what
// something is called in a sentence. The one that is not nil holds.
type Value struct {
	Counts  Nums
	Lengths Lengths
	Amounts []int64 // in thousandths of Unit; NoAmount where there is none
	Unit    AmountUnit
	Form    *stitch.Form
	Called  Text
	Memory  bool // a measure of the wearer from memory
}

// NoAmount stands in the amounts of a [Value] for a size in which there is none.
const NoAmount = math.MinInt64

// AmountUnit is what an amount is given in.
type AmountUnit uint8

// The units.
const (
	InNothing AmountUnit = iota
	InGrams
	InPercent
	InMonths
)

// Measure is a measure of the finished piece.
type Measure struct {
	Name   string // identifier: hips
	Text   Text   // printed name if the source gives one; else the words of the language for Name
	Letter string // A, B, C … as on the drawing; "" if it is not drawn
	Half   bool   // the drawing shows half of it, once around laid flat or one of two pieces of one width
	Values Lengths
	Fits   *Fit
	Over   *Over
	Wanted Lengths // nil if none
	// Of says where the measure is taken: one entry for each term of a sum.
	Of []MeasuredOn
}

// Fit compares a measure with the wearer. Ease is finished minus body.
type Fit struct {
	Body   string
	Values Lengths
	Ease   Lengths
	Lo, Hi Length
}

// Over compares an opening, stretched, with what must go through it: in every size Stretched is at least Values.
type Over struct {
	Body      string  // measure of the wearer
	Values    Lengths // of it
	Assumed   bool    // the source does not state it: the largest heads of the growth table stand in
	Percent   Nums    // how far the edge stretches
	Stretched Lengths
}

// MeasureKind says what is measured of a part.
type MeasureKind uint8

// The kinds of measure.
const (
	Around MeasureKind = iota + 1 // once around a tube, at a round
	Height                        // along the rows
	Width                         // across a flat piece, at a row
	Long                          // along a side edge
	Across                        // through the middle of rounds seen from above, up to a round
)

// MeasuredOn is one term of a measure.
type MeasuredOn struct {
	Kind   MeasureKind
	Part   int  // index into Parts
	Row    Nums // for Around, Width and Across: the row; nil: the widest, or for Across the last
	ToRow  Nums // for Long: it goes from the end of Row to that of ToRow; both nil: along all rows
	Side   Side // for Long
	Minus  bool
	Values Lengths // the term alone
}

// Notions are the things needed besides yarn and hook.
type Notions struct {
	Markers int // the most in use at one time, the marker of a spiral's first stitch included
	Needle  bool
	Buttons []Buttons
	Pin     bool // something to thread a cord or elastic
	Elastic []Elastic
	Formers []Length // for pompoms: their diameters
	Others  []Notion
}

// Notion is something else that is needed, by a name of the source. At most one of the amounts is not nil; where all are,
// the source does not say how much of it.
type Notion struct {
	Text   Text
	N      Nums
	Length Lengths
	Grams  Nums
}

// Elastic of one width.
type Elastic struct {
	Width  Length
	Length Lengths
}

// Buttons of one size of button.
type Buttons struct {
	Size     Length
	N        Nums
	Material string // plastic, wood, metal, glass, cloth, leather, horn, bone, shell, feather or fur; "" if it is not said
}

// Caution is a caution that prints, with its source.
type Caution struct {
	ID       string // row of the rule table
	Severity string // error, warn or caution
	Text     Text
	Source   string // standard or authority, as printed
	Basis    string // how well the source was read, in the table's words
	Read     Read
	Seller   bool // for makers who sell what they make
	Reason   Text // why the designer keeps to it all the same, if she said so
	Step     int  // index into Finish of the step it belongs to, -1 if none
	For      Sizes
	At       source.Span // what it is about
}

// NoRule is the ID of the caution that stands where the source says too little for any rule.
const NoRule = "NONE"

// Read says how well the source of a caution was read.
type Read uint8

// How a source was read. The zero value is a rule of our own, which has no source.
const (
	OwnRule     Read = iota
	ReadItself       // the law, or the page of the authority
	ReadSummary      // what a test house, a journal or the trade says of it
	ReadMemory       // not read: the figure is remembered
)

// Match is a rate at which the two edges of a seam meet: so many stitches to so many ends of rows; 0 if there is none.
type Match struct{ Stitches, Rows int }

// Finishing is one step of the finishing.
type Finishing struct {
	Kind    FinishKind
	Prose   Prose   // FreeStep
	Yarn    int     // Cord, Pompom, Sew; -1 if none is known
	Length  Lengths // Cord, Elastic, Fringe, Pompom (its diameter), Sew (its longer edge, of all pieces together)
	Chains  Nums    // Cord: chains to make, nil if no gauge tells
	Through *Ref    // Cord, Elastic: the row it runs through
	Sewn    []Ref   // Sew: the edges on one side of the seam, in order; Fringe: the edge it hangs from
	To      []Ref   // Sew: those on the other side
	Match   Match   // Sew: how stitches meet ends of rows, where that is one rate in every size
	Ease    Lengths // Sew: how much of the longer edge is eased in, to the half centimetre; nil if that is nowhere worth saying
	Row     Nums    // Cord, Elastic: row it runs through; nil: the part is all one casing
	Wraps   int     // Pompom
	Winds   Lengths // Pompom: how much yarn it takes
	Width   Length  // Elastic; Cord: how wide it lies, 0 if that is not said
	Made    *Ref    // Cord: the part that is the cord; nil: it is chains with slip stitches on them
	Ends    Ends    // Cord
	Strands Nums    // Fringe: all strands; nil if that is not known
	Bundle  int     // Fringe: strands in one place
	Cut     Lengths // Fringe: how long a strand is cut
	Fixed   bool    // Cord: sewn to the fabric midway between its ends
	Inside  bool    // Cord: nothing of it shows when the piece is fastened
	Free    Lengths // Cord: each free end with the piece laid open; nil if not known
	Buttons Buttons // Button
	Span    source.Span
	Before  int // the number of the part, from 1, that cannot be begun without it; 0: it is done after all parts
}

// Ends says how the free ends of a cord are finished.
type Ends uint8

// How the ends of a cord are finished.
const (
	EndsUnsaid Ends = iota
	EndsPlain
	EndsKnotted
	EndsBeads
	EndsPompoms
	EndsTassels
	EndsToggles
	NoEnds // joined into a ring, or sewn in
)

// FinishKind says what a step of the finishing does.
type FinishKind uint8

// The kinds of finishing.
const (
	FreeStep FinishKind = iota + 1
	SewRuns
	MakeCord
	MakePompom
	MakeFringe
	ThreadElastic
	SewButtons
	WeaveEnds
	BlockPiece
)
