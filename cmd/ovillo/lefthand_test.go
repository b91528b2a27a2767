package main

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ovillo/compile/plan"
	"ovillo/render/words"
)

// TestLeftHanded: what reads otherwise for who holds the hook in the left hand, of every example and every worked construction, in
// both languages. Each line is printed as it is and as it becomes; a change of a golden file is to be read as prose.
func TestLeftHanded(t *testing.T) {
	for _, dir := range []string{"../../examples", "../../testdata/cases"} {
		goldenOfEach(t, dir, "testdata/editions/left", leftHanded)
	}
}

// leftHanded are the lines of a pattern that change, before and after, and what the maker is told.
func leftHanded(t *testing.T, p *plan.Pattern) string {
	var b strings.Builder
	for _, tag := range []string{"en-US", "es"} {
		usual, err := words.For(tag)
		require.NoError(t, err)
		left := usual.With(words.Manner{Left: true})
		fmt.Fprintf(&b, "== %s\n%s\n", tag, plainText(left.LeftHandedNote(p)))
		was, is := saidInAll(usual, p), saidInAll(left, p)
		require.Len(t, is, len(was))
		for i := range was {
			if was[i] != is[i] {
				fmt.Fprintf(&b, "- %s\n+ %s\n", was[i], is[i])
			}
		}
	}
	return b.String()
}

// saidInAll is all that a language says of a pattern, text by text.
func saidInAll(l *words.Language, p *plan.Pattern) []string {
	var out []string
	prose := func(t plan.Prose) {
		for _, k := range l.Prose(p, t) {
			out = append(out, plainText(k.Text))
		}
	}
	facts := func(list []words.Fact) {
		for _, f := range list {
			out = append(out, f.Head+": "+plainText(f.Text))
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
		out = append(out, plainText(s.Head)+": "+plainText(s.Text))
	}
	for i := range p.Charts {
		out = append(out, l.ChartTitle(p, i))
	}
	for i := range p.Drawn {
		out = append(out, plainText(l.StitchCaption(p, i)))
	}
	for _, s := range l.MapSteps(p) {
		out = append(out, s.Title+": "+plainText(s.Text))
	}
	for i, part := range p.Parts {
		out = append(out, l.PartTitle(p, i)+": "+plainText(l.PartNote(p, part)), stepSpoken(l.Start(p, part)))
		for _, s := range part.Steps {
			out = append(out, stepSpoken(l.Step(p, part, s)))
		}
	}
	for _, f := range p.Finish {
		out = append(out, plainText(l.Finishing(p, f)))
	}
	prose(p.Care)
	prose(p.Licence)
	prose(p.Changes)
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}
