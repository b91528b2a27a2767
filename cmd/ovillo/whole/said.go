package whole

import (
	"strings"

	"ovillo/compile/plan"
	"ovillo/render/rich"
	"ovillo/render/words"
)

// Said is all that a language says of a pattern, text by text.
func Said(l *words.Language, p *plan.Pattern) []string {
	var out []string
	prose := func(t plan.Prose) {
		for _, k := range l.Prose(p, t) {
			out = append(out, Plain(k.Text))
		}
	}
	facts := func(list []words.Fact) {
		for _, f := range list {
			out = append(out, f.Head+": "+Plain(f.Text))
		}
	}
	out = append(out, l.Title(p))
	prose(p.Intro)
	for _, n := range p.Notes {
		prose(n)
	}
	facts(l.Facts(p))
	facts(l.SideNotes(p))
	for _, m := range p.Measures {
		out = append(out, l.MeasureName(m))
	}
	facts(l.HowToRead(p))
	for _, s := range l.Specials(p) {
		out = append(out, Plain(s.Head)+": "+Plain(s.Text))
	}
	for i := range p.Charts {
		out = append(out, l.ChartTitle(p, i))
	}
	for i := range p.Drawn {
		out = append(out, Plain(l.StitchCaption(p, i)))
	}
	for _, s := range l.MapSteps(p) {
		out = append(out, s.Title+": "+Plain(s.Text))
	}
	for i, part := range p.Parts {
		out = append(out, l.PartTitle(p, i)+": "+Plain(l.PartNote(p, part)), Step(l.Start(p, part)))
		for _, s := range part.Steps {
			out = append(out, Step(l.Step(p, part, s)))
		}
	}
	for _, f := range p.Finish {
		out = append(out, Plain(l.Finishing(p, f)))
	}
	prose(p.Care)
	prose(p.Licence)
	prose(p.Changes)
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}

// Plain is a text with plain blanks.
func Plain(t rich.Text) string { return strings.ReplaceAll(t.String(), "\u00a0", " ") }

// Step is a step as it is spoken, in a line.
func Step(st words.StepText) string {
	var out []string
	for _, s := range []string{Plain(st.Only), strings.TrimSpace(Plain(st.Label) + " " + strings.Join(st.Slots, " | ")), Plain(st.Body)} {
		if s != "" {
			out = append(out, s)
		}
	}
	text := strings.Join(out, ": ")
	if c := st.Count; c != nil {
		text += " (" + strings.TrimSpace(Plain(c.Line)+" "+strings.Join(c.Slots, " | ")+" "+Plain(c.Unit)) + ")"
	}
	return text + "\n"
}

// Ties turns blanks of other kinds into plain ones, and leaves out what a line may be broken at.
var Ties = strings.NewReplacer("\u00a0", " ", "\u202f", "", "\u00ad", "")
