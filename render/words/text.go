package words

import (
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// StepText is one printed step of a part in one language.
type StepText struct {
	Only  rich.Text // "Sizes 1 y and 2 y only"; nil if the step is for all sizes
	Label rich.Text // "Round 1", "Rounds 2–4", "Start", "Markers", "Dividing round"; with Slots only the bare word
	Slots []string  // round numbers where sizes differ, one a size: "2–17", "–"; else nil
	Body  rich.Text
	Count *CountText // nil: no count
}

// CountText is the count line at the foot of a step: a unit with a figure for each size, or one line where the sizes
// agree or kinds are mixed ("8 dc, 2 ch-4 sps").
type CountText struct {
	Unit  rich.Text
	Slots []string // nil: Line holds
	Line  rich.Text
}

// Fact is a line of the facts on the title page, or a note beside the drawing: a head and its text.
type Fact struct {
	Head string
	Text rich.Text
}

// Abbreviation is a row of the table of abbreviations.
type Abbreviation struct {
	Short   string // as the pages print it
	Meaning string
	Others  []string // other readings of the same language: UK terms, other countries
}

// Special is a stitch that is explained.
type Special struct {
	Form stitch.Form
	Head rich.Text
	Text rich.Text
}

// Block is a block of prose: a paragraph, or an item of a list.
type Block struct {
	Text   rich.Text
	Bullet string // "•", "1." …; "" for a paragraph, and for what goes on in an item
	Deep   int    // in how many lists it stands, one in the other
	Head   int    // 1 or 2 for a heading, 0 otherwise
}
