package words

import (
	"slices"
	"strings"

	"ovillo/compile/plan"
	"ovillo/lang/lazy"
	"ovillo/lang/markdown"
	"ovillo/render/rich"
)

// Prose writes a text of the author: paragraphs, lists and headings, with emphasis and links. A name in braces is
// replaced by its value, written for the language and the sizes. Emphasis of either kind is the heavier weight, for the
// pages have no italics.
func (l *Language) Prose(p *plan.Pattern, t plan.Prose) []Block {
	return l.context(p, nil, nil).prose(t)
}

func (c *context) prose(t plan.Prose) []Block {
	var out []Block
	blocks, _ := markdown.Read(c.l.read.of(t.Text))
	for _, b := range blocks {
		text := paragraph(c.inline(b.Runs, t.Values))
		if len(text) > 0 {
			out = append(out, Block{Text: text, Head: min(b.Head, 2), Bullet: b.Bullet, Deep: b.Deep})
		}
	}
	return out
}

// proseLine writes a text of the author where the page has one paragraph for it: each item of a list and each heading begins a
// line of its own.
func (c *context) proseLine(t plan.Prose, end func(rich.Text) rich.Text) rich.Text {
	var out rich.Text
	own := false // what stands before has a line of its own
	for i, b := range c.prose(t) {
		text := end(b.Text)
		if b.Bullet != "" {
			text = append(rich.Text{{Text: b.Bullet + tie}}, text...)
		}
		if b.Head > 0 {
			text = strongly(b.Text)
		}
		alone := b.Deep > 0 || b.Head > 0
		if i > 0 {
			out = append(out, rich.Run{Text: map[bool]string{true: "\n", false: " "}[alone || own]})
		}
		out, own = append(out, text...), alone
	}
	return out
}

// asWritten leaves a text as its author ended it.
func asWritten(t rich.Text) rich.Text { return t }

func strongly(t rich.Text) rich.Text {
	out := slices.Clone(t)
	for i := range out {
		out[i].Strong = true
	}
	return out
}

// inline writes the runs of a block, with the values in their places.
func (c *context) inline(runs []markdown.Run, values map[string]plan.Value) rich.Text {
	var out rich.Text
	for i, r := range runs {
		if i > 0 && runs[i-1].Link != r.Link {
			out = append(out, onPaper(out, runs[i-1].Link)...)
		}
		style := rich.Run{Strong: r.Strong, Link: r.Link}
		if r.Hole == nil {
			style.Text = tieUnits(c.sentencesSided(r.Text))
			out = append(out, style)
			continue
		}
		v, ok := values[r.Hole.Name]
		if !ok {
			style.Text = "{" + r.Hole.Name + "}" // it was reported
			out = append(out, style)
			continue
		}
		text := c.value(v)
		if r.Hole.Counted() {
			text = c.withNoun(v, text, r.Hole)
		}
		if v.Called != nil {
			out, text = c.l.voice.meet(out, c.opening(out, text))
		}
		for _, run := range text {
			run.Strong, run.Link = run.Strong || style.Strong, style.Link
			out = append(out, run)
		}
	}
	if n := len(runs); n > 0 {
		out = append(out, onPaper(out, runs[n-1].Link)...)
	}
	return out
}

// onPaper is the address of the link that a text ends with, for those who read it on paper; nil if the text says it.
func onPaper(text rich.Text, link string) rich.Text {
	if link == "" {
		return nil
	}
	said := ""
	for i := len(text) - 1; i >= 0 && text[i].Link == link; i-- {
		said = text[i].Text + said
	}
	bare := strings.TrimPrefix(link, "mailto:")
	for _, scheme := range []string{"https://", "http://"} {
		bare = strings.TrimPrefix(bare, scheme)
	}
	bare = strings.TrimSuffix(bare, "/")
	if strings.Contains(said, bare) {
		return nil
	}
	return rich.Text{{Text: " ("}, {Text: bare, Link: link}, {Text: ")"}}
}

// opening gives a name at the start of a sentence its capital.
func (c *context) opening(before, name rich.Text) rich.Text {
	s := strings.TrimRight(before.String(), " \u00a0\n")
	if s == "" || strings.ContainsAny(s[len(s)-1:], ".!?") {
		return capital(name)
	}
	return name
}

// withNoun writes a count with the word that goes with it: 1 leg, 2 legs.
func (c *context) withNoun(v plan.Value, text rich.Text, h *markdown.Hole) rich.Text {
	word := h.Many
	if v.Counts != nil && c.tally(v.Counts).one() {
		word = h.One
	}
	gap := tie
	if v.Counts != nil && c.tally(v.Counts).list {
		gap = " " // behind a list of sizes, which is long
	}
	return append(text, rich.Run{Text: gap + word})
}

// value writes a value of the source for the sizes, or a stitch as the reading abbreviates it.
func (c *context) value(v plan.Value) rich.Text {
	switch {
	case v.Lengths != nil && v.Memory:
		return append(c.both(v.Lengths), rich.Run{Text: FromMemory})
	case v.Lengths != nil:
		return c.both(v.Lengths)
	case v.Form != nil:
		return c.form(*v.Form).one
	case v.Called != nil:
		return rich.T(c.l.theName(v.Called))
	case v.Amounts != nil:
		return c.amounts(v)
	}
	return c.tally(v.Counts).text
}

// amounts writes numbers that are neither stitches nor lengths: 2.5, 20%, 50 g, 6 months.
func (c *context) amounts(v plan.Value) rich.Text {
	figures := make([]string, len(v.Amounts))
	var of []int64 // the sizes of the step alone
	for i, a := range v.Amounts {
		figures[i] = dash
		if !c.sizes.Has(i) {
			continue
		}
		if a != plan.NoAmount {
			figures[i] = c.l.Number(float64(a)/1000, 2)
		}
		of = append(of, a)
	}
	if len(slices.Compact(slices.Clone(of))) == 1 {
		return c.l.voice.inUnit(rich.T(figures[slices.Index(v.Amounts, of[0])]), v.Unit, of[0] == 1000)
	}
	return c.l.voice.inUnit(c.l.list(figures, c.names()), v.Unit, false)
}

// unitBehind finds a figure with a unit or a sign behind it.
var unitBehind = lazy.Regexp(`([0-9½¼¾]) (cm|mm|m|g|kg|in|pulg\.|oz|yd|yds|%|°C|°F|×)([^\pL]|$)`)

// tieUnits ties the units of an author's text to their figures.
func tieUnits(s string) string { return unitBehind().ReplaceAllString(s, "$1"+tie+"$2$3") }
