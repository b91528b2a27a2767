package words

import (
	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/render/rich"
)

// voice is everything that a language must be able to say. The shared files call it with what is to be said already
// decided; it phrases, declines and orders. Fixed words and lines without grammar are looked up by their key.
type voice interface {
	phrases
	nouns
	deeds
	rowTalk
	partTalk
	finishTalk
	frontTalk
	motifTalk
}

// phrases looks up what never changes its form.
type phrases interface {
	fixed(k Key) string
	line(l line) string
	drawing() Drawing                     // before the words of the reading are put in
	expand(text string) string            // puts the words of the reading into a text, in the braces that name them
	name(kind nameKind, id string) string // a measure, a part of the body, a fibre …; "" if the language has no word
	hookName(us, uk string) string        // what stands behind its millimetres; "" if nothing does
	quoted(text string) rich.Text
	sides(text string, k sideKind, of sideNouns) []sideWord // where it names left or right
	spoken(n int, feminine bool) string                     // a number in words, before what is counted; "" if it is too large
	inches() bool                                           // lengths are given in inches too
	// inUnit writes a figure, or a list of them, with its unit; one: it is one of them.
	inUnit(figures rich.Text, u plan.AmountUnit, one bool) rich.Text
	// meet lets what stands before a name run together with it, where the language does that: de el cuerpo, del cuerpo.
	meet(before, name rich.Text) (rich.Text, rich.Text)
}

// nouns names what is counted.
type nouns interface {
	and(items []rich.Text) rich.Text
	form(f stitch.Form) noun           // by its abbreviation
	formName(f stitch.Form) string     // in full: front post double crochet
	ownStitch(name, short string) noun // a stitch of the designer's own; short: "" if it has no abbreviation
	places(k plan.PlaceKind) noun      // what is worked into
	rowEnd(again bool) noun            // the end of a row; again: one was named before in the row
	rowsBelow(n noun, deep int, round bool) noun
	stitchesIn(n noun, yarn string) noun
	spaces(chains num, any bool) noun // chain spaces of so many chains; any: of no certain number
}

// deeds are the instructions of a row. They are parts of a sentence and start small.
type deeds interface {
	work(w working) rich.Text
	decrease(f noun, together int, n num, s spot) rich.Text
	drawn(f noun, legs rich.Text, n num) rich.Text // a decrease whose legs go into places of several kinds
	unfinished(f noun) noun                        // a stitch but for its last step
	spike(f noun) noun                             // a stitch that goes down into an older row
	chains(n num) rich.Text
	lengthen(f noun, n num) rich.Text // stitches that stand on no place
	skip(n num, s spot, called string) rich.Text
	asMade(s spot, posts bool) rich.Text
	leave(n num, called string) rich.Text
	repeat(body rich.Text, n num, s spot) rich.Text
	inOne(body rich.Text, n num, s spot) rich.Text
	marker(do plan.Op, number int, where plan.MarkWhere) rich.Text
	change(yarn string) rich.Text
	withYarn(t rich.Text, yarn string) rich.Text
	inYarn(n num, yarn string) rich.Text // so many stitches of a row in a yarn: 3 in sand
	slideOver(n num, s spot) rich.Text
	nextOne(r named) rich.Text // the next place of a kind, without a preposition
	sideAndBase(f noun, r named, sideFirst bool) rich.Text
	crossing(t rich.Text, c plan.Cross) rich.Text
	called(t rich.Text, name string) rich.Text        // stitches that are called something
	whichOne(nth, of int, f noun, name string) string // which of several stitches in one place is called something
	made(t rich.Text, name string) rich.Text          // chains that are for something
	inSizes(t rich.Text, sizes []string) rich.Text
	fromHook(f noun, h hooked, rest spot) rich.Text // rest.n without numbers: nothing follows
	startHook(h hooked) rich.Text
}

// rowTalk is what frames the instructions of a row.
type rowTalk interface {
	label(round bool, first, last int) rich.Text
	bareLabel(round, several bool) rich.Text
	namedLabel(name string, label rich.Text) rich.Text
	side(wrong bool) string
	times(n num, round bool) rich.Text
	begin(b beginning) rich.Text
	joinWith(j joining) rich.Text
	turn() rich.Text
	joinYarn(yarn string) rich.Text
	joinYarnIn(yarn string, place rich.Text) rich.Text
	rowsIn(n num, yarn string, round bool) rich.Text // so many rows in a yarn
	inStripes(stripes []rich.Text) rich.Text
	readsChart(name string, r plan.ChartRow) rich.Text // name: "" where there is one chart alone
	changeHook(size string) rich.Text
	marksUp(n int, on, round bool) rich.Text            // the markers are moved up as they are met; on: in every row until they are taken out
	marksOut(numbers []int, last, round bool) rich.Text // they have no place any more, or behind the last of several rows
	measures(called string, tall rich.Text) rich.Text   // called: "" for the piece at hand
	blockHead(rows int, round bool, n num) rich.Text
	blockTimes(first bool, n num, round bool) rich.Text // heads rows whose number differs between sizes
	blockRow(round bool, from, to int, name string) rich.Text
	likeRow(nth int, round bool) rich.Text
	onlySizes(sizes []string) rich.Text
}

// partTalk is what a part says besides its rows.
type partTalk interface {
	startFoundation(n num, f noun) rich.Text
	joinRing(first noun, twist bool) rich.Text
	startAlong(a alongText) rich.Text
	run(r named) rich.Text      // as a whole: the last round of the body
	alongRun(r named) rich.Text // heads what is worked along one of them
	startIn(r named, y joined) rich.Text
	countOff(o counting) rich.Text
	level(n int) rich.Text
	closeThrough(loops string) rich.Text
	moveStart(marker int, moved num, out bool) rich.Text // out: the marker is then taken out
	nowHave(counts []rich.Text) rich.Text
	inSection(n num, called string) rich.Text
	bare(name string) string // a name without its article
	handedHook(size, yarn string) rich.Text
	worked(from rich.Text) rich.Text
	goesOn(r named) rich.Text              // over a run alone, where the yarn hangs
	theParts(titles []rich.Text) rich.Text // several that have no name of their own in a sentence
	makeSeveral(n int) rich.Text
}

// motifTalk is motifs that are joined to one another.
type motifTalk interface {
	makeMotifs(n num) rich.Text
	motifs(g laid) rich.Text    // how many, as a note
	layMotifs(g laid) rich.Text // in which order they are worked
	whichMotifs(n num, sides int, rest bool) rich.Text
	motifSize(side rich.Text) rich.Text
	joinTo(space noun, again bool) rich.Text
	startAround(r named, y joined) rich.Text
}

// finishTalk is the finishing.
type finishTalk interface {
	sew(a, b []named, m plan.Match, eased rich.Text) rich.Text // eased: how much of the longer edge is eased in; nil: none
	cord(c cord) []rich.Text
	fringe(f fringe) []rich.Text
	elastic(e elastic) []rich.Text
	pompom(k pompom) rich.Text
	buttons(n num, size, material string) rich.Text // material: as in the plan; "" if it is not said
}

// frontTalk is what stands before the parts.
type frontTalk interface {
	span(lo, hi, unit string) string
	sizeList(names []string) string
	balls(lo, hi, yarns int) rich.Text
	gauge(sts, rows string, name rich.Text, round bool) rich.Text
	stsOf(pattern string) noun     // stitches of a stitch pattern
	repeatsOf(pattern string) noun // repeats of a stitch pattern
	hooksFor(size string, parts rich.Text) rich.Text
	markers(n int) rich.Text
	buttonsNeeded(n num, size, material string) rich.Text
	elasticNeeded(width, length rich.Text) rich.Text
	beginCounts(chains int, f noun, counts bool) rich.Text
	around(name string) string
	ease(body string) string
	edition(n int, year, month int) string
	special(s explained) rich.Text
	specialName(f stitch.Form) rich.Text
	foundationSpecial(s explained, goesOn bool) (head, text rich.Text) // from a new start, or on from a row
	spikeSpecial(spike, f noun) (head, text rich.Text)
	takesMakes(takes, makes, spaces int) rich.Text
	otherForm(f stitch.Form, plain bool) string // how a reader of another country is told the name of a form; plain: and of its stitch
	otherTerm(t term) string
	mistaken(name string, meant noun) rich.Text // some texts give a name to another stitch
}

// working is one instruction that makes stitches.
type working struct {
	form noun
	post stitch.Post
	loop stitch.Loop
	per  num // stitches in one place
	at   spot
}

// spot says where stitches go, and how far.
type spot struct {
	reach  plan.Reach
	place  noun
	space  noun // the space that ends it, for ToSpace
	over   plan.PlaceKind
	n      num
	after  bool // a beginning chain stands in the place before
	first  bool // nothing was worked in the row before this
	round  bool
	marker int
	marked bool // the marker it goes to stands in a stitch
	before num
	last   num
	deep   int
	ref    named
	into   rich.Text // of slip stitches that carry the yarn on: the space into which the last one goes; nil if it is a stitch
}

// few returns how many places are meant if that is one small number, which says more than how far.
func (s spot) few() (int, bool) {
	if s.n.unknown() {
		return 0, false
	}
	v, ok := s.n.same()
	return v, ok && v <= fewPlaces
}

// fewPlaces is how many places are counted rather than described by where they end.
const fewPlaces = 9

// named is a place or a run that is reached by name.
type named struct {
	plan.Ref
	called string // its own name, with article; "" if it has none
	whose  string // the part it belongs to, with article; "" for the part at hand
	row    num
	count  num
	ends   num // of rows
	toRow  num
	place  noun // one of its places
	here   bool // it was made or passed over in the row at hand, and has no name
	round  bool
}

// neighbours reports whether two rows are meant, one above the other.
func (r named) neighbours() bool {
	from, ok := r.row.same()
	to, also := r.toRow.same()
	return ok && also && to == from+1
}

// several reports whether more than one place is meant.
func (r named) several() bool {
	switch r.Pick {
	case plan.EachOf:
		return !r.count.one()
	case plan.Whole:
		return r.count.some() && !r.count.one()
	}
	return false
}

// counted reports whether a run is places of the live edge that have a name: the first of them is where it starts.
func (r named) counted() bool {
	return !r.Below && (r.Kind == plan.RefSection || r.Kind == plan.RefSkipped || r.Kind == plan.RefStitches)
}

// first is the first place of a run.
func (r named) first() named {
	r.Pick = plan.FirstOf
	return r
}

// newChain reports whether the run is chains that are made where the part starts.
func (r named) newChain() bool {
	return r.Kind == plan.RefSpace && r.Own && !r.Below && r.Row == nil && r.Label == ""
}

// bridged reports whether new chains lie between pieces.
func bridged(runs []named) bool {
	for _, r := range runs {
		if r.newChain() {
			return len(runs) > 1
		}
	}
	return false
}

// pick says which place is meant; the first by its number is the first.
func (r named) pick() plan.Pick {
	if r.Pick == plan.NthOf && r.Nth == 1 {
		return plan.FirstOf
	}
	return r.Pick
}

// hooked is the first stitch of a row in a new chain.
type hooked struct {
	nth, skipped int
	per          num // stitches in that chain
	counts       bool
	as           noun
	throughout   bool
}

// beginning is the beginning chain of a row.
type beginning struct {
	chains, and int
	counts      bool
	as          noun
	explain     bool // say whether it counts
	throughout  bool
}

// joining closes a round.
type joining struct {
	with        noun // the stitch that joins
	first       noun // the stitch joined to
	intoChain   bool
	nth, chains int
	top         bool // the nth chain is the last: the top
}

// joined is the yarn that is joined where a part starts.
type joined struct {
	fresh bool   // it is joined; else it hangs there already
	name  string // "" if the pattern names no yarn
	wrong bool   // the wrong side faces
}

// alongText is the edge a part starts along.
type alongText struct {
	runs  []named
	skip  num // places of its row before the first run, where that has no name; else without numbers
	yarn  joined
	rates bool // the ends of rows are not spelt out in the first row: it is said how many stitches go along them
	round bool // all round a flat piece, beginning behind its first corner
}

// counting is a counting off.
type counting struct {
	items  []counted
	round  bool
	spiral bool
	plain  bool // counts and markers between stitches by turns
}

// counted is one step of a counting off.
type counted struct {
	n      num
	called string
	marker int // its printed number; 0 for a count
	inNext bool
	more   bool // places were counted off before
}

// cord is a cord of the finishing.
type cord struct {
	yarn    string
	chains  num
	known   bool // the number of chains
	length  rich.Text
	through named
	threads bool
	free    rich.Text
	worked  bool // a part is the cord
	part    named
	width   rich.Text // nil if it is not said
	ends    plan.Ends
	fixed   bool
	inside  bool
}

// fringe is a fringe along edges.
type fringe struct {
	yarn        string
	length, cut rich.Text
	along       []named
	strands     num
	known       bool // the number of strands
	bundle      int  // strands in one place
}

// elastic is elastic that is threaded through a row.
type elastic struct {
	width, length rich.Text
	through       named
}

// pompom is a pompom; takes is how much yarn it takes, nil if that is not known.
type pompom struct {
	yarn   string
	across rich.Text
	wraps  int
	takes  rich.Text
}

// explained is a stitch that is explained in full.
type explained struct {
	form     stitch.Form
	overs    int // yarn overs before the hook goes in
	start    int // chains with which a row of it starts without a foundation
	base     noun
	single   noun // one stitch of a group
	back     bool // its row goes the other way
	extended bool // the yarn goes through one loop before the stitch is finished
	extends  noun // the stitch it is finished as
	half     bool // it keeps two loops until it is finished
}
