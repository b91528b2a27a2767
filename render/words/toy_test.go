package words

import (
	"reflect"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"ovillo/compile/plan"
	"ovillo/compile/stitch"
	"ovillo/lang/terms"
	"ovillo/render/rich"
	"ovillo/render/sample"
)

// Both languages, and the toy below, are voices.
var (
	_ voice = (*english)(nil)
	_ voice = (*spanish)(nil)
	_ voice = toy{}
)

// toy is a language of Greek letters and signs. It is here to prove that nothing but a voice and a column of terms makes
// a language: whatever Latin letter shows in its pages was written by a shared file.
type toy struct{ *reading }

func newToy(r *reading) voice { return toy{r} }

const toyTerms = `concept,memory,xx
ch,,θ;θη;θη
slst,,σ;σι;σι
sc,,α;αα;αα
hdc,,β;ββ;ββ
dc,,γ;γγ;γγ
tr,,δ;δδ;δδ
dtr,,ε;εε;εε
trtr,,ζ;ζζ;ζζ
st,,π;πι;πι
sp,,κ;κα;κα
row,,ρ
round,,ο
yarn,,ν
needle,,μ
inches,,-
weight light,,λ
weight fine,,λ
weight medium,,λ
reading,,ω
country,,ω
size,,Σ
decimal,,·
`

// t writes a sign and everything it is given behind it.
func (y toy) t(sign string, args ...any) rich.Text {
	out := rich.T(sign)
	for _, a := range args {
		out = append(out, fill(" {}", a)...)
	}
	return out
}

func (y toy) s(sign string, args ...any) string { return y.t(sign, args...).String() }

func (y toy) at(p spot) rich.Text {
	return y.t("→", int(p.reach), p.place.one, p.n, p.marker, p.before, p.last, y.ref(p.ref))
}

func (y toy) ref(r named) rich.Text {
	return y.t("№", int(r.Kind), int(r.Pick), r.called, r.whose, r.row, r.count)
}

func (y toy) refs(rs []named) rich.Text {
	out := rich.T("№№")
	for _, r := range rs {
		out = append(out, y.ref(r)...)
	}
	return out
}

func (y toy) list(names []string) string { return strings.Join(names, " + ") }

func (y toy) spoken(n int, _ bool) string { return strings.Repeat("ι", n) }

func (y toy) fixed(k Key) string {
	switch k {
	case DrawingCaption, MotifCaption, StitchRowsCaption, StitchRoundsCaption, StitchLevelsCaption, DrawnForSize, DesignBy, PageOf, PartDrawing, RowsDone, CountUp, CountDown, ShotsHead, SayAloud, LeftOutHead, ErrataPages, PageThen:
		return "Κ {}"
	case PageNow, InPlaceOf:
		return "Κ {} {}"
	}
	return "Κ"
}

func (y toy) line(l line) string {
	switch l {
	case contentsIn, termsText, otherStitch, otherStitches, elsewhere, amountsOf, noAmountsOf, weighedSwatch, weighedTube, repeatsOf, weighedSample, fibreShare, drawingHalves, drawingHalf, gaugeHook, ownGaugeText, pageOf, mapSeam, growPlus, growRings, growAround, growAcross, growRows, errataSpan:
		return "λ {} {}"
	case contentsAre, contentsByYarn, termsAre, notionFormer, amounts, noAmounts, sideYarnIncludes, allowance, gaugeCheck, gaugeCheckRaw, ownGaugeWas, ownGaugeFoot, sizeNamed, drawingText, drawingMotifs, howSizes, cautionOwnAfter, cautionReason, lawRegulation, lawDirective, yarnTableWeight, thePart, otherWay, onPage, stepOnPage, testerNote, photoSize, testYarnUsed, testPattern, testCircle, mapFrom, mapGoesOn, mapJoins, mapAlong, mapSelf, subjectCraft, subjectSizes, howNamed, leftNoteKept, growMultiple, growFrom, growMotif, shotFirst, shotGain, shotLose, errataWithin:
		return "λ {}"
	}
	return "λ"
}
func (y toy) name(nameKind, string) string                 { return "Ν" }
func (y toy) quoted(s string) rich.Text                    { return y.t("«", s) }
func (y toy) sides(string, sideKind, sideNouns) []sideWord { return nil }
func (y toy) drawing() Drawing                             { return toyDrawing() }
func (y toy) expand(s string) string                       { return s }
func (y toy) and(items []rich.Text) rich.Text              { return join(" + ", items...) }
func (y toy) form(f stitch.Form) noun                      { return y.short(string(f.ID)) }
func (y toy) formName(f stitch.Form) string                { return y.word(string(f.ID)) }
func (y toy) places(plan.PlaceKind) noun                   { return y.short("st") }
func (y toy) rowsBelow(n noun, deep int, round bool) noun {
	return noun{one: y.t("↓", n.one, deep), many: y.t("↓", n.many, deep)}
}
func (y toy) spaces(chains num, any bool) noun                    { return y.short("sp") }
func (y toy) work(w working) rich.Text                            { return y.t("×", w.per, w.form.one, y.at(w.at)) }
func (y toy) decrease(f noun, k int, n num, p spot) rich.Text     { return y.t("∧", f.one, n, y.at(p)) }
func (y toy) chains(n num) rich.Text                              { return y.t("∞", n) }
func (y toy) skip(n num, p spot, c string) rich.Text              { return y.t("⇒", n, y.at(p), c) }
func (y toy) leave(n num, c string) rich.Text                     { return y.t("∅", n, c) }
func (y toy) repeat(b rich.Text, n num, p spot) rich.Text         { return y.t("∑", b, n, y.at(p)) }
func (y toy) inOne(b rich.Text, n num, p spot) rich.Text          { return y.t("∩", b, n, y.at(p)) }
func (y toy) marker(o plan.Op, n int, w plan.MarkWhere) rich.Text { return y.t("!", int(o), n, int(w)) }
func (y toy) change(n string) rich.Text                           { return y.t("Δ", n) }
func (y toy) withYarn(t rich.Text, n string) rich.Text            { return y.t("Δ", n, t) }
func (y toy) inYarn(n num, w string) rich.Text                    { return y.t("Δ", n, w) }
func (y toy) stitchesIn(n noun, w string) noun                    { return n }
func (y toy) readsChart(n string, r plan.ChartRow) rich.Text {
	return y.t("▦", n, r.First, r.Last, int(r.Read))
}
func (y toy) slideOver(n num, p spot) rich.Text             { return y.t("≈", n, y.at(p)) }
func (y toy) sideAndBase(f noun, r named, b bool) rich.Text { return y.t("⊥", f.one, y.ref(r)) }
func (y toy) whichOne(nth, of int, f noun, n string) string { return y.s("=", nth, of, f.one, n) }
func (y toy) nextOne(r named) rich.Text                     { return y.ref(r) }
func (y toy) crossing(t rich.Text, c plan.Cross) rich.Text  { return y.t("χ", t, int(c)) }
func (y toy) called(t rich.Text, n string) rich.Text        { return y.t("=", t, n) }
func (y toy) made(t rich.Text, n string) rich.Text          { return y.t("=", t, n) }
func (y toy) inSizes(t rich.Text, z []string) rich.Text     { return y.t("∈", t, y.list(z)) }
func (y toy) fromHook(f noun, h hooked, rest spot) rich.Text {
	return y.t("⌐", f.one, h.nth, h.skipped, rest.n)
}
func (y toy) meet(b, n rich.Text) (rich.Text, rich.Text) { return b, n }
func (y toy) inUnit(f rich.Text, u plan.AmountUnit, _ bool) rich.Text {
	return y.t("#", f, int(u))
}
func (y toy) startHook(h hooked) rich.Text                    { return y.t("⌐", h.nth) }
func (y toy) label(round bool, a, b int) rich.Text            { return y.t("ρ", a, b) }
func (y toy) bareLabel(round, several bool) rich.Text         { return y.t("ρ") }
func (y toy) namedLabel(n string, l rich.Text) rich.Text      { return y.t("ρ", n, l) }
func (y toy) side(bool) string                                { return "ψ" }
func (y toy) times(n num, round bool) rich.Text               { return y.t("×", n) }
func (y toy) begin(b beginning) rich.Text                     { return y.t("∞", b.chains, b.and, b.as.one) }
func (y toy) joinWith(j joining) rich.Text                    { return y.t("∪", j.with.one, j.first.one, j.nth) }
func (y toy) turn() rich.Text                                 { return y.t("↔") }
func (y toy) rowsIn(n num, yarn string, round bool) rich.Text { return y.t("≡", n, yarn) }
func (y toy) inStripes(list []rich.Text) rich.Text            { return y.t("≣", join(",", list...)) }
func (y toy) asMade(s spot, posts bool) rich.Text             { return y.t("≈", s.n) }
func (y toy) joinYarn(n string) rich.Text                     { return y.t("Δ", n) }
func (y toy) joinYarnIn(n string, p rich.Text) rich.Text      { return y.t("Δ", n, p) }
func (y toy) changeHook(size string) rich.Text                { return y.t("ω", size) }
func (y toy) marksUp(n int, on, round bool) rich.Text         { return y.t("!", n) }
func (y toy) marksOut(n []int, _, _ bool) rich.Text           { return y.t("!", len(n)) }
func (y toy) measures(c string, t rich.Text) rich.Text        { return y.t("↕", c, t) }
func (y toy) blockHead(rows int, round bool, n num) rich.Text { return y.t("∏", rows, n) }
func (y toy) blockTimes(first bool, n num, r bool) rich.Text  { return y.t("∏", n) }
func (y toy) blockRow(r bool, a, b int, n string) rich.Text   { return y.t("∏", a, b, n) }
func (y toy) likeRow(n int, r bool) rich.Text                 { return y.t("≡", n) }
func (y toy) onlySizes(z []string) rich.Text                  { return y.t("∈", y.list(z)) }
func (y toy) startFoundation(n num, f noun) rich.Text         { return y.t("∞", n, f.one) }
func (y toy) joinRing(f noun, twist bool) rich.Text           { return y.t("∪", f.one) }
func (y toy) makeMotifs(n num) rich.Text                      { return y.t("▦", n) }
func (y toy) motifs(g laid) rich.Text                         { return y.t("▦", g.across, g.down) }
func (y toy) layMotifs(g laid) rich.Text                      { return y.t("▦", g.n) }
func (y toy) whichMotifs(n num, s int, rest bool) rich.Text   { return y.t("▦", n, s) }
func (y toy) motifSize(side rich.Text) rich.Text              { return y.t("▦", side) }
func (y toy) joinTo(space noun, again bool) rich.Text         { return y.t("∪", space.one) }
func (y toy) startAround(r named, j joined) rich.Text         { return y.t("Δ", y.ref(r), j.name) }
func (y toy) startAlong(a alongText) rich.Text                { return y.t("Δ", y.refs(a.runs), a.yarn.name) }
func (y toy) run(r named) rich.Text                           { return y.ref(r) }
func (y toy) alongRun(r named) rich.Text                      { return y.t("∥", y.ref(r)) }
func (y toy) startIn(r named, j joined) rich.Text             { return y.t("Δ", y.ref(r), j.name) }
func (y toy) countOff(o counting) rich.Text {
	out := rich.T("#")
	for _, it := range o.items {
		out = append(out, y.t("#", it.n, it.called, it.marker)...)
	}
	return out
}
func (y toy) level(n int) rich.Text                      { return y.t("∼", n) }
func (y toy) closeThrough(string) rich.Text              { return y.t("⊗") }
func (y toy) moveStart(m int, n num, out bool) rich.Text { return y.t("↷", m, n) }
func (y toy) nowHave(c []rich.Text) rich.Text            { return y.t("∃", y.and(c)) }
func (y toy) inSection(n num, c string) rich.Text        { return y.t("∃", n, c) }
func (y toy) bare(n string) string                       { return n }
func (y toy) handedHook(size, yarn string) rich.Text     { return y.t("ω", size, yarn) }
func (y toy) worked(from rich.Text) rich.Text            { return y.t("←", from) }
func (y toy) goesOn(r named) rich.Text                   { return y.t("→") }
func (y toy) theParts(titles []rich.Text) rich.Text      { return y.and(titles) }
func (y toy) ownStitch(name, short string) noun          { return noun{one: rich.T(short), many: rich.T(short)} }
func (y toy) rowEnd(bool) noun                           { return y.places(plan.RowEnd) }
func (y toy) makeSeveral(n int) rich.Text                { return y.t("×", n) }
func (y toy) sew(a, b []named, _ plan.Match, _ rich.Text) rich.Text {
	return y.t("∪", y.ref(a[0]), y.ref(b[0]))
}
func (y toy) cord(c cord) []rich.Text {
	return []rich.Text{y.t("∿", c.yarn, c.chains, c.length, c.free)}
}
func (y toy) fringe(f fringe) []rich.Text {
	return []rich.Text{y.t("⋔", f.yarn, f.strands, f.bundle, f.cut, f.length, y.ref(f.along[0]))}
}
func (y toy) elastic(e elastic) []rich.Text {
	return []rich.Text{y.t("≈", e.length, e.width, y.ref(e.through))}
}
func (y toy) elasticNeeded(w, l rich.Text) rich.Text               { return y.t("≈", l, w) }
func (y toy) pompom(k pompom) rich.Text                            { return y.t("⊙", k.yarn, k.across, k.wraps, k.takes) }
func (y toy) buttons(n num, size, of string) rich.Text             { return y.t("⊙", n, size, of) }
func (y toy) span(lo, hi, unit string) string                      { return lo + "…" + hi + " " + unit }
func (y toy) sizeList(n []string) string                           { return y.list(n) }
func (y toy) balls(lo, hi, n int) rich.Text                        { return y.t("●", lo, hi, n) }
func (y toy) gauge(s, r string, f rich.Text, round bool) rich.Text { return y.t("▦", s, f, r) }
func (y toy) repeatsOf(p string) noun                              { return noun{one: rich.T(p), many: rich.T(p)} }
func (y toy) stsOf(p string) noun                                  { return noun{one: rich.T(p), many: rich.T(p)} }
func (y toy) hooksFor(size string, p rich.Text) rich.Text          { return y.t("ω", size, p) }
func (y toy) markers(n int) rich.Text                              { return y.t("!", n) }
func (y toy) buttonsNeeded(n num, s, of string) rich.Text          { return y.t("⊙", n, s, of) }
func (y toy) beginCounts(n int, f noun, counts bool) rich.Text     { return y.t("∞", n, f.one) }
func (y toy) around(n string) string                               { return n + "○" }
func (y toy) ease(n string) string                                 { return n + "±" }
func (y toy) edition(n, year, month int) string                    { return strconv.Itoa(n) + "·" + strconv.Itoa(year) }
func (y toy) special(x explained) rich.Text                        { return y.t("※", x.overs, x.base.one) }
func (y toy) specialName(f stitch.Form) rich.Text                  { return y.t("※", y.formName(f)) }
func (y toy) drawn(f noun, t rich.Text, n num) rich.Text           { return y.t("∧", f.one, t, n) }
func (y toy) unfinished(f noun) noun                               { return f }
func (y toy) spike(f noun) noun                                    { return f }
func (y toy) spikeSpecial(a, f noun) (head, text rich.Text)        { return a.one, y.t("※", f.one) }
func (y toy) lengthen(f noun, n num) rich.Text                     { return y.t("∞", n, f.one) }
func (y toy) foundationSpecial(x explained, _ bool) (a, b rich.Text) {
	return y.t("※"), y.t("※", x.base.one)
}
func (y toy) takesMakes(a, b, c int) rich.Text    { return y.t("⇄", a, b) }
func (y toy) otherForm(stitch.Form, bool) string  { return "" }
func (y toy) otherTerm(term) string               { return "" }
func (y toy) mistaken(n string, m noun) rich.Text { return y.t("≠", n, m.one) }

// inToy gives every text of the author a version in the toy language.
func inToy(v reflect.Value) {
	if v.Type() == reflect.TypeFor[plan.Text]() {
		if !v.IsNil() {
			v.SetMapIndex(reflect.ValueOf("xx"), reflect.ValueOf("Ω"))
		}
		return
	}
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			inToy(v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			inToy(v.Field(i))
		}
	case reflect.Slice:
		for i := range v.Len() {
			inToy(v.Index(i))
		}
	}
}

func TestALanguageIsAVoiceAndAColumn(t *testing.T) {
	table, err := terms.Read(toyTerms)
	if err != nil {
		t.Fatal(err)
	}
	column, _ := table.Reading("xx")
	r := &reading{Reading: column}
	l := newLanguage(r, newToy)
	p := sample.Leggings()
	inToy(reflect.ValueOf(p))
	if l.Title(p) != "Ω" || l.Tag() != "xx" {
		t.Fatalf("title %q in %q", l.Title(p), l.Tag())
	}
	// The dump writes heads of its own; what is said between its lines is the language's. Units are international, and
	// so are the letters of measures and yarns and the name of a standard.
	said := dump(l, p) + dump(l.With(Manner{Full: true, Named: true, Left: true}), p)
	for _, own := range []string{"# facts", "(xx)", " cm", "~cm", "~mm", "~m", "~g", "EN~14682:2014"} {
		said = strings.ReplaceAll(said, own, "")
	}
	for _, line := range strings.Split(said, "\n") {
		for _, c := range line {
			if unicode.Is(unicode.Latin, c) && !strings.ContainsRune("ABCDEF", c) {
				t.Errorf("a letter %q that the language did not write: %s", c, line)
				break
			}
		}
	}
	if !strings.Contains(said, "∑") || !strings.Contains(said, "#") || !strings.Contains(said, "∏") {
		t.Error("the parts did not speak")
	}
}

// toyDrawing are the texts about drawings, with the blanks of English and signs for words.
func toyDrawing() Drawing {
	d := englishDrawing
	v := reflect.ValueOf(&d).Elem()
	for i := range v.NumField() {
		text, sign := v.Field(i).String(), "▤"
		for k := 0; k+1 < len(text); k++ {
			if text[k] == '%' {
				sign += " " + text[k:k+2]
			}
		}
		v.Field(i).SetString(sign)
	}
	return d
}
