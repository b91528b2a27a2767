package words

import (
	"reflect"

	"ovillo/compile/plan"
)

// Drawing is what a language says about drawings, for those who do not see them. A %s or %d in a text stands for what the drawing
// knows: names, lengths in centimetres, numbers.
type Drawing struct {
	And string // between the last two of a list

	Here, HereAll, HereOne string

	Schematic, Flat, Piece, Line       string
	Tube, Sheet, Dome, Disc            string
	Measure, Half                      string
	Down, Up, Outward                  string
	Legs, Sleeves, Branch              string
	OnEdge, Empty                      string
	Made, Open                         string
	Begin, Wait, Short, Broken, Marker string // what signs on lines mean
	Yarn, Ribs                         string
	Bars, Dots, Dashes                 string // how the rows of a yarn are drawn
	Motifs, MotifRows                  string
	Mosaic, Border, MotifSide          string
	Chart, ChartGrid                   string

	// Of charts in symbols: what they are and how they lie.
	StitchChart              string
	StitchRows, StitchRounds string
	StitchLevels             string // rounds one above the other
	ChartRepeat, ChartSheet  string
	// Of their key.
	KeyNote                       string // said once of the whole key
	KeyBegin, KeyBeginAs, KeyJoin string
	KeyCount                      string // of a number in brackets
	KeySpaces, KeyRing, KeyBelow  string
	InBackLoop, InFrontLoop       string
	InThirdLoop                   string

	// Of grids of colours and of filet: a row in the order of reading, and the key.
	GridRowRight, GridRowLeft      string // from right to left, from left to right
	GridOpen, GridOpens            string // squares of a mesh
	GridFull, GridFulls            string
	GridOpenSquare, GridFullSquare string
	GridYarn, GridCells            string
	GridRead, GridFrame            string
	GridTimes, GridRepeats         string // how often the chart is worked along a row
	ChartShared                    string // what the line between two sheets of a chart means
}

// Drawing returns the texts of the language about drawings.
func (l *Language) Drawing() Drawing {
	d := l.voice.drawing()
	v := reflect.ValueOf(&d).Elem()
	for i := range v.NumField() {
		text := v.Field(i).String()
		if l.read.manner.Left {
			text = swapped(text, l.voice.sides(text, sideLine, nil))
		}
		v.Field(i).SetString(l.voice.expand(text))
	}
	return d
}

// SizeShown is the name of the size that is drawn.
func (l *Language) SizeShown(p *plan.Pattern) string {
	if p.Shown < 0 || p.Shown >= len(p.Sizes) {
		return ""
	}
	return l.SizeName(p.Sizes[p.Shown])
}
