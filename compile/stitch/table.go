package stitch

// Kind is one row of the table.
type Kind struct {
	ID     ID
	US, UK string // abbreviations as a source writes them
	// Begin is the number of chains that usually start a row of the stitch, and Counts whether they count as its first
	// stitch. Sources: dummies.com turning chain, careyscraftycorner.tripod.com and woollykits.com (sl st 0, sc 1, hdc 2,
	// dc 3, tr 4, dtr 5), crochetforall.com (trtr 6). In sc the chain does not count; for hdc print is divided and the
	// chain is taken not to count. An extended stitch begins with one chain more than the stitch it extends (common
	// practice, no source).
	Begin  int
	Counts bool
	// Takes is how many places of the row below one stitch takes, Makes how many stitches it gives the next row.
	Takes, Makes int
	// Height is the nominal height of the stitch, Width its nominal width, both beside a single crochet. They serve only
	// where no gauge is given. Heights of sc, hdc and dc were measured (windchilde.com/bluedepth, Crochet Yarn Estimating);
	// the others, and that stitches made with one hook are equally wide, are common practice without a source.
	Height, Width float64
	// Yarn is the yarn of one stitch beside a single crochet. Measured for ch, sc, hdc and dc (the same page); the
	// others go on in the same steps (common practice, no source).
	Yarn float64
	// Overs is how many times the yarn goes over the hook before the hook goes in.
	Overs int
	// Body says that the stitch has a body of its own: it can go round a post, be drawn together with others, and stand in
	// groups.
	Body bool
	// Extends is the stitch that an extended one is made of, or "".
	Extends ID
	// Back says that a row of the stitch is worked backwards, from where the row before it ended, without turning.
	Back bool
	// Symbol is the body of its symbol, and Slashes the slashes across its stem: as many as yarn overs, but none on a
	// half double crochet, by custom (dailyhandmade.com ?p=2036; of tall and extended stitches from memory).
	Symbol  Symbol
	Slashes int
}

// Symbol is the body of a stitch symbol.
type Symbol uint8

// The bodies of symbols.
const (
	Oval  Symbol = iota + 1 // a lying oval
	Dot                     // a filled dot
	Cross                   // an upright cross
	Stem                    // a stem under a cap
)

// Table holds the standard stitches, short to tall.
var Table = []Kind{
	{ID: Chain, US: "ch", UK: "ch", Makes: 1, Width: 1, Yarn: 0.46, Symbol: Oval},
	{ID: Slip, US: "slst", UK: "ss", Takes: 1, Height: 0.3, Width: 1, Yarn: 0.5, Symbol: Dot},
	{ID: SC, US: "sc", UK: "dc", Begin: 1, Takes: 1, Makes: 1, Height: 1, Width: 1, Yarn: 1, Body: true, Symbol: Cross},
	{ID: RSC, US: "rsc", UK: "revdc", Begin: 1, Takes: 1, Makes: 1, Height: 1, Width: 1, Yarn: 1.1, Back: true, Symbol: Cross},
	{ID: ESC, US: "esc", UK: "edc", Begin: 2, Takes: 1, Makes: 1, Height: 1.4, Width: 1, Yarn: 1.4, Body: true, Extends: SC, Symbol: Cross},
	{ID: HDC, US: "hdc", UK: "htr", Begin: 2, Takes: 1, Makes: 1, Height: 1.45, Width: 1, Yarn: 1.48, Overs: 1, Body: true, Symbol: Stem},
	{ID: EHDC, US: "ehdc", UK: "ehtr", Begin: 3, Takes: 1, Makes: 1, Height: 1.85, Width: 1, Yarn: 1.9, Overs: 1, Body: true, Extends: HDC, Symbol: Stem},
	{ID: DC, US: "dc", UK: "tr", Begin: 3, Counts: true, Takes: 1, Makes: 1, Height: 1.9, Width: 1, Yarn: 1.92, Overs: 1, Body: true, Symbol: Stem, Slashes: 1},
	{ID: EDC, US: "edc", UK: "etr", Begin: 4, Counts: true, Takes: 1, Makes: 1, Height: 2.3, Width: 1, Yarn: 2.35, Overs: 1, Body: true, Extends: DC, Symbol: Stem, Slashes: 1},
	{ID: TR, US: "tr", UK: "dtr", Begin: 4, Counts: true, Takes: 1, Makes: 1, Height: 2.6, Width: 1, Yarn: 2.6, Overs: 2, Body: true, Symbol: Stem, Slashes: 2},
	{ID: ETR, US: "etr", UK: "edtr", Begin: 5, Counts: true, Takes: 1, Makes: 1, Height: 3, Width: 1, Yarn: 3, Overs: 2, Body: true, Extends: TR, Symbol: Stem, Slashes: 2},
	{ID: DTR, US: "dtr", UK: "trtr", Begin: 5, Counts: true, Takes: 1, Makes: 1, Height: 3.3, Width: 1, Yarn: 3.3, Overs: 3, Body: true, Symbol: Stem, Slashes: 3},
	{ID: TRTR, US: "trtr", UK: "qtr", Begin: 6, Counts: true, Takes: 1, Makes: 1, Height: 4, Width: 1, Yarn: 4, Overs: 4, Body: true, Symbol: Stem, Slashes: 4},
}

// Of returns the table's row of a stitch.
func Of(id ID) (Kind, bool) {
	for _, k := range Table {
		if k.ID == id {
			return k, true
		}
	}
	return Kind{}, false
}

// Word is the abbreviation of the stitch as a source of one reading writes it.
func (k Kind) Word(uk bool) string {
	if uk {
		return k.UK
	}
	return k.US
}

// Named returns the row of the stitch that a word of a source stands for.
func Named(word string, uk bool) (Kind, bool) {
	for _, k := range Table {
		if k.Word(uk) == word {
			return k, true
		}
	}
	return Kind{}, false
}
