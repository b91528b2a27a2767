package proof

// Rule is a law of pages. Where the rules for print and access of the trade have a number for it, it goes by that number,
// such as TYPE-03 or CONT-01 (RNIB and APH on print, WCAG 2.2 on contrast, PDF/UA-1 on tags); those of ours begin with PAGE.
type Rule string

// The laws of ours.
const (
	Outside   Rule = "PAGE-01" // text, lines and pictures keep to the block of the paper
	Meeting   Rule = "PAGE-02" // no text meets another
	Missing   Rule = "PAGE-03" // the face has every letter
	LastHead  Rule = "PAGE-04" // below a heading stands what it names, on the same page
	CountAway Rule = "PAGE-05" // a count stands on the page on which its text ends, and a text with its label
	TornRow   Rule = "PAGE-06" // a row of instructions stands on one page unless it is long, and a row of a table always
	DeadLink  Rule = "PAGE-07" // a link leads somewhere
	Empty     Rule = "PAGE-08" // a page holds more than its running lines
	Struck    Rule = "PAGE-09" // no line goes through a text, and nothing covers one
	Tinted    Rule = "PAGE-10" // a low-ink edition has no colours and no greys
)

// The laws that have a number elsewhere.
const (
	SmallBody     Rule = "TYPE-01" // letters without ascender are 1.2 mm high
	Small         Rule = "TYPE-03" // no type under the least size, 8 points unless less was promised
	LongLine      Rule = "TYPE-06" // lines of running text have 70 characters or fewer; a text of one line has no next one to find
	Tight         Rule = "TYPE-08" // lines of running text stand 1.25 of their size apart
	OverPicture   Rule = "TYPE-09" // no text over a picture
	Rotated       Rule = "TYPE-10" // text is horizontal
	LargeSmall    Rule = "LARG-01" // large print: all text in 18 points or more
	LargeHead     Rule = "LARG-02" // large print: headings in 20 points or more
	LargeTight    Rule = "LARG-03" // large print: lines stand 1.15 of their size apart
	LargeMargin   Rule = "LARG-04" // large print: an inch of margin at the top, left and right
	LargeFacing   Rule = "LARG-05" // large print: languages follow each other
	Pale          Rule = "CONT-01" // contrast of text: 4.5
	PaleLarge     Rule = "CONT-02" // contrast of large text: 3
	PaleLine      Rule = "CONT-03" // contrast of lines that say something: 3
	LargePale     Rule = "CONT-04" // large print, contrast: 7, of large text 4.5
	TornCaution   Rule = "CAUT-03" // a caution is not split
	Untagged      Rule = "PDFU-02" // what is no ornament has a place in the reading order
	NoLanguage    Rule = "PDFU-07" // every text has a language
	SkippedLevel  Rule = "PDFU-09" // no level of headings is skipped
	NoDescription Rule = "PDFU-10" // every figure has a description
	NoHeaderCell  Rule = "PDFU-11" // every table has cells that are heads, and they say of what
	BrokenList    Rule = "PDFU-12" // a list holds items, and an item a body
	MuteLink      Rule = "PDFU-16" // a link says where it leads
)

// names say each law in a few words, for those who read faults.
var names = map[Rule]string{
	Outside: "outside the block", Meeting: "texts meet", Missing: "no such letter in the face", LastHead: "a heading without what it names",
	CountAway: "a text parted from its label or count", TornRow: "a row split over pages", DeadLink: "a link to nowhere",
	Empty: "an empty page", Struck: "a line through a text, or a text covered", Tinted: "a tint in a low-ink edition",
	SmallBody: "letters under 1.2 mm", Small: "type too small", LongLine: "a line too long", Tight: "lines too tight",
	OverPicture: "text over a picture", Rotated: "text that is not horizontal",
	LargeSmall: "type too small for large print", LargeHead: "a heading too small for large print", LargeTight: "lines too tight for large print",
	LargeMargin: "a margin too narrow for large print", LargeFacing: "languages side by side in large print",
	Pale: "text too pale", PaleLarge: "large text too pale", PaleLine: "a line too pale", LargePale: "text too pale for large print",
	TornCaution: "a caution split over pages", Untagged: "outside the reading order", NoLanguage: "a text without language",
	SkippedLevel: "a level of headings skipped", NoDescription: "a figure without description",
	NoHeaderCell: "a table without heads", BrokenList: "a list without items or bodies", MuteLink: "a link without description",
}

// Name says a law in a few words of English.
func (r Rule) Name() string { return names[r] }
