package compile

import (
	"math/big"
	"slices"

	"ovillo/compile/caution"
	"ovillo/compile/fabric"
	"ovillo/compile/figure"
	"ovillo/compile/picture"
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/compile/value"
	"ovillo/lang"
	"ovillo/lang/diag"
	"ovillo/lang/source"
)

// A pattern of one size may have maxStitches elements, seven times a large blanket. Several sizes share them, but each may
// have leastStitches, twice the largest garment: all of them are kept at once, and a number that was mistyped must not take
// the memory of the machine.
var (
	maxStitches   = 2_000_000
	leastStitches = 250_000
)

// stitchByStitch and rowByRow have every stitch and every row worked by itself, as tests do to see that to work many at once changes
// nothing.
var stitchByStitch, rowByRow = false, false

// Compile checks a source and returns the pattern with everything that was found. The pattern is nil if there was
// nothing to check; it may be printed only if the list has no error.
func Compile(f *lang.File) (*plan.Pattern, diag.List) {
	out := CompileWith(f, Options{})
	return out.Pattern, out.Found
}

// check carries out the checks, in their order.
func (c *checker) check() {
	c.header()
	c.sizes()
	c.readPhoto()
	c.ownStitches()
	c.stitchPatterns()
	c.materials()
	c.readSample()
	c.readAllowance()
	c.declarations()
	c.motifCounts()
	c.gaugeRead = true
	for _, s := range c.file.Body {
		switch n := s.Node.(type) {
		case *lang.Part:
			c.part(s, n)
		case *lang.Motifs:
			c.joinMotifs(s, n)
		}
	}
	if c.z > 0 && len(blocks[*lang.Part](c.file.Body)) == 0 {
		c.say(codeNoParts, c.start(), nil)
	}
	c.drawCharts()
	c.schematic()
	c.spentMarkers()
	c.openings()
	c.looseEnds()
	c.chartsUnused()
	c.madeApart()
	c.sameTitles()
	c.bridges()
	c.measures()
	c.checkSums()
	c.sampleMeasures()
	c.growing()
	c.measuredAtAll()
	c.finishing()
	c.notions()
	c.yarns()
	c.contents()
	c.putAllIn()
	c.bodyMeasures()
	c.headUnchecked()
	c.cautions()
	c.lettering()
	c.signs()
	c.gaugeNotes()
	c.flush()
	c.meant()
	c.putAllIn() // the reasons that were given
	c.inOrder()
}

// checker is the state of one compilation.
type checker struct {
	file        *lang.File
	pat         *plan.Pattern
	out         diag.List
	gaugeRead   bool
	stitchSizes []sizeOfStitch // by the gauge, each worked out once

	open        func(name string) ([]byte, error) // reads a file beside the source; nil: none is read
	readPicture func([]byte) (picture.Picture, error)
	room        *Room
	seen        map[faultKey]*gathered
	keys        []faultKey

	z              int // number of sizes
	names          []string
	numbers        plan.Nums // room for more
	rows           []int     // worked in all parts so far, per size
	kindsRoom      []made    // for those of a row
	fabrics        []*fabric.Fabric
	lets           map[string]value.Vector
	known          map[string]source.Span // every declared name, with its place
	groups         map[string]*lang.Group
	own            map[stitch.ID]plan.OwnStitch
	charts         map[string]*chart
	drawn          []*drawnChart
	keeps          map[string]bool     // the parts whose rows are kept to be drawn
	turned         map[*lang.List]bool // rows of mirrored parts, an odd number of times mirrored
	patterns       map[string]*stitchPattern
	yarnAt         map[string]int
	fitAt          map[string]source.Span // the designer's own measures of the wearer
	oversaid       bool                   // a measure says what it goes over
	body           *bodyTable             // the tables that measures of the wearer come from; nil: none
	gauge          map[stitch.ID][]*gaugeOf
	begins         map[stitch.ID]begin // settings of the header
	base           stitch.ID
	style          *lang.Style
	parts          map[string]*partState
	at             *partState               // the part that is being worked; nil: none
	lines          []*gaugeOf               // those of the gauge, as in the plan
	chosen         []OwnGauge               // in place of lines of the source's gauge
	misfit         *GaugeFault              // one of them that stands in place of none
	origin         *checker                 // the same source at its own gauge; nil: this is it
	letOrder       []string                 // the lets, in the order of the source
	takenOf        map[string][]lengthTaken // the lengths that each measure is made of
	per            []figure.PerArea         // how heavy the fabric of each yarn is
	whyNoPer       []figure.Missing
	blind          map[stitch.ID]bool // stitches for want of whose gauge a seam was not compared
	later          []func()           // what texts put in, and compare, once all values are known
	letting        string             // the let that is being worked out; "": none
	motifs         map[*lang.Motifs]*motifCount
	forms          map[stitch.Form]bool
	used           map[int]bool // yarns used
	saidThroughout bool
	steps          int // statements of parts carried out
	mirrored       int // lines of parts that are mirrored
	grouped        int // instructions of rows with named groups, carried out
	charted        int // rows carried out from charts
	drawnInAll     int // stitches of charts in symbols, in all sizes
	weighed        map[*stitchPattern]*weighed
	facts          []yarnFacts
	unbuttoned     bool                        // holes without a button were said
	sample         *sample                     // nil: none was made
	photo          *lang.Photo                 // nil: the header names none
	allowance      *big.Rat                    // the share of yarn that is added
	hookAt         map[plan.Length]source.Span // where a hook is said first
	hookUsed       map[plan.Length]bool        // hooks that something is worked with
	yarnOfAll      int                         // that the header gives to every part; -1: none
	kindAt         source.Span
	sizesAt        source.Span
	ageUnread      bool                   // an age is given that cannot be worked out
	measureAt      map[string]source.Span // measures, by name
	zones          map[int]caution.Zone   // of elastic, by its step of the finishing
	cords          []saidCord
	fringes        []saidFringe
	markets        []string // where the pattern is offered; nil: anywhere
	notForSale     bool
	notStuffed     bool
	things         []notionFact
	gaps           [][]gap     // what is not closed in the fabric of each size, once it was looked at
	loose          []*loose    // what hangs from it, likewise
	resting        source.Span // the first row in which a yarn rests and is taken up again, but by a chart

	// What decides which lines of a shared gauge are taken: see works.
	worked     map[stitch.ID]bool
	hooksNamed map[string]bool
	chained    bool
	proseAt    map[string]source.Span // texts of the header that are those of a shared file
}

func newChecker(f *lang.File) *checker {
	return &checker{
		file: taken(f), pat: &plan.Pattern{Source: []byte(f.Source.Text), Used: usedFiles(f)},
		seen: map[faultKey]*gathered{}, lets: map[string]value.Vector{}, known: map[string]source.Span{},
		groups: map[string]*lang.Group{}, own: map[stitch.ID]plan.OwnStitch{}, charts: map[string]*chart{}, keeps: map[string]bool{}, turned: map[*lang.List]bool{},
		patterns: map[string]*stitchPattern{}, weighed: map[*stitchPattern]*weighed{}, fitAt: map[string]source.Span{},
		yarnAt: map[string]int{}, gauge: map[stitch.ID][]*gaugeOf{}, begins: map[stitch.ID]begin{},
		takenOf: map[string][]lengthTaken{}, blind: map[stitch.ID]bool{},
		parts: map[string]*partState{}, motifs: map[*lang.Motifs]*motifCount{}, forms: map[stitch.Form]bool{}, used: map[int]bool{}, zones: map[int]caution.Zone{},
		measureAt: map[string]source.Span{}, hookAt: map[plan.Length]source.Span{}, hookUsed: map[plan.Length]bool{},
	}
}

func (c *checker) report(d diag.Diagnostic) { c.out.Add(d) }

func (c *checker) say(code diag.Code, at source.Span, args diag.Args) {
	c.out.Add(diag.Diagnostic{Code: code, Span: at, Args: args, Help: nearHelp(args)})
}

// nearHelp chooses the remedy for a word that is not known: the near ones, or what to do if none is near.
func nearHelp(args diag.Args) string {
	near, ok := args["near"].([]string)
	switch {
	case !ok:
		return ""
	case len(near) == 0:
		return "none"
	}
	return "near"
}

// declare enters a name; a second thing of that name is an error.
func (c *checker) declare(n *lang.Name) bool {
	if n == nil {
		return false
	}
	if was, dup := c.known[n.Text]; dup {
		c.report(diag.Diagnostic{Code: codeTwice, Span: n.Span(), Args: diag.Args{"name": n.Text},
			Related: []diag.Related{{Span: was, Key: "first"}}})
		return false
	}
	c.known[n.Text] = n.Span()
	return true
}

// blocks returns the statements of the file whose node is of type N.
func blocks[N lang.StatementNode](body []*lang.Statement) []*lang.Statement {
	var out []*lang.Statement
	for _, s := range body {
		if _, ok := s.Node.(N); ok {
			out = append(out, s)
		}
	}
	return out
}

// useForm notes that a stitch is printed.
func (c *checker) useForm(f stitch.Form) {
	if !c.forms[f] {
		c.forms[f] = true
		c.pat.Stitches = append(c.pat.Stitches, f)
	}
}

// numbersAtOnce is for how many numbers memory is taken at a time: most things have one for each size, and there are hundreds of them.
const numbersAtOnce = 512

// nums makes a number for each size.
func (c *checker) nums(v int) plan.Nums {
	if len(c.numbers) < c.z {
		c.numbers = make(plan.Nums, max(numbersAtOnce, c.z))
	}
	n := c.numbers[:c.z:c.z]
	c.numbers = c.numbers[c.z:]
	for i := range n {
		n[i] = v
	}
	return n
}

func all(z int) []bool { return slices.Repeat([]bool{true}, z) }
