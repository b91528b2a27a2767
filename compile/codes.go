package compile

import "ovillo/lang/diag"

// The codes this package reports itself; those of faults in a row stand in faults.go, those of values, measures and
// cautions with their packages.
const (
	codeTwice         diag.Code = "OV201" // a name declared twice
	codeNoName        diag.Code = "OV202" // a name nothing sets
	codeNoStitch      diag.Code = "OV203"
	codeNoYarn        diag.Code = "OV204"
	codeNoPart        diag.Code = "OV205"
	codeNoSize        diag.Code = "OV206"
	codeLikeRow       diag.Code = "OV207" // a labelled row of a part like another that replaces nothing
	codeGroupInItself diag.Code = "OV208"
	codeNoSizes       diag.Code = "OV210"
	codeSizeTwice     diag.Code = "OV211"
	codeManySizes     diag.Code = "OV212"
	codeSizeNames     diag.Code = "OV213"
	codeLevel         diag.Code = "OV214"
	codeTerms         diag.Code = "OV215"
	codeEditionDate   diag.Code = "OV216"
	codeNoParts       diag.Code = "OV217"
	codeTooMany       diag.Code = "OV219" // more things of a kind than a source may have

	// Books.
	codeBookName     diag.Code = "OV230"
	codeBookMissing  diag.Code = "OV231"
	codeBookRead     diag.Code = "OV232"
	codeBookPattern  diag.Code = "OV233"
	codeBookEmpty    diag.Code = "OV234"
	codeBookLanguage diag.Code = "OV235"
	codeBookTerms    diag.Code = "OV236"
	codeBookBeside   diag.Code = "OV237"

	codeNumberAlone diag.Code = "OV430" // 5 dc
	codeTwoNumbers  diag.Code = "OV431"
	codeNoBase      diag.Code = "OV432"
	codeTogether    diag.Code = "OV433"
	codeSpreadWhat  diag.Code = "OV434"
	codeGroupTarget diag.Code = "OV435"
	codeBoundOfRun  diag.Code = "OV436"
	codeBeginCounts diag.Code = "OV437" // the beginning chain cannot count here
	codeNoStart     diag.Code = "OV438"
	codeStartTwice  diag.Code = "OV439"
	codeStartNumber diag.Code = "OV440"
	codeManyRows    diag.Code = "OV441"
	codeRowsLength  diag.Code = "OV442"
	codeRowsBelow   diag.Code = "OV443"
	codeChartRow    diag.Code = "OV444"
	codeChartMark   diag.Code = "OV445"
	codeChartWidth  diag.Code = "OV446"
	codeOwnStitch   diag.Code = "OV448" // an own stitch that takes nothing, or makes more than can be
	codeLongRow     diag.Code = "OV447" // groups in groups come to too many instructions

	codeShapeRows    diag.Code = "OV450" // no plain or no shaped row
	codeShapeWhen    diag.Code = "OV451" // nothing says when the shaped rows come
	codeShapeOrder   diag.Code = "OV452" // listed rows out of order
	codeShapeUneven  diag.Code = "OV453" // the difference is no multiple of what a row changes
	codeShapeCrowded diag.Code = "OV454" // more shaped rows than rows
	codeShapeLong    diag.Code = "OV455" // a schedule longer than its rows
	codeShapeSide    diag.Code = "OV456" // a shaped row shows the wrong side
	codeShapeEdges   diag.Code = "OV457" // edges are not named, or the part is no flat piece
	codeShapeTwice   diag.Code = "OV458" // one edge shaped by two schedules
	codeMirror       diag.Code = "OV459" // a row that goes one way only

	codeSpacedAmong  diag.Code = "OV470" // what is set at even distances stands among no plain stitches
	codeSpacedWidth  diag.Code = "OV471" // it takes a number of places that is not known
	codeMotifLines   diag.Code = "OV480" // how many motifs, or where they are joined, is not said
	codeMotifNumber  diag.Code = "OV481"
	codeMotifRound   diag.Code = "OV482" // not the last round of the motif
	codeMotifOpen    diag.Code = "OV483" // the last row of the motif is no round, or shows the wrong side
	codeMotifCorners diag.Code = "OV484" // not four corners that are spaces
	codeMotifSides   diag.Code = "OV485" // sides that are not alike
	codeMotifParts   diag.Code = "OV487" // a round that cannot be parted into sides
	codeMotifSide    diag.Code = "OV489" // a side that is no length
	codeMotifSize    diag.Code = "OV494" // measured, and how large a motif is is not said

	codeStripes         diag.Code = "OV543" // stripes of no rows
	codePatternMultiple diag.Code = "OV472" // stitches over which a stitch pattern does not come out
	codePatternEnds     diag.Code = "OV473" // rows of it that end where it may not
	codePatternOrder    diag.Code = "OV474" // its rows are not numbered in order
	codePatternRows     diag.Code = "OV475" // it has no rows
	codePatternEnd      diag.Code = "OV476" // a row that it has not
	codePatternFrom     diag.Code = "OV477" // from row 1 where no stitch pattern is worked
	codePatternNever    diag.Code = "OV478" // no number of rows ends where it may
	codePatternMany     diag.Code = "OV479" // a multiple of nothing

	codePicot         diag.Code = "OV490" // a picot with a place or a number
	codeGroupOf       diag.Code = "OV491" // a group of too few or too many stitches, or of another stitch
	codePlainStitch   diag.Code = "OV492" // a decrease, a group or a post stitch where a plain stitch is meant
	codeMarkName      diag.Code = "OV515" // a marker is set without a name
	codeNoSide        diag.Code = "OV530" // a side edge that the part has not
	codeNoRowEnds     diag.Code = "OV531" // no row ends there
	codePickRate      diag.Code = "OV532" // a rate that is no two whole numbers
	codePickGauge     diag.Code = "OV533" // a rate by gauges that are not known
	codeAroundFlat    diag.Code = "OV534" // around a part that is no flat piece
	codeAroundOpening diag.Code = "OV535" // around an opening that no chain closes
	codeMultipleBy    diag.Code = "OV536" // a run that cannot be brought to a multiple
	codeMultipleFar   diag.Code = "OV537" // a multiple that is out of reach
	codeCountOf       diag.Code = "OV540" // a count of what is not there at this point
	codeWalkedShort   diag.Code = "OV538" // an edge that is joined bit by bit, and not to its end

	codeBackRow    diag.Code = "OV493" // something else in a row that goes the other way
	codeLegs       diag.Code = "OV496" // something else than stitches of one kind, and skips, drawn together
	codeDrawnWhere diag.Code = "OV495" // a decrease in a space

	codeChartLine      diag.Code = "OV464" // a line of a chart that is numbered as another row
	codeChartLegend    diag.Code = "OV465" // a mark of a mesh that is neither open nor filled
	codeChartMesh      diag.Code = "OV466" // squares of no size, or of something else than a stitch
	codeChartNone      diag.Code = "OV467" // by chart in a row that is from none
	codeChartStitch    diag.Code = "OV468" // a stitch by chart that says more than the chart lets it
	codeChartList      diag.Code = "OV469" // rows from a chart in which nothing is worked by it
	codeMeshStitch     diag.Code = "OV428" // a mesh worked in another way than in its squares
	codeDrawnLines     diag.Code = "OV422" // a chart of a part with a legend, a mesh or rows of marks, or cut in two ways
	codeDrawnRows      diag.Code = "OV423" // rows to be drawn that the part does not have
	codeDrawnBeyond    diag.Code = "OV424" // stitches to be drawn beyond the row
	codeDrawnRepeats   diag.Code = "OV426" // repeats to be drawn of rows that do not repeat so often
	codeDrawnMany      diag.Code = "OV449" // more stitches than a chart may have
	codeDrawnMotifs    diag.Code = "OV218" // a chart of joined motifs, which have no rows of their own
	codeDrawnGrid      diag.Code = "OV488" // rows to be drawn in a chart that is of no part
	codeSchematicTwice diag.Code = "OV497" // a second line for the schematic
	codeSchematicPart  diag.Code = "OV498" // a part that it names twice
	codeSchematicNone  diag.Code = "OV499" // a schematic without any part
	codeChartColumn    diag.Code = "OV429" // a column that the chart does not have
	codeChartStart     diag.Code = "OV427" // a row from a chart whose first cell is the chain of the start, in another yarn

	codeChartUnused diag.Code = "OV220"
	codeMadeApart   diag.Code = "OV617" // a part made more or less often than the one it goes on from
	codeNoPost      diag.Code = "OV545" // round the post of what has none
	codeOffTwice    diag.Code = "OV517" // all that was counted off is counted off again
	codeOpenRun     diag.Code = "OV510" // part of a skipped run was worked
	codeOpenHole    diag.Code = "OV511" // a skipped run nobody works
	codeSecondChain diag.Code = "OV512" // a new chain where one with a free other side waits

	codeCount    diag.Code = "OV601"
	codeMultiple diag.Code = "OV602"
	codeCountOff diag.Code = "OV603"
	codeSpaces   diag.Code = "OV604" // a count that does not name the spaces
	codeEachTime diag.Code = "OV605"
	codeNoCounts diag.Code = "OV606" // a part that states no counts

	codeSizesAlike  diag.Code = "OV607" // sizes that are to differ come out alike
	codeStepsUneven diag.Code = "OV608" // sizes grow in uneven steps, though the lengths do not
	codeFalls       diag.Code = "OV609" // a measure that is smaller in a larger size
	codeStays       diag.Code = "OV610" // a measure that stands still though the wearer grows
	codeLeftBehind  diag.Code = "OV611" // a measure that stands still beside one it has to grow with
	codeLeaps       diag.Code = "OV612" // a measure that grows in uneven steps, though the wearer does not
	codeMixedParity diag.Code = "OV613" // counts that are even in some sizes and odd in others
	codeEmptyPart   diag.Code = "OV614" // a section of nothing
	codeOtherSide   diag.Code = "OV615" // a row whose side differs from size to size
	codeSizeLeftOut diag.Code = "OV616" // steps for some sizes each, which leave one out
	codeNoFit       diag.Code = "OV790" // no measure is compared with the wearer
	codeNoMeasures  diag.Code = "OV791" // something worn, and no finished measures

	codeNoTranslation diag.Code = "OV801"
	codeNoTitle       diag.Code = "OV802"
	codePartTitle     diag.Code = "OV803"
	codeProseNumber   diag.Code = "OV804"
	codeProseName     diag.Code = "OV805"
	codeProseLanguage diag.Code = "OV806"
	codeOtherTerms    diag.Code = "OV807" // prose names a stitch as the other terms do
	codePlainAbbr     diag.Code = "OV808" // prose abbreviates a stitch that other terms read otherwise
	codeProseUnit     diag.Code = "OV809" // prose gives a length in centimetres alone
	codeNoSuchRow     diag.Code = "OV810" // prose calls a row the part does not have
	codeSameTitle     diag.Code = "OV811" // two parts of one title
	codeRowOrRound    diag.Code = "OV812" // prose calls a row a round, or the reverse
	codeNotMeant      diag.Code = "OV813" // nothing of that code is reported where it is said to be meant
	codeNoSign        diag.Code = "OV814" // a letter or sign that the faces of the pages do not have
	codeProseMarkup   diag.Code = "OV819" // signs of Markdown that the pages have nothing for
	codeProsePlural   diag.Code = "OV820" // a value that is one in some size before a word in the plural
	codeProseAlone    diag.Code = "OV821" // a number in the text of one language alone
	codeOtherCountry  diag.Code = "OV822" // prose names a stitch as another country does
	codeShortName     diag.Code = "OV823" // prose abbreviates a stitch that other countries abbreviate otherwise
	codeSizesInOne    diag.Code = "OV824" // words for sizes in one language of several

	codeYarnUnused diag.Code = "OV705"

	codeSampleWeight  diag.Code = "OV715"
	codeAllowance     diag.Code = "OV716"
	codeSwatchRepeats diag.Code = "OV717" // a swatch counted in repeats of what has none
	codeSampleSwatch  diag.Code = "OV718" // a sample and a swatch far apart
	codeSampleLight   diag.Code = "OV719" // a sample that weighs less than its cords and pompoms
	codeYarnFalls     diag.Code = "OV720" // a size takes less yarn than the one before it
	codeYarnLacks     diag.Code = "OV721"
	codeHookUnused    diag.Code = "OV722"
	codeNotionTwice   diag.Code = "OV723" // a notion that is listed by itself
	codeButtonHoles   diag.Code = "OV724" // more or fewer buttons than holes
	codeUnbuttoned    diag.Code = "OV725" // holes that no button is for
	codeElasticLong   diag.Code = "OV726"

	// Steps, in truth; but the numbers of rows are all taken, and what ends here is the yarn.
	codeNoYarnLeft diag.Code = "OV733" // worked where the yarn was cut
	codeCutTwice   diag.Code = "OV734"
	codeLooseEnd   diag.Code = "OV735" // a part that leaves its yarn on the hook

	codeNoMarket    diag.Code = "OV940" // a place whose rules are not known
	codeCautionWord diag.Code = "OV941" // a word that says nothing of a cord or a notion
	codeAgeOrder    diag.Code = "OV942" // the oldest wearer is younger than the youngest
	codeCordPart    diag.Code = "OV943" // a part that is called like a cord
	codeNotionWord  diag.Code = "OV944" // a notion whose words do not tell what it is
	codeCordLength  diag.Code = "OV945" // the length of a part is worked out
	codeCordEnds    diag.Code = "OV946" // ends, and no ends
	codeLooseChains diag.Code = "OV947" // of which the finishing says nothing

	codePhotoName   diag.Code = "OV728" // a picture outside of the folder of the source
	codeNoPhoto     diag.Code = "OV729" // no such file
	codePhotoRead   diag.Code = "OV730" // no JPEG or PNG, or broken
	codePhotoLarge  diag.Code = "OV731"
	codePhotoCoarse diag.Code = "OV732"

	codeGaugeTwice  diag.Code = "OV327" // a stitch counted twice in one way
	codeGaugeWay    diag.Code = "OV328" // counted in rows, worked in rounds, or the other way
	codeGaugeHook   diag.Code = "OV329" // counted with one hook, worked with another
	codeGaugeShort  diag.Code = "OV330" // counted over less than 10 cm
	codeGaugeRepeat diag.Code = "OV331" // repeats of what has none
	codeSeamBlind   diag.Code = "OV334" // a seam whose edges cannot be compared
	codeGaugeChain  diag.Code = "OV333" // a start whose chains are far from the stitches on them

	codeStuck       diag.Code = "OV760" // a measure that does not follow a maker's gauge
	codeStuckPartly diag.Code = "OV761" // one that follows it in part
	codeStuckMotif  diag.Code = "OV762" // the side of a motif, which was measured at the gauge of the source

	codeGaugeLength diag.Code = "OV750"
	codeHookLength  diag.Code = "OV751"
	codeNoGauge     diag.Code = "OV752"
	codeMeasured    diag.Code = "OV753"
	codeMeasuredRow diag.Code = "OV754"
	codeSeam        diag.Code = "OV757"
	codeNotion      diag.Code = "OV758"
	codePickLength  diag.Code = "OV759" // picked-up stitches of another length than their edge

	codeNoBody     diag.Code = "OV770" // no such table of body measures
	codeNoBodyRow  diag.Code = "OV771" // no such size in it
	codeBodyRows   diag.Code = "OV772" // as many sizes named as there are not
	codeBodyAge    diag.Code = "OV773" // an age that it does not have
	codeNoAge      diag.Code = "OV774" // by age, and no age is given
	codeBodyLacks  diag.Code = "OV775" // a measure that it does not have in every size
	codeBodyFarOff diag.Code = "OV776" // own figures far from the tables

	codeTooNarrow     diag.Code = "OV777" // an opening that does not go over the head
	codeHeadUnchecked diag.Code = "OV778" // pulled over the head, and no measure says what goes over it
	codeMuchStretch   diag.Code = "OV779" // an edge that is to stretch far
	codeHeadAssumed   diag.Code = "OV780" // the head is taken from the growth table

	codeSum         diag.Code = "OV781" // measures that are to add up and do not
	codeSumByName   diag.Code = "OV782" // the same by their names
	codeNoMeasure   diag.Code = "OV783" // no such measure
	codeFlat        diag.Code = "OV784" // laid flat, and it does not go around
	codeSampleOff   diag.Code = "OV785" // a sample that measures something else
	codeNoDisc      diag.Code = "OV786" // measured across, and it is no disc
	codeUnusualEase diag.Code = "OV788" // an ease that no garment has
	codeDiscCups    diag.Code = "OV787" // a disc that does not lie flat
)
