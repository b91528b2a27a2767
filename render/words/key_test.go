package words

import (
	"strings"
	"testing"

	"ovillo/compile/plan"
)

func TestEveryKeyIsSaid(t *testing.T) {
	blanks := map[Key]int{DrawingCaption: 1, MotifCaption: 1, StitchRowsCaption: 1, StitchRoundsCaption: 1, StitchLevelsCaption: 1, DrawnForSize: 1, DesignBy: 1, PageOf: 2, PartDrawing: 1,
		RowsDone: 2, CountUp: 1, CountDown: 1, ShotsHead: 1, SayAloud: 1, LeftOutHead: 1,
		ErrataPages: 1, PageNow: 2, PageThen: 1, InPlaceOf: 2}
	for _, tag := range Tags() {
		l := language(t, tag)
		for _, k := range Keys() {
			s := l.Say(k)
			if strings.TrimSpace(s) == "" {
				t.Errorf("%s: key %d has no text", tag, k)
			}
			if got := strings.Count(s, "{}"); got != blanks[k] {
				t.Errorf("%s: key %d has %d blanks, want %d: %q", tag, k, got, blanks[k], s)
			}
			if strings.Contains(strings.ReplaceAll(s, "{}", ""), "{") {
				t.Errorf("%s: key %d is not filled: %q", tag, k, s)
			}
		}
	}
}

func TestEveryLineIsSaidAlike(t *testing.T) {
	en := language(t, "en-US")
	for _, tag := range Tags() {
		l := language(t, tag)
		for _, k := range lines() {
			s := l.voice.line(k)
			if s == "" {
				t.Errorf("%s: line %d has no text", tag, k)
			}
			if got, want := strings.Count(s, "{}"), strings.Count(en.voice.line(k), "{}"); got != want {
				t.Errorf("%s: line %d has %d blanks, English %d: %q", tag, k, got, want, s)
			}
		}
	}
}

func TestNamesStandInBothLanguages(t *testing.T) {
	for kind, names := range englishNames {
		for id, en := range names {
			if es := spanishNames[kind][id]; es == "" && kind != bodyName {
				t.Errorf("%s (%s) has no Spanish name", id, en)
			}
		}
	}
	for id := range spanishBody {
		if englishBody[id] == "" {
			t.Errorf("%s has no English name", id)
		}
	}
	for id, en := range englishBody {
		if spanishBody[id] == "" {
			t.Errorf("%s (%s) has no Spanish name", id, en)
		}
	}
}

func TestFixedTextsFillIn(t *testing.T) {
	for tag, want := range map[string]string{
		"en-US": "Size 2 y, drawn from the pattern: each line is a row or round. | Design: Marta Lucena | page 2 of 8 | meters (yards)",
		"en-GB": "Size 2 y, drawn from the pattern: each line is a row or round. | Design: Marta Lucena | page 2 of 8 | metres (yards)",
		"es":    "Talla 2 y. Dibujo hecho a partir del patrón: cada línea es una hilera o vuelta. | Diseño: Marta Lucena | página 2 de 8 | metros (yardas)",
		"es-AR": "Talle 2 y. Dibujo hecho a partir del patrón: cada línea es una hilera o vuelta. | Diseño: Marta Lucena | página 2 de 8 | metros (yardas)",
	} {
		l := language(t, tag)
		got := strings.Join([]string{l.SayWith(DrawingCaption, upper(l.InSize(plan.Size{Name: "2 y"}))), l.SayWith(DesignBy, "Marta Lucena"), l.SayWith(PageOf, "2", "8"), l.Say(MetersYards)}, " | ")
		got = strings.ReplaceAll(got, tie, " ")
		if got != want {
			t.Errorf("%s:\n got %s\nwant %s", tag, got, want)
		}
	}
}

func TestInSize(t *testing.T) {
	for _, c := range []struct{ tag, name, want string }{
		{"en-US", "2 y", "size 2 y"}, {"en-US", "one size", "one size"}, {"en-US", "One Size", "One Size"}, {"en-US", "oversized", "size oversized"},
		{"es", "2 años", "talla 2 años"}, {"es", "talla única", "talla única"}, {"es", "talle único", "talle único"}, {"es-AR", "4", "talle 4"},
	} {
		if got := strings.ReplaceAll(language(t, c.tag).InSize(plan.Size{Name: c.name}), tie, " "); got != c.want {
			t.Errorf("%s: %q is called %q, not %q", c.tag, c.name, got, c.want)
		}
	}
}
