package words

// Key names a fixed text of the page. See [Language.Say].
type Key uint8

// The fixed texts.
const (
	BeforeYouStart Key = iota + 1
	HowToReadHead
	HowToReadAllHead // of several patterns
	AbbreviationsHead
	SpecialsHead
	AssemblyHead
	FinishingHead
	CareHead
	CareLabelHead // care and what the piece is made of, together
	LabelHead     // what the piece is made of, alone
	EditionHead
	NotesHead
	MyNotes
	ChartHead
	LicenceHead
	SizeHead
	SizesHead
	ContinuedMark
	CautionHead
	CautionsHead     // of several
	CautionsStanding // ends them
	SellersHead      // heads what concerns those who sell what they make
	SellersStanding  // ends that
	FinishedPiece
	ToFitBody
	EaseHead
	YarnHead
	MetersYards
	Grams
	Balls
	CircleYourSize
	DrawingCaption      // {} the size that is drawn
	MotifCaption        // {} the same, of joined motifs
	StitchRowsCaption   // {} the title of a chart in symbols, in rows
	StitchRoundsCaption // {} the same, in rounds from a middle
	StitchLevelsCaption // {} the same, in rounds one above the other
	FewerRepeats        // a chart leaves repeats out
	DrawnForSize        // {} the size that is drawn
	DesignBy            // {} the designer
	PageOf              // {} page, {} pages
	StartLabel
	MarkersLabel
	SectionsLabel // of stitches counted off without a marker
	NoteLabel
	MeansHead
	HereHead
	ContentsHead
	SchematicTitle
	TitleDrawing
	PartDrawing // {} the part
	TickBox
	RoundTape
	LargePrint
	MapHead    // heads the map of the construction: the pieces in their order
	StartHere  // marks where the work begins, for those who pass over what stands before it
	PageAbbrev // a page, by its number alone: p.
	TesterHead // heads what a tester fills in
	QueryMark  // heads a box for a question about a row
	// What a page on a screen says by itself.
	LanguageName   // of the language at hand, in its own words
	LanguageChoice // names the choice between languages
	AllSizes       // all of them, as one of the choices of a size
	TicksHead      // names what is there for keeping count
	RowDone        // the row at hand is done
	RowUndone      // takes the last one back
	RowHere        // heads the row at hand
	RowsDone       // {} how many, {} of how many
	AllDone        // no row is left
	ClearTicks
	RestoreTicks
	ResizeHead  // heads how a piece is made larger or smaller
	ShotsHead   // heads what a film has to show; {} the size
	SayAloud    // {} what is said aloud
	RowsHead    // heads the rows of all parts
	LeftOutHead // {} what a short text leaves out
	MeasuresOf  // heads the sizes with their measures
	MaterialsHead
	IntroName // what the introduction is called in a list of what is left out
	CountUp   // one more of several rows is done; {} what they are
	CountDown // one fewer; likewise

	ErrataHead      // what a list of corrections is called
	ErrataPages     // {} the paper: of which edition the pages are
	ErrataNone      // nothing changed in meaning
	ErrataPast      // heads room for what to do if one has worked past a correction
	CorrectionsHead // heads what was wrong
	AdditionsHead   // heads what was not there
	NumbersHead     // heads rows that are the same and have other numbers
	ItSaid          // before what stood there
	ItShouldSay     // before what should stand there
	LeftOut         // before what should not stand there any more
	PutIn           // before what did not stand there
	PageNow         // {} page, {} that of the new edition
	PageThen        // {} page of the new edition
	AgeHead
	IntroHead
	ChartRowsHead // before the rows of a chart that change
	CountHead     // before what a row comes to
	InPlaceOf     // {} what it is, {} what it was
	Corrected     // of something that is not as it was, where that is not told
	lastKey
)

// Keys lists the fixed texts.
func Keys() []Key {
	keys := make([]Key, 0, lastKey-1)
	for k := Key(1); k < lastKey; k++ {
		keys = append(keys, k)
	}
	return keys
}

// Say returns a fixed text. A {} in it stands for what the comment of its key names; [Language.SayWith] fills it in.
func (l *Language) Say(k Key) string { return l.voice.fixed(k) }

// SayWith returns a fixed text with its blanks filled in.
func (l *Language) SayWith(k Key, values ...string) string {
	args := make([]any, len(values))
	for i, v := range values {
		args[i] = v
	}
	return fill(l.voice.fixed(k), args...).String()
}

// line names a text without grammar that this package puts into its sentences.
type line uint8

// The lines. Blanks are filled in the order given.
const (
	orInches line = iota + 1 // between a list of centimetres and one of inches
	workVerb                 // before a sentence that would start with a dash
	thePart                  // {} title: a part without a name of its own, inside a sentence
	doNotTurn
	otherWay // {} what is worked
	styleRows
	styleJoined
	styleTurned
	styleSpiral
	firstRowWrong
	firstRoundWrong
	makeRing
	bothSides
	factSizes
	factSize
	factLevel
	factYarn
	factHooks
	factHook
	factGauge
	factOwnGauge
	factTerms
	termsText // {} reading, {} the others
	otherReadings
	termsAre      // {} reading
	otherStitch   // {} reading, {} an abbreviation
	otherStitches // the same, {} several
	elsewhere     // {} what others call a stitch
	fastenOff
	sideNotions
	sideDrawing
	amounts       // {} the swatch or the sample
	amountsOf     // {} yarns, {} the swatch or the sample
	noAmounts     // {} why
	noAmountsOf   // {} yarns, {} why
	weighedSwatch // {} how many stitches, {} rows
	weighedTube   // the same, counted in rounds
	repeatsOf     // {} how many, {} stitch pattern
	weighedSample // {} size, {} weight
	whyNoSwatch
	whyNoGauge
	whyNoBall
	sideYarnIncludes // {} what
	theSeam
	theSeams
	theCord
	theCords
	theFringe // as theCord
	thePompom
	thePompoms
	allowance    // {} per cent
	gaugeCheck   // {} stitches
	ownGaugeText // {} the maker's gauge, {} the designer's
	ownGaugeWas  // {} the designer's gauge
	ownGaugeFoot // {} the maker's gauge
	ownGaugeYarn
	gaugeCheckRaw // {} stitches, of a swatch that is not blocked
	gaugeBlocked  // behind a gauge, or before several
	gaugeNotBlocked
	gaugeHook     // {} gauge, {} hook
	sizeNamed     // {} size
	drawingText   // {} size
	drawingMotifs // {} size
	drawingHalves // {} size, {} letters
	drawingHalf   // {} size, {} letter
	drawingWait
	drawingMarkers
	notionPin
	notionFormer // {} diameter
	longTail
	notionAmount // {} a weight or a length, {} the thing
	howSizes     // {} the sizes as a list
	howNamed     // {} the sizes as a list, each with a number
	howDash
	howSizeGroups
	howColumnsHead
	howColumns
	howCountsHead
	howCounts
	howChange
	eachTime // {} the changes
	inchSign
	inchWord // the same in full
	oneInch
	yardWord
	howCountSpaces
	howChainsHead
	howRepeatsHead
	howRepeats
	howBlocks
	howSameHead
	howSamePlace
	howPlacesHead
	howGaps
	howBase
	howRowEnds
	howYarnHead
	howChangeYarn
	howCarryYarn
	howChartHead
	howChartUp
	howChartRounds
	howChartRows
	howBoxesHead
	howBoxes
	howTape
	howWedge
	howTicks        // boxes on a screen
	howCounter      // rows that are counted there
	cautionSummary  // behind a source of which a summary was read
	cautionAdvice   // where there is no standard, but what test houses, journals or the trade advise
	cautionMemory   // behind a source that is remembered
	cautionOwn      // in place of a source
	cautionOwnLimit // likewise, of a figure
	cautionOwnAfter // {} what our own rule goes by
	cautionReason   // {} the designer's
	lawRegulation   // {} its number
	lawDirective    // likewise
	weaveEnds
	blockPiece
	fibreShare      // {} per cent, {} fibre
	contentsAre     // {} the fibres
	contentsByYarn  // {} the fibres of each yarn
	contentsIn      // {} one size or several, {} their fibres
	contentsGuessed // the shares are an estimate
	contentsAlone   // trimmings are not among them
	ringName        // the adjustable ring, as an explained stitch
	ringText
	motifLayout // label of the step that lays motifs out
	motifFree
	motifOneSide
	motifTwoSides
	motifAsItStands
	outerCorner   // what a corner of joined motifs is called, with its article
	pieceCorner   // a corner of a flat piece
	joinedCorner  // and a corner space at a join
	yarnTable     // head of the yarn table
	overStretched // {} the measure, {} percent
	bodySources   // {} which measures, and where they are from
	bodyFrom      // {} measures, {} their sources
	bodyOwn
	bodyMemory      // {} the mark
	yarnTableWeight // the same, {} weight of a ball
	errataSpan      // {} the old edition, {} the new one
	errataWithin    // {} the edition, where both are of the same number
	onPage          // {} number of a page
	stepOnPage      // {} number of the page of a step
	pageOf          // {} page, {} pages
	largePrintNote
	testerNote // {} the title
	leftNote
	leftNoteButtons
	leftNoteNothing
	leftNoteChart
	leftNotePhoto
	leftNoteKept // {} what the designer wrote
	editionLarge
	editionLowInk
	editionLeft
	editionTester
	editionOneSize
	editionBooklet
	editionPhone
	photoSize // {} size
	testName
	testSize
	testYarn
	testHook
	testGauge
	testYarnUsed // {} yarn
	testYarnAll
	testTime
	testFit
	testUnclear
	testUnclearWhere
	testPattern   // {} what the pattern says
	testCircle    // {} the sizes
	mapChain      // a part that starts from a chain
	mapJoined     // from one that is joined
	mapBothSides  // along both sides of one
	mapRing       // in an adjustable ring
	mapChainRing  // in one of chains
	mapFoundation // with stitches that make their own chain
	mapFrom       // {} the edge or the part it starts on
	mapGoesOn     // {} the edge or the part it goes on from
	mapJoins      // {} the parts it joins
	mapAlong      // {} the parts along whose edges it goes
	mapRows
	mapJoinedRounds
	mapTurnedRounds
	mapSpiral
	mapSelf      // {} a part whose own edges are sewn together
	mapSeam      // {} a part, {} the part it is sewn to
	theElastic   // as theCord
	theButtons   // likewise
	subjectCraft // {} what is made
	subjectSizes // {} the sizes
	keywordCraft
	keywordPattern
	growMultiple // {} of which number
	growPlus     // {} likewise, {} and how many more
	growOwn      // the number is the designer's
	growAround   // {} stitches, {} a length
	growAcross   // likewise
	growRows     // {} rows, {} a length
	growRings    // {} stitches, {} a length
	growReached  // {} stitches that a piece grows to
	growWidest   // {} stitches, {} a length
	growMotif    // {} a length
	growFrom     // {} parts
	growAfter
	shotOnto
	shotLayout
	shotMotif
	shotFirst // {} stitches
	shotMarker
	shotYarn
	shotJoin
	shotLeave
	shotCross
	shotInOne
	shotGain // {} stitches
	shotLose // likewise
	lastLine
)

// handed are the lines that speak of hands, or of changing sides, and keep what they say.
var handed = map[line]bool{editionLeft: true, leftNote: true, leftNoteButtons: true, leftNoteNothing: true, leftNoteChart: true, leftNotePhoto: true, leftNoteKept: true}

func lines() []line {
	all := make([]line, 0, lastLine-1)
	for k := line(1); k < lastLine; k++ {
		all = append(all, k)
	}
	return all
}

// nameKind says what a name in a table of names is.
type nameKind uint8

// The kinds of names.
const (
	bodyName   nameKind = iota + 1
	wearerName          // a measure of the wearer that has another name on the piece
	levelName
	levelText
	fibreName
	kindName // what is made: hat
)
