package lang

import (
	"github.com/alecthomas/participle/v2/lexer"
)

// form is one way to begin a statement: how it is read, what it opens, and how it is written.
type form struct {
	read  func(*lexer.PeekingLexer) (StatementNode, error)
	opens Block  // the block that the statement opens; "" if none
	right string // a right one, for messages: it can be copied
}

// statementPointer is a pointer to a struct that is a statement.
type statementPointer[G any] interface {
	*G
	StatementNode
}

// formOf makes the form of a statement from the struct whose tags are its grammar.
func formOf[G any, P statementPointer[G]](opens Block, right string) *form {
	p := &part[G]{}
	return &form{opens: opens, right: right, read: func(lx *lexer.PeekingLexer) (StatementNode, error) {
		n, err := p.whole(lx)
		return P(n), err
	}}
}

// The keys of the table of statements that are not words.
const (
	anyNumber = "#" // the line begins with a number
	anyName   = "*" // the line begins with any name that is no key
)

// forms is the table of statements: for each block, by how a line begins. A key of two words is tried before its first
// word alone; "row #" is `row` before a number.
var forms = map[Block]map[string]*form{
	InFile: {
		"meant":          meantForm,
		"use":            formOf[Use]("", `use "common.ovillo"`),
		"book":           formOf[Book](InBook, `book sea_set`),
		"pattern":        formOf[Pattern](InPattern, `pattern sea_hat`),
		"sizes":          formOf[Sizes](InSizes, `sizes "S", "M", "L"`),
		"gauge":          formOf[Gauge](InGauge, `gauge 10 cm`),
		"hook":           hookForm,
		"notion":         formOf[Notion]("", `notion en "toy stuffing" es "relleno para muñecos", 30 g`),
		"yarn":           formOf[Yarn](InYarn, `yarn sand`),
		"sample":         formOf[Sample](InSample, `sample "M"`),
		"let":            formOf[Let]("", `let leg = 48 (52, 56)`),
		"group":          formOf[Group]("", `group wave = [sc in next, skip 2, 5 dc in next, skip 2]`),
		"stitch":         formOf[Stitch](InStitch, `stitch pebble`),
		"stitch pattern": formOf[StitchPattern](InPatternOf, `stitch pattern fans`),
		"chart":          formOf[Chart](InChart, `chart wave`),
		"schematic":      formOf[Schematic]("", `schematic body, sleeve`),
		"part":           formOf[Part](InPart, `part body`),
		"motifs":         formOf[Motifs](InMotifs, `motifs throw of square`),
		"call":           callForm,
		"base":           baseForm,
		"begin":          beginForm,
		"in":             styleForm,
		"finish":         formOf[Finish](InFinish, `finish`),
		"measure":        formOf[MeasureBlock](InMeasure, `measure`),
		"intro":          proseForm("intro"),
		"note":           proseForm("note"),
		"step":           proseForm("step"),
		"care":           proseForm("care"),
		"licence":        proseForm("licence"),
		"changes":        proseForm("changes"),
	},
	InBook: {
		"title":     titleForm,
		"by":        formOf[By]("", `by "Studio Name"`),
		"edition":   formOf[Edition]("", `edition 2`),
		"languages": formOf[Languages]("", `languages en, es`),
		"pattern":   formOf[BookPattern]("", `pattern "hat.ovillo"`),
		"intro":     proseForm("intro"),
		"note":      proseForm("note"),
		"licence":   proseForm("licence"),
		"changes":   proseForm("changes"),
	},
	InPattern: {
		"meant":     meantForm,
		"title":     titleForm,
		"by":        formOf[By]("", `by "Studio Name"`),
		"photo":     formOf[Photo]("", `photo "hat.jpg" size "M" en "A blue hat." es "Un gorro azul."`),
		"edition":   formOf[Edition]("", `edition 2`),
		"level":     formOf[Level]("", `level easy`),
		"terms":     formOf[Terms]("", `terms us`),
		"languages": formOf[Languages]("", `languages en, es`),
		"kind":      formOf[Kind]("", `kind hat`),
		"for":       formOf[Markets]("", `for eu, us, uk`),
		"not":       formOf[Not]("", `not for sale`),
		"allowance": formOf[Allowance]("", `allowance 8 %`),
		"yarn":      yarnUseForm,
		"hook":      hookForm,
		"base":      baseForm,
		"begin":     beginForm,
		"in":        styleForm,
		"intro":     proseForm("intro"),
		"note":      proseForm("note"),
		"care":      proseForm("care"),
		"licence":   proseForm("licence"),
		"changes":   proseForm("changes"),
	},
	InSizes: {
		"meant": meantForm,
		"names": formOf[SizeNames]("", `names es "1 año", "2 años"`),
		"age":   formOf[Age]("", `age 12 (24, 36) months`),
		"fit":   formOf[Fit]("", `fit waist 50 (53, 55) cm, hips 53 (55, 57) cm`),
		"body":  formOf[Body]("", `body babies by age`),
		"shown": formOf[Shown]("", `shown "M"`),
	},
	InGauge: {
		"meant": meantForm,
		"ch":    formOf[GaugeLine]("", `ch 20 sts`),
		anyName: formOf[GaugeLine]("", `dc 19 sts, 10 rows`),
	},
	InYarn: {
		"meant":   meantForm,
		"name":    yarnNameForm,
		"weight":  formOf[Weight]("", `weight light`),
		"fibre":   formOf[Fibre]("", `fibre cotton 60 %, wool 40 %`),
		"surface": formOf[Surface]("", `surface smooth`),
		"ball":    formOf[Ball]("", `ball 50 g, 120 m`),
		"swatch":  formOf[Swatch]("", `swatch 20 sts by 10 rows of dc, 4.1 g`),
	},
	InSample: {
		"meant":  meantForm,
		"weight": formOf[SampleWeight]("", `weight sand 180 g, kelp 34 g`),
		anyName:  formOf[SampleMeasure]("", `hips 29 cm flat within 1 cm`),
	},
	InStitch: {
		"takes": formOf[Takes]("", `takes 1, makes 1, tall as dc`),
		"abbr":  formOf[Abbr]("", `abbr en "peb" es "pdr"`),
		"name":  yarnNameForm,
	},
	InPatternOf: {
		"name":     yarnNameForm,
		"multiple": formOf[MultipleOf]("", `multiple of 6 plus 1`),
		"row":      patternRowForm,
		"round":    patternRowForm,
		"set":      formOf[PatternRow]("", `set up: dc in each`),
		"may":      formOf[MayEnd]("", `may end after 1, 4`),
	},
	InChart: {
		"title":    titleForm,
		"mesh":     formOf[Mesh]("", `mesh dc and 2`),
		"legend":   formOf[Legend]("", `legend "." sand, "x" kelp`),
		"row":      drawnRowsForm(`row 3`),
		"rows":     drawnRowsForm(`rows 1 to 6`),
		"round":    drawnRowsForm(`round 3`),
		"rounds":   drawnRowsForm(`rounds 1 to 6`),
		"stitches": formOf[DrawnStitches]("", `stitches 1 to 13`),
		"repeats":  formOf[DrawnRepeats]("", `repeats 2`),
	},
	InPart:   partForms,
	InMotifs: motifForms,
	InFinish: finishForms,
	InMeasure: {
		"meant": meantForm,
		"check": formOf[CheckSum]("", `check rise + inseam equals length within 0.5 cm`),
		anyName: formOf[Measure]("", `hips = around body at row 2`),
	},
	InProse: {},
	InShape: {
		"plain":   formOf[ShapeRow]("", `plain: sc in each`),
		"shaping": formOf[ShapeRow]("", `shaping: dec, sc in each to last 2, dec`),
		"every":   formOf[Every]("", `every 7 rounds 2 times, then every 4 rounds 3 times`),
		"on":      formOf[OnRows]("", `on rounds 3, 6, 9`),
		"first":   formOf[FirstOn]("", `first on round 3, every 3 rounds, 13 times`),
		"at":      formOf[ShapeAt]("", `at armhole: dec on row 1, then every 2 rows, 6 times in all`),
	},
}

var motifForms = map[string]*form{
	"meant":   meantForm,
	"title":   titleForm,
	"call":    callForm,
	anyNumber: motifGridForm,
	anyName:   motifGridForm,
	"each":    formOf[MotifSide]("", `each 12 cm`),
	"joined":  formOf[MotifJoin]("", `joined in round 4: at each corner and each side, sl st in place of 1 ch`),
	"note":    proseForm("note"),
	"step":    proseForm("step"),
}

var partForms = map[string]*form{
	"meant":        meantForm,
	"title":        titleForm,
	"call":         callForm,
	"yarn":         yarnUseForm,
	"stripes":      formOf[Stripes]("", `stripes sand 2, kelp 2`),
	"hook":         hookForm,
	"base":         baseForm,
	"begin":        beginForm,
	"in":           styleForm,
	"row #":        firstSideForm,
	"round #":      firstSideForm,
	"make":         formOf[Make]("", `make 2`),
	"chain":        formOf[Chain]("", `chain 40, join`),
	"foundation":   formOf[Foundation]("", `foundation sc 40`),
	"ring":         formOf[Ring]("", `ring`),
	"start":        formOf[Start]("", `start in body.right_gap`),
	"from":         formOf[From]("", `from right edge of front at 4 per 3 rows`),
	"count":        formOf[CountOff]("", `count off: 2, mark m1, 40, mark m2, 2`),
	"have":         formOf[Have]("", `have 54 in back, 38 in sleeve`),
	"rounds begin": roundsBeginForm,
	"rows begin":   roundsBeginForm,
	"level":        formOf[LevelWith]("", `level with 2 sl st`),
	"close":        formOf[Close]("", `close through front loops`),
	"fasten":       formOf[FastenOff]("", `fasten off`),
	"repeat":       formOf[Repeat](InPart, `repeat 4 times`),
	"edges":        formOf[Edges]("", `edges armhole, neck`),
	"shape":        formOf[Shape](InShape, `shape taper: 30 rounds`),
	"only":         formOf[Only](InPart, `only "S", "M"`),
	"row":          rowForm(`row: dc in each`),
	"round":        rowForm(`round: dc in each`),
	"rows":         rowForm(`rows for 20 cm: dc in each`),
	"rounds":       rowForm(`rounds for 20 cm: dc in each`),
	anyNumber:      rowForm(`4 rounds: dc in each`),
	anyName:        rowForm(`rib_rows rounds: dc in each`),
	"work":         formOf[WorkRow]("", `work divide`),
	"note":         proseForm("note"),
	"step":         proseForm("step"),
}

var finishForms = map[string]*form{
	"meant":   meantForm,
	"sew":     formOf[Sew]("", `sew front.side to back.side within 1 cm`),
	"cord":    formOf[Cord]("", `cord with kelp, length 110 cm, through waistband round 2`),
	"fringe":  formOf[Fringe]("", `fringe with kelp, 8 cm, along front.edge`),
	"elastic": formOf[Elastic]("", `elastic 2 cm, length 48 cm, through waistband round 2`),
	"pompom":  formOf[Pompom]("", `pompom with kelp, 7 cm, 120 wraps`),
	"button":  formOf[Button]("", `button 12 mm for buttonholes`),
	"weave":   formOf[PlainFinish]("", `weave in ends`),
	"block":   formOf[PlainFinish]("", `block`),
	"note":    proseForm("note"),
	"step":    proseForm("step"),
}

// Statements that stand in more than one block.
var (
	titleForm       = formOf[Title]("", `title en "Body" es "Cuerpo"`)
	meantForm       = formOf[Meant]("", `meant OV608 en "one fan is eight stitches" es "un abanico son ocho puntos"`)
	callForm        = formOf[Call]("", `call right en "the right leg" es "la pierna derecha"`)
	hookForm        = formOf[Hook]("", `hook 3.75 mm`)
	baseForm        = formOf[Base]("", `base sc`)
	beginForm       = formOf[Begin]("", `begin dc with ch 3 as dc`)
	styleForm       = formOf[Style]("", `in joined rounds`)
	yarnUseForm     = formOf[Yarn]("", `yarn sand`)
	yarnNameForm    = formOf[YarnName]("", `name en "sand" es "arena"`)
	motifGridForm   = formOf[MotifGrid]("", `4 across, 5 down`)
	firstSideForm   = formOf[FirstSide]("", `row 1 is wrong side`)
	roundsBeginForm = formOf[RoundsBegin]("", `rounds begin at inner`)
	patternRowForm  = formOf[PatternRow]("", `row 1: dc in each`)
	endForm         = formOf[EndClaims]("", `end = 40`)
)

// drawnRowsForm is the rows that a chart draws.
func drawnRowsForm(right string) *form { return formOf[DrawnRows]("", right) }

// rowForm is a row; the right form goes with how the line begins.
func rowForm(right string) *form { return &form{read: readRow, right: right} }

// readRow reads a row that is all there is.
func readRow(lx *lexer.PeekingLexer) (StatementNode, error) {
	n, r := &Row{}, reader{lx}
	err := r.must(n)
	if err == nil && r.Peek().Type != tEOF {
		err = r.slip(slipFit)
	}
	return n, err
}

var proseReader = formOf[Prose](InProse, "")

func proseForm(word string) *form { return &form{read: proseReader.read, opens: InProse, right: word} }
