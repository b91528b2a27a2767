package lang

// This file declares every node of the tree, in the order of the reference (reference.md). A reader who reads only this
// file knows the language: the comment above a node shows the form it stands for, and the tags are the grammar that reads
// it. The tree holds no meaning: names, counts and sizes are worked out in package compile.
//
// In the tags, 'x' is a word of the language, @@ a node, ( ) ? * | as usual. Nodes without tags are read by hand, since they
// need to look ahead or are read most: values and counts (value.go), names, references and texts (name.go), rows and counts
// (row.go), lists of instructions (instruction.go), stitches (work.go), how far and how often (extent.go), which places
// (place.go). Their comments give their grammar.

import (
	"github.com/alecthomas/participle/v2/lexer"

	"ovillo/lang/source"
)

// At says where a node stands. It is embedded in every node.
type At struct {
	Pos    lexer.Position
	EndPos lexer.Position
}

// Span returns the bytes of the source that the node was read from.
func (a At) Span() source.Span {
	return source.Span{Start: int32(a.Pos.Offset), End: int32(a.EndPos.Offset)}
}

// Node is a statement, an item of a row, or a part of one.
type Node interface{ Span() source.Span }

// ---- Files and statements -------------------------------------------------------------------------------------------

// File is a whole source: its statements, in order.
type File struct {
	Source *source.File
	Body   []*Statement

	tongue *tongue         // what it is written in; nil: English
	idiom  source.Span     // the line that says so
	spelt  *spelt          // its tokens as they were read
	own    map[string]bool // the names that it gives to things, but for measures
	used   []*usedFile     // the files that it takes in
	asked  []string        // their names from its folder, and those of files that could not be read
}

// Statement is one statement, with the statements of its block if it opens one.
type Statement struct {
	Whole source.Span   // from its first token to the end of its block
	Head  source.Span   // the statement alone
	Node  StatementNode // nil if it could not be read; that was reported
	Block Block         // what the statement opens; "" if nothing
	Body  []*Statement  // the statements of its block
	Lines []RawLine     // the lines behind a bar, in blocks of prose and in charts

	visits []visit // the nodes of Node, if they were listed
}

// Block names a kind of block: the context that decides which statements may stand in it.
type Block string

// The blocks of the language.
const (
	InFile      Block = "file"
	InBook      Block = "book"
	InPattern   Block = "pattern"
	InSizes     Block = "sizes"
	InGauge     Block = "gauge"
	InYarn      Block = "yarn"
	InSample    Block = "sample"
	InStitch    Block = "stitch"
	InChart     Block = "chart"
	InPart      Block = "part"
	InFinish    Block = "finish"
	InMeasure   Block = "measure"
	InProse     Block = "prose"
	InShape     Block = "shape"
	InMotifs    Block = "motifs"
	InPatternOf Block = "stitch pattern"
)

// RawLine is a line behind a bar.
//
//	en | Leggings for toddlers, worked **without a seam**.
//	 4 | . x x x . .
type RawLine struct {
	Span source.Span // of the text
	Head string      // the language or the number; "" goes on with the line above
	Text string
}

// StatementNode is a statement that was read.
type StatementNode interface {
	Node
	statement()
}

// Use takes in a file that patterns share, from the folder of the source.
//
//	use "common.ovillo"
type Use struct {
	At
	File Str `parser:"'use' @@"`
}

// Book opens a book of patterns, which is a source of its own.
//
//	book sea_set … end
type Book struct {
	At
	Name *Name `parser:"'book' @@"`
}

// BookPattern names the file of a pattern of a book. The patterns stand in the order of these lines.
//
//	pattern "hat.ovillo"
type BookPattern struct {
	At
	File Str `parser:"'pattern' @@"`
}

// ---- The header -----------------------------------------------------------------------------------------------------

// Bi is one text for a language.
//
//	en "Waistband"
type Bi struct {
	At
	Lang string `parser:"@Word"`
	Text Str    `parser:"@@"`
}

// Pattern opens the header.
//
//	pattern marisma_leggings … end
type Pattern struct {
	At
	Name *Name `parser:"'pattern' @@"`
}

// Title gives the printed title of the pattern or of a part.
//
//	title en "Body" es "Cuerpo"
type Title struct {
	At
	Text []*Bi `parser:"'title' @@+"`
}

// By names the designer or studio.
//
//	by "Estudio Marisma"
type By struct {
	At
	Name Str `parser:"'by' @@"`
}

// Photo names a picture that lies beside the source, the size that was made for it, and what it shows, for those who do not
// see it.
//
//	photo "sea-hat.jpg" size "2 y" en "A child in a blue hat on the beach." es "Una niña con un gorro azul en la playa."
//	photo "seal.png" en "A grey seal of crochet." es "Una foca gris de ganchillo."
type Photo struct {
	At
	File Str   `parser:"'photo' @@"`
	Size *Str  `parser:"( 'size' @@ )?"`
	Alt  []*Bi `parser:"@@*"`
}

// Edition counts the published editions, with the date it is published if one is given.
//
//	edition 2
//	edition 2, "2026-03"
type Edition struct {
	At
	N    *Cnt `parser:"'edition' @@"`
	Date *Str `parser:"( ',' @@ )?"`
}

// Level is the difficulty: basic, easy, intermediate or complex.
//
//	level easy
type Level struct {
	At
	Word *Name `parser:"'level' @@"`
}

// Terms says how the stitch names of the source are to be read.
//
//	terms us
type Terms struct {
	At
	Word *Name `parser:"'terms' @@"`
}

// Languages says in which languages the pattern is published.
//
//	languages en, es
type Languages struct {
	At
	Words []*Name `parser:"'languages' @@ ( ',' @@ )*"`
}

// Kind says what is made, for the cautions.
//
//	kind trousers
type Kind struct {
	At
	Word *Name `parser:"'kind' @@"`
}

// Markets says where the pattern is offered, which decides the safety rules that hold.
//
//	for eu, us, uk
type Markets struct {
	At
	Words []*Name `parser:"'for' @@ ( ',' @@ )*"`
}

// Not says what is not so: that makers sell what they make by the pattern, or that the piece is stuffed.
//
//	not for sale
//	not stuffed
type Not struct {
	At
	ForSale bool `parser:"'not' ( 'for' @'sale'"`
	Stuffed bool `parser:"| @'stuffed' )"`
}

// Prose opens a block of Markdown lines.
//
//	intro … end
//	note … end
//	step … end
//	care … end
type Prose struct {
	At
	Word string `parser:"@( 'intro' | 'note' | 'step' | 'care' | 'licence' | 'changes' )"`
}

// ---- Sizes ----------------------------------------------------------------------------------------------------------

// Sizes names the sizes, smallest first.
//
//	sizes "1 y", "2 y", "3 y" … end
type Sizes struct {
	At
	Names []*Str `parser:"'sizes' @@ ( ',' @@ )*"`
}

// SizeNames gives the names of the sizes in another language, as many as there are sizes.
//
//	names es "1 año", "2 años", "3 años"
type SizeNames struct {
	At
	Lang  string `parser:"'names' @Word"`
	Names []*Str `parser:"@@ ( ',' @@ )*"`
}

// Age is the age a size is made for: that of its youngest wearer, and that of its oldest if it is said.
//
//	age 12 (24, 36) months
//	age 0 (6, 12) to 6 (12, 24) months
type Age struct {
	At
	Value *Val `parser:"'age' @@"`
	To    *Val `parser:"( 'to' @@ )?"`
}

// Fit gives measures of the wearer, used as fit.waist.
//
//	fit waist 50.5 (53.5, 54.5) cm, hips 53 (55, 57) cm
type Fit struct {
	At
	Items []*FitItem `parser:"'fit' @@ ( ',' @@ )*"`
}

// Body takes measures of the wearer from a table of body measures: from the sizes made for each size's age, or from those
// named. Of several tables, the first that has the size is meant.
//
//	body babies by age
//	body babies, children by age
//	body women "Small", "Medium", "Large"
type Body struct {
	At
	Tables []*Name `parser:"'body' @@ ( ',' @@ )*"`
	ByAge  bool    `parser:"( @'by' 'age'"`
	Rows   []*Str  `parser:"| @@ ( ',' @@ )* )"`
}

// FitItem is one measure of the wearer.
type FitItem struct {
	At
	Name  *Name `parser:"@@"`
	Value *Val  `parser:"@@"`
}

// Shown is the size that is drawn and photographed.
//
//	shown "2 y"
type Shown struct {
	At
	Size Str `parser:"'shown' @@"`
}

// ---- Gauge, hook, yarn ----------------------------------------------------------------------------------------------

// Gauge opens the block that says how many stitches and rows measure a length.
//
//	gauge 10 cm … end
//	gauge 10 cm, blocked … end · gauge 10 cm, not blocked … end
type Gauge struct {
	At
	Over       *Val `parser:"'gauge' @@"`
	Blocked    bool `parser:"( ',' ( @'blocked'"`
	NotBlocked bool `parser:"| 'not' @'blocked' ) )?"`
}

// GaugeLine is the gauge of one stitch, or of a chain.
//
//	dc 19 sts, 10 rows
//	ch 20 sts
//	fans 3 repeats, 11 rows · hdc 20 sts, 13.5 rounds, hook 3.25 mm
type GaugeLine struct {
	At
	Chain   bool  `parser:"( @'ch'"`
	Stitch  *Name `parser:"| @@ )"`
	Sts     *Cnt  `parser:"@@ ( 'sts' | 'st'"`
	Repeats bool  `parser:"| @( 'repeats' | 'repeat' ) )"`
	Rows    *Cnt  `parser:"( ',' @@"`
	Rounds  bool  `parser:"( 'rows' | 'row' | @( 'rounds' | 'round' ) ) )?"`
	Hook    *Val  `parser:"( ',' 'hook' @@ )?"`
}

// Hook is the hook, for the pattern or for a part.
//
//	hook 3.75 mm
type Hook struct {
	At
	Size *Val `parser:"'hook' @@"`
}

// Notion is something that is needed besides yarn and hook, with how much or how many of it if that is said.
//
//	notion en "toy stuffing" es "relleno para muñecos", 30 g
//	notion en "black embroidery thread" es "hilo de bordar negro"
//
// Where its words do not tell what it is, `as` does, with its size and what it is made of.
//
//	notion en "safety noses" es "hocicos de seguridad", as eye 9 mm of plastic, 1
type Notion struct {
	At
	Text     []*Bi `parser:"'notion' @@+"`
	Kind     *Name `parser:"( ',' ( 'as' @@"`
	Size     *Val  `parser:"        @@?"`
	Material *Name `parser:"        ( 'of' @@ )?"`
	Amount   *Val  `parser:"      | @@ ) )*"`
}

// Yarn opens a yarn, at the top; in a part it says which yarn is used.
//
//	yarn kelp like sand … end
//	yarn sand
type Yarn struct {
	At
	Name *Name `parser:"'yarn' @@"`
	Like *Name `parser:"( 'like' @@ )?"`
}

// Stripes lets the yarn of the rows follow a cycle, in a part.
//
//	stripes sand 2, kelp 2
type Stripes struct {
	At
	Items []*Stripe `parser:"'stripes' @@ ( ',' @@ )*"`
}

// Stripe is so many rows of a yarn.
type Stripe struct {
	At
	Yarn *Name `parser:"@@"`
	N    *Cnt  `parser:"@@"`
}

// YarnName is the name of a yarn's colour.
//
//	name en "sand" es "arena"
type YarnName struct {
	At
	Text []*Bi `parser:"'name' @@+"`
}

// Weight is the class of the yarn by the standard names.
//
//	weight light
type Weight struct {
	At
	Words []*Name `parser:"'weight' @@+"`
}

// Fibre is what the yarn is made of.
//
//	fibre cotton 60 %, wool 40 %
type Fibre struct {
	At
	Items []*FitItem `parser:"'fibre' @@ ( ',' @@ )*"`
}

// Surface is what the surface of the yarn is like: smooth, brushed, fluffy or looped.
//
//	surface smooth
type Surface struct {
	At
	Word *Name `parser:"'surface' @@"`
}

// Ball is the weight and length of a ball.
//
//	ball 50 g, 120 m
type Ball struct {
	At
	Weight *Val `parser:"'ball' @@ ','"`
	Length *Val `parser:"@@"`
}

// Swatch is a weighed piece of fabric, from which the yarn is estimated.
//
//	swatch 20 sts by 10 rows of dc, 4.1 g
//	swatch 3 repeats by 8 rows of fans, 6 g
type Swatch struct {
	At
	Sts     *Cnt  `parser:"'swatch' @@"`
	Repeats bool  `parser:"( 'sts' | 'st' | @( 'repeats' | 'repeat' ) ) 'by'"`
	Rows    *Cnt  `parser:"@@"`
	Rounds  bool  `parser:"( 'rows' | @'rounds' ) 'of'"`
	Stitch  *Name `parser:"@@ ','"`
	Weight  *Val  `parser:"@@"`
}

// Allowance is how much yarn is added to what the pieces take, for ends and the swatch.
//
//	allowance 8 %
type Allowance struct {
	At
	Share *Val `parser:"'allowance' @@"`
}

// Sample opens the piece that was made: one size of the pattern, measured and weighed when it was done.
//
//	sample "2 y" … end
type Sample struct {
	At
	Size Str `parser:"'sample' @@"`
}

// SampleWeight is what the sample weighs: the yarns one by one, or all of them together.
//
//	weight sand 180 g, kelp 34 g
//	weight 214 g
type SampleWeight struct {
	At
	Items []*YarnWeight `parser:"'weight' ( @@ ( ',' @@ )*"`
	All   *Val          `parser:"| @@ )"`
}

// SampleMeasure is a measure of the measure block as the sample measures; flat: laid flat, half of what goes around.
//
//	length 31.5 cm
//	hips 29 cm flat within 1 cm
type SampleMeasure struct {
	At
	Name   *Name `parser:"@@"`
	Value  *Val  `parser:"@@"`
	Flat   bool  `parser:"@'flat'?"`
	Within *Val  `parser:"( 'within' @@ )?"`
}

// YarnWeight is how much of a yarn is in the sample.
type YarnWeight struct {
	At
	Yarn  *Name `parser:"@@"`
	Grams *Val  `parser:"@@"`
}

// ---- Names for things -----------------------------------------------------------------------------------------------

// Let gives a value a name. It stands above its first use.
//
//	let leg = (waist - 2 * bridge) / 2
type Let struct {
	At
	Name  *Name `parser:"'let' @@ '='"`
	Value *Val  `parser:"@@"`
}

// Group gives a list of instructions a name; it is then used like a stitch.
//
//	group wave = [sc in next, skip 2, 5 dc in next, skip 2]
type Group struct {
	At
	Name *Name `parser:"'group' @@ '='"`
	List *List `parser:"'[' @@ ']'"`
}

// Stitch opens a stitch of the designer's own.
//
//	stitch pebble … end
type Stitch struct {
	At
	Name *Name `parser:"'stitch' @@"`
}

// Takes says what an own stitch takes and makes, and how tall it stands.
//
//	takes 1, makes 1, tall as dc
type Takes struct {
	At
	Takes *Cnt  `parser:"'takes' @@ ','"`
	Makes *Cnt  `parser:"'makes' @@"`
	Tall  *Name `parser:"( ',' 'tall' 'as' @@ )?"`
}

// Abbr is the abbreviation of an own stitch.
//
//	abbr en "peb" es "piedra"
type Abbr struct {
	At
	Text []*Bi `parser:"'abbr' @@+"`
}

// StitchPattern opens a stitch pattern: rows that are worked over and over. It may have a name for print.
//
//	stitch pattern fans … end
type StitchPattern struct {
	At
	Name *Name `parser:"'stitch' 'pattern' @@"`
}

// MultipleOf says over which numbers of stitches a stitch pattern comes out.
//
//	multiple of 6 plus 1
type MultipleOf struct {
	At
	N    *Cnt `parser:"'multiple' 'of' @@"`
	Plus *Cnt `parser:"( 'plus' @@ )?"`
}

// PatternRow is a row of a stitch pattern, by its number, or a set-up row, which is worked once before row 1.
//
//	row 1: sc in next, [skip 2, 5 dc in next, skip 2, sc in next] across
//	row 2, begin with ch 3 as dc: 3 dc in next, …
//	set up: sc in each
type PatternRow struct {
	At
	Setup  bool      `parser:"( @'set' 'up'"`
	N      *Cnt      `parser:"| ( 'row' | 'round' ) @@ )"`
	Opts   []*RowOpt `parser:"( ',' @@ )*"`
	List   *List     `parser:"':' @@"`
	Claims *Claims   `parser:"( '=' @@ )?"`
}

// MayEnd says after which of its rows a stitch pattern may end; without it, after any.
//
//	may end after 1, 4
type MayEnd struct {
	At
	Rows []*Cnt `parser:"'may' 'end' 'after' @@ ( ',' @@ )*"`
}

// Chart opens a grid of rows, drawn as the right side looks, with row 1 at the bottom; or a drawing of rows of a part, stitch
// by stitch, in symbols.
//
//	chart wave … end
//	chart fans of body … end
type Chart struct {
	At
	Name *Name `parser:"'chart' @@"`
	Of   *Name `parser:"( 'of' @@ )?"`
}

// DrawnRows says which rows of the part are drawn in symbols: by their numbers, or by their names.
//
//	rows 1 to 6
//	row fans
type DrawnRows struct {
	At
	Word string `parser:"@( 'row' | 'rows' | 'round' | 'rounds' )"`
	From *Cnt   `parser:"@@"`
	To   *Cnt   `parser:"( 'to' @@ )?"`
}

// DrawnStitches says which stitches of the lowest row are drawn with all that stands on them, counted from the right.
//
//	stitches 1 to 13
type DrawnStitches struct {
	At
	From *Cnt `parser:"'stitches' @@"`
	To   *Cnt `parser:"'to' @@"`
}

// DrawnRepeats says how often the repeat of the rows is drawn; what stands before and behind it is drawn as well.
//
//	repeats 2
type DrawnRepeats struct {
	At
	N *Cnt `parser:"'repeats' @@"`
}

// Schematic says which parts the schematic shows, in this order, or which it leaves out.
//
//	schematic body, sleeve
//	schematic without pocket
type Schematic struct {
	At
	Without bool    `parser:"'schematic' @'without'?"`
	Parts   []*Name `parser:"@@ ( ',' @@ )*"`
}

// Mesh makes the chart one of filet: each cell is a square, a stitch and so many places behind it.
//
//	mesh dc and 2
type Mesh struct {
	At
	Stitch *Name `parser:"'mesh' @@ 'and'"`
	N      *Cnt  `parser:"@@"`
}

// Legend says what the cells of a chart mean: a yarn for each mark; in a mesh, which squares are open and which filled.
//
//	legend "." sand, "x" kelp
//	legend "." open, "x" filled
type Legend struct {
	At
	Items []*LegendItem `parser:"'legend' @@ ( ',' @@ )*"`
}

// LegendItem is one mark of a chart, with its yarn, or open or filled.
type LegendItem struct {
	At
	Mark  Str   `parser:"@@"`
	Means *Name `parser:"@@"`
}

// ---- Parts ----------------------------------------------------------------------------------------------------------

// Part opens a part: what is worked in one go.
//
//	part body … end
//	part left_leg like right_leg … end
//	part left_front mirror of right_front … end
type Part struct {
	At
	Name   *Name `parser:"'part' @@"`
	Like   *Name `parser:"( 'like' @@"`
	Mirror *Name `parser:"| 'mirror' 'of' @@ )?"`
}

// Call says what a label, marker, row or part is called in print, with its article where the language has one.
//
//	call right en "the right leg" es "la pierna derecha"
type Call struct {
	At
	Name *Name `parser:"'call' @@"`
	Text []*Bi `parser:"@@+"`
}

// Meant says why what is reported about the statement behind it is as the designer wants it.
//
//	meant OV608 en "one fan is eight stitches" es "un abanico son ocho puntos"
type Meant struct {
	At
	Code *Name `parser:"'meant' @@"`
	Text []*Bi `parser:"@@+"`
}

// Base is the stitch that inc and dec are made of.
//
//	base sc
type Base struct {
	At
	Stitch *Name `parser:"'base' @@"`
}

// Begin says how a row begins, for one stitch or (behind a row's header) for that row.
//
//	begin dc with ch 3 as dc
//	begin hdc with ch 1
//	begin sc none
type Begin struct {
	At
	Stitch *Name `parser:"'begin' @@"`
	None   bool  `parser:"( @'none'"`
	N      *Cnt  `parser:"| 'with' 'ch' @@"`
	As     *Name `parser:"  ( 'as' @@ )? )"`
}

// Style says how the part is worked.
//
//	in rows
//	in joined rounds
//	in joined rounds, turned
//	in spiral rounds
type Style struct {
	At
	Word   string `parser:"'in' ( @'rows' | @( 'joined' | 'spiral' ) 'rounds' )"`
	Turned bool   `parser:"( ',' @'turned' )?"`
}

// FirstSide says that the first row of the part shows the wrong side.
//
//	row 1 is wrong side
type FirstSide struct {
	At
	N *Cnt `parser:"( 'row' | 'round' ) @@ 'is' 'wrong' 'side'"`
}

// Make says how many of the part are made.
//
//	make 2
type Make struct {
	At
	N *Cnt `parser:"'make' @@"`
}

// Chain starts a part with n chains to work into.
//
//	chain 40
//	chain waist, join
//	chain 12, both sides
//	chain 4, ring
type Chain struct {
	At
	N    *Cnt `parser:"'chain' @@"`
	Join bool `parser:"( ',' ( @'join'"`
	Ring bool `parser:"| @'ring'"`
	Both bool `parser:"| @'both' 'sides' ) )?"`
}

// Foundation starts a part with a row of stitches that need no chain.
//
//	foundation sc 20, join
type Foundation struct {
	At
	Stitch *Name `parser:"'foundation' @@"`
	N      *Cnt  `parser:"@@"`
	Join   bool  `parser:"( ',' @'join' )?"`
}

// Ring starts a part with an adjustable ring.
//
//	ring
type Ring struct {
	At
	Word bool `parser:"@'ring'"`
}

// Start starts a part in a place of another part; every place of its first row is then named.
//
//	start in body.right_gap
type Start struct {
	At
	In *Ref `parser:"'start' 'in' @@"`
}

// From starts a part along edges and runs that are there already.
//
//	from waistband.foundation
//	from below yoke.under, yoke.sleeve
//	from right edge of front at 4 per 3 rows
//	from around blanket at 5 per 6 rows
//	from back.neck, mark c1, neck edge of front by gauge as side, multiple of 6 by side
//	from around throw
type From struct {
	At
	Runs []*FromRun `parser:"'from' @@ ( ',' @@ )*"`
}

// FromRun is one run of the edge a part starts along: places by name, new chains, ends of rows, or all round a piece or an
// opening. Between two runs a marker may be set; behind them all may stand to which multiple the ends of rows are brought.
//
//	back.neck as back_neck · below yoke.under · chain 20 · mark c1
//	right edge of front at 4 per 3 rows · around mitten.thumb
//	multiple of 6 plus 1 by left_side and right_side
//
//	fromrun = ( [ "below" ] ref | "chain" cnt | sideedge [ pickup ] | "around" ref [ pickup ] ) [ as ]
//	        | "mark" name | "multiple" "of" cnt [ "plus" cnt ] "by" name { "and" name }
type FromRun struct {
	At
	Below  bool
	Chain  *Cnt
	Side   *SideEdge
	Around bool
	Ref    *Ref
	Pick   *PickUp
	Label  *As
	Mark   *Name
	Mult   *Cnt
	Plus   *Cnt
	By     []*Name
}

// SideEdge is the ends of rows at one side of a flat part: all of them, or those of some rows. The side is right or left as
// the right side shows it, or has the name that the part gave its edge.
//
//	right edge of front · armhole edge of back rows 31 to 60 · neck edge of front rows slope
//
//	sideedge = name "edge" "of" name [ ( "rows" | "row" ) ( cnt "to" cnt | name ) ]
type SideEdge struct {
	At
	Side  *Name
	Part  *Name
	From  *Cnt
	To    *Cnt
	Label *Name
}

// PickUp says how many stitches are worked along how many ends of rows, or that the two gauges decide.
//
//	at 4 per 3 rows · by gauge
//
//	pickup = "at" cnt "per" cnt ( "rows" | "row" | "rounds" | "round" ) | "by" "gauge"
type PickUp struct {
	At
	N     *Cnt
	Per   *Cnt
	Gauge bool
}

// CountOff walks along the edge without working: it sets markers and names sections, and must reach the end.
//
//	count off: 2, mark m1, leg, mark m2, 10 as sleeve, mark r1 in next, 5
type CountOff struct {
	At
	Items []*OffItem `parser:"'count' 'off' ':' @@ ( ',' @@ )*"`
}

// OffItem is a step of a counting off: a marker, or a number of places.
//
//	offitem = ( "mark" name [ "in" "next" ] | cnt ) [ as ]
type OffItem struct {
	At
	Mark  *Name
	Next  bool
	N     *Cnt
	Label *As
}

// Have states counts between rows.
//
//	have 54 in back, 38 in sleeve
type Have struct {
	At
	Claims *Claims `parser:"'have' @@"`
}

// RoundsBegin moves the start of the round to a marker.
//
//	rounds begin at inner
type RoundsBegin struct {
	At
	Ref *Ref `parser:"( 'rounds' | 'rows' ) 'begin' 'at' @@"`
}

// LevelWith ends a spiral so that no step shows.
//
//	level with 2 sl st
type LevelWith struct {
	At
	N *Cnt `parser:"'level' 'with' @@ 'sl' 'st'"`
}

// Close draws the last round together.
//
//	close through front loops
type Close struct {
	At
	Loops string `parser:"'close' 'through' ( @( 'front' | 'back' | 'both' ) 'loops' )"`
}

// FastenOff cuts the yarn, close to the work or with a tail to sew with.
//
//	fasten off
//	fasten off, long tail
type FastenOff struct {
	At
	Tail bool `parser:"'fasten' 'off' ( ',' @'long' 'tail' )?"`
}

// Repeat works the rows of its block several times.
//
//	repeat 4 times … end = 40
//	repeat rows for 30 cm … end
type Repeat struct {
	At
	For *Val `parser:"'repeat' ( ( 'rows' | 'rounds' ) 'for' @@"`
	N   *Cnt `parser:"| @@ 'times' )"`
}

// Edges names the side edges of a flat part, as a row that shows the right side meets them.
//
//	edges armhole, neck
type Edges struct {
	At
	First *Name `parser:"'edges' @@ ','"`
	Last  *Name `parser:"@@"`
}

// Shape works rows by a schedule: plain rows, and shaped ones where its lines say.
//
//	shape taper: 30 (32) rounds … end = 30
//	shape taper: 46 rows, 56 to 40, on right-side rows … end
type Shape struct {
	At
	Label *Name       `parser:"'shape' @@? ':'"`
	N     *Cnt        `parser:"@@"`
	Word  string      `parser:"@( 'rows' | 'rounds' )"`
	Opts  []*ShapeOpt `parser:"( ',' @@ )*"`
}

// ShapeOpt lets the intervals be solved: from how many stitches to how many, and on which rows.
//
//	56 to 40 · on right-side rows
type ShapeOpt struct {
	At
	Right bool `parser:"( 'on' @'right' '-' 'side' ( 'rows' | 'rounds' )"`
	From  *Cnt `parser:"| @@"`
	To    *Cnt `parser:"  'to' @@ )"`
}

// ShapeRow is a row of a schedule.
//
//	plain: sc in each
//	shaping: dec, sc in each to last 2, dec
type ShapeRow struct {
	At
	Word   string  `parser:"@( 'plain' | 'shaping' ) ':'"`
	List   *List   `parser:"@@"`
	Claims *Claims `parser:"( '=' @@ )?"`
}

// Every says when the shaped rows come: every 5 rounds is four plain ones, then a shaped one.
//
//	every 7 rounds 2 (0) times, then every 4 rounds 3 (7) times
type Every struct {
	At
	Steps []*EveryStep `parser:"@@ ( ',' 'then'? @@ )*"`
}

// EveryStep is one interval of a schedule.
type EveryStep struct {
	At
	N     *Cnt `parser:"'every' ( 'row' | 'round' | @@ ( 'row' | 'rows' | 'round' | 'rounds' ) )"` // nil: every row
	Times *Cnt `parser:"@@ 'times'"`
}

// OnRows says on which rows of the schedule shaping is worked.
//
//	on rounds 3, 6, 9
type OnRows struct {
	At
	Rows []*Cnt `parser:"'on' ( 'row' | 'rows' | 'round' | 'rounds' ) @@ ( ',' @@ )*"`
}

// FirstOn says where the first shaped row comes, and the interval of the others.
//
//	first on round 3 (3, 2), every 3 (3, 2) rounds, 13 times
type FirstOn struct {
	At
	Row   *Cnt `parser:"'first' 'on' ( 'row' | 'round' ) @@ ','"`
	Every *Cnt `parser:"'every' ( 'row' | 'round' | @@ ( 'row' | 'rows' | 'round' | 'rounds' ) ) ','"` // nil: every row
	Times *Cnt `parser:"@@ 'times'"`
}

// ShapeAt shapes one side edge of a flat piece; two of them are merged row by row.
//
//	at armhole: dec on row 1, then every 2 rows, 6 times in all
//	at armhole: dec on row 1, then every row, 3 times in all
type ShapeAt struct {
	At
	Edge  *Name `parser:"'at' @@ ':'"`
	List  *List `parser:"@@"`
	Row   *Cnt  `parser:"'on' ( 'row' | 'round' ) @@ ','"`
	Every *Cnt  `parser:"'then'? 'every' ( 'row' | 'round' | @@ ( 'row' | 'rows' | 'round' | 'rounds' ) ) ','"` // nil: every row
	Times *Cnt  `parser:"@@ 'times' ( 'in' 'all' )?"`
}

// Motifs opens motifs of one kind that are joined to one another while they are worked. The motif is a part of its own.
//
//	motifs throw of granny … end
type Motifs struct {
	At
	Name *Name `parser:"'motifs' @@"`
	Of   *Name `parser:"'of' @@"`
}

// MotifGrid says how many motifs lie beside one another, and how many rows of them there are.
//
//	2 (3) across, 3 (4) down
type MotifGrid struct {
	At
	Across *Cnt `parser:"@@ 'across' ','"`
	Down   *Cnt `parser:"@@ 'down'"`
}

// MotifSide says how long a side of a motif is, joined and blocked.
//
//	each 12 cm
type MotifSide struct {
	At
	Side *Val `parser:"'each' @@"`
}

// MotifJoin says where the last round of a motif is joined to the motifs beside it, and what a join stands in place of.
// The first label names the corners.
//
//	joined in round 4: at each corner and each side, sl st in place of 1 ch
type MotifJoin struct {
	At
	Round  *Cnt    `parser:"'joined' 'in' 'round' @@ ':'"`
	Labels []*Name `parser:"'at' 'each' @@ ( 'and' 'each' @@ )* ','"`
	Chains *Cnt    `parser:"'sl' 'st' 'in' 'place' 'of' @@ 'ch'"`
}

// Only holds statements for some sizes.
//
//	only "3 y", "4 y" … end
type Only struct {
	At
	Sizes []*Str `parser:"'only' @@ ( ',' @@ )*"`
}

// EndClaims is the count that may stand behind the end of a block; it is kept as the last statement of the block.
//
//	end = 40
//	end = + 8 each time
type EndClaims struct {
	At
	Claims *Claims `parser:"'end' '=' @@"`
}

// ---- Rows -----------------------------------------------------------------------------------------------------------

// Row is a row or round, or several that read the same.
//
//	round: dc in each                          = 96
//	round divide, begin with ch 2: …
//	4 rounds: [fpdc, bpdc] around
//	rounds plain for 21 cm, even: dc in each
//	rounds to 32 cm: dc in each
//	24 rows of fans
//	rows of fans to 30 cm
//	rounds from chart wave, 2 times: sc by chart around
//	rows from chart leaf                       = 14 dc, 13 spaces
//
//	row = rowhead ":" list [ "=" claims ] | rowhead [ "=" claims ]     (without a list: a mesh from a chart, or rows of a stitch pattern)
type Row struct {
	At
	Head   *RowHead
	List   *List // nil: the rows of a stitch pattern, Head.Of
	Claims *Claims
}

// RowHead is what stands before the colon. Rows of a stitch pattern have none: the pattern says what is worked.
//
//	rowhead = ( ( "round" | "row" ) [ name ] [ of ]
//	          | ( "rounds" | "rows" ) [ name ] [ of ] ( ( "to" | "for" ) val | fromchart )
//	          | cnt ( "rounds" | "rows" ) [ name ] [ of ] ) { "," rowopt }
//	of      = "of" name
type RowHead struct {
	At
	One    string
	Label  *Name
	For    string
	FLabel *Name
	N      *Cnt
	Many   string
	NLabel *Name
	From   *FromChart
	Of     *Name
	To     bool
	Length *Val
	Opts   []*RowOpt
}

// FromChart says which rows of a chart are worked, one after the other, and how often all of them.
//
//	from chart wave
//	from chart wave, rows 3 to 6, 2 times
//
//	fromchart = "from" "chart" name { "," ( ( "row" | "rows" ) cnt [ "to" cnt ] | cnt "times" ) }
type FromChart struct {
	At
	Chart *Name
	First *Cnt // nil: from the first row
	Last  *Cnt // nil: that row alone, or to the last
	Times *Cnt // nil: once
}

// RowOpt is an option of a header: how rows are rounded, or how the row begins.
//
//	even · odd · up · down · nearest · ties up · ending rs
//	begin with ch 2 · begin none
//	with kelp
//	from row 1
type RowOpt struct {
	At
	Word   string `parser:"  @( 'even' | 'odd' | 'up' | 'down' | 'nearest' )"`
	Ties   string `parser:"| 'ties' @( 'up' | 'down' )"`
	Ending string `parser:"| 'ending' @( 'rs' | 'ws' )"`
	None   bool   `parser:"| 'begin' ( @'none'"`
	Chains *Cnt   `parser:"  | 'with' 'ch' @@"`
	As     *Name  `parser:"    ( 'as' @@ )? )"`
	Yarn   *Name  `parser:"| 'with' @@"`
	From   *Cnt   `parser:"| 'from' ( 'row' | 'round' ) @@"`
}

// WorkRow works a labelled row again.
//
//	work divide
type WorkRow struct {
	At
	Label *Name `parser:"'work' @@"`
}

// Claims are counts that are stated, to be checked.
//
//	= 112 sts, 2 spaces
//
//	claims = claim { "," claim }
type Claims struct {
	At
	Items []*Claim
}

// Claim is one stated count.
//
//	40 · 112 sts · 24 dc · 4 corners · 54 in back · 124 sts and chains · + 8 each time · multiple of 6 plus 1
//
//	claim = "multiple" "of" cnt [ "plus" cnt ] | ( "+" | "-" ) cnt "each" "time"
//	      | cnt [ kinds | name | "sl" "st" ] [ "in" ref ]
type Claim struct {
	At
	Mult *Cnt
	Plus *Cnt
	Less bool // - 8 each time: More is how many fewer
	More *Cnt
	N    *Cnt
	Kind *Kinds
	Name *Name
	Slip bool
	In   *Ref
}

// List is what is worked in a row, in order.
//
//	dc to m1 as back, ch 2 as gap, skip to m2
//
//	list = item { "," item }
type List struct {
	At
	Items []Item
}

// Item is one instruction of a row.
type Item interface {
	Node
	item()
}

// As gives what was made, or passed over, a name.
//
//	as right_gap
//
//	as = "as" name
type As struct {
	At
	Name *Name
}

// ChainItem makes chains.
//
//	ch 3
//	ch 1 as gap
type ChainItem struct {
	At
	N     *Cnt `parser:"'ch' @@"`
	Label *As  `parser:"@@?"`
}

// Established works each stitch as it presents: what stands out from this side round the post from the front, what lies back
// from behind, and the others plain.
//
//	as established · as established to last 2
type Established struct {
	At
	Word  bool   `parser:"'as' @'established'"`
	Bound *Bound `parser:"@@?"`
}

// Lengthen makes stitches that stand on no place: each is worked into the foot of the one before it, the first into the foot of
// the stitch just made. At the end of a row they make it longer.
//
//	foundation dc 6 as wing
type Lengthen struct {
	At
	Stitch *Name `parser:"'foundation' @@"`
	N      *Cnt  `parser:"@@"`
	Label  *As   `parser:"@@?"`
}

// Skip passes places over; they are still there to be worked later.
//
//	skip 2 · skip space · skip leg as left · skip to r2 as sleeve = arm · skip rest
type Skip struct {
	At
	Rest   bool    `parser:"'skip' ( @'rest'"`
	Bound  *Bound  `parser:"| @@"`
	Space  bool    `parser:"| @( 'space' | 'spaces' )"`
	N      *Cnt    `parser:"| @@"`
	Spaces bool    `parser:"  ( @( 'space' | 'spaces' ) | 'st' | 'sts' | 'chain' | 'chains' )? )"`
	Label  *As     `parser:"@@?"`
	Stated *Stated `parser:"@@?"`
}

// Leave ends a short row: what is left stays for later.
//
//	leave 6 as step · leave rest
type Leave struct {
	At
	Rest  bool `parser:"'leave' ( @'rest'"`
	N     *Cnt `parser:"| @@ ( 'st' | 'sts' )? )"`
	Label *As  `parser:"@@?"`
}

// Turn turns the work before the end of a round.
//
//	turn
type Turn struct {
	At
	Word bool `parser:"@'turn'"`
}

// Join says how a round is joined when it is not the usual way, or not at all.
//
//	join · join with sc · no join
type Join struct {
	At
	No   bool  `parser:"( @'no' 'join'"`
	Word bool  `parser:"| @'join'"`
	With *Name `parser:"  ( 'with' @@ )? )"`
}

// Mark places, moves or removes a marker. `marker` is the one that was met last, whichever it is.
//
//	mark r1 · mark r1 in next · mark r1 before next · move r1 to the middle one · move marker to the middle one · unmark r1
type Mark struct {
	At
	Verb string `parser:"@( 'mark' | 'move' | 'unmark' )"`
	Met  bool   `parser:"( @'marker'"`
	Name *Name  `parser:"| @@ )"`
	Next bool   `parser:"( 'in' @'next'"`
	Gap  bool   `parser:"| @'before' 'next'"`
	To   string `parser:"| 'to' @( 'first' | 'middle' | 'last' ) 'one' )?"`
}

// ChangeYarn goes on with another yarn.
//
//	with kelp
type ChangeYarn struct {
	At
	Yarn *Name `parser:"'with' @@"`
}

// ChartRow works a row of a chart.
//
//	from chart wave row 4 · from chart wave row 4 around
type ChartRow struct {
	At
	Chart *Name   `parser:"'from' 'chart' @@"`
	Row   *Cnt    `parser:"( 'row' @@ )?"`
	End   *RepEnd `parser:"@@?"`
}

// Together works a list into one place.
//
//	(2 dc, ch 2, 2 dc) in next corner
type Together struct {
	At
	List   *List   `parser:"'(' @@ ')'"`
	Target *Target `parser:"@@"`
	With   *Name   `parser:"( 'with' @@ )?"`
	Label  *As     `parser:"@@?"`
}

// Bracket repeats a list, or draws the stitches of it together into one.
//
//	[sc in next 2, inc] 6 times · [fpdc, bpdc] around = 24 times · [dc in next, skip 2, dc in next space] together
type Bracket struct {
	At
	List  *List   `parser:"'[' @@ ']'"`
	Tog   bool    `parser:"( @'together'"`
	End   *RepEnd `parser:"| @@ )"`
	With  *Name   `parser:"( 'with' @@ )?"`
	Label *As     `parser:"@@?"`
}

// Work works stitches. N is the number before the stitch: how many go into one place (for inc, dec and a stitch that
// draws places together: how many of them are worked).
//
//	dc in next 5 · 2 dc in each · dc to m1 · sc2tog · 4 dc together · inc 8 evenly · fptr in each of x crossing front
//	sc by chart around
//
//	work = [ precnt ] ( "sl" "st" | name ) [ "flo" | "blo" | "tlo" | "third" "loop" ] [ "together" ] [ bychart ]
//	       [ target | spread | repend ] [ "crossing" ( "front" | "back" ) ] [ spaced ] [ "with" name ] [ as ]
type Work struct {
	At
	N      *PreCnt
	Slip   bool
	Stitch *Name
	Loop   string
	Third  bool
	Tog    bool
	Chart  *ByChart
	Target *Target
	Spread *Spread
	End    *RepEnd
	Cross  string
	Spaced *Spaced
	With   *Name
	Label  *As
}

// Spaced sets a bracket among plain stitches, several times, as far apart from each other as they go. Without `after` and
// `before last` the two ends share what is left.
//
//	sc in each with [ch 2 as hole, skip 2] 5 times evenly after 4
//
//	spaced = "with" "[" list "]" cnt "times" "evenly" [ "after" cnt | "before" "last" cnt ]
type Spaced struct {
	At
	List  *List
	N     *Cnt
	After *Cnt // how many plain stitches stand before the first one; nil: the ends share
	Last  bool // they are counted from the end of the row
}

// ByChart works a stitch for each cell of the row of the chart, in the yarn of its cell.
//
//	sc by chart to last 2 · sc by chart centred around · sc by chart from column 3 around
//
//	bychart = "by" "chart" [ "centred" | "from" "column" cnt ]
type ByChart struct {
	At
	Centred bool
	Column  *Cnt
}

// Spread spreads increases or decreases over the row.
//
//	inc 8 evenly · dec 6 evenly centred to m1
//
//	spread = cnt "evenly" [ "alternating" | "centred" ] [ bound ]
type Spread struct {
	At
	N     *Cnt
	How   string
	Bound *Bound
}

// RepEnd says how often something is repeated.
//
//	6 times · around · across · to m1 · to last 3 · around = 10 times
//
//	repend = ( bound | "around" | "across" | cnt "times" ) [ "=" cnt "times" ]
type RepEnd struct {
	At
	Bound  *Bound
	Full   string
	N      *Cnt
	Stated *Stated
}

// Stated is a number said again, to be checked: = 10 times behind a repeat, = arm behind a skip.
//
// A count of the row may follow an equals sign too: behind a repeat a stated number says `times`; behind a skip it is one
// only if another instruction follows, for behind the last one it counts the row.
type Stated struct {
	At
	N *Cnt
}

// Bound says how far.
//
//	to end · to space · to last 3 · to m1 · to 2 before m1
//
//	bound = "to" ( "end" | [ "next" ] "space" | "last" [ cnt ] [ "st" | "sts" ] | [ cnt "before" ] ( "marker" | ref ) )
type Bound struct {
	At
	End    bool
	Space  bool
	Last   bool
	LastN  *Cnt
	Before *BefCnt
	Marker bool
	Ref    *Ref
}

// Kinds says what counts as a place.
//
//	st · space · st and space · st and chain · spaces of 2 · gaps · left
//
//	kinds = ( "st" | "sts" | "space" | "spaces" | "chain" | "chains" | "gap" | "gaps" | "left" )
//	        [ "and" ( "space" | "spaces" | "chain" | "chains" ) ] [ "of" cnt ]
type Kinds struct {
	At
	A  string
	B  string
	Of *Cnt
}

// Target says where.
//
//	in next 5 · between each · below bridge · beside each of back · through each and casing.foundation
//
//	target = "in" in | "between" "each" each | ( "below" | "beside" ) [ "each" ] [ "of" ] ref | "through" "each" "and" ref
type Target struct {
	At
	In      *In
	Between *InEach
	Prep    string
	Each    bool
	Run     *Ref
	Through *Ref
}

// In is a place to work into.
//
//	in next 5 · in each st and space · in first · in last 2 · in same · in ring · in marker · in this gap · in corner.2
//
//	in = "next" next | "each" each | "first" [ "st" ] | "last" [ cnt ] [ "st" | "sts" ] | "same" [ "st" ] | "ring" | "marker"
//	   | "this" "gap" | ref
type In struct {
	At
	Next   *InNext
	Each   *InEach
	First  bool
	Last   bool
	LastN  *Cnt
	Same   bool
	Ring   bool
	Marker bool
	Gap    bool
	Run    *Ref
}

// InNext is the next place, or the next n. A lone name stands in Ref: whether it is a kind of place (in next corner) or a
// number (in next leg) is settled by what it names. Before a kind or another name it is the number, in N.
//
//	in next · in next 5 · in next 5 chains · in next space of 2 · in next corner · in next st 2 rows below
//	in next 2 of body.edge
//
//	next = [ cnt ] "of" ref | [ cnt ] [ kinds | ref ] [ cnt ( "row" | "rows" | "round" | "rounds" ) "below" ]
type InNext struct {
	At
	N     *Cnt
	Of    *Ref
	Kinds *Kinds
	Ref   *Ref
	Depth *Cnt
}

// InEach is every place up to a bound.
//
//	in each · in each st and chain to m1 · in each of next 3 · in each of body.right · in each left
//
//	each = [ "of" "next" cnt [ "st" | "sts" | "chain" | "chains" ] | kinds | [ "of" ] ref ] [ bound ]
type InEach struct {
	At
	OfNext *Cnt
	Kinds  *Kinds
	Ref    *Ref
	Bound  *Bound
}

// ---- Finishing and measures -----------------------------------------------------------------------------------------

// Finish opens the finishing.
//
//	finish … end
type Finish struct {
	At
	Word bool `parser:"@'finish'"`
}

// Sew sews one edge to another; an edge may be several that follow one another.
//
//	sew front.side to back.side within 1 cm
//	sew sleeve.edge to armhole edge of back and armhole edge of front
type Sew struct {
	At
	A      []*Edge `parser:"'sew' @@ ( 'and' @@ )* 'to'"`
	B      []*Edge `parser:"@@ ( 'and' @@ )*"`
	Within *Val    `parser:"( 'within' @@ )?"`
}

// Edge is an edge of a seam: places by name, or ends of rows.
//
//	edge = sideedge | ref
type Edge struct {
	At
	Side *SideEdge
	Ref  *Ref
}

// Cord makes a cord, or says which part, or which chains of one, are a cord, and what is to be known of it: where it runs, at which place
// of the body, what it is for, how it is finished. A fixed cord is sewn to the fabric midway between its ends; one that is inside shows nowhere when the
// piece is fastened; a loop is how far round one that sticks out is.
//
//	cord with kelp, length fit.waist + 60 cm, through waistband round 2, at waist, ends plain, fixed
//	cord of strap, at nape, as halter, no ends
//	cord of brim.tie, at neck, as chin_tie, ends plain
//	cord with kelp, length 12 cm, at neck, as bow, ends with beads
type Cord struct {
	At
	Yarn    *Name `parser:"'cord' ( 'with' @@"`
	Made    *Ref  `parser:"| 'of' @@ )"`
	Length  *Val  `parser:"( ',' ( 'length' @@"`
	Through *Ref  `parser:"    | 'through' @@"`
	Row     *Cnt  `parser:"      ( ( 'row' | 'round' ) @@ )?"`
	Zone    *Name `parser:"    | 'at' @@"`
	Role    *Name `parser:"    | 'as' @@"`
	Ends    *Name `parser:"    | 'ends' ( @@"`
	Trim    *Name `parser:"      | 'with' @@ )"`
	NoEnds  bool  `parser:"    | 'no' @'ends'"`
	Fixed   bool  `parser:"    | @'fixed'"`
	Inside  bool  `parser:"    | @'inside'"`
	Above   bool  `parser:"    | @'above' 'hem'"`
	Elastic bool  `parser:"    | @'elastic'"`
	Width   *Val  `parser:"    | 'width' @@"`
	Thick   *Val  `parser:"    | 'thick' @@"`
	Loop    *Val  `parser:"    | 'loop' @@ ) )*"`
}

// Fringe knots strands of yarn, folded in half, into each place of an edge: one in each if nothing is said. It hangs as far as its length,
// at which place of the body.
//
//	fringe with kelp, 8 cm, along front.edge, at hem, 2 strands
type Fringe struct {
	At
	Yarn    *Name `parser:"'fringe' 'with' @@"`
	Length  *Val  `parser:"',' @@"`
	Along   *Edge `parser:"',' 'along' @@"`
	Zone    *Name `parser:"( ',' ( 'at' @@"`
	Strands *Cnt  `parser:"    | @@ 'strands' ) )*"`
}

// Elastic threads elastic through a row or a casing, and says at which place of the body.
//
//	elastic 2 cm, length fit.waist - 2 cm, through waistband round 2
//	elastic 5 mm, length 12 cm, through casing, at sleeve
type Elastic struct {
	At
	Width   *Val  `parser:"'elastic' @@"`
	Length  *Val  `parser:"',' 'length' @@"`
	Through *Ref  `parser:"',' 'through' @@"`
	Row     *Cnt  `parser:"( ( 'row' | 'round' ) @@ )?"`
	Zone    *Name `parser:"( ',' 'at' @@ )?"`
}

// Pompom makes pompoms.
//
//	pompom with kelp, 7 cm, 120 wraps
type Pompom struct {
	At
	Yarn  *Name `parser:"'pompom' 'with' @@"`
	Size  *Val  `parser:"',' @@"`
	Wraps *Cnt  `parser:"',' @@ 'wraps'"`
}

// Button sews buttons on: one for each place of a label, or a number of them, which must then be as many as the places.
//
//	button 12 mm for band.buttonholes
//	button 12 mm, 5 for band.buttonholes
//	button 12 mm of wood, 3
type Button struct {
	At
	Size     *Val  `parser:"'button' @@"`
	Material *Name `parser:"( 'of' @@ )?"`
	N        *Cnt  `parser:"( ',' @@ )?"`
	For      *Ref  `parser:"( 'for' @@ )?"`
}

// Plain finishing.
//
//	weave in ends · block
type PlainFinish struct {
	At
	Word string `parser:"( @'weave' 'in' 'ends' | @'block' )"`
}

// MeasureBlock opens the measures.
//
//	measure … end
type MeasureBlock struct {
	At
	Word bool `parser:"@'measure'"`
}

// Measure is one measure of the finished piece, with the wearer's measure it must suit, what it must go over, or the length
// wanted.
//
//	hips = around body at row 2 fits fit.hips ease 0 to 6 cm
//	thigh en "Thigh, around" es "Muslo, contorno" = around right_leg at row 1
//	neck = around neckband at row 1 goes over fit.head stretch 20 %
//	length = height of back wanted 32 (33, 34) cm within 1 cm
type Measure struct {
	At
	Name    *Name `parser:"@@"`
	Text    []*Bi `parser:"@@* '='"`
	Value   *Val  `parser:"@@"`
	Fits    *Ref  `parser:"( 'fits' @@"`
	Lo      *Val  `parser:"  'ease' @@"`
	Hi      *Val  `parser:"  'to' @@ )?"`
	Over    *Ref  `parser:"( 'goes' 'over' @@"`
	Stretch *Val  `parser:"  ( 'stretch' @@ )? )?"`
	Wanted  *Val  `parser:"( 'wanted' @@"`
	Within  *Val  `parser:"  'within' @@ )?"`
}

// CheckSum holds measures that must add up.
//
//	check rise + inseam equals length within 0.5 cm
type CheckSum struct {
	At
	Left   *Val `parser:"'check' @@"`
	Right  *Val `parser:"'equals' @@"`
	Within *Val `parser:"( 'within' @@ )?"`
}

func (*Use) statement()           {}
func (*Book) statement()          {}
func (*BookPattern) statement()   {}
func (*Pattern) statement()       {}
func (*Title) statement()         {}
func (*By) statement()            {}
func (*Meant) statement()         {}
func (*Photo) statement()         {}
func (*Edition) statement()       {}
func (*Level) statement()         {}
func (*Terms) statement()         {}
func (*Languages) statement()     {}
func (*Kind) statement()          {}
func (*Markets) statement()       {}
func (*Not) statement()           {}
func (*Prose) statement()         {}
func (*Sizes) statement()         {}
func (*SizeNames) statement()     {}
func (*Age) statement()           {}
func (*Fit) statement()           {}
func (*Body) statement()          {}
func (*Shown) statement()         {}
func (*Gauge) statement()         {}
func (*GaugeLine) statement()     {}
func (*Hook) statement()          {}
func (*Notion) statement()        {}
func (*Yarn) statement()          {}
func (*YarnName) statement()      {}
func (*Weight) statement()        {}
func (*Fibre) statement()         {}
func (*Surface) statement()       {}
func (*Ball) statement()          {}
func (*Swatch) statement()        {}
func (*Allowance) statement()     {}
func (*Sample) statement()        {}
func (*SampleWeight) statement()  {}
func (*Let) statement()           {}
func (*Group) statement()         {}
func (*Stitch) statement()        {}
func (*Takes) statement()         {}
func (*Abbr) statement()          {}
func (*Chart) statement()         {}
func (*DrawnRows) statement()     {}
func (*DrawnStitches) statement() {}
func (*DrawnRepeats) statement()  {}
func (*Schematic) statement()     {}
func (*Legend) statement()        {}
func (*Mesh) statement()          {}
func (*Part) statement()          {}
func (*Call) statement()          {}
func (*Base) statement()          {}
func (*Begin) statement()         {}
func (*Style) statement()         {}
func (*FirstSide) statement()     {}
func (*Make) statement()          {}
func (*Chain) statement()         {}
func (*Foundation) statement()    {}
func (*Ring) statement()          {}
func (*Start) statement()         {}
func (*From) statement()          {}
func (*CountOff) statement()      {}
func (*Have) statement()          {}
func (*RoundsBegin) statement()   {}
func (*LevelWith) statement()     {}
func (*Close) statement()         {}
func (*FastenOff) statement()     {}
func (*Repeat) statement()        {}
func (*Only) statement()          {}
func (*EndClaims) statement()     {}
func (*Edges) statement()         {}
func (*Shape) statement()         {}
func (*ShapeRow) statement()      {}
func (*Every) statement()         {}
func (*OnRows) statement()        {}
func (*FirstOn) statement()       {}
func (*ShapeAt) statement()       {}
func (*Motifs) statement()        {}
func (*MotifGrid) statement()     {}
func (*MotifSide) statement()     {}
func (*MotifJoin) statement()     {}
func (*StitchPattern) statement() {}
func (*Stripes) statement()       {}
func (*MultipleOf) statement()    {}
func (*PatternRow) statement()    {}
func (*MayEnd) statement()        {}
func (*Row) statement()           {}
func (*WorkRow) statement()       {}
func (*Finish) statement()        {}
func (*Sew) statement()           {}
func (*Cord) statement()          {}
func (*Fringe) statement()        {}
func (*Elastic) statement()       {}
func (*Pompom) statement()        {}
func (*Button) statement()        {}
func (*PlainFinish) statement()   {}
func (*MeasureBlock) statement()  {}
func (*Measure) statement()       {}
func (*CheckSum) statement()      {}
func (*SampleMeasure) statement() {}

func (*ChainItem) item()   {}
func (*Lengthen) item()    {}
func (*Established) item() {}
func (*Skip) item()        {}
func (*Leave) item()       {}
func (*Turn) item()        {}
func (*Join) item()        {}
func (*Mark) item()        {}
func (*ChangeYarn) item()  {}
func (*ChartRow) item()    {}
func (*Together) item()    {}
func (*Bracket) item()     {}
func (*Work) item()        {}
