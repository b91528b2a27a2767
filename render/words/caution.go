package words

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/lazy"
	"ovillo/render/rich"
)

// CautionGroup is cautions for the same sizes.
type CautionGroup struct {
	Only  rich.Text // "Size 3-6 m only"; nil where they are for all
	Items []CautionText
}

// CautionText is one caution in words.
type CautionText struct {
	Text    rich.Text   // with its source behind it, and how well that was read
	Reasons []rich.Text // why the designer keeps to it all the same; nil: none was given
	Steps   []int       // of the finishing, to which it belongs; nil: none
}

// Cautions writes those cautions of a pattern that are wanted. Those for all sizes come first, then those for some, together where
// the sizes are the same; in each group errors first, then warnings, and else as they stand in the pattern. What several
// things ask for in the same words is said once.
func (l *Language) Cautions(p *plan.Pattern, want func(plan.Caution) bool) []CautionGroup {
	list := slices.DeleteFunc(slices.Clone(p.Cautions), func(k plan.Caution) bool { return !want(k) })
	slices.SortStableFunc(list, func(a, b plan.Caution) int { return rank(a) - rank(b) })
	var out []CautionGroup
	var sizes []plan.Sizes
	var said [][]plan.Caution // of each group
	enter := func(k plan.Caution) {
		of := k.For
		if !slices.Contains(of, false) {
			of = nil
		}
		g := slices.IndexFunc(sizes, func(s plan.Sizes) bool { return slices.Equal(s, of) })
		if g < 0 {
			g, sizes = len(out), append(sizes, of)
			out, said = append(out, CautionGroup{Only: l.OnlyFor(p, of)}), append(said, nil)
		}
		at := slices.IndexFunc(said[g], func(o plan.Caution) bool { return alikeSaid(k, o) })
		if at < 0 {
			at = len(said[g])
			said[g] = append(said[g], k)
			out[g].Items = append(out[g].Items, CautionText{Text: l.Caution(k)})
		}
		out[g].Items[at].add(k.Step, l.Reason(k))
	}
	for _, all := range []bool{true, false} {
		for _, k := range list {
			if all == !slices.Contains(k.For, false) {
				enter(k)
			}
		}
	}
	return out
}

// add enters a step and a reason, each once.
func (t *CautionText) add(step int, reason rich.Text) {
	if step >= 0 && !slices.Contains(t.Steps, step) {
		t.Steps = append(t.Steps, step)
	}
	if reason != nil && !slices.ContainsFunc(t.Reasons, func(r rich.Text) bool { return r.String() == reason.String() }) {
		t.Reasons = append(t.Reasons, reason)
	}
}

// alikeSaid reports whether two cautions read alike, in any language.
func alikeSaid(a, b plan.Caution) bool {
	return maps.Equal(a.Text, b.Text) && a.Source == b.Source && a.Read == b.Read
}

// rank orders cautions by their severity.
func rank(k plan.Caution) int {
	return cmp.Or(slices.Index([]string{"error", "warn", "caution"}, k.Severity)+1, 4)
}

// CautionsHead heads so many cautions.
func (l *Language) CautionsHead(n int) string {
	if n == 1 {
		return l.Say(CautionHead)
	}
	return l.Say(CautionsHead)
}

// Caution writes a caution with its source: "… (EN 14682:2014, from a summary)." Where the law itself was read only the
// source stands there; what rests on no published figure says that it is ours.
func (l *Language) Caution(k plan.Caution) rich.Text {
	text := l.figuresIn(strings.TrimRight(l.read.of(k.Text), " ."))
	source := l.CautionSource(k).String()
	switch {
	case source == "":
		text += "."
	case strings.HasSuffix(text, ")"): // no bracket stands behind a bracket
		text = strings.TrimSuffix(text, ")") + "; " + source + ")."
	default:
		text += " (" + source + ")."
	}
	return paragraph(rich.T(text))
}

// Reason writes why the designer keeps to what a caution speaks of; nil if no reason was given.
func (l *Language) Reason(k plan.Caution) rich.Text {
	reason := l.read.of(k.Reason)
	if reason == "" {
		return nil
	}
	return paragraph(stopped(fill(l.voice.line(cautionReason), l.figuresIn(reason))))
}

// CautionSource is what stands behind a caution: its source and how well that was read; nil where no rule is behind it.
func (l *Language) CautionSource(k plan.Caution) rich.Text {
	source := l.sources(k.Source)
	switch k.Read {
	case plan.ReadItself:
		return words(source)
	case plan.ReadSummary:
		if source == "" {
			return rich.T(l.voice.line(cautionAdvice))
		}
		return join(", ", words(source), rich.T(l.voice.line(cautionSummary)))
	case plan.ReadMemory:
		return join(", ", words(source), rich.T(l.voice.line(cautionMemory)))
	}
	ours := rich.T(l.voice.line(cautionOwn))
	switch {
	case k.ID == plan.NoRule:
		return nil
	case source != "":
		return fill(l.voice.line(cautionOwnAfter), source)
	case limitInText().MatchString(l.read.of(k.Text)):
		ours = rich.T(l.voice.line(cautionOwnLimit))
	}
	return ours
}

// sources names standards and laws as the language does: those of the European Union are quoted in
// the letters of each.
func (l *Language) sources(list string) string {
	names := strings.Split(list, ", ")
	for i, name := range names {
		if m := euRegulation().FindStringSubmatch(name); m != nil {
			name = fill(l.voice.line(lawRegulation), m[1]).String()
		} else if m := euDirective().FindStringSubmatch(name); m != nil {
			name = fill(l.voice.line(lawDirective), m[1]).String()
		}
		names[i] = tiedSource(name)
	}
	return strings.Join(names, ", ")
}

// shortSource is the longest name of a source that is not divided.
const shortSource = 16

// tiedSource keeps the name of a standard or a law together: a short one as a whole, of a longer one its number.
func tiedSource(name string) string {
	at := strings.LastIndexByte(name, ' ')
	if len(name) <= shortSource || at < 0 {
		return nbsp(name)
	}
	return name[:at] + tie + name[at+1:]
}

// figuresIn writes the figures of a text from a table as the pages write theirs.
func (l *Language) figuresIn(text string) string {
	text = oddFraction().ReplaceAllString(fractions.Replace(text), "$1"+tie+"$2")
	if l.read.word("decimal") == "." {
		text = decimalComma().ReplaceAllString(text, "$1.$2")
	}
	text = tieUnits(text)
	if l.read.manner.Full {
		text = inchesInText().ReplaceAllString(text, "${1}"+tie+l.voice.line(inchWord)+"$2")
	}
	return text
}

var (
	// fractions are written with their own signs, as the lengths of the pages are.
	fractions = strings.NewReplacer(" 1/2 in", "½ in", " 1/4 in", "¼ in", " 3/4 in", "¾ in")
	// oddFraction is one that has no sign, behind a whole number.
	oddFraction = lazy.Regexp(`([0-9]) ([0-9]+/[0-9]+)`)
	// decimalComma parts the figures of a number.
	decimalComma = lazy.Regexp(`([0-9]),([0-9])`)
	// inchesInText finds inches in the text of a caution: a figure with their sign, where that is not the word.
	inchesInText = lazy.Regexp(`([0-9½¼¾])[ \x{00a0}]in([).,:;]| \()`)
	// euRegulation and euDirective are laws as they are quoted in English.
	euRegulation = lazy.Regexp(`^EU ([0-9].*)$`)
	euDirective  = lazy.Regexp(`^([0-9/]+)/EC$`)
	// limitInText finds a figure with a unit, which is a limit.
	limitInText = lazy.Regexp(`[0-9½¼¾][ \x{00a0}](cm|mm|in|g|kg|N|Nm)([^\pL]|$)`)
)
